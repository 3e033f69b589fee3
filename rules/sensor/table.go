package sensor

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"sort"

	"preflash/parser"
)

// Table is a curve of straight lines between points over °C: in ohm, where the
// outer lines go on beyond the ends, or in the ratio R/(R + pull-up) of a
// divider, where it stays at its ends.
type Table struct {
	temps, keys []float64 // by rising temperature; a key is an ohm or a ratio
	falling     bool      // the resistance falls as it gets hotter
	pullupOhm   float64   // of the ratio; 0 where a key is an ohm
}

// FromTable makes a table in ohm of at least two points, in any order. It fails
// where they neither rise nor fall steadily.
func FromTable(points []parser.SensorPoint) (*Table, error) { return tableOf(points, 0) }

// FromRatios makes a table in the ratio of a divider, as FromTable does.
func FromRatios(points []parser.SensorPoint, pullupOhm float64) (*Table, error) {
	if !(pullupOhm >= leastOhm && pullupOhm <= mostOhm) {
		return nil, fmt.Errorf("a pull-up of %g Ω cannot be", pullupOhm)
	}
	return tableOf(points, pullupOhm)
}

func tableOf(points []parser.SensorPoint, pullupOhm float64) (*Table, error) {
	if len(points) < 2 {
		return nil, fmt.Errorf("%d points are too few: a table takes two", len(points))
	}
	byTemp := func(a, b parser.SensorPoint) int { return cmp.Compare(a.TempC, b.TempC) }
	if !slices.IsSortedFunc(points, byTemp) {
		points = slices.Clone(points)
		slices.SortFunc(points, byTemp)
	}
	n := len(points)
	both := make([]float64, 2*n)
	t := &Table{temps: both[:n], keys: both[n:], pullupOhm: pullupOhm, falling: points[1].Ohm < points[0].Ohm}
	for i, p := range points {
		if err := possible(p); err != nil {
			return nil, err
		}
		t.temps[i], t.keys[i] = p.TempC, t.key(p.Ohm)
		if i == 0 {
			continue
		}
		last := points[i-1]
		if p.TempC == last.TempC || p.Ohm == last.Ohm || (p.Ohm < last.Ohm) != t.falling {
			return nil, errors.New("the resistances of the table neither rise nor fall steadily: correct " +
				"the points")
		}
	}
	return t, nil
}

// possible refuses a point that no sensor has.
func possible(p parser.SensorPoint) error {
	if !(p.Ohm >= leastOhm && p.Ohm <= mostOhm) || !(p.TempC >= coldestC && p.TempC <= hottestC) {
		return fmt.Errorf("%g Ω at %g °C cannot be", p.Ohm, p.TempC)
	}
	return nil
}

// key turns a resistance into what the lines are straight in.
func (t *Table) key(ohm float64) float64 {
	if t.pullupOhm == 0 {
		return ohm
	}
	return ohm / (ohm + t.pullupOhm)
}

// between is the y at x on the line from point i−1 to point i.
func between(xs, ys []float64, i int, x float64) float64 {
	return ys[i-1] + (x-xs[i-1])*(ys[i]-ys[i-1])/(xs[i]-xs[i-1])
}

// Ohms is the resistance at a temperature.
func (t *Table) Ohms(tempC float64) float64 {
	x, last := boundC(tempC), len(t.temps)-1
	if t.pullupOhm != 0 {
		x = bound(x, t.temps[0], t.temps[last], x)
	}
	i := 1 + sort.Search(last-1, func(i int) bool { return t.temps[i+1] >= x })
	k := between(t.temps, t.keys, i, x)
	if t.pullupOhm != 0 {
		k *= t.pullupOhm / (1 - k)
	}
	return boundOhm(k)
}

// TempC is the temperature at a resistance.
func (t *Table) TempC(ohms float64) float64 {
	k, last := t.key(boundOhm(ohms)), len(t.keys)-1
	i := 1 + sort.Search(last-1, func(i int) bool { return (t.keys[i+1] <= k) == t.falling })
	tempC := between(t.keys, t.temps, i, k)
	if t.pullupOhm != 0 {
		tempC = bound(tempC, t.temps[0], t.temps[last], tempC)
	}
	return boundC(tempC)
}
