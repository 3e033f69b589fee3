package fleet

import (
	"slices"

	"preflash/parser"
	"preflash/rules"
)

// Survey is what a report about some printers is made of: what Check found and
// Prove proved, and what the rules computed with.
type Survey struct {
	*Result
	*Diff
	// Before and After hold what the rules looked at, by the index of the
	// printer: nil where it could not be read. After is with the diff applied,
	// and the same as Before where the diff does not touch the printer.
	Before, After []*rules.Input
}

// Survey checks every printer and proves the changes. The fleet must have been
// loaded with all text kept.
func (f *Fleet) Survey() *Survey {
	s := &Survey{Result: f.Check(), Before: f.Inputs(), Diff: f.Prove()}
	for i, in := range s.Before {
		s.After = append(s.After, in)
		if after := s.Plan.After(s.Printers[i].Sheet); after != nil {
			s.After[i] = after
		}
	}
	return s
}

// Reads reports whether a printer, by its index, reads a file of the plan.
func (s *Survey) Reads(printer int, name string) bool {
	in := s.Before[printer]
	return in != nil &&
		slices.ContainsFunc(in.Printer.Files, func(f *parser.File) bool { return f.Real == name })
}

// Inputs is what the rules looked at, by the index of the printer in the
// result: nil where it could not be read, or where its text was not kept.
func (f *Fleet) Inputs() []*rules.Input {
	inputs := make([]*rules.Input, len(f.Sources)+len(f.problems))
	for i, s := range f.Sources {
		inputs[i] = s.Input()
	}
	return inputs
}
