package report

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"preflash/cmd/internal/fleet"
	"preflash/patch"
	"preflash/rules"
)

// tally counts findings by level; waived ones are not counted.
type tally struct {
	name     string
	levels   [3]int // by rules.Level
	printers int
}

func (t *tally) worst() rules.Level {
	for level := rules.Error; level > rules.Note; level-- {
		if t.levels[level] > 0 {
			return level
		}
	}
	return rules.Note
}

// overview sums several printers up: each that has more than notes, and each
// rule that speaks, the worst first.
func overview(r *fleet.Result) (printers, byRule []tally) {
	index := make(map[string]int)
	for i := range r.Printers {
		p := &r.Printers[i]
		mine := tally{name: p.Name}
		seen := make(map[string]bool)
		for j := range p.Findings {
			f := &p.Findings[j]
			if !f.Counts() {
				continue
			}
			mine.levels[f.Level] += f.Count()
			k, known := index[f.Rule]
			if !known {
				k = len(byRule)
				index[f.Rule] = k
				byRule = append(byRule, tally{name: f.Rule})
			}
			byRule[k].levels[f.Level] += f.Count()
			if !seen[f.Rule] {
				seen[f.Rule] = true
				byRule[k].printers++
			}
		}
		if mine.worst() > rules.Note {
			printers = append(printers, mine)
		}
	}
	worstFirst := func(a, b tally) int {
		return cmp.Or(
			cmp.Compare(b.levels[rules.Error], a.levels[rules.Error]),
			cmp.Compare(b.levels[rules.Warning], a.levels[rules.Warning]),
			cmp.Compare(b.levels[rules.Note], a.levels[rules.Note]),
			cmp.Compare(a.name, b.name))
	}
	slices.SortStableFunc(printers, worstFirst)
	slices.SortStableFunc(byRule, worstFirst)
	return printers, byRule
}

// overviewText prints the overview as two tables.
func overviewText(r *fleet.Result) string {
	var b strings.Builder
	printers, byRule := overview(r)
	row := func(t tally) {
		fmt.Fprintf(&b, "%7s %8s %5s  ", dash(t.levels[rules.Error]), dash(t.levels[rules.Warning]), dash(t.levels[rules.Note]))
	}
	if len(printers) > 0 {
		b.WriteString(" errors warnings notes  by printer\n")
		for _, t := range printers {
			row(t)
			b.WriteString(patch.Visible(t.name) + "\n")
		}
		b.WriteByte('\n')
	}
	if len(byRule) > 0 {
		b.WriteString(" errors warnings notes  by rule\n")
		for _, t := range byRule {
			row(t)
			fmt.Fprintf(&b, "%s, %s\n", t.name, plural(t.printers, "printer"))
		}
		b.WriteByte('\n')
	}
	return b.String()
}

// dash keeps a table of mostly zeros legible.
func dash(n int) string {
	if n == 0 {
		return "-"
	}
	return fmt.Sprint(n)
}
