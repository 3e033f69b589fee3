package rules

import (
	"testing"

	"preflash/parser"
)

func TestFanVoltage(t *testing.T) {
	tests := []struct {
		rated, output float64
		silent        bool
		says          string
	}{
		{24, 24, true, ""},
		{24, 27.6, true, ""},
		{24, 20.4, true, ""},
		{12, 24, false, "is made for 12 V and gets 24 V: it burns out"},
		{24, 12, false, "is made for 24 V and gets 12 V: it turns too slowly"},
		{24, 27.7, false, "burns out"},
		{24, 20.3, false, "too slowly"},
	}
	for _, tt := range tests {
		in := healthyInput()
		in.Sheet.New.Fan.RatedV.Value, in.Sheet.New.Fan.OutputV.Value = tt.rated, tt.output
		if tt.silent {
			silent(t, fanVoltage, in)
			continue
		}
		f := one(t, fanVoltage, in)
		if f.Level != Error || f.At.Text() != "new.fan.rated_v" {
			t.Errorf("%s at %s", f.Level, f.At.Text())
		}
		wantValues(t, f, Values{"rated_v": tt.rated, "output_v": tt.output})
		wantSaid(t, f, tt.says)
	}
	in := healthyInput()
	in.Sheet.New.Fan.RatedV.Value = 12
	in.Sheet.New.Fan.OutputV = absent("new.fan.output_v", 24.0)
	wantSaid(t, one(t, fanVoltage, in), "24 V (assumed: that of the supply)")
	in.Sheet.New.Fan.RatedV = absent("new.fan.rated_v", 0.0)
	silent(t, fanVoltage, in)
}

// A fan that runs below full power gets its output's voltage in pulses.
func TestFanVoltageSlow(t *testing.T) {
	for _, tt := range []struct {
		rated, output, power float64
		level                Level // Note: silent
		says                 string
	}{
		{24, 24, 1, Note, ""},
		{24, 24, 0.86, Note, ""},
		{24, 24, 0.8, Error, "made for 24 V, and the heat-break fan power is 80 %: it gets 24 V in pulses, 19.2 V in the mean: it turns too slowly"},
		{12, 24, 0.5, Warning, "12 V in the mean: not every fan stands that"},
		{12, 24, 0.8, Error, "19.2 V in the mean: it burns out"},
		{24, 24, 0, Error, "0 V in the mean: it turns too slowly or not at all"},
	} {
		in := healthyInput()
		in.Sheet.New.Fan.RatedV.Value, in.Sheet.New.Fan.OutputV.Value = tt.rated, tt.output
		in.Printer.ColdSide.Power = set(parser.FanPower, tt.power)
		if tt.level == Note {
			silent(t, fanVoltage, in)
			continue
		}
		f := one(t, fanVoltage, in)
		if f.Level != tt.level || f.At.Text() != string(parser.FanPower) {
			t.Errorf("%s at %s", f.Level, f.At.Text())
		}
		wantSaid(t, f, tt.says)
		wantValues(t, f, Values{"rated_v": tt.rated, "output_v": tt.output, "power": tt.power})
		in.Sheet.New.Fan.AlwaysOn = given("new.fan.always_on", true) // then nothing drives it
		in.Sheet.New.Fan.OutputV.Value = tt.rated
		silent(t, fanVoltage, in)
	}
	in := healthyInput()
	in.Printer.ColdSide.Power = unknown[float64](parser.FanPower)
	wantSaid(t, one(t, fanVoltage, in), "cannot tell the heat-break fan power")
}
