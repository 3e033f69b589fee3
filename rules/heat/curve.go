package heat

import "math"

const (
	// horizonS bounds every simulation at constant duty. A hotend that is
	// not where it goes after an hour does not get there.
	horizonS = 3600.0
	// A curve keeps no points closer than this.
	leastSpacingS = 0.25
	// A curve ends where nothing moves any more.
	restKPerS = 2e-5
	restK     = 1e-3
)

// Curve is what block and sensor do at constant duty, from time 0.
type Curve struct {
	SpacingS float64 // between points
	Points   []State
	lagS     float64
}

// curve runs until stop says so, until nothing moves, or for an hour.
func (p Plant) curve(from State, duty float64, l Load, stop func(t, sensor float64) bool) Curve {
	m := newMotion(p, l)
	c := Curve{SpacingS: max(m.longestS, leastSpacingS), lagS: 1 / m.perLag}
	c.Points = append(make([]State, 0, 512), from)
	s := from
	for i := 1; float64(i)*c.SpacingS <= horizonS; i++ {
		s = m.run(s, duty, c.SpacingS)
		c.Points = append(c.Points, s)
		if stop(float64(i)*c.SpacingS, s.Sensor) || m.atRest(s, duty) {
			break
		}
	}
	return c
}

func (m *motion) atRest(s State, duty float64) bool {
	return math.Abs(s.Block-s.Sensor) < restK && math.Abs(m.slope(s, duty).Block) < restKPerS
}

// Run returns the curve of the first so many seconds.
func (p Plant) Run(from State, duty float64, l Load, seconds float64) Curve {
	return p.curve(from, duty, l, func(t, _ float64) bool { return t >= seconds })
}

// beyond returns the curve until the sensor has passed level, in either
// direction, and some seconds more.
func (p Plant) beyond(from State, duty float64, l Load, level, seconds float64) Curve {
	rising := from.Sensor < level
	passed := math.Inf(1)
	return p.curve(from, duty, l, func(t, sensor float64) bool {
		if math.IsInf(passed, 1) && (sensor >= level) == rising {
			passed = t
		}
		return t >= passed+seconds
	})
}

// Sensor returns the sensor's temperature at t seconds. Between points it is
// the cubic through both with their slopes, which the model gives exactly.
// After the last point the temperature stays.
func (c Curve) Sensor(t float64) float64 {
	i := int(t / c.SpacingS)
	if i < 0 {
		return c.Points[0].Sensor
	}
	if i+1 >= len(c.Points) {
		return c.Points[len(c.Points)-1].Sensor
	}
	a, b := c.Points[i], c.Points[i+1]
	x := t/c.SpacingS - float64(i)
	da := (a.Block - a.Sensor) / c.lagS * c.SpacingS
	db := (b.Block - b.Sensor) / c.lagS * c.SpacingS
	rise := b.Sensor - a.Sensor
	return a.Sensor + x*(da+x*(3*rise-2*da-db+x*(da+db-2*rise)))
}

// Cross returns the first time at which the sensor is at a level, coming from
// either side; false where it never is.
func (c Curve) Cross(level float64) (float64, bool) {
	rising := c.Points[0].Sensor < level
	for i := 1; i < len(c.Points); i++ {
		if (c.Points[i].Sensor >= level) != rising {
			continue
		}
		low := float64(i-1) * c.SpacingS
		high := low + c.SpacingS
		for range 40 {
			mid := (low + high) / 2
			if (c.Sensor(mid) >= level) == rising {
				high = mid
			} else {
				low = mid
			}
		}
		return high, true
	}
	return 0, false
}

// EndS is the time of the last point.
func (c Curve) EndS() float64 { return float64(len(c.Points)-1) * c.SpacingS }
