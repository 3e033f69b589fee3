package rules

import (
	"math"

	"preflash/parser"
	"preflash/rules/unit"
)

// usualFilamentMM is the filament's diameter where the configuration does not
// say it: common practice, no source.
const usualFilamentMM = 1.75

var flowLimit = &Rule{
	ID:      "flow-limit",
	Level:   Warning,
	Summary: "The volumetric limit does not fit what the new hotend can melt.",
	Doc: `filament speed = max_flow_mm3_s / (π d²/4), d the filament's diameter in the
configuration, else 1.75 mm (common practice, no source).
Warning: the configuration's volumetric limit is above max_flow_mm3_s.
Note: the configuration has no such limit; it belongs in the slicer then.
Speed limits of the extruder axis also serve retraction and are not lowered.
Values: flow_mm3_s, filament_mm_s. Change: the limit, down to the flow.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		flow := &in.Sheet.New.Nozzle.MaxFlowMM3S
		if !flow.Given || in.Printer.Flow.MaxMM3PerS.State == parser.Absent {
			return
		}
		d := usualFilamentMM
		if s := &in.Printer.Flow.FilamentMM; s.Known() && s.Value > 0 {
			d = s.Value
		}
		fast := filamentSpeed(flow.Value, d)
		values := Values{"flow_mm3_s": flow.Value, "filament_mm_s": fast}
		s := &in.Printer.Flow.MaxMM3PerS
		switch {
		case s.State == parser.Unknown:
			report(cannotTell(Warning, s))
		case !s.Known() || s.Value <= 0:
			report(Findingf(Note, flow.At,
				"set a limit of %s in the slicer, %s of %s filament: the new hotend melts no more, and "+
					"this configuration has no volumetric limit",
				unit.FlowRate(flow.Value), unit.Speed(fast), unit.Millimetres(d)).With(values))
		case s.Value > flow.Value+rounding:
			report(Findingf(Warning, placed(s.At, flow.At),
				"lower the %s from %s to %s, %s of %s filament: the new hotend melts no more",
				s.Key, unit.FlowRate(s.Value), unit.FlowRate(flow.Value), unit.Speed(fast),
				unit.Millimetres(d)).
				With(values).Change(s.To(flow.Value)))
		}
	},
}

// filamentSpeed is the speed of a round filament at a flow, mm/s.
func filamentSpeed(flowMM3S, diameterMM float64) float64 {
	return flowMM3S / (math.Pi / 4 * diameterMM * diameterMM)
}
