package rules

import (
	"slices"

	"preflash/parser/sheet"
	"preflash/rules/heat"
	"preflash/rules/unit"
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

// outputs is how many heaters run together on the hotend's command, each like
// the sheet's. Where that is unknown it is one; what hangs on it says so.
func outputs(in *Input) float64 {
	if s := &in.Printer.Hotend.Outputs; s.Known() && s.Value > 1 {
		return s.Value
	}
	return 1
}

// heaterOf gives the heaters that run on the hotend's command, at full duty, as one.
func heaterOf(in *Input) heat.Heater {
	h := in.Sheet.New.Heater
	n := outputs(in)
	h.RatedW.Value *= n
	h.HotW.Value = slices.Clone(h.HotW.Value)
	for i := range h.HotW.Value {
		h.HotW.Value[i][1] *= n
	}
	return HeaterOf(&h, in.Sheet.Printer.SupplyV.Value)
}

// together says that several heaters run on one command, or nothing.
func together(in *Input) string {
	n := outputs(in)
	if n == 1 {
		return ""
	}
	return " (the configuration runs " + unit.Count(n) + " heaters together; one is the sheet's)"
}

// peakW is the largest power that one heater can draw from a supply, W: that of
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
// configuration give, as a share of full power. A limit that is unknown
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
