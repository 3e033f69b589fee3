package sensor

import "math"

// Platinum is a platinum resistor by Callendar and Van Dusen with the
// constants of IEC 60751:
//
//	R = R0·(1 + A·t + B·t²)                       at 0 °C and above
//	R = R0·(1 + A·t + B·t² + C·(t − 100)·t³)      below
type Platinum struct{ R0 float64 }

const (
	cvdA = 3.9083e-3  // 1/K
	cvdB = -5.775e-7  // 1/K²
	cvdC = -4.183e-12 // 1/K⁴

	// The standard goes from −200 to 850 °C. The formulas stay monotonic and
	// positive somewhat further, and the curve ends there.
	cvdLowC, cvdHighC = -240, 1500
)

// FromPlatinum makes a platinum sensor of its resistance at 0 °C, in ohm.
func FromPlatinum(r0Ohm float64) *Platinum { return &Platinum{r0Ohm} }

// Ohms is the resistance at a temperature.
func (p *Platinum) Ohms(tempC float64) float64 {
	t := bound(tempC, cvdLowC, cvdHighC, 25)
	r := 1 + t*(cvdA+cvdB*t)
	if t < 0 {
		r += cvdC * (t - 100) * t * t * t
	}
	return p.R0 * r
}

// TempC is the temperature at a resistance.
func (p *Platinum) TempC(ohms float64) float64 {
	r := bound(ohms, p.Ohms(cvdLowC), p.Ohms(cvdHighC), p.Ohms(cvdHighC)) / p.R0
	root := func(r float64) float64 {
		return (-cvdA + math.Sqrt(max(0, cvdA*cvdA-4*cvdB*(1-r)))) / (2 * cvdB)
	}
	t := root(r)
	if r >= 1 {
		return bound(t, cvdLowC, cvdHighC, 25)
	}
	// Below 0 °C the C term is small: Newton from the quadratic's root.
	for range 4 {
		f := 1 + t*(cvdA+t*(cvdB+t*(t-100)*cvdC)) - r
		slope := cvdA + t*(2*cvdB+t*cvdC*(4*t-300))
		t -= f / slope
	}
	return bound(t, cvdLowC, cvdHighC, 25)
}
