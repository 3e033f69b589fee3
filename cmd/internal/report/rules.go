package report

import (
	"fmt"
	"io"
	"strings"

	"preflash/rules"
)

// RuleList prints every rule with its summary, in 80 columns.
func RuleList(w io.Writer, list []*rules.Rule) error {
	const margin = 29
	var b strings.Builder
	for _, r := range list {
		head := fmt.Sprintf("%-19s %-8s ", r.ID, r.Level)
		for _, line := range wrap(r.Summary, 80-margin) {
			fmt.Fprintf(&b, "%*s%s\n", -margin, head, line)
			head = ""
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// RulePage prints one rule with its formula, limits and sources.
func RulePage(w io.Writer, r *rules.Rule) error {
	var b strings.Builder
	fmt.Fprintf(&b, "%s (up to %s)\n%s\n\n%s\n", r.ID, r.Level, strings.Join(wrap(r.Summary, 80), "\n"), r.Doc)
	_, err := io.WriteString(w, b.String())
	return err
}
