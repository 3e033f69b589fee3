package report

import (
	"encoding/json"
	"io"
	"net/url"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/testfiles"
	"preflash/rules"
)

// someRules stands for the registry: rules that the workshop's findings name,
// but for one.
func someRules() []*rules.Rule {
	return []*rules.Rule{
		{ID: "sensor-curve", Level: rules.Error, Summary: "The sensor is read through the wrong definition.",
			Doc: "Indicated t, resistance, divider ratio, actual T."},
		{ID: "sensor-unknown", Level: rules.Error, Summary: "A definition fits no known curve.",
			Doc: "No guess is made."},
		{ID: "temp-ceiling", Level: rules.Error, Summary: "A limit lies above the weakest rating.",
			Doc: "target limit ≤ R, trip ≤ R + 15"},
		{ID: "coldside-fan", Level: rules.Warning, Summary: "The heat-break fan does not follow the hotend.",
			Doc: "Common practice, no source."},
		{ID: "supply-budget", Level: rules.Error, Summary: "The supply is too small.", Doc: "load / rating"},
		{ID: "heater-stuck-on", Level: rules.Note, Summary: "Where a heater that is stuck on would settle.",
			Doc: "P(T) = loss · (T − ambient)"},
	}
}

func sarifOf(t testing.TB, r *fleet.Result) string {
	t.Helper()
	return render(t, func(w io.Writer) error { return SARIF(w, r, someRules()) })
}

func decodeSARIF(t testing.TB, text string) sarifRun {
	t.Helper()
	var log sarifLog
	if err := json.Unmarshal([]byte(text), &log); err != nil {
		t.Fatal(err)
	}
	if len(log.Runs) != 1 {
		t.Fatalf("%d runs", len(log.Runs))
	}
	return log.Runs[0]
}

func TestSARIFGolden(t *testing.T) {
	golden(t, "workshop.sarif", sarifOf(t, workshop()))
}

func TestSARIFFingerprints(t *testing.T) {
	prints := func(r *fleet.Result) []string {
		var list []string
		for _, result := range decodeSARIF(t, sarifOf(t, r)).Results {
			list = append(list, result.Fingerprints["swapFinding/v1"])
		}
		return list
	}
	r := workshop()
	twice := r.Printers[2].Findings
	r.Printers[2].Findings = append(twice, twice[1])
	before := prints(r)
	seen := map[string]bool{}
	for _, p := range before {
		if seen[p] || len(p) != 32 {
			t.Errorf("%q comes twice or is malformed", p)
		}
		seen[p] = true
	}
	for i := range r.Printers {
		for j := range r.Printers[i].Findings {
			f := &r.Printers[i].Findings[j]
			f.Region.Line += 7
			f.Region.EndLine += 7
			f.Message += " 1 K more"
		}
	}
	if after := prints(r); strings.Join(after, " ") != strings.Join(before, " ") {
		t.Errorf("lines that moved changed the fingerprints:\n%q\n%q", before, after)
	}
	r.Printers[2].Findings[1].Region.Text = "1010"
	if after := prints(r); after[1] == before[1] || after[0] != before[0] {
		t.Errorf("another value left the fingerprint, or changed others")
	}
}

func TestSARIFColumnsAreCodePoints(t *testing.T) {
	run := decodeSARIF(t, sarifOf(t, &fleet.Result{Printers: []fleet.Printer{{Findings: []fleet.Finding{{
		Rule: "sensor-curve",
		Region: fleet.Region{File: "a.h", Line: 2, Column: 30, CharColumn: 27, EndLine: 2, EndColumn: 35,
			EndCharColumn: 31},
	}}}}}))
	want := sarifRegion{2, 27, 2, 31}
	if got := run.Results[0].Locations[0].Physical.Region; got == nil || *got != want ||
		run.ColumnKind != "unicodeCodePoints" {
		t.Errorf("%+v in %s, want %+v", got, run.ColumnKind, want)
	}
}

func TestSARIFFixNeedsUTF8(t *testing.T) {
	at := fleet.Region{File: "a.h", Line: 1, CharColumn: 1, EndLine: 1, EndCharColumn: 1}
	other := at
	other.File = "b.h"
	f := &fleet.Finding{Change: "x", Fix: []fleet.Replacement{{Region: at, New: "1"}, {Region: at, New: "2"},
		{Region: other, New: "3"}}}
	fix := fixes(f)
	if len(fix) != 1 || len(fix[0].Changes) != 2 || len(fix[0].Changes[0].Replacements) != 2 {
		t.Errorf("got %+v, want two files, two replacements in the first", fix)
	}
	f.Fix[1].New = "\xb0C"
	if fix := fixes(f); fix != nil {
		t.Errorf("got %+v for text that is not UTF-8", fix)
	}
}

func TestArtifact(t *testing.T) {
	for name, want := range map[string]string{
		"egret-01/printer.cfg": "egret-01/printer.cfg",
		"../x y/düse#1?.cfg":   "../x%20y/d%C3%BCse%231%3F.cfg",
		"d\xfcse%41":           "d%FCse%2541",
		"c:/x":                 "./c:/x",
		"//host/x":             "/.//host/x",
		"/etc/x":               "/etc/x",
	} {
		if got := artifact(name).URI; got != want {
			t.Errorf("artifact(%q) = %q, want %q", name, got, want)
		}
	}
}

func TestSARIFHidesNothing(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r := anyResult().Draw(rt, "result")
		got := sarifOf(t, r)
		if c, found := testfiles.Hidden(got); found {
			rt.Errorf("holds %U: %q", c, got)
		}
		for _, result := range decodeSARIF(t, got).Results {
			uri := result.Locations[0].Physical.Artifact.URI
			u, err := url.Parse(uri)
			if err != nil || u.Scheme != "" || u.Host != "" {
				rt.Errorf("%q is no relative reference (%v)", uri, err)
			}
		}
	})
}
