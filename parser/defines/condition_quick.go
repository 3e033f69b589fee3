package defines

import (
	"strings"

	"preflash/parser"
)

// Most conditions are one of a few plain forms, alone or chained by && or by
// ||. They are decided here without tokens and grammar; anything else, and
// anything unknown, is left to the grammar. Both must agree: a test compares.

// quick decides a plain condition; false where it is not plain.
func (s *source) quick(text string) (parser.Tri, bool) {
	r := quickReader{s: s, text: text}
	chain := byte(0)
	result := false
	for {
		v, ok := r.term()
		if !ok {
			return parser.No, false
		}
		switch chain {
		case 0:
			result = v
		case '&':
			result = result && v
		case '|':
			result = result || v
		}
		r.blanks()
		if r.at == len(text) {
			if result {
				return parser.Yes, true
			}
			return parser.No, true
		}
		c := text[r.at]
		if (c != '&' && c != '|') || (chain != 0 && chain != c) || r.at+1 == len(text) || text[r.at+1] != c {
			return parser.No, false
		}
		chain = c
		r.at += 2
	}
}

type quickReader struct {
	s    *source
	text string
	at   int
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

// word reads a name of plain ASCII.
func (r *quickReader) word() string {
	r.blanks()
	start := r.at
	for r.at < len(r.text) && (isNameStart(r.text[r.at]) || r.at > start && isDigit(r.text[r.at])) {
		r.at++
	}
	return r.text[start:r.at]
}

// term reads !X, a test, or a comparison of two numbers.
func (r *quickReader) term() (v, ok bool) {
	not := false
	for r.skip('!') {
		not = !not
	}
	r.blanks()
	if r.at == len(r.text) {
		return false, false
	}
	if !isDigit(r.text[r.at]) {
		at := r.at
		switch word := r.word(); word {
		case "defined":
			v, ok = r.isDefined()
			return v != not, ok
		case "ENABLED", "DISABLED":
			id := idEnabled
			if word == "DISABLED" {
				id = idDisabled
			}
			if r.s.table[id].state != none || !r.skip('(') {
				return false, false
			}
			name := r.word()
			if name == "" || !r.skip(')') {
				return false, false
			}
			v, ok = r.s.quickEnabled(name)
			return v != (word == "DISABLED") != not, ok
		}
		r.at = at
	}
	x, ok := r.number()
	if !ok || not {
		return (x != 0) != not, ok && r.ends()
	}
	r.blanks()
	op := r.text[r.at:]
	y := int64(0)
	switch {
	case strings.HasPrefix(op, "=="), strings.HasPrefix(op, "!="), strings.HasPrefix(op, "<="), strings.HasPrefix(op, ">="):
		op = op[:2]
	case strings.HasPrefix(op, "<<"), strings.HasPrefix(op, ">>"):
		return false, false
	case strings.HasPrefix(op, "<"), strings.HasPrefix(op, ">"):
		op = op[:1]
	default:
		return x != 0, r.ends()
	}
	r.at += len(op)
	if y, ok = r.number(); !ok || !r.ends() {
		return false, false
	}
	switch op {
	case "==":
		v = x == y
	case "!=":
		v = x != y
	case "<=":
		v = x <= y
	case ">=":
		v = x >= y
	case "<":
		v = x < y
	case ">":
		v = x > y
	}
	return v, true
}

// ends reports whether a term is complete here.
func (r *quickReader) ends() bool {
	r.blanks()
	return r.at == len(r.text) || r.text[r.at] == '&' && strings.HasPrefix(r.text[r.at:], "&&") ||
		r.text[r.at] == '|' && strings.HasPrefix(r.text[r.at:], "||")
}

func (r *quickReader) isDefined() (v, ok bool) {
	paren := r.skip('(')
	word := r.word()
	if word == "" || paren && !r.skip(')') || !r.ends() {
		return false, false
	}
	id, found := r.s.ids[word]
	if !found {
		return false, false
	}
	t := r.s.defined(id)
	return t == parser.Yes, t != parser.Maybe
}

// number reads a short decimal number, or a name that stands for one.
func (r *quickReader) number() (int64, bool) {
	r.blanks()
	if r.at < len(r.text) && isDigit(r.text[r.at]) {
		start := r.at
		for r.at < len(r.text) && (isDigit(r.text[r.at]) || isNameStart(r.text[r.at]) || r.text[r.at] == '.' || r.text[r.at] == '\'') {
			r.at++
		}
		return shortNumber(r.text[start:r.at])
	}
	word := r.word()
	if word == "" {
		return 0, false
	}
	id, found := r.s.ids[word]
	if !found {
		return 0, false
	}
	n := &r.s.table[id]
	if n.test != testNone {
		return 0, false
	}
	line, plain := r.s.quickDefine(n)
	switch {
	case !plain:
		return 0, false
	case line < 0:
		return 0, word != "true" && word != "false"
	}
	return shortNumber(r.s.body(line))
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
	case n.state == none:
		return -1, !s.outside(n)
	case n.state < none:
		return -1, false
	case s.lines[n.state].kind != kindDefine:
		return -1, true
	}
	return n.state, !s.lines[n.state].function
}

func (s *source) quickEnabled(word string) (on, ok bool) {
	id, found := s.ids[word]
	if !found {
		return false, false
	}
	line, plain := s.quickDefine(&s.table[id])
	if !plain || s.table[id].test != testNone {
		return false, false
	}
	if line < 0 {
		return false, word != "true"
	}
	switch body := s.body(line); body {
	case "", "1", "true":
		return true, body != "true" || s.ids["true"] == 0
	case "0", "false":
		return false, body != "false" || s.ids["false"] == 0
	default:
		_, ok = shortNumber(body)
		return false, ok && body[0] != '-'
	}
}
