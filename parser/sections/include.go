package sections

import (
	"errors"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"unicode/utf8"

	"preflash/parser"
)

// include reads what the [include …] at a span names: a file, or a pattern
// that may match none.
func (r *reader) include(at parser.Span) error {
	spec := at.Text()
	names, err := r.matching(at, spec)
	if err != nil {
		return err
	}
	for _, name := range names {
		if err := r.includeFile(at, name); err != nil {
			return err
		}
	}
	return nil
}

// matching lists the files that an include names, sorted.
func (r *reader) matching(at parser.Span, spec string) ([]string, error) {
	name := spec
	if !strings.HasPrefix(spec, "/") {
		name = path.Join(path.Dir(at.File.Path), spec)
	} else if inside := r.tree.FromRoot(spec); filepath.IsLocal(filepath.FromSlash(inside)) {
		name = inside
	}
	if strings.ContainsAny(spec, "*?[") {
		if r.tree.Absent(r.absent, name) {
			r.lacks(at, spec)
			return nil, nil
		}
		if strings.HasPrefix(spec, "/") {
			name = pattern(name)
		} else {
			name = path.Join(literal(path.Dir(at.File.Path)), pattern(spec))
		}
		names, err := r.tree.Glob(name)
		if err != nil {
			return nil, orAbsent(wrap(at, err))
		}
		if len(names) == 0 {
			if err := r.count(at); err != nil {
				return nil, err
			}
			r.remark(parser.RemarkGap, at, "the pattern %s matches no file; "+
				"that is legal, but whatever it was meant to bring in is missing", spec)
		}
		slices.Sort(names)
		return names, nil
	}
	return []string{name}, nil
}

// lacks notes that what an include names is not here, which the sheet knows.
func (r *reader) lacks(at parser.Span, name string) {
	r.lacking = append(r.lacking, name)
	r.remark(parser.RemarkGap, at, "%s is not here, as the sheet says; what it sets wins over every line "+
		"above this one and loses to those below, and it may define a sensor of any name", name)
}

func (r *reader) includeFile(at parser.Span, name string) error {
	if i := slices.Index(r.open, name); i >= 0 {
		return parser.Errorf(at, "%s is included while it is being read: %s; remove one of these includes",
			r.tree.Shown(name), strings.Join(append(slices.Clone(r.open[i:]), name), " → "))
	}
	if len(r.open) > parser.MaxIncludeDepth {
		return parser.Errorf(at, "includes are nested more than %d deep here; "+
			"include fewer files from included files", parser.MaxIncludeDepth)
	}
	if err := r.count(at); err != nil {
		return err
	}
	f := r.seen(name)
	if f == nil {
		if r.tree.Lacks(name) {
			if r.tree.Absent(r.absent, name) {
				r.lacks(at, r.tree.Shown(name))
				return nil
			}
			if filepath.IsLocal(filepath.FromSlash(name)) && !r.tree.Exists(name) {
				e := parser.Errorf(at, "the included file %s does not exist; "+
					"add it, correct the name, or list it under absent in the sheet", r.tree.Shown(name))
				e.Missing = name
				return e
			}
		}
		var err error
		if f, err = r.tree.Open(name); err != nil {
			if err = wrap(at, err); r.tree.Lacks(name) {
				return orAbsent(err)
			}
			return err
		}
		r.foreignSaved(f)
	}
	return r.file(f, len(f.Data))
}

// count counts a file as often as it is read: a few files that include each
// other twice would be read without end otherwise. A pattern that matches
// nothing counts as one.
func (r *reader) count(at parser.Span) error {
	if r.reads++; r.reads >= parser.MaxFiles {
		return parser.Errorf(at,
			"more than %d files are included; no configuration needs so many", parser.MaxFiles)
	}
	return nil
}

// wrap puts an error of the tree at the include that led to it.
func wrap(at parser.Span, err error) error {
	var e *parser.Error
	if !errors.As(err, &e) {
		return parser.Errorf(at, "%v", err)
	}
	return parser.Errorf(at, "the included file %s %s", e.File, e.Message)
}

// orAbsent adds to what an error says that the sheet may name the file absent.
func orAbsent(err error) error {
	var e *parser.Error
	if errors.As(err, &e) {
		e.Message += "; or list it under absent in the sheet"
	}
	return err
}

// pattern turns a pattern as Python's glob reads it into one that path.Match
// reads alike: a backslash is no escape, ! negates a class, and a bracket
// that is not closed stands for itself.
func pattern(glob string) string {
	parts := strings.Split(glob, "/")
	for i, part := range parts {
		parts[i] = patternPart(part)
	}
	return strings.Join(parts, "/")
}

func patternPart(part string) string {
	var b strings.Builder
	for i := 0; i < len(part); {
		c := part[i]
		i++
		switch c {
		case '*', '?':
			b.WriteByte(c)
			continue
		case '[':
			if class, n := patternClass(part[i:]); n > 0 {
				b.WriteString(class)
				i += n
				continue
			}
		}
		if strings.IndexByte(`[]\`, c) >= 0 {
			b.WriteByte('\\')
		}
		b.WriteByte(c)
	}
	return b.String()
}

// patternClass translates a class whose opening bracket stands before s, and
// says how many bytes it takes; 0 where it is not closed.
func patternClass(s string) (class string, size int) {
	negated := strings.HasPrefix(s, "!")
	start := 0
	if negated {
		start = 1
	}
	if start >= len(s) {
		return "", 0
	}
	end := strings.IndexByte(s[start+1:], ']') // a bracket that comes first is a member
	if end < 0 {
		return "", 0
	}
	end += start + 1
	var b strings.Builder
	b.WriteByte('[')
	if negated {
		b.WriteByte('^')
	}
	members := s[start:end]
	for at := 0; at < len(members); {
		_, n := utf8.DecodeRuneInString(members[at:])
		low := members[at : at+n]
		at += n
		if strings.HasPrefix(members[at:], "-") && at+1 < len(members) {
			_, n = utf8.DecodeRuneInString(members[at+1:])
			high := members[at+1 : at+1+n]
			at += 1 + n
			if low <= high { // else the range is empty
				b.WriteString(`\` + low + `-\` + high)
			}
			continue
		}
		b.WriteString(`\` + low)
	}
	b.WriteByte(']')
	return b.String(), end + 1
}

// literal is a pattern that matches a path and nothing else.
func literal(name string) string {
	return strings.NewReplacer(`\`, `\\`, `*`, `\*`, `?`, `\?`, `[`, `\[`).Replace(name)
}
