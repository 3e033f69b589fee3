package heat

import "math"

// SumWatch is a watch that adds up errors. It looks once a second. Below
// target − HysteresisC the shortfall adds up, in °C·s. On a new target it is
// approaching: each gain of RiseC within WindowS resets the sum and begins the
// next window; a missed window ends approaching without a trip. From then on
// the sum, that window counted, trips at LimitCS. Inside the band of
// HysteresisC around the target the sum is reset.
type SumWatch struct {
	HysteresisC float64
	RiseC       float64
	WindowS     float64
	LimitCS     float64
	SmoothS     float64 // of the reading that it sees; 0 is none
}

const checkS = 1.0

// share is how much of a new reading goes into the smoothed one.
func (w SumWatch) share() float64 {
	if w.SmoothS <= clampedSampleS {
		return 1
	}
	return clampedSampleS / w.SmoothS
}

// smoothed is the temperature that a sum watch sees.
type smoothed struct {
	share float64
	began bool
	at    float64
}

func (s *smoothed) see(sensor float64) {
	if !s.began {
		s.began, s.at = true, sensor
		return
	}
	s.at += (sensor - s.at) * s.share
}

// phases are where within a second the checks may fall, seen from the first
// reading under the new target.
var phases = [...]float64{0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875}

// SumMonitor is a sum watch at work on one target.
type SumMonitor struct {
	watch       SumWatch
	target      float64
	began       bool
	approaching bool
	starting    bool // approaching, and nothing was gained yet
	goal        float64
	deadline    float64

	held bool // at the last look the sum was held against the limit

	SumCS  float64 // the sum as it stands
	MostCS float64 // the largest sum that was held against the limit
}

// Watch begins to watch a heater that got a new target.
func (w SumWatch) Watch(targetC float64) *SumMonitor {
	m := w.start(targetC)
	return &m
}

func (w SumWatch) start(targetC float64) SumMonitor { return SumMonitor{watch: w, target: targetC} }

// Feed takes the reading of one check and reports whether the watch trips.
func (m *SumMonitor) Feed(t, sensor float64) bool {
	w := m.watch
	first := !m.began
	m.began, m.held = true, false
	if sensor >= m.target-w.HysteresisC {
		m.approaching = false
		if sensor <= m.target+w.HysteresisC {
			m.SumCS = 0
		}
		return false
	}
	m.SumCS += m.target - w.HysteresisC - sensor
	switch {
	case first:
		m.approaching, m.starting = true, true
		m.goal, m.deadline = sensor+w.RiseC, t+w.WindowS
	case !m.approaching:
		m.held = true
		m.MostCS = max(m.MostCS, m.SumCS)
		return m.SumCS >= w.LimitCS
	case sensor >= m.goal:
		m.starting = false
		m.SumCS = 0
		m.goal, m.deadline = sensor+w.RiseC, t+w.WindowS
	case t >= m.deadline:
		m.approaching = false
	case m.starting:
		m.goal = min(m.goal, sensor+w.RiseC)
	}
	return false
}

// SumOutcome is what a sum watch makes of a heat-up at full duty, at the
// worst phase of its checks.
type SumOutcome struct {
	Trips bool
	Share float64 // of the phases, that trip
	TripS float64 // when, at the earliest phase
	Gets  bool    // S gets into the band around the target, were there no limit

	// MostCS is the largest sum that is held against the limit, were there
	// none; infinite where S never gets into the band.
	MostCS float64
}

type sumKey struct {
	plant  Plant
	load   Load
	watch  SumWatch
	target float64
}

var sums memo[sumKey, SumOutcome]

// PredictSum heats a plant from ambient to a target at full duty under a sum
// watch.
func PredictSum(p Plant, l Load, w SumWatch, targetC float64) SumOutcome {
	return sums.get(sumKey{p, l, w, targetC}, func() SumOutcome {
		return w.outcome(w.sight(p, l, targetC), targetC)
	})
}

// Sight is what a sum watch sees of a heat-up at full duty: the smoothed
// reading, every 0.3 s from the new target on, until it is in the band around
// the target or stays where it is.
type Sight struct {
	Readings []float64
	Gets     bool // into the band
}

// sight heats a plant from ambient at full duty.
func (w SumWatch) sight(p Plant, l Load, targetC float64) Sight {
	m, s := newMotion(p, l), p.Ambient()
	m.prepare(clampedSampleS)
	eye := smoothed{share: w.share()}
	sight := Sight{Readings: make([]float64, 0, 2048)}
	for i := range int(horizonS / clampedSampleS) {
		eye.see(s.Sensor)
		sight.Readings = append(sight.Readings, eye.at)
		if sight.Gets = eye.at >= targetC-w.HysteresisC; sight.Gets {
			break
		}
		if i%64 == 63 && m.atRest(s, p.DutyLimit) && math.Abs(s.Sensor-eye.at) < restK {
			break
		}
		if i > 0 { // the first output takes effect a reading late
			s = m.next(s, p.DutyLimit)
		}
	}
	return sight
}

// at is what is seen at a time.
func (s *Sight) at(t float64) float64 {
	return s.Readings[min(max(int(t/clampedSampleS), 0), len(s.Readings)-1)]
}

// endS is when the last check may fall that matters.
func (s *Sight) endS() float64 {
	if s.Gets {
		return float64(len(s.Readings)) * clampedSampleS
	}
	return horizonS
}

func (w SumWatch) outcome(sight Sight, targetC float64) SumOutcome {
	out := SumOutcome{Gets: sight.Gets, TripS: math.Inf(1)}
	end := sight.endS()
	count := 0
	for _, phase := range phases {
		m := w.start(targetC)
		tripped := false
		for t := phase; t <= end && !(tripped && !sight.Gets); t += checkS {
			if m.Feed(t, sight.at(t)) && !tripped {
				tripped = true
				out.TripS = min(out.TripS, t)
				count++
			}
		}
		out.MostCS = max(out.MostCS, m.MostCS)
	}
	out.Trips, out.Share = count > 0, float64(count)/float64(len(phases))
	if !sight.Gets {
		out.MostCS = math.Inf(1)
	}
	if !out.Trips {
		out.TripS = 0
	}
	return out
}

// finePhases tells how a proposal is tried: at so many phases of a second, seen
// from each of the three readings that a second may begin behind.
const finePhases = 24

// most is the largest sum that is held against a limit, at any phase.
func (w SumWatch) most(sight *Sight, targetC float64) float64 {
	if !sight.Gets {
		return math.Inf(1)
	}
	most, end := 0.0, sight.endS()
	try := func(phase float64) {
		m := w.start(targetC)
		for t := phase; t <= end; t += checkS {
			m.Feed(t, sight.at(t))
		}
		most = max(most, m.MostCS)
	}
	for _, phase := range phases { // those of the verdict
		try(phase)
	}
	for i := range finePhases {
		for _, reading := range [...]float64{0.1, 0.2, 0.3} {
			try((float64(i)+0.5)/finePhases - reading)
		}
	}
	return most
}

// SumSample is one look of a sum watch.
type SumSample struct {
	TimeS float64
	HeldC float64 // the sum that is held against the limit, °C·s; 0 while the heater gains enough
}

// SumTrace returns what a sum watch holds against its limit on a heat-up at
// full duty, look by look for so many seconds, at the phase at which it comes
// to most.
func SumTrace(p Plant, l Load, w SumWatch, targetC, seconds float64) []SumSample {
	sight := w.sight(p, l, targetC)
	var worst []SumSample
	most := -1.0
	for _, phase := range phases {
		m := w.start(targetC)
		var trace []SumSample
		for t := phase; t <= seconds; t += checkS {
			m.Feed(t, sight.at(t))
			held := 0.0
			if m.held {
				held = m.SumCS
			}
			trace = append(trace, SumSample{t, held})
		}
		if m.MostCS > most {
			worst, most = trace, m.MostCS
		}
	}
	return worst
}
