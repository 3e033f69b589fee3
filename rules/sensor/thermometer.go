package sensor

import (
	"math"

	"preflash/parser"
)

// Thermometer says how far off measured temperatures may be: a standard
// deviation of OffK and, beside it, of OffShare of the reading. Low is that of
// an error which all readings have in common, as a share: a tip that touches the
// metal badly reads low, the more the hotter it is, and never high.
type Thermometer struct{ OffK, OffShare, Low float64 }

// UsualThermometer is what a bench has: 2 K and 1 %, and a tip that may read 5 %
// low, which is two and a half times Low (common practice, no source).
var UsualThermometer = Thermometer{OffK: 2, OffShare: 0.01, Low: 0.02}

// Off is how far a reading may be off, K.
func (m Thermometer) Off(tempC float64) float64 { return math.Hypot(m.OffK, m.OffShare*tempC) }

const (
	// A curve is no longer possible where a point is further from it than this
	// many times what the thermometer may be off, or where the best curve fits
	// better by the square of that.
	farOff      = 3.0
	leastMisfit = farOff * farOff
)

// misfit is how badly a thermometer's readings go with a curve: the sum of
// squares of the errors, each against what the thermometer may be off, χ². A
// common error that is likelier than so many single ones is taken out before,
// and counts by itself. low is that error, as a share, at most 0.
func (m Thermometer) misfit(points []parser.SensorPoint, errorsK []float64) (sum, low float64) {
	if m.Low > 0 {
		var td, tt float64
		for i, p := range points {
			w := 1 / (m.Off(p.TempC) * m.Off(p.TempC))
			td, tt = td+w*p.TempC*errorsK[i], tt+w*p.TempC*p.TempC
		}
		low = min(td/(tt+1/(m.Low*m.Low)), 0)
		sum = low * low / (m.Low * m.Low)
	}
	for i, p := range points {
		d := m.left(p, errorsK[i], low)
		sum += d * d
	}
	return sum, low
}

// left is what is left of an error beside a common one, in parts of what the
// thermometer may be off.
func (m Thermometer) left(p parser.SensorPoint, errorK, low float64) float64 {
	return (errorK - low*p.TempC) / m.Off(p.TempC)
}
