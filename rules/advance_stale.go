package rules

import (
	"fmt"
	"strings"

	"preflash/parser"
	"preflash/rules/unit"
)

// mostCarried is how many settings are named before the rest is counted.
const mostCarried = 4

var advanceStale = &Rule{
	ID:      "advance-stale",
	Level:   Note,
	Summary: "Advance, retraction and load lengths were set for the old hotend.",
	Doc: `Pressure or linear advance, retraction, load and unload lengths depend on the
length and volume of the hotend. Measure them again on the new hotend; there
is no formula (common practice, no source).`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		var names []string
		var at parser.Span
		for i := range in.Printer.Flow.CarriedOver {
			s := &in.Printer.Flow.CarriedOver[i]
			if s.State != parser.Set || s.Value == 0 {
				continue
			}
			if at.IsZero() {
				at = s.At
			}
			names = append(names, string(s.Key)+" "+unit.Figure(s.Value, 3))
		}
		if len(names) > 0 {
			f := Findingf(Note, at, "measure again what was set for the old hotend: %s",
				strings.Join(names[:min(len(names), mostCarried)], ", "))
			if n := len(names) - mostCarried; n > 0 {
				f.Message += fmt.Sprintf(" and %d more", n)
				f = f.Explain("all of them: %s", strings.Join(names, ", "))
			}
			report(f)
		}
	},
}
