package heat

// DropCheck is the half of a window watch that looks at a target that was reached.
// It is armed once S has reached the target, and trips when S stays below
// target − HysteresisC for PeriodS.
type DropCheck struct {
	HysteresisC float64
	PeriodS     float64
	// SlowsFan: the part fan is slowed as S sags, and stands still before the
	// watch looks.
	SlowsFan bool
}

// DropMonitor is a drop check at work on one target.
type DropMonitor struct {
	watch    DropCheck
	target   float64
	reached  bool
	deadline float64
}

// Watch begins to watch a heater that got a new target.
func (w DropCheck) Watch(targetC float64) *DropMonitor {
	m := w.start(targetC)
	return &m
}

func (w DropCheck) start(targetC float64) DropMonitor { return DropMonitor{watch: w, target: targetC} }

// Feed takes one reading and reports whether the watch trips.
func (m *DropMonitor) Feed(t, sensor float64) bool {
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

type dropKey struct {
	plant  Plant
	load   Load
	window DropCheck // of the two watches one is zero
	sum    SumWatch
	target float64
}

type dropTrip struct {
	atS   float64
	trips bool
}

var drops memo[dropKey, dropTrip]

// TripsAfter returns when the watch trips, in seconds, on a heater that sits at
// its target and can give no more than full duty under a new load; false where
// it never trips, because S settles inside the hysteresis.
func (w DropCheck) TripsAfter(p Plant, l Load, targetC float64) (float64, bool) {
	h := drops.get(dropKey{plant: p, load: l, window: w, target: targetC}, func() dropTrip {
		floor := targetC - w.HysteresisC
		if w.SlowsFan {
			return w.slowed(p, l, targetC)
		}
		if p.Settle(p.DutyLimit, l, targetC) >= floor {
			return dropTrip{}
		}
		c := p.beyond(State{targetC, targetC}, p.DutyLimit, l, floor, 0)
		t, ok := c.Cross(floor)
		return dropTrip{t + w.PeriodS, ok}
	})
	return h.atS, h.trips
}

// slowed lets a heater sink with a part fan that slows as it does.
func (w DropCheck) slowed(p Plant, l Load, targetC float64) dropTrip {
	floor := targetC - w.HysteresisC
	if p.Settle(p.DutyLimit, Load{FlowMM3S: l.FlowMM3S}, targetC) >= floor {
		return dropTrip{}
	}
	motions := make(map[float64]*motion)
	s := State{targetC, targetC}
	for i := range int(horizonS / rangeSampleS) {
		if s.Sensor < floor {
			return dropTrip{float64(i)*rangeSampleS + w.PeriodS, true}
		}
		share := w.fanShare(targetC - s.Sensor)
		m := motions[share]
		if m == nil {
			m = newMotion(p, Load{Fan: l.Fan * share, FlowMM3S: l.FlowMM3S})
			motions[share] = m
		}
		s = m.run(s, p.DutyLimit, rangeSampleS)
	}
	return dropTrip{}
}

// fanShare is what is left of the part fan where S lies so far below the target
// (as the style's firmware publishes it).
func (w DropCheck) fanShare(shortK float64) float64 {
	switch h := w.HysteresisC; {
	case shortK <= h/4:
		return 1
	case shortK <= 0.3335*h:
		return 0.75
	case shortK <= h/2:
		return 0.5
	case shortK <= 0.8*h:
		return 0.25
	}
	return 0
}

// TripsAfter is the same for a sum watch, at the earliest phase of its checks.
func (w SumWatch) TripsAfter(p Plant, l Load, targetC float64) (float64, bool) {
	h := drops.get(dropKey{plant: p, load: l, sum: w, target: targetC}, func() dropTrip {
		if p.Settle(p.DutyLimit, l, targetC) >= targetC-w.HysteresisC {
			return dropTrip{}
		}
		return w.sink(p, l, targetC)
	})
	return h.atS, h.trips
}

// sink runs a heater down from its target until the sum trips.
func (w SumWatch) sink(p Plant, l Load, targetC float64) dropTrip {
	var monitors [len(phases)]SumMonitor
	for i := range monitors {
		monitors[i] = w.start(targetC)
	}
	m, s := newMotion(p, l), State{targetC, targetC}
	m.prepare(clampedSampleS)
	eye := smoothed{share: w.share()}
	next := 0 // check, of all phases
	for i := range int(horizonS / clampedSampleS) {
		for t := float64(i) * clampedSampleS; float64(next)/float64(len(phases)) < t; next++ {
			if at := float64(next) / float64(len(phases)); monitors[next%len(phases)].Feed(at, eye.at) {
				return dropTrip{at, true}
			}
		}
		eye.see(s.Sensor)
		s = m.next(s, p.DutyLimit)
	}
	return dropTrip{}
}
