package heat

import "math"

// gain is by what share of each residual the computed block and sensor are put
// right before the next row.
type gain struct{ block, sensor float64 }

// follow drives a plant through recorded inputs and returns recorded minus
// computed temperature at each. With no gain that is Replay; with one, what was
// computed is put right by each reading, and a residual holds what is new since
// the reading before: heat that the record does not tell is then no error that
// goes on and on.
func (p Plant) follow(from State, inputs []Input, tempC []float64, by gain) []float64 {
	residuals := make([]float64, len(inputs))
	var m *motion
	for i, in := range inputs {
		r := tempC[i] - from.Sensor
		residuals[i] = r
		if i+1 == len(inputs) {
			break
		}
		if m == nil || in.Fan != inputs[i-1].Fan {
			m = newMotion(p, Load{Fan: in.Fan})
		}
		from.Block += by.block * r
		from.Sensor += by.sensor * r
		from = m.run(from, in.Duty, inputs[i+1].TimeS-in.TimeS)
	}
	return residuals
}

// steadyGain is the gain that tells best what is new in a reading, where heat
// that is not recorded moves the block by ratio times the reading's noise from
// row to row, as variances: the fixed point of the Riccati equation (Kalman
// 1960), for the parameters x.
func (p *problem) steadyGain(x []float64, ratio float64) gain {
	const most = 5000
	spacing := p.run().SpacingS
	// The block keeps kept of a change to the next row, the sensor takes taken.
	kept := math.Exp(-positive(x[atLoss]) / positive(x[atCapacity]) * spacing)
	taken := 1 - math.Exp(-spacing/positive(x[atLag]))
	// The covariance of block and sensor before a reading, in parts of its noise.
	bb, bs, ss := ratio, 0.0, 0.0
	var by gain
	for range most {
		by = gain{bs / (ss + 1), ss / (ss + 1)}
		// After the reading,
		bb, bs, ss = bb-by.block*bs, bs-by.block*ss, ss-by.sensor*ss
		// and at the next one.
		nextBS := kept * (taken*bb + (1-taken)*bs)
		ss = taken*taken*bb + 2*taken*(1-taken)*bs + (1-taken)*(1-taken)*ss
		before := bb
		bb, bs = kept*kept*bb+ratio, nextBS
		if math.Abs(bb-before) < 1e-9*bb {
			break
		}
	}
	return by
}

// settleGain chooses the gain by which the residuals at x are least, none where
// none makes them much less: their likelihood decides, for normal residuals.
func (p *problem) settleGain(x []float64) {
	const (
		finest, steps, per = -7.0, 33, 4.0 // ratios from 10⁻⁷ to 10, four a decade
		worth              = 1.0           // in the logarithm of the likelihood
	)
	n := float64(len(p.tempC))
	none := p.logLikelihood(x, gain{})
	best, most := gain{}, none+worth/n
	for i := range steps {
		by := p.steadyGain(x, math.Pow(10, finest+float64(i)/per))
		if l := p.logLikelihood(x, by); l > most {
			best, most = by, l
		}
	}
	p.gain = best
}

// logLikelihood is that of the residuals for each row, but for a constant.
func (p *problem) logLikelihood(x []float64, by gain) float64 {
	sum := 0.0
	for _, r := range p.residualsBy(x, by) {
		sum += r * r
	}
	return -math.Log(sum/float64(len(p.tempC))) / 2
}
