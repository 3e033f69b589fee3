package rules

import (
	"math"
	"strings"

	"preflash/parser"
	"preflash/rules/unit"
)

// Worse is the way in which a figure gets worse.
type Worse uint8

const (
	Never  Worse = iota // there is no figure
	Higher              // a higher one is worse
	Lower               // a lower one is worse
)

// Figure is how bad a finding is, in the unit that its message writes: a share
// is in per cent.
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

// Outgrows reports whether a figure is worse than one that was accepted, by more
// than the smallest difference that is shown.
func (f Figure) Outgrows(accepted Figure) bool {
	step := unit.Step(f.Unit)
	if f.Worse == Lower {
		step = -step
	}
	accepted.Value += step
	return f.WorseThan(accepted)
}

// Given reports whether there is a figure.
func (f Figure) Given() bool {
	return f.Worse != Never && !math.IsNaN(f.Value) && !math.IsInf(f.Value, 0)
}

// Shown is the figure as it is written, without its unit.
func (f Figure) Shown() string { return strings.TrimSuffix(unit.Of(f.Value, f.Unit), " "+f.Unit) }

func (f Figure) String() string { return unit.Of(f.Value, f.Unit) }

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
	if o.Unit == "%" {
		x *= 100
	}
	return Figure{x, o.Unit, o.Worse}
}
