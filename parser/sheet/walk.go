package sheet

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"preflash/parser"
)

// What is said of a blank, here and in a sheet that is begun: whether it keeps the
// printer from being checked, or not.
const (
	Blocks  = "blocks the check"
	MayStay = "may stay open"
)

// walk goes over the tree of one sheet and keeps what is wrong with it, so
// that a person sees all of it at once.
type walk struct {
	own     *parser.File
	faults  []fault
	open    []fault // blanks that may stay, told only beside what is wrong
	unknown []stray
	scopes  []*scope // all that were walked
}

// fault is one thing that is wrong, at its place.
type fault struct {
	at      parser.Span
	path    string
	missing bool
	text    string
}

func faultf(at parser.Span, format string, args ...any) *fault {
	return &fault{at: at, text: fmt.Sprintf(format, args...)}
}

func (f *fault) err() error { return parser.Errorf(f.at, "%s", f.text) }

// stray is a key that nobody asked for.
type stray struct {
	scope *scope
	name  string
	at    parser.Span
}

// maxFaults is how many faults of one sheet are told.
const maxFaults = 50

// scope is one table of the schema: the sheet's own and, behind it, that of
// the file named by use.
type scope struct {
	walk     *walk
	path     string
	tables   []*tomlTable
	at       parser.Span // the nearest header that is present
	optional bool        // nothing is required in here
	names    []string    // asked for so far
}

func (s *scope) full(name string) string {
	if s.path == "" {
		return name
	}
	return s.path + "." + name
}

// find returns the value of a key; the sheet's own wins.
func (s *scope) find(name string) *value {
	s.ask(name)
	for _, t := range s.tables {
		if e := t.byName[name]; e != nil {
			return e.value
		}
	}
	return nil
}

func (s *scope) ask(name string) { s.names = append(s.names, name) }

// scope opens a table of the schema.
func (w *walk) scope(path string, at parser.Span, optional bool, tables ...*tomlTable) *scope {
	s := &scope{walk: w, path: path, at: at, optional: optional, tables: tables, names: make([]string, 0, 16)}
	w.scopes = append(w.scopes, s)
	return s
}

// tablesOf names the tables that have a key.
func (w *walk) tablesOf(key string) []string {
	var tables []string
	for _, s := range w.scopes {
		name := "the top of the sheet"
		if s.path != "" {
			name = "[" + s.path + "]"
		}
		if !s.optional && slices.Contains(s.names, key) && !slices.Contains(tables, name) {
			tables = append(tables, name)
		}
	}
	return tables
}

// has reports whether the table of that name is there at all.
func (s *scope) has(name string) bool {
	return slices.ContainsFunc(s.tables, func(t *tomlTable) bool { return t.byName[name] != nil })
}

// sub goes into a table, which may be missing.
func (s *scope) sub(name string) *scope {
	s.ask(name)
	u := s.walk.scope(s.full(name), s.at, s.optional)
	for _, t := range s.tables {
		e := t.byName[name]
		if e == nil {
			continue
		}
		if e.value.kind != tableValue {
			s.walk.wrong(e.value, u.path, "must be a table, written ["+u.path+"]")
			continue
		}
		if len(u.tables) == 0 && e.value.at.File == s.walk.own {
			u.at = e.value.at
		}
		u.tables = append(u.tables, e.value.table)
	}
	return u
}

// misspelt reports whether a key that is not known comes near one of these.
func (s *scope) misspelt(names ...string) bool {
	for _, t := range s.tables {
		for _, name := range t.order {
			if !slices.Contains(s.names, name) && slices.Contains(names, parser.Nearest(name, s.names)) {
				return true
			}
		}
	}
	return false
}

// done notes the keys that nobody asked for.
func (s *scope) done() {
	for _, t := range s.tables {
		for _, name := range t.order {
			if !slices.Contains(s.names, name) {
				s.walk.unknown = append(s.walk.unknown, stray{s, name, t.byName[name].at})
			}
		}
	}
}

// wording says what a value should be. It is put together only where it is
// needed, since most sheets are right.
type wording func() string

func words(text string) wording { return func() string { return text } }

// get reads one key. conv returns the value, or what it must be.
func get[T any](
	s *scope, name string, required bool, def T, what wording, conv func(*value) (T, string),
) Key[T] {
	k := Key[T]{Value: def, At: s.at, Path: s.full(name)}
	v := s.find(name)
	switch {
	case v == nil && required:
		s.missing(name, k.Path+" is missing; give "+what())
	case v == nil:
	default:
		k.Given, k.At = true, v.at
		optionalList := !required && v.kind == listValue && len(v.list) == 0
		if v.blank() && !optionalList {
			s.walk.fault(v.at, k.Path, k.Path+" is blank and "+Blocks+"; give "+what())
			break
		}
		x, problem := conv(v)
		if problem != "" {
			s.walk.wrong(v, k.Path, problem)
			break
		}
		k.Value = x
	}
	return k
}

func (s *scope) missing(name, text string) {
	if !s.optional {
		s.walk.faults = append(s.walk.faults, fault{at: s.at, path: s.full(name), missing: true, text: text})
	}
}

func (w *walk) fault(at parser.Span, path, text string) {
	w.faults = append(w.faults, fault{at: at, path: path, text: text})
}

// wrong says what a value must be. It quotes the value only where it stands in
// the sheet itself.
func (w *walk) wrong(v *value, path, must string) {
	shown := path
	if v.at.File == w.own {
		switch v.kind {
		case textValue:
			shown += " = " + parser.Quote(strconv.Quote(v.text))
		case numberValue, wholeValue, boolValue:
			shown += " = " + parser.Quote(v.at.Text())
		}
	}
	w.fault(v.at, path, shown+": "+must)
}

// err joins all faults in the order of the text, the sheet's before those of
// a file that it uses. Each is an *parser.Error.
func (w *walk) err() error {
	var meant []string
	for _, u := range w.unknown {
		text, path := u.text(w)
		if path != "" {
			meant = append(meant, path)
		}
		w.fault(u.at, u.scope.full(u.name), text)
	}
	// A misspelt key is missing as well; one of the two is enough.
	w.faults = slices.DeleteFunc(w.faults, func(f fault) bool {
		return f.missing && slices.ContainsFunc(meant, func(m string) bool {
			return f.path == m || strings.HasPrefix(f.path, m+".")
		})
	})
	slices.SortStableFunc(w.faults, func(a, b fault) int {
		return cmp.Or(cmp.Compare(w.rank(a), w.rank(b)), cmp.Compare(a.at.Start, b.at.Start))
	})
	if len(w.faults) > 0 {
		w.faults = append(w.faults, w.open...)
	}
	var list []error
	for i, f := range w.faults {
		if i == maxFaults {
			list = append(list, parser.Errorf(f.at, "and %d more", len(w.faults)-i))
			break
		}
		list = append(list, f.err())
	}
	if len(list) == 1 {
		return list[0]
	}
	return errors.Join(list...)
}

func (w *walk) rank(f fault) int {
	if f.at.File == w.own {
		return 0
	}
	return 1
}

// text says that a key is not known, and the key that was probably meant.
func (u *stray) text(w *walk) (text, meant string) {
	what := "this key is not known here"
	if u.at.File == w.own {
		what = parser.Quote(u.scope.full(u.name)) + " is not a key of the sheet"
	}
	if places := w.tablesOf(u.name); len(places) > 0 {
		return what + "; it belongs in " + strings.Join(places, " or "), ""
	}
	if near := parser.Nearest(u.name, u.scope.names); near != "" {
		return fmt.Sprintf("%s; did you mean %s?", what, near), u.scope.full(near)
	}
	return what + "; correct or remove it", ""
}
