package heat

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize"
)

// problem is a least-squares problem: find the block whose computed run lies
// nearest to a recorded one. Its parameters are, in this order, the logarithms
// of capacity, lag and loss (of both losses where the fan varies), how far the
// room is from what it is said to be, K, and for each stretch without a gap
// where the sensor starts, in K from the first reading, and how far the block
// is ahead of it. A run that starts at rest has no such lead. Logarithms keep
// the figures above 0.
type problem struct {
	heater    Heater
	ambient   Estimate // what is said of the room
	inputs    []Input
	tempC     []float64
	starts    []int // the first row of each stretch
	fanVaries bool
	fan       float64 // its share where it does not vary
	atRest    bool
	// ambientWeight is what 1 K of the room counts against 1 K of a residual:
	// the residuals' standard deviation by that of the room.
	ambientWeight float64
	gain          gain // by which readings put the computed run right
}

const (
	atCapacity = iota
	atLag
	atLoss
	atLossFan // where the fan varies
)

func positive(parameter float64) float64 { return math.Exp(parameter) }

func newProblem(h Heater, ambient Estimate, log []Reading) *problem {
	p := &problem{heater: h, ambient: ambient, inputs: make([]Input, len(log)),
		tempC: make([]float64, len(log))}
	least, most := math.Inf(1), math.Inf(-1)
	for i, r := range log {
		p.inputs[i], p.tempC[i] = r.Input, r.TempC
		least, most = min(least, r.Fan), max(most, r.Fan)
	}
	p.fanVaries = most-least > fanSlack
	p.fan = (least + most) / 2
	p.atRest = len(log) > 0 && math.Abs(log[0].TempC-ambient.Value) < restWithinK+ambient.StdErr
	p.starts = []int{0}
	if gaps := gapsOf(p.inputs); len(gaps) <= mostGaps {
		p.starts = append(p.starts, gaps...)
	}
	return p
}

// figures is how many parameters are figures of the block.
func (p *problem) figures() int {
	if p.fanVaries {
		return atLossFan + 1
	}
	return atLoss + 1
}

// fitsAmbient reports whether the room is fitted along, by the parameter that
// follows the figures.
func (p *problem) fitsAmbient() bool { return p.ambient.StdErr > 0 }

// starting is the first parameter that belongs to the start of a stretch.
func (p *problem) starting() int {
	if p.fitsAmbient() {
		return p.figures() + 1
	}
	return p.figures()
}

func (p *problem) size() int {
	n := p.starting() + 2*len(p.starts)
	if p.atRest {
		n--
	}
	return n
}

// ambientC is the room of these parameters.
func (p *problem) ambientC(x []float64) float64 {
	if p.fitsAmbient() {
		return p.ambient.Value + x[p.figures()]
	}
	return p.ambient.Value
}

// residuals are recorded minus computed temperatures, K.
func (p *problem) residuals(x []float64) []float64 { return p.residualsBy(x, p.gain) }

func (p *problem) residualsBy(x []float64, by gain) []float64 {
	plant := Plant{Heater: p.heater, Block: Block{
		CapacityJPerK: positive(x[atCapacity]), LagS: positive(x[atLag]), LossWPerK: positive(x[atLoss]),
		AmbientC: p.ambientC(x),
	}}
	plant.LossFanWPerK = plant.LossWPerK
	if p.fanVaries {
		plant.LossFanWPerK = positive(x[atLossFan])
	}
	residuals := make([]float64, 0, len(p.tempC))
	at := p.starting()
	for i, from := range p.starts {
		to := len(p.inputs)
		if i+1 < len(p.starts) {
			to = p.starts[i+1]
		}
		start := State{Sensor: p.tempC[from] + x[at]}
		at++
		if start.Block = start.Sensor; i > 0 || !p.atRest {
			start.Block += x[at]
			at++
		}
		residuals = append(residuals, plant.follow(start, p.inputs[from:to], p.tempC[from:to], by)...)
	}
	return residuals
}

// ambientResidual is that of what is said of the room, K.
func (p *problem) ambientResidual(x []float64) float64 {
	if p.fitsAmbient() {
		return p.ambientWeight * x[p.figures()]
	}
	return 0
}

// cost is half the mean square of the residuals, K². It is infinite outside of
// what any hotend is, which also keeps the steps of the simulation long.
func (p *problem) cost(x []float64) float64 {
	limits := [...][2]float64{atCapacity: {0.5, 1000}, atLag: {0.1, 300}, atLoss: {1e-4, 2},
		atLossFan: {1e-4, 2}}
	for i := range p.figures() {
		if v := positive(x[i]); !(v > limits[i][0] && v < limits[i][1]) {
			return math.Inf(1)
		}
	}
	sum := p.ambientResidual(x) * p.ambientResidual(x)
	for _, r := range p.residuals(x) {
		sum += r * r
	}
	if math.IsNaN(sum) {
		return math.Inf(1)
	}
	return sum / 2 / float64(len(p.tempC))
}

// jacobian holds the derivative of each residual (rows) by each parameter, by
// central differences.
func (p *problem) jacobian(x []float64) *mat.Dense {
	const step = 1e-3 // of a logarithm, or K
	j := mat.NewDense(len(p.tempC), p.size(), nil)
	moved := make([]float64, len(x))
	column := make([]float64, len(p.tempC))
	for c := range x {
		copy(moved, x)
		moved[c] = x[c] + step
		up := p.residuals(moved)
		moved[c] = x[c] - step
		for i, down := range p.residuals(moved) {
			column[i] = (up[i] - down) / (2 * step)
		}
		j.SetCol(c, column)
	}
	return j
}

// normal returns JᵀJ and Jᵀr, each over the number of rows: the Hessian of the
// cost in the approximation of Gauss and Newton, and its gradient.
func (p *problem) normal(x []float64) (*mat.SymDense, *mat.VecDense) {
	j, r := p.jacobian(x), p.residuals(x)
	h, g := mat.NewSymDense(len(x), nil), mat.NewVecDense(len(x), nil)
	share := 1 / float64(len(r))
	h.SymOuterK(share, j.T())
	g.MulVec(j.T(), mat.NewVecDense(len(r), r))
	g.ScaleVec(share, g)
	if p.fitsAmbient() {
		i := p.figures()
		h.SetSym(i, i, h.At(i, i)+share*p.ambientWeight*p.ambientWeight)
		g.SetVec(i, g.AtVec(i)+share*p.ambientWeight*p.ambientResidual(x))
	}
	return h, g
}

// solve finds the parameters of the least cost. It starts from several lags,
// since a wrong one makes a second valley. By how much readings put the computed
// run right, and how much the room counts, depends on the residuals, which are
// known only then.
func (p *problem) solve() ([]float64, bool) {
	const usualNoiseK, rounds, same = 0.5, 4, 0.02
	p.weigh(usualNoiseK)
	best, least := []float64(nil), math.Inf(1)
	for _, lagS := range [...]float64{1.5, 5, 15} {
		x, cost := p.descend(p.guess(lagS))
		if x != nil && cost < least {
			best, least = x, cost
		}
	}
	for round := range rounds {
		if best == nil {
			break
		}
		before, beforeGain := p.ambientWeight, p.gain
		if round < 2 {
			p.settleGain(best)
		}
		p.weigh(math.Sqrt(p.variance(best)))
		if math.Abs(p.ambientWeight-before) <= same*before && p.gain == beforeGain {
			break
		}
		if x, _ := p.descend(best); x != nil {
			best = x
		}
	}
	return best, best != nil && p.converged(best)
}

// weigh sets what the room counts for, from the standard deviation of a
// residual that no other goes with.
func (p *problem) weigh(noiseK float64) {
	if p.fitsAmbient() {
		p.ambientWeight = max(noiseK, leastNoiseK) / p.ambient.StdErr
	}
}

// variance is that of the residuals, K², were each independent of the others:
// as large as makes the figures as uncertain as the true residuals do.
func (p *problem) variance(x []float64) float64 {
	residuals := p.residuals(x)
	sum := 0.0
	for _, r := range residuals {
		sum += r * r
	}
	return sum / float64(len(residuals)-p.size()) * together(residuals)
}

// guess is where the search starts: usual losses, and the capacity that takes
// up what of the heat these leave until the block is hottest.
func (p *problem) guess(lagS float64) []float64 {
	const lossWPerK = 0.07
	hottest := 0
	for i, t := range p.tempC {
		if t > p.tempC[hottest] {
			hottest = i
		}
	}
	var heat float64 // J
	for i := range hottest {
		in, dt := p.inputs[i], p.inputs[i+1].TimeS-p.inputs[i].TimeS
		heat += dt * (in.Duty*p.heater.Power(p.tempC[i]) - lossWPerK*(p.tempC[i]-p.ambient.Value))
	}
	capacity := heat / (p.tempC[hottest] - p.tempC[0])
	if !(capacity > 1) {
		capacity = 15
	}
	x := make([]float64, p.size())
	x[atCapacity], x[atLag], x[atLoss] = math.Log(min(capacity, 200)), math.Log(lagS), math.Log(lossWPerK)
	if p.fanVaries {
		x[atLossFan] = math.Log(1.4 * lossWPerK)
	}
	return x
}

// descend runs Newton's method with the Hessian of Gauss and Newton. The
// result is nil where it comes to nothing.
func (p *problem) descend(x []float64) ([]float64, float64) {
	if math.IsInf(p.cost(x), 1) {
		return nil, 0
	}
	// Gradient and Hessian are asked for one after the other, at one place.
	var at []float64
	var h *mat.SymDense
	var g *mat.VecDense
	normal := func(x []float64) (*mat.SymDense, *mat.VecDense) {
		if !slices.Equal(at, x) {
			at = slices.Clone(x)
			h, g = p.normal(x)
		}
		return h, g
	}
	problem := optimize.Problem{
		Func: p.cost,
		Grad: func(grad, x []float64) {
			_, g := normal(x)
			copy(grad, g.RawVector().Data)
		},
		Hess: func(hess *mat.SymDense, x []float64) {
			h, _ := normal(x)
			hess.CopySym(h)
		},
	}
	settings := &optimize.Settings{
		MajorIterations:   25,
		FuncEvaluations:   150,
		GradientThreshold: 1e-9,
		Converger:         &optimize.FunctionConverge{Absolute: 1e-14, Relative: 1e-10, Iterations: 4},
	}
	// At the bottom the line search may fail for want of digits: converged
	// judges the result, not the status.
	result, _ := optimize.Minimize(problem, x, settings,
		&optimize.Newton{Linesearcher: &optimize.Backtracking{}})
	if result == nil || math.IsInf(result.F, 0) || math.IsNaN(result.F) {
		return nil, 0
	}
	return result.X, result.F
}

// converged reports whether one more step would move no figure that the log tells
// by more than a small part of its uncertainty.
func (p *problem) converged(x []float64) bool {
	h, g := p.normal(x)
	free := tellable(h)
	var chol mat.Cholesky
	if !chol.Factorize(sub(h, free)) {
		return false
	}
	rest := mat.NewVecDense(len(free), nil)
	for i, at := range free {
		rest.SetVec(i, g.AtVec(at))
	}
	step := mat.NewVecDense(len(free), nil)
	if err := chol.SolveVecTo(step, rest); err != nil {
		return false
	}
	// The decrement of Newton's method: what the step would still gain.
	gain := mat.Dot(step, rest) / 2
	return gain <= 1e-4*p.cost(x)+1e-12
}

// stdErrs returns the standard error of each parameter for a variance of the
// residuals, K²; infinite for one that nothing depends on.
func (p *problem) stdErrs(x []float64, variance float64) []float64 {
	h, _ := p.normal(x)
	errs := make([]float64, len(x))
	for i := range errs {
		errs[i] = math.Inf(1)
	}
	free := tellable(h)
	var chol mat.Cholesky
	if !chol.Factorize(sub(h, free)) {
		return errs
	}
	var inverse mat.SymDense
	if chol.InverseTo(&inverse) != nil {
		return errs
	}
	for i, at := range free {
		errs[at] = math.Sqrt(variance * inverse.At(i, i) / float64(len(p.tempC)))
	}
	return errs
}

// tellable lists the parameters that the residuals depend on at all.
func tellable(h *mat.SymDense) []int {
	var free []int
	for i := range h.SymmetricDim() {
		if h.At(i, i) > 1e-10 {
			free = append(free, i)
		}
	}
	return free
}

func sub(h *mat.SymDense, of []int) *mat.SymDense {
	if len(of) == 0 {
		return mat.NewSymDense(1, nil) // not positive definite
	}
	s := mat.NewSymDense(len(of), nil)
	for i, a := range of {
		for j := range i + 1 {
			s.SetSym(i, j, h.At(a, of[j]))
		}
	}
	return s
}
