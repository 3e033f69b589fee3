package patch

import (
	"testing"
	"unicode/utf8"

	"preflash/parser"
)

func TestVisible(t *testing.T) {
	tests := []struct{ in, want string }{
		{"", ""},
		{"plain text\twith a tab", "plain text\twith a tab"},
		{"214.2 °C → 200 Ω", "214.2 °C → 200 Ω"},
		{"\x1b[31mred", `\u001b[31mred`},
		{"a\r\nb\x00\x7f", `a\u000d\u000ab\u0000\u007f`},
		{"\u0085\u009b1A", `\u0085\u009b1A`},
		{"user\u202etxt.exe\u2066", `user\u202etxt.exe\u2066`},
		{"\ufeffzero\u200bwidth\u00ad", `\ufeffzero\u200bwidth\u00ad`},
		{"tag\U000e0041", `tag\U000e0041`},
		{"two\u2028lines\u2029", `two\u2028lines\u2029`},
		{"D\xfcse", `D\xfcse`},
		{"\ufffd stays", "\ufffd stays"},
	}
	for _, tt := range tests {
		if got := Visible(tt.in); got != tt.want {
			t.Errorf("Visible(%q) = %q, want %q", tt.in, got, tt.want)
		}
	}
}

func FuzzVisible(f *testing.F) {
	f.Add("a\x1b[2J\u202e\xff")
	f.Fuzz(func(t *testing.T, s string) {
		got := Visible(s)
		if !utf8.ValidString(got) {
			t.Errorf("%q is not UTF-8", got)
		}
		for _, r := range got {
			if r != '\t' && parser.Hidden(r) {
				t.Errorf("%q still holds %U", got, r)
			}
		}
		if Visible(got) != got {
			t.Errorf("%q changes when it is made visible again", got)
		}
	})
}
