package measure

import (
	"bufio"
	"fmt"
	"io"
	"slices"
	"strings"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/markdown"
	"preflash/cmd/internal/plaintext"
	"preflash/cmd/internal/worklist"
	"preflash/parser"
	"preflash/patch"
	"preflash/rules"
)

// Bench is the work list of one printer; List is nil where the printer could
// not be read, unless it is its sensor that is not known yet.
type Bench struct {
	*fleet.Printer
	List *worklist.List
}

// Benches makes the work list of each printer. The inputs are those of
// fleet.Inputs.
func Benches(r *fleet.Result, inputs []*rules.Input) []Bench {
	list := make([]Bench, len(r.Printers))
	for i := range r.Printers {
		p := &r.Printers[i]
		list[i].Printer = p
		switch {
		case inputs[i] != nil:
			open := openOf(p)
			open.Changes = changesOf(inputs[i])
			list[i].List = worklist.New(inputs[i], open)
		case lacksSensor(p):
			list[i].List = worklist.Unknown()
		}
	}
	return list
}

// openOf lists the rules of the errors that count.
func openOf(p *fleet.Printer) (open worklist.Open) {
	every := p.Every()
	for i := range every {
		f := &every[i]
		if f.Level != rules.Error || f.Waived != "" {
			continue
		}
		open.Errors = append(open.Errors, f.Rule)
		if f.Danger == rules.Fire && (rules.Find(f.Rule).Unwaived || f.Rule == "sensor-unknown") {
			open.Before = append(open.Before, f.Rule)
		}
	}
	return open
}

// changesOf lists what a diff would change at first, each setting once.
func changesOf(in *rules.Input) []parser.Change {
	var list []parser.Change
	found := rules.Check(in)
	for i := range found {
		if found[i].Waived != "" {
			continue
		}
		for _, c := range found[i].Changes {
			list = slices.DeleteFunc(list, func(o parser.Change) bool { return o.Key == c.Key })
			list = append(list, c)
		}
	}
	return list
}

// lacksSensor reports whether the sheet does not say which sensor goes in.
func lacksSensor(p *fleet.Printer) bool {
	return slices.ContainsFunc(problems(p), func(text string) bool {
		return strings.Contains(text, "new.sensor")
	})
}

const tickBox = "[ ] "

// BenchText prints work lists, cautions first, with a box to tick for each
// thing to do.
func BenchText(w io.Writer, list []Bench, o plaintext.Options) error {
	for i, b := range list {
		if i > 0 {
			if _, err := io.WriteString(w, newPage); err != nil {
				return err
			}
		}
		p := benchPrinter{plaintext.NewPrinter(patch.HarmlessWriter(w), o)}
		p.bench(b)
		if err := p.Flush(); err != nil {
			return err
		}
	}
	return nil
}

// newPage has a printer of paper begin a new page for each printer's list.
const newPage = "\f\n"

// blank is what a person writes on.
const blank = "________"

type benchPrinter struct{ plaintext.Printer }

func (p *benchPrinter) bench(b Bench) {
	p.Hang(p.Bold("Bench list: "), 0, benchTitle(b.Printer))
	p.WriteString(benchHead + "\n\n")
	for _, problem := range problems(b.Printer) {
		p.Entry("error", plaintext.Red, problem)
	}
	if b.List == nil {
		return
	}
	p.WriteString(worklist.Cautions)
	if b.List.First != "" {
		p.WriteByte('\n')
		p.Hang("", 0, b.List.First)
	}
	for i, s := range b.List.Sections {
		fmt.Fprintf(p, "\n%s\n", p.Bold(fmt.Sprintf("%d. %s", i+1, s.Title)))
		if s.Note != "" {
			p.Hang("", 0, s.Note)
		}
		for _, item := range s.Items {
			p.WriteByte('\n')
			p.benchItem(item)
		}
	}
}

func (p *benchPrinter) benchItem(item worklist.Item) {
	const indent = len(tickBox)
	p.Hang(tickBox, indent, item.Do)
	labels := func(label, text string) {
		const width = 11
		p.Hang(fmt.Sprintf("%*s%-*s", indent, "", width, label), indent+width, text)
	}
	for _, block := range [...]struct {
		name  string
		lines []string
	}{{"Console", item.Steps}, {"Run", item.Run}, {"Sheet", item.Sheet}} {
		label := block.name
		for _, line := range block.lines {
			labels(label, line)
			label = ""
		}
	}
	if item.Expect != "" {
		labels("Expect", item.Expect)
	}
	if item.Else != "" {
		labels("Otherwise", item.Else)
	}
	if len(item.Note) > 0 {
		labels("Write down", readings(item.Note))
	}
}

// readings are the boxes to write readings into.
func readings(list []worklist.Reading) string {
	boxes := make([]string, len(list))
	for i, r := range list {
		boxes[i] = strings.TrimSpace(r.Name + " " + blank + " " + r.Unit)
	}
	return strings.Join(boxes, ", ")
}

// benchHead is who worked through the list, and when.
const benchHead = "Date " + blank + "  By " + blank

// problems says why a printer could not be read.
func problems(p *fleet.Printer) (list []string) {
	if p.Problem == nil {
		return nil
	}
	for _, problem := range p.Problem.Each() {
		list = append(list, problem.String())
	}
	return list
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
			out.WriteString("\n<div style=\"page-break-before: always\"></div>\n\n")
		}
		benchMarkdown(out, b)
	}
	return out.Flush()
}

func benchMarkdown(out *bufio.Writer, b Bench) {
	fmt.Fprintf(out, "# Bench list: %s\n\n", markdown.Escape(benchTitle(b.Printer)))
	out.WriteString(strings.ReplaceAll(benchHead, "_", "\\_") + "\n\n")
	for _, problem := range problems(b.Printer) {
		fmt.Fprintf(out, "- **error** %s\n", markdown.Escape(problem))
	}
	if b.List == nil {
		return
	}
	if b.Problem != nil {
		out.WriteByte('\n')
	}
	out.WriteString(strings.Replace(worklist.Cautions, ":\n", ":\n\n", 1))
	if b.List.First != "" {
		fmt.Fprintf(out, "\n**%s**\n", markdown.Escape(b.List.First))
	}
	for i, s := range b.List.Sections {
		fmt.Fprintf(out, "\n## %d. %s\n\n", i+1, s.Title)
		if s.Note != "" {
			fmt.Fprintf(out, "%s\n\n", markdown.Escape(s.Note))
		}
		for _, item := range s.Items {
			fmt.Fprintf(out, "- [ ] %s\n", markdown.Escape(item.Do))
			commands(out, "Console", item.Steps)
			commands(out, "Run", item.Run)
			if len(item.Sheet) > 0 {
				fmt.Fprintf(out, "  - Sheet:\n\n    ```toml\n    %s\n    ```\n\n",
					strings.Join(item.Sheet, "\n    "))
			}
			if item.Expect != "" {
				fmt.Fprintf(out, "  - Expect: %s\n", markdown.Escape(item.Expect))
			}
			if item.Else != "" {
				fmt.Fprintf(out, "  - Otherwise: %s\n", markdown.Escape(item.Else))
			}
			if len(item.Note) > 0 {
				fmt.Fprintf(out, "  - Write down: %s\n", markdown.Escape(readings(item.Note)))
			}
		}
	}
}

func commands(out *bufio.Writer, label string, list []string) {
	if len(list) == 0 {
		return
	}
	spans := make([]string, len(list))
	for i, step := range list {
		spans[i] = markdown.Code(patch.Visible(step))
	}
	fmt.Fprintf(out, "  - %s: %s\n", label, strings.Join(spans, ", then "))
}
