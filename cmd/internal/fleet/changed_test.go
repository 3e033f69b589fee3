package fleet

import (
	"fmt"
	"os/exec"
	"slices"
	"strings"
	"testing"

	"preflash/cmd/internal/testfiles"
)

func gitHere(t *testing.T, args ...string) {
	t.Helper()
	args = append([]string{"-c", "user.name=t", "-c", "user.email=t@example.invalid"}, args...)
	cmd := exec.Command("git", args...)
	if out, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("git %v: %v\n%s", args, err, out)
	}
}

// checked lists the printers that a run with a revision looks at.
func checked(t *testing.T, rev string) []string {
	t.Helper()
	r := check(Options{Today: today, Since: rev})
	var names []string
	for _, p := range r.Printers {
		if p.Problem != nil {
			t.Fatalf("%s: %s", p.Name, p.Problem)
		}
		names = append(names, p.Name)
	}
	return names
}

// sharing is a sheet that shares a hotend's file.
func sharing(name, hotend string) string {
	use := fmt.Sprintf("[new]\nuse = %q\n", hotend)
	return strings.Replace(fleetSheet(name, "printer.cfg"), "[new]\n", use, 1)
}

func TestChangedSince(t *testing.T) {
	const glob = "[include parts/*.cfg]\n"
	write(t, texts{
		"a/swap.toml":       fleetSheet("a", "printer.cfg"),
		"a/printer.cfg":     glob + healthySections,
		"a/parts/fan.cfg":   "[fan]\npin: PA1\n",
		"b/swap.toml":       fleetSheet("b", "Configuration.h"),
		"b/Configuration.h": base + watch + "#include \"more.h\"\n",
		"b/more.h":          "#define ONE 1\n",
		"c/swap.toml":       sharing("c", "../hotends/x.toml"),
		"c/printer.cfg":     healthySections,
		"hotends/x.toml":    "name = \"x\"\n",
		"unrelated/x.txt":   "x",
	})
	gitHere(t, "init", "-q")
	gitHere(t, "add", ".")
	gitHere(t, "commit", "-qm", "start")

	tests := []struct {
		name   string
		change func()
		want   []string
	}{
		{"nothing", func() {}, nil},
		{"something else", func() { put(t, "unrelated/x.txt", "y") }, nil},
		{"a sheet",
			func() { put(t, "a/swap.toml", fleetSheet("a", "printer.cfg")+"# more\n") }, []string{"a"}},
		{"an included header", func() { put(t, "b/more.h", "#define ONE 2\n") }, []string{"b"}},
		{"a shared hotend file", func() { put(t, "hotends/x.toml", "name = \"y\"\n") }, []string{"c"}},
		{"a file that a pattern now matches",
			func() { put(t, "a/parts/new.cfg", "[fan]\npin: PA2\n") }, []string{"a"}},
		{"a file that a pattern no longer matches", func() { remove(t, "a/parts/fan.cfg") }, []string{"a"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			tt.change()
			if got := checked(t, "HEAD"); !slices.Equal(got, tt.want) {
				t.Errorf("uncommitted: checks %q, want %q", got, tt.want)
			}
			gitHere(t, "add", "-A")
			gitHere(t, "commit", "-q", "--allow-empty", "-m", tt.name)
			if got := checked(t, "HEAD~1"); !slices.Equal(got, tt.want) {
				t.Errorf("committed: checks %q, want %q", got, tt.want)
			}
		})
	}
	for _, rev := range []string{"no-such", "--output=/tmp/x", "-h"} {
		r := check(Options{Today: today, Since: rev})
		if len(r.Printers) != 1 || r.Printers[0].Problem == nil ||
			!strings.Contains(r.Printers[0].Problem.Message, "names no revision") {
			t.Errorf("--changed-since %s: %+v, want one problem", rev, r.Printers)
		}
	}
}

// A link inside the tree leads to files that git knows by another name.
func TestChangedSinceThroughLinks(t *testing.T) {
	write(t, texts{
		"a/swap.toml": fleetSheet("a", "printer.cfg"), "shared/base.cfg": healthySections,
		"b/swap.toml": fleetSheet("b", "parts/printer.cfg"), "shared/b/printer.cfg": healthySections,
	})
	link(t, "../shared/base.cfg", "a/printer.cfg")
	link(t, "../shared/b", "b/parts")
	gitHere(t, "init", "-q")
	gitHere(t, "add", ".")
	gitHere(t, "commit", "-qm", "start")
	for _, tt := range []struct {
		file string
		want []string
	}{{"shared/base.cfg", []string{"a"}}, {"shared/b/printer.cfg", []string{"b"}}} {
		testfiles.Write(t, ".", texts{tt.file: healthySections + "# more\n"})
		if got := checked(t, "HEAD"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: checks %q, want %q", tt.file, got, tt.want)
		}
		gitHere(t, "commit", "-qam", "more")
	}
	link(t, "../shared/b/../b", "b/parts")
	if got, want := checked(t, "HEAD"), []string{"b"}; !slices.Equal(got, want) {
		t.Errorf("a link that changed: checks %q, want %q", got, want)
	}
}
