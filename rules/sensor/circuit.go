package sensor

import "math"

// Circuit is a sensor from its pin to the converter: the curve, the resistor
// that pulls the pin up, the one in series with the sensor, and where a table
// in the firmware ends. It describes a real sensor on a real board, or what
// the firmware believes about them.
type Circuit struct {
	Curve     Curve
	PullupOhm float64
	SeriesOhm float64

	// Readings stop at these ends, °C; both 0 where they do not.
	LowC, HighC float64
}

// Ratio is the voltage at the pin as a share of the reference, 0 to 1.
func (c *Circuit) Ratio(tempC float64) float64 {
	r := c.Curve.Ohms(tempC) + c.SeriesOhm
	return r / (r + c.PullupOhm)
}

// TempC is the temperature at which the pin shows a ratio.
func (c *Circuit) TempC(ratio float64) float64 {
	x := bound(ratio, 0, 1, 1)
	return c.Curve.TempC(c.PullupOhm*x/(1-x) - c.SeriesOhm) // 1 gives infinite resistance: open
}

// Actual is the temperature of the sensor real while firmware that believes c
// indicates indicatedC.
func (c *Circuit) Actual(real *Circuit, indicatedC float64) float64 {
	return real.TempC(c.Ratio(indicatedC))
}

// Indicated is what firmware that believes c shows while the sensor real has
// the temperature actualC.
func (c *Circuit) Indicated(real *Circuit, actualC float64) float64 {
	return c.saturate(c.TempC(real.Ratio(actualC)))
}

// Converter is what reads a divider.
type Converter struct {
	Bits     int
	Averaged int // readings that the firmware adds up to one
}

// Open is what firmware that believes c shows while the sensor is open. A table
// takes the last count as it is. With a formula the sum of the readings is kept
// half a count away from full scale, as firmware does to have something to
// compute with.
func (c *Circuit) Open(by Converter) float64 {
	if c.byRatio() {
		return c.saturate(c.TempC(1 - 1/counts(by.Bits)))
	}
	return c.saturate(c.TempC(1 - by.least()))
}

// Short is Open for a sensor that is shorted.
func (c *Circuit) Short(by Converter) float64 {
	if c.byRatio() {
		return c.saturate(c.TempC(0))
	}
	return c.saturate(c.TempC(by.least()))
}

// least is half a count of the sum, as a share of full scale.
func (by Converter) least() float64 { return 0.5 / (counts(by.Bits) * float64(max(by.Averaged, 1))) }

// byRatio reports whether the firmware reads c by a table of counts.
func (c *Circuit) byRatio() bool {
	t, ok := c.Curve.(*Table)
	return ok && t.pullupOhm != 0
}

// Falls reports whether the pin's voltage falls as the sensor gets hotter.
func (c *Circuit) Falls() bool { return c.Curve.Ohms(20) > c.Curve.Ohms(100) }

// Ends reports whether readings stop at LowC and HighC.
func (c *Circuit) Ends() bool { return c.LowC != 0 || c.HighC != 0 }

func (c *Circuit) saturate(t float64) float64 {
	if !c.Ends() {
		return t
	}
	return min(max(t, c.LowC), c.HighC)
}

// CPerCount is how far apart two neighbouring counts are at a temperature, in
// K, for a converter of so many bits. It is a large number where the pin
// hardly moves.
func (c *Circuit) CPerCount(tempC float64, bits int) float64 {
	const step = 0.05 // K
	moved := math.Abs(c.Ratio(tempC+step)-c.Ratio(tempC-step)) * counts(bits)
	return min(2*step/max(moved, 1e-9), hottestC)
}

// counts is how many counts a converter of so many bits has.
func counts(bits int) float64 { return math.Exp2(float64(min(max(bits, 1), 32))) }
