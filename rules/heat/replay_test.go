package heat

import "testing"

// A record of a step must replay to the step itself, and one whose fan comes
// on midway to two runs in a row.
func TestReplay(t *testing.T) {
	p := ptcPlant()
	_, trace := StepTrace(p, Load{}, tunedRange, Watch{}, 240)
	inputs := make([]Input, len(trace))
	for i, s := range trace {
		inputs[i] = Input{TimeS: s.TimeS, Duty: s.Duty}
	}
	for i, s := range p.Replay(p.Ambient(), inputs) {
		near(t, "sensor", s.Sensor, trace[i].Sensor, 1e-6)
	}

	got := p.Replay(p.Ambient(), []Input{{0, 1, 0}, {60, 0.4, 1}, {200, 0, 1}})
	warm := p.Advance(p.Ambient(), 1, Load{}, 60)
	near(t, "warm", got[1].Block, warm.Block, 1e-9)
	near(t, "fan", got[2].Block, p.Advance(warm, 0.4, FanFull, 140).Block, 1e-9)
	if got := p.Replay(p.Ambient(), nil); len(got) != 0 {
		t.Errorf("nothing recorded, %d states", len(got))
	}
}
