package worklist_test

import (
	"strings"
	"testing"

	"preflash/cmd/internal/worklist"
)

// What paper shows where no command saves it is taken off the old height, and not
// written over it.
func TestHeightByHand(t *testing.T) {
	for _, c := range []struct{ name, more, says string }{
		{"a height in the files", "#define PIDTEMP\n#define DELTA\n#undef Z_HOME_DIR\n" +
			"#define Z_HOME_DIR 1\n#define DELTA_HEIGHT 250\n",
			"write the old figure less the one that was shown, by hand: "},
		{"none", "#define PIDTEMP\n#define NO_HOME_OFFSETS\n",
			"move the switch by what was shown: up where that is above 0"},
	} {
		in := definesInput(t, c.more)
		in.Sheet.Printer.ZReference.Value = "endstop"
		if text := section(t, worklist.New(in, worklist.Open{}), "Nozzle height"); !strings.Contains(text,
			c.says) || strings.Contains(text, "over the old ones") {
			t.Errorf("%s: %s", c.name, text)
		}
	}
}

// A probe that only levels is measured against the switch that homes.
func TestLevellingProbe(t *testing.T) {
	in := definesInput(t, "#define PIDTEMP\n#define FIX_MOUNTED_PROBE\n"+
		"#define NOZZLE_TO_PROBE_OFFSET { 10, 10, -2 }\n//#define USE_PROBE_FOR_Z_HOMING\n"+
		"//#define Z_MIN_PROBE_USES_Z_MIN_ENDSTOP_PIN\n")
	text := section(t, worklist.New(in, worklist.Open{}), "Nozzle height")
	if !strings.Contains(text, "M851 Z<the Z that M114 shows, less the Z that G30 showed>") {
		t.Error(text)
	}
}

// A tool without its distance hangs lower or higher by it: it crosses the bed and
// goes down as far as that takes.
func TestDistanceOfTools(t *testing.T) {
	const second = "[extruder1]\nheater_pin: PA1\nsensor_type: Generic 3950\nmin_temp: 0\nmax_temp: 260\n" +
		"control: watermark\n" +
		"[stepper_z]\nendstop_pin: probe:z_virtual_endstop\nposition_min: -2\n[gcode_macro T1]\ngcode:\n" +
		"  SET_GCODE_OFFSET Z=-12.5\n"
	in := loaded(t, map[string]string{"printer.cfg": configuration + second, "swap.toml": swap})
	text := section(t, worklist.New(in, worklist.Open{}), "Distances between the tools")
	for _, says := range []string{"G28; G90; G1 Z23 F600; ACTIVATE_EXTRUDER EXTRUDER=extruder; " +
		"SET_GCODE_OFFSET Z=0", "G28; G90; G1 Z23 F600; T1; SET_GCODE_OFFSET Z=0", "ACCEPT; G1 Z23 F600",
		"G90; G1 Z23 F600", "ends at -2 mm", "so write -14 mm there first",
		"its height less that of tool 0. Above 0 it lifts the nozzle"} {
		if !strings.Contains(text, says) {
			t.Errorf("nothing says %q in\n%s", says, text)
		}
	}
}
