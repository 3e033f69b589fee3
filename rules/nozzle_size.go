package rules

import (
	"math"

	"preflash/parser"
)

var nozzleSize = &Rule{
	ID:      "nozzle-size",
	Level:   Warning,
	Summary: "The configuration was written for another nozzle diameter.",
	Doc: `Warning: the nozzle diameter of the configuration differs from
new.nozzle.diameter_mm. Silent where either is not given.
Values: configured_mm, diameter_mm. Change: the diameter.`,
	Check: func(in *Input, report func(Finding)) {
		s, nozzle := &in.Printer.Flow.NozzleMM, &in.Sheet.New.Nozzle.DiameterMM
		switch {
		case !nozzle.Given || s.Key == "":
		case s.State == parser.Unknown:
			report(cannotTell(Warning, s))
		case s.Known() && math.Abs(s.Value-nozzle.Value) > rounding:
			report(Sayf(Warning, placed(s.At, nozzle.At), "the %s is %s in the configuration, and the new nozzle has %s; set it to that, and do the same in the slicer",
				s.Key, millimetres(s.Value), millimetres(nozzle.Value)).
				With(Values{"configured_mm": s.Value, "diameter_mm": nozzle.Value}).
				Change(s.To(nozzle.Value)))
		}
	},
}
