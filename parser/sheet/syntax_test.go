package sheet

import (
	"strings"
	"testing"

	"preflash/parser"
)

// What stands before and at the place of a syntax error tells what is wrong.
func TestSyntaxSaysWhatIsWrong(t *testing.T) {
	const (
		aKey     = "a key or a [table] should stand here"
		equals   = "a key needs a = and a value after it"
		aValue   = "a value should stand here"
		unit     = "a unit belongs in the key"
		comma    = "decimal mark is a point"
		number   = "the number is malformed"
		quote    = "lacks its closing quote"
		escape   = "starts an escape"
		list     = "the list lacks a comma or its closing ]"
		braces   = "the table in braces lacks a comma or its closing }"
		header   = "a table's name ends with ]"
		more     = "something follows the value"
		encoding = "the text is not UTF-8"
		control  = "a control character"
		deep     = "nest too deep"
	)
	tests := map[string][]string{
		aKey:     {"= 3", "[a]\n= 3"},
		equals:   {"a", "a b", "a 4", "a = {b}", "a = 1 # note\nb 2", "a = \"x = \\\" y\"\nb 2"},
		aValue:   {"a = x", "a =", "a = tru", "a =\nb = 1", "a =  # note"},
		unit:     {"a = 48W", "a = 24.5mm"},
		comma:    {"a = 0,4"},
		number:   {"a = 012", "a = 1.", "a = 1e", "a = 1__2", "a = -", "a = 0x", "a = +0x1"},
		quote:    {"a = \"q", "a = \"q\nb = 1", "a = 'q\nb = 'r'", "a = '''x", "a = 1\r\nb = \"q\r\n"},
		escape:   {`a = "C:\dir"`, `a = "\u12"`},
		list:     {"a = [1, 2\nb = 3", "a = [1 2]", "a = [1,\n", "a = [", "a = [\n  1, # one\n  2\n  3\n]"},
		braces:   {"a = {b = 1", "a = {b = 1 c = 2}"},
		header:   {"[a", "[a\nb = 1", "[[a]\n", "[]"},
		more:     {"a = 24 V", `a = "x""`, "a = [1] b"},
		encoding: {"a = \"\xe9\"", "\"h\xe9\" = 1"},
		control:  {"a = \"x\x01\"", "# \x01"},
		deep:     {"a = " + strings.Repeat("[", 2_000_000)},
	}
	for want, texts := range tests {
		for _, text := range texts {
			_, wrong := parseTOML(&parser.File{Name: "swap.toml", Data: []byte(text)})
			switch {
			case wrong == nil:
				t.Errorf("%.40q is taken, want “%s”", text, want)
			case !strings.Contains(wrong.text, "is not valid TOML here: ") ||
				!strings.Contains(wrong.text, want):
				t.Errorf("%.40q: %s, want “%s”", text, wrong.text, want)
			}
		}
	}
}
