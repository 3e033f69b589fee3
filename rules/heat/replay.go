package heat

// Input is what drove a recorded run from one moment to the next.
type Input struct {
	TimeS float64
	Duty  float64
	Fan   float64 // 0 to 1
}

// Replay drives a plant through recorded inputs, which must be in order of
// time, and returns its state at each of them. Duty limits play no part, as
// the record says what was given.
func (p Plant) Replay(from State, inputs []Input) []State {
	states := make([]State, len(inputs))
	var m *motion
	for i, in := range inputs {
		states[i] = from
		if i+1 == len(inputs) {
			break
		}
		if m == nil || in.Fan != inputs[i-1].Fan {
			m = newMotion(p, Load{Fan: in.Fan})
		}
		from = m.run(from, in.Duty, inputs[i+1].TimeS-in.TimeS)
	}
	return states
}
