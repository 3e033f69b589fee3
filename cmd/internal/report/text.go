// Package report prints what fleet found: text, JSON, SARIF and Markdown, each a
// function of a result.
package report

import (
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode/utf8"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/plaintext"
	"preflash/patch"
	"preflash/rules"
)

// TextOptions say how a text report looks, and how much it says.
type TextOptions struct {
	plaintext.Options
	Explain bool // all that findings say
	All     bool // every finding of every printer
}

// Text prints a result for a person. Of one printer it shows all that counts. Of
// several it shows a line a printer, worst first, with its worst finding; then
// what cannot be read and the errors, each at least as a line. The verdict comes
// last.
func Text(w io.Writer, r *fleet.Result, o TextOptions) error {
	p := textPrinter{plaintext.NewPrinter(patch.HarmlessWriter(w), o.Options), o.Explain, o.All}
	many := len(r.Printers) > 1
	if many {
		p.overview(r)
	}
	for i, standing := range r.WorstFirst() {
		printer := standing.Printer
		if many && printer.Problem == nil && len(p.shown(printer, many)) == 0 {
			continue // its line says it
		}
		if i > 0 || many {
			p.WriteByte('\n')
		}
		p.WriteString(p.fitting(printer, many))
	}
	for _, sheet := range r.Gone {
		p.WriteByte('\n')
		p.Entry("gone", plaintext.Strong, sheet)
	}
	if len(r.Printers) > 0 || len(r.Gone) > 0 {
		p.WriteByte('\n')
	}
	const label = "Verdict:"
	lines := plaintext.Hanging("", "", label+" "+Verdict(r), p.Width)
	p.WriteString(p.Bold(label) + lines[len(label):])
	if hint := p.hint(r, many); hint != "" {
		p.Hang("", 0, hint)
	}
	return p.Flush()
}

type textPrinter struct {
	plaintext.Printer
	explain, all bool
}

// room is how many lines one printer gets, so that it fits on a screen together
// with the verdict.
const room = 31

// closeness is how closely a printer's findings are looked at. A finding in full
// takes a few lines; else only what to do.
type closeness uint8

const (
	notesToo closeness = iota // all that counts, in full
	noNotes                   // errors and warnings in full
	errorsFull
	threeFull // the three worst in full, then two, then one
	twoFull
	oneFull
	oneLine
)

// fitting prints a printer as closely as there is room for. What is asked for by
// --all or --explain is printed whatever room it takes.
func (p *textPrinter) fitting(printer *fleet.Printer, many bool) string {
	level := notesToo
	if many && !p.all && !p.explain {
		level = oneLine
	}
	for ; ; level++ {
		var b strings.Builder
		one := textPrinter{plaintext.NewPrinter(&b, p.Options), p.explain, p.all}
		one.printer(printer, p.cut(p.shown(printer, many), level), level)
		one.Flush() // into memory
		if p.all || p.explain || level == oneLine || strings.Count(b.String(), "\n") <= room {
			return b.String()
		}
	}
}

// cut leaves out what a closeness does not show.
func (p *textPrinter) cut(list []*fleet.Finding, level closeness) []*fleet.Finding {
	if level == notesToo || p.all {
		return list
	}
	return slices.DeleteFunc(list, func(f *fleet.Finding) bool { return f.Level == rules.Note })
}

// shown are the findings of a printer that are printed: those that count, and
// of several printers only the errors. What is waived or known is counted below.
func (p *textPrinter) shown(printer *fleet.Printer, many bool) []*fleet.Finding {
	list := printer.WorstFirst()
	if p.all {
		return list
	}
	return slices.DeleteFunc(list, func(f *fleet.Finding) bool {
		return !f.Counts() || many && f.Level < rules.Error
	})
}

// hint says how to see more.
func (p *textPrinter) hint(r *fleet.Result, many bool) string {
	hidden, details := false, false
	full := *p
	full.all = true
	for i := range r.Printers {
		printer := &r.Printers[i]
		shown := p.shown(printer, many)
		hidden = hidden || len(printer.Findings) > len(shown) || !p.explain && !p.all &&
			strings.Count(p.fitting(printer, many), "\n") < strings.Count(full.fitting(printer, many), "\n")
		for _, f := range shown {
			details = details || f.Detail != "" || len(f.Follows) > 0
		}
	}
	var ways []string
	if hidden {
		ways = append(ways, "--all shows every finding in full")
	}
	if details && !p.explain {
		ways = append(ways, "--explain says more of each")
	}
	if len(ways) == 0 {
		return ""
	}
	return "More: " + strings.Join(ways, ", ") + "."
}

// overview prints a line a printer, worst first: its errors, warnings and notes,
// its name and what to do about its worst finding.
func (p *textPrinter) overview(r *fleet.Result) {
	rows := r.WorstFirst()
	p.WriteString("err. warn. notes  printer and what to do first\n")
	wide := 0
	for _, row := range rows {
		wide = max(wide, utf8.RuneCountInString(patch.Visible(row.Name)))
	}
	wide = min(wide, 24)
	for _, row := range rows {
		head := fmt.Sprintf("%4s %5s %5s  %-*s  ",
			dash(row.Levels[rules.Error]), dash(row.Levels[rules.Warning]), dash(row.Levels[rules.Note]),
			wide, clip(patch.Visible(row.Name), wide))
		p.WriteString(head + fit(firstOf(&row), max(20, p.Width-utf8.RuneCountInString(head))) + "\n")
	}
}

// firstOf says what to do first about a printer.
func firstOf(s *fleet.Standing) string {
	switch {
	case s.Problem != nil:
		return "cannot be read"
	case s.Worst != nil:
		return patch.Visible(s.Worst.Message)
	case len(s.Findings) > 0:
		return "nothing that counts"
	}
	return "nothing found"
}

// dash keeps a table of mostly zeros legible.
func dash(n int) string {
	if n == 0 {
		return "-"
	}
	return fmt.Sprint(n)
}

// clip cuts a name at so many characters.
func clip(name string, width int) string {
	if runes := []rune(name); len(runes) > width {
		return string(runes[:width-1]) + "…"
	}
	return name
}

func (p *textPrinter) printer(printer *fleet.Printer, show []*fleet.Finding, level closeness) {
	head := p.Bold(patch.Visible(printer.Name))
	if printer.Style != "" {
		head += ", " + printer.Style
	}
	if printer.Sheet != printer.Name {
		head += ", " + patch.Visible(printer.Sheet)
	}
	switch {
	case printer.Problem != nil:
		if printer.Named() {
			fmt.Fprintf(p, "%s, cannot be read\n", head)
		}
		word := "error"
		for _, problem := range printer.Problem.Each() {
			p.Entry(word, plaintext.Red, problem.String())
			word = ""
		}
	case len(show) == 0 && len(printer.Findings) == 0:
		fmt.Fprintf(p, "%s: nothing found\n", head)
	case len(show) == 0:
		fmt.Fprintf(p, "%s: nothing that counts\n", head)
	default:
		fmt.Fprintf(p, "%s\n", head)
	}
	for i, same := range alike(show) {
		if level >= threeFull && i >= int(oneLine-level) ||
			level == errorsFull && same[0].Level < rules.Error {
			p.brief(same)
			continue
		}
		if level == notesToo {
			p.WriteByte('\n')
		}
		p.finding(same, printer.Sheet)
	}
}

// brief prints of findings that are alike what to do, of the reason what has room
// beside it, and the rule.
func (p *textPrinter) brief(same []*fleet.Finding) {
	f := same[0]
	word, colour := levelWord(f)
	message := patch.Visible(f.Message)
	text, rule := action(message), " ["+f.Rule+"]"
	if room := p.Width - plaintext.Margin - len(rule); utf8.RuneCountInString(text) <= room {
		text = fit(message, room)
	}
	p.Entry(word, colour, text+rule)
	if f.Aside != "" {
		p.line("Also", f.Aside)
	}
}

// alike gathers findings of several rules that say the same of one place, such
// as what none of them could tell. The first is the worst.
func alike(findings []*fleet.Finding) [][]*fleet.Finding {
	type saying struct{ message, file, waived string }
	index := make(map[saying]int)
	var groups [][]*fleet.Finding
	for _, f := range findings {
		key := saying{f.Message, f.Region.Place(), f.Waived + f.Known}
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
	word, colour := levelWord(f)
	p.Entry(word, colour, f.Message)
	if p.explain && f.Detail != "" {
		p.Hang(strings.Repeat(" ", plaintext.Margin), plaintext.Margin, plaintext.Sentence(f.Detail))
	}
	if f.Change != "" {
		p.line("Change", f.Change)
	}
	if f.Aside != "" {
		p.line("Also", f.Aside)
	}
	if n := len(f.Follows); n > 0 && p.explain {
		for _, one := range f.Follows {
			p.line("Follows", one.Rule+": "+one.Text())
		}
	} else if n > 0 {
		p.line("Follows", rulesOf(f))
	}
	if f.Waived != "" {
		p.line("Waiver", fmt.Sprintf("%s, since: %s", f.Level, f.Waived))
	}
	if f.Known != "" {
		p.line("Known", fmt.Sprintf("%s, since %s", f.Level, f.Known))
	}
	place := f.Region.Place()
	if place == "" {
		place = sheet
	}
	p.line("Where", fmt.Sprintf("%s, %s %s", place, label, names))
}

// rulesOf lists the rules whose findings follow from one.
func rulesOf(f *fleet.Finding) string {
	var names []string
	for _, one := range f.Follows {
		if !slices.Contains(names, one.Rule) {
			names = append(names, one.Rule)
		}
	}
	return strings.Join(names, ", ")
}

// line prints a labelled line below an entry.
func (p *textPrinter) line(label, text string) {
	const labels = 8
	p.Hang(fmt.Sprintf("%*s%-*s", plaintext.Margin, "", labels, label), plaintext.Margin+labels, text)
}

// levelWord is what stands in the margin beside a finding.
func levelWord(f *fleet.Finding) (word, colour string) {
	switch {
	case f.Waived != "":
		return "waived", ""
	case f.Known != "":
		return "known", ""
	}
	return f.Level.String(), levelColour(f.Level)
}

func levelColour(l rules.Level) string {
	switch l {
	case rules.Error:
		return plaintext.Red
	case rules.Warning:
		return plaintext.Yellow
	}
	return plaintext.Strong
}
