package defines

import (
	"fmt"
	"strings"
	"testing"

	"preflash/parser"
)

// judgedIn says what a condition in the second file comes to, after a first
// file with these options.
func judgedIn(t *testing.T, version, first, condition string) string {
	t.Helper()
	const probe = "#define PROBED"
	c := readText(t, 0,
		"a.h", "#define CONFIGURATION_H_VERSION "+version+"\n"+first,
		"b.h", "#define CONFIGURATION_ADV_H_VERSION "+version+"\n#if "+condition+"\n"+probe+"\n#endif\n")
	for _, r := range c.s.remarks {
		if r.Kind == parser.RemarkBroken {
			return "broken"
		}
	}
	return c.s.macro("PROBED").state.String()
}

const (
	olderText = "02000901"
	newerText = "02010300"
	olderLine = "#define CONFIGURATION_H_VERSION " + olderText + "\n"
	newerLine = "#define CONFIGURATION_H_VERSION " + newerText + "\n"
	plain     = "#define EXTRUDERS 1\n#define TEMP_SENSOR_0 1\n"
)

// The expectations are those of facts that the style's firmware publishes, by
// generation: older, newer, and both where the files are for neither.
func TestDerivedNames(t *testing.T) {
	drivers := func(kv string) string {
		text := plain
		for _, pair := range strings.Fields(kv) {
			axis, driver, _ := strings.Cut(pair, "=")
			text += "#define " + axis + "_DRIVER_TYPE " + driver + "\n"
		}
		return text
	}
	for _, test := range []struct {
		first, condition   string
		older, newer, both string
	}{
		{plain, "HAS_HOTEND", "yes", "yes", "yes"},
		{plain, "ALL(HAS_HOTEND, HAS_EXTRUDERS)", "yes", "yes", "yes"},
		{plain, "defined(HAS_HOTEND) && ENABLED(HAS_HOTEND) && HOTENDS == 1", "yes", "yes", "yes"},
		{"#define EXTRUDERS 1\n#define TEMP_SENSOR_0 0\n", "HAS_HOTEND", "yes", "no", "unknown"},
		{"#define EXTRUDERS 0\n#define TEMP_SENSOR_0 1\n", "HAS_HOTEND", "no", "no", "no"},
		{"#define EXTRUDERS 0\n#define TEMP_SENSOR_0 1\n", "TEMP_SENSOR_0", "yes", "no", "unknown"},
		{"//#define EXTRUDERS 1\n#define TEMP_SENSOR_0 1\n", "HAS_HOTEND || HAS_EXTRUDERS", "no", "no", "no"},
		{"#define TEMP_SENSOR_0 1\n", "HAS_HOTEND", "unknown", "unknown", "unknown"},
		{"#define EXTRUDERS 1\n", "HAS_HOTEND", "yes", "unknown", "unknown"},
		{"#define EXTRUDERS 2\n#define TEMP_SENSOR_0 1\n",
			"HOTENDS == 2 && HAS_MULTI_HOTEND && HAS_MULTI_EXTRUDER && HAS_HOTEND_OFFSET",
			"yes", "yes", "yes"},
		{"#define EXTRUDERS 2\n#define TEMP_SENSOR_0 1\n#define SINGLENOZZLE\n",
			"HOTENDS == 1 && E_STEPPERS == 2 && !HAS_MULTI_HOTEND", "yes", "yes", "yes"},
		{"#define EXTRUDERS 5\n#define TEMP_SENSOR_0 1\n#define SWITCHING_EXTRUDER\n",
			"E_STEPPERS == 3 && HOTENDS == 3", "yes", "yes", "yes"},
		{"#define EXTRUDERS 2\n#define TEMP_SENSOR_0 1\n#define MIXING_EXTRUDER\n#define MIXING_STEPPERS 4\n",
			"E_STEPPERS == 4 && HOTENDS == 1", "yes", "yes", "yes"},
		{plain, "HAS_E_TEMP_SENSOR", "no", "yes", "yes"},
		{"#define EXTRUDERS 2\n#define TEMP_SENSOR_0 0\n#define TEMP_SENSOR_1 1\n", "HAS_E_TEMP_SENSOR",
			"no", "yes", "yes"},
		{"#define EXTRUDERS 1\n#define TEMP_SENSOR_0 0\n#define TEMP_SENSOR_1 1\n", "HAS_E_TEMP_SENSOR",
			"no", "no", "no"},
		{"#define EXTRUDERS 1\n#define TEMP_SENSOR_0 -5\n#define TEMP_SENSOR_BED -1\n",
			"TEMP_SENSOR_IS_MAX_TC(0) && !TEMP_SENSOR_IS_MAX_TC(BED)", "unknown", "yes", "yes"},
		{plain, "TEMP_SENSOR_IS_MAX_TC(0)", "unknown", "no", "no"},
		{plain + "#define BLTOUCH\n", "HAS_Z_SERVO_PROBE && HAS_BED_PROBE && PROBE_SELECTED",
			"yes", "yes", "yes"},
		{plain + "#define Z_PROBE_SERVO_NR 0\n", "HAS_BED_PROBE", "yes", "yes", "yes"},
		{plain + "#define BD_SENSOR\n", "HAS_BED_PROBE", "no", "yes", "unknown"},
		{plain + "#define PROBE_MANUALLY\n#define AUTO_BED_LEVELING_BILINEAR\n",
			"!HAS_BED_PROBE && PROBE_SELECTED", "yes", "yes", "yes"},
		{plain + "#define PROBE_MANUALLY\n", "PROBE_SELECTED || ENABLED(PROBE_MANUALLY)", "no", "no", "no"},
		{plain + "#define AUTO_BED_LEVELING_UBL\n", "NEEDS_THREE_PROBE_POINTS", "yes", "yes", "yes"},
		{plain + "#define DELTA\n", "IS_KINEMATIC", "yes", "yes", "yes"},
		{plain + "#define POLAR\n", "IS_KINEMATIC", "no", "yes", "unknown"},
		{plain + "#define SDSUPPORT\n", "HAS_MEDIA", "no", "yes", "unknown"},
		{plain + "#define SERIAL_PORT_2 -2\n", "HAS_ETHERNET", "yes", "yes", "yes"},
		{drivers("X=TMC2209"), "AXIS_IS_TMC_CONFIG(X) && HAS_TRINAMIC_CONFIG && HAS_STEALTHCHOP",
			"unknown", "yes", "yes"},
		{drivers("X=TMC2209_STANDALONE E0=A4988"), "HAS_TRINAMIC_CONFIG || HAS_STEALTHCHOP || HAS_TMC26X",
			"no", "no", "no"},
		{drivers("X=TMC2660"), "HAS_TRINAMIC_CONFIG && !HAS_STEALTHCHOP", "yes", "yes", "yes"},
		{drivers("X=TMC26X"), "HAS_TMC26X && !HAS_TRINAMIC_CONFIG", "yes", "yes", "yes"},
		{drivers("X=TMC26X"), "AXIS_IS_TMC_CONFIG(X)", "unknown", "yes", "yes"},
		{drivers("E1=TMC2209"), "AXIS_IS_TMC_CONFIG(E1) || HAS_TRINAMIC_CONFIG", "unknown", "no", "no"},
		{drivers("Z2=TMC2209"), "AXIS_IS_TMC_CONFIG(Z2) && NUM_Z_STEPPERS == 2", "no", "yes", "unknown"},
		{drivers("Z2=TMC2209") + "#define NUM_Z_STEPPER_DRIVERS 2\n",
			"HAS_TRINAMIC_CONFIG && AXIS_IS_TMC(Z2)", "yes", "unknown", "yes"},
		{drivers("X2=TMC5160"), "HAS_X2_STEPPER && AXIS_IS_TMC_CONFIG(X2)", "no", "yes", "unknown"},
		{plain, "HAS_OWN_MMU2 || HAS_OWN_MMU1 || HAS_OWN_MMU2S || HAS_OWN_MMU3", "no", "no", "no"},
		{plain + "#define MMU_MODEL 12\n", "HAS_OWN_MMU2", "unknown", "unknown", "unknown"},
		{plain + "#define MMU_MODEL 12\n", "HOTENDS == 1 && defined(SINGLENOZZLE)", "yes", "yes", "yes"},
		{plain + "#define DGUS_LCD_UI RELOADED\n", "DGUS_UI_IS(ORIGIN, RELOADED)", "yes", "yes", "yes"},
		{plain, "DGUS_UI_IS(ORIGIN)", "no", "no", "no"},
		{plain + "#define TEMP_SENSOR_BED 1\n", "HAS_HEATED_BED", "unknown", "no", "unknown"}, // made later
		{plain, "HAS_DISPLAY", "unknown", "unknown", "unknown"},
		{plain, "PIN_EXISTS(FAN1)", "unknown", "unknown", "unknown"},
		// A file's own define wins where it stands.
		{plain + "#define HAS_E_TEMP_SENSOR 0\n", "HAS_E_TEMP_SENSOR", "no", "no", "no"},
		{plain + "#define HAS_HOTEND 0\n", "HAS_HOTEND", "yes", "yes", "yes"}, // derived after it
		// A circle cannot be told.
		{"#define EXTRUDERS 1\n#define TEMP_SENSOR_0 HAS_E_TEMP_SENSOR\n", "HAS_E_TEMP_SENSOR",
			"no", "unknown", "unknown"},
	} {
		for i, version := range []string{olderText, newerText, "02010202"} {
			want := []string{test.older, test.newer, test.both}[i]
			if got := judgedIn(t, version, test.first, test.condition); got != want {
				t.Errorf("%s after %q: %q is %s, want %s", version, test.first, test.condition, got, want)
			}
		}
	}
}

// What is derived after a file reads as not defined inside it.
func TestMomentOfDerivation(t *testing.T) {
	inFirst := plain + `#if HAS_HOTEND || HOTENDS || HAS_BED_PROBE
#define EARLY
#endif
#if HAS_E_TEMP_SENSOR
#define LAZY
#endif
`
	const versionLine = "#define CONFIGURATION_ADV_H_VERSION 02010300\n"
	inSecond := versionLine +
		"#if HAS_HOTEND\n#define LATE\n#endif\n#if HAS_HEATED_BED\n#define LAST\n#endif\n"
	for name, files := range map[string][]string{
		"two files": {"a.h", inFirst, "b.h", inSecond},
		"a file between": {
			"a.h", inFirst,
			"c.h", "#if HAS_HOTEND\n#define EARLY\n#endif\n",
			"b.h", inSecond,
		},
		"included": {
			"m.h", "#include \"a.h\"\n#if HOTENDS\n#define EARLY\n#endif\n#include \"b.h\"\n",
			"x/a.h", "",
			"a.h", inFirst,
			"b.h", "#pragma once\n" + inSecond,
		},
		"second without option": {
			"a.h", "#define TEMP_TUNING_MAINTAIN_FAN\n" + inFirst,
			"b.h", strings.TrimPrefix(inSecond, versionLine),
		},
	} {
		tree := openTree(t, t.TempDir())
		contents, request := make(map[string][]byte), parser.Request{}
		for i := 0; i < len(files); i += 2 {
			contents[tree.Shown(files[i])] = []byte(files[i+1])
			if name != "included" || i == 0 {
				request.Files = append(request.Files, files[i])
			}
		}
		c, err := readConfig(tree.With(contents), request)
		if err != nil {
			t.Fatal(err)
		}
		for macro, want := range map[string]parser.Tri{
			"EARLY": parser.No, "LAZY": parser.Yes, "LATE": parser.Yes, "LAST": parser.No,
		} {
			if got := c.s.macro(macro).state; got != want {
				t.Errorf("%s: %s is %s, want %s", name, macro, got, want)
			}
		}
	}
}

// What the firmware takes out itself is out at the end, and stays in while it
// is not sure that what it belongs to is missing.
func TestTakenOut(t *testing.T) {
	const second = hotends +
		"#define WATCH_TEMP_PERIOD 20\n#define PREVENT_COLD_EXTRUSION\n#define THERMAL_PROTECTION_BED\n" +
		"#define HEATER_1_MAXTEMP 275\n#define LIN_ADVANCE\n"
	for _, test := range []struct {
		version, first string
		in, out        string
	}{
		{newerText, plain + "#define TEMP_SENSOR_BED 1\n",
			"THERMAL_PROTECTION_HOTENDS WATCH_TEMP_PERIOD THERMAL_PROTECTION_BED LIN_ADVANCE",
			"HEATER_1_MAXTEMP"},
		{olderText, plain + "#define TEMP_SENSOR_BED 1\n",
			"THERMAL_PROTECTION_HOTENDS THERMAL_PROTECTION_BED HEATER_1_MAXTEMP", ""},
		{newerText, plain + "#define TEMP_SENSOR_BED 0\n",
			"THERMAL_PROTECTION_HOTENDS", "THERMAL_PROTECTION_BED"},
		{newerText, "#define EXTRUDERS 0\n#define TEMP_SENSOR_0 1\n", "",
			"TEMP_SENSOR_0 THERMAL_PROTECTION_HOTENDS WATCH_TEMP_PERIOD PREVENT_COLD_EXTRUSION LIN_ADVANCE"},
		{olderText, "#define EXTRUDERS 0\n#define TEMP_SENSOR_0 1\n", "",
			"TEMP_SENSOR_0 THERMAL_PROTECTION_HOTENDS WATCH_TEMP_PERIOD PREVENT_COLD_EXTRUSION"},
		{newerText, "#define EXTRUDERS 1\n#define TEMP_SENSOR_0 0\n",
			"LIN_ADVANCE", "THERMAL_PROTECTION_HOTENDS"},
		{olderText, "#define EXTRUDERS 1\n#define TEMP_SENSOR_0 0\n", "THERMAL_PROTECTION_HOTENDS", ""},
		{"02010202", "#define EXTRUDERS 1\n#define TEMP_SENSOR_0 0\n", "THERMAL_PROTECTION_HOTENDS", ""},
		{newerText, "#define EXTRUDERS 1\n#if BOARD\n#define TEMP_SENSOR_0 1\n#endif\n",
			"THERMAL_PROTECTION_HOTENDS", ""},
	} {
		first := "#define CONFIGURATION_H_VERSION " + test.version + "\n" + test.first
		c := readText(t, 0, "a.h", first, "b.h", second)
		for _, name := range strings.Fields(test.in) {
			if m := c.s.macro(name); m.state != parser.Yes {
				t.Errorf("%s after %q: %s is %s", test.version, test.first, name, m.state)
			}
		}
		for _, name := range strings.Fields(test.out) {
			if m := c.s.macro(name); m.state != parser.No || !m.removed || !m.undef.IsZero() {
				t.Errorf("%s after %q: %s is %s, want it taken out: %+v",
					test.version, test.first, name, m.state, m)
			}
		}
		for _, e := range c.Entries() {
			if e.At.File.Path == "" {
				t.Errorf("%s is listed, and stands in no file", e.Name)
			}
		}
	}
}

// The reason names what the files do not settle, never a header of ours.
func TestWhyDerived(t *testing.T) {
	for _, test := range []struct{ version, first, condition, want string }{
		{newerText, "#define EXTRUDERS 1\n#define TEMP_SENSOR_0 BOARD_SENSOR\n", "HAS_HOTEND",
			"HAS_HOTEND is derived by the firmware: BOARD_SENSOR is set outside these files"},
		{"02010202", "#define EXTRUDERS 1\n#define TEMP_SENSOR_0 0\n", "HAS_HOTEND",
			"HAS_HOTEND is derived by the firmware: that differs from one firmware to the other"},
		{newerText, "#define EXTRUDERS 1\n#define TEMP_SENSOR_0 BOARD_SENSOR\n",
			"HAS_E_TEMP_SENSOR", "BOARD_SENSOR is set outside these files"},
	} {
		first := "#define CONFIGURATION_H_VERSION " + test.version + "\n" + test.first
		c := readText(t, 0, "a.h", first, "b.h", "#if "+test.condition+"\n#define PROBED\n#endif\n")
		want := fmt.Sprintf("it depends on %q (", "#if "+test.condition)
		if why := c.s.macro("PROBED").why; !strings.HasPrefix(why, want) ||
			!strings.Contains(why, test.want) || strings.Contains(why, own) {
			t.Errorf("%s: %s, want …%s", test.condition, why, test.want)
		}
	}
}

// A fan on the output of a hotend that is not there never runs, and is told.
func TestFanOfMissingHotend(t *testing.T) {
	for value, want := range map[string]int{"PC7": 1, "8": 1, "-1": 0} {
		second := "#define E0_AUTO_FAN_PIN -1\n#define E1_AUTO_FAN_PIN " + value + "\n"
		c := readText(t, 0, "a.h", newerLine+plain, "b.h", second)
		if got := c.printer.ColdSide.Elsewhere; len(got) != want || want > 0 && got[0].Written != value {
			t.Errorf("%s: %v", value, got)
		}
	}
}

// Where several extruders feed one hotend, a tool has that hotend's options.
func TestHotendOfTool(t *testing.T) {
	for _, test := range []struct {
		options string
		tool    int
		want    string
	}{
		{"#define EXTRUDERS 2\n", 1, "TEMP_SENSOR_1"},
		{"#define EXTRUDERS 4\n#define SINGLENOZZLE\n", 3, "TEMP_SENSOR_0"},
		{"#define EXTRUDERS 4\n#define MMU_MODEL 2\n", 3, "TEMP_SENSOR_0"},
		{"#define EXTRUDERS 4\n#define MIXING_EXTRUDER\n#define MIXING_STEPPERS 4\n", 1, "TEMP_SENSOR_0"},
		{"#define EXTRUDERS 4\n#define SWITCHING_EXTRUDER\n", 3, "TEMP_SENSOR_1"},
		{"#define EXTRUDERS 2\n#define SWITCHING_EXTRUDER\n", 1, "TEMP_SENSOR_0"},
		{"#define EXTRUDERS 4\n#define MECHANICAL_SWITCHING_EXTRUDER\n", 2, "TEMP_SENSOR_1"},
		{"#define EXTRUDERS 2\n#define SWITCHING_EXTRUDER\n#define SWITCHING_NOZZLE\n", 1, "TEMP_SENSOR_1"},
		// Whether there is one nozzle cannot be told.
		{"#define EXTRUDERS 2\n#if BOARD\n#define SINGLENOZZLE\n#endif\n", 1, "TEMP_SENSOR_1"},
	} {
		text := newerLine + "#define TEMP_SENSOR_0 1\n" + test.options
		if got := readText(t, test.tool, "h", text).printer.Hotend.Sensor.Name; got != test.want {
			t.Errorf("%q, tool %d: %s, want %s", test.options, test.tool, got, test.want)
		}
	}
}

// The firmware's own names come in before the second file, wherever the second
// version option is said to stand, and once.
func TestNamesBetweenTheFiles(t *testing.T) {
	const first = newerLine + "#define EXTRUDERS 1\n#define TEMP_SENSOR_0 1\n"
	const version = "#define CONFIGURATION_ADV_H_VERSION 02010300\n"
	const second = "#if HAS_HOTEND\n#define X\n#endif\n"
	for _, c := range []struct{ a, b string }{
		{first, version + second}, {first, second}, {first + version, second},
		{first + "//" + version, second}, {first + version, version + second},
	} {
		if readText(t, 0, "a.h", c.a, "b.h", c.b).s.macro("X").state != parser.Yes {
			t.Errorf("%q, %q: the second file does not see the hotend", c.a, c.b)
		}
	}
}

// What the firmware cannot count with is said of the option, once, and not of a
// line that nobody has.
func TestOptionThatIsNoNumber(t *testing.T) {
	p := readText(t, 0, "h", newerLine+"#define EXTRUDERS\n#define TEMP_SENSOR_0 1\n").Printer()
	var said []string
	for _, r := range p.Remarks {
		if r.Kind == parser.RemarkBroken {
			said = append(said, r.At.String()+" "+r.Text)
		}
	}
	if len(said) != 1 || !strings.Contains(said[0], "h:2 ") || !strings.Contains(said[0], "EXTRUDERS is “”") {
		t.Errorf("said %q", said)
	}
}
