package rules

import (
	"fmt"
	"math"
)

var tempReach = &Rule{
	ID:      "temp-reach",
	Level:   Warning,
	Summary: "The firmware does not let the hotend reach the top of its printing range.",
	Doc: `top = upper figure of new.print_c; target limit = max temp − target margin
Warning: target limit below top. Where the firmware keeps no margin, overshoot
alone shuts it down, and max temp must lie at least 10 °C above top (common
practice, no source). Also where the table of the sensor's definition ends less
than 2 °C above top: it caps max temp, whatever that says.
Values: target_limit_c, top_c, needed_max_c.
Change: the lowest whole max temp that does it, as far as temp-ceiling and the
table allow; where a rating or the table forbids it there is none, and print_c
must come down.`,
	Check: func(in *Input, report func(Finding)) {
		c, ok := ceilingOf(in, report)
		if !ok {
			return
		}
		print := &in.Sheet.New.PrintC
		top := print.Value[1]
		needed := c.neededMaxTemp(top)
		if c.reachC() >= top-rounding {
			return
		}
		values := Values{"target_limit_c": c.usableC(), "top_c": top, "needed_max_c": needed}
		short := "the firmware takes targets up to " + celsius(c.targetC())
		if c.marginK <= 0 {
			short = "the firmware shuts down at " + celsius(c.maxC) + " and needs " + kelvin(overshootRoomK) + " of room for overshoot"
		}
		if highest := c.tableMaxTemp(in.Printer.Limits.TableLessMargin); needed > highest || c.tableC-tableTopK < top-rounding {
			highest = math.Floor(min(c.tableC-tableTopK, highest-c.roomK()))
			text := fmt.Sprintf("the sheet asks for printing at up to %s, but the table of the sensor's definition ends at %s, and the firmware switches the heater off just below that, whatever the max temp says",
				celsius(top), celsius(c.tableC))
			if c.tableC-tableTopK >= top-rounding {
				text = fmt.Sprintf("the sheet asks for printing at up to %s, but %s, and with a table of the sensor's definition that ends at %s this firmware is not built with a max temp above %s",
					celsius(top), short, celsius(c.tableC), celsius(highest+c.roomK()))
			}
			report(Sayf(Warning, print.At, "%s; lower the top of print_c to %s, or take a definition that goes further", text, celsius(highest)).With(values))
			return
		}
		weakest := weakestRating(&in.Sheet.New)
		if highest := weakest.highestMaxTemp(c.marginK); needed > highest {
			report(Sayf(Warning, print.At,
				"the sheet asks for printing at up to %s, but %s, and the %s, rated for %s, allows no higher max temp than %s; lower the top of print_c to %s",
				celsius(top), short, weakest.By, celsius(weakest.C), celsius(highest), celsius(highest-c.roomK())).With(values))
			return
		}
		s := &in.Printer.Limits.MaxTemp
		report(Sayf(Warning, placed(s.At, print.At), "the sheet asks for printing at up to %s, but %s; raise the max temp to %s",
			celsius(top), short, celsius(needed)).With(values).Change(s.To(needed)))
	},
}

// tableMaxTemp is the highest max temp that a sensor's table allows: some
// firmware is not built with one nearer to its end than the margin.
func (c ceiling) tableMaxTemp(lessMargin bool) float64 {
	if lessMargin {
		return c.tableC - c.marginK
	}
	return math.Inf(1)
}
