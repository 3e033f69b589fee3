package fleet

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"preflash/parser"
	"preflash/patch"
	"preflash/rules"
)

// Options say what to check and how.
type Options struct {
	Root   string
	Today  time.Time
	Jobs   int      // printers at a time; 0 means one for each core
	Only   []string // rules that count; none means all
	Except []string // rules that do not count
	Since  string   // a git revision: leave out printers of which nothing changed since; "" leaves none out
	Known  *Known   // findings that do not count; nil where there is no such file
	Keep   bool     // keep all text, however much it is, for Inputs
	Bare   bool     // look at configurations without a sheet too
}

// counts reports whether the options let a rule speak.
func (o *Options) counts(rule string) bool {
	if len(o.Only) > 0 && !slices.Contains(o.Only, rule) {
		return false
	}
	return !slices.Contains(o.Except, rule)
}

// Check says what was found on every printer.
func (f *Fleet) Check() *Result {
	r := &Result{Printers: make([]Printer, len(f.Sources)), Gone: f.gone, Unchanged: f.unchanged,
		Since: f.Options.Since, Compared: f.Options.Known != nil}
	for i, s := range f.Sources {
		p := &r.Printers[i]
		*p = Printer{Sheet: s.Owner, Name: s.Name(), Files: s.shown, Inputs: s.inputs(), Problem: s.problem(),
			Findings: slices.Clone(s.findings), every: s.every}
		r.Fixed = append(r.Fixed, s.known.fixed...)
		if s.Style != nil {
			p.Style = s.Style.Name()
		}
		if s.NoSheet {
			p.Begin, p.Passed = s.target.without.Begin(), s.target.without.Passed
		}
	}
	r.tellOnce()
	for _, p := range f.problems {
		r.Printers = append(r.Printers, Printer{Name: p.File, Sheet: p.File, Problem: &p})
	}
	return r
}

// Proved is Check with the fixes of those findings only that a proved diff
// changes away: what a program may apply by itself.
func (f *Fleet) Proved() *Result {
	r, plan := f.Check(), f.Prove().Plan
	for i := range r.Printers {
		p := &r.Printers[i]
		for j := range p.Findings {
			one := &p.Findings[j]
			if !slices.ContainsFunc(plan.Reasons, func(reason patch.Reason) bool {
				return reason.Owner == p.Sheet && reason.Finding.Rule == one.Rule &&
					reason.Finding.Message == one.Message
			}) {
				one.Fix = nil
			}
		}
	}
	return r
}

// findingOf tells a finding apart from the buffers that it was found in.
func findingOf(config parser.Config, f rules.Finding) Finding {
	rank, danger := rules.RankOf(&f)
	out := Finding{
		Rule: f.Rule, Level: f.Level, Rank: rank, Danger: danger, Region: regionOf(f.At), More: f.More,
		Message: parser.Clip(strings.Clone(f.Message), maxMessage),
		Detail:  parser.Clip(strings.Clone(f.Detail), maxMessage),
		Values:  f.Values.Clone(), Waived: strings.Clone(f.Waived), same: f.Same,
		about: parser.Clip(f.About, maxLabel), figure: f.Figure, unknown: f.Unknown, cause: f.Cause,
	}
	if len(f.Changes) == 0 {
		return out
	}
	edits, err := config.Edits(f.Changes)
	if err != nil {
		out.Aside = "no diff can make this change: " + parser.Clip(err.Error(), maxMessage)
		return out
	}
	var parts []string
	for _, e := range edits {
		out.Fix = append(out.Fix, Replacement{Region: regionOf(e.At), New: e.New})
		parts = append(parts, editText(e))
	}
	out.Change = parser.Clip(strings.Join(parts, "; "), maxMessage)
	return out
}

// editText says in a few words what an edit does.
func editText(e parser.Edit) string {
	line, _ := e.At.Position()
	old, new := strings.TrimSpace(e.At.Text()), strings.TrimSpace(e.New)
	switch {
	case old == "":
		return fmt.Sprintf("%s: add “%s”, line %d", e.For, strings.ReplaceAll(new, "\n", "⏎"), line)
	case new == "":
		return fmt.Sprintf("%s: remove “%s”, line %d", e.For, old, line)
	}
	return fmt.Sprintf("%s: %s → %s, line %d", e.For, old, new, line)
}
