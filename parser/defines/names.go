package defines

import (
	"hash/maphash"
	"slices"

	"preflash/parser"
)

// name is one macro name that the files use.
type name struct {
	text         string
	first, last  int32 // its define lines in source.lines; -1 for none
	state        state
	origin       origin
	fromOutside  bool // was taken to come from outside
	derived      bool // the firmware derives it, with parameters or without
	neverOutside bool // … without: where it is not defined, it is not from outside
	sheetSays    bool // the sheet says whether it is defined
	busy         bool // its body is being expanded
	test         test // one of the style's own tests
}

// nameTable holds all names, found by their text. A map of the standard
// library would take five times the memory, and fresh memory is what reading
// a file mostly costs.
type nameTable struct {
	all   []name
	slots []int32 // index into all + 1, at the place that the hash gives or the next free one
	seed  maphash.Seed
}

// find returns the number of a name, or -1.
func (t *nameTable) find(text string) int32 {
	mask := uint64(len(t.slots) - 1)
	for h := maphash.String(t.seed, text); ; h++ {
		id := t.slots[h&mask] - 1
		if id < 0 || t.all[id].text == text {
			return id
		}
	}
}

// intern returns the number of a name, which it adds where it is new.
func (t *nameTable) intern(text string) int32 {
	mask := uint64(len(t.slots) - 1)
	h := maphash.String(t.seed, text)
	for ; ; h++ {
		id := t.slots[h&mask] - 1
		if id < 0 {
			break
		}
		if t.all[id].text == text {
			return id
		}
	}
	t.all = append(t.all, name{text: text, first: -1, last: -1, state: none})
	id := int32(len(t.all))
	t.slots[h&mask] = id
	if len(t.all)*2 > len(t.slots) {
		t.rehash(2 * len(t.slots))
	}
	return id - 1
}

// clone copies a table.
func (t *nameTable) clone() nameTable {
	return nameTable{slices.Clone(t.all), slices.Clone(t.slots), t.seed}
}

// rehash gives the table so many slots, a power of two.
func (t *nameTable) rehash(slots int) {
	t.slots = make([]int32, slots)
	mask := uint64(slots - 1)
	for id := range t.all {
		h := maphash.String(t.seed, t.all[id].text)
		for t.slots[h&mask] != 0 {
			h++
		}
		t.slots[h&mask] = int32(id) + 1
	}
}

// room prepares for so many names more.
func (t *nameTable) room(names int) {
	t.all = slices.Grow(t.all, names)
	slots := max(len(t.slots), 64)
	for slots < 2*(len(t.all)+names) {
		slots *= 2
	}
	if slots > len(t.slots) {
		t.rehash(slots)
	}
}

// mentioned is called when the first define of a name turns up. If the name
// was taken to come from outside, some condition was misjudged.
func (s *source) mentioned(n *name) {
	if n.fromOutside {
		s.again = true
	}
}

// outside reports whether a name may be set by something that is not read:
// no file mentions it as a define, it is no option of the style, and the
// firmware does not derive it.
func (s *source) outside(n *name) bool {
	if n.first >= 0 || n.sheetSays {
		return false
	}
	if n.origin == originUnasked {
		n.origin = s.originOf(n.text)
	}
	switch n.origin {
	case originOption:
		return false
	case originNewer:
		return s.basis == older|newer
	case originBoard:
		if !s.basis.may(older) {
			return false
		}
	case originMultiple:
		if s.defined(s.table.intern("MMU_MODEL")) == parser.No {
			return false
		}
	default:
		if n.neverOutside {
			return false
		}
	}
	n.fromOutside = true
	return true
}
