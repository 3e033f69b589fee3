package worklist_test

import (
	"strings"
	"testing"

	"preflash/cmd/internal/worklist"
	"preflash/rules"
)

// What follows the first heat runs at the middle of the printing range, 215 °C:
// where no more may be asked, or the tune's swing would trip, nothing follows.
func TestNothingHotterThanMayBeAsked(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(in *rules.Input)
		most   string // "" where the list goes on
	}{
		{"max temp with room", func(in *rules.Input) { in.Printer.Limits.MaxTemp.Value = 225 }, ""},
		{"max temp", func(in *rules.Input) { in.Printer.Limits.MaxTemp.Value = 220 }, "210 °C"},
		{"rated", func(in *rules.Input) { in.Sheet.New.RatedC.Value = 200 }, "200 °C"},
		{"hotter than shown, and below the rating", func(in *rules.Input) { pullup(in, 2200) }, ""},
		{"hotter than shown, and past the rating", func(in *rules.Input) { pullup(in, 1000) }, "208 °C"},
	} {
		in := input(t)
		c.change(in)
		sections := worklist.New(in, worklist.Open{}).Sections
		last := sections[len(sections)-1]
		if ends := last.Title == "First heat"; ends != (c.most != "") {
			t.Errorf("%s: the last section is %q", c.name, last.Title)
		} else if do := last.Items[len(last.Items)-1].Do; ends && (!strings.Contains(do, "needs 215 °C") ||
			!strings.Contains(do, "no more than "+c.most)) {
			t.Errorf("%s: %s", c.name, do)
		}
	}
}

// pullup wires the sensor to another pull-up than the firmware believes.
func pullup(in *rules.Input, ohm float64) {
	in.Sheet.Printer.PullupOhm.Value, in.Sheet.Printer.PullupOhm.Given = ohm, true
}

// Before some errors are fixed the heater must not get power at all.
func TestNoHeatBeforeWhatMustBeFixed(t *testing.T) {
	for _, c := range []struct {
		errors, before []string
		stop           string // "" where the list goes on
	}{
		{nil, nil, ""},
		{[]string{"temp-ceiling"}, nil, ""},
		{[]string{"sensor-kind"}, []string{"sensor-kind"}, "sensor-kind"},
		{[]string{"runaway-off", "heater-overpower", "pid-stale", "runaway-off"},
			[]string{"runaway-off", "heater-overpower", "runaway-off"}, "heater-overpower, runaway-off"},
	} {
		sections := worklist.New(input(t), worklist.Open{Errors: c.errors, Before: c.before}).Sections
		last := sections[len(sections)-1]
		if ends := last.Title == "Protection test"; ends != (c.stop != "") {
			t.Errorf("%v: the last section is %q", c.errors, last.Title)
		} else if do := last.Items[len(last.Items)-1].Do; ends && (!strings.HasPrefix(do, "Stop here: ") ||
			!strings.Contains(do, "is fixed: "+c.stop+" (")) {
			t.Errorf("%v: %s", c.errors, do)
		}
	}
}
