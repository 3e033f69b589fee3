package starter

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"preflash/parser"
	"preflash/rules/sensor"
)

// oldCurve begins a sheet for a definition and reads back which curve it gives
// the old hotend; nil where it gives none.
func oldCurve(t testing.TB, d parser.SensorDef) (sensor.Curve, parser.SensorKind) {
	t.Helper()
	facts := definesFacts()
	facts.Printer.Hotend.Sensor.Value = d
	text := filled(New(facts))
	s, err := read(t, text)
	if err != nil {
		t.Errorf("%+v makes a sheet that is refused: %v", d, err)
		return nil, parser.KindUnknown
	}
	c, err := sensor.OfSheet(&s.Old.Sensor)
	if err != nil {
		return nil, s.Old.Sensor.Kind.Value
	}
	return c, s.Old.Sensor.Kind.Value
}

func TestOldSensor(t *testing.T) {
	ntc, platinum := parser.NTC, parser.Platinum
	for _, tt := range []struct {
		name string
		def  parser.SensorDef
		kind parser.SensorKind // unknown: the sheet says nothing
	}{
		{"a known curve", parser.SensorDef{Form: parser.FormCurve, Kind: ntc, Curve: "ntc-100k-3950"}, ntc},
		{"a known platinum",
			parser.SensorDef{Form: parser.FormCurve, Kind: platinum, Curve: "pt1000"}, platinum},
		{"a Beta", parser.SensorDef{Form: parser.FormBeta, R25Ohm: 100e3, BetaK: 4300}, ntc},
		{"a Beta with its cubic term", parser.SensorDef{Form: parser.FormBeta, Kind: ntc, R25Ohm: 100e3,
			BetaK: 4000, CubicC: 5e-8}, ntc},
		{"three points", parser.SensorDef{Form: parser.FormPoints, Kind: ntc,
			Points: []parser.SensorPoint{{TempC: 20, Ohm: 126.8e3}, {TempC: 150, Ohm: 1360},
				{TempC: 300, Ohm: 80.65}}}, ntc},
		{"a table", parser.SensorDef{Form: parser.FormPoints, Kind: platinum, Join: parser.JoinOhm,
			Points: []parser.SensorPoint{{TempC: 300, Ohm: 2121}, {TempC: 0, Ohm: 1000},
				{TempC: 100, Ohm: 1385}, {TempC: 200, Ohm: 1759}}}, platinum},
	} {
		t.Run(tt.name, func(t *testing.T) {
			want, err := sensor.OfDef(&tt.def)
			if err != nil {
				t.Fatal(err)
			}
			got, kind := oldCurve(t, tt.def)
			if got == nil || kind != tt.kind {
				t.Fatalf("curve %v, kind %v, want kind %v", got, kind, tt.kind)
			}
			for c := 25.0; c <= 250; c += 25 {
				if back := got.TempC(want.Curve.Ohms(c)); math.Abs(back-c) > 0.05 {
					t.Errorf("%v °C comes back as %v °C", c, back)
				}
			}
		})
	}
}

func TestOldSensorWithoutACurve(t *testing.T) {
	for _, tt := range []struct {
		name string
		def  parser.SensorDef
		kind parser.SensorKind
		says string
	}{
		{"a chip", parser.SensorDef{Form: parser.FormAmplifier, Kind: parser.Thermocouple, Name: "-5"},
			parser.Thermocouple, `kind = "thermocouple"`},
		{"a dummy", parser.SensorDef{Form: parser.FormPlaceholder, Name: "998", FixedC: 25},
			parser.KindUnknown, "always reads 25 °C"},
		{"none", parser.SensorDef{Form: parser.FormNone, Name: "0"}, parser.KindUnknown, "no sensor"},
		{"not known", parser.SensorDef{Form: parser.FormUnknown, Name: "77",
			Note: "definition 77 is not known here"}, parser.KindUnknown, "no curve that Preflash knows"},
		{"no formula", parser.SensorDef{Form: parser.FormBeta, R25Ohm: -3, BetaK: 4000}, parser.KindUnknown,
			"no curve that Preflash knows"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if c, kind := oldCurve(t, tt.def); c != nil || kind != tt.kind {
				t.Errorf("curve %v, kind %v, want none and %v", c, kind, tt.kind)
			}
			facts := definesFacts()
			facts.Printer.Hotend.Sensor.Value = tt.def
			text := New(facts).Text()
			if !strings.Contains(strings.Join(strings.Fields(text), " "), tt.says) {
				t.Errorf("nothing says %q in\n%s", tt.says, text)
			}
		})
	}
}

// However odd the figures of a configuration, the sheet that they begin is one
// that the reader takes once it is filled.
func TestOddFiguresMakeNoBadSheet(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		odd := rapid.OneOf(rapid.Float64(),
			rapid.SampledFrom([]float64{0, -1, 0.4, 25, 100e3, 4000, math.NaN(), math.Inf(1)}))
		facts := definesFacts()
		p := facts.Printer
		p.Flow.NozzleMM.Value = odd.Draw(rt, "nozzle")
		p.ColdSide.OnAboveC.Value = odd.Draw(rt, "fan")
		p.Limits.MaxTemp.Value = odd.Draw(rt, "max temp")
		d := &p.Hotend.Sensor.Value
		d.Kind = rapid.SampledFrom([]parser.SensorKind{parser.KindUnknown, parser.NTC,
			parser.Platinum}).Draw(rt, "kind")
		d.Form = rapid.SampledFrom([]parser.SensorForm{parser.FormBeta, parser.FormPoints,
			parser.FormCurve}).Draw(rt, "form")
		d.Name = rapid.String().Draw(rt, "name")
		d.Curve = rapid.SampledFrom([]string{"pt100", "ntc-100k-4267", "no such curve"}).Draw(rt, "curve")
		d.R25Ohm, d.BetaK, d.CubicC = odd.Draw(rt, "r25"), odd.Draw(rt, "beta"), odd.Draw(rt, "cubic")
		d.Join = rapid.SampledFrom([]parser.Join{parser.JoinSteinhart, parser.JoinOhm,
			parser.JoinRatio}).Draw(rt, "join")
		for range rapid.IntRange(0, 4).Draw(rt, "points") {
			d.Points = append(d.Points, parser.SensorPoint{TempC: odd.Draw(rt, "°C"), Ohm: odd.Draw(rt, "Ω")})
		}
		s := New(facts)
		begun := s.Text()
		if _, err := read(t, begun); len(complaints(err)) > 0 {
			rt.Fatalf("begun, it is refused: %q\n%s", complaints(err), begun)
		}
		if _, err := read(t, filled(s)); err != nil {
			rt.Fatalf("filled, it is refused: %v\n%s", err, s.Text())
		}
	})
}
