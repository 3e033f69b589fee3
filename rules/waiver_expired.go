package rules

import (
	"fmt"
	"strings"
	"time"

	"preflash/parser"
)

var waiverExpired = &Rule{
	ID:       "waiver-expired",
	Level:    Error,
	Whole:    true,
	Unwaived: true,
	Summary:  "A waiver does not hold: past its date, for too long, without a figure, or outgrown.",
	Doc: `A waiver holds up to and including its day, for a year from today at most, and
as long as the finding's figure is no worse than at, by more than the smallest
difference that the finding shows. Else the finding counts again, and the waiver
itself is an error until it is removed or renewed. Where the rule speaks of
several settings, setting says which. A waiver of a rule that does not exist, or
of one that may not be waived, or of a setting that is misspelt, covers nothing.
Cannot be waived itself.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		w := in.waivers
		for i := range w.list {
			one := &w.list[i]
			rule := find(in.rules, one.Rule.Value)
			switch {
			case rule == nil:
				report(Findingf(Error, one.Rule.At, "correct the waiver: %q is no rule; %s", one.Rule.Value,
					meantRule(in.rules, one.Rule.Value)))
			case rule.Unwaived:
				report(Findingf(Error, one.Rule.At,
					"remove the waiver: %s cannot be waived; fix what it finds",
					one.Rule.Value))
			case w.past(one):
				report(Findingf(Error, one.Until.At,
					"fix what the waiver of %s covered, or renew it: it ended on %s",
					one.Rule.Value, one.Until.Value.Format(time.DateOnly)))
			case w.tooLong(one):
				report(Findingf(Error, one.Until.At,
					"write until = %s at the latest: a waiver of %s may hold for a year",
					w.longest().Format(time.DateOnly), one.Rule.Value))
			case w.bare[i] != nil:
				f := w.bare[i]
				report(Findingf(Error, one.Rule.At,
					"add to the waiver of %s: %s%s; without, it covers nothing",
					one.Rule.Value, strings.Join(WaiverLines(f), " and "), inUnit(f.Figure)))
			case w.grown[i] != nil:
				f := w.grown[i]
				report(Findingf(Error, one.At.At, "fix what %s finds: it was accepted up to %s and is %s now",
					one.Rule.Value, Figure{one.At.Value, f.Figure.Unit, f.Figure.Worse}, f.Figure))
			case w.misspelt(in, i) != "":
				report(Findingf(Error, one.Setting.At, "correct the waiver of %s: it covers nothing, "+
					"since there is no setting %q; did you mean %q?",
					one.Rule.Value, one.Setting.Value, w.misspelt(in, i)))
			}
		}
	},
}

// meantRule says which rule a name was probably meant for.
func meantRule(list []*Rule, name string) string {
	var ids []string
	for _, r := range list {
		ids = append(ids, r.ID)
	}
	if near := parser.Nearest(name, ids); near != "" {
		return "did you mean " + near + "?"
	}
	return "preflash rules lists them"
}

// inUnit says in brackets what unit the figure of a waiver has.
func inUnit(f Figure) string {
	if f.Unit == "" {
		return ""
	}
	return fmt.Sprintf(" (%s)", f.Unit)
}
