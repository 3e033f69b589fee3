package rules

import (
	"math"
	"slices"
	"strings"

	"preflash/parser"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

var sensorFault = &Rule{
	ID:      "sensor-fault",
	Level:   Error,
	Summary: "A broken or shorted sensor would read a temperature that the firmware takes for a good one.",
	Doc: `open_c and short_c are what the firmware would show with the sensor open and
shorted: the definition at the last step of the converter, of all readings that
it averages for a formula, stopped at the ends of its table where it is one.
Error: one of them lies from min_c to trip_c, so that the fault goes unseen and
the heater stays on. At the end of a table it does not: there the firmware gives
the heater no power. Some firmware looks at the minimum only while it heats:
then a fault shows no sooner. Error too: a definition with which the firmware
looks at neither limit, so that only the runaway protection is left. Chips tell
a fault by themselves and are not looked at.
Values: open_c, short_c, min_c, trip_c (null where the firmware has no such
limit). Change: the min temp up to 0 or 5 °C, where that is above what the fault
reads and below printer.ambient_c, and then both faults show. Else none: the
definition or the board is at fault.
Source: common practice, no source.`,
	Check: func(in *Input, report func(Finding)) {
		if s := &in.Printer.Limits.Trips; s.State == parser.Off {
			report(withoutTrips(in))
			return
		}
		if !in.Printer.Hotend.Sensor.Known() {
			return // sensor-curve says that it is unknown
		}
		all, err := believedCircuits(in)
		if err != nil {
			return
		}
		l := limitsOf(in)
		if s := l.cannotTell; s != nil {
			report(cannotTell(Warning, s))
			return
		}
		c := all[0]
		if i := slices.IndexFunc(all,
			func(c *sensor.Circuit) bool { return l.blind([]*sensor.Circuit{c}) }); i > 0 {
			c = all[i]
		}
		open, short := c.Open(l.converter), c.Short(l.converter)
		var unseen []string
		at := in.Printer.Limits.MinTemp.At
		for _, fault := range [...]struct {
			name  string
			reads float64
		}{{"open", open}, {"shorted", short}} {
			if !l.pass(c, fault.reads) {
				continue
			}
			unseen = append(unseen, fault.name+", the sensor reads "+unit.Celsius(fault.reads))
			if fault.reads > 100 {
				at = in.Printer.Limits.MaxTemp.At // the fault lies on the hot side
			}
		}
		if unseen == nil {
			return
		}
		f := Findingf(Error, placed(at, sensorAt(in)),
			"%s, and the firmware trips %s: the fault goes unseen and the heater stays on",
			strings.Join(unseen, "; "), l)
		if in.Printer.Limits.MinWhileHeating && !math.IsInf(l.minC, -1) {
			f.explain("the minimum is looked at only while heating")
		}
		if raised, ok := l.raised(in, all); ok {
			f.Message = "raise the min temp to " + unit.Celsius(raised) + ": " + f.Message
			f = f.Change(in.Printer.Limits.MinTemp.To(raised))
		} else {
			f.Message = "correct the sensor definition, or look at the board: " + f.Message
		}
		report(f.With(Values{"open_c": open, "short_c": short, "min_c": orNull(l.minC),
			"trip_c": orNull(l.tripC)}))
	},
}

// withoutTrips is the finding of a definition that the firmware holds against
// neither limit.
func withoutTrips(in *Input) Finding {
	return Findingf(Error, placed(in.Printer.Limits.Trips.At, sensorAt(in)),
		"fit a converter chip, or a sensor whose definition is a table: with definition %s the firmware "+
			"looks at neither min nor max temp, a broken sensor trips nothing, and only the runaway "+
			"protection is left",
		definition(&in.Printer.Hotend.Sensor.Value)).
		With(Values{"open_c": nil, "short_c": nil, "min_c": nil, "trip_c": nil})
}

// faultLimits are the temperatures between which the firmware takes a reading
// for a good one; infinite where it does not look.
type faultLimits struct {
	minC, tripC float64
	converter   sensor.Converter
	cannotTell  *parser.Setting[float64] // the limit that is unknown
}

func limitsOf(in *Input) faultLimits {
	p := &in.Printer.Limits
	l := faultLimits{minC: math.Inf(-1), tripC: math.Inf(1), converter: Converter(in)}
	for _, limit := range [...]struct {
		setting *parser.Setting[float64]
		value   *float64
	}{{&p.MinTemp, &l.minC}, {&p.MaxTemp, &l.tripC}} {
		switch {
		case limit.setting.State == parser.Unknown:
			l.cannotTell = limit.setting
		case limit.setting.Known():
			*limit.value = limit.setting.Value
		}
	}
	return l
}

// usualMins are the min temps that a person would write, °C: common practice, no source.
var usualMins = [...]float64{0, 5}

// raised is a min temp with which both faults show; false where none does, or
// the definition is changed first.
func (l faultLimits) raised(in *Input, believed []*sensor.Circuit) (float64, bool) {
	s := &in.Printer.Limits.MinTemp
	if _, changes := in.Changed[parser.HotendSensor]; changes || s.State != parser.Set {
		return 0, false
	}
	for _, c := range usualMins {
		with := l
		with.minC = c
		if c > l.minC && c < in.Sheet.Printer.AmbientC.Value && (s.Most == 0 || c <= s.Most) &&
			!with.blind(believed) {
			return c, true
		}
	}
	return 0, false
}

// pass reports whether the firmware takes a reading for a good one. At the ends
// of a table it does not: there it gives the heater no power, whatever the
// limits say (as the style's firmware publishes it).
func (l faultLimits) pass(c *sensor.Circuit, tempC float64) bool {
	if c.Ends() && (tempC <= c.LowC || tempC >= c.HighC) {
		return false
	}
	return tempC >= l.minC && tempC <= l.tripC
}

// blind reports whether a fault of the sensor goes unseen by a definition.
func (l faultLimits) blind(believed []*sensor.Circuit) bool {
	return l.cannotTell == nil && slices.ContainsFunc(believed, func(c *sensor.Circuit) bool {
		return l.pass(c, c.Open(l.converter)) || l.pass(c, c.Short(l.converter))
	})
}

// String says where the firmware trips.
func (l faultLimits) String() string {
	switch low, high := math.IsInf(l.minC, -1), math.IsInf(l.tripC, 1); {
	case low && high:
		return "at no temperature"
	case low:
		return "only above " + unit.Celsius(l.tripC)
	case high:
		return "only below " + unit.Celsius(l.minC)
	}
	return "only below " + unit.Celsius(l.minC) + " or above " + unit.Celsius(l.tripC)
}
