package rules

import (
	"testing"

	"preflash/parser"
)

func TestPresetOver(t *testing.T) {
	in := healthyInput()
	silent(t, presetOver, in)

	in.Printer.Limits.Presets[1].Value = 270 // the limit is 275 − 15
	f := one(t, presetOver, in)
	if f.Level != Error || f.At.Text() != string(parser.Preset(2)) {
		t.Errorf("%s at %s", f.Level, f.At.Text())
	}
	wantValues(t, f, Values{"preset_c": 270.0, "target_limit_c": 260.0})
	wantChanges(t, f, parser.Change{Key: parser.Preset(2), Value: 260.0})
	wantSaid(t, f,
		"lower preset 2 to 260 °C: it asks for 270 °C, and the firmware takes targets up to 260 °C")

	// temp-reach raises the max temp to 285 in the same run: 270 then fits.
	in.Sheet.New.PrintC.Value[1] = 270
	in.Changed = map[parser.Key]any{parser.MaxTemp: 285.0}
	f = one(t, presetOver, in)
	wantChanges(t, f)
	wantSaid(t, f, "raise the max temp to 285 °C, and it fits")

	// While the reading is in doubt it does not.
	for _, changed := range []map[parser.Key]any{nil, {parser.MaxTemp: 270.0}} {
		in.Changed = changed
		wantChanges(t, one(t, presetOver, in), parser.Change{Key: parser.Preset(2), Value: 260.0})
	}

	// temp-ceiling lowers it to 255: presets go straight to where that leads.
	in.Sheet.New.Liner.Value = "ptfe"
	wantChanges(t, one(t, presetOver, in), parser.Change{Key: parser.Preset(2), Value: 240.0})
}

// Limits that are off themselves move no preset to where nothing melts.
func TestPresetOverAbsurdMargin(t *testing.T) {
	in := healthyInput()
	in.Printer.Limits.Margin.Value = 400
	for _, f := range run(t, presetOver, in) {
		wantChanges(t, f)
		wantSaid(t, f, "correct the limits first")
	}
}

func TestPresetOverOtherStates(t *testing.T) {
	in := healthyInput()
	in.Printer.Limits.Presets = []parser.Setting[float64]{
		off[float64](parser.Preset(1)), unknown[float64](parser.Preset(2)),
		byDefault(parser.Preset(3), 300.0),
	}
	got := run(t, presetOver, in)
	if len(got) != 2 || got[0].Level != Warning || got[1].Level != Error {
		t.Fatalf("got %v", messages(got))
	}
	wantSaid(t, got[0], "cannot tell the preset 2")
	wantSaid(t, got[1], "preset 3 to 260 °C: it asks for 300 °C")

	in.Printer.Limits.Presets = nil
	in.Printer.Limits.MaxTemp = unknown[float64](parser.MaxTemp)
	silent(t, presetOver, in)
}

// The firmware cuts an automatic target that is too high: a note, no change.
func TestPresetOverAutomatic(t *testing.T) {
	in := healthyInput() // targets up to 260 °C
	in.Printer.Limits.AutoMax = set(parser.AutoTarget, 260.0)
	silent(t, presetOver, in)
	in.Printer.Limits.AutoMax.Value = 265
	f := one(t, presetOver, in)
	if wantSaid(t, f, "the highest automatic target is 265 °C", "up to 260 °C"); f.Level != Note {
		t.Errorf("level %s, want note", f.Level)
	}
	wantChanges(t, f)
	in.Printer.Limits.Presets = nil
	one(t, presetOver, in)
	in.Printer.Limits.AutoAlways = true // then the figure is not a limit
	silent(t, presetOver, in)
}
