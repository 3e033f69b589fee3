package rules

import (
	"testing"

	"preflash/parser"
)

func TestHeaterDuty(t *testing.T) {
	in := healthyInput()
	silent(t, heaterDuty, in)

	in.Sheet.New.Heater.DutyLimit = given("new.heater.duty_limit", 0.6)
	f := one(t, heaterDuty, in)
	if f.Level != Error || f.At.Text() != string(parser.PowerLimit("all")) {
		t.Errorf("%s at %s", f.Level, f.At.Text())
	}
	wantValues(t, f, Values{"configured": 1.0, "limit": 0.6})
	wantChanges(t, f,
		parser.Change{Key: parser.PowerLimit("all"), Value: 0.6},
		parser.Change{Key: parser.PowerLimit("loop"), Value: 0.6})
	wantSaid(t, f,
		"lower the power limit to 60 %: the configuration drives the heater at up to 100 % of full power")

	// Only the option that is too high changes; a count of rounding is none.
	limits := in.Printer.Hotend.Loop.PowerLimits
	limits[0].Value = 153.0/255 + 0.001
	limits[1].Value = 0.7
	f = one(t, heaterDuty, in)
	wantValues(t, f, Values{"configured": 0.7, "limit": 0.6})
	wantChanges(t, f, parser.Change{Key: parser.PowerLimit("loop"), Value: 0.6})

	// A limit that is off limits nothing; one that is unknown is said.
	limits[0] = off[float64](parser.PowerLimit("all"))
	limits[1] = unknown[float64](parser.PowerLimit("loop"))
	got := run(t, heaterDuty, in)
	if len(got) != 2 {
		t.Fatalf("got %v", messages(got))
	}
	wantSaid(t, got[0], "cannot tell the power limit loop")
	wantValues(t, got[1], Values{"configured": 1.0, "limit": 0.6})

	// A default stands nowhere: the finding points at the sheet.
	limits[0] = byDefault(parser.PowerLimit("all"), 1.0)
	in.Printer.Hotend.Loop.PowerLimits = limits[:1]
	if f := one(t, heaterDuty, in); f.At.Text() != "new.heater.duty_limit" {
		t.Errorf("points at %s", f.At.Text())
	}
	in.Printer.Hotend.Loop.PowerLimits = nil
	f = one(t, heaterDuty, in)
	wantChanges(t, f)
	wantSaid(t, f, "no option that does")
}
