package rules

import (
	"math"
	"testing"

	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

// curveDef is a definition of a known NTC curve as a numbered one would be.
func curveDef(name, curve string) parser.SensorDef {
	return parser.SensorDef{Form: parser.FormCurve, Kind: parser.NTC, Name: name, Curve: curve,
		PullupOhm: 4700}
}

func betaDef(betaK float64) parser.SensorDef {
	return parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, Name: "R", R25Ohm: 100_000, BetaK: betaK,
		PullupOhm: 4700,
		Note:      "a retired name"}
}

func readAs(in *Input, d parser.SensorDef) { in.Printer.Hotend.Sensor.Value = d }

// pointsConfig has no definition of any curve, and three-point custom ones.
var pointsConfig = stubConfig{form: parser.FormPoints}

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
		{"another kind: sensor-kind speaks",
			func(in *Input) { in.Sheet.New.Sensor.Kind.Value = parser.Platinum }},
		{"placeholder", func(in *Input) { readAs(in, parser.SensorDef{Form: parser.FormPlaceholder}) }},
		{"unknown definition",
			func(in *Input) { readAs(in, parser.SensorDef{Form: parser.FormUnknown, Kind: parser.NTC}) }},
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
	wantSaid(t, f, "5 (ntc-100k-4267)", "ntc-100k-3950", "260 °C indicated is 277.3 °C actual",
		"17.3 K hotter")
	right := stubDef
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

// What the sensor itself may be off excuses an error, up to 6 K: 4092 on a 3950
// bead is 2.5 K off, a plain Beta of 3950 K about 12 K.
func TestSensorCurveInsideBand(t *testing.T) {
	for _, c := range []struct {
		def           parser.SensorDef
		betaTolerance float64
		level         Level // Note: silent
	}{
		{curveDef("1", "ntc-100k-4092"), 0.001, Warning},
		{curveDef("1", "ntc-100k-4092"), 0.03, Note},
		{betaDef(3950), 0.01, Error},
		{betaDef(3950), 0.10, Error},
	} {
		in := healthyInput()
		in.Sheet.New.PrintC.Value = [2]float64{190, 200}
		in.Sheet.New.Sensor.BetaTolerance.Value = c.betaTolerance
		readAs(in, c.def)
		if c.level == Note {
			silent(t, sensorCurve, in)
			continue
		}
		if f := one(t, sensorCurve, in); f.Level != c.level {
			t.Errorf("%s, tolerance %g: level %s, want %s", c.def.Name, c.betaTolerance, f.Level, c.level)
		}
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
		t.Errorf("level %s, want warning: %s", f.Level, f.Text())
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
		in.Config = pointsConfig
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
	for _, config := range []parser.Config{healthyInput().Config, pointsConfig} {
		for _, real := range sensor.All() {
			for _, read := range sensor.All() {
				if real.Kind != parser.NTC || read.Kind != parser.NTC {
					continue
				}
				in := healthyInput()
				in.Config = config
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

// A definition by which an open sensor would read a temperature that passes for
// a good one is not proposed, where the configured one is not such.
func TestSensorCurveMakesNoBlindSensor(t *testing.T) {
	blind := func() *Input {
		in := healthyInput()
		in.Sheet.New.Sensor.Curve.Value = "ntc-100k-4267"
		in.Config = stubConfig{defs: []parser.SensorDef{curveDef("5", "ntc-100k-4267")},
			form: parser.FormBeta}
		readAs(in, curveDef("11", "ntc-100k-3950"))
		in.Printer.Limits.MinTemp.Value = -100 // between what the two show open
		return in
	}
	in := blind()
	silent(t, sensorFault, in)
	f := one(t, sensorCurve, in)
	wantChanges(t, f)
	wantSaid(t, f, "no definition that reads it right")

	// Where the fault goes unseen already, it is no reason against it.
	in = blind()
	in.Printer.Limits.MinTemp = off[float64](parser.MinTemp)
	if d := one(t, sensorCurve, in).Changes[0].Value.(parser.SensorDef); d.Name != "5" {
		t.Errorf("proposes %+v", d)
	}
}

// The right curve in a table that ends too low: the firmware shuts down there.
func TestSensorCurveTableEnds(t *testing.T) {
	in := healthyInput()
	d := curveDef("75", "ntc-100k-3950")
	d.LowC, d.HighC, d.Note = 0, 200, "for a bed"
	readAs(in, d)
	f := one(t, sensorCurve, in)
	if f.Level != Warning {
		t.Errorf("%s", f.Level)
	}
	wantChanges(t, f, in.Printer.Hotend.Sensor.To(stubDef))
	wantSaid(t, f, "its table ends at 200 °C, where the firmware shuts down", "; definition 75: for a bed")
	d.HighC = 262 // one row below trips, and the reading must stay below that
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
	readAs(in, parser.SensorDef{Form: parser.FormCurve, Kind: parser.Platinum, Name: "P", Curve: "pt1000",
		PullupOhm: 1000})
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

// Of two firmwares that the files may be for the worse counts, and it is said.
func TestSensorCurveOfTwoFirmwares(t *testing.T) {
	for _, worse := range []bool{false, true} { // whether the first one is
		in := healthyInput()
		good, bad := stubDef, curveDef("11", "ntc-100k-4267")
		first, second := good, bad
		if worse {
			first, second = bad, good
		}
		first.Or = &second
		readAs(in, first)
		f := one(t, sensorCurve, in)
		want := actualOf(t, bad, "ntc-100k-3950", 4700, 260)
		if math.Abs(f.Values["actual_c"].(float64)-want) > 1e-9 {
			t.Errorf("actual_c %v, want %g", f.Values["actual_c"], want)
		}
		wantSaid(t, f, "the worse counts")
		believed, _, ok := Circuits(in)
		if !ok || math.Abs(believed.Curve.Ohms(200)-436.4) > 20 {
			t.Errorf("what is drawn has %g Ω at 200 °C", believed.Curve.Ohms(200))
		}
	}
}

// A definition for another pull-up than the usual one, and a sheet that does not
// say what the board has: one warning, with the figures on the usual one.
func TestSensorCurvePullupUnsaid(t *testing.T) {
	in := healthyInput()
	in.Sheet.Printer.PullupOhm = absent("printer.pullup_ohm", 4700.0)
	d := stubDef
	d.PullupOhm = 10000
	readAs(in, d)
	f := one(t, sensorCurve, in)
	if f.Level != Warning || len(f.Changes) != 0 {
		t.Errorf("%s, changes %v", f.Level, f.Changes)
	}
	k, _ := sensor.Find("ntc-100k-3950")
	// At 260 °C indicated the firmware sees R/(R + 10 kΩ); on 4.7 kΩ that is the
	// resistance R·4.7/10.
	want := k.Curve.TempC(k.Curve.Ohms(260) * 0.47)
	if got := f.Values["actual_c"].(float64); math.Abs(got-want) > 1e-6 {
		t.Errorf("actual_c %g, want %g", got, want)
	}
	cold := k.Curve.TempC(k.Curve.Ohms(22) / 0.47)
	wantSaid(t, f, "give printer.pullup_ohm", hotter(want-260),
		"in a room of 22 °C it shows 22 °C on 10 kΩ, and "+unit.Celsius(cold)+" on 4700 Ω")

	in.Sheet.Printer.PullupOhm = given("printer.pullup_ohm", 10000.0)
	silent(t, sensorCurve, in)
	in.Sheet.Printer.PullupOhm = given("printer.pullup_ohm", 4700.0)
	if f := one(t, sensorCurve, in); f.Level != Error || len(f.Changes) != 1 {
		t.Errorf("%s, changes %v", f.Level, f.Changes)
	}
}

// Hotter than shown and above a rating is reported whatever the sensor's own band.
func TestSensorCurveAboveRating(t *testing.T) {
	in := healthyInput()
	readAs(in, curveDef("1", "ntc-100k-4092")) // 2.4 K hotter than shown at 200 °C
	in.Sheet.New.PrintC.Value = [2]float64{180, 200}
	in.Printer.Limits.MaxTemp.Value = 215
	in.Sheet.New.Sensor.BetaTolerance.Value = 0.05
	silent(t, sensorCurve, in)
	in.Sheet.New.RatedC.Value = 202
	if f := one(t, sensorCurve, in); f.Level != Warning {
		t.Errorf("level %s", f.Level)
	}
	in.Sheet.New.RatedC.Value = 203
	silent(t, sensorCurve, in)
}

// How bad a definition is does not hang on the limits, so that a lower one makes
// it look neither better nor worse.
func TestSensorCurveFigure(t *testing.T) {
	figure := func(maxC float64, curve string) Figure {
		in := healthyInput()
		readAs(in, curveDef("1", curve))
		in.Printer.Limits.MaxTemp.Value = maxC
		return one(t, sensorCurve, in).Figure
	}
	low, high, other := figure(270, "ntc-100k-4267"), figure(320, "ntc-100k-4267"),
		figure(270, "ntc-100k-3974")
	if low != high || !low.Given() {
		t.Errorf("the figure is %v with a low limit and %v with a high one", low, high)
	}
	if other == low {
		t.Errorf("the figure is %v whatever the definition", low)
	}
}

// Of two firmwares that the files may be for the hotter one says how hot the
// hotend is, also where the other one is further off.
func TestActualOfTwoFirmwares(t *testing.T) {
	hotter, colder := curveDef("5", "ntc-100k-4267"), betaDef(3700)
	for _, colderFirst := range []bool{false, true} {
		in := healthyInput()
		first, second := hotter, colder
		if colderFirst {
			first, second = colder, hotter
		}
		first.Or = &second
		readAs(in, first)
		target, _ := HighestTarget(in)
		want := actualOf(t, hotter, "ntc-100k-3950", 4700, target)
		if got, ok := ActualAtHighestTarget(in); !ok || math.Abs(got-want) > 1e-9 {
			t.Errorf("at %g °C the hotend is at %g °C, want %g", target, got, want)
		}
	}
}
