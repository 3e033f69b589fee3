package rules

import (
	"testing"

	"preflash/parser"
)

func TestRunawayOff(t *testing.T) {
	tests := []struct {
		name   string
		spoil  func(*parser.Watch)
		said   string
		change []parser.Change
	}{
		{"off", func(w *parser.Watch) { w.On = off[bool](parser.HotendWatchOn) },
			"is off", []parser.Change{{Key: parser.HotendWatchOn, Value: true}}},
		{"set to false", func(w *parser.Watch) { w.On.Value = false },
			"is off", []parser.Change{{Key: parser.HotendWatchOn, Value: true}}},
		{"too old", func(w *parser.Watch) { w.On, w.CanTurnOn = off[bool](parser.HotendWatchOn), false },
			"too old to be trusted", nil},
		{"unknown", func(w *parser.Watch) { w.On = unknown[bool](parser.HotendWatchOn) },
			"cannot tell the hotend runaway protection", nil},
		{"heating check off", func(w *parser.Watch) { w.HeatingOn = off[bool](parser.HotendHeatingOn) },
			"switch the heating check of the hotend on",
			[]parser.Change{{Key: parser.HotendHeatingOn, Value: true}}},
		{"heating check unknown",
			func(w *parser.Watch) { w.HeatingOn = unknown[bool](parser.HotendHeatingOn) },
			"cannot tell the hotend heating check", nil},
		{"no rise demanded", func(w *parser.Watch) { w.RiseC.Value = 0 },
			"can never trip", []parser.Change{{Key: parser.HotendRise, Value: 2.0}}},
		{"negative rise demanded", func(w *parser.Watch) { w.RiseC.Value = -5 },
			"can never trip", []parser.Change{{Key: parser.HotendRise, Value: 2.0}}},
		{"rise unknown", func(w *parser.Watch) { w.RiseC = unknown[float64](parser.HotendRise) },
			"cannot tell the hotend required rise", nil},
	}
	silent(t, runawayOff, healthyInput())
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			in := healthyInput()
			tt.spoil(&in.Printer.Hotend.Watch)
			f := one(t, runawayOff, in)
			if f.Level != Error {
				t.Errorf("level %s, want error", f.Level)
			}
			wantSaid(t, f, tt.said)
			wantChanges(t, f, tt.change...)
			silent(t, runawayOffBed, in)
		})
	}
}

// Without control, or with a chip that is not heeded, no watch helps.
func TestRunawayOffHotend(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Loop.Control.Value = parser.ControlOpen
	f := one(t, runawayOff, in)
	wantSaid(t, f, "opens the control loop")
	wantChanges(t, f)
	if f.Level != Error || f.At.Text() != string(parser.LoopControl) || !runawayOff.Unwaived {
		t.Errorf("%s at %s", f.Level, f.At.Text())
	}

	in = healthyInput()
	in.Printer.Limits.FaultChecks = byDefault(parser.FaultChecks, true)
	silent(t, runawayOff, in)
	in.Printer.Limits.FaultChecks = off[bool](parser.FaultChecks)
	f = one(t, runawayOff, in)
	wantSaid(t, f, "neither min nor max temp trips")
	wantChanges(t, f)
	in.Printer.Limits.FaultChecks = unknown[bool](parser.FaultChecks)
	wantSaid(t, one(t, runawayOff, in), "cannot tell the sensor fault checks")
}

func TestWatchdogOff(t *testing.T) {
	in := healthyInput()
	silent(t, watchdogOff, in) // the style has none, or says nothing
	in.Printer.Watchdog = set(parser.Watchdog, true)
	silent(t, watchdogOff, in)
	in.Printer.Watchdog = off[bool](parser.Watchdog)
	f := one(t, watchdogOff, in)
	wantSaid(t, f, "a program that hangs")
	wantChanges(t, f, parser.Change{Key: parser.Watchdog, Value: true})
	in.Printer.Watchdog = unknown[bool](parser.Watchdog)
	wantSaid(t, one(t, watchdogOff, in), "cannot tell the watchdog")
}

func TestRunawayOffBed(t *testing.T) {
	in := healthyInput()
	in.Printer.Bed.Watch.On = off[bool](parser.BedWatchOn)
	wantChanges(t, one(t, runawayOffBed, in), parser.Change{Key: parser.BedWatchOn, Value: true})
	silent(t, runawayOff, in)

	in.Printer.Bed.Heated = off[bool](parser.BedHeated)
	silent(t, runawayOffBed, in)
}

// A firmware may have no heating check for the bed: that is said whether the rest
// is on or off, since no edit can change it.
func TestRunawayOffBedWithoutHeatingCheck(t *testing.T) {
	in := healthyInput()
	w := &in.Printer.Bed.Watch
	w.HeatingOn, w.HeatingWindowS, w.RiseC = off[bool](parser.BedHeatingOn), parser.Setting[float64]{},
		parser.Setting[float64]{}
	f := one(t, runawayOffBed, in)
	wantSaid(t, f, "no heating check for the bed")
	if f.Level != Warning || len(f.Changes) > 0 {
		t.Errorf("%s with %d changes, want a warning without", f.Level, len(f.Changes))
	}
	w.On = off[bool](parser.BedWatchOn)
	if got := run(t, runawayOffBed, in); len(got) != 2 || got[1].Level != Error || len(got[1].Changes) != 1 {
		t.Errorf("findings %v, want the warning and an error with a change", got)
	}
}

// A watch that adds up errors has no heating check to switch off.
func TestRunawayOffSum(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Watch = sumWatch()
	silent(t, runawayOff, in)
	in.Printer.Hotend.Watch.RiseC = set(parser.HotendRise, 0.0)
	wantSaid(t, one(t, runawayOff, in), "can never trip")
}

func sumWatch() parser.Watch {
	return parser.Watch{
		Form:           parser.WatchSum,
		On:             byDefault(parser.HotendWatchOn, true),
		RiseC:          byDefault(parser.HotendRise, 2.0),
		HeatingWindowS: byDefault(parser.HotendHeatingWindow, 20.0),
		HysteresisC:    byDefault(parser.HotendHysteresis, 5.0),
		ErrorSumCS:     set(parser.HotendErrorSum, 120.0),
		Usual:          parser.WatchFigures{RiseC: 2, HeatingWindowS: 20, HysteresisC: 5, ErrorSumCS: 120},
		CanTurnOn:      true,
	}
}
