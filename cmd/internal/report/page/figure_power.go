package page

import (
	"fmt"

	"preflash/cmd/internal/plot"
	"preflash/rules"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

// headroomFigure compares the power that there is with the power that it takes.
func headroomFigure(s *swap) *figure {
	in := s.before
	p := rules.Plant(in)
	low, high := printRange(in)
	flow := in.Sheet.New.Nozzle.MaxFlowMM3S
	rated, _ := rules.Rating(in)
	from, to := min(p.AmbientC, low), max(high, rated)
	if !(p.AmbientC < high) {
		return nil
	}
	needs := func(l heat.Load) func(float64) float64 {
		return func(t float64) float64 { return p.Conductance(l) * (t - p.AmbientC) }
	}
	gives := func(t float64) float64 { return p.Power(t) * p.DutyLimit }
	full := heat.Load{Fan: 1, FlowMM3S: flow.Value}
	fine := grid(from, to, 5)
	pl := &plot.Plot{
		ID: s.id,
		Desc: "Power over the temperature of the block: what the heater gives at full duty, " +
			"and what it takes to hold the temperature with the part fan off, with it full, " +
			"and with plastic melted.",
		X:      plot.Axis{Label: "block temperature, °C"},
		Y:      plot.Axis{Label: "power, W", Include: []float64{0}},
		Strips: []plot.Strip{printStrip(in)},
		Lines: []plot.Line{
			{Name: "the heater gives", Points: sampled(fine, gives)},
			{Name: "needed, fan off", Style: 2, Points: sampled(fine, needs(heat.Load{}))},
			{Name: "needed, fan full", Style: 3, Points: sampled(fine, needs(heat.FanFull))},
		},
	}
	head := []string{"block, °C", "heater gives, W", "fan off, W", "fan full, W"}
	if flow.Given {
		pl.Lines = append(pl.Lines, plot.Line{Name: "needed, fan full and " + unit.FlowRate(flow.Value),
			Style: 1, Points: sampled(fine, needs(full))})
		head = append(head, "fan full and melting, W")
	}
	rate(in, pl, &pl.X, to)
	f := figureOf(pl, powerTitle(p, high, flow.Value), flowNote(flow.Given), assumedNote(in))
	f.table(head...)
	for _, t := range grid(from, to, 25) {
		row := []float64{t, gives(t), needs(heat.Load{})(t), needs(heat.FanFull)(t)}
		if flow.Given {
			row = append(row, needs(full)(t))
		}
		f.row(1, row...)
	}
	return f
}

func powerTitle(p heat.Plant, high, flow float64) string {
	h := p.Headroom(high, flow)
	text := fmt.Sprintf("At %s the heater gives %s, and %s are needed: %s", unit.Celsius(high),
		unit.Watts(h.AvailableW), unit.Watts(h.LossW+h.MeltW), unit.Percent(h.Ratio))
	if h.Ratio < 1 && h.FitsMM3S > 0 && flow > 0 {
		text += fmt.Sprintf("; with the fan full, a flow of %s fits", unit.FlowRate(h.FitsMM3S))
	}
	return text
}

func flowNote(given bool) string {
	if given {
		return ""
	}
	return "Melting is left out, as the sheet gives no max_flow_mm3_s."
}
