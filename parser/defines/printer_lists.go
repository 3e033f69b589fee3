package defines

import (
	"bytes"
	"fmt"
	"strings"

	"preflash/parser"
)

const (
	listDepth  = 8   // macros that are followed to find a list
	listLength = 256 // elements of a list, far more than a printer has of anything
)

// element finds one element of an option whose value is a list, such as
// { 22.2, 21.0 }: its bytes, and its text without comments. A single value
// stands for all elements where the last repeats. why says what is wrong.
func (r *reader) element(d *define, index int, repeats bool) (at parser.Span, text, why string) {
	items, isList := r.list(d)
	switch {
	case !isList && repeats:
		return d.body, d.value(), ""
	case !isList:
		return d.body, "", d.at.String() + ": " + d.name + " should be a list such as { 1, 2 }"
	case len(items) == 0:
		return d.body, "", d.at.String() + ": " + d.name + " is an empty list"
	case index < len(items):
	case repeats:
		index = len(items) - 1
	default:
		return d.body, "", fmt.Sprintf("%s: %s has %d elements, and number %d is needed", d.at, d.name, len(items), index+1)
	}
	return items[index], withoutComments(items[index].Text()), ""
}

// list splits the value of a define. It follows a value that is the name of
// another macro, so that the list is read, and changed, where it stands.
func (r *reader) list(d *define) ([]parser.Span, bool) {
	for range listDepth {
		if items, ok := splitList(d.body); ok {
			return items, true
		}
		name := d.value()
		if !isName(name) {
			return nil, false
		}
		m := r.s.macro(name)
		if m.state != parser.Yes || m.winner.function {
			return nil, false
		}
		d = m.winner
	}
	return nil, false
}

func isName(s string) bool {
	for i := range len(s) {
		c := s[i]
		if c != '_' && (c|0x20 < 'a' || c|0x20 > 'z') && (i == 0 || c < '0' || c > '9') {
			return false
		}
	}
	return s != ""
}

// splitList gives the elements of { a, b }, without the blanks and comments
// around them; false where it is no list, or one that is too long.
func splitList(body parser.Span) ([]parser.Span, bool) {
	if body.File == nil || body.Start >= body.End {
		return nil, false
	}
	text := body.File.Data[body.Start:body.End]
	open := skipBlank(text, 0)
	if open >= len(text) || text[open] != '{' {
		return nil, false
	}
	var items []parser.Span
	start, depth := open+1, 1
	for i := open + 1; i < len(text); {
		switch c := text[i]; {
		case c == '"' || c == '\'':
			i = skipQuoted(text, i)
			continue
		case c == '{' || c == '(' || c == '[':
			depth++
		case c == '}' || c == ')' || c == ']':
			if depth--; depth == 0 {
				if item := trimItem(body, start, i); item.Start < item.End { // none after a last comma
					items = append(items, item)
				}
				return items, true
			}
		case c == ',' && depth == 1:
			if len(items) == listLength {
				return nil, false
			}
			items = append(items, trimItem(body, start, i))
			start = i + 1
		case c == '/':
			if end := skipBlank(text, i); end > i {
				i = end
				continue
			}
		}
		i++
	}
	return nil, false
}

// trimItem narrows a part of a body to what is no blank and no comment.
func trimItem(body parser.Span, start, end int) parser.Span {
	text := body.File.Data[body.Start : body.Start+end]
	from := skipBlank(text, start)
	to := from
	for i := from; i < end; {
		next := skipBlank(text, i)
		if next == i {
			next++
			to = next
		}
		i = next
	}
	return parser.Span{File: body.File, Start: body.Start + from, End: body.Start + to}
}

// skipBlank returns the offset of the first byte at or after i that is no
// white space, line splice or comment.
func skipBlank(text []byte, i int) int {
	for i < len(text) {
		rest := text[i:]
		switch {
		case rest[0] == ' ' || rest[0] >= '\t' && rest[0] <= '\r':
			i++
		case rest[0] == '\\' && bytes.HasPrefix(rest, []byte("\\\n")):
			i += 2
		case rest[0] == '\\' && bytes.HasPrefix(rest, []byte("\\\r\n")):
			i += 3
		case bytes.HasPrefix(rest, []byte("/*")):
			end := bytes.Index(rest[2:], []byte("*/"))
			if end < 0 {
				return len(text)
			}
			i += 2 + end + 2
		case bytes.HasPrefix(rest, []byte("//")):
			end := bytes.IndexByte(rest, '\n')
			if end < 0 {
				return len(text)
			}
			i += end
		default:
			return i
		}
	}
	return i
}

// skipQuoted returns the offset after a string or character literal.
func skipQuoted(text []byte, i int) int {
	quote := text[i]
	for i++; i < len(text); i++ {
		switch text[i] {
		case '\\':
			i++
		case quote:
			return i + 1
		}
	}
	return len(text)
}

// withoutComments takes comments and line splices out of a value.
func withoutComments(s string) string {
	if !strings.ContainsAny(s, "/\\") {
		return s
	}
	text := []byte(s)
	var out []byte
	for i := 0; i < len(text); {
		switch c := text[i]; {
		case c == '"' || c == '\'':
			end := skipQuoted(text, i)
			out = append(out, text[i:min(end, len(text))]...)
			i = end
		default:
			if end := skipBlank(text, i); end > i {
				out = append(out, ' ')
				i = end
				continue
			}
			out = append(out, c)
			i++
		}
	}
	return strings.TrimSpace(string(out))
}
