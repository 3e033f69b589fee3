package defines

import (
	"math"
	"strconv"
	"testing"

	"preflash/parser"
	"preflash/rules/sensor"
)

// The chip for platinum is told the sensor's resistance, by the tool's option
// or by that of older generations.
func TestNominalResistance(t *testing.T) {
	for _, test := range []struct {
		text string
		want float64
	}{
		{"#define TEMP_SENSOR_0 -5\n#define MAX31865_SENSOR_OHMS_0 1000\n", 1000},
		{"#define TEMP_SENSOR_0 -5\n#define MAX31865_SENSOR_OHMS 100\n", 100},
		{"#define TEMP_SENSOR_0 -5\n#define MAX31865_SENSOR_OHMS_1 1000\n", 0},
		{"#define TEMP_SENSOR_0 -5\n", 0},
		{"#define TEMP_SENSOR_0 -5\n#if TEMP_SENSOR_IS_MAX_TC(0)\n#define MAX31865_SENSOR_OHMS_0 100\n#endif\n", 100},
		{"#define TEMP_SENSOR_0 -5\n#if BOARD_HAS_CHIP\n#define MAX31865_SENSOR_OHMS_0 100\n#endif\n", 0}, // unknown
		{"#define TEMP_SENSOR_0 -3\n#define MAX31865_SENSOR_OHMS_0 1000\n", 0},
	} {
		if got := readText(t, 0, "h", test.text).Printer().Hotend.Sensor.Value.R0Ohm; got != test.want {
			t.Errorf("%q: %g Ω, want %g", test.text, got, test.want)
		}
	}
}

func TestNumberedSensors(t *testing.T) {
	for i := range numberedSensors {
		n := &numberedSensors[i]
		if i > 0 && numberedSensors[i-1].number >= n.number {
			t.Errorf("%d stands before %d", numberedSensors[i-1].number, n.number)
		}
		if found, ok := findNumbered(n.number); !ok || found != n {
			t.Errorf("%d is not found", n.number)
		}
		if n.form == parser.FormUnknown && n.note == "" {
			t.Errorf("%d cannot be placed, and no note says why", n.number)
		}
		if n.form == parser.FormCurve {
			k, ok := sensor.Find(n.curve)
			if !ok || k.Kind != n.kind {
				t.Errorf("%d: no curve %s of kind %s", n.number, n.curve, n.kind)
			}
		}
		if d := n.def(gen20); d.Form != n.form || d.Name != strconv.Itoa(n.number) || (d.LowC != 0 || d.HighC != 0) && d.LowC >= d.HighC {
			t.Errorf("%d: %+v", n.number, d)
		}
	}
	for _, absent := range []int{-6, 16, 997, 1001, math.MaxInt, math.MinInt} {
		if _, ok := findNumbered(absent); ok {
			t.Errorf("%d is found", absent)
		}
	}
}

// Each row of a table as remembered, counts of a 10-bit converter at a
// temperature, lies within 3 °C of the curve that its definition names. Memory
// on both sides: this finds slips, not what was learnt wrong.
func TestTablesFollowTheirCurves(t *testing.T) {
	type row struct{ counts, tempC float64 }
	tables := map[int][]row{
		1:  {{23, 300}, {27, 290}, {31, 280}, {35, 270}, {41, 260}, {48, 250}, {66, 230}, {92, 210}, {131, 190}, {187, 170}, {268, 150}, {379, 130}, {591, 100}},
		2:  {{30, 300}, {63, 250}, {104, 220}, {148, 200}, {211, 180}, {357, 150}, {708, 100}},
		3:  {{21, 300}, {33, 270}, {46, 250}, {90, 210}, {128, 190}, {184, 170}, {316, 140}, {441, 120}, {588, 100}},
		5:  {{17, 300}, {20, 290}, {27, 270}, {37, 250}, {61, 220}, {87, 200}, {128, 180}, {230, 150}, {402, 120}, {554, 100}},
		7:  {{37, 299}, {55, 266}, {91, 229}, {127, 206}, {163, 190}, {307, 149}, {613, 99}},
		9:  {{36, 300}, {71, 246}, {106, 218}, {141, 199}, {211, 173}, {316, 147}, {631, 97}},
		10: {{36, 299}, {71, 246}, {141, 198}, {211, 173}, {316, 147}, {631, 96}},
		13: {{20.04, 300}, {31.23, 270}, {42.75, 250}, {72.03, 220}, {102.79, 200}, {151.02, 180}, {220.72, 160}, {447.17, 120}, {590.61, 100}},
		51: {{190, 250}},
		52: {{125, 300}},
		55: {{76, 300}},
		60: {{51, 272}, {71, 247}, {101, 221}, {161, 190}, {311, 148}},
		67: {{50, 400}, {82, 350}, {143, 300}, {259, 250}, {453, 200}},
		71: {{35, 300}, {51, 269}, {71, 244}, {102, 219}, {136, 200}, {159, 190}},
		75: {{111.06, 200}, {191.64, 170}, {275.37, 150}},
		99: {{5.81, 350}, {8.36, 320}, {10.84, 300}, {14.29, 280}, {19.27, 260}},
	}
	for number, rows := range tables {
		n, ok := findNumbered(number)
		if !ok {
			t.Errorf("%d is missing", number)
			continue
		}
		d := n.def(gen20)
		tempC := func(ohm float64) float64 { // Beta formula
			return 1/(1/298.15+math.Log(ohm/d.R25Ohm)/d.BetaK) - 273.15
		}
		switch d.Form {
		case parser.FormCurve:
			k, _ := sensor.Find(d.Curve)
			tempC = k.Curve.TempC
		case parser.FormPoints:
			c, err := sensor.FromPoints(d.Points)
			if err != nil {
				t.Fatal(err)
			}
			tempC = c.TempC
		}
		for _, r := range rows {
			ohm := d.PullupOhm * r.counts / (1024 - r.counts)
			if got := tempC(ohm); math.Abs(got-r.tempC) > 3 {
				t.Errorf("definition %d: %v counts are %v °C in its table, %.1f °C on its curve", number, r.counts, r.tempC, got)
			}
		}
	}
}

func TestDefines(t *testing.T) {
	for _, k := range sensor.All() {
		d, ok := Style.Defines(k.ID, commonPullup)
		switch {
		case !ok:
			t.Logf("no definition for %s", k.ID) // a custom one serves
		case d.Curve != k.ID || d.PullupOhm != commonPullup || d.Kind != k.Kind:
			t.Errorf("%s: %+v", k.ID, d)
		case d.HighC != 0 && d.HighC < 300:
			t.Errorf("%s: definition %s ends at %v °C", k.ID, d.Name, d.HighC)
		}
	}
	for _, c := range []struct {
		curve     string
		pullupOhm float64
		want      string // "" for none
	}{
		{"ntc-100k-4092", 4700, "1"}, {"ntc-100k-4092", 1000, "51"}, {"ntc-100k-4092", 10e3, "99"},
		{"ntc-100k-4267", 4700, "5"}, {"ntc-100k-4267", 1000, "55"}, {"ntc-100k-4267", 10e3, ""},
		{"ntc-200k-4338", 4700, "2"}, {"ntc-200k-4338", 1000, "52"},
		{"ntc-100k-3950", 4700, "11"}, {"ntc-100k-3950", 1000, ""},
		{"pt1000", 4700, "1047"}, {"pt1000", 2200, "1022"}, {"pt1000", 1000, "1010"}, {"pt1000", 3300, ""},
		{"pt100", 4700, "147"}, {"pt100", 1000, "110"}, {"pt100", 2200, ""},
		{"pt1000", 1005, "1010"}, {"pt1000", 1050, ""}, {"pt1000", 0, ""},
	} {
		if d, ok := Style.Defines(c.curve, c.pullupOhm); d.Name != c.want || ok != (c.want != "") || ok && d.Curve != c.curve {
			t.Errorf("%s on %g Ω is definition %q, want %q", c.curve, c.pullupOhm, d.Name, c.want)
		}
	}
	if _, ok := Style.Defines("no such curve", commonPullup); ok {
		t.Error("a curve that does not exist has a definition")
	}
	if Style.CustomForm() != parser.FormBeta {
		t.Error("a custom definition is a Beta")
	}
}

func TestCustomCubic(t *testing.T) {
	for text, want := range map[string]bool{
		"#define CONFIGURATION_H_VERSION 02010204\n#define TEMP_SENSOR_0 5\n":                                    true,
		"#define CONFIGURATION_H_VERSION 020007\n#define TEMP_SENSOR_0 5\n":                                      false,
		"#define CONFIGURATION_H_VERSION 020007\n#define TEMP_SENSOR_0 5\n//#define HOTEND0_SH_C_COEFF 0\n":      true,
		"#define CONFIGURATION_H_VERSION 020007\n#define TEMP_SENSOR_0 5\n#define HOTEND1_SH_C_COEFF 7.06e-08\n": false,
	} {
		if got := readText(t, 0, "h", text).printer.Hotend.CustomCubic; got != want {
			t.Errorf("%q: %v, want %v", text, got, want)
		}
	}
}

// What a configuration says about its sensor.
func TestSensorSettings(t *testing.T) {
	tests := []struct {
		name, text string
		want       parser.SensorDef
	}{
		{"curve", "#define TEMP_SENSOR_0 5\n", parser.SensorDef{Form: parser.FormCurve, Kind: parser.NTC, Name: "5", Curve: "ntc-100k-4267", PullupOhm: 4700, HighC: 713}},
		{"in parentheses", "#define TEMP_SENSOR_0 (5)\n", parser.SensorDef{Form: parser.FormCurve, Kind: parser.NTC, Name: "5", Curve: "ntc-100k-4267", PullupOhm: 4700, HighC: 713}},
		{"another macro", "#define BEAD 5\n#define TEMP_SENSOR_0 BEAD\n", parser.SensorDef{Form: parser.FormCurve, Kind: parser.NTC, Name: "5", Curve: "ntc-100k-4267", PullupOhm: 4700, HighC: 713}},
		{"low pull-up", "#define TEMP_SENSOR_0 1010\n", parser.SensorDef{Form: parser.FormCurve, Kind: parser.Platinum, Name: "1010", Curve: "pt1000", PullupOhm: 1000}},
		{"chip", "#define TEMP_SENSOR_0 -3\n", parser.SensorDef{Form: parser.FormAmplifier, Kind: parser.Thermocouple, Name: "-3"}},
		{"platinum chip", "#define TEMP_SENSOR_0 -5\n", parser.SensorDef{Form: parser.FormAmplifier, Kind: parser.PlatinumAmplifier, Name: "-5"}},
		{"placeholder", "#define TEMP_SENSOR_0 998\n", parser.SensorDef{Form: parser.FormPlaceholder, Name: "998", FixedC: 25}},
		{"placeholder with a figure", "#define TEMP_SENSOR_0 999\n#define DUMMY_THERMISTOR_999_VALUE 210\n", parser.SensorDef{Form: parser.FormPlaceholder, Name: "999", FixedC: 210}},
		{"table of an older generation", "#define CONFIGURATION_H_VERSION 010109\n#define TEMP_SENSOR_0 1\n", parser.SensorDef{Form: parser.FormCurve, Kind: parser.NTC, Name: "1", Curve: "ntc-100k-4092", PullupOhm: 4700, HighC: 300}},
		{"not known", "#define TEMP_SENSOR_0 777\n", parser.SensorDef{Name: "777", Note: "definition 777 is not known here"}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			s := readText(t, 0, "h", test.text).printer.Hotend.Sensor
			got := s.Value
			if test.want.Note == "" {
				got.Note = ""
			}
			if s.State != parser.Set || got.Form != test.want.Form || got.Kind != test.want.Kind || got.Name != test.want.Name || got.Curve != test.want.Curve ||
				got.PullupOhm != test.want.PullupOhm || got.HighC != test.want.HighC || got.FixedC != test.want.FixedC || got.Note != test.want.Note {
				t.Errorf("%s %+v, want %+v", s.State, got, test.want)
			}
		})
	}
}
