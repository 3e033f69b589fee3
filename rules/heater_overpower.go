package rules

import "preflash/rules/unit"

// The band of supply over rating in which a heater gives about its rated
// power: common practice, no source.
const (
	overpowerRatio  = 1.15
	underpowerRatio = 0.7
)

const (
	heaterRatioFormula = "actual_w = rated_w · ratio, ratio = (supply_v / rated_v)², since P = V²/R\n"
	heaterRatioValues  = "\nValues: rated_w, actual_w, ratio. No change: it is wiring."
)

var heaterOverpower = &Rule{
	ID:       "heater-overpower",
	Level:    Error,
	Unwaived: true,
	Figure:   FigureOf{"ratio", "%", Higher},
	Summary:  "The supply's voltage is too high for the heater.",
	Doc: heaterRatioFormula +
		"Error: ratio above 1.15 (common practice, no source). Cannot be waived." + heaterRatioValues,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		h, supply := &in.Sheet.New.Heater, in.Sheet.Printer.SupplyV.Value
		if ratio := voltageRatio(h, supply); ratio > overpowerRatio+rounding {
			report(Findingf(Error, h.RatedV.At,
				"fit a heater for %s, or correct the sheet: one of %s at %s gives %s there, %s times its "+
					"rating, and can overheat whatever the firmware does",
				unit.Volts(supply), unit.Watts(h.RatedW.Value), unit.Volts(h.RatedV.Value),
				unit.Watts(h.RatedW.Value*ratio), unit.Figure(ratio, 2)).
				With(heaterFigures(h.RatedW.Value, ratio)))
		}
	},
}

func heaterFigures(ratedW, ratio float64) Values {
	return Values{"rated_w": ratedW, "actual_w": ratedW * ratio, "ratio": ratio}
}
