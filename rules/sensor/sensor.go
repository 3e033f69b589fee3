// Package sensor computes what a temperature sensor does: its resistance, the
// divider that it stands in, the converter that reads the divider, and what
// firmware that believes another curve makes of it. It knows no files.
//
// Temperatures are in °C and resistances in ohm unless a name says otherwise.
package sensor

import "math"

// Curve is the resistance of a sensor against its temperature. Both methods
// accept any number, infinities and NaN included, and return a finite one:
// the nearest that the curve can give.
type Curve interface {
	Ohms(tempC float64) float64
	TempC(ohms float64) float64
}

const (
	zeroC = 273.15 // K

	// No curve means anything outside these; a result is moved to the nearer.
	coldestC = -273
	hottestC = 2000

	leastOhm = 1e-6
	mostOhm  = 1e12
)

// bound moves x into low to high; NaN becomes other.
func bound(x, low, high, other float64) float64 {
	switch {
	case math.IsNaN(x):
		return other
	case x < low:
		return low
	case x > high:
		return high
	}
	return x
}

func boundC(t float64) float64   { return bound(t, coldestC, hottestC, 25) }
func boundOhm(r float64) float64 { return bound(r, leastOhm, mostOhm, mostOhm) }
