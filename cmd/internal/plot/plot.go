// Package plot draws line plots as SVG that sits inside a page.
//
// It is small and our own because a report needs what plotting libraries do
// not give: text in the page's font and colours that follow the page's style
// sheet, light and dark, while Go's well-kept library (gonum/plot) writes fixed
// fonts and colours into every element, brings its own font files and would be
// the largest dependency of the program. The same plot always gives the same
// bytes.
//
// Nothing is told apart by colour alone: each line style has its own dashes.
// Elements carry the classes s0 to s3 (lines), area, strip, mark, grid and
// axis; without a style sheet they are drawn in the colour of the text.
package plot

import "math"

// Plot is one diagram.
type Plot struct {
	ID     string // unique on the page
	Title  string // what it shows, for those who do not see it
	Desc   string
	X, Y   Axis
	Strips []Strip
	Areas  []Area
	Lines  []Line
	Marks  []Mark
}

// Axis is the label of an axis, with its unit, and its range.
type Axis struct {
	Label string
	// Low and High are the range, where High is above Low. Lines are cut there.
	// Otherwise the range is that of the data.
	Low, High float64
	// Include lists values that the range must hold, where it is that of the data.
	Include []float64
}

// Point is one point of a line. A line has a gap at a point that is not
// finite.
type Point struct{ X, Y float64 }

// Styles is the number of line styles.
const Styles = 4

// Line is a curve.
type Line struct {
	Name   string
	Style  int // 0 to Styles−1
	Points []Point
	Dots   bool // marks every point
}

// Area lies between two curves.
type Area struct {
	Name      string
	Low, High []Point
}

// Strip covers a range of x over the whole height, or of y over the whole
// width.
type Strip struct {
	Name       string
	Horizontal bool
	Low, High  float64
}

// Mark is a straight line over the whole plot, with its name beside it.
type Mark struct {
	Name       string
	Horizontal bool
	At         float64
}

// span is a range of values that can be drawn.
type span struct{ low, high float64 }

// most bounds what can be drawn; larger values are left out, as infinite ones
// are.
const most = 1e12

func drawable(x float64) bool { return math.Abs(x) <= most } // false for NaN

func (p Point) drawable() bool { return drawable(p.X) && drawable(p.Y) }

// add widens a span that may still be empty.
func (s *span) add(values ...float64) {
	for _, v := range values {
		if !drawable(v) {
			continue
		}
		if s.low > s.high {
			s.low, s.high = v, v
		}
		s.low, s.high = min(s.low, v), max(s.high, v)
	}
}

// widened returns a span of some width, whatever was added.
func (s span) widened() span {
	if s.low > s.high {
		return span{0, 1}
	}
	if width := s.high - s.low; width < 1e-9*max(1, math.Abs(s.low), math.Abs(s.high)) {
		room := max(0.5, math.Abs(s.low)*0.01)
		return span{s.low - room, s.high + room}
	}
	return s
}

// ranges returns the ranges of both axes. The one of y ends at
// ticks or half way between them.
func (p *Plot) ranges() (x, y span) {
	x, y = span{1, 0}, span{1, 0}
	each := func(points []Point) {
		for _, pt := range points {
			if pt.drawable() {
				x.add(pt.X)
				if !p.X.fixed() || pt.X >= p.X.Low && pt.X <= p.X.High {
					y.add(pt.Y)
				}
			}
		}
	}
	for i := range p.Lines {
		each(p.Lines[i].Points)
	}
	for i := range p.Areas {
		each(p.Areas[i].Low)
		each(p.Areas[i].High)
	}
	x.add(p.X.Include...)
	y.add(p.Y.Include...)
	x, y = x.widened(), y.widened()
	if ticks := ticksOf(y, yTicks); len(ticks.at) > 1 {
		step := (ticks.at[1] - ticks.at[0]) / 2
		y = span{math.Floor(y.low/step+1e-9) * step, math.Ceil(y.high/step-1e-9) * step}
	}
	if p.X.fixed() {
		x = span{p.X.Low, p.X.High}
	}
	if p.Y.fixed() {
		y = span{p.Y.Low, p.Y.High}
	}
	return x, y
}

// fixed reports whether an axis has a range of its own that can be drawn.
func (a Axis) fixed() bool {
	return drawable(a.Low) && drawable(a.High) &&
		a.High-a.Low > 1e-9*max(1, math.Abs(a.Low), math.Abs(a.High))
}
