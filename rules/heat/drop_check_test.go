package heat

import "testing"

// A cartridge that is too weak for its target sinks as the closed form does: with
// 12 W the block goes to 225 °C.
func TestDropTripInClosedForm(t *testing.T) {
	p := cartridgePlant()
	p.RatedW, p.LossFanWPerK = 12, p.LossWPerK // so that the fan takes nothing
	for _, hysteresis := range []float64{0, 4, 10, 40, 44.9} {
		w := DropCheck{HysteresisC: hysteresis, PeriodS: 40}
		want := closedTime(p, FanFull, 270, 270-hysteresis) + 40
		at, trips := w.TripsAfter(p, FanFull, 270)
		if near(t, "trip", at, want, 1e-3); !trips {
			t.Errorf("%+v never trips", w)
		}
		w.SlowsFan = true // of which the heater sees nothing
		slow, trips := w.TripsAfter(p, FanFull, 270)
		if near(t, "trip, fan slowed", slow, want+rangeSampleS/2, 0.51*rangeSampleS); !trips {
			t.Errorf("%+v never trips", w)
		}
	}
	if at, trips := (DropCheck{HysteresisC: 45.1, PeriodS: 40}).TripsAfter(p, FanFull, 270); trips {
		t.Errorf("225 °C are within the hysteresis, but it trips after %v s", at)
	}
}

// The sum watch under the same plant: the shortfall of the closed form, once a
// second, seen a second late by the smoothing and up to 0.6 s by reading and power.
func TestSumTripInClosedForm(t *testing.T) {
	p := cartridgePlant()
	p.RatedW = 12
	for _, limit := range []float64{1, 120, 1000, 5000, 10000} {
		w := sumDefault
		w.LimitCS = limit
		want, sum := 0.0, 0.0
		for ; sum < limit; want++ {
			sum += max(0, 265-closedForm(p, Load{}, 270, want))
		}
		at, trips := w.TripsAfter(p, Load{}, 270)
		if near(t, "trip", at, want, 2); !trips {
			t.Errorf("the limit of %v never trips", limit)
		}
	}
	w := sumDefault
	w.HysteresisC = 46
	if at, trips := w.TripsAfter(p, Load{}, 270); trips {
		t.Errorf("225 °C are within the hysteresis, but it trips after %v s", at)
	}
}

// The part fan slows in the steps that the style's firmware publishes: against
// the hotend's own equations, in steps of 0.01 s.
func TestSlowedFanAgainstItsEquations(t *testing.T) {
	p := cartridgePlant()
	p.RatedW = 12
	flow := Load{Fan: 1, FlowMM3S: 4}
	w := DropCheck{HysteresisC: 20, PeriodS: 40, SlowsFan: true}
	melt := MeltJPerMM3K * flow.FlowMM3S
	h := truth{capacity: p.CapacityJPerK, loss: p.LossWPerK + melt, lossFan: p.LossFanWPerK + melt,
		lag: p.LagS, room: p.AmbientC, power: func(float64) float64 { return 12 }}
	block, sensor, at := 270.0, 270.0, 0.0
	for ; sensor >= 250; at += 0.01 {
		short, fan := 270-sensor, 0.0
		switch {
		case short <= 5:
			fan = 128. / 128
		case short <= 6.67:
			fan = 96. / 128
		case short <= 10:
			fan = 64. / 128
		case short <= 16:
			fan = 32. / 128
		}
		block, sensor = h.step(block, sensor, 1, fan, 0.01)
	}
	got, trips := w.TripsAfter(p, flow, 270)
	if near(t, "trip", got, at+40, 0.3); !trips {
		t.Error("it never trips")
	}
}

// On each limit of the shortfall the fan keeps the faster step.
func TestFanShare(t *testing.T) {
	w := DropCheck{HysteresisC: 4}
	for _, c := range []struct{ short, share float64 }{
		{-1, 1}, {0, 1}, {1, 1}, {1.001, 0.75}, {0.3335 * 4, 0.75}, {1.335, 0.5}, {2, 0.5}, {2.001, 0.25},
		{0.8 * 4, 0.25}, {3.201, 0}, {4, 0},
	} {
		near(t, "share of the fan", w.fanShare(c.short), c.share, 0)
	}
}
