package sheet

import (
	"errors"
	"strings"

	"github.com/pelletier/go-toml/v2/unstable"

	"preflash/parser"
)

// syntax places an error of the library and says it in plain words. The
// library's own words may quote a character of the file, so they are not used.
func (b *builder) syntax(err error) *fault {
	var pe *unstable.ParserError
	if !errors.As(err, &pe) {
		return faultf(parser.Span{File: b.file}, "is not valid TOML")
	}
	at := cap(b.p.Data()) - cap(pe.Highlight)
	at = min(max(at, 0), len(b.p.Data()))
	return faultf(b.span(at, at), "is not valid TOML here: %s", plain(pe.Message))
}

// plain gives a syntax error in the words of somebody who writes a sheet.
func plain(message string) string {
	has := func(part string) bool { return strings.Contains(message, part) }
	switch {
	case has("nested"):
		return "lists and tables nest too deep"
	case has("UTF-8"):
		return "the text is not UTF-8; save the file as UTF-8"
	case has("expected '='"):
		return "a key needs a = and a value after it"
	case has("close table name"), has("close array table"):
		return "a table's name ends with ], or ]] where it began with [["
	case has("start of key"), has("expected key"):
		return "a key or a [table] should stand here"
	case has("must be quoted"):
		return "text must stand between double quotes; a unit belongs in the key, not after the number"
	case has("start of value"), has("expected value"), has("keyword"), has("expected \""):
		return "a value should stand here: a number, true, false, a date, a list, or text between double quotes"
	case has("unterminated"), has("not terminated"), has("new line"):
		return "the text that starts here, or ends here, lacks its closing quote"
	case has("array"):
		return "the list lacks a comma or its closing ]"
	case has("inline table"):
		return "the table in braces lacks a comma or its closing }"
	case has("zeroes"), has("digit"), has("radix"), has("exponent"), has("number"):
		return "the number is malformed"
	case has("expected newline"):
		return "something follows the value; one key and its value fill one line"
	case has("escape"), has(`after \`):
		return `a \ in text starts an escape; write \\ for the character itself, or use / in paths`
	case has("control"), has("carriage"):
		return "it holds a control character"
	}
	return "the line does not follow the grammar"
}
