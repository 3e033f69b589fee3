package report

import (
	"cmp"
	"fmt"
	"slices"

	"preflash/cmd/internal/fleet"
	"preflash/patch"
	"preflash/rules"
)

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
				row.class, row.place, row.says = 1, f.Rank, patch.Visible(f.Message)
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
