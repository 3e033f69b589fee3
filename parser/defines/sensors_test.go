package defines

import (
	"encoding/csv"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/rules/sensor"
)

// The chip for platinum is told the sensor's resistance, by the tool's option
// or by that of older generations. An amplifier's table is for one of 100 Ω.
func TestNominalResistance(t *testing.T) {
	for _, test := range []struct {
		text string
		want float64
	}{
		{"#define TEMP_SENSOR_0 -5\n#define MAX31865_SENSOR_OHMS_0 1000\n", 1000},
		{"#define TEMP_SENSOR_0 -5\n#define MAX31865_SENSOR_OHMS 100\n", 100},
		{"#define TEMP_SENSOR_0 -5\n#define MAX31865_SENSOR_OHMS_1 1000\n", 0},
		{"#define TEMP_SENSOR_0 -5\n", 0},
		{`#define TEMP_SENSOR_0 -5
#if TEMP_SENSOR_IS_MAX_TC(0)
#define MAX31865_SENSOR_OHMS_0 100
#endif
`, 100},
		// Whether the condition holds is unknown.
		{"#define TEMP_SENSOR_0 -5\n#if BOARD_HAS_CHIP\n#define MAX31865_SENSOR_OHMS_0 100\n#endif\n", 0},
		{"#define TEMP_SENSOR_0 -3\n#define MAX31865_SENSOR_OHMS_0 1000\n", 0},
		{"#define TEMP_SENSOR_0 20\n", 100},
		{"#define TEMP_SENSOR_0 201\n", 100},
	} {
		if got := readText(t, 0, "h", test.text).Printer().Hotend.Sensor.Value.R0Ohm; got != test.want {
			t.Errorf("%q: %g Ω, want %g", test.text, got, test.want)
		}
	}
}

// referenceRows reads a CSV of the published firmware's figures, without its
// header.
func referenceRows(t *testing.T, name string) [][]string {
	t.Helper()
	f, err := os.Open(filepath.Join("testdata", "reference", name))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return rows[1:]
}

func figureOf(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// circuitOf is what one generation's definition believes.
func circuitOf(t *testing.T, number, generation string) *sensor.Circuit {
	t.Helper()
	n, err := strconv.Atoi(number)
	if err != nil {
		t.Fatal(err)
	}
	b := basisNames[generation]
	if b == older|newer {
		b = newer
	}
	d, ok := b.definition(n)
	if !ok || d.Or != nil {
		t.Fatalf("%s, %s: %+v, %v", number, generation, d, ok)
	}
	c, err := sensor.OfDef(&d)
	if err != nil {
		t.Fatalf("%s, %s: %v", number, generation, err)
	}
	return c
}

// Each row's resistance shows the row's temperature, every table reads, and a
// table's curve is of its kind.
func TestTables(t *testing.T) {
	list := tables()
	if len(list) != 49 {
		t.Errorf("%d tables", len(list))
	}
	for i, table := range list {
		d := &table.def
		if i > 0 && list[i-1].number > table.number {
			t.Errorf("%d stands before %d", list[i-1].number, table.number)
		}
		c, err := sensor.OfDef(d)
		if err != nil {
			t.Errorf("%d: %v", table.number, err)
			continue
		}
		for _, p := range d.Points {
			if got := c.TempC(p.Ohm / (p.Ohm + d.PullupOhm)); math.Abs(got-p.TempC) > 1e-6 {
				t.Errorf("%d: %g Ω shows %g °C, want %g", table.number, p.Ohm, got, p.TempC)
			}
		}
		if k, ok := sensor.Find(d.Curve); d.Curve != "" && (!ok || k.Kind != d.Kind) {
			t.Errorf("%d: no curve %s of kind %s", table.number, d.Curve, d.Kind)
		}
		if falls := c.Falls(); falls != (d.Kind == parser.NTC) {
			t.Errorf("%d: the voltage falls: %v", table.number, falls)
		}
	}
	for _, bad := range [][2]string{
		{"", "h\n1,newer,20\n"}, {"", "h\n1,newer,x,5\n"},
		{"h\n1,newer\n", ""}, {"h\n1,newer,ntc,,4700,0,300,\n", "h\n"}, {"h\n1,newer,ntc,,x,0,300,\n", "h\n"},
		{"h\n1,never,ntc,,4700,0,300,\n", "h\n1,never,0,5\n1,never,1,4\n"},
	} {
		if got, err := readTables(bad[0], bad[1]); err == nil {
			t.Errorf("%q gives %+v", bad, got)
		}
	}
}

// Open and shorted sensors read as the published firmware has them, with a
// converter of 10 bits. 2000 has two rows at its last count.
func TestTableEnds(t *testing.T) {
	for _, row := range referenceRows(t, "sensor-ends.csv") {
		if row[0] == "2000" {
			continue
		}
		c := circuitOf(t, row[0], row[1])
		if got, want := c.Open(sensor.Converter{Bits: 10}), figureOf(t, row[2]); math.Abs(got-want) > 0.3 {
			t.Errorf("%s, %s: open reads %g °C, want %g", row[0], row[1], got, want)
		}
		if got, want := c.Short(sensor.Converter{Bits: 10}), figureOf(t, row[3]); got != want {
			t.Errorf("%s, %s: shorted reads %g °C, want %g", row[0], row[1], got, want)
		}
	}
}

// tableWithinK is how well the points agree with the firmware's own reading of
// its tables. They were computed to be within 0.6 K; here they are nearer.
const tableWithinK = 0.35

// How far off a sensor of a known curve is, computed from the firmware's own
// tables of counts by a program that is not ours.
func TestTablesAgainstCurves(t *testing.T) {
	for _, row := range referenceRows(t, "sensor-errors.csv") {
		c := circuitOf(t, row[0], row[1])
		k, err := sensor.Parse(row[2])
		if err != nil {
			t.Fatal(err)
		}
		real := &sensor.Circuit{Curve: k.Curve, PullupOhm: c.PullupOhm}
		for i, shown := range []float64{200, 220, 250, 280} {
			if row[3+i] == "" {
				continue
			}
			got, want := c.Actual(real, shown)-shown, figureOf(t, row[3+i])
			if math.Abs(got-want) > tableWithinK {
				t.Errorf("%s, %s: at %g °C shown a %s is %+.2f K off, want %+.1f",
					row[0], row[1], shown, row[2], got, want)
			}
		}
		if row[7] == "" {
			continue
		}
		at := figureOf(t, row[8])
		if got, want := c.Actual(real, at)-at, figureOf(t, row[7]); math.Abs(got-want) > tableWithinK {
			t.Errorf("%s, %s: at %g °C shown a %s is %+.2f K off, want %+.1f",
				row[0], row[1], at, row[2], got, want)
		}
	}
}

// Which generation has which definition, and what holds where that is unsure.
func TestDefinitionsOfAGeneration(t *testing.T) {
	for _, test := range []struct {
		number int
		in     basis
		found  bool
		or     bool
		note   string
	}{
		{1, older, true, false, ""}, {1, newer, true, false, ""}, {1, older | newer, true, true, ""},
		{61, older, true, false, ""}, {61, older | newer, true, false, ""},
		{1022, older, false, false, ""}, {1022, newer, true, false, "whole counts"},
		{1022, older | newer, true, false, "the older generation of this firmware has no such definition"},
		{68, older, false, false, ""}, {68, newer, true, false, ""}, {100, older, false, false, ""},
		{22, newer, true, false, "two temperatures"}, {331, older, true, false, "3.3 V"},
		{-6, newer, false, false, ""}, {16, newer, false, false, ""}, {math.MaxInt, newer, false, false, ""},
		{math.MinInt, older, false, false, ""},
	} {
		d, ok := test.in.definition(test.number)
		if ok != test.found || (d.Or != nil) != test.or || !strings.Contains(d.Note, test.note) {
			t.Errorf("%d, %s: %v, or %v, %q", test.number, test.in, ok, d.Or, d.Note)
		}
	}
	// 300 °C is the last row of the older table, 350 °C of the newer.
	if d, _ := (older | newer).definition(1); d.HighC != 350 || d.Or.HighC != 300 {
		t.Errorf("ends at %g or %g °C", d.HighC, d.Or.HighC)
	}
	count := map[basis]int{}
	for _, b := range []basis{older, newer, older | newer} {
		for _, d := range b.definitions(b) {
			count[b]++
			if d.Form != parser.FormPoints || d.Kind == parser.KindUnknown {
				t.Errorf("%s: %+v", b, d)
			}
		}
	}
	if n := len(Style.Blank().Definitions()); n != count[newer] {
		t.Errorf("%d definitions of any generation", n)
	}
	if count[older] != 40 || count[newer] != 45 || count[older|newer] != 40 {
		t.Errorf("%v definitions", count)
	}
}

func TestCustomCubic(t *testing.T) {
	const between = "#define CONFIGURATION_H_VERSION 02010204\n"
	for text, want := range map[string]bool{
		newerLine + "#define TEMP_SENSOR_0 5\n":                                    true,
		between + "#define TEMP_SENSOR_0 5\n":                                      false,
		between + "#define TEMP_SENSOR_0 5\n//#define HOTEND0_SH_C_COEFF 0\n":      true,
		between + "#define TEMP_SENSOR_0 5\n#define HOTEND1_SH_C_COEFF 7.06e-08\n": false,
		olderLine + "#define TEMP_SENSOR_0 5\n//#define HOTEND0_SH_C_COEFF 0\n":    false,
	} {
		if got := readText(t, 0, "h", text).printer.Hotend.CustomCubic; got != want {
			t.Errorf("%q: %v, want %v", text, got, want)
		}
	}
}

// What a configuration says about its sensor.
func TestSensorSettings(t *testing.T) {
	five := parser.SensorDef{Form: parser.FormPoints, Kind: parser.NTC, Name: "5",
		Curve: "ntc-100k-4267", PullupOhm: 4700, HighC: 713}
	tests := []struct {
		name, text string
		want       parser.SensorDef
	}{
		{"table", "#define TEMP_SENSOR_0 5\n", five},
		{"in parentheses", "#define TEMP_SENSOR_0 (5)\n", five},
		{"another macro", "#define BEAD 5\n#define TEMP_SENSOR_0 BEAD\n", five},
		{"low pull-up", "#define TEMP_SENSOR_0 1010\n", parser.SensorDef{
			Form: parser.FormPoints, Kind: parser.Platinum, Name: "1010",
			Curve: "pt1000", PullupOhm: 1000, HighC: 300,
		}},
		{"chip", "#define TEMP_SENSOR_0 -3\n",
			parser.SensorDef{Form: parser.FormAmplifier, Kind: parser.Thermocouple, Name: "-3"}},
		{"platinum chip", "#define TEMP_SENSOR_0 -5\n",
			parser.SensorDef{Form: parser.FormAmplifier, Kind: parser.PlatinumAmplifier, Name: "-5"}},
		{"placeholder", "#define TEMP_SENSOR_0 998\n",
			parser.SensorDef{Form: parser.FormPlaceholder, Name: "998", FixedC: 25}},
		{"placeholder with a figure", "#define TEMP_SENSOR_0 999\n#define DUMMY_THERMISTOR_999_VALUE 210\n",
			parser.SensorDef{Form: parser.FormPlaceholder, Name: "999", FixedC: 210}},
		{"placeholder without a figure", "#define TEMP_SENSOR_0 999\n",
			parser.SensorDef{Form: parser.FormPlaceholder, Name: "999", FixedC: 25}},
		{"table of an older generation", "#define CONFIGURATION_H_VERSION 010109\n#define TEMP_SENSOR_0 1\n",
			parser.SensorDef{Form: parser.FormPoints, Kind: parser.NTC, Name: "1",
				Curve: "ntc-100k-4092", PullupOhm: 4700, HighC: 300}},
		{"not known", newerLine + "#define TEMP_SENSOR_0 777\n", parser.SensorDef{
			Name: "777",
			Note: "the newer generation of this firmware has no such definition, " +
				"and refuses to build with it",
		}},
		{"of the other generation", olderLine + "#define TEMP_SENSOR_0 504\n", parser.SensorDef{
			Name: "504",
			Note: "the older generation of this firmware has no such definition, " +
				"and refuses to build with it",
		}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			s := readText(t, 0, "h", test.text).printer.Hotend.Sensor
			got := s.Value
			if test.want.Note == "" {
				got.Note = ""
			}
			if s.State != parser.Set || got.Form != test.want.Form || got.Kind != test.want.Kind ||
				got.Name != test.want.Name || got.Curve != test.want.Curve ||
				got.PullupOhm != test.want.PullupOhm || got.HighC != test.want.HighC ||
				got.FixedC != test.want.FixedC || got.Note != test.want.Note {
				t.Errorf("%s %+v, want %+v", s.State, got, test.want)
			}
		})
	}
}

// The older generation compiles 0 in for the cubic coefficient: what the files
// say of it makes no curve there, and the reading says so.
func TestCubicOfOlderGeneration(t *testing.T) {
	const custom = `#define TEMP_SENSOR_0 1000
#define HOTEND0_PULLUP_RESISTOR_OHMS 4700
#define HOTEND0_RESISTANCE_25C_OHMS 100000
#define HOTEND0_BETA 4600
#define HOTEND0_SH_C_COEFF `
	for _, test := range []struct {
		version, value string
		want           float64
		said           bool
	}{
		{"02010300", "1e-7", 1e-7, false},
		{"02010202", "1e-7", 1e-7, false},
		{"02000901", "1e-7", 0, true},
		{"020008", "1e-7", 0, true},
		{"02000901", "0", 0, false},
	} {
		text := "#define CONFIGURATION_H_VERSION " + test.version + "\n" + custom + test.value + "\n"
		d := readText(t, 0, "h", text).Printer().Hotend.Sensor.Value
		if d.CubicC != test.want || d.BetaK != 4600 || (d.Note != "") != test.said {
			t.Errorf("%s, %s: B %v, C %v, note %q; want C %v",
				test.version, test.value, d.BetaK, d.CubicC, d.Note, test.want)
		}
	}
}
