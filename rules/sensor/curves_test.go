package sensor

import (
	"math"
	"slices"
	"strings"
	"testing"

	"preflash/parser"

	"pgregory.net/rapid"
)

func TestKnownCurves(t *testing.T) {
	for i, k := range All() {
		if k.Curve == nil {
			t.Fatalf("%s has no curve", k.ID)
		}
		if i > 0 && All()[i-1].ID >= k.ID {
			t.Errorf("%s is not sorted", k.ID)
		}
		if k.Source == "" || k.LowC >= k.HighC || !HasCurve(k.Kind) {
			t.Errorf("%s lacks something: %+v", k.ID, k)
		}
		if k.FromMemory == strings.HasPrefix(k.ID, "pt") {
			t.Errorf("%s: from memory is %v", k.ID, k.FromMemory)
		}
		if got, ok := Find(k.ID); !ok || got.ID != k.ID {
			t.Errorf("%s is not found", k.ID)
		}
	}
	if _, ok := Find("ntc-100k"); ok {
		t.Error("found a curve that is none")
	}
}

// A curve must give back the points that define it: the consistency that the
// three-point equation of Steinhart and Hart (1968) promises. Their paper's own
// worked figures are not at hand.
func TestKnownCurvesMeetTheirPoints(t *testing.T) {
	for _, c := range curves {
		if c.form != ThreePoints {
			continue
		}
		k := known(t, c.id)
		for _, p := range c.points {
			if got := k.TempC(p.Ohm); math.Abs(got-p.TempC) > 1e-8 {
				t.Errorf("%s: %g Ω is %g °C, want %g", c.id, p.Ohm, got, p.TempC)
			}
			if got := k.Ohms(p.TempC); math.Abs(got/p.Ohm-1) > 1e-9 {
				t.Errorf("%s: %g °C is %g Ω, want %g", c.id, p.TempC, got, p.Ohm)
			}
		}
	}
}

// IEC 60751, table of Pt100 resistances, to its last digit.
func TestPlatinumTable(t *testing.T) {
	pt100, pt1000 := known(t, "pt100"), known(t, "pt1000")
	for _, id := range []string{"pt100", "pt1000"} {
		if k, _ := Find(id); k.LowC != -200 || k.HighC != 850 {
			t.Errorf("%s goes from %g to %g °C; the standard from -200 to 850", id, k.LowC, k.HighC)
		}
	}
	for _, p := range []parser.SensorPoint{
		{TempC: -200, Ohm: 18.52}, {TempC: -100, Ohm: 60.26}, {TempC: -50, Ohm: 80.31},
		{TempC: 0, Ohm: 100}, {TempC: 50, Ohm: 119.40}, {TempC: 100, Ohm: 138.51},
		{TempC: 150, Ohm: 157.33}, {TempC: 200, Ohm: 175.86}, {TempC: 250, Ohm: 194.10},
		{TempC: 300, Ohm: 212.05}, {TempC: 400, Ohm: 247.09}, {TempC: 500, Ohm: 280.98},
		{TempC: 600, Ohm: 313.71}, {TempC: 700, Ohm: 345.28}, {TempC: 800, Ohm: 375.70},
		{TempC: 850, Ohm: 390.48},
	} {
		if got := pt100.Ohms(p.TempC); math.Abs(got-p.Ohm) > 0.00501 {
			t.Errorf("Pt100 at %g °C is %.4f Ω, want %.2f", p.TempC, got, p.Ohm)
		}
		if got := pt100.TempC(p.Ohm); math.Abs(got-p.TempC) > 0.02 {
			t.Errorf("Pt100 of %.2f Ω is %.3f °C, want %g", p.Ohm, got, p.TempC)
		}
		if got := pt1000.Ohms(p.TempC); math.Abs(got-10*p.Ohm) > 0.0501 {
			t.Errorf("Pt1000 at %g °C is %.3f Ω, want %.1f", p.TempC, got, 10*p.Ohm)
		}
	}
}

// Below 0 °C the temperature is found by steps; they must end at the formula to
// more than anything reads, down to the end of the curve.
func TestPlatinumComesBack(t *testing.T) {
	pt := FromPlatinum(1000)
	for tempC := -240.0; tempC <= 0; tempC += 0.5 {
		if got := pt.TempC(pt.Ohms(tempC)); math.Abs(got-tempC) > 1e-10 {
			t.Errorf("%g °C comes back as %.12g", tempC, got)
		}
	}
}

func TestRoundTripAndMonotonic(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := rapid.SampledFrom(All()).Draw(t, "curve")
		a := rapid.Float64Range(k.LowC, k.HighC).Draw(t, "a")
		b := rapid.Float64Range(k.LowC, k.HighC).Draw(t, "b")
		if got := k.Curve.TempC(k.Curve.Ohms(a)); math.Abs(got-a) > 1e-6 {
			t.Errorf("%s: %g °C comes back as %g", k.ID, a, got)
		}
		if math.Abs(a-b) < 1e-3 {
			return
		}
		falls := k.Curve.Ohms(max(a, b)) < k.Curve.Ohms(min(a, b))
		if falls != (k.Kind == parser.NTC) {
			t.Errorf("%s: %g Ω at %g °C, %g Ω at %g °C", k.ID, k.Curve.Ohms(a), a, k.Curve.Ohms(b), b)
		}
	})
}

// Whatever goes in, a finite number comes out.
func TestCurvesTakeAnything(t *testing.T) {
	odd := []float64{math.NaN(), math.Inf(1), math.Inf(-1), 0, -1, 1e300, -1e300, 5e-324, -273.15, 1e-9}
	table, err := FromTable([]parser.SensorPoint{{TempC: 0, Ohm: 1000}, {TempC: 500, Ohm: 2809.8}})
	if err != nil {
		t.Fatal(err)
	}
	all := append(slices.Clone(All()), Known{ID: "a table", Curve: table})
	finite := func(id, what string, in, out float64) {
		if math.IsNaN(out) || math.IsInf(out, 0) {
			t.Errorf("%s: %s(%g) is %g", id, what, in, out)
		}
	}
	for _, k := range all {
		c := circuit(k.Curve, 4700)
		for _, x := range odd {
			finite(k.ID, "Ohms", x, k.Curve.Ohms(x))
			finite(k.ID, "TempC", x, k.Curve.TempC(x))
			finite(k.ID, "Ratio", x, c.Ratio(x))
			finite(k.ID, "Circuit.TempC", x, c.TempC(x))
			finite(k.ID, "CPerCount", x, c.CPerCount(x, 12))
			finite(k.ID, "NTCBand", x, NTCBand(k.Curve, x, 0.01, 0.01))
		}
	}
}

func TestNear(t *testing.T) {
	for _, c := range []struct{ id, want string }{
		{"NTC-100K-3590", "ntc-100k-3950 ntc-100k-3960 ntc-100k-3974"},
		{"pt-1000", "pt100 pt1000"},
		{"ntc-200k", "ntc-200k-4338"},
		{"pt1000-b", "pt1000"}, // longer than any
	} {
		if got := strings.Join(Near(c.id), " "); got != c.want {
			t.Errorf("near %s: %s, want %s", c.id, got, c.want)
		}
	}
	for _, far := range []string{"x", "p", "n"} { // one letter in common says nothing
		if got := Near(far); len(got) != len(All()) {
			t.Errorf("near %s: %v", far, got)
		}
	}
}
