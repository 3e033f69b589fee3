package rules

import (
	"fmt"

	"preflash/parser"
	"preflash/rules/unit"
)

const runawayOffDoc = `The protection is off when the firmware is built without it, when its heating
check is switched off on its own, or when the rise that it demands is 0 °C or
less: then a heater that runs away, or a sensor that fell out of the block, is
not noticed. What counts is what is used at the end, however it is spelled.
Whether a window of 0 switches a check off is known for each generation of each
style; where it is not, the finding says that it cannot be told.
Warning: the firmware's generation has no heating check for this heater at all.
Source: common practice, no source. Cannot be waived for the hotend.`

const runawayOffHotendDoc = `
For the hotend also: open-loop control, in which the output follows the target
and not the temperature; and a converter chip whose faults are ignored, which
takes the trips at min and max temp away with them. Neither has a change.`

var runawayOff = &Rule{
	ID:       "runaway-off",
	Level:    Error,
	Unwaived: true,
	Hides:    []string{"runaway-loose"},
	Summary:  "The hotend's runaway protection is off or made ineffective.",
	Doc:      runawayOffDoc + runawayOffHotendDoc,
	Check: func(in *Input, report func(Finding)) {
		watchOff("hotend", &in.Printer.Hotend.Watch, report)
		if c := &in.Printer.Hotend.Loop.Control; c.Known() && c.Value == parser.ControlOpen {
			report(Findingf(Error, placed(c.At, sensorAt(in)),
				"remove the option that opens the control loop: the target is written to the heater's "+
					"output as a number, and nothing controls the temperature"))
		}
		switch s := &in.Printer.Limits.FaultChecks; {
		case s.State == parser.Absent:
		case s.State == parser.Unknown:
			report(cannotTell(Error, s))
		case s.State == parser.Off || !s.Value:
			report(Findingf(Error, placed(s.At, sensorAt(in)),
				"remove the option that ignores the sensor's converter chip: neither min nor max temp "+
					"trips, whatever it reads"))
		}
	},
}

var runawayOffBed = &Rule{
	ID:      "runaway-off-bed",
	Level:   Error,
	Whole:   true,
	Hides:   []string{"runaway-loose"},
	Summary: "The bed's runaway protection is off or made ineffective.",
	Doc:     runawayOffDoc,
	Check: func(in *Input, report func(Finding)) {
		if in.Printer.Bed.Heated.State != parser.Off {
			watchOff("bed", &in.Printer.Bed.Watch, report)
		}
	},
}

var watchdogOff = &Rule{
	ID:      "watchdog-off",
	Level:   Error,
	Whole:   true,
	Summary: "Nothing restarts a controller whose program hangs.",
	Doc: `A program that hangs leaves the heater's output as it is, and then no check
is made any more: only the controller's watchdog ends that.
Source: common practice, no source. Change: the watchdog on.`,
	Check: func(in *Input, report func(Finding)) {
		switch s := &in.Printer.Watchdog; {
		case s.State == parser.Absent:
		case s.State == parser.Unknown:
			report(cannotTell(Error, s))
		case s.State == parser.Off || !s.Value:
			report(Findingf(Error, s.At,
				"switch the %s on: a program that hangs leaves the heater's output as it is, and nothing "+
					"checks it any more", s.Key).
				Change(s.To(true)))
		}
	},
}

func watchOff(heater string, w *parser.Watch, report func(Finding)) {
	if w.On.State == parser.Absent {
		return
	}
	hasRise := w.Form != parser.WatchWindow || w.HeatingWindowS.State != parser.Absent
	if !hasRise {
		report(Findingf(Warning, w.On.At,
			"consider a newer firmware: this one has no heating check for the %s, and while it heats up, "+
				"a loose sensor would not be noticed", heater).Of(w.HeatingOn.Key))
	}
	switch {
	case w.On.State == parser.Unknown:
		report(cannotTell(Error, &w.On))
		return
	case !w.On.Value || w.On.State == parser.Off:
		f := Findingf(Error, w.On.At, "switch the runaway protection of the %s on: it is off, and a loose "+
			"sensor or a heater that stays on would not be noticed", heater).Of(w.On.Key)
		if w.CanTurnOn {
			f = f.Change(w.On.To(true))
		} else {
			f.Message = fmt.Sprintf("replace the firmware, it is too old to be trusted: nothing shows "+
				"that it has a runaway protection of the %s, which is off", heater)
			f.explain("a loose sensor or a heater that stays on would not be noticed")
		}
		report(f)
		return
	case !hasRise:
		return
	}
	switch {
	case w.Form != parser.WatchWindow:
	case w.HeatingOn.State == parser.Unknown:
		report(cannotTell(Error, &w.HeatingOn))
	case !w.HeatingOn.Value || w.HeatingOn.State == parser.Off:
		report(Findingf(Error, w.HeatingOn.At,
			"switch the heating check of the %s on: while it heats up, a loose sensor would not be "+
				"noticed", heater).
			Of(w.HeatingOn.Key).Change(w.HeatingOn.To(true)))
		return
	}
	switch {
	case w.RiseC.State == parser.Unknown:
		report(cannotTell(Error, &w.RiseC))
	case w.RiseC.Value <= 0:
		report(Findingf(Error, w.RiseC.At, "raise the %s: %s can never trip the heating check", w.RiseC.Key,
			unit.Kelvin(w.RiseC.Value)).
			Of(w.RiseC.Key).Change(w.RiseC.To(w.Usual.RiseC)))
	}
}
