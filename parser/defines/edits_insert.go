package defines

import (
	"bytes"
	"fmt"

	"preflash/parser"
)

// insert adds a define: after the #undef that ended the option, else after
// the nearest relative that is in force. Never into a branch that is not read.
func (p *plan) insert(name, value string, m macro, near []string) error {
	text := "#define " + name
	if value != "" {
		text += " " + value
	}
	if !m.undef.IsZero() {
		p.insertLine(m.undef, text)
		return nil
	}
	for _, relative := range near {
		if relative == name {
			continue
		}
		switch r := p.s.macro(relative); {
		case r.state == parser.Yes:
			p.insertLine(r.winner.line, text)
			return nil
		case r.removed && len(r.others) > 0: // it stands there for another printer
			p.insertLine(r.others[len(r.others)-1].line, text)
			return nil
		}
	}
	return fmt.Errorf("no line of the files shows where %s belongs; add “%s” by hand", name, text)
}

// insertLine adds a line after the one in which a span ends, with its indent
// and the file's line ending.
func (p *plan) insertLine(after parser.Span, text string) {
	data := after.File.Data
	end := after.End
	if end == after.Start || data[end-1] != '\n' {
		if n := bytes.IndexByte(data[end:], '\n'); n >= 0 {
			end += n + 1
		} else {
			end = len(data)
		}
	}
	start := 1 + bytes.LastIndexByte(data[:after.Start], '\n')
	indent := start
	for indent < len(data) && (data[indent] == ' ' || data[indent] == '\t') {
		indent++
	}
	line, eol := string(data[start:indent])+text, lineEnding(data, start)
	if end > 0 && data[end-1] == '\n' {
		line += eol
	} else {
		line = eol + line // the file has no last line ending, and keeps none
	}
	at := parser.Span{File: after.File, Start: end, End: end}
	p.edits = append(p.edits, parser.Edit{At: at, New: line, For: p.key})
}

// lineEnding is the line ending of the line at start; of the line before it
// where it is the last one and has none.
func lineEnding(data []byte, start int) string {
	n := bytes.IndexByte(data[start:], '\n')
	if n < 0 {
		n = -1 // the end of the line before
	}
	if at := start + n; at > 0 && data[at-1] == '\r' {
		return "\r\n"
	}
	return "\n"
}
