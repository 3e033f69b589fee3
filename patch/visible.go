package patch

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"preflash/parser"
)

// Visible writes hidden characters, but for the tab, as \uXXXX (\UXXXXXXXX
// above U+FFFF) and bytes that are not UTF-8 as \xNN, so that no text from a
// configuration can act on a terminal or mislead its reader. A line break is
// escaped too: split text into lines first.
func Visible(s string) string {
	if plain(s) {
		return s
	}
	var b strings.Builder
	for i := 0; i < len(s); {
		r, n := utf8.DecodeRuneInString(s[i:])
		if r == utf8.RuneError && n == 1 {
			fmt.Fprintf(&b, `\x%02x`, s[i])
		} else if r == '\t' || !parser.Hidden(r) {
			b.WriteString(s[i : i+n])
		} else if r > 0xffff {
			fmt.Fprintf(&b, `\U%08x`, r)
		} else {
			fmt.Fprintf(&b, `\u%04x`, r)
		}
		i += n
	}
	return b.String()
}

// plain reports whether s is printable ASCII and tabs: most text is.
func plain(s string) bool {
	for i := range len(s) {
		if c := s[i]; c >= 0x7f || c < ' ' && c != '\t' {
			return false
		}
	}
	return true
}
