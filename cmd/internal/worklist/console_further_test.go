package worklist_test

import (
	"strings"
	"testing"

	"preflash/cmd/internal/worklist"
)

// The same for forms that no file in testdata has.
func TestStepsRunFurther(t *testing.T) {
	usual := [2]float64{190, 240}
	const levels = "#define PIDTEMP\n#define FIX_MOUNTED_PROBE\n" +
		"#define NOZZLE_TO_PROBE_OFFSET { 10, 10, -2 }\n"
	for _, c := range []struct {
		name, more string
		finds      string // z_reference in the sheet
		printC     [2]float64
		least      int // commands
	}{
		{"a probe that only levels", levels +
			"//#define USE_PROBE_FOR_Z_HOMING\n//#define Z_MIN_PROBE_USES_Z_MIN_ENDSTOP_PIN\n",
			"probe", usual, 20},
		{"a probe that homes", levels + "#define USE_PROBE_FOR_Z_HOMING\n", "probe", usual, 20},
		{"a nozzle that probes", "#define PIDTEMP\n#define NOZZLE_AS_PROBE\n" +
			"#define USE_PROBE_FOR_Z_HOMING\n", "nozzle", usual, 20},
		{"towers", "#define PIDTEMP\n#define DELTA\n#undef Z_HOME_DIR\n#define Z_HOME_DIR 1\n" +
			"#define DELTA_HEIGHT 250\n", "endstop", usual, 20},
		{"a switch that is moved", "#define PIDTEMP\n#define NO_HOME_OFFSETS\n", "endstop", usual, 20},
		{"two hotends far apart in height", levels + "#define USE_PROBE_FOR_Z_HOMING\n#undef EXTRUDERS\n" +
			"#define EXTRUDERS 2\n#define TEMP_SENSOR_1 61\n#define HOTEND_OFFSET_Z { 0.0, -0.6 }\n",
			"probe", usual, 20},
		{"a switch", "#define PIDTEMP\n#define MANUAL_Z_HOME_POS 0.8\n", "endstop", usual, 20},
		{"no store", levels + "#define USE_PROBE_FOR_Z_HOMING\n#undef EEPROM_SETTINGS\n", "probe", usual, 20},
		{"settings that cannot be printed", levels + "#define USE_PROBE_FOR_Z_HOMING\n#define DISABLE_M503\n",
			"probe", usual, 20},
		{"a table that ends early", "#define PIDTEMP\n#undef TEMP_SENSOR_0\n#define TEMP_SENSOR_0 60\n" +
			"#undef HEATER_0_MAXTEMP\n#define HEATER_0_MAXTEMP 270\n", "endstop", usual, 20},
		{"a model", "#define MPCTEMP\n#define MPC_HEATER_POWER { 50 }\n", "probe", usual, 20},
		{"a model and a low max temp", "#define MPCTEMP\n#define MPC_HEATER_POWER { 50 }\n" +
			"#undef HEATER_0_MAXTEMP\n#define HEATER_0_MAXTEMP 210\n", "probe", [2]float64{160, 190}, 20},
		{"a max temp that the tune passes", "#define PIDTEMP\n#undef HEATER_0_MAXTEMP\n" +
			"#define HEATER_0_MAXTEMP 210\n", "probe", usual, 12},
	} {
		t.Run(c.name, func(t *testing.T) {
			const shift = 0.3
			in := definesInput(t, c.more+"#define EXTRUDE_MINTEMP 170\n#define PREVENT_COLD_EXTRUSION\n")
			in.Sheet.Printer.ZReference.Value, in.Sheet.New.PrintC.Value = c.finds, c.printC
			in.Sheet.New.Nozzle.TipShiftMM = given(shift)
			con := newDefinesConsole(t, []string{in.Printer.Files[0].Name}, shift, 0)
			con.rated = in.Sheet.New.RatedC.Value
			if n := work(t, con, worklist.New(in, worklist.Open{})); n < c.least {
				t.Errorf("the list has %d commands", n)
			}
		})
	}
}

// The same for the sections style.
func TestStepsRunFurtherSections(t *testing.T) {
	hotend, _, _ := strings.Cut(configuration, "[probe]")
	const z = "[stepper_x]\nposition_max: 200\n[stepper_y]\nposition_max: 200\n" +
		"[stepper_z]\nposition_max: 200\n"
	const virtual = z + "position_min: -3\nendstop_pin: probe:z_virtual_endstop\n"
	second := strings.NewReplacer("[extruder]", "[extruder1]", "PC8", "PA8", "PC7", "PA7",
		"heat_break", "second", "heater: extruder", "heater: extruder1").Replace(hotend)
	for _, c := range []struct {
		name, more string
		finds      string // z_reference in the sheet
		shift      float64
		least      int // commands
	}{
		{"a probe that homes", virtual + "[probe]\nz_offset: 1.8\nx_offset: 20\n", "probe", 0.3, 20},
		{"a probe that would strike", virtual + "[probe]\nz_offset: 1.8\nx_offset: 20\n", "probe", 2, 20},
		{"a tip that is shorter", virtual + "[probe]\nz_offset: 1.8\nx_offset: 20\n", "probe", -0.6, 20},
		{"a switch", z + "position_min: -3\nposition_endstop: 0.5\nendstop_pin: PC1\n", "endstop", 0.3, 20},
		{"a switch that would strike", z + "position_min: -3\nposition_endstop: 0.5\nendstop_pin: PC1\n",
			"endstop", 0.9, 20},
		{"a switch at the top", z + "position_min: -3\nposition_endstop: 198\nendstop_pin: PC1\n",
			"endstop", 0.3, 20},
		{"a switch by what the file says", z + "position_min: -3\nposition_endstop: 100\n" +
			"homing_positive_dir: true\nendstop_pin: PC1\n", "endstop", 0.3, 20},
		{"a nozzle that probes", virtual + "[smart_effector]\npin: PC14\nz_offset: -0.1\n",
			"nozzle", 0.3, 20},
		{"an eddy probe", virtual + "[probe_eddy_current near]\ndescend_z: 0.5\n", "probe", 0.3, 20},
		{"towers with a probe", "[printer]\nkinematics: delta\nminimum_z_position: -3\n[stepper_a]\n" +
			"position_endstop: 250\nendstop_pin: PC1\n[delta_calibrate]\nradius: 80\n" +
			"[probe]\nz_offset: 1.8\nx_offset: 20\n", "endstop", 0.3, 20},
		{"towers that are not measured", "[printer]\nkinematics: delta\nminimum_z_position: -3\n" +
			"[stepper_a]\nposition_endstop: 250\nendstop_pin: PC1\n", "endstop", 0.3, 20},
		{"two hotends on one carriage", virtual + "[probe]\nz_offset: 1.8\nx_offset: 20\n" + second,
			"probe", 0.3, 20},
	} {
		t.Run(c.name, func(t *testing.T) {
			in := loaded(t, map[string]string{"printer.cfg": hotend + c.more, "swap.toml": swap})
			in.Sheet.Printer.ZReference.Value = c.finds
			in.Sheet.New.Nozzle.TipShiftMM = given(c.shift)
			con := newSectionsConsole(t, in.Printer.Files[0].Name, c.shift, 0)
			con.rated = in.Sheet.New.RatedC.Value
			if n := work(t, con, worklist.New(in, worklist.Open{})); n < c.least {
				t.Errorf("the list has %d commands", n)
			}
		})
	}
}
