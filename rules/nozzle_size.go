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
			f := Findingf(Warning, placed(s.At, nozzle.At),
				"set the %s to %s, here and in the slicer: that is the new nozzle, and the configuration "+
					"says %s",
				s.Key, unit.Millimetres(nozzle.Value), unit.Millimetres(s.Value))
			if cross, follows := &in.Printer.Flow.CrossMM2,
				4*nozzle.Value*nozzle.Value; cross.State == parser.Set && cross.Value < follows-rounding {
				f = f.Explain("the %s is written as %s and does not follow the nozzle: without it the "+
					"firmware takes %s, and a wider line may be refused; take it out, or raise it",
					cross.Key, unit.Area(cross.Value), unit.Area(follows))
			}
			report(f.With(Values{"configured_mm": s.Value, "diameter_mm": nozzle.Value}).
				Change(s.To(nozzle.Value)))
		}
	},
}
