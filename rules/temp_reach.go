package rules

import (
	"math"

	"preflash/parser"
	"preflash/rules/unit"
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
		short := "the firmware takes targets up to " + unit.Celsius(c.targetC())
		if c.marginK <= 0 {
			short = "the firmware shuts down at " + unit.Celsius(c.maxC) + " and needs " +
				unit.Kelvin(overshootRoomK) + " of room for overshoot"
		}
		weakest := weakestRating(&in.Sheet.New)
		within := withinRating(in, c, weakest)
		if highest := within; needed > highest {
			report(Findingf(Warning, print.At,
				"lower the top of print_c to %s: it is %s, and the %s, rated for %s, allows no higher max "+
					"temp than %s",
				unit.Celsius(highest-c.roomK()), unit.Celsius(top), weakest.By, unit.Celsius(weakest.C),
				unit.Celsius(highest)).Explain("%s", short).With(values))
			return
		}
		s := &in.Printer.Limits.MaxTemp
		if doubt := readingInDoubt(in); doubt.why != "" {
			report(Findingf(Warning, placed(s.At, print.At),
				"%s: the sheet asks for printing at up to %s, but %s",
				doubt.first, unit.Celsius(top), short).Explain("nothing is proposed while %s", doubt.why).
				With(values))
			return
		}
		if c.tableC-tableTopK < top-rounding {
			report(c.tableShort(in, c.builds(within)).With(values))
			return
		}
		if highest := c.builds(within); needed > highest {
			action := "take another sensor definition"
			if highest > c.maxC {
				action = "raise the max temp to " + unit.Celsius(highest)
			}
			f := Findingf(Warning, placed(s.At, print.At),
				"%s, or lower the top of print_c to %s: with this definition the firmware cannot be built "+
					"with a max temp above %s",
				action, unit.Celsius(highest-c.roomK()), unit.Celsius(highest)).
				Explain("the sheet asks for printing at up to %s, but %s", unit.Celsius(top), short).
				With(values)
			if highest > c.maxC {
				f = f.Change(s.To(highest))
				f.Partial = true
			}
			report(f)
			return
		}
		report(Findingf(Warning, placed(s.At, print.At),
			"raise the max temp to %s: the sheet asks for printing at up to %s, but %s",
			unit.Celsius(needed), unit.Celsius(top), short).With(values).Change(s.To(needed)))
	},
}

// tableShort says that the sensor's table ends before the top of the printing
// range, with the max temp that it allows.
func (c ceiling) tableShort(in *Input, highest float64) Finding {
	print, s := &in.Sheet.New.PrintC, &in.Printer.Limits.MaxTemp
	reach := c.tableC - tableTopK
	highest = min(highest, math.Floor(reach+c.roomK()+rounding))
	f := Findingf(Warning, print.At, "lower the top of print_c to %s, or take a sensor definition that "+
		"goes further: its table ends at %s, and the sheet asks for %s",
		unit.Celsius(math.Floor(min(reach, highest-c.roomK()))), unit.Celsius(c.tableC),
		unit.Celsius(print.Value[1])).
		Explain("the firmware switches the heater off just below the table's end, whatever the max temp says")
	if highest > c.maxC {
		f.explain("raise the max temp to " + unit.Celsius(highest))
		f = f.Change(s.To(highest))
		f.Partial = true
	}
	return f
}

// doubt is why a reading is not to be relied on, and what to do first.
type doubt struct{ first, why string }

// readingInDoubt says why the hotend's reading is not to be relied on, also
// after this run; empty where it is.
func readingInDoubt(in *Input) doubt {
	const fix = "correct the sensor definition first"
	_, known := actualAt(in, in.Sheet.New.PrintC.Value[1])
	switch {
	case reversed(in):
		return doubt{fix, "the reading falls as the hotend heats"}
	case pullupUnsaid(in):
		return doubt{"give printer.pullup_ohm first", "nothing says which pull-up the board has"}
	case !known:
		return doubt{fix, "nothing says how hot the hotend is"}
	}
	if r, believed, ok := readingToCome(in); ok {
		if m := r.afterChanges(in).judge(believed); m.level == Error {
			return doubt{fix, "the reading is as far off as sensor-curve says"}
		}
	}
	return doubt{}
}
