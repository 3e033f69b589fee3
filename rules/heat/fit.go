package heat

import (
	"errors"
	"fmt"
	"math"
)

// Reading is one moment of a recorded run: what drove it, and what the sensor
// showed.
type Reading struct {
	Input
	TempC float64
}

// Estimate is a fitted figure with its standard error, both in the figure's
// unit.
type Estimate struct{ Value, StdErr float64 }

// Told reports whether a log tells the figure better than an assumption would:
// the true one lies within Spread of it with a likelihood of 95 %.
func (e Estimate) Told() bool { return 2*e.StdErr <= Spread*e.Value }

// Fit is a block fitted to a recorded run.
//
// The standard errors come from the Jacobian at the best fit, as
// s²·(JᵀJ)⁻¹, for as many rows as are independent of their neighbours:
// n·(1 − Correlation)/(1 + Correlation) (Bayley and Hammersley 1946, for
// residuals of a first-order autoregression). They take the heater's power
// for exact.
type Fit struct {
	AmbientC float64 // as given

	// Fitted names the figures that the run says anything about.
	Fitted   Figures
	Capacity Estimate // J/K
	Loss     Estimate // W/K, part fan off
	LossFan  Estimate // W/K, part fan full
	Lag      Estimate // s

	// Where the fan never changed and stood between off and full, the loss at
	// that share of it.
	PartFan  float64
	PartLoss Estimate

	RMSK        float64 // root mean square of the residuals
	WorstK      float64 // largest residual, recorded − computed, at WorstS
	WorstS      float64
	Correlation float64 // of neighbouring residuals, 0 to 1
	Residuals   []float64

	Run Run
}

// Run is what a recorded run consists of.
type Run struct {
	Rows     int
	LengthS  float64
	SpacingS float64 // mean time between rows
	LowC     float64
	HighC    float64
	CoolS    float64 // heater off and well above ambient
	FanS     float64 // part fan on and well above ambient
}

const (
	// A fan is off below this share, full above one less it, and does not
	// vary where it moves by less.
	fanSlack = 0.05
	// A run that begins this near ambient begins at rest: block and sensor
	// have one temperature.
	restWithinK = 3.0
	// Cooling and fan tell of losses only well above ambient.
	wellAboveK = 50.0
	// Rows beyond the number of parameters, to have residuals to speak of.
	spareRows = 4
)

// FitRun fits heat capacity, losses and sensor lag to a run, so that the plant,
// driven by the recorded duty and fan, follows the recorded temperature with
// the least sum of squares. Where the run starts, and how far the block is
// ahead of its sensor there unless it starts at rest, is fitted along. Nothing
// may have been extruded. Readings must be in order of time.
func FitRun(h Heater, ambientC float64, log []Reading) (*Fit, error) {
	p := newProblem(h, ambientC, log)
	if need := p.size() + spareRows; len(log) < need {
		return nil, fmt.Errorf("%d rows are too few to fit %d figures: record at least %d, better some hundred", len(log), p.size(), need)
	}
	best, ok := p.solve()
	if !ok {
		return nil, errNoModel
	}
	return p.fit(best), nil
}

var errNoModel = errors.New("no heat capacity, loss and lag make the model follow this log: see that duty is the mean over each row, that the power is the heater's, that the part fan is recorded and that nothing was extruded")

// fit makes the Fit of the best parameters.
func (p *problem) fit(best []float64) *Fit {
	residuals := p.residuals(best)
	f := &Fit{AmbientC: p.ambientC, Residuals: residuals, Run: p.run()}
	var sum, neighbours float64
	for i, r := range residuals {
		sum += r * r
		if i > 0 {
			neighbours += r * residuals[i-1]
		}
		if math.Abs(r) > math.Abs(f.WorstK) {
			f.WorstK, f.WorstS = r, p.inputs[i].TimeS
		}
	}
	f.RMSK = math.Sqrt(sum / float64(len(residuals)))
	if sum > 0 {
		f.Correlation = min(max(neighbours/sum, 0), 0.999)
	}
	variance := sum / float64(len(residuals)-p.size())
	relative := p.stdErrs(best, variance*(1+f.Correlation)/(1-f.Correlation))
	estimate := func(at int) Estimate {
		v := positive(best[at])
		return Estimate{v, v * relative[at]}
	}
	f.Capacity, f.Lag = estimate(atCapacity), estimate(atLag)
	f.Fitted = Capacity | Lag
	switch first := estimate(atLoss); {
	case p.fanVaries:
		f.Loss, f.LossFan = first, estimate(atLossFan)
		f.Fitted |= Loss | LossFan
	case p.fan < fanSlack:
		f.Loss = first
		f.Fitted |= Loss
	case p.fan > 1-fanSlack:
		f.LossFan = first
		f.Fitted |= LossFan
	default:
		f.PartFan, f.PartLoss = p.fan, first
	}
	return f
}

// run tells what the run consists of.
func (p *problem) run() Run {
	n := len(p.inputs)
	r := Run{Rows: n, LengthS: p.inputs[n-1].TimeS - p.inputs[0].TimeS, LowC: math.Inf(1), HighC: math.Inf(-1)}
	r.SpacingS = r.LengthS / float64(n-1)
	for i, in := range p.inputs {
		r.LowC, r.HighC = min(r.LowC, p.tempC[i]), max(r.HighC, p.tempC[i])
		if i+1 == n || p.tempC[i] < p.ambientC+wellAboveK {
			continue
		}
		dt := p.inputs[i+1].TimeS - in.TimeS
		if in.Duty < 0.01 {
			r.CoolS += dt
		}
		if in.Fan > 0.5 {
			r.FanS += dt
		}
	}
	return r
}
