package heat

import "testing"

// Skogestad (2003), J. Process Control 13, 291–309: Example E1,
// 1/((s + 1)(0.2s + 1)), becomes k = 1, θ = 0.1, τ1 = 1.1, and the PI settings
// are Kc = 5.5, τI = 0.8. Example E2,
// (−0.3s + 1)(0.08s + 1)/((2s + 1)(s + 1)(0.4s + 1)(0.2s + 1)(0.05s + 1)³),
// becomes θ = 1.47, τ1 = 2.5 (PI: 0.85, 2.5). There the inverse response counts
// as dead time, and 0.08 with 0.2 as a lag of 0.12. Figures from memory.
func TestSkogestadExamples(t *testing.T) {
	for _, e := range []struct {
		name                 string
		delay                float64
		lags                 []float64
		theta, tau, kc, tauI float64
	}{
		{"E1", 0, []float64{1, 0.2}, 0.1, 1.1, 5.5, 0.8},
		{"E2", 0.3, []float64{0.05, 2, 0.4, 0.05, 1, 0.12, 0.05}, 1.47, 2.5, 0.85, 2.5},
	} {
		p := FirstOrder(1, e.delay, e.lags...)
		near(t, e.name+" θ", p.DelayS, e.theta, 1e-9)
		near(t, e.name+" τ1", p.TauS, e.tau, 1e-9)
		pi := SIMC(p, p.DelayS)
		near(t, e.name+" Kc", pi.Kc, e.kc, 0.005)
		near(t, e.name+" τI", pi.TauIS, e.tauI, 0.005)
	}
}

// The plant's form by hand, at 225 °C: a cartridge of 30 W has a gain of
// P/h/255 and τ = C/h with half of the lag, the other half of which is dead
// time beside half a sample.
func TestProcessOfThePlant(t *testing.T) {
	got, ok := cartridgePlant().Process(Loop{}, 225)
	if !ok {
		t.Fatal("not to be held")
	}
	near(t, "gain", got.Gain, 30/0.06/255, 1e-9)
	near(t, "τ", got.TauS, 12/0.06+1.5, 1e-9)
	near(t, "θ", got.DelayS, 1.5+0.08, 1e-9)
	g, _ := StartingGains(cartridgePlant(), Loop{}, 225)
	kp := 201.5 / (got.Gain * 2 * 1.58)
	near(t, "Kp", g.Kp, kp, 1e-9)
	near(t, "Ki", g.Ki, kp/(8*1.58), 1e-9)

	// A PTC ring of 28 W there, 0.08 W less with each kelvin, held at a duty of
	// 0.068·203/28: what the power falls by steadies it as a loss does.
	got, _ = ptcPlant().Process(Loop{}, 225)
	back := 0.068 + 0.068*203/28*0.08
	near(t, "gain of the ring", got.Gain, 28/back/255, 1e-9)
	near(t, "τ of the ring", got.TauS, 16.7/back+2.25, 1e-9)
}

// A temperature can be held where the duty for it lies between none and the
// limit, not on either; 30 W hold 525 °C at full duty. A power that rises as
// fast as the loss holds nothing.
func TestWhatCanBeHeld(t *testing.T) {
	p := cartridgePlant()
	for at, want := range map[float64]bool{24: false, 25: false, 25.1: true, 490: true, 524.9: true,
		525: false, 526: false} {
		if _, ok := p.Process(Loop{}, at); ok != want {
			t.Errorf("%v °C: held is %v", at, ok)
		}
	}
	p = Plant{Heater{RatedV: 1, SupplyV: 1, DutyLimit: 1, Hot: NewTable(Point{0, 0}, Point{256, 256})},
		Block{CapacityJPerK: 12, LossWPerK: 0.5, LagS: 3}}
	if got, ok := p.Process(Loop{}, 128); ok {
		t.Errorf("no more than balanced, but the process is %+v", got)
	}
	p.AmbientC = -1
	if got, ok := p.Process(Loop{}, 128); ok {
		t.Errorf("it runs away, but the process is %+v", got)
	}
}

// Gains that are a starting point must hold the plant that they come from.
func TestStartingGainsHoldTheirPlant(t *testing.T) {
	for _, p := range []Plant{ptcPlant(), cartridgePlant()} {
		for _, loop := range []Loop{{RangeC: 10, FilterOld: 0.95}, {Form: LoopClamped, SmoothS: 1}} {
			g, ok := StartingGains(p, loop, 220)
			if !ok {
				t.Fatal("no gains")
			}
			loop.Kp, loop.Ki, loop.Kd = g.Kp, g.Ki, g.Kd
			r := Step(p, Load{}, loop, windowWatch, 220)
			if !r.Settles || r.SettleS > 200 || r.Trip != NoTrip || r.OvershootC > 5 {
				t.Errorf("%+v: %+v", g, r)
			}
		}
	}
	if g, ok := StartingGains(ptcPlant(), Loop{}, 350); ok {
		t.Errorf("350 °C cannot be held, but the gains are %+v", g)
	}
}
