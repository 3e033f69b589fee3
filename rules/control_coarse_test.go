package rules

import (
	"testing"

	"preflash/parser"
)

func TestControlCoarse(t *testing.T) {
	in := healthyInput()
	silent(t, controlCoarse, in)
	in.Printer.Hotend.Loop.Control.Value = parser.ControlModel
	silent(t, controlCoarse, in)
	in.Printer.Hotend.Loop.Control.Value = parser.ControlOnOff
	f := one(t, controlCoarse, in)
	if f.Level != Warning || f.At.Text() != string(parser.LoopControl) {
		t.Errorf("%s at %s", f.Level, f.At.Text())
	}
	wantSaid(t, f, "switch to PID control")
	wantChanges(t, f)
	in.Printer.Hotend.Loop.Control = unknown[parser.Control](parser.LoopControl)
	wantSaid(t, one(t, controlCoarse, in), "cannot tell the control")
}
