package rules

import (
	"preflash/parser/sheet"
	"preflash/rules/heat"
)

// HeaterOf gives the heater of a hotend on a supply, at full duty.
func HeaterOf(h *sheet.Heater, supplyV float64) heat.Heater {
	var points []heat.Point
	if h.Kind.Value == sheet.PTC {
		for _, p := range h.HotW.Value {
			points = append(points, heat.Point{TempC: p[0], PowerW: p[1]})
		}
	}
	return heat.Heater{
		RatedV: h.RatedV.Value, RatedW: h.RatedW.Value, Hot: heat.NewTable(points...),
		SupplyV: supplyV, DutyLimit: 1,
	}
}

// peakW is the largest power that a heater can draw from a supply, W: that of
// the largest figure in rated_w and hot_w, times (supply / rated)².
func peakW(h *sheet.Heater, supplyV float64) float64 {
	largest := h.RatedW.Value
	for _, p := range h.HotW.Value {
		largest = max(largest, p[1])
	}
	return largest * voltageRatio(h, supplyV)
}

// voltageRatio is the power on a supply over the rated power: P = V²/R.
func voltageRatio(h *sheet.Heater, supplyV float64) float64 {
	r := supplyV / h.RatedV.Value
	return r * r
}

// dutyLimit is the lowest limit of the heater's duty that sheet and
// configuration give, as a share of full power. A limit that cannot be told
// does not count.
func dutyLimit(in *Input) float64 {
	share := in.Sheet.New.Heater.DutyLimit.Value
	limits := in.Printer.Hotend.Loop.PowerLimits
	for i := range limits {
		if s := &limits[i]; s.Known() {
			share = min(share, s.Value)
		}
	}
	return share
}
