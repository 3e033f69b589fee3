package fleet

import (
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"preflash/cmd/internal/testfiles"
)

// put writes a file that can be run, and its folder where it is new.
func put(t testing.TB, name, text string) {
	t.Helper()
	testfiles.Write(t, filepath.Dir(name), texts{filepath.Base(name): text})
	if err := os.Chmod(name, 0o777); err != nil {
		t.Fatal(err)
	}
}

func link(t *testing.T, target, name string) {
	t.Helper()
	_ = os.Remove(name)
	if err := os.Symlink(target, name); err != nil {
		t.Fatal(err)
	}
}

func remove(t *testing.T, name string) {
	t.Helper()
	if err := os.RemoveAll(name); err != nil {
		t.Fatal(err)
	}
}

func commitAll(t *testing.T, message string) {
	t.Helper()
	gitHere(t, "add", "-A")
	gitHere(t, "commit", "-q", "--allow-empty", "-m", message)
}

// runs is a command that leaves a trace.
func runs(t *testing.T) (command string, ran func() bool) {
	t.Helper()
	dir := t.TempDir()
	script, trace := filepath.Join(dir, "run"), filepath.Join(dir, "ran")
	put(t, script, "#!/bin/sh\ntouch "+trace+"\ncat\n")
	return script, func() bool { _, err := os.Stat(trace); return err == nil }
}

// What a repository holds can neither run, nor wait, nor hide a change.
func TestChangedSinceHostile(t *testing.T) {
	if _, err := os.Stat("/bin/sh"); err != nil {
		t.Skip("the traces are left by a shell script")
	}
	plain := func(t *testing.T) texts {
		f := healthy("a", "b")
		f[".gitattributes"] = "*.cfg filter=odd diff=odd\n"
		return f
	}
	edited := healthySections + "# more\n"
	config := func(keys ...string) func(*testing.T, string) {
		return func(t *testing.T, script string) {
			for _, key := range keys {
				name, value, _ := strings.Cut(key, " ")
				gitHere(t, "config", name, strings.ReplaceAll(value, "RUN", script))
			}
			put(t, "a/printer.cfg", edited)
		}
	}
	for _, tt := range []struct {
		name   string
		start  func(t *testing.T) // before the first commit; may be nil
		attack func(t *testing.T, script string)
		want   []string
	}{
		{"a filter with = in its name", nil, func(t *testing.T, script string) {
			put(t, ".git/config", `[core]
	repositoryformatversion = 0
[filter "a=b"]
	clean = `+script+`
	required = true
`)
			put(t, ".gitattributes", "*.cfg filter=a=b\n")
			put(t, "a/printer.cfg", edited)
		}, []string{"a"}},
		{"a filter", nil,
			config("filter.odd.clean RUN", "filter.odd.process RUN", "filter.odd.required true"),
			[]string{"a"}},
		{"a text conversion, an external diff", nil,
			config("diff.odd.textconv RUN", "diff.odd.command RUN", "diff.external RUN"), []string{"a"}},
		{"a file monitor", nil, config("core.fsmonitor RUN"), []string{"a"}},
		{"a pager", nil, config("core.pager RUN", "pager.ls-tree RUN", "pager.cat-file RUN"), []string{"a"}},
		{"an alias", nil, config("alias.ls-tree !RUN", "alias.cat-file !RUN"), []string{"a"}},
		{"hooks", nil, func(t *testing.T, script string) {
			gitHere(t, "config", "core.hooksPath", filepath.Dir(script))
			for _, hook := range []string{"post-index-change", "post-checkout", "reference-transaction",
				"fsmonitor-watchman"} {
				put(t, filepath.Join(filepath.Dir(script), hook), "#!/bin/sh\nexec "+script+"\n")
			}
			put(t, "a/printer.cfg", edited)
		}, []string{"a"}},
		{"a lazy fetch by a command", nil, func(t *testing.T, script string) {
			config("core.repositoryformatversion 1", "extensions.partialClone far",
				"remote.far.promisor true", "remote.far.url ext::RUN", "protocol.ext.allow always")(t, script)
		}, []string{"a"}},
		{"the index is told that nothing changed", nil, func(t *testing.T, _ string) {
			put(t, "a/printer.cfg", edited)
			gitHere(t, "update-index", "--assume-unchanged", "a/printer.cfg")
			gitHere(t, "update-index", "--skip-worktree", "a/printer.cfg")
		}, []string{"a"}},
		{"an object that stands for another", nil, func(t *testing.T, _ string) {
			first := gitOutput(t, "rev-parse", "HEAD")
			put(t, "a/printer.cfg", edited)
			commitAll(t, "change")
			gitHere(t, "replace", first, gitOutput(t, "rev-parse", "HEAD"))
			gitHere(t, "tag", "-f", "start", first)
		}, []string{"a"}},
		{"line ends that git converts", nil, func(t *testing.T, _ string) {
			gitHere(t, "config", "core.autocrlf", "true")
			put(t, "a/printer.cfg", strings.ReplaceAll(healthySections, "\n", "\r\n"))
		}, []string{"a"}},
		{"a folder that doubles as a repository", func(t *testing.T) {
			// It claims that its HEAD is what is on the disk.
			gitHere(t, "init", "-q", "--bare", "a")
		}, func(t *testing.T, script string) {
			put(t, "a/config", `[core]
	repositoryformatversion = 0
	bare = false
	worktree = .
	fsmonitor = `+script+"\n")
			put(t, "a/printer.cfg", edited)
		}, []string{"a"}},
		{"a link behind a link", func(t *testing.T) {
			put(t, "shared/one.cfg", healthySections)
			put(t, "shared/two.cfg", edited)
			link(t, "one.cfg", "shared/now.cfg")
			link(t, "../shared/now.cfg", "a/printer.cfg")
		}, func(t *testing.T, _ string) { link(t, "two.cfg", "shared/now.cfg") }, []string{"a"}},
		{"a file that became a link", func(t *testing.T) {
			put(t, "shared/one.cfg", healthySections)
		}, func(t *testing.T, _ string) { link(t, "../shared/one.cfg", "a/printer.cfg") }, []string{"a"}},
		{"a file left a wildcard in a linked folder", func(t *testing.T) {
			put(t, "shared/parts/fan.cfg", "[fan]\npin: PA1\n")
			put(t, "shared/parts/more.cfg", "[fan]\nmax_power: 1\n")
			link(t, "../shared/parts", "a/parts")
			put(t, "a/printer.cfg", "[include parts/*.cfg]\n"+healthySections)
		}, func(t *testing.T, _ string) { remove(t, "shared/parts/more.cfg") }, []string{"a"}},
		{"the last file left a wildcard", func(t *testing.T) {
			put(t, "a/parts/fan.cfg", "[fan]\npin: PA1\n")
			put(t, "a/printer.cfg", "[include p*/*.cfg]\n"+healthySections)
		}, func(t *testing.T, _ string) { remove(t, "a/parts") }, []string{"a"}},
		{"a submodule moved", func(t *testing.T) {
			gitHere(t, "init", "-q", "sub")
			put(t, "sub/printer.cfg", healthySections)
			gitHere(t, "-C", "sub", "add", "-A")
			gitHere(t, "-C", "sub", "commit", "-qm", "start")
			put(t, "a/printer.cfg", "[include ../sub/*.cfg]\n"+healthySections)
		}, func(t *testing.T, _ string) {
			put(t, "sub/printer.cfg", edited)
			gitHere(t, "-C", "sub", "commit", "-qam", "move")
		}, []string{"a"}},
		{"what an absent file is named for came", func(t *testing.T) {
			absent := "\nabsent = [\"gone.cfg\"]\nconfig"
			put(t, "a/swap.toml", strings.Replace(fleetSheet("a", "printer.cfg"), "\nconfig", absent, 1))
			put(t, "a/printer.cfg", "[include gone.cfg]\n"+healthySections)
		}, func(t *testing.T, _ string) { put(t, "a/gone.cfg", "[fan]\npin: PA1\n") }, []string{"a"}},
		{"git's own variables", nil, func(t *testing.T, _ string) {
			put(t, "a/printer.cfg", edited)
			for _, name := range []string{"GIT_DIR", "GIT_WORK_TREE", "GIT_INDEX_FILE",
				"GIT_OBJECT_DIRECTORY", "GIT_COMMON_DIR", "GIT_CEILING_DIRECTORIES", "GIT_NAMESPACE"} {
				t.Setenv(name, t.TempDir())
			}
			t.Setenv("GIT_CONFIG_COUNT", "1")
			t.Setenv("GIT_CONFIG_KEY_0", "core.bare")
			t.Setenv("GIT_CONFIG_VALUE_0", "maybe")
			t.Setenv("GIT_TRACE", "1")
		}, []string{"a"}},
		{"nothing", nil, func(*testing.T, string) {}, nil},
	} {
		t.Run(tt.name, func(t *testing.T) {
			write(t, plain(t))
			gitHere(t, "init", "-q")
			if tt.start != nil {
				tt.start(t)
			}
			commitAll(t, "start")
			gitHere(t, "tag", "start")
			script, ran := runs(t)
			tt.attack(t, script)
			if got := checked(t, "start"); !slices.Equal(got, tt.want) {
				t.Errorf("checks %q, want %q", got, tt.want)
			}
			if ran() {
				t.Error("a command of the repository ran")
			}
			if tt.name == "nothing" { // the trace can be seen
				if err := exec.Command(script).Run(); err != nil || !ran() {
					t.Errorf("the script leaves no trace: %v", err)
				}
			}
		})
	}
}

func gitOutput(t *testing.T, args ...string) string {
	t.Helper()
	out, err := exec.Command("git", args...).Output()
	if err != nil {
		t.Fatalf("git %v: %v", args, err)
	}
	return strings.TrimSpace(string(out))
}

// problems lists what a run with a revision could not do.
func problems(t *testing.T, rev string) []string {
	t.Helper()
	var list []string
	for _, p := range check(Options{Today: today, Since: rev}).Printers {
		if p.Problem != nil {
			list = append(list, p.Problem.String())
		}
	}
	return list
}

func demandProblem(t *testing.T, rev, want string) {
	t.Helper()
	if got := problems(t, rev); len(got) != 1 || !strings.Contains(got[0], want) {
		t.Errorf("problems %q, want one with %q", got, want)
	}
}

func onePrinter(t *testing.T, format string) {
	t.Helper()
	write(t, healthy("a"))
	gitHere(t, "init", "-q", "--object-format="+format)
	commitAll(t, "start")
}

// A sheet that went is told, and one that is not on the disk is no printer that
// was checked.
func TestChangedSinceSheetsThatWent(t *testing.T) {
	onePrinter(t, "sha1")
	testfiles.Write(t, ".", healthy("b", "c", ".d"))
	commitAll(t, "more")
	gitHere(t, "rm", "-qr", "b", ".d")
	gitHere(t, "commit", "-qm", "less")
	remove(t, "c")
	r := check(Options{Today: today, Since: "HEAD~1"})
	if !slices.Equal(r.Gone, []string{"b/swap.toml"}) {
		t.Errorf("gone: %q", r.Gone)
	}
	demandProblem(t, "HEAD~1", "c/swap.toml: is not checked out")
	// Named twice, it is one all the same.
	r = check(Options{Today: today, Since: "HEAD~1"}, ".", ".", "./")
	if len(r.Printers) != 1 || len(r.Gone) != 1 {
		t.Errorf("%d printers, gone %q", len(r.Printers), r.Gone)
	}
	// What went from the disk alone, after the last commit, is not gone.
	demandProblem(t, "HEAD", "c/swap.toml: is not checked out")
}

// The only sheet went: that is said, and no error.
func TestChangedSinceLastSheetWent(t *testing.T) {
	onePrinter(t, "sha1")
	gitHere(t, "rm", "-qr", "a")
	gitHere(t, "commit", "-qm", "less")
	r := check(Options{Today: today, Since: "HEAD~1"})
	if len(r.Printers) != 0 || !slices.Equal(r.Gone, []string{"a/swap.toml"}) {
		t.Errorf("%+v", r)
	}
}

func TestChangedSinceRevisions(t *testing.T) {
	for _, format := range []string{"sha1", "sha256"} {
		t.Run(format, func(t *testing.T) {
			onePrinter(t, format)
			gitHere(t, "branch", "-M", "main")
			gitHere(t, "tag", "v1")
			gitHere(t, "tag", "-a", "v1-signed", "-m", "v1")
			gitHere(t, "update-ref", "refs/remotes/origin/main", "HEAD")
			gitHere(t, "symbolic-ref", "refs/remotes/origin/HEAD", "refs/remotes/origin/main")
			put(t, "a/printer.cfg", healthySections+"# more\n")
			commitAll(t, "more")
			first := gitOutput(t, "rev-parse", "HEAD~1")
			for range 2 {
				for _, rev := range []string{"HEAD~1", "HEAD^", "@~", "v1", "v1-signed", "origin/main",
					"origin", "refs/tags/v1", "tags/v1", first, first[:10], "main~1"} {
					if got := checked(t, rev); !slices.Equal(got, []string{"a"}) {
						t.Errorf("%s: checks %q", rev, got)
					}
				}
				for _, rev := range []string{"HEAD", "main", "refs/heads/main"} {
					if got := checked(t, rev); got != nil {
						t.Errorf("%s: checks %q", rev, got)
					}
				}
				for _, rev := range []string{"HEAD~9", "no-such", "HEAD:a", "@{1}", "main@{0}", ":/more",
					"--all", "-h", "", "v1 v1", "../config", "config", first + "0", "HEAD^{tree}"} {
					if rev != "" {
						demandProblem(t, rev, "names no revision")
					}
				}
				gitHere(t, "pack-refs", "--all")
				gitHere(t, "gc", "-q")
			}
		})
	}
}

// A linked working tree has a file .git, and refs elsewhere.
func TestChangedSinceInWorktree(t *testing.T) {
	onePrinter(t, "sha1")
	there := filepath.Join(t.TempDir(), "there")
	gitHere(t, "worktree", "add", "-q", "-b", "other", there)
	t.Chdir(there)
	put(t, "a/printer.cfg", healthySections+"# more\n")
	commitAll(t, "more")
	if got := checked(t, "HEAD~1"); !slices.Equal(got, []string{"a"}) {
		t.Errorf("checks %q", got)
	}
	if got := checked(t, "other"); got != nil {
		t.Errorf("checks %q", got)
	}
}

// The root may lie inside a submodule, which is a repository of its own.
func TestChangedSinceInSubmodule(t *testing.T) {
	onePrinter(t, "sha1")
	from, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	write(t, nil)
	gitHere(t, "init", "-q")
	gitHere(t, "-c", "protocol.file.allow=always", "submodule", "--quiet", "add", from, "sub")
	commitAll(t, "start")
	if info, err := os.Stat("sub/.git"); err != nil || info.IsDir() {
		t.Fatalf("sub/.git is no file: %v", err)
	}
	t.Chdir("sub")
	if got := checked(t, "HEAD"); got != nil {
		t.Errorf("checks %q", got)
	}
	put(t, "a/printer.cfg", healthySections+"# more\n")
	if got := checked(t, "HEAD"); !slices.Equal(got, []string{"a"}) {
		t.Errorf("checks %q", got)
	}
}

func TestChangedSinceInShallowClone(t *testing.T) {
	onePrinter(t, "sha1")
	commitAll(t, "more")
	from, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	first := gitOutput(t, "rev-parse", "HEAD~1")
	write(t, nil)
	gitHere(t, "clone", "-q", "--depth=1", "file://"+from, ".")
	for _, rev := range []string{"HEAD~1", first} {
		demandProblem(t, rev, "git fetch --unshallow")
	}
}

func TestChangedSinceWithoutRepository(t *testing.T) {
	write(t, healthy("a"))
	demandProblem(t, "HEAD", "needs a git repository")
	put(t, ".git/x", "")
	demandProblem(t, "HEAD", "objects")
	gitHere(t, "init", "-q")
	demandProblem(t, "HEAD", "names no commit yet")
	remove(t, ".git")
	put(t, ".git", "nonsense\n")
	demandProblem(t, "HEAD", "names no folder")
}

// The root may be a folder below the top, and the working directory another.
func TestChangedSinceBelowTop(t *testing.T) {
	write(t, texts{
		"deep/fleet/a/swap.toml":     fleetSheet("a", "printer.cfg"),
		"deep/fleet/a/printer.cfg":   "[include parts/*.cfg]\n" + healthySections,
		"deep/fleet/a/parts/fan.cfg": "[fan]\npin: PA1\n",
		"deep/fleet/b/swap.toml":     fleetSheet("b", "printer.cfg"),
		"deep/fleet/b/printer.cfg":   healthySections,
		"deep/swap.toml":             fleetSheet("above", "printer.cfg"), "other/x": "",
	})
	gitHere(t, "init", "-q")
	commitAll(t, "start")
	t.Chdir("other")
	check := func(rev string) *Result {
		return check(Options{Today: today, Since: rev, Root: "../deep/fleet"}, "../deep/fleet")
	}
	if r := check("HEAD"); len(r.Printers) != 0 {
		t.Errorf("nothing changed: %+v", r.Printers)
	}
	put(t, "../deep/fleet/a/parts/new.cfg", "[fan]\npin: PA2\n")
	if r := check("HEAD"); len(r.Printers) != 1 || r.Printers[0].Name != "a" {
		t.Errorf("a file came: %+v", r.Printers)
	}
	commitAll(t, "more")
	gitHere(t, "rm", "-qr", "../deep/fleet/b", "../deep/swap.toml")
	gitHere(t, "commit", "-qm", "less")
	r := check("HEAD~1")
	if len(r.Printers) != 0 || !slices.Equal(r.Gone, []string{"../deep/fleet/b/swap.toml"}) {
		t.Errorf("a sheet went: %+v", r)
	}
}

// A revision is one commit, whatever its tree holds.
func TestChangedSinceOddNames(t *testing.T) {
	onePrinter(t, "sha1")
	for _, name := range []string{"tab\there/swap.toml", "quote\"here/swap.toml", "é/swap.toml",
		" lead/swap.toml"} {
		put(t, name, fleetSheet("b", "printer.cfg"))
		put(t, filepath.Join(filepath.Dir(name), "printer.cfg"), healthySections)
	}
	commitAll(t, "odd")
	if got := checked(t, "HEAD"); got != nil {
		t.Errorf("checks %q", got)
	}
	if got := checked(t, "HEAD~1"); len(got) != 4 {
		t.Errorf("checks %q", got)
	}
}

// slow keeps git waiting for a moment only.
func slow(t *testing.T) {
	t.Helper()
	before := gitLimit
	gitLimit = 300 * time.Millisecond
	t.Cleanup(func() { gitLimit = before })
}
