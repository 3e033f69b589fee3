package sections

import (
	"bytes"
	"unicode/utf8"
)

// The firmware reads text as Python does: which characters are white space,
// where lines end and how upper case folds is Python's choice, and differs
// from Go's in places.

// isSpace reports whether Python's str.isspace holds for r.
func isSpace(r rune) bool {
	switch {
	case r < 0x80:
		return r == ' ' || r >= '\t' && r <= '\r' || r >= 28 && r <= 31
	case r >= 0x2000 && r <= 0x200a:
		return true
	}
	switch r {
	case 0x85, 0xa0, 0x1680, 0x2028, 0x2029, 0x202f, 0x205f, 0x3000:
		return true
	}
	return false
}

// leading counts the white space that b starts with, in bytes and in
// characters. A byte that is no UTF-8 is a character and no white space.
func leading(b []byte) (size, chars int) {
	for size < len(b) {
		r, n := rune(b[size]), 1
		if r > ' ' && r < utf8.RuneSelf {
			break // what most lines start with
		}
		if r >= utf8.RuneSelf {
			r, n = utf8.DecodeRune(b[size:])
		}
		if !isSpace(r) {
			break
		}
		size += n
		chars++
	}
	return size, chars
}

// trailing counts the bytes of white space that b ends with.
func trailing(b []byte) int {
	end := len(b)
	for end > 0 {
		r, n := rune(b[end-1]), 1
		if r > ' ' && r < utf8.RuneSelf {
			break
		}
		if r >= utf8.RuneSelf {
			r, n = utf8.DecodeLastRune(b[:end])
		}
		if !isSpace(r) {
			break
		}
		end -= n
	}
	return len(b) - end
}

// trim takes the white space off both ends.
func trim(b []byte) []byte {
	b = b[:len(b)-trailing(b)]
	n, _ := leading(b)
	return b[n:]
}

// lineAt finds the line that starts at offset at of data: its text ends at
// stop, the next line starts at next. A lone carriage return ends a line too,
// as in every file that Python opens as text.
func lineAt(data []byte, at int) (stop, next int) {
	stop = len(data)
	next = stop
	if n := bytes.IndexByte(data[at:], '\n'); n >= 0 {
		stop = at + n
		next = stop + 1
	}
	cr := bytes.IndexByte(data[at:stop], '\r')
	switch {
	case cr < 0:
		return stop, next
	case at+cr == stop-1 && next > stop: // CRLF
		return stop - 1, next
	}
	return at + cr, at + cr + 1
}

// uncomment cuts what follows a # anywhere in a line.
func uncomment(line []byte) []byte {
	if n := bytes.IndexByte(line, '#'); n >= 0 {
		return line[:n]
	}
	return line
}

// body is the part of one line that counts.
type body struct {
	text    []byte
	from    int  // offset of text in the line
	indent  int  // characters of white space before text
	comment bool // a ; cut something off: then an empty text is no empty line
}

// clean finds the part of a line that counts: without comment, without white
// space around.
func clean(line []byte) (b body) {
	line = uncomment(line)
	if n := semicolon(line); n >= 0 {
		line, b.comment = line[:n], true
	}
	b.from, b.indent = leading(line)
	b.text = line[b.from:]
	b.text = b.text[:len(b.text)-trailing(b.text)]
	return b
}

// semicolon finds the first ; that starts a comment: at the start of the line
// or after white space; −1 where there is none.
func semicolon(line []byte) int {
	for at := 0; ; at++ {
		n := bytes.IndexByte(line[at:], ';')
		if n < 0 {
			return -1
		}
		if at += n; at == 0 || trailing(line[:at]) > 0 {
			return at
		}
	}
}

// header gives the name in a section header; false where the text is none.
// The name reaches to the last bracket.
func header(text []byte) (name []byte, ok bool) {
	if len(text) == 0 || text[0] != '[' {
		return nil, false
	}
	end := bytes.LastIndexByte(text, ']')
	if end < 2 {
		return nil, false
	}
	return text[1:end], true
}
