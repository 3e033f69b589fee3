package defines

import (
	"fmt"
	"strconv"
	"strings"

	"preflash/parser"
)

// condition decides the #if or #elif at a line; sure says that the line is
// read for sure. What it could not tell it leaves under s.doubts.
func (s *source) condition(line int32, sure bool) parser.Tri {
	text := s.body(line)
	if t, ok := s.quick(text); ok {
		return t
	}
	s.tokens = tokenise(text, s.tokens[:0])
	e := s.expander(s.tokens)
	v, d := e.compute(wholeNumbers)
	e.close()
	switch {
	case v.kind != knownValue:
		s.doubt(line, d)
		switch {
		case d.over:
			s.note(line, parser.RemarkUnreadable, "this condition cannot be read: "+d.text+"; what stands under it is unknown; write it shorter")
		case v.kind == brokenValue && sure && len(e.unknown) == 0: // with an unknown part it may still be one
			if s.unitOf(line).firmware {
				s.noteOption(text)
				break
			}
			s.note(line, parser.RemarkBroken, fmt.Sprintf("the compiler refuses the condition %q: %s; correct it",
				s.unitOf(line).file.Cite(clip(strings.TrimSpace(s.lines[line].kind.String()+" "+text))), d.text))
		}
		return parser.Maybe
	case v.bits != 0:
		return parser.Yes
	}
	return parser.No
}

// noteOption notes the option in the files that makes a condition of the
// firmware's own no expression.
func (s *source) noteOption(condition string) {
	for _, t := range tokenise(condition, nil) {
		if t.kind != tokenWord {
			continue
		}
		line, sure := s.define(s.table.intern(t.text))
		if line < 0 || !sure || s.unitOf(line).firmware {
			continue
		}
		if _, known := s.number(s.body(line)); known == parser.No {
			s.note(line, parser.RemarkBroken, t.text+" is “"+clip(s.body(line))+"”, and the firmware counts with it; write one whole number")
			return
		}
	}
}

// doubt remembers why a condition cannot be told.
func (s *source) doubt(line int32, d doubt) { s.doubts[line] = s.since(d) }

// since completes a doubt with the condition that its macro depends on.
func (s *source) since(d doubt) doubt {
	d.cause = -1
	if d.name < 0 {
		return d
	}
	n := &s.table.all[d.name]
	s.each(n.state, func(one state) {
		if c, ok := s.causes[one]; ok && d.cause < 0 {
			d.cause = c
		}
	})
	if d.cause < 0 && n.state != none {
		d.text = " is no number"
	}
	return d
}

// compute expands the expander's text and computes it. With a value that is
// not known comes the doubt that it hangs on.
func (e *expander) compute(a arithmetic) (value, doubt) {
	text := e.constants(a)
	e.s.steps += len(text)
	v := broken(e.broken)
	if e.broken == "" {
		v = compute(text, a)
	}
	switch {
	case e.over || v.over:
		v.kind = unknownValue // what it would be, nobody knows
		return v, doubt{name: -1, text: v.why, over: true}
	case v.kind == unknownValue && v.doubt < len(e.unknown):
		return v, e.unknown[v.doubt]
	}
	return v, doubt{name: -1, text: v.why}
}

// constants expands a condition and replaces what is left of its names, so
// that only numbers, operators and numbered unknowns remain, one blank between
// them: many conditions of a configuration are then the same text.
func (e *expander) constants(a arithmetic) string {
	out := e.s.scratch[:0]
	e.s.scratch = nil // a test on a pin comes here again
	for {
		t := e.next()
		if t.kind == tokenEnd {
			break
		}
		if len(out) > 0 {
			out = append(out, ' ')
		}
		switch t.kind {
		case tokenWord:
			out = e.constant(out, t, a)
		case tokenNumber:
			n, ok := wholeNumber(t.text)
			if !ok && a == allNumbers {
				n, ok = fraction(t.text)
			}
			if !ok {
				e.fail(clip(t.text) + " is no whole number")
			}
			out = append(out, n...)
		case tokenChar:
			n, ok := charValue(t.text)
			switch {
			case ok:
				out = append(out, n...)
			case strings.HasSuffix(t.text, "''"):
				e.fail("no character stands between the quotes of " + t.text)
			default: // its number is the compiler's business
				u := e.doubtful(doubt{name: -1, text: clip(t.text) + " is no character whose number is known"})
				out = e.numbered(out, int(u.arg))
			}
		case tokenString:
			e.fail("a string stands in it")
		case tokenUnknown:
			out = e.numbered(out, int(t.arg))
			e.skipCall()
		default:
			if t.text == "@" { // our own sign for unknowns
				e.fail("a stray @ stands in it")
			}
			out = append(out, t.text...)
		}
	}
	e.s.scratch = out
	return string(out)
}

func (e *expander) numbered(out []byte, n int) []byte {
	return strconv.AppendInt(append(out, '@'), int64(n), 10)
}

// constant replaces a word that no macro replaces.
func (e *expander) constant(out []byte, t token, a arithmetic) []byte {
	switch t.text {
	case "defined":
		return e.isDefined(out)
	case "true":
		return append(out, '1')
	case "and":
		return append(out, "&&"...)
	case "or":
		return append(out, "||"...)
	case "not":
		return append(out, '!')
	case "not_eq":
		return append(out, "!="...)
	case "bitand":
		return append(out, '&')
	case "bitor":
		return append(out, '|')
	case "xor":
		return append(out, '^')
	case "compl":
		return append(out, '~')
	}
	if t.painted && e.circular(t.text) {
		return e.numbered(out, int(e.doubtful(doubt{name: -1, text: t.text + " goes back to itself"}).arg))
	}
	// Beyond conditions a name that is no macro is one of the language's.
	if t.text == "false" || !e.foreign(t.text) && a == wholeNumbers {
		return append(out, '0')
	}
	u := e.doubtful(doubt{name: e.s.table.intern(t.text)})
	e.skipCall()
	return e.numbered(out, int(u.arg))
}

// circular reports whether a name that is met in its own expansion is one that
// the firmware derives: then what it derives it from cannot be told.
func (e *expander) circular(word string) bool {
	return e.s.table.all[e.s.table.intern(word)].settled
}

// foreign reports whether a word that is no macro here may be one outside.
func (e *expander) foreign(word string) bool {
	id := e.s.table.intern(word)
	n := &e.s.table.all[id]
	return n.state == none && e.s.outside(n)
}

// skipCall passes over the arguments of something unknown.
func (e *expander) skipCall() { e.call(false, 0) }

// isDefined carries out `defined X` and `defined(X)`.
func (e *expander) isDefined(out []byte) []byte {
	e.prevent++
	t := e.next()
	paren := t.kind == tokenMark && t.text == "("
	if paren {
		t = e.next()
	}
	closed := true
	if paren && t.kind == tokenWord {
		end := e.next()
		closed = end.kind == tokenMark && end.text == ")"
	}
	e.prevent--
	if t.kind != tokenWord || !closed {
		e.fail("defined needs one name after it")
		return out
	}
	id := e.s.table.intern(t.text)
	switch e.s.defined(id) {
	case parser.Yes:
		return append(out, '1')
	case parser.No:
		return append(out, '0')
	}
	u := e.doubtful(doubt{name: id})
	return e.numbered(out, int(u.arg))
}

// fraction writes a floating-point constant without its suffix.
func fraction(text string) (string, bool) {
	text = strings.ReplaceAll(text, "'", "")
	if hex := len(text) > 1 && text[1]|0x20 == 'x'; !hex || strings.ContainsAny(text, "pP") {
		text = strings.TrimRight(text, "fFlL")
	}
	_, err := strconv.ParseFloat(text, 64)
	return text, err == nil
}

// wholeNumber writes an integer constant in decimal, with u behind it where it
// is unsigned.
func wholeNumber(text string) (string, bool) {
	plain := len(text) < 18 && (text[0] != '0' || len(text) == 1)
	for i := 0; i < len(text) && plain; i++ {
		plain = isDigit(text[i])
	}
	if plain {
		return text, true
	}
	digits := strings.ReplaceAll(text, "'", "")
	base := uint64(10)
	switch {
	case len(digits) > 2 && digits[0] == '0' && digits[1]|0x20 == 'x':
		base, digits = 16, digits[2:]
	case len(digits) > 2 && digits[0] == '0' && digits[1]|0x20 == 'b':
		base, digits = 2, digits[2:]
	case digits[0] == '0':
		base = 8
	}
	end, n, overflow := 0, uint64(0), false
	for ; end < len(digits); end++ {
		c := digits[end]
		d := uint64(99)
		switch {
		case isDigit(c):
			d = uint64(c - '0')
		case base == 16 && 'a' <= c|0x20 && c|0x20 <= 'f':
			d = uint64(c|0x20-'a') + 10
		}
		if d >= base {
			break
		}
		overflow = overflow || n > (1<<64-1-d)/base
		n = n*base + d
	}
	unsigned, ok := intSuffix(digits[end:])
	if !ok || end == 0 {
		return "", false
	}
	// What is too large for a signed integer is taken as an unsigned one.
	if unsigned || n >= 1<<63 && !overflow {
		return strconv.FormatUint(n, 10) + "u", true
	}
	if int64(n) < 0 { // cut off by overflow
		return strconv.FormatInt(int64(n), 10), true
	}
	return strconv.FormatUint(n, 10), true
}

func intSuffix(text string) (unsigned, ok bool) {
	switch text {
	case "":
		return false, true
	case "l", "L", "ll", "LL":
		return false, true
	}
	if n := len(text) - 1; text[0]|0x20 == 'u' {
		_, ok = intSuffix(text[1:])
		return true, ok && (n == 0 || text[1]|0x20 == 'l')
	} else if text[n]|0x20 == 'u' {
		_, ok = intSuffix(text[:n])
		return true, ok
	}
	return false, false
}

// charValue gives the number of a character constant as GNU cpp has it: char
// is signed, several characters make one number.
func charValue(text string) (string, bool) {
	open := strings.IndexByte(text, '\'')
	prefix, inside := text[:open], text[open+1:len(text)-1]
	value, count := uint32(0), 0
	last := uint64(0)
	for p := 0; p < len(inside); count++ {
		c := uint64(inside[p])
		p++
		if c >= 0x80 {
			return "", false
		}
		if c == '\\' && p < len(inside) {
			n, ok := 0, true
			if c, n, ok = escape(inside[p:]); !ok {
				return "", false
			}
			p += n
		}
		if prefix == "" || prefix == "u8" {
			c &= 0xff
		}
		last = c
		value = value<<8 | uint32(c&0xff)
	}
	switch {
	case count == 0 || prefix != "" && count > 1:
		return "", false
	case prefix == "L":
		return strconv.Itoa(int(int32(last))), true
	case prefix == "u":
		return strconv.FormatUint(last&0xffff, 10) + "u", true
	case prefix == "U":
		return strconv.FormatUint(last&0xffffffff, 10) + "u", true
	case count == 1:
		return strconv.Itoa(int(int8(last))), true
	}
	return strconv.Itoa(int(int32(value))), true
}

// escape reads what follows the backslash of an escape sequence.
func escape(text string) (c uint64, n int, ok bool) {
	switch text[0] {
	case 'a':
		return 7, 1, true
	case 'b':
		return 8, 1, true
	case 'f':
		return 12, 1, true
	case 'n':
		return 10, 1, true
	case 'r':
		return 13, 1, true
	case 't':
		return 9, 1, true
	case 'v':
		return 11, 1, true
	case 'e', 'E':
		return 27, 1, true
	case '\\', '\'', '"', '?':
		return uint64(text[0]), 1, true
	case 'x':
		for n = 1; n < len(text); n++ {
			d := strings.IndexByte("0123456789abcdef", text[n]|0x20)
			if isDigit(text[n]) {
				d = int(text[n] - '0')
			}
			if d < 0 {
				break
			}
			c = c<<4 | uint64(d)
		}
		return c, n, n > 1
	}
	for n < len(text) && n < 3 && '0' <= text[n] && text[n] <= '7' {
		c = c<<3 | uint64(text[n]-'0')
		n++
	}
	return c, n, n > 0
}
