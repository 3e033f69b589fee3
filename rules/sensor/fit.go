package sensor

import (
	"errors"
	"math"

	"preflash/parser"
)

// line solves 1/T = a + b·L through two points.
func line(p []parser.SensorPoint) (a, b float64) {
	l0, l1 := math.Log(p[0].Ohm), math.Log(p[1].Ohm)
	y0, y1 := 1/(p[0].TempC+zeroC), 1/(p[1].TempC+zeroC)
	b = (y1 - y0) / (l1 - l0)
	return y0 - b*l0, b
}

// exact solves 1/T = a + b·L + c·L³ through three points by divided
// differences, which keep their digits where a determinant loses them.
func exact(p []parser.SensorPoint) (a, b, c float64) {
	var l, y [3]float64
	for i := range l {
		l[i], y[i] = math.Log(p[i].Ohm), 1/(p[i].TempC+zeroC)
	}
	g2 := (y[1] - y[0]) / (l[1] - l[0])
	g3 := (y[2] - y[0]) / (l[2] - l[0])
	c = (g3 - g2) / (l[2] - l[1]) / (l[0] + l[1] + l[2])
	b = g2 - c*(l[0]*l[0]+l[0]*l[1]+l[1]*l[1])
	a = y[0] - (b+l[0]*l[0]*c)*l[0]
	return a, b, c
}

// leastSquares fits 1/T = a + b·L + c·L³. It orthogonalises the columns 1, L
// and L³ (modified Gram-Schmidt): the normal equations lose half of the digits.
func leastSquares(p []parser.SensorPoint) (a, b, c float64) {
	n := len(p)
	column := make([]float64, 4*n)
	one, l, l3, y := column[:n], column[n:2*n], column[2*n:3*n], column[3*n:]
	for i := range p {
		x := math.Log(p[i].Ohm)
		one[i], l[i], l3[i], y[i] = 1, x, x*x*x, 1/(p[i].TempC+zeroC)
	}
	r01, r02, y0 := project(one, l), project(one, l3), project(one, y)
	r12, y1 := project(l, l3), project(l, y)
	c = project(l3, y)
	b = y1 - r12*c
	a = y0 - r01*b - r02*c
	return a, b, c
}

// project returns how much of q is in v, and takes it out of v.
func project(q, v []float64) float64 {
	var qq, qv float64
	for i, x := range q {
		qq += x * x
		qv += x * v[i]
	}
	if qq == 0 {
		return 0
	}
	share := qv / qq
	for i, x := range q {
		v[i] -= share * x
	}
	return share
}

var errNoFit = errors.New("no thermistor formula follows this curve")

// leastCubic is the cubic coefficient in 1/K below which it moves no reading by
// 0.001 K: what is left of rounding when the curve is a plain Beta.
const leastCubic = 1e-12

// FitBeta finds the R25 (ohm), B (K) and cubic coefficient (1/K) that follow a
// curve best in 1/T from lowC to highC, and near room temperature too, where
// firmware must not take a cold hotend for a broken sensor. The figures are
// rounded as a person would write them; that costs less than 0.02 K.
func FitBeta(c Curve, lowC, highC float64) (r25Ohm, betaK, cubic float64, err error) {
	points := fitPoints(c, lowC, highC, 25)
	a, b, cubic := leastSquares(points)
	t, err := FromCoefficients(a, b, cubic, c.Ohms(25))
	if err != nil || !(b > 0) {
		return 0, 0, 0, errNoFit
	}
	if math.Abs(cubic) < leastCubic {
		cubic = 0
	}
	return digits(t.Ohms(25), 5), digits(1/b, 6), digits(cubic, 5), nil
}

// FitPlainBeta finds the R25 (ohm) and B (K) that follow a curve best in 1/T
// from lowC to highC and at limitC, for firmware that knows no cubic
// coefficient. Near room temperature the fit of a bent curve is some 10 K off:
// it shows too much. limitC may be NaN.
func FitPlainBeta(c Curve, lowC, highC, limitC float64) (r25Ohm, betaK float64, err error) {
	if math.IsNaN(limitC) {
		limitC = highC
	}
	t := betaThrough(fitPoints(c, lowC, highC, bound(limitC, 60, 600, highC)))
	if t == nil {
		return 0, 0, errNoFit
	}
	r25Ohm, betaK, _ = t.Beta()
	return digits(r25Ohm, 5), digits(betaK, 6), nil
}

// fitPoints takes points of a curve evenly from lowC to highC, and one more.
func fitPoints(c Curve, lowC, highC, moreC float64) []parser.SensorPoint {
	lowC, highC = fitRange(lowC, highC)
	const n = 24
	var points []parser.SensorPoint
	for i := range n + 1 {
		t := lowC + (highC-lowC)*float64(i)/n
		points = append(points, parser.SensorPoint{TempC: t, Ohm: c.Ohms(t)})
	}
	return append(points, parser.SensorPoint{TempC: moreC, Ohm: c.Ohms(moreC)})
}

// FitPoints chooses three points of a curve, the first at 25 °C, such that the
// thermistor through them strays least from it between lowC and highC. It fails
// where none has a cubic coefficient above 0, as every bead has: firmware does
// not draw others. Temperatures are whole; resistances have five digits.
func FitPoints(c Curve, lowC, highC float64) ([]parser.SensorPoint, error) {
	lowC, highC = fitRange(lowC, highC)
	at := func(t float64) parser.SensorPoint {
		return parser.SensorPoint{TempC: t, Ohm: digits(c.Ohms(t), 5)}
	}
	const steps, good = 6, 0.02 // K: more than the last digit of a resistance
	var best []parser.SensorPoint
	least := math.Inf(1)
	// From the ends of the range inwards.
	for i := range steps {
		inward := math.Round((highC - lowC) * float64(i) / (2 * steps))
		for j := range steps {
			points := []parser.SensorPoint{at(25), at(lowC + inward),
				at(highC - math.Round((highC-lowC)*float64(j)/(2*steps)))}
			t, err := FromPoints(points)
			if err != nil || !(t.C > 0) {
				continue
			}
			if w := strays(t, c, lowC, highC); w < least {
				best, least = points, w
			}
			if least < good {
				return best, nil
			}
		}
	}
	if best == nil {
		return nil, errNoFit
	}
	return best, nil
}

// strays is the largest distance in K between a fit and its curve.
func strays(fit, c Curve, lowC, highC float64) (worst float64) {
	for i := range 17 {
		t := lowC + (highC-lowC)*float64(i)/16
		worst = max(worst, math.Abs(fit.TempC(c.Ohms(t))-t))
	}
	return worst
}

// fitRange makes a printing range fit for a fit: whole degrees, well above
// 25 °C, and wide enough to tell three coefficients.
func fitRange(lowC, highC float64) (low, high float64) {
	high = math.Ceil(bound(highC, 120, 600, 250))
	low = math.Floor(bound(lowC, 60, high-50, high-50))
	return low, high
}

// digits rounds to so many significant digits.
func digits(x float64, n int) float64 {
	if x == 0 || math.IsInf(x, 0) || math.IsNaN(x) {
		return x
	}
	places := float64(n) - math.Ceil(math.Log10(math.Abs(x)))
	// Dividing by a power of ten gives the nearest float to the decimal;
	// multiplying by its inverse would not.
	if places >= 0 {
		scale := math.Pow(10, places)
		return math.Round(x*scale) / scale
	}
	scale := math.Pow(10, -places)
	return math.Round(x/scale) * scale
}

// Bends reports whether a curve is a thermistor's with a cubic coefficient above
// 0: one that firmware draws through three points.
func Bends(c Curve) bool {
	t, ok := c.(*Thermistor)
	return ok && t.C > 0
}

// IsBeta gives the R25 (ohm) and B (K) of a curve that is the Beta formula; false
// for any other.
func IsBeta(c Curve) (r25Ohm, betaK float64, ok bool) {
	t, is := c.(*Thermistor)
	if !is || math.Abs(t.C) >= leastCubic || !(t.B > 0) {
		return 0, 0, false
	}
	r25Ohm, betaK, _ = t.Beta()
	return digits(r25Ohm, 6), digits(betaK, 6), true
}

// TablePoints gives the points of a table straight in resistance that follows
// platinum from 0 °C to beyond highC, 10 K apart: within 0.01 K.
func TablePoints(c Curve, highC float64) []parser.SensorPoint {
	var points []parser.SensorPoint
	for t := 0.0; ; t += 10 {
		points = append(points, parser.SensorPoint{TempC: t, Ohm: digits(c.Ohms(t), 7)})
		if t >= bound(highC, 100, 600, 600)+20 {
			return points
		}
	}
}
