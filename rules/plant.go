package rules

import (
	"strings"

	"preflash/parser"
	"preflash/rules/heat"
)

// plantOf gives the hotend that goes in, as the heat model wants it, and which
// figures of its block the sheet leaves to be assumed.
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
	perKelvin := func(w float64) string { return figure(w, 3) + " W/K" }
	var names []string
	for _, f := range [...]struct {
		figure heat.Figures
		text   func() string
	}{
		{heat.Capacity, func() string { return "heat capacity " + figure(p.CapacityJPerK, 1) + " J/K" }},
		{heat.Loss, func() string { return "loss " + perKelvin(p.LossWPerK) }},
		{heat.LossFan, func() string { return "loss with the part fan " + perKelvin(p.LossFanWPerK) }},
		{heat.Lag, func() string { return "sensor lag " + seconds(p.LagS) }},
	} {
		if figures&f.figure != 0 {
			names = append(names, f.text())
		}
	}
	return names
}

// ifAssumed says which figures were assumed and what follows when they are off
// by heat.Spread, or nothing where the sheet gives them all. An uncertain
// conclusion is one that flips inside that range.
func ifAssumed(p heat.Plant, assumed heat.Figures, then string, uncertain bool) string {
	names := namesOf(p, assumed)
	if len(names) == 0 {
		return ""
	}
	text := "; assumed, since the sheet gives none: " + strings.Join(names, ", ") +
		"; with those up to " + percent(heat.Spread) + " off, " + then
	if uncertain {
		text += ", so this is uncertain until the block is measured"
	}
	return text
}

// loopOf gives the control loop of the configuration. A figure that its style
// lacks keeps the value that goes with the form of the loop.
func loopOf(in *Input) heat.Loop {
	l := &in.Printer.Hotend.Loop
	or := func(s *parser.Setting[float64], usual float64) float64 {
		if s.Key == "" || !s.Known() {
			return usual
		}
		return s.Value
	}
	loop := heat.Loop{
		OnOff: l.Control.Value == parser.ControlOnOff,
		BandC: or(&l.BandC, 0),
		Kp:    l.Kp.Value, Ki: l.Ki.Value, Kd: l.Kd.Value,
		RangeC: or(&l.RangeC, 10), FilterOld: or(&l.FilterOld, 0.95), SmoothS: or(&l.SmoothS, 1),
	}
	if l.Form == parser.LoopClamped {
		loop.Form = heat.LoopClamped
	}
	for i := range l.PowerLimits {
		if s := &l.PowerLimits[i]; s.Key == parser.PowerBelowRange && s.Known() {
			loop.FarLimit = min(s.Value, in.Sheet.New.Heater.DutyLimit.Value)
		}
	}
	return loop
}

// watchOf gives the hotend's runaway protection as far as it is on; the
// setting is one that cannot be told.
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
		}}, nil
	}
	watch := heat.Watch{Form: heat.WindowWatch, Hold: heat.HoldWatch{
		HysteresisC: w.HysteresisC.Value, PeriodS: w.HoldPeriodS.Value,
	}}
	if riseOn(w) {
		watch.Rise = heat.RiseWatch{RiseC: w.RiseC.Value, WindowS: w.RiseWindowS.Value, MarginC: w.ArmMarginC.Value}
	}
	return watch, nil
}

func riseOn(w *parser.Watch) bool { return w.RiseOn.Known() && w.RiseOn.Value }
