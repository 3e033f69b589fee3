package heat

// monitor is a Watch at work.
type monitor struct {
	form    WatchForm
	heating HeatingMonitor
	drop    DropMonitor
	on      struct{ heating, drop bool }
	sums    []phased // one for each phase of the checks
	eye     smoothed
	trip    Trip // the first
	tripS   float64
	target  float64
}

// phased is a sum watch whose checks fall at its own moments.
type phased struct {
	SumMonitor
	next    float64
	tripped bool
}

func (w Watch) begin(targetC float64, phases []float64) monitor {
	m := monitor{form: w.Form, target: targetC}
	switch w.Form {
	case WindowWatch:
		m.on.heating, m.on.drop = w.Heating.WindowS > 0, w.Drop.PeriodS > 0
		m.heating, m.drop = w.Heating.start(targetC), w.Drop.start(targetC)
	case ErrorSumWatch:
		m.eye.share = w.Sum.share()
		for _, phase := range phases {
			m.sums = append(m.sums, phased{SumMonitor: w.Sum.start(targetC), next: phase})
		}
	}
	return m
}

// feed takes one reading.
func (m *monitor) feed(t, sensor float64) {
	switch m.form {
	case WindowWatch:
		if m.on.heating && m.heating.Feed(t, sensor) {
			m.trips(HeatingTrip, t)
		}
		if m.on.drop && m.drop.Feed(t, sensor) {
			m.trips(DropTrip, t)
		}
	case ErrorSumWatch:
		// A check sees the last reading before it.
		for i := range m.sums {
			s := &m.sums[i]
			for ; s.next < t; s.next += checkS {
				if s.Feed(s.next, m.eye.at) {
					s.tripped = true
					m.trips(SumTrip, s.next)
				}
			}
		}
		m.eye.see(sensor)
	}
}

func (m *monitor) trips(trip Trip, t float64) {
	if m.trip == NoTrip || t < m.tripS {
		m.trip, m.tripS = trip, t
	}
}

// share is the part of the moments at which the watch may look, that trip.
func (m *monitor) share() float64 {
	switch {
	case m.trip == NoTrip:
		return 0
	case m.form == WindowWatch:
		return 1
	}
	count := 0.0
	for i := range m.sums {
		if m.sums[i].tripped {
			count++
		}
	}
	return count / float64(len(m.sums))
}

// quiet reports whether the watch has nothing to wait for while S stays where
// it is.
func (m *monitor) quiet(sensor float64) bool {
	switch m.form {
	case WindowWatch:
		return !(m.on.heating && m.heating.armed) &&
			!(m.on.drop && m.drop.reached && sensor < m.target-m.drop.watch.HysteresisC)
	case ErrorSumWatch:
		return len(m.sums) == 0 || m.eye.at >= m.target-m.sums[0].watch.HysteresisC
	}
	return true
}
