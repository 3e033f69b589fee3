package sections

import (
	"math"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/rules/sensor"
)

// Every built-in type is placed: on a curve that is known, of its kind, or
// with a note.
func TestBuiltIns(t *testing.T) {
	seen := map[string]bool{}
	for i := range builtIns {
		b := &builtIns[i]
		if seen[b.name] {
			t.Errorf("%s stands twice", b.name)
		}
		seen[b.name] = true
		d := readText(t, "[extruder]\nsensor_type: "+b.name+"\n").Printer().Hotend.Sensor.Value
		if d.Name != b.name || d.Form != b.form || d.Kind != b.kind {
			t.Errorf("%s is read as %+v", b.name, d)
		}
		if b.curve != "" {
			if known, ok := sensor.Find(b.curve); !ok || known.Kind != b.kind {
				t.Errorf("%s: there is no curve %s of its kind", b.name, b.curve)
			}
		}
		switch d.Form {
		case parser.FormUnknown, parser.FormBeta:
			if d.Note == "" {
				t.Errorf("%s has no note", b.name)
			}
		case parser.FormCurve:
			if d.PullupOhm != usualPullup {
				t.Errorf("%s has a pull-up of %g", b.name, d.PullupOhm)
			}
		}
	}
}

// The chip for platinum is told the sensor's resistance; 100 Ω where it is not.
func TestNominalResistance(t *testing.T) {
	for _, test := range []struct {
		options string
		want    float64
	}{
		{"sensor_type: MAX31865\n", 100},
		{"sensor_type: MAX31865\nrtd_nominal_r: 1000\n", 1000},
		{"sensor_type: MAX31865\nrtd_nominal_r: ten\n", 0},
		{"sensor_type: MAX31855\nrtd_nominal_r: 1000\n", 0},
		{"sensor_type: PT100 INA826\n", 100}, // an amplifier's table is for that one
	} {
		got := readText(t, "[extruder]\n"+test.options).Printer().Hotend.Sensor.Value.R0Ohm
		if got != test.want {
			t.Errorf("%q: %g Ω, want %g", test.options, got, test.want)
		}
	}
}

// Every definition reads back as itself: a change settles.
func TestDefinitions(t *testing.T) {
	defs := readText(t, "[extruder]\nsensor_type: Generic 3950\n").Definitions()
	stand := map[string]string{}
	for _, d := range defs {
		got := readText(t, "[extruder]\nsensor_type: "+d.Name+"\n").Printer().Hotend.Sensor.Value
		if !sameDefinition(got, d) || d.PullupOhm != 0 {
			t.Errorf("defined as %+v, read as %+v", d, got)
		}
		if d.Note == noteRetired {
			t.Errorf("%s is proposed", d.Name)
		}
		stand[d.Curve] = d.Name
	}
	for _, id := range []string{
		"ntc-100k-3950", "ntc-100k-4092", "ntc-100k-4267", "ntc-100k-4300", "ntc-500k-3950", "pt1000",
	} {
		if stand[id] == "" {
			t.Errorf("no definition of %s", id)
		}
	}
	if stand["pt100"] != "" || len(Style.Blank().Definitions()) != len(defs) {
		t.Errorf("%v", stand)
	}
	// A name that a section of the configuration has taken is none of them.
	own := readText(t, `[thermistor Generic 3950]
temperature1: 25
resistance1: 100000
beta: 3000
[extruder]
sensor_type: PT1000
`).Definitions()
	if len(own) != len(defs)-1 {
		t.Errorf("%d definitions, want %d", len(own), len(defs)-1)
	}
}

// The table of PT1000 strays from its formula by 0.0043 K at most in its range,
// as the style's firmware publishes it.
func TestPlatinumTable(t *testing.T) {
	d := readText(t, "[extruder]\nsensor_type: PT1000\n").Printer().Hotend.Sensor.Value
	for i := 1; i < len(d.Points); i++ {
		a, b := d.Points[i-1], d.Points[i]
		mid := (a.TempC + b.TempC) / 2
		ohm := 1000 * (1 + mid*(3.9083e-3-5.775e-7*mid))
		shown := a.TempC + (ohm-a.Ohm)*(b.TempC-a.TempC)/(b.Ohm-a.Ohm)
		if math.Abs(shown-mid) > 0.0044 {
			t.Errorf("%g °C shows %g", mid, shown)
		}
	}
	if last := d.Points[len(d.Points)-1]; len(d.Points) != 50 || d.Points[0].TempC != 0 || last.TempC != 490 {
		t.Errorf("%d points to %g °C", len(d.Points), last.TempC)
	}
}

func TestCustomSensors(t *testing.T) {
	const three = `temperature1: 150
resistance1: 1770
temperature2: 25
resistance2: 100000
temperature3: 250
resistance3: 230
`
	points := []parser.SensorPoint{{TempC: 25, Ohm: 100e3}, {TempC: 150, Ohm: 1770}, {TempC: 250, Ohm: 230}}
	for _, test := range []struct {
		name, section, heater string
		want                  parser.SensorDef
		note                  string
	}{
		{"three points in any order", "[thermistor my bead]\n" + three,
			"sensor_type: my bead\npullup_resistor: 2200\ninline_resistor: 10\n",
			parser.SensorDef{Form: parser.FormPoints, Kind: parser.NTC, Name: "my bead", Points: points,
				PullupOhm: 2200, SeriesOhm: 10}, ""},
		{"white space in its name", "[thermistor\tmy   bead ]\n" + three, "sensor_type: my bead\n",
			parser.SensorDef{Form: parser.FormPoints, Kind: parser.NTC, Name: "my bead", Points: points,
				PullupOhm: 4700}, ""},
		{"a Beta at 25 °C", "[thermistor b]\ntemperature1: 25\nresistance1: 100000\nbeta: 4100\n",
			"sensor_type: b\n",
			parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, Name: "b", R25Ohm: 100e3, BetaK: 4100,
				PullupOhm: 4700}, ""},
		// R25 = 10 kΩ · exp(3950 · (1/298.15 − 1/373.15)), computed with Python.
		{"a Beta at another temperature",
			"[thermistor b]\ntemperature1: 100\nresistance1: 10000\nbeta: 3950\n", "sensor_type: b\n",
			parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, Name: "b", R25Ohm: 143365, BetaK: 3950,
				PullupOhm: 4700}, ""},
		{"its own section wins over a built-in type",
			"[thermistor Generic 3950]\ntemperature1: 25\nresistance1: 100000\nbeta: 3000\n",
			"sensor_type: Generic 3950\n",
			parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, Name: "Generic 3950", R25Ohm: 100e3,
				BetaK: 3000, PullupOhm: 4700}, ""},
		{"resistances, rising", `[adc_temperature p]
temperature1: 100
resistance1: 1385
temperature2: 0
resistance2: 1000
`, "sensor_type: p\n",
			parser.SensorDef{
				Form: parser.FormPoints, Kind: parser.Platinum, Name: "p", Join: parser.JoinOhm,
				PullupOhm: 4700,
				Points:    []parser.SensorPoint{{TempC: 0, Ohm: 1000}, {TempC: 100, Ohm: 1385}},
			}, ""},
		{"resistances, falling", `[adc_temperature p]
temperature1: 0
resistance1: 9
temperature2: 100
resistance2: 5
temperature3: 200
resistance3: 1
`, "sensor_type: p\ninline_resistor: 5\n",
			parser.SensorDef{
				Form: parser.FormPoints, Kind: parser.NTC, Name: "p", Join: parser.JoinOhm, PullupOhm: 4700,
				Points: []parser.SensorPoint{{TempC: 0, Ohm: 9}, {TempC: 100, Ohm: 5}, {TempC: 200, Ohm: 1}},
			}, ""},
		{"voltages", "[adc_temperature p]\ntemperature1: 0\nvoltage1: 0.5\ntemperature2: 100\nvoltage2: 1\n",
			"sensor_type: p\n", parser.SensorDef{}, "behind an amplifier"},
		{"resistances that turn", `[adc_temperature p]
temperature1: 0
resistance1: 9
temperature2: 100
resistance2: 5
temperature3: 200
resistance3: 6
`, "sensor_type: p\n", parser.SensorDef{}, "at 100 and 200 °C"},
		{"one point", "[adc_temperature p]\ntemperature1: 0\nresistance1: 9\n",
			"sensor_type: p\n", parser.SensorDef{}, "fewer than two points"},
		{"a point is missing", `[thermistor b]
temperature1: 25
resistance1: 100000
temperature2: 150
resistance2: 1770
`, "sensor_type: b\n", parser.SensorDef{}, "no temperature3"},
		{"two points are one",
			"[thermistor b]\n" + strings.ReplaceAll(three, "150", "25") + "resistance1: 100000\n",
			"sensor_type: b\n", parser.SensorDef{}, "are the same"},
		{"no resistance", "[thermistor b]\ntemperature1: 25\nresistance1: 0\nbeta: 3950\n",
			"sensor_type: b\n", parser.SensorDef{}, "must be above 0"},
		{"no number", "[thermistor b]\ntemperature1: 25\nresistance1: 100k\nbeta: 3950\n",
			"sensor_type: b\n", parser.SensorDef{}, "100k"},
		{"a pull-up that cannot be", "", "sensor_type: Generic 3950\npullup_resistor: 0\n",
			parser.SensorDef{}, "must be above 0"},
		{"a name that nobody knows", "", "sensor_type: Generic 3951\n", parser.SensorDef{},
			"no section of the configuration"},
		{"other letters", "", "sensor_type: generic 3950\n", parser.SensorDef{},
			"letter by letter, and knows “Generic 3950”"},
	} {
		s := readText(t, test.section+"[extruder]\n"+test.heater).Printer().Hotend.Sensor
		d := s.Value
		if math.Abs(d.R25Ohm-test.want.R25Ohm) < 1 {
			d.R25Ohm = test.want.R25Ohm
		}
		if s.State != parser.Set || !sameDefinition(d, test.want) || d.PullupOhm != test.want.PullupOhm ||
			d.SeriesOhm != test.want.SeriesOhm || !strings.Contains(d.Note, test.note) {
			t.Errorf("%s: %s\ngot  %+v\nwant %+v, saying %q", test.name, s.State, d, test.want, test.note)
		}
	}
}

// Three points through which no curve of three constants goes: the firmware
// falls back on the Beta through the coldest and the hottest.
func TestPointsThatFallBackOnBeta(t *testing.T) {
	// The middle point of a plain Beta curve of 4000 K, moved down by 20 %.
	r := func(tempC float64) float64 { return 100e3 * math.Exp(4000*(1/(tempC+zeroC)-1/298.15)) }
	points := []parser.SensorPoint{
		{TempC: 25, Ohm: r(25)}, {TempC: 150, Ohm: r(150) * 0.8}, {TempC: 250, Ohm: r(250)},
	}
	if c := cubicCoefficient(points); !(c < 0) {
		t.Fatalf("these points have a cubic coefficient of %g", c)
	}
	text := "[thermistor b]\ntemperature1: 25\nresistance1: 100000\n" +
		"temperature2: 150\nresistance2: " + decimal(r(150)*0.8, "") + "\n" +
		"temperature3: 250\nresistance3: " + decimal(r(250), "") + "\n" +
		"[extruder]\nsensor_type: b\n"
	d := readText(t, text).Printer().Hotend.Sensor.Value
	if d.Form != parser.FormBeta || math.Abs(d.BetaK-4000) > 1e-6 || math.Abs(d.R25Ohm-100e3) > 1e-3 ||
		d.Note == "" {
		t.Errorf("%+v", d)
	}
}

// The sign of the cubic coefficient agrees with the fit that the rules use.
func TestCubicCoefficient(t *testing.T) {
	points := []parser.SensorPoint{{TempC: 25, Ohm: 100e3}, {TempC: 150, Ohm: 1770}, {TempC: 250, Ohm: 230}}
	fit, err := sensor.FromPoints(points)
	if err != nil {
		t.Fatal(err)
	}
	if c := cubicCoefficient(points); math.Abs(c/fit.C-1) > 1e-9 {
		t.Errorf("%g, the rules' fit has %g", c, fit.C)
	}
}
