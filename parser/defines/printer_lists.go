package defines

import (
	"fmt"

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
		return d.body, "", fmt.Sprintf("%s: %s has %d elements, and number %d is needed",
			d.at, d.name, len(items), index+1)
	}
	return items[index], unspliced(items[index].Text()), ""
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
func splitList(body parser.Span) (items []parser.Span, ok bool) {
	if body.File == nil || body.Start >= body.End {
		return nil, false
	}
	text := textOf(body.File.Data[body.Start:body.End])
	v := logical(text, 0)
	v.lex(text, true)
	depth, item := 0, parser.Span{File: body.File}
	for p := skipBlanks(v.text, 0); p < len(v.text) && len(items) <= listLength; p = skipBlanks(v.text, p) {
		start := p
		_, p = nextToken(v.text, p)
		word := v.text[start:p]
		switch word {
		case "{", "(", "[":
			if depth++; depth == 1 {
				if word != "{" {
					return nil, false
				}
				continue
			}
		case "}", ")", "]":
			if depth--; depth == 0 {
				if item.End > 0 { // nothing stands after a last comma
					items = append(items, item)
				}
				return items, len(items) <= listLength
			}
		case ",":
			if depth == 1 {
				if item.End == 0 {
					item.Start = body.Start + int(v.at(start))
					item.End = item.Start
				}
				items, item = append(items, item), parser.Span{File: body.File}
				continue
			}
		}
		if depth <= 0 {
			return nil, false
		}
		if item.End == 0 {
			item.Start = body.Start + int(v.at(start))
		}
		item.End = body.Start + int(v.after(p))
	}
	return nil, false
}
