package defines

import (
	"errors"
	"path"
	"strings"

	"preflash/parser"
)

const couldOverride = "whatever it defines could override what is read"

// include follows the #include of a line. Only "x" is followed; x lies beside
// the file that includes it.
func (s *source) include(u *header, line int32, live parser.Tri, cause int32) error {
	target, ok := s.included(line)
	if !ok {
		return nil
	}
	s.steps += 16
	d := &s.lines[line]
	at := u.span(d.rest, d.restEnd)
	once := d.kind == kindImport
	name := target
	if !path.IsAbs(target) {
		name = path.Join(path.Dir(u.file.Path), target)
	}
	if s.units[name] == nil {
		switch {
		case len(s.absent) > 0 && s.tree.Absent(s.absent, name) && s.tree.Lacks(name):
			s.note(line, parser.RemarkGap, name+" is absent here; "+couldOverride)
			return nil
		case live == parser.Maybe && !s.tree.Exists(name):
			s.note(line, parser.RemarkGap,
				name+" does not exist, and whether it is included cannot be told; "+couldOverride)
			return nil
		}
	}
	if s.depth == parser.MaxIncludeDepth {
		const deepest = parser.MaxIncludeDepth
		return parser.Errorf(at, "includes nest deeper than %d levels: %s", deepest, s.chain(target))
	}
	if live == parser.Maybe {
		if next := s.units[name]; next != nil && next.reading {
			s.note(line, parser.RemarkGap,
				name+" includes itself, under a condition that cannot be told; this is passed over")
			return nil
		}
	}
	next, err := s.open(name)
	if err != nil {
		var e *parser.Error
		if errors.As(err, &e) && e.Line == 0 {
			e = parser.Errorf(at, "the included file %s %s", e.File, e.Message)
			if s.tree.Lacks(name) {
				e.Message += "; or list it under absent in the sheet"
			}
			if !s.tree.Exists(name) {
				e.Missing = name
			}
			return e
		}
		return err
	}
	s.depth++
	s.trail = append(s.trail, target)
	err = s.read(next, live, cause)
	s.trail = s.trail[:len(s.trail)-1]
	s.depth--
	if once {
		next.once = true
	}
	return err
}

// chain names the files on the way to the one that is included too deep.
func (s *source) chain(target string) string {
	list := append(s.trail[max(0, len(s.trail)-3):len(s.trail):len(s.trail)], target)
	return "… " + strings.Join(list, " → ") + "; one of them includes itself without a guard"
}

// included returns the name between the quotes; false where the file is not
// one to follow.
func (s *source) included(line int32) (string, bool) {
	text := s.body(line)
	if text != "" && text[0] != '"' && text[0] != '<' {
		e := s.expander(tokenise(text, nil))
		first := e.next()
		e.close()
		switch {
		case e.over:
			s.note(line, parser.RemarkUnreadable,
				"this #include cannot be read: "+e.broken+"; "+couldOverride)
			return "", false
		case first.kind == tokenString || first.text == "<":
			text = first.text
		case first.kind == tokenUnknown || first.kind == tokenWord:
			quoted := s.unitOf(line).file.Cite(parser.Quote(text))
			s.note(line, parser.RemarkGap, "cannot tell which file "+quoted+" is; "+couldOverride)
			return "", false
		default:
			text = ""
		}
	}
	if strings.HasPrefix(text, `"`) {
		if end := strings.IndexByte(text[1:], '"'); end > 0 {
			return text[1 : 1+end], true
		}
	} else if strings.HasPrefix(text, "<") {
		return "", false
	}
	if s.lines[line].reached == parser.Yes {
		s.note(line, parser.RemarkBroken,
			`the compiler refuses this line: an #include needs "file" or <file>`)
	}
	return "", false
}
