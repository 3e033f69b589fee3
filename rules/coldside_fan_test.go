package rules

import (
	"testing"

	"preflash/parser"
)

func TestColdsideFan(t *testing.T) {
	none := func(in *Input) { in.Printer.ColdSide.Fan = off[string](parser.FanOutput) }
	tests := []struct {
		name  string
		spoil func(*Input)
		level Level
		says  string
	}{
		{"none", none, Warning, "the configuration drives none"},
		{"follows something else", func(in *Input) {
			none(in)
			in.Printer.ColdSide.Elsewhere = []parser.Place{{At: wholeFile("printer.cfg", "other fan")}}
		}, Error, "make the heat-break fan follow this hotend: its output does not"},
		{"unknown", func(in *Input) { in.Printer.ColdSide.Fan = unknown[string](parser.FanOutput) }, Warning,
			"cannot tell the heat-break fan"},
		{"threshold unknown",
			func(in *Input) { in.Printer.ColdSide.OnAboveC = unknown[float64](parser.FanOnAbove) }, Warning,
			"cannot tell the heat-break fan threshold"},
		{"stops with the firmware",
			func(in *Input) { in.Printer.ColdSide.AtShutdown = set(parser.FanAtShutdown, 0.0) }, Warning,
			"run on when the firmware shuts down"},
		{"threshold high", func(in *Input) { in.Printer.ColdSide.OnAboveC.Value = 61 }, Warning,
			"starts at 61 °C, above 60 °C"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			in := healthyInput()
			tt.spoil(in)
			f := one(t, coldsideFan, in)
			if f.Level != tt.level {
				t.Errorf("level %s, want %s", f.Level, tt.level)
			}
			wantSaid(t, f, tt.says)
			// A fan on the supply is none of the configuration's business.
			in.Sheet.New.Fan.AlwaysOn = given("new.fan.always_on", true)
			silent(t, coldsideFan, in)
		})
	}
	in := healthyInput()
	silent(t, coldsideFan, in)
	in.Printer.ColdSide.OnAboveC.Value = 60
	in.Printer.ColdSide.AtShutdown = set(parser.FanAtShutdown, 0.5)
	silent(t, coldsideFan, in)

	in.Printer.ColdSide.OnAboveC.Value = 100
	f := one(t, coldsideFan, in)
	wantValues(t, f, Values{"on_above_c": 100.0, "limit_c": 60.0})
	in.Printer.ColdSide.WithTarget = true
	wantSaid(t, one(t, coldsideFan, in), "stops while the hotend cools at 100 °C")
	in.Printer.ColdSide.WithTarget = false
	wantChanges(t, f, parser.Change{Key: parser.FanOnAbove, Value: 50.0})
	in.Sheet.New.Fan.OnAboveC.Value = 80
	wantChanges(t, one(t, coldsideFan, in), parser.Change{Key: parser.FanOnAbove, Value: 60.0})
}
