package page

import (
	"fmt"
	"math"

	"preflash/cmd/internal/plot"
	"preflash/rules"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

// sensorFigure shows how far the nozzle is from what the firmware shows.
func sensorFigure(s *swap) *figure {
	believed, real, ok := rules.Circuits(s.before)
	if !ok {
		return nil
	}
	low, high := printRange(s.before)
	top := high
	target, known := rules.HighestTarget(s.before)
	if known {
		top = max(top, target)
	}
	from, to := min(100, low), top
	if believed.LowC != 0 || believed.HighC != 0 { // a table: nothing is indicated beyond its ends
		from, to = max(from, believed.LowC), min(to, believed.HighC)
	}
	if !(from < to) {
		return nil
	}
	errorBy := func(c *sensor.Circuit) func(float64) float64 {
		return func(t float64) float64 { return c.Actual(real, t) - t }
	}
	band := func(t float64) float64 { return rules.SensorBand(s.before, real, t) }
	fine := grid(from, to, 2.5)
	p := &plot.Plot{
		ID: s.id,
		Desc: "Error of the reading over the temperature that the firmware shows, with the band of the " +
			"sensor's own uncertainty around zero.",
		X:      plot.Axis{Label: "indicated temperature, °C"},
		Y:      plot.Axis{Label: "actual − indicated, K", Include: []float64{-5, 5}},
		Strips: []plot.Strip{printStrip(s.before)},
		Areas: []plot.Area{{
			Name: "the sensor's own uncertainty",
			Low:  sampled(fine, func(t float64) float64 { return -band(t) }), High: sampled(fine, band),
		}},
		Lines: []plot.Line{{Name: "definition that is used", Points: sampled(fine, errorBy(believed))}},
		Marks: []plot.Mark{{At: 0, Horizontal: true}},
	}
	if known && target != high {
		p.Marks = append(p.Marks, plot.Mark{At: target, Name: "highest target"})
	}
	// The rating holds for the nozzle, so it is drawn at what is then shown.
	if rated, _ := rules.Rating(s.before); real != nil {
		if at := believed.Indicated(real, rated); at >= from && at <= to {
			p.Marks = append(p.Marks, plot.Mark{At: at, Name: "nozzle at its rating, " + unit.Celsius(rated)})
		}
	}
	proposed, _, ok := rules.Circuits(s.after)
	mended := false
	if ok && proposed != nil {
		asked := grid(low, high, 2.5)
		mended = largest(asked, errorBy(proposed)) < largest(asked, errorBy(believed))-0.05
	}
	if mended {
		p.Lines = append(p.Lines, plot.Line{Name: "with the diff applied", Style: 1,
			Points: sampled(fine, errorBy(proposed))})
	}
	f := figureOf(p, sensorTitle(s.before, believed, real)+mendedText(mended, low, high, errorBy(proposed)),
		fmt.Sprintf("Above zero the nozzle is hotter than shown. The sensor itself is good for ±%s at %s.",
			unit.Kelvin(band(high)), unit.Celsius(high)))
	head := []string{"indicated, °C", "actual, °C", "error, K", "own uncertainty, ±K"}
	if mended {
		head = append(head, "error with the diff, K")
	}
	f.table(head...)
	for _, t := range grid(from, to, 20) {
		e := errorBy(believed)(t)
		row := []float64{t, t + e, e, band(t)}
		if mended {
			row = append(row, errorBy(proposed)(t))
		}
		f.row(1, row...)
	}
	return f
}

// largest is the largest absolute value of a function.
func largest(at []float64, y func(float64) float64) float64 {
	most := 0.0
	for _, x := range at {
		most = max(most, math.Abs(y(x)))
	}
	return most
}

func sensorTitle(in *rules.Input, believed, real *sensor.Circuit) string {
	low, high := printRange(in)
	worst, at := 0.0, high
	for _, t := range grid(low, high, 2.5) {
		if e := believed.Actual(real, t) - t; math.Abs(e) > math.Abs(worst)+0.05 {
			worst, at = e, t
		}
	}
	switch {
	case math.Abs(worst) <= rules.RightWithinK:
		return fmt.Sprintf("The reading is right within %s from %s to %s",
			within(math.Abs(worst)), unit.Celsius(low), unit.Celsius(high))
	case worst > 0:
		return fmt.Sprintf("While %s is shown, the nozzle is at %s: %s hotter", unit.Celsius(at),
			unit.Celsius(at+worst), unit.Kelvin(worst))
	}
	return fmt.Sprintf("While %s is shown, the nozzle is at %s: %s colder", unit.Celsius(at),
		unit.Celsius(at+worst), unit.Kelvin(-worst))
}

// within writes a bound; none is as small as nothing.
func within(d float64) string { return unit.Kelvin(max(d, 0.1)) }

func mendedText(mended bool, low, high float64, errorBy func(float64) float64) string {
	if !mended {
		return ""
	}
	return "; with the diff applied it is right within " + within(largest(grid(low, high, 2.5), errorBy))
}
