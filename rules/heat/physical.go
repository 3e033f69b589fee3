package heat

// What hotends are, from the smallest to the largest: common practice, no
// source.
const (
	leastCapacity, mostCapacity = 4.0, 60.0   // J/K
	leastLoss, mostLoss         = 0.035, 0.25 // W/K, part fan off
	leastLossFan, mostLossFan   = 0.04, 0.4   // W/K, part fan full
)

// Physical reports whether a hotend may have the figures that the log tells,
// were the heater's power so many times what the fit took it for. Heat capacity
// and losses go with it.
func (f *Fit) Physical(times float64) bool {
	within := func(figure Figures, e Estimate, least, most float64) bool {
		return f.Fitted&figure == 0 || !e.Certain() || e.Value*times >= least && e.Value*times <= most
	}
	return within(Capacity, f.Capacity, leastCapacity, mostCapacity) &&
		within(Loss, f.Loss, leastLoss, mostLoss) && within(LossFan, f.LossFan, leastLossFan, mostLossFan)
}
