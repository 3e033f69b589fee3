package rules

import (
	"testing"
	"time"

	"preflash/parser"
)

func TestTipShift(t *testing.T) {
	tests := []struct {
		name    string
		z       string
		shift   float64
		level   Level
		trigger any
		says    []string
	}{
		{"probe, lower", "probe", 0.5, Warning, 1.3,
			[]string{"0.5 mm lower", "from 1.8 mm to about 1.3 mm", "measure the trigger height again"}},
		{"probe, higher", "probe", -0.5, Warning, 2.3, []string{"0.5 mm higher", "to about 2.3 mm"}},
		{"probe, touches first", "probe", 2, Error, -0.2,
			[]string{"touches the bed before the probe triggers", "by more than 0.2 mm"}},
		{"probe, just touches", "probe", 1.8, Error, 0.0, []string{"touches the bed"}},
		{"endstop, lower", "endstop", 0.5, Error, nil,
			[]string{"0.5 mm lower", "strikes the bed before the endstop"}},
		{"endstop, higher", "endstop", -0.5, Warning, nil, []string{"0.5 mm higher", "in the air"}},
		{"not said, lower", "", 0.5, Error, nil, []string{"z_reference"}},
		{"not said, higher", "", -0.5, Warning, nil, []string{"z_reference"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			in := healthyInput()
			in.Sheet.Printer.ZReference.Value = tt.z
			in.Sheet.New.Nozzle.TipShiftMM.Value = tt.shift
			f := one(t, tipShift, in)
			if f.Level != tt.level {
				t.Errorf("level %s, want %s", f.Level, tt.level)
			}
			wantValues(t, f, Values{"shift_mm": tt.shift, "trigger_mm": tt.trigger})
			wantChanges(t, f) // heights are never changed in silence
			wantSaid(t, f, tt.says...)
		})
	}
}

func TestTipShiftOtherStates(t *testing.T) {
	in := healthyInput()
	silent(t, tipShift, in)
	in.Sheet.New.Nozzle.TipShiftMM.Value = 2
	in.Sheet.Printer.ZReference.Value = "nozzle"
	silent(t, tipShift, in)

	in = healthyInput()
	in.Sheet.New.Nozzle.TipShiftMM = absent("new.nozzle.tip_shift_mm", 0.0)
	f := one(t, tipShift, in)
	if f.Level != Error { // not milder than a shift that is known
		t.Errorf("level %s", f.Level)
	}
	wantSaid(t, f, "tip_shift_mm", "done.height_on")
	in.Sheet.Printer.ZReference = absent("printer.z_reference", "")
	if f := one(t, tipShift, in); f.Level != Warning {
		t.Errorf("level %s where nothing is said of Z", f.Level)
	}
	in.Sheet.Done.HeightOn = given("done.height_on", time.Date(2026, 11, 20, 0, 0, 0, 0, time.UTC))
	silent(t, tipShift, in)

	in = healthyInput()
	in.Sheet.New.Nozzle.TipShiftMM.Value = 0.5
	in.Printer.Geometry.TriggerMM.Saved = true
	wantSaid(t, one(t, tipShift, in), "it stands in the saved block")
	in.Printer.Geometry.TriggerMM.Saved = false
	in.Printer.Storage.On = set(parser.StorageOn, true)
	wantSaid(t, one(t, tipShift, in), "another may stand in stored settings")
	in.Printer.Geometry.TriggerMM = off[float64](parser.ProbeTrigger)
	f = one(t, tipShift, in)
	wantSaid(t, f, "do not hold that height")
	wantValues(t, f, Values{"shift_mm": 0.5, "trigger_mm": nil})
	in.Printer.Geometry.TriggerMM = unknown[float64](parser.ProbeTrigger)
	wantSaid(t, one(t, tipShift, in), "cannot tell the probe trigger height")
}

// The configuration knows that the nozzle is the probe, whatever the sheet says.
func TestTipShiftNozzleProbes(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.Nozzle.TipShiftMM.Value = 2
	in.Printer.Geometry.NozzleProbes = set(parser.NozzleProbes, true)
	silent(t, tipShift, in)
	in.Sheet.Printer.ZReference.Value = "endstop"
	one(t, tipShift, in)
	in.Sheet.Printer.ZReference.Value = "probe"
	in.Printer.Geometry.NozzleProbes = unknown[bool](parser.NozzleProbes)
	one(t, tipShift, in)
}

// Distances between hotends belong to the hotends that they were measured with.
func TestTipShiftOffsets(t *testing.T) {
	in := healthyInput()
	in.Printer.Geometry.Offsets = []parser.Setting[float64]{set(parser.Offset("x"), 24.5),
		set(parser.Offset("z"), -0.1)}
	f := one(t, tipShift, in)
	wantSaid(t, f, "hotend offset x 24.5 mm, hotend offset z -0.1 mm")
	wantChanges(t, f)
	if f.Level != Warning || f.At.Text() != string(parser.Offset("x")) {
		t.Errorf("%s at %s", f.Level, f.At.Text())
	}
	in.Printer.Geometry.Offsets = []parser.Setting[float64]{unknown[float64](parser.Offset("x"))}
	silent(t, tipShift, in)
}

// What homes Z decides what a shift means.
func TestTipShiftByWhatHomes(t *testing.T) {
	at := func(mm ...float64) (list []parser.Setting[float64]) {
		for _, x := range mm {
			list = append(list, set(parser.Endstop(""), x))
		}
		return list
	}
	for _, tt := range []struct {
		name    string
		homes   parser.Homing
		z       string // of the sheet; empty: not given
		endstop []parser.Setting[float64]
		shift   float64
		level   Level
		trigger any
		says    string
	}{
		{"by the probe, not in the sheet", parser.HomesByProbe, "", nil, 0.5, Warning, 1.3,
			"from 1.8 mm to about 1.3 mm"},
		{"a switch that is high enough", parser.HomesAtBed, "endstop", at(0.65), 0.3, Warning, 0.35,
			"from 0.65 mm to about 0.35 mm"},
		{"a switch that is too low", parser.HomesAtBed, "endstop", at(0.65), 0.65, Error, 0.0,
			"strikes the bed"},
		{"a switch of unknown height", parser.HomesAtBed, "", nil, 0.3, Error, nil, "strikes the bed"},
		{"a switch on top", parser.HomesFar, "endstop", at(297, 297.1, 296.9), 0.5, Error, 296.5, "3 in all"},
		{"a switch on top, higher", parser.HomesFar, "endstop", at(297), -0.5, Warning, 297.5, "in the air"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			in := healthyInput()
			in.Printer.Geometry.Homes = set(parser.ZHoming, tt.homes)
			in.Printer.Geometry.EndstopMM = tt.endstop
			in.Sheet.Printer.ZReference = absent("printer.z_reference", "")
			if tt.z != "" {
				in.Sheet.Printer.ZReference = given("printer.z_reference", tt.z)
			}
			in.Sheet.New.Nozzle.TipShiftMM.Value = tt.shift
			f := one(t, tipShift, in)
			if f.Level != tt.level {
				t.Errorf("level %s, want %s", f.Level, tt.level)
			}
			wantValues(t, f, Values{"shift_mm": tt.shift, "trigger_mm": tt.trigger})
			wantSaid(t, f, tt.says)
		})
	}
}

// A sheet that contradicts the configuration is corrected.
func TestTipShiftContradiction(t *testing.T) {
	for _, tt := range []struct {
		homes parser.Homing
		z     string
		says  string
	}{
		{parser.HomesByProbe, "endstop", "homes Z by the probe"},
		{parser.HomesAtBed, "probe", "homes Z by a switch near the bed"},
		{parser.HomesFar, "nozzle", "homes Z by a switch far from the bed"},
		{parser.HomesByProbe, "probe", ""},
		{parser.HomesByProbe, "nozzle", ""},
		{parser.HomesAtBed, "nozzle", ""}, // it presses the switch itself
		{parser.HomesBySwitch, "endstop", ""},
	} {
		in := healthyInput()
		in.Printer.Geometry.Homes = set(parser.ZHoming, tt.homes)
		in.Sheet.Printer.ZReference.Value = tt.z
		if tt.says == "" {
			silent(t, tipShift, in)
			continue
		}
		wantSaid(t, one(t, tipShift, in), tt.says, "correct printer.z_reference")
	}
}

// A height that no probe beside the nozzle can have speaks for the nozzle.
func TestTipShiftBelowNothing(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.Nozzle.TipShiftMM.Value = 0.5
	in.Printer.Geometry.TriggerMM = set(parser.ProbeTrigger, -0.9)
	wantSaid(t, one(t, tipShift, in), `z_reference = "nozzle"`)
	in.Printer.Geometry.BesideNozzle = true
	wantSaid(t, one(t, tipShift, in), "move the probe down by more than 1.4 mm")
	in.Sheet.Printer.ZReference.Value = "nozzle"
	silent(t, tipShift, in)
}
