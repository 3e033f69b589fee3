package fleet

import (
	"cmp"
	"fmt"
	"runtime"
	"slices"
	"strings"
	"sync/atomic"
	"time"

	"golang.org/x/sync/errgroup"

	"preflash/parser"
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
}

// counts reports whether the options let a rule speak.
func (o *Options) counts(rule string) bool {
	if len(o.Only) > 0 && !slices.Contains(o.Only, rule) {
		return false
	}
	return !slices.Contains(o.Except, rule)
}

// Check finds the sheets and checks every printer. One that cannot be read
// hides no other. progress, if not nil, is called after each printer, perhaps
// from several goroutines.
func Check(paths []string, o Options, progress func(done, all int)) *Result {
	return checkAll(paths, &o, progress, func(int, *source) {})
}

// checkAll is Check that also hands over what was read of each printer that
// could be read, by its index in the result, perhaps from several goroutines.
func checkAll(paths []string, o *Options, progress func(done, all int), keep func(int, *source)) *Result {
	found := searchIn(paths, o.Root)
	targets, problems := found.targets, found.problems
	var gone []string
	if o.Since != "" {
		changed := onlyChanged(found, o)
		targets, gone = changed.targets, changed.gone
		problems = append(problems, changed.problems...)
	}
	if len(found.targets) == 0 && len(problems) == 0 && len(gone) == 0 {
		problems = append(problems, problemOf(errNoSheet))
	}
	r := &Result{Printers: make([]Printer, len(targets)), Gone: gone, Since: o.Since}
	var done atomic.Int64
	each(targets, o, func(i int, t Target) {
		var src *source
		if r.Printers[i], src = checkOne(t, o); src != nil {
			keep(i, src)
		}
		if progress != nil {
			progress(int(done.Add(1)), len(targets))
		}
	})
	r.tellOnce()
	for _, p := range problems {
		r.Printers = append(r.Printers, Printer{Name: p.File, Sheet: p.File, Problem: &p})
	}
	return r
}

// each calls do for every target, as many at a time as the options say.
func each(targets []Target, o *Options, do func(i int, t Target)) {
	workers := min(cmp.Or(max(o.Jobs, 0), runtime.GOMAXPROCS(0)), len(targets))
	var next atomic.Int64
	work := func() error {
		for i := int(next.Add(1)) - 1; i < len(targets); i = int(next.Add(1)) - 1 {
			do(i, targets[i])
		}
		return nil // do keeps its own errors
	}
	var group errgroup.Group
	for range workers - 1 {
		group.Go(work)
	}
	_ = work() // waking another thread would take longer than one printer
	_ = group.Wait()
}

// checkOne checks one printer. The source is nil where it cannot be read.
func checkOne(t Target, o *Options) (Printer, *source) {
	src, err := load(t)
	p := Printer{Sheet: t.Shown(), Name: src.name(t)}
	if src != nil && src.style != nil {
		p.Style = src.style.Name()
	}
	if err != nil {
		problem := problemOf(err)
		p.Problem = &problem
	}
	p.Inputs = src.inputs()
	if !src.read() {
		return p, nil
	}
	p.Files = src.files()
	if p.Findings, err = findingsOf(src, o); err != nil {
		problem := problemOf(err)
		p.Problem = &problem
	}
	p.every = p.Findings
	p.Findings = src.fold(p.every)
	return p, src
}

// findingsOf lists what the rules say of a printer that could be read.
func findingsOf(src *source, o *Options) (list []Finding, err error) {
	defer explain(src.target.Shown(), &err)
	var all listing
	for _, f := range rules.Check(src.input(o.Today)) {
		if o.counts(f.Rule) && all.room(&f) {
			all.list = append(all.list, findingOf(src.config, f))
		}
	}
	return all.findings(), nil
}

func (src *source) input(today time.Time) *rules.Input {
	return &rules.Input{Printer: src.config.Printer(), Config: src.config, Sheet: src.sheet, Style: src.style, Today: today}
}

// findingOf tells a finding apart from the buffers that it was found in.
func findingOf(config parser.Config, f rules.Finding) Finding {
	out := Finding{
		Rule: f.Rule, Level: f.Level, Region: regionOf(f.At), Message: parser.Clip(strings.Clone(f.Message), maxMessage), More: f.More,
		Values: f.Values, Waived: strings.Clone(f.Waived), same: f.Same, unknown: f.Unknown, cause: f.Cause,
	}
	if len(f.Changes) == 0 {
		return out
	}
	edits, err := config.Edits(f.Changes)
	if err != nil {
		out.Message += " (no diff can make this change: " + err.Error() + ")"
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
