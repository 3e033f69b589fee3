package page

import (
	"fmt"
	"math"

	"preflash/cmd/internal/plot"
	"preflash/rules"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

// watchFigure holds the heat-up against what the protection wants.
func watchFigure(s *swap) *figure {
	watch, told := rules.Watch(s.before)
	h := rules.HeatUpOf(s.before)
	w, ok := wanted(watch, h.TargetC)
	if !told || !ok || h.Plant.AmbientC >= w.untilC {
		return nil
	}
	if watch.Form == heat.ErrorSumWatch {
		if o := rules.ErrorSum(s.before, watch.Sum, h.TargetC); o.MostCS > 0 {
			return sumFigure(s, h, watch.Sum, o)
		}
	}
	return riseFigure(s, h, watch, w)
}

// rises reads off a curve what it gains in a window that begins at each
// reading up to untilC.
func rises(c heat.Curve, w riseWanted) []plot.Point {
	var points []plot.Point
	for t := 0.0; t <= min(c.EndS(), rules.LongestHeatS); t++ {
		from := c.Sensor(t)
		if from > w.untilC {
			break
		}
		points = append(points, plot.Point{X: from, Y: c.Sensor(t+w.windowS) - from})
	}
	if t, gets := c.Cross(w.untilC); gets {
		points = append(points, plot.Point{X: w.untilC, Y: c.Sensor(t+w.windowS) - w.untilC})
	}
	return points
}

// riseFigure shows the rise within a window over where the window begins.
func riseFigure(s *swap, h rules.HeatUp, watch heat.Watch, w riseWanted) *figure {
	in := s.before
	full, off := rises(h.Full, w), rises(h.Off, w)
	p := &plot.Plot{
		ID: s.id,
		Desc: "Rise of the sensor within one window over the reading at which the window begins, " +
			"against the rise that is required.",
		X: plot.Axis{Label: "sensor temperature when the window begins, °C", Low: h.Plant.AmbientC,
			High: h.TargetC},
		Y: plot.Axis{Label: "rise within the window, K"},
		Lines: []plot.Line{
			{Name: "fan full, " + unit.Seconds(w.windowS), Points: full},
			{Name: "fan off, " + unit.Seconds(w.windowS), Style: 2, Points: off},
		},
		Marks: []plot.Mark{
			{At: w.riseC, Horizontal: true, Name: "required"},
			{At: w.untilC, Name: "watched up to here"},
		},
	}
	least := leastOf(full)
	title := riseTitle(w, least, watch.Form)
	soonest := "A heater that gives nothing is noticed after one window at the soonest: " +
		unit.Seconds(w.windowS)
	head := []string{"window begins at, °C", "rise, fan full, K", "rise, fan off, K"}
	var after []plot.Point
	if watchAfter, told := rules.Watch(s.after); told && watchAfter != watch {
		if wa, ok := wanted(watchAfter, h.TargetC); ok && wa != w {
			after = rises(rules.HeatUpOf(s.after).Full, wa)
			if wa.windowS != w.windowS {
				soonest += ", with the diff " + unit.Seconds(wa.windowS)
			}
			name := "with the diff, fan full, " + unit.Seconds(wa.windowS)
			p.Lines = append(p.Lines, plot.Line{Name: name, Style: 1, Points: after})
			head = append(head, name+", K")
			if wa.riseC != w.riseC {
				p.Marks = append(p.Marks,
					plot.Mark{At: wa.riseC, Horizontal: true, Name: "required with the diff"})
			}
			title += fmt.Sprintf("; with the diff it is %s in %s, and %s are required",
				unit.Kelvin(leastOf(after)), unit.Seconds(wa.windowS), unit.Kelvin(wa.riseC))
		}
	}
	cutRises(p, w.riseC)
	f := figureOf(p, title, soonest+".", assumedNote(in))
	f.table(head...)
	for _, t := range grid(h.Plant.AmbientC, w.untilC, 20) {
		row := []float64{t, valueAt(full, t), valueAt(off, t)}
		if after != nil {
			row = append(row, valueAt(after, t))
		}
		f.row(1, row...)
	}
	return f
}

// cutRises cuts the plot down to where the rises come near the required one,
// or to their least where none does.
func cutRises(p *plot.Plot, required float64) {
	top := 6 * required
	for _, l := range p.Lines {
		if len(l.Points) > 0 {
			top = max(top, 1.5*leastOf(l.Points))
		}
	}
	from := p.X.High
	for _, l := range p.Lines {
		for _, pt := range l.Points {
			if pt.Y <= top {
				from = min(from, pt.X)
			}
		}
	}
	p.Y.High = top
	p.X.Low = max(p.X.Low, math.Floor(from/10-1)*10)
}

func riseTitle(w riseWanted, least float64, form heat.WatchForm) string {
	text := fmt.Sprintf("With the part fan full the sensor gains at least %s in the window of %s, "+
		"and %s are required: ",
		unit.Kelvin(least), unit.Seconds(w.windowS), unit.Kelvin(w.riseC))
	switch {
	case least >= w.riseC:
		return text + "a healthy heater passes"
	case form == heat.WindowWatch:
		return text + "a healthy heater is shut down"
	}
	return text + "a window is missed"
}

// leastOf is the smallest rise of those that were seen.
func leastOf(points []plot.Point) float64 {
	least := math.Inf(1)
	for _, p := range points {
		least = min(least, p.Y)
	}
	return least
}

// valueAt reads a line between its points, which are in rising order of X.
func valueAt(points []plot.Point, x float64) float64 {
	for i, p := range points {
		switch {
		case p.X == x:
			return p.Y
		case p.X > x && i > 0:
			q := points[i-1]
			return q.Y + (p.Y-q.Y)*(x-q.X)/(p.X-q.X)
		case p.X > x:
			return math.NaN()
		}
	}
	return math.NaN()
}

// sumFigure shows the error sum that is held against its limit.
func sumFigure(s *swap, h rules.HeatUp, w heat.SumWatch, o heat.SumOutcome) *figure {
	end := math.Ceil(h.Seconds)
	if o.Trips {
		end = min(max(end, o.TripS+20), rules.LongestHeatS)
	}
	full := sums(s.before, heat.FanFull, w, h.TargetC, end)
	off := sums(s.before, heat.Load{}, w, h.TargetC, end)
	high := 1.5 * w.LimitCS
	p := &plot.Plot{
		ID: s.id,
		Desc: "Error sum of the protection over time at full duty, once a window was missed, " +
			"against its limit.",
		X: plot.Axis{Label: "time, s", Low: 0, High: end},
		Y: plot.Axis{Label: "error sum, °C·s", Low: 0, High: high},
		Lines: []plot.Line{
			{Name: "part fan full", Points: full},
			{Name: "part fan off", Style: 2, Points: off},
		},
		Marks: []plot.Mark{{At: w.LimitCS, Horizontal: true, Name: "limit, shuts down"}},
	}
	title := fmt.Sprintf("The error sum grows to %s on the way to %s, its limit is %s: no healthy heater "+
		"is shut down",
		unit.DegreeSeconds(o.MostCS), unit.Celsius(h.TargetC), unit.DegreeSeconds(w.LimitCS))
	if o.Trips {
		title = fmt.Sprintf("On the way to %s the error sum reaches its limit of %s after %s: "+
			"a healthy heater is shut down",
			unit.Celsius(h.TargetC), unit.DegreeSeconds(w.LimitCS), unit.Seconds(math.Round(o.TripS)))
	}
	if after, told := rules.Watch(s.after); told && after.Form == heat.ErrorSumWatch &&
		after.Sum.LimitCS != w.LimitCS {
		limit := after.Sum.LimitCS
		p.Y.High = max(high, 1.2*limit)
		p.Marks = append(p.Marks, plot.Mark{At: limit, Horizontal: true, Name: "limit with the diff"})
		title += fmt.Sprintf("; with the diff the limit is %s", unit.DegreeSeconds(limit))
	}
	f := figureOf(p, title, "Below zero shortfall, and in every window that gains enough, nothing adds up.",
		assumedNote(s.before))
	f.table("time, s", "fan full, °C·s", "fan off, °C·s")
	for _, t := range grid(0, end, tableStep(end)) {
		f.row(0, t, valueAt(full, t), valueAt(off, t))
	}
	return f
}

// sums returns the sum as it is held against the limit: while the heater gains
// enough, none is.
func sums(in *rules.Input, l heat.Load, w heat.SumWatch, targetC, end float64) []plot.Point {
	var points []plot.Point
	for _, s := range rules.ErrorSums(in, l, w, targetC, end) {
		points = append(points, plot.Point{X: s.TimeS, Y: s.HeldC})
	}
	return points
}
