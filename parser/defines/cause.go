package defines

import (
	"iter"

	"preflash/parser"
)

// hangsOn notes that a setting cannot be told because one of these options
// cannot.
func (r *reader) hangsOn(key parser.Key, options ...string) {
	for _, name := range options {
		if r.on(name) == parser.Maybe {
			if r.hangs == nil {
				r.hangs = make(map[parser.Key]string)
			}
			r.hangs[key] = name
			return
		}
	}
}

// causes says what the settings that cannot be told hang on. A setting that
// cannot be told for the same reason as another hangs on the same.
func (r *reader) causes(settings iter.Seq[parser.Description]) map[parser.Key]parser.Cause {
	var causes map[parser.Key]parser.Cause
	var reasons map[string]parser.Cause
	for _, pass := range [...]bool{true, false} {
		for d := range settings {
			if d.State != parser.Unknown {
				continue
			}
			if causes == nil {
				causes, reasons = make(map[parser.Key]parser.Cause), make(map[string]parser.Cause)
			}
			if pass {
				name, hangs := r.hangs[d.Key]
				if !hangs {
					name = d.Name
				}
				if c, ok := r.s.cause(name); ok {
					causes[d.Key], reasons[d.Why] = c, c
				}
			} else if c, ok := reasons[d.Why]; ok {
				causes[d.Key] = c
			}
		}
	}
	return causes
}

// cause says what an option hangs on that cannot be told: it, or its value.
func (s *source) cause(option string) (parser.Cause, bool) {
	m := s.macro(option)
	switch {
	case m.state == parser.Maybe:
		return s.root(doubt{name: s.table.intern(option)}, parser.Cause{})
	case m.winner != nil:
		e := s.expander(tokenise(m.winner.value(), nil))
		v, d := e.compute(allNumbers)
		e.close()
		if v.kind == unknownValue && !d.over {
			return s.root(d, parser.Cause{Condition: m.winner.body})
		}
	}
	return parser.Cause{}, false
}

// root follows a doubt to what is at its beginning.
func (s *source) root(d doubt, c parser.Cause) (parser.Cause, bool) {
	d = s.since(d)
	for range maxAlternatives {
		if d.cause < 0 {
			break
		}
		if u := s.unitOf(d.cause); c.Condition.IsZero() && !u.firmware {
			l := &s.lines[d.cause]
			start := skipBlanks(u.text, int(l.start))
			end := trimEnd(u.text, start, int(l.end))
			c.Condition, c.Quoted = u.span(int32(start), int32(end)), s.quote(d.cause)
		}
		next, ok := s.doubts[d.cause]
		if !ok {
			break
		}
		d = next
	}
	if d.name >= 0 && d.cause < 0 && s.table.all[d.name].state == none {
		name := s.table.all[d.name].text
		if s.refused(&parser.Define{Name: name, Undefined: true}) == "" && len(s.mentions(name)) == 0 {
			c.Name = name
		}
	}
	return c, c.Name != "" || !c.Condition.IsZero()
}
