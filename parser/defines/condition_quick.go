package defines

import (
	"strings"

	"preflash/parser"
)

// Most conditions are plain: tests of options and comparisons of two numbers,
// chained by && or by ||. They are decided here without tokens and grammar;
// anything else, and anything unknown, is left to the grammar. Both must
// agree: TestQuickAgrees compares them.

// quick decides a plain condition; false where it is not plain.
func (s *source) quick(text string) (parser.Tri, bool) {
	r := quickReader{s: s, text: text}
	v, ok := r.chain(maxQuickDepth)
	if !ok || r.at < len(text) {
		return parser.No, false
	}
	if v {
		return parser.Yes, true
	}
	return parser.No, true
}

const maxQuickDepth = 8 // of brackets

type quickReader struct {
	s    *source
	text string
	at   int
}

// chain reads terms between && or between ||, up to a closing bracket or the
// end.
func (r *quickReader) chain(depth int) (result, ok bool) {
	op := byte(0)
	for {
		v, ok := r.term(depth)
		if !ok {
			return false, false
		}
		switch op {
		case 0:
			result = v
		case '&':
			result = result && v
		case '|':
			result = result || v
		}
		r.blanks()
		if r.at == len(r.text) || r.text[r.at] == ')' {
			return result, true
		}
		c := r.text[r.at] // & or |: a term ends before nothing else
		if op != 0 && op != c {
			return false, false
		}
		op = c
		r.at += 2
	}
}

func (r *quickReader) blanks() {
	for r.at < len(r.text) && r.text[r.at] == ' ' {
		r.at++
	}
}

func (r *quickReader) skip(c byte) bool {
	r.blanks()
	if r.at < len(r.text) && r.text[r.at] == c {
		r.at++
		return true
	}
	return false
}

// ends reports whether a term is complete here.
func (r *quickReader) ends() bool {
	r.blanks()
	rest := r.text[r.at:]
	return rest == "" || rest[0] == ')' || len(rest) > 1 && (rest[0] == '&' || rest[0] == '|') && rest[0] == rest[1]
}

// word reads a name of plain ASCII.
func (r *quickReader) word() string {
	r.blanks()
	start := r.at
	for r.at < len(r.text) && (isNameStart(r.text[r.at]) || r.at > start && isDigit(r.text[r.at])) {
		r.at++
	}
	return r.text[start:r.at]
}

// term reads a test, a number, a comparison of two numbers or a chain in
// brackets, with any number of ! before it.
func (r *quickReader) term(depth int) (v, ok bool) {
	not := false
	for r.skip('!') {
		not = !not
	}
	switch {
	case r.skip('('):
		if depth == 0 {
			return false, false
		}
		v, ok = r.chain(depth - 1)
		ok = ok && r.skip(')')
	case r.at < len(r.text) && isDigit(r.text[r.at]):
		x, known := r.literal()
		v, ok = r.comparison(x, known, not)
	default:
		switch word := r.word(); word {
		case "":
			return false, false
		case "defined":
			v, ok = r.isDefined()
		default:
			id := r.s.table.find(word)
			if id < 0 {
				return false, false
			}
			n := &r.s.table.all[id]
			if n.test != testNone {
				v, ok = r.test(n)
			} else {
				x, known := r.s.quickNumber(n)
				v, ok = r.comparison(x, known, not)
			}
		}
	}
	return v != not, ok && r.ends()
}

// comparison reads what follows a number: nothing, or an operator and another
// number. A ! before the number is its alone.
func (r *quickReader) comparison(x int64, ok, alone bool) (bool, bool) {
	if !ok || alone {
		return x != 0, ok
	}
	r.blanks()
	op := r.text[r.at:]
	switch {
	case len(op) > 1 && op[1] == '=' && strings.IndexByte("=!<>", op[0]) >= 0:
		op = op[:2]
	case len(op) > 1 && (op[0] == '<' || op[0] == '>') && op[1] != op[0]:
		op = op[:1]
	default:
		return x != 0, true
	}
	r.at += len(op)
	r.blanks()
	var y int64
	if r.at < len(r.text) && isDigit(r.text[r.at]) {
		y, ok = r.literal()
	} else if id := r.s.table.find(r.word()); id >= 0 {
		y, ok = r.s.quickNumber(&r.s.table.all[id])
	} else {
		return false, false
	}
	switch op {
	case "==":
		return x == y, ok
	case "!=":
		return x != y, ok
	case "<=":
		return x <= y, ok
	case ">=":
		return x >= y, ok
	case "<":
		return x < y, ok
	}
	return x > y, ok
}

func (r *quickReader) isDefined() (v, ok bool) {
	paren := r.skip('(')
	id := r.s.table.find(r.word())
	if id < 0 || paren && !r.skip(')') {
		return false, false
	}
	t := r.s.defined(id)
	return t == parser.Yes, t != parser.Maybe
}

// test reads the arguments of one of the style's own tests.
func (r *quickReader) test(n *name) (v, ok bool) {
	if n.state != none || n.test != testEnabled && n.test != testDisabled && n.test != testAny || !r.skip('(') {
		return false, false
	}
	all, some := true, false
	for {
		id := r.s.table.find(r.word())
		if id < 0 {
			return false, false
		}
		on, ok := r.s.quickEnabled(&r.s.table.all[id])
		if !ok {
			return false, false
		}
		all, some = all && on, some || on
		if r.skip(')') {
			break
		}
		if !r.skip(',') {
			return false, false
		}
	}
	switch n.test {
	case testEnabled:
		return all, true
	case testDisabled:
		return !some, true
	}
	return some, true
}

// literal reads a number that stands in the condition.
func (r *quickReader) literal() (int64, bool) {
	start := r.at
	r.at = numberEnd(r.text, start)
	return shortNumber(r.text[start:r.at])
}

// shortNumber reads a decimal number that is no octal one.
func shortNumber(text string) (int64, bool) {
	negative := len(text) > 1 && text[0] == '-'
	if negative {
		text = text[1:]
	}
	if text == "" || len(text) > 17 || text[0] == '0' && len(text) > 1 {
		return 0, false
	}
	n := int64(0)
	for i := 0; i < len(text); i++ {
		if !isDigit(text[i]) {
			return 0, false
		}
		n = n*10 + int64(text[i]-'0')
	}
	if negative {
		n = -n
	}
	return n, true
}

// quickDefine returns the line that defines a name without parameters, -1
// where it is not defined; plain is false where that is not simply so.
func (s *source) quickDefine(n *name) (line int32, plain bool) {
	switch {
	case n.test != testNone || n.text == "true" || n.text == "false":
		return -1, false
	case n.state == none:
		return -1, !s.outside(n)
	case n.state < none:
		return -1, false
	case s.lines[n.state].kind != kindDefine:
		return -1, true
	}
	return n.state, !s.lines[n.state].function
}

// quickNumber returns the number that a name stands for.
func (s *source) quickNumber(n *name) (int64, bool) {
	line, plain := s.quickDefine(n)
	if !plain || line < 0 {
		return 0, plain
	}
	return shortNumber(s.body(line))
}

// quickEnabled says whether an option is on.
func (s *source) quickEnabled(n *name) (on, ok bool) {
	line, plain := s.quickDefine(n)
	if !plain || line < 0 {
		return false, plain
	}
	switch body := s.body(line); body {
	case "", "1":
		return true, true
	case "0":
		return false, true
	case "true", "false":
		return body == "true", s.table.find(body) < 0 // no macro of that name
	default:
		_, ok = shortNumber(body)
		return false, ok && body[0] != '-'
	}
}
