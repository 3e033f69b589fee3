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
	"preflash/patch"
)

// Target is one sheet to be read, inside the tree that bounds its reading, or a
// configuration without one.
type Target struct {
	Tree  *parser.Tree
	Sheet string // the sheet's path inside the tree; the main file where there is none

	without *Configuration // where there is no sheet
}

// Shown is the sheet's path as a person would write it.
func (t Target) Shown() string { return t.Tree.Shown(t.Sheet) }

// search is what the paths of a call name.
type search struct {
	targets  []Target
	folders  []Target // that were searched; Sheet is the folder
	problems []Problem

	bare  bool // look for configurations where there is no sheet
	trees map[string]*parser.Tree
	seen  map[string]bool // sheets, as shown
}

// searchIn returns the sheets that the paths name: a sheet itself, or every
// sheet below a folder, in a stable order and each once. root bounds all reading;
// "" means, for each path, the nearest parent that holds .git, else the working
// directory. Folders that cannot be read are problems: they hide nothing else.
// bare says that a folder without sheets may hold a configuration instead.
func searchIn(paths []string, root string, bare bool) *search {
	s := &search{bare: bare, trees: make(map[string]*parser.Tree), seen: make(map[string]bool)}
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
		return &parser.Error{File: filepath.ToSlash(name),
			Message: "is no sheet and no folder: it does not exist or may not be read"}
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
		if !s.mayBeSheet(tree, inside) {
			return s.addWithout(tree, root, name)
		}
		s.add(Target{Tree: tree, Sheet: inside})
		return nil
	}
	s.folders = append(s.folders, Target{Tree: tree, Sheet: inside})
	before := len(s.targets) + len(s.problems)
	found := false
	tree.Walk(inside, func(file string) bool {
		if isSheet(path.Base(file)) {
			found = true
			s.add(Target{Tree: tree, Sheet: file})
		}
		return true
	}, s.failed)
	if s.bare && !found && len(s.targets)+len(s.problems) == before {
		return s.addEach(tree, root, inside)
	}
	return nil
}

// mayBeSheet reports whether a file that was named is to be read as a sheet, by
// its name or because it is no configuration.
func (s *search) mayBeSheet(tree *parser.Tree, inside string) bool {
	if strings.EqualFold(path.Ext(inside), ".toml") {
		return true
	}
	f, err := tree.Open(inside)
	return err != nil || styleLike(f) == nil && !parser.NamedAsConfiguration(inside)
}

// addWithout adds the configuration that a file is, which has no sheet.
func (s *search) addWithout(tree *parser.Tree, root, name string) error {
	c, err := readConfiguration(&Configuration{Tree: tree, root: root}, []string{name}, 0)
	if err != nil {
		return err
	}
	s.add(Target{Tree: tree, Sheet: c.Files[0], without: c})
	return nil
}

// addEach adds the configurations that a folder holds, inside the tree, none of
// which has a sheet.
func (s *search) addEach(tree *parser.Tree, root, inside string) error {
	list, err := (&Configuration{Tree: tree, root: root}).folder(inside).each(root)
	var e *parser.Error
	if errors.As(err, &e) {
		return &parser.Error{Message: errNoSheet.Message + "; and " + e.File + " " + e.Message}
	}
	for _, c := range list {
		s.add(Target{Tree: tree, Sheet: c.Files[0], without: c})
	}
	return err
}

// isSheet reports whether a file in a folder is a sheet by its name.
func isSheet(base string) bool {
	return base == "swap.toml" || strings.HasSuffix(base, ".swap.toml")
}

// walkSheets calls do for every sheet of a tree, in passing at most so many files,
// until it says no. It reports whether that was enough.
func walkSheets(tree *parser.Tree, most int, do func(sheet string) bool, failed func(error)) bool {
	walked := 0
	tree.Walk(".", func(file string) bool {
		walked++
		return walked <= most && (!isSheet(path.Base(file)) || do(file))
	}, failed)
	return walked <= most
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
		return "", &parser.Error{File: filepath.ToSlash(name),
			Message: "lies outside the root that bounds all reading; name a wider folder with --root"}
	}
	return filepath.ToSlash(inside), nil
}

// rootOf returns the nearest parent of a path that holds .git, else the
// working directory.
func rootOf(abs string) string {
	if top := parser.RepositoryOf(abs); top != "" {
		return top
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
		p.Parts = append(p.Parts,
			clipProblem(Problem{File: e.File, Line: e.Line, Column: e.Column, Message: e.Message}))
		if i > 0 {
			p.Message += "; " + e.Error()
		}
	}
	return clipProblem(p)
}

// errNoSheet is what a call ends in whose folders hold neither.
var errNoSheet = &parser.Error{Message: "no sheet found: a sheet is a file called swap.toml, or one whose " +
	"name ends in .swap.toml"}

// Begin is the command that begins a sheet for a configuration.
func (c *Configuration) Begin() string {
	dir := path.Dir(c.Tree.Shown(c.Files[0]))
	names := " " + typedAll(c.Tree, c.Files)
	switch {
	case c.Alone && dir == ".":
		names = ""
	case c.Alone:
		names = " " + patch.Typed(dir)
	}
	return "preflash sheet --ask --output " + patch.Typed(path.Join(dir, c.SheetName())) + names
}

// typedAll names files as a person types them.
func typedAll(tree *parser.Tree, files []string) string {
	list := shownAll(tree, files)
	for i, name := range list {
		list[i] = patch.Typed(name)
	}
	return strings.Join(list, " ")
}

func shownAll(tree *parser.Tree, files []string) []string {
	list := make([]string, len(files))
	for i, name := range files {
		list[i] = tree.Shown(name)
	}
	return list
}

// needsSheet is the error of a command that cannot do without a sheet.
func (c *Configuration) needsSheet() error {
	return &parser.Error{File: c.Tree.Shown(c.Files[0]),
		Message: "has no sheet, which says what hotend goes in: without it there is nothing to change or " +
			"to list, and only check and values can be run. Begin one: " + c.Begin()}
}
