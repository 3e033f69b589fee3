package heat

import (
	"math"
	"testing"
)

var (
	tunedRange   = Loop{Kp: 21.7, Ki: 1.4, Kd: 84, RangeC: 10, FilterOld: 0.95}
	tunedClamped = Loop{Form: LoopClamped, Kp: 21.7, Ki: 1.4, Kd: 84, SmoothS: 1}
	windowWatch  = Watch{Form: WindowWatch, Heating: windowRise, Drop: DropCheck{HysteresisC: 4, PeriodS: 40}}
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
		// heating check, armed for the last time just below 234 °C, trips.
		{name: "no integral", loop: Loop{Kp: 21.7, RangeC: 10}, watch: windowWatch, trip: HeatingTrip},
		{name: "no integral, sum", loop: Loop{Form: LoopClamped, Kp: 21.7, SmoothS: 1}, watch: sumWatch,
			trip: SumTrip},
		// So weak that the loop lets the heater starve inside a wide range.
		{name: "starving, window", loop: Loop{Kp: 0.3, RangeC: 300}, watch: windowWatch, trip: HeatingTrip},
		{name: "starving, sum", loop: Loop{Form: LoopClamped, Kp: 0.3, SmoothS: 1}, watch: sumWatch,
			trip: SumTrip},
		{name: "on/off", loop: Loop{OnOff: true}, watch: windowWatch, settles: true, reached: true,
			least: 0.5, most: 2},
		// Too much integral: it swings about the target without end, or the
		// overshoot goes on past the band.
		{name: "too much integral", loop: Loop{Kp: 5, Ki: 5, RangeC: 10}, watch: windowWatch, reached: true,
			least: 5, most: 15},
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

// The offset of proportional control, by hand: Kp·e/255·P = h·(T − ambient),
// less what is cut off a whole number of half counts.
func TestProportionalOffset(t *testing.T) {
	p := cartridgePlant()
	_, trace := StepTrace(p, Load{}, Loop{Kp: 20, RangeC: 10}, Watch{}, 200)
	end := trace[len(trace)-1].Sensor
	near(t, "duty", 20*(200-end)/255-0.06*(end-25)/30, 0.5/halfCounts, 0.6/halfCounts)
}

func TestDutyStaysInItsLimit(t *testing.T) {
	p := ptcPlant()
	p.DutyLimit = 0.7
	for _, loop := range []Loop{tunedRange, tunedClamped, {OnOff: true}} {
		_, trace := StepTrace(p, Load{}, loop, Watch{}, 200)
		full := 0
		for _, s := range trace {
			if s.Duty < 0 || s.Duty > 0.7+1/halfCounts {
				t.Fatalf("duty %v at %v s", s.Duty, s.TimeS)
			}
			if s.Duty >= 0.7 {
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
	for _, x := range []struct{ s, duty float64 }{{197, 1}, {199, 1}, {201.9, 1}, {202, 0}, {199, 0},
		{198.1, 0}, {198, 1}} {
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
	c.Duty(200, 211)
	if c.Duty(200, 199); c.integral != 1*rangeSampleS {
		t.Errorf("the integral that began above the range is kept: %v", c.integral)
	}
}

// A fast loop is followed in longer strides far below its range, which must not
// show; the target may be the room itself.
func TestStridesOfAFastLoop(t *testing.T) {
	for _, sampleS := range []float64{0.01, 0.08} {
		for _, p := range []Plant{ptcPlant(), cartridgePlant()} {
			loop := tunedRange
			loop.SampleS = sampleS
			got := Step(p, Load{}, loop, windowWatch, 240)
			want, _ := StepTrace(p, Load{}, loop, windowWatch, 240)
			near(t, "peak", got.PeakC, want.PeakC, 0.02)
			near(t, "settled", got.SettleS, want.SettleS, 0.1)
			near(t, "block's peak", got.BlockPeakC, want.BlockPeakC, 0.02)
		}
	}
	if r := Step(ptcPlant(), Load{}, tunedRange, Watch{}, 22); !r.Reached || r.OvershootC != 0 ||
		!r.Settles || r.SettleS != 0 {
		t.Errorf("to the temperature of the room: %+v", r)
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
		t.Errorf("full power below the range: overshoot %.1f K, settled at %.0f s; limited there too: "+
			"%.1f K, %.0f s",
			far.OvershootC, far.SettleS, near.OvershootC, near.SettleS)
	}
}

// Where the derivative's reading moves only inside the range, the first entry
// switches the heater off for a while; the second does not.
func TestKeptReading(t *testing.T) {
	loop := Loop{Kp: 22.89, Ki: 1.87, Kd: 70.18, RangeC: 10, FilterOld: 0.95, KeepsLast: true}
	c := loop.Start(1)
	c.Duty(240, 200)
	c.Duty(240, 231)
	// facts: about −5,263 counts at 240
	near(t, "derivative at the first entry", c.derivative, -0.05*70.18/0.16*231, 1e-9)
	if d := c.Duty(240, 231); d != 0 {
		t.Errorf("duty %v", d)
	}
	c.Duty(240, 225)
	c.Duty(240, 231)
	near(t, "derivative at the second entry", c.derivative, 0, 1e-9)
	loop.KeepsLast = false
	c = loop.Start(1)
	c.Duty(240, 229.9)
	c.Duty(240, 230)
	near(t, "derivative of one that moves everywhere", c.derivative, -0.05*70.18/0.16*0.1, 1e-9)
}

// An output of LoopClamped acts a sample late; a change below a twentieth of
// the limit is dropped until the last one has stood for 2.4 s.
func TestLateAndDroppedOutputs(t *testing.T) {
	c := Loop{Form: LoopClamped, Kp: 2.55, SmoothS: 1}.Start(1) // 1 % for each kelvin
	for i, x := range []struct{ short, duty float64 }{
		{4, 0}, {4, 0}, // below 5 % nothing starts
		{50, 0}, {53, 0.5}, // late
		{54, 0.5}, {54, 0.5}, {54, 0.5}, {54, 0.5}, {54, 0.5}, {54, 0.5}, // dropped
		{54, 0.5}, {54, 0.54}, // the eighth sample after it
		{10, 0.54}, {10, 0.1},
	} {
		c.derivative, c.last = 0, 200-x.short
		if got := c.Duty(200, 200-x.short); math.Abs(got-x.duty) > 1e-9 {
			t.Errorf("sample %d: duty %v, want %v", i, got, x.duty)
		}
	}
}

// DESIGN's block with a 40 W cartridge to 250 °C: the newer firmware overshoots
// by 4.9 K at the first heat-up, the older by less than 1 K.
func TestFirstHeatUp(t *testing.T) {
	p := ptcPlant()
	p.Hot, p.RatedW = Table{}, 40
	loop := Loop{Kp: 22.89, Ki: 1.87, Kd: 70.18, RangeC: 10, FilterOld: 0.95, KeepsLast: true}
	r := Step(p, Load{}, loop, Watch{}, 250)
	near(t, "newer", r.OvershootC, 4.9, 0.3)
	if r.BlockPeakC-250 < r.OvershootC {
		t.Errorf("the block's peak %v is below its sensor's", r.BlockPeakC)
	}
	loop.KeepsLast = false
	if r = Step(p, Load{}, loop, Watch{}, 250); r.OvershootC >= 1 {
		t.Errorf("older: %v K", r.OvershootC)
	}
	// Gains that starve the heater at the first entry.
	w := Watch{Form: WindowWatch, Heating: HeatingCheck{2, 20, 3}}
	loop.Kp, loop.Ki, loop.Kd = 15, 0.6, 120
	for _, c := range []struct {
		keeps bool
		every float64
		trip  Trip
	}{{true, 0.16, HeatingTrip}, {true, 0.01, NoTrip}, {false, 0.16, NoTrip}, {false, 0.08, NoTrip},
		{false, 0.01, NoTrip}} {
		loop.KeepsLast, loop.SampleS = c.keeps, c.every
		if r = Step(p, Load{}, loop, w, 220); r.Trip != c.trip {
			t.Errorf("%+v: %+v", c, r)
		}
		if c.trip == HeatingTrip {
			near(t, "trip", r.TripS, 120, 1)
		}
	}
}

// Gains that swing for ever are told no time, but how far and how fast; the
// period is that of the crossings of the target in the trace.
func TestSwingWithoutEnd(t *testing.T) {
	p := ptcPlant()
	p.LagS = 8
	loop := Loop{Kp: 60, Ki: 9, RangeC: 10, FilterOld: 0.95}
	r, trace := StepTrace(p, Load{}, loop, Watch{}, 240)
	if r.Settles || r.SwingC < 1 || r.PeriodS < 5 {
		t.Fatalf("got %+v", r)
	}
	var ups []float64
	high, low := 0.0, 1e9
	for i := 1; i < len(trace); i++ {
		if trace[i].TimeS < 600 {
			continue
		}
		high, low = max(high, trace[i].Sensor), min(low, trace[i].Sensor)
		if trace[i-1].Sensor < 240 && trace[i].Sensor >= 240 {
			ups = append(ups, trace[i].TimeS)
		}
	}
	near(t, "period", r.PeriodS, (ups[len(ups)-1]-ups[0])/float64(len(ups)-1), 0.5)
	near(t, "swing", r.SwingC, (high-low)/2, 0.2)
}

// A loop that creeps towards its target is followed as long as it gets nearer.
func TestSlowLoopIsFollowed(t *testing.T) {
	p := cartridgePlant()
	p.RatedW = 13 // settles at 241.7 °C
	r, trace := StepTrace(p, Load{}, Loop{Form: LoopClamped, Kp: 100, Ki: 0.2, SmoothS: 1}, Watch{}, 240)
	if end := trace[len(trace)-1].TimeS; end <= runS || !r.Settles || r.SettleS <= runS {
		t.Errorf("ends at %v s: %+v", end, r)
	}
}
