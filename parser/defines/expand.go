package defines

import (
	"strings"

	"preflash/parser"
)

// Limits of what one text may expand to.
const (
	maxExpansion = 100_000 // tokens
	maxDepth     = 256     // of arguments within arguments, of parentheses
	maxToken     = 1 << 14 // bytes of a token that ## or # makes
)

const tooLong = "it expands to more than 100,000 tokens"

// expander replaces macros in a stream of tokens, in the order and with the
// bookkeeping of GNU cpp: a stack of token lists, on which the body of a
// macro stays until it is used up, and a macro whose body is on the stack is
// not expanded again.
type expander struct {
	s       *source
	stack   []context
	prevent int // above 0 tokens are read as they stand
	depth   int
	left    int
	unknown []doubt
	over    bool   // broken because of a limit
	broken  string // why the text cannot be expanded; nothing is read after that
}

// context is one list of tokens on the stack.
type context struct {
	tokens []token
	at     int
	name   int32 // the macro whose body it is; -1 for none
	wall   bool  // reading stops at its end
}

// doubt is one thing that could not be told.
type doubt struct {
	name  int32  // a macro
	cause int32  // the condition that it depends on; -1 for none
	text  string // with name -1 a sentence
	over  bool   // the sentence names a limit
	loose bool   // what the macro may stand for has operators outside brackets
}

func (s *source) expander(tokens []token) *expander {
	e := &expander{s: s, left: maxExpansion - len(tokens), stack: make([]context, 0, 8)}
	if e.left < 0 {
		e.limit(tooLong)
	}
	e.stack = append(e.stack, context{tokens: tokens, name: -1, wall: true})
	return e
}

// close lets every macro be expanded again.
func (e *expander) close() {
	for _, c := range e.stack {
		if c.name >= 0 {
			e.s.table.all[c.name].busy = false
		}
	}
	e.s.steps += maxExpansion - max(e.left, 0)
}

func (e *expander) fail(why string) token {
	if e.broken == "" {
		e.broken = why
	}
	return token{}
}

// mayDiffer is called where these tokens make a text wrong. If one of them may
// be a macro from outside, the true text may be right.
func (e *expander) mayDiffer(lists ...[]token) {
	for _, list := range lists {
		for _, t := range list {
			if t.kind == tokenWord && e.foreign(t.text) {
				e.doubtful(doubt{name: e.s.table.intern(t.text)})
				return
			}
		}
	}
}

// limit gives up on a text that asks for too much.
func (e *expander) limit(why string) {
	e.over = true
	e.fail(why)
}

func (e *expander) doubtful(d doubt) token {
	e.unknown = append(e.unknown, d)
	return token{kind: tokenUnknown, text: "@", arg: int16(min(len(e.unknown)-1, 1<<15-1))}
}

func (e *expander) push(c context) {
	if e.left -= len(c.tokens) + 1; e.left < 0 {
		e.limit(tooLong)
	}
	if c.name >= 0 {
		e.s.table.all[c.name].busy = true
	}
	e.stack = append(e.stack, c)
}

// next returns the next token of the expanded text.
func (e *expander) next() token {
	for e.broken == "" {
		c := &e.stack[len(e.stack)-1]
		if c.at == len(c.tokens) {
			if c.wall {
				return token{}
			}
			if c.name >= 0 {
				e.s.table.all[c.name].busy = false
			}
			e.stack = e.stack[:len(e.stack)-1]
			continue
		}
		t := c.tokens[c.at]
		c.at++
		if t.kind != tokenWord || t.painted {
			return t
		}
		id := e.s.table.find(t.text)
		if id < 0 {
			return t
		}
		n := &e.s.table.all[id]
		if n.busy {
			t.painted = true
			return t
		}
		if e.prevent > 0 {
			return t
		}
		if t, done := e.expand(id, t); done {
			return t
		}
	}
	return token{}
}

// expand replaces the macro id, whose name is t. It returns a token, or false
// after it has put an expansion on the stack.
func (e *expander) expand(id int32, t token) (token, bool) {
	line, sure := e.s.define(id)
	switch {
	case !sure:
		u := e.doubtful(doubt{name: id, loose: e.s.loose(id, maxLoose)})
		u.space = t.space
		return u, true
	case line < 0 && e.s.table.all[id].test != testNone:
		args, called := e.call(false, 0)
		if !called {
			return t, true
		}
		e.push(context{tokens: e.test(e.s.table.all[id].test, args), name: -1})
		return token{}, false
	case line < 0:
		return t, true
	}
	def := e.s.definition(line)
	if def.bad {
		return e.fail("the macro " + t.text + " is not defined properly"), true
	}
	body := def.body
	if def.function {
		args, called := e.call(def.variadic, len(def.params))
		if !called {
			return t, true
		}
		if e.broken != "" {
			return token{}, true
		}
		absent := def.variadic && (len(args) < len(def.params) || len(args) == 1 && len(args[0]) == 0)
		if len(args) == len(def.params)-1 && def.variadic {
			args = append(args, nil)
		}
		if len(args) == 1 && len(def.params) == 0 && len(args[0]) == 0 {
			args = nil
		}
		if len(args) != len(def.params) {
			e.mayDiffer(args...)
			return e.fail("the macro " + t.text + " is called with the wrong number of arguments"), true
		}
		if !def.plain {
			body = e.substitute(def, args, absent)
		}
	} else if !def.plain {
		body = e.substitute(def, nil, false)
	}
	if len(body) > 0 && body[0].space != t.space {
		body = append([]token(nil), body...)
		body[0].space = t.space
	}
	e.push(context{tokens: body, name: id})
	return token{}, false
}

// call reads the arguments of a call, if one follows: the tokens between
// commas, not expanded yet. A variadic macro's last argument keeps its commas.
func (e *expander) call(variadic bool, params int) (args [][]token, called bool) {
	e.prevent++
	defer func() { e.prevent-- }()
	t := e.next()
	if t.kind == tokenEnd {
		return nil, false
	}
	if t.kind != tokenMark || t.text != "(" {
		e.stack[len(e.stack)-1].at--
		return nil, false
	}
	var arg []token
	for open := 0; ; {
		t = e.next()
		if e.left--; e.left < 0 {
			e.limit(tooLong)
		}
		if t.kind == tokenEnd {
			e.fail("the arguments of a macro are not closed")
			return nil, true
		}
		if t.kind == tokenMark {
			switch t.text {
			case "(":
				open++
			case ")":
				if open == 0 {
					return append(args, arg), true
				}
				open--
			case ",":
				if open == 0 && !(variadic && len(args) == params-1) {
					args = append(args, arg)
					arg = nil
					continue
				}
			}
		}
		arg = append(arg, t)
	}
}

// expandAll expands an argument on its own.
func (e *expander) expandAll(tokens []token) []token {
	simple := true
	for _, t := range tokens {
		simple = simple && t.kind != tokenWord
	}
	if simple {
		return tokens
	}
	if e.depth++; e.depth > maxDepth {
		e.limit("macro calls nest deeper than 256 levels")
	}
	e.push(context{tokens: tokens, name: -1, wall: true})
	var out []token
	for {
		t := e.next()
		if t.kind == tokenEnd {
			break
		}
		out = append(out, t)
	}
	if e.broken == "" {
		e.stack = e.stack[:len(e.stack)-1]
	}
	e.depth--
	return out
}

// substitute puts arguments in the places of parameters and carries out # and
// ##. absent is true where the variable arguments are left out altogether.
func (e *expander) substitute(def *definition, args [][]token, absent bool) []token {
	expanded := make([][]token, len(args))
	done := make([]bool, len(args))
	full := func(n int) []token {
		if !done[n] {
			expanded[n], done[n] = e.expandAll(args[n]), true
		}
		return expanded[n]
	}
	var out []token
	body := def.body
	if def.variadic {
		body = e.options(def, func() bool { return len(full(len(args)-1)) > 0 })
	}
	for i := 0; i < len(body) && e.broken == ""; i++ {
		t := body[i]
		before := i > 0 && isPaste(body[i-1])
		after := i+1 < len(body) && isPaste(body[i+1])
		switch {
		case isPaste(t):
			continue
		case def.function && t.text == "#" && t.kind == tokenMark && i+1 < len(body) && body[i+1].arg > 0:
			i++
			list := []token{{kind: tokenString, text: e.quote(args[body[i].arg-1]), space: t.space}}
			out = e.join(out, list, before)
			continue
		case t.arg == 0:
			out = e.join(out, []token{t}, before)
			continue
		}
		n := int(t.arg - 1)
		last := def.variadic && n == len(args)-1
		if before && last && len(out) > 0 && out[len(out)-1].text == "," && body[i-2].text == "," {
			// GNU: the comma goes where the variable arguments are absent.
			if absent {
				out = out[:len(out)-1]
			} else {
				out = append(out, e.spaced(args[n], t.space)...)
			}
			continue
		}
		list := args[n]
		if !before && !after {
			list = full(n)
		} else if len(list) == 0 {
			list = []token{{kind: tokenEmpty}}
		}
		out = e.join(out, e.spaced(list, t.space), before)
		if e.left -= len(list); e.left < 0 {
			e.limit(tooLong)
		}
	}
	kept := out[:0]
	for _, t := range out {
		if t.kind != tokenEmpty {
			kept = append(kept, t)
		}
	}
	return kept
}

func isPaste(t token) bool { return t.kind == tokenMark && t.text == "##" }

func (e *expander) spaced(list []token, space bool) []token {
	if len(list) > 0 && list[0].space != space {
		list = append([]token(nil), list...)
		list[0].space = space
	}
	return list
}

// join appends a list of tokens; with paste its first one is pasted to the
// last one of out.
func (e *expander) join(out, list []token, paste bool) []token {
	if !paste || len(out) == 0 || len(list) == 0 {
		return append(out, list...)
	}
	left, right := out[len(out)-1], list[0]
	out = out[:len(out)-1]
	switch {
	case right.kind == tokenEmpty:
		return append(append(out, left), list[1:]...)
	case left.kind == tokenEmpty:
		right.space = left.space
		return append(append(out, right), list[1:]...)
	case left.kind == tokenUnknown || right.kind == tokenUnknown:
		return append(append(out, left), list...)
	}
	text := left.text + right.text
	if e.left -= len(text) / 16; len(text) > maxToken {
		e.limit("## makes a name of more than 16 KiB")
		return out
	}
	kind, end := nextToken(text, 0)
	if end != len(text) || isPaste(left) {
		e.mayDiffer([]token{left, right})
		e.fail("## joins " + parser.Quote(left.text) + " and " + parser.Quote(right.text) +
			" to no valid token")
		return out
	}
	return append(append(out, token{kind: kind, text: text, space: left.space}), list[1:]...)
}

// quote makes a string constant of an argument, as # does.
func (e *expander) quote(list []token) string {
	var b strings.Builder
	b.WriteByte('"')
	for i, t := range list {
		if t.space && i > 0 {
			b.WriteByte(' ')
		}
		if t.kind == tokenString || t.kind == tokenChar {
			b.WriteString(strings.NewReplacer(`\`, `\\`, `"`, `\"`).Replace(t.text))
		} else {
			b.WriteString(t.text)
		}
		if b.Len() > maxToken {
			e.limit("# makes a string of more than 16 KiB")
			break
		}
	}
	e.left -= b.Len() / 16
	b.WriteByte('"')
	return b.String()
}

// options settles each __VA_OPT__( … ) of a body: what it holds stays where
// the variable arguments are not empty.
func (e *expander) options(def *definition, some func() bool) []token {
	var out []token
	body := def.body
	for i := 0; i < len(body); i++ {
		if body[i].text != "__VA_OPT__" || i+1 == len(body) || body[i+1].text != "(" {
			out = append(out, body[i])
			continue
		}
		open, end := 0, i+1
		for ; end < len(body); end++ {
			if body[end].text == "(" {
				open++
			} else if body[end].text == ")" {
				if open--; open == 0 {
					break
				}
			}
		}
		if some() {
			out = append(out, body[min(i+2, end):end]...)
		} else {
			out = append(out, token{kind: tokenEmpty})
		}
		i = end
	}
	return out
}
