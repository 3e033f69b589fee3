package fleet

import (
	"fmt"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/rules"
)

// Findings of one kind are listed up to a number, then counted; none gets lost
// in the sums.
func TestAlikeFindings(t *testing.T) {
	for _, n := range []int{maxAlike - 1, maxAlike, maxAlike + 1, 5000} {
		listed := min(n, maxAlike)
		write(t, texts{
			"swap.toml":   fleetSheet("a", "printer.cfg"),
			"printer.cfg": healthySections + numbered(n, "[verify_heater x%d]\n"),
		})
		r := check(Options{Today: today})
		found, more := 0, 0
		for _, f := range r.Printers[0].Findings {
			if f.Rule == "config-gap" && f.Level == rules.Warning {
				found++
				more += f.More
				says := fmt.Sprintf("%d more of config-gap are not listed", n-listed)
				if strings.Contains(f.Aside, says) != (f.More > 0) {
					t.Errorf("%d: %q with %d more", n, f.Aside, f.More)
				}
			}
		}
		if found != listed || more != n-listed || r.Summary().Warnings != n {
			t.Errorf("%d findings: %d listed, %d more, %d counted", n, found, more, r.Summary().Warnings)
		}
	}
}

func numbered(n int, format string) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, format, i)
	}
	return b.String()
}

// What waives or changes something is not counted with what does not.
func TestKindsOfFindings(t *testing.T) {
	var l listing
	for _, f := range []rules.Finding{
		{Rule: "a"}, {Rule: "a", Level: rules.Error}, {Rule: "a", Waived: "reason"},
		{Rule: "a", Changes: make([]parser.Change, 1)}, {Rule: "b"},
	} {
		for i := range maxAlike + 3 {
			if l.room(&f) != (i < maxAlike) {
				t.Errorf("%+v: number %d", f, i)
			}
			if i < maxAlike {
				l.list = append(l.list, Finding{Rule: f.Rule})
			}
		}
	}
	all := l.findings()
	for i, f := range all {
		if last := i%maxAlike == maxAlike-1; (f.More == 3) != last {
			t.Errorf("finding %d stands for %d", i, f.Count())
		}
	}
	if len(all) != 5*maxAlike {
		t.Errorf("%d findings", len(all))
	}
}

func TestProblemBounds(t *testing.T) {
	for _, n := range []int{maxParts - 1, maxParts, maxParts + 1, maxParts + 100} {
		parts := min(n, maxParts+1)
		var list manyErrors
		for i := range n {
			list = append(list, &parser.Error{File: "f", Line: i + 1, Message: "wrong"})
		}
		p := problemOf(list)
		if len(p.Parts) != parts || strings.Contains(p.Message, "more of this kind") != (n > maxParts) {
			t.Errorf("%d errors: %d parts, %s", n, len(p.Parts), p.Message)
		}
	}
	for n, cut := range map[int]bool{maxMessage - 1: false, maxMessage: false, maxMessage + 1: true} {
		p := problemOf(&parser.Error{File: strings.Repeat("f", n), Message: strings.Repeat("m", n)})
		if strings.HasSuffix(p.Message, "…") != cut || len(p.Message) > maxMessage || len(p.File) > maxPath {
			t.Errorf("%d bytes: %d and %d left", n, len(p.Message), len(p.File))
		}
	}
}

type manyErrors []error

func (m manyErrors) Error() string   { return "many" }
func (m manyErrors) Unwrap() []error { return m }

// A fault of ours is told with the printer that it hit.
func TestExplain(t *testing.T) {
	work := func() (err error) {
		defer explain("a/swap.toml", &err)
		panic("index out of range")
	}
	err := work()
	const says = "a fault in preflash ended the work on this printer (index out of range); please report it"
	if p := problemOf(err); p.File != "a/swap.toml" || !strings.Contains(p.Message, says) {
		t.Errorf("%+v", p)
	}
	calm := func() (err error) {
		defer explain("a/swap.toml", &err)
		return nil
	}
	if err := calm(); err != nil {
		t.Error(err)
	}
}
