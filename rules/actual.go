package rules

import (
	"math"

	"preflash/parser"
	"preflash/rules/sensor"
)

// HotterK is how much hotter counts as no hotter: the published points of a
// definition give its reading within 0.6 K.
const HotterK = 1

// ActualAtHighestTarget is the temperature of the hotend while the firmware shows
// its highest target, °C: infinite where the reading falls as the hotend heats,
// since then no target is ever reached. False where it is unknown.
func ActualAtHighestTarget(in *Input) (float64, bool) {
	target, ok := HighestTarget(in)
	if !ok && !reversed(in) {
		return 0, false
	}
	return actualAt(in, target)
}

// actualAt is the same for any temperature that is shown: where the files do not
// tell which of two definitions reads it, the hotter one.
func actualAt(in *Input, shownC float64) (float64, bool) {
	if reversed(in) {
		return math.Inf(1), true
	}
	if all, r, ok := hotendCircuits(in); ok && in.Printer.Hotend.PullupOhm.State != parser.Unknown {
		hottestC := math.Inf(-1)
		for _, c := range all {
			limitC := shownC
			if c.Ends() {
				limitC = min(limitC, c.HighC)
			}
			hottestC = max(hottestC, c.Actual(r.Real, limitC))
		}
		return hottestC, true
	}
	return shownC, amplifierRight(in) // which reports a temperature by itself
}

// amplifierRight reports whether a chip or an amplifier is for the sheet's
// sensor, and nothing that it is told speaks against that.
func amplifierRight(in *Input) bool {
	s, want := &in.Printer.Hotend.Sensor, in.Sheet.New.Sensor.Kind.Value
	d := &s.Value
	if !s.Known() || d.Form != parser.FormAmplifier || d.Kind != want || sensor.HasCurve(want) ||
		correction(d) != "" {
		return false
	}
	right := true
	observe := func(f Finding) { right = right && f.Level < Error }
	platinumMismatch(in, d, observe)
	chipMismatch(in, d, observe)
	return right
}
