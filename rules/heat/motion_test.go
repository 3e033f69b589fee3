package heat

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// First-order step response in closed form: with constant power the block
// follows ambient + P/h · (1 − e^(−t/τ)), and the sensor behind it
// ambient + P/h · (1 − (τ e^(−t/τ) − lag e^(−t/lag))/(τ − lag)).
func TestStepResponseInClosedForm(t *testing.T) {
	p := cartridgePlant()
	h := p.LossWPerK
	tau, lag := p.CapacityJPerK/h, p.LagS
	c := p.Run(p.Ambient(), 1, Load{}, 2000)
	s := p.Ambient()
	const every = 7.0
	for at := 0.0; at < 1900; at += every {
		block := 25 + 30/h*(1-math.Exp(-at/tau))
		sensor := 25 + 30/h*(1-(tau*math.Exp(-at/tau)-lag*math.Exp(-at/lag))/(tau-lag))
		near(t, "block", s.Block, block, 1e-3)
		near(t, "sensor", s.Sensor, sensor, 1e-3)
		near(t, "sensor between points", c.Sensor(at), sensor, 1e-3)
		s = p.Advance(s, 1, Load{}, every)
	}
}

// A step is a quarter of the shortest time constant, at most 1 s: of the lag, or of
// the block where its loss and the falling power pull together, 18/175 W/K from
// 25 °C on.
func TestLongestStep(t *testing.T) {
	for _, c := range []struct{ capacity, lag, want float64 }{
		{16.7, 4.5, 1}, {16.7, 3, 0.75}, {16.7, 0.001, leastLagS / 4},
		{0.1, 4.5, 0.1 / (0.068 + 18./175) / 4},
		{1e-9, 4.5, leastBlockS / 4},
	} {
		p := ptcPlant()
		p.CapacityJPerK, p.LagS = c.capacity, c.lag
		near(t, "longest step", newMotion(p, Load{}).longestS, c.want, 1e-12)
	}
	m := motion{longestS: 0.25}
	for _, c := range []struct {
		dt    float64
		steps int
		stepS float64
	}{{0, 1, 0}, {0.1, 1, 0.1}, {0.25, 1, 0.25}, {0.26, 2, 0.13}, {1, 4, 0.25}} {
		if n, h := m.cut(c.dt); n != c.steps || h != c.stepS {
			t.Errorf("%v s are cut into %d steps of %v s", c.dt, n, h)
		}
	}
}

// On a straight piece of the table the series must be the classical method.
func TestSeriesEqualsClassicalMethod(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := newMotion(anyPlant(t), FanFull)
		at := rapid.Float64Range(20, 320).Draw(t, "block")
		s := State{at, at - rapid.Float64Range(-5, 15).Draw(t, "behind")}
		duty := rapid.Float64Range(0, 1).Draw(t, "duty")
		a, b := m.step(s, duty, m.longestS), m.classical(s, duty, m.longestS)
		pc := m.piece(s.Block)
		if a.Block < pc.from || a.Block > pc.to || b.Block < pc.from || b.Block > pc.to {
			t.Skip("crosses a point of the table")
		}
		// The inner stages of the classical method may look a little beyond
		// the piece's end; then the two differ by less than the method's error.
		within := 1e-9
		if far := s.Block + m.longestS*m.slope(s, duty).Block; far < pc.from || far > pc.to {
			within = 1e-3
		}
		if math.Abs(a.Block-b.Block) > within || math.Abs(a.Sensor-b.Sensor) > within {
			t.Fatalf("series %+v, classical %+v", a, b)
		}
	})
}

// TestStepHalving bounds the error of the step that is used: with steps a
// quarter and a thirty-second as long, the curve moves by less than 0.001 K on
// the contract's plants, and by less than 0.02 K on any.
func TestStepHalving(t *testing.T) {
	worst := func(p Plant, l Load) float64 {
		coarse, fine := newMotion(p, l), newMotion(p, l)
		a, b := p.Ambient(), p.Ambient()
		most := 0.0
		for range 400 {
			a = coarse.run(a, 1, coarse.longestS)
			for range 32 {
				b = fine.step(b, 1, coarse.longestS/32)
			}
			most = max(most, math.Abs(a.Block-b.Block), math.Abs(a.Sensor-b.Sensor))
		}
		return most
	}
	for _, p := range []Plant{ptcPlant(), cartridgePlant()} {
		for _, l := range []Load{{}, FanFull} {
			if e := worst(p, l); e > 0.001 {
				t.Errorf("the step costs %.4f K", e)
			}
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		if e := worst(anyPlant(t), FanFull); e > 0.02 {
			t.Fatalf("the step costs %.4f K", e)
		}
	})
}

// A step of order 4 that is halved loses 16 times its error.
func TestOrderOfTheMethod(t *testing.T) {
	p := cartridgePlant()
	failure := func(n int) float64 {
		m, s := newMotion(p, Load{}), p.Ambient()
		const end = 12.0
		for range n {
			s = m.step(s, 1, end/float64(n))
		}
		h := p.LossWPerK
		tau, lag := p.CapacityJPerK/h, p.LagS
		return math.Abs(s.Sensor - (25 + 30/h*(1-(tau*math.Exp(-end/tau)-lag*math.Exp(-end/lag))/(tau-lag))))
	}
	if ratio := failure(8) / failure(16); ratio < 13 || ratio > 20 {
		t.Errorf("halving the step divides the error by %.1f, want about 16", ratio)
	}
}

func TestAbsurdPlantsStayFinite(t *testing.T) {
	for _, b := range []Block{
		{CapacityJPerK: 1e-9, LossWPerK: 1e-9, LossFanWPerK: 1e-9, LagS: 1e-9},
		{CapacityJPerK: 1e9, LossWPerK: 1e-9, LossFanWPerK: 1e-9, LagS: 1e9},
		{CapacityJPerK: 1e-9, LossWPerK: 1e6, LossFanWPerK: 1e6, LagS: 1e6},
		{},
	} {
		p := Plant{ptcPlant().Heater, b}
		w := Watch{Form: ErrorSumWatch, Sum: SumWatch{5, 2, 20, 120, 1}}
		r := Step(p, FanFull, Loop{Kp: 1e9, Ki: 1e9, Kd: 1e9, RangeC: 10, FilterOld: 0.95}, w, 240)
		if math.IsNaN(r.PeakC) {
			t.Errorf("%+v: the peak is %v", b, r.PeakC)
		}
		if c := p.Run(p.Ambient(), 1, FanFull, 3600); math.IsNaN(c.Sensor(3600)) {
			t.Errorf("%+v: the curve ends at %v", b, c.Sensor(3600))
		}
		PredictRise(p, FanFull, HeatingCheck{2, 20, 3}, 240)
		PredictSum(p, FanFull, w.Sum, 240)
	}
}
