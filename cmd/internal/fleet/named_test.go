package fleet

import (
	"fmt"
	"strings"
	"testing"
)

func TestNamedBy(t *testing.T) {
	write(t, texts{
		".git/HEAD":     "",
		"a/swap.toml":   sharing("a", "../hotend.txt"),
		"a/printer.cfg": "[include parts/*.cfg]\n[include more.txt]\n" + healthySections,
		"a/more.txt":    "", "hotend.txt": "", "other.txt": "",
		"b/swap.toml": "no sheet",
	})
	link(t, "../a/more.txt", "b/link.txt")
	for file, want := range map[string]string{
		"a/more.txt": "a/swap.toml", "hotend.txt": "a/swap.toml", "a/printer.cfg": "a/swap.toml",
		"./b/../hotend.txt": "a/swap.toml", "a/swap.toml": "a/swap.toml",
		"b/swap.toml":     "b/swap.toml", // one that is none, too
		"a/parts/new.cfg": "a/swap.toml", "A/Printer.cfg": "a/swap.toml", "b/link.txt": "a/swap.toml",
		"other.txt": "", "a/parts/new.txt": "", "b/new.cfg": "", "../elsewhere.cfg": "",
	} {
		if got, err := NamedBy(file, ""); err != nil || got != want {
			t.Errorf("%s is named by %q, %v; want %q", file, got, err, want)
		}
	}
	if got, err := NamedBy("hotend.txt", "b"); err != nil || got != "a/swap.toml" {
		t.Errorf("with a root that does not hold it: %q, %v", got, err)
	}
}

// With more files than are looked at, nobody can tell.
func TestNamedByGivesUp(t *testing.T) {
	files := texts{".git": ""}
	for i := range 9 {
		files[fmt.Sprintf("f%d.txt", i)] = ""
	}
	write(t, files)
	for most, ok := range map[int]bool{9: false, 10: true, 11: true} { // .git, a file here, counts
		_, err := namedBy("f0.txt", "", most)
		if (err == nil) != ok || !ok && !strings.Contains(err.Error(), "more than 9 files") {
			t.Errorf("%d files may be passed by: %v", most, err)
		}
	}
}

func TestLimitedAnswer(t *testing.T) {
	for n, over := range map[int]bool{9: false, 10: false, 11: true} {
		l := limited{most: 10}
		for i := range n {
			if m, err := l.Write([]byte{byte(i)}); m != 1 || err != nil {
				t.Fatal(m, err)
			}
		}
		if l.over != over || l.Len() != min(n, 10) {
			t.Errorf("%d bytes: over %v, %d kept", n, l.over, l.Len())
		}
	}
	l := limited{most: 10}
	if n, err := l.Write(make([]byte, 30)); n != 30 || err != nil || !l.over || l.Len() != 10 {
		t.Errorf("%d, %v, %+v", n, err, l.over)
	}
}
