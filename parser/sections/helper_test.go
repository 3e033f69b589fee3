package sections

import (
	"os"
	"path/filepath"
	"testing"

	"preflash/parser"
)

// files are the contents of a tree by path.
type files map[string]string

// treeOf writes files and opens their folder.
func treeOf(t testing.TB, contents files) *parser.Tree {
	t.Helper()
	dir := t.TempDir()
	writeFiles(t, dir, contents)
	return openTree(t, dir)
}

// openTree opens a folder for the time of a test.
func openTree(t testing.TB, dir string) *parser.Tree {
	t.Helper()
	tree, err := parser.OpenTree(dir)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { tree.Close() })
	return tree
}

func writeFiles(t interface{ Fatal(...any) }, dir string, contents files) {
	for name, text := range contents {
		path := filepath.Join(dir, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(path), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
}

// readFiles reads printer.cfg of a set of files.
func readFiles(t testing.TB, contents files, change ...func(*parser.Request)) *config {
	t.Helper()
	c, err := tryFiles(t, contents, change...)
	if err != nil {
		t.Fatalf("cannot read: %v", err)
	}
	return c
}

func tryFiles(t testing.TB, contents files, change ...func(*parser.Request)) (*config, error) {
	t.Helper()
	request := parser.Request{Files: []string{"printer.cfg"}}
	for _, f := range change {
		f(&request)
	}
	c, err := Style.Read(treeOf(t, contents), request)
	if err != nil {
		return nil, err
	}
	return c.(*config), nil
}

// absent makes a request that calls files absent.
func absent(names ...string) func(*parser.Request) {
	return func(r *parser.Request) { r.Absent = names }
}

// forTool makes a request for one of the tools.
func forTool(number int) func(*parser.Request) {
	return func(r *parser.Request) { r.Tool = number }
}

// readText reads one file.
func readText(t testing.TB, text string) *config {
	t.Helper()
	return readFiles(t, files{"printer.cfg": text})
}

// entry gives the value in force of an option, by section.key.
func entry(c *config, name string) (string, bool) {
	for _, e := range c.Entries() {
		if e.Name == name && e.Active == parser.Yes {
			return e.Value, true
		}
	}
	return "", false
}

// described gives a setting of the printer by its key.
func described(t testing.TB, c *config, key parser.Key) parser.Description {
	t.Helper()
	for s := range c.Printer().Settings() {
		if s.Key == key {
			return s
		}
	}
	t.Fatalf("the printer has no %s", key)
	return parser.Description{}
}

// remarksOf gives the remarks of one kind.
func remarksOf(c *config, kind parser.RemarkKind) (list []parser.Remark) {
	for _, r := range c.Printer().Remarks {
		if r.Kind == kind {
			list = append(list, r)
		}
	}
	return list
}

// tempTree writes files for a check of rapid, whose many checks share one test.
func tempTree(t interface{ Fatal(...any) }, contents files) (string, *parser.Tree) {
	dir, err := os.MkdirTemp("", "sections")
	if err != nil {
		t.Fatal(err)
	}
	writeFiles(t, dir, contents)
	tree, err := parser.OpenTree(dir)
	if err != nil {
		t.Fatal(err)
	}
	return dir, tree
}

func removeAll(dir string) { os.RemoveAll(dir) }
