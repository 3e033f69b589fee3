package fleet

import (
	"os"
	"path"
	"regexp"
	"strings"
	"testing"
	"time"
)

// TestOrder holds the order of danger against what was written of twenty
// printers from their files alone, before there was an order. Where the two
// differ, the second table of worst.md says what holds and why.
func TestOrder(t *testing.T) {
	page, err := os.ReadFile("../../../testdata/order/worst.md")
	if err != nil {
		t.Fatal(err)
	}
	written, settled, found := strings.Cut(string(page), "\n## Where the program differs")
	if !found {
		t.Fatal("worst.md has no table of differences")
	}
	first, differ := threeWorst(written), threeWorst(settled)
	if len(first) != 20 {
		t.Fatalf("the table has %d printers", len(first))
	}
	t.Chdir("../../../testdata/order")
	f := Load([]string{"."}, Options{Today: time.Date(2026, 10, 10, 0, 0, 0, 0, time.UTC)}, nil)
	defer f.Close()
	for _, p := range f.Check().Printers {
		want := first[p.Name]
		if other, ok := differ[p.Name]; ok {
			if same(t, &p, want) {
				t.Errorf("%s: the first table holds, so the second needs no row", p.Name)
			}
			want = other
		}
		if len(want) != 3 || p.Problem != nil {
			t.Fatalf("%s: %v, %v", p.Name, want, p.Problem)
		}
		if !same(t, &p, want) {
			t.Errorf("%s: want %v", p.Name, want)
			for _, f := range p.Findings {
				t.Logf("    %s %s %d: %s", f.Rule, f.Region.File, f.Region.Line, f.Message)
			}
		}
		delete(first, p.Name)
	}
	if len(first) > 0 {
		t.Errorf("not checked: %v", first)
	}
}

// threeWorst reads a table: by printer, the rules, with the setting where one
// is named.
func threeWorst(page string) map[string][]string {
	row := regexp.MustCompile(`(?m)^\| (egret-\d+) \|([^|]*)\|([^|]*)\|([^|]*)\|`)
	cell := regexp.MustCompile(`^ ([a-z-]+( \[\w+\])?)`)
	table := make(map[string][]string)
	for _, r := range row.FindAllStringSubmatch(page, -1) {
		for _, c := range r[2:] {
			table[r[1]] = append(table[r[1]], cell.FindStringSubmatch(c)[1])
		}
	}
	return table
}

func same(t *testing.T, p *Printer, want []string) bool {
	for i, w := range want {
		rule, setting, _ := strings.Cut(strings.TrimSuffix(w, "]"), " [")
		if len(p.Findings) <= i || p.Findings[i].Rule != rule ||
			!strings.Contains(lineOf(t, p.Findings[i].Region), setting) {
			return false
		}
	}
	return true
}

func lineOf(t *testing.T, r Region) string {
	text, err := os.ReadFile(path.Clean(r.File))
	if err != nil {
		t.Fatal(err)
	}
	return strings.Split(string(text), "\n")[r.Line-1]
}
