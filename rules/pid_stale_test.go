package rules

import (
	"testing"

	"preflash/parser"
	"preflash/parser/sheet"
)

func tuned(kp, ki, kd float64) *sheet.Tuned {
	return &sheet.Tuned{
		AtC: given("tuned.at_c", 220.0),
		Kp:  given("tuned.kp", kp), Ki: given("tuned.ki", ki), Kd: given("tuned.kd", kd),
	}
}

func TestPIDStale(t *testing.T) {
	in := healthyInput()
	f := one(t, pidStale, in)
	wantSaid(t, f, "kp 21.7, ki 1.4, kd 84", "TUNE 225 °C")
	wantChanges(t, f)
	if f.Level != Warning {
		t.Errorf("level %s, want warning", f.Level)
	}

	in.Sheet.Tuned = tuned(21.7, 1.4, 84)
	silent(t, pidStale, in)
	in.Sheet.Tuned = tuned(21.74, 1.403, 84.3) // rounded in the configuration
	silent(t, pidStale, in)
	in.Sheet.Tuned = tuned(18.2, 1.1, 75)
	wantSaid(t, one(t, pidStale, in), "kp 18.2, ki 1.1, kd 75")

	in.Printer.Hotend.Loop.Ki = unknown[float64](parser.GainI)
	wantSaid(t, one(t, pidStale, in), "cannot tell the ki")
}

func TestPIDStaleOtherControl(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Loop.Control.Value = parser.ControlOnOff
	silent(t, pidStale, in)
	in.Printer.Hotend.Loop.Control.Value = parser.ControlModel
	wantSaid(t, one(t, pidStale, in), "heater model", "TUNE MODEL")
	in.Sheet.Tuned = tuned(1, 1, 1)
	silent(t, pidStale, in)
	in.Printer.Hotend.Loop.Control = unknown[parser.Control](parser.LoopControl)
	wantSaid(t, one(t, pidStale, in), "cannot tell the control")
}
