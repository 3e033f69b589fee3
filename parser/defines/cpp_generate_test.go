package defines

import (
	"fmt"
	"strings"

	"pgregory.net/rapid"
)

// configuration is a generated set of headers; main.h is read first.
type configuration map[string]string

// The generated configurations hold no error that cpp would stop at, and each
// name that they use is a known option.
var (
	flags     = []string{"BELT_DRIVE", "DUAL_FAN", "SOFT_START", "PANEL_LIGHT", "TRACE"}
	numbers   = []string{"AXES", "TOOLS", "STEPS", "LIMIT_A", "LIMIT_B", "SPARE"}
	pins      = []string{"FAN_PIN", "LAMP_PIN"}
	functions = []string{"TWICE", "LARGER", "FIRST", "JOIN", "CALL", "TAIL", "SPREAD"}
	derived   = []string{"HAS_TOOLS", "IS_DUAL", "ALIAS", "LOOP_A", "LOOP_B"}
	loose     = []string{"LOOSE_A", "LOOSE_B"} // operators without brackets
	lists     = []string{"GAINS", "RATES"}
)

func isPooled(name string) bool {
	for _, pool := range [][]string{flags, numbers, pins, functions, derived, loose, lists} {
		for _, known := range pool {
			if name == known {
				return true
			}
		}
	}
	return false
}

type generator struct {
	*rapid.T
	out     strings.Builder
	probes  int
	outside bool // conditions use names that are set outside
}

func (g *generator) int(lo, hi int) int { return rapid.IntRange(lo, hi).Draw(g.T, "n") }

func (g *generator) one(of ...string) string { return of[g.int(0, len(of)-1)] }

// configurations generates headers; with outside their conditions use the names
// EXT_A and EXT_B, which nothing defines.
func configurations(outside bool) *rapid.Generator[configuration] {
	return rapid.Custom(func(t *rapid.T) configuration {
		c := configuration{}
		g := &generator{T: t, outside: outside}
		if g.int(0, 4) == 0 {
			g.out.WriteString("\xef\xbb\xbf")
		}
		g.prologue()
		g.block(0, g.int(2, 10))
		c["main.h"] = g.finish()

		g = &generator{T: t, outside: outside}
		guard := g.int(0, 2)
		switch guard {
		case 0:
			g.line("#pragma once")
		case 1:
			g.line("#ifndef PART_H")
			g.line("#define PART_H")
		}
		g.block(1, g.int(1, 5))
		if guard == 1 {
			g.line("#endif")
		}
		c["part.h"] = g.finish()
		return c
	})
}

// finish gives the text its line ends.
func (g *generator) finish() string {
	text := g.out.String()
	switch g.int(0, 5) {
	case 0:
		text = strings.ReplaceAll(text, "\n", "\r\n")
	case 1:
		text = strings.TrimSuffix(text, "\n")
	}
	return text
}

func (g *generator) line(text string) {
	g.out.WriteString(text)
	g.out.WriteByte('\n')
}

// prologue defines the macros that are called, so that no call is an error.
func (g *generator) prologue() {
	g.line("#define ALIAS TWICE")
	for _, f := range functions {
		g.directive(g.function(f))
	}
}

func (g *generator) function(name string) string {
	switch name {
	case "TWICE":
		return g.one("define TWICE(x) ((x) * 2)", "define TWICE(x) ((x) + x)",
			"define TWICE( value ) (value + TWICE(value))")
	case "LARGER":
		return g.one("define LARGER(a,b) ((a) > (b) ? (a) : (b))", "define LARGER(a, b) FIRST((a) < b, a)")
	case "FIRST":
		return g.one("define FIRST(a,...) (a)", "define FIRST(a, rest...) a",
			"define FIRST(...) TAIL(0, __VA_ARGS__)")
	case "JOIN":
		return g.one("define JOIN(a,b) a##b", "define JOIN(a, b) a ## b", "define JOIN(a,b) a %:%: b")
	case "CALL":
		return g.one("define CALL(f,x) f(x)", "define CALL(f, x) f (x)")
	case "TAIL":
		return g.one("define TAIL(a, b...) (a, ## b)", "define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)")
	}
	return g.one("define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))",
		"define SPREAD(x, y...) ((x) , ## y)")
}

// block writes some lines, conditionals among them.
func (g *generator) block(depth, lines int) {
	for range lines {
		switch k := g.int(0, 22); {
		case k > 19:
			g.probe()
		case k < 7:
			g.directive(g.define())
		case k < 8:
			if g.outside && g.int(0, 5) == 0 {
				g.directive("undef EXT_A")
			} else {
				g.directive("undef " + g.name())
			}
		case k < 10:
			g.line(g.one("//", "// ", "  //", "\t//  ", "///") + "#" + g.define())
		case k < 12:
			g.text()
		case k < 13:
			if depth == 0 {
				g.directive(g.one(`include "part.h"`, `include "part.h"`,
					"include <sub//empty.h> // not /* here", "warning don't /* here", "pragma pack", "",
					"line 3"))
			}
		case depth < 4:
			g.conditional(depth)
		}
	}
}

// probe writes down what an expression comes to, as far as a few questions
// show it.
func (g *generator) probe() {
	g.probes++
	x := "(" + g.expression(g.int(1, 3)) + ")"
	for i, question := range []string{" < 0", " == 0", " & 1", " < 7", " % 3 == 1"} {
		g.line([]string{"#if ", "#elif "}[min(i, 1)] + x + question)
		g.line(fmt.Sprintf("#define PROBE_%d %d", g.probes, i))
	}
	g.line("#endif")
}

func (g *generator) name() string {
	return g.one(append(append(append([]string(nil), flags...), numbers...), pins...)...)
}

func (g *generator) define() string {
	switch g.int(0, 11) {
	case 10:
		return "define " + g.one(loose...) + " " +
			g.one("1 || 1", "0 && 1", "1 ? 0 : 1", "0, 1", "- 4", "+3", "!0", "~ 1", "-1u", "1 < 2",
				g.expression(1))
	case 11:
		return "define " + g.one(lists...) + " { " +
			g.one("21.70, 20.0", "22.2", "80, -80 ,400,93.5f", "{ 1, 2 }, FIRST(3, 4)",
				`"Größe, 285 °C", "€"`, `"a, b" , ',' , 10'000`) + g.one("}", " }")
	case 0, 1, 2:
		return "define " + g.one(flags...) + g.one("", "", " 1", " true", " 0", " false", " 0x1", " 3")
	case 3:
		return "define " + g.one(pins...) + " " + g.one("-1", "0", "7", "PIN_NONE", "(4 - 9)")
	case 4:
		return g.function(g.one(functions...))
	case 5:
		return g.one("define HAS_TOOLS defined(TOOLS)", "define HAS_TOOLS (defined TOOLS && TOOLS)",
			"define IS_DUAL ENABLED(DUAL_FAN)", "define LOOP_A LOOP_B + 1", "define LOOP_B (LOOP_A | 4)")
	}
	return "define " + g.one(numbers...) + g.one(" ", "\t", "   ") + g.expression(g.int(0, 2))
}

// text writes lines that are no directives but may look like some.
func (g *generator) text() {
	g.line(g.one(
		"int x = 1; /* #define TRACE */",
		"// don't #define TRACE",
		`const char *s = "/* not a comment"; // "`,
		`const char *s = "\" // still";`,
		"char c = '\"'; /* one */ char d = '/'; /* two",
		"#define TRACE 9\n*/ int after;",
		"/*\n#define TRACE 1\n * #define SPARE 2\n#if 0\n*/",
		"/**/ /* a */ // b \\\n#define TRACE 5",
		"R\"x(\n#define TRACE 4\n)\" )x\"",
		"x R\"(\\\n/*)\" // y",
		"long n = 1'000'000; // it's",
		"don't /* open",
		"a / b /c //*\n",
		"\t\f\v", "", "\\", "\\\n",
		"f(1, // x\n2);", "#", "%:", "/\\\n/ #define TRACE", "/\\\n* x *\\\n/",
	))
	// A block comment that the sample opens is closed by the next line.
	g.line("/* end */ ;")
}

func (g *generator) conditional(depth int) {
	switch g.int(0, 3) {
	case 0:
		g.directive(g.one("ifdef ", "ifndef ") + g.name())
	default:
		g.directive("if " + g.condition(g.int(0, 3)))
	}
	g.block(depth+1, g.int(0, 4))
	for range g.int(0, 2) {
		g.directive(g.one("elif "+g.condition(g.int(0, 2)), "elifdef "+g.name(), "elifndef "+g.name()))
		g.block(depth+1, g.int(0, 3))
	}
	if g.int(0, 1) == 0 {
		g.directive("else" + g.one("", " // other", " /* x */"))
		g.block(depth+1, g.int(0, 3))
	}
	g.directive("endif" + g.one("", " // "+g.name()))
}

// condition writes a condition over tests and numbers.
func (g *generator) condition(depth int) string {
	if depth > 0 {
		switch g.int(0, 4) {
		case 0, 1:
			return g.condition(depth-1) + g.one(" && ", " || ", "&&", "||") + g.condition(depth-1)
		case 2:
			return g.one("!", "! ", "") + "(" + g.condition(depth-1) + ")"
		case 3:
			return "(" + g.condition(depth-1) + " ? " + g.condition(depth-1) + " : " +
				g.condition(depth-1) + ")"
		}
	}
	if g.outside && g.int(0, 2) == 0 {
		return g.one("EXT_A", "!EXT_B", "defined EXT_A", "!defined(EXT_B)", "ENABLED(EXT_A)",
			"DISABLED(EXT_B)", "EXT_A > EXT_B", "(EXT_A ? AXES : TOOLS)", "ANY(EXT_A, TRACE)",
			"ALL(TRACE, EXT_B)", "NONE(EXT_A, TRACE)", "MANY(EXT_A, TRACE, DUAL_FAN)",
			"TERN(EXT_B, AXES, 1)", "LARGER(EXT_A, 2) > 1", "JOIN(EXT,_A) == 1", "ALIAS(EXT_B) == 2")
	}
	switch g.int(0, 13) {
	case 12:
		return g.one("0 && ", "1 || ", "1 && ", "0 || ", "!", "-", "1 ? 0 : ", "0 ? 1 : ") + g.one(loose...)
	case 13:
		return g.one(loose...) + g.one("", " && 0", " || 1", " ? 0 : 1", " == 1", " != TOOLS", " + 1")
	case 0:
		return g.one("defined ", "!defined ") + g.name()
	case 1:
		return g.one("defined(", "!defined ( ") + g.name() + ")"
	case 2, 3:
		return g.one("ENABLED(", "DISABLED(", "!ENABLED( ") + g.one(flags...) + ")"
	case 4:
		return g.one("ANY", "ALL", "NONE", "ENABLED", "DISABLED", "MANY") + "(" + g.one(flags...) + ", " +
			g.one(flags...) + "," + g.one(flags...) + ")"
	case 5:
		return g.one("BOTH", "EITHER") + "(" + g.one(flags...) + "," + g.one(flags...) + ")"
	case 6:
		return g.one("PIN_EXISTS(FAN)", "PIN_EXISTS(LAMP)", "ANY_PIN(FAN, LAMP)", "defined(FAN_PIN)")
	case 7:
		return g.one(numbers...) + g.one(" == ", " != ", " > ", ">=", "<", " <= ") +
			g.one("0", "1", "2", g.one(numbers...))
	case 8:
		return g.one("HAS_TOOLS", "IS_DUAL", "true", "false", "0", "1", g.one(numbers...),
			"not "+g.one(numbers...), "LOOP_A", "LOOP_B == 5")
	}
	return g.expression(g.int(0, 3)) + g.one(" == ", " != ", " > ", " >= ", " < ", " <= ", " && ", " | ") +
		g.expression(g.int(0, 2))
}

// expression writes a whole number's computation, whose operands nest.
func (g *generator) expression(depth int) string {
	if depth == 0 {
		if g.outside && g.int(0, 9) == 0 {
			return "EXT_A"
		}
		return g.one(append(numbers, "0", "1", "2", "3", "7", "10", "-1", "0x10", "017", "0b101", "5u", "-1u",
			"3UL", "0xFFFFFFFFFFFFFFFF", "9223372036854775807", "0x7fff'ffff", "'A'", `'\n'`, `'\xff'`,
			"'ab'", "L'x'", "(AXES)", "TRACE_UNSET_0")[:]...)
	}
	x := func() string { return g.expression(depth - 1) }
	switch g.int(0, 12) {
	case 0, 1, 2:
		return "(" + x() + g.one(" + ", " - ", " * ", "+", "-", "*", " & ", "|", " ^ ") + x() + ")"
	case 3:
		return "(" + x() + g.one(" / ", " % ") + "(" + x() + " | 1))"
	case 4:
		return "(" + x() + g.one(" << ", " >> ") + "(" + x() + " % 70))"
	case 5:
		return g.one("-", "~", "!", "+", "- ", "!!") + "(" + x() + ")"
	case 6:
		return "(" + x() + " ? " + x() + " : " + x() + ")"
	case 7:
		return g.one("TWICE", "TWICE ", "ALIAS ") + "(" + x() + ")"
	case 8:
		return "LARGER(" + x() + ", " + x() + ")"
	case 9:
		return "FIRST(" + x() + "," + x() + ")"
	case 10:
		return g.one("JOIN(LIMIT,_A)", "JOIN(LIMIT_, B)", "JOIN(1,2)", "JOIN(,7)", "JOIN(TWI,CE)(3)",
			"CALL(TWICE, 4)", "CALL(JOIN(TW,ICE), AXES)", "FIRST(7)", "TAIL(5)", "TAIL(5,6)", "TAIL(5,)",
			"SPREAD(4)", "SPREAD(4, 5)", "TERN(TRACE, 3, 4)", "TERN0(DUAL_FAN, 3)", "TERN1(TRACE, AXES)",
			"(1 TERN_(TRACE, + 2))", "(1 IF_DISABLED(TRACE, + 3))", "COUNT_ENABLED(TRACE, DUAL_FAN)",
			"WITHIN(AXES, 1, 3)")
	case 11:
		return x() + g.one(" + ", " - ", " * ", " < ", " == ", " & ", " && ", " || ", " << 1 + ") + x()
	}
	return x()
}

// directive writes a directive with odd blanks, comments and splices.
func (g *generator) directive(text string) {
	hash := g.one("#", "#", "#", "# ", "  #", "\t# ", "%:", "/* x */ #", "#/**/")
	text = hash + text
	if g.int(0, 3) == 0 {
		text = g.comments(text)
	}
	if g.int(0, 3) == 0 {
		text += g.one(" // trailing", "// it's", " /* one */", "/* one */ // two", " /* over\ntwo lines */",
			"   ", "\t// \" quote")
	}
	if g.int(0, 4) == 0 {
		text = g.splices(text)
	}
	g.line(text)
}

// comments puts comments in the places of some blanks that stand in no string.
func (g *generator) comments(text string) string {
	plain := strings.IndexAny(text, `'"<`)
	if plain < 0 {
		plain = len(text)
	}
	var b strings.Builder
	for i := range len(text) {
		if i < plain && text[i] == ' ' && text[max(i-1, 0)] != '/' && g.int(0, 2) == 0 {
			b.WriteString(g.one(" /* a */ ", "/**/", " /* a\n b */ ", "/* // */", "/*\n#define TRACE\n*/",
				"/* ' */", "\t"))
		} else {
			b.WriteByte(text[i])
		}
	}
	return b.String()
}

// splices breaks the line anywhere.
func (g *generator) splices(text string) string {
	for range g.int(1, 3) {
		at := g.int(0, len(text))
		for at > 0 && strings.IndexByte("\\ \t\n", text[at-1]) >= 0 {
			at-- // not into another splice, which would make a stray backslash
		}
		text = text[:at] + g.one("\\\n", "\\\n", "\\ \n", "\\\t \n", "\\\n\\\n") + text[at:]
	}
	return text
}

func (c configuration) String() string {
	return fmt.Sprintf("-- main.h --\n%s\n-- part.h --\n%s\n", c["main.h"], c["part.h"])
}
