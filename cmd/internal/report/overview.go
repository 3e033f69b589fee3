package report

import (
	"cmp"
	"fmt"
	"slices"

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

// ranked is a printer in the overview: its findings that count, by level, and
// what is worst of it.
type ranked struct {
	name    string
	printer *fleet.Printer
	levels  [3]int // by rules.Level
	class   int    // 0: cannot be read; 1: has something that counts; 2: nothing
	place   int    // of its worst finding in the order of danger
	says    string
}

// rank sorts printers: those that cannot be read, then by their worst finding.
func rank(r *fleet.Result) []ranked {
	rows := make([]ranked, 0, len(r.Printers))
	for i := range r.Printers {
		p := &r.Printers[i]
		row := ranked{name: p.Name, printer: p, class: 2, says: "nothing found"}
		if len(p.Findings) > 0 {
			row.says = "nothing that counts"
		}
		for _, f := range worstFirst(p.Findings) {
			if !f.Counts() {
				continue
			}
			if row.class == 2 {
				row.class, row.place, row.says = 1, f.Rank, patch.Visible(f.Rule+": "+f.Message)
			}
			row.levels[f.Level] += f.Count()
		}
		if p.Problem != nil {
			row.class, row.place, row.says = 0, 0, "cannot be read"
		}
		rows = append(rows, row)
	}
	slices.SortStableFunc(rows, func(a, b ranked) int {
		return cmp.Or(cmp.Compare(a.class, b.class), cmp.Compare(a.place, b.place),
			cmp.Compare(b.levels[rules.Error], a.levels[rules.Error]), cmp.Compare(b.levels[rules.Warning], a.levels[rules.Warning]))
	})
	return rows
}

// dash keeps a table of mostly zeros legible.
func dash(n int) string {
	if n == 0 {
		return "-"
	}
	return fmt.Sprint(n)
}
