package rules

import (
	"preflash/parser"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

var minTempHigh = &Rule{
	ID:      "min-temp-high",
	Level:   Error,
	Figure:  FigureOf{"min_temp_c", "°C", Higher},
	Summary: "The min temp is no lower than the room's, so the printer faults when cold.",
	Doc: `Error: min temp at or above printer.ambient_c: a cold hotend reads as a broken
sensor. Below the coldest room that the printer stands in, 5 °C is usual (common
practice, no source). A converter chip is looked at all the time, and such a
printer does not start; any other sensor once the hotend is to heat. Silent
where the firmware then waits for so long that the hotend is above the minimum,
heated at full duty with the part fan full in the model of runaway-tight; and
where its own checks accept no lower min temp for this sensor.
Values: min_temp_c, ambient_c.
No change: the owner knows how cold the room gets.`,
	Check: func(in *Input, report func(Finding)) {
		s, ambient := &in.Printer.Limits.MinTemp, &in.Sheet.Printer.AmbientC
		switch {
		case s.State == parser.Unknown:
			report(cannotTell(Warning, s))
			return
		case !s.Known() || s.Value < ambient.Value:
			return
		case s.Least > 0 && s.Value <= s.Least:
			return
		}
		effect := "the printer will not start"
		if in.Printer.Limits.MinWhileHeating {
			if passesMin(in) {
				return
			}
			effect = "the printer faults at the first heating"
		}
		lower := "below that of a cold room, such as 5 °C"
		if s.Least > 0 {
			lower = "no lower than " + unit.Celsius(s.Least) + ", which the firmware demands with this sensor"
		}
		report(Findingf(Error, placed(s.At, ambient.At), "set the %s %s: it is %s, the room has %s, and %s",
			s.Key, lower, unit.Celsius(s.Value), orAssumed(unit.Celsius(ambient.Value), *ambient), effect).
			With(Values{"min_temp_c": s.Value, "ambient_c": ambient.Value}))
	},
}

// passesMin reports whether the sensor is above the minimum when the time is
// over for which the firmware does not look at it.
func passesMin(in *Input) bool {
	grace := 0.0
	for i := range in.Printer.Limits.Graces {
		// One that is too long is runaway-loose's, and does not stay.
		if g := &in.Printer.Limits.Graces[i]; g.Known() && g.Value <= max(loosestGraceS, g.Least) {
			grace = max(grace, g.Value)
		}
	}
	p, _ := plantOf(in)
	cold := heat.State{Block: p.AmbientC, Sensor: p.AmbientC}
	return p.Advance(cold, p.DutyLimit, heat.FanFull, grace).Sensor > in.Printer.Limits.MinTemp.Value
}
