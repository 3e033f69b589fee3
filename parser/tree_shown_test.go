package parser

import (
	"os"
	"path/filepath"
	"testing"
)

// A path is shown as a person at the working directory would write it, above
// the root, in it, and below it.
func TestShown(t *testing.T) {
	root := t.TempDir()
	if err := os.MkdirAll(filepath.Join(root, "printers", "egret-03", "cfg"), 0o777); err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct{ wd, name, want string }{
		{".", "printers/egret-03/a.h", "printers/egret-03/a.h"},
		{"printers", "printers/egret-03/a.h", "egret-03/a.h"},
		{"printers/egret-03", "printers/egret-03/a.h", "a.h"},
		{"printers/egret-03", "./printers/egret-03/cfg/../a.h", "a.h"},
		{"printers/egret-03", "printers/egret-03", "."},
		{"printers/egret-03", "printers/egret-04/a.h", "../egret-04/a.h"},
		{"printers/egret-03", "printers/egret-031/a.h", "../egret-031/a.h"},
		{"printers/egret-03", "hotends/b.toml", "../../hotends/b.toml"},
		{"printers/egret-03", "printers", ".."},
		{"printers/egret-03/cfg", "printers/egret-03/a.h", "../a.h"},
		{".", "/etc/passwd", "/etc/passwd"},
		{"printers/egret-03", "/etc/passwd", "/etc/passwd"},
	} {
		t.Chdir(filepath.Join(root, filepath.FromSlash(tt.wd)))
		tree, err := OpenTree(root)
		if err != nil {
			t.Fatal(err)
		}
		if got := tree.Shown(tt.name); got != tt.want {
			t.Errorf("in %s, %s is shown as %s, want %s", tt.wd, tt.name, got, tt.want)
		}
		tree.Close()
	}
	t.Chdir(filepath.Dir(root))
	tree, err := OpenTree(root)
	if err != nil {
		t.Fatal(err)
	}
	defer tree.Close()
	if got, want := tree.Shown("a.h"), filepath.Base(root)+"/a.h"; got != want {
		t.Errorf("above the root, a.h is shown as %s, want %s", got, want)
	}
}
