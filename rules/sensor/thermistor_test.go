package sensor

import (
	"math"
	"strings"
	"testing"

	"preflash/parser"

	"pgregory.net/rapid"
)

func TestFromPointsRefuses(t *testing.T) {
	p := func(list ...float64) (points []parser.SensorPoint) {
		for i := 0; i < len(list); i += 2 {
			points = append(points, parser.SensorPoint{TempC: list[i], Ohm: list[i+1]})
		}
		return points
	}
	const rises = "an NTC's resistance falls while it gets hotter"
	for _, c := range []struct {
		name   string
		points []parser.SensorPoint
		says   string
	}{
		{"none", nil, "0 points are too few"},
		{"one", p(25, 100e3), "1 points are too few"},
		{"rising", p(25, 100e3, 150, 200e3, 250, 230), rises},
		{"same temperature", p(25, 100e3, 25, 1770, 250, 230), rises},
		{"same resistance", p(25, 100e3, 150, 1770, 250, 1770), rises},
		{"same resistance, hot first", p(250, 230, 25, 230, 300, 100), rises},
		{"three times the same", p(25, 100e3, 25, 100e3, 25, 100e3), rises},
		{"negative", p(25, 100e3, 150, -1770, 250, 230), "-1770 Ω at 150 °C cannot be"},
		{"not a number", p(25, math.NaN(), 150, 1770, 250, 230), "cannot be"},
		{"infinite", p(25, math.Inf(1), 150, 1770, 250, 230), "cannot be"},
		{"below absolute zero", p(-300, 100e3, 150, 1770, 250, 230), "100000 Ω at -300 °C cannot be"},
		// Each point is colder where it has more ohm, yet no curve of this
		// form passes the three without turning back.
		{"turns back", p(25, 100e3, 26, 1000, 250, 999), "does not fall steadily"},
	} {
		if got, err := FromPoints(c.points); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %+v, %v; want %q", c.name, got, err, c.says)
		}
	}
}

// The order of the points says nothing.
func TestFromPointsInAnyOrder(t *testing.T) {
	cold, warm, hot := parser.SensorPoint{TempC: 25, Ohm: 100e3}, parser.SensorPoint{TempC: 150, Ohm: 1770},
		parser.SensorPoint{TempC: 250, Ohm: 230}
	for _, points := range [][]parser.SensorPoint{{cold, warm, hot}, {hot, warm, cold}, {warm, hot, cold}} {
		c, err := FromPoints(points)
		if err != nil {
			t.Errorf("%v: %v", points, err)
			continue
		}
		for _, p := range points {
			if got := c.TempC(p.Ohm); math.Abs(got-p.TempC) > 1e-8 {
				t.Errorf("%v: %g Ω is %g °C", points, p.Ohm, got)
			}
		}
	}
}

// By hand: B is ln(R1/R2)/(1/T1 − 1/T2), and the curve passes both points.
func TestFromTwoPoints(t *testing.T) {
	c, err := FromPoints([]parser.SensorPoint{{TempC: 25, Ohm: 47e3}, {TempC: 200, Ohm: 500}})
	if err != nil {
		t.Fatal(err)
	}
	r25, b, cubic := c.Beta()
	want := math.Log(47e3/500) / (1/298.15 - 1/473.15)
	if math.Abs(r25/47e3-1) > 1e-12 || math.Abs(b/want-1) > 1e-12 || cubic != 0 {
		t.Errorf("R25 %g, B %g, cubic %g; want B %g", r25, b, cubic, want)
	}
	if got := c.TempC(500); math.Abs(got-200) > 1e-9 {
		t.Errorf("500 Ω is %g °C, want 200", got)
	}
}

// Of the cubic term alone, by hand: at 500 K 1/T is 0.001 + 1e-6·10³, so that
// the resistance is e¹⁰ Ω.
func TestCubicAlone(t *testing.T) {
	c, err := FromCoefficients(1e-3, 0, 1e-6, 1000)
	if err != nil {
		t.Fatal(err)
	}
	if got := c.Ohms(500 - 273.15); math.Abs(got/math.Exp(10)-1) > 1e-12 {
		t.Errorf("%g Ω at 500 K, want %g", got, math.Exp(10))
	}
	if got := c.TempC(math.Exp(10)); math.Abs(got-(500-273.15)) > 1e-9 {
		t.Errorf("%g °C at e¹⁰ Ω", got)
	}
}

// Any three points that give a curve at all give one that passes them, and
// that falls steadily wherever it is asked.
func TestFromPointsProperties(t *testing.T) {
	made := 0
	rapid.Check(t, func(t *rapid.T) {
		temp := rapid.Float64Range(-40, 100).Draw(t, "t1")
		lnR := rapid.Float64Range(5, 16).Draw(t, "ln r1")
		var points []parser.SensorPoint
		for range 3 {
			points = append(points, parser.SensorPoint{TempC: temp, Ohm: math.Exp(lnR)})
			temp += rapid.Float64Range(1, 150).Draw(t, "further")
			lnR -= rapid.Float64Range(0.05, 5).Draw(t, "lower")
		}
		c, err := FromPoints(points)
		if err != nil {
			return
		}
		made++
		for _, p := range points {
			if got := c.TempC(p.Ohm); math.Abs(got-p.TempC) > 1e-5 {
				t.Fatalf("%g Ω is %g °C, want %g", p.Ohm, got, p.TempC)
			}
			if got := c.TempC(c.Ohms(p.TempC)); math.Abs(got-p.TempC) > 1e-5 {
				t.Fatalf("%g °C comes back as %g", p.TempC, got)
			}
		}
		last := math.Inf(1)
		for tempC := points[0].TempC; tempC <= points[2].TempC; tempC += 5 {
			r := c.Ohms(tempC)
			if !(r < last) {
				t.Fatalf("%g Ω at %g °C is not below %g Ω", r, tempC, last)
			}
			last = r
		}
	})
	if made == 0 {
		t.Error("no set of points gave a curve")
	}
}

// By hand: R25·exp(B·(1/T − 1/298.15)).
func TestFromBeta(t *testing.T) {
	c, err := FromBeta(100e3, 3950, 0)
	if err != nil {
		t.Fatal(err)
	}
	want := 100e3 * math.Exp(3950*(1/493.15-1/298.15))
	if got := c.Ohms(220); math.Abs(got/want-1) > 1e-12 {
		t.Errorf("%g Ω at 220 °C, want %g", got, want)
	}
	for _, bad := range [][3]float64{
		{0, 3950, 0}, {-1, 3950, 0}, {100e3, 0, 0}, {math.NaN(), 3950, 0}, {100e3, math.Inf(1), 0},
		{100e3, 3950, math.NaN()}, {100e3, 3950, -1}, {math.Inf(1), 3950, 0},
	} {
		if got, err := FromBeta(bad[0], bad[1], bad[2]); err == nil {
			t.Errorf("FromBeta%v is %+v, want an error", bad, got)
		}
	}
	for _, bad := range [][2]float64{{0, 3950}, {-1, 3950}, {math.NaN(), 3950}, {100e3, 0}, {100e3, -1}} {
		if _, err := FromBeta(bad[0], bad[1], 0); err == nil ||
			!strings.HasSuffix(err.Error(), "cannot be: both must be above 0") {
			t.Errorf("FromBeta%v: %v", bad, err)
		}
	}
}

// Beta and FromBeta are each other's inverse.
func TestBetaRoundTrip(t *testing.T) {
	c := known(t, "ntc-100k-4267").(*Thermistor)
	again, err := FromBeta(c.Beta())
	if err != nil {
		t.Fatal(err)
	}
	for temp := 0.0; temp <= 300; temp += 10 {
		if got := again.TempC(c.Ohms(temp)); math.Abs(got-temp) > 1e-8 {
			t.Errorf("%g °C comes back as %g", temp, got)
		}
	}
}

// A curve whose coefficients differ in sign turns back somewhere. It must stay
// at its end there instead.
func TestTurningCurveStaysMonotonic(t *testing.T) {
	for _, c := range []struct {
		name    string
		a, b, c float64
		ohm     float64
	}{
		{"cubic below zero", 1e-3, 2.5e-4, -1e-7, 1000},
		{"linear below zero", 2.2e-3, -1e-5, 8e-7, 10e3},
		{"linear below zero, less than an ohm", 3e-3, -1e-5, 8e-7, 0.05},
	} {
		th, err := FromCoefficients(c.a, c.b, c.c, c.ohm)
		if err != nil {
			t.Fatalf("%s: %v", c.name, err)
		}
		last := math.Inf(1)
		for l := -14.0; l < 28; l += 0.1 {
			got := th.TempC(math.Exp(l))
			if got > last {
				t.Errorf("%s: %g °C at e^%.1f Ω is above %g", c.name, got, l, last)
			}
			last = got
		}
		at := th.TempC(c.ohm)
		if got := th.Ohms(at); math.Abs(got/c.ohm-1) > 1e-8 {
			t.Errorf("%s: %g Ω comes back as %g", c.name, c.ohm, got)
		}
	}
}
