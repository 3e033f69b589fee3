package report

import (
	"bytes"
	"fmt"
	"io"
	"slices"
	"strings"

	"preflash/cmd/internal/fleet"
	"preflash/patch"
)

// A review comment has to stay short enough to be accepted and read: forges
// take 65,536 characters or so (from memory).
const (
	maxComment = 59_000 // bytes, all together
	maxShown   = 50     // findings and unreadable printers, the worst ones
	maxDiff    = 30_000 // bytes of the diff as it is shown
)

// review is Markdown that stays short: what has no room any more is left out.
type review struct {
	bytes.Buffer
	shown, left int // findings and problems
}

// item adds what is wrong, where there is room, below a head that is not there
// yet.
func (c *review) item(n int, head *string, text string) {
	if c.shown >= maxShown || c.Len()+len(*head)+len(text) > maxComment-maxDiff {
		c.left += n
		return
	}
	c.shown++
	c.WriteString(*head + text)
	*head = ""
}

// Markdown prints a result as a comment for a review: the verdict, what cannot
// be read, then the findings of all printers in the order of danger, then the
// diff, folded in. Text from configurations is escaped so that it can neither
// format, link, mention nor hide anything. The whole is less than 60,000 bytes.
func Markdown(w io.Writer, r *fleet.Result, diff []byte) error {
	var c review
	fmt.Fprintf(&c, "**Preflash:** %s\n", markdown(verdict(r)))
	head := "\n### Cannot be read\n\n"
	for i := range r.Printers {
		if p := &r.Printers[i]; p.Problem != nil {
			for _, one := range p.Problem.Each() {
				c.item(1, &head, fmt.Sprintf("- **error** %s, %s: %s\n", markdown(p.Name), code(placeText(one.File, one.Line)), markdown(one.Message)))
			}
		}
	}
	head = "\n### No longer checked\n\n"
	for _, sheet := range r.Gone {
		c.item(1, &head, fmt.Sprintf("- **gone** %s\n", code(sheet)))
	}
	title := ""
	for _, f := range everyPrinters(r) {
		if t := dangerTitle(f.Finding); t != title {
			title, head = t, "\n### "+t+"\n\n"
		}
		c.item(f.Count(), &head, markdownFinding(f))
	}
	if c.left > 0 {
		fmt.Fprintf(&c, "\nNot listed here: %s. Run `preflash check` to see all.\n", plural(c.left, "finding"))
	}
	markdownDiff(&c.Buffer, diff)
	_, err := w.Write(c.Bytes())
	return err
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
	slices.SortStableFunc(list, func(a, b ofPrinter) int { return byDanger(a.Finding, b.Finding) })
	return list
}

// dangerTitle is the heading that a finding stands under.
func dangerTitle(f *fleet.Finding) string {
	switch {
	case f.Waived != "":
		return "Waived, not counted"
	case f.Known != "":
		return "Known, not counted"
	}
	return f.Danger.Text()
}

func markdownFinding(f ofPrinter) string {
	b := new(strings.Builder)
	word := f.Level.String()
	if f.Waived != "" {
		word = "waived " + word
	}
	if f.Known != "" {
		word = "known " + word
	}
	fmt.Fprintf(b, "- **%s** %s, %s", word, markdown(f.printer.Name), f.Rule)
	if place := placeText(f.Region.File, f.Region.Line); place != "" {
		fmt.Fprintf(b, " at %s", code(place))
	}
	fmt.Fprintf(b, ": %s", markdown(f.Message))
	if f.Aside != "" {
		fmt.Fprintf(b, " (%s)", markdown(f.Aside))
	}
	if len(f.Follows) > 0 {
		fmt.Fprintf(b, " Follows from it: %s.", markdown(rulesOf(f.Finding)))
	}
	if f.Change != "" {
		fmt.Fprintf(b, " **Change:** %s", markdown(f.Change))
	}
	if f.Waived != "" {
		fmt.Fprintf(b, " **Waived:** %s", markdown(f.Waived))
	}
	b.WriteByte('\n')
	return b.String()
}

// markdownDiff shows the diff in a fence longer than any run of its backticks,
// with hidden characters escaped: it is for reading.
func markdownDiff(b *bytes.Buffer, diff []byte) {
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
	fence := fenceFor(text.String(), 3)
	if text.Len()+2*len(fence) > maxDiff-200 {
		fmt.Fprintf(b, "\nThe diff is too long for a comment (%d lines). Run `preflash diff` to see it.\n", bytes.Count(diff, []byte("\n")))
		return
	}
	fmt.Fprintf(b, "\n<details>\n<summary>The diff to review, then apply by hand</summary>\n\n%sdiff\n%s%s\n\n</details>\n", fence, text.String(), fence)
}

// fenceFor gives more backticks than a text holds in a row, at least so many.
func fenceFor(text string, least int) string {
	run := 0
	for i := range len(text) {
		if run++; text[i] != '`' {
			run = 0
		}
		least = max(least, run+1)
	}
	return strings.Repeat("`", least)
}

// code gives text as a code span, between more backticks than it holds in a row.
func code(text string) string {
	text = patch.Harmless(patch.Visible(text))
	fence := fenceFor(text, 1)
	if len(fence) > 1 || strings.TrimSpace(text) == "" || strings.HasPrefix(text, " ") && strings.HasSuffix(text, " ") {
		text = " " + text + " " // one on each side is taken away again
	}
	return fence + text + fence
}

// markdown escapes text for one line of Markdown. Punctuation that formats gets a
// backslash (CommonMark 2.4), what HTML knows its entity. An empty comment
// keeps forges from reading a mention, a reference, a link or a picture name in
// what is left.
func markdown(text string) string {
	const nothing = "<!-- -->"
	var b strings.Builder
	runes := []rune(strings.Join(strings.Fields(patch.Visible(text)), " "))
	for i, r := range runes {
		switch {
		case r == '&':
			b.WriteString("&amp;")
		case r == '<':
			b.WriteString("&lt;")
		case r == '>':
			b.WriteString("&gt;")
		case strings.ContainsRune("\\`*_{}[]()!|~$#", r):
			b.WriteByte('\\')
			fallthrough
		default:
			b.WriteRune(r)
		}
		beforeWord := i+1 < len(runes) && runes[i+1] != ' '
		if beforeWord && (strings.ContainsRune("@#:", r) || r == '.' && i > 0 && (runes[i-1]|' ') == 'w') {
			b.WriteString(nothing)
		}
	}
	return b.String()
}
