package rules

import "preflash/parser"

var minTempHigh = &Rule{
	ID:      "min-temp-high",
	Level:   Error,
	Summary: "The min temp is no lower than the room's, so the printer faults when cold.",
	Doc: `Error: min temp at or above printer.ambient_c: a cold hotend reads as a broken
sensor. Below the coldest room that the printer stands in, 5 °C is usual (common
practice, no source).
Values: min_temp_c, ambient_c.
No change: the owner knows how cold the room gets.`,
	Check: func(in *Input, report func(Finding)) {
		s, ambient := &in.Printer.Limits.MinTemp, &in.Sheet.Printer.AmbientC
		switch {
		case s.State == parser.Unknown:
			report(cannotTell(Warning, s))
			return
		case s.Key == "" || !s.Known() || s.Value < ambient.Value:
			return
		}
		effect := "the printer will not start"
		if in.Printer.Limits.MinWhileHeating {
			effect = "the firmware stops with a sensor fault as soon as the hotend is to heat"
		}
		report(Sayf(Error, placed(s.At, ambient.At), "the %s is %s, and the room has %s: %s; set it below the coldest that the room gets, such as 5 °C",
			s.Key, celsius(s.Value), orAssumed(celsius(ambient.Value), *ambient), effect).
			With(Values{"min_temp_c": s.Value, "ambient_c": ambient.Value}))
	},
}
