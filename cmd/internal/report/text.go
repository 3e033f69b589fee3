// Package report renders what fleet and the bench commands found: text, JSON,
// SARIF, Markdown and HTML, each a function of a result.
package report

import (
	"bufio"
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"

	"preflash/cmd/internal/fleet"
	"preflash/patch"
	"preflash/rules"
)

// TextOptions say how a text report looks. Colour never carries a meaning that
// the words do not.
type TextOptions struct {
	Color bool
	Width int // columns; 0 means 80
}

// Text prints a block for each printer that has findings, a line for each that
// has none, the overview where there are several, and the verdict.
func Text(w io.Writer, r *fleet.Result, o TextOptions) error {
	if o.Width <= 0 {
		o.Width = 80
	}
	out := bufio.NewWriter(patch.HarmlessWriter(w))
	p := textPrinter{out, o}
	blockAbove := false
	for i := range r.Printers {
		printer := &r.Printers[i]
		block := printer.Problem != nil || len(printer.Findings) > 0
		if i > 0 && (block || blockAbove) {
			out.WriteByte('\n')
		}
		blockAbove = block
		p.printer(printer)
	}
	for _, sheet := range r.Gone {
		out.WriteByte('\n')
		p.entry("gone", strong, sheet)
	}
	if len(r.Printers) > 0 || len(r.Gone) > 0 {
		out.WriteByte('\n')
	}
	if len(r.Printers) > 1 {
		out.WriteString(overviewText(r))
	}
	const label = "Verdict:"
	for i, line := range wrap(label+" "+verdict(r), o.Width) {
		if i == 0 {
			line = p.bold(label) + line[len(label):]
		}
		out.WriteString(line + "\n")
	}
	return out.Flush()
}

type textPrinter struct {
	out *bufio.Writer
	TextOptions
}

// margin holds the level of a finding; what is said about it stands to its
// right.
const margin = 9

func (p *textPrinter) printer(printer *fleet.Printer) {
	head := p.bold(patch.Visible(printer.Name))
	if printer.Style != "" {
		head += ", " + printer.Style
	}
	if printer.Sheet != printer.Name {
		head += ", " + patch.Visible(printer.Sheet)
	}
	switch {
	case printer.Problem != nil:
		if printer.Named() {
			fmt.Fprintf(p.out, "%s\n\n", head)
		}
		word := "unread"
		for _, problem := range printer.Problem.Each() {
			p.entry(word, red, problem.String())
			word = ""
		}
	case len(printer.Findings) == 0:
		fmt.Fprintf(p.out, "%s: nothing found\n", head)
	default:
		fmt.Fprintf(p.out, "%s\n", head)
	}
	for _, same := range alike(worstFirst(printer.Findings)) {
		p.out.WriteByte('\n')
		p.finding(same, printer.Sheet)
	}
}

// alike gathers findings of several rules that say the same of one place, such
// as what none of them could tell. The first is the worst.
func alike(findings []*fleet.Finding) [][]*fleet.Finding {
	type saying struct{ message, file, waived string }
	index := make(map[saying]int)
	var groups [][]*fleet.Finding
	for _, f := range findings {
		key := saying{f.Message, placeText(f.Region.File, f.Region.Line), f.Waived + f.Known}
		if i, said := index[key]; said {
			groups[i] = append(groups[i], f)
			continue
		}
		index[key] = len(groups)
		groups = append(groups, []*fleet.Finding{f})
	}
	return groups
}

// finding prints findings that are alike.
func (p *textPrinter) finding(same []*fleet.Finding, sheet string) {
	f := same[0]
	names, label := f.Rule, "rule"
	for _, other := range f.Also {
		names, label = names+", "+other, "rules"
	}
	for _, other := range same[1:] {
		names, label = names+", "+other.Rule, "rules"
	}
	word, colour := f.Level.String(), levelColour(f.Level)
	switch {
	case f.Waived != "":
		word, colour = "waived", ""
	case f.Known != "":
		word, colour = "known", ""
	}
	p.entry(word, colour, f.Message)
	if f.Change != "" {
		p.line("Change", f.Change)
	}
	if f.Waived != "" {
		p.line("Waiver", fmt.Sprintf("%s, since: %s", f.Level, f.Waived))
	}
	if f.Known != "" {
		p.line("Known", fmt.Sprintf("%s, since %s", f.Level, f.Known))
	}
	place := placeText(f.Region.File, f.Region.Line)
	if place == "" {
		place = sheet
	}
	p.line("Where", fmt.Sprintf("%s, %s %s", place, label, names))
}

// entry prints a word in the margin and text beside it.
func (p *textPrinter) entry(word, colour, text string) {
	pad := strings.Repeat(" ", max(0, margin-2-len(word)))
	p.hang(pad+p.paint(colour, word)+"  ", margin, text)
}

// line prints a labelled line below an entry.
func (p *textPrinter) line(label, text string) {
	const labels = 8
	p.hang(fmt.Sprintf("%*s%-*s", margin, "", labels, label), margin+labels, text)
}

// hang prints untrusted text after a head that is so many columns wide, and
// further lines below it.
func (p *textPrinter) hang(head string, indent int, text string) {
	for i, line := range wrap(patch.Visible(text), p.Width-indent) {
		if i > 0 {
			head = strings.Repeat(" ", indent)
		}
		p.out.WriteString(head + line + "\n")
	}
}

const (
	red    = "1;31"
	yellow = "1;33"
	strong = "1"
)

func levelColour(l rules.Level) string {
	switch l {
	case rules.Error:
		return red
	case rules.Warning:
		return yellow
	}
	return strong
}

func (p *textPrinter) bold(s string) string { return p.paint(strong, s) }

func (p *textPrinter) paint(colour, s string) string {
	if !p.Color || colour == "" {
		return s
	}
	return "\x1b[" + colour + "m" + s + "\x1b[0m"
}

// worstFirst gives findings in the order of danger, the waived ones last.
func worstFirst(findings []fleet.Finding) []*fleet.Finding {
	sorted := make([]*fleet.Finding, len(findings))
	for i := range findings {
		sorted[i] = &findings[i]
	}
	slices.SortStableFunc(sorted, byDanger)
	return sorted
}

// byDanger puts what does not count behind what does.
func byDanger(a, b *fleet.Finding) int {
	passed := func(f *fleet.Finding) int {
		switch {
		case f.Waived != "":
			return 2
		case f.Known != "":
			return 1
		}
		return 0
	}
	return cmp.Or(cmp.Compare(passed(a), passed(b)), cmp.Compare(a.Rank, b.Rank), cmp.Compare(b.Level, a.Level))
}

func placeText(file string, line int) string {
	if file == "" || line == 0 {
		return file
	}
	return fmt.Sprintf("%s:%d", file, line)
}
