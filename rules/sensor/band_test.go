package sensor

import (
	"math"
	"testing"
)

// By hand for the Beta formula, where ln R changes by B/T² for each kelvin: at
// 25 °C 1 % of R25 is 0.01·298.15²/3950 = 0.225 K, and 1 % of B nothing; at
// 220 °C they are 0.01 and 0.01·3950·(1/298.15 − 1/493.15) of ln R.
func TestNTCBand(t *testing.T) {
	c := parsed(t, "beta:100000:3950")
	fromBeta := 0.01 * 3950 * (1/298.15 - 1/493.15)
	for _, x := range []struct{ tempC, r25, beta, want float64 }{
		{25, 0.01, 0, 0.01 * 298.15 * 298.15 / 3950},
		{25, 0.01, 0.01, 0.01 * 298.15 * 298.15 / 3950},
		{220, 0.01, 0.01, math.Hypot(0.01, fromBeta) * 493.15 * 493.15 / 3950},
		{220, 0, 0.01, fromBeta * 493.15 * 493.15 / 3950},
		{-272, 0.01, 0.01, hottestC}, // the resistance is at its end
	} {
		if got := NTCBand(c, x.tempC, x.r25, x.beta); math.Abs(got/x.want-1) > 1e-6 {
			t.Errorf("%+v: %g K", x, got)
		}
	}
}

// IEC 60751, the tolerances of class B.
func TestPlatinumBand(t *testing.T) {
	for tempC, want := range map[float64]float64{-200: 1.3, -100: 0.8, 0: 0.3, 100: 0.8, 200: 1.3, 400: 2.3} {
		if got := PlatinumBand(tempC); math.Abs(got-want) > 1e-12 {
			t.Errorf("%g °C: ±%g K, want %g", tempC, got, want)
		}
	}
}
