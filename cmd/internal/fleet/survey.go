package fleet

import (
	"slices"
	"sync"

	"preflash/parser"
	"preflash/patch"
	"preflash/rules"
)

// Survey is what a report about some printers is made of: what Check found and
// Prove proved, and what the rules computed with.
type Survey struct {
	*Result
	// Before and After hold what the rules looked at, by the index of the
	// printer: nil where it could not be read. After is with the diff applied,
	// and the same as Before where the diff does not touch the printer.
	Before, After []*rules.Input

	Plan    *patch.Plan // nil where there is no proof
	PlanErr error       // why
}

// NewSurvey checks every printer that the paths name and proves one diff for
// all of them.
func NewSurvey(paths []string, o Options) *Survey {
	sources := make(map[int]*source)
	var mu sync.Mutex
	s := &Survey{Result: checkAll(paths, &o, nil, func(i int, src *source) {
		mu.Lock()
		defer mu.Unlock()
		sources[i] = src
	})}
	s.Before = make([]*rules.Input, len(s.Printers))
	s.After = make([]*rules.Input, len(s.Printers))
	if len(sources) > 0 {
		d, err := Prove(paths, o)
		s.Plan, s.PlanErr = d.Plan, err
	}
	contents := make(map[string][]byte)
	if s.Plan != nil {
		for _, f := range s.Plan.Files {
			contents[f.Name] = f.New
		}
	}
	for i, src := range sources {
		s.Before[i] = src.input(o.Today)
		s.After[i] = s.Before[i]
		if !src.reads(contents) {
			continue
		}
		// The proof has read this text before.
		config, err := src.style.Read(src.target.Tree.With(contents), src.request)
		if err == nil {
			s.After[i] = &rules.Input{Printer: config.Printer(), Config: config, Sheet: src.sheet, Style: src.style, Today: o.Today}
		}
	}
	return s
}

// reads reports whether the printer reads one of these files.
func (src *source) reads(contents map[string][]byte) bool {
	return slices.ContainsFunc(src.config.Printer().Files, func(f *parser.File) bool {
		_, ok := contents[f.Name]
		return ok
	})
}
