package rules

import (
	"strings"

	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

// plantOf gives the hotend that goes in, as the heat model wants it, and which
// figures of its block the sheet leaves to be assumed. Its power falls on
// beyond a table, for rules in which too little power matters.
func plantOf(in *Input) (heat.Plant, heat.Figures) {
	b := &in.Sheet.New.Block
	p := heat.Plant{
		Heater: heaterOf(in),
		Block: heat.Block{
			CapacityJPerK: b.HeatCapacityJPerK.Value,
			LossWPerK:     b.LossWPerK.Value,
			LossFanWPerK:  b.LossFanWPerK.Value,
			LagS:          b.SensorLagS.Value,
			AmbientC:      in.Sheet.Printer.AmbientC.Value,
		},
	}
	p.DutyLimit = dutyLimit(in)
	var assumed heat.Figures
	for _, f := range [...]struct {
		figure heat.Figures
		given  bool
	}{
		{heat.Capacity, b.HeatCapacityJPerK.Given},
		{heat.Loss, b.LossWPerK.Given},
		{heat.LossFan, b.LossFanWPerK.Given},
		{heat.Lag, b.SensorLagS.Given},
	} {
		if !f.given {
			assumed |= f.figure
		}
	}
	return p, assumed
}

// namesOf names figures of the block with their values.
func namesOf(p heat.Plant, figures heat.Figures) []string {
	perKelvin := func(w float64) string { return unit.Figure(w, 3) + " W/K" }
	var names []string
	for _, f := range [...]struct {
		figure heat.Figures
		text   func() string
	}{
		{heat.Capacity, func() string { return "heat capacity " + unit.Figure(p.CapacityJPerK, 1) + " J/K" }},
		{heat.Loss, func() string { return "loss " + perKelvin(p.LossWPerK) }},
		{heat.LossFan, func() string { return "loss with the part fan " + perKelvin(p.LossFanWPerK) }},
		{heat.Lag, func() string { return "sensor lag " + unit.Seconds(p.LagS) }},
	} {
		if figures&f.figure != 0 {
			names = append(names, f.text())
		}
	}
	return names
}

// ranges is how sure a rule can be: its figures in play, and those of them that
// are assumed.
type ranges struct {
	plant           heat.Plant
	inPlay, assumed heat.Figures
}

func rangesOf(p heat.Plant, assumed, inPlay heat.Figures) ranges {
	return ranges{p, inPlay, assumed & inPlay}
}

func (r ranges) spreads() heat.Spreads { return heat.SpreadsOf(r.inPlay, r.assumed) }

// flips reports whether a verdict is another somewhere in the ranges.
func (r ranges) flips(verdict func(heat.Plant) bool) bool { return r.plant.Flips(r.spreads(), verdict) }

// span is the least and the largest of a figure in the ranges.
func (r ranges) span(figure func(heat.Plant) float64) (least, most float64) {
	return r.plant.Range(r.spreads(), figure)
}

// text says which figures were assumed, and what follows when figures are off
// by their ranges. Where the sheet gives them all it speaks only of a verdict
// that flips.
func (r ranges) text(then string, flips bool) string {
	names := namesOf(r.plant, r.assumed)
	if len(names) == 0 {
		if !flips {
			return ""
		}
		return "; with the power up to " + unit.Percent(heat.PowerSpread) + " and losses up to " +
			unit.Percent(heat.LossSpread) +
			" off, " + then + ", so this is uncertain"
	}
	text := "; assumed, since the sheet gives none: " + strings.Join(names, ", ") +
		"; with those up to " + unit.Percent(heat.Spread) + " off, " + then
	if flips {
		text += ", so this is uncertain until the block is measured"
	}
	return text
}

// loopCase is a loop as one generation and one board run it.
type loopCase struct {
	heat.Loop
	variant int    // boards of one generation share it
	name    string // of the generation
}

// loopsOf gives every way in which the configuration's loop may run, at the
// configured power limits and, where another is due, after this run.
func loopsOf(in *Input) []loopCase {
	variants := in.Printer.Hotend.Loop.Variants
	if len(variants) == 0 {
		variants = []parser.LoopVariant{{}}
	}
	var all []loopCase
	for i, v := range variants {
		samples := v.SamplesS
		if len(samples) == 0 {
			samples = []float64{0}
		}
		for _, s := range samples {
			now := loopOf(in, v)
			now.SampleS = s
			all = append(all, loopCase{now, i, v.Name})
			after, limit := now, in.Sheet.New.Heater.DutyLimit.Value
			after.Limit, after.FarLimit = min(now.Limit, limit), min(now.FarLimit, limit)
			if after != now {
				all = append(all, loopCase{after, i, v.Name})
			}
		}
	}
	return all
}

// loopOf gives the control loop of the configuration in one variant. A figure
// that its style lacks keeps the value that goes with the form of the loop.
func loopOf(in *Input, v parser.LoopVariant) heat.Loop {
	l := &in.Printer.Hotend.Loop
	or := func(s *parser.Setting[float64], usual float64) float64 {
		if !s.Known() {
			return usual
		}
		return s.Value
	}
	loop := heat.Loop{
		OnOff: l.Control.Value == parser.ControlOnOff,
		BandC: or(&l.BandC, 0),
		Kp:    l.Kp.Value, Ki: l.Ki.Value, Kd: l.Kd.Value,
		RangeC: or(&l.RangeC, 10), FilterOld: or(&l.FilterOld, 0.95), SmoothS: or(&l.SmoothS, 1),
		KeepsLast: v.KeepsLast, Limit: 1, FarLimit: 1,
	}
	if l.Form == parser.LoopClamped {
		loop.Form = heat.LoopClamped
	}
	for i := range l.PowerLimits {
		s := &l.PowerLimits[i]
		switch {
		case !s.Known():
		case s.Key == parser.PowerBelowRange:
			if v.OwnFar {
				loop.FarLimit = s.Value
			}
		default:
			loop.Limit = min(loop.Limit, s.Value)
		}
	}
	if !v.OwnFar {
		loop.FarLimit = loop.Limit
	}
	return loop
}

// watchOf gives the hotend's runaway protection as far as it is on; the
// setting is one that is unknown.
func watchOf(in *Input) (heat.Watch, *parser.Setting[float64]) {
	w := &in.Printer.Hotend.Watch
	if !w.On.Known() || !w.On.Value {
		return heat.Watch{}, nil
	}
	needs := []*parser.Setting[float64]{&w.RiseC, &w.RiseWindowS, &w.HysteresisC, &w.ErrorSumCS}
	if w.Form == parser.WatchWindow {
		needs = []*parser.Setting[float64]{&w.HysteresisC, &w.HoldPeriodS}
		if riseOn(w) {
			needs = append(needs, &w.RiseC, &w.RiseWindowS, &w.ArmMarginC)
		}
	}
	for _, s := range needs {
		if s.State == parser.Unknown {
			return heat.Watch{}, s
		}
	}
	if w.Form == parser.WatchSum {
		return heat.Watch{Form: heat.ErrorSumWatch, Sum: heat.SumWatch{
			HysteresisC: w.HysteresisC.Value, RiseC: w.RiseC.Value,
			WindowS: w.RiseWindowS.Value, LimitCS: w.ErrorSumCS.Value,
			SmoothS: loopOf(in, parser.LoopVariant{}).SmoothS,
		}}, nil
	}
	watch := heat.Watch{Form: heat.WindowWatch, Drop: heat.DropCheck{
		HysteresisC: w.HysteresisC.Value, PeriodS: w.HoldPeriodS.Value,
		SlowsFan: w.SlowsFan.Known() && w.SlowsFan.Value,
	}}
	if riseOn(w) {
		watch.Heating = heat.HeatingCheck{RiseC: w.RiseC.Value, WindowS: w.RiseWindowS.Value,
			MarginC: w.ArmMarginC.Value}
	}
	return watch, nil
}

func riseOn(w *parser.Watch) bool { return w.RiseOn.Known() && w.RiseOn.Value }

// labelOnly reports whether the power of a PTC heater is known cold alone: hot
// it is anything from coldShare of its label up.
func labelOnly(h *sheet.Heater) bool { return h.Kind.Value == sheet.PTC && !h.HotW.Given }

// labelLeast is the least share of its label that a PTC heater gives hot:
// common practice, no source.
const labelLeast = 0.4
