package heat

import (
	"math"
	"math/rand/v2"
	"testing"
)

// The fixed point of the filter is that of SciPy's solve_discrete_are.
func TestSteadyGainMeetsSciPy(t *testing.T) {
	gains := readReference(t).Gains
	if len(gains) < 4 {
		t.Fatalf("the reference holds only %d gains", len(gains))
	}
	for _, g := range gains {
		log := make([]Reading, 11)
		for i := range log {
			log[i].TimeS = float64(i) * g.SpacingS
		}
		p := newProblem(cartridgePlant().Heater, Estimate{}, log)
		got := p.steadyGain(parameters(p, g.Capacity, g.Lag, g.Loss), g.Ratio)
		near(t, "block", got.block, g.Gain[0], 1e-6)
		near(t, "sensor", got.sensor, g.Gain[1], 1e-6)
	}
}

// parameters is a block that starts where the first reading is.
func parameters(p *problem, capacity, lag, loss float64) []float64 {
	x := make([]float64, p.size())
	x[atCapacity], x[atLag], x[atLoss] = math.Log(capacity), math.Log(lag), math.Log(loss)
	if p.fanVaries {
		x[atLossFan] = x[atLoss]
	}
	return x
}

// jostled is a heat-up and a cool-down of a cartridge, one row each second, on
// which heat that no row tells of moves the block by so many K from row to row.
func jostled(p Plant, noiseK, kickK float64, rows int) []Reading {
	random := rand.New(rand.NewPCG(5, 1))
	log := make([]Reading, rows)
	s := p.Ambient()
	for i := range log {
		log[i] = Reading{Input{TimeS: float64(i), Duty: 1}, s.Sensor + noiseK*random.NormFloat64()}
		if i > rows/2 {
			log[i].Duty = 0
		}
		s = p.Advance(s, log[i].Duty, Load{}, 1)
		s.Block += kickK * random.NormFloat64()
	}
	return log
}

// Where nothing moves the block untold, no reading puts anything right. Else the
// gain is the one under which the readings are likeliest: none of the ratios
// makes them more so, and that of the truth hardly less.
func TestGainOfAJostledRun(t *testing.T) {
	plant := cartridgePlant()
	for _, c := range []struct{ kickK, ratio float64 }{{0, 0}, {0.1, 1e-2}, {1, 1}} {
		p := newProblem(plant.Heater, Estimate{Value: 25}, jostled(plant, 1, c.kickK, 400))
		x := parameters(p, plant.CapacityJPerK, plant.LagS, plant.LossWPerK)
		x[p.starting()] = 25 - p.tempC[0]
		p.settleGain(x)
		if c.kickK == 0 {
			if p.gain != (gain{}) {
				t.Errorf("nothing moves it, but the gain is %+v", p.gain)
			}
			continue
		}
		is := p.logLikelihood(x, p.gain)
		for ratio := 1e-7; ratio < 11; ratio *= math.Pow(10, 0.25) {
			if other := p.logLikelihood(x, p.steadyGain(x, ratio)); other > is+1e-9 {
				t.Errorf("kicks of %v K: a ratio of %.2g is likelier by %.2g", c.kickK, ratio, other-is)
			}
		}
		least, most := p.steadyGain(x, c.ratio/4), p.steadyGain(x, c.ratio*4)
		if p.gain.block < least.block || p.gain.block > most.block {
			t.Errorf("kicks of %v K: the gain %+v is not between %+v and %+v", c.kickK, p.gain, least, most)
		}
	}
}

// A hotend at room temperature that is said to be 2 K warmer and colder in turn.
func alternating(rows int) (*problem, []float64) {
	log := make([]Reading, rows)
	for i := range log {
		log[i] = Reading{Input{TimeS: float64(i)}, 27 - 4*float64(i%2)}
	}
	p := newProblem(cartridgePlant().Heater, Estimate{Value: 25}, log)
	x := parameters(p, 12, 3, 0.06)
	x[p.starting()] = -2 // it starts at 25 °C
	return p, x
}

// By hand: the mean square is 4 K², its logarithm halved 0.693, the cost half of
// it, the variance 48/(12 − 4) K², and no reading goes with its neighbour.
func TestFiguresOfAnAlternatingRun(t *testing.T) {
	p, x := alternating(12)
	near(t, "likelihood", p.logLikelihood(x, gain{}), -math.Ln2, 1e-12)
	near(t, "cost", p.cost(x), 2, 1e-12)
	near(t, "variance", p.variance(x), 6, 1e-12)
	for i := range p.tempC {
		p.tempC[i] = 27
	}
	// Of readings that are all alike those of 0, 1, 2 … rows apart go together by
	// 12/12, 11/12, 10/12 …, summed up to half the rows.
	near(t, "variance of a constant error", p.variance(x), 6*(-1+2*(12+11+10+9+8+7)/12.), 1e-12)
}

func TestTogether(t *testing.T) {
	ones := make([]float64, 10)
	for i := range ones {
		ones[i] = 1
	}
	for _, c := range []struct {
		name      string
		residuals []float64
		want      float64
	}{
		{"none", nil, 1},
		{"all zero", make([]float64, 8), 1},
		{"all alike", ones[:8], -1 + 2*(8+7+6+5)/8.},
		{"all alike, an odd half", ones, -1 + 2*(10+9+8+7)/10.},
		{"in turn", []float64{1, -1, 1, -1, 1, -1, 1, -1}, 1},
		{"in pairs", []float64{1, 1, -1, -1, 1, 1, -1, -1}, -1 + 2*(8+1)/8.},
		{"of a larger size", []float64{2, 2, -2, -2, 2, 2, -2, -2}, -1 + 2*(8+1)/8.},
		// The first two that are together no more than 0 end the sum.
		{"four rows apart", []float64{1, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0}, 1},
	} {
		near(t, c.name, together(c.residuals), c.want, 1e-12)
	}
}
