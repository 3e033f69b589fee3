package rules

import (
	"math"
	"strconv"
	"strings"

	"preflash/parser"
	"preflash/rules/unit"
)

var tipShift = &Rule{
	ID:      "tip-shift",
	Level:   Error,
	Summary: "The new nozzle tip sits at another height than the old one.",
	Doc: `shift = new.nozzle.tip_shift_mm, positive where the new tip sits lower. What
finds the bed is what homes Z by the configuration, else printer.z_reference;
where the two contradict each other, a warning of its own.
Probe: the nozzle is at trigger height − shift above the bed when the probe
triggers. Error where that is 0 or less: the nozzle touches first. Warning
otherwise: the trigger height must be measured again.
Endstop near the bed: the nozzle is at endstop height − shift when it triggers.
Error where that is 0 or less, or where a lower tip meets an endstop of unknown
height: the nozzle touches first. Warning otherwise.
Endstop far from the bed, as on a delta: homing is safe. A lower tip is an
error: the first move down drives it into the bed. A higher one prints in the
air: warning.
Nozzle as its own probe, or pressing the switch itself: silent.
Where the sheet gives no shift, it may be any of these: error; warning where
neither sheet nor configuration says anything of Z.
Warning of its own: distances between the hotends, which belong to the old one.
With done.height_on, the day on which all of this was measured again: silent.
Values: shift_mm, trigger_mm (the new height; null where it cannot be told). No
change: heights are measured, never computed.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		if in.Sheet.Done.HeightOn.Given {
			return
		}
		offsetsStale(in, report)
		shift := &in.Sheet.New.Nozzle.TipShiftMM
		finds := findsBed(in, report)
		switch {
		case finds == "nozzle":
		case !shift.Given:
			level := Error
			if finds == "" {
				level = Warning // nothing that was read is about Z
			}
			report(Findingf(level, shift.At,
				"measure the nozzle's height again, before the first move to the bed, then give the day "+
					"as done.height_on: how far the new tip is shifted is not known "+
					"(new.nozzle.tip_shift_mm), and it may strike the bed").
				With(Values{"shift_mm": nil, "trigger_mm": nil}))
		case shift.Value == 0:
		case finds == "probe":
			probeShift(in, shift.Value, report)
		case finds == "endstop":
			endstopShift(in, shift.Value, report)
		default:
			level := Warning
			if shift.Value > 0 {
				level = Error
			}
			report(Findingf(level, shift.At,
				"measure the nozzle's height again, before the first move to the bed: the new tip sits "+
					"%s, and neither sheet (z_reference) nor configuration says what finds the bed",
				lowerOrHigher(shift.Value)).With(Values{"shift_mm": shift.Value, "trigger_mm": nil}))
		}
	},
}

// findsBed is what finds the bed, in the words of the sheet, "" where nothing
// says so. The configuration knows what homes; where the sheet says otherwise,
// that is reported.
func findsBed(in *Input, report func(Finding)) string {
	g, z := &in.Printer.Geometry, &in.Sheet.Printer.ZReference
	finds := z.Value
	if homes := &g.Homes; homes.Known() {
		byProbe := homes.Value == parser.HomesByProbe
		if z.Value == "nozzle" && homes.Value != parser.HomesFar {
			return z.Value // as the probe, or pressing the switch: the files cannot know
		}
		if z.Given && byProbe == (z.Value == "endstop") {
			report(Findingf(Warning, z.At, "correct printer.z_reference: it says %q, and the "+
				"configuration homes Z by %s (%s)", z.Value, homes.Value, homes.At).
				With(Values{"shift_mm": nil, "trigger_mm": nil}).Of(homes.Key))
		}
		if !byProbe {
			return "endstop"
		}
		finds = "probe"
	}
	if finds == "probe" && g.NozzleProbes.Known() && g.NozzleProbes.Value {
		return "nozzle"
	}
	return finds
}

// offsetsStale reports distances between hotends of which one is replaced.
func offsetsStale(in *Input, report func(Finding)) {
	var parts []string
	var at parser.Span
	for i := range in.Printer.Geometry.Offsets {
		s := &in.Printer.Geometry.Offsets[i]
		if s.State != parser.Set {
			continue // one that is unknown is config-gap's
		}
		at = placed(at, s.At)
		parts = append(parts, string(s.Key)+" "+unit.Millimetres(s.Value))
	}
	if len(parts) == 0 {
		return
	}
	report(Findingf(Warning, placed(at, in.Sheet.New.Nozzle.TipShiftMM.At),
		"measure the distances between the hotends again: they belong to the old one (%s); with them one "+
			"nozzle strikes what the other printed, or prints beside it",
		strings.Join(parts, ", ")).
		With(Values{"shift_mm": nil, "trigger_mm": nil}))
}

func probeShift(in *Input, shift float64, report func(Finding)) {
	g := &in.Printer.Geometry
	s := &g.TriggerMM
	at := in.Sheet.New.Nozzle.TipShiftMM.At
	values := Values{"shift_mm": shift, "trigger_mm": nil}
	switch {
	case s.State == parser.Unknown:
		report(cannotTell(Warning, s))
		return
	case !s.Known():
		report(Findingf(Warning, at,
			"measure the probe's trigger height again, before the first move to the bed: the new tip sits "+
				"%s, and these files do not hold that height",
			lowerOrHigher(shift)).With(values))
		return
	}
	height := afterShift(s.Value, shift)
	values["trigger_mm"] = height
	kept := ""
	switch {
	case s.Saved:
		kept = " (it stands in the saved block)"
	case in.Printer.Storage.On.Known() && in.Printer.Storage.On.Value:
		kept = " (another may stand in stored settings)"
	}
	place := placed(s.At, at)
	switch {
	case s.Value <= 0 && !g.BesideNozzle:
		report(Findingf(Error, place,
			"give z_reference = \"nozzle\" if the nozzle itself is the probe, else move the probe: beside "+
				"it, with a trigger height of %s%s, it could not trigger before the nozzle touches the bed",
			unit.Millimetres(s.Value), kept).With(values))
	case height <= 0:
		report(Findingf(Error, place, "move the probe down by more than %s, then measure its trigger "+
			"height again: the new tip sits %s, so the nozzle touches the bed before the probe triggers",
			unit.Millimetres(-height), lowerOrHigher(shift)).
			Explain("the trigger height is %s%s", unit.Millimetres(s.Value), kept).With(values))
	case in.Printer.Tool > 0 && len(g.Offsets) > 0:
		report(Findingf(Warning, place,
			"measure the heights again, before the first move to the bed: the new tip sits %s; where this "+
				"tool homes, the trigger height goes from %s%s to about %s, else this tool's distance to "+
				"the one that homes changes by as much",
			lowerOrHigher(shift), unit.Millimetres(s.Value), kept, unit.Millimetres(height)).With(values))
	default:
		report(Findingf(Warning, place,
			"measure the trigger height again, before the first move to the bed: the new tip sits %s, so "+
				"it goes from %s%s to about %s",
			lowerOrHigher(shift), unit.Millimetres(s.Value), kept, unit.Millimetres(height)).With(values))
	}
}

// endstopShift reports what a shift means where a switch homes.
func endstopShift(in *Input, shift float64, report func(Finding)) {
	g := &in.Printer.Geometry
	at := in.Sheet.New.Nozzle.TipShiftMM.At
	values := Values{"shift_mm": shift, "trigger_mm": nil}
	far := g.Homes.Known() && g.Homes.Value == parser.HomesFar
	height, goes, known := 0.0, "", false
	if len(g.EndstopMM) > 0 && g.EndstopMM[0].Known() {
		s := &g.EndstopMM[0]
		height, known = afterShift(s.Value, shift), true
		values["trigger_mm"] = height
		at = placed(s.At, at)
		goes = "; the endstop's height goes from " + unit.Millimetres(s.Value) + " to about " +
			unit.Millimetres(height)
		if n := len(g.EndstopMM); n > 1 {
			goes += ", and those of the other towers (" + strconv.Itoa(n) + " in all) by as much"
		}
	}
	switch {
	case shift < 0:
		report(Findingf(Warning, at, "measure the endstop's height again: the new tip sits %s, so the "+
			"first layer is printed in the air%s",
			lowerOrHigher(shift), goes).With(values))
	case far:
		report(Findingf(Error, at,
			"measure the endstop's height again, before the first move down: the new tip sits %s, and "+
				"homing, far from the bed, does not show it%s",
			lowerOrHigher(shift), goes).With(values))
	case known && height > 0:
		report(Findingf(Warning, at,
			"measure the endstop's height again, before the first move to the bed: the new tip sits %s%s",
			lowerOrHigher(shift), goes).With(values))
	default:
		report(Findingf(Error, at,
			"lower the bed or move the endstop, before the first homing, then measure its height again: "+
				"the new tip sits %s, so the nozzle strikes the bed before the endstop triggers%s",
			lowerOrHigher(shift), goes).With(values))
	}
}

// afterShift is a height, mm, once the tip sits lower by shift; to the µm.
func afterShift(height, shift float64) float64 { return math.Round((height-shift)*1000) / 1000 }

func lowerOrHigher(shift float64) string {
	if shift > 0 {
		return unit.Millimetres(shift) + " lower"
	}
	return unit.Millimetres(-shift) + " higher"
}
