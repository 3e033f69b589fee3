package defines

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"preflash/parser"
)

// decide gives the truth of a condition after some lines, and why it is
// unknown.
func decide(t testing.TB, lines, condition string) (parser.Tri, string) {
	t.Helper()
	s := mustReadText(t, lines+"#if "+condition+"\n#define YES\n#else\n#define NO\n#endif\n")
	m := s.macro("YES")
	_, why, _ := strings.Cut(m.why, "): ")
	return m.state, why
}

func TestConditions(t *testing.T) {
	const lines = `#define ONE 1
#define TWO 2
#define EMPTY
#define YEP true
#define NOPE false
#define ZERO 0
#define HEX1 0x1
#define THREE 3
#define MINUS -1
#define TEXT "a"
#define EITHER_ONE 1 || 1
//#define OFF
#define SQUARE(x) ((x) * (x))
#define CAT(a, b) a##b
#define IS_ONE defined(ONE)
#define ALIAS ONE
#define LOOP LOOP + 1
#define REST(...) (0, ## __VA_ARGS__)
`
	for _, test := range []struct {
		condition string
		want      parser.Tri
	}{
		// C's operators and their precedence.
		{"1", parser.Yes}, {"0", parser.No}, {"2 + 2 * 2 == 6", parser.Yes}, {"(2 + 2) * 2 == 8", parser.Yes},
		{"0 && EITHER_ONE", parser.Yes}, {"!EITHER_ONE", parser.Yes}, {"1 ? EITHER_ONE : 0", parser.Yes},
		{"0 && (EITHER_ONE)", parser.No},
		{"1 || 0 && 0", parser.Yes}, {"!0 == 1", parser.Yes}, {"!3 > 1", parser.No}, {"~0 == -1", parser.Yes},
		{"7 / 2 == 3 && -7 / 2 == -3 && -7 % 3 == -1", parser.Yes}, {"1 << 4 == 16", parser.Yes},
		{"-8 >> 1 == -4", parser.Yes},
		{"6 & 3 == 3", parser.No}, {"(6 & 3) == 2", parser.Yes}, {"6 ^ 3 | 8 == 8", parser.Yes},
		{"10 - 3 - 2 == 5", parser.Yes},
		{"1 < 2 == 1", parser.Yes}, {"- - 1 == 1", parser.Yes}, {"1 ? 0 : 1", parser.No},
		{"0 ? 0 : 0 ? 0 : 5", parser.Yes},
		{"1 ? 2 ? 3 : 0 : 0", parser.Yes}, {"0, 1", parser.Yes}, {"1, 0", parser.No},
		{"1 <= 1 && 2 >= 3", parser.No},
		// Numbers.
		{"0x10 == 16 && 010 == 8 && 0b11 == 3", parser.Yes}, {"1'000 == 1000", parser.Yes},
		{"10UL == 10 && 10llu == 10", parser.Yes},
		{"'A' == 65 && '\\n' == 10 && '\\x41' == 65 && '\\101' == 65", parser.Yes},
		{"'ab' == 24930", parser.Yes}, {"'\\xff' < 0", parser.Yes},
		// Unsigned promotion, 64 bits, wrap-around.
		{"-1 > 0u", parser.Yes}, {"-1 > 0", parser.No}, {"-1 / 2u > 0", parser.Yes},
		{"(0 ? 0u : -1) > 0", parser.Yes},
		{"18446744073709551615 == -1", parser.Yes}, {"18446744073709551615 > 0", parser.Yes},
		{"0x7fffffffffffffff + 1 < 0", parser.Yes},
		{"0u - 1 == 0xffffffffffffffff", parser.Yes}, {"1 << 63 < 0", parser.Yes},
		{"1 << 64 == 0", parser.Yes}, {"-1 >> 70 == -1", parser.Yes}, {"16 << -2 == 4", parser.Yes},
		// Names and macros.
		{"ONE", parser.Yes}, {"OFF", parser.No}, {"OFF == 0", parser.Yes}, {"TWO > ONE", parser.Yes},
		{"MINUS < 0", parser.Yes}, {"YEP", parser.Yes}, {"NOPE", parser.No},
		{"true && !false", parser.Yes}, {"ONE and not ZERO", parser.Yes},
		{"defined ONE && !defined OFF", parser.Yes}, {"defined(EMPTY)", parser.Yes},
		{"IS_ONE", parser.Yes}, {"SQUARE(THREE) == 9", parser.Yes}, {"SQUARE(SQUARE(2)) == 16", parser.Yes},
		{"CAT(TW, O) == 2", parser.Yes},
		{"SQUARE == 0", parser.Yes}, {"LOOP == 1", parser.Yes}, {"REST() == 0 && REST(7) == 7", parser.Yes},
		{"ALIAS", parser.Yes},
		// The style's own tests.
		{"ENABLED(ONE)", parser.Yes}, {"ENABLED(EMPTY)", parser.Yes}, {"ENABLED(YEP)", parser.Yes},
		{"ENABLED(HEX1)", parser.Yes}, {"ENABLED(ALIAS)", parser.Yes},
		{"ENABLED(ZERO)", parser.No}, {"ENABLED(NOPE)", parser.No}, {"ENABLED(OFF)", parser.No},
		{"ENABLED(THREE)", parser.No}, {"ENABLED(3)", parser.No}, {"ENABLED(1)", parser.Yes},
		{"DISABLED(OFF)", parser.Yes}, {"DISABLED(ONE)", parser.No}, {"DISABLED(OFF, ONE)", parser.No},
		{"DISABLED(OFF, ZERO)", parser.Yes}, {"ENABLED(ONE, OFF)", parser.No},
		{"ANY(OFF, ONE)", parser.Yes}, {"ANY(OFF, ZERO)", parser.No}, {"ALL(ONE, EMPTY)", parser.Yes},
		{"NONE(OFF, NOPE)", parser.Yes}, {"BOTH(ONE, OFF)", parser.No},
		{"EITHER(ONE, OFF)", parser.Yes}, {"MANY(ONE, OFF, YEP)", parser.Yes}, {"MANY(ONE, OFF)", parser.No},
		{"COUNT_ENABLED(ONE, OFF, YEP) == 2", parser.Yes},
		{"TERN(ONE, 5, 6) == 5", parser.Yes}, {"TERN0(OFF, 5) == 0", parser.Yes},
		{"TERN1(OFF, 5) == 1", parser.Yes}, {"1 TERN_(OFF, + BAD)", parser.Yes},
		{"WITHIN(TWO, 1, 3)", parser.Yes},
		{"OPTION_Z == 0 && DISABLED(OPTION_Z) && !defined(OPTION_Z)", parser.Yes},
		// Three values.
		{"UNKNOWN", parser.Maybe}, {"!UNKNOWN", parser.Maybe}, {"defined UNKNOWN", parser.Maybe},
		{"ENABLED(UNKNOWN)", parser.Maybe}, {"UNKNOWN > 3", parser.Maybe},
		{"0 && UNKNOWN", parser.No}, {"UNKNOWN && 0", parser.No}, {"1 || UNKNOWN", parser.Yes},
		{"UNKNOWN || 1", parser.Yes}, {"1 && UNKNOWN", parser.Maybe}, {"0 || UNKNOWN", parser.Maybe},
		{"1 ? 1 : UNKNOWN", parser.Yes}, {"0 ? UNKNOWN : 0", parser.No}, {"UNKNOWN ? 1 : 1", parser.Yes},
		{"UNKNOWN ? 1 : 0", parser.Maybe},
		{"ANY(UNKNOWN, ONE)", parser.Yes}, {"ANY(UNKNOWN, OFF)", parser.Maybe},
		{"ALL(UNKNOWN, OFF)", parser.No}, {"NONE(UNKNOWN, ONE)", parser.No},
		{"MANY(UNKNOWN, OFF)", parser.No},
		{"TERN(UNKNOWN, 1, 1)", parser.Maybe}, {"UNKNOWN(1, 2) && 0", parser.No},
		{"__has_include(\"x.h\")", parser.Maybe}, {"__has_include(<x.h>) || 1", parser.Yes},
		{"ENABLED(TEXT)", parser.Maybe}, {"PIN_EXISTS(UNKNOWN)", parser.Maybe},
	} {
		if got, why := decide(t, lines, test.condition); got != test.want {
			t.Errorf("%s is %v (%s), want %v", test.condition, got, why, test.want)
		}
	}
}

// What a macro may stand for can hold an operator that takes the condition
// apart.
func TestLooseValueThatMayBe(t *testing.T) {
	for value, want := range map[string]parser.Tri{
		"1 || 1": parser.Maybe, "LOOSE": parser.Maybe, "(1) || (1)": parser.Maybe,
		"1": parser.No, "-1": parser.No, "(1 || 1)": parser.No, "": parser.No, "TIGHT": parser.No,
	} {
		lines := "#define LOOSE 1 || 1\n#define TIGHT (2)\n#if EXT\n#define A " + value + "\n#endif\n"
		if got, why := decide(t, lines, "0 && A"); got != want {
			t.Errorf("0 && A is %v (%s) where A may be %q, want %v", got, why, value, want)
		}
	}
}

// What cpp refuses is unknown, and the reason is said.
func TestBrokenConditions(t *testing.T) {
	for _, test := range []struct{ condition, why string }{
		{"1 / 0", "it divides by zero"},
		{"OPTION_A % OPTION_B", "it divides by zero"},
		{"1 / 0 || 1", "it divides by zero"},
		{"", "it is empty"},
		{"EMPTY", "it is empty"},
		{"1 +", "it is no complete expression"},
		{"(1", "it is no complete expression"},
		{"1 2", "it is no complete expression"},
		{"1 = 1", "it is no complete expression"},
		{"OPTION_A(3)", "it is no complete expression"},
		{"1.5 > 1", "1.5 is no whole number"},
		{"08", "08 is no whole number"},
		{"1_kg", "1_kg is no whole number"},
		{`"a" == 1`, "a string stands in it"},
		{"''", "no character stands between the quotes of ''"},
		{"@1", "a stray @ stands in it"},
		{"1 == 1 '", "a stray ' stands in it"},
		{`QUOTE + 1 "`, "a stray \" stands in it"},
		{"defined", "defined needs one name after it"},
		{"defined(A", "defined needs one name after it"},
		{"TWO_ARGS(1)", "the macro TWO_ARGS is called with the wrong number of arguments"},
		{"TWO_ARGS(1, 2", "the arguments of a macro are not closed"},
		{"PASTE(1 /, +)", "## joins / and + to no valid token"},
		{"BAD_HASH(1)", "the macro BAD_HASH is not defined properly"},
	} {
		got, why := decide(t, brokenLines, test.condition)
		if got != parser.Maybe || why != test.why {
			t.Errorf("%q is %v: %q, want unknown: %q", test.condition, got, why, test.why)
		}
		for _, c := range []struct {
			before, directive string
			broken            bool
		}{
			{"", "#if ", true},
			{"#if 0\n", "#elif ", true},
			{"#if 1\n", "#elif ", false}, // cpp does not look at it
			{"#if 0\n#if 1\n#endif\n#if 0\n", "#elif ", false},
			{"#if UNKNOWN\n", "#elif ", false},
			{"#if UNKNOWN\n#if 0\n", "#elif ", false},
			{"#if UNKNOWN\n", "#if ", false},
			{"#if 0\n", "#if ", false},
		} {
			open := strings.Count(c.before, "#if") - strings.Count(c.before, "#endif")
			if c.directive == "#if " {
				open++
			}
			text := brokenLines + c.before + c.directive + test.condition + "\n" +
				strings.Repeat("#endif\n", open)
			remarks := mustReadText(t, text).remarks
			if !c.broken {
				if len(remarks) > 0 {
					t.Errorf("%q: %s", text, remarks[0].Text)
				}
				continue
			}
			if len(remarks) != 1 {
				t.Errorf("%q: %d remarks, want one", text, len(remarks))
				continue
			}
			line, _ := remarks[0].At.Position()
			want := fmt.Sprintf("the compiler refuses the condition %q: %s; correct it",
				strings.TrimSpace(c.directive+test.condition), test.why)
			if remarks[0].Kind != parser.RemarkBroken ||
				line != strings.Count(brokenLines+c.before, "\n")+1 || remarks[0].Text != want {
				t.Errorf("line %d: %s; want %s", line, remarks[0].Text, want)
			}
		}
	}
}

const brokenLines = `#define TWO_ARGS(a, b) a
#define PASTE(a, b) a##b
#define BAD_HASH(a) # b
#define EMPTY
#define LATE(a, b) PASTE(a, b)
#define ONE_ARG(a) TWO_ARGS(a)
#define QUOTE "a
`

// What is merely unknown may be a condition that the compiler takes.
func TestUnknownIsNotBroken(t *testing.T) {
	for _, test := range []struct{ condition, why string }{
		{"UNKNOWN", "UNKNOWN is set outside these files"},
		{"UNKNOWN 3", "it is no complete expression"}, // UNKNOWN may be "1 ==" or nothing
		{"1 TERN_(UNKNOWN, + 2)", "it is no complete expression"},
		{"UNKNOWN && 1 / 0", "it divides by zero"},
		// UNKNOWN may hold a comma.
		{"ONE_ARG(UNKNOWN)", "the macro TWO_ARGS is called with the wrong number of arguments"},
		{"LATE(UNKNOWN, +)", "## joins UNKNOWN and + to no valid token"},
		{"'\xc3\xa9' == 1", "'\xc3\xa9' is no character whose number is known"},
		{"1 && UNKNOWN_A || UNKNOWN_B", "UNKNOWN_A is set outside these files"},
	} {
		got, why := decide(t, brokenLines, test.condition)
		if got != parser.Maybe || why != test.why {
			t.Errorf("%q is %v: %q, want unknown: %q", test.condition, got, why, test.why)
		}
		s := mustReadText(t, brokenLines+"#if "+test.condition+"\n#endif\n")
		if len(s.remarks) > 0 {
			t.Errorf("%q: %s", test.condition, s.remarks[0].Text)
		}
	}
}

// 0 && 1/0 is what cpp takes; the same on the left side it refuses.
func TestDivisionThatDoesNotCount(t *testing.T) {
	for condition, want := range map[string]parser.Tri{
		"0 && 1/0": parser.No, "1 || 1/0": parser.Yes, "1 ? 1 : 1/0": parser.Yes, "0 ? 1/0 : 0": parser.No,
	} {
		if got, why := decide(t, "", condition); got != want {
			t.Errorf("%s is %v (%s), want %v", condition, got, why, want)
		}
	}
}

// The files' own macros go before the style's tests of the same name.
func TestOwnTests(t *testing.T) {
	got, _ := decide(t, "#define ENABLED(x) (x + 1)\n#define ONE 1\n", "ENABLED(ONE) == 2")
	if got != parser.Yes {
		t.Errorf("a test that the files define is %v", got)
	}
	if got, _ = decide(t, "#define ENABLED(x) 0\n#define ONE 1\n", "ENABLED(ONE)"); got != parser.No {
		t.Errorf("a test that the files define is %v", got)
	}
}

// A condition that is computed as it stands comes to what its expanded text
// comes to, with the same doubt.
func TestAsItStandsAgrees(t *testing.T) {
	lines := `#define BELT_DRIVE
#define DUAL_FAN true
#define SOFT_START 0
//#define PANEL_LIGHT
#define TRACE 3
#define AXES 3
#define TOOLS 1
#define STEPS -4
#define LIMIT_A 010
#define LIMIT_B (AXES + 1)
#if EXT_C
#define SPARE - 1u
#endif
#define LOOSE_A 1 || 1
#define LOOSE_B +2
`
	s := mustReadText(t, lines)
	s.isOption = isPooled
	same, all := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		g := &generator{T: t, outside: rapid.Bool().Draw(t, "outside")}
		text := g.condition(g.int(0, 4))
		all++
		c := evaluation{s: s}
		got, why, ok := c.asItStands(text)
		if !ok {
			return
		}
		same++
		e := s.expander(tokenise(text, nil))
		want, because := e.compute(wholeNumbers)
		e.close()
		got.doubt, want.doubt = 0, 0
		if got != want || why != because {
			t.Fatalf("%s is %+v (%+v) as it stands, %+v (%+v) expanded", text, got, why, want, because)
		}
	})
	if same*10 < 3*all {
		t.Errorf("only %d of %d conditions were computed as they stand", same, all)
	}
}

func TestNumberAndExpand(t *testing.T) {
	s := mustReadText(t, `#define A 12
#define B (A * 2)
#define HALF(x) ((x) / 2)
#define FAST
#define LIST { A, B }
#define HALFWAY 0.5f
#if UNKNOWN
#define MAYBE 1
#endif
`)
	for _, test := range []struct {
		text  string
		want  float64
		known parser.Tri
	}{
		{"12", 12, parser.Yes}, {"-12.5", -12.5, parser.Yes}, {"B", 24, parser.Yes}, {"B / 5", 4, parser.Yes},
		{"B / 5.0", 4.8, parser.Yes},
		{"1e3f", 1000, parser.Yes}, {".5", 0.5, parser.Yes}, {"2.F", 2, parser.Yes},
		{"HALF(A) + HALFWAY", 6.5, parser.Yes}, {"HALF(9)", 4, parser.Yes},
		{"TERN(FAST, 7, 8)", 7, parser.Yes}, {"A > 3 ? 1.5 : 2", 1.5, parser.Yes}, {"0x1F", 31, parser.Yes},
		{"true", 1, parser.Yes}, {"18446744073709551615", 18446744073709551615, parser.Yes},
		{"(A", 0, parser.No}, {"LIST", 0, parser.No}, {`"a"`, 0, parser.No}, {"", 0, parser.No},
		{"1 / 0", 0, parser.No}, {"1.0 / 0", 0, parser.No}, {"1.5 % 2", 0, parser.No},
		{"NAME", 0, parser.Maybe}, {"A + NAME", 0, parser.Maybe}, {"MAYBE", 0, parser.Maybe},
		{"float(3)", 0, parser.Maybe}, {"OPTION_A", 0, parser.Maybe},
	} {
		if got, known := s.number(test.text); got != test.want || known != test.known {
			t.Errorf("%s is %v, %v; want %v, %v", test.text, got, known, test.want, test.known)
		}
	}
	for _, test := range []struct {
		text, want string
		known      parser.Tri
	}{
		{"LIST", "{ 12, (12 * 2) }", parser.Yes}, {"A+B", "12+(12 * 2)", parser.Yes},
		{"NAME + A", "NAME + 12", parser.Maybe},
		{"MAYBE", "MAYBE", parser.Maybe}, {`"A" 'A'`, `"A" 'A'`, parser.Yes},
		{"TERN(FAST, A, B)", "12", parser.Yes}, {"OPTION_A", "OPTION_A", parser.Yes},
		{"HALF(", "HALF(", parser.Maybe},
	} {
		if got, known := s.expand(test.text); got != test.want || known != test.known {
			t.Errorf("%s expands to %q, %v; want %q, %v", test.text, got, known, test.want, test.known)
		}
	}
	for name, want := range map[string]parser.Tri{
		"FAST": parser.Yes, "A": parser.No, "OPTION_A": parser.No, "MAYBE": parser.Maybe,
		"NAME": parser.Maybe,
	} {
		if got := s.enabled(name); got != want {
			t.Errorf("%s is enabled: %v, want %v", name, got, want)
		}
	}
}

// expand replaces all macros in a text. Maybe: the result depends on a macro
// whose state is unknown, or holds a name that may come from outside.
func (s *source) expand(text string) (string, parser.Tri) {
	e := s.expander(tokenise(text, nil))
	defer e.close()
	var out []token
	sure := parser.Yes
	for {
		t := e.next()
		switch t.kind {
		case tokenEnd:
			if e.broken != "" {
				return text, parser.Maybe
			}
			return spell(out), sure
		case tokenUnknown:
			sure = parser.Maybe
			d := e.unknown[t.arg]
			if d.name < 0 {
				return text, parser.Maybe
			}
			t.text = s.table.all[d.name].text
		case tokenWord:
			if t.text != "true" && t.text != "false" && e.foreign(t.text) {
				sure = parser.Maybe
			}
		}
		out = append(out, t)
	}
}
