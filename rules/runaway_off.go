package rules

import "preflash/parser"

const runawayOffDoc = `The protection is off when the firmware is built without it, when its rise
watch is switched off on its own, or when the rise that it demands is 0 °C or
less: then a heater that runs away, or a sensor that fell out of the block, is
not noticed. What counts is what is in force at the end, however it is spelled.
Whether a window of 0 switches a watch off is known for each generation of each
style; where it is not, the finding says that it cannot be told.
Warning: the firmware's generation has no rise watch for this heater at all.
Source: common practice, no source. Cannot be waived for the hotend.`

var runawayOff = &Rule{
	ID:       "runaway-off",
	Level:    Error,
	Unwaived: true,
	Summary:  "The hotend's runaway protection is off or made ineffective.",
	Doc:      runawayOffDoc,
	Check: func(in *Input, report func(Finding)) {
		watchOff("hotend", &in.Printer.Hotend.Watch, report)
	},
}

var runawayOffBed = &Rule{
	Whole:   true,
	ID:      "runaway-off-bed",
	Level:   Error,
	Summary: "The bed's runaway protection is off or made ineffective.",
	Doc:     runawayOffDoc,
	Check: func(in *Input, report func(Finding)) {
		if in.Printer.Bed.Heated.State != parser.Off {
			watchOff("bed", &in.Printer.Bed.Watch, report)
		}
	},
}

func watchOff(heater string, w *parser.Watch, report func(Finding)) {
	hasRise := w.Form != parser.WatchWindow || w.RiseWindowS.Key != ""
	if !hasRise {
		report(Sayf(Warning, w.On.At, "this firmware has no rise watch for the %s: while it heats up, a loose sensor would not be noticed; a newer firmware has one", heater))
	}
	switch {
	case w.On.State == parser.Unknown:
		report(cannotTell(Error, &w.On))
		return
	case !w.On.Value || w.On.State == parser.Off:
		f := Sayf(Error, w.On.At, "the runaway protection of the %s is off: a loose sensor or a heater that stays on would not be noticed", heater)
		if w.CanTurnOn {
			f = f.Change(w.On.To(true))
		} else {
			f.Message += "; nothing shows that this firmware has it at all, so the firmware is too old to be trusted: replace it"
		}
		report(f)
		return
	case !hasRise:
		return
	}
	switch {
	case w.Form != parser.WatchWindow:
	case w.RiseOn.State == parser.Unknown:
		report(cannotTell(Error, &w.RiseOn))
	case !w.RiseOn.Value || w.RiseOn.State == parser.Off:
		report(Sayf(Error, w.RiseOn.At, "the rise watch of the %s is off: while it heats up, a loose sensor would not be noticed", heater).
			Change(w.RiseOn.To(true)))
		return
	}
	switch {
	case w.RiseC.State == parser.Unknown:
		report(cannotTell(Error, &w.RiseC))
	case w.RiseC.Value <= 0:
		report(Sayf(Error, w.RiseC.At, "the rise watch of the %s demands a rise of %s: it can never trip", heater, celsius(w.RiseC.Value)).
			Change(w.RiseC.To(w.Usual.RiseC)))
	}
}
