package rules

import (
	"preflash/parser"
	"preflash/rules/unit"
)

var sensorPlaceholder = &Rule{
	ID:       "sensor-placeholder",
	Level:    Error,
	Unwaived: true,
	Hides:    []string{"sensor-curve", "sensor-fault"},
	Explains: []string{"sensor-fault", "sensor-resolution", "temp-reach"},
	Summary:  "A heater is controlled by a dummy sensor that always reads the same.",
	Doc: `A dummy is for trying a board on the desk. With a heater on the output the
firmware cannot see how hot it is, and nothing stops it. Hotend and bed are
looked at. Change for the hotend: the definition of the sheet's sensor, as
sensor-curve would choose it. Cannot be waived.
Warning: so it is with another hotend of the printer, the chamber or a further
heater: whether a heater is on that output, the files do not say.
Source: common practice, no source.`,
	Check: func(in *Input, report func(Finding)) {
		p := in.Printer
		dummy(in, "hotend", &p.Hotend.Sensor, report)
		if p.Bed.Heated.State != parser.Off {
			dummy(in, "bed", &p.Bed.Sensor, report)
		}
		for _, h := range in.Config.Others() {
			dummyOf(in, h, report)
		}
	},
}

// dummyOf looks at a heater that is not the sheet's business.
func dummyOf(in *Input, h parser.Heater, report func(Finding)) {
	for _, s := range h.Settings {
		d, ok := s.Value.(parser.SensorDef)
		if !ok || s.State != parser.Set || d.Form != parser.FormPlaceholder {
			continue
		}
		report(Findingf(Warning, placed(s.At, sensorAt(in)),
			"see that no heater is on the output of %s, or name its sensor: definition %s is a dummy that "+
				"always reads %s, whatever is hot",
			h.Name, definition(&d), unit.Celsius(d.FixedC)).Of(s.Key.Of(h.Name)))
	}
}

func dummy(in *Input, heater string, s *parser.Setting[parser.SensorDef], report func(Finding)) {
	switch {
	case s.State == parser.Unknown:
		report(cannotTell(Error, s))
	case s.State == parser.Off || s.Value.Form != parser.FormPlaceholder:
	default:
		f := Findingf(Error, placed(s.At, sensorAt(in)),
			"give the %s the definition of its real sensor: it has a dummy (%s) that always reads %s, and "+
				"nothing stops the heater",
			heater, definition(&s.Value), unit.Celsius(s.Value.FixedC)).
			Explain("the firmware cannot see how hot it is").Of(s.Key)
		if s == &in.Printer.Hotend.Sensor {
			f = insteadOfDummy(in, f)
		}
		report(f)
	}
}

// insteadOfDummy adds the change that gives the hotend the sheet's sensor, and
// what it rests on; none where the sheet has no curve or the firmware no
// definition of it.
func insteadOfDummy(in *Input, f Finding) Finding {
	r, ok := newReading(in, 0)
	if !ok {
		return f
	}
	fix := r.best(in)
	if fix.def.Form == parser.FormUnknown {
		return f
	}
	if fix.leaves.wrong() {
		f.explain("the change is the best there is and leaves " + unit.Kelvin(fix.leaves.rangeK))
	}
	f.explain(restsOn(in))
	return lowered(in, f.Change(in.Printer.Hotend.Sensor.To(fix.def)), fix)
}
