package heat

import (
	"iter"
	"math"
)

// Figures names figures of a block, as a set.
type Figures uint8

const (
	Capacity Figures = 1 << iota
	Loss             // part fan off
	LossFan          // part fan full
	Lag

	AllFigures = Capacity | Loss | LossFan | Lag
)

// Spread is how far off an assumed figure is taken to be, as a share of it
// (common practice, no source).
const Spread = 0.3

// Corners yields the plant with every combination of the named figures being
// Spread too low or too high; the plant itself where none is named.
func (p Plant) Corners(f Figures) iter.Seq[Plant] {
	return func(yield func(Plant) bool) {
		for signs := Figures(0); signs <= AllFigures; signs++ {
			if signs&^f != 0 {
				continue
			}
			q := p
			for i, figure := range [...]*float64{&q.CapacityJPerK, &q.LossWPerK, &q.LossFanWPerK, &q.LagS} {
				switch bit := Figures(1) << i; {
				case signs&bit != 0:
					*figure *= 1 + Spread
				case f&bit != 0:
					*figure *= 1 - Spread
				}
			}
			if !yield(q) {
				return
			}
		}
	}
}

// Range returns the least and the largest of a figure over the corners. It
// takes the figure to be monotone between them.
func (p Plant) Range(f Figures, figure func(Plant) float64) (least, most float64) {
	least, most = math.Inf(1), math.Inf(-1)
	for q := range p.Corners(f) {
		x := figure(q)
		least, most = min(least, x), max(most, x)
	}
	return least, most
}

// Flips reports whether a conclusion about the plant is another at some
// corner.
func (p Plant) Flips(f Figures, conclusion func(Plant) bool) bool {
	here := conclusion(p)
	for q := range p.Corners(f) {
		if conclusion(q) != here {
			return true
		}
	}
	return false
}
