package heat

import (
	"errors"
	"fmt"
	"math"
	"slices"
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

// PlusMinus is how far off the true figure may well be: two and a half standard
// errors, since a log holds some things that no model has, such as readings in
// whole degrees.
func (e Estimate) PlusMinus() float64 { return 2.5 * e.StdErr }

// Certain reports whether a log tells the figure better than an assumption would:
// the true one lies within Spread of it.
func (e Estimate) Certain() bool { return e.PlusMinus() <= Spread*e.Value }

// Fit is a block fitted to a recorded run.
//
// The standard errors come from the Jacobian J at the best fit, as the roots of
// the diagonal of
//
//	s² · τ · (JᵀJ + W)⁻¹
//
// s² is the sum of squares over rows less parameters, of what is new in each
// reading: where heat moves the block that no row tells of, as of a duty that
// jumps about between them, each reading puts the computed run right by a share
// that makes the residuals least (prediction errors; Ljung 1987), and else by
// nothing. J holds all that was fitted: capacity, losses, lag, room, and the
// start of the run. W adds, for the room alone, what is known of it beforehand:
// s²τ over the square of its standard error. τ is how many neighbouring rows count as one, 1 + 2 Σ ρ of
// the residuals' autocorrelations ρ (Bayley and Hammersley 1946), summed for as
// long as two neighbouring ones together are above 0 (Geyer 1992, initial
// positive sequence). They take the heater's power for exact.
type Fit struct {
	Ambient Estimate // as fitted, from what was given and the log
	Given   Estimate // as given

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
	Together    float64 // how many neighbouring rows count as one, at least 1
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
	// Gaps are the rows before which much longer than usual nothing was
	// recorded. Bridged: they are so many that duty and fan are taken to have
	// held; else each begins afresh.
	Gaps    []int
	Bridged bool
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
	// A sensor's noise is no less than that, K: what is shown is rounded.
	leastNoiseK = 0.03
	// Nothing was recorded where the next row is so many times later than
	// usual, and so many seconds.
	gapTimes, gapS = 4.0, 5.0
	// A run in more stretches than this was not recorded steadily.
	mostGaps = 5
)

// FitRun fits heat capacity, losses and sensor lag to a run, so that the plant,
// driven by the recorded duty and fan, follows the recorded temperature with
// the least sum of squares. Where the run starts, and how far the block is
// ahead of its sensor there unless it starts at rest, is fitted along. Nothing
// may have been extruded. Readings must be in order of time.
//
// The room is fitted along, from what is known of it: its standard error is 0
// where it is to be taken as it is.
func FitRun(h Heater, ambient Estimate, log []Reading) (*Fit, error) {
	p := newProblem(h, ambient, log)
	if need := p.size() + spareRows; len(log) < need {
		return nil, fmt.Errorf("%d rows are too few to fit %d figures: record at least %d, better some "+
			"hundred", len(log), p.size(), need)
	}
	best, ok := p.solve()
	if !ok {
		return nil, errNoModel
	}
	return p.fit(best), nil
}

var errNoModel = errors.New("no heat capacity, loss and lag make the model follow this log: see that duty " +
	"is the mean over each row, that the power is the heater's, that the part fan is recorded and that " +
	"nothing was extruded")

// fit makes the Fit of the best parameters.
func (p *problem) fit(best []float64) *Fit {
	residuals := p.residualsBy(best, gain{})
	f := &Fit{Given: p.ambient, Residuals: residuals, Run: p.run(), Together: together(p.residuals(best))}
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
	errs := p.stdErrs(best, p.variance(best))
	f.Ambient.Value = p.ambientC(best)
	if p.fitsAmbient() {
		f.Ambient.StdErr = errs[p.figures()]
	}
	estimate := func(at int) Estimate {
		v := positive(best[at])
		return Estimate{v, v * errs[at]}
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
	r := Run{Rows: n, LengthS: p.inputs[n-1].TimeS - p.inputs[0].TimeS, LowC: math.Inf(1),
		HighC: math.Inf(-1)}
	r.SpacingS = r.LengthS / float64(n-1)
	r.Gaps = gapsOf(p.inputs)
	r.Bridged = len(r.Gaps) > mostGaps
	for i, in := range p.inputs {
		r.LowC, r.HighC = min(r.LowC, p.tempC[i]), max(r.HighC, p.tempC[i])
		if i+1 == n || p.tempC[i] < p.ambient.Value+wellAboveK || slices.Contains(p.starts, i+1) {
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

// gapsOf lists the rows before which much longer than usual nothing was
// recorded.
func gapsOf(inputs []Input) []int {
	var steps []float64
	for i := 1; i < len(inputs); i++ {
		steps = append(steps, inputs[i].TimeS-inputs[i-1].TimeS)
	}
	if steps == nil {
		return nil
	}
	usual := slices.Sorted(slices.Values(steps))[len(steps)/2]
	var gaps []int
	for i, dt := range steps {
		if dt > max(gapS, gapTimes*usual) {
			gaps = append(gaps, i+1)
		}
	}
	return gaps
}

// together is how many neighbouring residuals count as one, τ.
func together(residuals []float64) float64 {
	n := len(residuals)
	covariance := func(lag int) (sum float64) {
		for i := lag; i < n; i++ {
			sum += residuals[i] * residuals[i-lag]
		}
		return sum
	}
	all := covariance(0)
	if all == 0 {
		return 1
	}
	tau := -1.0
	for lag := 0; lag+1 < n/2; lag += 2 {
		pair := (covariance(lag) + covariance(lag+1)) / all
		if pair <= 0 {
			break
		}
		tau += 2 * pair
	}
	return max(tau, 1)
}
