package defines

import (
	"slices"

	"preflash/parser"
)

// state says what happened last to a macro: the index of the #define or #undef
// that did it, none where nothing did, or, from -2 down, a set of such
// indices of which one holds.
type state = int32

const none state = -1

// maxAlternatives bounds a set. Beyond it a macro may be anything.
const maxAlternatives = 16

// alternatives is a set of states.
type alternatives struct {
	of   []state // sorted, no sets among them
	more bool
}

// set records what the directive at index line does to a macro.
func (s *source) set(id int32, to state) {
	n := &s.table.all[id]
	if len(s.groups) > 0 {
		s.journal = append(s.journal, undo{id, n.state})
	}
	n.state = to
}

// each calls yield for every state that may hold; false stops it. The result
// is false where more states are possible than were kept.
func (s *source) each(of state, yield func(state)) bool {
	if of >= none {
		yield(of)
		return true
	}
	a := &s.sets[-2-of]
	for _, one := range a.of {
		yield(one)
	}
	return !a.more
}

// defined says whether a macro is defined.
func (s *source) defined(id int32) parser.Tri {
	n := &s.table.all[id]
	if n.state >= 0 {
		if s.lines[n.state].kind == kindDefine {
			return parser.Yes
		}
		return parser.No
	}
	if n.state == none {
		if s.outside(n) {
			return parser.Maybe
		}
		return parser.No
	}
	yes, no := false, false
	all := s.each(n.state, func(one state) {
		switch {
		case one == none && s.outside(n):
			yes, no = true, true
		case one >= 0 && s.lines[one].kind == kindDefine:
			yes = true
		default:
			no = true
		}
	})
	switch {
	case !all || yes && no:
		return parser.Maybe
	case yes:
		return parser.Yes
	}
	return parser.No
}

// define returns the define line that is in force, or -1 where none is. Where
// several may be, with one value, it is the last of them; sure is false where
// it cannot be told. A name from outside has none, for sure: who asks must
// look at outside too.
func (s *source) define(id int32) (line int32, sure bool) {
	n := &s.table.all[id]
	if n.state >= 0 {
		if s.lines[n.state].kind == kindDefine {
			return n.state, true
		}
		return -1, true
	}
	if n.state == none {
		return -1, true
	}
	line, sure = -1, true
	first := true
	all := s.each(n.state, func(one state) {
		if one >= 0 && s.lines[one].kind != kindDefine {
			one = -1
		}
		if one < 0 && s.outside(n) {
			sure = false
		}
		if !first && (one < 0 || line < 0 || !s.alike(one, line)) && one != line {
			sure = false
		}
		line, first = max(line, one), false
	})
	return line, sure && all
}

// maxLoose bounds how far loose follows names.
const maxLoose = 8

// loose reports whether one of the values that a macro may have has operators
// outside brackets: 0 && X is true where X is 1 || 1.
func (s *source) loose(id int32, depth int) bool {
	found := depth == 0
	s.each(s.table.all[id].state, func(one state) {
		if found || one < 0 || s.lines[one].kind != kindDefine {
			return
		}
		body, open := s.definition(one).body, 0
		for i, t := range body {
			switch t.text {
			case "(":
				open++
			case ")":
				open--
			}
			found = found || open == 0 && i < len(body)-1 && t.text != "-" && t.text != "+"
		}
		if len(body) == 1 && body[0].kind == tokenWord {
			found = s.loose(s.table.intern(body[0].text), depth-1)
		}
	})
	return found
}

// alike reports whether two define lines mean the same.
func (s *source) alike(a, b int32) bool {
	if s.lines[a].function || s.lines[b].function {
		return false
	}
	x, y := s.definition(a), s.definition(b)
	return slices.EqualFunc(x.body, y.body, func(p, q token) bool {
		return p.text == q.text && p.kind == q.kind
	})
}

// undo is what a macro was before something happened to it.
type undo struct {
	id  int32
	was state
}

// group is a chain of #if … #endif of which it is unknown which branch is
// read. Each branch starts from the state before the chain; at its end the
// states that the branches left behind are possible, all of them.
type group struct {
	mark     int // length of the journal at its start
	branches [][]undo
	full     bool // one of the branches is read: there is an #else
}

func (s *source) openGroup() {
	s.groups = append(s.groups, group{mark: len(s.journal)})
}

// endBranch notes what the branch has done and takes it back.
func (s *source) endBranch() {
	g := &s.groups[len(s.groups)-1]
	list := s.journal[g.mark:]
	if len(list) == 0 {
		g.branches = append(g.branches, nil)
		return
	}
	s.steps += 4 * len(list)
	seen := make(map[int32]bool, len(list))
	var left []undo
	for _, c := range list {
		if !seen[c.id] {
			seen[c.id] = true
			left = append(left, undo{c.id, s.table.all[c.id].state})
		}
	}
	for i := len(list) - 1; i >= 0; i-- {
		s.table.all[list[i].id].state = list[i].was
	}
	s.journal = s.journal[:g.mark]
	g.branches = append(g.branches, left)
}

// closeGroup merges what the branches did.
func (s *source) closeGroup() {
	g := s.groups[len(s.groups)-1]
	s.groups = s.groups[:len(s.groups)-1]
	total := len(g.branches)
	if !g.full {
		total++ // none of the branches
	}
	found := make(map[int32][]state)
	var order []int32
	for _, b := range g.branches {
		s.steps += 4 * len(b)
		for _, c := range b {
			if found[c.id] == nil {
				order = append(order, c.id)
			}
			found[c.id] = append(found[c.id], c.was)
		}
	}
	for _, id := range order {
		of := found[id]
		if len(of) < total {
			of = append(of, s.table.all[id].state)
		}
		s.set(id, s.union(of))
	}
}

// union makes one state of several that are possible.
func (s *source) union(of []state) state {
	var a alternatives
	for _, one := range of {
		all := s.each(one, func(one state) {
			if at, ok := slices.BinarySearch(a.of, one); !ok {
				if len(a.of) == maxAlternatives {
					a.more = true
				} else {
					a.of = slices.Insert(a.of, at, one)
				}
			}
		})
		a.more = a.more || !all
	}
	if len(a.of) == 1 && !a.more {
		return a.of[0]
	}
	s.sets = append(s.sets, a)
	return -2 - state(len(s.sets)-1)
}
