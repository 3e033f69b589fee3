package rules

import (
	"testing"

	"preflash/parser"
)

func TestFlowLimit(t *testing.T) {
	in := healthyInput()
	in.Printer.Flow.MaxMM3PerS = off[float64](parser.MaxFlow)
	f := one(t, flowLimit, in)
	// 8 mm³/s / (π·1.75²/4 mm²)
	wantValues(t, f, Values{"flow_mm3_s": 8.0, "filament_mm_s": 3.326})
	wantSaid(t, f, "8 mm³/s", "3.3 mm/s", "1.75 mm", "slicer")
	if f.Level != Note {
		t.Errorf("level %s", f.Level)
	}

	in.Printer.Flow.MaxMM3PerS = set(parser.MaxFlow, 25.0)
	f = one(t, flowLimit, in)
	wantChanges(t, f, parser.Change{Key: parser.MaxFlow, Value: 8.0})
	if f.Level != Warning || f.At.Text() != string(parser.MaxFlow) {
		t.Errorf("%s at %q", f.Level, f.At.Text())
	}
	in.Printer.Flow.MaxMM3PerS.Value = 8
	silent(t, flowLimit, in)
	in.Printer.Flow.MaxMM3PerS = unknown[float64](parser.MaxFlow)
	wantSaid(t, one(t, flowLimit, in), "cannot tell the volumetric limit")
	in.Sheet.New.Nozzle.MaxFlowMM3S = absent("new.nozzle.max_flow_mm3_s", 0.0)
	silent(t, flowLimit, in)
}
