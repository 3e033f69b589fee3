// Package fleet is the pipeline: find the sheets, read what they name, check,
// and prove a diff.
package fleet

import (
	"errors"
	"fmt"
	"os"
	"path"
	"path/filepath"
	"sort"
	"strings"

	"preflash/parser"
)

// Target is one sheet to be read, inside the tree that bounds its reading.
type Target struct {
	Tree  *parser.Tree
	Sheet string // the sheet's path inside the tree
}

// Shown is the sheet's path as a person would write it.
func (t Target) Shown() string { return t.Tree.Shown(t.Sheet) }

// search is what the paths of a call name.
type search struct {
	targets  []Target
	folders  []Target // that were searched; Sheet is the folder
	problems []Problem

	trees map[string]*parser.Tree
	seen  map[string]bool // sheets, as shown
}

// searchIn returns the sheets that the paths name: a sheet itself, or every
// sheet below a folder, in a stable order and each once. root bounds all reading;
// "" means, for each path, the nearest parent that holds .git, else the working
// directory. Folders that cannot be read are problems: they hide nothing else.
func searchIn(paths []string, root string) *search {
	s := &search{trees: make(map[string]*parser.Tree), seen: make(map[string]bool)}
	for _, p := range paths {
		if err := s.find(p, root); err != nil {
			s.failed(err)
		}
	}
	sort.SliceStable(s.targets, func(i, j int) bool { return s.targets[i].Shown() < s.targets[j].Shown() })
	return s
}

func (s *search) add(t Target) {
	if shown := t.Shown(); !s.seen[shown] {
		s.seen[shown] = true
		s.targets = append(s.targets, t)
	}
}

func (s *search) failed(err error) { s.problems = append(s.problems, problemOf(err)) }

// find adds the sheets of one path.
func (s *search) find(name, root string) error {
	abs, err := filepath.Abs(name)
	if err != nil {
		return err
	}
	info, err := os.Stat(abs)
	if err != nil {
		return &parser.Error{File: filepath.ToSlash(name), Message: "is no sheet and no folder: it does not exist or may not be read"}
	}
	if root, err = boundOf(abs, root); err != nil {
		return err
	}
	inside, err := insideOf(root, name)
	if err != nil {
		return err
	}
	tree := s.trees[root]
	if tree == nil {
		if tree, err = parser.OpenTree(root); err != nil {
			return err
		}
		s.trees[root] = tree
	}
	if !info.IsDir() {
		s.add(Target{tree, inside})
		return nil
	}
	s.folders = append(s.folders, Target{tree, inside})
	tree.Walk(inside, func(file string) bool {
		if isSheet(path.Base(file)) {
			s.add(Target{tree, file})
		}
		return true
	}, s.failed)
	return nil
}

// isSheet reports whether a file in a folder is a sheet by its name.
func isSheet(base string) bool {
	return base == "swap.toml" || strings.HasSuffix(base, ".swap.toml")
}

// boundOf returns the absolute path of the root that bounds the reading of a
// path: the one that is given, else rootOf.
func boundOf(abs, root string) (string, error) {
	if root == "" {
		root = rootOf(abs)
	}
	return filepath.Abs(root)
}

// insideOf gives a path of a person as one inside the root.
func insideOf(root, name string) (string, error) {
	abs, err := filepath.Abs(name)
	if err != nil {
		return "", err
	}
	inside, err := filepath.Rel(root, abs)
	if err != nil || !filepath.IsLocal(inside) {
		return "", &parser.Error{File: filepath.ToSlash(name), Message: "lies outside the root that bounds all reading; name a wider folder with --root"}
	}
	return filepath.ToSlash(inside), nil
}

// rootOf returns the nearest parent of a path that holds .git, else the
// working directory.
func rootOf(abs string) string {
	for dir := abs; ; {
		if _, err := os.Lstat(filepath.Join(dir, ".git")); err == nil {
			return dir
		}
		parent := filepath.Dir(dir)
		if parent == dir {
			break
		}
		dir = parent
	}
	if wd, err := os.Getwd(); err == nil {
		return wd
	}
	return filepath.Dir(abs)
}

// problemOf turns any error of the readers into a Problem. Several joined
// errors become one, at the place of the first.
func problemOf(err error) Problem {
	var list []*parser.Error
	var walk func(error)
	walk = func(err error) {
		var one *parser.Error
		if many, ok := err.(interface{ Unwrap() []error }); ok {
			for _, e := range many.Unwrap() {
				walk(e)
			}
		} else if errors.As(err, &one) {
			list = append(list, one)
		} else {
			list = append(list, &parser.Error{Message: err.Error()})
		}
	}
	walk(err)
	p := Problem{File: list[0].File, Line: list[0].Line, Column: list[0].Column, Message: list[0].Message}
	if len(list) == 1 {
		return clipProblem(p)
	}
	for i, e := range list {
		if i == maxParts {
			rest := fmt.Sprintf("and %d more of this kind", len(list)-i)
			p.Parts = append(p.Parts, Problem{File: e.File, Message: rest})
			p.Message += "; " + rest
			break
		}
		p.Parts = append(p.Parts, clipProblem(Problem{File: e.File, Line: e.Line, Column: e.Column, Message: e.Message}))
		if i > 0 {
			p.Message += "; " + e.Error()
		}
	}
	return clipProblem(p)
}

var errNoSheet = &parser.Error{Message: "no sheet found: a sheet is a file called swap.toml, or one whose name ends in .swap.toml"}
