package defines

import (
	"math"
	"strconv"

	"preflash/parser"
)

// reader maps the final state of the macros to the neutral printer. It notes
// for each setting how it is spelled, so that a change finds its way back.
type reader struct {
	s       *source
	gen     generation
	basis   basis
	checks  basis // whose checks the build is sure to meet: see published
	hotend  int   // index of the hotend's options
	tools   int   // how many sheets may name, 0 where that cannot be told
	hotends int   // how many there are, as far as that can be told
	slots   []slot
	hangs   map[parser.Key]string // which option decides whether a setting counts, where it is open
}

// unit is how an option counts what the neutral setting has in SI units.
type unit uint8

const (
	unitPlain    unit = iota
	unitMillis        // ms for s
	unitCounts        // 0 to 255 for a share of 1
	unitNegative      // the other sign
	unitQuarters      // quarters of a second for s
)

const fullCounts = 255

// read turns the option's figure into the setting's.
func (u unit) read(x float64) float64 {
	switch u {
	case unitMillis:
		return x / 1000
	case unitCounts:
		return x / fullCounts
	case unitNegative:
		return 0 - x // not −x: no negative zero
	case unitQuarters:
		return x / 4
	}
	return x
}

// write turns the setting's figure into the option's.
func (u unit) write(x float64) float64 {
	switch u {
	case unitMillis:
		return x * 1000
	case unitCounts:
		return x * fullCounts
	case unitNegative:
		return 0 - x
	case unitQuarters:
		return x * 4
	}
	return x
}

// absence is what it means that no define is in force.
type absence uint8

const (
	absentUnknown absence = iota // the firmware demands it: it must stand elsewhere
	absentDefault                // the firmware assumes usual
	absentOff                    // the thing does not exist then
	absentHidden                 // as off, and not worth a line
)

// numberSpelling is a number of the configuration and how it is spelled.
type numberSpelling struct {
	key    parser.Key
	names  []string // spellings of the generations, the one to write first
	unit   unit
	round  rounding
	absent absence
	usual  float64 // absentDefault, in the setting's unit

	list    bool // the value is a list; element counts from 0
	element int
	repeats bool // the last element of a short list holds for the rest

	near []string // where a define that is missing belongs: after one of these
}

// pick chooses the spelling that counts: one in force, else one that may be,
// else one that occurs at all, else the first.
func (r *reader) pick(names []string) (string, macro) {
	var best string
	var found, first macro
	for i, name := range names {
		m := r.s.macro(name)
		if i == 0 {
			first = m
		}
		switch {
		case m.state == parser.Yes:
			return name, m
		case m.state == parser.Maybe && found.state != parser.Maybe:
			best, found = name, m
		case best == "" && len(r.s.mentions(name)) > 0:
			best, found = name, m
		}
	}
	if best == "" {
		return names[0], first
	}
	return best, found
}

// fillFrom fills what a setting of any type takes from the macro's state. False
// where there is no define in force to take a value from; State is Unknown
// then, and Why says the reason.
func fillFrom[T any](r *reader, s *parser.Setting[T], m macro) bool {
	switch m.state {
	case parser.Yes:
		s.State = parser.Set
		s.Place = placeOf(m.winner)
		for _, o := range m.others {
			// One that an #undef ended was taken back on purpose.
			if o.ended.IsZero() {
				s.Hides = append(s.Hides, placeOf(o))
			}
		}
		if m.winner.function {
			s.State = parser.Unknown
			s.Why = m.winner.at.String() + ": " + s.Name + " takes parameters, which this option does not"
			return false
		}
		return true
	case parser.Maybe:
		s.State, s.Why = parser.Unknown, m.why
		if len(m.others) > 0 {
			s.Place = placeOf(m.others[0])
		} else {
			s.Place = r.telling(s.Name, m)
		}
		if s.Why == "" {
			s.Why = s.Name + " stands under a condition that these files leave open"
		}
		return false
	}
	s.State, s.Place = parser.Unknown, r.telling(s.Name, m)
	switch at := s.Place.At; {
	case at.IsZero():
		s.Why = "no file that was read defines " + s.Name + "; if another file does, name it in the sheet"
	default:
		s.Why = s.Name + " is not used: see " + at.String()
	}
	return false
}

// placeOf is where a define's value stands, or its name where it has none.
func placeOf(d *define) parser.Place {
	if d.body.Start == d.body.End {
		return parser.Place{At: d.at}
	}
	return parser.Place{At: d.body, Written: d.body.Text()}
}

// telling is the place that tells a person most about a name that is not in
// force: the #undef, a commented-out define, one in a branch that is not read.
func (r *reader) telling(name string, m macro) parser.Place {
	if !m.undef.IsZero() {
		return parser.Place{At: m.undef}
	}
	mentions := r.s.mentions(name)
	for _, d := range mentions {
		if d.commentedOut && d.reached == parser.Yes {
			return parser.Place{At: d.at}
		}
	}
	if len(mentions) > 0 {
		return parser.Place{At: mentions[len(mentions)-1].at}
	}
	return parser.Place{}
}

// unsettled says why a value cannot be told: it goes over a limit, or depends
// on what the files do not settle.
func (r *reader) unsettled(d *define) string {
	is := d.body.String() + ": " + d.name + " is “" + parser.Quote(d.value()) + "”, "
	switch why, over := r.s.unsettled(d.value()); {
	case over:
		return is + "which cannot be read: " + why
	case why != "":
		return is + "which these files leave open: " + why
	}
	return is + "which depends on something that these files leave open"
}

// number reads a figure and notes how to write it.
func (r *reader) number(f numberSpelling) parser.Setting[float64] {
	s := r.value(f)
	if s.State != parser.Absent {
		r.slots = append(r.slots, slot{
			key: f.key, kind: slotNumber, name: s.Name, unit: f.unit, round: f.round,
			list: f.list, element: f.element, repeats: f.repeats, near: f.near,
		})
	}
	return s
}

// value reads a figure.
func (r *reader) value(f numberSpelling) parser.Setting[float64] {
	s := parser.Setting[float64]{Key: f.key}
	var m macro
	s.Name, m = r.pick(f.names)
	if !fillFrom(r, &s, m) {
		if m.state == parser.No {
			return absent(s, f)
		}
		return s
	}
	at, text, why := m.winner.body, m.winner.value(), ""
	if f.list {
		at, text, why = r.element(m.winner, f.element, f.repeats)
		s.Place = parser.Place{At: at, Written: at.Text()}
	}
	if why != "" {
		s.State, s.Why = parser.Unknown, why
		return s
	}
	x, known := r.figure(text)
	switch {
	case known == parser.Yes && !math.IsNaN(x) && !math.IsInf(x, 0):
		s.Value = f.unit.read(x)
	case known == parser.Maybe:
		s.State, s.Why = parser.Unknown, r.unsettled(m.winner)
	case text == "":
		s.State, s.Why = parser.Unknown, m.winner.at.String()+": "+s.Name+" has no value"
	default:
		s.State, s.Why = parser.Unknown, at.String()+": “"+text+"” is no number"
	}
	return s
}

// figure computes a value. Most are plain decimals, which need no preprocessor.
func (r *reader) figure(text string) (float64, parser.Tri) {
	if text != "" && len(text) <= 15 && (text[0] != '0' || text == "0") {
		dots := 0
		for i := range len(text) {
			if text[i] == '.' && i > 0 {
				dots++
			} else if text[i] < '0' || text[i] > '9' {
				dots = 2
				break
			}
		}
		if dots < 2 {
			if x, err := strconv.ParseFloat(text, 64); err == nil {
				return x, parser.Yes
			}
		}
	}
	return r.s.number(text)
}

// absent is a figure that no define sets.
func absent(s parser.Setting[float64], f numberSpelling) parser.Setting[float64] {
	switch f.absent {
	case absentDefault:
		s.State, s.Value, s.Why, s.Place = parser.Default, f.usual, "", parser.Place{}
	case absentOff:
		s.State, s.Why = parser.Off, ""
	case absentHidden:
		s = parser.Setting[float64]{}
	}
	return s
}

// flag reads an option that is on or off.
func (r *reader) flag(key parser.Key, names, near []string) parser.Setting[bool] {
	s := parser.Setting[bool]{Key: key}
	var m macro
	s.Name, m = r.pick(names)
	r.slots = append(r.slots, slot{key: key, kind: slotFlag, name: s.Name, near: near})
	if !fillFrom(r, &s, m) {
		if m.state == parser.No {
			s.State, s.Why = parser.Off, ""
		}
		return s
	}
	switch r.enabled(s.Name, m) {
	case parser.Yes:
		s.Value = true
	case parser.No:
		s.State = parser.Off
	default:
		s.State, s.Why = parser.Unknown, r.unsettled(m.winner)
	}
	return s
}

// enabled says whether the firmware takes an option as switched on. The oldest
// generation asks only whether it is defined.
func (r *reader) enabled(name string, m macro) parser.Tri {
	if r.gen == gen10 || m.state != parser.Yes {
		return m.state
	}
	return r.s.enabled(name)
}

// on reports the state of an option that is no setting of its own.
func (r *reader) on(name string) parser.Tri { return r.enabled(name, r.s.macro(name)) }
