package parser

import (
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// newTree returns a tree over a new folder that holds these files.
func newTree(t *testing.T, files map[string]string) (*Tree, string) {
	t.Helper()
	dir := t.TempDir()
	for name, text := range files {
		writeFile(t, dir, name, text)
	}
	tree, err := OpenTree(dir)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { tree.Close() })
	return tree, dir
}

func writeFile(t *testing.T, dir, name, text string) {
	t.Helper()
	full := filepath.Join(dir, filepath.FromSlash(name))
	if err := os.MkdirAll(filepath.Dir(full), 0o777); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(full, []byte(text), 0o666); err != nil {
		t.Fatal(err)
	}
}

func TestOpenRefuses(t *testing.T) {
	tree, dir := newTree(t, map[string]string{
		"folder/a.h": "x",
		"nul.h":      "line 1\nline 2\x00\n",
		"utf16le.h":  "\xff\xfe#\x00",
		"utf16be.h":  "\xfe\xff\x00#",
	})
	writeFile(t, dir, "large.h", "")
	if err := os.Truncate(filepath.Join(dir, "large.h"), MaxFileBytes+1); err != nil {
		t.Fatal(err)
	}
	outside := filepath.Join(t.TempDir(), "secret")
	writeFile(t, filepath.Dir(outside), "secret", "secret")
	if err := os.Symlink(outside, filepath.Join(dir, "link.h")); err != nil {
		t.Fatal(err)
	}
	tests := []struct{ name, want string }{
		{"missing.h", "does not exist"},
		{"folder", "is a folder"},
		{"nul.h", "NUL byte in line 2"},
		{"utf16le.h", "UTF-16"},
		{"utf16be.h", "UTF-16"},
		{"large.h", "larger than 8 MiB"},
		{"link.h", "outside the root"},
		{"../secret", "outside the root"},
		{"folder/../../secret", "outside the root"},
		{outside, "outside the root"},
	}
	for _, tt := range tests {
		_, err := tree.Open(tt.name)
		var e *Error
		if !errors.As(err, &e) || !strings.Contains(e.Message, tt.want) {
			t.Errorf("Open(%q) = %v, want an *Error with %q", tt.name, err, tt.want)
			continue
		}
		if e.File != tree.Shown(tt.name) {
			t.Errorf("Open(%q) names the file %q, want %q", tt.name, e.File, tree.Shown(tt.name))
		}
		if strings.Contains(e.Error(), "secret\n") {
			t.Errorf("Open(%q) shows what it must not read: %v", tt.name, e)
		}
	}
}

func TestOpenKeepsBytes(t *testing.T) {
	const text = "\xef\xbb\xbfa\r\nb\xfc\tc"
	tree, _ := newTree(t, map[string]string{"a.h": text})
	f, err := tree.Open("./a.h")
	if err != nil {
		t.Fatal(err)
	}
	if string(f.Data) != text || f.Path != "a.h" {
		t.Errorf("Open = %q at %q, want %q at a.h", f.Data, f.Path, text)
	}
}

func TestWith(t *testing.T) {
	tree, _ := newTree(t, map[string]string{"a.h": "old", "b.h": "kept"})
	other := tree.With(map[string][]byte{tree.Shown("a.h"): []byte("new")})
	for _, tt := range []struct {
		tree       *Tree
		name, want string
	}{{tree, "a.h", "old"}, {other, "a.h", "new"}, {other, "b.h", "kept"}} {
		f, err := tt.tree.Open(tt.name)
		if err != nil {
			t.Fatal(err)
		}
		if string(f.Data) != tt.want {
			t.Errorf("%s is %q, want %q", tt.name, f.Data, tt.want)
		}
	}
}

func TestGlob(t *testing.T) {
	tree, dir := newTree(t, map[string]string{
		"macros/b.cfg": "", "macros/a.cfg": "", "macros/c.txt": "", "macros/.hidden.cfg": "",
		"x1/fan.cfg": "", "x2/fan.cfg": "", "top.cfg": "",
	})
	if err := os.Symlink(t.TempDir(), filepath.Join(dir, "out")); err != nil {
		t.Fatal(err)
	}
	// What lies behind a link out of the tree is not passed over: it is named,
	// so that Open refuses it.
	if got, err := tree.Glob("o*/fan.cfg"); err != nil || !slices.Equal(got, []string{"out/fan.cfg"}) {
		t.Errorf("Glob behind a link out of the tree = %q, %v, want out/fan.cfg", got, err)
	}
	if !tree.Lacks("out/fan.cfg") || !tree.Lacks("../x") || !tree.Lacks("none") || tree.Lacks("top.cfg") ||
		tree.Lacks("x1") {
		t.Error("Lacks is wrong")
	}
	if got := tree.FromRoot(filepath.ToSlash(tree.Dir()) + "/a/../b.cfg"); got != "b.cfg" {
		t.Errorf("FromRoot gives %q, want b.cfg", got)
	}
	if !tree.Exists("out/fan.cfg") || tree.Exists("none/fan.cfg") || tree.Exists("top.cfg/fan.cfg") {
		t.Error("Exists is wrong behind a link out of the tree, or of what is not there")
	}
	for _, tt := range []struct {
		pattern string
		want    []string
	}{
		{"macros/*.cfg", []string{"macros/a.cfg", "macros/b.cfg"}},
		{"x*/fan.cfg", []string{"x1/fan.cfg", "x2/fan.cfg"}},
		{"x[2]/*", []string{"x2/fan.cfg"}},
		{"top.cfg", []string{"top.cfg"}},
		{"none/*.cfg", nil},
		{"none.cfg", nil},
		{"top.cfg/*", nil},
		{"t*/fan.cfg", nil},
		{"macros/.h*", []string{"macros/.hidden.cfg"}},
	} {
		got, err := tree.Glob(tt.pattern)
		if err != nil || !slices.Equal(got, tt.want) {
			t.Errorf("Glob(%q) = %q, %v, want %q", tt.pattern, got, err, tt.want)
		}
	}
	for pattern, want := range map[string]string{
		"../*.cfg": "outside the root", "/etc/*": "outside the root", "out/*": "outside the root",
		"a[": "not a valid pattern",
	} {
		if got, err := tree.Glob(pattern); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("Glob(%q) = %q, %v, want an error with %q", pattern, got, err, want)
		}
	}
}

func TestWalk(t *testing.T) {
	tree, dir := newTree(t, map[string]string{
		"b/swap.toml": "", "a/swap.toml": "", ".git/swap.toml": "", "a/deep/swap.toml": "",
	})
	if err := os.Symlink(filepath.Join(dir, "a"), filepath.Join(dir, "loop")); err != nil {
		t.Fatal(err)
	}
	// On a disk that takes such a name, the folder behind it hides nothing.
	odd := os.Mkdir(filepath.Join(dir, "a\xff"), 0o777) == nil
	var got, problems []string
	walk := func(dir string) {
		got, problems = nil, nil
		tree.Walk(dir, func(file string) bool { got = append(got, file); return true },
			func(err error) { problems = append(problems, err.Error()) })
	}
	walk(".")
	// The link is named, and not followed: no sheet is found twice.
	want := []string{"a/deep/swap.toml", "a/swap.toml", "b/swap.toml", "loop"}
	if !slices.Equal(got, want) {
		t.Errorf("Walk visits %q, want %q", got, want)
	}
	if odd != (len(problems) == 1 && strings.Contains(problems[0], "not UTF-8")) {
		t.Errorf("problems %q, with a name that is not UTF-8: %v", problems, odd)
	}
	if walk("missing"); len(problems) != 1 || len(got) > 0 {
		t.Errorf("Walk of a missing folder finds %q, problems %q", got, problems)
	}
}
