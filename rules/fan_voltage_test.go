package rules

import "testing"

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
