package fleet

import "preflash/patch"

// Diff is what `diff` found: a plan that was proved, and the printers that
// could not be read.
type Diff struct {
	Plan     *patch.Plan
	Problems []Problem
	Inputs   []string // all that was opened or looked for, as shown
}

// Prove finds the sheets, reads every printer and proves the changes of all of
// them together, since printers may share files. The error is a proof that
// failed, or changes that contradict each other.
func Prove(paths []string, o Options) (d *Diff, err error) {
	targets, problems := Find(paths, o.Root)
	d = &Diff{Problems: problems}
	defer explain("", &err)
	sources := make([]*source, len(targets))
	failed := make([]error, len(targets))
	each(targets, &o, func(i int, t Target) {
		if sources[i], failed[i] = load(t); failed[i] == nil {
			sources[i].config = nil // the proof reads it again, when its turn comes
		}
	})
	var printers []patch.Printer
	for i, src := range sources {
		d.Inputs = append(append(d.Inputs, targets[i].Shown()), src.inputs()...)
		if failed[i] != nil {
			d.Problems = append(d.Problems, problemOf(failed[i]))
			continue
		}
		printers = append(printers, patch.Printer{
			Owner: targets[i].Shown(), Tree: targets[i].Tree, Style: src.style,
			Request: src.request, Sheet: src.sheet, Today: o.Today,
		})
	}
	d.Plan, err = patch.Prove(printers, o.counts)
	return d, err
}
