package fleet

import (
	"bytes"
	"strings"
	"unicode/utf8"

	"preflash/parser"
)

// regionOf tells where a span is, without keeping its file.
func regionOf(at parser.Span) Region {
	if at.IsZero() {
		return Region{}
	}
	f := at.File
	r := Region{File: f.Name}
	r.Line, r.Column = f.Position(at.Start)
	r.EndLine, r.EndColumn = f.Position(at.End)
	r.CharColumn = charColumn(f, at.Start, r.Column)
	r.EndCharColumn = charColumn(f, at.End, r.EndColumn)
	text := f.Data[at.Start:at.End]
	if n := bytes.IndexByte(text, '\n'); n >= 0 {
		text = text[:n]
	}
	r.Text = strings.TrimRight(string(text), "\r")
	return r
}

// charColumn counts code points where column counts bytes.
func charColumn(f *parser.File, offset, column int) int {
	return 1 + utf8.RuneCount(f.Data[offset-(column-1):offset])
}
