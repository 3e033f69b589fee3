package sheet

import (
	"strings"
	"testing"

	"github.com/pelletier/go-toml/v2"
	"pgregory.net/rapid"

	"preflash/parser"
)

func TestQuote(t *testing.T) {
	for text, want := range map[string]string{
		``:               `""`,
		`a "b" \c`:       `"a \"b\" \\c"`,
		"\x1b[31m\a\t":   `"\u001B[31m\u0007\u0009"`,
		"a\u202eb":       `"a\u202Eb"`,
		"\U000e0041, °C": `"\U000E0041, °C"`,
	} {
		if got := Quote(text); got != want {
			t.Errorf("Quote(%q) = %s, want %s", text, got, want)
		}
	}
}

// Whatever is quoted hides nothing and is read as what it was.
func TestQuoteIsRead(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.String().Draw(t, "text")
		quoted := Quote(text)
		if strings.ContainsFunc(quoted, parser.Hidden) {
			t.Errorf("something hides in %q", quoted)
		}
		var read struct{ Key string }
		if err := toml.Unmarshal([]byte("Key = "+quoted), &read); err != nil || read.Key != text {
			t.Errorf("%q is written %s and read as %q: %v", text, quoted, read.Key, err)
		}
	})
}
