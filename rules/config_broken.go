package rules

import (
	"math"

	"preflash/parser"
)

var configBroken = &Rule{
	Whole:   true,
	ID:      "config-broken",
	Level:   Error,
	Summary: "The configuration stops its own build.",
	Doc: `The configuration itself says, in force, that it must not be built, or holds
what the firmware refuses to start with or the compiler refuses, such as a
condition that is no expression, an option of another generation, or a value
that the firmware's own checks do not accept. Not so where a part of it is
unknown. No change: the finding says what stops the build. Only a max temp that
is too high for the table of the sensor is lowered, where targets up to the
lower figure of new.print_c, and to 150 °C, remain: else the definition is at
fault.
Values, for that: max_temp_c, most_c.
Source: the firmware of the style, as published.`,
	Check: func(in *Input, report func(Finding)) {
		remarks(parser.RemarkBroken, Error)(in, report)
		s := &in.Printer.Limits.MaxTemp
		if most := math.Floor(s.Most + rounding); s.Known() && s.Most > 0 && s.Value > s.Most {
			f := Sayf(Error, placed(s.At, sensorAt(in)), "the firmware refuses to build: with this sensor definition the %s must not be above %s, and it is %s",
				s.Key, celsius(most), celsius(s.Value)).
				With(Values{"max_temp_c": s.Value, "most_c": most})
			c, _ := ceilingOf(in, func(Finding) {})
			switch _, another := in.Changed[parser.HotendSensor]; {
			case most-c.marginK < max(in.Sheet.New.PrintC.Value[0], coldestPreset):
				f.Message += "; that is too low to print: take another definition"
			case another: // whose table may reach further
				f.Message += "; lower it"
			default:
				f.Message += "; lower it"
				f = f.Change(s.To(most))
			}
			report(f)
		}
	},
}
