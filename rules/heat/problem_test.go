package heat

import (
	"math"
	"testing"
)

// steady is a log of a hotend that is off and as warm as said, with one row each
// second but for pauses before the rows that are named.
func steady(rows int, tempC, fan float64, pausesS map[int]float64) []Reading {
	log := make([]Reading, rows)
	at := 100.0
	for i := range log {
		at += pausesS[i]
		log[i] = Reading{Input{TimeS: at, Fan: fan}, tempC}
		at++
	}
	return log
}

// What is fitted, by hand: capacity, lag and one or two losses, the room where it
// is not taken as it is, and for each stretch the start and, unless the run starts
// at rest, how far the block is ahead.
func TestWhatAProblemFits(t *testing.T) {
	many := map[int]float64{5: 9, 10: 9, 15: 9, 20: 9, 25: 9}
	few := map[int]float64{5: 9}
	tooMany := map[int]float64{5: 9, 10: 9, 15: 9, 20: 9, 25: 9, 30: 9}
	for _, c := range []struct {
		name    string
		room    Estimate
		tempC   float64
		fan     float64 // of the last row; the others have none
		pauses  map[int]float64
		size    int
		rest    bool
		varies  bool
		stretch int
	}{
		{"at rest", Estimate{25, 0}, 25, 0, nil, 4, true, false, 1},
		{"with a room", Estimate{25, 2}, 25, 0, nil, 5, true, false, 1},
		{"with a fan", Estimate{25, 0}, 25, 1, nil, 5, true, true, 1},
		{"with a fan that hardly moves", Estimate{25, 0}, 25, fanSlack, nil, 4, true, false, 1},
		{"with one that moves", Estimate{25, 0}, 25, 0.051, nil, 5, true, true, 1},
		{"hardly too warm", Estimate{25, 0}, 27.9, 0, nil, 4, true, false, 1},
		{"3 K too warm", Estimate{25, 0}, 28, 0, nil, 5, false, false, 1},
		{"3 K too cold", Estimate{25, 0}, 22, 0, nil, 5, false, false, 1},
		{"within what the room may be off", Estimate{25, 2}, 29.9, 0, nil, 5, true, false, 1},
		{"more than that", Estimate{25, 2}, 30, 0, nil, 6, false, false, 1},
		{"a gap", Estimate{25, 0}, 25, 0, few, 6, true, false, 2},
		{"five gaps", Estimate{25, 0}, 25, 0, many, 14, true, false, 6},
		{"six gaps", Estimate{25, 0}, 25, 0, tooMany, 4, true, false, 1},
	} {
		log := steady(40, c.tempC, 0, c.pauses)
		log[39].Fan = c.fan
		p := newProblem(cartridgePlant().Heater, c.room, log)
		if p.size() != c.size || p.atRest != c.rest || p.fanVaries != c.varies || len(p.starts) != c.stretch {
			t.Errorf("%s: fits %d, at rest %v, fan varies %v, starts %v", c.name, p.size(), p.atRest,
				p.fanVaries, p.starts)
		}
		if run := p.run(); run.Bridged != (len(c.pauses) > 5) || len(run.Gaps) != len(c.pauses) {
			t.Errorf("%s: gaps %v, bridged %v", c.name, run.Gaps, run.Bridged)
		}
	}
}

// A gap is longer than 5 s and than four times the usual step.
func TestGaps(t *testing.T) {
	for _, c := range []struct {
		everyS, pauseS float64
		gap            bool
	}{{1, 5, false}, {1, 5.01, true}, {2, 8, false}, {2, 8.01, true}, {0.5, 5, false}, {0.5, 5.01, true}} {
		var inputs []Input
		for i := range 10 {
			at := float64(i) * c.everyS
			if i > 6 {
				at += c.pauseS - c.everyS
			}
			inputs = append(inputs, Input{TimeS: at})
		}
		gaps := gapsOf(inputs)
		if (len(gaps) == 1 && gaps[0] == 7) != c.gap || len(gaps) > 1 {
			t.Errorf("every %v s, a pause of %v s: gaps %v", c.everyS, c.pauseS, gaps)
		}
	}
	if gaps := gapsOf([]Input{{}}); gaps != nil {
		t.Errorf("one row, gaps %v", gaps)
	}
}

// Each stretch starts as its own parameters say, and follows the plant from there.
func TestResidualsOfStretches(t *testing.T) {
	p := newProblem(cartridgePlant().Heater, Estimate{25, 2}, steady(12, 60, 0, map[int]float64{6: 20}))
	x := make([]float64, p.size())
	copy(x, []float64{math.Log(12), math.Log(3), math.Log(0.06), -4, 1, 10, 2, 20})
	if p.atRest || p.size() != 8 {
		t.Fatalf("at rest %v, %d parameters", p.atRest, p.size())
	}
	near(t, "room", p.ambientC(x), 21, 0)
	p.weigh(0.5)
	near(t, "room's residual", p.ambientResidual(x), -4*0.5/2, 1e-12)
	plant := cartridgePlant()
	plant.AmbientC = 21
	got := p.residuals(x)
	for _, c := range []struct {
		from  int
		start State
	}{{0, State{Block: 71, Sensor: 61}}, {6, State{Block: 82, Sensor: 62}}} {
		for i, s := range plant.Replay(c.start, p.inputs[c.from:c.from+6]) {
			near(t, "residual", got[c.from+i], 60-s.Sensor, 1e-9)
		}
	}
}

// The first capacity tried takes up what 30 W bring until it is hottest, less a
// loss of 0.07 W/K, by hand.
func TestFirstGuess(t *testing.T) {
	for _, c := range []struct {
		name  string
		tempC [5]float64
		duty  float64
		want  float64
	}{
		{"half on", [5]float64{30, 50, 75, 60, 40}, 0.5, (10*(15-0.07*5) + 10*(15-0.07*25)) / 45},
		{"hottest twice", [5]float64{30, 50, 75, 75, 40}, 0.5, (10*(15-0.07*5) + 10*(15-0.07*25)) / 45},
		{"hottest late", [5]float64{30, 50, 75, 60, 80}, 1, (1200 - 0.7*(5+25+50+35)) / 50},
		{"hardly warmer", [5]float64{30, 30, 30, 30, 31}, 1, 200},
		{"cools only", [5]float64{80, 70, 60, 50, 40}, 0, 15},
		{"warms by itself", [5]float64{30, 40, 50, 60, 70}, 0, 15},
	} {
		log := make([]Reading, 5)
		for i := range log {
			log[i] = Reading{Input{TimeS: 10 * float64(i), Duty: c.duty}, c.tempC[i]}
		}
		x := newProblem(cartridgePlant().Heater, Estimate{Value: 25}, log).guess(5)
		near(t, c.name, positive(x[atCapacity]), c.want, 1e-9)
		near(t, "lag", positive(x[atLag]), 5, 1e-9)
	}
}

// Costs are infinite outside of what any hotend is.
func TestCostIsBounded(t *testing.T) {
	p, x := alternating(12)
	for _, c := range []struct {
		at          int
		least, most float64
	}{{atCapacity, 0.5, 1000}, {atLag, 0.1, 300}, {atLoss, 1e-4, 2}} {
		for _, v := range []struct {
			value float64
			ok    bool
		}{{c.least * 0.99, false}, {c.least * 1.01, true}, {c.most * 0.99, true}, {c.most * 1.01, false}} {
			y := append([]float64(nil), x...)
			y[c.at] = math.Log(v.value)
			if cost := p.cost(y); math.IsInf(cost, 1) == v.ok {
				t.Errorf("parameter %d at %v: the cost is %v", c.at, v.value, cost)
			}
		}
	}
}

// The search settles both what readings put right and the block under it, so that
// the result is the best there is.
func TestSolveOfAJostledRun(t *testing.T) {
	plant := cartridgePlant()
	for _, room := range []Estimate{{25, 0}, {26, 2}} {
		p := newProblem(plant.Heater, room, jostled(plant, 0.3, 0.3, 400))
		x, ok := p.solve()
		if !ok {
			t.Fatal("no fit")
		}
		if p.gain.block < 0.1 {
			t.Errorf("the gain is %+v", p.gain)
		}
		near(t, "capacity", positive(x[atCapacity]), 12, 0.6)
		near(t, "loss", positive(x[atLoss]), 0.06, 0.006)
		if noise := math.Sqrt(p.variance(x)); room.StdErr > 0 {
			near(t, "weight of the room", p.ambientWeight, noise/room.StdErr, 0.05*noise)
		}
	}
}

// What is said of the room counts by the noise that the log turns out to have, here
// four times the one that the search begins with, and the block is fitted under it.
func TestSolveWithARoomThatIsOff(t *testing.T) {
	plant := cartridgePlant()
	p := newProblem(plant.Heater, Estimate{32, 3}, jostled(plant, 2, 0, 150))
	x, ok := p.solve()
	if !ok {
		t.Fatal("no fit")
	}
	noise := math.Sqrt(p.variance(x))
	near(t, "noise", noise, 2, 0.3)
	near(t, "weight of the room", p.ambientWeight, noise/3, 0.02*noise/3)
	again, _ := p.descend(x)
	near(t, "room, fitted once more", p.ambientC(again), p.ambientC(x), 0.01)
}

// A result is one where another step would gain no more than a ten-thousandth of
// the cost, which is quadratic near the bottom.
func TestConverged(t *testing.T) {
	plant := cartridgePlant()
	p := newProblem(plant.Heater, Estimate{Value: 25}, jostled(plant, 0.5, 0, 300))
	best, ok := p.solve()
	if !ok {
		t.Fatal("no fit")
	}
	h, _ := p.normal(best)
	for _, c := range []struct {
		share float64
		ok    bool
	}{{0.5e-4, true}, {2e-4, false}} {
		x := append([]float64(nil), best...)
		x[atLoss] += math.Sqrt(2 * c.share * p.cost(best) / h.At(atLoss, atLoss))
		if got := p.converged(x); got != c.ok {
			t.Errorf("%g of the cost above the bottom: converged is %v", c.share, got)
		}
	}
}
