package report

import (
	"crypto/sha256"
	"fmt"
	"io"
	"math"
	"net/url"
	"strings"
	"unicode/utf8"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/jsontext"
	"preflash/cmd/internal/plaintext"
	"preflash/rules"
)

// The parts of SARIF 2.1.0 (OASIS, errata 01) that are used, in the order of
// the specification.

type sarifLog struct {
	Schema  string     `json:"$schema"`
	Version string     `json:"version"`
	Runs    []sarifRun `json:"runs"`
}

type sarifRun struct {
	Tool        sarifTool         `json:"tool"`
	Invocations []sarifInvocation `json:"invocations"`
	ColumnKind  string            `json:"columnKind"`
	Results     []sarifResult     `json:"results"`
}

type sarifTool struct {
	Driver sarifDriver `json:"driver"`
}

type sarifDriver struct {
	Name    string      `json:"name"`
	Version string      `json:"version,omitempty"`
	Rules   []sarifRule `json:"rules"`
}

type sarifRule struct {
	ID            string         `json:"id"`
	Short         sarifText      `json:"shortDescription"`
	Help          sarifText      `json:"help"`
	Configuration sarifRuleLevel `json:"defaultConfiguration"`
}

type sarifRuleLevel struct {
	Level string `json:"level"`
}

type sarifText struct {
	Text string `json:"text"`
}

type sarifInvocation struct {
	Successful    bool                `json:"executionSuccessful"`
	Notifications []sarifNotification `json:"toolExecutionNotifications"`
}

type sarifNotification struct {
	Locations []sarifLocation `json:"locations"`
	Message   sarifText       `json:"message"`
	Level     string          `json:"level"`
}

type sarifResult struct {
	RuleID       string             `json:"ruleId"`
	RuleIndex    int                `json:"ruleIndex"`
	Level        string             `json:"level"`
	Message      sarifText          `json:"message"`
	Locations    []sarifLocation    `json:"locations"`
	Fingerprints map[string]string  `json:"partialFingerprints"`
	Suppressions []sarifSuppression `json:"suppressions"`
	Rank         float64            `json:"rank"`
	Baseline     string             `json:"baselineState,omitempty"`
	Fixes        []sarifFix         `json:"fixes,omitempty"`
	Properties   map[string]any     `json:"properties,omitempty"`
}

type sarifLocation struct {
	Physical sarifPhysical  `json:"physicalLocation"`
	Logical  []sarifLogical `json:"logicalLocations,omitempty"`
}

type sarifLogical struct {
	Name string `json:"name"`
	Kind string `json:"kind"`
}

type sarifPhysical struct {
	Artifact sarifArtifact `json:"artifactLocation"`
	Region   *sarifRegion  `json:"region,omitempty"`
}

type sarifArtifact struct {
	URI string `json:"uri"`
}

type sarifRegion struct {
	StartLine   int `json:"startLine"`
	StartColumn int `json:"startColumn,omitempty"`
	EndLine     int `json:"endLine,omitempty"`
	EndColumn   int `json:"endColumn,omitempty"`
}

type sarifSuppression struct {
	Kind          string `json:"kind"`
	Status        string `json:"status"`
	Justification string `json:"justification"`
}

type sarifFix struct {
	Description sarifText             `json:"description"`
	Changes     []sarifArtifactChange `json:"artifactChanges"`
}

type sarifArtifactChange struct {
	Artifact     sarifArtifact      `json:"artifactLocation"`
	Replacements []sarifReplacement `json:"replacements"`
}

type sarifReplacement struct {
	Deleted  sarifRegion `json:"deletedRegion"`
	Inserted sarifText   `json:"insertedContent"`
}

// SARIF prints a result as a SARIF 2.1.0 log of one run, with the rules that
// were run. Columns are Unicode code points. Printers that could not be read are
// notifications of a run that did not succeed.
func SARIF(w io.Writer, r *fleet.Result, list []*rules.Rule) error {
	run := sarifRun{
		Tool: sarifTool{sarifDriver{Name: "Preflash", Version: r.Version,
			Rules: make([]sarifRule, len(list))}},
		Invocations: []sarifInvocation{{Successful: r.Summary().Unreadable == 0,
			Notifications: []sarifNotification{}}},
		ColumnKind: "unicodeCodePoints",
		Results:    []sarifResult{},
	}
	index := make(map[string]int, len(list))
	for i, rule := range list {
		index[rule.ID] = i
		run.Tool.Driver.Rules[i] = sarifRule{rule.ID, sarifText{rule.Summary}, sarifText{rule.Doc},
			sarifRuleLevel{rule.Level.String()}}
	}
	for i := range r.Printers {
		p := &r.Printers[i]
		if p.Problem != nil {
			note := &run.Invocations[0].Notifications
			*note = append(*note, notification(p))
		}
		seen := make(map[string]int)
		for j := range p.Findings {
			f := &p.Findings[j]
			ruleIndex, known := index[f.Rule]
			if !known {
				ruleIndex = -1 // SARIF's word for "not in the list"
			}
			key := fingerprintKey(p, f)
			run.Results = append(run.Results, sarifResult{
				RuleID: f.Rule, RuleIndex: ruleIndex, Level: f.Level.String(),
				Message:      sarifText{sarifMessage(f)},
				Locations:    []sarifLocation{location(p, f.Region)},
				Fingerprints: map[string]string{"swapFinding/v1": fingerprint(key, seen[key])},
				Suppressions: suppressions(f),
				Rank:         sarifRank(f),
				Baseline:     baselineState(f.Baseline),
				Fixes:        fixes(f),
				Properties:   valuesOf(f.Values),
			})
			seen[key]++
		}
	}
	for _, f := range r.Fixed {
		run.Results = append(run.Results, fixedResult(f, index))
	}
	for _, sheet := range r.Gone {
		note := &run.Invocations[0].Notifications
		gone := sarifLocation{Logical: []sarifLogical{{sheet, "printer"}}}
		gone.Physical.Artifact = artifact(sheet)
		*note = append(*note,
			sarifNotification{[]sarifLocation{gone}, sarifText{"This sheet is gone since " + r.Since +
				": its printer is no longer checked."}, "note"})
	}
	return jsontext.Write(w, sarifLog{
		Schema:  "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
		Version: "2.1.0",
		Runs:    []sarifRun{run},
	})
}

func notification(p *fleet.Printer) sarifNotification {
	at := fleet.Region{File: p.Problem.File, Line: p.Problem.Line}
	return sarifNotification{
		Locations: []sarifLocation{location(p, at)},
		Message:   sarifText{p.Problem.Message},
		Level:     "error",
	}
}

// location is a place of a printer; where nothing else is known, its sheet.
func location(p *fleet.Printer, at fleet.Region) sarifLocation {
	l := sarifLocation{Logical: []sarifLogical{{p.Name, "printer"}}}
	l.Physical.Artifact = artifact(at.File)
	if at.File == "" {
		l.Physical.Artifact = artifact(p.Sheet)
	} else if at.Line > 0 {
		region := sarifRegionOf(at)
		l.Physical.Region = &region
	}
	return l
}

func sarifRegionOf(at fleet.Region) sarifRegion {
	return sarifRegion{at.Line, at.CharColumn, at.EndLine, at.EndCharColumn}
}

// artifact gives a path as a relative reference (RFC 3986). A path that begins
// like a scheme or an authority is kept from reading as one.
func artifact(name string) sarifArtifact {
	if strings.HasPrefix(name, "//") {
		name = "/." + name
	}
	return sarifArtifact{(&url.URL{Path: name}).String()}
}

// fingerprintKey tells what a finding is about, without figures that change and
// without line numbers, so that a finding is known again when lines
// above it come or go.
func fingerprintKey(p *fleet.Printer, f *fleet.Finding) string {
	return strings.Join([]string{f.Rule, p.Sheet, f.Region.File, f.Region.Text}, "\x00")
}

// fingerprint tells equal findings of one printer apart by their order.
func fingerprint(key string, before int) string {
	return fmt.Sprintf("%x", sha256.Sum256(fmt.Appendf(nil, "%s\x00%d", key, before)))[:32]
}

// baselineState is SARIF's word for how a finding compares with what is known.
func baselineState(b fleet.Baseline) string {
	return [...]string{"", "new", "unchanged", "updated"}[b]
}

// fixedResult is a known finding that is gone.
func fixedResult(f fleet.Fixed, index map[string]int) sarifResult {
	at := sarifLocation{Logical: []sarifLogical{{f.Printer, "printer"}}}
	at.Physical.Artifact = artifact(f.Sheet)
	text := "Fixed: " + f.Rule + " was known since " + f.Since + " and is gone."
	if f.Setting != "" {
		text = "Fixed: " + f.Rule + " (" + f.Setting + ") was known since " + f.Since + " and is gone."
	}
	key := strings.Join([]string{f.Rule, f.Sheet, f.Setting, f.Since}, "\x00")
	return sarifResult{
		RuleID: f.Rule, RuleIndex: index[f.Rule], Level: rules.Note.String(), Message: sarifText{text},
		Locations:    []sarifLocation{at},
		Fingerprints: map[string]string{"swapFinding/v1": fingerprint(key, 0)},
		Suppressions: []sarifSuppression{}, Baseline: "absent",
	}
}

// sarifMessage is a finding's message as its first sentence, and the rest.
func sarifMessage(f *fleet.Finding) string {
	text := f.Message
	if more := f.Rest(); more != "" {
		text = plaintext.Sentence(f.Message) + " " + plaintext.Sentence(more)
	}
	for _, one := range f.Follows {
		text += " Follows from it: " + one.Rule + ": " + plaintext.Sentence(one.Text())
	}
	return text
}

// sarifRank gives the order of danger as SARIF has it, 100 for what matters most.
func sarifRank(f *fleet.Finding) float64 {
	last := float64(len(rules.Ranks()))
	return math.Round(1000*(1-(float64(max(f.Rank, 1))-1)/last)) / 10
}

// suppressions is empty, not absent, where there is none: SARIF takes that for
// "not suppressed" rather than "not known".
func suppressions(f *fleet.Finding) []sarifSuppression {
	if f.Waived == "" {
		return []sarifSuppression{}
	}
	return []sarifSuppression{{Kind: "external", Status: "accepted", Justification: f.Waived}}
}

// fixes gives the edits of a finding, file by file. Text that is not UTF-8
// cannot be said in SARIF: then there is no fix, only the diff.
func fixes(f *fleet.Finding) []sarifFix {
	if len(f.Fix) == 0 {
		return nil
	}
	fix := sarifFix{Description: sarifText{f.Change}}
	for _, e := range f.Fix {
		if !utf8.ValidString(e.New) {
			return nil
		}
		a := artifact(e.Region.File)
		if n := len(fix.Changes); n == 0 || fix.Changes[n-1].Artifact != a {
			fix.Changes = append(fix.Changes, sarifArtifactChange{Artifact: a})
		}
		last := &fix.Changes[len(fix.Changes)-1]
		last.Replacements = append(last.Replacements,
			sarifReplacement{sarifRegionOf(e.Region), sarifText{e.New}})
	}
	return []sarifFix{fix}
}
