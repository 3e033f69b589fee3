package report

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/worklist"
	"preflash/patch"
)

// Bench is the work list of one printer; List is nil where the printer could
// not be read.
type Bench struct {
	*fleet.Printer
	List *worklist.List
}

const tickBox = "[ ] "

// BenchText prints work lists, cautions first, with a box to tick for each
// thing to do.
func BenchText(w io.Writer, list []Bench, o TextOptions) error {
	if o.Width <= 0 {
		o.Width = 80
	}
	out := bufio.NewWriter(patch.HarmlessWriter(w))
	p := textPrinter{out, o}
	for i, b := range list {
		if i > 0 {
			out.WriteByte('\n')
		}
		p.bench(b)
	}
	return out.Flush()
}

func (p *textPrinter) bench(b Bench) {
	p.hang(p.bold("Bench list: "), 0, benchTitle(b.Printer))
	p.out.WriteByte('\n')
	if b.List == nil {
		for _, problem := range b.Problem.Each() {
			p.entry("error", red, problem.String())
		}
		return
	}
	p.out.WriteString(Cautions)
	if b.List.Mend != "" {
		p.out.WriteByte('\n')
		p.hang("", 0, b.List.Mend)
	}
	for i, s := range b.List.Sections {
		fmt.Fprintf(p.out, "\n%s\n", p.bold(fmt.Sprintf("%d. %s", i+1, s.Title)))
		if s.Note != "" {
			p.hang("", 0, s.Note)
		}
		for _, item := range s.Items {
			p.out.WriteByte('\n')
			p.benchItem(item)
		}
	}
}

func (p *textPrinter) benchItem(item worklist.Item) {
	const indent = len(tickBox)
	p.hang(tickBox, indent, item.Do)
	labels := func(label, text string) {
		const width = 11
		p.hang(fmt.Sprintf("%*s%-*s", indent, "", width, label), indent+width, text)
	}
	for i, step := range item.Steps {
		label := ""
		if i == 0 {
			label = "Console"
		}
		labels(label, step)
	}
	if item.Expect != "" {
		labels("Expect", item.Expect)
	}
	if item.Else != "" {
		labels("Otherwise", item.Else)
	}
}

func benchTitle(p *fleet.Printer) string {
	text := p.Name
	if p.Style != "" {
		text += ", " + p.Style
	}
	if p.Sheet != p.Name {
		text += ", " + p.Sheet
	}
	return text
}

// BenchMarkdown prints the same as Markdown with task boxes.
func BenchMarkdown(w io.Writer, list []Bench) error {
	out := bufio.NewWriter(w)
	for i, b := range list {
		if i > 0 {
			out.WriteByte('\n')
		}
		benchMarkdown(out, b)
	}
	return out.Flush()
}

func benchMarkdown(out *bufio.Writer, b Bench) {
	fmt.Fprintf(out, "# Bench list: %s\n\n", markdown(benchTitle(b.Printer)))
	if b.List == nil {
		for _, problem := range b.Problem.Each() {
			fmt.Fprintf(out, "- **error** %s\n", markdown(problem.String()))
		}
		return
	}
	out.WriteString(strings.Replace(Cautions, ":\n", ":\n\n", 1))
	if b.List.Mend != "" {
		fmt.Fprintf(out, "\n**%s**\n", markdown(b.List.Mend))
	}
	for i, s := range b.List.Sections {
		fmt.Fprintf(out, "\n## %d. %s\n\n", i+1, s.Title)
		if s.Note != "" {
			fmt.Fprintf(out, "%s\n\n", markdown(s.Note))
		}
		for _, item := range s.Items {
			fmt.Fprintf(out, "- [ ] %s\n", markdown(item.Do))
			if len(item.Steps) > 0 {
				spans := make([]string, len(item.Steps))
				for i, step := range item.Steps {
					spans[i] = code(patch.Visible(step))
				}
				fmt.Fprintf(out, "  - Console: %s\n", strings.Join(spans, ", then "))
			}
			if item.Expect != "" {
				fmt.Fprintf(out, "  - Expect: %s\n", markdown(item.Expect))
			}
			if item.Else != "" {
				fmt.Fprintf(out, "  - Otherwise: %s\n", markdown(item.Else))
			}
		}
	}
}
