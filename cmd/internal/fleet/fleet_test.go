package fleet

import (
	"os"
	"slices"
	"strings"
	"testing"
	"time"

	"preflash/cmd/internal/testfiles"
)

var today = time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC)

// texts are what stands in a folder, by the names of the files.
type texts = map[string]string

// write makes a folder of files, in a repository of its own, and works in it.
func write(t testing.TB, files texts) {
	t.Helper()
	dir := t.TempDir()
	t.Chdir(dir)
	testfiles.Write(t, ".", files)
}

// check checks all that lies in some folders, or in the working directory.
func check(o Options, paths ...string) *Result {
	if paths == nil {
		paths = []string{"."}
	}
	f := Load(paths, o, nil)
	defer f.Close()
	return f.Check()
}

// survey surveys all that lies in the working directory.
func survey() *Survey {
	f := Load([]string{"."}, Options{Today: today, Keep: true}, nil)
	defer f.Close()
	return f.Survey()
}

// sheetFor is a sheet that names these files.
func sheetFor(config ...string) string {
	return strings.NewReplacer("printer.cfg", strings.Join(config, `", "`),
		"[new]", "ambient_c = 22\n[new]").Replace(testfiles.Sheet)
}

// base is a small but whole configuration of C header defines, without the
// line that a test is about.
const base = `#define EXTRUDERS 1
#define TEMP_SENSOR_0 61
#define TEMP_SENSOR_BED 1
#define HEATER_0_MINTEMP 5
#define HEATER_0_MAXTEMP 275
#define HOTEND_OVERSHOOT 15
#define PIDTEMP
#define DEFAULT_Kp 21.7
#define DEFAULT_Ki 1.4
#define DEFAULT_Kd 84
#define THERMAL_PROTECTION_BED
#define TEMP_HYSTERESIS 3
#define TEMP_BED_HYSTERESIS 3
#define PREVENT_COLD_EXTRUSION
#define EXTRUDE_MINTEMP 170
#define E0_AUTO_FAN_PIN 7
#define EXTRUDER_AUTO_FAN_TEMPERATURE 50
`

const watch = `#define THERMAL_PROTECTION_PERIOD 40
#define THERMAL_PROTECTION_HYSTERESIS 4
#define WATCH_TEMP_PERIOD 20
#define WATCH_TEMP_INCREASE 2
#define THERMAL_PROTECTION_BED_PERIOD 20
#define THERMAL_PROTECTION_BED_HYSTERESIS 2
#define WATCH_BED_TEMP_PERIOD 60
#define WATCH_BED_TEMP_INCREASE 2
`

// guard switches the hotend's protection on, and good is then whole and healthy.
const (
	guard = "#define THERMAL_PROTECTION_HOTENDS\n"
	good  = base + watch + guard
)

// findingsHere returns the findings of the only printer in the working directory.
func findingsHere(t *testing.T) []Finding {
	t.Helper()
	r := check(Options{Today: today})
	if len(r.Printers) != 1 || r.Printers[0].Problem != nil {
		t.Fatalf("the printer cannot be read: %+v", r.Printers)
	}
	return r.Printers[0].Findings
}

func speaks(findings []Finding, rule string) bool {
	return slices.ContainsFunc(findings, func(f Finding) bool { return f.Rule == rule })
}

// Every way to switch the protection off must be found, and none of the ways
// to have it on by an odd route may be mistaken for one.
func TestRunawayOffSpellings(t *testing.T) {
	tests := []struct {
		name        string
		first       string // goes into the first file
		second      string // the second file
		off         bool
		extra, text string // a third file, for includes
	}{
		{name: "not defined", off: true},
		{name: "commented out", first: "//#define THERMAL_PROTECTION_HOTENDS\n", off: true},
		{name: "zero", first: "#define THERMAL_PROTECTION_HOTENDS 0\n", off: true},
		{name: "false", first: "#define THERMAL_PROTECTION_HOTENDS false\n", off: true},
		{name: "undef later", first: guard, second: "#undef THERMAL_PROTECTION_HOTENDS\n", off: true},
		{name: "redefined in the second file", first: guard,
			second: "#define THERMAL_PROTECTION_HOTENDS 0\n", off: true},
		{name: "under #if 0", first: "#if 0\n#define THERMAL_PROTECTION_HOTENDS\n#endif\n", off: true},
		{name: "in a block comment", first: "/*\n#define THERMAL_PROTECTION_HOTENDS\n*/\n", off: true},
		{name: "behind a line comment that goes on",
			first: "// off for now \\\n#define THERMAL_PROTECTION_HOTENDS\n", off: true},
		{name: "zero rise window", first: guard,
			second: "#undef WATCH_TEMP_PERIOD\n#define WATCH_TEMP_PERIOD 0\n", off: true},
		{name: "zero required rise", first: guard,
			second: "#undef WATCH_TEMP_INCREASE\n#define WATCH_TEMP_INCREASE 0\n", off: true},
		{name: "under a condition that is false",
			first: "#ifdef HAS_NOT\n#define THERMAL_PROTECTION_HOTENDS\n#endif\n//#define HAS_NOT\n",
			off:   true},

		{name: "defined empty", first: guard},
		{name: "one", first: "#define THERMAL_PROTECTION_HOTENDS 1\n"},
		{name: "true", first: "#define THERMAL_PROTECTION_HOTENDS true\n"},
		{name: "in an #else", first: "#if 0\n#else\n#define THERMAL_PROTECTION_HOTENDS\n#endif\n"},
		{name: "in the second file", second: guard},
		{name: "through an include", first: "#include \"safety.h\"\n", extra: "safety.h", text: guard},
		{name: "spliced", first: "#define \\\n THERMAL_PROTECTION_HOTENDS\n"},
		{name: "undef, then defined again",
			first:  "#define THERMAL_PROTECTION_HOTENDS 0\n#undef THERMAL_PROTECTION_HOTENDS\n",
			second: guard},
		{name: "after a comment on the line",
			first: "/* on */ #define THERMAL_PROTECTION_HOTENDS /* really */\n"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			files := texts{
				"swap.toml":       sheetFor("Configuration.h", "Configuration_adv.h"),
				"Configuration.h": base + tt.first, "Configuration_adv.h": watch + tt.second,
			}
			if tt.extra != "" {
				files[tt.extra] = tt.text
			}
			write(t, files)
			findings := findingsHere(t)
			if got := speaks(findings, "runaway-off"); got != tt.off {
				t.Errorf("runaway-off found: %v, want %v", got, tt.off)
			}
			if speaks(findings, "runaway-off-bed") {
				t.Error("runaway-off-bed speaks, but the bed's protection is on")
			}
		})
	}
}

// What holds for a hotend and not for a printer is told on the first printer
// that has it, and how many more do.
func TestToldOnceForOneHotend(t *testing.T) {
	t.Chdir(t.TempDir())
	writeFleet(t, 3, 0, 4000, 4000)
	text, err := os.ReadFile("printer-0003/swap.toml")
	if err != nil {
		t.Fatal(err)
	}
	other := strings.Replace(string(text), "loss_w_per_k = 0.068", "loss_w_per_k = 0.06", 1)
	testfiles.Write(t, ".", texts{"printer-0003/swap.toml": other})
	r := check(Options{Today: today})
	if len(r.Printers) != 3 {
		t.Fatalf("%d printers", len(r.Printers))
	}
	for i, told := range []bool{true, false, true} {
		p := &r.Printers[i]
		j := slices.IndexFunc(p.Findings, func(f Finding) bool { return f.Rule == "heater-stuck-on" })
		if (j >= 0) != told {
			t.Errorf("%s: told is %v", p.Name, !told)
		}
		if j >= 0 && strings.Contains(p.Findings[j].Aside, "told once for 2 printers") != (i == 0) {
			t.Errorf("%s: %s", p.Name, p.Findings[j].Message)
		}
	}
}
