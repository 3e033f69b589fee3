package sensor

import (
	"math"
	"slices"

	"preflash/parser"
)

const (
	// PullupTolerance is how far a board's pull-up may be off what a definition
	// is made for, as a share: that of the usual part (common practice, no
	// source).
	PullupTolerance = 0.01
	// A definition must show a cold hotend this well, K, so that the room tells
	// a wrong one and the minimum neither trips nor sleeps (common practice, no
	// source).
	coldWithinK = 10.0
	// Definitions this near to the best count as equal, K: then the one that
	// follows the sensor's own curve is taken.
	equalWithinK = 1.0
	// What the firmware needs below the last row of a table: it shuts down one
	// below the row, as the style's firmware publishes it.
	tableRoomK = 2.0
	// LeavesK is what a definition may be off, K, and still be given to a sensor:
	// common practice, no source.
	LeavesK = 2.5
	// Errors are looked for at every degree, and at so many at most.
	mostSteps = 256
)

// Demand is a sensor and what is asked of its reading.
type Demand struct {
	Real  *Circuit // the sensor on its board, as they are
	Kind  parser.SensorKind
	Curve string  // the known curve that the sensor has; "" for none
	LowC  float64 // the lowest temperature that is printed at
	HighC float64 // the highest
	TopC  float64 // the highest that the firmware lets a user ask for, at least HighC
	ColdC float64 // the room
	// SeriesOhm is a resistor in series that the board has beside any
	// definition.
	SeriesOhm float64
}

// Reaches reports whether the firmware can hold a temperature with this
// definition: a table that ends lower shuts it down.
func (c *Circuit) Reaches(tempC float64) bool { return !c.Ends() || c.HighC-tableRoomK >= tempC }

// Worst returns the largest error, actual − indicated in K, while the firmware
// indicates from lowC to highC, and where; the lower of equal ones. What a table
// cannot indicate is left out.
func (c *Circuit) Worst(real *Circuit, lowC, highC float64) (atC, errorK float64) {
	if c.Ends() {
		lowC, highC = max(lowC, c.LowC), min(highC, c.HighC)
	}
	steps := int(bound(math.Ceil(highC-lowC), 1, mostSteps, 1))
	first := true
	for i := range steps + 1 {
		t := lowC + (highC-lowC)*float64(i)/float64(steps)
		if i == steps {
			t = highC
		}
		if e := c.Actual(real, t) - t; first || math.Abs(e) > math.Abs(errorK)+1e-9 {
			atC, errorK, first = t, e, false
		}
	}
	return atC, errorK
}

// Candidate is a definition and how well it reads a sensor.
type Candidate struct {
	Def      parser.SensorDef
	Believed []*Circuit
	WorstAtC float64
	WorstK   float64 // from LowC to TopC, the worse where Believed is more than one
}

// Judge tells how a definition reads the sensor; false where it stands for no
// curve of its kind and pull-up, or cannot show what is printed at. A definition
// whose pull-up is a setting of its own is taken with the board's.
func (d *Demand) Judge(def parser.SensorDef) (Candidate, bool) {
	if def.Kind != d.Kind {
		return Candidate{}, false
	}
	if def.PullupOhm == 0 {
		def.PullupOhm = d.Real.PullupOhm
	}
	if def.SeriesOhm == 0 {
		def.SeriesOhm = d.SeriesOhm
	}
	if math.Abs(def.PullupOhm-d.Real.PullupOhm) > PullupTolerance*def.PullupOhm {
		return Candidate{}, false
	}
	believed, err := OfDefs(&def)
	if err != nil {
		return Candidate{}, false
	}
	c := Candidate{Def: def, Believed: believed}
	for i, b := range believed {
		if !b.Reaches(d.HighC) {
			return Candidate{}, false
		}
		if at, worst := b.Worst(d.Real, d.LowC, d.TopC); i == 0 || math.Abs(worst) > math.Abs(c.WorstK) {
			c.WorstAtC, c.WorstK = at, worst
		}
	}
	return c, true
}

// ShowsCold reports whether a definition shows a cold hotend near the room.
func (d *Demand) ShowsCold(c Candidate) bool {
	return !slices.ContainsFunc(c.Believed, func(b *Circuit) bool {
		return math.Abs(b.Indicated(d.Real, d.ColdC)-d.ColdC) > coldWithinK
	})
}

// Best returns the definition with the least worst error of those that show a
// cold hotend right, or of those that are equal to it the one that follows the
// sensor's curve; false where none will do.
func (d *Demand) Best(defs []parser.SensorDef) (best Candidate, ok bool) {
	var able []Candidate
	least := math.Inf(1)
	for _, def := range defs {
		if c, can := d.Judge(def); can && d.ShowsCold(c) {
			able = append(able, c)
			least = min(least, math.Abs(c.WorstK))
		}
	}
	for _, c := range able {
		worst := math.Abs(c.WorstK)
		follows, had := d.follows(c), ok && d.follows(best)
		switch {
		case worst > least+equalWithinK, had && !follows:
		case !ok, follows && !had, worst < math.Abs(best.WorstK):
			best, ok = c, true
		}
	}
	return best, ok
}

func (d *Demand) follows(c Candidate) bool { return d.Curve != "" && c.Def.Curve == d.Curve }
