package rules

import (
	"testing"

	"preflash/parser"
)

func TestHeaterModel(t *testing.T) {
	model := func(told float64) *Input {
		in := healthyInput()
		in.Printer.Hotend.Loop.Control.Value = parser.ControlModel
		in.Printer.Hotend.Loop.ModelPowerW = set(parser.ModelPower, told)
		return in
	}
	silent(t, heaterModel, model(40))
	silent(t, heaterModel, model(46)) // 15 % off
	silent(t, heaterModel, model(34))

	f := one(t, heaterModel, model(50))
	if f.Level != Error || f.At.Text() != string(parser.ModelPower) {
		t.Errorf("%s at %s", f.Level, f.At.Text())
	}
	wantValues(t, f, Values{"configured_w": 50.0, "actual_w": 40.0})
	wantChanges(t, f, parser.Change{Key: parser.ModelPower, Value: 40.0})

	// The supply's voltage counts.
	in := model(40)
	in.Sheet.Printer.SupplyV.Value = 30
	wantValues(t, one(t, heaterModel, in), Values{"configured_w": 40.0, "actual_w": 62.5})

	// A PTC heater: in the middle of print_c (190 to 260: 225, 28 W), or where
	// the model has its reference (200: 30 W).
	in = model(40)
	ptc(in.Sheet)
	f = one(t, heaterModel, in)
	wantValues(t, f, Values{"configured_w": 40.0, "actual_w": 28.0})
	wantSaid(t, f, "gives 28 W at 225 °C")
	in.Printer.Hotend.Loop.ModelRefC = set(parser.ModelRefTemp, 200.0)
	f = one(t, heaterModel, in)
	wantValues(t, f, Values{"configured_w": 40.0, "actual_w": 30.0})
	wantChanges(t, f, parser.Change{Key: parser.ModelPower, Value: 30.0})

	in.Sheet.New.Heater.HotW = absent("new.heater.hot_w", [][2]float64(nil))
	f = one(t, heaterModel, in)
	wantSaid(t, f, "cannot be told", "give hot_w")
	if f.Level != Warning {
		t.Errorf("level %s", f.Level)
	}
	in = model(50)
	in.Printer.Hotend.Loop.Control.Value = parser.ControlPID
	silent(t, heaterModel, in)
	in.Printer.Hotend.Loop.Control = unknown[parser.Control](parser.LoopControl)
	wantSaid(t, one(t, heaterModel, in), "cannot tell the control")
	in = model(0)
	in.Printer.Hotend.Loop.ModelPowerW = unknown[float64](parser.ModelPower)
	wantSaid(t, one(t, heaterModel, in), "cannot tell the model heater power")
}
