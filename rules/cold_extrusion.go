package rules

import (
	"preflash/parser"
	"preflash/rules/unit"
)

// coldestExtrudeC is the lowest temperature at which filament is pushed:
// common practice, no source.
const coldestExtrudeC = 150

var coldExtrusion = &Rule{
	ID:      "cold-extrusion",
	Level:   Error,
	Figure:  FigureOf{"min_extrude_c", "°C", Lower},
	Summary: "Nothing keeps the extruder from pushing cold filament.",
	Doc: `Pushing filament that is not molten grinds it, or strips the drive.
Error: the guard is off, or its temperature is no higher than the room's.
Warning: its temperature is below 150 °C (common practice, no source), or below
the lower figure of new.print_c where that is lower still.
Values: min_extrude_c, limit_c.
Change: the guard on; the temperature up to the limit.`,
	Check: func(in *Input, report func(Finding)) {
		guard, least := &in.Printer.Limits.ColdGuard, &in.Printer.Limits.MinExtrude
		limit := min(coldestExtrudeC, in.Sheet.New.PrintC.Value[0])
		values := Values{"min_extrude_c": nil, "limit_c": limit}
		switch {
		case guard.State == parser.Unknown:
			report(cannotTell(Warning, guard))
			return
		case guard.State == parser.Off || guard.Known() && !guard.Value:
			report(Findingf(Error, placed(guard.At, in.Sheet.New.PrintC.At),
				"switch the %s on: cold filament can be pushed, which grinds it or strips the drive",
				guard.Key).
				With(values).Change(guard.To(true)))
			return
		}
		switch least.State {
		case parser.Unknown:
			report(cannotTell(Warning, least))
			return
		case parser.Off:
			// guards at 0 °C
			least = &parser.Setting[float64]{Key: least.Key, State: parser.Off, Place: least.Place}
		case parser.Absent:
			return
		}
		if least.Value >= limit {
			return
		}
		values["min_extrude_c"] = least.Value
		level, effect := Warning,
			"filament that is not molten can be pushed, which grinds it or strips the drive"
		if least.Value <= in.Sheet.Printer.AmbientC.Value {
			level, effect = Error, "that is no warmer than the room, so the guard never stops anything"
		}
		report(Findingf(level, placed(least.At, in.Sheet.New.PrintC.At),
			"raise the %s to %s: it is %s, and %s",
			least.Key, unit.Celsius(limit), unit.Celsius(least.Value), effect).
			With(values).Change(least.To(limit)))
	},
}
