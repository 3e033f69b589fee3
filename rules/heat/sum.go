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
}

const checkS = 1.0

// phases are where within a second the checks may fall, seen from the moment
// of the new target.
var phases = [...]float64{0, 0.25, 0.5, 0.75}

// SumMonitor is a sum watch at work on one target.
type SumMonitor struct {
	watch       SumWatch
	target      float64
	began       bool
	approaching bool
	goal        float64
	deadline    float64

	SumCS  float64 // the sum as it stands
	MostCS float64 // the largest sum that was held against the limit
}

// Watch begins to watch a heater that got a new target.
func (w SumWatch) Watch(targetC float64) *SumMonitor {
	return &SumMonitor{watch: w, target: targetC}
}

// Feed takes the reading of one check and reports whether the watch trips.
func (m *SumMonitor) Feed(t, sensor float64) bool {
	w := m.watch
	first := !m.began
	m.began = true
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
		m.approaching = true
		m.goal, m.deadline = sensor+w.RiseC, t+w.WindowS
	case !m.approaching:
		m.MostCS = max(m.MostCS, m.SumCS)
		return m.SumCS >= w.LimitCS
	case sensor >= m.goal:
		m.SumCS = 0
		m.goal, m.deadline = sensor+w.RiseC, t+w.WindowS
	case t >= m.deadline:
		m.approaching = false
	}
	return false
}

// SumOutcome is what a sum watch makes of a heat-up at full duty, at the
// worst phase of its checks.
type SumOutcome struct {
	Trips bool
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
		return w.outcome(p, l, targetC)
	})
}

func (w SumWatch) outcome(p Plant, l Load, targetC float64) SumOutcome {
	band := targetC - w.HysteresisC
	c := p.beyond(p.Ambient(), p.DutyLimit, l, band, checkS)
	at, gets := c.Cross(band)
	if c.Points[0].Sensor >= band {
		return SumOutcome{Gets: true}
	}
	if !gets {
		at = horizonS
	}
	out := SumOutcome{Gets: gets, TripS: math.Inf(1)}
	for _, phase := range phases {
		m := w.Watch(targetC)
		tripped := false
		for t := phase; t <= at && !(tripped && !gets); t += checkS {
			if m.Feed(t, c.Sensor(t)) && !tripped {
				tripped = true
				out.TripS = min(out.TripS, t)
			}
		}
		out.Trips = out.Trips || tripped
		out.MostCS = max(out.MostCS, m.MostCS)
	}
	if !gets {
		out.MostCS = math.Inf(1)
	}
	if !out.Trips {
		out.TripS = 0
	}
	return out
}

// LeastLimit is the smallest whole limit at which the watch does not trip;
// false where none is enough.
func (o SumOutcome) LeastLimit() (float64, bool) {
	return math.Floor(o.MostCS) + 1, !math.IsInf(o.MostCS, 1)
}
