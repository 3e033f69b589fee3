package measure

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"preflash/parser/record"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

// dutyFull is what the log writes for full power: of what it may be the only
// one by which the block is one that a hotend may have. False where that does
// not tell.
func (h *HeatFit) dutyFull() (float64, bool) {
	if len(h.Log.DutyMay) == 1 {
		return h.Log.DutyFull, true
	}
	var physical []float64
	for _, full := range h.Log.DutyMay {
		if h.Fit.Physical(h.Log.DutyFull / full) {
			physical = append(physical, full)
		}
	}
	if len(physical) != 1 {
		return 0, false
	}
	return physical[0], true
}

// dutyDoubt says why dutyFull cannot tell, and how to.
func (h *HeatFit) dutyDoubt() string {
	f := h.Fit
	var ways []string
	for _, full := range h.Log.DutyMay {
		times := h.Log.DutyFull / full
		text := fmt.Sprintf("with --duty-full %g %s J/K", full, threeDigits(f.Capacity.Value*times))
		switch {
		case f.Fitted&heat.Loss != 0 && f.Loss.Certain():
			text += " and " + threeDigits(f.Loss.Value*times) + " W/K"
		case f.Fitted&heat.LossFan != 0 && f.LossFan.Certain():
			text += " and " + threeDigits(f.LossFan.Value*times) + " W/K"
		}
		ways = append(ways, text)
	}
	largest := 0.0
	for _, r := range h.Log.Rows {
		largest = max(largest, r.Duty*h.Log.DutyFull)
	}
	return fmt.Sprintf("has duty up to %s, which may be per cent or counts, and the heat does not tell: "+
		"the block has %s; say which by the flag",
		unit.Figure(largest, 1), strings.Join(ways, ", "))
}

func threeDigits(x float64) string {
	return unit.Figure(x, int(min(max(2-math.Floor(math.Log10(x)), 0), 9)))
}

// fanFull is what the log writes for the full fan, where duty is of dutyFull:
// whoever writes one in per cent writes the other so. False where that does not
// tell.
func (h *HeatFit) fanFull(dutyFull float64) (float64, bool) {
	const perCent = 100.0
	may := h.Log.FanMay
	switch {
	case len(may) == 0:
		return 0, true
	case len(may) == 1:
		return may[0], true
	case dutyFull == perCent && slices.Contains(may, perCent):
		return perCent, true
	case dutyFull > perCent && math.Abs(h.mostFan()*h.Log.FanFull-perCent) > 1e-9:
		return may[len(may)-1], true
	}
	return 0, false
}

// fanDoubt says why fanFull cannot tell, and how to.
func (h *HeatFit) fanDoubt() string {
	return fmt.Sprintf("has fan up to %s, which may be per cent or counts of 255: "+
		"say which with --fan-full 100 or --fan-full 255",
		unit.Figure(h.mostFan()*h.Log.FanFull, 1))
}

// warmC is a first row that is no room.
const warmC = 50

// warmRoom reports whether the log goes only with a room as warm as its first
// row, which is no room.
func (h *HeatFit) warmRoom() bool {
	const nearK = 8
	first, room := h.Log.Rows[0].TempC, h.Fit.Ambient.Value
	return first >= warmC && math.Abs(room-first) < nearK && otherRoom(h.Fit)
}

// mayBeF reports whether a log from warm is as hot as a printing temperature is in
// Fahrenheit, so that it tells by the fit alone what it is in.
func (h *HeatFit) mayBeF() bool {
	const hotF = 300
	return h.Log.Rows[0].TempC >= warmC &&
		slices.ContainsFunc(h.Log.Rows, func(r record.HeatRow) bool { return r.TempC >= hotF })
}

// isF reports whether a log that may be in Fahrenheit goes better with the fit of
// what it would be in °C: much less is left of it, or as much and the room is one.
func (h *HeatFit) isF(converted *heat.Fit) bool {
	const much, asMuch = 0.7, 1.05
	left := 1.8 * converted.RMSK / h.Fit.RMSK
	return left < much || left < asMuch && otherRoom(h.Fit) && !otherRoom(converted)
}

// fanWarms reports whether by the log the part fan keeps the block warm.
func (h *HeatFit) fanWarms() bool {
	loss, fan := &h.Fit.Loss, &h.Fit.LossFan
	return h.Fit.Fitted&heat.Loss != 0 && h.Fit.Fitted&heat.LossFan != 0 && loss.Certain() && fan.Certain() &&
		fan.Value+fan.PlusMinus() < loss.Value-loss.PlusMinus()
}

// otherRoom reports whether a log goes with another room than was said.
func otherRoom(f *heat.Fit) bool {
	return math.Abs(f.Ambient.Value-f.Given.Value) > 3*f.Given.StdErr && f.Given.StdErr > 0
}

// roomText says how warm the room was, and by what.
func (h *HeatFit) roomText() string {
	f := h.Fit
	given := unit.Celsius(f.Given.Value)
	from := map[heat.RoomFrom]string{
		heat.RoomStated:   "as --ambient-c says",
		heat.RoomFirstRow: "the first row, taken to be cold",
		heat.RoomSheet:    "as the sheet says",
		heat.RoomBetween:  "between the first row, which is warm, and a room",
		heat.RoomAssumed:  "assumed; --ambient-c gives yours",
	}[h.RoomFrom]
	value, spread := unit.Figure(f.Ambient.Value, 1), unit.Figure(max(f.Ambient.PlusMinus(), 0.1), 1)
	return fmt.Sprintf("%s ± %s °C as fitted, from %s (%s)", value, spread, given, from)
}

// gapsText names what was not recorded.
func (h *HeatFit) gapsText() string {
	const named = 3
	r := h.Fit.Run
	var parts []string
	for _, at := range r.Gaps[:min(len(r.Gaps), named)] {
		before, after := h.Log.Rows[at-1], h.Log.Rows[at]
		parts = append(parts, fmt.Sprintf("from %s to %s (lines %d and %d)", unit.Seconds(before.TimeS),
			unit.Seconds(after.TimeS), before.Line, after.Line))
	}
	if more := len(r.Gaps) - named; more > 0 {
		parts = append(parts, fmt.Sprintf("%d times more", more))
	}
	text := "what went on " + strings.Join(parts, ", ") + ": nothing was recorded; "
	if r.Bridged {
		return text + "duty and fan are taken to have held meanwhile. " +
			"Record steadily, a row or more each second"
	}
	return text + "the fit begins afresh behind it. Record in one go"
}
