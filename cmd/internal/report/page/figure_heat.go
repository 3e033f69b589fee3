package page

import (
	"fmt"
	"math"

	"preflash/cmd/internal/plot"
	"preflash/rules"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

// riseWanted is what a watch wants while the heater is on its way.
type riseWanted struct {
	riseC, windowS float64
	untilC         float64 // up to this reading
}

// wanted is false where there is no such watch.
func wanted(w heat.Watch, target float64) (riseWanted, bool) {
	var r riseWanted
	switch w.Form {
	case heat.WindowWatch:
		r = riseWanted{w.Heating.RiseC, w.Heating.WindowS, w.Heating.ArmBelow(target)}
	case heat.ErrorSumWatch:
		r = riseWanted{w.Sum.RiseC, w.Sum.WindowS, target - w.Sum.HysteresisC}
	}
	return r, r.riseC > 0 && r.windowS > 0
}

// heatFigure shows the heat-up on its way past what the hotend is asked for,
// what it is rated for, and where the firmware stops it.
func heatFigure(s *swap) *figure {
	in := s.before
	h := rules.HeatUpOf(in)
	if !(h.Plant.AmbientC < h.TargetC) {
		return nil
	}
	rated, _ := rules.Rating(in)
	limit, after := &in.Printer.Limits.MaxTemp, &s.after.Printer.Limits.MaxTemp
	p := &plot.Plot{
		ID: s.id,
		Desc: "Temperature of the sensor over time at full duty from ambient, part fan full and off, " +
			"against the hotend's rating and the temperature at which the firmware shuts down.",
		Y:     plot.Axis{Label: "sensor temperature, °C", Include: []float64{0, h.TargetC}},
		Marks: []plot.Mark{across("top of its range, ", h.TargetC)},
	}
	top := max(h.TargetC, rated)
	if limit.Known() && limit.Value < top+2*nearK {
		p.Marks = append(p.Marks, across("max temp, ", limit.Value))
		p.Y.Include = append(p.Y.Include, limit.Value+5)
		top = max(top, limit.Value)
	}
	if after.Known() && after.Value != limit.Value {
		p.Marks = append(p.Marks, across("max temp with the diff, ", after.Value))
		p.Y.Include = append(p.Y.Include, after.Value+5)
	}
	rate(in, p, &p.Y, top)
	end := h.Seconds
	if t, gets := h.Off.Cross(top); gets {
		end = min(max(end, t), rules.LongestHeatS)
	}
	end = math.Ceil(end * 1.04)
	seconds := grid(0, end, 1)
	p.X = plot.Axis{Label: "time, s", Low: 0, High: end}
	p.Lines = []plot.Line{
		{Name: "part fan full", Points: sampled(seconds, h.Full.Sensor)},
		{Name: "part fan off", Style: 2, Points: sampled(seconds, h.Off.Sensor)},
	}
	title := heatTitle(h)
	if t, gets := h.Off.Cross(rated); gets && t < rules.LongestHeatS {
		title += fmt.Sprintf("; with the fan off it passes its rating of %s after %s", unit.Celsius(rated),
			unit.Seconds(math.Round(t)))
	}
	f := figureOf(p, title, assumedNote(in))
	f.table("time, s", "fan full, °C", "fan off, °C")
	for _, t := range grid(0, end, tableStep(end)) {
		f.row(1, t, h.Full.Sensor(t), h.Off.Sensor(t))
	}
	return f
}

// across marks a temperature that a heat-up may reach.
func across(name string, tempC float64) plot.Mark {
	return plot.Mark{At: tempC, Horizontal: true, Name: name + unit.Celsius(tempC)}
}

func heatTitle(h rules.HeatUp) string {
	switch {
	case h.Gets && h.Seconds < rules.LongestHeatS:
		return fmt.Sprintf("At full power, part fan full, it takes %s to %s",
			unit.Seconds(math.Round(h.Seconds)), unit.Celsius(h.TargetC))
	case h.Gets:
		return fmt.Sprintf("At full power, part fan full, it takes more than %s to %s",
			unit.Seconds(rules.LongestHeatS), unit.Celsius(h.TargetC))
	}
	return fmt.Sprintf("At full power, part fan full, it never gets to %s: it stalls at %s",
		unit.Celsius(h.TargetC),
		unit.Celsius(h.Plant.Settle(h.Plant.DutyLimit, heat.FanFull, h.Plant.AmbientC)))
}
