package sensor

import (
	"math"
	"testing"

	"preflash/parser"

	"pgregory.net/rapid"
)

func known(t testing.TB, id string) Curve {
	t.Helper()
	k, ok := Find(id)
	if !ok {
		t.Fatalf("no curve %s", id)
	}
	return k.Curve
}

func circuit(c Curve, pullupOhm float64) *Circuit { return &Circuit{Curve: c, PullupOhm: pullupOhm} }

// The figures, to 0.3 °C. That a 104-type definition on a 3950 bead
// prints too hot is common practice, no source.
func TestActualOfWrongDefinition(t *testing.T) {
	beta, err := FromBeta(100e3, 3950, 0)
	if err != nil {
		t.Fatal(err)
	}
	c3950, c4092, c4267 := known(t, "ntc-100k-3950"), known(t, "ntc-100k-4092"), known(t, "ntc-100k-4267")
	for _, c := range []struct {
		name              string
		believed, real    Curve
		indicated, actual float64
	}{
		{"3950 read as 4267", c4267, c3950, 180, 193.0},
		{"3950 read as 4267", c4267, c3950, 200, 214.2},
		{"3950 read as 4267", c4267, c3950, 220, 235.3},
		{"3950 read as 4267", c4267, c3950, 240, 256.3},
		{"3950 read as 4267", c4267, c3950, 260, 277.3},
		{"3950 read as 4092", c4092, c3950, 200, 202.5},
		{"3950 read as plain Beta", beta, c3950, 220, 204.5},
		{"4267 read as 3950", c3950, c4267, 220, 205.5},
	} {
		got := circuit(c.believed, 4700).Actual(circuit(c.real, 4700), c.indicated)
		if math.Abs(got-c.actual) > 0.3 {
			t.Errorf("%s: %g indicated is %.2f, want %.1f", c.name, c.indicated, got, c.actual)
		}
	}
}

// A wrong pull-up, by hand: a Pt1000 at 0 °C (1000 Ω) on 1000 Ω stands at half
// the reference; firmware that believes 4700 Ω takes that for 4700 Ω.
func TestActualOfWrongPullup(t *testing.T) {
	pt := known(t, "pt1000")
	real, believed := circuit(pt, 1000), circuit(pt, 4700)
	if got := real.Ratio(0); math.Abs(got-0.5) > 1e-12 {
		t.Errorf("ratio %g, want 0.5", got)
	}
	want := pt.TempC(4700)
	if got := believed.Indicated(real, 0); math.Abs(got-want) > 1e-6 {
		t.Errorf("indicated %g, want %g", got, want)
	}
	if got := believed.Actual(real, want); math.Abs(got) > 1e-6 {
		t.Errorf("actual %g, want 0", got)
	}
}

// The series resistor stands on both sides of the chain and cancels there; one
// that only the firmware believes in does not.
func TestSeriesResistor(t *testing.T) {
	pt := known(t, "pt1000")
	with, without := &Circuit{Curve: pt, PullupOhm: 4700, SeriesOhm: 100}, circuit(pt, 4700)
	if got := with.Actual(with, 200); math.Abs(got-200) > 1e-6 {
		t.Errorf("with itself: %g, want 200", got)
	}
	if got, want := with.Actual(without, 0), pt.TempC(1100); math.Abs(got-want) > 1e-6 {
		t.Errorf("only believed: %g, want %g", got, want)
	}
}

// Counts by hand: a Pt1000 on 4700 Ω at 0 °C has dR/dT = 3.9083 Ω/K, and
// dx/dR = 4700/5700² per ohm.
func TestCPerCount(t *testing.T) {
	c := circuit(known(t, "pt1000"), 4700)
	want := 1 / (3.9083 * 4700 / (5700.0 * 5700.0) * 4096)
	if got := c.CPerCount(0, 12); math.Abs(got-want) > 1e-4*want {
		t.Errorf("%g K a count, want %g", got, want)
	}
	if ratio := c.CPerCount(0, 10) / c.CPerCount(0, 12); math.Abs(ratio-4) > 1e-9 {
		t.Errorf("two bits fewer make it %g times coarser, want 4", ratio)
	}
}

func TestOpenAndShort(t *testing.T) {
	ntc, pt := circuit(known(t, "ntc-100k-3950"), 4700), circuit(known(t, "pt1000"), 4700)
	// Half a count of 1024 away from full scale is 4700·2047 Ω open, and
	// 4700/2047 Ω shorted.
	got, want := ntc.Open(Converter{Bits: 10}), ntc.Curve.TempC(4700*2047)
	if math.Abs(got-want) > 1e-6 || got > -40 {
		t.Errorf("open NTC reads %g, want %g", got, want)
	}
	got, want = ntc.Short(Converter{Bits: 10}), ntc.Curve.TempC(4700/2047.0)
	if math.Abs(got-want) > 1e-6 || got < 500 {
		t.Errorf("shorted NTC reads %g, want %g", got, want)
	}
	open, short := pt.Open(Converter{Bits: 12}), pt.Short(Converter{Bits: 12})
	if open < 1000 || short > -200 {
		t.Errorf("Pt1000 reads %g open and %g shorted", open, short)
	}
	ends := *ntc
	ends.LowC, ends.HighC = 0, 300
	open, short = ends.Open(Converter{Bits: 10}), ends.Short(Converter{Bits: 10})
	if open != 0 || short != 300 {
		t.Errorf("a table from 0 to 300 reads %g open and %g shorted", open, short)
	}
}

// A sum of eight readings of 1024 counts is kept half a count away from 8192; a
// table of counts takes the last count, 1023 of 1024, as it is. By hand: its
// line goes from 2047/2048 of the reference at −50 °C to a half at 100.
func TestOpenByTheConverter(t *testing.T) {
	ntc := circuit(known(t, "ntc-100k-3950"), 4700)
	got, want := ntc.Open(Converter{Bits: 10, Averaged: 8}), ntc.Curve.TempC(4700*16383)
	if math.Abs(got-want) > 1e-6 {
		t.Errorf("open NTC reads %g, want %g", got, want)
	}
	got, want = ntc.Short(Converter{Bits: 10, Averaged: 8}), ntc.Curve.TempC(4700.0/16383)
	if math.Abs(got-want) > 1e-6 {
		t.Errorf("shorted NTC reads %g, want %g", got, want)
	}
	points := []parser.SensorPoint{{TempC: -50, Ohm: 4700 * 2047}, {TempC: 100, Ohm: 4700}}
	table, err := FromRatios(points, 4700)
	if err != nil {
		t.Fatal(err)
	}
	counts := circuit(table, 4700)
	if got, want := counts.Open(Converter{Bits: 10}), -50+150.0/1023; math.Abs(got-want) > 1e-9 {
		t.Errorf("an open sensor reads %g by a table of counts, want %g", got, want)
	}
	if got := counts.Short(Converter{Bits: 10}); got != 100 {
		t.Errorf("a shorted sensor reads %g by a table of counts, want its end", got)
	}
	// A table in ohm is computed with, as a formula is; its outer line goes on.
	if table, err = FromTable(points); err != nil {
		t.Fatal(err)
	}
	want = 100 + 150*(4700-4700/2047.0)/(4700*2046)
	if got := circuit(table, 4700).Short(Converter{Bits: 10}); math.Abs(got-want) > 1e-9 {
		t.Errorf("a shorted sensor reads %g by a table in ohm, want %g", got, want)
	}
}

func TestFalls(t *testing.T) {
	for id, want := range map[string]bool{"ntc-100k-3950": true, "pt1000": false} {
		if circuit(known(t, id), 4700).Falls() != want {
			t.Errorf("%s falls: %v", id, !want)
		}
	}
}

// Firmware that believes the truth shows the truth, whatever the pull-up.
func TestTrueDefinitionReadsTrue(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := rapid.SampledFrom(All()).Draw(t, "curve")
		pullup := rapid.Float64Range(500, 50e3).Draw(t, "pull-up")
		temp := rapid.Float64Range(max(k.LowC, -50), k.HighC).Draw(t, "°C")
		c := circuit(k.Curve, pullup)
		if got := c.Actual(c, temp); math.Abs(got-temp) > 1e-5 {
			t.Errorf("%s at %g °C on %g Ω: actual %g", k.ID, temp, pullup, got)
		}
		if got := c.Indicated(c, temp); math.Abs(got-temp) > 1e-5 {
			t.Errorf("%s at %g °C on %g Ω: indicated %g", k.ID, temp, pullup, got)
		}
	})
}

func BenchmarkActual(b *testing.B) {
	believed, real := circuit(known(b, "ntc-100k-4267"), 4700), circuit(known(b, "ntc-100k-3950"), 4700)
	for b.Loop() {
		believed.Actual(real, 240)
	}
}
