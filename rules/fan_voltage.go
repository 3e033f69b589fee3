package rules

import (
	"math"

	"preflash/parser"
	"preflash/rules/unit"
)

// fanTolerance is how far a fan's supply may be off: common practice, no source.
const fanTolerance = 0.15

var fanVoltage = &Rule{
	ID:      "fan-voltage",
	Level:   Error,
	Summary: "The heat-break fan gets a voltage that it is not made for.",
	Doc: `gets_v = output_v, times the share of full power at which the configuration
runs the fan, which acts as its mean does*.
Error: gets_v more than 15 %* above or below the fan's rated_v. Warning: only
the mean fits, and its pulses are that far above.
Where the sheet gives no output_v it is taken as supply_v. Silent where rated_v
is not given. A fan on the supply (always_on) gets output_v; one that gets no
power at all is coldside-fan's.
Values: rated_v, output_v (gets_v). Change: full power, where that fits.
* Common practice, no source.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		rated, output := &in.Sheet.New.Fan.RatedV, &in.Sheet.New.Fan.OutputV
		if !rated.Given {
			return
		}
		off := func(v float64) bool { return math.Abs(v/rated.Value-1) > fanTolerance+rounding }
		gets, power := output.Value, fanPower(in)
		switch {
		case power == nil:
		case power.State == parser.Unknown:
			report(cannotTell(Warning, power))
		case power.Known():
			gets *= power.Value
		}
		assumed := ""
		if !output.Given {
			assumed = " (assumed: that of the supply)"
		}
		effect := "it turns too slowly or not at all, and the heat break clogs"
		if gets > rated.Value {
			effect = "it burns out, and then the heat break clogs"
		}
		values := Values{"rated_v": rated.Value, "output_v": gets}
		switch {
		case off(gets) && gets == output.Value:
			report(Findingf(Error, rated.At,
				"fit a heat-break fan for %s%s, or feed this one through a converter: it is made for %s; %s",
				unit.Volts(gets), assumed, unit.Volts(rated.Value), effect).With(values))
		case off(gets):
			f := Findingf(Error, placed(power.At, rated.At),
				"%s: the heat-break fan is made for %s and gets %s, %s of %s%s; %s",
				powerAction(power, off(output.Value)), unit.Volts(rated.Value), unit.Volts(gets),
				unit.Percent(power.Value), unit.Volts(output.Value), assumed, effect).With(values)
			if !off(output.Value) {
				f = f.Change(power.To(1))
			}
			report(f)
		case output.Value > rated.Value && off(output.Value):
			report(Findingf(Warning, rated.At, "fit a heat-break fan for %s%s, or feed this one through a "+
				"converter: it is made for %s, which it gets only in the mean, in pulses that not every "+
				"fan is made for",
				unit.Volts(output.Value), assumed, unit.Volts(rated.Value)).With(values))
		}
	},
}

// fanPower is the share of full power at which the configuration runs the fan,
// where it drives it.
func fanPower(in *Input) *parser.Setting[float64] {
	c := &in.Printer.ColdSide
	if in.Sheet.New.Fan.AlwaysOn.Value || c.Fan.State == parser.Absent || c.Fan.State == parser.Off ||
		c.Power.State == parser.Absent {
		return nil
	}
	if c.Power.Known() && c.Power.Value <= 0 {
		return nil // coldside-fan speaks
	}
	return &c.Power
}

// powerAction says what to do about a fan's power that is off.
func powerAction(power *parser.Setting[float64], voltageOff bool) string {
	if voltageOff {
		return "correct the " + string(power.Key) + ", or fit another fan"
	}
	return "raise the " + string(power.Key) + " to " + unit.Percent(1)
}
