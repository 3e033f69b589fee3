package sensor

import (
	"math"

	"preflash/parser"
)

// Fitted is a thermistor fitted to measured points.
type Fitted struct {
	Curve *Thermistor
	Errors
	// The curve as figures: 1/T = 1/298.15 + (L − ln R25)/B + Cubic·(L³ − ln³ R25).
	R25Ohm float64
	BetaK  float64
	Cubic  float64 // 1/K; 0 for a plain Beta
	// The curve as three points.
	Points []parser.SensorPoint
	// TopOffK is how far off the fit may be at the top of the range, as the
	// thermometer is at each point: root of the sum of squares.
	TopOffK float64
}

// fitThree fits all three coefficients, or returns nil where the points do
// not tell them. A cubic coefficient below 0 is none that a bead has: it comes
// of errors in the points, and leads far astray beyond them.
func fitThree(points, merged []parser.SensorPoint, by Thermometer, topC float64) *Fitted {
	bend := func(points []parser.SensorPoint) *Thermistor {
		t, err := FromPoints(points)
		if err != nil || !(t.B > 0) || !(t.C > 0) {
			return nil
		}
		return t
	}
	if len(merged) < 3 {
		return nil
	}
	f := fitted(points, merged, by, topC, bend)
	if f == nil {
		return nil
	}
	f.Points = merged
	if len(merged) > 3 {
		var err error
		f.Points, err = FitPoints(f.Curve, merged[0].TempC, max(merged[len(merged)-1].TempC, topC))
		if err != nil {
			return nil
		}
	}
	f.Points = rounded(f.Points)
	return f
}

// fitTwo fits the Beta formula.
func fitTwo(points, merged []parser.SensorPoint, by Thermometer, topC float64) *Fitted {
	f := fitted(points, merged, by, topC, betaThrough)
	if f == nil {
		return nil
	}
	// Any three of its points: the ends and the middle of what it is for.
	low, high := 25.0, max(topC, merged[len(merged)-1].TempC)
	for _, t := range []float64{low, math.Round((low + high) / 2), high} {
		f.Points = append(f.Points, parser.SensorPoint{TempC: t, Ohm: f.Curve.Ohms(t)})
	}
	f.Points = rounded(f.Points)
	return f
}

// betaThrough fits the Beta formula by least squares in 1/T; nil where the
// points give none.
func betaThrough(points []parser.SensorPoint) *Thermistor {
	var n, l, y, ll, ly float64
	for _, p := range points {
		li, yi := math.Log(p.Ohm), 1/(p.TempC+zeroC)
		n, l, y = n+1, l+li, y+yi
	}
	l, y = l/n, y/n
	for _, p := range points {
		dl := math.Log(p.Ohm) - l // all of them add up to 0
		ll += dl * dl
		ly += dl / (p.TempC + zeroC)
	}
	b := ly / ll
	t, err := FromCoefficients(y-b*l, b, 0, points[0].Ohm)
	if err != nil {
		return nil
	}
	return t
}

func fitted(points, merged []parser.SensorPoint, by Thermometer, topC float64,
	fit func([]parser.SensorPoint) *Thermistor) *Fitted {
	t := fit(merged)
	if t == nil {
		return nil
	}
	f := &Fitted{Curve: t}
	r25, betaK, cubic := t.Beta()
	f.R25Ohm, f.BetaK, f.Cubic = digits(r25, 5), digits(betaK, 6), digits(cubic, 5)
	f.Errors = errorsAt(points, t.TempC)
	f.TopOffK = topOff(merged, by, t.Ohms(topC), fit)
	return f
}

// topOff shifts each point in turn by what the thermometer may be off, and adds
// up how far the fit moves at a resistance.
func topOff(merged []parser.SensorPoint, by Thermometer, topOhm float64,
	fit func([]parser.SensorPoint) *Thermistor) float64 {
	const shiftK = 0.1 // small: what follows is linear
	here := fit(merged)
	shifted := make([]parser.SensorPoint, len(merged))
	sum := 0.0
	for i := range merged {
		copy(shifted, merged)
		shifted[i].TempC += shiftK
		moved := fit(shifted)
		if moved == nil {
			return hottestC
		}
		d := (moved.TempC(topOhm) - here.TempC(topOhm)) / shiftK * by.Off(merged[i].TempC)
		sum += d * d
	}
	return min(math.Sqrt(sum), hottestC)
}

// rounded writes points as a person would.
func rounded(points []parser.SensorPoint) []parser.SensorPoint {
	out := make([]parser.SensorPoint, len(points))
	for i, p := range points {
		out[i] = parser.SensorPoint{TempC: math.Round(p.TempC*10) / 10, Ohm: digits(p.Ohm, 5)}
	}
	return out
}
