package sensor

import (
	"math"
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

// A curve that no thermistor formula makes: a table of a 3950 bead whose
// middle is 3 % high. The three points must still be the better ones.
func TestFitPointsChooses(t *testing.T) {
	real := known(t, "ntc-100k-3950")
	var points []parser.SensorPoint
	for temp := 0.0; temp <= 300; temp += 10 {
		bump := 1 + 0.03*math.Exp(-(temp-190)*(temp-190)/800)
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
	fit, err := FromPoints(chosen)
	if err != nil {
		t.Fatal(err)
	}
	ends, err := FromPoints([]parser.SensorPoint{
		{TempC: 25, Ohm: table.Ohms(25)}, {TempC: 190, Ohm: table.Ohms(190)},
		{TempC: 270, Ohm: table.Ohms(270)},
	})
	if err != nil {
		t.Fatal(err)
	}
	if got, plain := strays(fit, table, 190, 270), strays(ends, table, 190, 270); got > plain {
		t.Errorf("chosen points %v stray %.2f K, the ends of the range %.2f K", chosen, got, plain)
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
