package rules

import (
	"strings"

	"preflash/parser"
)

var advanceStale = &Rule{
	ID:      "advance-stale",
	Level:   Note,
	Summary: "Advance, retraction and load lengths come from the old melt path.",
	Doc: `Pressure or linear advance, retraction, load and unload lengths depend on the
length and volume of the melt path. Measure them again on the new hotend; there
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
			names = append(names, string(s.Key)+" "+figure(s.Value, 3))
		}
		if len(names) > 0 {
			report(Sayf(Note, at, "carried over from the old melt path, to be measured again: %s", strings.Join(names, ", ")))
		}
	},
}
