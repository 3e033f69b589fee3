package sheet

import (
	"bytes"
	"errors"
	"unicode"
	"unicode/utf8"

	"github.com/pelletier/go-toml/v2/unstable"

	"preflash/parser"
)

// syntax places an error of the library and says what is wrong there by what
// stands before and at the place. The library's own words are not used: they
// may quote the file, and change from one version to the next.
func (b *builder) syntax(err error) *fault {
	var pe *unstable.ParserError
	if !errors.As(err, &pe) {
		return faultf(parser.Span{File: b.file}, "is not valid TOML")
	}
	data := b.p.Data()
	at := min(max(cap(data)-cap(pe.Highlight), 0), len(data))
	return faultf(b.span(at, at), "is not valid TOML here: %s", contextOf(data[:at]).wrong(data[at:]))
}

// context is what a position of a TOML text stands in.
type context struct {
	quote    []byte // the mark of the text that is open there
	brackets []byte // the brackets of lists and tables that are open there
	header   bool   // in the name of a table
	equals   bool   // behind the = of a key
	begun    bool   // something of the key or value stands before
	last     byte   // the last byte before
}

func contextOf(before []byte) context {
	var c context
	for i := 0; i < len(before); i++ {
		c.last = before[i]
		rest := before[i:]
		switch b := before[i]; {
		case c.quote != nil && bytes.HasPrefix(rest, c.quote):
			i += len(c.quote) - 1
			c.quote = nil
		case c.quote != nil:
			if b == '\\' && c.quote[0] == '"' {
				i++
			}
		case b == '"' || b == '\'':
			c.begun = true
			c.quote = rest[:1]
			if len(rest) > 2 && rest[1] == b && rest[2] == b {
				c.quote = rest[:3]
				i += 2
			}
		case b == '#':
			if n := bytes.IndexByte(rest, '\n'); n >= 0 {
				i += n - 1
			} else {
				i = len(before)
			}
		case b == '\n' && len(c.brackets) == 0:
			c = context{}
		case b == '=':
			c.equals, c.begun = true, false
		case c.equals && (b == '[' || b == '{'):
			c.brackets = append(c.brackets, b)
			c.equals, c.begun = b == '[', false
		case len(c.brackets) > 0 && (b == ']' || b == '}'):
			c.brackets = c.brackets[:len(c.brackets)-1]
			c.equals, c.begun = true, true
		case len(c.brackets) > 0 && b == ',':
			c.equals, c.begun = c.brackets[len(c.brackets)-1] == '[', false
		case b == '[' && !c.begun:
			c.header = true
		case b != ' ' && b != '\t' && b != '\r' && b != '\n':
			c.begun = true
		}
	}
	return c
}

// wrong says what should stand at the position, before the rest of the text.
// Where the text ends too early, the library's position is often that of what
// was left open.
func (c context) wrong(rest []byte) string {
	r, size := utf8.DecodeRune(rest)
	line, _, _ := bytes.Cut(rest, []byte("\n"))
	ends := len(bytes.TrimSpace(line)) == 0
	digit := '0' <= r && r <= '9' || r == '+' || r == '-'
	afterDigit := '0' <= c.last && c.last <= '9'
	switch {
	case r == utf8.RuneError && size == 1:
		return "the text is not UTF-8; save the file as UTF-8"
	case r < ' ' && !ends && r != '\t' || r == 0x7f:
		return "it holds a control character"
	case len(c.quote) == 1 && !bytes.Contains(line, c.quote),
		len(c.quote) == 3 && !bytes.Contains(rest, c.quote):
		return "the text that starts here, or ends here, lacks its closing quote"
	case c.quote != nil:
		return `a \ in text starts an escape; write \\ for the character itself, or use / in paths`
	case len(c.brackets) > maxDepth && r == '[':
		return "lists and tables nest too deep"
	case c.inside('[') && (c.begun || !bytes.ContainsRune(rest, ']')), c.equals && r == '[':
		return "the list lacks a comma or its closing ]"
	case c.inside('{') && (c.equals && c.begun || !bytes.ContainsRune(rest, '}')), c.equals && r == '{':
		return "the table in braces lacks a comma or its closing }"
	case c.header:
		return "a table's name ends with ], or ]] where it began with [["
	case c.equals && !c.begun && digit:
		return "the number is malformed"
	case c.equals && !c.begun, r == '=' && c.begun:
		return "a value should stand here: a number, true, false, a date, a list, " +
			"or text between double quotes"
	case c.equals && afterDigit && r == ',':
		return "one number stands here, and its decimal mark is a point"
	case c.equals && afterDigit && unicode.IsLetter(r) && r != 'e' && r != 'E':
		return "text must stand between double quotes; a unit belongs in the key, not after the number"
	case c.equals && (afterDigit || c.last == '.' || c.last == '_' || c.last == 'e' || c.last == 'E'):
		return "the number is malformed"
	case c.equals:
		return "something follows the value; one key and its value fill one line"
	case c.begun, !ends && !bytes.ContainsRune(line, '='):
		return "a key needs a = and a value after it"
	}
	return "a key or a [table] should stand here"
}

func (c context) inside(bracket byte) bool {
	return len(c.brackets) > 0 && c.brackets[len(c.brackets)-1] == bracket
}
