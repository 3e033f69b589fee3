package heat

import "math"

// WatchForm is the kind of runaway protection.
type WatchForm uint8

const (
	NoWatch WatchForm = iota
	WindowWatch
	ErrorSumWatch
)

// Watch is the whole protection of one heater.
type Watch struct {
	Form WatchForm
	Rise RiseWatch // WindowWatch; a window of 0 is a rise watch that is off
	Hold HoldWatch // WindowWatch; a period of 0 is a hold watch that is off
	Sum  SumWatch  // ErrorSumWatch
}

// Trip says which watch shut a heater down.
type Trip uint8

const (
	NoTrip Trip = iota
	RiseTrip
	HoldTrip
	SumTrip
)

// Sample is one moment of a step.
type Sample struct {
	TimeS float64
	State
	Duty float64 // from now on
}

// Response is what a control loop makes of a step from ambient to a target.
type Response struct {
	Reached    bool // S got to the target
	PeakC      float64
	OvershootC float64 // PeakC above the target; 0 where it is not reached
	Settles    bool    // S comes to stay within SettleBandC of the target
	SettleS    float64 // from when on
	Trip       Trip    // the first watch that trips
	TripS      float64 // when
}

const (
	// SettleBandC is how near the target S has to stay to have settled.
	SettleBandC = 2.0
	stepS       = 900.0 // the longest step
	stayS       = 60.0  // S counts as settled when it stays this long and
	stayKPerS   = 0.005 // hardly moves any more
)

type stepKey struct {
	plant  Plant
	load   Load
	loop   Loop
	watch  Watch
	target float64
}

var steps memo[stepKey, Response]

// Step drives a plant from ambient to a target through a control loop, under
// a watch. The loop goes on after a trip, so that the overshoot is known in
// any case. It ends when the temperature has settled, or after 900 s.
func Step(p Plant, l Load, loop Loop, w Watch, targetC float64) Response {
	return steps.get(stepKey{p, l, loop, w, targetC}, func() Response {
		return step(p, l, loop, w, targetC, func(Sample) {})
	})
}

// StepTrace is Step with every sample of the loop.
func StepTrace(p Plant, l Load, loop Loop, w Watch, targetC float64) (Response, []Sample) {
	var trace []Sample
	r := step(p, l, loop, w, targetC, func(s Sample) { trace = append(trace, s) })
	return r, trace
}

func step(p Plant, l Load, loop Loop, w Watch, targetC float64, each func(Sample)) Response {
	m, s := newMotion(p, l), p.Ambient()
	control, watch := loop.Start(p.DutyLimit), w.begin(targetC)
	r := Response{PeakC: s.Sensor}
	dt := loop.SampleS()
	inside := math.Inf(1) // since when S is within the band
	stay := max(stayS, w.Hold.PeriodS+stayS/2)
	for i := range int(stepS / dt) {
		t := float64(i) * dt
		duty := control.Duty(targetC, s.Sensor)
		each(Sample{t, s, duty})
		r.PeakC = max(r.PeakC, s.Sensor)
		if trip := watch.feed(t, s.Sensor); trip != NoTrip && r.Trip == NoTrip {
			r.Trip, r.TripS = trip, t
		}
		switch {
		case math.Abs(s.Sensor-targetC) > SettleBandC:
			inside = math.Inf(1)
		case math.IsInf(inside, 1):
			inside = t
		}
		if t >= inside+stay && math.Abs(s.Block-s.Sensor)*m.perLag < stayKPerS {
			break
		}
		s = m.run(s, duty, dt)
	}
	r.Reached = r.PeakC >= targetC
	r.OvershootC = max(0, r.PeakC-targetC)
	if r.Settles = !math.IsInf(inside, 1); r.Settles {
		r.SettleS = inside
	}
	return r
}

// monitor is a Watch at work.
type monitor struct {
	rise *RiseMonitor
	hold *HoldMonitor
	sum  *SumMonitor
	next float64 // of the sum watch's checks
}

func (w Watch) begin(targetC float64) *monitor {
	var m monitor
	switch w.Form {
	case WindowWatch:
		if w.Rise.WindowS > 0 {
			m.rise = w.Rise.Watch(targetC)
		}
		if w.Hold.PeriodS > 0 {
			m.hold = w.Hold.Watch(targetC)
		}
	case ErrorSumWatch:
		m.sum = w.Sum.Watch(targetC)
	}
	return &m
}

func (m *monitor) feed(t, sensor float64) Trip {
	if m.rise != nil && m.rise.Feed(t, sensor) {
		return RiseTrip
	}
	if m.hold != nil && m.hold.Feed(t, sensor) {
		return HoldTrip
	}
	if m.sum != nil && t >= m.next {
		m.next += checkS
		if m.sum.Feed(t, sensor) {
			return SumTrip
		}
	}
	return NoTrip
}
