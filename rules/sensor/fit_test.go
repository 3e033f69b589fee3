package sensor

import (
	"math"
	"slices"
	"testing"

	"preflash/parser"
)

// worst is the largest error in K of firmware that believes fit.
func worst(fit, real Curve, lowC, highC float64) (w float64) {
	for t := lowC; t <= highC; t++ {
		w = max(w, math.Abs(circuit(fit, 4700).Actual(circuit(real, 4700), t)-t))
	}
	return w
}

// Both custom forms follow every known NTC within 0.05 K over a printing range,
// and at room temperature.
func TestFitsFollowKnownCurves(t *testing.T) {
	for _, k := range All() {
		if k.Kind != parser.NTC {
			continue
		}
		for _, span := range [][2]float64{{190, 270}, {200, 200}, {170, 300}, {20, 40}} {
			r25, b, cubic, err := FitBeta(k.Curve, span[0], span[1])
			if err != nil {
				t.Fatalf("%s: %v", k.ID, err)
			}
			beta, err := FromBeta(r25, b, cubic)
			if err != nil {
				t.Fatalf("%s: %v", k.ID, err)
			}
			points, err := FitPoints(k.Curve, span[0], span[1])
			if err != nil {
				t.Fatalf("%s: %v", k.ID, err)
			}
			three, err := FromPoints(points)
			if err != nil {
				t.Fatalf("%s: %v", k.ID, err)
			}
			for name, fit := range map[string]Curve{"Beta": beta, "three points": three} {
				if w := worst(fit, k.Curve, span[0], span[1]); w > 0.05 {
					t.Errorf("%s as %s over %v: %.3f K off", k.ID, name, span, w)
				}
				if w := worst(fit, k.Curve, 15, 30); w > 0.1 {
					t.Errorf("%s as %s at room temperature: %.3f K off", k.ID, name, w)
				}
			}
		}
	}
}

// R25 and B alone follow every known NTC within 1 K over a printing range and
// at the highest target.
func TestPlainBetaFollowsKnownCurves(t *testing.T) {
	for _, k := range All() {
		if k.Kind != parser.NTC {
			continue
		}
		for _, c := range []struct{ lowC, highC, limitC float64 }{{190, 270, 285}, {200, 250, math.NaN()},
			{200, 200, 240}, {170, 300, 300}} {
			r25, b, err := FitPlainBeta(k.Curve, c.lowC, c.highC, c.limitC)
			if err != nil {
				t.Fatalf("%s: %v", k.ID, err)
			}
			fit, err := FromBeta(r25, b, 0)
			if err != nil {
				t.Fatalf("%s: %v", k.ID, err)
			}
			if w := worst(fit, k.Curve, c.lowC, c.highC); w > 1 {
				t.Errorf("%s over %v: %.3f K off", k.ID, c, w)
			}
			if w := worst(fit, k.Curve, c.limitC, c.limitC); w > 1.2 {
				t.Errorf("%s at the limit of %v: %.3f K off", k.ID, c, w)
			}
		}
	}
	if _, _, err := FitPlainBeta(known(t, "pt1000"), 190, 270, 285); err == nil {
		t.Error("a Beta was fitted to platinum")
	}
	r25, b, err := FitPlainBeta(known(t, "ntc-100k-3974"), 190, 270, 285)
	if err != nil || r25 != 100e3 || b != 3974 {
		t.Errorf("the Beta of 3974 K became R25 %g, B %g, %v", r25, b, err)
	}
}

func TestFitFindsThePlainBeta(t *testing.T) {
	c, err := FromBeta(100e3, 3950, 0)
	if err != nil {
		t.Fatal(err)
	}
	r25, b, cubic, err := FitBeta(c, 190, 270)
	if err != nil || r25 != 100e3 || b != 3950 || cubic != 0 {
		t.Errorf("R25 %g, B %g, cubic %g, error %v", r25, b, cubic, err)
	}
}

// Curves that no thermistor formula makes: tables of a 3950 bead with a hump.
// The three points must still be the best of those that lie whole twelfths of
// the range inwards from its ends.
func TestFitPointsChooses(t *testing.T) {
	real := known(t, "ntc-100k-3950")
	lows, highs := [...]float64{190, 197, 203, 210, 217, 223}, [...]float64{270, 263, 257, 250, 243, 237}
	for _, hump := range []struct{ share, atC, width float64 }{{0.03, 190, 800}, {-0.03, 200, 2000},
		{0.03, 260, 800}, {0.03, 190, 400}} {
		var points []parser.SensorPoint
		for temp := 0.0; temp <= 300; temp += 10 {
			bump := 1 + hump.share*math.Exp(-(temp-hump.atC)*(temp-hump.atC)/hump.width)
			points = append(points, parser.SensorPoint{TempC: temp, Ohm: real.Ohms(temp) * bump})
		}
		table, err := FromTable(points)
		if err != nil {
			t.Fatal(err)
		}
		chosen, err := FitPoints(table, 190, 270)
		if err != nil {
			t.Fatal(err)
		}
		var best []parser.SensorPoint
		least := math.Inf(1)
		for _, low := range lows {
			for _, high := range highs {
				points := measure(table, 25, low, high)
				for i := range points {
					points[i].Ohm = digits(points[i].Ohm, 5)
				}
				fit, err := FromPoints(points)
				if err != nil || fit.C <= 0 {
					continue
				}
				if w := strays(fit, table, 190, 270); w < least {
					best, least = points, w
				}
			}
		}
		if !slices.Equal(chosen, best) {
			t.Errorf("%+v: %v are chosen, %v stray %.2f K", hump, chosen, best, least)
		}
	}
}

// By hand: a line of 1000 Ω + 0.99 Ω/K read by one of 1 Ω/K shows 1 % too little.
func TestStrays(t *testing.T) {
	curve, err := FromTable([]parser.SensorPoint{{TempC: 0, Ohm: 1000}, {TempC: 1000, Ohm: 1990}})
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range [][3]float64{{100, 300, 3}, {-200, 100, 2}} {
		if got := strays(straight(t, 0), curve, c[0], c[1]); math.Abs(got-c[2]) > 1e-9 {
			t.Errorf("from %g to %g °C it strays %g K, want %g", c[0], c[1], got, c[2])
		}
	}
}

// A range of 80 K at 25 even points, and one at room temperature.
func TestFitPointsOfARange(t *testing.T) {
	points := fitPoints(straight(t, 0), 190, 270, 25)
	if len(points) != 26 || points[25] != (parser.SensorPoint{TempC: 25, Ohm: 1025}) {
		t.Fatalf("%v", points)
	}
	for i, p := range points[:25] {
		if want := 190 + 80*float64(i)/24; math.Abs(p.TempC-want) > 1e-9 || math.Abs(p.Ohm-1000-want) > 1e-9 {
			t.Errorf("point %d is %v, want %g °C", i, p, want)
		}
	}
}

func TestFitRange(t *testing.T) {
	nan := math.NaN()
	for _, c := range [][4]float64{
		{190, 270, 190, 270}, {190.9, 269.1, 190, 270}, {220, 270, 220, 270}, {221, 270, 220, 270},
		{200, 200, 150, 200}, {20, 40, 60, 120}, {600, 700, 550, 600}, {nan, nan, 200, 250},
	} {
		if low, high := fitRange(c[0], c[1]); low != c[2] || high != c[3] {
			t.Errorf("%g to %g becomes %g to %g, want %g to %g", c[0], c[1], low, high, c[2], c[3])
		}
	}
}

// What a curve is, decides how it may be written out.
func TestFormsOfCurves(t *testing.T) {
	for id, bends := range map[string]bool{"ntc-100k-3950": true, "ntc-100k-3974": false, "pt1000": false} {
		if Bends(known(t, id)) != bends {
			t.Errorf("%s bends: %v", id, !bends)
		}
	}
	for id, want := range map[string][2]float64{"ntc-100k-3974": {100e3, 3974}, "ntc-100k-3950": {},
		"pt1000": {}, "beta:47000:4100": {47e3, 4100}} {
		r25, b, ok := IsBeta(parsed(t, id))
		if got := [2]float64{r25, b}; got != want || ok != (want[0] != 0) {
			t.Errorf("%s is the Beta of %v: %v", id, got, ok)
		}
	}
}

// Every 10 K from 0 °C to 20 K beyond the highest and more, within 0.01 K.
func TestTablePoints(t *testing.T) {
	pt := known(t, "pt1000")
	for highC, last := range map[float64]float64{300: 320, 301: 330, 50: 120, 1000: 620, math.NaN(): 620} {
		points := TablePoints(pt, highC)
		for i, p := range points {
			if p.TempC != 10*float64(i) {
				t.Errorf("up to %g °C: point %d is at %g °C", highC, i, p.TempC)
			}
		}
		if got := points[len(points)-1].TempC; got != last {
			t.Errorf("up to %g °C the table ends at %g, want %g", highC, got, last)
		}
		table, err := FromTable(points)
		if err != nil {
			t.Fatal(err)
		}
		if w := worst(table, pt, 0, last); w > 0.01 {
			t.Errorf("up to %g °C the table strays %g K", highC, w)
		}
	}
}

func TestNoFitForPlatinum(t *testing.T) {
	pt := known(t, "pt1000")
	if _, _, _, err := FitBeta(pt, 190, 270); err == nil {
		t.Error("a Beta was fitted to platinum")
	}
	if p, err := FitPoints(pt, 190, 270); err == nil {
		t.Errorf("a thermistor was fitted to platinum: %v", p)
	}
}

func TestLeastSquaresThroughThree(t *testing.T) {
	for _, c := range curves {
		if c.form != ThreePoints {
			continue
		}
		a, b, k := exact(c.points[:])
		a2, b2, k2 := leastSquares(c.points[:])
		for _, pair := range [][2]float64{{a, a2}, {b, b2}, {k, k2}} {
			if math.Abs(pair[0]-pair[1]) > 1e-8*math.Abs(pair[0]) {
				t.Errorf("%s: exact %g, least squares %g", c.id, pair[0], pair[1])
			}
		}
	}
}

func TestDigits(t *testing.T) {
	for _, c := range []struct {
		x    float64
		n    int
		want float64
	}{{123456, 4, 123500}, {0.00012344, 3, 0.000123}, {1.00005e-7, 5, 1.0001e-7}, {0, 3, 0},
		{-98765, 2, -99000}} {
		if got := digits(c.x, c.n); got != c.want {
			t.Errorf("digits(%g, %d) = %g, want %g", c.x, c.n, got, c.want)
		}
	}
}
