package defines

import "testing"

func TestLacks(t *testing.T) {
	for _, tt := range []struct {
		text    string
		lacks   string // the first
		without bool
		tools   int
	}{
		{"#define EXTRUDERS 2\n#define TEMP_SENSOR_0 1\n#define WATCH_TEMP_PERIOD 20\n", "", false, 2},
		{"#define TEMP_SENSOR_0 1\n//#define THERMAL_PROTECTION_PERIOD 40\n", "", false, 0},
		{"#define TEMP_SENSOR_0 1\n", "THERMAL_PROTECTION_PERIOD", true, 0},
		{"#define THERMAL_PROTECTION_PERIOD 40\n", "TEMP_SENSOR_0", false, 0},
	} {
		c := readText(t, 0, "Configuration.h", tt.text)
		got := c.Lacks()
		switch {
		case c.Tools() != tt.tools && tt.tools > 0:
			t.Errorf("%q has %d tools", tt.text, c.Tools())
		case tt.lacks == "" && got != nil, tt.lacks != "" && len(got) != 1:
			t.Errorf("%q lacks %v", tt.text, got)
		case tt.lacks != "" && (got[0].What != tt.lacks || got[0].Without != tt.without):
			t.Errorf("%q lacks %+v", tt.text, got[0])
		}
	}
}
