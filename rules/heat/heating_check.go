package heat

import "math"

// HeatingCheck is the half of a window watch that looks on the way to a target. It is
// armed while S < target − (RiseC + MarginC + 1), and then wants RiseC within
// WindowS, again and again.
type HeatingCheck struct {
	RiseC   float64
	WindowS float64
	MarginC float64
}

// ArmBelow is the sensor's temperature from which on the watch is no more
// armed on the way to a target.
func (w HeatingCheck) ArmBelow(targetC float64) float64 {
	return targetC - (w.RiseC + w.MarginC + 1)
}

// HeatingMonitor is a heating check at work on one target.
type HeatingMonitor struct {
	watch    HeatingCheck
	below    float64 // armed for goals below
	began    bool
	armed    bool
	goal     float64
	deadline float64
}

// Watch begins to watch a heater that got a new target.
func (w HeatingCheck) Watch(targetC float64) *HeatingMonitor {
	m := w.start(targetC)
	return &m
}

func (w HeatingCheck) start(targetC float64) HeatingMonitor {
	return HeatingMonitor{watch: w, below: targetC - (w.MarginC + 1)}
}

// Feed takes one reading and reports whether the watch trips. It sees whole
// degrees, and looks only when a window is over.
func (m *HeatingMonitor) Feed(t, sensor float64) bool {
	if m.began && !(m.armed && t >= m.deadline) {
		return false
	}
	whole := math.Trunc(sensor)
	if m.began && whole < m.goal {
		return true
	}
	m.began = true
	m.goal, m.deadline = whole+m.watch.RiseC, t+m.watch.WindowS
	m.armed = m.goal < m.below
	return false
}

// lastWhole is the highest whole degree, as the watch sees it, at which it
// still arms itself on the way to a target.
func (w HeatingCheck) lastWhole(targetC float64) float64 {
	return math.Ceil(w.ArmBelow(targetC)) - 1
}

// Rise is what a heating check sees of a heater at full duty.
type Rise struct {
	Armed  bool    // on the way to the target at all
	Gets   bool    // S reaches the temperature up to which the watch is armed
	ArmedS float64 // when it is armed for the last time, s
	LastC  float64 // rise over the window that then begins; 0 where S never gets there
	FirstC float64 // rise over the window that begins with the heating

	// NeededS is the longest that S takes over the required rise, from any
	// whole degree at which the watch may arm itself; infinite where S never
	// makes it. A shorter window trips at some start.
	NeededS float64
}

// LeastC is the smallest rise over any window. The rate grows while the
// sensor's lag passes and falls from then on, so the least is at either end.
func (r Rise) LeastC() float64 { return min(r.FirstC, r.LastC) }

// Trips reports whether the watch would trip, where the window that matters
// begins at its worst moment.
func (r Rise) Trips(w HeatingCheck) bool { return r.Armed && r.NeededS > w.WindowS+sameS }

// sameS is what two times differ by that are the same, s.
const sameS = 1e-6

type riseKey struct {
	plant  Plant
	load   Load
	watch  HeatingCheck
	target float64
}

var rises memo[riseKey, Rise]

// PredictRise heats a plant from ambient towards a target at full duty, and
// measures the rise in the watch's windows. The last window begins just where
// the watch ceases to be armed, the worst of all moments at which a real one
// may begin.
func PredictRise(p Plant, l Load, w HeatingCheck, targetC float64) Rise {
	return rises.get(riseKey{p, l, w, targetC}, func() Rise {
		return w.measure(riseCurve(p, l, w, targetC), targetC)
	})
}

func riseCurve(p Plant, l Load, w HeatingCheck, targetC float64) Curve {
	until := max(w.ArmBelow(targetC), w.lastWhole(targetC)+w.RiseC)
	return p.beyond(p.Ambient(), p.DutyLimit, l, until, w.WindowS)
}

// measure reads a rise off a curve that goes far enough.
func (w HeatingCheck) measure(c Curve, targetC float64) Rise {
	start, level, whole := c.Points[0].Sensor, w.ArmBelow(targetC), w.lastWhole(targetC)
	if math.Trunc(start) > whole {
		return Rise{}
	}
	r := Rise{Armed: true, FirstC: c.Sensor(w.WindowS) - start}
	if r.ArmedS, r.Gets = c.Cross(level); r.Gets {
		r.LastC = c.Sensor(r.ArmedS+w.WindowS) - level
	}
	r.NeededS = max(c.takes(start, w.RiseC), c.takes(max(whole, start), w.RiseC))
	return r
}

// takes is how long the sensor takes from a level over so many kelvins;
// infinite where it never gets so far.
func (c Curve) takes(from, rise float64) float64 {
	at := 0.0
	if from > c.Points[0].Sensor {
		var ok bool
		if at, ok = c.Cross(from); !ok {
			return math.Inf(1)
		}
	}
	to, ok := c.Cross(from + rise)
	if !ok {
		return math.Inf(1)
	}
	return to - at
}

// TripShare is the share of heat-ups whose heating check trips, over where in a
// window the last stretch begins and by which fraction the sensor is off a
// whole degree, both as likely as any.
func TripShare(p Plant, l Load, w HeatingCheck, targetC float64) float64 {
	c := riseCurve(p, l, w, targetC)
	const starts, fractions = 20, 10
	trips := 0
	for i := range starts {
		for k := range fractions {
			if w.tripsFrom(c, targetC, w.WindowS*float64(i)/starts, float64(k)/fractions) {
				trips++
			}
		}
	}
	return float64(trips) / (starts * fractions)
}

// tripsFrom follows the windows of one heat-up, of which the first begins at a
// time and every reading lies a fraction of a degree lower.
func (w HeatingCheck) tripsFrom(c Curve, targetC, at, fraction float64) bool {
	m := w.start(targetC)
	for ; at <= horizonS; at += w.WindowS {
		if m.Feed(at, c.Sensor(at)-fraction) {
			return true
		}
		if !m.armed {
			return false
		}
	}
	return false
}
