package report

import (
	"fmt"
	"slices"
	"strings"

	"preflash/cmd/internal/plaintext"
	"preflash/parser"
	"preflash/patch"
)

// Lead is the text above a diff: change by change, why it is made.
func Lead(p *patch.Plan) []string {
	lines := []string{
		"Preflash proposes these changes. Read them, then apply them by hand with",
		"git apply -p1 or patch -p1. They were tried in memory: with them, the",
		"findings below are gone and no new error came up.",
		"",
	}
	var say plaintext.Remarks
	if len(p.Worse) > 0 {
		lines[2] = "findings below are gone, and what is an error then stands below them."
	}
	for i, r := range p.Reasons {
		// A later round may ask for the same settings again; its word is the last.
		if !slices.ContainsFunc(p.Reasons[i+1:], r.Renewed) {
			text := fmt.Sprintf("%s, %s: %s", r.Owner, r.Finding.Rule, clipped(r))
			if r.YieldsTo != "" {
				text += "; " + r.YieldsTo + " asks for what protects more, and that was done"
			}
			say = append(say, text)
		}
	}
	for _, m := range p.Moves {
		say.Add("%s: the %s goes from %s to %s, which protects less; %s asked for it, "+
			"for the reason above",
			m.Owner, m.Was.Key, m.Was.Text(), m.Is.Text(), strings.Join(m.Rules, " and "))
	}
	for _, a := range p.Asides {
		why := "although no line of this diff names it"
		if a.Shared {
			why = "since it reads a line of this diff that another one asked for"
		}
		say.Add("%s: %s, %s", a.Owner, parser.Clip(a.Text, maxReason), why)
	}
	for _, r := range p.Worse {
		say.Add("%s, %s, an error once this is applied: %s", r.Owner, r.Finding.Rule,
			clipped(r))
	}
	for _, r := range p.Left {
		say = append(say, LeftText(r))
	}
	const width, indent = 76, "  "
	for _, text := range say {
		for i, line := range plaintext.Wrap(text, width-len(indent)) {
			if i > 0 {
				line = indent + line
			}
			lines = append(lines, line)
		}
	}
	return lines
}

// maxReason is how many bytes of a reason are shown.
const maxReason = 2000

func clipped(r patch.Reason) string { return parser.Clip(r.Finding.Text(), maxReason) }

// LeftText says which change is not in a diff, and why.
func LeftText(r patch.Reason) string {
	return fmt.Sprintf("%s, %s: not in this diff, since %s", r.Owner, r.Finding.Rule,
		parser.Clip(r.Err.Error(), maxReason))
}
