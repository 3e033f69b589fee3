package sections

import (
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"preflash/parser"
)

// The oracle is Python's configparser, through oracle.py. Its answers to the
// committed cases are committed too; PREFLASH_LIVE=1 asks the program itself,
// for those and for generated ones.
const reference = "../../testdata/reference/configparser"

// oracleCase is one configuration. Text is Latin-1: one character a byte.
type oracleCase struct {
	Why   string            `json:"why,omitempty"`
	Main  string            `json:"main"`
	Files map[string]string `json:"files"`
}

// oracleAnswer is what becomes of it: options, or the place of the first
// fault.
type oracleAnswer struct {
	Options [][2]string `json:"options,omitempty"`
	Error   []any       `json:"error,omitempty"` // file, line
}

func latin1(bytes string) string {
	var b strings.Builder
	for i := range len(bytes) {
		b.WriteRune(rune(bytes[i]))
	}
	return b.String()
}

func bytesOf(latin1 string) string {
	var b strings.Builder
	for _, r := range latin1 {
		b.WriteByte(byte(r))
	}
	return b.String()
}

// ours is our answer to a case.
func ours(t interface{ Fatal(...any) }, c oracleCase) oracleAnswer {
	dir, err := os.MkdirTemp("", "sections")
	if err != nil {
		t.Fatal(err)
	}
	defer os.RemoveAll(dir)
	files := map[string]string{}
	for name, text := range c.Files {
		files[name] = bytesOf(text)
	}
	writeFiles(t, dir, files)
	tree, err := parser.OpenTree(dir)
	if err != nil {
		t.Fatal(err)
	}
	defer tree.Close()
	read, err := Style.Read(tree, parser.Request{Files: []string{c.Main}})
	if err != nil {
		var e *parser.Error
		if !errors.As(err, &e) {
			t.Fatal("not a *parser.Error: ", err)
		}
		name := strings.TrimPrefix(e.File, tree.Shown(".")+"/")
		return oracleAnswer{Error: []any{name, float64(e.Line)}}
	}
	var a oracleAnswer
	for _, e := range read.Entries() {
		if e.Active == parser.Yes {
			a.Options = append(a.Options, [2]string{latin1(e.Name), latin1(e.Value)})
		}
	}
	slices.SortFunc(a.Options, func(a, b [2]string) int { return slices.Compare(a[:], b[:]) })
	return a
}

// differ says where two answers differ, "" where they agree. Lines are not
// compared in a text with a carriage return that stands alone: there a line of
// Python's is not a line of ours.
func differ(c oracleCase, got, want oracleAnswer) string {
	if (got.Error == nil) != (want.Error == nil) {
		return fmt.Sprintf("ours %v, oracle %v", got, want)
	}
	if got.Error != nil {
		for _, text := range c.Files {
			if strings.Contains(strings.ReplaceAll(text, "\r\n", ""), "\r") {
				return ""
			}
		}
		if got.Error[0] != want.Error[0] || got.Error[1] != want.Error[1] {
			return fmt.Sprintf("ours refuses %v, oracle %v", got.Error, want.Error)
		}
		return ""
	}
	if !slices.Equal(got.Options, want.Options) {
		return fmt.Sprintf("ours   %q\noracle %q", got.Options, want.Options)
	}
	return ""
}

// oracle is a running oracle.py.
type oracle struct {
	in  io.WriteCloser
	out *bufio.Scanner
}

func startOracle(t *testing.T) *oracle {
	t.Helper()
	command := exec.Command("python3", filepath.Join(reference, "oracle.py"))
	in, err := command.StdinPipe()
	if err != nil {
		t.Fatal(err)
	}
	out, err := command.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	command.Stderr = os.Stderr
	if err := command.Start(); err != nil {
		t.Fatalf("PREFLASH_LIVE=1 needs python3: %v", err)
	}
	t.Cleanup(func() {
		in.Close()
		if err := command.Wait(); err != nil {
			t.Errorf("the oracle failed: %v", err)
		}
	})
	lines := bufio.NewScanner(out)
	lines.Buffer(nil, 1<<24)
	return &oracle{in, lines}
}

func (o *oracle) ask(t interface{ Fatal(...any) }, c oracleCase) (a oracleAnswer) {
	question, err := json.Marshal(c)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := o.in.Write(append(question, '\n')); err != nil {
		t.Fatal(err)
	}
	if !o.out.Scan() {
		t.Fatal("the oracle is gone: ", o.out.Err())
	}
	if err := json.Unmarshal(o.out.Bytes(), &a); err != nil {
		t.Fatal(err)
	}
	return a
}

func live() bool { return os.Getenv("PREFLASH_LIVE") == "1" }

// TestReferenceCases holds our reading against configparser's on the
// committed cases. PREFLASH_LIVE=1 also makes sure that the committed answers
// are still the program's.
func TestReferenceCases(t *testing.T) {
	var cases []oracleCase
	var answers []oracleAnswer
	load(t, "cases.json", &cases)
	load(t, "answers.json", &answers)
	if len(cases) < 40 || len(cases) != len(answers) {
		t.Fatalf("%d cases and %d answers", len(cases), len(answers))
	}
	var program *oracle
	if live() {
		program = startOracle(t)
	}
	for i, c := range cases {
		if d := differ(c, ours(t, c), answers[i]); d != "" {
			t.Errorf("%s:\n%s", c.Why, d)
		}
		if program != nil {
			if d := differ(oracleCase{}, program.ask(t, c), answers[i]); d != "" {
				t.Errorf("%s: the committed answer is not the program's:\n%s", c.Why, d)
			}
		}
	}
}

func load(t *testing.T, name string, into any) {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(reference, name))
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(data, into); err != nil {
		t.Fatalf("%s: %v", name, err)
	}
}

// TestGeneratedCases asks the program about generated configurations, four a
// check, so 400 a run.
func TestGeneratedCases(t *testing.T) {
	if !live() {
		t.Log("PREFLASH_LIVE is not 1: only the committed cases are compared")
		return
	}
	program := startOracle(t)
	asked, refused := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		for range 4 {
			c := drawCase(t)
			want := program.ask(t, c)
			if asked++; want.Error != nil {
				refused++
			}
			if d := differ(c, ours(t, c), want); d != "" {
				t.Fatalf("%q\n%s", c.Files, d)
			}
		}
	})
	t.Logf("%d configurations, %d of them refused by both", asked, refused)
	if asked >= 300 && (refused == 0 || refused > asked*3/4) {
		t.Errorf("the generator is lopsided: %d of %d are refused", refused, asked)
	}
}

// drawCase draws a configuration of one to five files.
func drawCase(t *rapid.T) oracleCase {
	c := oracleCase{Main: "printer.cfg", Files: map[string]string{}}
	names := []string{"printer.cfg"}
	for _, name := range []string{"a.cfg", "b.cfg", "parts/c.cfg", "parts-b/c.cfg"} {
		if rapid.IntRange(0, 2).Draw(t, "has "+name) == 0 {
			names = append(names, name)
		}
	}
	faults := rapid.IntRange(0, 3).Draw(t, "faults") == 0
	for _, name := range names {
		c.Files[name] = latin1(drawText(t, name, faults))
	}
	return c
}

// drawText draws one file, line by line.
func drawText(t *rapid.T, name string, faults bool) string {
	one := func(label string, of ...string) string { return rapid.SampledFrom(of).Draw(t, label) }
	indent := func() string {
		return one("indent", "", "", "", "", " ", "  ", "\t", "    ", "\u00a0", "\u2003 ", "\u001c", "\x0b")
	}
	space := func() string { return one("space", "", "", " ", " ", "  ", "\t", "\u00a0") }
	section := func() string {
		return one("section", "extruder", "extruder", "heater_bed", "fan", "DEFAULT", "Extruder", " fan ",
			"a]b", "[x", "gcode_macro A b", "é", "a ; b", "include", "x\xff")
	}
	key := func() string {
		return one("key", "max_temp", "Max_Temp", "pid_Kp", "a b", "pin", "gcode", "É", "ΑΣ", "ΣΑ", "İx",
			"\u212aey", "\xe9", "a;b", "[k", "ǅ", "Ⅷ", "ſ", "a\u0345Σ", "x.Σ'y")
	}
	word := func() string {
		return one("word", "1", "250", "PA1", "^!PB7", "a = b", "c: d", "x;y", "x ;y", "x\u00a0;y", "[z]",
			"{% if x %}", "\x85", "\u2028", "é", "\xff\xfe", "\u001cq\u001d", "a\x0cb", "M104 S200", ";", "")
	}
	comment := func() string {
		return one("comment", "", "", "", "# c", " # c: d", " ; c", ";c", "#", "\t;[x]")
	}
	end := one("line end", "\n", "\n", "\n", "\r\n")
	var b strings.Builder
	if rapid.IntRange(0, 15).Draw(t, "starts with an option") != 0 || !faults {
		b.WriteString("[" + section() + "]" + end)
	}
	inOption := false
	for range rapid.IntRange(0, 14).Draw(t, "lines") {
		kinds := []string{"option", "option", "option", "continuation", "continuation",
			"empty", "comment", "header", "include"}
		if faults {
			kinds = append(kinds, "bare", "no name", "missing", "cycle")
		}
		switch kind := rapid.SampledFrom(kinds).Draw(t, "kind"); kind {
		case "option":
			inOption = true
			b.WriteString(indent() + key() + space() + one("separator", ":", "=", ":", " = ", ":=") +
				space() + word() + comment())
		case "continuation":
			if !inOption && !faults {
				break
			}
			b.WriteString(one("deeper", "        ", "        ", "\t\t\t\t\t", " ", "\u2003\u2003") + word() +
				comment())
		case "empty":
			b.WriteString(one("empty", "", "", " ", "\t", "\u00a0", "\u001c"))
		case "comment":
			b.WriteString(indent() + one("mark", "#", ";") + word())
		case "header":
			inOption = false
			b.WriteString(indent() + "[" + section() + "]" + comment())
		case "include":
			if name != "printer.cfg" {
				b.WriteString(" [include  x]")
				break
			}
			inOption = false
			b.WriteString(one("include", "[include none*.cfg]", "[include parts/*.cfg]", "[include */c.cfg]",
				"[include [ab].cfg]", "[include  ?.cfg ]", "[include ./parts/../[!p]*.cfg]",
				" [include a.cfg]", "[Include a.cfg]") + comment())
			if !faults || rapid.Bool().Draw(t, "header again") {
				b.WriteString(end + "[" + section() + "]")
			}
		case "bare":
			b.WriteString(indent() + word())
		case "no name":
			b.WriteString("= " + word())
		case "missing":
			b.WriteString("[include nothing.cfg]")
		case "cycle":
			b.WriteString("[include " + filepath.Base(name) + "]")
		}
		b.WriteString(one("this end", end, end, end, end, end, end, "\r", "\n"))
	}
	text := b.String()
	if rapid.IntRange(0, 3).Draw(t, "no last newline") == 0 {
		text = strings.TrimRight(text, "\r\n")
	}
	return text
}
