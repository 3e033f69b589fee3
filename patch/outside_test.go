package patch

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// The outside check of diffs is what git and GNU patch make of them. The
// committed results are compared always; with PREFLASH_LIVE=1 the programs run,
// and must be there.

// tool applies the diff on its standard input in a folder.
type tool struct {
	name string
	args []string
}

var (
	gitApply = tool{"git", []string{"apply"}}
	gnuPatch = tool{"patch", []string{"-p1", "--batch", "--silent"}}
)

func live(t *testing.T) {
	t.Helper()
	if os.Getenv("PREFLASH_LIVE") != "1" {
		t.Skip("runs git and GNU patch; set PREFLASH_LIVE=1")
	}
	for _, tool := range []tool{gitApply, gnuPatch} {
		if _, err := exec.LookPath(tool.name); err != nil {
			t.Fatal(err)
		}
	}
}

func (o tool) run(dir string, diff []byte) error {
	cmd := exec.Command(o.name, o.args...)
	cmd.Dir = dir
	cmd.Env = append(os.Environ(), "GIT_CONFIG_GLOBAL=/dev/null", "GIT_CONFIG_NOSYSTEM=1", "LC_ALL=C")
	cmd.Stdin = bytes.NewReader(diff)
	if out, err := cmd.CombinedOutput(); err != nil {
		return fmt.Errorf("%s: %v\n%s\n%s", o.name, err, out, diff)
	}
	return nil
}

// apply has the tool apply a diff in a new folder and returns the new texts. A
// tool that deletes what became empty gives an empty text.
func (o tool) apply(changed []FileChange, diff []byte) (map[string][]byte, error) {
	dir, err := os.MkdirTemp("", "preflash-patch-")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	for _, c := range changed {
		name := filepath.Join(dir, c.Name)
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			return nil, err
		}
		if err := os.WriteFile(name, c.Old, 0o644); err != nil {
			return nil, err
		}
	}
	if err := o.run(dir, diff); err != nil {
		return nil, err
	}
	texts := map[string][]byte{}
	for _, c := range changed {
		if texts[c.Name], err = os.ReadFile(filepath.Join(dir, c.Name)); err != nil && !os.IsNotExist(err) {
			return nil, err
		}
	}
	return texts, nil
}

const resultsHead = `# What each program made of the old text of the case and its .diff.
# Written by: PREFLASH_LIVE=1 go test ./patch -run TestOutside -update
# git 2.39.5 apply, GNU patch 2.7.6 -p1
`

func resultLine(c textCase, git, gnu []byte) string {
	return fmt.Sprintf("%s\n\tgit   %+q\n\tpatch %+q\n", c.name, git, gnu)
}

func TestOutsideResults(t *testing.T) {
	want := resultsHead
	for _, c := range textCases() {
		want += resultLine(c, []byte(c.new), []byte(c.new))
	}
	golden := filepath.Join("testdata", "reference", "results.txt")
	if got, err := os.ReadFile(golden); !*update && (err != nil || string(got) != want) {
		t.Errorf("the programs gave\n%s\n%v, want\n%s", got, err, want)
	}
}

func TestOutsideLive(t *testing.T) {
	live(t)
	results := resultsHead
	for _, c := range textCases() {
		changed := []FileChange{{c.file, []byte(c.old), []byte(c.new)}}
		diff := unified(t, changed, Options{Lead: []string{"why " + c.name}})
		var made [2][]byte
		for i, tool := range []tool{gitApply, gnuPatch} {
			texts, err := tool.apply(changed, diff)
			if err != nil {
				t.Fatalf("%s: %v", c.name, err)
			}
			if made[i] = texts[c.file]; string(made[i]) != c.new {
				t.Errorf("%s: %s gives %q, want %q", c.name, tool.name, made[i], c.new)
			}
		}
		results += resultLine(c, made[0], made[1])
	}
	name := filepath.Join("testdata", "reference", "results.txt")
	if *update {
		if err := os.WriteFile(name, []byte(results), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if committed, err := os.ReadFile(name); err != nil || string(committed) != results {
		t.Errorf("the committed results differ (%v); now\n%s", err, results)
	}
}

// In a subfolder of a repository, git skips in silence what it thinks lies
// elsewhere.
func TestOutsideLiveSubfolder(t *testing.T) {
	live(t)
	dir := t.TempDir()
	if out, err := exec.Command("git", "init", "-q", dir).CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	sub := filepath.Join(dir, "fleet", "egret-01")
	if err := os.MkdirAll(sub, 0o755); err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(sub, "my printer.cfg")
	if err := os.WriteFile(file, []byte("a: 1\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	diff := unified(t, []FileChange{{"my printer.cfg", []byte("a: 1\n"), []byte("a: 2\n")}}, Options{})
	if err := gitApply.run(sub, diff); err != nil {
		t.Fatal(err)
	}
	if got, err := os.ReadFile(file); err != nil || string(got) != "a: 2\n" {
		t.Errorf("got %q, %v", got, err)
	}
}

// genText draws a text of few distinct lines, so that they repeat, with all
// endings that occur.
func genText() *rapid.Generator[[]byte] {
	line := rapid.SampledFrom([]string{
		"", "//", "#define A 1", "#define B 2", "a: 1", "-- a/x", "++ b/x", "@@ -1 +1 @@",
		"\\ No newline at end of file", "D\xfcse \xb0C", "\ufeff°C", "\tend  ", "\r", "# x",
		"diff --git a/x b/x",
	})
	ending := rapid.SampledFrom([]string{"\n", "\n", "\n", "\r\n"})
	return rapid.Custom(func(t *rapid.T) []byte {
		var b bytes.Buffer
		for range rapid.IntRange(0, 40).Draw(t, "lines") {
			b.WriteString(line.Draw(t, "line") + ending.Draw(t, "ending"))
		}
		if rapid.Bool().Draw(t, "open end") {
			b.WriteString(line.Draw(t, "last"))
		}
		return b.Bytes()
	})
}

// genNewText changes some lines of a text, as edits would, or draws another.
func genNewText(old []byte) *rapid.Generator[[]byte] {
	return rapid.Custom(func(t *rapid.T) []byte {
		if rapid.IntRange(0, 5).Draw(t, "unlike") == 0 {
			return genText().Draw(t, "other")
		}
		text := bytes.Clone(old)
		for range rapid.IntRange(0, 4).Draw(t, "edits") {
			start := rapid.IntRange(0, len(text)).Draw(t, "start")
			end := rapid.IntRange(start, min(start+12, len(text))).Draw(t, "end")
			with := rapid.SampledFrom([]string{"", "7", "\n", "x\r\n", "\xe9", "one\ntwo\n"}).Draw(t, "with")
			text = append(append(bytes.Clone(text[:start]), with...), text[end:]...)
		}
		return text
	})
}

func genName() *rapid.Generator[string] {
	return rapid.Custom(func(t *rapid.T) string {
		part := rapid.StringOfN(rapid.SampledFrom([]rune("ab .-_\n\"\\'\t\aäß°\u202e\x1b\x7f#")), 1, 8, -1)
		name := part.Draw(t, "name")
		if rapid.Bool().Draw(t, "folder") {
			name = part.Draw(t, "folder name") + "/" + name
		}
		return strings.ReplaceAll(name, ".", "._") // no . or .. as a part
	})
}

func genChanges(t *rapid.T) []FileChange {
	names := rapid.SliceOfNDistinct(genName(), 1, 3, func(s string) string {
		first, _, _ := strings.Cut(s, "/")
		return first // a file and a folder cannot share a name
	}).Draw(t, "names")
	var changed []FileChange
	for _, name := range names {
		old := genText().Draw(t, "old")
		changed = append(changed, FileChange{name, old, genNewText(old).Draw(t, "new")})
	}
	return changed
}

func newTexts(changed []FileChange) (old, new map[string][]byte) {
	old, new = map[string][]byte{}, map[string][]byte{}
	for _, c := range changed {
		old[c.Name], new[c.Name] = c.Old, c.New
	}
	return old, new
}

func TestAppliedDiffGivesNewText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		changed := genChanges(t)
		var b bytes.Buffer
		if err := Unified(&b, changed, Options{Lead: []string{"why"}}); err != nil {
			t.Fatal(err)
		}
		old, new := newTexts(changed)
		got, err := Patch(old, b.Bytes())
		if err != nil {
			t.Fatalf("%v\n%s", err, b.Bytes())
		}
		for name, text := range new {
			if _, named := got[name]; named == bytes.Equal(old[name], text) {
				t.Errorf("%q: named in the diff: %v", name, named)
			} else if named && !bytes.Equal(got[name], text) {
				t.Errorf("%q: got %q, want %q", name, got[name], text)
			}
		}
	})
}

func TestOutsideLiveGenerated(t *testing.T) {
	live(t)
	rapid.Check(t, func(t *rapid.T) {
		changed := genChanges(t)
		var b bytes.Buffer
		if err := Unified(&b, changed, Options{Lead: []string{"why"}}); err != nil {
			t.Fatal(err)
		}
		if b.Len() == 0 {
			return
		}
		for _, tool := range []tool{gitApply, gnuPatch} {
			got, err := tool.apply(changed, b.Bytes())
			if err != nil {
				t.Fatal(err)
			}
			for _, c := range changed {
				if !bytes.Equal(got[c.Name], c.New) {
					t.Errorf("%s, %q: got %q, want %q\n%s", tool.name, c.Name, got[c.Name], c.New, b.Bytes())
				}
			}
		}
	})
}

func FuzzDiff(f *testing.F) {
	for _, c := range textCases() {
		f.Add(c.file, []byte(c.old), []byte(c.new))
	}
	f.Fuzz(func(t *testing.T, name string, old, new []byte) {
		var b bytes.Buffer
		err := Unified(&b, []FileChange{{name, old, new}}, Options{Lead: []string{name}})
		if err != nil {
			if b.Len() > 0 {
				t.Errorf("%v after %q", err, b.Bytes())
			}
			return
		}
		if bytes.Equal(old, new) != (b.Len() == 0) {
			t.Errorf("equal texts: %v, diff: %q", bytes.Equal(old, new), b.Bytes())
		}
		got, err := Patch(map[string][]byte{name: old}, b.Bytes())
		if err != nil {
			t.Fatalf("%v\n%s", err, b.Bytes())
		}
		if b.Len() > 0 && !bytes.Equal(got[name], new) {
			t.Errorf("got %q, want %q\n%s", got[name], new, b.Bytes())
		}
	})
}
