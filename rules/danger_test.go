package rules

import (
	"slices"
	"testing"
)

// A rule that has a place in the order of danger has one at each level that it
// may report, no row is shadowed by one above it, and the rows of a danger stand
// together.
func TestRanks(t *testing.T) {
	danger := Fire
	for i, r := range ranks {
		if r.Danger < danger {
			t.Errorf("row %d, %s, is out of order", i+1, r.Rule)
		}
		danger = r.Danger
		f := Finding{Rule: r.Rule, Level: Error, Harm: r.Only}
		for f.Level > r.From {
			f.Level--
		}
		if rank, d := RankOf(&f); rank != i+1 || d != r.Danger {
			t.Errorf("row %d, %s, is never reached: row %d comes first", i+1, r.Rule, rank)
		}
		if Find(r.Rule) == nil {
			t.Errorf("row %d: there is no rule %s", i+1, r.Rule)
		}
	}
	for _, rule := range All() {
		if !slices.ContainsFunc(ranks, func(r Rank) bool { return r.Rule == rule.ID }) {
			continue
		}
		for level := Note; level <= rule.Level; level++ {
			rank, _ := RankOf(&Finding{Rule: rule.ID, Level: level})
			if ranks[rank-1].Rule != rule.ID {
				t.Errorf("%s: a %s has no rank", rule.ID, level)
			}
		}
	}
}

// A rule without a row comes after all that have the danger of its level.
func TestRankOfNewRule(t *testing.T) {
	for level, want := range map[Level]Danger{Note: Know, Warning: Bad, Error: Heat} {
		rank, danger := RankOf(&Finding{Rule: "new", Level: level})
		if danger != want || ranks[rank-1].Danger != want || rank < len(ranks) && ranks[rank].Danger == want {
			t.Errorf("%s: rank %d, danger %s", level, rank, danger)
		}
	}
}

func TestByDanger(t *testing.T) {
	found := []Finding{
		{Rule: "advance-stale", Level: Note},
		{Rule: "runaway-loose", Level: Error, About: "hotend drop check period"},
		{Rule: "sensor-curve", Level: Error},
		{Rule: "runaway-tight", Level: Warning},
		{Rule: "runaway-loose", Level: Error, About: "hotend heating check window"},
		{Rule: "sensor-curve", Level: Error, Harm: pastRating},
	}
	ByDanger(found)
	want := []string{"sensor-curve past a rating", "runaway-loose hotend heating check window",
		"runaway-loose hotend drop check period", "runaway-tight ", "sensor-curve ", "advance-stale "}
	for i, f := range found {
		if got := f.Rule + " " + f.About + f.Harm; got != want[i] {
			t.Errorf("place %d: %s, want %s", i+1, got, want[i])
		}
	}
}
