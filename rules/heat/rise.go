package heat

import "math"

// RiseWatch is the rise watch of a window watch. On the way to a target it is
// armed while S < target − (RiseC + MarginC + 1), and then wants RiseC within
// WindowS, again and again.
type RiseWatch struct {
	RiseC   float64
	WindowS float64
	MarginC float64
}

// ArmBelow is the sensor's temperature from which on the watch is no more
// armed on the way to a target.
func (w RiseWatch) ArmBelow(targetC float64) float64 {
	return targetC - (w.RiseC + w.MarginC + 1)
}

// RiseMonitor is a rise watch at work on one target.
type RiseMonitor struct {
	watch    RiseWatch
	below    float64
	began    bool
	armed    bool
	goal     float64
	deadline float64
}

// Watch begins to watch a heater that got a new target.
func (w RiseWatch) Watch(targetC float64) *RiseMonitor {
	return &RiseMonitor{watch: w, below: w.ArmBelow(targetC)}
}

// Feed takes one reading and reports whether the watch trips.
func (m *RiseMonitor) Feed(t, sensor float64) bool {
	switch {
	case !m.began, m.armed && sensor >= m.goal:
		m.began = true
		m.armed = sensor < m.below
		m.goal, m.deadline = sensor+m.watch.RiseC, t+m.watch.WindowS
	case m.armed && t >= m.deadline:
		return true
	}
	return false
}

// Rise is what a rise watch sees of a heater at full duty.
type Rise struct {
	Armed  bool    // on the way to the target at all
	Gets   bool    // S reaches the temperature up to which the watch is armed
	ArmedS float64 // when it is armed for the last time, s
	LastC  float64 // rise over the window that then begins; 0 where S never gets there
	FirstC float64 // rise over the window that begins with the heating
}

// LeastC is the smallest rise over any window. The rate grows while the
// sensor's lag passes and falls from then on, so the least is at either end.
func (r Rise) LeastC() float64 { return min(r.FirstC, r.LastC) }

// Trips reports whether the watch would trip, where the window that matters
// begins at its worst moment.
func (r Rise) Trips(w RiseWatch) bool { return r.Armed && r.LeastC() < w.RiseC }

type riseKey struct {
	plant  Plant
	load   Load
	watch  RiseWatch
	target float64
}

var rises memo[riseKey, Rise]

// PredictRise heats a plant from ambient towards a target at full duty, and
// measures the rise in the watch's windows. The last window begins just where
// the watch ceases to be armed, the worst of all moments at which a real one
// may begin.
func PredictRise(p Plant, l Load, w RiseWatch, targetC float64) Rise {
	return rises.get(riseKey{p, l, w, targetC}, func() Rise {
		c := riseCurve(p, l, w, targetC, w.WindowS)
		return w.measure(c, targetC)
	})
}

func riseCurve(p Plant, l Load, w RiseWatch, targetC, windowS float64) Curve {
	return p.beyond(p.Ambient(), p.DutyLimit, l, w.ArmBelow(targetC), windowS)
}

// measure reads a rise off a curve that goes far enough.
func (w RiseWatch) measure(c Curve, targetC float64) Rise {
	start, level := c.Points[0].Sensor, w.ArmBelow(targetC)
	if start >= level {
		return Rise{}
	}
	r := Rise{Armed: true, FirstC: c.Sensor(w.WindowS) - start}
	if r.ArmedS, r.Gets = c.Cross(level); r.Gets {
		r.LastC = c.Sensor(r.ArmedS+w.WindowS) - level
	}
	return r
}

type windowKey struct {
	riseKey
	mostS float64
}

type leastWindow struct {
	seconds float64
	ok      bool
}

var windows memo[windowKey, leastWindow]

// LeastWindow returns the shortest window of whole seconds, up to mostS, in
// which a healthy heater makes the rise; false where no such window does.
func LeastWindow(p Plant, l Load, w RiseWatch, targetC, mostS float64) (float64, bool) {
	found := windows.get(windowKey{riseKey{p, l, w, targetC}, mostS}, func() leastWindow {
		c := riseCurve(p, l, w, targetC, mostS)
		for s := math.Ceil(w.WindowS); s <= mostS; s++ {
			w.WindowS = s
			if !w.measure(c, targetC).Trips(w) {
				return leastWindow{s, true}
			}
		}
		return leastWindow{}
	})
	return found.seconds, found.ok
}
