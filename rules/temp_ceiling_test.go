package rules

import (
	"testing"

	"preflash/parser"
	"preflash/rules/unit"
)

func TestTempCeiling(t *testing.T) {
	tests := []struct {
		name        string
		spoil       func(*Input)
		target      float64
		trip, rated float64
		by          string
		change      float64
	}{
		{"liner, with a margin", func(in *Input) { in.Sheet.New.Liner.Value = "ptfe" }, 260, 275, 240,
			"PTFE liner", 255},
		{"liner, no margin", func(in *Input) { in.Sheet.New.Liner.Value = "ptfe"; noMargin(in.Printer) }, 275,
			275, 240, "PTFE liner", 240},
		{"sensor", func(in *Input) { in.Sheet.New.Sensor.RatedC.Value = 250 }, 260, 275, 250, "sensor", 265},
		{"target alone is too high", func(in *Input) {
			in.Sheet.New.RatedC.Value, in.Printer.Limits.MaxTemp.Value, in.Printer.Limits.Margin.Value = 280,
				290, 5
		}, 285, 290, 280, "hotend", 285},
		{"trip alone is too high", func(in *Input) {
			in.Sheet.New.RatedC.Value, in.Printer.Limits.MaxTemp.Value, in.Printer.Limits.Margin.Value = 280,
				296, 20
		}, 276, 296, 280, "hotend", 295},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			in := healthyInput()
			tt.spoil(in)
			f := one(t, tempCeiling, in)
			if f.Level != Error || f.At.Text() != string(parser.MaxTemp) {
				t.Errorf("%s at %s", f.Level, f.At.Text())
			}
			wantValues(t, f, Values{"target_limit_c": tt.target, "trip_c": tt.trip, "rated_c": tt.rated,
				"limited_by": tt.by})
			wantChanges(t, f, parser.Change{Key: parser.MaxTemp, Value: tt.change})
			wantSaid(t, f, "the "+tt.by+" is rated for "+unit.Celsius(tt.rated),
				"lower the max temp to "+unit.Celsius(tt.change))

			in.Printer.Limits.MaxTemp.Value = tt.change
			silent(t, tempCeiling, in)
		})
	}
}

func TestTempCeilingOtherStates(t *testing.T) {
	silent(t, tempCeiling, healthyInput())

	in := healthyInput()
	in.Printer.Limits.MaxTemp.Value = 315 // target 300, trip 315: just right
	silent(t, tempCeiling, in)

	in.Printer.Limits.MaxTemp = off[float64](parser.MaxTemp)
	f := one(t, tempCeiling, in)
	wantSaid(t, f, "set a max temp", "rated for 300 °C")
	wantChanges(t, f, parser.Change{Key: parser.MaxTemp, Value: 300.0})

	in.Printer.Limits.MaxTemp = unknown[float64](parser.MaxTemp)
	f = one(t, tempCeiling, in)
	wantSaid(t, f, "cannot tell the max temp", "a condition that these files do not settle")
	if f.Level != Error {
		t.Errorf("level %s, want error: perhaps nothing stops the heater", f.Level)
	}
	wantChanges(t, f)

	in = healthyInput()
	in.Printer.Limits.Margin = unknown[float64](parser.Margin)
	wantSaid(t, one(t, tempCeiling, in), "cannot tell the target margin")
}

// A guard against cold filament cannot stay above the max temp.
func TestTempCeilingLowersGuard(t *testing.T) {
	for _, tt := range []struct{ guard, bottom, want float64 }{
		{241, 190, 190},
		{300, 250, 240},
		{240, 190, 0},
	} {
		in := healthyInput()
		in.Sheet.New.Liner.Value = "ptfe"
		noMargin(in.Printer)
		in.Printer.Limits.MinExtrude.Value = tt.guard
		in.Sheet.New.PrintC.Value[0] = tt.bottom
		changes := []parser.Change{{Key: parser.MaxTemp, Value: 240.0}}
		f := one(t, tempCeiling, in)
		if tt.want > 0 {
			changes = append(changes, parser.Change{Key: parser.MinExtrude, Value: tt.want})
			wantSaid(t, f,
				"lower the min extrude temp, which is "+unit.Celsius(tt.guard)+", to "+unit.Celsius(tt.want))
		}
		wantChanges(t, f, changes...)
	}
}
