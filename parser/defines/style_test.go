package defines

import (
	"fmt"
	"strings"
	"testing"

	"preflash/parser"
)

func TestRecognises(t *testing.T) {
	for _, test := range []struct {
		text string
		want bool
	}{
		{"#define A 1\n  #define B\n//#define C 2\n", true},
		{"\ufeff#define A 1\r\n#define B\r\n// #define C 2", true},
		{"#define A 1\n#define B\n", false},
		{"", false},
		{"[part]\nkey: 1 # one says #define here\n# see #define A\n; and #define B, #define C\n", false},
		{"#define A\n#define B\n#define C\n\n[part]\nkey: 1\n", false},
		{"#define A\r\n#define B\r\n#define C\r\n\r\n[include a.cfg]\r\n", false},
		{"/*\n[part]\n*/\n// [part]\n#define A {1,\\\n[0]}\n#define B\n#define C\n", true},
		{"#define A\n#define B\n#define C\nconst int d[2];\n", true},
		{"/* never closed\n#define A\n#define B\n#define C\n", true},
	} {
		if got := Style.Recognises(parser.NewFile("f", []byte(test.text))); got != test.want {
			t.Errorf("%q: %v", test.text, got)
		}
	}
}

func TestEntries(t *testing.T) {
	c := readText(t, 0, "a.h", `#define B 1
#define A 2 // two
//#define C 3
#if BOARD
#define D 4
#endif
#define E
`, "b.h", "#define A 5\n#undef B\n")
	var got []string
	for _, e := range c.Entries() {
		line, column := e.At.Position()
		place := fmt.Sprintf("%s:%d:%d", e.At.File.Path, line, column)
		got = append(got, fmt.Sprintf("%s=%s %s %s", e.Name, e.Value, e.Active, place))
	}
	want := []string{
		"B=1 no a.h:1:11", "A=5 yes b.h:1:11", "C=3 no a.h:3:13", "D=4 unknown a.h:5:11", "E= yes a.h:7:9",
	}
	if strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// What a value comes to follows the names in it.
func TestEntriesMeans(t *testing.T) {
	c := readText(t, 0, "a.h", `#define A 2
#define PLAIN (3 + 4)
#define SUM (A * 10 + 5)
#define LIST { A, SUM }
#define TEXT "A"
#define OPEN BOARD_FIGURE
#define ROUND (ROUND + A)
#define F(x) (x + A)
#define CALL F(3)
`)
	want := map[string]string{
		"SUM": "25", "LIST": "{ 2 , ( 2 * 10 + 5 ) }", "OPEN": "BOARD_FIGURE",
		"ROUND": "( ( ROUND + 2 ) + 2 )", "F": "( x + 2 )", "CALL": "5",
	}
	c.s.steps = maxSteps
	for range 2 { // near the limit every call tells the same
		if got := c.Entries(); got[2].Means != "25" || got[len(got)-1].Means != "" {
			t.Errorf("near the limit of steps the sum comes to %q, the call to %q",
				got[2].Means, got[len(got)-1].Means)
		}
	}
	c.s.steps = 0
	for _, e := range c.Entries() {
		if e.Means != want[e.Name] {
			t.Errorf("%s comes to %q, want %q", e.Name, e.Means, want[e.Name])
		}
	}
}

func TestRemarks(t *testing.T) {
	const sensor = newerLine + "#define TEMP_SENSOR_0 1\n"
	h := func(text string) []string { return []string{"h", text} }
	tests := []struct {
		name  string
		tool  int
		files []string
		want  []string // kind and part of the text
	}{
		{"healthy", 0, h(first), nil},
		{"protection of another make", 0, h(sensor + "#define THERMAL_GUARD_HOTEND 1\n"),
			[]string{"5 THERMAL_GUARD_HOTEND"}},
		{"only commented out", 0, h(sensor + "//#define THERMAL_GUARD_HOTEND 1\n"), nil},
		{"limit of another make", 0, h(sensor + "#define EXTRUDER_MAXTEMP 300\n"),
			[]string{"5 EXTRUDER_MAXTEMP"}},
		{"the owner's own name", 0,
			h(sensor + "#define MY_MAXTEMP 300\n#define HEATER_0_MAXTEMP MY_MAXTEMP\n"), nil},
		{"a pin", 0, h(sensor + "#define TEMP_SENSOR_X_PIN 3\n"), nil},
		{"tool that is missing", 2, h(newerLine + "#define EXTRUDERS 2\n#define TEMP_SENSOR_2 1\n"),
			[]string{"3 printer.tool, which is 2"}},
		{"tool without a sensor", 1, h(newerLine + "#define EXTRUDERS 2\n#define TEMP_SENSOR_1 0\n"),
			[]string{"3 TEMP_SENSOR_1 is 0"}},
		{"second sensor of tool 0", 1,
			h(newerLine +
				"#define EXTRUDERS 2\n#define TEMP_SENSOR_1 1\n#define TEMP_SENSOR_1_AS_REDUNDANT\n"),
			[]string{
				"3 TEMP_SENSOR_1_AS_REDUNDANT",
				"0 describe the second sensor with TEMP_SENSOR_REDUNDANT",
			}},
		{"a version between the two", 0,
			h("#define CONFIGURATION_H_VERSION 02010202\n#define EXTRUDERS 1\n#define TEMP_SENSOR_0 1\n"),
			[]string{"4 CONFIGURATION_H_VERSION is 02010202"}},
		{"no version and no mark of one", 0,
			h("#define TEMP_SENSOR_0 1\n"), []string{"4 nothing in these files says"}},
		{"second file first", 0, []string{
			"b.h", "#define CONFIGURATION_ADV_H_VERSION 02010300\n",
			"a.h", newerLine + "#define EXTRUDERS 1\n#define TEMP_SENSOR_0 1\n",
		}, []string{"4 this is the second file"}},
		{"no version, and a name that several have", 0,
			h("#define TEMP_SENSOR_0 1\n#define PREHEAT_1_LABEL \"a\"\n"),
			[]string{"4 nothing in these files says"}},
		{"no version, and a name that was taken back", 0,
			h("#define TEMP_SENSOR_0 1\n//#define LIN_ADVANCE_K 0.1\n#define PREHEAT_1_LABEL \"a\"\n"), nil},
		{"no extruder", 0, h(newerLine + "#define EXTRUDERS 0\n#define TEMP_SENSOR_0 1\n"),
			[]string{"3 the configuration has no extruder"}},
		{"no extruder, older", 0, h(olderLine + "#define EXTRUDERS 0\n#define TEMP_SENSOR_0 1\n"),
			[]string{"3 the configuration has no extruder"}},
		{"no extruder in force", 0, h(newerLine + "//#define EXTRUDERS 1\n#define TEMP_SENSOR_0 1\n"),
			[]string{"3 the configuration has no extruder"}},
		{"one nozzle for all", 1, h(newerLine + "#define EXTRUDERS 2\n#define SINGLENOZZLE\n" + sensor), nil},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			var got []string
			for _, r := range readText(t, test.tool, test.files...).printer.Remarks {
				got = append(got, fmt.Sprint(int(r.Kind), " ", r.Text))
			}
			if len(got) != len(test.want) {
				t.Fatalf("remarks %q, want %q", got, test.want)
			}
			for i, want := range test.want {
				kind, part, _ := strings.Cut(want, " ")
				if !strings.HasPrefix(got[i], kind+" ") || !strings.Contains(got[i], part) {
					t.Errorf("remark %q, want %q", got[i], want)
				}
			}
		})
	}
}

// Files of the build that set options apart from the headers are named.
func TestOverrides(t *testing.T) {
	const header = newerLine + "#define TEMP_SENSOR_0 1\n//#define OWN_NAME\n"
	tests := []struct {
		name, file, text string
		want             []string
	}{
		{"flag", "build/platformio.ini",
			"[env]\nbuild_flags = -Os -DHEATER_0_MAXTEMP=300 -D OWN_NAME -DUNRELATED\n",
			[]string{"HEATER_0_MAXTEMP, OWN_NAME"}},
		{"flag that concerns no option", "build/platformio.ini", "build_flags = -DUNRELATED=1\n", nil},
		{"flag in a comment", "build/platformio.ini", "; build_flags = -DHEATER_0_MAXTEMP=300\n", nil},
		{"options from an INI file", "build/src/config.ini", "[config:base]\nini_use_config = all\n",
			[]string{"options from an INI file"}},
		{"an INI file that is not used", "build/src/config.ini", "[config:base]\nini_use_config = none\n",
			nil},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			dir := t.TempDir()
			writeFile(t, dir, "build/src/h", header)
			writeFile(t, dir, test.file, test.text)
			c, err := readConfig(openTree(t, dir), parser.Request{Files: []string{"build/src/h"}})
			if err != nil {
				t.Fatal(err)
			}
			remarks := c.printer.Remarks
			if len(remarks) != len(test.want) {
				t.Fatalf("remarks %v, want %q", remarks, test.want)
			}
			for i, want := range test.want {
				if remarks[i].Kind != parser.RemarkGap || !strings.Contains(remarks[i].Text, want) ||
					remarks[i].At.File.Path != test.file {
					t.Errorf("remark %+v, want %q", remarks[i], want)
				}
			}
		})
	}
}
