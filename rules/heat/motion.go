package heat

import "math"

// State is the temperature of the block and of its sensor, °C.
type State struct{ Block, Sensor float64 }

const (
	// Shorter lags are taken as this long: the sensor then trails the block
	// by less than 0.1 K at any rate that a hotend reaches.
	leastLagS = 0.02
	// A block that answers faster than this is taken to answer this fast.
	leastBlockS = 0.01
	// The longest step. See motion.step for what a step costs in accuracy.
	longestStepS = 1.0
	// Parts into which a step over a point of the power table is cut.
	kinkSteps = 8
)

// motion is a plant under one load, made ready for many steps.
type motion struct {
	pieces   []piece
	at       int     // piece that held the block last
	perC     float64 // 1 / heat capacity, K/J
	loss     float64 // W/K
	ambient  float64
	perLag   float64 // 1/s
	longestS float64 // step that is still accurate, s

	// What prepare made ready.
	steps  int     // in one sample
	stepS  float64 // of each
	linear bool    // the power does not depend on the temperature: affine holds
	affine affine
}

// affine is one sample of a plant whose power is constant: a linear map.
type affine struct{ block, duty, fixed, sensorBlock, sensor, sensorDuty, sensorFixed float64 }

func newMotion(p Plant, l Load) *motion {
	m := &motion{pieces: p.pieces(), loss: p.Conductance(l), ambient: p.AmbientC}
	steepest := math.Abs(m.loss)
	for _, pc := range m.pieces {
		steepest = max(steepest, math.Abs(pc.slope-m.loss))
	}
	capacity := max(p.CapacityJPerK, steepest*leastBlockS)
	lag := max(p.LagS, leastLagS)
	m.perC, m.perLag = 1/capacity, 1/lag
	m.longestS = min(longestStepS, lag/4, capacity/steepest/4)
	return m
}

// run goes forward by dt seconds at constant duty.
func (m *motion) run(s State, duty, dt float64) State {
	n, h := m.cut(dt)
	for range n {
		s = m.step(s, duty, h)
	}
	return s
}

// cut divides dt seconds into equal steps that are short enough.
func (m *motion) cut(dt float64) (steps int, stepS float64) {
	steps = max(1, int(math.Ceil(dt/m.longestS)))
	return steps, dt / float64(steps)
}

// prepare makes ready for many samples of dt seconds each.
func (m *motion) prepare(dt float64) {
	m.steps, m.stepS = m.cut(dt)
	if m.linear = len(m.pieces) == 1; !m.linear {
		return
	}
	at := func(block, sensor, duty float64) State { return m.run(State{block, sensor}, duty, dt) }
	none := at(0, 0, 0)
	b, s, d := at(1, 0, 0), at(0, 1, 0), at(0, 0, 1)
	m.affine = affine{
		block: b.Block - none.Block, duty: d.Block - none.Block, fixed: none.Block,
		sensorBlock: b.Sensor - none.Sensor, sensor: s.Sensor - none.Sensor,
		sensorDuty: d.Sensor - none.Sensor, sensorFixed: none.Sensor,
	}
}

// next goes forward by one prepared sample.
func (m *motion) next(s State, duty float64) State {
	if a := &m.affine; m.linear {
		return State{
			a.block*s.Block + a.duty*duty + a.fixed,
			a.sensorBlock*s.Block + a.sensor*s.Sensor + a.sensorDuty*duty + a.sensorFixed,
		}
	}
	for range m.steps {
		s = m.step(s, duty, m.stepS)
	}
	return s
}

// step is one fixed step of the classical Runge-Kutta method of order 4.
//
// While the block stays on one straight piece of the power table, the system
// is linear, and there the method equals the Taylor series through h⁴, which
// costs a quarter. Only a step that crosses a point of the table takes the
// long way, in shorter steps, as the method loses its order over a kink. With
// steps up to a quarter of the lag, the error of the curve is below 0.001 K
// (TestStepHalving).
func (m *motion) step(s State, duty, h float64) State {
	pc := m.piece(s.Block)
	slope := duty*pc.slope - m.loss
	x, y := h*slope*m.perC, h*m.perLag
	// Terms of the series, each the next derivative times h.
	t1 := h * m.perC * (duty*pc.offset + m.loss*m.ambient + slope*s.Block)
	s1 := y * (s.Block - s.Sensor)
	t2, s2 := x*t1, y*(t1-s1)
	t3, s3 := x*t2, y*(t2-s2)
	t4, s4 := x*t3, y*(t3-s3)
	next := State{
		s.Block + t1 + t2/2 + t3/6 + t4/24,
		s.Sensor + s1 + s2/2 + s3/6 + s4/24,
	}
	if next.Block >= pc.from && next.Block <= pc.to {
		return next
	}
	for range kinkSteps {
		s = m.classical(s, duty, h/kinkSteps)
	}
	return s
}

func (m *motion) classical(s State, duty, h float64) State {
	along := func(k State, by float64) State {
		return State{s.Block + by*k.Block, s.Sensor + by*k.Sensor}
	}
	k1 := m.slope(s, duty)
	k2 := m.slope(along(k1, h/2), duty)
	k3 := m.slope(along(k2, h/2), duty)
	k4 := m.slope(along(k3, h), duty)
	return State{
		s.Block + h/6*(k1.Block+2*k2.Block+2*k3.Block+k4.Block),
		s.Sensor + h/6*(k1.Sensor+2*k2.Sensor+2*k3.Sensor+k4.Sensor),
	}
}

// slope is the right-hand side of the model, K/s.
func (m *motion) slope(s State, duty float64) State {
	pc := m.piece(s.Block)
	return State{
		m.perC * (duty*(pc.offset+pc.slope*s.Block) - m.loss*(s.Block-m.ambient)),
		m.perLag * (s.Block - s.Sensor),
	}
}

func (m *motion) piece(tempC float64) *piece {
	for m.at+1 < len(m.pieces) && tempC >= m.pieces[m.at].to {
		m.at++
	}
	for tempC < m.pieces[m.at].from {
		m.at--
	}
	return &m.pieces[m.at]
}

// Advance goes forward by dt seconds at constant duty and load.
func (p Plant) Advance(s State, duty float64, l Load, dt float64) State {
	return newMotion(p, l).run(s, duty, dt)
}
