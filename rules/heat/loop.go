package heat

import "cmp"

// LoopForm is the kind of control loop.
type LoopForm uint8

const (
	// LoopRange: full power below the functional range and none above it; the
	// integral is zeroed outside the range, and clamped in it to what the power
	// limit can use (from memory); the derivative is filtered.
	LoopRange LoopForm = iota
	// LoopClamped: the integral is clamped to what the power limit can use
	// and frozen while the output saturates; the derivative is smoothed.
	LoopClamped
)

const (
	rangeSampleS   = 0.16
	clampedSampleS = 0.3
	fullCounts     = 255.0
)

// Loop is a control loop with its figures. Gains are per 255 duty counts.
type Loop struct {
	Form       LoopForm
	OnOff      bool    // full on below the target, off above it; no gains
	BandC      float64 // OnOff: half of its band
	Kp, Ki, Kd float64 // counts/K, counts/(K·s), counts·s/K
	RangeC     float64 // LoopRange: functional range
	FarLimit   float64 // LoopRange: highest duty below the range; 0 means that of the plant
	FilterOld  float64 // LoopRange: share of the old derivative, 0 to 1
	SmoothS    float64 // LoopClamped: smoothing time of the derivative
}

// SampleS is the time between two readings, s.
func (l Loop) SampleS() float64 {
	if l.Form == LoopClamped {
		return clampedSampleS
	}
	return rangeSampleS
}

// Controller is a loop at work.
type Controller struct {
	loop       Loop
	limit      float64 // of duty
	began      bool
	last       float64 // reading
	integral   float64 // K·s
	derivative float64 // of the reading, K/s
	on         bool
}

// Start returns a loop that begins to work and gives no more than limit.
func (l Loop) Start(limit float64) *Controller { return &Controller{loop: l, limit: limit} }

// Duty takes one reading and returns the duty until the next. It is to be
// called once every SampleS.
func (c *Controller) Duty(targetC, sensor float64) float64 {
	if !c.began {
		c.began, c.last = true, sensor
	}
	change := sensor - c.last
	c.last = sensor
	switch l := &c.loop; {
	case l.OnOff:
		return c.onOff(targetC, sensor)
	case l.Form == LoopClamped:
		return c.clamped(targetC-sensor, change)
	default:
		return c.ranged(targetC-sensor, change)
	}
}

func (c *Controller) onOff(targetC, sensor float64) float64 {
	if c.on {
		c.on = sensor < targetC+c.loop.BandC
	} else {
		c.on = sensor < targetC && sensor <= targetC-c.loop.BandC
	}
	if c.on {
		return c.limit
	}
	return 0
}

func (c *Controller) ranged(short, change float64) float64 {
	l := &c.loop
	c.derivative = l.FilterOld*c.derivative + (1-l.FilterOld)*change/rangeSampleS
	switch {
	case short > l.RangeC:
		c.integral = 0
		return cmp.Or(l.FarLimit, c.limit)
	case short < -l.RangeC:
		c.integral = 0
		return 0
	}
	c.integral = c.useful(c.integral + short*rangeSampleS)
	return c.bound(l.Kp*short + l.Ki*c.integral - l.Kd*c.derivative)
}

func (c *Controller) clamped(short, change float64) float64 {
	l := &c.loop
	if l.SmoothS > clampedSampleS {
		c.derivative += (change - c.derivative*clampedSampleS) / l.SmoothS
	} else {
		c.derivative = change / clampedSampleS
	}
	integral := c.useful(c.integral + short*clampedSampleS)
	counts := l.Kp*short + l.Ki*integral - l.Kd*c.derivative
	if 0 <= counts && counts <= c.limit*fullCounts {
		c.integral = integral
	}
	return c.bound(counts)
}

// useful keeps an integral between none and what alone gives the power limit.
func (c *Controller) useful(integral float64) float64 {
	if c.loop.Ki > 0 {
		integral = min(integral, c.limit*fullCounts/c.loop.Ki)
	}
	return max(0, integral)
}

func (c *Controller) bound(counts float64) float64 {
	return min(max(counts/fullCounts, 0), c.limit)
}
