package fleet

import (
	"bufio"
	"bytes"
	"cmp"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"time"

	"preflash/cmd/internal/jsontext"
	"preflash/parser"
	"preflash/rules"
)

// Known is the findings that a file says are known: those that were there when
// it was written. They do not count until they get worse, or a year is over.
type Known struct {
	File  string
	Write bool // what is found now becomes known
	today time.Time
	list  map[string][]knownEntry // by sheet, relative to the file's folder
}

// knownEntry is a line of the file: one finding by sheet, tool, rule and
// setting, with its figure. Several that agree in those are matched in order.
type knownEntry struct {
	Sheet   string   `json:"sheet"`
	Tool    int      `json:"tool"`
	Rule    string   `json:"rule"`
	Setting string   `json:"setting,omitempty"`
	Level   string   `json:"level"`
	Figure  *float64 `json:"figure,omitempty"` // none where it has no bound
	Unit    string   `json:"unit,omitempty"`
	More    int      `json:"more,omitempty"` // further ones that are only counted
	Since   string   `json:"since"`
}

// The bounds of the file.
const (
	maxKnownLines = 100_000
	maxKnownLine  = 16 << 10
)

// knownHead is the file's first line.
type knownHead struct {
	Known int `json:"preflash_known"`
}

// ReadKnown reads a file of known findings. Where it is to be written it need
// not be there yet.
func ReadKnown(file string, write bool, today time.Time) (*Known, error) {
	k := &Known{File: file, Write: write, today: today, list: make(map[string][]knownEntry)}
	wrong := func(line int, format string, args ...any) error {
		return &parser.Error{File: file, Line: line, Message: fmt.Sprintf(format, args...)}
	}
	info, err := os.Stat(file)
	switch {
	case errors.Is(err, fs.ErrNotExist) && write:
		return k, nil
	case errors.Is(err, fs.ErrNotExist):
		return nil, wrong(0, "does not exist; write it with --write-known %s", file)
	case err == nil && !info.Mode().IsRegular():
		return nil, wrong(0, "is no regular file; name one that --write-known wrote")
	case err != nil:
		return nil, err
	}
	f, err := os.Open(file)
	if err != nil {
		return nil, err
	}
	defer func() { _ = f.Close() }() // it was only read
	lines := bufio.NewScanner(io.LimitReader(f, maxKnownLines*maxKnownLine))
	lines.Buffer(nil, maxKnownLine)
	n := 0
	for lines.Scan() {
		if n++; n > maxKnownLines {
			return nil, wrong(n, "has more than %d lines; write it anew", maxKnownLines)
		}
		if n == 1 {
			var head knownHead
			if strictJSON(lines.Bytes(), &head) != nil || head.Known != 1 {
				return nil, wrong(n,
					"is no list of known findings; its first line must be {\"preflash_known\":1}")
			}
			continue
		}
		var e knownEntry
		if err := strictJSON(lines.Bytes(), &e); err != nil {
			return nil, wrong(n,
				"cannot be read as a known finding: %v; write the file anew with --write-known", err)
		}
		if _, err := time.Parse(time.DateOnly, e.Since); err != nil || e.Sheet == "" ||
			rules.Find(e.Rule) == nil || rules.Find(e.Rule).Unwaived {
			return nil, wrong(n,
				"needs a sheet, a rule that can be waived, and since as 2026-03-31; write the file anew "+
					"with --write-known")
		}
		k.list[e.Sheet] = append(k.list[e.Sheet], e)
	}
	if err := lines.Err(); err != nil {
		return nil, wrong(n+1, "cannot be read: %v", err)
	}
	if n == 0 && !write {
		return nil, wrong(0, "is empty; write it with --write-known %s", file)
	}
	return k, nil
}

func strictJSON(line []byte, into any) error {
	d := json.NewDecoder(bytes.NewReader(line))
	d.DisallowUnknownFields()
	if err := d.Decode(into); err != nil {
		return err
	}
	if d.More() {
		return errors.New("more than one value on the line")
	}
	return nil
}

// Fixed is a known finding that is gone.
type Fixed struct{ Printer, Sheet, Rule, Setting, Since string }

// knownOf is what a source has to do with the file of known findings.
type knownOf struct {
	name  string // the sheet, relative to the file's folder
	keep  []knownEntry
	fixed []Fixed
}

// mark says of each finding whether it is known, and keeps what the file will
// hold of this sheet. Without a reading everything stays as it was.
func (k *Known) mark(s *Source, every []Finding, o *Options) {
	name, err := k.nameOf(s.Owner)
	if err != nil {
		return
	}
	tool := s.Sheet.Printer.Tool.Value
	s.known.name = name
	type key struct{ rule, setting string }
	old := make(map[key][]knownEntry)
	for _, e := range k.list[name] {
		if !o.counts(e.Rule) { // nobody looked
			s.known.keep = append(s.known.keep, e)
			continue
		}
		if e.Tool != tool { // another sheet's tool, or the sheet was given another one: the finding is gone
			s.known.fixed = append(s.known.fixed, fixedOf(s, e))
			continue
		}
		old[key{e.Rule, e.Setting}] = append(old[key{e.Rule, e.Setting}], e)
	}
	for i := range every {
		f := &every[i]
		at := key{f.Rule, f.about}
		var was *knownEntry
		if list := old[at]; len(list) > 0 {
			was, old[at] = &list[0], list[1:]
		}
		f.Baseline = New
		if !f.mayBeKnown() {
			continue
		}
		now := entryOf(name, tool, f, k.today)
		if was != nil && k.covers(was, f) {
			f.Baseline, f.Known = Unchanged, was.Since
			if f.figure.Given() && was.Figure != nil && *was.Figure != *now.Figure {
				f.Baseline = Updated
			}
			now.Since = was.Since
			if !better(f, was) {
				now = *was // no creeping: small steps do not add up
			}
		} else if was != nil {
			f.Baseline = Updated
		}
		if k.Write && f.Known == "" {
			f.Known = now.Since
		}
		if k.Write || f.Known != "" {
			s.known.keep = append(s.known.keep, now)
		}
	}
	for _, e := range k.list[name] {
		at := key{e.Rule, e.Setting}
		for _, gone := range old[at] {
			s.known.fixed = append(s.known.fixed, fixedOf(s, gone))
		}
		delete(old, at)
	}
}

func fixedOf(s *Source, e knownEntry) Fixed {
	return Fixed{Printer: s.Name(), Sheet: s.Owner, Rule: e.Rule, Setting: e.Setting, Since: e.Since}
}

func entryOf(sheet string, tool int, f *Finding, today time.Time) knownEntry {
	e := knownEntry{Sheet: sheet, Tool: tool, Rule: f.Rule, Setting: f.about, Level: f.Level.String(),
		More: f.More, Since: today.Format(time.DateOnly)}
	e.Unit = f.figure.Unit
	if f.figure.Given() {
		rounded := parser.Significant(f.figure.Value, jsontext.Digits)
		e.Figure = &rounded
	}
	return e
}

// mayBeKnown reports whether a finding may enter the file: what cannot be
// waived, what is waived already, and a protection that cannot be told may not.
func (f *Finding) mayBeKnown() bool {
	rule := rules.Find(f.Rule)
	return rule != nil && !rule.Unwaived && f.Waived == "" && (f.unknown == "" || f.Level < rules.Error)
}

// covers reports whether an entry still covers a finding.
func (k *Known) covers(e *knownEntry, f *Finding) bool {
	since, err := time.Parse(time.DateOnly, e.Since)
	switch {
	case err != nil || since.After(k.today) || k.today.After(since.AddDate(1, 0, 0)):
		return false
	case f.Level.String() != e.Level && f.Level > levelNamed(e.Level), f.More > e.More:
		return false
	case e.Unit != f.figure.Unit:
		return false
	case e.Figure == nil: // there was none, or it had no bound: nothing is worse
		return f.figure.Worse == rules.Never || f.figure.Unit != ""
	case !f.figure.Given():
		return false
	}
	return !f.figure.Outgrows(rules.Figure{Value: *e.Figure, Unit: e.Unit, Worse: f.figure.Worse})
}

func better(f *Finding, e *knownEntry) bool {
	if e.Figure == nil || !f.figure.Given() {
		return f.Level < levelNamed(e.Level) || f.More < e.More
	}
	return rules.Figure{Value: *e.Figure, Unit: e.Unit, Worse: f.figure.Worse}.WorseThan(f.figure)
}

func levelNamed(word string) rules.Level {
	for _, l := range []rules.Level{rules.Error, rules.Warning} {
		if l.String() == word {
			return l
		}
	}
	return rules.Note
}

// nameOf gives a sheet's path relative to the folder of the file, with /.
func (k *Known) nameOf(sheet string) (string, error) {
	base, err := filepath.Abs(filepath.Dir(k.File))
	if err != nil {
		return "", err
	}
	path, err := filepath.Abs(filepath.FromSlash(sheet))
	if err != nil {
		return "", err
	}
	rel, err := filepath.Rel(base, path)
	return filepath.ToSlash(rel), err
}

// WriteKnown writes what the file will hold: what is known of the printers that
// were checked, and what it held of those that were not or could not be read,
// as long as their sheets are there.
func (f *Fleet) WriteKnown(w io.Writer) error {
	k := f.Options.Known
	var entries []knownEntry
	checked := make(map[string]bool)
	for _, s := range f.Sources {
		if s.known.name != "" && s.Err == nil {
			checked[s.known.name] = true
			entries = append(entries, s.known.keep...)
		}
	}
	for sheet, list := range k.list {
		if _, err := os.Lstat(filepath.Join(filepath.Dir(k.File), filepath.FromSlash(sheet))); err == nil &&
			!checked[sheet] {
			entries = append(entries, list...)
		}
	}
	slices.SortStableFunc(entries, func(a, b knownEntry) int {
		return cmp.Or(cmp.Compare(a.Sheet, b.Sheet), cmp.Compare(a.Tool, b.Tool), cmp.Compare(a.Rule, b.Rule),
			cmp.Compare(a.Setting, b.Setting))
	})
	out := json.NewEncoder(w)
	out.SetEscapeHTML(false)
	if err := out.Encode(knownHead{1}); err != nil {
		return err
	}
	for _, e := range entries {
		if err := out.Encode(e); err != nil {
			return err
		}
	}
	return nil
}

// SameWaiver reports whether one waiver covers both findings, apart from their
// figures.
func (f *Finding) SameWaiver(g *Finding) bool {
	return f.Rule == g.Rule &&
		(f.about == g.about || f.figure.Worse == rules.Never && g.figure.Worse == rules.Never)
}

// WorseThan reports whether a finding has the worse figure.
func (f *Finding) WorseThan(g *Finding) bool { return f.figure.WorseThan(g.figure) }

// WaiverLines are the lines of a waiver that say up to where it holds.
func (f *Finding) WaiverLines() []string {
	return rules.WaiverLines(&rules.Finding{Figure: f.figure, About: f.about})
}
