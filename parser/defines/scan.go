package defines

import (
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
	walk walker
	err  *parser.Error
}

// scan appends the directives of a file to s.lines.
func (s *source) scan(u *header) (text string, err error) {
	text = textOf(u.file.Data)
	c := scanner{s: s, unit: u, file: u.file, text: text, walk: walker{text: text}}
	c.run()
	if c.err != nil {
		return "", c.err
	}
	return text, nil
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
		p = c.line(p)
	}
}

// line reads the logical line that starts at p and returns the start of the
// next one.
func (c *scanner) line(p int) int {
	text, start := c.text, p
	for {
		p = skipBlanks(text, p)
		if p == len(text) {
			return p
		}
		switch text[p] {
		case '\n':
			return p + 1
		case '#':
			return c.directive(start, p+1)
		case '%':
			if next, q := peek(text, p+1); next == ':' {
				return c.directive(start, q+1)
			}
			return c.code(p)
		case '\\':
			next := splice(text, p)
			if next == 0 {
				return c.code(p)
			}
			p = next
		case '/':
			next, q := peek(text, p+1)
			switch next {
			case '/':
				return c.lineComment(start, p, q+1)
			case '*':
				end := commentEnd(text, q+1)
				if end < 0 {
					return c.fail(p, unterminatedComment)
				}
				c.blockComment(p, q+1, end)
				// The line goes on after the comment, and may be a directive.
				if n := strings.LastIndexByte(text[p:end], '\n'); n >= 0 {
					start = p + n + 1
				}
				p = end
			default:
				return c.code(p)
			}
		default:
			return c.code(p)
		}
	}
}

const unterminatedComment = "the comment that starts here is never closed; close it with */"

// code passes over a line that is no directive.
func (c *scanner) code(p int) int {
	end, spliced := physicalEnd(c.text, p)
	line := c.text[p:end]
	if strings.Contains(line, "_Pragma") && strings.Contains(line, "_macro") {
		return c.fail(p, "_Pragma with push_macro or pop_macro is not followed here; write it as #pragma")
	}
	if !spliced && strings.IndexByte(line, '/') < 0 && strings.IndexByte(line, '"') < 0 {
		return min(end+1, len(c.text))
	}
	c.walk.keep = false
	return c.walked(p)
}

func (c *scanner) walked(p int) int {
	next := c.walk.line(p)
	if at := c.walk.open; at >= 0 {
		if c.text[at] == '/' {
			return c.fail(at, unterminatedComment)
		}
		return c.fail(at, "the raw string that starts here is never closed")
	}
	return next
}

// lineComment passes over a // comment whose contents start at p; slashes is
// where it starts.
func (c *scanner) lineComment(start, slashes, p int) int {
	text := c.text
	next, spliced := logicalEnd(text, p)
	for p < next && text[p] == '/' {
		p++
	}
	if hash := skipBlanks(text, p); hash < next && text[hash] == '#' && isDefine(text[hash+1:next]) {
		v := c.view(hash+1, next, spliced)
		d := directive{start: int32(start), end: int32(next), slashes: int32(slashes), comment: true, block: v.open}
		c.define(&v, &d)
	}
	return next
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
		lineEnd, spliced := logicalEnd(text, at)
		lineStart := strings.LastIndexByte(text[:at], '\n') + 1
		next, _ := logicalEnd(c.text, lineEnd-1)
		d := directive{start: int32(lineStart), end: int32(next), slashes: int32(start), comment: true, block: true}
		v := c.view(at+1, lineEnd, spliced)
		c.define(&v, &d)
		at = lineEnd - 1
	}
}

// isDefine reports whether what follows a # in a comment is a define.
func isDefine(text string) bool {
	p := skipBlanks(text, 0)
	return strings.HasPrefix(text[p:], "define") && p+6 < len(text) && isBlank(text[p+6])
}

// view is the text of a directive after its #: a piece of the file as it is,
// or, where it is joined from several pieces, a clean copy.
type view struct {
	text    string
	base    int
	offsets []int32 // nil for a piece of the file
	end     int     // start of the next logical line
	open    bool    // a comment opens in it and does not close
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

// view reads a commented-out define, which ends at limit whatever it holds.
func (c *scanner) view(p, limit int, spliced bool) view {
	if !spliced {
		if text, ok := c.plain(p, trimEnd(c.text, p, limit)); ok {
			return view{text: text, base: p, end: limit}
		}
	}
	w := walker{text: c.text[:limit], keep: true}
	w.line(p)
	return view{text: string(w.clean), base: p, offsets: w.offsets, end: limit, open: w.open >= 0}
}

// plain takes the text as it is, up to a comment that ends it. It gives up on
// what only the walker can judge.
func (c *scanner) plain(p, end int) (string, bool) {
	line := c.text[p:end]
	for at := 0; ; at++ {
		n := strings.IndexByte(line[at:], '/')
		if n < 0 {
			break
		}
		at += n
		if at+1 == len(line) || line[at+1] != '/' && line[at+1] != '*' {
			continue
		}
		if q := skipBlanks(line, 0); strings.HasPrefix(line[q:], "include") && strings.IndexByte(line[:at], '<') > 0 {
			if n := strings.IndexByte(line[at:], '>'); n >= 0 { // slashes in a header's name
				at += n
				continue
			}
		}
		if strings.IndexByte(line[:at], '"') >= 0 || strings.IndexByte(line[:at], '\'') >= 0 {
			return "", false
		}
		if line[at+1] == '*' {
			closed := strings.Index(line[at+2:], "*/")
			if closed < 0 {
				return "", false
			}
			tail := line[at+2+closed+2:]
			if q := skipBlanks(tail, 0); q < len(tail) && !strings.HasPrefix(tail[q:], "//") {
				return "", false
			}
		}
		line = line[:at]
		break
	}
	return line[:trimEnd(line, 0, len(line))], true
}

// directive reads the directive whose # ends at p.
func (c *scanner) directive(start, p int) int {
	end, spliced := physicalEnd(c.text, p)
	v := view{base: p, end: min(end+1, len(c.text))}
	ok := false
	if !spliced {
		v.text, ok = c.plain(p, end)
	}
	if !ok {
		c.walk.keep = true
		next := c.walked(p)
		if c.err != nil {
			return next
		}
		v.text, v.offsets, v.end = string(c.walk.clean), c.walk.offsets, next
	}
	c.command(&v, &directive{start: int32(start), end: int32(v.end)})
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
	if !strings.HasPrefix(v.text[open:], "(") || !strings.HasPrefix(v.text[quote:], `"`) || c.name(v, d, quote+1) == quote+1 {
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
			n.derived, n.settled = true, n.settled || !d.function
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
