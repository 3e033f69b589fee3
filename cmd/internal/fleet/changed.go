package fleet

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"strings"

	"preflash/parser"
	"preflash/parser/sheet"
)

// changes is what git says has changed in a tree since a revision: paths
// inside the tree. A file that went or came is one of them.
type changes map[string]bool

// changedSince asks git what differs between a revision and the files as they
// are, untracked ones included. git runs nothing that the repository could
// name: no hook, monitor, filter or external diff, and it fetches nothing. A
// file whose time stamp alone moved counts as changed.
func changedSince(tree *parser.Tree, rev string) (changes, error) {
	dir, err := filepath.EvalSymlinks(tree.Dir())
	if err != nil {
		return nil, err
	}
	top, err := git(dir, "rev-parse", "--show-toplevel")
	if err != nil {
		return nil, err
	}
	commit, err := git(dir, "rev-parse", "--verify", "--quiet", "--end-of-options", rev+"^{commit}")
	if err != nil {
		return nil, fmt.Errorf("--changed-since %q names no revision that git knows here; in CI, fetch enough of the history", rev)
	}
	// A file as young as the index is compared by its contents, through the
	// filter that its attributes name.
	filters, err := withoutFilters(dir)
	if err != nil {
		return nil, err
	}
	tracked, err := git(dir, append(filters, "diff-index", "--name-only", "-z", "--no-renames", "--ignore-submodules=all", firstLine(commit))...)
	if err != nil {
		return nil, err
	}
	fresh, err := git(dir, "ls-files", "--others", "--full-name", "-z", ":/")
	if err != nil {
		return nil, err
	}
	found := make(changes)
	for name := range strings.SplitSeq(tracked+fresh, "\x00") {
		inside, err := filepath.Rel(dir, filepath.Join(firstLine(top), filepath.FromSlash(name)))
		if name != "" && err == nil && filepath.IsLocal(inside) {
			found[filepath.ToSlash(inside)] = true
		}
	}
	return found, nil
}

// touch reports whether a printer reads one of the files, or would if it came
// back.
func (c changes) touch(src *source) bool {
	names := append([]string{src.target.Sheet}, src.request.Files...)
	names = append(names, src.request.Absent...)
	for _, h := range []*sheet.Hotend{&src.sheet.New, src.sheet.Old} {
		if h != nil && h.Use.Given {
			names = append(names, h.Use.Value)
		}
	}
	p := src.config.Printer()
	for _, f := range p.Files {
		names = append(names, f.Path)
	}
	root, err := filepath.EvalSymlinks(src.target.Tree.Dir())
	if err != nil {
		return true
	}
	for _, name := range names {
		if c.holds(name) {
			return true
		}
		// git knows what a link leads to by its own name.
		if real, err := filepath.EvalSymlinks(filepath.Join(root, filepath.FromSlash(name))); err == nil {
			if inside, err := filepath.Rel(root, real); err == nil && c.holds(filepath.ToSlash(inside)) {
				return true
			}
		}
	}
	for _, pattern := range p.Globs {
		for name := range c {
			if ok, _ := path.Match(pattern, name); ok {
				return true
			}
		}
	}
	return false
}

// holds reports whether a file changed, or a link to a folder above it.
func (c changes) holds(name string) bool {
	for ; name != "." && name != "/"; name = path.Dir(name) {
		if c[name] {
			return true
		}
	}
	return false
}

// onlyChanged leaves out the targets of which nothing changed since the
// revision of the options. One that cannot be read stays: what it reads cannot
// be told.
func onlyChanged(targets []Target, o *Options) ([]Target, []Problem) {
	byTree := make(map[*parser.Tree]changes)
	var problems []Problem
	for _, t := range targets {
		if _, asked := byTree[t.Tree]; asked {
			continue
		}
		c, err := changedSince(t.Tree, o.Since)
		if err != nil {
			problems = append(problems, problemOf(err))
		}
		byTree[t.Tree] = c
	}
	if len(problems) > 0 {
		return nil, problems
	}
	touched := make([]bool, len(targets))
	each(targets, o, func(i int, t Target) {
		src, err := load(t)
		touched[i] = err != nil || byTree[t.Tree].touch(src)
	})
	var kept []Target
	for i, t := range targets {
		if touched[i] {
			kept = append(kept, t)
		}
	}
	return kept, nil
}

// withoutFilters gives the options that switch off every filter which the
// settings of git define.
func withoutFilters(dir string) ([]string, error) {
	// One of our own, as git takes it for an error that there are none.
	list, err := git(dir, "-c", "filter.none.clean=", "config", "--name-only", "-z", "--get-regexp", `^filter\.`)
	if err != nil {
		return nil, err
	}
	var options []string
	for name := range strings.SplitSeq(list, "\x00") {
		switch {
		case strings.HasSuffix(name, ".required"):
			options = append(options, "-c", name+"=false")
		case name != "":
			options = append(options, "-c", name+"=")
		}
	}
	return options, nil
}

// git runs one git command in a folder and returns what it prints.
func git(dir string, args ...string) (string, error) {
	args = append([]string{"--no-optional-locks", "-c", "core.fsmonitor=false", "-c", "core.hooksPath=/dev/null"}, args...)
	cmd := exec.Command("git", args...)
	cmd.Dir = dir
	cmd.Env = append(os.Environ(), "GIT_NO_LAZY_FETCH=1")
	var stderr bytes.Buffer
	cmd.Stderr = &stderr
	out, err := cmd.Output()
	switch {
	case errors.Is(err, exec.ErrNotFound):
		return "", errors.New("--changed-since needs git, which is not installed")
	case err != nil:
		return "", fmt.Errorf("git in %s: %s", filepath.ToSlash(dir), firstLine(stderr.String()))
	}
	return string(out), nil
}

func firstLine(s string) string {
	line, _, _ := strings.Cut(s, "\n")
	return strings.TrimRight(line, "\r")
}
