package rules

import (
	"math"
	"slices"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/parser/defines"
	"preflash/parser/sheet"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

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
		in.Config = defines.Style.Blank()
		if c.want == "1022" {
			in.Config = readHeader(t, "#define CONFIGURATION_H_VERSION 02010300\n")
		}
		known, _ := sensor.Find(c.curve)
		in.Sheet.New.Sensor.Kind.Value = known.Kind
		in.Sheet.New.Sensor.Curve.Value = c.curve
		in.Sheet.Printer.PullupOhm.Value = c.boardOhm
		d := curveDef(c.in, c.curve)
		d.Kind, d.PullupOhm = known.Kind, c.configured
		readAs(in, d)
		f := one(t, sensorCurve, in)
		if len(f.Changes) != 1 {
			t.Errorf("%s as %s on %g Ω: %s", c.curve, c.in, c.boardOhm, f.Text())
			continue
		}
		right := f.Changes[0].Value.(parser.SensorDef)
		if right.Name != c.want || strings.Contains(f.Text(), "no definition") {
			t.Errorf("%s as %s on %g Ω: proposes %q; %s", c.curve, c.in, c.boardOhm, right.Name, f.Text())
		}
		readAs(in, right)
		for _, f := range run(t, sensorCurve, in) { // a table cut to whole counts
			if known.Kind != parser.Platinum || len(f.Changes) > 0 {
				t.Errorf("%s as %s on %g Ω: %s", c.curve, right.Name, c.boardOhm, f.Text())
			}
		}
	}
}

// readHeader reads a configuration of one header.
func readHeader(t *testing.T, text string) parser.Config {
	t.Helper()
	tree, err := parser.OpenTree(t.TempDir())
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = tree.Close() })
	const name = "Configuration.h"
	c, err := defines.Style.Read(tree.With(map[string][]byte{tree.Shown(name): []byte(text)}),
		parser.Request{Files: []string{name}})
	if err != nil {
		t.Fatal(err)
	}
	return c
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
		readAs(in, parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, R25Ohm: 30e3, BetaK: 3400,
			PullupOhm: 4700})
		f := one(t, sensorCurve, in)
		if len(f.Changes) != 1 {
			t.Errorf("%s: no change: %s", known.ID, f.Text())
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
		said := strings.Contains(f.Text(), "shows "+unit.Celsius(shown)+" at 22 °C")
		if said != (shown > 24) {
			t.Errorf("%s: at 22 °C it shows %g: %s", known.ID, shown, f.Text())
		}
		readAs(in, d)
		silent(t, sensorCurve, in)
	}
	// A Beta of the sheet is kept as it is.
	in := healthyInput()
	in.Printer.Hotend.CustomCubic = false
	in.Sheet.New.Sensor.Curve = absent("new.sensor.curve", "")
	in.Sheet.New.Sensor.Beta = given("new.sensor.beta", sheet.Beta{R25Ohm: 100_000, BK: 3990})
	d := one(t, sensorCurve, in).Changes[0].Value.(parser.SensorDef)
	if d.R25Ohm != 100_000 || d.BetaK != 3990 || d.CubicC != 0 {
		t.Errorf("a plain Beta of 3990 K became %+v", d)
	}
	// A range that a plain Beta cannot follow: it is better than what is there,
	// and what it leaves is said; not so where little is to be gained.
	in = healthyInput()
	in.Printer.Hotend.CustomCubic = false
	in.Sheet.New.Sensor.Curve.Value = "ntc-4700k-5130"
	in.Sheet.New.PrintC.Value = [2]float64{40, 280}
	readAs(in, parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, R25Ohm: 30e3, BetaK: 3400,
		PullupOhm: 4700})
	f := one(t, sensorCurve, in)
	wantSaid(t, f, "the best there is and leaves")
	if len(f.Changes) != 1 || !f.Partial {
		t.Fatalf("partial %v, changes %v", f.Partial, f.Changes)
	}
	readAs(in, f.Changes[0].Value.(parser.SensorDef))
	f = one(t, sensorCurve, in)
	wantChanges(t, f)
	wantSaid(t, f, "no definition that reads it better by half")
}

// A definition that is right wherever the max temp should let the hotend go is
// not given up for one that is right above it too.
func TestNoRepairForTargetsThatGo(t *testing.T) {
	known, _ := sensor.Find("ntc-100k-3950")
	def := parser.SensorDef{Form: parser.FormPoints, Join: parser.JoinRatio, Kind: parser.NTC, Name: "61",
		PullupOhm: 4700, LowC: 20, HighC: 420}
	for c := 20.0; c <= 320; c += 5 {
		def.Points = append(def.Points, parser.SensorPoint{TempC: c, Ohm: known.Curve.Ohms(c)})
	}
	def.Points = append(def.Points, parser.SensorPoint{TempC: 420, Ohm: known.Curve.Ohms(480)})
	in := healthyInput()
	readAs(in, def)
	in.Printer.Limits.MaxTemp.Value = 415
	f := one(t, sensorCurve, in)
	wantSaid(t, f, "up to the highest target that the max temp should leave, it is right")
	wantChanges(t, f)
	for _, c := range one(t, tempCeiling, in).Changes {
		in.Printer.Limits.MaxTemp.Value = c.Value.(float64)
	}
	silent(t, sensorCurve, in)
	// Where the ratings let it go that far, it needs another.
	in.Printer.Limits.MaxTemp.Value = 415
	in.Sheet.New.RatedC.Value, in.Sheet.New.Sensor.RatedC.Value = 500, 500
	if f := one(t, sensorCurve, in); len(f.Changes) == 0 {
		t.Errorf("no change: %s", f.Text())
	}
}

// What is said of a change, and of there being none.
func TestFixText(t *testing.T) {
	bead := healthyInput()
	platinum := healthyInput()
	platinum.Sheet.New.Sensor.Kind.Value, platinum.Sheet.New.Sensor.Curve.Value = parser.Platinum, "pt1000"
	other := curveDef("5", "ntc-100k-4267")
	note := stubDef
	note.Note = "for a bed"
	leaves := func(k float64) misreading { return misreading{rangeK: k} }
	for _, tt := range []struct {
		name     string
		in       *Input
		fix      repair
		repaired bool
		want     string
	}{
		{"waits", bead, repair{waits: true}, false,
			"; up to the highest target that the max temp should leave, it is right"},
		{"none, of a bead", bead, repair{reason: "why"}, false,
			"; this firmware has no definition that reads it right: why; put in a sensor that it knows"},
		{"none, of platinum", platinum, repair{}, false,
			"; this firmware has no definition that reads it right: none will do for this kind and " +
				"pull-up; put in an amplifier or a converter chip for it, or another sensor"},
		{"the one that it has", bead, repair{def: stubDef}, false,
			"; this firmware has no better definition; put in a sensor that it knows"},
		{"another that is little better", bead, repair{def: other, leaves: leaves(9)}, false,
			"; this firmware has no definition that reads it better by half: the best is 5 " +
				"(ntc-100k-4267), 9 K off; put in a sensor that it knows"},
		{"a custom one", bead, repair{def: parser.SensorDef{Form: parser.FormPoints}, leaves: leaves(9)},
			false,
			"; this firmware has no definition that reads it better by half: the best is a custom one, 9 " +
				"K off; put in a sensor that it knows"},
		{"right", bead, repair{def: other, leaves: leaves(curveWarnK - 0.1)}, true, ""},
		{"leaves a little", bead, repair{def: other, leaves: leaves(curveWarnK)}, true,
			"; the change leaves 2 K"},
		{"leaves more", bead, repair{def: other, leaves: leaves(9)}, true,
			"; the change is the best there is and leaves 9 K"},
		{"leaves some of it", bead, repair{def: other, leaves: leaves(1), partial: true}, true,
			"; the change is the best there is and leaves 1 K"},
		{"with a note", bead, repair{def: note, leaves: leaves(9)}, true,
			"; the change is the best there is and leaves 9 K; definition 11: for a bed"},
	} {
		r, ok := newReading(tt.in, 0)
		if !ok {
			t.Fatalf("%s: the sheet's sensor has no curve", tt.name)
		}
		got := r.fixText(tt.in, tt.fix, tt.repaired)
		if got != tt.want {
			t.Errorf("%s:\n%q, want\n%q", tt.name, got, tt.want)
		}
	}
	r, _ := newReading(bead, 0)
	d := parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, R25Ohm: 60e3, BetaK: 3950, PullupOhm: 4700}
	wantSaid(t, Finding{Message: r.offCold(bead, &d)}, "since nothing shows that this firmware reads one")
	bead.Config = pointsConfig
	wantSaid(t, Finding{Message: r.offCold(bead, &d)}, "no cubic curve through three points of this sensor")
	d.R25Ohm = 100e3
	if text := r.offCold(bead, &d); text != "" {
		t.Errorf("right when cold: %s", text)
	}
}

// A custom definition has the sheet's own three points, or points of its curve,
// or of platinum a whole table.
func TestCustomPoints(t *testing.T) {
	known, _ := sensor.Find("ntc-100k-3950")
	var points []parser.SensorPoint
	for _, tempC := range []float64{250, 25, 150, 200} {
		points = append(points, parser.SensorPoint{TempC: tempC, Ohm: known.Curve.Ohms(tempC)})
	}
	in := healthyInput()
	in.Config = pointsConfig
	custom := func() parser.SensorDef {
		r, ok := newReading(in, 0)
		if !ok {
			t.Fatal("the sheet's sensor has no curve")
		}
		d, err := r.custom(in)
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	if d := custom(); d.Form != parser.FormPoints || len(d.Points) != 3 || d.Join == parser.JoinOhm {
		t.Errorf("of a curve: %+v", d)
	}
	in.Sheet.New.Sensor.Curve = absent("new.sensor.curve", "")
	in.Sheet.New.Sensor.Points = given("new.sensor.points", points[:3])
	if d := custom(); !slices.Equal(d.Points, []parser.SensorPoint{points[1], points[2], points[0]}) {
		t.Errorf("of three points: %+v", d)
	}
	in.Sheet.New.Sensor.Points.Value = points
	if d := custom(); len(d.Points) != 3 || slices.Contains(d.Points, points[2]) {
		t.Errorf("of four points: %+v", d)
	}
	in.Sheet.New.Sensor.Points = absent("new.sensor.points", []parser.SensorPoint(nil))
	in.Sheet.New.Sensor.Kind.Value = parser.Platinum
	in.Sheet.New.Sensor.Curve = given("new.sensor.curve", "pt1000")
	if d := custom(); d.Join != parser.JoinOhm || len(d.Points) <= 3 || d.Name != "pt1000" {
		t.Errorf("of platinum: %+v", d)
	}
}
