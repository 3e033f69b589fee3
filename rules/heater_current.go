package rules

import (
	"preflash/parser"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

var heaterCurrent = &Rule{
	ID:      "heater-current",
	Level:   Error,
	Figure:  FigureOf{"peak_a", "A", Higher},
	Summary: "The heater draws more current than its output is rated for.",
	Doc: `lowest resistance = rated_v² / largest power in rated_w and hot_w
peak_a = supply_v / lowest resistance, times the heaters that the configuration
runs together: they share what feeds them, if not an output
Error: peak_a, with 5 % more power than the label (common practice, no source),
above printer.output_a. A duty limit lowers the mean, not the peak: the output
is either on or off. Silent where output_a is not given.
Values: peak_a, limit_a. No change: it is wiring.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		limit := &in.Sheet.Printer.OutputA
		if !limit.Given {
			return
		}
		h, supply := &in.Sheet.New.Heater, in.Sheet.Printer.SupplyV.Value
		if s := &in.Printer.Hotend.Outputs; s.State == parser.Unknown {
			report(cannotTell(Warning, s))
		}
		peak := outputs(in) * peakW(h, supply) / supply
		if peak*(1+heat.PowerSpread) <= limit.Value+rounding {
			return
		}
		more := ""
		if peak <= limit.Value+rounding {
			more = ", or " + unit.Amperes(peak*(1+heat.PowerSpread)) + " where it gives " +
				unit.Percent(heat.PowerSpread) + " more than its label,"
		}
		f := Findingf(Error, limit.At,
			"fit a weaker heater, or drive it through a part rated for the current: it draws up to %s%s, "+
				"and the output is rated for %s",
			unit.Amperes(peak), more, unit.Amperes(limit.Value)).
			Explain("on the %s supply%s", unit.Volts(supply), together(in)).
			With(Values{"peak_a": peak, "limit_a": limit.Value})
		if share := dutyLimit(in); share < 1 {
			f = f.Explain("the duty limit of %s lowers the mean current, not this peak", unit.Percent(share))
		}
		report(f)
	},
}
