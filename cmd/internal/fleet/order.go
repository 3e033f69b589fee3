package fleet

import (
	"cmp"
	"math"
	"slices"

	"preflash/rules"
)

// Standing is a printer among others: its findings that count, by level, and
// the worst of them.
type Standing struct {
	*Printer
	Index  int    // in the result
	Levels [3]int // by rules.Level
	Worst  *Finding
}

// WorstFirst sorts printers: those that cannot be read, then by their worst
// finding that counts.
func (r *Result) WorstFirst() []Standing {
	list := make([]Standing, len(r.Printers))
	for i := range r.Printers {
		s := &list[i]
		s.Printer, s.Index = &r.Printers[i], i
		for _, f := range s.Printer.WorstFirst() {
			if f.Counts() {
				s.Worst = cmp.Or(s.Worst, f)
				s.Levels[f.Level] += f.Count()
			}
		}
	}
	slices.SortStableFunc(list, func(a, b Standing) int {
		return cmp.Or(cmp.Compare(a.place(), b.place()),
			cmp.Compare(b.Levels[rules.Error], a.Levels[rules.Error]),
			cmp.Compare(b.Levels[rules.Warning], a.Levels[rules.Warning]))
	})
	return list
}

// place is that of the worst finding in the order of danger, before all of them
// where a printer cannot be read, and behind all where nothing counts.
func (s *Standing) place() int {
	switch {
	case s.Problem != nil:
		return -1
	case s.Worst == nil:
		return math.MaxInt
	}
	return s.Worst.Rank
}

// WorstFirst gives the findings of a printer in the order of danger, the waived
// ones last.
func (p *Printer) WorstFirst() []*Finding {
	sorted := make([]*Finding, len(p.Findings))
	for i := range p.Findings {
		sorted[i] = &p.Findings[i]
	}
	slices.SortStableFunc(sorted, ByDanger)
	return sorted
}

// ByDanger compares findings by the order of danger: what does not count is
// behind what does.
func ByDanger(a, b *Finding) int {
	passed := func(f *Finding) int {
		switch {
		case f.Waived != "":
			return 2
		case f.Known != "":
			return 1
		}
		return 0
	}
	return cmp.Or(
		cmp.Compare(passed(a), passed(b)),
		cmp.Compare(a.Rank, b.Rank),
		cmp.Compare(b.Level, a.Level))
}

// Bare lists the printers that were checked without a sheet.
func (r *Result) Bare() []*Printer {
	var list []*Printer
	for i := range r.Printers {
		if p := &r.Printers[i]; p.Begin != "" && p.Problem == nil {
			list = append(list, p)
		}
	}
	return list
}
