package sensor

import "math"

// NTCBand is the uncertainty of an NTC at a temperature, in K: the tolerances
// of R25 and B, each a share of 1, as the root of the sum of their squares.
//
// R25 off by a share x moves ln R by x everywhere; B off by x moves it by
// x·ln(R25/R), since ln(R/R25) is B·(1/T − 1/298.15).
func NTCBand(c Curve, tempC, r25Share, betaShare float64) float64 {
	const step = 0.05 // K
	slope := math.Log(c.Ohms(tempC-step)/c.Ohms(tempC+step)) / (2 * step)
	if slope = math.Abs(slope); slope < 1e-9 {
		return hottestC
	}
	fromBeta := betaShare * math.Log(c.Ohms(25)/c.Ohms(tempC))
	return min(math.Hypot(r25Share, fromBeta)/slope, hottestC)
}

// PlatinumBand is the uncertainty of a platinum sensor of class B, in K:
// 0.3 + 0.005·|t| (IEC 60751).
func PlatinumBand(tempC float64) float64 { return 0.3 + 0.005*math.Abs(tempC) }
