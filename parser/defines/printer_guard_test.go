package defines

import (
	"slices"
	"strings"
	"testing"

	"preflash/parser"
)

// What switches a safeguard off, or drives the hotend otherwise than its
// heater, sensor and gains say. The place is what to look at.
func TestGuards(t *testing.T) {
	const chip, amplifier = "#define TEMP_SENSOR_0 -3\n", "#define TEMP_SENSOR_0 -1\n"
	const pid = "#define TEMP_SENSOR_0 1\n#define PIDTEMP\n"
	const watches = "#define TEMP_SENSOR_0 1\n" + hotends + "#define THERMAL_PROTECTION_PERIOD 40\n"
	tests := []struct {
		name, text string
		key        parser.Key
		want       string
	}{
		{"PID control", pid, parser.LoopControl, "PID set h:2:9"},
		{"open loop", pid + "#define PID_OPENLOOP\n", parser.LoopControl, "open loop set h:3:9"},
		{"open loop, off", pid + "#define PID_OPENLOOP false\n", parser.LoopControl, "PID set h:2:9"},
		{"open loop without PID", "#define PID_OPENLOOP\n", parser.LoopControl, "on/off default"},
		{"open loop, perhaps", pid + "#if BOARD\n#define PID_OPENLOOP\n#endif\n",
			parser.LoopControl, "unknown h:4:9"},

		{"chip", chip, parser.FaultChecks, "true default"},
		{"chip, errors ignored", chip + "#define IGNORE_THERMOCOUPLE_ERRORS\n",
			parser.FaultChecks, "off h:2:9"},
		{"chip, errors ignored, off", chip + "#define IGNORE_THERMOCOUPLE_ERRORS 0\n",
			parser.FaultChecks, "true default"},
		{"chip, errors ignored, perhaps", chip + "#if BOARD\n#define IGNORE_THERMOCOUPLE_ERRORS\n#endif\n",
			parser.FaultChecks, "unknown h:3:9"},
		{"no chip, errors ignored", "#define TEMP_SENSOR_0 1\n#define IGNORE_THERMOCOUPLE_ERRORS\n",
			parser.FaultChecks, "hidden"},
		{"chip, faults in a row", chip + "#define THERMOCOUPLE_MAX_ERRORS 60\n",
			parser.Grace("for faults of a chip"), "15 set h:2:33"},
		{"no chip, faults in a row", "#define TEMP_SENSOR_0 1\n#define THERMOCOUPLE_MAX_ERRORS 60\n",
			parser.Grace("for faults of a chip"), "hidden"},

		{"table trips", "#define TEMP_SENSOR_0 1\n", parser.Trips, "true default"},
		{"chip trips", chip, parser.Trips, "true default"},
		{"amplifier does not trip", amplifier, parser.Trips, "off h:1:23"},
		{"the other amplifier", strings.Replace(amplifier, "-1", "-4", 1), parser.Trips, "off h:1:23"},

		{"watchdog on", "#define USE_WATCHDOG\n", parser.Watchdog, "true set h:1:9"},
		{"watchdog off", "//#define USE_WATCHDOG\n", parser.Watchdog, "off h:1:11"},
		{"watchdog not spoken of", "\n", parser.Watchdog, "hidden"},
		{"watchdog not spoken of in the second file", "#define CONFIGURATION_ADV_H_VERSION 02000901\n",
			parser.Watchdog, "off"},

		{"preheat time", "#define PREHEAT_TIME_HOTEND_MS 7500\n",
			parser.Grace("while heating up"), "7.5 set h:1:32"},
		{"preheat time, older", "#define MILLISECONDS_PREHEAT_TIME 7500\n",
			parser.Grace("while heating up"), "7.5 set h:1:35"},
		{"grace before the halt", "#define BOGUS_TEMPERATURE_GRACE_PERIOD 2000\n",
			parser.HaltGrace, "2 set h:1:40"},
		{"no grace before the halt", "//#define BOGUS_TEMPERATURE_GRACE_PERIOD 2000\n",
			parser.HaltGrace, "hidden"},

		{"automatic target", "#define AUTOTEMP\n#define AUTOTEMP_MAX 260\n",
			parser.AutoTarget, "260 set h:2:22"},
		{"automatic target, as shipped", `#define AUTOTEMP
#define AUTOTEMP_MIN 210
#define AUTOTEMP_MAX 250
#define AUTOTEMP_FACTOR 0.1f
`,
			parser.AutoTarget, "hidden"},
		{"automatic target, tuned", "#define AUTOTEMP\n#define AUTOTEMP_FACTOR 0.2\n",
			parser.AutoTarget, "250 default"},
		{"automatic target, off", "//#define AUTOTEMP\n#define AUTOTEMP_MAX 260\n",
			parser.AutoTarget, "hidden"},
		{"automatic target, perhaps", "#if BOARD\n#define AUTOTEMP\n#endif\n#define AUTOTEMP_MAX 260\n",
			parser.AutoTarget, "unknown h:4:22"},

		{"slowing the fan", watches + "#define ADAPTIVE_FAN_SLOWING\n", parser.SlowsFan, "true set h:4:9"},
		{"slowing the fan, off", watches + "//#define ADAPTIVE_FAN_SLOWING\n", parser.SlowsFan, "hidden"},
		{"slowing the fan, no watch", "#define ADAPTIVE_FAN_SLOWING\n", parser.SlowsFan, "hidden"},
		{"still reading", watches + "#define THERMAL_PROTECTION_VARIANCE_MONITOR\n",
			parser.HotendStill, "40 default"},
		{"still reading, a time of its own", watches + `#define THERMAL_PROTECTION_VARIANCE_MONITOR
#define THERMAL_PROTECTION_VARIANCE_MONITOR_PERIOD 30
`, parser.HotendStill, "30 set h:5:52"},
		{"still reading, off", watches + "#define THERMAL_PROTECTION_VARIANCE_MONITOR 0\n",
			parser.HotendStill, "hidden"},

		{"one output", "#define TEMP_SENSOR_0 1\n", parser.HeaterOutputs, "hidden"},
		{"two outputs", "#define HEATERS_PARALLEL\n", parser.HeaterOutputs, "2 set h:1:9"},

		{"fan full", "#define EXTRUDER_AUTO_FAN_SPEED 255\n", parser.FanPower, "1 set h:1:33"},
		{"fan slower", "#define EXTRUDER_AUTO_FAN_SPEED 102\n", parser.FanPower, "0.4 set h:1:33"},
		{"fan never", "#define EXTRUDER_AUTO_FAN_SPEED 0\n", parser.FanPower, "0 set h:1:33"},
		{"fan speed not said", "\n", parser.FanPower, "1 default"},

		{"nozzle as probe", "#define NOZZLE_AS_PROBE\n#define NOZZLE_TO_PROBE_OFFSET { 0, 0, 0 }\n",
			parser.NozzleProbes, "true set h:1:9"},
		{"another probe", "#define BD_SENSOR\n#define NOZZLE_TO_PROBE_OFFSET { 0, 0, -1.5 }\n",
			parser.NozzleProbes, "hidden"},
		{"another probe's height", "#define BD_SENSOR\n#define NOZZLE_TO_PROBE_OFFSET { 0, 0, -1.5 }\n",
			parser.ProbeTrigger, "1.5 set h:2:40"},

		{"no second sensor", "#define TEMP_SENSOR_REDUNDANT 0\n", parser.SecondSensor, "hidden"},
		{"second sensor", "#define TEMP_SENSOR_REDUNDANT 5\n#define TEMP_SENSOR_REDUNDANT_TARGET E0\n",
			parser.SecondSensor, "5 set h:1:31"},
		{"second sensor of another tool",
			"#define TEMP_SENSOR_REDUNDANT 5\n#define TEMP_SENSOR_REDUNDANT_TARGET E1\n",
			parser.SecondSensor, "hidden"},
		{"second sensor of the bed",
			"#define TEMP_SENSOR_REDUNDANT 5\n#define TEMP_SENSOR_REDUNDANT_TARGET BED\n",
			parser.SecondSensor, "hidden"},
		{"second sensor, perhaps", `#define TEMP_SENSOR_REDUNDANT 5
#if BOARD
#define TEMP_SENSOR_REDUNDANT_TARGET E0
#endif
`, parser.SecondSensor, "unknown h:1:31"},
		{"second sensor, old spelling", "#define TEMP_SENSOR_1 5\n#define TEMP_SENSOR_1_AS_REDUNDANT\n",
			parser.SecondSensor, "5 set h:1:23"},
		{"difference", "#define TEMP_SENSOR_REDUNDANT 5\n#define TEMP_SENSOR_REDUNDANT_MAX_DIFF 15\n",
			parser.SecondDiff, "15 set h:2:40"},
		{"difference, not said", "#define TEMP_SENSOR_REDUNDANT 5\n", parser.SecondDiff, "10 default"},
		{"difference, old spelling", `#define TEMP_SENSOR_1 5
#define TEMP_SENSOR_1_AS_REDUNDANT
#define MAX_REDUNDANT_TEMP_SENSOR_DIFF 8
`, parser.SecondDiff, "8 set h:3:40"},

		{"hotend offset", "#define EXTRUDERS 2\n#define HOTEND_OFFSET_X { 0, 24.5 }\n",
			parser.Offset("x"), "24.5 set h:2:30"},
		{"hotend offset, one hotend", "#define EXTRUDERS 1\n#define HOTEND_OFFSET_X { 0, 24.5 }\n",
			parser.Offset("x"), "hidden"},
		{"hotend offset, one nozzle",
			"#define EXTRUDERS 2\n#define SINGLENOZZLE\n#define HOTEND_OFFSET_X { 0, 24.5 }\n",
			parser.Offset("x"), "hidden"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if got := described(readText(t, 0, "h", test.text), test.key); got != test.want {
				t.Errorf("%s: %s, want %s", test.key, got, test.want)
			}
		})
	}
}

// The automatic target in proportion follows every command.
func TestAutoAlways(t *testing.T) {
	for text, want := range map[string]bool{
		"#define AUTOTEMP\n": false,
		"#define AUTOTEMP\n#define AUTOTEMP_PROPORTIONAL\n":   true,
		"//#define AUTOTEMP\n#define AUTOTEMP_PROPORTIONAL\n": false,
	} {
		if got := readText(t, 0, "h", text).printer.Limits.AutoAlways; got != want {
			t.Errorf("%q: %v, want %v", text, got, want)
		}
	}
}

// What a chip or an amplifier is told.
func TestAmplifiers(t *testing.T) {
	def := func(text string) parser.SensorDef { return readText(t, 0, "h", text).printer.Hotend.Sensor.Value }
	d := def(`#define TEMP_SENSOR_0 -5
#define MAX31865_SENSOR_OHMS_0 1000
#define MAX31865_CALIBRATION_OHMS_0 4300
#define MAX31865_SENSOR_WIRES_0 3
`)
	if d.R0Ohm != 1000 || d.ReferenceOhm != 4300 || d.Wires != 3 {
		t.Errorf("platinum chip: %+v", d)
	}
	d = def(`#define TEMP_SENSOR_0 -1
#define TEMP_SENSOR_AD595_GAIN 2.0
#define TEMP_SENSOR_AD595_OFFSET -3
#define TEMP_SENSOR_AD8495_GAIN 7
`)
	if d.Gain != 2 || d.OffsetK != -3 {
		t.Errorf("amplifier: %+v", d)
	}
	d = def("#define TEMP_SENSOR_0 -4\n#define TEMP_SENSOR_AD595_GAIN 7\n")
	if d.Gain != 0 || d.OffsetK != 0 {
		t.Errorf("the other amplifier: %+v", d)
	}
}

// A printer without extruders lacks the tool, and its sensor says no more.
func TestNoExtruder(t *testing.T) {
	for _, text := range []string{
		"#define EXTRUDERS 0\n#define TEMP_SENSOR_0 1\n", "#define EXTRUDERS 0\n#define TEMP_SENSOR_0 0\n",
	} {
		var said []string
		for _, r := range readText(t, 0, "h", text).printer.Remarks {
			if r.Kind == parser.RemarkMismatch {
				said = append(said, r.Text)
			}
		}
		if len(said) != 1 || !strings.Contains(said[0], "the configuration has no extruder") {
			t.Errorf("%q: %q", text, said)
		}
	}
}

// A max temp that a display edits is one of the settings that outlive a flash.
func TestStoredMaxTemp(t *testing.T) {
	const text = "#define EEPROM_SETTINGS\n#define HEATER_0_MAXTEMP 275\n"
	for more, want := range map[string]bool{"": false, "#define HAS_PROUI_MAXTEMP 1\n": true} {
		p := readText(t, 0, "h", text+more).printer
		if got := slices.Contains(p.Storage.Keeps, parser.MaxTemp); got != want {
			t.Errorf("%q: stored %v, want %v", more, got, want)
		}
	}
}

// The sensor of a hotend that there is not says nothing.
func TestOthersThatThereAreNot(t *testing.T) {
	for _, tt := range []struct {
		text string
		want parser.State
	}{
		{"#define EXTRUDERS 2\n#define TEMP_SENSOR_1 998\n", parser.Set},
		{"#define EXTRUDERS 1\n#define TEMP_SENSOR_1 998\n", parser.Off},
		{"#define EXTRUDERS 2\n#define SINGLENOZZLE\n#define TEMP_SENSOR_1 998\n", parser.Off},
		{"#define EXTRUDERS 2\n", parser.Unknown},
	} {
		for _, h := range readText(t, 0, "h", "#define TEMP_SENSOR_0 1\n"+tt.text).Others() {
			for _, d := range h.Settings {
				if h.Tool == 1 && d.Key == parser.HotendSensor && d.State != tt.want {
					t.Errorf("%q: the sensor of tool 1 is %s, want %s", tt.text, d.State, tt.want)
				}
			}
		}
	}
}
