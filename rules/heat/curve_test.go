package heat

import (
	"math"
	"testing"
)

// The curve of S = ±t³ at 0, 2 and 4 s behind a lag of 3 s: the block is ahead
// by three times the slope. A cubic through points and slopes is t³ itself.
func TestCurveIsTheCubic(t *testing.T) {
	for _, sign := range []float64{1, -1} {
		c := Curve{SpacingS: 2, lagS: 3,
			Points: []State{{0, 0}, {sign * 44, sign * 8}, {sign * 208, sign * 64}}}
		for _, x := range []struct{ at, want float64 }{
			{-3, 0}, {0, 0}, {0.5, 0.125}, {1, 1}, {2, 8}, {3, 27}, {3.5, 42.875}, {4, 64}, {9, 64},
		} {
			near(t, "sensor", c.Sensor(x.at), sign*x.want, 1e-12)
		}
		for _, x := range []struct {
			level, at float64
			meets     bool
		}{{1e-3, 0.1, true}, {8, 2, true}, {27, 3, true}, {63.9, 3.99791, true}, {64.1, 0, false}} {
			at, meets := c.Cross(sign * x.level)
			if near(t, "crossing", at, x.at, 1e-5); meets != x.meets {
				t.Errorf("%v is met: %v", sign*x.level, meets)
			}
		}
		near(t, "end", c.EndS(), 4, 0)
	}
	// The last point may just meet the level.
	if at, meets := (Curve{SpacingS: 1, lagS: 1, Points: []State{{20, 20}, {21, 21}}}).Cross(21); !meets {
		t.Error("21 °C is not met")
	} else {
		near(t, "crossing", at, 1, 1e-6)
	}
}

// A quarter of the lag of 3 s lies between points.
func TestWhereCurvesEnd(t *testing.T) {
	p := cartridgePlant()
	near(t, "nine seconds", p.Run(p.Ambient(), 1, Load{}, 9).EndS(), 9, 0)
	near(t, "a little more", p.Run(p.Ambient(), 1, Load{}, 9.01).EndS(), 9.75, 0)

	c := p.Run(p.Ambient(), 1, Load{}, 60)
	beyond := p.beyond(p.Ambient(), 1, Load{}, c.Points[20].Sensor, 9)
	near(t, "nine seconds past a point", beyond.EndS(), 20*0.75+9, 0)
	weak := p
	weak.RatedW = 10
	near(t, "sinking from the level itself", weak.beyond(State{270, 270}, 1, Load{}, 270, 0).EndS(), 0.75, 0)

	slow := p
	slow.CapacityJPerK = 1e6
	near(t, "an hour", slow.Run(p.Ambient(), 1, Load{}, 1e6).EndS(), 3600, 0)
}

// The block of a cartridge of 30 W goes to 525 °C with a time constant of 200 s:
// by 2·10⁻⁵ K/s where 0.004 K are missing.
func TestAtRest(t *testing.T) {
	p := cartridgePlant()
	for _, c := range []struct {
		block, ahead float64
		rests        bool
	}{
		{525, 0, true}, {524.9961, 0, true}, {524.9959, 0, false}, {525.0039, 0, true}, {525.0041, 0, false},
		{525, 0.0009, true}, {525, 0.0011, false}, {525, -0.0009, true}, {525, -0.0011, false},
	} {
		if got := newMotion(p, Load{}).atRest(State{c.block, c.block - c.ahead}, 1); got != c.rests {
			t.Errorf("%v °C, %v K ahead: at rest is %v", c.block, c.ahead, got)
		}
	}
	// Just on either limit it still moves.
	cold := Plant{cartridgePlant().Heater,
		Block{CapacityJPerK: 1, LossWPerK: 1, LagS: 1, AmbientC: restKPerS}}
	if newMotion(cold, Load{}).atRest(State{}, 0) {
		t.Error("at rest, with all that is allowed between it and the room")
	}
	cold.AmbientC = restK
	if newMotion(cold, Load{}).atRest(State{Block: restK}, 0) {
		t.Error("at rest, with all that is allowed between block and sensor")
	}
}

// The sensor behind a block that warms or cools at constant power, in closed
// form: T∞ + (T0 − T∞) · (τ e^(−t/τ) − lag e^(−t/lag))/(τ − lag).
func closedForm(p Plant, l Load, from, t float64) float64 {
	h := p.Conductance(l)
	tau, lag, end := p.CapacityJPerK/h, p.LagS, p.AmbientC+p.RatedW*p.DutyLimit/h
	return end + (from-end)*(tau*math.Exp(-t/tau)-lag*math.Exp(-t/lag))/(tau-lag)
}

// closedTime is when the closed form meets a level.
func closedTime(p Plant, l Load, from, level float64) float64 {
	low, high := 0.0, 1e5
	for range 100 {
		if mid := (low + high) / 2; (closedForm(p, l, from, mid) < level) == (from < level) {
			low = mid
		} else {
			high = mid
		}
	}
	return high
}
