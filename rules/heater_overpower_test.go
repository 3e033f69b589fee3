package rules

import "testing"

func TestHeaterPowerRatio(t *testing.T) {
	tests := []struct {
		supply, rated float64
		rule          *Rule
		actual, ratio float64
		says          string
	}{
		{24, 12, heaterOverpower, 160, 4,
			"fit a heater for 24 V, or correct the sheet: one of 40 W at 12 V gives 160 W there, 4 times " +
				"its rating"},
		{26, 24, heaterOverpower, 46.944, 1.174, "46.9 W"},
		{25.7, 24, nil, 0, 0, ""}, // ratio 1.147
		{20.1, 24, nil, 0, 0, ""}, // ratio 0.701
		{20, 24, heaterUnderpower, 27.778, 0.694,
			"fit a heater for 20 V, or correct the sheet: one of 40 W at 24 V gives only 27.8 W"},
		{12, 24, heaterUnderpower, 10, 0.25, "gives only 10 W"},
	}
	for _, tt := range tests {
		in := healthyInput()
		in.Sheet.Printer.SupplyV.Value, in.Sheet.New.Heater.RatedV.Value = tt.supply, tt.rated
		for _, rule := range []*Rule{heaterOverpower, heaterUnderpower} {
			if rule != tt.rule {
				silent(t, rule, in)
				continue
			}
			f := one(t, rule, in)
			if f.Level != rule.Level || f.At.Text() != "new.heater.rated_v" {
				t.Errorf("%s at %s", f.Level, f.At.Text())
			}
			wantValues(t, f, Values{"rated_w": 40.0, "actual_w": tt.actual, "ratio": tt.ratio})
			wantSaid(t, f, tt.says)
			wantChanges(t, f)
		}
	}
	if !heaterOverpower.Unwaived {
		t.Error("heater-overpower can be waived")
	}
}
