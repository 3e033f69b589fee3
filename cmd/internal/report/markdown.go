package report

import (
	"bytes"
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"

	"preflash/cmd/internal/fleet"
	"preflash/patch"
	"preflash/rules"
)

// A review comment has to stay short enough to be accepted and read: forges
// take 65,536 characters or so (from memory).
const (
	maxShown = 50    // findings and unreadable printers, the worst ones
	maxDiff  = 30000 // bytes of the diff
)

// Markdown prints a result as a comment for a review: the verdict, then the
// printers, worst first, then the diff, folded in. Text from configurations is
// escaped so that it can neither format, link, mention nor hide anything.
func Markdown(w io.Writer, r *fleet.Result, diff []byte) error {
	var b bytes.Buffer
	fmt.Fprintf(&b, "**Preflash:** %s\n", verdict(r))
	shown, left := 0, 0
	for _, p := range worstPrinters(r) {
		if shown >= maxShown {
			left += len(p.Findings)
			continue
		}
		fmt.Fprintf(&b, "\n### %s\n\n%s\n\n", markdown(p.Name), code(p.Sheet))
		if p.Problem != nil {
			for _, one := range p.Problem.Each() {
				fmt.Fprintf(&b, "- **unread** %s: %s\n", code(placeText(one.File, one.Line)), markdown(one.Message))
			}
			shown++
		}
		for _, f := range worstFirst(p.Findings) {
			if shown >= maxShown {
				left++
				continue
			}
			shown++
			markdownFinding(&b, f)
		}
	}
	for _, sheet := range r.Gone {
		fmt.Fprintf(&b, "\n- **gone** %s\n", code(sheet))
	}
	if left > 0 {
		fmt.Fprintf(&b, "\nNot listed here: %s. Run `preflash check` to see all.\n", plural(left, "finding"))
	}
	markdownDiff(&b, diff)
	_, err := w.Write(b.Bytes())
	return err
}

func markdownFinding(b *bytes.Buffer, f *fleet.Finding) {
	word := f.Level.String()
	if f.Waived != "" {
		word = "waived " + word
	}
	fmt.Fprintf(b, "- **%s** %s", word, f.Rule)
	if place := placeText(f.Region.File, f.Region.Line); place != "" {
		fmt.Fprintf(b, " at %s", code(place))
	}
	fmt.Fprintf(b, ": %s", markdown(f.Message))
	if f.Change != "" {
		fmt.Fprintf(b, " **Change:** %s", markdown(f.Change))
	}
	if f.Waived != "" {
		fmt.Fprintf(b, " **Waived:** %s", markdown(f.Waived))
	}
	b.WriteByte('\n')
}

// markdownDiff shows the diff in a fence longer than any run of its backticks,
// with hidden characters escaped: it is for reading.
func markdownDiff(b *bytes.Buffer, diff []byte) {
	if len(diff) == 0 {
		return
	}
	if len(diff) > maxDiff {
		fmt.Fprintf(b, "\nThe diff is too long for a comment (%d lines). Run `preflash diff` to see it.\n", bytes.Count(diff, []byte("\n")))
		return
	}
	var text strings.Builder
	for line := range strings.Lines(string(diff)) {
		text.WriteString(patch.Visible(strings.TrimRight(line, "\r\n")) + "\n")
	}
	fence := "```"
	for strings.Contains(text.String(), fence) {
		fence += "`"
	}
	fmt.Fprintf(b, "\n<details>\n<summary>The diff to review, then apply by hand</summary>\n\n%sdiff\n%s%s\n\n</details>\n", fence, text.String(), fence)
}

// worstPrinters sorts the printers that have something to say: unreadable ones,
// then by their numbers of errors, warnings and notes.
func worstPrinters(r *fleet.Result) []*fleet.Printer {
	type ranked struct {
		*fleet.Printer
		unread int
		count  [rules.Error + 1]int
	}
	var list []ranked
	for i := range r.Printers {
		p := ranked{Printer: &r.Printers[i]}
		if p.Problem != nil {
			p.unread = 1
		}
		for _, f := range p.Findings {
			if f.Waived == "" {
				p.count[f.Level]++
			}
		}
		if p.unread > 0 || len(p.Findings) > 0 {
			list = append(list, p)
		}
	}
	slices.SortStableFunc(list, func(a, b ranked) int {
		return cmp.Or(
			cmp.Compare(b.unread, a.unread),
			cmp.Compare(b.count[rules.Error], a.count[rules.Error]),
			cmp.Compare(b.count[rules.Warning], a.count[rules.Warning]),
			cmp.Compare(b.count[rules.Note], a.count[rules.Note]),
		)
	})
	printers := make([]*fleet.Printer, len(list))
	for i, p := range list {
		printers[i] = p.Printer
	}
	return printers
}

// code gives text as a code span, between more backticks than it holds in a row.
func code(text string) string {
	text = patch.Visible(text)
	fence := "`"
	for strings.Contains(text, fence) {
		fence += "`"
	}
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
