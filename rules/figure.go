package rules

import (
	"math"

	"preflash/parser"
)

// Worse is the way in which a figure gets worse.
type Worse uint8

const (
	Never  Worse = iota // there is no figure
	Higher              // a higher one is worse
	Lower               // a lower one is worse
)

// Figure is how bad a finding is.
type Figure struct {
	Value float64
	Unit  string
	Worse Worse
}

// WorseThan reports whether a figure is worse than another one of the same
// finding, by more than what rounding does. No figure is worse than none, and
// figures in different units do not compare.
func (f Figure) WorseThan(g Figure) bool {
	if f.Worse != g.Worse || f.Unit != g.Unit {
		return false
	}
	slack := 1e-6 * max(1, math.Abs(g.Value))
	switch f.Worse {
	case Higher:
		return f.Value > g.Value+slack
	case Lower:
		return f.Value < g.Value-slack
	}
	return false
}

// figureOf is how far a setting is to its less safe side.
func figureOf(s *parser.Setting[float64]) Figure {
	f := Figure{Value: s.Value, Unit: s.Key.Unit(), Worse: Higher}
	if s.Key.Safer() == parser.Higher {
		f.Worse = Lower
	}
	return f
}

// FigureOf names the value of a rule's findings that is their figure.
type FigureOf struct {
	Value, Unit string
	Worse       Worse
}

// of takes the figure out of the values; none where they lack it.
func (o FigureOf) of(v Values) Figure {
	x, ok := v[o.Value].(float64)
	if !ok {
		return Figure{}
	}
	return Figure{x, o.Unit, o.Worse}
}
