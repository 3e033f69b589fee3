package heat

// WatchForm is the kind of runaway protection.
type WatchForm uint8

const (
	NoWatch WatchForm = iota
	WindowWatch
	ErrorSumWatch
)

// Watch is the whole protection of one heater.
type Watch struct {
	Form    WatchForm
	Heating HeatingCheck // WindowWatch; a window of 0 is a heating check that is off
	Drop    DropCheck    // WindowWatch; a period of 0 is a drop check that is off
	Sum     SumWatch     // ErrorSumWatch
}

// Trip says which watch shut a heater down.
type Trip uint8

const (
	NoTrip Trip = iota
	HeatingTrip
	DropTrip
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
	BlockPeakC float64 // the block's own, ahead of its sensor

	Settles bool    // S comes to stay within SettleBandC of the target
	SettleS float64 // from when on
	// Where it does not settle but swings without end: half of what lies
	// between the turns, and the time from peak to peak.
	SwingC, PeriodS float64
	EndC            float64 // S at the end of the run

	Trip      Trip    // the first watch that trips
	TripS     float64 // when
	TripShare float64 // of the moments at which a sum watch may look
}

// farK is how far below the functional range a fast loop is not yet followed
// reading by reading: more than any hotend warms within 0.16 s.
const farK = 3

// SettleBandC is how near the target S has to stay to have settled.
const SettleBandC = 2.0

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
// any case. A run is 900 s long; one that has not settled then and still gets
// nearer goes on up to an hour. S has settled where it stays in the band for
// the last third of the run. A run ends early where nothing more will happen.
func Step(p Plant, l Load, loop Loop, w Watch, targetC float64) Response {
	return steps.get(stepKey{p, l, loop, w, targetC}, func() Response {
		watch := w.begin(targetC, phases[:])
		return step(p, l, loop, &watch, targetC, nil)
	})
}

// StepTrace is Step with every sample of the loop.
func StepTrace(p Plant, l Load, loop Loop, w Watch, targetC float64) (Response, []Sample) {
	var trace []Sample
	watch := w.begin(targetC, phases[:])
	r := step(p, l, loop, &watch, targetC, func(s Sample) { trace = append(trace, s) })
	return r, trace
}

func step(p Plant, l Load, loop Loop, watch *monitor, targetC float64, each func(Sample)) Response {
	s := p.Ambient()
	control, judge := loop.start(p.DutyLimit), newJudge(targetC)
	r := Response{PeakC: s.Sensor, BlockPeakC: s.Block}
	dt := loop.StepS()
	m := newMotion(p, l)
	m.prepare(dt)
	skip := 1
	if each == nil && loop.Form == LoopRange && !loop.OnOff {
		skip = max(1, int(rangeSampleS/dt))
	}
	for i := 0; ; {
		t := float64(i) * dt
		duty := control.Duty(targetC, s.Sensor)
		if each != nil {
			each(Sample{t, s, duty})
		}
		r.PeakC = max(r.PeakC, s.Sensor)
		r.BlockPeakC = max(r.BlockPeakC, s.Block)
		watch.feed(t, s.Sensor)
		if judge.over(t, s, watch) {
			break
		}
		if skip > 1 && targetC-s.Sensor > loop.RangeC+farK {
			s = m.run(s, duty, float64(skip)*dt) // nothing changes so far from the range
			i += skip
			continue
		}
		s = m.next(s, duty)
		i++
	}
	r.EndC, r.Trip, r.TripS, r.TripShare = s.Sensor, watch.trip, watch.tripS, watch.share()
	r.Reached = r.PeakC >= targetC
	r.OvershootC = max(0, r.PeakC-targetC)
	judge.pronounce(&r)
	return r
}
