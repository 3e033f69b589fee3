// Package starter writes the sheet that a person starts from: what a
// configuration tells about the hotend on the printer, and a blank for each
// thing that must be measured or read from a label.
package starter

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"preflash/cmd/internal/plaintext"
	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/patch"
)

// Facts are what is known before anybody has measured anything.
type Facts struct {
	Name    string   // of the printer
	Place   string   // the file that the sheet is to be, as a person would write it
	Config  []string // in reading order, relative to the sheet
	Guess   bool     // Config was found, not named
	Hotends int      // how many there are; 0 where that cannot be told
	Absent  []string // included files that are missing, relative to the sheet
	Printer *parser.Printer
}

// Sheet is a sheet to be filled in.
type Sheet struct {
	top    []string // comment
	groups []group
}

// group is a table of the sheet.
type group struct {
	header  string   // such as new.sensor; empty for the top
	notes   []string // comment above it
	entries []*Entry
}

// Entry is one key of the sheet.
type Entry struct {
	Key     string
	Path    string // such as new.heater.rated_v
	Value   string // TOML; of a blank, what stands for it
	Blank   bool   // to be filled in
	Example string // of a blank, TOML
	Leave   bool   // the blank may stay
	PTC     bool   // asked for once the heater is said to be a PTC, commented out before
	Note    string // how to find the figure, or what it is

	off bool // commented out
}

// word says of a blank what check says of it.
func (e *Entry) word() string {
	if e.Leave {
		return sheet.MayStay
	}
	return sheet.Blocks
}

// lineWidth is how long a line of comment gets, noteColumn where the comment
// behind a key begins.
const (
	lineWidth  = 80
	noteColumn = 30
)

// Text returns the sheet as it is to be saved.
func (s *Sheet) Text() string {
	w := &writer{}
	for _, text := range s.top {
		w.comment(text)
	}
	for i := range s.groups {
		g := &s.groups[i]
		w.gap()
		if g.header != "" {
			for _, text := range g.notes {
				w.comment(text)
			}
			w.add(off(g.off()) + "[" + g.header + "]")
		}
		for i, e := range g.entries {
			w.entry(e, i > 0)
		}
	}
	return w.b.String()
}

// off comments a line out. No space follows: that tells it from a comment.
func off(yes bool) string {
	if yes {
		return "#"
	}
	return ""
}

// off reports whether all of a table is commented out.
func (g *group) off() bool {
	for _, e := range g.entries {
		if !e.off {
			return false
		}
	}
	return len(g.entries) > 0
}

type writer struct {
	b    strings.Builder
	line int
}

func (w *writer) add(text string) {
	w.b.WriteString(text + "\n")
	w.line++
}

// gap sets what follows apart.
func (w *writer) gap() {
	if w.line > 0 {
		w.add("")
	}
}

// comment writes text as lines of comment; those of a list item hang.
func (w *writer) comment(text string) {
	head, indent := "# ", "# "
	switch {
	case strings.HasPrefix(text, "- "):
		indent = "#   "
	case strings.HasPrefix(text, "    "):
		head = "#    "
	}
	for _, line := range plaintext.Wrap(patch.Visible(text), lineWidth-max(len(head), len(indent))) {
		w.add(strings.TrimRight(head+line, " "))
		head = indent
	}
}

// entry writes a key. What must be said about it at length stands above it, and
// that is set apart from a key before.
func (w *writer) entry(e *Entry, after bool) {
	text := off(e.off) + e.Key + " = " + e.Value
	above, beside := "", e.Note
	switch {
	case e.Blank:
		above, beside = e.Note, "BLANK, "+e.word()+": such as "+e.Example
	case utf8.RuneCountInString(text) >= noteColumn,
		noteColumn+2+utf8.RuneCountInString(beside) > lineWidth:
		above, beside = sentence(e.Note), ""
	}
	if above != "" {
		if after {
			w.gap()
		}
		w.comment(above)
	}
	if beside != "" {
		text = fmt.Sprintf("%-*s # %s", noteColumn-1, text, patch.Visible(beside))
	}
	w.add(text)
}

// sentence makes a note stand for itself.
func sentence(note string) string {
	if note == "" {
		return note
	}
	first, size := utf8.DecodeRuneInString(note)
	return string(unicode.ToUpper(first)) + strings.TrimSuffix(note[size:], ".") + "."
}

func quoteAll(list []string) string {
	quoted := make([]string, len(list))
	for i, text := range list {
		quoted[i] = sheet.Quote(text)
	}
	return "[" + strings.Join(quoted, ", ") + "]"
}
