package rules

import (
	"math"

	"preflash/parser"
)

var tempReach = &Rule{
	ID:        "temp-reach",
	Level:     Warning,
	MayLoosen: []parser.Key{parser.MaxTemp},

	Figure:  FigureOf{"target_limit_c", "°C", Lower},
	Summary: "The firmware does not let the hotend reach the top of its printing range.",
	Doc: `top = upper figure of new.print_c; target limit = max temp − target margin
Warning: target limit below top. Where the firmware keeps no margin, overshoot
alone shuts it down, and max temp must lie at least 10 °C above top (common
practice, no source). Also where the table of the sensor's definition ends less
than 2 °C above top: it caps max temp, whatever that says.
Values: target_limit_c, top_c, needed_max_c.
Change: the lowest whole max temp that does it, as far as temp-ceiling and the
firmware's own checks allow; where a rating or the table forbids it there is
none, and print_c must come down. Nor is there one while the reading will not be
right after this run: it falls as the hotend heats, its definition stands for no
curve, is for another kind of sensor, or is an error of sensor-curve that stays;
what a chip or amplifier is told does not go with the sensor; or nothing says
which pull-up it has.`,
	NeedsSheet: true,
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
		weakest := weakestRating(&in.Sheet.New)
		within := withinRating(in, c, weakest)
		if highest := within; needed > highest {
			report(Sayf(Warning, print.At,
				"the sheet asks for printing at up to %s, but %s, and the %s, rated for %s, allows no higher max temp than %s; lower the top of print_c to %s",
				celsius(top), short, weakest.By, celsius(weakest.C), celsius(highest), celsius(highest-c.roomK())).With(values))
			return
		}
		s := &in.Printer.Limits.MaxTemp
		if why := readingInDoubt(in); why != "" {
			report(Sayf(Warning, placed(s.At, print.At), "the sheet asks for printing at up to %s, but %s; nothing is proposed while %s",
				celsius(top), short, why).With(values))
			return
		}
		if c.tableC-tableTopK < top-rounding {
			report(c.tableShort(in, c.builds(within)).With(values))
			return
		}
		if highest := c.builds(within); needed > highest {
			f := Sayf(Warning, placed(s.At, print.At), "the sheet asks for printing at up to %s, but %s, and with this sensor definition the firmware cannot be built with a max temp above %s",
				celsius(top), short, celsius(highest)).With(values)
			if highest > c.maxC {
				f.Message += "; raise it to that"
				f = f.Change(s.To(highest))
				f.Partial = true
			}
			f.Message += "; for more it takes another definition, or lower the top of print_c to " + celsius(highest-c.roomK())
			report(f)
			return
		}
		report(Sayf(Warning, placed(s.At, print.At), "the sheet asks for printing at up to %s, but %s; raise the max temp to %s",
			celsius(top), short, celsius(needed)).With(values).Change(s.To(needed)))
	},
}

// tableShort says that the sensor's table ends before the top of the printing
// range, with the max temp that it allows.
func (c ceiling) tableShort(in *Input, highest float64) Finding {
	print, s := &in.Sheet.New.PrintC, &in.Printer.Limits.MaxTemp
	f := Sayf(Warning, print.At, "the sheet asks for printing at up to %s, but the table of the sensor's definition ends at %s, and the firmware switches the heater off just below that, whatever the max temp says",
		celsius(print.Value[1]), celsius(c.tableC))
	reach := c.tableC - tableTopK
	highest = min(highest, math.Floor(reach+c.roomK()+rounding))
	if highest > c.maxC {
		f.Message += "; raise the max temp to " + celsius(highest)
		f = f.Change(s.To(highest))
		f.Partial = true
	}
	f.Message += "; lower the top of print_c to " + celsius(math.Floor(min(reach, highest-c.roomK()))) + ", or take a definition that goes further"
	return f
}

// readingInDoubt says why the hotend's reading is not to be relied on, also
// after this run; "" where it is.
func readingInDoubt(in *Input) string {
	const mend = ": mend the sensor definition first"
	_, told := actualAt(in, in.Sheet.New.PrintC.Value[1])
	switch {
	case reversed(in):
		return "the reading falls as the hotend heats" + mend
	case pullupUnsaid(in):
		return "nothing says which pull-up the board has: give printer.pullup_ohm"
	case !told:
		return "nothing says how hot the hotend is" + mend
	}
	if r, believed, ok := readingToCome(in); ok {
		if m := r.settled(in).judge(believed); m.level == Error {
			return "the reading is as far off as sensor-curve says" + mend
		}
	}
	return ""
}
