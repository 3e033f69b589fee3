package rules

import (
	"preflash/parser"
	"preflash/rules/unit"
)

// hottestFanOnC is the highest temperature at which the heat-break fan may
// start: common practice, no source.
const hottestFanOnC = 60

var coldsideFan = &Rule{
	ID:      "coldside-fan",
	Level:   Error,
	Figure:  FigureOf{"on_above_c", "°C", Higher},
	Summary: "The heat-break fan does not follow this hotend.",
	Doc: `Without a fan the heat break softens filament where it should be solid.
Warning: the configuration drives no heat-break fan and the sheet does not say
always_on. Error: it drives one, which cannot follow this hotend, or gives it no
power. Warning: the fan starts above 60 °C (common practice, no source), or
stops above it in cooling where a target alone makes it run; it stops when the
firmware shuts down, or is named after the board: what it cools is unknown.
Values: on_above_c, limit_c (of the threshold alone).
Change: the threshold, down to new.fan.on_above_c; full power in place of none.`,
	Check: func(in *Input, report func(Finding)) {
		c, fan := &in.Printer.ColdSide, &in.Sheet.New.Fan
		switch {
		case fan.AlwaysOn.Value, c.Fan.State == parser.Absent:
		case c.Fan.State == parser.Unknown:
			report(cannotTell(Warning, &c.Fan))
		case c.Fan.Known():
			if power := &c.Power; power.Known() && power.Value <= 0 {
				report(Findingf(Error, placed(power.At, placed(c.Fan.At, fan.OnAboveC.At)),
					"raise the %s to %s: at %s the fan never turns, and the heat break clogs",
					power.Key, unit.Percent(1), unit.Percent(power.Value)).Change(power.To(1)))
			}
			thresholdHigh(c, fan.OnAboveC.Value, placed(c.Fan.At, fan.OnAboveC.At), report)
			if stop := &c.AtShutdown; stop.Known() && stop.Value <= 0 {
				report(Findingf(Warning, placed(stop.At, c.Fan.At),
					"let the heat-break fan run on when the firmware shuts down: the block is still hot, "+
						"and filament softens where it should be solid"))
			}
		case len(c.Elsewhere) > 0:
			e := c.Elsewhere[0]
			report(Findingf(Error, placed(e.At, fan.AlwaysOn.At),
				"make the heat-break fan follow this hotend: its output does not%s, and the fan stays off "+
					"while the hotend is hot", following(e)).
				Explain("or wire the fan to the supply and say always_on in the sheet"))
		default:
			report(Findingf(Warning, placed(c.Fan.At, fan.AlwaysOn.At),
				"give the heat-break fan an output, or say always_on in the sheet: the configuration "+
					"drives none, and unless it is wired to the supply, the heat break clogs"))
		}
	},
}

func thresholdHigh(c *parser.ColdSide, wantedC float64, otherwise parser.Span, report func(Finding)) {
	does, then := "starts", "the heat break is warm by then"
	if c.WithTarget {
		does, then = "stops while the hotend cools", "the heat break is still warm then, and softens filament"
	}
	switch s := &c.OnAboveC; {
	case s.State == parser.Unknown:
		report(cannotTell(Warning, s))
	case !s.Known() || s.Value <= hottestFanOnC:
	default:
		wantedC = min(wantedC, hottestFanOnC)
		report(Findingf(Warning, placed(s.At, otherwise),
			"lower the heat-break fan threshold to %s: the fan %s at %s, above %s, and %s",
			unit.Celsius(wantedC), does, unit.Celsius(s.Value), unit.Celsius(hottestFanOnC), then).
			With(Values{"on_above_c": s.Value, "limit_c": float64(hottestFanOnC)}).
			Change(s.To(wantedC)))
	}
}

// following says what a fan output is set to, as the configuration has it.
func following(e parser.Place) string {
	if e.Written == "" {
		return ""
	}
	return " (it is set to " + quote(e.Written) + ")"
}
