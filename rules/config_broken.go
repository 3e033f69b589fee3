package rules

import (
	"math"

	"preflash/parser"
	"preflash/rules/unit"
)

var configBroken = &Rule{
	ID:      "config-broken",
	Level:   Error,
	Whole:   true,
	Summary: "The configuration stops its own build.",
	Doc: `The configuration itself says, in a part that is used, that it must not be
built, or holds what the firmware refuses to start with or the compiler refuses,
such as a condition that is no expression, an option of another generation, or a
value that the firmware's own checks do not accept. Not so where a part of it is
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
			at, values := placed(s.At, sensorAt(in)), Values{"max_temp_c": s.Value, "most_c": most}
			f := Findingf(Error, at, "lower the %s to %s: it is %s, and with this sensor definition the "+
				"firmware refuses to build above that",
				s.Key, unit.Celsius(most), unit.Celsius(s.Value)).With(values)
			c, _ := ceilingOf(in, func(Finding) {})
			switch _, another := in.Changed[parser.HotendSensor]; {
			case most-c.marginK < max(in.Sheet.New.PrintC.Value[0], coldestPreset):
				f = Findingf(Error, at,
					"take another sensor definition: with this one the firmware refuses to build with a "+
						"%s above %s, which is too low to print, and it is %s",
					s.Key, unit.Celsius(most), unit.Celsius(s.Value)).With(values)
			case !another: // else its table may reach further
				f = f.Change(s.To(most))
			}
			report(f)
		}
	},
}
