package rules

import (
	"math"

	"preflash/parser"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

var sensorRedundant = &Rule{
	ID:      "sensor-redundant",
	Level:   Error,
	Summary: "A second sensor must agree with this hotend's, and is not read as the new one.",
	Doc: `Some firmware compares a second sensor on the hotend with its own at every
reading, also cold, and stops the printer where they differ by more than a
limit. After a swap both must be read as what is in the hotend now.
Error: the second one's definition is for another kind of sensor, is a dummy,
is not recognised, or reads the sheet's sensor more than 5 K off (common
practice, no source) between printer.ambient_c and the top of print_c.
Values: at_c, error_k (shown − actual, where it is worst), limit_k.
No change: whether that sensor stays in the hotend is for a person to say.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		s, want := &in.Printer.Hotend.Second, &in.Sheet.New.Sensor
		if s.State == parser.Absent {
			return
		}
		if s.State == parser.Unknown {
			report(cannotTell(Error, s))
			return
		}
		limit := &in.Printer.Hotend.SecondK
		if limit.State == parser.Unknown {
			report(cannotTell(Warning, limit))
		}
		d := &s.Value
		values := Values{"at_c": nil, "error_k": nil, "limit_k": limit.Value}
		because := func(why string) {
			report(Findingf(Error, placed(s.At, sensorAt(in)),
				"switch the second sensor off, or correct its definition: it must agree with this "+
					"hotend's to %s or the printer stops, and %s",
				unit.Kelvin(limit.Value), why).With(values))
		}
		switch kind := kindOf(d); {
		case d.Form == parser.FormPlaceholder:
			because("it is a dummy (" + definition(d) + ") that always reads " + unit.Celsius(d.FixedC))
			return
		case d.Form == parser.FormUnknown:
			because("its definition " + definition(d) + " is not recognised")
			return
		case kind != want.Kind.Value:
			because("it is read as " + definition(d) + ", which is for " + kindName(kind) +
				", while the sheet names " + kindName(want.Kind.Value))
			return
		}
		believed, err := sensor.OfDef(d)
		curve, unplaced := sensor.OfSheet(want)
		if err != nil || unplaced != nil {
			return // a chip, or sensor-unknown speaks of the sheet's
		}
		real := &sensor.Circuit{Curve: curve, PullupOhm: boardPullup(in), SeriesOhm: believed.SeriesOhm}
		at, worst := 0.0, 0.0
		low, high := in.Sheet.Printer.AmbientC.Value, in.Sheet.New.PrintC.Value[1]
		const steps = 32
		for i := range steps + 1 {
			t := low + (high-low)*float64(i)/steps
			if off := believed.Indicated(real, t) - t; math.Abs(off) > math.Abs(worst) {
				at, worst = t, off
			}
		}
		if math.Abs(worst) > curveErrorK {
			values["at_c"], values["error_k"] = at, worst
			because("its definition " + definition(d) + " shows " + unit.Celsius(at+worst) + " at " +
				unit.Celsius(at))
		}
	},
}
