package sensor

import (
	"errors"
	"fmt"
	"math"

	"preflash/parser"
)

// Thermistor is an NTC by the equation of Steinhart and Hart (Deep-Sea
// Research 15, 1968, 497-503), T in kelvin, L the natural logarithm of the
// resistance in ohm:
//
//	1/T = A + B·L + C·L³
//
// The Beta formula is the case C = 0, and the Beta formula with a cubic term
// is another way to write all of it.
type Thermistor struct {
	A, B, C float64

	// Between lowL and highL the temperature falls while L rises. Outside,
	// the equation means nothing and the curve stays at its end.
	lowL, highL float64
}

var errNotMonotonic = errors.New("the curve that they give does not fall steadily: correct the points")

// FromCoefficients makes a thermistor of the three coefficients. It fails
// where the curve does not fall at the resistance ohm.
func FromCoefficients(a, b, c, ohm float64) (*Thermistor, error) {
	t := &Thermistor{A: a, B: b, C: c, lowL: math.Log(leastOhm), highL: math.Log(mostOhm)}
	l := math.Log(ohm)
	for _, x := range [...]float64{a, b, c, l} {
		if math.IsNaN(x) || math.IsInf(x, 0) {
			return nil, errors.New("the constants are no finite numbers")
		}
	}
	if b+3*c*l*l <= 0 {
		return nil, errNotMonotonic
	}
	// d(1/T)/dL = B + 3·C·L² changes sign at ±turn where B and C differ in sign.
	if turn := math.Sqrt(-b / (3 * c)); b*c < 0 {
		switch {
		case c < 0:
			t.lowL, t.highL = max(t.lowL, -turn), min(t.highL, turn)
		case l > 0:
			t.lowL = max(t.lowL, turn)
		default:
			t.highL = min(t.highL, -turn)
		}
	}
	return t, nil
}

// FromBeta makes a thermistor of its resistance at 25 °C in ohm, its B in
// kelvin, and the cubic coefficient in 1/K of
//
//	1/T = 1/298.15 + (L − ln R25)/B + cubic·(L³ − ln³ R25)
func FromBeta(r25Ohm, betaK, cubic float64) (*Thermistor, error) {
	if !(r25Ohm > 0) || !(betaK > 0) {
		return nil, fmt.Errorf("R25 of %g Ω and B of %g K cannot be: both must be above 0", r25Ohm, betaK)
	}
	l := math.Log(r25Ohm)
	return FromCoefficients(1/(25+zeroC)-l/betaK-cubic*l*l*l, 1/betaK, cubic, r25Ohm)
}

// Beta writes the thermistor as FromBeta reads it.
func (t *Thermistor) Beta() (r25Ohm, betaK, cubic float64) {
	return t.Ohms(25), 1 / t.B, t.C
}

// FromPoints makes a thermistor through three points exactly, through more by
// least squares in 1/T, and of two by the Beta formula. It fails, and names
// the points where it can, where the curve would not fall steadily.
func FromPoints(points []parser.SensorPoint) (*Thermistor, error) {
	if len(points) < 2 {
		return nil, fmt.Errorf("%d points are too few: a thermistor takes three, or two for a Beta",
			len(points))
	}
	for i, p := range points {
		if err := possible(p); err != nil {
			return nil, err
		}
		for _, q := range points[:i] {
			if (p.TempC-q.TempC)*(p.Ohm-q.Ohm) >= 0 {
				return nil, fmt.Errorf("%g Ω at %g °C and %g Ω at %g °C: an NTC's resistance falls while "+
					"it gets hotter",
					q.Ohm, q.TempC, p.Ohm, p.TempC)
			}
		}
	}
	var a, b, c float64
	switch len(points) {
	case 2:
		a, b = line(points)
	case 3:
		a, b, c = exact(points)
	default:
		a, b, c = leastSquares(points)
	}
	t, err := FromCoefficients(a, b, c, points[0].Ohm)
	if err != nil {
		return nil, err
	}
	for _, p := range points {
		if l := math.Log(p.Ohm); l <= t.lowL || l >= t.highL {
			return nil, errNotMonotonic
		}
	}
	return t, nil
}

// TempC is the temperature at a resistance.
func (t *Thermistor) TempC(ohms float64) float64 {
	l := bound(math.Log(boundOhm(ohms)), t.lowL, t.highL, t.highL)
	inverse := t.A + (t.B+t.C*l*l)*l
	if inverse <= 1/(hottestC+zeroC) {
		return hottestC // also where 1/T passes zero on the way to a short
	}
	return boundC(1/inverse - zeroC)
}

// Ohms is the resistance at a temperature: the root of the cubic that lies on
// the falling branch, in closed form.
func (t *Thermistor) Ohms(tempC float64) float64 {
	y := 1/(boundC(tempC)+zeroC) - t.A // = B·L + C·L³
	var l float64
	switch s := math.Sqrt(math.Abs(t.B / (3 * t.C))); {
	case t.C == 0 || math.IsInf(s, 0):
		l = y / t.B
	case t.B == 0:
		l = math.Cbrt(y / t.C)
	case t.B > 0 && t.C > 0:
		l = 2 * s * math.Sinh(math.Asinh(1.5*y/(t.B*s))/3)
	case t.B > 0: // C < 0: the middle of three roots
		l = 2 * s * math.Sin(math.Asin(bound(1.5*y/(t.B*s), -1, 1, 0))/3)
	default: // B < 0 < C: the outer root on the side of the branch
		side := math.Copysign(1, t.lowL+t.highL)
		if x := side * 1.5 * y / (-t.B * s); x > 1 {
			l = side * 2 * s * math.Cosh(math.Acosh(x)/3)
		} else {
			l = side * 2 * s * math.Cos(math.Acos(max(x, -1))/3)
		}
	}
	return boundOhm(math.Exp(bound(l, t.lowL, t.highL, t.highL)))
}
