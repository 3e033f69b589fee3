// Package parser holds what every configuration style shares: files that keep
// their bytes, settings that know where they come from, and the printer that
// the rules judge. How a setting is spelled is the business of the styles in
// the folders below.
package parser

import (
	"bytes"
	"fmt"
	"path"
	"path/filepath"
	"sort"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"unicode"
	"unicode/utf8"
)

// File is one file as it was read. Data is never changed; every Span points
// into it.
type File struct {
	Path string // inside the tree, with slashes
	Name string // as shown to a person: relative to the working directory
	Real string // as Name, of the file that Path leads to through links
	ID   FileID // the zero one where it does not come from a disk
	Data []byte

	asked atomic.Int32
	once  sync.Once
	lines []int // offset of each line's first byte
}

// NamedAsConfiguration reports whether a file's name ends as those of
// configurations do. Lines of other files are never quoted: a sheet may name
// what is none of its business.
func NamedAsConfiguration(name string) bool {
	switch strings.ToLower(path.Ext(filepath.ToSlash(name))) {
	case ".h", ".hpp", ".hh", ".cfg", ".conf", ".ini", ".inc":
		return true
	}
	return false
}

// Cite gives the text of a line for a message, where the file is named as a
// configuration is.
func (f *File) Cite(text string) string {
	if !NamedAsConfiguration(f.Real) {
		return "(text not shown: by its name, the file is no configuration)"
	}
	return text
}

// Clip shortens text to so many bytes, between two characters.
func Clip(text string, most int) string {
	const dots = "…"
	if len(text) <= most {
		return text
	}
	end := most - len(dots)
	for n := 1; n < utf8.UTFMax && end > 0 && !utf8.RuneStart(text[end]); n++ {
		end--
	}
	return text[:end] + dots
}

// Quote shortens a piece of a file for a sentence.
func Quote(text string) string { return Clip(text, 60) }

// Hidden reports whether a character can act on a screen without being seen:
// control and format characters (Unicode Cc and Cf) and the two separators of
// lines and paragraphs.
func Hidden(r rune) bool {
	if r < 0x7f {
		return r < ' '
	}
	return r <= 0x9f || unicode.In(r, unicode.Cf, unicode.Zl, unicode.Zp)
}

// Decimal writes a number with as few decimals as tell it from others, and
// without an exponent.
func Decimal(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// Significant rounds a number to so many significant digits.
func Significant(x float64, digits int) float64 {
	rounded, _ := strconv.ParseFloat(strconv.FormatFloat(x, 'g', digits, 64), 64) // always a number
	return rounded
}

// NewFile wraps bytes that did not come from a Tree, as tests and generated
// text do.
func NewFile(name string, data []byte) *File {
	return &File{Path: name, Name: name, Real: name, Data: data}
}

// fewQuestions is how often a file counts line ends before it lists them all,
// which costs as much as several counts.
const fewQuestions = 8

// Position returns the line and the byte column of an offset, both from 1.
// An offset outside the file is moved to its nearest end.
func (f *File) Position(offset int) (line, column int) {
	offset = min(max(offset, 0), len(f.Data))
	if f.asked.Add(1) <= fewQuestions {
		before := f.Data[:offset]
		return 1 + bytes.Count(before, newline), offset - bytes.LastIndexByte(before, '\n')
	}
	f.once.Do(func() {
		f.lines = append(make([]int, 0, bytes.Count(f.Data, newline)+1), 0)
		for at := 0; ; {
			n := bytes.IndexByte(f.Data[at:], '\n')
			if n < 0 {
				return
			}
			at += n + 1
			f.lines = append(f.lines, at)
		}
	})
	line = sort.SearchInts(f.lines, offset+1)
	return line, offset - f.lines[line-1] + 1
}

var newline = []byte{'\n'}

// Span is a byte range of one file, End excluded. The zero Span is nowhere.
type Span struct {
	File       *File
	Start, End int
}

// IsZero reports whether the span points nowhere.
func (s Span) IsZero() bool { return s.File == nil }

// Text returns a copy of the bytes that the span covers.
func (s Span) Text() string {
	if s.File == nil {
		return ""
	}
	return string(s.File.Data[s.Start:s.End])
}

// Position returns the line and the byte column of the span's first byte,
// both from 1; 0, 0 for the zero Span.
func (s Span) Position() (line, column int) {
	if s.File == nil {
		return 0, 0
	}
	return s.File.Position(s.Start)
}

// String gives the span as file:line.
func (s Span) String() string {
	if s.File == nil {
		return "nowhere"
	}
	line, _ := s.Position()
	return fmt.Sprintf("%s:%d", s.File.Name, line)
}

// Error is a configuration or sheet that could not be read. Message says what
// is wrong and what to do. Line and Column are 0 where the file as a whole is
// meant.
type Error struct {
	File         string
	Line, Column int
	Message      string

	// Missing is the path inside the tree of an included file that does not
	// exist, where that is the error and the sheet may name the file absent.
	Missing string
}

func (e *Error) Error() string {
	switch {
	case e.File == "":
		return e.Message
	case e.Line == 0:
		return e.File + ": " + e.Message
	}
	return fmt.Sprintf("%s:%d: %s", e.File, e.Line, e.Message)
}

// Errorf makes an Error that points at the start of a span.
func Errorf(at Span, format string, args ...any) *Error {
	e := &Error{Message: fmt.Sprintf(format, args...)}
	if at.File != nil {
		e.File = at.File.Name
		e.Line, e.Column = at.Position()
	}
	return e
}
