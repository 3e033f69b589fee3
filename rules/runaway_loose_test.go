package rules

import (
	"testing"

	"preflash/parser"
)

func TestRunawayLoose(t *testing.T) {
	tests := []struct {
		name         string
		spoil        func(*parser.Printer)
		key          parser.Key
		value, limit float64
		usual        float64
	}{
		{"heating check window", func(p *parser.Printer) { p.Hotend.Watch.HeatingWindowS.Value = 121 },
			parser.HotendHeatingWindow, 121, 120, 20},
		{"required rise", func(p *parser.Printer) { p.Hotend.Watch.RiseC.Value = 0.9 }, parser.HotendRise,
			0.9, 1, 2},
		{"hysteresis", func(p *parser.Printer) { p.Hotend.Watch.HysteresisC.Value = 16 },
			parser.HotendHysteresis, 16, 15, 4},
		{"drop check period", func(p *parser.Printer) { p.Hotend.Watch.DropPeriodS.Value = 180 },
			parser.HotendDropPeriod, 180, 120, 40},
		{"error sum", func(p *parser.Printer) {
			p.Hotend.Watch = sumWatch()
			p.Hotend.Watch.ErrorSumCS.Value = 361
		}, parser.HotendErrorSum, 361, 360, 120},
		{"bed heating check window", func(p *parser.Printer) { p.Bed.Watch.HeatingWindowS.Value = 301 },
			parser.BedHeatingWindow, 301, 300, 300},
		{"bed required rise", func(p *parser.Printer) { p.Bed.Watch.RiseC.Value = 0.2 }, parser.BedRise, 0.2,
			1, 1},
		{"bed hysteresis", func(p *parser.Printer) { p.Bed.Watch.HysteresisC.Value = 90 },
			parser.BedWatchHysteresis, 90, 15, 15},
		{"bed drop check period", func(p *parser.Printer) { p.Bed.Watch.DropPeriodS.Value = 600 },
			parser.BedDropPeriod, 600, 300, 300},
		{"grace time", func(p *parser.Printer) {
			p.Limits.Graces = []parser.Setting[float64]{set(parser.Grace("of the start"), 31.0)}
		}, parser.Grace("of the start"), 31, 30, 0},
		{"bad samples", func(p *parser.Printer) {
			p.Limits.BadSamples = []parser.Setting[float64]{set(parser.BadSamples("too low"), 11.0)}
		}, parser.BadSamples("too low"), 11, 10, 0},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			in := healthyInput()
			tt.spoil(in.Printer)
			f := one(t, runawayLoose, in)
			wantValues(t, f, Values{"setting": string(tt.key), "value": tt.value, "limit": tt.limit})
			wantChanges(t, f, parser.Change{Key: tt.key, Value: tt.usual})
		})
	}
}

// A heating check that is armed only below the room's temperature is never armed.
func TestRunawayLooseNeverArmed(t *testing.T) {
	in := healthyInput()
	w := &in.Printer.Hotend.Watch
	low, room := in.Sheet.New.PrintC.Value[0], in.Sheet.Printer.AmbientC.Value
	most := low - room - w.RiseC.Value - 1
	w.ArmMarginC.Value = most - 1
	silent(t, runawayLoose, in)

	w.ArmMarginC.Value = 300
	f := one(t, runawayLoose, in)
	wantSaid(t, f, "so it never looks", "lower the hotend arming margin of 300 K")
	wantValues(t, f, Values{"setting": string(parser.HotendArmMargin), "value": 300.0, "limit": most})
	wantChanges(t, f)

	w.HeatingOn = off[bool](parser.HotendHeatingOn)
	silent(t, runawayLoose, in)
}

func TestRunawayLooseSilent(t *testing.T) {
	tests := []struct {
		name  string
		spoil func(*parser.Printer)
	}{
		{"healthy", func(*parser.Printer) {}},
		{"at the limits", func(p *parser.Printer) {
			w := &p.Hotend.Watch
			w.HeatingWindowS.Value, w.RiseC.Value, w.HysteresisC.Value, w.DropPeriodS.Value = 120, 1, 15, 120
		}},
		{"off is another rule's business", func(p *parser.Printer) {
			p.Hotend.Watch.On = off[bool](parser.HotendWatchOn)
			p.Hotend.Watch.HeatingWindowS.Value = 999
		}},
		{"no heated bed", func(p *parser.Printer) {
			p.Bed.Heated = off[bool](parser.BedHeated)
			p.Bed.Watch.DropPeriodS.Value = 999
		}},
		{"sum at its limit", func(p *parser.Printer) {
			p.Hotend.Watch = sumWatch()
			p.Hotend.Watch.ErrorSumCS.Value = 360
		}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			in := healthyInput()
			tt.spoil(in.Printer)
			silent(t, runawayLoose, in)
		})
	}
}

// The figure that a loose window gets is the firmware's own, or what the new
// hotend needs where that is more.
func TestRunawayLooseWhatIsNeeded(t *testing.T) {
	in := weak(26)
	w := &in.Printer.Hotend.Watch
	w.HeatingWindowS.Value, w.Usual.RiseC, w.Usual.HeatingWindowS = 300, 4, 8
	wantChanges(t, one(t, runawayLoose, in), parser.Change{Key: parser.HotendHeatingWindow, Value: 50.0})
	in = healthyInput()
	w = &in.Printer.Hotend.Watch
	w.HeatingWindowS.Value = 300
	wantChanges(t, one(t, runawayLoose, in), parser.Change{Key: parser.HotendHeatingWindow, Value: 20.0})
}

// What the firmware's own checks demand is not too wide, and no change goes
// below it.
func TestRunawayLooseFloor(t *testing.T) {
	in := healthyInput()
	grace := set(parser.Grace("while heating up"), 60.0)
	grace.Least = 15
	in.Printer.Limits.Graces = []parser.Setting[float64]{grace}
	wantChanges(t, one(t, runawayLoose, in), parser.Change{Key: grace.Key, Value: 15.0})
	in.Printer.Limits.Graces[0].Least = 60
	silent(t, runawayLoose, in)
}

// A fault that neither halts nor says so is a warning.
func TestRunawayLooseHalt(t *testing.T) {
	in := healthyInput()
	in.Printer.Limits.HaltGrace = set(parser.HaltGrace, 2.0)
	f := one(t, runawayLoose, in)
	wantSaid(t, f, "2 s", "without a halt or a word")
	wantChanges(t, f)
	if f.Level != Warning {
		t.Errorf("level %s, want warning", f.Level)
	}
	in.Printer.Limits.HaltGrace.Value = 0
	silent(t, runawayLoose, in)
}

// A target that is set all the time keeps the heating check from ever ending.
func TestRunawayLooseRearmed(t *testing.T) {
	in := healthyInput()
	l := &in.Printer.Limits
	l.AutoMax = set(parser.AutoTarget, 250.0)
	f := one(t, runawayLoose, in)
	if wantSaid(t, f, "let no print ask"); f.Level != Note {
		t.Errorf("level %s, want note", f.Level)
	}
	l.AutoAlways = true
	f = one(t, runawayLoose, in)
	if wantSaid(t, f, "starts anew and never trips"); f.Level != Error {
		t.Errorf("level %s, want error", f.Level)
	}
	wantChanges(t, f)
	in.Printer.Hotend.Watch.HeatingOn = off[bool](parser.HotendHeatingOn)
	silent(t, runawayLoose, in)
}
