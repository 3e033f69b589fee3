package sensor

import (
	"math"
	"testing"

	"preflash/parser"
)

func TestTable(t *testing.T) {
	// In any order; the outer lines go on.
	rising, err := FromTable([]parser.SensorPoint{{TempC: 200, Ohm: 1758.6}, {TempC: 0, Ohm: 1000},
		{TempC: 100, Ohm: 1385.1}})
	if err != nil {
		t.Fatal(err)
	}
	falling, err := FromTable([]parser.SensorPoint{{TempC: 100, Ohm: 500}, {TempC: 0, Ohm: 2500},
		{TempC: 200, Ohm: 100}})
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		table      *Table
		tempC, ohm float64
	}{
		{rising, 0, 1000}, {rising, 50, 1192.55}, {rising, 100, 1385.1}, {rising, 150, 1571.85},
		{rising, 300, 2132.1}, {rising, -100, 614.9},
		{falling, 0, 2500}, {falling, 25, 2000}, {falling, 100, 500}, {falling, 175, 200},
		{falling, -50, 3500},
	} {
		if got := c.table.Ohms(c.tempC); math.Abs(got-c.ohm) > 1e-9 {
			t.Errorf("%g °C is %g Ω, want %g", c.tempC, got, c.ohm)
		}
		if got := c.table.TempC(c.ohm); math.Abs(got-c.tempC) > 1e-9 {
			t.Errorf("%g Ω is %g °C, want %g", c.ohm, got, c.tempC)
		}
	}
	for _, bad := range [][]parser.SensorPoint{
		nil,
		{{TempC: 0, Ohm: 1000}},
		{{TempC: 0, Ohm: 1000}, {TempC: 0, Ohm: 900}},
		{{TempC: 0, Ohm: 1000}, {TempC: 100, Ohm: 1000}},
		{{TempC: 0, Ohm: 1000}, {TempC: 100, Ohm: 1385}, {TempC: 200, Ohm: 1300}},
		{{TempC: 0, Ohm: math.NaN()}, {TempC: 100, Ohm: 1385}},
		{{TempC: math.Inf(1), Ohm: 1000}, {TempC: 100, Ohm: 1385}},
	} {
		if got, err := FromTable(bad); err == nil {
			t.Errorf("%v gives %+v, want an error", bad, got)
		}
	}
}

// What no sensor has begins beyond 1 µΩ to 1 TΩ and −273 to 2000 °C.
func TestPossibleLimits(t *testing.T) {
	for _, c := range []struct {
		p  parser.SensorPoint
		ok bool
	}{
		{parser.SensorPoint{TempC: 25, Ohm: 1e-6}, true}, {parser.SensorPoint{TempC: 25, Ohm: 0.9e-6}, false},
		{parser.SensorPoint{TempC: 25, Ohm: 1e12}, true}, {parser.SensorPoint{TempC: 25, Ohm: 1.1e12}, false},
		{parser.SensorPoint{TempC: -273, Ohm: 1}, true}, {parser.SensorPoint{TempC: -273.1, Ohm: 1}, false},
		{parser.SensorPoint{TempC: 2000, Ohm: 1}, true}, {parser.SensorPoint{TempC: 2001, Ohm: 1}, false},
	} {
		if err := possible(c.p); (err == nil) != c.ok {
			t.Errorf("%+v: %v", c.p, err)
		}
	}
	points := []parser.SensorPoint{{TempC: 0, Ohm: 1000}, {TempC: 100, Ohm: 1385}}
	for ohm, ok := range map[float64]bool{1e-6: true, 1e12: true, 0.9e-6: false, 1.1e12: false, 0: false,
		math.NaN(): false} {
		if _, err := FromRatios(points, ohm); (err == nil) != ok {
			t.Errorf("a pull-up of %g Ω: %v", ohm, err)
		}
	}
}

// Straight lines over 100 K stray from platinum by what its quadratic term
// makes: |B|·50²/(A + 2·B·t), 0.4 K at most.
func TestTableOfPlatinum(t *testing.T) {
	pt := known(t, "pt1000")
	var points []parser.SensorPoint
	for temp := 0.0; temp <= 500; temp += 100 {
		points = append(points, parser.SensorPoint{TempC: temp, Ohm: pt.Ohms(temp)})
	}
	table, err := FromTable(points)
	if err != nil {
		t.Fatal(err)
	}
	if w := worst(table, pt, 0, 300); w < 0.3 || w > 0.5 {
		t.Errorf("the table strays %g K", w)
	}
}
