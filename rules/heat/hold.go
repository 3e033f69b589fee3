package heat

import "math"

// HoldWatch is the hold watch of a window watch. It is armed once S has
// reached the target, and trips when S stays below target − HysteresisC for
// PeriodS.
type HoldWatch struct {
	HysteresisC float64
	PeriodS     float64
}

// HoldMonitor is a hold watch at work on one target.
type HoldMonitor struct {
	watch    HoldWatch
	target   float64
	reached  bool
	deadline float64
}

// Watch begins to watch a heater that got a new target.
func (w HoldWatch) Watch(targetC float64) *HoldMonitor {
	return &HoldMonitor{watch: w, target: targetC}
}

// Feed takes one reading and reports whether the watch trips.
func (m *HoldMonitor) Feed(t, sensor float64) bool {
	m.reached = m.reached || sensor >= m.target
	if !m.reached {
		return false
	}
	if sensor >= m.target-m.watch.HysteresisC {
		m.deadline = t + m.watch.PeriodS
		return false
	}
	return t >= m.deadline
}

// HoldTrip returns when the watch trips, in seconds, on a heater that sits at
// its target and can give no more than full duty under a new load; false where
// it never trips, because S settles inside the hysteresis.
func (w HoldWatch) HoldTrip(p Plant, l Load, targetC float64) (float64, bool) {
	floor := targetC - w.HysteresisC
	if p.Settle(p.DutyLimit, l, targetC) >= floor {
		return 0, false
	}
	c := p.beyond(State{targetC, targetC}, p.DutyLimit, l, floor, 0)
	t, ok := c.Cross(floor)
	return t + w.PeriodS, ok
}

// HoldTrip is the same for a sum watch, at the earliest phase of its checks.
func (w SumWatch) HoldTrip(p Plant, l Load, targetC float64) (float64, bool) {
	floor := targetC - w.HysteresisC
	if p.Settle(p.DutyLimit, l, targetC) >= floor {
		return 0, false
	}
	c := p.Run(State{targetC, targetC}, p.DutyLimit, l, horizonS)
	earliest := math.Inf(1)
	for _, phase := range phases {
		m := w.Watch(targetC)
		for t := phase; t < min(horizonS, earliest); t += checkS {
			if m.Feed(t, c.Sensor(t)) {
				earliest = t
			}
		}
	}
	return earliest, !math.IsInf(earliest, 1)
}
