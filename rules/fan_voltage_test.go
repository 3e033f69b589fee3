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
		{12, 24, false, "fit a heat-break fan for 24 V, or feed this one through a converter: it is made " +
			"for 12 V; it burns out"},
		{24, 12, false, "fit a heat-break fan for 12 V, or feed this one through a converter: it is made " +
			"for 24 V; it turns too slowly"},
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

// A fan that the configuration runs below full power gets less in the mean.
func TestFanVoltageMean(t *testing.T) {
	with := func(rated, output, share float64) *Input {
		in := healthyInput()
		in.Sheet.New.Fan.RatedV.Value, in.Sheet.New.Fan.OutputV.Value = rated, output
		in.Printer.ColdSide.Power = set(parser.FanPower, share)
		return in
	}
	silent(t, fanVoltage, with(24, 24, 1))
	silent(t, fanVoltage, with(24, 24, 0.86))
	f := one(t, fanVoltage, with(24, 24, 0.4))
	if f.Level != Error || f.At.Text() != string(parser.FanPower) {
		t.Errorf("%s at %s", f.Level, f.At.Text())
	}
	wantSaid(t, f, "gets 9.6 V, 40 % of 24 V; it turns too slowly", "raise the heat-break fan power to 100 %")
	wantValues(t, f, Values{"rated_v": 24.0, "output_v": 9.6})
	wantChanges(t, f, parser.Change{Key: parser.FanPower, Value: 1.0})

	// More power does not make a fan for half the voltage right.
	f = one(t, fanVoltage, with(12, 24, 0.7))
	wantSaid(t, f, "gets 16.8 V", "it burns out")
	wantChanges(t, f)
	f = one(t, fanVoltage, with(12, 24, 0.5))
	wantSaid(t, f, "fit a heat-break fan for 24 V, or feed this one through a converter: it is made for "+
		"12 V, which it gets only in the mean")
	if f.Level != Warning {
		t.Errorf("level %s, want warning", f.Level)
	}

	in := with(24, 24, 0.4)
	in.Sheet.New.Fan.AlwaysOn = given("new.fan.always_on", true)
	silent(t, fanVoltage, in)
	in = with(24, 24, 0) // coldside-fan speaks
	silent(t, fanVoltage, in)
	f = one(t, coldsideFan, in)
	wantSaid(t, f, "never turns")
	wantChanges(t, f, parser.Change{Key: parser.FanPower, Value: 1.0})
	in.Printer.ColdSide.Power = unknown[float64](parser.FanPower)
	wantSaid(t, one(t, fanVoltage, in), "cannot tell the heat-break fan power")
}
