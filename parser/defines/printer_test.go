package defines

import (
	"fmt"
	"strings"
	"testing"

	"preflash/parser"
)

// readText reads one printer from texts: file names and contents in turn.
func readText(t testing.TB, tool int, files ...string) *config {
	t.Helper()
	tree := openTree(t, t.TempDir())
	contents := make(map[string][]byte)
	request := parser.Request{Tool: tool}
	for i := 0; i < len(files); i += 2 {
		contents[tree.Shown(files[i])] = []byte(files[i+1])
		request.Files = append(request.Files, files[i])
	}
	c, err := readConfig(tree.With(contents), request)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// described gives one setting as "value state @place", the place being the
// text of its line up to the place, so that a reader can judge it.
func described(c *config, key parser.Key) string {
	for d := range c.printer.Settings() {
		if d.Key != key {
			continue
		}
		value := fmt.Sprint(d.Value)
		if def, ok := d.Value.(parser.SensorDef); ok {
			value = def.Name
		}
		if d.State == parser.Off || d.State == parser.Unknown {
			value = ""
		}
		out := strings.TrimSpace(value + " " + d.State.String())
		if !d.At.IsZero() {
			line, column := d.At.Position()
			out += fmt.Sprintf(" %s:%d:%d", d.At.File.Path, line, column)
		}
		return out
	}
	return "hidden"
}

// The same printer in the spelling of each generation: invented figures.
const (
	first = `#define EXTRUDERS 1
#define TEMP_SENSOR_0 5
#define TEMP_SENSOR_BED 1
#define HEATER_0_MINTEMP 5
#define HEATER_0_MAXTEMP 275
#define PIDTEMP
#define BANG_MAX 255
#define PID_MAX 204
#define PID_FUNCTIONAL_RANGE 10
#define K1 0.9
#define DEFAULT_Kp 22.2
#define DEFAULT_Ki 1.08
#define DEFAULT_Kd 114
#define PREVENT_DANGEROUS_EXTRUDE
#define EXTRUDE_MINTEMP 170
#define THERMAL_RUNAWAY_PROTECTION_PERIOD 40
#define THERMAL_RUNAWAY_PROTECTION_HYSTERESIS 4
#define THERMAL_RUNAWAY_PROTECTION_BED_PERIOD 20
#define THERMAL_RUNAWAY_PROTECTION_BED_HYSTERESIS 2
#define WATCH_TEMP_PERIOD 40000
#define WATCH_TEMP_INCREASE 10
#define PLA_PREHEAT_HOTEND_TEMP 180
#define ABS_PREHEAT_HOTEND_TEMP 240
#define EXTRUDER_0_AUTO_FAN_PIN 7
#define EXTRUDER_AUTO_FAN_TEMPERATURE 50
#define DEFAULT_NOMINAL_FILAMENT_DIA 2.85
#define ENABLE_AUTO_BED_LEVELING
#define Z_PROBE_OFFSET_FROM_EXTRUDER -1.25
#define ADVANCE
#define EXTRUDER_ADVANCE_K .3
#define EEPROM_SETTINGS
`
	second = `#define CONFIGURATION_H_VERSION 010109
#define EXTRUDERS 1
#define TEMP_SENSOR_0 11
#define TEMP_SENSOR_BED 1
#define TEMP_HYSTERESIS 3
#define TEMP_BED_HYSTERESIS 3
#define HEATER_0_MINTEMP 5
#define HEATER_0_MAXTEMP 275
#define PIDTEMP
#define BANG_MAX 255
#define PID_MAX BANG_MAX
#define PID_FUNCTIONAL_RANGE 10
#define K1 0.95
#define PID_PARAMS_PER_HOTEND
#define DEFAULT_Kp 22.2
#define DEFAULT_Ki 1.08
#define DEFAULT_Kd 114
#define PREVENT_COLD_EXTRUSION
#define EXTRUDE_MINTEMP 170
#define THERMAL_PROTECTION_HOTENDS
#define THERMAL_PROTECTION_BED
#define THERMAL_PROTECTION_PERIOD 40
#define THERMAL_PROTECTION_HYSTERESIS 4
#define WATCH_TEMP_PERIOD 20
#define WATCH_TEMP_INCREASE 2
#define THERMAL_PROTECTION_BED_PERIOD 20
#define THERMAL_PROTECTION_BED_HYSTERESIS 2
#define WATCH_BED_TEMP_PERIOD 60
#define WATCH_BED_TEMP_INCREASE 2
#define MILLISECONDS_PREHEAT_TIME 3000
#define MAX_CONSECUTIVE_LOW_TEMPERATURE_ERROR_ALLOWED 3
#define PREHEAT_1_TEMP_HOTEND 180
#define PREHEAT_2_TEMP_HOTEND 240
#define E0_AUTO_FAN_PIN -1
#define E1_AUTO_FAN_PIN 8
#define EXTRUDER_AUTO_FAN_TEMPERATURE 60
#define DEFAULT_NOMINAL_FILAMENT_DIA 1.75
#define FIX_MOUNTED_PROBE
#define Z_PROBE_OFFSET_FROM_EXTRUDER -2.5
#define LIN_ADVANCE
#define LIN_ADVANCE_K 0.22
#define FWRETRACT
#define RETRACT_LENGTH 3
#define FILAMENT_LOAD_UNLOAD_GCODES
#define ADVANCED_PAUSE_FEATURE
#define FILAMENT_CHANGE_UNLOAD_LENGTH 100
#define FILAMENT_CHANGE_FAST_LOAD_LENGTH 0
//#define EEPROM_SETTINGS
`
	third = `#define CONFIGURATION_H_VERSION 02010300
#define EXTRUDERS 2
#define TEMP_SENSOR_0 1000
#define HOTEND0_PULLUP_RESISTOR_OHMS 4700
#define HOTEND0_RESISTANCE_25C_OHMS 100000
#define HOTEND0_BETA 4267
#define HOTEND0_SH_C_COEFF 1.5e-8
#define TEMP_SENSOR_1 1047
#define TEMP_SENSOR_BED 0
#define TEMP_HYSTERESIS 3
#define HEATER_0_MINTEMP 5
#define HEATER_0_MAXTEMP 285
#define HEATER_1_MINTEMP 6
#define HEATER_1_MAXTEMP (240 + 60)
#define HOTEND_OVERSHOOT 10
#define MPCTEMP
#define MPC_MAX 127
#define MPC_HEATER_POWER { 40.0f, 50.0f }
#define MPC_PTC
#define MPC_HEATER_REFTEMP { 20, /* °C */ 200 }
#define PREVENT_COLD_EXTRUSION
#define EXTRUDE_MINTEMP 170
#define THERMAL_PROTECTION_HOTENDS
#define THERMAL_PROTECTION_PERIOD 40
#define THERMAL_PROTECTION_HYSTERESIS 4
#define WATCH_TEMP_PERIOD 40
#define WATCH_TEMP_INCREASE 2
#define PREHEAT_TIME_HOTEND_MS 0
#define PREHEAT_1_TEMP_HOTEND 200
#define G26_MESH_VALIDATION
#define MESH_TEST_NOZZLE_SIZE 0.6
#define MESH_TEST_HOTEND_TEMP 205
#define E0_AUTO_FAN_PIN 7
#define E1_AUTO_FAN_PIN FAN1_PIN
#define DEFAULT_NOMINAL_FILAMENT_DIA 1.75
#define VOLUMETRIC_EXTRUDER_LIMIT
#define DEFAULT_VOLUMETRIC_EXTRUDER_LIMIT 12
#define FIX_MOUNTED_PROBE
#define NOZZLE_TO_PROBE_OFFSET { 10, -10, -1.75 }
#define LIN_ADVANCE
#define ADVANCE_K { 0.1, 0.2 }
#define EEPROM_SETTINGS
`
)

func TestGenerations(t *testing.T) {
	tests := []struct {
		name string
		text string
		tool int
		want map[parser.Key]string
	}{
		{"first", first, 0, map[parser.Key]string{
			parser.HotendSensor: "5 set h:2:23", parser.MinTemp: "5 set h:4:26",
			parser.MaxTemp: "275 set h:5:26", parser.Margin: "0 default", parser.Preset(1): "180 set h:22:33",
			parser.Preset(2): "240 set h:23:33", parser.Preset(3): "hidden",
			parser.ColdGuard: "true set h:14:9", parser.MinExtrude: "170 set h:15:25",
			parser.LoopControl: "PID set h:6:9", parser.GainP: "22.2 set h:11:20",
			parser.GainI: "1.08 set h:12:20", parser.GainD: "114 set h:13:20",
			parser.FunctionalRange: "10 set h:9:30", parser.DerivativeShare: "0.9 set h:10:12",
			parser.PowerLimit("in range"): "0.8 set h:8:17", parser.PowerLimit("below range"): "1 set h:7:18",
			parser.HotendWatchOn: "true set h:16:43", parser.HotendHoldPeriod: "40 set h:16:43",
			parser.HotendHysteresis: "4 set h:17:47", parser.HotendRiseOn: "true set h:20:27",
			parser.HotendRiseWindow: "40 set h:20:27", parser.HotendRise: "10 set h:21:29",
			parser.HotendArmMargin: "9 default", parser.BedHeated: "true set h:3:25",
			parser.BedSensor: "1 set h:3:25", parser.BedWatchOn: "true set h:18:47",
			parser.BedHoldPeriod: "20 set h:18:47", parser.BedRiseOn: "off h:18:47", parser.BedRise: "hidden",
			parser.FanOutput: "7 set h:24:33", parser.FanOnAbove: "50 set h:25:39",
			parser.FilamentWidth: "2.85 set h:26:38", parser.ProbeTrigger: "1.25 set h:28:38",
			"pressure advance": "0.3 set h:30:28", parser.StorageOn: "true set h:31:9", parser.MaxFlow: "off",
			parser.NozzleDiameter: "hidden",
		}},
		{"second", second, 0, map[parser.Key]string{
			parser.HotendSensor: "11 set h:3:23", parser.Margin: "0 default",
			parser.ColdGuard: "true set h:18:9", parser.GainP: "22.2 set h:15:20",
			parser.DerivativeShare: "0.95 set h:13:12", parser.PowerLimit("in range"): "1 set h:11:17",
			parser.HotendWatchOn: "true set h:20:9", parser.HotendHoldPeriod: "40 set h:22:35",
			parser.HotendHysteresis: "4 set h:23:39", parser.HotendRiseOn: "true set h:24:27",
			parser.HotendRiseWindow: "20 set h:24:27", parser.HotendRise: "2 set h:25:29",
			parser.HotendArmMargin: "3 set h:5:25", parser.BedWatchOn: "true set h:21:9",
			parser.BedRiseOn: "true set h:28:31", parser.BedRiseWindow: "60 set h:28:31",
			parser.BedRise: "2 set h:29:33", parser.BedHoldPeriod: "20 set h:26:39",
			parser.BedWatchHysteresis: "2 set h:27:43", parser.BedArmMargin: "3 set h:6:29",
			parser.Grace("while heating up"):       "3 set h:30:35",
			parser.BadSamples("below the minimum"): "3 set h:31:55", parser.Preset(2): "240 set h:33:31",
			parser.FanOutput: "off h:34:25", parser.FanOnAbove: "60 set h:36:39",
			parser.ProbeTrigger: "2.5 set h:39:38", "pressure advance": "0.22 set h:41:23",
			"retract length": "3 set h:43:24", "unload length": "100 set h:46:39", "load length": "hidden",
			parser.StorageOn: "off h:48:11",
		}},
		{"third, tool 0", third, 0, map[parser.Key]string{
			parser.HotendSensor: "1000 set h:3:23", parser.MaxTemp: "285 set h:12:26",
			parser.Margin: "10 set h:15:26", parser.LoopControl: "model set h:16:9", parser.GainP: "hidden",
			parser.PowerLimit("in range"): "hidden",
			parser.PowerLimit("model"):    fmt.Sprint(127./255, " set h:17:17"),
			parser.ModelPower:             "40 set h:18:28", parser.ModelRefTemp: "20 set h:20:30",
			parser.BedHeated: "off h:9:25", parser.BedWatchOn: "hidden",
			parser.HotendRiseWindow: "40 set h:26:27", "preset mesh test": "205 set h:32:31",
			parser.NozzleDiameter: "0.6 set h:31:31", parser.Grace("while heating up"): "0 set h:28:32",
			parser.FanOutput: "7 set h:33:25", parser.FanOnAbove: "50 default",
			parser.MaxFlow: "12 set h:37:43", parser.ProbeTrigger: "1.75 set h:39:43",
			"pressure advance": "0.1 set h:41:21",
		}},
		{"third, tool 1", third, 1, map[parser.Key]string{
			parser.HotendSensor: "1047 set h:8:23", parser.MinTemp: "6 set h:13:26",
			parser.MaxTemp: "300 set h:14:26", parser.ModelPower: "50 set h:18:35",
			parser.ModelRefTemp: "200 set h:20:44", parser.FanOutput: "FAN1_PIN set h:34:25",
			"pressure advance": "0.2 set h:41:26",
		}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			c := readText(t, test.tool, "h", test.text)
			for key, want := range test.want {
				if got := described(c, key); got != want {
					t.Errorf("%s: %s, want %s", key, got, want)
				}
			}
			for _, r := range c.printer.Remarks {
				t.Errorf("remark: %s", r.Text)
			}
		})
	}
}

// Parts that have no key of their own.
func TestPrinterParts(t *testing.T) {
	p := readText(t, 0, "h", second).printer
	if len(p.ColdSide.Elsewhere) != 1 || p.ColdSide.Elsewhere[0].Written != "8" {
		t.Errorf("fans elsewhere: %v, want pin 8 of the second tool", p.ColdSide.Elsewhere)
	}
	if !p.Limits.MinWhileHeating || p.Hotend.Oversample != 16 {
		t.Errorf("minimum while heating %v, oversampling %d", p.Limits.MinWhileHeating, p.Hotend.Oversample)
	}
	for number, want := range map[string]bool{"5": true, "1047": true, "-1": true, "-2": false, "-5": false} {
		text := strings.Replace(second, "TEMP_SENSOR_0 ", "TEMP_SENSOR_0 "+number+" //", 1)
		if got := readText(t, 0, "h", text).printer.Limits.MinWhileHeating; got != want {
			t.Errorf("definition %s: minimum while heating only %v, want %v", number, got, want)
		}
	}
	third := readText(t, 0, "h", third).printer
	want := []parser.Key{
		parser.HotendSensor, parser.ModelPower, parser.Preset(1), parser.ProbeTrigger, parser.FilamentWidth,
		parser.MaxFlow, "pressure advance",
	}
	if got := third.Storage.Keeps; fmt.Sprint(got) != fmt.Sprint(want) {
		t.Errorf("stored: %v, want %v", got, want)
	}
	def := third.Hotend.Sensor.Value
	if def.Form != parser.FormBeta || def.PullupOhm != 4700 || def.R25Ohm != 100000 || def.BetaK != 4267 ||
		def.CubicC != 1.5e-8 {
		t.Errorf("custom sensor: %+v", def)
	}
}

func TestVersionGeneration(t *testing.T) {
	for text, want := range map[string]generation{
		"010000": gen10, "010100": gen11, "010109": gen11,
		"020000": gen20, "020008": gen20, "02000900": gen20, "02000901": genOlder,
		"02000902": genBetween, "02010202": genBetween, "02010300": genNewer,
		"02010301": genAbove, "03000000": genAbove,
		"": genUnknown, "1.1.9": genUnknown, "0x0109": genUnknown, "20000": genUnknown,
		"000901": genUnknown,
	} {
		if got := versionGeneration(text); got != want {
			t.Errorf("%q: %d, want %d", text, got, want)
		}
	}
}

// Without a version the newest name that occurs tells.
func TestGenerationByNames(t *testing.T) {
	for text, want := range map[string]generation{
		"#define X 1\n": genUnknown,
		"//#define THERMAL_RUNAWAY_PROTECTION_PERIOD 40\n":            gen10,
		"#define PREVENT_COLD_EXTRUSION\n":                            gen11,
		"#define THERMAL_PROTECTION_HOTENDS\n//#define MPCTEMP\n":     genBetween,
		"#define DEFAULT_KP 22.2\n":                                   genAbove,
		"//#define TEMP_TUNING_MAINTAIN_FAN\n#define MPCTEMP\n":       genNewer,
		"#define HOTEND_OVERSHOOT 15\n":                               gen20,
		"#define CONFIGURATION_H_VERSION 010109\n#define MPCTEMP\n":   gen11,
		"#define CONFIGURATION_ADV_H_VERSION 020007\n":                gen20,
		"#if 0\n#define NOZZLE_TO_PROBE_OFFSET { 0, 0, 0 }\n#endif\n": gen20,
	} {
		if got := readText(t, 0, "h", text).gen; got != want {
			t.Errorf("%q: generation %d, want %d", text, got, want)
		}
	}
}
