package page

import (
	"cmp"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"
	"unicode/utf8"

	"github.com/sergi/go-diff/diffmatchpatch"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/plaintext"
	"preflash/cmd/internal/report"
	"preflash/parser"
	"preflash/patch"
	"preflash/rules"
)

// fileView is the diff of one file.
type fileView struct {
	Name  string
	Hunks [][]lineView
}

// lineView is one line of a diff: its numbers, its sign and its text, and the
// findings that ask for it.
type lineView struct {
	ID, Class, Old, New, Sign string
	Pieces                    []piece
	Back                      []link

	at int    // the old line that it takes out, or that it is put in before; else 0
	id string // what ID is once a finding leads here
}

// piece is a run of characters; a value that a changed line does not share with
// its counterpart is marked.
type piece struct {
	Text   string
	Marked bool
}

// changedLines finds the changed lines of a page, by file and old line.
type changedLines map[string]map[int]*lineView

func (c changedLines) add(name string, f *fileView, number int) {
	lines := make(map[int]*lineView)
	for i := range f.Hunks {
		for j := range f.Hunks[i] {
			if l := &f.Hunks[i][j]; l.at > 0 && lines[l.at] == nil {
				l.id = fmt.Sprintf("d%d-%d", number, l.at)
				lines[l.at] = l
			}
		}
	}
	c[name] = lines
}

// at is the line of the diff that changes a region; nil where there is none. An
// insertion at the end of a line is the next one.
func (c changedLines) at(in *rules.Input, r fleet.Region) *lineView {
	if in == nil {
		return nil
	}
	i := slices.IndexFunc(in.Printer.Files, func(f *parser.File) bool { return f.Name == r.File })
	if i < 0 {
		return nil
	}
	lines := c[in.Printer.Files[i].Real]
	if inserts := r.Line == r.EndLine && r.Column == r.EndColumn; inserts {
		return cmp.Or(lines[r.Line], lines[r.Line+1])
	}
	return lines[r.Line]
}

// diffViews gives each printer the diffs of its files. A file that several
// printers read stands with the first of them.
func diffViews(s *fleet.Survey, views []*printerView) changedLines {
	lines := make(changedLines)
	changed := make([]int, len(views))
	elsewhere := make([][]string, len(views))
	for _, f := range s.Plan.Files {
		first := -1
		for i := range s.Printers {
			switch p := &s.Printers[i]; {
			case p.Problem != nil || !s.Reads(i, f.Name):
			case first < 0:
				first = i
				file := fileViewOf(f)
				lines.add(f.Name, &file, len(lines)+1)
				views[i].Diff = append(views[i].Diff, file)
				gone, come := file.size()
				views[i].Changed += gone + come
				changed[i]++
			default:
				elsewhere[i] = append(elsewhere[i], shown(f.Name)+" stands with "+views[first].Name)
			}
		}
	}
	for _, left := range s.Plan.Left {
		for i := range s.Printers {
			if s.Printers[i].Sheet == left.Owner {
				views[i].Left = append(views[i].Left, shown(plaintext.Sentence(report.LeftText(left))))
			}
		}
	}
	for i, v := range views {
		switch {
		case s.Refused(s.Printers[i].Sheet) != nil:
			v.DiffLead = "There is none: the reason stands at the top of this page."
		case changed[i] == 0 && len(elsewhere[i]) == 0:
			v.DiffLead = "Nothing is to be changed in the files."
		case changed[i] > 0:
			v.DiffLead = "Tried in memory: with it applied, the findings that name a change are gone and " +
				"no new error comes up. What changes is underlined. preflash diff prints the same for git " +
				"apply -p1 and patch -p1."
		}
		if len(elsewhere[i]) > 0 {
			shared := strings.Join(elsewhere[i], "; ")
			v.DiffLead = strings.TrimSpace(v.DiffLead + " A shared file: " + shared + ".")
		}
	}
	return lines
}

// size counts the lines that go and those that come.
func (f *fileView) size() (gone, come int) {
	for _, h := range f.Hunks {
		for _, l := range h {
			switch l.Class {
			case "gone":
				gone++
			case "come":
				come++
			}
		}
	}
	return gone, come
}

func fileViewOf(c patch.FileChange) fileView {
	view := fileView{Name: patch.Visible(c.Name)}
	for _, h := range patch.Hunks(c) {
		view.Hunks = append(view.Hunks, hunkView(h))
	}
	return view
}

func hunkView(h patch.Hunk) []lineView {
	var lines []lineView
	old, new := h.OldLine, h.NewLine
	for i := 0; i < len(h.Lines); {
		gone := run(h.Lines[i:], '-')
		come := run(h.Lines[i+len(gone):], '+')
		if len(gone)+len(come) == 0 {
			pieces := plain(lineText(h.Lines[i].Text))
			lines = append(lines, lineView{Old: strconv.Itoa(old), New: strconv.Itoa(new), Pieces: pieces})
			old, new, i = old+1, new+1, i+1
			continue
		}
		oldTexts, newTexts := intraLine(gone, come)
		for _, pieces := range oldTexts {
			lines = append(lines, lineView{
				at: old, Class: "gone", Old: strconv.Itoa(old), Sign: "−", Pieces: pieces,
			})
			old++
		}
		at := 0
		if len(gone) == 0 {
			at = old
		}
		for _, pieces := range newTexts {
			lines = append(lines, lineView{
				at: at, Class: "come", New: strconv.Itoa(new), Sign: "+", Pieces: pieces,
			})
			new++
		}
		i += len(gone) + len(come)
	}
	return lines
}

// run returns the lines of one mark that a list starts with.
func run(lines []patch.Line, mark byte) []patch.Line {
	n := 0
	for n < len(lines) && lines[n].Mark == mark {
		n++
	}
	return lines[:n]
}

// longest is how many characters of a line are shown.
const longest = 500

// lineText is a line without its ending, as it can be shown. What only the
// ending tells is said.
func lineText(line []byte) string {
	text := strings.TrimSuffix(string(line), "\n")
	unfinished := len(text) == len(line)
	text = patch.Visible(strings.TrimSuffix(text, "\r"))
	if n := utf8.RuneCountInString(text); n > longest {
		runes := []rune(text)
		text = string(runes[:longest]) + " … " + plaintext.Plural(n-longest, "character") + " more"
	}
	if unfinished {
		text += " (no line break at the end of the file)"
	}
	return text
}

func plain(text string) []piece { return []piece{{Text: text}} }

// intraLine compares each line that goes with the one that comes in its place.
func intraLine(gone, come []patch.Line) (old, new [][]piece) {
	for i := range max(len(gone), len(come)) {
		var a, b string
		if i < len(gone) {
			a = lineText(gone[i].Text)
		}
		if i < len(come) {
			b = lineText(come[i].Text)
		}
		pa, pb := plain(a), plain(b)
		if i < len(gone) && i < len(come) {
			pa, pb = marks(a, b)
		}
		if i < len(gone) {
			old = append(old, pa)
		}
		if i < len(come) {
			new = append(new, pb)
		}
	}
	return old, new
}

// word is what is marked as a whole, such as a value with its sign.
var word = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile(`[^\s=:;,(){}\[\]"'#/]+|\s+|.`)
})

// marks tells what two lines share, word by word. Lines that share little are
// left unmarked, since marks all over help nobody.
func marks(a, b string) (old, new []piece) {
	var words []string
	index := make(map[string]rune)
	runes := func(text string) (list []rune) {
		for _, w := range word().FindAllString(text, -1) {
			if _, seen := index[w]; !seen {
				index[w] = rune(len(words))
				words = append(words, w)
			}
			list = append(list, index[w])
		}
		return list
	}
	dmp := diffmatchpatch.DiffMatchPatch{} // no time-out: the same input gives the same bytes
	diffs := dmp.DiffCleanupSemantic(dmp.DiffMainRunes(runes(a), runes(b), false))
	shared := 0
	for _, d := range diffs {
		var text strings.Builder
		for _, r := range d.Text {
			text.WriteString(words[r])
		}
		p := piece{text.String(), d.Type != diffmatchpatch.DiffEqual}
		if d.Type != diffmatchpatch.DiffInsert {
			old = append(old, p)
		}
		if d.Type != diffmatchpatch.DiffDelete {
			new = append(new, p)
		}
		if !p.Marked {
			shared += len(p.Text)
		}
	}
	if 3*shared < max(len(a), len(b)) {
		return plain(a), plain(b)
	}
	return old, new
}
