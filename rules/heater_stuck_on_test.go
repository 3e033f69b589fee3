package rules

import "testing"

// uncut takes the cut-off from an input.
func uncut(in *Input) *Input {
	in.Sheet.New.CutoffC = absent("new.cutoff_c", 0.0)
	return in
}

func TestHeaterStuckOn(t *testing.T) {
	f := one(t, heaterStuckOn, uncut(worked(240)))
	if x := f.Values["equilibrium_c"].(float64); x < 345.4 || x > 345.6 {
		t.Errorf("equilibrium %v, want 345.5", x)
	}
	wantSaid(t, f, "to about 350 °C", "300 °C of the hotend", "cut-off")

	f = one(t, heaterStuckOn, uncut(healthyInput())) // a 40 W cartridge
	wantSaid(t, f, "far above 500 °C")               // 610.2 °C by the model
	if f.Values["equilibrium_c"] != 500.0 {
		t.Errorf("the model ends at 500 °C: %v", f.Values)
	}

	in := uncut(worked(240)) // what limits itself needs no word
	in.Sheet.New.RatedC.Value, in.Sheet.New.Sensor.RatedC.Value = 350, 350
	silent(t, heaterStuckOn, in)
	in.Sheet.New.Sensor.RatedC.Value = 340
	wantSaid(t, one(t, heaterStuckOn, in), "340 °C of the sensor")
	assumeBlock(in)
	// 282 and 504 by hand
	wantSaid(t, one(t, heaterStuckOn, in), "loss 0.068 W/K", "280 °C to far above 500 °C", "uncertain")
}

// A cut-off settles it only below the rating that is exceeded.
func TestHeaterStuckOnCutoff(t *testing.T) {
	in := worked(240)
	silent(t, heaterStuckOn, in)
	in.Sheet.New.CutoffC.Value = 320
	wantSaid(t, one(t, heaterStuckOn, in),
		"fit an independent cut-off below that rating, this one is at 320 °C")
	in.Sheet.New.CutoffC.Value = 0 // nothing cuts it
	wantSaid(t, one(t, heaterStuckOn, in), "fit an independent cut-off")
}

// Of a PTC heater known by its label the bound is far too high, and says so.
func TestHeaterStuckOnLabel(t *testing.T) {
	in := uncut(worked(240))
	in.Sheet.New.Heater.HotW = absent("new.heater.hot_w", [][2]float64(nil))
	wantSaid(t, one(t, heaterStuckOn, in), "far above 500 °C", "its label's power at every temperature",
		"give new.heater.hot_w")
}
