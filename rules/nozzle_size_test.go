package rules

import (
	"strings"
	"testing"

	"preflash/parser"
)

func TestNozzleSize(t *testing.T) {
	in := healthyInput()
	silent(t, nozzleSize, in)
	in.Sheet.New.Nozzle.DiameterMM.Value = 0.6
	f := one(t, nozzleSize, in)
	if f.Level != Warning || f.At.Text() != string(parser.NozzleDiameter) {
		t.Errorf("%s at %s", f.Level, f.At.Text())
	}
	wantValues(t, f, Values{"configured_mm": 0.4, "diameter_mm": 0.6})
	wantChanges(t, f, parser.Change{Key: parser.NozzleDiameter, Value: 0.6})
	wantSaid(t, f,
		"0.6 mm, here and in the slicer: that is the new nozzle, and the configuration says 0.4 mm")

	in.Printer.Flow.CrossMM2 = set(parser.LineSection, 1.44)
	if f := one(t, nozzleSize, in); strings.Contains(f.Text(), "cross section") {
		t.Errorf("a limit that is wide enough: %s", f.Text())
	}
	in.Printer.Flow.CrossMM2.Value = 1
	wantSaid(t, one(t, nozzleSize, in), "cross section of a line is written as 1 mm²", "takes 1.44 mm²")

	in.Printer.Flow.NozzleMM = unknown[float64](parser.NozzleDiameter)
	wantSaid(t, one(t, nozzleSize, in), "cannot tell the nozzle diameter")
	in.Printer.Flow.NozzleMM = parser.Setting[float64]{}
	silent(t, nozzleSize, in)
	in = healthyInput()
	in.Sheet.New.Nozzle.DiameterMM = absent("new.nozzle.diameter_mm", 0.0)
	silent(t, nozzleSize, in)
}
