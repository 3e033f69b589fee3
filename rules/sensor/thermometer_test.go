package sensor

import (
	"math"
	"testing"

	"preflash/parser"
)

// By hand: 2 K and 1 % of 150 °C are 2.5 K, as 4 and 3 are 5.
func TestOff(t *testing.T) {
	if got := UsualThermometer.Off(150); got != 2.5 {
		t.Errorf("at 150 °C ±%g K", got)
	}
}

// By hand, of one point at 100 °C with an error of −10 K and a thermometer of 2 K:
// alone it is 5², and with a common error of 10 % the sum is least at
// low = (−10·100/4)/(100²/4 + 1/0.1²) = −250/2600.
func TestMisfit(t *testing.T) {
	points := []parser.SensorPoint{{TempC: 100, Ohm: 1000}}
	const common = -250.0 / 2600
	left := (-10 - common*100) / 2
	for _, c := range []struct {
		by               Thermometer
		errorK, sum, low float64
	}{
		{Thermometer{OffK: 2}, -10, 25, 0},
		{Thermometer{OffK: 2, Low: 0.1}, -10, common*common*100 + left*left, common},
		{Thermometer{OffK: 2, Low: 0.1}, 10, 25, 0}, // it reads low, never high
	} {
		sum, low := c.by.misfit(points, []float64{c.errorK})
		if math.Abs(sum-c.sum) > 1e-12 || math.Abs(low-c.low) > 1e-12 {
			t.Errorf("%+v, %g K: %g with %g, want %g with %g", c.by, c.errorK, sum, low, c.sum, c.low)
		}
	}
}
