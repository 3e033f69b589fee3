package report

import (
	"bytes"
	"fmt"
	"io"
	"slices"
	"strings"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/markdown"
	"preflash/cmd/internal/plaintext"
	"preflash/parser"
	"preflash/patch"
	"preflash/rules"
)

// A review comment has to stay short enough to be accepted and read: forges
// take 65,536 characters or so (from memory).
const (
	maxComment = 59_000 // bytes, all together
	maxDiff    = 30_000 // bytes of the diff as it is shown
	maxAction  = 200    // bytes of what a finding in brief says
)

// item is one line of a review: what cannot be read, what is gone, or a finding.
type item struct {
	title string // of its section
	level rules.Level
	count int
	full  string
	brief string // what to do
	text  string // the one that is shown
}

// Markdown prints a result as a comment for a review: the verdict, what cannot
// be read, then the findings of all printers in the order of danger, then the
// diff, folded in. Text from configurations is escaped so that it can neither
// format, link, mention nor hide anything. The whole is less than 60,000 bytes:
// where that is too little, notes say only what to do, then warnings, then errors;
// the diff goes next. Only then are findings left out, notes first.
func Markdown(w io.Writer, r *fleet.Result, diff []byte) error {
	var b bytes.Buffer
	fmt.Fprintf(&b, "**Preflash:** %s\n", markdown.Escape(Verdict(r)))
	items := itemsOf(r)
	left := shorten(items, maxComment-maxDiff-b.Len(), maxComment-b.Len()-reserve)
	title := ""
	for _, one := range items {
		if one.text != "" && one.title != title {
			title = one.title
			fmt.Fprintf(&b, "\n### %s\n\n", title)
		}
		b.WriteString(one.text)
	}
	if left > 0 {
		fmt.Fprintf(&b, "\nNot listed here: %s. Run `preflash check` to see all.\n",
			plaintext.Plural(left, "finding"))
	}
	markdownDiff(&b, diff, min(maxDiff, maxComment-b.Len()))
	_, err := w.Write(b.Bytes())
	return err
}

// reserve is how many bytes the headings take, and what is said of what is not
// there.
const reserve = 1000

// shorten chooses the text of each item, so that all have room together with a
// diff, else without one, and returns how many findings have none even so.
func shorten(items []item, beside, alone int) (left int) {
	size := 0
	for i := range items {
		items[i].text = items[i].full
		size += len(items[i].full)
	}
	for level := rules.Note; level <= rules.Error; level++ {
		for i := range slices.Backward(items) {
			if one := &items[i]; size > beside && one.level == level && len(one.brief) < len(one.text) {
				size += len(one.brief) - len(one.text)
				one.text = one.brief
			}
		}
	}
	for level := rules.Note; level <= rules.Error; level++ {
		for i := range slices.Backward(items) {
			if one := &items[i]; size > alone && one.level == level {
				size -= len(one.text)
				one.text = ""
				left += one.count
			}
		}
	}
	return left
}

func itemsOf(r *fleet.Result) []item {
	var items []item
	for i := range r.Printers {
		if p := &r.Printers[i]; p.Problem != nil {
			for _, one := range p.Problem.Each() {
				head := fmt.Sprintf("- **error** %s, ", markdown.Escape(p.Name))
				items = append(items, item{title: "Cannot be read", level: rules.Error, count: 1,
					full: head + markdown.Code(fleet.Region{File: one.File, Line: one.Line}.Place()) + ": " +
						markdown.Escape(one.Message) + "\n",
					brief: head + markdown.Escape(parser.Clip(action(one.Message), maxAction)) + "\n"})
			}
		}
	}
	for _, sheet := range r.Gone {
		text := fmt.Sprintf("- **gone** %s\n", markdown.Code(sheet))
		items = append(items, item{title: "No longer checked", level: rules.Error, count: 1,
			full: text, brief: text})
	}
	for _, f := range everyPrinters(r) {
		items = append(items, item{title: f.Heading(), level: f.Level, count: f.Count(),
			full: markdownFinding(f), brief: markdownBrief(f)})
	}
	return items
}

// ofPrinter is a finding and the printer that has it.
type ofPrinter struct {
	*fleet.Finding
	printer *fleet.Printer
}

// everyPrinters gives the findings of all printers in the order of danger.
func everyPrinters(r *fleet.Result) []ofPrinter {
	var list []ofPrinter
	for i := range r.Printers {
		p := &r.Printers[i]
		for j := range p.Findings {
			list = append(list, ofPrinter{&p.Findings[j], p})
		}
	}
	slices.SortStableFunc(list, func(a, b ofPrinter) int { return fleet.ByDanger(a.Finding, b.Finding) })
	return list
}

// markdownHead is how the line of a finding begins.
func markdownHead(f ofPrinter) string {
	word := f.Level.String()
	if f.Waived != "" {
		word = "waived " + word
	}
	if f.Known != "" {
		word = "known " + word
	}
	return fmt.Sprintf("- **%s** %s, %s", word, markdown.Escape(f.printer.Name), f.Rule)
}

// markdownBrief is a finding in brief: what to do.
func markdownBrief(f ofPrinter) string {
	return markdownHead(f) + ": " + markdown.Escape(parser.Clip(action(f.Message), maxAction)) + "\n"
}

func markdownFinding(f ofPrinter) string {
	b := new(strings.Builder)
	b.WriteString(markdownHead(f))
	if place := f.Region.Place(); place != "" {
		fmt.Fprintf(b, " at %s", markdown.Code(place))
	}
	fmt.Fprintf(b, ": %s", markdown.Escape(f.Message))
	if f.Aside != "" {
		fmt.Fprintf(b, " (%s)", markdown.Escape(f.Aside))
	}
	if len(f.Follows) > 0 {
		fmt.Fprintf(b, " Follows from it: %s.", markdown.Escape(rulesOf(f.Finding)))
	}
	if f.Change != "" {
		fmt.Fprintf(b, " **Change:** %s", markdown.Escape(f.Change))
	}
	if f.Waived != "" {
		fmt.Fprintf(b, " **Waived:** %s", markdown.Escape(f.Waived))
	}
	b.WriteByte('\n')
	return b.String()
}

// markdownDiff shows the diff in a fence longer than any run of its backticks,
// with hidden characters escaped: it is for reading. It takes that many bytes of
// room at most.
func markdownDiff(b *bytes.Buffer, diff []byte, room int) {
	if len(diff) == 0 {
		return
	}
	var text strings.Builder
	for line := range strings.Lines(string(diff)) {
		line = patch.Visible(strings.TrimRight(line, "\r\n"))
		if strings.HasPrefix(line, " ") || strings.HasPrefix(line, "#") { // not the marks of a diff
			line = patch.Harmless(line)
		}
		text.WriteString(line + "\n")
	}
	fence := markdown.Fence(text.String(), 3)
	if text.Len()+2*len(fence) > room-200 {
		fmt.Fprintf(b, "\nThe diff is too long for a comment (%d lines). Run `preflash diff` to see it.\n",
			bytes.Count(diff, []byte("\n")))
		return
	}
	fmt.Fprintf(b, "\n<details>\n<summary>The diff to review, then apply by hand</summary>\n\n%sdiff\n"+
		"%s%s\n\n</details>\n", fence, text.String(), fence)
}
