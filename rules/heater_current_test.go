package rules

import "testing"

func TestHeaterCurrent(t *testing.T) {
	in := healthyInput() // 40 W at 24 V: 1.67 A
	silent(t, heaterCurrent, in)

	in.Sheet.Printer.OutputA.Value = 1.5
	f := one(t, heaterCurrent, in)
	if f.Level != Error || f.At.Text() != "printer.output_a" {
		t.Errorf("%s at %s", f.Level, f.At.Text())
	}
	wantValues(t, f, Values{"peak_a": 1.6667, "limit_a": 1.5})
	wantSaid(t, f, "draws up to 1.67 A, and the output is rated for 1.5 A; on the 24 V supply",
		"rated for 1.5 A")
	wantChanges(t, f)

	// A 12 V heater on 24 V: 3.6 Ω, 6.67 A.
	in.Sheet.Printer.OutputA.Value = 5
	in.Sheet.New.Heater.RatedV.Value = 12
	wantValues(t, one(t, heaterCurrent, in), Values{"peak_a": 6.6667, "limit_a": 5.0})

	// The lowest resistance is that of the largest power.
	in = healthyInput()
	ptc(in.Sheet)
	in.Sheet.New.Heater.HotW.Value = [][2]float64{{25, 48}, {80, 144}, {300, 22}}
	wantValues(t, one(t, heaterCurrent, in), Values{"peak_a": 6.0, "limit_a": 5.0})

	// A duty limit changes nothing but the wording.
	in.Printer.Hotend.Loop.PowerLimits[0].Value = 0.5
	f = one(t, heaterCurrent, in)
	wantValues(t, f, Values{"peak_a": 6.0, "limit_a": 5.0})
	wantSaid(t, f, "the duty limit of 50 % lowers the mean current, not this peak")

	in.Sheet.Printer.OutputA = absent("printer.output_a", 0.0)
	silent(t, heaterCurrent, in)

	// 114 W at 24 V is 4.75 A, and 4.99 A with 5 % more than the label; 116 W
	// pass the 5 A with that alone.
	in = healthyInput()
	in.Sheet.New.Heater.RatedW.Value = 114
	silent(t, heaterCurrent, in)
	in.Sheet.New.Heater.RatedW.Value = 116
	wantSaid(t, one(t, heaterCurrent, in), "4.83 A, or 5.08 A where it gives 5 % more than its label")
}
