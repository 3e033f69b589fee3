package rules

import "math"

// fanTolerance is how far a fan's supply may be off: common practice, no
// source.
const fanTolerance = 0.15

var fanVoltage = &Rule{
	ID:      "fan-voltage",
	Level:   Error,
	Summary: "The heat-break fan gets a voltage that it is not made for.",
	Doc: `Error: output_v more than 15 % above or below the fan's rated_v (common
practice, no source). Where the sheet gives no output_v it is taken as supply_v.
Silent where rated_v is not given.
Values: rated_v, output_v. No change: it is wiring.`,
	Check: func(in *Input, report func(Finding)) {
		rated, output := &in.Sheet.New.Fan.RatedV, &in.Sheet.New.Fan.OutputV
		if !rated.Given || math.Abs(output.Value/rated.Value-1) <= fanTolerance+rounding {
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
