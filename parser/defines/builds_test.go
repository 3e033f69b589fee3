package defines

import (
	"strings"
	"testing"

	"preflash/parser"
)

// What each generation refuses to build. A version between the two meets what
// both refuse; older ones, and files without a version, read the old names.
func TestUnbuildable(t *testing.T) {
	const o, n = "CONFIGURATION_H_VERSION 02000901", "CONFIGURATION_H_VERSION 02010300"
	const bead = `#define TEMP_SENSOR_0 66
#define HEATER_0_MINTEMP 21
#define MAX_CONSECUTIVE_LOW_TEMPERATURE_ERROR_ALLOWED 5
#define PREHEAT_TIME_HOTEND_MS 15000
`
	tests := []struct {
		text         string
		older, newer string // parts of what is said; "" for nothing
	}{
		{"#define K1 0.95\n", "PID_K1", "PID_K1"},
		{"#define PID_K1 0.95\n", "", ""},
		{"//#define K1 0.95\n", "", ""},
		{"#define MILLISECONDS_PREHEAT_TIME 0\n", "", "PREHEAT_TIME_HOTEND_MS"},
		{"#define EXTRUDER_1_AUTO_FAN_PIN 7\n", "call it E1_AUTO_FAN_PIN", "call it E1_AUTO_FAN_PIN"},
		{"#define LIN_ADVANCE_K 0.22\n", "", "ADVANCE_K"},
		{"#define E0_MAX_CURRENT 800\n", "", "E0_CURRENT"},
		{"#define PIDTEMP\n#define PID_OPENLOOP\n", "", "PID_OPENLOOP"},
		{"#define CONFIGURATION_ADV_H_VERSION 020008\n#define USE_WATCHDOG\n", "one version", "one version"},
		{hotends + "#define WATCH_TEMP_PERIOD 501\n", "500 at most", "500 at most"},
		{hotends + "#define WATCH_TEMP_PERIOD 500\n", "", ""},
		{bead, "", ""},
		{strings.Replace(bead, "21", "20", 1), "", "above 20"},
		{strings.Replace(bead, "LOWED 5", "LOWED 4", 1), "", "of 5 at least"},
		{strings.Replace(bead, "15000", "14999", 1), "", "of 15000 at least"},
		{strings.Replace(bead, "#define PRE", "//#define PRE", 1), "", "of 15000 at least"},
		{"#define TEMP_SENSOR_0 -5\n#define MAX31865_SENSOR_OHMS_0 100\n",
			"needs MAX31865_CALIBRATION_OHMS_0", "needs MAX31865_CALIBRATION_OHMS_0"},
		{`#define TEMP_SENSOR_0 -5
#define MAX31865_SENSOR_OHMS_0 100
#define MAX31865_CALIBRATION_OHMS_0 430
#define MAX31865_SENSOR_WIRES_0 5
`, "", "2 to 4 wires"},
		{"#define TEMP_SENSOR_0 -2\n#define TEMP_SENSOR_1 -3\n", "of one kind", "of one kind"},
		{"#define TEMP_SENSOR_0 -2\n#define TEMP_SENSOR_1 5\n", "", ""},
		{"#define TEMP_SENSOR_0 100\n", "", "controller's own chip"},
		{"#define PIDTEMP\n#define MPCTEMP\n", "", "both on"},
		{"#define EXTRUDERS 2\n#define HEATERS_PARALLEL\n", "one extruder", "one extruder"},
		{"#define E0_AUTO_FAN_PIN FAN0_PIN\n", "part fan", "part fan"},
		{"#define E0_AUTO_FAN_PIN FAN1_PIN\n", "", ""},
		{"#define AUTOTEMP\n#define AUTOTEMP_MIN 210\n#define AUTOTEMP_MAX 200\n", "", "below AUTOTEMP_MIN"},
		{`#define TEMP_SENSOR_REDUNDANT 1
#define TEMP_SENSOR_REDUNDANT_SOURCE E0
#define TEMP_SENSOR_REDUNDANT_TARGET E0
`, "one sensor", "one sensor"},
		{"#define EXTRUDERS 2\n#define HOTEND_OFFSET_Z { 0.1, 0.2 }\n", "begin with 0", "begin with 0"},
		{"#define EXTRUDERS 2\n#define HOTEND_OFFSET_Z { 0.0, 0.2 }\n", "", ""},
	}
	said := func(version, text string) string {
		var all []string
		for _, r := range readText(t, 0, "h", version+text).printer.Remarks {
			if r.Kind == parser.RemarkBroken {
				if r.At.IsZero() {
					t.Errorf("%q: %q stands nowhere", text, r.Text)
				}
				all = append(all, r.Text)
			}
		}
		return strings.Join(all, "; ")
	}
	for _, test := range tests {
		between := test.older
		if test.newer == "" {
			between = ""
		}
		for version, want := range map[string]string{
			"#define " + o + "\n": test.older, "#define " + n + "\n": test.newer,
			"#define CONFIGURATION_H_VERSION 02010202\n": between,
			"#define CONFIGURATION_H_VERSION 020008\n":   "", "": "",
		} {
			if got := said(version, test.text); want == "" && got != "" || !strings.Contains(got, want) {
				t.Errorf("%s%s: said %q, want %q in it", version, test.text, got, want)
			}
		}
	}
}

// The values that the newer generation builds with.
func TestBounds(t *testing.T) {
	const limits = `#define HEATER_0_MINTEMP 25
#define HEATER_0_MAXTEMP 275
#define HOTEND_OVERSHOOT 20
#define PREHEAT_TIME_HOTEND_MS 40000
`
	tests := []struct {
		version, text      string
		least, most, grace float64
	}{
		{newerLine, "#define TEMP_SENSOR_0 60\n", 0, 252, 0},
		{newerLine, "#define TEMP_SENSOR_0 60\n#define HAS_PROUI_MAXTEMP 1\n", 0, 0, 0},
		{newerLine, "#define TEMP_SENSOR_0 1047\n", 0, 0, 0}, // not held against the table
		{newerLine, "#define TEMP_SENSOR_0 66\n", 21, 830, 15},
		{olderLine, "#define TEMP_SENSOR_0 66\n", 0, 0, 0},
		{"", "#define TEMP_SENSOR_0 60\n", 0, 0, 0},
	}
	for _, test := range tests {
		l := readText(t, 0, "h", test.version+test.text+limits).printer.Limits
		if l.MinTemp.Least != test.least || l.MaxTemp.Most != test.most || l.Graces[0].Least != test.grace {
			t.Errorf("%s%s: min temp from %v, max temp to %v, grace from %v; want %v, %v, %v",
				test.version, test.text, l.MinTemp.Least, l.MaxTemp.Most, l.Graces[0].Least,
				test.least, test.most, test.grace)
		}
	}
}

// What is sure to build, also where it is not told which firmware it is.
func TestMaxTempWith(t *testing.T) {
	const text = "#define TEMP_SENSOR_0 1\n#define HEATER_0_MAXTEMP 275\n#define HOTEND_OVERSHOOT 15\n"
	for _, test := range []struct {
		version string
		number  int
		want    float64
	}{
		{"02010300", 147, 285}, {"02010202", 147, 285}, {"", 147, 285}, {"02020000", 60, 257},
		{"02010202", 1047, 0},
		{"02000901", 147, 0}, {"010109", 60, 0},
	} {
		version := ""
		if test.version != "" {
			version = "#define CONFIGURATION_H_VERSION " + test.version + "\n"
		}
		c := readText(t, 0, "h", version+text)
		d, _ := c.basis.definition(test.number)
		if got := c.MaxTempWith(d); got != test.want {
			t.Errorf("%s, %d: %v, want %v", test.version, test.number, got, test.want)
		}
	}
}
