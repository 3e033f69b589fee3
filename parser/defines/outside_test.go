package defines

import (
	"strings"
	"testing"

	"preflash/parser"
)

func readOutside(t *testing.T, text string, outside ...parser.Define) (*config, error) {
	t.Helper()
	tree := openTree(t, t.TempDir())
	sheet := parser.NewFile("swap.toml", []byte("defined = [\"X\"]\n"))
	for i := range outside {
		outside[i].At = parser.Span{File: sheet, Start: 11, End: 14}
	}
	return readConfig(tree.With(map[string][]byte{tree.Shown("a.h"): []byte(text)}),
		parser.Request{Files: []string{"a.h"}, Outside: outside})
}

// What the sheet says of a name is as if it stood above the first line.
func TestOutside(t *testing.T) {
	const text = `#if PANEL
#define BARE
#endif
#ifdef PANEL
#define IFDEF
#endif
#if ENABLED(PANEL)
#define ON
#endif
#if PANEL == 3
#define THREE
#endif
`
	for _, test := range []struct {
		d    []parser.Define
		want string // BARE IFDEF ON THREE
	}{
		{nil, "unknown unknown unknown unknown"},
		{[]parser.Define{{Name: "PANEL", Value: "1"}}, "yes yes yes no"},
		{[]parser.Define{{Name: "PANEL", Value: "3"}}, "yes yes no yes"},
		{[]parser.Define{{Name: "PANEL", Value: "0"}}, "no yes no no"},
		{[]parser.Define{{Name: "PANEL", Undefined: true}}, "no no no no"},
		{[]parser.Define{{Name: "PANEL", Value: "OTHER"}}, "unknown yes unknown unknown"},
		{[]parser.Define{{Name: "PANEL", Value: "OTHER"}, {Name: "OTHER", Value: "3"}}, "yes yes no yes"},
	} {
		c, err := readOutside(t, text, test.d...)
		if err != nil {
			t.Fatal(err)
		}
		var got []string
		for _, name := range []string{"BARE", "IFDEF", "ON", "THREE"} {
			got = append(got, c.s.macro(name).state.String())
		}
		if strings.Join(got, " ") != test.want {
			t.Errorf("%+v: %s, want %s", test.d, strings.Join(got, " "), test.want)
		}
	}
}

func TestOutsideRefused(t *testing.T) {
	const text = "#define OWN 1\n//#define SLEEPING\n#if 0\n#define DEAD\n#endif\n"
	for name, want := range map[string]string{
		"THERMAL_PROTECTION_HOTENDS": "is an option of the style",
		"E0_AUTO_FAN_PIN":            "is an option of the style",
		"HAS_HOTEND":                 "is derived by the firmware",
		"TEMP_SENSOR_IS_MAX_TC":      "is derived by the firmware",
		"HAS_OWN_MMU2":               "is derived by the firmware",
		"preflash_newer":             "is derived by the firmware",
		"ENABLED":                    "is one of the style's own tests",
		"defined":                    "belongs to the language",
		"TWO WORDS":                  "is no name of a macro",
		"MACRO(x)":                   "is no name of a macro",
		"":                           "is no name of a macro",
		"OWN":                        "stands in the files (",
		"SLEEPING":                   "stands in the files (",
		"DEAD":                       "stands in the files (",
	} {
		for _, d := range []parser.Define{{Name: name, Value: "1"}, {Name: name, Undefined: true}} {
			_, err := readOutside(t, text, d)
			e, ok := err.(*parser.Error)
			if !ok || !strings.Contains(e.Message, want) || e.File != "swap.toml" || e.Line != 1 ||
				e.Column != 12 {
				t.Errorf("%q: %v, want %s", name, err, want)
			}
		}
	}
	for _, value := range []string{
		"", "1 + 1", "(3)", "1\n#define TEMP_SENSOR_0 998", "3 // x", `"text"`, "a\\", "0x", "- 1", "1e3",
	} {
		if _, err := readOutside(t, text, parser.Define{Name: "PANEL", Value: value}); err == nil ||
			!strings.Contains(err.Error(), "one whole number or one name") {
			t.Errorf("value %q: %v", value, err)
		}
	}
	twice := []parser.Define{{Name: "PANEL", Value: "1"}, {Name: "PANEL", Undefined: true}}
	if _, err := readOutside(t, text, twice...); err == nil || !strings.Contains(err.Error(), "twice") {
		t.Errorf("said twice: %v", err)
	}
	// Where the board decides, the sheet may say what it does.
	if _, err := readOutside(t, olderLine, parser.Define{Name: "HAS_HEATED_BED", Value: "1"}); err != nil {
		t.Error(err)
	}
}

// What cannot be told hangs on the name at the beginning of the doubt.
func TestCauses(t *testing.T) {
	const head = newerLine + "#define EXTRUDERS 1\n"
	for _, test := range []struct {
		name, text string
		key        parser.Key
		want       string // name and line of the condition
	}{
		{"condition", head + "#if PANEL\n#define HEATER_0_MAXTEMP 275\n#endif\n", parser.MaxTemp, "PANEL 3"},
		{"condition on another", head + `#ifdef PANEL
#define HOT
#endif
#if ENABLED(HOT)
#define HEATER_0_MAXTEMP 275
#endif
`, parser.MaxTemp, "PANEL 6"},
		{"value", head + "#define HEATER_0_MAXTEMP PANEL_MAX\n", parser.MaxTemp, "PANEL_MAX 3"},
		{"sensor", head + "#define TEMP_SENSOR_0 BOARD_SENSOR\n", parser.HotendSensor, "BOARD_SENSOR 3"},
		{"through a derived name", head + `#define TEMP_SENSOR_0 BOARD_SENSOR
#if HAS_E_TEMP_SENSOR
#define HEATER_0_MAXTEMP 275
#endif
`, parser.MaxTemp, "BOARD_SENSOR 4"},
		{"watch that hangs on its switch",
			head + "#if PANEL\n" + hotends + "#endif\n#define WATCH_TEMP_PERIOD 20\n",
			parser.HotendRiseOn, "PANEL 3"},
		{"no name would settle it", head + "#define HEATER_0_MAXTEMP hot\n#if TWICE(\n#define X\n#endif\n",
			parser.MaxTemp, "hot 3"},
		{"gate", head + `#if PANEL
#define VOLUMETRIC_EXTRUDER_LIMIT
#endif
#define DEFAULT_VOLUMETRIC_EXTRUDER_LIMIT 12
`, parser.MaxFlow, "PANEL 3"},
		{"probe", head + "#if PANEL\n#define BLTOUCH\n#endif\n#define NOZZLE_TO_PROBE_OFFSET { 0, 0, -1 }\n",
			parser.ProbeTrigger, "PANEL 3"},
		{"missing everywhere", head, parser.MaxTemp, " 0"},
	} {
		c, err := readOutside(t, test.text)
		if err != nil {
			t.Fatal(err)
		}
		cause := c.printer.Causes[test.key]
		line, _ := cause.Condition.Position()
		if got := cause.Name + " " + string(rune('0'+line)); got != test.want {
			t.Errorf("%s: %q, want %q", test.name, got, test.want)
		}
	}
}
