package heat

import "math"

const (
	runS     = 900.0
	longestS = 4 * runS
	// A run is looked at in such parts. It is over early when S stayed in the
	// band for restParts of them, each of which moves less than restK and
	// hardly more than the one before.
	partS     = 30.0
	restParts = 4
	restPartK = 0.5
	noiseK    = 0.02
	// A swing that loses less than this share from one sixth of a run to the
	// next goes on without end; a turn is one that comes back by turnK.
	decay = 0.1
	turnK = 0.3
	// A run that comes nearer by less than this in its last sixth ends there.
	creepK = 0.5
)

// judge tells how a run ends.
type judge struct {
	target    float64
	endS      float64
	outsideS  float64 // when S was outside the band last
	part      span
	partsS    float64 // where the next part begins
	calm      int     // parts in a row
	sixths    [2]span // of the last third
	sixthS    float64 // where the second one begins
	turns     turns
	settled   bool
	swinging  bool
	lastCheck span
}

// span is the least and the largest of some readings.
type span struct{ low, high float64 }

func emptySpan() span { return span{math.Inf(1), math.Inf(-1)} }

func (s *span) add(x float64) { s.low, s.high = min(s.low, x), max(s.high, x) }

func (s *span) width() float64 { return s.high - s.low }

func newJudge(targetC float64) judge {
	j := judge{target: targetC, outsideS: -1, part: emptySpan(), lastCheck: emptySpan(), partsS: partS}
	j.extend(runS)
	return j
}

func (j *judge) extend(endS float64) {
	j.endS, j.sixthS = endS, endS*5/6
	j.sixths = [2]span{emptySpan(), emptySpan()}
	j.turns = turns{}
}

// over takes a reading and reports whether the run ends with it.
func (j *judge) over(t float64, s State, w *monitor) bool {
	if math.Abs(s.Sensor-j.target) > SettleBandC {
		j.outsideS = t
	}
	j.part.add(s.Sensor)
	if t >= j.endS*2/3 {
		if t < j.sixthS {
			j.sixths[0].add(s.Sensor)
		} else {
			j.sixths[1].add(s.Sensor)
		}
		j.turns.add(t, s.Sensor)
	}
	if t >= j.partsS {
		if j.partOver(t, s, w) {
			return true
		}
	}
	if t < j.endS {
		return false
	}
	return j.runOver()
}

// partOver looks at the part that ends.
func (j *judge) partOver(t float64, s State, w *monitor) bool {
	before := j.lastCheck
	j.lastCheck, j.part = j.part, emptySpan()
	j.partsS += partS
	width := j.lastCheck.width()
	moves := width > restPartK || width > before.width()+noiseK || math.Abs(s.Block-s.Sensor) > restPartK
	if moves || j.outsideS > t-partS || !w.quiet(s.Sensor) {
		j.calm = 0
		return false
	}
	if j.calm++; j.calm < restParts {
		return false
	}
	j.settled = true
	return true
}

// runOver looks at a whole run, and has it go on where it still gets nearer.
func (j *judge) runOver() bool {
	if j.outsideS < j.endS*2/3 {
		j.settled = true
		return true
	}
	a, b := j.sixths[0], j.sixths[1]
	off := func(s span) float64 { return max(s.high-j.target, j.target-s.low) }
	nearer := off(b) < (1-decay)*off(a) && off(b) < off(a)-creepK
	if nearer && j.endS < longestS {
		j.extend(2 * j.endS)
		return false
	}
	j.swinging = j.turns.count >= 2 && b.width() > turnK
	return true
}

func (j *judge) pronounce(r *Response) {
	if r.Settles = j.settled; r.Settles {
		r.SettleS = max(0, j.outsideS)
	}
	if j.swinging {
		r.SwingC, r.PeriodS = j.sixths[1].width()/2, j.turns.period()
	}
}

// turns finds the peaks of a swing.
type turns struct {
	began       bool
	falling     bool
	extreme     float64
	extremeS    float64
	count       int
	firstS, end float64
}

func (u *turns) add(t, x float64) {
	switch {
	case !u.began:
		u.began, u.falling, u.extreme, u.extremeS = true, true, x, t
	case u.falling == (x < u.extreme):
		u.extreme, u.extremeS = x, t
	case math.Abs(x-u.extreme) > turnK:
		if !u.falling { // a peak is passed
			if u.count == 0 {
				u.firstS = u.extremeS
			}
			u.count++
			u.end = u.extremeS
		}
		u.falling = !u.falling
		u.extreme, u.extremeS = x, t
	}
}

func (u *turns) period() float64 { return (u.end - u.firstS) / float64(u.count-1) }
