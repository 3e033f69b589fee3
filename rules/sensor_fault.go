package rules

import (
	"math"
	"strings"

	"preflash/parser"
)

var sensorFault = &Rule{
	ID:      "sensor-fault",
	Level:   Error,
	Summary: "A broken or shorted sensor would read a temperature that the firmware takes for a good one.",
	Doc: `open_c and short_c are what the firmware would show with the sensor open and
shorted: the definition at half a count from the ends of the converter, stopped
at the ends of its table where those are known. Each must lie below min_c or
above trip_c, else that fault goes unseen and the heater stays on. Some firmware
looks at the minimum only while it heats: then a fault shows no sooner. Chips
tell a fault by themselves and are not looked at.
Source: common practice, no source.`,
	Check: func(in *Input, report func(Finding)) {
		if !in.Printer.Hotend.Sensor.Known() {
			return // sensor-curve says that it cannot be told
		}
		c, err := believedCircuit(in)
		if err != nil {
			return
		}
		l := &in.Printer.Limits
		for _, s := range [...]*parser.Setting[float64]{&l.MinTemp, &l.MaxTemp} {
			if s.State == parser.Unknown {
				report(cannotTell(Warning, s))
				return
			}
		}
		bits := in.Sheet.Printer.ADCBits.Value
		minC, tripC := math.Inf(-1), math.Inf(1)
		values := Values{"open_c": c.Open(bits), "short_c": c.Short(bits), "min_c": nil, "trip_c": nil}
		if l.MinTemp.State != parser.Off {
			minC, values["min_c"] = l.MinTemp.Value, l.MinTemp.Value
		}
		if l.MaxTemp.State != parser.Off {
			tripC, values["trip_c"] = l.MaxTemp.Value, l.MaxTemp.Value
		}
		var unseen []string
		at := l.MinTemp.At
		for _, fault := range [...]struct {
			name  string
			reads float64
		}{{"open", c.Open(bits)}, {"shorted", c.Short(bits)}} {
			if fault.reads < minC || fault.reads > tripC {
				continue
			}
			unseen = append(unseen, fault.name+" it reads "+celsius(fault.reads))
			if fault.reads > 100 {
				at = l.MaxTemp.At // the fault lies on the hot side
			}
		}
		if unseen == nil {
			return
		}
		f := Sayf(Error, placed(at, sensorAt(in)), "with the sensor %s, and the firmware trips only %s: the fault goes unseen and the heater stays on",
			strings.Join(unseen, ", "), outside(minC, tripC))
		if l.MinWhileHeating && !math.IsInf(minC, -1) {
			f.Message += "; the minimum is looked at only while heating"
		}
		report(f.With(values))
	},
}

// outside says where the firmware trips.
func outside(minC, tripC float64) string {
	switch low, high := math.IsInf(minC, -1), math.IsInf(tripC, 1); {
	case low && high:
		return "never"
	case low:
		return "above " + celsius(tripC)
	case high:
		return "below " + celsius(minC)
	}
	return "below " + celsius(minC) + " or above " + celsius(tripC)
}
