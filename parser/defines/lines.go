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

// physicalEnd returns the position of the line feed that ends the line of p,
// or the end of the text, and where the backslash stands that joins the next
// line to it; -1 for none. Like GNU cpp it allows blanks between backslash and
// line end. A backslash at the very end of the file joins nothing.
func physicalEnd(text string, p int) (end, splice int) {
	n := strings.IndexByte(text[p:], '\n')
	if n < 0 {
		return len(text), -1
	}
	end = p + n
	q := trimEnd(text, p, end) - 1
	if q >= p && text[q] == '\\' {
		return end, q
	}
	return end, -1
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
		inside && (unicode.IsDigit(r) || unicode.In(r, unicode.Mn, unicode.Mc, unicode.Pc))
}

// view is a logical line, or the rest of one, without its line end: a piece of
// the file as it is, or, where it is joined from several pieces, a copy.
type view struct {
	text    string
	base    int     // where it starts in the file
	offsets []int32 // where each byte stands; nil for a piece of the file
	end     int     // start of the next logical line
	open    int     // where a comment or raw string starts that nothing closes; -1 for none
}

// at gives the offset in the file of position i, and after that of the end of
// what stands before position i.
func (v *view) at(i int) int32 {
	switch {
	case v.offsets == nil:
		return int32(v.base + i)
	case i < len(v.offsets):
		return v.offsets[i]
	}
	return v.after(i)
}

func (v *view) after(i int) int32 {
	switch {
	case v.offsets == nil:
		return int32(v.base + i)
	case i == 0:
		return int32(v.base)
	}
	return v.offsets[i-1] + 1
}

// skip takes away what stands before position i.
func (v *view) skip(i int) {
	v.base, v.text = int(v.after(i)), v.text[i:]
	if v.offsets != nil {
		v.offsets = v.offsets[i:]
	}
}

// logical returns the logical line that starts at p.
func logical(text string, p int) view {
	var v view
	v.join(text, p)
	return v
}

// join makes v the logical line that starts at p, without its splices.
func (v *view) join(text string, p int) {
	end, splice := physicalEnd(text, p)
	v.text, v.base, v.offsets, v.end, v.open = text[p:end], p, nil, min(end+1, len(text)), -1
	if splice < 0 {
		return
	}
	var line []byte
	v.offsets = []int32{}
	for splice >= 0 {
		line, v.offsets = appendPiece(line, v.offsets, text, p, splice)
		p = end + 1
		end, splice = physicalEnd(text, p)
	}
	line, v.offsets = appendPiece(line, v.offsets, text, p, end)
	v.text, v.end = string(line), min(end+1, len(text))
}

func appendPiece(line []byte, offsets []int32, text string, p, end int) ([]byte, []int32) {
	for i := p; i < end; i++ {
		offsets = append(offsets, int32(i))
	}
	return append(line, text[p:end]...), offsets
}

// skipComment takes away what stands before the end of the block comment at
// position i, which may lie in a later line; false where nothing closes it.
func (v *view) skipComment(text string, i int) bool {
	if n := strings.Index(v.text[i+2:], "*/"); n >= 0 {
		v.skip(i + 2 + n + 2)
		return true
	}
	end := commentEnd(text, int(v.after(i+2)))
	if end >= 0 {
		v.join(text, end)
	}
	return end >= 0
}

// lex makes each comment of a logical line one blank; the line goes on where a
// comment ends. Only outside directives a raw string may do the same.
func (v *view) lex(text string, directive bool) {
	i, base := v.firstComment(directive), v.base
	var line []byte
	var offsets []int32
	for i < len(v.text) {
		switch rest := v.text[i:]; {
		case strings.HasPrefix(rest, "//"):
			v.text = v.text[:i]
		case strings.HasPrefix(rest, "/*"):
			for n := range i + 1 {
				offsets = append(offsets, v.at(n))
			}
			line = append(append(line, v.text[:i]...), ' ')
			start := int(v.at(i))
			if !v.skipComment(text, i) {
				v.text, v.end, v.open = "", len(text), start
			}
			i = 0
		case isBlank(rest[0]):
			i++
		default:
			kind, next := nextToken(v.text, i)
			if kind == tokenMark && next == len(v.text) && !directive {
				quote := strings.IndexByte(rest, '"')
				if closing := rawClosing(rest, quote); closing != "" {
					start := int(v.at(i + quote))
					n := strings.Index(text[start:], closing)
					if n < 0 {
						v.end, v.open = len(text), start
						return
					}
					v.join(text, start+n+len(closing))
					next = 0
				}
			}
			i = next
		}
	}
	if line == nil {
		return
	}
	for n := range len(v.text) { // bytes, not letters
		offsets = append(offsets, v.at(n))
	}
	v.text, v.base, v.offsets = string(append(line, v.text...)), base, offsets
}

// firstComment returns a position before which no comment starts, and no
// string that could hold what looks like one.
func (v *view) firstComment(directive bool) int {
	slash := strings.IndexByte(v.text, '/')
	if slash < 0 {
		slash = len(v.text)
	}
	before := v.text[:slash]
	if strings.IndexByte(before, '"') >= 0 || strings.IndexByte(before, '\'') >= 0 {
		return 0
	}
	if directive && slash < len(v.text) && strings.HasPrefix(strings.TrimLeft(before, " \t"), "include") {
		open, end := strings.IndexByte(before, '<'), strings.IndexByte(v.text, '>')
		if 0 <= open && open < end { // slashes in a header's name
			return end
		}
	}
	return slash
}

// unspliced returns a piece of a logical line without splices and with each
// comment made one blank.
func unspliced(text string) string {
	v := logical(text, 0)
	v.lex(text, true)
	return v.text
}
