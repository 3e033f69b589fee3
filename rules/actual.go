package rules

import (
	"math"

	"preflash/parser"
	"preflash/rules/sensor"
)

// HotterK is how much of a rise in temperature is rounding.
const HotterK = 0.5

// ActualAtHighestTarget is the temperature of the hotend while the firmware shows
// its highest target, °C: infinite where the reading falls as the hotend heats,
// since then no target is ever reached. False where it cannot be told.
func ActualAtHighestTarget(in *Input) (float64, bool) {
	target, ok := HighestTarget(in)
	if !ok && !reversed(in) {
		return 0, false
	}
	return actualAt(in, target)
}

// actualAt is the same for any temperature that is shown.
func actualAt(in *Input, shownC float64) (float64, bool) {
	if reversed(in) {
		return math.Inf(1), true
	}
	if believed, real, ok := hotendCircuits(in); ok && in.Printer.Hotend.PullupOhm.State != parser.Unknown {
		if believed.Ends() {
			shownC = min(shownC, believed.HighC)
		}
		return believed.Actual(real, shownC), true
	}
	// A chip reports a temperature by itself.
	want, s := &in.Sheet.New.Sensor, &in.Printer.Hotend.Sensor
	right := s.Known() && s.Value.Form == parser.FormAmplifier && s.Value.Kind == want.Kind.Value && !sensor.HasCurve(want.Kind.Value)
	if right {
		platinumTold(in, &s.Value, func(f Finding) { right = right && f.Level < Error })
	}
	return shownC, right
}

// onceChanged is the input as it is once the changes so far are made, as far as
// the reading of the hotend's sensor goes.
func (in *Input) onceChanged() *Input {
	after, p := *in, *in.Printer
	after.Printer = &p
	if d, ok := in.Changed[parser.HotendSensor].(parser.SensorDef); ok {
		p.Hotend.Sensor.Value, p.Hotend.Sensor.State = d, parser.Set
	}
	if r, ok := in.Changed[parser.HotendPullup].(float64); ok {
		p.Hotend.PullupOhm.Value, p.Hotend.PullupOhm.State = r, parser.Set
	}
	return &after
}

// readsRight reports whether the sensor is read without an error up to a
// temperature.
func readsRight(in *Input, upToC float64) bool {
	actualC, ok := actualAt(in, upToC)
	if _, _, curves := hotendCircuits(in); !ok || !curves {
		return ok && !math.IsInf(actualC, 1)
	}
	believed, err := believedCircuits(in)
	if err != nil {
		return false
	}
	r, ok := newReading(in, believed[0].SeriesOhm)
	if !ok {
		return false
	}
	r.limitC, r.TopC = upToC, max(r.HighC, upToC)
	m := r.judge(believed)
	return m.level < Error
}
