package sheet

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/pelletier/go-toml/v2"
	"pgregory.net/rapid"

	"preflash/parser"
)

// readIn reads a sheet from memory; a file that it uses holds the same bytes.
func readIn(tree *parser.Tree, data string) (*Sheet, error) {
	return Read(tree.With(map[string][]byte{
		tree.Shown("swap.toml"):      []byte(data),
		tree.Shown("hotends/x.toml"): []byte(data),
	}), "swap.toml")
}

// A slip in any key is found at that key, and the key is named.
func TestMisspeltKeys(t *testing.T) {
	tree := openTree(t, t.TempDir())
	lines := strings.Split(full, "\n")
	var keyed []int
	for i, l := range lines {
		if name, _, ok := strings.Cut(l, " = "); ok && len(name) > 3 {
			keyed = append(keyed, i)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.SampledFrom(keyed).Draw(t, "line")
		name, rest, _ := strings.Cut(lines[at], " = ")
		i := rapid.IntRange(0, len(name)-2).Draw(t, "letter")
		var slip string
		switch rapid.IntRange(0, 2).Draw(t, "slip") {
		case 0:
			slip = name[:i] + name[i+1:] // left out
		case 1:
			slip = name[:i] + name[i+1:i+2] + name[i:i+1] + name[i+2:] // swapped
		case 2:
			slip = name[:i] + "q" + name[i:] // put in
		}
		if slip == name {
			t.Skip("two equal letters swapped")
		}
		text := slices.Clone(lines)
		text[at] = slip + " = " + rest
		_, err := readIn(tree, strings.Join(text, "\n"))
		var e *parser.Error
		if !errors.As(err, &e) || e.Line != at+1 || e.Column != 1 ||
			!strings.Contains(e.Message, "did you mean "+name+"?") {
			t.Fatalf("%q in line %d: %v", slip, at+1, err)
		}
	})
}

// A number inside its bounds is taken as it is, one outside is refused, in
// every way to write it.
func TestBounds(t *testing.T) {
	tree := openTree(t, t.TempDir())
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(-10, 10).Draw(t, "exponent")
		x = math.Copysign(math.Pow(10, x), rapid.Float64Range(-1, 3).Draw(t, "sign"))
		form := rapid.SampledFrom([]string{"%v", "%e", "%.6f"}).Draw(t, "form")
		written := fmt.Sprintf(form, x)
		if !strings.ContainsAny(written, ".e") {
			written += ".0"
		}
		var want float64
		if _, err := fmt.Sscan(written, &want); err != nil {
			t.Fatal(err)
		}
		text := strings.Replace(full, "output_a = 5.0", "output_a = "+written, 1)
		s, err := readIn(tree, text)
		if inside := want >= 0.1 && want <= 100; inside != (err == nil) {
			t.Fatalf("%s: %v", written, err)
		}
		if err == nil && s.Printer.OutputA.Value != want {
			t.Fatalf("%s became %v", written, s.Printer.OutputA.Value)
		}
	})
}

// The tree holds what the library's own decoder reads (go-toml/v2), for every
// document that this decoder takes; and it refuses what the decoder refuses.
func TestTreeAgreesWithLibrary(t *testing.T) {
	for _, doc := range []string{
		full, least, hotendFile,
		"a = 1\nb.c = 2\nb.d = 3\n[e.f]\ng = [1, [2, 3]]\n[e]\nh = { i = { j = 4 } }\n",
		"[[a]]\nb = 1\n[a.c]\nd = 2\n[[a]]\nb = 3\n[[a.e]]\nf = 4\n[[a.e]]\nf = 5\n",
		"[a]\nb.c = 1\n[a.b.d]\ne = 2\n",
		"'quoted key' = \"\"\"\nlong\n\"\"\"\n\"\\u00e9\" = 'x'\n",
		// refused by both
		"a = 1\na = 2\n", "[a]\n[a]\n", "a.b = 1\n[a]\n", "[a.b]\nc = 1\n[a]\nb.d = 2\n",
		"a = { b = 1 }\n[a.c]\n", "a = [1]\n[[a]]\n", "[[a]]\n[a]\n", "a = { b = 1 }\na.c = 2\n",
		"[a]\n[[a]]\n",
		"a = 1\n[a.b]\n", "a = { b = 1, b = 2 }\n",
	} {
		var want map[string]any
		refused := toml.Unmarshal([]byte(doc), &want)
		root, wrong := parseTOML(parser.NewFile("x.toml", []byte(doc)))
		if (wrong != nil) != (refused != nil) {
			t.Errorf("%q: the library says %v, the tree %+v", doc, refused, wrong)
			continue
		}
		if wrong != nil {
			continue
		}
		if got, want := fmt.Sprint(root.plain()), fmt.Sprint(want); got != want {
			t.Errorf("%q:\ngot  %s\nwant %s", doc, got, want)
		}
	}
}

// plain gives a table as the library's decoder would.
func (t *table) plain() map[string]any {
	m := make(map[string]any)
	for name, e := range t.byName {
		m[name] = e.value.plain()
	}
	return m
}

func (v *value) plain() any {
	switch v.kind {
	case textValue:
		return v.text
	case numberValue:
		return v.num
	case wholeValue:
		return v.whole
	case boolValue:
		return v.yes
	case dateValue:
		return v.date.Format("2006-01-02")
	case listValue:
		list := []any{}
		for _, e := range v.list {
			list = append(list, e.plain())
		}
		return list
	case tablesValue:
		list := []any{}
		for _, r := range v.rows {
			list = append(list, r.plain())
		}
		return list
	}
	return v.table.plain()
}

func TestNearest(t *testing.T) {
	known := []string{"rated_c", "rated_v", "rated_w", "hot_w", "kind", "duty_limit"}
	for name, want := range map[string]string{
		"rated_C": "rated_c", "RATED-W": "rated_w", "ratedw": "rated_w", "rated_watt": "rated_w",
		"kidn": "kind", "knd": "kind", "dutylimit": "duty_limit", "duty_limits": "duty_limit",
		"colour": "", "x": "", "": "", strings.Repeat("rated_w", 1000): "",
	} {
		if got := parser.Nearest(name, known); got != want {
			t.Errorf("%.20q: got %q, want %q", name, got, want)
		}
	}
}

// Whatever the bytes: no crash, and each error has a place inside the file.
func FuzzSheet(f *testing.F) {
	for _, doc := range []string{
		full, least, strings.Replace(usingSheet, "../", "", 1), hotendFile, "", "\ufeff", "[[waiver]]",
		"a.b.c = {d=[[]]}\n[a]", "x = 1979-05-27 07:32:00",
	} {
		f.Add([]byte(doc))
	}
	tree := openTree(f, f.TempDir())
	f.Fuzz(func(t *testing.T, data []byte) {
		if len(data) > 1<<16 {
			t.Skip("longer than any sheet")
		}
		s, err := readIn(tree, string(data))
		if err == nil {
			if s.New.PrintC.Value[0] > s.New.PrintC.Value[1] || s.Printer.SupplyV.Value <= 0 ||
				s.New.Heater.RatedW.Value <= 0 {
				t.Fatalf("an impossible sheet was taken: %+v", s)
			}
			return
		}
		for _, e := range list(t, err) {
			if e.Message == "" || e.File == "" {
				t.Fatalf("an error without a message or file: %+v", e)
			}
			if e.Line > 1+strings.Count(string(data), "\n") {
				t.Fatalf("line %d is beyond the end: %v", e.Line, e)
			}
		}
	})
}
