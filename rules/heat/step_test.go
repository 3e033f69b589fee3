package heat

import "testing"

var (
	tunedRange   = Loop{Kp: 21.7, Ki: 1.4, Kd: 84, RangeC: 10, FilterOld: 0.95}
	tunedClamped = Loop{Form: LoopClamped, Kp: 21.7, Ki: 1.4, Kd: 84, SmoothS: 1}
	windowWatch  = Watch{Form: WindowWatch, Rise: windowRise, Hold: HoldWatch{4, 40}}
	sumWatch     = Watch{Form: ErrorSumWatch, Sum: sumDefault}
)

func TestStep(t *testing.T) {
	p := ptcPlant()
	for _, c := range []struct {
		name             string
		loop             Loop
		watch            Watch
		trip             Trip
		reached, settles bool
		least, most      float64 // overshoot
	}{
		{name: "tuned, ranged", loop: tunedRange, watch: windowWatch, settles: true, reached: true, most: 10},
		{name: "tuned, clamped", loop: tunedClamped, watch: sumWatch, settles: true, reached: true, most: 10},
		// Proportional control alone stays so far below its target that the
		// rise watch, armed for the last time just below 234 °C, trips.
		{name: "no integral", loop: Loop{Kp: 21.7, RangeC: 10}, watch: windowWatch, trip: RiseTrip},
		{name: "no integral, sum", loop: Loop{Form: LoopClamped, Kp: 21.7, SmoothS: 1}, watch: sumWatch, trip: SumTrip},
		// So weak that the loop lets the heater starve inside a wide range.
		{name: "starving, window", loop: Loop{Kp: 0.3, RangeC: 300}, watch: windowWatch, trip: RiseTrip},
		{name: "starving, sum", loop: Loop{Form: LoopClamped, Kp: 0.3, SmoothS: 1}, watch: sumWatch, trip: SumTrip},
		{name: "on/off", loop: Loop{OnOff: true}, watch: windowWatch, settles: true, reached: true, least: 0.5, most: 2},
		// Too much integral: it swings about the target without end, or the
		// overshoot goes on past the band.
		{name: "too much integral", loop: Loop{Kp: 5, Ki: 5, RangeC: 10}, watch: windowWatch, reached: true, least: 5, most: 15},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := Step(p, Load{}, c.loop, c.watch, 240)
			if r.Trip != c.trip || r.Settles != c.settles || r.Reached != c.reached ||
				r.OvershootC < c.least || r.OvershootC > c.most {
				t.Errorf("got %+v", r)
			}
		})
	}
}

// The offset of proportional control, by hand: Kp·e/255·P = h·(T − ambient).
func TestProportionalOffset(t *testing.T) {
	p := cartridgePlant()
	_, trace := StepTrace(p, Load{}, Loop{Kp: 20, RangeC: 10}, Watch{}, 200)
	end := trace[len(trace)-1].Sensor
	near(t, "end", 20*(200-end)/255*30, 0.06*(end-25), 0.01)
}

func TestDutyStaysInItsLimit(t *testing.T) {
	p := ptcPlant()
	p.DutyLimit = 0.7
	for _, loop := range []Loop{tunedRange, tunedClamped, {OnOff: true}} {
		_, trace := StepTrace(p, Load{}, loop, Watch{}, 200)
		full := 0
		for _, s := range trace {
			if s.Duty < 0 || s.Duty > 0.7 {
				t.Fatalf("duty %v at %v s", s.Duty, s.TimeS)
			}
			if s.Duty == 0.7 {
				full++
			}
		}
		if full < 100 {
			t.Errorf("%+v: at its limit for only %d samples", loop, full)
		}
	}
}

func TestOnOffBand(t *testing.T) {
	c := Loop{OnOff: true, BandC: 2}.Start(1)
	for _, x := range []struct{ s, duty float64 }{{197, 1}, {199, 1}, {201.9, 1}, {202, 0}, {199, 0}, {198.1, 0}, {198, 1}} {
		if got := c.Duty(200, x.s); got != x.duty {
			t.Errorf("at %v °C: duty %v, want %v", x.s, got, x.duty)
		}
	}
}

func TestIntegralIsFrozenAndClamped(t *testing.T) {
	c := Loop{Form: LoopClamped, Kp: 10, Ki: 1, SmoothS: 1}.Start(1)
	for range 100 {
		c.Duty(200, 20) // saturated
	}
	if c.integral != 0 {
		t.Errorf("the integral grew to %v while the output saturated", c.integral)
	}
	c = Loop{Form: LoopClamped, Kp: 0, Ki: 1, SmoothS: 1}.Start(0.5)
	for range 1000 {
		c.Duty(200, 190)
	}
	near(t, "integral share", c.integral/fullCounts, 0.5, 0.02)

	c = Loop{Kp: 0, Ki: 10, RangeC: 10}.Start(0.5)
	for range 1000 {
		c.Duty(200, 195)
	}
	near(t, "integral share in the range", 10*c.integral/fullCounts, 0.5, 1e-9)
	for range 1000 {
		c.Duty(200, 205)
	}
	if c.integral != 0 {
		t.Errorf("the integral fell to %v above the target", c.integral)
	}

	c = Loop{Kp: 10, Ki: 1, RangeC: 10}.Start(1)
	c.Duty(200, 195)
	if c.integral == 0 {
		t.Error("the integral does not grow inside the range")
	}
	if c.Duty(200, 211); c.integral != 0 {
		t.Error("the integral is kept above the range")
	}
}

// Far below the target another limit may hold than near it: the block then
// comes in hotter, and overshoots more.
func TestFarLimit(t *testing.T) {
	p := Plant{Heater: Heater{RatedW: 60, RatedV: 24, SupplyV: 24, DutyLimit: 0.35},
		Block: Block{CapacityJPerK: 10, LossWPerK: 0.068, LossFanWPerK: 0.097, LagS: 5, AmbientC: 22}}
	loop := Loop{Kp: 20, Ki: 1, Kd: 60, RangeC: 10, FilterOld: 0.95}
	near := Step(p, Load{}, loop, Watch{}, 220)
	loop.FarLimit = 1
	far := Step(p, Load{}, loop, Watch{}, 220)
	if far.OvershootC <= near.OvershootC+1 || far.SettleS >= near.SettleS {
		t.Errorf("full power below the range: overshoot %.1f K, settled at %.0f s; limited there too: %.1f K, %.0f s",
			far.OvershootC, far.SettleS, near.OvershootC, near.SettleS)
	}
}
