package defines

import (
	"path/filepath"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"preflash/parser"
)

// What the reader calls known does not depend on names from outside: whatever
// they are set to, the outcome is the same.
func TestKnownWhateverTheOutside(t *testing.T) {
	dir := t.TempDir()
	main := filepath.Join(dir, "main.h")
	if err := write(dir, configuration{"main.h": "", "part.h": ""}); err != nil {
		t.Fatal(err)
	}
	tree := openTree(t, dir)
	option := func(name string) bool {
		return isPooled(name) || name == "PIN_NONE" || name == "TRACE_UNSET_0"
	}
	known, unknown := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		c := configurations(true).Draw(t, "configuration")
		with := func(first string, option func(string) bool) *source {
			s, err := load(tree.With(map[string][]byte{
				tree.Shown("main.h"): []byte(first + strings.TrimPrefix(c["main.h"], "\xef\xbb\xbf")),
				tree.Shown("part.h"): []byte(c["part.h"]),
			}), parser.Request{Files: []string{filepath.Base(main)}}, option)
			if err != nil {
				t.Skip(err) // a conditional went into a comment
			}
			return s
		}
		open := with("", option)
		for _, outside := range []string{
			"", "#define EXT_A 0\n", "#define EXT_A 1\n#define EXT_B 1\n",
			"#define EXT_B 2\n#define EXT_A 3\n", "#define EXT_A -7\n#define EXT_B 0\n",
		} {
			closed := with(outside,
				func(name string) bool { return option(name) || name == "EXT_A" || name == "EXT_B" })
			for name := range open.names {
				m, n := open.macro(name), closed.macro(name)
				if m.state == parser.Maybe {
					unknown++
					continue
				}
				known++
				if n.state == parser.Maybe {
					continue // such as a division by what was unknown
				}
				if m.state != n.state ||
					m.state == parser.Yes &&
						elements(normal(m.winner.value())) != elements(normal(n.winner.value())) {
					t.Fatalf("%s is %s, but %s after\n%s%s",
						name, open.describe(name), closed.describe(name), outside, c)
				}
			}
		}
	})
	if unknown == 0 || known < unknown {
		t.Errorf("%d outcomes known, %d unknown: the conditions say too little", known, unknown)
	}
}
