package rules

import (
	"fmt"
	"math"

	"preflash/parser"
)

// fanTolerance is how far a fan's supply may be off: common practice, no
// source.
const fanTolerance = 0.15

var fanVoltage = &Rule{
	ID:      "fan-voltage",
	Level:   Error,
	Summary: "The heat-break fan gets a voltage that it is not made for.",
	Doc: `gets = output_v · the share of full power at which the configuration runs it
Error: gets more than 15 % above or below the fan's rated_v (common practice, no
source). Warning: only the mean is right, since the configuration runs the fan
below full power. Where the sheet gives no output_v it is taken as supply_v.
Silent where rated_v is not given.
Values: rated_v, output_v, power (of a fan below full power, its share). No
change: it is wiring, or a speed that somebody chose.`,
	Check: func(in *Input, report func(Finding)) {
		rated, output := &in.Sheet.New.Fan.RatedV, &in.Sheet.New.Fan.OutputV
		off := func(v float64) bool { return math.Abs(v/rated.Value-1) > fanTolerance+rounding }
		power := &in.Printer.ColdSide.Power
		if fan := &in.Printer.ColdSide.Fan; in.Sheet.New.Fan.AlwaysOn.Value || fan.Key == "" || fan.State != parser.Set {
			power = &parser.Setting[float64]{} // not driven, or by what is not known
		}
		switch {
		case !rated.Given:
			return
		case power.State == parser.Unknown:
			report(cannotTell(Warning, power))
		case power.Key != "" && power.Known() && power.Value < 1:
			slowFan(in, power, off, report)
			return
		}
		if !off(output.Value) {
			return
		}
		effect := "it turns too slowly or not at all, and the heat break clogs"
		if output.Value > rated.Value {
			effect = "it burns out, and then the heat break clogs"
		}
		from := volts(output.Value)
		if !output.Given {
			from += " (assumed: that of the supply)"
		}
		report(Sayf(Error, rated.At, "the heat-break fan is made for %s and gets %s: %s; fit a fan for that voltage, or feed it through a converter",
			volts(rated.Value), from, effect).
			With(Values{"rated_v": rated.Value, "output_v": output.Value}))
	},
}

// slowFan judges a fan that the configuration runs below full power: it gets the
// output's voltage in pulses.
func slowFan(in *Input, power *parser.Setting[float64], off func(float64) bool, report func(Finding)) {
	rated, output := in.Sheet.New.Fan.RatedV.Value, in.Sheet.New.Fan.OutputV.Value
	values := Values{"rated_v": rated, "output_v": output, "power": power.Value}
	at := placed(power.At, in.Sheet.New.Fan.RatedV.At)
	pulses := fmt.Sprintf("the heat-break fan is made for %s, and the %s is %s: it gets %s in pulses, %s in the mean",
		volts(rated), power.Key, percent(power.Value), volts(output), volts(output*power.Value))
	switch mean := output * power.Value; {
	case off(mean) && mean < rated:
		report(Sayf(Error, at, "%s: it turns too slowly or not at all, and the heat break clogs; raise its speed, or fit another fan", pulses).With(values))
	case off(mean):
		report(Sayf(Error, at, "%s: it burns out, and then the heat break clogs; fit a fan for that voltage, or feed it through a converter", pulses).With(values))
	case off(output):
		report(Sayf(Warning, at, "%s: not every fan stands that; fit a fan for %s, or feed it through a converter", pulses, volts(output)).With(values))
	}
}
