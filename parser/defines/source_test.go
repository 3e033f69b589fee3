package defines

import (
	"strings"
	"testing"

	"preflash/parser"
)

// files are the contents of a tree by path.
type files map[string]string

// read loads main.h of a tree. X and names with OPTION in them are options
// of the style.
func read(t testing.TB, contents files, absent ...string) (*source, error) {
	t.Helper()
	dir := t.TempDir()
	for name, text := range contents {
		writeFile(t, dir, name, text)
	}
	option := func(name string) bool { return name == "X" || strings.Contains(name, "OPTION") }
	return load(openTree(t, dir), parser.Request{Files: []string{"main.h"}, Absent: absent}, option)
}

// mustRead is read for contents without an error.
func mustRead(t testing.TB, contents files) *source {
	t.Helper()
	s, err := read(t, contents)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func mustReadText(t testing.TB, text string) *source {
	t.Helper()
	return mustRead(t, files{"main.h": text})
}

// describe writes the final state of a name: its value after an equals sign,
// or that it has none.
func (s *source) describe(name string) string {
	m := s.macro(name)
	switch m.state {
	case parser.Yes:
		return "=" + m.winner.value()
	case parser.Maybe:
		return "unknown"
	}
	return "off"
}

func TestFinalState(t *testing.T) {
	for _, test := range []struct{ name, text, want string }{
		{"defined", "#define X 3\n", "=3"},
		{"defined empty", "#define X\n", "="},
		{"not defined", "#define Y\n", "off"},
		{"commented out", "//#define X 3\n", "off"},
		{"in a block comment", "/*\n#define X 3\n*/\n", "off"},
		{"undefined later", "#define X 3\n#undef X\n", "off"},
		{"defined again after that", "#define X 3\n#undef X\n#define X 4\n", "=4"},
		{"the last active one wins", "#define X 3\n#define X 4\n#if 0\n#define X 5\n#endif\n", "=4"},
		{"dead branch", "#if 0\n#define X 3\n#endif\n", "off"},
		{"else of a dead branch", "#if 0\n#else\n#define X 3\n#endif\n", "=3"},
		{"elif", "#if 0\n#elif 1\n#define X 3\n#elif 1\n#define X 4\n#else\n#define X 5\n#endif\n", "=3"},
		{"elifdef", "#define Y\n#if 0\n#elifdef Y\n#define X 3\n#endif\n", "=3"},
		{"elifndef", "#define Y\n#if 0\n#elifndef Y\n#define X 3\n#else\n#define X 4\n#endif\n", "=4"},
		{"nested", "#if 1\n#if 0\n#if 1\n#define X 1\n#endif\n#else\n#define X 2\n#endif\n#endif\n", "=2"},
		{"conditions in dead branches do not matter",
			"#if 0\n#if 1/0\n#elif (\n#endif\n#else\n#define X 1\n#endif\n", "=1"},
		{"conditions after the branch that was read do not matter",
			"#if 1\n#define X 1\n#elif UNKNOWN(\n#endif\n", "=1"},
		{"guard", "#ifndef X\n#define X 3\n#endif\n#ifndef X\n#define X 4\n#endif\n", "=3"},
		{"value with a comment inside", "#define X 1 /* one */ + /* two */ 2 // three\n", "=1   +   2"},
		{"string with slashes", "#define X \"a // b /* c\" // d\n", "=\"a // b /* c\""},
		{"quote in a character", "#define X '\"' // \"\n", "='\"'"},
		{"no space before a string", "#define X\"a\"\n", "=\"a\""},
		{"splice", "#define X 1\\\n2\n", "=12"},
		{"splice with blanks and CRLF", "#define X 1\\ \t\r\n2\r\n", "=12"},
		{"splice in the keyword and the name", "#def\\\nine X\\\nY 3\n#define X XY\n", "=XY"},
		{"spliced line comment", "// a \\\n#define X 3\n", "off"},
		{"comment that hides a line end", "#define X 1 /*\n*/ + 2\n", "=1   + 2"},
		{"directive after a comment", "/* a\n b */ #define X 3\n", "=3"},
		{"digraph", "%:define X 3\n", "=3"},
		{"blanks around the hash", " \t# \t define \t X \t 3 \t \n", "=3"},
		{"no last line end", "#define X 3", "=3"},
		{"backslash at the end of the file", "#define X 3 \\", "=3 \\"},
		{"BOM", "\xef\xbb\xbf#define X 3\n", "=3"},
		{"old line ends", "#define Y\r#define X 3\r", "=3"},
		{"Latin-1 ends a name", "#define X\xf6 3\n", "=\xf6 3"},
		{"trigraphs are off", "#define X a ??/\n#define Y\n", "=a ??/"},
		{"text is no directive", "int a; #define X 3\n", "off"},
		{"raw string over lines", "R\"(\n#define X 3\n)\"\n", "off"},
		{"open quote ends with its line", "don't\n#define X 3 // '\n", "=3"},
		{"open quote hides a comment's start", "don't /* open\n#define X 3\n", "=3"},
		{"digit separator", "#define X 1'000 // c\n", "=1'000"},
		{"directive-like text in a condition's comment", "#if 1 /*\n#else\n*/\n#define X 1\n#endif\n", "=1"},
		{"slashes in a header's name", "#include <a//b/*c>\n#define X 3\n", "=3"},
		{"null directive, line marker, pragma",
			"#\n# 33 \"a.h\"\n#pragma pack(1)\n#line 4\n#warning don't\n#define X 3\n", "=3"},
	} {
		t.Run(test.name, func(t *testing.T) {
			if got := mustReadText(t, test.text).describe("X"); got != test.want {
				t.Errorf("%q gives %s, want %s", test.text, got, test.want)
			}
		})
	}
}

// Unknown conditions: UNKNOWN is set outside.
func TestUnknownBranches(t *testing.T) {
	for _, test := range []struct{ name, text, want string }{
		{"if", "#if UNKNOWN\n#define X 3\n#endif\n", "unknown"},
		{"ifdef", "#ifdef UNKNOWN\n#define X 3\n#endif\n", "unknown"},
		{"ifndef", "#ifndef UNKNOWN\n#define X 3\n#endif\n", "unknown"},
		{"enabled", "#if ENABLED(UNKNOWN)\n#define X 3\n#endif\n", "unknown"},
		{"call", "#if UNKNOWN(A, (B)) > 3\n#define X 3\n#endif\n", "unknown"},
		{"else", "#if UNKNOWN\n#else\n#define X 3\n#endif\n", "unknown"},
		{"undef", "#define X 3\n#if UNKNOWN\n#undef X\n#endif\n", "unknown"},
		{"another value", "#define X 3\n#if UNKNOWN\n#define X 4\n#endif\n", "unknown"},
		{"the same value", "#define X 3\n#if UNKNOWN\n#define X 3 // again\n#endif\n", "=3"},
		{"the same value in all branches",
			"#if UNKNOWN\n#define X 3\n#elif UNKNOWN2\n#define X  3\n#else\n#define X 3\n#endif\n", "=3"},
		{"not in all branches", "#if UNKNOWN\n#define X 3\n#elif UNKNOWN2\n#define X 3\n#endif\n", "unknown"},
		{"dead branch between",
			"#if UNKNOWN\n#define X 3\n#elif 0\n#define X 4\n#else\n#define X 3\n#endif\n", "=3"},
		{"true elif makes the rest dead",
			"#if UNKNOWN\n#define X 3\n#elif 1\n#define X 3\n#else\n#define X 4\n#endif\n", "=3"},
		{"settled afterwards", "#if UNKNOWN\n#define X 3\n#endif\n#undef X\n#define X 4\n", "=4"},
		{"settled within the branch", `#if UNKNOWN
#define Y 1
#if Y
#define X 3
#else
#define X 4
#endif
#else
#define X 3
#endif
`, "=3"},
		{"undefined both ways", "#define X\n#if UNKNOWN\n#undef X\n#else\n#undef X\n#endif\n", "off"},
		{"nested", "#if UNKNOWN\n#if UNKNOWN2\n#define X 3\n#endif\n#endif\n", "unknown"},
		{"dead within unknown", "#if UNKNOWN\n#if 0\n#define X 3\n#endif\n#endif\n", "off"},
		{"unknown within dead", "#if 0\n#if UNKNOWN\n#define X 3\n#endif\n#endif\n", "off"},
		{"depends on an unknown macro", "#if UNKNOWN\n#define Y 1\n#endif\n#if Y\n#define X 3\n#endif\n",
			"unknown"},
		{"does not depend on it after all",
			"#if UNKNOWN\n#define Y 1\n#else\n#define Y 1\n#endif\n#if Y\n#define X 3\n#endif\n", "=3"},
		{"defined either way",
			"#if UNKNOWN\n#define Y 1\n#else\n#define Y 2\n#endif\n#ifdef Y\n#define X 3\n#endif\n", "=3"},
		{"an option is known to be off", "#if OPTION_A\n#define X 3\n#endif\n", "off"},
		{"mentioned in a comment is known to be off",
			"//#define UNKNOWN\n#if ENABLED(UNKNOWN)\n#define X 3\n#endif\n", "off"},
		{"mentioned in a block comment too",
			"/*\n * #define UNKNOWN\n */\n#ifdef UNKNOWN\n#define X 3\n#endif\n", "off"},
		{"mentioned later too", "#ifdef UNKNOWN\n#define X 3\n#endif\n#if 0\n#define UNKNOWN\n#endif\n",
			"off"},
		{"undefined by hand", "#undef UNKNOWN\n#ifdef UNKNOWN\n#define X 3\n#endif\n", "off"},
		{"value of the outside", "#define X UNKNOWN\n", "=UNKNOWN"},
	} {
		t.Run(test.name, func(t *testing.T) {
			if got := mustReadText(t, test.text).describe("X"); got != test.want {
				t.Errorf("%q gives %s, want %s", test.text, got, test.want)
			}
		})
	}
}

func TestMacroTellsItsPlaces(t *testing.T) {
	s := mustReadText(t, `#define A 1
//#define A 2
#if 0
#define A 3
#endif
#undef A
#define A 4
#define A 5 // wins
#define B 1
#undef B
#if BOARD(7)
#define C 1
#endif
#ifdef C
#define D 1
#endif
#if BOARD(8)
#define E 6
#else
#define E 6
#endif
`)
	lines := func(list []*define) string {
		var b strings.Builder
		for _, d := range list {
			n, _ := d.at.Position()
			b.WriteString(string(rune('a' + n - 1)))
		}
		return b.String()
	}
	a := s.macro("A")
	if line, _ := a.winner.at.Position(); line != 8 || a.winner.body.Text() != "5" {
		t.Errorf("A is won by %q in line %d, want 5 in line 8", a.winner.body.Text(), line)
	}
	if got := lines(a.others); got != "ag" {
		t.Errorf("A hides lines %s, want ag", got)
	}
	if got := a.others[0].ended.Text(); got != "#undef A\n" {
		t.Errorf("the first define of A is ended by %q", got)
	}
	if !a.others[1].ended.IsZero() {
		t.Errorf("the second define of A is ended by %q", a.others[1].ended.Text())
	}
	if got := lines(s.mentions("A")); got != "abdgh" {
		t.Errorf("A is mentioned in lines %s, want abdgh", got)
	}
	if b := s.macro("B"); b.state != parser.No || b.undef.Text() != "#undef B\n" || lines(b.others) != "i" {
		t.Errorf("B: %v, undefined by %q, others %s", b.state, b.undef.Text(), lines(b.others))
	}
	c := s.macro("C")
	want := `it depends on "#if BOARD(7)" (` + c.others[0].at.File.Name +
		`:11): BOARD is set outside these files`
	if c.why != want {
		t.Errorf("C: %s, want %s", c.why, want)
	}
	if d := s.macro("D"); !strings.Contains(d.why, `"#ifdef C" (`) ||
		!strings.Contains(d.why, `C depends on "#if BOARD(7)"`) {
		t.Errorf("D: %s", d.why)
	}
	if d := s.mentions("D")[0]; d.reached != parser.Maybe || d.active != parser.Maybe ||
		!strings.Contains(d.condition, "#ifdef C") {
		t.Errorf("D: reached %v, active %v, condition %s", d.reached, d.active, d.condition)
	}
	if e := s.macro("E"); e.state != parser.Yes || lines(e.same)+lines([]*define{e.winner}) != "rt" {
		t.Errorf("E: %v, winner %s, same %s", e.state, lines([]*define{e.winner}), lines(e.same))
	}
	if m := s.macro("BOARD"); m.state != parser.Maybe || m.why != "BOARD is set outside these files" {
		t.Errorf("BOARD: %v, %s", m.state, m.why)
	}
	if s.macro("A").winner != s.mentions("A")[4] {
		t.Error("one line gives two defines")
	}
	var names []string
	for name := range s.names {
		names = append(names, name)
	}
	if got := strings.Join(names, ""); got != "ABCDE" {
		t.Errorf("names are %s", got)
	}
}

func TestSpans(t *testing.T) {
	for _, test := range []struct{ text, at, body, line, uncomment string }{
		{"\n#define X 3 // c\n\n", "X", "3", "#define X 3 // c\n", ""},
		{"  #define  X   3 + 4\t\r\n", "X", "3 + 4", "  #define  X   3 + 4\t\r\n", ""},
		{"#define X\n", "X", "", "#define X\n", ""},
		{"#define X // c", "X", "", "#define X // c", ""},
		{"#define X(a, b) a\n", "X", "a", "#define X(a, b) a\n", ""},
		{"#define X /* a */ 3 /* b */ 4 /* c\n */ \n", "X",
			"3 /* b */ 4", "#define X /* a */ 3 /* b */ 4 /* c\n */ \n", ""},
		{"#define X\\\nY \\\n 3\\\n4 \\\n\n", "X\\\nY", "3\\\n4", "#define X\\\nY \\\n 3\\\n4 \\\n\n", ""},
		{"/* a\n*/ #define X 3\n", "X", "3", "*/ #define X 3\n", ""},
		{"  //#define X 3 // c\n", "X", "3", "  //#define X 3 // c\n", "//"},
		{"// #define X 3\n", "X", "3", "// #define X 3\n", "// "},
		{"//  #define X\n", "X", "", "//  #define X\n", "//"},
		{"///#define X /* c */\n", "X", "", "///#define X /* c */\n", "///"},
		{"//#define X 3 \\\n  4 // c\n", "X", "3 \\\n  4", "//#define X 3 \\\n  4 // c\n", "//"},
		{"//#define X 3 /* open\n", "X", "3", "//#define X 3 /* open\n", ""},
		{"/* #define X 3 */\n", "X", "3", "/* #define X 3 */\n", ""},
		{"/*\n * #define X 3 // c\n */\n", "X", "3", " * #define X 3 // c\n", ""},
	} {
		s := mustReadText(t, test.text)
		all := s.all()
		if len(all) != 1 {
			t.Errorf("%q: %d defines", test.text, len(all))
			continue
		}
		d := all[0]
		if d.at.Text() != test.at || d.body.Text() != test.body || d.line.Text() != test.line ||
			d.uncomment.Text() != test.uncomment {
			t.Errorf("%q: at %q, body %q, line %q, uncomment %q",
				test.text, d.at.Text(), d.body.Text(), d.line.Text(), d.uncomment.Text())
		}
		if d.commentedOut != strings.Contains(test.line, "X 3 */") &&
			d.commentedOut != (strings.TrimLeft(test.line, " ")[0] == '/' ||
				strings.HasPrefix(test.line, " *")) {
			t.Errorf("%q: commented out is %v", test.text, d.commentedOut)
		}
	}
}

// An include can mention a name that an earlier condition asked for.
func TestMentionInLaterInclude(t *testing.T) {
	s := mustRead(t, files{
		"main.h": "#ifdef LATE\n#define X 1\n#else\n#define X 2\n#endif\n#include \"part.h\"\n",
		"part.h": "//#define LATE\n",
	})
	if got := s.describe("X"); got != "=2" {
		t.Errorf("X is %s", got)
	}
}

// A macro that is saved and restored, as GNU cpp does it: each name has a stack
// of its own, and restoring one that was never saved changes nothing.
func TestPushAndPop(t *testing.T) {
	const push, pop = "#pragma push_macro(\"X\")\n", "#  pragma pop_macro( \"X\" ) // back\n"
	tests := []struct{ text, want string }{ // "-" for not defined
		{push + "#define X 1\n" + pop, "-"},
		{"#define X 1\n" + push + "#undef X\n" + pop, "1"},
		{"#define X 1\n" + push + "#undef X\n#define X 2\n" + push + "#undef X\n" + pop, "2"},
		{"#define X 1\n" + push + "#undef X\n#define X 2\n" + push + "#undef X\n" + pop + pop + pop, "1"},
		{"#define X 1\n" + pop, "1"},
		{"#define X 1\n#if 0\n" + push + "#endif\n#undef X\n" + pop, "-"},
		{"#define X 1\n#pragma push_macro(\"Y\")\n#undef X\n" + pop, "-"},
		{"#define X 1\n#pragma push_macro X\n#undef X\n" + pop, "-"},
		{"#define X 1\n#pragma push_\\\nmacro(\"X\")\n#undef X\n" + pop, "1"},
	}
	for _, test := range tests {
		m := mustReadText(t, test.text).macro("X")
		got := "-"
		if m.state == parser.Yes {
			got = m.winner.value()
		}
		if got != test.want || m.state == parser.Maybe {
			t.Errorf("%q: X is %q, want %q", test.text, got, test.want)
		}
	}
	for _, text := range []string{
		"#if UNTOLD\n" + push + "#endif\n",
		"#define X 1\n" + push + "#undef X\n#if UNTOLD\n" + pop + "#endif\n",
		"_Pragma(\"pop_macro(\\\"X\\\")\")\n",
	} {
		if _, err := read(t, files{"main.h": text}); err == nil {
			t.Errorf("%q: read, though it cannot be told what X is", text)
		}
	}
}
