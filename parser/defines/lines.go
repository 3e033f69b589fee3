package defines

import (
	"bytes"
	"strings"
	"unicode"
	"unicode/utf8"
	"unsafe"
)

// textOf gives a file's bytes as a string. Offsets are those of the file. A
// carriage return that stands alone is made a line feed, as GNU cpp takes it.
// The bytes of a File never change, so that in all other files they can serve
// as the string: fresh memory is what reading a file mostly costs.
func textOf(data []byte) string {
	lone := loneReturn(data, 0)
	if lone < 0 {
		return unsafe.String(unsafe.SliceData(data), len(data))
	}
	data = bytes.Clone(data)
	for ; lone >= 0; lone = loneReturn(data, lone) {
		data[lone] = '\n'
	}
	return string(data)
}

// loneReturn finds the next carriage return without a line feed behind it.
func loneReturn(data []byte, p int) int {
	for {
		n := bytes.IndexByte(data[p:], '\r')
		if n < 0 {
			return -1
		}
		p += n + 1
		if p == len(data) || data[p] != '\n' {
			return p - 1
		}
	}
}

func isBlank(c byte) bool { return c == ' ' || c == '\t' || c == '\f' || c == '\v' }

// skipBlanks returns the first position from p on that holds no blank. A
// carriage return counts as one: it can only stand before a line feed.
func skipBlanks(text string, p int) int {
	for p < len(text) && (isBlank(text[p]) || text[p] == '\r') {
		p++
	}
	return p
}

// trimEnd returns the end of text[p:end] without blanks at its end.
func trimEnd(text string, p, end int) int {
	for end > p && (isBlank(text[end-1]) || text[end-1] == '\r' || text[end-1] == '\n') {
		end--
	}
	return end
}

// splice returns the position after the line splice that starts with the
// backslash at p, or 0 where there is none. Like GNU cpp it allows blanks
// between backslash and line end. A backslash at the very end of the file is
// no splice.
func splice(text string, p int) int {
	q := skipBlanks(text, p+1)
	if q < len(text) && text[q] == '\n' {
		return q + 1
	}
	return 0
}

// peek returns the character at p after any splices and where it stands; 0
// at the end of the text.
func peek(text string, p int) (byte, int) {
	for p < len(text) && text[p] == '\\' {
		next := splice(text, p)
		if next == 0 {
			break
		}
		p = next
	}
	if p >= len(text) {
		return 0, len(text)
	}
	return text[p], p
}

// physicalEnd returns the position of the line feed that ends the line of p,
// or the end of the text, and whether a splice joins the next line to it.
func physicalEnd(text string, p int) (end int, spliced bool) {
	n := strings.IndexByte(text[p:], '\n')
	if n < 0 {
		return len(text), false
	}
	end = p + n
	q := end
	for q > p && (isBlank(text[q-1]) || text[q-1] == '\r') {
		q--
	}
	return end, q > p && text[q-1] == '\\'
}

// logicalEnd returns the position after the logical line of p, line end
// included, where no comment of several lines can start in it, and whether
// it is spliced.
func logicalEnd(text string, p int) (next int, spliced bool) {
	for {
		end, more := physicalEnd(text, p)
		if !more {
			return min(end+1, len(text)), spliced
		}
		spliced, p = true, end+1
	}
}

// commentEnd returns the position after the block comment whose contents
// start at p, or -1 where nothing ends it.
func commentEnd(text string, p int) int {
	for at := p; ; {
		n := strings.IndexByte(text[at:], '/')
		if n < 0 {
			return -1
		}
		at += n
		q := at
		for q > p && text[q-1] == '\n' { // splices between star and slash
			r := q - 1
			for r > p && (isBlank(text[r-1]) || text[r-1] == '\r') {
				r--
			}
			if r == p || text[r-1] != '\\' {
				break
			}
			q = r - 1
		}
		at++
		if q > p && text[q-1] == '*' {
			return at
		}
	}
}

// wordEnd returns the end of the identifier that starts at p; p where none
// does. Beyond ASCII only valid UTF-8 letters count.
func wordEnd(text string, p int) int {
	start := p
	for p < len(text) {
		c := text[p]
		switch {
		case c >= utf8.RuneSelf:
			r, size := utf8.DecodeRuneInString(text[p:])
			if r == utf8.RuneError && size == 1 || !isNameRune(r, p > start) {
				return p
			}
			p += size
		case isNameStart(c) || p > start && isDigit(c):
			p++
		default:
			return p
		}
	}
	return p
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

// isNameStart: GNU cpp counts the dollar sign among the letters.
func isNameStart(c byte) bool {
	return 'a' <= c|0x20 && c|0x20 <= 'z' || c == '_' || c == '$'
}

func isNameRune(r rune, inside bool) bool {
	return unicode.IsLetter(r) || unicode.Is(unicode.Nl, r) ||
		inside && (unicode.IsDigit(r) || unicode.Is(unicode.Mn, r) || unicode.Is(unicode.Mc, r) || unicode.Is(unicode.Pc, r))
}

// walker goes over one logical line as the preprocessor's lexer does. With
// keep it writes down the line without splices and with each comment made one
// blank, and where each of its bytes stands.
type walker struct {
	text    string
	keep    bool
	clean   []byte
	offsets []int32

	open int // where an unterminated comment or raw string starts; -1 if none does

	// The word that the walk is in: numbers may hold quotes as separators,
	// and a word before a quote can make the string a raw one.
	word    int // where it starts; -1 outside words
	numeric bool
}

func (w *walker) emit(p int) {
	if w.keep {
		w.clean = append(w.clean, w.text[p])
		w.offsets = append(w.offsets, int32(p))
	}
}

// line walks from p to the end of the logical line and returns the position
// after its line feed.
func (w *walker) line(p int) int {
	w.clean, w.offsets, w.open, w.word = w.clean[:0], w.offsets[:0], -1, -1
	text := w.text
	for p < len(text) {
		c := text[p]
		switch {
		case c == '\n':
			return p + 1
		case c == '\\':
			if next := splice(text, p); next > 0 {
				p = next
				continue
			}
		case c == '/':
			next, q := peek(text, p+1)
			switch next {
			case '/':
				end, _ := logicalEnd(text, q)
				return end
			case '*':
				end := commentEnd(text, q+1)
				if end < 0 {
					w.open = p
					return len(text)
				}
				if w.keep {
					w.clean, w.offsets = append(w.clean, ' '), append(w.offsets, int32(p))
				}
				w.word = -1
				p = end
				continue
			}
		case c == '"' || c == '\'' && !w.separator(p):
			p = w.quoted(p, c)
			w.word = -1
			continue
		}
		w.track(c, p)
		w.emit(p)
		p++
	}
	return p
}

func (w *walker) track(c byte, p int) {
	switch {
	case isNameStart(c) || c >= utf8.RuneSelf:
		if w.word < 0 {
			w.word, w.numeric = p, false
		}
	case isDigit(c):
		if w.word < 0 {
			w.word, w.numeric = p, true
		}
	case w.word >= 0 && w.numeric && (c == '.' || c == '\''):
	case w.word >= 0 && w.numeric && (c == '+' || c == '-') && strings.IndexByte("eEpP", w.text[p-1]) >= 0:
	default:
		w.word = -1
	}
}

// separator reports whether the quote at p groups the digits of a number.
func (w *walker) separator(p int) bool {
	if w.word < 0 || !w.numeric {
		return false
	}
	c, _ := peek(w.text, p+1)
	return isDigit(c) || isNameStart(c)
}

// quoted passes over a string or character constant. One that nothing closes
// ends with the line.
func (w *walker) quoted(p int, quote byte) int {
	text := w.text
	if quote == '"' && w.word >= 0 {
		switch text[w.word:p] {
		case "R", "LR", "uR", "UR", "u8R":
			if end := w.raw(p); end > 0 {
				return end
			}
		}
	}
	w.emit(p)
	for p++; p < len(text); p++ {
		c, q := peek(text, p)
		if p = q; p == len(text) || c == '\n' {
			return p
		}
		w.emit(p)
		if c == quote {
			return p + 1
		}
		if c == '\\' {
			if c, q = peek(text, p+1); q == len(text) || c == '\n' {
				return q
			}
			p = q
			w.emit(p)
		}
	}
	return p
}

// raw passes over a raw string whose quote is at p, and returns 0 where it is
// none. In a directive (keep) it must end within the line.
func (w *walker) raw(p int) int {
	text := w.text
	paren := p + 1
	for paren < len(text) && paren <= p+17 && strings.IndexByte(" )\\\t\v\f\n\r\"(", text[paren]) < 0 {
		paren++
	}
	if paren >= len(text) || text[paren] != '(' {
		return 0
	}
	closing := ")" + text[p+1:paren] + `"`
	n := strings.Index(text[paren:], closing)
	if w.keep {
		if n < 0 || strings.IndexByte(text[paren:paren+n], '\n') >= 0 {
			return 0
		}
		for q := p; q < paren+n+len(closing); q++ {
			w.emit(q)
		}
	} else if n < 0 {
		w.open = p
		return len(text)
	}
	return paren + n + len(closing)
}

// unspliced returns a piece of a logical line without splices and with each
// comment made one blank.
func unspliced(text string) string {
	w := walker{text: text, keep: true}
	w.line(0)
	return string(w.clean)
}
