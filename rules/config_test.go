package rules

import (
	"fmt"
	"strings"
	"testing"

	"preflash/parser"
)

func TestRemarks(t *testing.T) {
	tests := []struct {
		rule  *Rule
		kind  parser.RemarkKind
		level Level
	}{
		{savedHidden, parser.RemarkSavedHidden, Note},
		{savedDamaged, parser.RemarkSavedDamaged, Error},
		{configBroken, parser.RemarkBroken, Error},
		{configGap, parser.RemarkGap, Note},
		{configGap, parser.RemarkUnrecognised, Warning},
		{sheetMismatch, parser.RemarkMismatch, Error},
	}
	for _, tt := range tests {
		in := healthyInput()
		silent(t, tt.rule, in)
		in.Printer.Remarks = []parser.Remark{{Kind: tt.kind, At: wholeFile("printer.cfg", "x"),
			Text: "100 % odd"}}
		f := one(t, tt.rule, in)
		if f.Level != tt.level || f.Text() != "100 % odd" {
			t.Errorf("%s: %s %q, want %s and the remark's own text", tt.rule.ID, f.Level, f.Text(), tt.level)
		}
	}
}

func TestSheetMismatchPointsAtSheet(t *testing.T) {
	in := healthyInput()
	in.Printer.Remarks = []parser.Remark{{Kind: parser.RemarkMismatch, Text: "no hotend 3"}}
	if got := one(t, sheetMismatch, in).At.Text(); got != "printer.tool" {
		t.Errorf("points at %q, want the sheet's printer.tool", got)
	}
}

func TestSettingShadowed(t *testing.T) {
	in := healthyInput()
	s := &in.Printer.Limits.MaxTemp
	s.Written = "275"
	s.Hides = []parser.Place{{At: wholeFile("other.cfg", "275"), Written: "275"}}
	silent(t, settingShadowed, in) // they agree

	s.Hides = append(s.Hides, parser.Place{At: wholeFile("other.cfg", "305"), Written: "305"})
	f := one(t, settingShadowed, in)
	wantSaid(t, f, "“275” here", "“305” (other.cfg:1)")

	s.Hides[1].Saved = true
	silent(t, settingShadowed, in)

	for range 100 { // named are a few, counted are all
		s.Hides = append(s.Hides, parser.Place{At: wholeFile("other.cfg", "310"), Written: "310"})
	}
	wantSaid(t, one(t, settingShadowed, in), "“310” (other.cfg:1), 96 more")
}

func TestAdvanceStale(t *testing.T) {
	in := healthyInput()
	silent(t, advanceStale, in)
	in.Printer.Flow.CarriedOver = []parser.Setting[float64]{
		byDefault(parser.Carried("retraction length"), 3.0),
		set(parser.Carried("linear advance"), 0.06),
		set(parser.Carried("load length"), 0.0),
	}
	f := one(t, advanceStale, in)
	wantSaid(t, f, "linear advance 0.06")
	if f.At.Text() != "linear advance" {
		t.Errorf("points at %q, want the first figure that is set", f.At.Text())
	}
}

// A definition that is written out lays the memory out anew, whether it comes
// or goes.
func TestStoredSettingsDropped(t *testing.T) {
	for _, c := range []struct {
		name     string
		was, new parser.SensorForm
		lays     bool
		drops    bool
	}{
		{"comes", parser.FormCurve, parser.FormBeta, true, true},
		{"goes", parser.FormBeta, parser.FormCurve, true, true},
		{"stays", parser.FormBeta, parser.FormBeta, true, false},
		{"a number for another", parser.FormCurve, parser.FormCurve, true, false},
		{"a firmware that does not mind", parser.FormCurve, parser.FormBeta, false, false},
	} {
		in := healthyInput()
		in.Printer.Storage = parser.Storage{On: set(parser.StorageOn, true),
			Keeps: []parser.Key{parser.GainP}, CustomLays: c.lays}
		in.Printer.Hotend.Sensor.Value.Form = c.was
		in.Changed = map[parser.Key]any{parser.HotendSensor: parser.SensorDef{Form: c.new}}
		f := one(t, storedSettings, in)
		if got := f.Level == Warning && strings.Contains(f.Message, "drops all of them"); got != c.drops {
			t.Errorf("%s: %s %s", c.name, f.Level, f.Message)
		}
		if c.drops {
			wantSaid(t, f, "before flashing", "SHOW STORED")
		}
	}
}

func TestStoredSettings(t *testing.T) {
	in := healthyInput()
	silent(t, storedSettings, in)
	in.Printer.Storage = parser.Storage{On: set(parser.StorageOn, true),
		Keeps: []parser.Key{parser.GainP, parser.Preset(1)}}
	f := one(t, storedSettings, in)
	wantSaid(t, f, "RESET STORED, then SAVE STORED")
	if f.Level != Note {
		t.Errorf("level %s, want note", f.Level)
	}
	in.Changed = map[parser.Key]any{parser.Preset(1): 200.0, parser.MaxTemp: 275.0}
	f = one(t, storedSettings, in)
	wantSaid(t, f, "these: preset 1")
	if f.Level != Warning {
		t.Errorf("level %s, want warning", f.Level)
	}
	// A max temp that a display edits outlives a flash too.
	in.Printer.Storage.Keeps = []parser.Key{parser.MaxTemp}
	in.Changed = nil
	wantSaid(t, one(t, storedSettings, in), "the max temp is one of them")
	in.Changed = map[parser.Key]any{parser.MaxTemp: 275.0}
	wantSaid(t, one(t, storedSettings, in), "these: max temp")
	// A definition of the firmware's own is compiled in; the constants of a
	// custom one are stored.
	in.Printer.Storage.Keeps = []parser.Key{parser.HotendSensor}
	in.Changed = map[parser.Key]any{}
	for _, form := range []parser.SensorForm{parser.FormCurve, parser.FormPoints} {
		in.Changed[parser.HotendSensor] = parser.SensorDef{Form: form}
		if f = one(t, storedSettings, in); f.Level != Note {
			t.Errorf("a compiled-in definition of form %d: level %s, want note", form, f.Level)
		}
	}
	in.Changed[parser.HotendSensor] = parser.SensorDef{Form: parser.FormBeta}
	if f = one(t, storedSettings, in); f.Level != Warning {
		t.Errorf("a custom definition: level %s, want warning", f.Level)
	}
	in.Printer.Storage.On = unknown[bool](parser.StorageOn)
	wantSaid(t, one(t, storedSettings, in), "cannot tell")
}

// A figure that no rule asks for is still said to be unknown, and one that a
// rule asks for is not said twice.
func TestConfigGapUnknownSettings(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Loop.FilterOld = unknown[float64](parser.DerivativeShare)
	in.Printer.Limits.MaxTemp = unknown[float64](parser.MaxTemp)
	var said []string
	for _, f := range Check(in) {
		if f.Rule == "config-gap" {
			said = append(said, f.Text())
			if f.Level != Note {
				t.Errorf("level %s, want note", f.Level)
			}
		}
	}
	if len(said) != 1 || !strings.Contains(said[0], string(parser.DerivativeShare)) {
		t.Errorf("config-gap says %q, want the derivative filter alone", said)
	}
}

// Without the hotend that the sheet names, only what is about more than the
// hotend is judged.
func TestLackingHotend(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Watch.On = parser.Setting[bool]{Key: parser.HotendWatchOn, State: parser.Off}
	in.Printer.Limits.MaxTemp.State = parser.Unknown
	in.Printer.Bed.Watch.On.State, in.Printer.Bed.Watch.On.Value = parser.Off, false
	in.Printer.Remarks = []parser.Remark{{Kind: parser.RemarkMismatch, Text: "there is no hotend"}}
	var got []string
	for _, f := range Check(in) {
		got = append(got, f.Rule)
	}
	if want := "[sheet-mismatch runaway-off-bed]"; fmt.Sprint(got) != want {
		t.Errorf("rules %v, want %s", got, want)
	}
}
