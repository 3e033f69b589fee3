package rules

import (
	"preflash/rules/heat"
	"preflash/rules/unit"
)

// How much of its rating a supply gives day by day: common practice, no source.
const supplyShare = 0.8

var supplyBudget = &Rule{
	ID:      "supply-budget",
	Level:   Error,
	Figure:  FigureOf{"share", "%", Higher},
	Summary: "The heater and all else ask for more than the power supply gives.",
	Doc: `load_w = other_load_w + rated power · (supply_v / rated_v)², with the largest
power in rated_w and hot_w, times the heaters that the configuration runs
together; share = load_w / supply_w
Warning: share above 0.8; error: above 1; both with 5 % more power than the
heater's label (common practice, no source). Silent where supply_w is not given.
Values: load_w, supply_w, share. No change: it is wiring.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		p := &in.Sheet.Printer
		if !p.SupplyW.Given {
			return
		}
		heater := outputs(in) * peakW(&in.Sheet.New.Heater, p.SupplyV.Value)
		load := heater + p.OtherLoadW.Value
		share := load / p.SupplyW.Value
		worst := (load + heat.PowerSpread*heater) / p.SupplyW.Value
		if worst <= supplyShare+rounding {
			return
		}
		parts := unit.Watts(heater) + " for the heater" + together(in) + " and " +
			unit.Watts(p.OtherLoadW.Value) + " for all else"
		if !p.OtherLoadW.Given {
			parts = "the heater alone" + together(in) + "; the sheet does not give other_load_w"
		}
		if (share <= supplyShare+rounding) || (share <= 1+rounding && worst > 1+rounding) {
			parts += "; " + unit.Percent(worst) + " where the heater gives " +
				unit.Percent(heat.PowerSpread) + " more than its label"
		}
		level, effect := Warning, "it should not give above "+unit.Percent(supplyShare)+" for long"
		if worst > 1+rounding {
			level, effect = Error, "shuts down or overheats"
		}
		report(Findingf(level, p.SupplyW.At,
			"fit a larger supply or a weaker load: at full load the %s supply gives %s, %s of its rating, "+
				"and %s",
			unit.Watts(p.SupplyW.Value), unit.Watts(load), unit.Percent(share), effect).
			Explain("%s", parts).
			With(Values{"load_w": load, "supply_w": p.SupplyW.Value, "share": share}))
	},
}
