package rules

import (
	"math"
	"strings"

	"preflash/parser"
	"preflash/rules/sensor"
)

var sensorFault = &Rule{
	ID:      "sensor-fault",
	Level:   Error,
	Summary: "A broken or shorted sensor would read a temperature that the firmware takes for a good one.",
	Doc: `open_c and short_c are what the firmware would show with the sensor open and
shorted: the definition at half a count from the ends of the converter, stopped
at the ends of its table where those are known.
Error: one of them lies from min_c to trip_c, so that the fault goes unseen and
the heater stays on. The ends of a table cap both limits: the firmware switches
the output off at either end, and a fault that reads the lower one is noticed
by the rise watch alone, as the style's firmware publishes it. Some firmware
looks at the minimum only while it heats: then a fault shows no sooner. Chips
tell a fault by themselves and are not looked at.
Values: open_c, short_c, min_c, trip_c (null where the firmware has no such
limit). No change here: the limit, the definition or the board is at fault.
Source: common practice, no source.`,
	Check: func(in *Input, report func(Finding)) {
		if !in.Printer.Hotend.Sensor.Known() {
			return // sensor-curve says that it cannot be told
		}
		c, err := believedCircuit(in)
		if err != nil {
			return
		}
		l := limitsOf(in)
		if s := l.cannotTell; s != nil {
			report(cannotTell(Warning, s))
			return
		}
		open, short := c.Open(l.bits), c.Short(l.bits)
		var unseen []string
		at := in.Printer.Limits.MinTemp.At
		for _, fault := range [...]struct {
			name  string
			reads float64
		}{{"open", open}, {"shorted", short}} {
			if !l.pass(fault.reads) {
				continue
			}
			unseen = append(unseen, fault.name+" it reads "+celsius(fault.reads))
			if fault.reads > 100 {
				at = in.Printer.Limits.MaxTemp.At // the fault lies on the hot side
			}
		}
		if unseen == nil {
			return
		}
		f := Sayf(Error, placed(at, sensorAt(in)), "with the sensor %s, and the firmware trips %s: %s",
			strings.Join(unseen, ", "), l, l.then(in))
		if in.Printer.Limits.MinWhileHeating && !math.IsInf(l.minC, -1) {
			f.Message += "; the minimum is looked at only while heating"
		}
		report(f.With(Values{"open_c": open, "short_c": short, "min_c": finite(l.minC), "trip_c": finite(l.tripC)}))
	},
}

// faultLimits are the temperatures between which the firmware takes a reading
// for a good one; infinite where it does not look.
type faultLimits struct {
	minC, tripC float64
	table       bool                     // the ends of a table cap both
	bits        int                      // of the converter
	cannotTell  *parser.Setting[float64] // the limit that cannot be told
}

func limitsOf(in *Input) faultLimits {
	p := &in.Printer.Limits
	l := faultLimits{minC: math.Inf(-1), tripC: math.Inf(1), bits: in.Sheet.Printer.ADCBits.Value}
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
	if t, ok := tableOf(&in.Printer.Hotend.Sensor.Value); ok && in.Printer.Hotend.Sensor.Known() {
		l.table = true
		l.minC, l.tripC = max(l.minC, t.low), min(l.tripC, t.high-tableTripK)
	}
	return l
}

// then says what becomes of a fault that the limits do not see.
func (l faultLimits) then(in *Input) string {
	if !l.table {
		return "the fault goes unseen and the heater stays on"
	}
	text := "no limit sees the fault; at the end of its table the output is switched off, and "
	if w := &in.Printer.Hotend.Watch; !w.On.Known() || !w.On.Value || !riseOn(w) {
		return text + "nothing says why"
	}
	return text + "the rise watch stops the printer in the end"
}

// pass reports whether the firmware takes a reading for a good one.
func (l faultLimits) pass(tempC float64) bool { return tempC >= l.minC && tempC <= l.tripC }

// blind reports whether a fault of the sensor goes unseen by a definition.
func (l faultLimits) blind(c *sensor.Circuit) bool {
	return l.cannotTell == nil && (l.pass(c.Open(l.bits)) || l.pass(c.Short(l.bits)))
}

// String says where the firmware trips.
func (l faultLimits) String() string {
	switch low, high := math.IsInf(l.minC, -1), math.IsInf(l.tripC, 1); {
	case low && high:
		return "at no temperature"
	case low:
		return "only above " + celsius(l.tripC)
	case high:
		return "only below " + celsius(l.minC)
	}
	return "only below " + celsius(l.minC) + " or above " + celsius(l.tripC)
}
