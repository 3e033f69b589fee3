package rules

import (
	"math"

	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/rules/unit"
)

// modelTolerance is how far off the configured power may be: common practice, no source.
const modelTolerance = 0.15

var heaterModel = &Rule{
	ID:      "heater-model",
	Level:   Error,
	Summary: "Model-based control was told a heater power that is not the new heater's.",
	Doc: `actual_w = rated_w · (supply_v / rated_v)²; for a PTC heater the power of its
table at the reference temperature of the model, or in the middle of print_c
where the model has none.
Error: told and actual power differ by more than 15 % of the actual one (common
practice, no source). Warning where a PTC heater comes without hot_w.
Values: configured_w, actual_w. Change: the told power. The rest of the model is
measured, not computed: see pid-stale.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		l := &in.Printer.Hotend.Loop
		power := &l.ModelPowerW
		switch {
		case l.Control.State == parser.Unknown && power.State != parser.Absent:
			report(cannotTell(Warning, &l.Control))
			return
		case l.Control.Value != parser.ControlModel || power.State == parser.Absent:
			return
		case power.State == parser.Unknown:
			report(cannotTell(Warning, power))
			return
		case l.ModelRefC.State == parser.Unknown:
			report(cannotTell(Warning, &l.ModelRefC))
			return
		}
		h := &in.Sheet.New.Heater
		at, where := referenceC(in), ""
		if h.Kind.Value == sheet.PTC {
			if !h.HotW.Given {
				report(Findingf(Warning, placed(power.At, h.HotW.At),
					"measure this PTC heater hot and give hot_w in the sheet: its power falls with "+
						"temperature, so whether the model's %s are right cannot be told",
					unit.Watts(power.Value)))
				return
			}
			where = " at " + unit.Celsius(at)
		}
		actual := heaterOf(in).Power(at)
		if math.Abs(power.Value-actual) <= modelTolerance*actual+rounding {
			return
		}
		rounded := math.Round(actual*10) / 10
		report(Findingf(Error, placed(power.At, h.RatedW.At),
			"tell the model a heater of %s, and measure the rest of it again: it was told %s, the new one "+
				"gives %s%s, and it misjudges every step",
			unit.Watts(rounded), unit.Watts(power.Value), unit.Watts(actual), where).
			With(Values{"configured_w": power.Value, "actual_w": actual}).
			Change(power.To(rounded)))
	},
}

// referenceC is where the power of a model belongs to.
func referenceC(in *Input) float64 {
	if ref := &in.Printer.Hotend.Loop.ModelRefC; ref.Known() {
		return ref.Value
	}
	span := in.Sheet.New.PrintC.Value
	return (span[0] + span[1]) / 2
}
