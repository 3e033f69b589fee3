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
is too high for the table of the sensor is lowered.
Values, for that: max_temp_c, most_c.
Source: the firmware of the style, as published.`,
	Check: func(in *Input, report func(Finding)) {
		remarks(parser.RemarkBroken, Error)(in, report)
		s := &in.Printer.Limits.MaxTemp
		if most := math.Floor(s.Most + rounding); s.Known() && s.Most > 0 && s.Value > s.Most {
			f := Sayf(Error, placed(s.At, sensorAt(in)), "lower the %s to %s: it is %s, and with this sensor definition the firmware refuses to build above that",
				s.Key, celsius(most), celsius(s.Value)).
				With(Values{"max_temp_c": s.Value, "most_c": most})
			if _, another := in.Changed[parser.HotendSensor]; !another { // whose table may reach further
				f = f.Change(s.To(most))
			}
			report(f)
		}
	},
}
