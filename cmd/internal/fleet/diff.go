package fleet

import (
	"cmp"
	"errors"
	"fmt"
	"path"
	"slices"
	"strings"
	"sync"

	"preflash/parser"
	"preflash/patch"
)

// Diff is what `diff` found: one plan of all that was proved, and what was not.
type Diff struct {
	Plan     *patch.Plan
	Refusals []Refusal
	Problems []Problem // printers that could not be read, and paths that led to nothing
	Inputs   []string  // all that was opened or looked for, as shown
	// Elsewhere counts the sheets and folders under the roots that the paths do
	// not name and that cannot be read.
	Elsewhere int
}

// Refusal is a group of printers whose changes failed their proof.
type Refusal struct {
	Sheets []string // as shown
	Err    error
}

// Refused returns why the changes of a printer are not in the plan, or nil.
func (d *Diff) Refused(sheet string) error {
	for _, r := range d.Refusals {
		if slices.Contains(r.Sheets, sheet) {
			return r.Err
		}
	}
	return nil
}

// Err joins the refusals; nil where there is none.
func (d *Diff) Err() error {
	var errs []error
	for _, r := range d.Refusals {
		errs = append(errs, r.Err)
	}
	return errors.Join(errs...)
}

// Prove proves the changes of all printers, each group of those that share a
// file by itself. Printers whose sheets lie elsewhere under the roots are looked
// for only where something is to be changed.
func (f *Fleet) Prove() *Diff {
	d := &Diff{Problems: f.problems}
	var sources []*patch.Source
	var blind []*Source // what they read cannot be proved
	asks := false
	for _, s := range f.Sources {
		d.Inputs = append(append(d.Inputs, s.Owner), s.inputs()...)
		if s.Err != nil {
			d.Problems = append(d.Problems, problemOf(s.Err))
			blind = append(blind, s)
			continue
		}
		sources = append(sources, &s.Source)
		asks = asks || s.Asks(f.Options.counts)
	}
	var untold error
	if asks {
		e := f.elsewhere(sources, maxWalked)
		sources = append(sources, e.silent...)
		blind = append(blind, e.unreadable...)
		d.Elsewhere, untold = len(e.unreadable)+e.folders, e.err
	}
	var plans []*patch.Plan
	for _, g := range patch.ProveAll(sources, f.Options.counts) {
		if g.Err == nil {
			g.Err = cmp.Or(untold, unproved(g.Plan, blind))
		}
		if g.Err != nil {
			d.Refusals = append(d.Refusals, Refusal{g.Owners, g.Err})
			continue
		}
		plans = append(plans, g.Plan)
	}
	d.Plan = patch.Join(plans)
	return d
}

// unproved is the error of a plan that changes a file of a printer that cannot
// be read.
func unproved(p *patch.Plan, blind []*Source) error {
	for _, s := range blind {
		for _, file := range s.names() {
			if p.Changes(file) {
				return fmt.Errorf("%s: %s names this file too and cannot be read, so nobody can tell what "+
					"the change does to that printer; fix it first. Nothing is shown for this file: %w",
					file.Real, s.Owner, s.Err)
			}
		}
	}
	return nil
}

// elsewhere is what lies under the roots and the paths do not name.
type elsewhere struct {
	silent     []*patch.Source // printers that read a file of those that are named
	unreadable []*Source
	folders    int // that cannot be read
	err        error
}

// elsewhere looks at every sheet under the roots, as long as there are no more
// than so many files.
func (f *Fleet) elsewhere(sources []*patch.Source, most int) (e elsewhere) {
	var ours []patch.FileRef
	for _, s := range sources {
		ours = append(ours, s.Files...)
	}
	named := make(map[string]bool)
	for _, s := range f.Sources {
		named[s.Owner] = true
	}
	others := &Fleet{Options: f.Options}
	for _, tree := range f.trees {
		if !walkSheets(tree, most, func(file string) bool {
			if t := (Target{Tree: tree, Sheet: file}); !named[t.Shown()] {
				named[t.Shown()] = true
				others.Sources = append(others.Sources, newSource(t, f.Options))
			}
			return true
		}, func(error) { e.folders++ }) {
			e.err = &parser.Error{File: tree.Shown("."),
				Message: fmt.Sprintf("holds more than %d files, so whether another sheet reads what this "+
					"diff changes cannot be told; name a smaller folder with --root", most)}
		}
	}
	var mu sync.Mutex
	others.each(func(i int) {
		s := others.Sources[i]
		s.load()
		reads := func(file *parser.File) bool { return patch.RefOf(file).In(ours) }
		shares := s.Err == nil && slices.ContainsFunc(s.Config.Printer().Files, reads)
		if shares {
			s.Silent = true
			s.Err = s.check(&f.Options)
		}
		mu.Lock()
		defer mu.Unlock()
		switch {
		case s.Err != nil:
			e.unreadable = append(e.unreadable, s)
		case shares:
			e.silent = append(e.silent, &s.Source)
		default:
			s.Config = nil
		}
	})
	slices.SortFunc(e.silent, func(a, b *patch.Source) int { return strings.Compare(a.Owner, b.Owner) })
	slices.SortFunc(e.unreadable, func(a, b *Source) int { return strings.Compare(a.Owner, b.Owner) })
	return e
}

// maxQuoted bounds the words of a sheet that are taken for names.
const maxQuoted = 4096

// quoted lists what stands beside quotes in a sheet, whatever is wrong with it.
func quoted(sheet []byte) []string {
	isQuote := func(r rune) bool { return r == '"' || r == '\'' || r == '\n' || r == '\r' }
	words := strings.FieldsFunc(string(sheet), isQuote)
	return words[:min(len(words), maxQuoted)]
}

// names lists the files that the printer reads or that its sheet names, as far
// as that can be told of one that cannot be read. What it found it keeps.
func (s *Source) names() []patch.FileRef {
	if s.named != nil {
		return s.named
	}
	main := s.Request.Files
	if f, err := s.Tree.Open(s.target.Sheet); s.Sheet == nil && err == nil {
		for _, word := range quoted(f.Data) {
			main = append(main, path.Join(path.Dir(s.target.Sheet), word))
		}
	}
	refs, names := slices.Clone(s.Files), s.reading.Names()
	for _, name := range main {
		if _, err := s.Tree.Open(name); err == nil {
			names = append(append(names, name), s.includedBy(name)...)
		}
	}
	for _, name := range names {
		if f, err := s.Tree.Open(name); err == nil {
			refs = append(refs, patch.RefOf(f))
		}
	}
	s.named = refs
	return refs
}

// includedBy lists what a file asks for, as far as it tells by itself: also what
// comes behind an include that does not exist.
func (s *Source) includedBy(name string) []string {
	var names []string
	for _, style := range allStyles() {
		absent := slices.Clone(s.Request.Absent)
		for range parser.MaxIncludeDepth {
			tree, reading := s.Tree.ForPrinter()
			_, err := style.Read(tree, parser.Request{Files: []string{name}, Absent: absent})
			had := len(absent)
			for _, asked := range reading.Names() {
				if _, gone := tree.Lstat(asked); gone != nil && !slices.Contains(absent, asked) {
					absent = append(absent, asked)
				}
			}
			if err == nil || len(absent) == had {
				names = append(names, reading.Names()...)
				break
			}
		}
	}
	return names
}
