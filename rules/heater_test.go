package rules

import (
	"math"
	"testing"

	"preflash/parser"
)

// The worked example of the heat model: a PTC ring of 48 W, 30 W at
// 200 °C and 22 W at 300 °C, on 24 V.
func TestHeaterOf(t *testing.T) {
	s := healthySheet()
	ptc(s)
	h := HeaterOf(&s.New.Heater, 24)
	for at, want := range map[float64]float64{0: 48, 25: 48, 200: 30, 240: 26.8, 270: 24.4, 300: 22,
		400: 14} {
		if got := h.Power(at); math.Abs(got-want) > 1e-9 {
			t.Errorf("at %v °C: %v W, want %v", at, got, want)
		}
	}
	if got := HeaterOf(&s.New.Heater, 48).Power(200); math.Abs(got-120) > 1e-9 {
		t.Errorf("twice the voltage gives %v W, want four times 30", got)
	}
	if got := peakW(&s.New.Heater, 12); math.Abs(got-12) > 1e-9 {
		t.Errorf("half the voltage gives a peak of %v W, want 12", got)
	}
}

// Heaters that run together give and draw what they do together.
func TestHeatersTogether(t *testing.T) {
	in := healthyInput() // 40 W at 24 V
	in.Printer.Hotend.Outputs = set(parser.HeaterOutputs, 2.0)
	p, _ := plantOf(in)
	if got := p.Power(200); math.Abs(got-80) > 1e-9 {
		t.Errorf("two cartridges give %v W, want 80", got)
	}
	ptc(in.Sheet)
	if p, _ = plantOf(in); math.Abs(p.Power(200)-60) > 1e-9 {
		t.Errorf("two PTC heaters give %v W, want twice 30", p.Power(200))
	}
	if got := in.Sheet.New.Heater.HotW.Value[1][1]; got != 30 {
		t.Errorf("the sheet's own table became %v W", got)
	}

	in = healthyInput()
	in.Printer.Hotend.Outputs = set(parser.HeaterOutputs, 2.0)
	in.Sheet.Printer.OutputA.Value = 3
	f := one(t, heaterCurrent, in)
	wantValues(t, f, Values{"peak_a": 3.3333, "limit_a": 3.0})
	wantSaid(t, f, "runs 2 heaters together")
	in.Sheet.Printer.SupplyW.Value = 290
	f = one(t, supplyBudget, in) // 220 W and twice 40 W
	wantValues(t, f, Values{"load_w": 300.0, "supply_w": 290.0, "share": 1.0345})
	wantSaid(t, f,
		"80 W for the heater (the configuration runs 2 heaters together; one is the sheet's) and 220 W")
	in.Printer.Hotend.Loop.Control.Value = parser.ControlModel
	in.Printer.Hotend.Loop.ModelPowerW = set(parser.ModelPower, 40.0)
	wantValues(t, one(t, heaterModel, in), Values{"configured_w": 40.0, "actual_w": 80.0})

	in.Printer.Hotend.Outputs = unknown[float64](parser.HeaterOutputs)
	in.Sheet.Printer.OutputA.Value = 5
	wantSaid(t, one(t, heaterCurrent, in), "cannot tell the heater outputs")
}
