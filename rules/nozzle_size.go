package rules

import (
	"math"

	"preflash/parser"
	"preflash/rules/unit"
)

var nozzleSize = &Rule{
	ID:      "nozzle-size",
	Level:   Warning,
	Summary: "The configuration was written for another nozzle diameter.",
	Doc: `Warning: the nozzle diameter of the configuration differs from
new.nozzle.diameter_mm. Silent where either is not given. It also names a
written limit of a line's cross section below 4 · diameter², which is what the
sections style's firmware takes by itself, as it is published.
Values: configured_mm, diameter_mm. Change: the diameter.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		s, nozzle := &in.Printer.Flow.NozzleMM, &in.Sheet.New.Nozzle.DiameterMM
		switch {
		case !nozzle.Given:
		case s.State == parser.Unknown:
			report(cannotTell(Warning, s))
		case s.Known() && math.Abs(s.Value-nozzle.Value) > rounding:
			report(Findingf(Warning, placed(s.At, nozzle.At),
				"set the %s to %s, here and in the slicer: that is the new nozzle, and the configuration "+
					"says %s",
				s.Key, unit.Millimetres(nozzle.Value), unit.Millimetres(s.Value)).
				Explain("%s", keepsSection(in, nozzle.Value)).
				With(Values{"configured_mm": s.Value, "diameter_mm": nozzle.Value}).
				Change(s.To(nozzle.Value)))
		}
	},
}

// keepsSection says that the largest cross section of a line does not follow the
// nozzle, where it would then be too small.
func keepsSection(in *Input, diameterMM float64) string {
	section, follows := &in.Printer.Flow.CrossMM2, 4*diameterMM*diameterMM
	if section.State != parser.Set || section.Value >= follows-rounding {
		return ""
	}
	return "the " + string(section.Key) + " is written as " + unit.Area(section.Value) +
		" and does not follow the nozzle: without it the firmware takes " + unit.Area(follows) +
		", and a wider line may be refused; take it out, or raise it"
}
