package cli

import (
	"io"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/measure"
	"preflash/cmd/internal/report"
	"preflash/rules"
)

// What is read on a narrow terminal wraps there, apart from what is one word.
func TestNarrow(t *testing.T) {
	const width = 60
	o := measure.RankOptions{TopC: 260, PullupOhm: 4700, UsedPullupOhm: 4700}
	ranking, err := measure.RankSensor("../../../testdata/demo/egret-02/bead.csv", o)
	if err != nil {
		t.Fatal(err)
	}
	ranking.Width = width
	day := time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC)
	values := fleet.ReadValues([]string{"../../../testdata/demo"},
		fleet.Options{Root: "../../..", Today: day}, false)
	prints := map[string]func(w io.Writer) error{
		"rules":  func(w io.Writer) error { return report.RuleList(w, rules.All(), width) },
		"values": func(w io.Writer) error { return report.ValuesText(w, values, width) },
		"rank":   func(w io.Writer) error { return measure.RankText(w, ranking) },
	}
	for _, r := range rules.All() {
		prints["rules "+r.ID] = func(w io.Writer) error { return report.RulePage(w, r, width) }
	}
	for name, print := range prints {
		var b strings.Builder
		if err := print(&b); err != nil {
			t.Fatal(err)
		}
		if b.Len() < 100 {
			t.Errorf("%s prints next to nothing: %s", name, &b)
		}
		for line := range strings.Lines(b.String()) {
			line = strings.TrimRight(line, "\n")
			if utf8.RuneCountInString(line) > width && strings.Contains(strings.TrimSpace(line), " ") {
				t.Errorf("%s: %d columns: %s", name, utf8.RuneCountInString(line), line)
			}
		}
	}
}
