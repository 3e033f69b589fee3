package fleet

import (
	"testing"

	"preflash/rules"
)

// Printers stand in the order of what is worst of them, and by how much there is of
// it; what does not count moves none up.
func TestWorstFirst(t *testing.T) {
	finding := func(rank int, level rules.Level) Finding { return Finding{Rank: rank, Level: level} }
	waived := finding(1, rules.Error)
	waived.Waived = "why"
	known := finding(2, rules.Error)
	known.Known = "2026-01-02"
	r := &Result{Printers: []Printer{
		{Name: "nothing"},
		{Name: "waived", Findings: []Finding{waived}},
		{Name: "one error", Findings: []Finding{finding(5, rules.Error)}},
		{Name: "two errors", Findings: []Finding{finding(9, rules.Error), finding(5, rules.Error)}},
		{Name: "worst",
			Findings: []Finding{waived, known, finding(8, rules.Note), finding(3, rules.Warning)}},
		{Name: "unreadable", Problem: &Problem{Message: "why"}},
	}}
	want := []string{"unreadable", "worst", "two errors", "one error", "nothing", "waived"}
	for i, s := range r.WorstFirst() {
		if s.Name != want[i] || r.Printers[s.Index].Name != s.Name {
			t.Errorf("%s, of index %d, stands where %s should", s.Name, s.Index, want[i])
		}
		if counts := s.Levels != [3]int{}; counts != (s.Worst != nil) {
			t.Errorf("%s: %v count, and the worst is %v", s.Name, s.Levels, s.Worst)
		}
	}
	var ranks []int
	for _, f := range r.Printers[4].WorstFirst() {
		ranks = append(ranks, f.Rank)
	}
	if want := [4]int{3, 8, 2, 1}; len(ranks) != 4 || [4]int(ranks) != want {
		t.Errorf("findings in the order %v, want %v: the known, then the waived ones last", ranks, want)
	}
}

func TestFindingText(t *testing.T) {
	f := Finding{Message: "do this", Detail: "since that", Aside: "told once"}
	if got := f.Rest(); got != "since that; told once" {
		t.Errorf("the rest is %q", got)
	}
	if got := (&Finding{Message: "do this"}).Rest(); got != "" {
		t.Errorf("the rest of a message alone is %q", got)
	}
	for want, r := range map[string]Region{"": {Line: 3}, "a.h": {File: "a.h"},
		"a.h:3": {File: "a.h", Line: 3}} {
		if got := r.Place(); got != want {
			t.Errorf("%+v is at %q, want %q", r, got, want)
		}
	}
}
