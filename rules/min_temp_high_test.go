package rules

import (
	"testing"

	"preflash/parser"
)

func TestMinTempHigh(t *testing.T) {
	in := healthyInput()
	silent(t, minTempHigh, in)
	in.Printer.Limits.MinTemp.Value = 21.9
	silent(t, minTempHigh, in)

	in.Printer.Limits.MinTemp.Value = 22
	f := one(t, minTempHigh, in)
	if f.Level != Error || f.At.Text() != string(parser.MinTemp) {
		t.Errorf("%s at %s", f.Level, f.At.Text())
	}
	wantValues(t, f, Values{"min_temp_c": 22.0, "ambient_c": 22.0})
	wantChanges(t, f)
	wantSaid(t, f, "faults at the first heating")

	in.Printer.Limits.MinWhileHeating = false
	in.Sheet.Printer.AmbientC = absent("printer.ambient_c", 22.0)
	wantSaid(t, one(t, minTempHigh, in), "the printer will not start", "22 °C (assumed)")

	in.Printer.Limits.MinTemp = unknown[float64](parser.MinTemp)
	wantSaid(t, one(t, minTempHigh, in), "cannot tell the min temp")
	in.Printer.Limits.MinTemp = off[float64](parser.MinTemp)
	silent(t, minTempHigh, in)
}

// For a while after the target rises, the minimum may not be looked at.
func TestMinTempHighGrace(t *testing.T) {
	in := healthyInput()
	in.Printer.Limits.MinTemp.Value = 25
	in.Printer.Limits.Graces = []parser.Setting[float64]{set(parser.Grace("while heating up"), 15.0)}
	silent(t, minTempHigh, in) // 40 W into 16.7 J/K: some 2 K/s, 4.5 s late
	in.Printer.Limits.Graces[0].Value = 2
	one(t, minTempHigh, in)
	in.Printer.Limits.Graces[0].Value = 60 // runaway-loose takes it away
	one(t, minTempHigh, in)
	in.Printer.Limits.Graces[0] = unknown[float64](parser.Grace("while heating up"))
	one(t, minTempHigh, in)
}

// The firmware's own checks may demand a minimum above the room's temperature.
func TestMinTempHighFloor(t *testing.T) {
	in := healthyInput()
	in.Sheet.Printer.AmbientC.Value = 20
	s := &in.Printer.Limits.MinTemp
	s.Value, s.Least = 21, 21
	silent(t, minTempHigh, in)
	s.Value = 30
	wantSaid(t, one(t, minTempHigh, in), "no lower than 21 °C")
}
