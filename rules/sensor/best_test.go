package sensor

import (
	"math"
	"testing"

	"preflash/parser"
)

// straight is a sensor of 1000 Ω + 1 Ω/K, which reads moreK more than it has.
func straight(t testing.TB, moreK float64) *Table {
	t.Helper()
	c, err := FromTable([]parser.SensorPoint{{TempC: moreK, Ohm: 1000}, {TempC: 1000 + moreK, Ohm: 2000}})
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// Firmware shuts down below the last row of a table.
func TestReaches(t *testing.T) {
	table := &Circuit{LowC: 20, HighC: 300}
	for tempC, want := range map[float64]bool{200: true, 298: true, 298.1: false, 301: false} {
		if table.Reaches(tempC) != want {
			t.Errorf("a table that ends at 300 °C reaches %g °C: %v", tempC, !want)
		}
	}
	if c := circuit(nil, 4700); !c.Reaches(1000) {
		t.Error("a curve without ends does not reach 1000 °C")
	}
}

// The worst error lies at an end, as a degree that is looked at, or where the
// table ends; of equal ones it is the lowest.
func TestWorst(t *testing.T) {
	real := circuit(straight(t, 0), 4700)
	// bent reads too much by 3 K at its middle point and nothing at its ends.
	bent, err := FromTable([]parser.SensorPoint{{TempC: 0, Ohm: 1000}, {TempC: 203.5, Ohm: 1200.5},
		{TempC: 400, Ohm: 1400}})
	if err != nil {
		t.Fatal(err)
	}
	c3950, c4267 := known(t, "ntc-100k-3950"), known(t, "ntc-100k-4267")
	ends := &Circuit{Curve: c4267, PullupOhm: 4700, LowC: 100, HighC: 240}
	for _, c := range []struct {
		name           string
		believed, real *Circuit
		atC, errorK    float64
	}{
		{"the same everywhere", circuit(straight(t, 2), 4700), real, 180, -2},
		{"at a degree beside the middle", circuit(bent, 4700), real, 203, -3 * 203 / 203.5},
		{"at the top", circuit(c4267, 4700), circuit(c3950, 4700), 260, 17.3}, // the issue's
		{"where the table ends", ends, circuit(c3950, 4700), 240, 16.3},       // the issue's
	} {
		at, worst := c.believed.Worst(c.real, 180, 260)
		if math.Abs(at-c.atC) > 1e-9 || math.Abs(worst-c.errorK) > 0.3 {
			t.Errorf("%s: %g K at %g °C, want %g at %g", c.name, worst, at, c.errorK, c.atC)
		}
	}
}

// demand asks for a 3950 bead on 4.7 kΩ, printed at 190 to 260 °C.
func demand(t testing.TB) *Demand {
	t.Helper()
	return &Demand{Real: circuit(known(t, "ntc-100k-3950"), 4700), Kind: parser.NTC, Curve: "ntc-100k-3950",
		LowC: 190, HighC: 260, TopC: 275, ColdC: 22}
}

func TestDemandJudge(t *testing.T) {
	curve := func(id string) parser.SensorDef {
		return parser.SensorDef{Kind: parser.NTC, Form: parser.FormCurve, Curve: id}
	}
	changed := func(d parser.SensorDef, change func(*parser.SensorDef)) parser.SensorDef {
		change(&d)
		return d
	}
	or := func(d, other parser.SensorDef) parser.SensorDef {
		return changed(d, func(d *parser.SensorDef) { d.Or = &other })
	}
	// The table has this bead 17.3 K off at 260 °C, and 1 K more for each 20.
	own, far := curve("ntc-100k-3950"), curve("ntc-100k-4267")
	for _, c := range []struct {
		name    string
		def     parser.SensorDef
		ok      bool
		worstAt float64
		worstK  float64 // within 0.5
	}{
		{"its own", own, true, math.NaN(), 0},
		{"another", far, true, 275, 18.05},
		{"another kind", changed(own, func(d *parser.SensorDef) { d.Kind = parser.Platinum }), false, 0, 0},
		{"no such curve", curve("ntc"), false, 0, 0},
		{"a table up to 262 °C", changed(own, func(d *parser.SensorDef) { d.HighC = 262 }), true,
			math.NaN(), 0},
		{"a table up to 261 °C", changed(own, func(d *parser.SensorDef) { d.HighC = 261 }), false, 0, 0},
		// The worse counts where firmwares differ, whichever comes first.
		{"one or the other", or(own, far), true, 275, 18.05},
		{"the other or one", or(far, own), true, 275, 18.05},
	} {
		got, ok := demand(t).Judge(c.def)
		if ok != c.ok || math.Abs(got.WorstK-c.worstK) > 0.5 || c.worstK != 0 && got.WorstAtC != c.worstAt {
			t.Errorf("%s: %v, %g K at %g °C", c.name, ok, got.WorstK, got.WorstAtC)
		}
	}
	// 1 % of 4700 Ω is 47 Ω.
	for boardOhm, want := range map[float64]bool{4653: true, 4747: true, 4652: false, 4748: false} {
		d := demand(t)
		d.Real.PullupOhm = boardOhm
		fixed := own
		fixed.PullupOhm = 4700
		if _, ok := d.Judge(fixed); ok != want {
			t.Errorf("a definition for 4700 Ω on %g Ω: %v", boardOhm, ok)
		}
		if got, ok := d.Judge(own); !ok || got.Def.PullupOhm != boardOhm {
			t.Errorf("a definition beside a pull-up of %g Ω: %v, %+v", boardOhm, ok, got.Def)
		}
	}
	// A resistor that the board has stands beside any definition but one that
	// names its own.
	d := demand(t)
	d.SeriesOhm = 100
	for given, want := range map[float64]float64{0: 100, 50: 50} {
		def := own
		def.SeriesOhm = given
		if got, ok := d.Judge(def); !ok || got.Def.SeriesOhm != want || got.Believed[0].SeriesOhm != want {
			t.Errorf("%g Ω in series became %g Ω", given, got.Def.SeriesOhm)
		}
	}
}

// A table that begins at 32 °C shows that in a room of 22, which is 10 K more.
func TestShowsCold(t *testing.T) {
	d := demand(t)
	for lowC, want := range map[float64]bool{20: true, 32: true, 33: false} {
		c := Candidate{Believed: []*Circuit{d.Real,
			{Curve: d.Real.Curve, PullupOhm: 4700, LowC: lowC, HighC: 300}}}
		if got := d.ShowsCold(c); got != want {
			t.Errorf("a table from %g °C shows a cold hotend: %v", lowC, got)
		}
	}
}

// The best has the least worst error; among those within 1 K of it one of the
// sensor's own curve is taken, and of equal ones the first.
func TestBest(t *testing.T) {
	// offset is a table that reads so much less than the sensor has.
	offset := func(name string, k float64) parser.SensorDef {
		d := parser.SensorDef{Name: name, Kind: parser.NTC, Form: parser.FormPoints, Join: parser.JoinOhm}
		real := known(t, "ntc-100k-3950")
		for tempC := 0.0; tempC <= 300; tempC += 2 {
			d.Points = append(d.Points, parser.SensorPoint{TempC: tempC, Ohm: real.Ohms(tempC + k)})
		}
		return d
	}
	follows := func(d parser.SensorDef) parser.SensorDef {
		d.Curve = "ntc-100k-3950"
		return d
	}
	blind := follows(offset("begins at 40", 0))
	blind.LowC, blind.HighC = 40, 300
	for _, c := range []struct {
		name string
		defs []parser.SensorDef
		want string
	}{
		{"none", nil, ""},
		{"the nearer", []parser.SensorDef{offset("2 K", 2), offset("0.5 K", 0.5)}, "0.5 K"},
		{"the nearer first", []parser.SensorDef{offset("0.5 K", 0.5), offset("2 K", 2)}, "0.5 K"},
		{"the first of equal ones", []parser.SensorDef{offset("one", 2), offset("two", 2)}, "one"},
		{"one that follows", []parser.SensorDef{offset("0.5 K", 0.5), follows(offset("own", 1.4))}, "own"},
		{"one that follows first", []parser.SensorDef{follows(offset("own", 1.4)), offset("0.5 K", 0.5)},
			"own"},
		{"one that follows too far", []parser.SensorDef{offset("0.5 K", 0.5), follows(offset("own", 1.6))},
			"0.5 K"},
		{"the nearer of two that follow", []parser.SensorDef{follows(offset("own", 1)),
			follows(offset("own too", 0.5))}, "own too"},
		{"one that shows no cold hotend", []parser.SensorDef{blind, offset("2 K", 2)}, "2 K"},
	} {
		got, ok := demand(t).Best(c.defs)
		if got.Def.Name != c.want || ok != (c.want != "") {
			t.Errorf("%s: %q, %v", c.name, got.Def.Name, ok)
		}
	}
	// Where the sensor is none of the known, no definition follows it.
	d := demand(t)
	d.Curve = ""
	if got, _ := d.Best([]parser.SensorDef{offset("one", 1), offset("two", 0.5)}); got.Def.Name != "two" {
		t.Errorf("an unknown sensor: %q", got.Def.Name)
	}
}
