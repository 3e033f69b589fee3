package rules

import (
	"sync"

	"preflash/parser"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

// loosest is how wide a watch may be before it protects little: common
// practice, no source.
type loosest struct {
	riseWindowS, riseC, hysteresisC, holdPeriodS, errorSumCS float64
}

var (
	loosestHotend = loosest{riseWindowS: 120, riseC: 1, hysteresisC: 15, holdPeriodS: 120, errorSumCS: 360}
	loosestBed    = loosest{riseWindowS: 300, riseC: 1, hysteresisC: 15, holdPeriodS: 300, errorSumCS: 720}
)

// Blindness to readings outside the limits: common practice, no source.
const (
	loosestGraceS     = 30
	loosestBadSamples = 10
)

var runawayLoose = &Rule{
	ID:      "runaway-loose",
	Level:   Error,
	Summary: "The runaway protection is so wide that it protects little.",
	Doc: `The heating check asks for a rise within a window while the heater heats up; the
drop check trips when it stays below its target for a period. A style that has
one for both adds up how far it is below the target: its error sum.
Limits (common practice, no source):
  hotend: window 120 s, required rise 1 °C, hysteresis 15 K,
          period 120 s, error sum 360 °C·s
  bed:    window 300 s, required rise 1 °C, hysteresis 15 K,
          period 300 s, error sum 720 °C·s
  grace time before a reading below the minimum counts: 30 s
  bad samples in a row that are tolerated: 10
Also a heating check of the hotend that is armed only so far below the target
that a heat-up from ambient_c to the lowest print_c never arms it, or that a
target which the firmware keeps setting by itself starts anew all the time.
Warning: a fault only switches the heaters off, without a halt or a word. Note:
the check starts anew while a print asks for an automatic target. These have no
change.
Values: setting, value, limit. Change: the figure that the style's firmware
ships with, or the least that the new hotend needs (runaway-tight), whichever
is wider, never below what the firmware's own checks accept; for the bed, which
is not modelled, the limit itself.`,
	Check: func(in *Input, report func(Finding)) {
		p := in.Printer
		if w := &p.Hotend.Watch; w.On.State != parser.Off {
			watchLoose(w, loosestHotend, sync.OnceValue(func() parser.WatchFigures { return enough(in) }),
				report)
			neverArmed(in, w, report)
			rearmed(&p.Limits, w, report)
		}
		if w := &p.Bed.Watch; p.Bed.Heated.State != parser.Off && w.On.State != parser.Off {
			watchLoose(w, loosestBed, loosestBed.figures, report)
		}
		for i := range p.Limits.Graces {
			tooWide(&p.Limits.Graces[i], loosestGraceS, none, unit.Seconds,
				"for so long a sensor that reads too low is not noticed", report)
		}
		for i := range p.Limits.BadSamples {
			tooWide(&p.Limits.BadSamples[i], loosestBadSamples, none, unit.Count,
				"so many in a row pass unnoticed", report)
		}
		if s := &p.Limits.HaltGrace; s.State == parser.Unknown {
			report(cannotTell(Warning, s))
		} else if s.Known() && s.Value > 0 {
			report(Findingf(Warning, s.At, "remove the %s of %s: the first bad reading switches the "+
				"heaters off, most faults are not met again, and the printer cools without a halt or a "+
				"word", s.Key,
				unit.Seconds(s.Value)).
				With(Values{"setting": string(s.Key), "value": s.Value, "limit": 0.0}))
		}
	},
}

func none() float64 { return 0 }

// figures are the limits as a watch's figures.
func (l loosest) figures() parser.WatchFigures {
	return parser.WatchFigures{RiseC: l.riseC, RiseWindowS: l.riseWindowS, HysteresisC: l.hysteresisC,
		HoldPeriodS: l.holdPeriodS, ErrorSumCS: l.errorSumCS}
}

// enough is what a hotend's watch is set to: the figures that the style's
// firmware ships with, or the wider ones that the new hotend needs.
func enough(in *Input) parser.WatchFigures {
	to := in.Printer.Hotend.Watch.Usual
	if in.NoSheet {
		return to
	}
	w, missing := watchOf(in)
	if missing != nil || w.Form == heat.NoWatch {
		return to
	}
	p, _ := plantOf(in)
	w.Heating.RiseC, w.Heating.WindowS = to.RiseC, to.RiseWindowS
	w.Sum.HysteresisC, w.Sum.RiseC, w.Sum.WindowS, w.Sum.LimitCS = to.HysteresisC, to.RiseC, to.RiseWindowS,
		to.ErrorSumCS
	at, _ := stepTarget(in)
	wider := heat.Widen(p, heat.FanFull, w, at, hotendBounds)
	switch {
	case !wider.Holds:
	case w.Form == heat.WindowWatch:
		to.RiseWindowS = wider.Watch.Heating.WindowS
	default:
		to.RiseWindowS, to.ErrorSumCS = wider.Watch.Sum.WindowS, wider.Watch.Sum.LimitCS
	}
	return to
}

func watchLoose(w *parser.Watch, limit loosest, to func() parser.WatchFigures, report func(Finding)) {
	const blind = "a heater that runs away is noticed late or never"
	if w.Form == parser.WatchSum || w.RiseOn.State != parser.Off {
		tooWide(&w.RiseWindowS, limit.riseWindowS, func() float64 { return to().RiseWindowS }, unit.Seconds,
			blind, report)
		if s := &w.RiseC; s.Known() && s.Value > 0 && s.Value < limit.riseC {
			report(Findingf(Error, s.At, "raise the %s: it is %s, below %s, and noise alone can satisfy it",
				s.Key, riseText(s.Value), riseText(limit.riseC)).
				With(Values{"setting": string(s.Key), "value": s.Value, "limit": limit.riseC}).
				Of(s.Key).Bad(figureOf(s)).Change(s.To(to().RiseC)))
		}
	}
	tooWide(&w.HysteresisC, limit.hysteresisC, func() float64 { return to().HysteresisC }, unit.Kelvin, blind,
		report)
	switch w.Form {
	case parser.WatchWindow:
		tooWide(&w.HoldPeriodS, limit.holdPeriodS, func() float64 { return to().HoldPeriodS }, unit.Seconds,
			blind, report)
	case parser.WatchSum:
		tooWide(&w.ErrorSumCS, limit.errorSumCS, func() float64 { return to().ErrorSumCS },
			unit.DegreeSeconds, blind, report)
	}
}

// neverArmed reports a heating check that watches no heat-up to the lowest
// temperature that is printed.
func neverArmed(in *Input, w *parser.Watch, report func(Finding)) {
	if w.Form != parser.WatchWindow || w.RiseOn.State == parser.Off || !w.RiseC.Known() ||
		!w.ArmMarginC.Known() {
		return
	}
	low, room := in.Sheet.New.PrintC.Value[0], in.Sheet.Printer.AmbientC.Value
	armed := low - (w.RiseC.Value + w.ArmMarginC.Value + 1)
	if armed > room {
		return
	}
	s := &w.ArmMarginC
	if w.RiseC.Value > s.Value {
		s = &w.RiseC
	}
	report(Findingf(Error, placed(s.At, placed(w.RiseC.At, in.Sheet.New.PrintC.At)),
		"lower the %s of %s: for a target of %s the heating check is armed only below %s, and the room "+
			"has %s, so it never looks",
		s.Key, unit.Kelvin(s.Value), unit.Celsius(low), unit.Celsius(armed), unit.Celsius(room)).
		With(Values{"setting": string(s.Key), "value": s.Value, "limit": s.Value - (room - armed)}).
		Of("arming"))
}

// rearmed reports a heating check whose window starts anew with every target that
// the firmware sets by itself.
func rearmed(l *parser.Limits, w *parser.Watch, report func(Finding)) {
	s := &l.AutoMax
	if w.Form != parser.WatchWindow || w.RiseOn.State == parser.Off || s.State == parser.Absent {
		return
	}
	switch {
	case s.State == parser.Unknown:
		report(cannotTell(Warning, s))
	case !s.Known():
	case l.AutoAlways:
		report(Findingf(Error, s.At,
			"switch the automatic target off: the firmware raises every target with the speed of the "+
				"filament, and with each the heating check starts anew and never trips").
			With(Values{"setting": string(s.Key), "value": s.Value, "limit": nil}).Of(s.Key))
	default:
		report(Findingf(Note, s.At, "let no print ask for the automatic target, or switch it off: while "+
			"one does, the heating check starts anew and never trips").
			With(Values{"setting": string(s.Key), "value": s.Value, "limit": nil}))
	}
}

// tooWide reports a figure above its limit, and what it should be; usual is
// what the firmware ships with.
func tooWide(s *parser.Setting[float64], limit float64, to func() float64, unit func(float64) string,
	why string, report func(Finding)) {
	switch {
	case s.State == parser.Absent || s.State == parser.Off:
	case s.State == parser.Unknown:
		report(cannotTell(Warning, s))
	case s.Value > max(limit, s.Least):
		report(Findingf(Error, s.At, "lower the %s: it is %s, above %s, and %s", s.Key, unit(s.Value),
			unit(limit), why).
			With(Values{"setting": string(s.Key), "value": s.Value, "limit": limit}).
			Of(s.Key).Bad(figureOf(s)).Change(s.To(max(to(), s.Least))))
	}
}
