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
