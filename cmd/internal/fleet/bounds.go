package fleet

import (
	"fmt"

	"preflash/parser"
	"preflash/rules"
)

// What is shown of one printer, so that no configuration floods a report.
const (
	maxAlike   = 20   // findings of one rule and level; the others are counted
	maxParts   = 20   // of what is wrong with a sheet
	maxMessage = 2000 // bytes of a sentence, or of what a change says
	maxLabel   = 200  // bytes of what a finding is about
	maxPath    = 1024 // bytes of a path that is told; longer ones do not exist
)

// sameKind is what findings have in common that are counted together.
type sameKind struct {
	rule            string
	level           rules.Level
	waived, changes bool
}

// listing gathers the findings of one printer.
type listing struct {
	list []Finding
	last map[sameKind]int // index of the last one of its kind
	n    map[sameKind]int
}

// room reports whether a finding is to be listed; else it is counted.
func (s *listing) room(f *rules.Finding) bool {
	kind := sameKind{f.Rule, f.Level, f.Waived != "", len(f.Changes) > 0}
	if s.n == nil {
		s.n, s.last = make(map[sameKind]int), make(map[sameKind]int)
	}
	if s.n[kind]++; s.n[kind] > maxAlike {
		s.list[s.last[kind]].More += 1 + f.More
		return false
	}
	s.last[kind] = len(s.list)
	return true
}

// findings are those that are listed; the last of a kind says how many are not.
func (s *listing) findings() []Finding {
	for i := range s.list {
		if f := &s.list[i]; f.More > 0 {
			f.Aside = fmt.Sprintf("%d more of %s are not listed", f.More, f.Rule)
		}
	}
	return s.list
}

// explain turns a panic into an error about one printer: what a fault of ours
// does to it hides no other. Use: defer explain(sheet, &err).
func explain(sheet string, err *error) {
	if what := recover(); what != nil {
		*err = &parser.Error{File: sheet,
			Message: fmt.Sprintf("a fault in preflash ended the work on this printer (%v); please report "+
				"it. The printer was not checked", what)}
	}
}

// clipProblem bounds what is told of a problem.
func clipProblem(p Problem) Problem {
	p.File = parser.Clip(p.File, maxPath)
	p.Message = parser.Clip(p.Message, maxMessage)
	return p
}
