package report

import (
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/sergi/go-diff/diffmatchpatch"

	"preflash/cmd/internal/fleet"
	"preflash/patch"
)

// fileView is the diff of one file.
type fileView struct {
	Name  string
	Hunks [][]lineView
}

// lineView is one line of a diff: its numbers, its sign and its text.
type lineView struct {
	Class, Old, New, Sign string
	Pieces                []piece
}

// piece is a run of characters; what a changed line does not share with its
// counterpart is marked.
type piece struct {
	Text   string
	Marked bool
}

// diffViews gives each printer the diffs of its files. A file that several
// printers read stands with the first of them.
func diffViews(s *fleet.Survey, views []*printerView) {
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
				views[i].Diff = append(views[i].Diff, file)
				views[i].Changed += file.changed()
				changed[i]++
			default:
				elsewhere[i] = append(elsewhere[i], shown(f.Name)+" stands with "+views[first].Name)
			}
		}
	}
	for _, left := range s.Plan.Left {
		for i := range s.Printers {
			if s.Printers[i].Sheet == left.Owner {
				views[i].Left = append(views[i].Left, shown(sentence(LeftText(left))))
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
			v.DiffLead = "Proved: with it applied, the findings that name a change are gone and no new error comes up. What differs inside a line is underlined. preflash diff prints the same for git apply -p1 and patch -p1."
		}
		if len(elsewhere[i]) > 0 {
			v.DiffLead = strings.TrimSpace(v.DiffLead + " A shared file: " + strings.Join(elsewhere[i], "; ") + ".")
		}
	}
}

// changed counts the lines that come or go.
func (f *fileView) changed() int {
	n := 0
	for _, h := range f.Hunks {
		for _, l := range h {
			if l.Class != "" {
				n++
			}
		}
	}
	return n
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
			l := lineView{Old: strconv.Itoa(old), New: strconv.Itoa(new), Pieces: plain(lineText(h.Lines[i].Text))}
			lines = append(lines, l)
			old, new, i = old+1, new+1, i+1
			continue
		}
		oldTexts, newTexts := intraLine(gone, come)
		for _, pieces := range oldTexts {
			lines = append(lines, lineView{Class: "gone", Old: strconv.Itoa(old), Sign: "−", Pieces: pieces})
			old++
		}
		for _, pieces := range newTexts {
			lines = append(lines, lineView{Class: "come", New: strconv.Itoa(new), Sign: "+", Pieces: pieces})
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
		text = string(runes[:longest]) + " … " + plural(n-longest, "character") + " more"
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

// marks tells what two lines share. Lines that share little are left unmarked,
// since marks all over help nobody.
func marks(a, b string) (old, new []piece) {
	dmp := diffmatchpatch.DiffMatchPatch{DiffEditCost: 4} // no time-out: the same input gives the same bytes
	diffs := dmp.DiffCleanupSemanticLossless(dmp.DiffCleanupSemantic(dmp.DiffMainRunes([]rune(a), []rune(b), false)))
	shared := 0
	for _, d := range diffs {
		switch d.Type {
		case diffmatchpatch.DiffEqual:
			shared += len(d.Text)
			old, new = append(old, piece{Text: d.Text}), append(new, piece{Text: d.Text})
		case diffmatchpatch.DiffDelete:
			old = append(old, piece{d.Text, true})
		default:
			new = append(new, piece{d.Text, true})
		}
	}
	if 3*shared < max(len(a), len(b)) {
		return plain(a), plain(b)
	}
	return old, new
}
