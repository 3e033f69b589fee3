package rules

import (
	"math"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/parser/defines"
	"preflash/parser/sheet"
	"preflash/rules/sensor"
)

// curveDef is a definition of a known NTC curve as a numbered one would be.
func curveDef(name, curve string) parser.SensorDef {
	return parser.SensorDef{Form: parser.FormCurve, Kind: parser.NTC, Name: name, Curve: curve, PullupOhm: 4700}
}

func betaDef(betaK float64) parser.SensorDef {
	return parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, Name: "R", R25Ohm: 100_000, BetaK: betaK, PullupOhm: 4700,
		Note: "a retired name"}
}

func readAs(in *Input, d parser.SensorDef) { in.Printer.Hotend.Sensor.Value = d }

// pointsStyle is the stub with a pull-up of its own, no definition of any
// curve, and three-point custom definitions.
type pointsStyle struct{ stubStyle }

func (pointsStyle) Defines(string, float64) (parser.SensorDef, bool) {
	return parser.SensorDef{}, false
}
func (pointsStyle) CustomForm() parser.SensorForm { return parser.FormPoints }

// actualOf computes what the rule should find, by the chain alone.
func actualOf(t *testing.T, believed parser.SensorDef, real string, pullupOhm, indicated float64) float64 {
	t.Helper()
	c, err := sensor.OfDef(&believed)
	if err != nil {
		t.Fatal(err)
	}
	k, ok := sensor.Find(real)
	if !ok {
		t.Fatalf("no curve %s", real)
	}
	return c.Actual(&sensor.Circuit{Curve: k.Curve, PullupOhm: pullupOhm}, indicated)
}

func TestSensorCurveSilent(t *testing.T) {
	for _, c := range []struct {
		name  string
		spoil func(*Input)
	}{
		{"healthy", func(*Input) {}},
		{"another kind: sensor-kind speaks", func(in *Input) { in.Sheet.New.Sensor.Kind.Value = parser.Platinum }},
		{"placeholder", func(in *Input) { readAs(in, parser.SensorDef{Form: parser.FormPlaceholder}) }},
		{"unknown definition", func(in *Input) { readAs(in, parser.SensorDef{Form: parser.FormUnknown, Kind: parser.NTC}) }},
		{"unknown curve in the sheet", func(in *Input) {
			in.Sheet.New.Sensor.Curve.Value = "ntc-1"
			readAs(in, curveDef("5", "ntc-100k-4267"))
		}},
		{"a chip", func(in *Input) {
			readAs(in, parser.SensorDef{Form: parser.FormAmplifier, Kind: parser.Thermocouple})
			in.Sheet.New.Sensor = sheet.Sensor{Kind: given("new.sensor.kind", parser.Thermocouple)}
		}},
		{"the board has another pull-up, and the configuration knows", func(in *Input) {
			in.Printer.Hotend.PullupOhm = set(parser.HotendPullup, 2200.0)
			in.Sheet.Printer.PullupOhm = absent("printer.pullup_ohm", 4700.0)
		}},
		{"another pull-up that sheet and configuration agree on", func(in *Input) {
			in.Printer.Hotend.PullupOhm = set(parser.HotendPullup, 2200.0)
			in.Sheet.Printer.PullupOhm.Value = 2200
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			in := healthyInput()
			c.spoil(in)
			silent(t, sensorCurve, in)
		})
	}
}

// The case: a 3950 bead read as a 104-type one prints too hot (common
// practice, no source). The style has a definition of the right curve.
func TestSensorCurveTooHot(t *testing.T) {
	in := healthyInput()
	readAs(in, curveDef("5", "ntc-100k-4267"))
	f := one(t, sensorCurve, in)
	if f.Level != Error {
		t.Errorf("level %s, want error", f.Level)
	}
	if got := f.Values["actual_c"].(float64); math.Abs(got-277.3) > 0.3 {
		t.Errorf("260 indicated is %.2f, want 277.3", got)
	}
	actual := actualOf(t, curveDef("5", "ntc-100k-4267"), "ntc-100k-3950", 4700, 260)
	wantValues(t, f, Values{
		"at_c": 260.0, "actual_c": actual, "error_c": actual - 260,
		"band_c": f.Values["band_c"], "worst_at_c": 260.0, "worst_error_c": actual - 260,
	})
	wantSaid(t, f, "5 (ntc-100k-4267)", "ntc-100k-3950", "260 °C indicated is 277.3 °C actual", "17.3 K hotter")
	right, _ := stubStyle{}.Defines("ntc-100k-3950", 4700)
	wantChanges(t, f, in.Printer.Hotend.Sensor.To(right))
	if f.At.Text() != "hotend sensor" {
		t.Errorf("points at %q", f.At.Text())
	}
}

// The band by hand: at 260 °C, 1 % of R25 and 1 % of B with the local slope.
func TestSensorCurveBand(t *testing.T) {
	in := healthyInput()
	readAs(in, curveDef("5", "ntc-100k-4267"))
	f := one(t, sensorCurve, in)
	k, _ := sensor.Find("ntc-100k-3950")
	slope := math.Log(k.Curve.Ohms(259)/k.Curve.Ohms(261)) / 2
	want := 0.01 * math.Sqrt(1+math.Pow(math.Log(100_000/k.Curve.Ohms(260)), 2)) / slope
	if got := f.Values["band_c"].(float64); math.Abs(got-want) > 0.01 {
		t.Errorf("band %.3f K, want %.3f", got, want)
	}
}

// Wider tolerances than the error make it a warning: 4092 on a 3950 bead is a
// few kelvin off, within what the sensor itself may be.
func TestSensorCurveInsideBand(t *testing.T) {
	in := healthyInput()
	readAs(in, curveDef("1", "ntc-100k-4092"))
	in.Sheet.New.PrintC.Value = [2]float64{190, 200}
	in.Sheet.New.Sensor.BetaTolerance.Value = 0.03
	f := one(t, sensorCurve, in)
	if f.Level != Warning {
		t.Errorf("level %s, want warning", f.Level)
	}
	if got := f.Values["actual_c"].(float64); math.Abs(got-202.5) > 0.3 {
		t.Errorf("200 indicated is %.2f, want 202.5", got)
	}
	// Above 5 K: an error, unless the band is wider.
	readAs(in, betaDef(3950))
	in.Sheet.New.Sensor.BetaTolerance.Value = 0.01
	if f := one(t, sensorCurve, in); f.Level != Error {
		t.Errorf("plain Beta: level %s, want error", f.Level)
	}
	in.Sheet.New.Sensor.BetaTolerance.Value = 0.10
	if f := one(t, sensorCurve, in); f.Level != Warning {
		t.Errorf("plain Beta with a wide band: level %s, want warning", f.Level)
	}
}

func TestSensorCurvePlainBeta(t *testing.T) {
	in := healthyInput()
	readAs(in, betaDef(3950))
	in.Sheet.New.PrintC.Value = [2]float64{180, 220}
	f := one(t, sensorCurve, in)
	if got := f.Values["actual_c"].(float64); math.Abs(got-204.5) > 0.3 {
		t.Errorf("220 indicated is %.2f, want 204.5", got)
	}
	wantSaid(t, f, "colder than shown", "a plain Beta of 3950 K", "a retired name")
}

// Within print_c all is well enough, but the highest target takes the hotend
// past its rating.
func TestSensorCurveOverRating(t *testing.T) {
	in := healthyInput()
	readAs(in, curveDef("1", "ntc-100k-4092"))
	in.Sheet.New.PrintC.Value = [2]float64{190, 200}
	in.Printer.Limits.MaxTemp.Value, in.Printer.Limits.Margin.Value = 415, 15
	in.Sheet.New.RatedC.Value = 390
	at400 := actualOf(t, curveDef("1", "ntc-100k-4092"), "ntc-100k-3950", 4700, 400)
	if at400 < 380 {
		t.Fatalf("400 indicated is %g", at400)
	}
	// 4092 reads a 3950 bead too high up there: the limit alone is at fault.
	if f := one(t, sensorCurve, in); f.Level != Warning {
		t.Errorf("level %s, want warning: %s", f.Level, f.Message)
	}
	// A 4267 definition reads it too low.
	readAs(in, curveDef("5", "ntc-100k-4267"))
	in.Sheet.New.PrintC.Value = [2]float64{20, 45}
	in.Printer.Limits.MaxTemp.Value = 300
	in.Sheet.New.RatedC.Value = 290
	f := one(t, sensorCurve, in)
	if f.Level != Error {
		t.Errorf("level %s, want error", f.Level)
	}
	wantSaid(t, f, "at the highest target, 285 °C", "above its rating of 290 °C")
}

// A pull-up that is a setting of its own: it alone is changed where that
// suffices, and with the curve where it does not.
func TestSensorCurvePullup(t *testing.T) {
	spoil := func() *Input {
		in := healthyInput()
		in.Style = pointsStyle{}
		in.Printer.Hotend.PullupOhm = set(parser.HotendPullup, 4700.0)
		in.Sheet.Printer.PullupOhm.Value = 2200
		return in
	}
	in := spoil()
	f := one(t, sensorCurve, in)
	wantChanges(t, f, parser.Change{Key: parser.HotendPullup, Value: 2200.0})
	// A smaller pull-up than believed makes the sensor look colder than it is.
	wantSaid(t, f, "with a pull-up of 4700 Ω, the board has 2200 Ω", "50.2 K hotter")

	in = spoil()
	readAs(in, curveDef("T", "ntc-100k-4267"))
	f = one(t, sensorCurve, in)
	if len(f.Changes) != 2 || f.Changes[0].Key != parser.HotendPullup || f.Changes[1].Key != "hotend sensor" {
		t.Fatalf("changes %v, want the pull-up and the sensor", f.Changes)
	}
	in.Printer.Hotend.PullupOhm.Value = f.Changes[0].Value.(float64)
	readAs(in, f.Changes[1].Value.(parser.SensorDef))
	silent(t, sensorCurve, in)

	// A pull-up that belongs to the definition calls for another definition.
	in = healthyInput()
	in.Sheet.Printer.PullupOhm.Value = 1000
	f = one(t, sensorCurve, in)
	if len(f.Changes) != 1 {
		t.Fatalf("changes %v, want one", f.Changes)
	}
	if d := f.Changes[0].Value.(parser.SensorDef); d.Form != parser.FormBeta || d.PullupOhm != 1000 {
		t.Errorf("proposes %+v", d)
	}
}

// Whatever is proposed, the rule is silent afterwards: both custom forms, for
// every known NTC read as every other and for a Beta of the sheet.
func TestSensorCurveProposalsHold(t *testing.T) {
	for _, style := range []parser.Style{stubStyle{}, pointsStyle{}} {
		for _, real := range sensor.All() {
			for _, read := range sensor.All() {
				if real.Kind != parser.NTC || read.Kind != parser.NTC {
					continue
				}
				in := healthyInput()
				in.Style = style
				in.Sheet.New.Sensor.Curve.Value = real.ID
				readAs(in, curveDef("x", read.ID))
				for _, f := range run(t, sensorCurve, in) {
					if len(f.Changes) != 1 {
						t.Errorf("%s read as %s: changes %v", real.ID, read.ID, f.Changes)
						continue
					}
					readAs(in, f.Changes[0].Value.(parser.SensorDef))
					silent(t, sensorCurve, in)
				}
			}
		}
	}
	in := healthyInput()
	in.Sheet.New.Sensor.Curve = absent("new.sensor.curve", "")
	in.Sheet.New.Sensor.Beta = given("new.sensor.beta", sheet.Beta{R25Ohm: 100_000, BK: 3990})
	f := one(t, sensorCurve, in)
	d := f.Changes[0].Value.(parser.SensorDef)
	if d.R25Ohm != 100_000 || d.BetaK != 3990 || d.CubicC != 0 {
		t.Errorf("a plain Beta of 3990 K became %+v", d)
	}
}

// A definition whose table ends inside the limits would hide a broken sensor: a
// finding of sensor-fault that was not there before. The custom one is taken.
func TestSensorCurveMakesNoBlindSensor(t *testing.T) {
	in := healthyInput()
	in.Style = shortTable{}
	readAs(in, curveDef("5", "ntc-100k-4267"))
	silent(t, sensorFault, in)
	f := one(t, sensorCurve, in)
	if len(f.Changes) != 1 {
		t.Fatalf("changes %v, want one", f.Changes)
	}
	readAs(in, f.Changes[0].Value.(parser.SensorDef))
	silent(t, sensorFault, in)
	silent(t, sensorCurve, in)

	// Where the fault goes unseen already, it is no reason against the table.
	in = healthyInput()
	in.Style = shortTable{}
	in.Printer.Limits.MinTemp = off[float64](parser.MinTemp)
	readAs(in, curveDef("5", "ntc-100k-4267"))
	if d := one(t, sensorCurve, in).Changes[0].Value.(parser.SensorDef); d.Name != "11" {
		t.Errorf("proposes %+v", d)
	}
}

// shortTable is the stub whose table for a 3950 bead ends at 20 °C.
type shortTable struct{ stubStyle }

func (shortTable) Defines(curve string, pullupOhm float64) (parser.SensorDef, bool) {
	d, ok := stubStyle{}.Defines(curve, pullupOhm)
	d.LowC, d.HighC = 20, 300
	return d, ok
}

// The right curve in a table that ends too low: the firmware stops there.
func TestSensorCurveTableEnds(t *testing.T) {
	in := healthyInput()
	d := curveDef("75", "ntc-100k-3950")
	d.LowC, d.HighC, d.Note = 0, 200, "for a bed"
	readAs(in, d)
	f := one(t, sensorCurve, in)
	if f.Level != Error || len(f.Changes) != 1 {
		t.Errorf("%s, changes %v", f.Level, f.Changes)
	}
	wantSaid(t, f, "its table ends at 200 °C", "off at 199 °C", "; definition 75: for a bed")
	d.HighC = 262 // 2 °C above the top of print_c
	readAs(in, d)
	silent(t, sensorCurve, in)
	d.HighC = 261
	readAs(in, d)
	one(t, sensorCurve, in)
}

// Platinum has no custom form: where the style has no definition there is no
// change, and the finding says so.
func TestSensorCurvePlatinum(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.Sensor.Kind.Value = parser.Platinum
	in.Sheet.New.Sensor.Curve.Value = "pt1000"
	readAs(in, parser.SensorDef{Form: parser.FormCurve, Kind: parser.Platinum, Name: "P", Curve: "pt1000", PullupOhm: 1000})
	f := one(t, sensorCurve, in)
	if len(f.Changes) != 0 {
		t.Errorf("changes %v, want none", f.Changes)
	}
	// Class B of IEC 60751 at 260 °C.
	if got := f.Values["band_c"].(float64); math.Abs(got-1.6) > 1e-9 {
		t.Errorf("band %g K, want 1.6", got)
	}
	wantSaid(t, f, "no definition that reads it right")
}

// A definition whose pull-up is not the board's calls for the one of the same
// curve with the board's.
func TestSensorCurveBoardsPullup(t *testing.T) {
	for _, c := range []struct {
		curve, in, want string
		configured      float64
		boardOhm        float64
	}{
		{"pt1000", "1047", "1010", 4700, 1000},
		{"pt1000", "1010", "1022", 1000, 2200},
		{"pt100", "110", "147", 1000, 4700},
		{"ntc-100k-4092", "1", "51", 4700, 1000},
		{"ntc-100k-4267", "55", "5", 1000, 4700},
	} {
		in := healthyInput()
		in.Style = defines.Style
		known, _ := sensor.Find(c.curve)
		in.Sheet.New.Sensor.Kind.Value = known.Kind
		in.Sheet.New.Sensor.Curve.Value = c.curve
		in.Sheet.Printer.PullupOhm.Value = c.boardOhm
		d := curveDef(c.in, c.curve)
		d.Kind, d.PullupOhm = known.Kind, c.configured
		readAs(in, d)
		f := one(t, sensorCurve, in)
		if len(f.Changes) != 1 {
			t.Errorf("%s as %s on %g Ω: %s", c.curve, c.in, c.boardOhm, f.Message)
			continue
		}
		right := f.Changes[0].Value.(parser.SensorDef)
		if right.Name != c.want || strings.Contains(f.Message, "no definition") {
			t.Errorf("%s as %s on %g Ω: proposes %q; %s", c.curve, c.in, c.boardOhm, right.Name, f.Message)
		}
		readAs(in, right)
		for _, f := range run(t, sensorCurve, in) {
			if f.Level != Note {
				t.Errorf("%s as %s on %g Ω: %s", c.curve, right.Name, c.boardOhm, f.Message)
			}
		}
	}
}

// Firmware that may not read a cubic coefficient gets R25 and B alone, fitted
// where it prints: right there, and off on a cold hotend.
func TestSensorCurveWithoutCubic(t *testing.T) {
	for _, known := range sensor.All() {
		if known.Kind != parser.NTC {
			continue
		}
		in := healthyInput()
		in.Printer.Hotend.CustomCubic = false
		in.Sheet.New.Sensor.Curve.Value = known.ID
		in.Sheet.Printer.PullupOhm.Value = 2200 // no definition of the stub's
		readAs(in, parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, R25Ohm: 30e3, BetaK: 3400, PullupOhm: 4700})
		f := one(t, sensorCurve, in)
		if known.Curve.Ohms(25) > 1e6 {
			wantChanges(t, f) // with it, an open sensor would show more than the minimum
			continue
		}
		if len(f.Changes) != 1 {
			t.Errorf("%s: no change: %s", known.ID, f.Message)
			continue
		}
		d := f.Changes[0].Value.(parser.SensorDef)
		if d.Form != parser.FormBeta || d.CubicC != 0 || d.PullupOhm != 2200 {
			t.Errorf("%s: proposes %+v", known.ID, d)
		}
		real := parser.SensorDef{Form: parser.FormCurve, Kind: parser.NTC, Curve: known.ID, PullupOhm: 2200}
		limitC := in.Printer.Limits.MaxTemp.Value - in.Printer.Limits.Margin.Value
		for _, tempC := range []float64{190, 230, 260, limitC} {
			if got := actualOf(t, d, known.ID, 2200, tempC); math.Abs(got-tempC) > 1 {
				t.Errorf("%s: %+v reads %g °C at %g", known.ID, d, tempC, got)
			}
		}
		// What it shows cold is hotter, so that the minimum never trips.
		r, err := sensor.OfDef(&real)
		if err != nil {
			t.Fatal(err)
		}
		c, err := sensor.OfDef(&d)
		if err != nil {
			t.Fatal(err)
		}
		shown := c.Indicated(r, 22)
		if shown < 22-0.1 {
			t.Errorf("%s: a hotend of 22 °C shows %g °C", known.ID, shown)
		}
		if said := strings.Contains(f.Message, "shows "+celsius(shown)+" at 22 °C"); said != (shown > 24) {
			t.Errorf("%s: at 22 °C it shows %g: %s", known.ID, shown, f.Message)
		}
		readAs(in, d)
		silent(t, sensorCurve, in)
	}
	// A Beta of the sheet is kept as it is.
	in := healthyInput()
	in.Printer.Hotend.CustomCubic = false
	in.Sheet.New.Sensor.Curve = absent("new.sensor.curve", "")
	in.Sheet.New.Sensor.Beta = given("new.sensor.beta", sheet.Beta{R25Ohm: 100_000, BK: 3990})
	if d := one(t, sensorCurve, in).Changes[0].Value.(parser.SensorDef); d.R25Ohm != 100_000 || d.BetaK != 3990 || d.CubicC != 0 {
		t.Errorf("a plain Beta of 3990 K became %+v", d)
	}
	// A range that a plain Beta cannot follow gets no change.
	in = healthyInput()
	in.Printer.Hotend.CustomCubic = false
	in.Sheet.New.Sensor.Curve.Value = "ntc-4700k-5130"
	in.Sheet.New.PrintC.Value = [2]float64{40, 280}
	readAs(in, parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, R25Ohm: 30e3, BetaK: 3400, PullupOhm: 4700})
	f := one(t, sensorCurve, in)
	wantChanges(t, f)
	wantSaid(t, f, "no definition that reads it right")
}

func TestSensorCurveCannotTell(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Sensor = unknown[parser.SensorDef](parser.HotendSensor)
	if f := one(t, sensorCurve, in); f.Level != Warning || f.Changes != nil {
		t.Errorf("%s with changes %v", f.Level, f.Changes)
	}
	in = healthyInput()
	in.Printer.Hotend.PullupOhm = unknown[float64](parser.HotendPullup)
	wantSaid(t, one(t, sensorCurve, in), "cannot tell the hotend pull-up")
}

func BenchmarkSensorRules(b *testing.B) {
	rules := []*Rule{sensorKind, sensorPlaceholder, sensorUnknown, sensorCurve, sensorResolution, sensorFault}
	for _, c := range []struct {
		name string
		def  parser.SensorDef
	}{
		{"healthy", curveDef("11", "ntc-100k-3950")},
		{"wrong curve", curveDef("5", "ntc-100k-4267")},
	} {
		b.Run(c.name, func(b *testing.B) {
			in := healthyInput()
			readAs(in, c.def)
			b.ReportAllocs()
			for b.Loop() {
				for _, r := range rules {
					r.Check(in, func(Finding) {})
				}
			}
		})
	}
}

func TestSensorCurveDoubt(t *testing.T) {
	in := healthyInput()
	silent(t, sensorCurve, in)
	in.Printer.Hotend.Sensor.Value.Doubt = "versions differ"
	f := one(t, sensorCurve, in)
	if f.Level != Note {
		t.Errorf("level %s, want note", f.Level)
	}
	wantSaid(t, f, "11 is taken for ntc-100k-3950", "versions differ")
	wantChanges(t, f)
}
