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
