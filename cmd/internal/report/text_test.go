package report

import (
	"io"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/plaintext"
	"preflash/cmd/internal/testfiles"
	"preflash/rules"
)

func text(t testing.TB, r *fleet.Result, o TextOptions) string {
	t.Helper()
	return render(t, func(w io.Writer) error { return Text(w, r, o) })
}

func TestTextGolden(t *testing.T) {
	golden(t, "workshop.txt", text(t, workshop(), TextOptions{}))
	golden(t, "workshop-narrow.txt", text(t, workshop(), TextOptions{Options: plaintext.Options{Width: 50}}))
}

func TestTextFitsItsWidth(t *testing.T) {
	for _, width := range []int{70, 80, 120} {
		for line := range strings.Lines(text(t, workshop(),
			TextOptions{Options: plaintext.Options{Width: width}})) {
			if n := utf8.RuneCountInString(strings.TrimSuffix(line, "\n")); n > width {
				t.Errorf("%d columns, not %d: %s", n, width, line)
			}
		}
	}
}

func TestTextColourAddsNothing(t *testing.T) {
	coloured := text(t, workshop(), TextOptions{Options: plaintext.Options{Color: true}})
	escape := regexp.MustCompile("\x1b\\[[0-9;]*m")
	if !escape.MatchString(coloured) {
		t.Error("there is no colour")
	}
	if got, want := escape.ReplaceAllString(coloured, ""), text(t, workshop(), TextOptions{}); got != want {
		t.Errorf("without its colours it reads\n%s\nnot\n%s", got, want)
	}
}

func TestTextOfManyCleanPrinters(t *testing.T) {
	got := text(t, cleanFleet(1000), TextOptions{})
	if lines(got) != 1003 { // a head, one each, a blank one, the verdict
		t.Errorf("%d lines", lines(got))
	}
	if !strings.HasSuffix(got, "\n\nVerdict: nothing to change on 1000 printers.\n") {
		t.Errorf("ends with %q", got[len(got)-100:])
	}
}

func TestVerdict(t *testing.T) {
	finding := func(level rules.Level, change, waived string) fleet.Finding {
		return fleet.Finding{Level: level, Change: change, Waived: waived}
	}
	printer := func(f ...fleet.Finding) fleet.Printer { return fleet.Printer{Findings: f} }
	unread := fleet.Printer{Name: "egret-09", Sheet: "swap.toml", Problem: &fleet.Problem{}}
	tests := []struct {
		name     string
		printers []fleet.Printer
		want     string
	}{
		{"no printer", nil, "no printer was checked."},
		{"clean", []fleet.Printer{printer()}, "nothing to change on 1 printer."},
		{"not read", []fleet.Printer{unread}, "no printer was checked. Fix first what cannot be read, " +
			"or not whole: egret-09. Nothing is known of what stands there."},
		{"no sheet", []fleet.Printer{{Problem: &fleet.Problem{}}}, "no printer was checked."},
		{"not read and clean", []fleet.Printer{unread, printer()},
			"nothing to change on 1 printer. Fix first what cannot be read, or not whole: egret-09. " +
				"Nothing is known of what stands there."},
		{"waived", []fleet.Printer{printer(finding(rules.Error, "x", "why"))},
			"nothing to change on 1 printer. Waived, not counted: 1."},
		{"note", []fleet.Printer{printer(finding(rules.Note, "", ""))},
			"1 note on 1 of 1 printer. The notes ask for no change."},
		{"changes", []fleet.Printer{printer(finding(rules.Error, "x", ""), finding(rules.Note, "", "")),
			printer()}, "1 error and 1 note on 1 of 2 printers. Do not heat before the errors are fixed. " +
			"Next: preflash diff prints the changes to review."},
		{"hands", []fleet.Printer{printer(finding(rules.Warning, "", ""), finding(rules.Warning, "", ""))},
			"2 warnings on 1 of 1 printer. No edit fixes this; it takes a person: wiring, parts, " +
				"measuring or the sheet."},
		{
			"both",
			[]fleet.Printer{printer(finding(rules.Error, "", ""), finding(rules.Warning, "x", ""),
				finding(rules.Note, "", "")), printer(finding(rules.Error, "x", ""))},
			"2 errors, 1 warning and 1 note on 2 of 2 printers. Do not heat before the errors are fixed. " +
				"Next: preflash diff prints the changes for 2 findings to review. For the rest (1) it " +
				"takes a person: wiring, parts, measuring or the sheet.",
		},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if got := Verdict(&fleet.Result{Printers: tt.printers}); got != tt.want {
				t.Errorf("got  %q\nwant %q", got, tt.want)
			}
		})
	}
}

// The verdict names what was not checked, and says when nothing changed.
func TestVerdictSinceARevision(t *testing.T) {
	broken := fleet.Printer{Name: "egret-09", Sheet: "swap.toml", Problem: &fleet.Problem{}}
	tests := []struct {
		name string
		r    fleet.Result
		want string
	}{
		{"none", fleet.Result{}, "nothing changed since main, so no printer was checked."},
		{"all the same", fleet.Result{Unchanged: []string{"egret-01", "egret-02"}},
			"nothing changed since main, so no printer was checked: egret-01, egret-02."},
		{"some the same", fleet.Result{Unchanged: []string{"egret-01"},
			Printers: []fleet.Printer{{Name: "egret-02"}}},
			"nothing to change on 1 printer. " +
				"Not checked, since nothing changed in them since main: egret-01."},
		{"some cannot be read",
			fleet.Result{Unchanged: []string{"egret-01"}, Printers: []fleet.Printer{broken}},
			"no printer was checked. Not checked, since nothing changed in them since main: egret-01. " +
				"Fix first what cannot be read, or not whole: egret-09. Nothing is known of what " +
				"stands there."},
		{"gone", fleet.Result{Gone: []string{"a/swap.toml", "b/swap.toml"}, Unchanged: []string{"egret-01"}},
			"nothing changed since main, so no printer was checked: egret-01. No longer checked, " +
				"since the sheet is gone since main: a/swap.toml, b/swap.toml."},
	}
	for _, tt := range tests {
		tt.r.Since = "main"
		if got := Verdict(&tt.r); got != tt.want {
			t.Errorf("%s:\ngot  %q\nwant %q", tt.name, got, tt.want)
		}
	}
}

// A long name leaves room for what to do, and is cut at its end.
func TestOverviewOfLongNames(t *testing.T) {
	f := fleet.Finding{Rule: "temp-ceiling", Level: rules.Error, Message: "lower the max temp: it is 300 °C"}
	r := &fleet.Result{Printers: []fleet.Printer{{Name: "bench-1", Findings: []fleet.Finding{f}},
		{Name: "the one by the window, left of the door", Findings: []fleet.Finding{f}}}}
	got := text(t, r, TextOptions{})
	for _, want := range []string{
		"   1     -     -  bench-1                   lower the max temp: it is 300 °C\n",
		"   1     -     -  the one by the window, …  lower the max temp: it is 300 °C\n",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("lacks %q:\n%s", want, got)
		}
	}
}

// What is shortened says what to do, whole.
func TestFit(t *testing.T) {
	const long = "fit a weaker heater, or drive it through a part rated for the current (assumed: 5 A): " +
		"it draws 6 A, and the output is rated for 5 A"
	for width, want := range map[int]string{
		200: long,
		110: "fit a weaker heater, " +
			"or drive it through a part rated for the current (assumed: 5 A): it draws 6 A",
		80: "fit a weaker heater",
		85: "fit a weaker heater, or drive it through a part rated for the current (assumed: 5 A)",
		20: "fit a weaker heater",
		12: "fit a …",
	} {
		if got := fit(long, width); got != want {
			t.Errorf("fit to %d: %q, want %q", width, got, want)
		}
	}
	for message, want := range map[string]string{
		long: "fit a weaker heater, or drive it through a part rated for the current " +
			"(assumed: 5 A)",
		"correct it; then do":    "correct it",
		"no reason is told here": "no reason is told here",
	} {
		if got := action(message); got != want {
			t.Errorf("action of %q: %q, want %q", message, got, want)
		}
	}
}

// anyResult draws a result of arbitrary strings.
func anyResult() *rapid.Generator[*fleet.Result] {
	return rapid.Custom(func(t *rapid.T) *fleet.Result {
		word := func() string {
			return rapid.OneOf(
				rapid.String(),
				rapid.StringOf(rapid.SampledFrom([]rune("a `*_<>&|@#[]()!\\\n"+
					"\r\t\x1b\x7f\u0085\u202e\u2028\U000e0041\ufeff-+~.:/'\""))),
				rapid.Map(rapid.SliceOfN(rapid.Byte(), 0, 8), func(b []byte) string { return string(b) }),
			).Draw(t, "text")
		}
		f := fleet.Finding{
			Rule: "sensor-curve", Level: rules.Level(rapid.IntRange(0, 2).Draw(t, "level")), Message: word(),
			Change: word(), Waived: word(),
			Region: fleet.Region{File: word(), Line: 3, Column: 5, CharColumn: 5, EndLine: 3, EndColumn: 6,
				EndCharColumn: 6, Text: word()},
			Values: rules.Values{"name": word(), "x": rapid.Float64().Draw(t, "x")},
		}
		f.Fix = []fleet.Replacement{{Region: f.Region, New: word()}}
		p := fleet.Printer{Name: word(), Sheet: word(), Style: "defines", Files: []string{word()},
			Findings: []fleet.Finding{f}}
		broken := fleet.Printer{Name: word(), Sheet: word(), Problem: &fleet.Problem{File: word(), Line: 1,
			Column: 1, Message: word()}}
		return &fleet.Result{Printers: []fleet.Printer{p, broken}, Version: "v1"}
	})
}

func TestTextHidesNothing(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		got := text(t, anyResult().Draw(rt, "result"), TextOptions{})
		if r, found := testfiles.Hidden(got); found || !utf8.ValidString(got) {
			rt.Errorf("holds %U, or is not UTF-8: %q", r, got)
		}
	})
}

// What several rules could not tell for one reason is said once.
func TestTextSaysTheSameOnce(t *testing.T) {
	at := fleet.Region{File: "a.h", Line: 3, Column: 1}
	unknown := func(rule string, level rules.Level) fleet.Finding {
		return fleet.Finding{Rule: rule, Level: level, Region: at, Message: "cannot tell the max temp: why"}
	}
	r := &fleet.Result{Printers: []fleet.Printer{{Name: "egret-01", Sheet: "swap.toml",
		Findings: []fleet.Finding{
			unknown("temp-reach", rules.Warning), unknown("temp-ceiling", rules.Error),
			{Rule: "preset-over", Level: rules.Warning, Region: fleet.Region{File: "a.h", Line: 4},
				Message: "cannot tell the max temp: why"},
		}}}}
	got := render(t, func(w io.Writer) error { return Text(w, r, TextOptions{}) })
	for _, want := range []string{"  error  cannot tell", "a.h:3, rules temp-ceiling, temp-reach\n",
		"a.h:4, rule preset-over\n"} {
		if !strings.Contains(got, want) {
			t.Errorf("the text lacks %q:\n%s", want, got)
		}
	}
	if n := strings.Count(got, "cannot tell"); n != 2 {
		t.Errorf("said %d times, want once for each place:\n%s", n, got)
	}
}
