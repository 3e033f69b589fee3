package heat

import (
	"iter"
	"math"
)

// Figures names figures of a plant, as a set.
type Figures uint8

const (
	Capacity Figures = 1 << iota
	Loss             // part fan off
	LossFan          // part fan full
	Lag

	AllFigures = Capacity | Loss | LossFan | Lag
)

// Spread is how far off an assumed figure is taken to be, as a share of it.
// Power and losses that were given have one too: a heater is made to a
// tolerance, and losses change with socks and draughts. All are common
// practice, no source.
const (
	Spread      = 0.3
	PowerSpread = 0.05
	LossSpread  = 0.1
)

// Spreads is how far each figure may be off, as a share of it; 0 is exact.
type Spreads struct{ Power, Capacity, Loss, LossFan, Lag float64 }

// SpreadsOf gives the figures that are in play their spreads; power always is.
func SpreadsOf(inPlay, assumed Figures) Spreads {
	of := func(f Figures, given float64) float64 {
		switch {
		case inPlay&f == 0:
			return 0
		case assumed&f != 0:
			return Spread
		}
		return given
	}
	return Spreads{PowerSpread, of(Capacity, 0), of(Loss, LossSpread), of(LossFan, LossSpread), of(Lag, 0)}
}

// Corners yields the plant with every combination of its figures being too low
// or too high by their spreads.
func (p Plant) Corners(s Spreads) iter.Seq[Plant] {
	return func(yield func(Plant) bool) { p.corner(s, 0, yield) }
}

func (p Plant) corner(s Spreads, from int, yield func(Plant) bool) bool {
	spreads := [...]float64{s.Power, s.Capacity, s.Loss, s.LossFan, s.Lag}
	for i := from; i < len(spreads); i++ {
		if spreads[i] == 0 {
			continue
		}
		return p.scaled(i, 1-spreads[i]).corner(s, i+1, yield) &&
			p.scaled(i, 1+spreads[i]).corner(s, i+1, yield)
	}
	return yield(p)
}

// scaled scales one figure, in the order of Spreads.
func (p Plant) scaled(figure int, by float64) Plant {
	switch figure {
	case 0:
		return p.WithPower(by)
	case 1:
		p.CapacityJPerK *= by
	case 2:
		p.LossWPerK *= by
	case 3:
		p.LossFanWPerK *= by
	case 4:
		p.LagS *= by
	}
	return p
}

// Hottest is the plant at the end of its spreads where it gets hottest: more power
// and less loss.
func (p Plant) Hottest(s Spreads) Plant {
	p = p.WithPower(1 + s.Power)
	p.LossWPerK *= 1 - s.Loss
	p.LossFanWPerK *= 1 - s.LossFan
	return p
}

// Range returns the least and the largest of a figure over the corners. It
// takes the figure to be monotone between them.
func (p Plant) Range(s Spreads, figure func(Plant) float64) (least, most float64) {
	least, most = math.Inf(1), math.Inf(-1)
	for q := range p.Corners(s) {
		x := figure(q)
		least, most = min(least, x), max(most, x)
	}
	return least, most
}

// Flips reports whether a conclusion about the plant is another at some
// corner.
func (p Plant) Flips(s Spreads, conclusion func(Plant) bool) bool {
	here := conclusion(p)
	for q := range p.Corners(s) {
		if conclusion(q) != here {
			return true
		}
	}
	return false
}
