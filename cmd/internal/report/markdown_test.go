package report

import (
	"bytes"
	"io"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/testfiles"
	"preflash/patch"
	"preflash/rules"
)

func markdownOf(t testing.TB, r *fleet.Result, diff []byte) string {
	t.Helper()
	return render(t, func(w io.Writer) error { return Markdown(w, r, diff) })
}

func TestMarkdownGolden(t *testing.T) {
	var diff bytes.Buffer
	changed := []patch.FileChange{{
		Name: "printers/egret-03/Configuration.h",
		Old:  []byte("// fits ```all```\x1b[2J\r\n#define SENSOR 5\r\n</details>\r\n"),
		New:  []byte("// fits ```all```\x1b[2J\r\n#define SENSOR 11\r\n</details>\r\n"),
	}}
	if err := patch.Unified(&diff, changed, patch.Options{}); err != nil {
		t.Fatal(err)
	}
	golden(t, "workshop.md", markdownOf(t, workshop(), diff.Bytes()))
}

func TestMarkdownLeavesNoneOut(t *testing.T) {
	message := "lower the max temp: " + strings.Repeat("why ", 30)
	for _, tt := range []struct {
		printers                         int
		errors, warnings, notes, reasons int // that are shown
		says                             string
	}{
		{50, 50, 50, 50, 150, "+x"},
		{70, 70, 70, 70, 142, "+x"},
		{150, 150, 150, 150, 32, "+x"},
		{200, 200, 200, 200, 0, "+x"},
		{400, 400, 400, 240, 0, "Not listed here: 160 findings."},
	} {
		r := &fleet.Result{}
		for range tt.printers {
			p := fleet.Printer{Name: "egret-01"}
			for _, level := range []rules.Level{rules.Error, rules.Warning, rules.Note} {
				p.Findings = append(p.Findings,
					fleet.Finding{Rule: "temp-ceiling", Level: level, Message: message})
			}
			r.Printers = append(r.Printers, p)
		}
		got := markdownOf(t, r, []byte("+x\n"))
		for word, want := range map[string]int{"error": tt.errors, "warning": tt.warnings, "note": tt.notes} {
			item := "- **" + word + "** egret-01, temp-ceiling: lower the max temp"
			if n := strings.Count(got, item); n != want {
				t.Errorf("%d printers: %d of the %ss are listed, want %d", tt.printers, n, word, want)
			}
		}
		if n := strings.Count(got, "why why"+strings.Repeat(" why", 28)); n != tt.reasons {
			t.Errorf("%d printers: %d findings say why, want %d", tt.printers, n, tt.reasons)
		}
		if !strings.Contains(got, tt.says) || len(got) > maxComment {
			t.Errorf("%d printers: %d bytes, or it lacks %q", tt.printers, len(got), tt.says)
		}
	}
	got := markdownOf(t, &fleet.Result{}, bytes.Repeat([]byte("+x\n"), 20000))
	if want := "The diff is too long for a comment (20000 lines)."; !strings.Contains(got, want) {
		t.Errorf("lacks %q", want)
	}
}

func TestMarkdownWorstFirst(t *testing.T) {
	finding := func(rule string, rank int, danger rules.Danger, waived string) fleet.Finding {
		return fleet.Finding{Rule: rule, Rank: rank, Danger: danger, Waived: waived}
	}
	r := &fleet.Result{Printers: []fleet.Printer{
		{Name: "clean"},
		{Name: "egret-01", Findings: []fleet.Finding{finding("a", 1, rules.Fire, "known"),
			finding("d", 30, rules.Bad, "")}},
		{Name: "egret-02", Findings: []fleet.Finding{finding("b", 2, rules.Fire, ""),
			finding("c", 3, rules.Fire, "")}},
		{Name: "egret-03", Findings: []fleet.Finding{finding("b", 2, rules.Fire, "")}},
		{Name: "unread", Problem: &fleet.Problem{}},
	}}
	var lines []string
	heads := regexp.MustCompile(`(?m)^### (.*)|^- \*\*[a-z ]+\*\* ([a-z0-9-]+, [a-z]?)`)
	for _, m := range heads.FindAllStringSubmatch(markdownOf(t, r, nil), -1) {
		lines = append(lines, m[1]+m[2])
	}
	want := "Cannot be read|unread, |Can start a fire, or blinds the firmware|egret-02, b|egret-03, " +
		"b|egret-02, c|Prints badly|egret-01, d|Waived, not counted|egret-01, a"
	if got := strings.Join(lines, "|"); got != want {
		t.Errorf("order: %s", got)
	}
}

func TestMarkdownHidesNothing(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		got := markdownOf(t, anyResult().Draw(rt, "result"), nil)
		if r, found := testfiles.Hidden(got); found || !utf8.ValidString(got) {
			rt.Errorf("holds %U, or is not UTF-8: %q", r, got)
		}
	})
}

func TestMarkdownIsBounded(t *testing.T) {
	const limit = 60_000
	worst := fleet.Finding{Rule: "config-gap", Level: rules.Error, Message: strings.Repeat("#", 2000),
		Change: strings.Repeat("`", 2000), Waived: strings.Repeat("<", 200),
		Region: fleet.Region{File: strings.Repeat("`", 4000), Line: 1}}
	full := &fleet.Result{}
	for range 100 {
		full.Printers = append(full.Printers, fleet.Printer{
			Name: strings.Repeat("*", 200), Sheet: strings.Repeat("\x1b", 1000),
			Findings: []fleet.Finding{worst, worst},
			Problem:  &fleet.Problem{File: strings.Repeat("`", 1000), Message: strings.Repeat("@x", 1000)},
		})
		full.Gone = append(full.Gone, strings.Repeat("`", 1000))
	}
	for name, diff := range map[string]string{
		"no diff":        "",
		"a large diff":   strings.Repeat("+x\n", 9_900),
		"marks":          strings.Repeat(strings.Repeat("`", 100)+"\n", 280),
		"one long fence": strings.Repeat("`", 9_900) + "\n",
		"escapes":        strings.Repeat(" \x1b\x1b\x1b\x1b\n", 1_100),
		"a huge diff":    strings.Repeat("+x\n", 1_000_000),
	} {
		got := markdownOf(t, full, []byte(diff))
		if len(got) >= limit {
			t.Errorf("%s: %d bytes", name, len(got))
		}
		if !strings.Contains(got, "Not listed here:") {
			t.Errorf("%s: does not say that something is left out", name)
		}
	}
	// At, below and above the room that a diff has.
	room := maxDiff - 200 - 2*len("```")
	for n, shown := range map[int]bool{room - 1: true, room: true, room + 1: false} {
		got := markdownOf(t, &fleet.Result{}, []byte(strings.Repeat("x", n-1)+"\n"))
		if strings.Contains(got, "too long for a comment") == shown {
			t.Errorf("a diff of %d bytes is shown: %v", n, !shown)
		}
	}
}
