package report

import (
	"fmt"
	"math"

	"preflash/cmd/internal/plot"
	"preflash/rules"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

// longestHeat bounds the heat-up that is drawn, s.
const longestHeat = 900

// heatUp is the way from ambient to the top of the range at full duty.
type heatUp struct {
	plant     heat.Plant
	target    float64
	full, off heat.Curve // part fan full and off
	gets      bool       // with the fan full, S reaches the target
	seconds   float64    // when, or when nothing moves any more
}

func heatUpOf(in *rules.Input) heatUp {
	h := heatUp{plant: rules.Plant(in)}
	_, h.target = printRange(in)
	h.full = h.plant.Run(h.plant.Ambient(), h.plant.DutyLimit, heat.FanFull, 2*longestHeat)
	h.off = h.plant.Run(h.plant.Ambient(), h.plant.DutyLimit, heat.Load{}, 2*longestHeat)
	h.seconds, h.gets = h.full.Cross(h.target)
	if !h.gets {
		h.seconds = h.full.EndS()
	}
	h.seconds = min(h.seconds, longestHeat)
	return h
}

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
		r = riseWanted{w.Rise.RiseC, w.Rise.WindowS, w.Rise.ArmBelow(target)}
	case heat.ErrorSumWatch:
		r = riseWanted{w.Sum.RiseC, w.Sum.WindowS, target - w.Sum.HysteresisC}
	}
	return r, r.riseC > 0 && r.windowS > 0
}

// heatFigure shows the heat-up with the windows of the rise watch.
func heatFigure(s *swap) (*figure, string) {
	in := s.before
	h := heatUpOf(in)
	if !(h.plant.AmbientC < h.target) {
		return nil, ""
	}
	watch, told := rules.Watch(in)
	seconds := grid(0, math.Ceil(h.seconds*1.04), 1)
	p := &plot.Plot{
		ID:   s.id,
		Desc: "Temperature of the sensor over time at full duty from ambient, part fan full and off, with the windows in which the protection wants a rise.",
		X:    plot.Axis{Label: "time, s", Low: 0, High: seconds[len(seconds)-1]},
		Y:    plot.Axis{Label: "sensor temperature, °C", Include: []float64{0, h.target}},
		Lines: []plot.Line{
			{Name: "part fan full", Points: sampled(seconds, h.full.Sensor)},
			{Name: "part fan off", Style: 2, Points: sampled(seconds, h.off.Sensor)},
		},
		Marks: []plot.Mark{{At: h.target, Horizontal: true, Name: "top of its range"}},
	}
	note := "No rise is wanted on the way: the protection is off."
	if !told {
		note = "The windows of the protection are left out: its figures cannot be told."
	}
	if w, ok := wanted(watch, h.target); ok && told {
		var last float64
		p.Bars, last = windowBars(h, w)
		p.BarName = fmt.Sprintf("a window of %s", unit.Seconds(w.windowS))
		note = fmt.Sprintf("Each bar is a window of %s, drawn %s above the reading at which it begins: the line must cross it. Not every window is drawn.",
			unit.Seconds(w.windowS), unit.Kelvin(w.riseC))
		if last >= 0 {
			p.Strips = append(p.Strips, plot.Strip{Name: "the last window", Low: last, High: last + w.windowS})
		}
	}
	f := figureOf(p, heatTitle(h), note, assumedNote(in))
	f.table("time, s", "fan full, °C", "fan off, °C")
	for _, t := range grid(0, seconds[len(seconds)-1], tableStep(h.seconds)) {
		f.row(1, t, h.full.Sensor(t), h.off.Sensor(t))
	}
	return f, ""
}

func heatTitle(h heatUp) string {
	switch {
	case h.gets && h.seconds < longestHeat:
		return fmt.Sprintf("At full power, part fan full, it takes %s to %s", unit.Seconds(math.Round(h.seconds)), unit.Celsius(h.target))
	case h.gets:
		return fmt.Sprintf("At full power, part fan full, it takes more than %s to %s", unit.Seconds(longestHeat), unit.Celsius(h.target))
	}
	return fmt.Sprintf("At full power, part fan full, it never gets to %s: it stalls at %s", unit.Celsius(h.target),
		unit.Celsius(h.plant.Settle(h.plant.DutyLimit, heat.FanFull, h.plant.AmbientC)))
}

// windowBars returns windows that follow each other without overlap, each at
// the level that it wants, and when the last one begins; below 0 where S is
// never low enough, or never gets so far.
func windowBars(h heatUp, w riseWanted) (bars []plot.Bar, last float64) {
	last, gets := h.full.Cross(w.untilC)
	if !gets || h.plant.AmbientC >= w.untilC {
		last = -1
	}
	end := h.seconds
	if last >= 0 {
		end = last
	}
	for t := 0.0; t+w.windowS <= end && len(bars) < 200; {
		goal := h.full.Sensor(t) + w.riseC
		bars = append(bars, plot.Bar{From: plot.Point{X: t, Y: goal}, ToX: t + w.windowS})
		t += w.windowS
	}
	if last >= 0 {
		bars = append(bars, plot.Bar{From: plot.Point{X: last, Y: w.untilC + w.riseC}, ToX: last + w.windowS})
	}
	return bars, last
}
