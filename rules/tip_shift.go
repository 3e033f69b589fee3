package rules

import (
	"math"
	"strings"

	"preflash/parser"
)

var tipShift = &Rule{
	ID:      "tip-shift",
	Level:   Error,
	Summary: "The new nozzle tip sits at another height than the old one.",
	Doc: `shift = new.nozzle.tip_shift_mm, positive where the new tip sits lower.
Probe: the nozzle is at trigger height − shift above the bed when the probe
triggers. Error where that is 0 or less: the nozzle touches first. Warning
otherwise: the trigger height must be measured again.
Endstop: a lower tip strikes the bed before the endstop: error; a higher one
prints in the air: warning. Nozzle as its own probe, by the sheet or by the
configuration: silent. Where the sheet gives no shift, a note.
Warning of its own: distances between the hotends, which belong to the old one.
Values: shift_mm, trigger_mm (the new height; null where it cannot be told). No
change: heights are measured, never computed.`,
	Check: func(in *Input, report func(Finding)) {
		shift, z := &in.Sheet.New.Nozzle.TipShiftMM, &in.Sheet.Printer.ZReference
		offsetsStale(in, report)
		probes := &in.Printer.Geometry.NozzleProbes
		switch {
		case z.Value == "nozzle":
		case z.Value == "probe" && probes.Known() && probes.Value:
		case !shift.Given:
			if z.Given {
				report(Sayf(Note, shift.At, "the sheet does not say how far the new nozzle tip is shifted (tip_shift_mm): measure the nozzle's height again before the first move to the bed").
					With(Values{"shift_mm": nil, "trigger_mm": nil}))
			}
		case shift.Value == 0:
		case z.Value == "probe":
			probeShift(in, shift.Value, report)
		case z.Value == "endstop":
			values := Values{"shift_mm": shift.Value, "trigger_mm": nil}
			if shift.Value > 0 {
				report(Sayf(Error, shift.At, "the new tip sits %s lower: the nozzle strikes the bed before the endstop triggers; lower the bed or move the endstop before the first homing, then measure again",
					millimetres(shift.Value)).With(values))
				return
			}
			report(Sayf(Warning, shift.At, "the new tip sits %s higher: the first layer is printed in the air; move the endstop, then measure again",
				millimetres(-shift.Value)).With(values))
		default:
			report(Sayf(Warning, shift.At, "the new tip sits %s, and the sheet does not say what finds the bed (z_reference): measure the nozzle's height again before the first move to the bed",
				lowerOrHigher(shift.Value)).With(Values{"shift_mm": shift.Value, "trigger_mm": nil}))
		}
	},
}

// offsetsStale reports distances between hotends of which one is replaced.
func offsetsStale(in *Input, report func(Finding)) {
	var parts []string
	var at parser.Span
	for i := range in.Printer.Geometry.Offsets {
		s := &in.Printer.Geometry.Offsets[i]
		if s.State != parser.Set {
			continue // one that cannot be told is config-gap's
		}
		at = placed(at, s.At)
		parts = append(parts, string(s.Key)+" "+millimetres(s.Value))
	}
	if len(parts) == 0 {
		return
	}
	report(Sayf(Warning, placed(at, in.Sheet.New.Nozzle.TipShiftMM.At), "the distances between the hotends were measured with the old one: %s; measure them again, or the other tool's nozzle strikes the bed or prints beside its part",
		strings.Join(parts, ", ")).
		With(Values{"shift_mm": nil, "trigger_mm": nil}))
}

func probeShift(in *Input, shift float64, report func(Finding)) {
	s := &in.Printer.Geometry.TriggerMM
	at := in.Sheet.New.Nozzle.TipShiftMM.At
	const steps = " (preflash bench has the steps)"
	values := Values{"shift_mm": shift, "trigger_mm": nil}
	switch {
	case s.State == parser.Unknown:
		report(cannotTell(Warning, s))
	case !s.Known():
		report(Sayf(Warning, at, "the new tip sits %s, and these files do not hold the probe's trigger height; measure it again before the first move to the bed%s",
			lowerOrHigher(shift), steps).With(values))
	default:
		height := math.Round((s.Value-shift)*1000) / 1000 // µm
		values["trigger_mm"] = height
		kept := ""
		switch {
		case s.Saved:
			kept = " (it stands in the saved block)"
		case in.Printer.Storage.On.Known() && in.Printer.Storage.On.Value:
			kept = " (another may stand in stored settings)"
		}
		if height <= 0 {
			report(Sayf(Error, placed(s.At, at), "the new tip sits %s, so the nozzle touches the bed before the probe triggers (trigger height %s%s); move the probe down by more than %s, then measure again%s",
				lowerOrHigher(shift), millimetres(s.Value), kept, millimetres(-height), steps).With(values))
			return
		}
		report(Sayf(Warning, placed(s.At, at), "the new tip sits %s: the trigger height goes from %s%s to about %s; measure it again before the first move to the bed%s",
			lowerOrHigher(shift), millimetres(s.Value), kept, millimetres(height), steps).With(values))
	}
}

func lowerOrHigher(shift float64) string {
	if shift > 0 {
		return millimetres(shift) + " lower"
	}
	return millimetres(-shift) + " higher"
}
