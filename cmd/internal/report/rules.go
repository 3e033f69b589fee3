package report

import (
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode/utf8"

	"preflash/cmd/internal/plaintext"
	"preflash/rules"
)

// RuleList prints every rule with its summary, at the worst place that it has in
// the order of danger.
func RuleList(w io.Writer, list []*rules.Rule, width int) error {
	const margin, beside = 33, 30 // columns before the summary, and the fewest for it
	narrow := width < margin+beside
	indent := margin
	if narrow {
		indent = 4
	}
	var b strings.Builder
	said := make(map[string]bool)
	title := ""
	for i, rank := range rules.Ranks() {
		at := slices.IndexFunc(list, func(r *rules.Rule) bool { return r.ID == rank.Rule })
		if at < 0 || said[rank.Rule] {
			continue
		}
		said[rank.Rule] = true
		if t := rank.Danger.Text(); t != title {
			if title != "" {
				b.WriteByte('\n')
			}
			title = t
			b.WriteString(t + "\n")
		}
		r := list[at]
		head := fmt.Sprintf("%3d %-19s %-8s ", i+1, r.ID, r.Level)
		if narrow {
			b.WriteString(strings.TrimRight(head, " ") + "\n")
			head = ""
		}
		b.WriteString(plaintext.Hanging(fmt.Sprintf("%*s", -indent, head), strings.Repeat(" ", indent),
			r.Summary, width-indent))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// RulePage prints one rule with its place in the order of danger, its formula,
// limits and sources.
func RulePage(w io.Writer, r *rules.Rule, width int) error {
	var b strings.Builder
	fmt.Fprintf(&b, "%s (up to %s)\n%s\n%s\n", r.ID, r.Level, plaintext.Hanging("", "", r.Summary, width),
		reflow(r.Doc, width))
	b.WriteString("\nOrder of danger:\n")
	for i, rank := range rules.Ranks() {
		if rank.Rule != r.ID {
			continue
		}
		text := rank.Danger.Text()
		if rank.Only != "" {
			text += "; " + rank.Only
		}
		switch rank.From {
		case rules.Error:
			text += "; an error"
		case rules.Warning:
			text += "; a warning or an error"
		}
		b.WriteString(plaintext.Hanging(fmt.Sprintf("%3d ", i+1), "    ", text, width-4))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// docWidth is the width that texts of rules are written for.
const docWidth = 80

// reflow wraps a text that was written for docWidth columns. A line that ends
// before the next word had to go on is left to end there; one that is indented
// stays so.
func reflow(text string, width int) string {
	if width >= docWidth {
		return text
	}
	var out strings.Builder
	lines := strings.Split(text, "\n")
	for i := 0; i < len(lines); i++ {
		line := lines[i]
		indent := len(line) - len(strings.TrimLeft(line, " "))
		for i+1 < len(lines) {
			next := lines[i+1]
			word, _, _ := strings.Cut(strings.TrimLeft(next, " "), " ")
			fits := utf8.RuneCountInString(lines[i])+1+utf8.RuneCountInString(word) <= docWidth
			if next == "" || fits || len(next)-len(strings.TrimLeft(next, " ")) < indent {
				break
			}
			line += " " + strings.TrimLeft(next, " ")
			i++
		}
		left := strings.Repeat(" ", indent)
		out.WriteString(plaintext.Hanging(left, left, line, width-indent))
	}
	return strings.TrimSuffix(out.String(), "\n")
}
