package rules

import (
	"fmt"
	"math"

	"preflash/parser"
	"preflash/rules/unit"
)

// coldestPreset is the lowest preset, °C, that a change makes or leaves room for:
// below it nothing melts (common practice, no source).
const coldestPreset = 150

var presetOver = &Rule{
	ID:      "preset-over",
	Level:   Error,
	Figure:  FigureOf{"preset_c", "°C", Higher},
	Summary: "A preheat preset lies above the highest temperature that can be asked for.",
	Doc: `target limit = max temp − target margin
Error: a preset above the target limit: it heats to less than it says, or not
at all.
Values: preset_c, target_limit_c.
Change: down to the target limit, if that is 150 °C or more. There is none where
temp-reach raises the max temp of this run far enough. Note, without a change:
an automatic target may be raised further than that; the firmware stops it
there.`,
	Check: func(in *Input, report func(Finding)) {
		presets, auto := in.Printer.Limits.Presets, &in.Printer.Limits.AutoMax
		raised := auto.Known() && !in.Printer.Limits.AutoAlways
		if len(presets) == 0 && !raised {
			return
		}
		c, ok := ceilingOf(in, report)
		if !ok {
			return
		}
		if raised && auto.Value > c.targetC()+rounding {
			report(Findingf(Note, placed(auto.At, in.Printer.Limits.MaxTemp.At),
				"know that the %s is %s, and the firmware takes targets up to %s: there it stops",
				auto.Key, unit.Celsius(auto.Value), unit.Celsius(c.targetC())).
				With(Values{"preset_c": auto.Value, "target_limit_c": c.targetC()}))
		}
		later := c
		if !in.NoSheet {
			later = c.afterChanges(&in.Sheet.New)
		}
		if to, changed := in.Changed[parser.MaxTemp].(float64); later.maxC > c.maxC &&
			!(changed && to > c.maxC) {
			later.maxC = c.maxC // temp-reach proposes nothing
		}
		for i := range presets {
			s := &presets[i]
			switch {
			case s.State == parser.Unknown:
				report(cannotTell(Warning, s))
			case !s.Known() || s.Value <= c.targetC()+rounding:
			default:
				f := Findingf(Error, placed(s.At, in.Printer.Limits.MaxTemp.At), "").
					Of(s.Key).With(Values{"preset_c": s.Value, "target_limit_c": c.targetC()})
				action, which := "", string(s.Key)
				limit := math.Floor(later.targetC() + rounding)
				switch {
				case s.Value <= later.targetC()+rounding:
					action = "raise the max temp to " + unit.Celsius(later.maxC) + ", and it fits"
				case limit < coldestPreset:
					action = "correct the limits first, no preset that melts anything fits"
				default:
					action, which = "lower "+which+" to "+unit.Celsius(limit), "it"
					f = f.Change(s.To(limit))
				}
				f.Message = fmt.Sprintf("%s: %s asks for %s, and the firmware takes targets up to %s",
					action, which, unit.Celsius(s.Value), unit.Celsius(c.targetC()))
				report(f)
			}
		}
	},
}
