package defines

import (
	"os"
	"path/filepath"
	"testing"

	"preflash/parser"
)

// openTree opens a folder for the time of a test.
func openTree(t testing.TB, dir string) *parser.Tree {
	t.Helper()
	tree, err := parser.OpenTree(dir)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = tree.Close() })
	return tree
}

func writeFile(t testing.TB, dir, name, text string) {
	t.Helper()
	path := filepath.Join(dir, filepath.FromSlash(name))
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// with reads the configuration again as it is after some edits.
func (c *config) with(edits []parser.Edit) (*config, error) {
	contents := make(map[string][]byte, len(c.s.files))
	for _, f := range c.s.files {
		contents[f.Name] = applied(f, edits)
	}
	return readConfig(c.tree.With(contents), c.request)
}

// applied gives a file's bytes after those of the edits that are in it.
func applied(f *parser.File, edits []parser.Edit) []byte {
	var out []byte
	done := 0
	for _, e := range edits {
		if e.At.File == f {
			out = append(append(out, f.Data[done:e.At.Start]...), e.New...)
			done = e.At.End
		}
	}
	if done == 0 && out == nil {
		return f.Data
	}
	return append(out, f.Data[done:]...)
}

// close allows for figures that are written with seven digits.
func close(a, b float64) bool {
	d := a - b
	return d*d <= 1e-12*(a*a+b*b) || d == 0
}
