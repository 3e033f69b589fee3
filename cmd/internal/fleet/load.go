package fleet

import (
	"cmp"
	"errors"
	"runtime"
	"runtime/debug"
	"strings"
	"sync"
	"sync/atomic"

	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/parser/styles"
	"preflash/patch"
	"preflash/rules"
)

// Fleet is the printers that some paths lead to. Check and Prove look at them.
type Fleet struct {
	Sources []*Source
	Options Options

	problems  []Problem // folders and paths that led to nothing
	gone      []string  // sheets that the revision of the options held, as shown
	unchanged []string  // the names of printers that the options left out, since nothing changed
	trees     map[string]*parser.Tree
}

// Source is one sheet and the printer that it names, as far as they could be
// read.
type Source struct {
	target Target
	patch.Source
	Err error // why it could not be read, or not whole

	reading *parser.Reading // all that was asked for
	named   []patch.FileRef // see names

	every    []Finding // those that count, apart from the text
	findings []Finding // the same, with what hangs on one cause as one
	shown    []string  // the files that were read, as shown
	size     int       // of them, bytes
	known    knownOf
}

// keptBytes is how much text of configurations is kept for the proof, unless
// all is. What goes over it is read again where the proof needs it.
const keptBytes = 8 << 20

// manyPrinters are so many that what is kept of them adds up: then no text is kept,
// unless Options.Keep asks for it, and garbage is collected more often than the
// program has set.
const (
	manyPrinters = 50
	gcPercent    = 150
)

// Load finds the sheets that the paths name, reads every printer and checks it.
// One that cannot be read hides no other. progress, if not nil, is called after
// each printer, perhaps from several goroutines. Close the fleet when it is
// done with.
func Load(paths []string, o Options, progress func(done, all int)) *Fleet {
	f := open(paths, o)
	many := len(f.Sources) > manyPrinters
	if many {
		defer debug.SetGCPercent(debug.SetGCPercent(gcPercent))
	}
	var done, kept atomic.Int64
	f.each(func(i int) {
		s := f.Sources[i]
		if s.Sheet == nil {
			s.load()
		}
		if s.read() {
			if err := s.check(&o); err != nil {
				s.Err, s.Config = err, nil
			} else if !o.Keep && (many || kept.Add(int64(s.size)) > keptBytes) {
				s.forget()
			}
		}
		if progress != nil {
			progress(int(done.Add(1)), len(f.Sources))
		}
	})
	return f
}

// check checks a printer that could be read.
func (s *Source) check(o *Options) (err error) {
	defer explain(s.Owner, &err)
	s.Keep(s.Config)
	var all listing
	for _, f := range s.Findings {
		if o.counts(f.Rule) && all.room(&f) {
			all.list = append(all.list, findingOf(s.Config, f))
		}
	}
	s.every = all.findings()
	if o.Known != nil && s.Err == nil {
		o.Known.mark(s, s.every, o)
	}
	s.findings = s.fold(s.every)
	for _, file := range s.Config.Printer().Files {
		s.shown = append(s.shown, file.Name)
		s.size += len(file.Data)
	}
	return nil
}

// open finds the sheets, and leaves out what did not change where the options
// say so.
func open(paths []string, o Options) *Fleet {
	found := searchIn(paths, o.Root, o.Since == "")
	f := &Fleet{Options: o, trees: found.trees, problems: found.problems}
	for _, t := range found.targets {
		if t.without != nil && !o.Bare {
			f.problems = append(f.problems, problemOf(t.without.needsSheet()))
			continue
		}
		f.Sources = append(f.Sources, newSource(t, o))
	}
	if o.Since != "" {
		f.onlyChanged(found.folders)
	}
	if len(found.targets) == 0 && len(f.problems) == 0 && len(f.gone) == 0 {
		f.problems = append(f.problems, problemOf(errNoSheet))
	}
	return f
}

func newSource(t Target, o Options) *Source {
	return &Source{target: t, Source: patch.Source{Owner: t.Shown(), Tree: t.Tree, Today: o.Today}}
}

// Close releases the roots.
func (f *Fleet) Close() {
	for _, t := range f.trees {
		_ = t.Close() // it was only read
	}
}

// each calls do for every source, as many at a time as the options say.
func (f *Fleet) each(do func(i int)) {
	workers := min(cmp.Or(max(f.Options.Jobs, 0), runtime.GOMAXPROCS(0)), len(f.Sources))
	var next atomic.Int64
	work := func() {
		for i := int(next.Add(1)) - 1; i < len(f.Sources); i = int(next.Add(1)) - 1 {
			do(i)
		}
	}
	var group sync.WaitGroup
	for range workers - 1 {
		group.Go(work)
	}
	work() // waking another thread would take longer than one printer
	group.Wait()
}

// load reads the sheet and the configuration that it names. With an error the
// source holds what could be read all the same.
func (s *Source) load() {
	defer explain(s.Owner, &s.Err)
	var tree *parser.Tree
	tree, s.reading = s.Tree.ForPrinter()
	if s.target.without != nil {
		s.loadBare(tree)
		return
	}
	if s.Sheet, s.Err = sheet.Read(tree, s.target.Sheet); s.Err != nil {
		s.Sheet = nil
		return
	}
	s.Request = parser.Request{Tool: s.Sheet.Printer.Tool.Value}
	for _, f := range s.Sheet.Printer.Config {
		s.Request.Files = append(s.Request.Files, f.Value)
	}
	for _, f := range s.Sheet.Printer.Absent {
		s.Request.Absent = append(s.Request.Absent, f.Value)
	}
	s.Request.Outside = s.Sheet.Printer.Outside
	if s.Style, s.Err = styleOf(tree, s.Sheet); s.Err != nil {
		return
	}
	if s.Config, s.Err = s.Style.Read(tree, s.Request); s.Err != nil {
		s.Config = nil // whatever came with the error
		return
	}
	s.Err = s.unreadable()
}

// loadBare reads a configuration that has no sheet.
func (s *Source) loadBare(tree *parser.Tree) {
	c := s.target.without
	s.NoSheet, s.Style = true, c.Style
	s.Request = parser.Request{Files: c.Files, Absent: c.Absent}
	if s.Config, s.Err = s.Style.Read(tree, s.Request); s.Err != nil {
		s.Config = nil
		return
	}
	s.Sheet = sheet.Without(c.Name(c.Files[0]), s.Style.Name(), 0, s.Config.Printer().Files)
	s.Err = s.unreadable()
}

// read reports whether the configuration could be read, if not whole.
func (s *Source) read() bool { return s.Config != nil }

// forget lets go of the text. What tells whether the printer asks for a change
// stays; the proof reads the rest again.
func (s *Source) forget() {
	s.Config = nil
	var wanting []rules.Finding
	for _, f := range s.Findings {
		if len(f.Changes) > 0 {
			wanting = append(wanting, rules.Finding{Rule: f.Rule, Changes: f.Changes, Waived: f.Waived})
		}
	}
	s.Findings = wanting
}

// inputs lists what was opened or looked for, as shown.
func (s *Source) inputs() []string {
	if s.Sheet == nil {
		return nil
	}
	names := s.reading.Names()
	for i, name := range names {
		names[i] = s.Tree.Shown(name)
	}
	return names
}

// Name is what the printer is called: by its sheet, else as its sheet is.
func (s *Source) Name() string {
	if s.Sheet == nil {
		return s.Owner
	}
	return s.Sheet.Printer.Name.Value
}

// problem is why it could not be read, or not whole; nil where it could.
func (s *Source) problem() *Problem {
	if s.Err == nil {
		return nil
	}
	p := problemOf(s.Err)
	return &p
}

// Input is what the rules looked at; nil where it could not be read.
func (s *Source) Input() *rules.Input {
	if !s.read() {
		return nil
	}
	return s.Source.Input(s.Config)
}

// allStyles lists the styles; a test counts what they read.
var allStyles = styles.All

// styleOf returns the style that the sheet names, else the one that a file
// looks like.
func styleOf(t *parser.Tree, s *sheet.Sheet) (parser.Style, error) {
	var names []string
	for _, style := range allStyles() {
		if s.Printer.Style.Value == style.Name() {
			return style, nil
		}
		names = append(names, style.Name())
	}
	if s.Printer.Style.Given {
		meant := "the styles are " + strings.Join(names, " and ")
		if near := parser.Nearest(s.Printer.Style.Value, names); near != "" {
			meant = "did you mean " + near + "?"
		}
		return nil, parser.Errorf(s.Printer.Style.At, "printer.style is %q; %s", s.Printer.Style.Value, meant)
	}
	for _, name := range s.Printer.Config {
		f, err := t.Open(name.Value)
		if err != nil {
			return nil, at(name.At, err)
		}
		if style := styleLike(f); style != nil {
			return style, nil
		}
	}
	return nil, parser.Errorf(s.Printer.Config[0].At,
		"the files look like no known style; say which with printer.style, one of%s", names)
}

// at moves an error about a file to the place in the sheet that names it: the
// reader corrects the name there.
func at(place parser.Span, err error) error {
	var e *parser.Error
	if errors.As(err, &e) && e.Line == 0 {
		return parser.Errorf(place, "%s %s", e.File, e.Message)
	}
	return err
}

// unreadable returns the first part of the configuration that is beyond every
// limit of reading, as an error; nil where there is none. What else was read
// stands, but nobody may take the printer for checked.
func (s *Source) unreadable() error {
	for _, r := range s.Config.Printer().Remarks {
		if r.Kind == parser.RemarkUnreadable {
			return parser.Errorf(r.At, "%s", r.Text)
		}
	}
	return nil
}
