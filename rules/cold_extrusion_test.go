package rules

import (
	"testing"

	"preflash/parser"
)

func TestColdExtrusion(t *testing.T) {
	tests := []struct {
		name   string
		spoil  func(*Input)
		level  Level
		least  any
		limit  float64
		says   string
		change []parser.Change
	}{
		{"guard off", func(in *Input) { in.Printer.Limits.ColdGuard = off[bool](parser.ColdGuard) },
			Error, nil, 150, "switch the cold extrusion guard on: cold filament",
			[]parser.Change{{Key: parser.ColdGuard, Value: true}}},
		{"guard false", func(in *Input) { in.Printer.Limits.ColdGuard.Value = false },
			Error, nil, 150, "switch the cold extrusion guard on",
			[]parser.Change{{Key: parser.ColdGuard, Value: true}}},
		{"low", func(in *Input) { in.Printer.Limits.MinExtrude.Value = 149 },
			Warning, 149.0, 150, "min extrude temp to 150 °C: it is 149 °C",
			[]parser.Change{{Key: parser.MinExtrude, Value: 150.0}}},
		{"at room temperature", func(in *Input) { in.Printer.Limits.MinExtrude.Value = 0 },
			Error, 0.0, 150, "never stops anything", []parser.Change{{Key: parser.MinExtrude, Value: 150.0}}},
		{"temperature off",
			func(in *Input) { in.Printer.Limits.MinExtrude = off[float64](parser.MinExtrude) },
			Error, 0.0, 150, "min extrude temp to 150 °C",
			[]parser.Change{{Key: parser.MinExtrude, Value: 150.0}}},
		{"printing cool",
			func(in *Input) { in.Printer.Limits.MinExtrude.Value = 90; in.Sheet.New.PrintC.Value[0] = 100 },
			Warning, 90.0, 100, "min extrude temp to 100 °C",
			[]parser.Change{{Key: parser.MinExtrude, Value: 100.0}}},
		{"guard unknown", func(in *Input) { in.Printer.Limits.ColdGuard = unknown[bool](parser.ColdGuard) },
			Warning, nil, 0, "cannot tell the cold extrusion guard", nil},
		{"temperature unknown",
			func(in *Input) { in.Printer.Limits.MinExtrude = unknown[float64](parser.MinExtrude) },
			Warning, nil, 0, "cannot tell the min extrude temp", nil},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			in := healthyInput()
			tt.spoil(in)
			f := one(t, coldExtrusion, in)
			if f.Level != tt.level {
				t.Errorf("level %s, want %s", f.Level, tt.level)
			}
			wantSaid(t, f, tt.says)
			wantChanges(t, f, tt.change...)
			if tt.limit > 0 {
				wantValues(t, f, Values{"min_extrude_c": tt.least, "limit_c": tt.limit})
			}
		})
	}
	in := healthyInput()
	silent(t, coldExtrusion, in)
	in.Printer.Limits.MinExtrude.Value = 150
	silent(t, coldExtrusion, in)
	in.Sheet.New.PrintC.Value[0] = 60 // a filament that is printed cool
	in.Printer.Limits.MinExtrude.Value = 60
	silent(t, coldExtrusion, in)
}
