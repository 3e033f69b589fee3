package heat

import (
	"cmp"
	"slices"
)

// Process is a first-order model with dead time, the form that tuning rules
// start from: Gain · e^(−DelayS·s) / (TauS·s + 1).
type Process struct {
	Gain   float64
	DelayS float64
	TauS   float64
}

// FirstOrder reduces a chain of lags with dead time to a first-order model by
// the half rule: half of the second largest lag goes to the largest, the other
// half and all smaller lags to the dead time. Skogestad, S. (2003), Simple
// analytic rules for model reduction and PID controller tuning, Journal of
// Process Control 13, 291–309.
func FirstOrder(gain, delayS float64, lagsS ...float64) Process {
	lags := append(slices.Clone(lagsS), 0, 0)
	slices.SortFunc(lags, func(a, b float64) int { return cmp.Compare(b, a) })
	p := Process{Gain: gain, DelayS: delayS + lags[1]/2, TauS: lags[0] + lags[1]/2}
	for _, lag := range lags[2:] {
		p.DelayS += lag
	}
	return p
}

// Tuning is a PI controller: Kc · (1 + 1/(TauIS·s)).
type Tuning struct {
	Kc    float64
	TauIS float64
}

// SIMC tunes a controller for a model with the closed-loop time constant
// tauC, by Skogestad (2003): Kc = τ1/(k(τc + θ)), τI = min(τ1, 4(τc + θ)).
// τc = θ is its choice for a fast and robust response.
func SIMC(p Process, tauC float64) Tuning {
	return Tuning{Kc: p.TauS / (p.Gain * (tauC + p.DelayS)), TauIS: min(p.TauS, 4*(tauC+p.DelayS))}
}

// Gains are those of a control loop, per 255 duty counts.
type Gains struct {
	Kp float64 // counts/K
	Ki float64 // counts/(K·s)
	Kd float64 // counts·s/K
}

// StartingGains returns a starting point for the gains at a temperature, part
// fan off: SIMC with τc = θ on the first-order form of the plant around its
// equilibrium there. The loop's sampling counts as half a sample of dead time.
// Kd is 0, as SIMC gives none to a first-order model. False where the heater
// cannot hold the temperature.
func StartingGains(p Plant, loop Loop, atC float64) (Gains, bool) {
	process, ok := p.Process(loop, atC)
	if !ok {
		return Gains{}, false
	}
	t := SIMC(process, process.DelayS)
	return Gains{Kp: t.Kc, Ki: t.Kc / t.TauIS}, true
}

// Process returns the plant's first-order form around its equilibrium at a
// temperature, part fan off; its gain is in K for each of 255 duty counts.
func (p Plant) Process(loop Loop, atC float64) (Process, bool) {
	power, loss := p.Power(atC), p.Conductance(Load{})
	duty := loss * (atC - p.AmbientC) / power
	if !(duty > 0 && duty < p.DutyLimit) {
		return Process{}, false
	}
	// A power that falls with temperature steadies the block as a loss does.
	slope := p.Power(atC+0.5) - p.Power(atC-0.5) // over 1 K
	back := loss - duty*slope
	if back <= 0 {
		return Process{}, false
	}
	return FirstOrder(power/back/fullCounts, loop.StepS()/2, p.CapacityJPerK/back, p.LagS), true
}
