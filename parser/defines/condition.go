package defines

import (
	"fmt"
	"strconv"
	"strings"

	"preflash/parser"
)

// condition decides the #if or #elif at a line; sure says that the line is
// read for sure. What it could not tell it leaves under s.doubts. The text is
// computed as it stands where that is the same: where each of its names brings
// one number. Else its macros are expanded.
func (s *source) condition(line int32, sure bool) parser.Tri {
	text := s.body(line)
	c := evaluation{s: s}
	v, d, ok := c.asItStands(text)
	if !ok {
		s.tokens = tokenise(text, s.tokens[:0])
		e := s.expander(s.tokens)
		v, d = e.compute(wholeNumbers)
		e.close()
		c.unknown = e.unknown
	}
	switch {
	case v.kind != knownValue:
		s.doubt(line, d)
		switch {
		case d.over:
			s.note(line, parser.RemarkUnreadable, "this condition cannot be read: "+d.text+
				"; what stands under it is unknown; write it shorter")
		// With an unknown part it may still be one.
		case v.kind == brokenValue && sure && len(c.unknown) == 0:
			if s.unitOf(line).firmware {
				s.noteOption(text)
				break
			}
			quoted := parser.Quote(strings.TrimSpace(s.lines[line].kind.String() + " " + text))
			s.note(line, parser.RemarkBroken,
				fmt.Sprintf("the compiler refuses the condition %q: %s; correct it",
					s.unitOf(line).file.Cite(quoted), d.text))
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
			s.note(line, parser.RemarkBroken, t.text+" is “"+parser.Quote(s.body(line))+
				"”, and the firmware counts with it; write one whole number")
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

// compute expands the expander's text and computes it. With a value that is not
// known comes the doubt that it hangs on.
func (e *expander) compute(a arithmetic) (value, doubt) {
	text := e.constants(a)
	e.s.steps += len(text)
	v := broken(e.broken)
	if e.broken == "" {
		v = compute(text)
	}
	if e.over || v.over {
		v.kind, v.over, v.doubt = unknownValue, true, len(e.unknown) // what it would be, nobody knows
	}
	return v.hangsOn(e.unknown)
}

// constants expands a text and replaces what is left of its names, so that only
// numbers, operators and numbered unknowns (@0, @1 …) remain, one blank between
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
		out = append(out, e.constant(t, a)...)
	}
	e.s.scratch = out
	return string(out)
}

// constant gives what stands for a token of expanded text.
func (e *expander) constant(t token, a arithmetic) string {
	switch t.kind {
	case tokenWord:
		return e.word(t, a)
	case tokenNumber:
		if v, ok := numeral(t.text); !ok || v.floating && a == wholeNumbers {
			e.fail(parser.Quote(t.text) + " is no whole number")
		}
	case tokenChar:
		if strings.HasSuffix(t.text, "''") {
			e.fail("no character stands between the quotes of " + t.text)
		} else if _, ok := numeral(t.text); !ok { // its number is the compiler's business
			text := parser.Quote(t.text) + " is no character whose number is known"
			return numbered(e.doubtful(doubt{name: -1, text: text}))
		}
	case tokenString:
		e.fail("a string stands in it")
	case tokenUnknown:
		e.skipCall()
		return numbered(t)
	default: // @ is our own sign for unknowns
		if n := strings.IndexAny(t.text, `@"'`); n >= 0 {
			e.fail("a stray " + t.text[n:n+1] + " stands in it")
		}
	}
	return t.text
}

func numbered(t token) string { return "@" + strconv.Itoa(int(t.arg)) }

// word gives what stands for a word that no macro replaces.
func (e *expander) word(t token, a arithmetic) string {
	switch {
	case operator(t.text) != "":
		return t.text
	case t.text == "defined":
		return e.isDefined()
	case t.text == "true":
		return "1"
	case t.painted && e.circular(t.text):
		return numbered(e.doubtful(doubt{name: -1, text: t.text + " goes back to itself"}))
	// Beyond conditions a name that is no macro is one of the language's.
	case t.text == "false" || !e.foreign(t.text) && a == wholeNumbers:
		return "0"
	}
	u := e.doubtful(doubt{name: e.s.table.intern(t.text)})
	e.skipCall()
	return numbered(u)
}

// circular reports whether a name that is met in its own expansion is one that
// the firmware derives: then what it derives it from cannot be told.
func (e *expander) circular(word string) bool {
	return e.s.table.all[e.s.table.intern(word)].neverOutside
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
func (e *expander) isDefined() string {
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
		return ""
	}
	id := e.s.table.intern(t.text)
	switch e.s.defined(id) {
	case parser.Yes:
		return "1"
	case parser.No:
		return "0"
	}
	return numbered(e.doubtful(doubt{name: id}))
}

// signed gives the number that a text is, with one sign before it or none.
func signed(text string) (value, bool) {
	digits := text
	if text != "" && (text[0] == '-' || text[0] == '+') {
		digits = text[skipBlanks(text, 1):]
	}
	if digits == "" || !isDigit(digits[0]) && digits[0] != '.' || numberEnd(digits, 0) != len(digits) {
		return value{}, false
	}
	v, ok := numeral(digits)
	if text[0] == '-' {
		v.bits, v.float = -v.bits, -v.float
	}
	return v, ok
}

// numeral gives the number of a constant: a character, a whole number, or a
// floating-point number.
func numeral(text string) (value, bool) {
	if text[len(text)-1] == '\'' {
		return charValue(text)
	}
	if v, ok := wholeNumber(text); ok {
		return v, true
	}
	digits := strings.ReplaceAll(text, "'", "")
	if hex := len(text) > 1 && text[1]|0x20 == 'x'; !hex || strings.ContainsAny(text, "pP") {
		digits = strings.TrimRight(digits, "fFlL")
	}
	f, err := strconv.ParseFloat(digits, 64)
	return value{floating: true, float: f}, err == nil
}

// wholeNumber gives the number of an integer constant.
func wholeNumber(text string) (value, bool) {
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
	// What is too large for a signed integer is taken as an unsigned one.
	return value{bits: n, unsigned: unsigned || n >= 1<<63 && !overflow}, ok && end > 0
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
func charValue(text string) (value, bool) {
	open := strings.IndexByte(text, '\'')
	prefix, inside := text[:open], text[open+1:len(text)-1]
	number, count := uint32(0), 0
	last := uint64(0)
	for p := 0; p < len(inside); count++ {
		c := uint64(inside[p])
		p++
		if c >= 0x80 {
			return value{}, false
		}
		if c == '\\' && p < len(inside) {
			n, ok := 0, true
			if c, n, ok = escape(inside[p:]); !ok {
				return value{}, false
			}
			p += n
		}
		if prefix == "" || prefix == "u8" {
			c &= 0xff
		}
		last = c
		number = number<<8 | uint32(c&0xff)
	}
	switch {
	case count == 0 || prefix != "" && count > 1:
		return value{}, false
	case prefix == "L":
		return integer(int64(int32(last))), true
	case prefix == "u":
		return value{bits: last & 0xffff, unsigned: true}, true
	case prefix == "U":
		return value{bits: last & 0xffffffff, unsigned: true}, true
	case count == 1:
		return integer(int64(int8(last))), true
	}
	return integer(int64(int32(number))), true
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
