package parser

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

func mustLink(t *testing.T, target, name string) {
	t.Helper()
	if err := os.Symlink(target, name); err != nil {
		t.Skip(err)
	}
}

func TestTrace(t *testing.T) {
	tree, dir := newTree(t, map[string]string{"shared/deep/real.cfg": "x", "a/own.cfg": "y"})
	at := func(name string) string { return filepath.Join(dir, filepath.FromSlash(name)) }
	mustLink(t, "../shared/deep", at("a/parts"))
	mustLink(t, "real.cfg", at("shared/deep/now.cfg"))
	mustLink(t, "parts/../deep/now.cfg", at("a/way.cfg")) // .. goes up from where the link led
	mustLink(t, "gone.cfg", at("a/dangling.cfg"))
	mustLink(t, "round.cfg", at("a/round.cfg"))
	mustLink(t, "../../x", at("a/out.cfg"))
	mustLink(t, at("a/own.cfg"), at("a/absolute.cfg"))
	for _, tt := range []struct {
		name, real string
		links      []string
		err        error
	}{
		{"a/own.cfg", "a/own.cfg", nil, nil},
		{"a/parts/now.cfg", "shared/deep/real.cfg", []string{"a/parts", "shared/deep/now.cfg"}, nil},
		{"a/way.cfg", "shared/deep/real.cfg", []string{"a/way.cfg", "a/parts", "shared/deep/now.cfg"}, nil},
		{"a/parts/none.cfg", "shared/deep/none.cfg", []string{"a/parts"}, fs.ErrNotExist},
		{"a/dangling.cfg", "a/gone.cfg", []string{"a/dangling.cfg"}, fs.ErrNotExist},
		{"a/own.cfg/x", "a/own.cfg/x", nil, fs.ErrNotExist},
		{"a/out.cfg", "", nil, errOutside},
		{"a/absolute.cfg", "", nil, errOutside},
		{"../x", "", nil, errOutside},
		{"a/round.cfg", "", nil, errLoop},
	} {
		real, links, err := tree.Trace(tt.name)
		if !errors.Is(err, tt.err) || tt.real != "" && (real != tt.real || !slices.Equal(links, tt.links)) {
			t.Errorf("Trace(%s) = %s, %q, %v", tt.name, real, links, err)
		}
	}
	f, err := tree.Open("a/way.cfg")
	if err != nil || f.Real != tree.Shown("shared/deep/real.cfg") || f.Path != "a/way.cfg" {
		t.Errorf("Open through links: %+v, %v", f, err)
	}
}

// What git keeps is not read, under no name that a disk may find it by.
func TestOpenRefusesGit(t *testing.T) {
	tree, dir := newTree(t, map[string]string{
		".git/config": "[remote]\nurl: do-not-show", "a.cfg": "", "x.git/a.cfg": "", "git/a.cfg": "",
	})
	mustLink(t, ".git/config", filepath.Join(dir, "link.cfg"))
	mustLink(t, ".git", filepath.Join(dir, "folder"))
	for _, name := range []string{
		".git/config", ".GIT/config", ".git./config", ".git /config", "git~1/config", "GIT~1/config",
		".git::$INDEX_ALLOCATION/config", ".g\u200cit/config", "link.cfg", "folder/config", ".git",
	} {
		if f, err := tree.Open(name); err == nil || !strings.Contains(err.Error(), "belongs to git") {
			t.Errorf("Open(%q) = %v, %v", name, f, err)
		}
	}
	for _, name := range []string{"x.git/a.cfg", "git/a.cfg"} {
		if _, err := tree.Open(name); err != nil {
			t.Error(err)
		}
	}
	for _, pattern := range []string{".git/*", "folder/*"} {
		if names, err := tree.Glob(pattern); err == nil {
			t.Errorf("Glob(%s) = %q", pattern, names)
		}
	}
	if names, err := tree.Glob(".g*/config"); err != nil || len(names) != 1 {
		t.Errorf("Glob names %q, %v; Open refuses it", names, err)
	}
}

// A file has one spelling where the disk takes upper and lower case for the
// same, and two where it holds both: then they are hard links.
func TestSpelling(t *testing.T) {
	listing := func(names ...string) func(string) bool {
		return func(name string) bool { return slices.Contains(names, name) }
	}
	one := FileID{1, 2}
	for _, tt := range []struct {
		name          string
		first, second string
		id            FileID
		lists         func(string) bool
		want          string
	}{
		{"a disk that folds", "Printer.cfg", "printer.cfg", one, listing("Printer.cfg"), "Printer.cfg"},
		{"a disk that folds, a folder", "A/printer.cfg", "a/Printer.cfg", one, listing("a/Printer.cfg"),
			"A/printer.cfg"},
		{"two hard links", "Printer.cfg", "printer.cfg", one, listing("Printer.cfg", "printer.cfg"),
			"printer.cfg"},
		{"two other names", "a.cfg", "b.cfg", one, listing(), "b.cfg"},
		{"a disk without identities", "Printer.cfg", "printer.cfg", FileID{}, listing(), "printer.cfg"},
	} {
		d := newDisk()
		if got := d.spelling(tt.id, tt.first, tt.lists); got != tt.first {
			t.Errorf("%s: the first is %s", tt.name, got)
		}
		if got := d.spelling(tt.id, tt.second, tt.lists); got != tt.want {
			t.Errorf("%s: %s, want %s", tt.name, got, tt.want)
		}
	}
	// On this disk, whichever way it is.
	tree, dir := newTree(t, map[string]string{"Printer.cfg": "x"})
	first, err := tree.Open("Printer.cfg")
	if err != nil {
		t.Fatal(err)
	}
	second, err := tree.Open("PRINTER.cfg")
	if err == nil && second.Real != first.Real {
		t.Errorf("a disk that folds: %s and %s", first.Real, second.Real)
	}
	if err != nil {
		if err := os.Link(filepath.Join(dir, "Printer.cfg"), filepath.Join(dir, "PRINTER.cfg")); err != nil {
			t.Skip(err)
		}
		if second, err = tree.Open("PRINTER.cfg"); err != nil || second.Real == first.Real ||
			second.ID != first.ID {
			t.Errorf("hard links: %+v and %+v, %v", first, second, err)
		}
	}
}

// A file is read once, by whatever names; again where it changed.
func TestFileIsReadOnce(t *testing.T) {
	tree, dir := newTree(t, map[string]string{"a.cfg": "one"})
	mustLink(t, "a.cfg", filepath.Join(dir, "link.cfg"))
	if err := os.Link(filepath.Join(dir, "a.cfg"), filepath.Join(dir, "hard.cfg")); err != nil {
		t.Skip(err)
	}
	for range 3 {
		for _, name := range []string{"a.cfg", "link.cfg", "hard.cfg"} {
			if f, err := tree.With(nil).Open(name); err != nil || string(f.Data) != "one" {
				t.Fatalf("%s: %v, %v", name, f, err)
			}
		}
	}
	if tree.disk.reads != 1 {
		t.Errorf("read %d times", tree.disk.reads)
	}
	writeFile(t, dir, "a.cfg", "two, longer")
	if f, err := tree.Open("hard.cfg"); err != nil || string(f.Data) != "two, longer" {
		t.Errorf("after a change: %v, %v", f, err)
	}
}

// What is kept has a limit: what was read first goes first.
func TestKeptBytes(t *testing.T) {
	const size, files = maxKeptBytes / 4, 5
	tree, dir := newTree(t, nil)
	for i := range files {
		writeFile(t, dir, fmt.Sprintf("%d.cfg", i), strings.Repeat("x", size))
	}
	open := func(i int) {
		t.Helper()
		if _, err := tree.Open(fmt.Sprintf("%d.cfg", i)); err != nil {
			t.Fatal(err)
		}
	}
	for i := range files {
		open(i)
		open(i)
	}
	if tree.disk.bytes != maxKeptBytes || tree.disk.reads != files || len(tree.disk.files) != 4 {
		t.Errorf("%d bytes of %d files kept, %d files read",
			tree.disk.bytes, len(tree.disk.files), tree.disk.reads)
	}
	open(files - 1)
	if tree.disk.reads != files {
		t.Error("the last file was read again")
	}
	open(0)
	if tree.disk.reads != files+1 || tree.disk.bytes != maxKeptBytes {
		t.Errorf("the first file was not read again: %d files read, %d bytes kept",
			tree.disk.reads, tree.disk.bytes)
	}
}

// The bytes of one printer are counted as often as they are asked for.
func TestPrinterBytes(t *testing.T) {
	tree, _ := newTree(t, map[string]string{"a.cfg": strings.Repeat("x", MaxFileBytes)})
	one, _ := tree.ForPrinter()
	const fit = MaxPrinterBytes / MaxFileBytes
	for i := range fit + 1 {
		_, err := one.Open("a.cfg")
		if refused := err != nil; refused != (i == fit) ||
			refused && !strings.Contains(err.Error(), "more than 64 MiB") {
			t.Errorf("time %d: %v", i, err)
		}
	}
}

func TestDeepFolders(t *testing.T) {
	deep := func(n int) string { return strings.Repeat("d/", n) + "swap.toml" }
	tree, dir := newTree(t, map[string]string{
		deep(MaxFolderDepth - 1): "below", deep(MaxFolderDepth): "at", deep(MaxFolderDepth + 1): "above",
	})
	if strings.Count(deep(MaxFolderDepth), "/") != MaxFolderDepth {
		t.Fatal("the test counts otherwise")
	}
	var found, failed []string
	tree.Walk(".", func(name string) bool { found = append(found, name); return true },
		func(err error) { failed = append(failed, err.Error()) })
	slices.SortFunc(found, func(a, b string) int { return len(a) - len(b) })
	if want := []string{deep(MaxFolderDepth - 1), deep(MaxFolderDepth)}; !slices.Equal(found, want) {
		t.Errorf("found %d: %q", len(found), found)
	}
	if len(failed) != 1 || !strings.Contains(failed[0], "more than 64 folders deep") {
		t.Errorf("failed: %q", failed)
	}
	for n, ok := range map[int]bool{
		MaxFolderDepth - 1: true, MaxFolderDepth: true, MaxFolderDepth + 1: false,
	} {
		if _, err := tree.Open(deep(n)); (err == nil) != ok {
			t.Errorf("%d folders deep: %v", n, err)
		}
	}
	mustLink(t, strings.Repeat("d/", MaxFolderDepth), filepath.Join(dir, "short"))
	if _, err := tree.Open("short/swap.toml"); err != nil {
		t.Error(err)
	}
	if _, err := tree.Open("short/d/swap.toml"); err == nil {
		t.Error("a link leads deeper than may be")
	}
}

func TestManyLinks(t *testing.T) {
	tree, dir := newTree(t, map[string]string{"0.cfg": "x"})
	for i := range maxLinks + 1 {
		mustLink(t, fmt.Sprintf("%d.cfg", i), filepath.Join(dir, fmt.Sprintf("%d.cfg", i+1)))
	}
	for n, ok := range map[int]bool{maxLinks - 1: true, maxLinks: true, maxLinks + 1: false} {
		if _, _, err := tree.Trace(fmt.Sprintf("%d.cfg", n)); (err == nil) != ok {
			t.Errorf("%d links: %v", n, err)
		}
	}
}

func TestListLimits(t *testing.T) {
	tree, dir := newTree(t, nil)
	add := func(from, to int) {
		for i := from; i < to; i++ {
			writeFile(t, dir, fmt.Sprintf("%d.cfg", i), "")
		}
	}
	for _, n := range []int{MaxListed - 1, MaxListed, MaxListed + 1} {
		entries, err := os.ReadDir(dir)
		if err != nil {
			t.Fatal(err)
		}
		add(len(entries), n)
		tree.disk = newDisk()
		names, err := tree.Glob("*.cfg")
		if ok := n <= MaxListed; ok != (err == nil) || ok && len(names) != n ||
			!ok && !strings.Contains(err.Error(), "too many for a pattern") {
			t.Errorf("%d files: %d names, %v", n, len(names), err)
		}
	}
}

func TestReadingSteps(t *testing.T) {
	var r Reading
	if err := r.step(MaxPrinterSteps - 1); err != nil {
		t.Errorf("below: %v", err)
	}
	if err := r.name("a"); err != nil {
		t.Errorf("at: %v", err)
	}
	if err := r.pattern("*"); err == nil || !strings.Contains(err.Error(), "more than 1000000 steps") {
		t.Errorf("above: %v", err)
	}
	if !slices.Equal(r.Names(), []string{"a"}) || !slices.Equal(r.Patterns(), []string{"*"}) {
		t.Errorf("%q, %q", r.Names(), r.Patterns())
	}
}
