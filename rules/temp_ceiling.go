package rules

import (
	"fmt"

	"preflash/parser"
	"preflash/rules/unit"
)

var tempCeiling = &Rule{
	ID:        "temp-ceiling",
	Level:     Error,
	MayLoosen: []parser.Key{parser.MinExtrude}, // a guard above the max temp comes down with it
	Hides:     []string{"preset-over"},
	Figure:    FigureOf{"trip_c", "°C", Higher},
	Summary:   "The firmware lets the hotend get hotter than its weakest part is rated for.",
	Doc: `R = lowest of new.rated_c, new.sensor.rated_c and, with a PTFE liner, 240 °C
target limit = max temp − target margin; trip = max temp. Where the sensor's
definition is a table, its end caps both: trip 1 °C, target limit 2 °C below it,
as the style's firmware publishes it.
Error: target limit above R, or trip above R + 15 °C. Both the 240 °C and the
15 °C are common practice, no source. Also where the max temp cannot be told.
Values: target_limit_c, trip_c, rated_c, limited_by.
Change: the highest whole max temp that satisfies both and keeps the hotend
itself within R, where its definition shows it too cold. A min extrude temp
above it goes down with it, to the lower figure of new.print_c.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		s := &in.Printer.Limits.MaxTemp
		weakest := weakestRating(&in.Sheet.New)
		if s.State == parser.Off {
			report(Findingf(Error, placed(s.At, weakest.At),
				"set a max temp: the firmware has none, nothing stops a hotend that overheats, and the %s "+
					"is rated for %s", weakest.By, unit.Celsius(weakest.C)).
				With(Values{"target_limit_c": nil, "trip_c": nil, "rated_c": weakest.C,
					"limited_by": weakest.By}).
				Change(s.To(weakest.highestMaxTemp(0))))
			return
		}
		if s.State == parser.Unknown {
			// There may be no max temp, as where it is written as nan.
			report(cannotTell(Error, s))
			return
		}
		c, ok := ceilingOf(in, report)
		if !ok || c.usableC() <= weakest.C+rounding && c.tripC() <= weakest.C+tripSlackC+rounding {
			return
		}
		highest := c.builds(withinRating(in, c, weakest))
		f := Findingf(Error, placed(s.At, weakest.At),
			"lower the max temp to %s: users can ask for %s, the firmware shuts down at %s, and the %s is "+
				"rated for %s",
			unit.Celsius(highest), unit.Celsius(c.usableC()), unit.Celsius(c.tripC()), weakest.By,
			unit.Celsius(weakest.C)).
			With(Values{"target_limit_c": c.usableC(), "trip_c": c.tripC(), "rated_c": weakest.C,
				"limited_by": weakest.By})
		changes := []parser.Change{s.To(highest)}
		if guard := &in.Printer.Limits.MinExtrude; guard.State == parser.Set && guard.Value > highest {
			// A guard above the max temp is refused, or lets nothing be printed.
			lower := min(in.Sheet.New.PrintC.Value[0], highest)
			f.Message += fmt.Sprintf("; lower the %s, which is %s, to %s too", guard.Key,
				unit.Celsius(guard.Value), unit.Celsius(lower))
			changes = append(changes, guard.To(lower))
		}
		report(f.Change(changes...))
	},
}
