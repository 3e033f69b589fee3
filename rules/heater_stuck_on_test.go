package rules

import "testing"

func TestHeaterStuckOn(t *testing.T) {
	f := one(t, heaterStuckOn, worked(240))
	if x := f.Values["equilibrium_c"].(float64); x < 345.4 || x > 345.6 {
		t.Errorf("equilibrium %v, want 345.5", x)
	}
	wantSaid(t, f, "345.5 °C", "300 °C of the hotend", "cut-off")

	f = one(t, heaterStuckOn, healthyInput()) // a 40 W cartridge
	wantSaid(t, f, "610.2 °C")

	in := worked(240) // what limits itself needs no word
	in.Sheet.New.RatedC.Value, in.Sheet.New.Sensor.RatedC.Value = 350, 350
	silent(t, heaterStuckOn, in)
	in.Sheet.New.Sensor.RatedC.Value = 340
	wantSaid(t, one(t, heaterStuckOn, in), "340 °C of the sensor")
	assumeBlock(in)
	wantSaid(t, one(t, heaterStuckOn, in), "loss 0.068 W/K", "284.7 to 484.2 °C", "uncertain") // by hand
}
