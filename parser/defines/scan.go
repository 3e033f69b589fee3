package defines

import (
	"math"
	"strings"

	"preflash/parser"
)

// kind is what a directive does.
type kind uint8

const (
	kindDefine kind = iota
	kindUndef
	kindIf
	kindIfdef
	kindIfndef
	kindElif
	kindElifdef
	kindElifndef
	kindElse
	kindEndif
	kindInclude
	kindImport
	kindOnce
	kindError
	kindPush // #pragma push_macro: remembers what a macro is
	kindPop  // #pragma pop_macro: makes it that again
	kindBad  // the compiler would refuse it
)

// directive is one line that the preprocessor acts on, or a define in a
// comment. Offsets are those of the file.
type directive struct {
	kind     kind
	reached  parser.Tri // whether it stands in a branch that is read
	joined   bool       // a splice or comment stands inside: not to be taken as it is
	function bool       // a define with parameters
	comment  bool       // a define that is commented out
	block    bool       // … by a block comment
	name     int32      // the macro that it names; -1 for none

	start, end      int32 // the logical line, line end included
	nameAt, nameEnd int32 // the macro's name; the slashes of a commented-out define stand before it
	rest, restEnd   int32 // body, condition, file name: without blanks around it
	slashes         int32 // commented out: where the comment starts

	next  int32 // the next define of the same name; -1 for none
	ended int32 // the #undef that ended a define; -1 for none
}

// scanner finds the directives of one file. Most lines of a configuration are
// comments: they are passed over by their ends.
type scanner struct {
	s    *source
	unit *header
	file *parser.File
	text string
	view view // the line that is read
	err  *parser.Error
}

// scan appends the directives of a file to s.lines.
func (s *source) scan(u *header) error {
	u.from, u.to = int32(len(s.lines)), math.MaxInt32
	s.grow(u.file.Data)
	s.order = append(s.order, u)
	u.text = textOf(u.file.Data)
	c := scanner{s: s, unit: u, file: u.file, text: u.text}
	c.run()
	if c.err != nil {
		return c.err
	}
	u.to = int32(len(s.lines))
	return nil
}

func (c *scanner) fail(at int, message string) int {
	if c.err == nil {
		c.err = parser.Errorf(parser.Span{File: c.file, Start: at, End: at}, "%s", message)
	}
	return len(c.text)
}

func (c *scanner) run() {
	text, p := c.text, 0
	if strings.HasPrefix(text, "\xef\xbb\xbf") {
		p = 3
	}
	for p < len(text) {
		if text[p] == '\n' {
			p++
		} else {
			p = c.line(p)
		}
	}
}

// line reads the logical line that starts at p and returns the start of the
// next one.
func (c *scanner) line(start int) int {
	v := &c.view
	v.join(c.text, start)
	for {
		v.skip(skipBlanks(v.text, 0))
		switch {
		case v.text == "":
			return v.end
		case v.text[0] == '#':
			return c.directive(start, v, 1)
		case strings.HasPrefix(v.text, "%:"):
			return c.directive(start, v, 2)
		case strings.HasPrefix(v.text, "//"):
			c.lineComment(start, v)
			return v.end
		case strings.HasPrefix(v.text, "/*"):
			p, inside := int(v.at(0)), int(v.after(2))
			if !v.skipComment(c.text, 0) {
				return c.fail(p, unterminatedComment)
			}
			c.blockComment(p, inside, v.base)
			// The line goes on after the comment, and may be a directive.
			if n := strings.LastIndexByte(c.text[p:v.base], '\n'); n >= 0 {
				start = p + n + 1
			}
		default:
			c.lex(v, false)
			if strings.Contains(v.text, "_Pragma") && strings.Contains(v.text, "_macro") {
				return c.fail(start,
					"_Pragma with push_macro or pop_macro is not followed here; write it as #pragma")
			}
			return v.end
		}
	}
}

const unterminatedComment = "the comment that starts here is never closed; close it with */"

// lex takes the comments out of a line.
func (c *scanner) lex(v *view, directive bool) {
	v.lex(c.text, directive)
	if at := v.open; at >= 0 {
		if c.text[at] == '/' {
			c.fail(at, unterminatedComment)
		} else {
			c.fail(at, "the raw string that starts here is never closed")
		}
	}
}

// lineComment looks for a define in the // comment v.
func (c *scanner) lineComment(start int, v *view) {
	d := directive{start: int32(start), end: int32(v.end), slashes: v.at(0)}
	v.skip(skipBlanks(v.text, slashes(v.text)))
	if v.text != "" && v.text[0] == '#' && isDefine(v.text[1:]) {
		c.commentedOut(c.text, v, &d)
	}
}

// slashes counts the slashes that a text starts with.
func slashes(text string) int { return len(text) - len(strings.TrimLeft(text, "/")) }

// commentedOut adds the commented-out define that starts with the # of v. It
// ends with its line, whatever it holds.
func (c *scanner) commentedOut(text string, v *view, d *directive) {
	v.skip(1)
	v.lex(text[:v.end], true)
	d.comment, d.block = true, d.block || v.open >= 0
	c.define(v, d)
}

// blockComment looks for defines at the starts of lines in a block comment,
// stars before them allowed.
func (c *scanner) blockComment(start, p, end int) {
	text := c.text[:end-2]
	for at := p; at < len(text); at++ {
		n := strings.IndexByte(text[at:], '#')
		if n < 0 {
			return
		}
		at += n
		q := at
		for q > p && (isBlank(text[q-1]) || text[q-1] == '*') {
			q--
		}
		if (q > p && text[q-1] != '\n') || !isDefine(text[at+1:]) {
			continue
		}
		lineStart := strings.LastIndexByte(text[:at], '\n') + 1
		v, whole := logical(text, at), logical(c.text, at)
		d := directive{start: int32(lineStart), end: int32(whole.end), slashes: int32(start), block: true}
		end := v.end
		c.commentedOut(text, &v, &d)
		at = end - 1
	}
}

// isDefine reports whether what follows a # in a comment is a define.
func isDefine(text string) bool {
	p := skipBlanks(text, 0)
	return strings.HasPrefix(text[p:], "define") && p+6 < len(text) && isBlank(text[p+6])
}

// directive reads the directive that starts with the line v, whose # or %: ends
// at position p.
func (c *scanner) directive(start int, v *view, p int) int {
	v.skip(p)
	c.lex(v, true)
	if c.err == nil {
		c.command(v, &directive{start: int32(start), end: int32(v.end)})
	}
	return v.end
}

// command adds the directive whose text, from its keyword on, is v.
func (c *scanner) command(v *view, d *directive) {
	p := skipBlanks(v.text, 0)
	q := wordEnd(v.text, p)
	switch v.text[p:q] {
	case "define":
		c.define(v, d)
		return
	case "undef":
		d.kind = kindUndef
	case "ifdef":
		d.kind = kindIfdef
	case "ifndef":
		d.kind = kindIfndef
	case "elifdef":
		d.kind = kindElifdef
	case "elifndef":
		d.kind = kindElifndef
	case "if":
		d.kind = kindIf
	case "elif":
		d.kind = kindElif
	case "else":
		d.kind = kindElse
	case "endif":
		d.kind = kindEndif
	case "include":
		d.kind = kindInclude
	case "import":
		d.kind = kindImport
	case "error":
		d.kind = kindError
	case "pragma":
		if !c.pragma(v, d, skipBlanks(v.text, q)) {
			return
		}
	case "warning", "line", "ident", "sccs", "assert", "unassert", "include_next":
		return
	case "":
		if p == len(v.text) || isDigit(v.text[p]) { // the null directive; a line marker
			return
		}
		d.kind = kindBad
	default:
		d.kind = kindBad
	}
	p = skipBlanks(v.text, q)
	switch d.kind {
	case kindUndef, kindIfdef, kindIfndef, kindElifdef, kindElifndef:
		c.name(v, d, p)
	case kindPush, kindPop:
	default:
		d.name = -1
	}
	c.rest(v, d, p)
	c.add(d)
}

// pragma reads what stands behind the word; false for one that changes no macro.
func (c *scanner) pragma(v *view, d *directive, p int) bool {
	q := wordEnd(v.text, p)
	switch v.text[p:q] {
	case "once":
		d.kind = kindOnce
		return true
	case "push_macro":
		d.kind = kindPush
	case "pop_macro":
		d.kind = kindPop
	default:
		return false
	}
	open := skipBlanks(v.text, q)
	quote := skipBlanks(v.text, min(open+1, len(v.text)))
	if !strings.HasPrefix(v.text[open:], "(") || !strings.HasPrefix(v.text[quote:], `"`) ||
		c.name(v, d, quote+1) == quote+1 {
		d.kind = kindBad
	}
	return true
}

// define adds the define whose text, from the word define on, is v.
func (c *scanner) define(v *view, d *directive) {
	p := skipBlanks(v.text, skipBlanks(v.text, 0)+len("define"))
	q := c.name(v, d, p)
	if q == p {
		if d.comment {
			return
		}
		d.kind = kindBad
		c.rest(v, d, 0)
		c.add(d)
		return
	}
	if q < len(v.text) && v.text[q] == '(' {
		d.function = true
		n := strings.IndexByte(v.text[q:], ')')
		if n < 0 {
			if d.comment {
				return
			}
			d.kind = kindBad
			n = len(v.text) - q - 1
		}
		q += n + 1
	}
	c.rest(v, d, q)
	c.add(d)
}

// name reads a macro's name at p and returns its end.
func (c *scanner) name(v *view, d *directive, p int) int {
	q := wordEnd(v.text, p)
	d.name = -1
	if q == p {
		return p
	}
	d.nameAt, d.nameEnd = v.at(p), v.after(q)
	d.name = c.s.table.intern(v.text[p:q])
	return q
}

// rest notes the text from p on.
func (c *scanner) rest(v *view, d *directive, p int) {
	end := trimEnd(v.text, p, len(v.text))
	d.restEnd = v.after(end)
	if q := skipBlanks(v.text, p); q < end {
		d.rest = v.at(q)
	} else {
		d.rest = v.after(p)
		d.restEnd = d.rest
	}
	d.joined = v.offsets != nil
}

func (c *scanner) add(d *directive) {
	d.next, d.ended = -1, -1
	id := int32(len(c.s.lines))
	if d.kind == kindDefine {
		n := &c.s.table.all[d.name]
		switch {
		case c.unit.firmware:
			n.derived, n.neverOutside = true, n.neverOutside || !d.function
		case n.last < 0:
			n.first, n.last = id, id
			c.s.mentioned(n)
		default:
			c.s.lines[n.last].next = id
			n.last = id
		}
	}
	c.s.lines = append(c.s.lines, *d)
}
