package rules

import (
	"testing"

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
		{"probe, lower", "probe", 0.5, Warning, 1.3, []string{"0.5 mm lower", "from 1.8 mm to about 1.3 mm", "preflash bench has the steps"}},
		{"probe, higher", "probe", -0.5, Warning, 2.3, []string{"0.5 mm higher", "to about 2.3 mm"}},
		{"probe, touches first", "probe", 2, Error, -0.2, []string{"touches the bed before the probe triggers", "by more than 0.2 mm"}},
		{"probe, just touches", "probe", 1.8, Error, 0.0, []string{"touches the bed"}},
		{"endstop, lower", "endstop", 0.5, Error, nil, []string{"0.5 mm lower", "strikes the bed before the endstop"}},
		{"endstop, higher", "endstop", -0.5, Warning, nil, []string{"0.5 mm higher", "in the air"}},
		{"not said", "", 0.5, Warning, nil, []string{"z_reference"}},
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
	if f.Level != Note {
		t.Errorf("level %s", f.Level)
	}
	wantSaid(t, f, "tip_shift_mm")
	in.Sheet.Printer.ZReference = absent("printer.z_reference", "")
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
	wantSaid(t, f, "do not hold the probe's trigger height")
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
	in.Printer.Geometry.Offsets = []parser.Setting[float64]{set(parser.Offset("x"), 24.5), set(parser.Offset("z"), -0.1)}
	f := one(t, tipShift, in)
	wantSaid(t, f, "hotend offset x 24.5 mm, hotend offset z -0.1 mm")
	wantChanges(t, f)
	if f.Level != Warning || f.At.Text() != string(parser.Offset("x")) {
		t.Errorf("%s at %s", f.Level, f.At.Text())
	}
	in.Printer.Geometry.Offsets = []parser.Setting[float64]{unknown[float64](parser.Offset("x"))}
	silent(t, tipShift, in)
}
