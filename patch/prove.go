package patch

import (
	"bytes"
	"fmt"
	"io"
	"maps"
	"slices"
	"time"

	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/rules"
)

// Source is one printer that was read and checked.
type Source struct {
	Owner   string // the sheet, as shown
	Tree    *parser.Tree
	Style   parser.Style
	Request parser.Request
	Sheet   *sheet.Sheet
	NoSheet bool // Sheet only stands in for one
	Today   time.Time

	Config   parser.Config   // nil where its text was not kept: it is read again if need be
	Findings []rules.Finding // what all rules say, waived or not
	Files    []FileRef       // what it reads

	// Silent printers ask for no change. They are here because they read a
	// file that another one's diff may change.
	Silent bool
}

// FileRef tells a file from others, whatever way led to it: by its real name as
// shown, or by what the disk knows it as.
type FileRef struct {
	Real string
	ID   parser.FileID
}

// RefOf is how a file is told from others.
func RefOf(f *parser.File) FileRef { return FileRef{f.Real, f.ID} }

// In reports whether a list holds the file.
func (r FileRef) In(list []FileRef) bool {
	return slices.ContainsFunc(list, func(o FileRef) bool {
		return o.Real == r.Real || o.ID == r.ID && r.ID != parser.FileID{}
	})
}

// Input is what the rules look at.
func (s *Source) Input(config parser.Config) *rules.Input {
	return &rules.Input{Printer: config.Printer(), Config: config, Sheet: s.Sheet, NoSheet: s.NoSheet,
		Today: s.Today}
}

// Read reads and checks the printer as it stands.
func (s *Source) Read() error {
	config, err := s.Style.Read(s.Tree, s.Request)
	if err != nil {
		return err
	}
	s.Keep(config)
	return nil
}

// Keep checks a configuration that was read, and keeps it.
func (s *Source) Keep(config parser.Config) {
	s.Config, s.Findings, s.Files = config, rules.Check(s.Input(config)), nil
	for _, f := range config.Printer().Files {
		s.Files = append(s.Files, RefOf(f))
	}
}

// Asks reports whether the printer wants a change.
func (s *Source) Asks(counts func(rule string) bool) bool {
	return !s.Silent &&
		slices.ContainsFunc(s.Findings, func(f rules.Finding) bool { return wanted(f, counts) })
}

// wanted reports whether a finding is to be changed away.
func wanted(f rules.Finding, counts func(rule string) bool) bool {
	return len(f.Changes) > 0 && f.Waived == "" && counts(f.Rule)
}

// Outcome is what became of printers that are proved together.
type Outcome struct {
	Owners []string
	Plan   *Plan // nil where Err says why there is none
	Err    error
}

// ProveAll proves each group of printers by itself: those that read a file
// which one of them changes. A group of which nobody asks for anything has no
// outcome.
func ProveAll(sources []*Source, counts func(rule string) bool) []Outcome {
	touched := make([][]FileRef, len(sources)) // by a printer's changes, as far as they can be told
	for i, s := range sources {
		touched[i] = s.touches(counts)
	}
	for {
		var outcomes []Outcome
		merged := false
		for _, group := range groups(sources, touched, counts) {
			o := Outcome{}
			var members []*Source
			for _, i := range group {
				members = append(members, sources[i])
				o.Owners = append(o.Owners, sources[i].Owner)
			}
			if o.Plan, o.Err = Prove(members, counts); o.Err == nil {
				// A later round may have come to a file that others read.
				for _, f := range o.Plan.changed {
					if !f.In(touched[group[0]]) {
						touched[group[0]] = append(touched[group[0]], f)
						merged = merged || readBeside(sources, group, f)
					}
				}
			}
			outcomes = append(outcomes, o)
		}
		if !merged {
			return outcomes
		}
	}
}

// readBeside reports whether a printer outside of the group reads a file.
func readBeside(sources []*Source, group []int, file FileRef) bool {
	for i, s := range sources {
		if !slices.Contains(group, i) && file.In(s.Files) {
			return true
		}
	}
	return false
}

// touches lists the files that the printer's own changes would edit at once.
func (s *Source) touches(counts func(rule string) bool) []FileRef {
	if !s.Asks(counts) {
		return nil
	}
	if s.Config == nil {
		return slices.Clone(s.Files)
	}
	var files []FileRef
	for _, f := range s.Findings {
		if wanted(f, counts) {
			edits, _ := s.Config.Edits(f.Changes) // an error is told when the group is proved
			for _, e := range edits {
				files = append(files, RefOf(e.At.File))
			}
		}
	}
	return files
}

// groups sorts printers, by index, into those that must be proved together. One
// that neither asks for anything nor reads what another one changes is left out.
func groups(sources []*Source, touched [][]FileRef, counts func(rule string) bool) [][]int {
	of := make([]int, len(sources))
	var list [][]int
	for i := range sources {
		of[i] = i
		list = append(list, []int{i})
	}
	readers := make(map[any][]int) // of a name, and of what the disk knows
	for i, s := range sources {
		for _, f := range s.Files {
			readers[f.Real] = append(readers[f.Real], i)
			if f.ID != (parser.FileID{}) {
				readers[f.ID] = append(readers[f.ID], i)
			}
		}
	}
	for i := range sources {
		for _, f := range touched[i] {
			for _, j := range slices.Concat(readers[f.Real], readers[f.ID]) {
				if from, to := of[j], of[i]; from != to {
					for _, k := range list[from] {
						of[k] = to
					}
					list[to], list[from] = append(list[to], list[from]...), nil
				}
			}
		}
	}
	return slices.DeleteFunc(list, func(group []int) bool {
		slices.Sort(group) // the order of the sheets
		return !slices.ContainsFunc(group, func(i int) bool { return sources[i].Asks(counts) })
	})
}

// Plan is a set of changes that was proved.
type Plan struct {
	Files   []FileChange
	Reasons []Reason
	Left    []Reason // findings whose changes no edit of the files can make
	Worse   []Reason // errors that a warning turns into, or that what is mended had hidden
	Moves   []Move   // figures that protect less afterwards
	Asides  []Aside  // options that change although nobody asked for it here

	changed []FileRef
	after   map[string]*rules.Input // by owner
}

// Changes reports whether the plan changes a file.
func (p *Plan) Changes(f FileRef) bool { return f.In(p.changed) }

// After is what the rules look at once the diff is applied; nil where the diff
// does not touch the printer.
func (p *Plan) After(owner string) *rules.Input { return p.after[owner] }

// Join makes one plan of several that have no file in common.
func Join(plans []*Plan) *Plan {
	all := &Plan{after: make(map[string]*rules.Input)}
	for _, p := range plans {
		all.Files = append(all.Files, p.Files...)
		all.changed = append(all.changed, p.changed...)
		all.Reasons = append(all.Reasons, p.Reasons...)
		all.Left = append(all.Left, p.Left...)
		all.Worse = append(all.Worse, p.Worse...)
		all.Moves = append(all.Moves, p.Moves...)
		all.Asides = append(all.Asides, p.Asides...)
		maps.Copy(all.after, p.after)
	}
	return all
}

// Reason is a finding that asks for changes.
type Reason struct {
	Owner   string
	Finding rules.Finding
	Err     error // of a finding that is left: why
	// YieldsTo is the sheet of another printer that reads a setting in the same
	// place and wants it otherwise, in the way that protects more: that was done.
	YieldsTo string
}

func (r *Reason) asksFor(key parser.Key) bool {
	return slices.ContainsFunc(r.Finding.Changes, func(c parser.Change) bool { return c.Key == key })
}

// Move is a setting that protects less afterwards, and the rules that asked.
type Move struct {
	Owner   string
	Was, Is parser.Description
	Rules   []string
}

// Aside is an option that changes its value, or comes into use or goes out of
// it, although no edit touches it; or one of a printer that did not ask for it, and
// reads the line that another one has edited.
type Aside struct {
	Owner, Text string
	Shared      bool
}

// Renewed reports whether a later reason is the same rule asking for the same
// settings again.
func (r Reason) Renewed(later Reason) bool {
	return r.Owner == later.Owner && r.Finding.Rule == later.Finding.Rule &&
		slices.EqualFunc(r.Finding.Changes, later.Finding.Changes,
			func(a, b parser.Change) bool { return a.Key == b.Key })
}

// Print prints the plan as one unified diff, after it has applied that very
// diff to the old texts and met the new ones: what was proved is what is shown.
func (p *Plan) Print(w io.Writer, o Options) error {
	old := make(map[string][]byte, len(p.Files))
	for _, f := range p.Files {
		old[f.Name] = f.Old
	}
	var diff bytes.Buffer
	if err := Unified(&diff, p.Files, Options{Lead: o.Lead}); err != nil {
		return err
	}
	applied, err := Patch(old, diff.Bytes())
	if err != nil {
		return fmt.Errorf("the diff cannot be applied and is not shown; this is a fault in preflash, "+
			"please report it: %w", err)
	}
	for _, f := range p.Files {
		if !bytes.Equal(applied[f.Name], f.New) {
			return &parser.Error{File: f.Name,
				Message: "the diff does not give the text that was tried in memory and is not shown; this " +
					"is a fault in preflash, please report it"}
		}
	}
	if o.Terminal {
		return Unified(w, p.Files, o)
	}
	_, err = w.Write(diff.Bytes())
	return err
}
