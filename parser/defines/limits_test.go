package defines

import (
	"fmt"
	"strings"
	"testing"

	"preflash/parser"
)

func TestDeepConditionals(t *testing.T) {
	const n = 100_000
	_, err := read(t, files{"main.h": strings.Repeat("#if 1\n", n) + strings.Repeat("#endif\n", n)})
	e, ok := err.(*parser.Error)
	if !ok || e.Line != maxNesting+1 || !strings.Contains(e.Message, "deeper than 256 levels") {
		t.Errorf("the error is %v", err)
	}
	s := mustReadText(t,
		strings.Repeat("#if 1\n", maxNesting)+"#define X 1\n"+strings.Repeat("#endif\n", maxNesting))
	if got := s.describe("X"); got != "=1" {
		t.Errorf("X is %s", got)
	}
}

// Each condition asks for too much: it is unknown, and says so.
func TestTooMuchForACondition(t *testing.T) {
	var doubling strings.Builder
	doubling.WriteString("#define D0 1 + 1\n")
	for i := range 60 {
		fmt.Fprintf(&doubling, "#define D%d D%d + D%d\n", i+1, i, i)
	}
	var pasting strings.Builder
	pasting.WriteString("#define P(a, b) a##b\n#define Q(a, b) P(a, b)\n#define N0 xxxxxxxxxxxxxxxx\n")
	for i := range 60 {
		fmt.Fprintf(&pasting, "#define N%d Q(N%d, N%d)\n", i+1, i, i)
	}
	var chain strings.Builder
	for i := range 40_000 {
		fmt.Fprintf(&chain, "#define C%d C%d\n", i, i+1)
	}
	for _, test := range []struct{ name, lines, condition, why string }{
		{"parentheses", "", strings.Repeat("(", 200_000) + "1" + strings.Repeat(")", 200_000),
			"it expands to more than 100,000 tokens"},
		{"parentheses within the budget", "", strings.Repeat("(", 300) + "1" + strings.Repeat(")", 300),
			"it nests deeper than 256 levels"},
		{"choices", "", strings.Repeat("0 ? 1 : ", 300) + "1", "it nests deeper than 256 levels"},
		{"signs", "", strings.Repeat("~", 20_000) + "1", "it is longer than 10,000 words"},
		{"a long sum", "", strings.Repeat("1+", 6_000) + "1", "it is longer than 10,000 words"},
		{"a very long sum", "", strings.Repeat("1+", 1_000_000) + "1",
			"it expands to more than 100,000 tokens"},
		{"doubling", doubling.String(), "D60", "it expands to more than 100,000 tokens"},
		{"pasting", pasting.String(), "N60", "## makes a name of more than 16 KiB"},
		{"arguments in arguments", "#define F(x) x\n",
			strings.Repeat("F(", 2_000) + "1" + strings.Repeat(")", 2_000),
			"it expands to more than 100,000 tokens"},
		{"quoting", `#define Q(x) #x
#define R(x) Q(x x x x x x x x x x x x x x x x)
#define S(x) R(x x x x x x x x x x x x x x x x)
#define T(x) S(x x x x x x x x x x x x x x x x)
`, "T(abcdefghijklmnopqrst)", "# makes a string of more than 16 KiB"},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, why := decide(t, test.lines, test.condition)
			if got != parser.Maybe || why != test.why {
				t.Errorf("%v: %s; want unknown: %s", got, why, test.why)
			}
			for _, kind := range []string{"#if ", "#ifdef NOT_SET\n#elif "} {
				s := mustReadText(t, test.lines+"//#define NOT_SET\n"+kind+test.condition+
					"\n#define YES\n#endif\n#define OTHER 3\n")
				wantUnreadable(t, s, strings.Count(test.lines+"\n"+kind, "\n")+1, test.why)
				if got := s.describe("OTHER"); got != "=3" {
					t.Errorf("OTHER is %s", got)
				}
			}
			s := mustReadText(t, test.lines+"#if 0\n#if "+test.condition+"\n#endif\n#endif\n")
			if len(s.remarks) > 0 {
				t.Errorf("a branch that is not read: %s", s.remarks[0].Text)
			}
		})
	}
	if got, why := decide(t, chain.String()+"#define C40000 1\n", "C0"); got != parser.Yes {
		t.Errorf("a chain of macros is %v: %s", got, why)
	}
	calls := strings.Repeat("F(", 100) + "1" + strings.Repeat(")", 100)
	if got, why := decide(t, "#define F(x) x\n", calls); got != parser.Yes {
		t.Errorf("100 calls in calls are %v: %s", got, why)
	}
}

func wantUnreadable(t *testing.T, s *source, line int, why string) {
	t.Helper()
	if len(s.remarks) != 1 {
		t.Fatalf("%d remarks, want one", len(s.remarks))
	}
	r := s.remarks[0]
	at, _ := r.At.Position()
	if r.Kind != parser.RemarkUnreadable || at != line || !strings.Contains(r.Text, why) ||
		!strings.Contains(r.Text, "write it shorter") {
		t.Errorf("remark %d in line %d: %s; want unreadable in line %d: %s", r.Kind, at, r.Text, line, why)
	}
}

// A value, a pin and an include that ask for too much say so as well.
func TestTooMuchForAValue(t *testing.T) {
	var doubling strings.Builder
	doubling.WriteString("#define D0 1 + 1\n")
	for i := range 60 {
		fmt.Fprintf(&doubling, "#define D%d D%d + D%d\n", i+1, i, i)
	}
	nested := strings.Repeat("(", 300) + "1" + strings.Repeat(")", 300)
	for _, test := range []struct {
		text string
		key  parser.Key
		why  string
	}{
		{"#define HEATER_0_MAXTEMP D60\n", parser.MaxTemp, "it expands to more than 100,000 tokens"},
		{"#define HEATER_0_MAXTEMP " + nested + "\n", parser.MaxTemp, "it nests deeper than 256 levels"},
		{"#define TEMP_SENSOR_0 D60\n", parser.HotendSensor, "it expands to more than 100,000 tokens"},
		{"#define PIDTEMP D60\n", parser.LoopControl, "it expands to more than 100,000 tokens"},
		{"#define CONFIGURATION_H_VERSION 020007\n#define PREVENT_COLD_EXTRUSION D60\n",
			parser.ColdGuard, "it expands to more than 100,000 tokens"},
	} {
		found := false
		for d := range readText(t, 0, "main.h", doubling.String()+test.text).Printer().Settings() {
			if d.Key != test.key {
				continue
			}
			found = true
			if d.State != parser.Unknown || !strings.Contains(d.Why, test.why) ||
				strings.Contains(d.Why, "do not settle") || len(d.Why) > 250 {
				t.Errorf("%s is %s: %s; want %s", d.Key, d.State, d.Why, test.why)
			}
		}
		if !found {
			t.Errorf("no %s", test.key)
		}
	}
	s := mustReadText(t, doubling.String()+"#define A_PIN D60\n#if PIN_EXISTS(A)\n#endif\n")
	wantUnreadable(t, s, 63, "it expands to more than 100,000 tokens")
	s = mustReadText(t, "#include "+strings.Repeat("(", 200_000)+"\n")
	if len(s.remarks) != 1 || s.remarks[0].Kind != parser.RemarkUnreadable {
		t.Errorf("an include: %v", s.remarks)
	}
}

func TestLongLines(t *testing.T) {
	const size = 7 << 20
	for name, text := range map[string]string{
		"value":         "#define Y " + strings.Repeat("1+", size/2) + "1\n",
		"comments":      "#define Y 1 " + strings.Repeat("/**/", size/4) + "\n",
		"lead comments": strings.Repeat("/**/", size/4) + "#define Y 1\n",
		"splices":       "#define Y " + strings.Repeat("\\\n", size/2) + "1\n",
		"false splices": "#define Y " + strings.Repeat("\\ ", size/2) + "1\n",
		"blanks":        "#define Y" + strings.Repeat(" ", size) + "1\n",
		"stars":         "/" + strings.Repeat("*", size) + "/\n#define Y 1\n",
		"hashes":        "/*" + strings.Repeat("#\n", size/2) + "*/\n#define Y 1\n",
		"defines":       "/*\n" + strings.Repeat("#define Z\n", size/10) + "*/\n#define Y 1\n",
		"quotes":        strings.Repeat(`"`, size+1) + "\n#define Y 1\n",
		"text":          strings.Repeat("a/b ", size/4) + "\n#define Y 1\n",
		"condition":     "#if " + strings.Repeat("UNKNOWN || ", size/11) + "0\n#endif\n#define Y 1\n",
		"returns":       strings.Repeat("\r", size) + "#define Y 1\n",
		"slashes":       strings.Repeat("/", size) + "\n#define Y 1\n",
		"signs":         "#if " + strings.Repeat("!", size) + "1\n#endif\n#define Y 1\n",
	} {
		t.Run(name, func(t *testing.T) {
			s := mustReadText(t, text)
			if m := s.macro("Y"); m.state != parser.Yes {
				t.Errorf("Y is %v", m.state)
			}
		})
	}
}

// Files that multiply are cut off with one clear error.
func TestTooMuchAltogether(t *testing.T) {
	contents := files{"main.h": strings.Repeat("#include \"a0.h\"\n", 20)}
	for i := range 12 {
		contents[fmt.Sprintf("a%d.h", i)] = strings.Repeat(fmt.Sprintf("#include \"a%d.h\"\n", i+1), 20)
	}
	contents["a12.h"] = "#define X 1\n"
	_, err := read(t, contents)
	if e, ok := err.(*parser.Error); !ok || e.Line == 0 ||
		!strings.Contains(e.Message, "reading takes more than") {
		t.Errorf("includes: the error is %v", err)
	}

	var unknown strings.Builder
	for range maxNesting {
		unknown.WriteString("#if UNKNOWN\n")
	}
	for i := range 300_000 {
		fmt.Fprintf(&unknown, "#define N%d\n", i)
	}
	unknown.WriteString(strings.Repeat("#endif\n", maxNesting))
	_, err = read(t, files{"main.h": unknown.String()})
	if e, ok := err.(*parser.Error); !ok || e.Line == 0 ||
		!strings.Contains(e.Message, "reading takes more than") {
		t.Errorf("unknown branches: the error is %v", err)
	}
}

// A macro with more values than are kept is unknown, whatever they are.
func TestManyAlternatives(t *testing.T) {
	var b strings.Builder
	for i := range 100 {
		fmt.Fprintf(&b, "#if UNKNOWN_%d\n#define X 1\n#endif\n", i)
	}
	s := mustReadText(t, "#define X 1\n"+b.String())
	if got := s.describe("X"); got != "unknown" {
		t.Errorf("X is %s", got)
	}
}

// The steps of reading have an end, here by a file that is included again and
// again.
func TestReadingEnds(t *testing.T) {
	const lines, includes = 1 << 16, 63
	part := strings.Repeat("#define A 1\n", lines)
	main := strings.Repeat("#include \"part.h\"\n", includes)
	text := func(pad int) files {
		return files{"main.h": main + strings.Repeat("#define B 1\n", pad), "part.h": part}
	}
	s, err := read(t, text(0))
	if err != nil {
		t.Fatal(err)
	}
	room := maxSteps - s.steps
	if room < 1 || room > lines {
		t.Fatalf("%d steps are left", room)
	}
	for pad, ok := range map[int]bool{room - 1: true, room: true, room + 1: false} {
		if _, err := read(t, text(pad)); (err == nil) != ok ||
			!ok && !strings.Contains(err.Error(), "more than 4194304 steps") {
			t.Errorf("%d steps: %v", maxSteps-room+pad, err)
		}
	}
}

// A name is used by another where it is a word of its value, not a part of one.
func TestUsedByAnother(t *testing.T) {
	for text, want := range map[string]int{
		"#define THERMAL_X 1\n":                                                     1,
		"#define THERMAL_X 1\n#define Y THERMAL_X\n":                                0,
		"#define THERMAL_X 1\n#define Y (2 + THERMAL_X)\n#define Z THERMAL_X\n":     0,
		"#define THERMAL_X THERMAL_X\n":                                             1,
		"#define THERMAL_X THERMAL_X\n#define Y THERMAL_X\n":                        0,
		"#define THERMAL_X 1\n#define Y THERMAL_X_2\n":                              1,
		"#define THERMAL_X 1\n#define Y \"THERMAL_X\"\n":                            1,
		"#define THERMAL_X 1\n#if 0\n#define Y THERMAL_X\n#endif\n":                 1,
		"#define THERMAL_X 1\n#define Y 2 /* THERMAL_X */\n":                        1,
		"#define THERMAL_X 1\n#define THERMAL_Y THERMAL_X\n#define Z THERMAL_Y+0\n": 0,
	} {
		if all := unrecognised(mustReadText(t, text)); len(all) != want {
			t.Errorf("%q: %v, want %d", text, all, want)
		}
	}
}
