package patch

import (
	"fmt"
	"io"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestHarmless(t *testing.T) {
	for _, tt := range []struct{ text, want string }{
		{"::error::x", `:\u003aerror::x`},
		{"  \t::error::x\n::set x=y\n", "  \t:\\u003aerror::x\n:\\u003aset x=y\n"},
		{"##[group]x", `#\u0023[group]x`},
		{"see ##vso[task.x]y", `see #\u0023vso[task.x]y`},
		{"#### x", `#\u0023#\u0023 x`},
		{"--- a\n+++ b\n~~~ c\n", "-\\u002d- a\n+\\u002b+ b\n~\\u007e~ c\n"},
		{"[[attach]]", `[\u005battach]]`},
		{"\x1b[1m::error::x\x1b[0m", "\x1b[1m:\\u003aerror::x\x1b[0m"},
		{"a::b # c: d - e -- f", "a::b # c: d - e -- f"},
		{": :x\n# #x\n", ": :x\n# #x\n"},
		{"", ""},
	} {
		if got := Harmless(tt.text); got != tt.want {
			t.Errorf("%q gives %q, want %q", tt.text, got, tt.want)
		}
	}
}

// However the text comes, no line begins like a command, and nothing else
// changes.
func TestHarmlessInPieces(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringOfN(rapid.SampledFrom([]rune(":#-[ \t\nab")), 0, 40, -1).Draw(t, "text")
		var b strings.Builder
		w := HarmlessWriter(&b)
		for rest := text; rest != ""; {
			n := rapid.IntRange(1, len(rest)).Draw(t, "piece")
			if _, err := io.WriteString(w, rest[:n]); err != nil {
				t.Fatal(err)
			}
			rest = rest[n:]
		}
		got := b.String()
		if got != Harmless(text) {
			t.Fatalf("%q in pieces gives %q, whole %q", text, got, Harmless(text))
		}
		for line := range strings.Lines(got) {
			line = strings.TrimLeft(line, " \t")
			if strings.HasPrefix(line, "::") || strings.HasPrefix(line, "--") ||
				strings.HasPrefix(line, "[[") || strings.Contains(line, "##") {
				t.Fatalf("%q gives the line %q", text, line)
			}
		}
		back := got
		for _, mark := range ":#-[" {
			back = strings.ReplaceAll(back, fmt.Sprintf(`\u%04x`, mark), string(mark))
		}
		if back != text {
			t.Fatalf("%q became %q", text, got)
		}
	})
}
