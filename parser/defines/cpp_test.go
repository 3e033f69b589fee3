package defines

import (
	"bytes"
	"flag"
	"fmt"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"sort"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"preflash/parser"
)

// The oracle is GNU cpp (https://gcc.gnu.org/onlinedocs/cpp/), run for C++ as
// the firmware's own build runs it. Its outputs for 40 generated
// configurations are committed under testdata/reference/cpp, with a shim that
// gives cpp the style's own tests. With PREFLASH_LIVE=1 cpp itself is asked
// about some hundreds of new ones; `-update` writes the references anew.

var update = flag.Bool("update", false, "write the reference outputs of cpp anew")

const references = "testdata/reference/cpp"

// runCPP returns the macros in force at the end of dir/main.h, by name. An
// error says that cpp refused the configuration.
func runCPP(dir string) (map[string]string, error) {
	shim, err := filepath.Abs(filepath.Join(references, "shim.h"))
	if err != nil {
		return nil, err
	}
	cmd := exec.Command("cpp", "-x", "c++", "-undef", "-nostdinc", "-w", "-dM", "-I",
		filepath.Join(filepath.Dir(shim), "include"), "-imacros", shim, "main.h")
	cmd.Dir = dir
	var errs bytes.Buffer
	cmd.Stderr = &errs
	out, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("cpp: %v\n%s", err, errs.String())
	}
	macros := make(map[string]string)
	for _, line := range strings.Split(string(out), "\n") {
		if line, ok := strings.CutPrefix(line, "#define "); ok {
			end := wordEnd(line, 0)
			if name := line[:end]; name[0] != '_' && !isShim(name) {
				macros[name] = normal(line[end:])
			}
		}
	}
	return macros, nil
}

// isShim reports whether the shim defines a name.
func isShim(name string) bool {
	for _, t := range styleTests {
		if t.name == name {
			return true
		}
	}
	return strings.HasPrefix(name, "s_")
}

// normal writes the parameters and the body of a define with one blank where
// white space stands, and with none where it means nothing.
func normal(text string) string {
	tokens := tokenise(text, nil)
	params := 0
	if len(text) > 0 && text[0] == '(' {
		for params < len(tokens) && tokens[params].text != ")" {
			params++
		}
	}
	for i := range tokens {
		switch {
		case i <= params:
			tokens[i].space = false
		case tokens[i].text == "##" || tokens[i-1].text == "##":
			tokens[i].space = true
		}
	}
	if params < len(tokens)-1 && params > 0 {
		tokens[params+1].space = true
	}
	return spell(tokens)
}

// elements writes the value of a list without white space.
func elements(text string) string {
	if text = strings.TrimSpace(text); !strings.HasPrefix(text, "{") {
		return text
	}
	tokens := tokenise(text, nil)
	for i := range tokens {
		tokens[i].space = false
	}
	return spell(tokens)
}

// refusedHere stands among the macros where the reader says that the compiler
// refuses the configuration.
const refusedHere = "the compiler refuses it"

// ours returns the same from the reader under test.
func ours(t *parser.Tree) (map[string]string, error) {
	s, err := load(t, parser.Request{Files: []string{"main.h"}}, func(name string) bool {
		return isPooled(name) || name == "PIN_NONE" || strings.HasPrefix(name, "TRACE_UNSET")
	})
	if err != nil {
		return nil, err
	}
	macros := make(map[string]string)
	for _, r := range s.remarks {
		if r.Kind == parser.RemarkBroken {
			macros[refusedHere] = r.At.String() + ": " + r.Text
		}
	}
	for name := range s.names {
		switch m := s.macro(name); m.state {
		case parser.Yes:
			params := ""
			if m.winner.function {
				f := m.winner.at.File.Data
				params = unspliced(string(f[m.winner.at.End:m.winner.body.Start]))
			}
			macros[name] = normal(params + " " + m.winner.value())
			if items, ok := splitList(m.winner.body); ok {
				var list []string
				for _, item := range items {
					list = append(list, unspliced(item.Text()))
				}
				macros[name] = "{" + strings.Join(list, ",") + "}"
			}
		case parser.Maybe:
			macros[name] = "unknown: " + m.why
		}
	}
	return macros, nil
}

func difference(want, got map[string]string) string {
	var list []string
	for name, value := range want {
		if has, ok := got[name]; !ok {
			list = append(list, fmt.Sprintf("%s: cpp has %q, the reader has it undefined", name, value))
		} else if elements(has) != elements(value) {
			list = append(list, fmt.Sprintf("%s: cpp has %q, the reader %q", name, value, has))
		}
	}
	for name, value := range got {
		if _, ok := want[name]; !ok {
			list = append(list, fmt.Sprintf("%s: cpp has it undefined, the reader has %q", name, value))
		}
	}
	sort.Strings(list)
	return strings.Join(list, "\n")
}

func write(dir string, c configuration) error {
	for name, text := range c {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			return err
		}
	}
	return nil
}

// compare reads one folder both ways.
func compare(dir string, want map[string]string) string {
	tree, err := parser.OpenTree(dir)
	if err != nil {
		return err.Error()
	}
	defer tree.Close()
	got, err := ours(tree)
	if err != nil {
		return "the reader refuses what cpp takes: " + err.Error()
	}
	return difference(want, got)
}

func TestAgreesWithCPP(t *testing.T) {
	if os.Getenv("PREFLASH_LIVE") != "1" {
		t.Log("cpp itself is asked when PREFLASH_LIVE=1; see TestAgreesWithReference")
		return
	}
	if checks := flag.Lookup("rapid.checks"); checks.Value.String() == checks.DefValue {
		if err := checks.Value.Set("300"); err != nil {
			t.Fatal(err)
		}
		defer checks.Value.Set(checks.DefValue)
	}
	dir := t.TempDir()
	compared, refused := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		c := configurations(false).Draw(t, "configuration")
		if err := write(dir, c); err != nil {
			t.Fatal(err)
		}
		want, err := runCPP(dir)
		if err != nil {
			refused++
			tree, openErr := parser.OpenTree(dir)
			if openErr != nil {
				t.Fatal(openErr)
			}
			defer tree.Close()
			// A call of a name that is defined nowhere is a macro from outside
			// for the reader, and no macro for cpp.
			outside := strings.Contains(err.Error(), `missing binary operator before token "("`)
			if macros, refusal := ours(tree); refusal == nil && macros[refusedHere] == "" && !outside {
				t.Fatalf("the reader takes what cpp refuses: %s\n%s", err, c)
			}
			t.Skip(err)
		}
		compared++
		if diff := compare(dir, want); diff != "" {
			t.Fatalf("%s\n%s", diff, c)
		}
	})
	t.Logf("%d configurations agree; cpp refused %d others", compared, refused)
}

func TestAgreesWithReference(t *testing.T) {
	if *update {
		updateReferences(t)
	}
	dirs, err := filepath.Glob(references + "/[0-9]*")
	if err != nil || len(dirs) < 40 {
		t.Fatalf("%d references, %v; want 40", len(dirs), err)
	}
	for _, dir := range dirs {
		data, err := os.ReadFile(filepath.Join(dir, "cpp.txt"))
		if err != nil {
			t.Fatal(err)
		}
		want := make(map[string]string)
		for _, line := range strings.Split(strings.TrimSuffix(string(data), "\n"), "\n") {
			if name, value, ok := strings.Cut(line, "\t"); ok {
				want[name] = value
			}
		}
		if len(want) == 0 {
			t.Errorf("%s: no macros in cpp.txt", dir)
		}
		if diff := compare(dir, want); diff != "" {
			t.Errorf("%s:\n%s", dir, diff)
		}
	}
}

// listed gives macros as a reference keeps them.
func listed(macros map[string]string) string {
	var b strings.Builder
	for _, name := range slices.Sorted(maps.Keys(macros)) {
		b.WriteString(name + "\t" + macros[name] + "\n")
	}
	return b.String()
}

func updateReferences(t *testing.T) {
	generator := configurations(false)
	for n, seed := 0, 0; n < 40; seed++ {
		c := generator.Example(seed)
		dir := filepath.Join(references, fmt.Sprintf("%02d", n))
		if err := os.MkdirAll(dir, 0o755); err != nil {
			t.Fatal(err)
		}
		if err := write(dir, c); err != nil {
			t.Fatal(err)
		}
		macros, err := runCPP(dir)
		if err != nil || strings.Count(c["main.h"], "\n") < 120 || len(macros) < 18 {
			continue // refused by cpp, or too small to show anything
		}
		writeFile(t, dir, "cpp.txt", listed(macros))
		n++
	}
}
