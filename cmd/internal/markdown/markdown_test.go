package markdown

import (
	"regexp"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestEscape(t *testing.T) {
	tests := []struct{ in, want string }{
		{"214.2 °C, 14.2 K hotter", "214.2 °C, 14.2 K hotter"},
		{"*a* _b_ `c` ~~d~~", "\\*a\\* \\_b\\_ \\`c\\` \\~\\~d\\~\\~"},
		{"[x](y) ![z](y)", `\[x\]\(y\) \!\[z\]\(y\)`},
		{"<b>&amp;</b>", "&lt;b&gt;&amp;amp;&lt;/b&gt;"},
		{"@bench #12 :100: x", `@<!-- -->bench \#<!-- -->12 :<!-- -->100: x`},
		{"http://a.invalid www.a.invalid", `http:<!-- -->//a.invalid www.<!-- -->a.invalid`},
		{"a|b\n# c\x1b", `a\|b\\u000a\# c\\u001b`},
	}
	for _, tt := range tests {
		if got := Escape(tt.in); got != tt.want {
			t.Errorf("Escape(%q)\ngot  %s\nwant %s", tt.in, got, tt.want)
		}
	}
}

// None is left out while each has room for a line: first notes say only what to
// do, then warnings, then errors.

func TestCode(t *testing.T) {
	tests := []struct{ in, want string }{
		{"a/b.cfg:3", "`a/b.cfg:3`"},
		{"a`b", "`` a`b ``"},
		{"``", "``` `` ```"},
		{" a ", "`  a  `"},
		{"a\n\x1b", "`a\\u000a\\u001b`"},
		{"", "`  `"},
	}
	for _, tt := range tests {
		if got := Code(tt.in); got != tt.want {
			t.Errorf("Code(%q) = %q, want %q", tt.in, got, tt.want)
		}
	}
}

// No punctuation from a configuration is left live.
func TestEscapeLeavesNothingLive(t *testing.T) {
	live := regexp.MustCompile("(^|[^\\\\])[`*_\\[\\]|~$#!]|[@:.]/?[a-z]|<|&[^agl]")
	rapid.Check(t, func(rt *rapid.T) {
		text := rapid.StringOf(rapid.SampledFrom([]rune("aw \\`*_[]()<>&|~$@#!:/\n"))).Draw(rt, "text")
		got := strings.ReplaceAll(Escape(text), "<!-- -->", "\x00")
		// A backslash that is itself escaped escapes nothing.
		if got = strings.ReplaceAll(got, `\\`, ""); live.MatchString(got) {
			rt.Errorf("%q is still live in %q", text, got)
		}
	})
}

// A comment stays below 60,000 bytes whatever it is about.
