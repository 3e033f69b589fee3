package rules

import "preflash/parser/sheet"

var waiverExpired = &Rule{
	Whole:    true,
	ID:       "waiver-expired",
	Level:    Error,
	Unwaived: true,
	Summary:  "A waiver is past its date, or covers what cannot be waived.",
	Doc: `A waiver holds up to and including its day. Past it, the finding that it
covered counts again, and the waiver itself is an error until it is removed or
renewed. A waiver of a rule that does not exist, or of one that may not be
waived, covers nothing. Cannot be waived itself.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		for i := range in.Sheet.Waivers {
			w := &in.Sheet.Waivers[i]
			rule := find(in.rules, w.Rule.Value)
			switch {
			case rule == nil:
				report(Sayf(Error, w.Rule.At, "the waiver names %q, which is no rule; `rules` lists them", w.Rule.Value))
			case rule.Unwaived:
				report(Sayf(Error, w.Rule.At, "%s cannot be waived; mend what it finds and remove the waiver", w.Rule.Value))
			case expired(in, w):
				report(Sayf(Error, w.Until.At, "the waiver of %s ended on %s; mend what it covered, or renew it with a new date and reason",
					w.Rule.Value, w.Until.Value.Format("2006-01-02")))
			}
		}
	},
}

func expired(in *Input, w *sheet.Waiver) bool {
	return in.Today.After(w.Until.Value)
}
