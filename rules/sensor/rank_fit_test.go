package sensor

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"preflash/parser"
)

// Two points give a Beta by its definition, B = ln(R1/R2)/(1/T1 − 1/T2).
func TestRankBeta(t *testing.T) {
	r := rank(t, []parser.SensorPoint{{TempC: 25, Ohm: 47e3}, {TempC: 200, Ohm: 500}})
	want := math.Log(47e3/500) / (1/298.15 - 1/473.15)
	if r.ThreePoint != nil || math.Abs(r.Beta.BetaK-want) > 0.01 || math.Abs(r.Beta.R25Ohm-47e3) > 1 ||
		math.Abs(r.Beta.WorstK) > 1e-9 {
		t.Errorf("fitted %+v, want B %g", r.Beta, want)
	}
	again, err := FromPoints(r.Beta.Points)
	if err != nil || math.Abs(again.TempC(500)-200) > 0.05 {
		t.Errorf("the three points %v read 500 Ω as %g °C", r.Beta.Points, again.TempC(500))
	}
}

// A fit of three temperatures is written by the points as they were measured,
// and a Beta by 25 °C, the top and the middle between.
func TestFittedPoints(t *testing.T) {
	own := ownBead(t)
	points := measure(own, 30, 150, 240)
	r := rank(t, points)
	if r.ThreePoint == nil || !slices.Equal(r.ThreePoint.Points, rounded(points)) {
		t.Errorf("three points %+v, want %v", r.ThreePoint, points)
	}
	var want []parser.SensorPoint
	for _, tempC := range []float64{25, 143, 260} {
		want = append(want, parser.SensorPoint{TempC: tempC, Ohm: digits(r.Beta.Curve.Ohms(tempC), 5)})
	}
	if !slices.Equal(r.Beta.Points, want) {
		t.Errorf("Beta by %v, want %v", r.Beta.Points, want)
	}
}

// A scatter of the thermometer moves the fit at the top as told.
func TestTopOffIsTheScatter(t *testing.T) {
	points := measure(known(t, "ntc-100k-4267"), 25, 100, 180)
	told := rank(t, points).ThreePoint
	random := rand.New(rand.NewPCG(1, 2))
	const runs = 400
	var sum, square, n float64
	ohm := told.Curve.Ohms(260)
	for range runs {
		shifted := append([]parser.SensorPoint(nil), points...)
		for i := range shifted {
			shifted[i].TempC += perfect.OffK * random.NormFloat64()
		}
		if f := rank(t, shifted).ThreePoint; f != nil {
			x := f.Curve.TempC(ohm)
			sum, square, n = sum+x, square+x*x, n+1
		}
	}
	scatter := math.Sqrt((square - sum*sum/n) / (n - 1))
	if ratio := scatter / told.TopOffK; n < 0.9*runs || ratio < 0.85 || ratio > 1.15 {
		t.Errorf("scatter %g K in %g runs, told %g K", scatter, n, told.TopOffK)
	}
}
