package rules

import (
	"strings"
	"testing"

	"preflash/parser"
)

func TestNozzleSize(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.Nozzle.DiameterMM.Value = 0.6
	f := one(t, nozzleSize, in)
	wantSaid(t, f, "set the nozzle diameter to 0.6 mm")
	wantValues(t, f, Values{"configured_mm": 0.4, "diameter_mm": 0.6})
	wantChanges(t, f, parser.Change{Key: parser.NozzleDiameter, Value: 0.6})
	in.Printer.Flow.NozzleMM.Value = 0.6
	silent(t, nozzleSize, in)
}

func TestNozzleSizeOtherStates(t *testing.T) {
	in := healthyInput()
	in.Printer.Flow.NozzleMM = unknown[float64](parser.NozzleDiameter)
	wantSaid(t, one(t, nozzleSize, in), "cannot tell the nozzle diameter")
	in.Printer.Flow.NozzleMM = parser.Setting[float64]{}
	silent(t, nozzleSize, in)
	in = healthyInput()
	in.Sheet.New.Nozzle.DiameterMM = absent("new.nozzle.diameter_mm", 0.0)
	silent(t, nozzleSize, in)
}

// A cross section that is written does not follow the nozzle.
func TestNozzleSizeSection(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.Nozzle.DiameterMM.Value = 0.6
	in.Printer.Flow.CrossMM2 = set(parser.LineSection, 1.44)
	if f := one(t, nozzleSize, in); strings.Contains(f.Text(), "cross section") {
		t.Errorf("a limit that is wide enough: %s", f.Text())
	}
	in.Printer.Flow.CrossMM2.Value = 1
	wantSaid(t, one(t, nozzleSize, in), "cross section of a line is written as 1 mm²", "takes 1.44 mm²")
}
