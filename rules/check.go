package rules

import (
	"slices"

	"preflash/parser"
)

// mostOfARule is how many findings of one rule and level are listed one by one.
const mostOfARule = 1000

// Check runs every rule over one printer. Findings come in the order of danger.
// Those that a waiver of the sheet covers carry its reason in Waived.
func Check(in *Input) []Finding {
	var found []Finding
	changed := make(map[parser.Key]any)
	run := *in
	unknowns := make(map[parser.Key]bool)
	run.Changed, run.unknowns, run.rules, run.waivers = changed, unknowns, All(), newWaivers(in)
	for _, rule := range run.rules {
		if lacksHotend(in.Printer) && !rule.Whole || in.NoSheet && rule.NeedsSheet {
			continue
		}
		var count, last [Error + 1]int
		rule.Check(&run, func(f Finding) {
			f.Rule = rule.ID
			if in.NoSheet {
				f.Changes = nil
			}
			if f.Figure == (Figure{}) {
				f.Figure = rule.Figure.of(f.Values)
			}
			f.Waived = run.waivers.cover(rule, &f)
			if f.At.IsZero() { // nothing in the configuration to point at
				f.At = in.Sheet.Printer.Config[0].At
			}
			unknowns[f.Unknown] = true
			for _, c := range f.Changes {
				if f.Waived == "" { // otherwise nobody makes it
					changed[c.Key] = c.Value
				}
			}
			if count[f.Level]++; count[f.Level] > mostOfARule {
				found[last[f.Level]].More++
				return
			}
			f.shorten()
			f.Cause = in.Printer.Causes[f.Unknown]
			last[f.Level] = len(found)
			found = append(found, f)
		})
	}
	ByDanger(found)
	return found
}

// lacksHotend reports whether the configuration has no such hotend as the sheet
// names: then there is nothing that the rest could be judged by.
func lacksHotend(p *parser.Printer) bool {
	return slices.ContainsFunc(p.Remarks,
		func(r parser.Remark) bool { return r.Kind == parser.RemarkMismatch })
}

func fileName(at parser.Span) string {
	if at.File == nil {
		return ""
	}
	return at.File.Name
}

// Find returns the rule with this ID, or nil.
func Find(id string) *Rule { return find(All(), id) }

func find(rules []*Rule, id string) *Rule {
	for _, r := range rules {
		if r.ID == id {
			return r
		}
	}
	return nil
}
