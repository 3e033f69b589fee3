package report

import (
	"fmt"
	"io"
	"strings"

	"preflash/rules"
)

// RuleList prints every rule in a line.
func RuleList(w io.Writer, list []*rules.Rule) error {
	var b strings.Builder
	for _, r := range list {
		fmt.Fprintf(&b, "%-18s %-8s %s\n", r.ID, r.Level, r.Summary)
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// RulePage prints one rule with its formula, limits and sources.
func RulePage(w io.Writer, r *rules.Rule) error {
	var b strings.Builder
	fmt.Fprintf(&b, "%s (up to %s)\n%s\n\n%s\n", r.ID, r.Level, r.Summary, r.Doc)
	_, err := io.WriteString(w, b.String())
	return err
}
