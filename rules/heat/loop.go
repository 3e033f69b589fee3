package heat

import "math"

// LoopForm is the kind of control loop.
type LoopForm uint8

const (
	// LoopRange: its far limit below the functional range and nothing above
	// it; both start the integral and the derivative anew. In the range the
	// integral is clamped to what the power limit can use and the derivative
	// is filtered. The output is a whole number of counts, halved.
	LoopRange LoopForm = iota
	// LoopClamped: the integral is clamped to what the power limit can use
	// and frozen while the output saturates; the derivative is smoothed. An
	// output takes effect a sample late, and small changes of it are dropped.
	LoopClamped
)

const (
	rangeSampleS   = 0.16
	clampedSampleS = 0.3
	fullCounts     = 255.0

	// LoopRange sends half counts, this many to full power.
	halfCounts = 127.0

	// LoopClamped drops a change smaller than this share of the limit, until
	// the output last sent is so many samples old (2.1 s after it took
	// effect).
	leastChange   = 0.05
	repeatSamples = 8
)

// Loop is a control loop with its figures. Gains are per 255 duty counts.
type Loop struct {
	Form       LoopForm
	OnOff      bool    // full on below the target, off above it; no gains
	BandC      float64 // OnOff: half of its band
	Kp, Ki, Kd float64 // counts/K, counts/(K·s), counts·s/K
	Limit      float64 // highest duty; 0 means that of the plant

	// LoopRange.
	RangeC    float64 // functional range
	FarLimit  float64 // highest duty below the range; 0 means Limit
	FilterOld float64 // share of the old derivative, 0 to 1
	SampleS   float64 // time between two readings; 0 means 0.16 s
	// KeepsLast: the reading that the derivative starts from moves only inside
	// the range, and is 0 °C at power-on. The output when it first enters the
	// range is then off for a while.
	KeepsLast bool

	SmoothS float64 // LoopClamped: smoothing time of the derivative
}

// StepS is the time between two readings, s.
func (l Loop) StepS() float64 {
	switch {
	case l.Form == LoopClamped:
		return clampedSampleS
	case l.SampleS > 0:
		return l.SampleS
	}
	return rangeSampleS
}

// Controller is a loop at work.
type Controller struct {
	loop       Loop
	sampleS    float64
	limit, far float64 // of duty in counts
	began      bool
	inside     bool    // LoopRange: the last reading was inside the range
	last       float64 // reading
	integral   float64 // K·s
	derivative float64 // counts in LoopRange, K/s of the reading in LoopClamped
	on         bool

	// LoopClamped.
	duty float64 // in effect
	sent float64 // takes effect with the next reading
	age  int     // samples since
}

// Start returns a loop that begins to work and gives no more than limit,
// unless it has a limit of its own.
func (l Loop) Start(limit float64) *Controller {
	c := l.start(limit)
	return &c
}

func (l Loop) start(limit float64) Controller {
	if l.Limit > 0 {
		limit = l.Limit
	}
	far := limit
	if l.FarLimit > 0 {
		far = l.FarLimit
	}
	return Controller{
		loop: l, sampleS: l.StepS(),
		limit: limit * fullCounts, far: far * fullCounts, age: repeatSamples,
	}
}

// Duty takes one reading and returns the duty until the next. It is to be
// called once every StepS.
func (c *Controller) Duty(targetC, sensor float64) float64 {
	if !c.began {
		c.began = true
		if c.loop.Form == LoopClamped || !c.loop.KeepsLast {
			c.last = sensor
		}
	}
	var counts float64
	switch l := &c.loop; {
	case l.OnOff:
		counts = c.onOff(targetC, sensor)
	case l.Form == LoopClamped:
		counts = c.clamped(targetC-sensor, sensor)
	default:
		counts = c.ranged(targetC-sensor, sensor)
	}
	if c.loop.Form == LoopClamped {
		return c.send(counts / fullCounts)
	}
	return wholeDuty(counts)
}

// wholeDuty cuts counts to a whole number and halves it downwards.
func wholeDuty(counts float64) float64 {
	return math.Floor((counts+1e-6)/2) / halfCounts
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

func (c *Controller) ranged(short, sensor float64) float64 {
	l := &c.loop
	before := c.last
	if !l.KeepsLast {
		c.last = sensor
	}
	switch {
	case short < -l.RangeC: // looked at first, as published: off, also where the range is below 0
		c.inside = false
		return 0
	case short > l.RangeC:
		c.inside = false
		return c.far
	}
	if !c.inside {
		c.inside, c.integral, c.derivative = true, 0, 0
	}
	c.last = sensor
	c.integral = c.useful(c.integral + short*c.sampleS)
	c.derivative += (1 - l.FilterOld) * (l.Kd/c.sampleS*(before-sensor) - c.derivative)
	return min(max(l.Kp*short+l.Ki*c.integral+c.derivative, 0), c.limit)
}

func (c *Controller) clamped(short, sensor float64) float64 {
	l := &c.loop
	change := sensor - c.last
	c.last = sensor
	if l.SmoothS > clampedSampleS {
		c.derivative += (change - c.derivative*clampedSampleS) / l.SmoothS
	} else {
		c.derivative = change / clampedSampleS
	}
	integral := c.useful(c.integral + short*clampedSampleS)
	counts := l.Kp*short + l.Ki*integral - l.Kd*c.derivative
	if 0 <= counts && counts <= c.limit {
		c.integral = integral
		return counts
	}
	return min(max(counts, 0), c.limit)
}

// send gives an output the way to the heater, and returns what is in effect
// until the next reading.
func (c *Controller) send(duty float64) float64 {
	c.duty = c.sent
	c.age++
	changed := math.Abs(duty-c.sent) >= leastChange*c.limit/fullCounts
	if changed || c.sent != 0 && c.age >= repeatSamples {
		c.sent, c.age = duty, 0
	}
	return c.duty
}

// useful keeps an integral between none and what alone gives the power limit. For
// a Ki below 0 no fact says how the firmware bounds it: there it only grows.
func (c *Controller) useful(integral float64) float64 {
	switch {
	case c.loop.Ki > 0:
		integral = min(integral, c.limit/c.loop.Ki)
	case c.loop.Ki == 0, c.loop.Form == LoopClamped:
		return 0
	}
	return max(0, integral)
}
