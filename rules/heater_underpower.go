package rules

import "preflash/rules/unit"

var heaterUnderpower = &Rule{
	ID:      "heater-underpower",
	Level:   Warning,
	Figure:  FigureOf{"ratio", "%", Lower},
	Summary: "The supply's voltage is too low for the heater to give its rated power.",
	Doc: heaterRatioFormula + "Warning: ratio below 0.7 (common practice, no source)." +
		heaterRatioValues,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		h, supply := &in.Sheet.New.Heater, in.Sheet.Printer.SupplyV.Value
		if ratio := voltageRatio(h, supply); ratio < underpowerRatio-rounding {
			report(Findingf(Warning, h.RatedV.At,
				"fit a heater for %s, or correct the sheet: one of %s at %s gives only %s there, heats "+
					"slowly and may not hold the temperature",
				unit.Volts(supply), unit.Watts(h.RatedW.Value), unit.Volts(h.RatedV.Value),
				unit.Watts(h.RatedW.Value*ratio)).
				With(heaterFigures(h.RatedW.Value, ratio)))
		}
	},
}
