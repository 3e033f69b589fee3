package sensor

import (
	"cmp"
	"errors"
	"fmt"
	"slices"

	"preflash/parser"
)

// Table is a curve of straight lines between points, in ohm over °C. Beyond
// its ends the outer lines go on.
type Table struct {
	points  []parser.SensorPoint // by rising temperature
	falling bool                 // the resistance falls as it gets hotter
}

// FromTable makes a table of at least two points, in any order. It fails where
// they neither rise nor fall steadily.
func FromTable(points []parser.SensorPoint) (*Table, error) {
	if len(points) < 2 {
		return nil, fmt.Errorf("%d points are too few: a table takes two", len(points))
	}
	t := &Table{points: slices.Clone(points)}
	slices.SortFunc(t.points, func(a, b parser.SensorPoint) int { return cmp.Compare(a.TempC, b.TempC) })
	t.falling = t.points[1].Ohm < t.points[0].Ohm
	for i, p := range t.points {
		if err := possible(p); err != nil {
			return nil, err
		}
		if i == 0 {
			continue
		}
		last := t.points[i-1]
		if p.TempC == last.TempC || p.Ohm == last.Ohm || (p.Ohm < last.Ohm) != t.falling {
			return nil, errors.New("the resistances of the table neither rise nor fall steadily: correct the points")
		}
	}
	return t, nil
}

// possible refuses a point that no sensor has.
func possible(p parser.SensorPoint) error {
	if !(p.Ohm >= leastOhm && p.Ohm <= mostOhm) || !(p.TempC > coldestC && p.TempC <= hottestC) {
		return fmt.Errorf("%g Ω at %g °C cannot be", p.Ohm, p.TempC)
	}
	return nil
}

// line returns the points of the line for which the first after reports that
// it lies beyond.
func (t *Table) line(beyond func(parser.SensorPoint) bool) (a, b parser.SensorPoint) {
	i := 1
	for i < len(t.points)-1 && !beyond(t.points[i]) {
		i++
	}
	return t.points[i-1], t.points[i]
}

// Ohms is the resistance at a temperature.
func (t *Table) Ohms(tempC float64) float64 {
	x := boundC(tempC)
	a, b := t.line(func(p parser.SensorPoint) bool { return p.TempC >= x })
	return boundOhm(a.Ohm + (x-a.TempC)*(b.Ohm-a.Ohm)/(b.TempC-a.TempC))
}

// TempC is the temperature at a resistance.
func (t *Table) TempC(ohms float64) float64 {
	r := boundOhm(ohms)
	a, b := t.line(func(p parser.SensorPoint) bool { return (p.Ohm <= r) == t.falling || p.Ohm == r })
	return boundC(a.TempC + (r-a.Ohm)*(b.TempC-a.TempC)/(b.Ohm-a.Ohm))
}
