package sheet

import (
	"fmt"
	"strings"

	"preflash/parser"
)

// Quote writes text as a basic string of TOML, which has fewer escapes than Go
// has, without a character that acts on a terminal or hides.
func Quote(text string) string {
	var b strings.Builder
	b.WriteByte('"')
	for _, r := range text {
		switch {
		case r == '"' || r == '\\':
			b.WriteByte('\\')
			b.WriteRune(r)
		case r > 0xFFFF && parser.Hidden(r):
			fmt.Fprintf(&b, `\U%08X`, r)
		case parser.Hidden(r):
			fmt.Fprintf(&b, `\u%04X`, r)
		default:
			b.WriteRune(r)
		}
	}
	b.WriteByte('"')
	return b.String()
}
