package rules

import "testing"

func TestSupplyBudget(t *testing.T) {
	tests := []struct {
		name             string
		supply, other    float64
		otherGiven       bool
		says             string
		load, share      float64
		level            Level
		silentAltogether bool
	}{
		{name: "healthy", supply: 350, other: 220, otherGiven: true, silentAltogether: true},
		{name: "79.3 %, and 80 % with 5 % more", supply: 302.5, other: 200, otherGiven: true,
			silentAltogether: true},
		{name: "exactly 80 %", supply: 300, other: 200, otherGiven: true, load: 240, share: 0.8,
			level: Warning,
			says:  "81 % where the heater gives 5 % more than its label"},
		{name: "warning", supply: 300, other: 220, otherGiven: true, load: 260, share: 0.8667, level: Warning,
			says: "gives 260 W, 87 % of its rating, and it should not give above 80 % for long; 40 W for " +
				"the heater and 220 W for all else"},
		{name: "full with 5 % more", supply: 262, other: 220, otherGiven: true, load: 260, share: 0.9924,
			level: Warning, says: "99 %"},
		{name: "exactly full", supply: 260, other: 220, otherGiven: true, load: 260, share: 1, level: Error,
			says: "101 %"},
		{name: "error", supply: 240, other: 220, otherGiven: true, load: 260, share: 1.0833, level: Error,
			says: "108 %"},
		{name: "heater alone", supply: 45, load: 40, share: 0.8889, level: Warning,
			says: "does not give other_load_w"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			in := healthyInput()
			in.Sheet.Printer.SupplyW.Value = tt.supply
			in.Sheet.Printer.OtherLoadW.Value, in.Sheet.Printer.OtherLoadW.Given = tt.other, tt.otherGiven
			if tt.silentAltogether {
				silent(t, supplyBudget, in)
				return
			}
			f := one(t, supplyBudget, in)
			if f.Level != tt.level || f.At.Text() != "printer.supply_w" {
				t.Errorf("%s at %s", f.Level, f.At.Text())
			}
			wantValues(t, f, Values{"load_w": tt.load, "supply_w": tt.supply, "share": tt.share})
			wantSaid(t, f, tt.says)
		})
	}
	in := healthyInput()
	in.Sheet.Printer.SupplyW = absent("printer.supply_w", 0.0)
	silent(t, supplyBudget, in)
}
