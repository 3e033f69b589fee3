package worklist_test

import (
	"path/filepath"
	"strings"
	"testing"

	"preflash/cmd/internal/testfiles"
)

// What was printed once: an offset that was taken without the paper, gains for
// an included file, a length at the limit.
func TestConsolesRefuse(t *testing.T) {
	dir := t.TempDir()
	testfiles.Write(t, dir, map[string]string{"printer.cfg": `[include hot.cfg]
[stepper_z]
endstop_pin: probe:z_virtual_endstop
position_min: -2
[probe]
z_offset: 2
`, "hot.cfg": `[extruder]
control: pid
min_temp: 0
max_temp: 250
step_pin: PB1
[extruder1]
max_temp: 250
[gcode_macro T1]
gcode: DOCK
`, "Configuration.h": `#define CONFIGURATION_H_VERSION 02010300
#define EXTRUDERS 1
#define TEMP_SENSOR_0 1
#define HEATER_0_MAXTEMP 275
#define TEMP_SENSOR_BED 1
#define BED_MAXTEMP 120
#define PIDTEMP
#define EEPROM_SETTINGS
#define PREVENT_COLD_EXTRUSION
#define EXTRUDE_MINTEMP 170
#define THERMAL_PROTECTION_HOTENDS
#define WATCH_TEMP_PERIOD 40
#define WATCH_TEMP_INCREASE 2
#define Z_HOME_DIR -1
#define X_BED_SIZE 200
#define Y_BED_SIZE 200
`})
	flat := []string{"G28", "G90", "G1 Z10 F600", "G1 X0 Y0 F3000"}
	const heat = "SET_HEATER_TEMPERATURE HEATER=extruder TARGET="
	for _, c := range []struct {
		style string
		steps []string // "(…)" is done by hand
		why   string
	}{
		{"sections", append(flat, "PROBE_CALIBRATE", "TESTZ Z=-0.1", "ACCEPT"), "mm above the paper"},
		{"sections", []string{"PROBE_CALIBRATE"}, "not homed"},
		{"sections", append(flat, "Z_ENDSTOP_CALIBRATE"), "unknown command"},
		{"sections", []string{"PID_CALIBRATE HEATER=extruder TARGET=220", "SAVE_CONFIG"}, "hot.cfg"},
		{"sections", []string{"(on the bed)", heat + "50"}, "stand on the bed"},
		{"defines", []string{"(on the bed)", "M104 S50"}, "stand on the bed"},
		{"sections", []string{heat + "200", "TURN_OFF_HEATERS", "G28", "G90", "G1 Z10 F600", "G1 X0 Y0 F3000",
			"PROBE_CALIBRATE"}, "are cold"},
		{"sections", []string{"G28", "G90", "G1 Z10 F600", "PROBE_CALIBRATE"}, "over the bed"},
		{"sections", []string{heat + "200", "TEMPERATURE_WAIT SENSOR=extruder MINIMUM=50", "M83",
			"G1 E45 F100"}, "too cold"},
		{"sections", []string{"SET_HEATER_TEMPERATURE HEATER=extruder1 TARGET=200"}, "another hotend"},
		{"sections", []string{"(Power off. Unplug the heater)", "FIRMWARE_RESTART", heat + "25"}, "no watch"},
		{"sections", []string{"(Power off, unplug the sensor)", "FIRMWARE_RESTART", "G28"}, "the sensor"},
		{"sections", []string{"(Power off. Unplug the heater)", "FIRMWARE_RESTART", "G28"}, "unplugged"},
		{"sections", []string{"G28", "(Let it cool to the room)", "G1 Z10"}, "not homed"},
		{"sections", []string{"SET_GCODE_OFFSET Z=<the height>"}, "nobody knows"},
		{"sections", []string{"G28", "G1 Z<the height>"}, "out of range"},
		{"sections", append(flat, "SET_GCODE_OFFSET Z=0.5", "MANUAL_PROBE"), "offset is in force"},
		{"sections", []string{heat + "200", "TEMPERATURE_WAIT SENSOR=extruder MINIMUM=195", "(At 0.8 mm/s.)",
			"M83", "G1 E45 F300"}, "not 0.8 mm/s"},
		{"sections", []string{"ACTIVATE_EXTRUDER EXTRUDER=extruder1"}, "wherever tool 1 stands"},
		{"defines", []string{"M301 E0 P<kd> I<ki> D<kp>"}, "not for"},
		{"defines", []string{"M140 S111"}, "above 110"},
		{"defines", []string{"(Build it, and flash.)"}, "nobody copied"},
		{"defines", []string{"M503", "(Build it, and flash.)", "M104 S50"}, "still in force"},
		{"defines", append(flat, "G1 Z8 E3 F100"), "as it pushes"},
		{"sections", []string{"PID_CALIBRATE HEATER=extruder TARGET=220", "RESTART"}, "forgets"},
		{"sections", []string{"PID_CALIBRATE HEATER=extruder TARGET=220", "(Power off.)"}, "forgets"},
		{"sections", []string{"PID_CALIBRATE HEATER=extruder TARGET=250"}, "close to max_temp"},
		{"sections", []string{"SAVE_CONFIG"}, "nothing to save"},
		{"sections", []string{heat + "251"}, "max_temp"},
		{"sections", []string{"SET_HEATER_TEMPERATURE HEATER=Extruder TARGET=200"}, "no heater"},
		{"sections", []string{heat + "200", "TEMPERATURE_WAIT SENSOR=extruder MINIMUM=195", "M83",
			"G1 E50 F100"}, "too long"},
		{"sections", []string{heat + "200", "M83", "G1 E45 F100"}, "too cold"},
		{"sections", []string{"M83", "G1 E45 F100"}, "too cold"},
		{"sections", []string{"T2"}, "unknown command"},
		{"sections", []string{"G28", heat + "200"}, "heats up"},
		{"sections", append(flat, heat+"200", "PROBE_CALIBRATE"), "heater on"},
		{"sections", []string{"(Power off. Unplug the heater)", heat + "100"}, "stopped by"},
		{"sections", []string{"(Power off. Unplug the heater)", "FIRMWARE_RESTART", heat + "100", "RESTART",
			heat + "0"}, "stopped by"},
		{"sections", append(flat, "PROBE_CALIBRATE", "TESTZ Z=-7", "ACCEPT", "SAVE_CONFIG", "G28"),
			"drawn over the bed"},
		{"sections", []string{"G28", "G90", "G1 Z-0.3 F60"}, "strikes"},
		{"sections", []string{heat + "200", "(end)"}, "left on"},
		{"defines", []string{"M303 E0 S220 C8", "M500"}, "tuned gains are not in force"},
		{"defines", []string{"M303 E0 S220 C8", "(Power off.)"}, "forgets"},
		{"defines", []string{"M303 E0 S220 C2"}, "at least 3"},
		{"defines", []string{"M303 E1 S220 C8"}, "no hotend 1"},
		{"defines", []string{"M104 T0 S261"}, "above 260"},
		{"defines", []string{"M502"}, "nobody copied"},
		{"defines", []string{"M503", "M502", "(Power off.)"}, "forgets"},
		{"defines", []string{"M851 Z0"}, "no probe"},
		{"defines", []string{"G28", "G91", "G1 Z-20 F60"}, "limit"},
		{"defines", append(flat, "M211 S0", "G91", "(end)"), "limits are left off"},
		{"defines", []string{"M306 E0 T"}, "no model"},
		{"defines", []string{"M104 S200", "M83", "G1 E45 F100"}, "too cold"},
		{"defines", []string{"M109 S200", "G1 E45 F100"}, "not relative"},
		{"defines", []string{"(Power off. Unplug the heater)", "M104 S100", "M104 S0"}, "stopped by"},
	} {
		var con console
		if c.style == "sections" {
			con = newSectionsConsole(t, filepath.Join(dir, "printer.cfg"), 0, 0)
		} else {
			con = newDefinesConsole(t, []string{filepath.Join(dir, "Configuration.h")}, 0, 0)
		}
		if c.steps[0] != "(on the bed)" {
			con.lift()
		}
		var err error
		for _, s := range c.steps {
			if hand, ok := strings.CutPrefix(s, "("); ok && hand == "end)" {
				err = con.end()
			} else if ok {
				err = con.by(hand)
			} else {
				err = con.enter(s)
			}
			if err != nil {
				break
			}
		}
		if err == nil || !strings.Contains(err.Error(), c.why) {
			t.Errorf("%s %q: %v, want %q", c.style, c.steps, err, c.why)
		}
	}
}
