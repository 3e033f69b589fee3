package rules

import (
	"slices"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"preflash/parser"
	"preflash/parser/sheet"
)

func waiver(rule, until string) sheet.Waiver {
	day, err := time.Parse(time.DateOnly, until)
	if err != nil {
		panic(err)
	}
	return sheet.Waiver{
		Rule: given("waiver.rule", rule), Reason: given("waiver.reason", "known here"),
		Until: given("waiver.until", day),
	}
}

func TestRegistry(t *testing.T) {
	seen := make(map[string]bool)
	for _, r := range All() {
		if r.ID == "" || r.Summary == "" || r.Doc == "" || r.Check == nil {
			t.Errorf("rule %q lacks something: %+v", r.ID, r)
		}
		if r.Unwaived && !strings.Contains(r.Doc, "annot be waived") {
			t.Errorf("rule %q does not say that it cannot be waived", r.ID)
		}
		for line := range strings.Lines(r.Doc) {
			if n := utf8.RuneCountInString(strings.TrimSuffix(line, "\n")); n > 80 {
				t.Errorf("rule %q: a line of its Doc has %d columns: %s", r.ID, n, line)
			}
		}
		for _, hidden := range r.Hides {
			if Find(hidden) == nil {
				t.Errorf("rule %q hides %q, which is none", r.ID, hidden)
			}
		}
		if seen[r.ID] {
			t.Errorf("rule %q is listed twice", r.ID)
		}
		seen[r.ID] = true
		if Find(r.ID) != r {
			t.Errorf("Find(%q) finds another rule", r.ID)
		}
	}
	if last := All()[len(All())-1]; last != storedSettings {
		t.Errorf("%s comes last; stored-settings must, since it sees what the others change", last.ID)
	}
}

// The printer that every test starts from has nothing wrong, for any rule.
func TestHealthy(t *testing.T) {
	if found := Check(healthyInput()); len(found) > 0 {
		t.Errorf("a healthy printer: %v", messages(found))
	}
}

func TestCheckWaives(t *testing.T) {
	tests := []struct {
		name    string
		waivers []sheet.Waiver
		waived  bool
		expired int
	}{
		{"none", nil, false, 0},
		{"holds on its last day", []sheet.Waiver{waiver("runaway-off-bed", "2026-11-25")}, true, 0},
		{"past its day", []sheet.Waiver{waiver("runaway-off-bed", "2026-11-24")}, false, 1},
		{"of another rule", []sheet.Waiver{waiver("advance-stale", "2027-01-01")}, false, 0},
		{"of no rule", []sheet.Waiver{waiver("runaway", "2027-01-01")}, false, 1},
		{"of what cannot be waived", []sheet.Waiver{waiver("runaway-off", "2027-01-01")}, false, 1},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			in := healthyInput()
			in.Printer.Bed.Watch.On = off[bool](parser.BedWatchOn)
			in.Sheet.Waivers = tt.waivers
			found := Check(in)
			i := slices.IndexFunc(found, func(f Finding) bool { return f.Rule == "runaway-off-bed" })
			if i < 0 {
				t.Fatal("runaway-off-bed was not found")
			}
			if got := found[i].Waived != ""; got != tt.waived {
				t.Errorf("waived: %v, want %v", got, tt.waived)
			}
			n := 0
			for _, f := range found {
				if f.Rule == "waiver-expired" {
					n++
				}
			}
			if n != tt.expired {
				t.Errorf("%d findings of waiver-expired, want %d", n, tt.expired)
			}
		})
	}
}

// What cannot be waived counts although a waiver names it.
func TestUnwaived(t *testing.T) {
	for _, rule := range All() {
		probe := &Rule{ID: rule.ID, Unwaived: rule.Unwaived}
		in := healthyInput()
		in.Sheet.Waivers = []sheet.Waiver{waiver(rule.ID, "2027-01-01")}
		if got := newWaivers(in).cover(probe, &Finding{}); (got == "") != rule.Unwaived {
			t.Errorf("%s, which can be waived: %v, is waived for %q", rule.ID, !rule.Unwaived, got)
		}
	}
	in := healthyInput()
	in.Printer.Hotend.Watch.On = off[bool](parser.HotendWatchOn)
	in.Sheet.Waivers = []sheet.Waiver{waiver("runaway-off", "2027-01-01")}
	found := Check(in)
	i := slices.IndexFunc(found, func(f Finding) bool { return f.Rule == "runaway-off" })
	if i < 0 || found[i].Waived != "" {
		t.Errorf("runaway-off is waived, or not found: %v", messages(found))
	}
	for _, id := range []string{"runaway-off", "sensor-placeholder", "sensor-kind", "waiver-expired"} {
		if !Find(id).Unwaived {
			t.Errorf("%s can be waived", id)
		}
	}
}

func TestCheckSortsAndPlaces(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Watch.On = parser.Setting[bool]{Key: parser.HotendWatchOn, State: parser.Off}
	in.Printer.Flow.CarriedOver = []parser.Setting[float64]{set(parser.Carried("linear advance"), 0.06)}
	found := Check(in)
	if !slices.IsSortedFunc(found, func(a, b Finding) int { return int(b.Level) - int(a.Level) }) {
		t.Errorf("findings are not sorted by level: %v", messages(found))
	}
	for _, f := range found {
		if f.At.IsZero() {
			t.Errorf("%s points nowhere", f.Rule)
		}
	}
	if !in.Printer.Hotend.Watch.CanTurnOn || in.Changed != nil {
		t.Error("Check changed its input")
	}
}

// Thousands of findings of one rule are counted, and none gets lost.
func TestManyFindingsOfARule(t *testing.T) {
	for _, n := range []int{mostOfARule - 1, mostOfARule, mostOfARule + 1, 3 * mostOfARule} {
		in := healthyInput()
		for range n {
			in.Printer.Remarks = append(in.Printer.Remarks,
				parser.Remark{Kind: parser.RemarkBroken, Text: "broken"})
		}
		listed, more := 0, 0
		for _, f := range Check(in) {
			if f.Rule == "config-broken" {
				listed++
				more += f.More
			}
		}
		if listed != min(n, mostOfARule) || listed+more != n {
			t.Errorf("%d findings: %d told, %d more", n, listed, more)
		}
	}
}

// A change that a waiver puts off is not made, so nothing follows from it.
func TestWaivedChange(t *testing.T) {
	for _, waived := range []bool{false, true} {
		in := healthyInput()
		in.Printer.Limits.MinExtrude.Value = 100
		in.Printer.Storage = parser.Storage{On: set(parser.StorageOn, true),
			Keeps: []parser.Key{parser.MinExtrude}}
		if waived {
			w := waiver("cold-extrusion", "2026-12-31")
			w.At = given("waiver.at", 100.0)
			in.Sheet.Waivers = []sheet.Waiver{w}
		}
		want := map[bool]Level{false: Warning, true: Note}[waived]
		for _, f := range Check(in) {
			if f.Rule == storedSettings.ID && f.Level != want {
				t.Errorf("waived %v: %s %s", waived, f.Level, f.Text())
			}
		}
	}
}
