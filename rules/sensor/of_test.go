package sensor

import (
	"math"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/parser/sheet"
)

func TestOfDef(t *testing.T) {
	points := []parser.SensorPoint{{TempC: 25, Ohm: 100e3}, {TempC: 150, Ohm: 1770}, {TempC: 250, Ohm: 230}}
	for _, c := range []struct {
		name    string
		def     parser.SensorDef
		at150   float64 // °C at 1770 Ω
		pullup  float64
		problem string
	}{
		{"curve", parser.SensorDef{Form: parser.FormCurve, Curve: "ntc-100k-3950", PullupOhm: 1000}, 150,
			1000, ""},
		{"points", parser.SensorDef{Form: parser.FormPoints, Points: points}, 150, UsualPullupOhm, ""},
		{"table", parser.SensorDef{Form: parser.FormPoints, Points: points, Join: parser.JoinOhm}, 150,
			UsualPullupOhm, ""},
		{"beta", parser.SensorDef{Form: parser.FormBeta, R25Ohm: 1770, BetaK: 4000}, 25, UsualPullupOhm, ""},
		{"no number for a pull-up", parser.SensorDef{Form: parser.FormCurve, Curve: "ntc-100k-3950",
			PullupOhm: math.NaN(), SeriesOhm: -1}, 150, UsualPullupOhm, ""},
		{"no such curve", parser.SensorDef{Form: parser.FormCurve, Curve: "ntc"}, 0, 0, "no curve is known"},
		{"bad points", parser.SensorDef{Form: parser.FormPoints}, 0, 0, "too few"},
		{"bad Beta", parser.SensorDef{Form: parser.FormBeta}, 0, 0, "above 0"},
		{"chip", parser.SensorDef{Form: parser.FormAmplifier, Kind: parser.Thermocouple}, 0, 0, "no curve"},
		{"nothing", parser.SensorDef{}, 0, 0, "no curve"},
	} {
		got, err := OfDef(&c.def)
		switch {
		case c.problem != "":
			if err == nil || !strings.Contains(err.Error(), c.problem) {
				t.Errorf("%s: error %v, want one that says %q", c.name, err, c.problem)
			}
		case err != nil:
			t.Errorf("%s: %v", c.name, err)
		case math.Abs(got.Curve.TempC(1770)-c.at150) > 1e-6 || got.PullupOhm != c.pullup ||
			got.SeriesOhm != 0:
			t.Errorf("%s: %g °C at 1770 Ω, pull-up %g, series %g", c.name, got.Curve.TempC(1770),
				got.PullupOhm, got.SeriesOhm)
		}
	}
}

func TestOfSheet(t *testing.T) {
	key := func(id string) sheet.Key[string] { return sheet.Key[string]{Value: id, Given: true} }
	kind := func(k parser.SensorKind) sheet.Key[parser.SensorKind] {
		return sheet.Key[parser.SensorKind]{Value: k, Given: true}
	}
	points := func(p ...parser.SensorPoint) sheet.Key[[]parser.SensorPoint] {
		return sheet.Key[[]parser.SensorPoint]{Value: p, Given: true}
	}
	for _, c := range []struct {
		name     string
		sensor   sheet.Sensor
		ohm, at  float64
		problems string
	}{
		{"curve", sheet.Sensor{Kind: kind(parser.NTC), Curve: key("ntc-100k-4267")}, 1360, 150, ""},
		{"two points", sheet.Sensor{Kind: kind(parser.NTC), Points: points(parser.SensorPoint{TempC: 25,
			Ohm: 100e3}, parser.SensorPoint{TempC: 200, Ohm: 600})}, 600, 200, ""},
		{"platinum points", sheet.Sensor{Kind: kind(parser.Platinum),
			Points: points(parser.SensorPoint{TempC: 0, Ohm: 1000},
				parser.SensorPoint{TempC: 200, Ohm: 1760})}, 1380, 100, ""},
		{"beta", sheet.Sensor{Kind: kind(parser.NTC),
			Beta: sheet.Key[sheet.Beta]{Value: sheet.Beta{R25Ohm: 100e3, BK: 3950}, Given: true}}, 100e3, 25,
			""},
		{"no such curve", sheet.Sensor{Kind: kind(parser.NTC), Curve: key("ntc-100k-3905")}, 0, 0,
			"did you mean ntc-100k-3950?"},
		{"nor one like it", sheet.Sensor{Kind: kind(parser.NTC), Curve: key("ntc-200k")}, 0, 0,
			"known are ntc-200k-4338"},
		{"chip", sheet.Sensor{Kind: kind(parser.Thermocouple)}, 0, 0, "thermocouple"},
		{"nothing", sheet.Sensor{Kind: kind(parser.NTC)}, 0, 0, "give curve, points or beta"},
	} {
		got, err := OfSheet(&c.sensor)
		switch {
		case c.problems != "":
			if err == nil || !strings.Contains(err.Error(), c.problems) {
				t.Errorf("%s: error %v, want one that says %q", c.name, err, c.problems)
			}
		case err != nil:
			t.Errorf("%s: %v", c.name, err)
		case math.Abs(got.TempC(c.ohm)-c.at) > 1e-6:
			t.Errorf("%s: %g Ω is %g °C, want %g", c.name, c.ohm, got.TempC(c.ohm), c.at)
		}
	}
}

func TestCompare(t *testing.T) {
	real, believed := circuit(known(t, "ntc-100k-3950"), 4700), circuit(known(t, "ntc-100k-4267"), 4700)
	rows := Compare(real, believed, 180, 260, 20)
	want := []float64{193.0, 214.2, 235.3, 256.3, 277.3} // the issue's
	if len(rows) != len(want) {
		t.Fatalf("%d rows, want %d", len(rows), len(want))
	}
	for i, r := range rows {
		if r.IndicatedC != 180+20*float64(i) || math.Abs(r.ActualC-want[i]) > 0.3 ||
			r.ErrorC != r.ActualC-r.IndicatedC {
			t.Errorf("row %d is %+v, want %g actual", i, r, want[i])
		}
	}
	for _, odd := range [][3]float64{{0, 1e9, 1e-9}, {0, 100, 0}, {0, 100, -1}, {100, 0, 10},
		{math.NaN(), math.Inf(1), math.NaN()}} {
		for _, r := range Compare(real, believed, odd[0], odd[1], odd[2]) {
			if math.IsNaN(r.IndicatedC) || math.IsNaN(r.ActualC) || math.IsInf(r.ActualC, 0) {
				t.Errorf("%v gives %+v", odd, r)
			}
		}
		if n := len(Compare(real, believed, odd[0], odd[1], odd[2])); n > 1001 {
			t.Errorf("%v gives %d rows", odd, n)
		}
	}
	for _, step := range []float64{0, -1, 101} { // no step, and one beyond the end
		if n := len(Compare(real, believed, 0, 100, step)); n != 1 {
			t.Errorf("steps of %g K give %d rows, want one", step, n)
		}
	}
}

func TestParse(t *testing.T) {
	if k, err := Parse("beta:100000:3950"); err != nil || math.Abs(k.Curve.Ohms(25)-100e3) > 1e-6 {
		t.Errorf("%+v, %v", k, err)
	}
	if k, err := Parse("pt100"); err != nil || k.Kind != parser.Platinum {
		t.Errorf("%+v, %v", k, err)
	}
	for _, bad := range []string{"", "ntc", "beta:", "beta:1", "beta:1:2:3", "beta:-1:3950", "beta:NaN:3950",
		"beta:100000:Inf"} {
		if k, err := Parse(bad); err == nil {
			t.Errorf("%q is %+v, want an error", bad, k)
		}
	}
}
