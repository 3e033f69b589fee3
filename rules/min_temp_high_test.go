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
	wantSaid(t, f, "as soon as the hotend is to heat")

	in.Printer.Limits.MinWhileHeating = false
	in.Sheet.Printer.AmbientC = absent("printer.ambient_c", 22.0)
	wantSaid(t, one(t, minTempHigh, in), "the printer will not start", "22 °C (assumed)")

	in.Printer.Limits.MinTemp = unknown[float64](parser.MinTemp)
	wantSaid(t, one(t, minTempHigh, in), "cannot tell the min temp")
	in.Printer.Limits.MinTemp = off[float64](parser.MinTemp)
	silent(t, minTempHigh, in)
}
