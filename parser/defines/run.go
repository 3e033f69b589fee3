package defines

import (
	"path"
	"strings"

	"preflash/parser"
)

// Limits of what reading may take.
const (
	maxNesting = 256     // of conditionals, as the C++ standard's annex on quantities has it
	maxSteps   = 1 << 22 // lines run, files included, tokens expanded: all that one printer may take
	maxRounds  = 8
)

// header is a file with its place in source.lines.
type header struct {
	file     *parser.File
	text     string
	from, to int32
	once     bool // is not read a second time
	firmware bool // the firmware's own, in no file of the tree
	second   bool // the file with the second version option
	place    int  // in source.files, from 1; 0 where it is not read
	reading  bool
}

// frame is a conditional that is open.
type frame struct {
	line   int32      // the #if
	parent parser.Tri // whether the lines around it are read
	live   parser.Tri // whether the lines of its present branch are read
	taken  parser.Tri // whether a branch up to now was read
	orElse bool
	group  bool  // it is unknown which branch is read: a group is open
	cause  int32 // where live is Maybe: the condition that cannot be told
}

// open returns the unit of a path inside the tree, which it reads the first
// time.
func (s *source) open(name string) (*header, error) {
	name = path.Clean(name)
	if u := s.units[name]; u != nil {
		return u, nil
	}
	if len(s.units) == parser.MaxFiles {
		return nil, &parser.Error{File: s.tree.Shown(name),
			Message: "is one file more than the 256 that a printer may have; include fewer"}
	}
	file, err := s.tree.Open(name)
	if err != nil {
		return nil, err
	}
	u := &header{file: file}
	if err := s.scan(u); err != nil {
		return nil, err
	}
	u.second = s.holds(u, secondVersion)
	s.units[name] = u
	return u, nil
}

// run reads the files from start to end with the names known that any of
// them mentions.
func (s *source) run(units []*header) error {
	for i := range s.table.all {
		s.table.all[i].state = none
	}
	for i := range s.lines {
		s.lines[i].reached, s.lines[i].ended = parser.No, -1
	}
	for _, u := range s.order {
		u.once, u.place = false, 0
	}
	s.again = false
	s.files, s.remarks, s.noted = nil, nil, nil
	s.sets, s.journal, s.groups = s.sets[:0], s.journal[:0], s.groups[:0]
	clear(s.doubts)
	clear(s.pushed)
	if err := s.begin(); err != nil {
		return err
	}
	for i, u := range units {
		if i == 1 && !s.statedBehind(units[0]) {
			if err := s.between(); err != nil {
				return err
			}
		}
		if err := s.read(u, parser.Yes, -1); err != nil {
			return err
		}
	}
	if err := s.between(); err != nil {
		return err
	}
	return s.read(s.firmware.last, parser.Yes, -1)
}

// span points at a part of a line.
func (u *header) span(start, end int32) parser.Span {
	return parser.Span{File: u.file, Start: int(start), End: int(end)}
}

// read runs the lines of a file. live says whether its #include is read;
// cause is the condition that it depends on.
func (s *source) read(u *header, live parser.Tri, cause int32) error {
	if u.once {
		return nil
	}
	if u.second && len(s.files) > 0 {
		if err := s.between(); err != nil {
			return err
		}
	}
	if u.place == 0 && !u.firmware {
		s.files = append(s.files, u.file)
		u.place = len(s.files)
	}
	outer := u.reading
	u.reading = true
	defer func() { u.reading = outer }()

	frames := []frame{{live: live, cause: cause}} // the file itself, then what is open
	for i := u.from; i < u.to; i++ {
		if s.steps++; s.steps > maxSteps {
			return tooMany(u.span(s.lines[i].start, s.lines[i].start))
		}
		d, top := &s.lines[i], &frames[len(frames)-1]
		var err error
		switch d.kind {
		case kindIf, kindIfdef, kindIfndef:
			if len(frames) > maxNesting {
				return parser.Errorf(u.span(d.start, d.start),
					"conditionals nest deeper than %d levels here; close them with #endif", maxNesting)
			}
			frames = append(frames, s.enter(top, i))
		case kindElif, kindElifdef, kindElifndef, kindElse, kindEndif:
			if len(frames) == 1 {
				return parser.Errorf(u.span(d.start, d.start),
					"%s without an #if before it; remove it, or restore the #if", d.kind)
			}
			if d.kind != kindEndif {
				err = s.turn(u, top, i)
				break
			}
			s.leave(top)
			frames = frames[:len(frames)-1]
		default:
			if top.live != parser.No {
				err = s.act(u, i, top.live, top.cause)
			}
		}
		if err != nil {
			return err
		}
	}
	if n := len(frames); n > 1 {
		d := &s.lines[frames[n-1].line]
		return parser.Errorf(u.span(d.start, d.start),
			"the %s of this line is never closed; close it with #endif", d.kind)
	}
	return nil
}

// enter opens the conditional of an #if.
func (s *source) enter(around *frame, line int32) frame {
	f := frame{line: line, parent: around.live, live: parser.No, taken: parser.Yes, cause: around.cause}
	if around.live != parser.No {
		f.taken = parser.No
		s.branch(&f, line, s.judge(line, around.live == parser.Yes))
	}
	return f
}

// turn goes on to the next branch.
func (s *source) turn(u *header, f *frame, line int32) error {
	d := &s.lines[line]
	if f.orElse {
		first, _ := u.file.Position(int(s.lines[f.line].start))
		return parser.Errorf(u.span(d.start, d.start),
			"%s after the #else of the #if in line %d; remove one of them", d.kind, first)
	}
	f.orElse = d.kind == kindElse
	if f.group && f.live != parser.No {
		s.endBranch()
	}
	f.live = parser.No
	if f.taken != parser.Yes {
		c := parser.Yes
		if !f.orElse {
			c = s.judge(line, f.parent == parser.Yes && f.taken == parser.No)
		}
		s.branch(f, line, c)
	}
	return nil
}

// leave closes a conditional at its #endif.
func (s *source) leave(f *frame) {
	if !f.group {
		return
	}
	if f.live != parser.No {
		s.endBranch()
	}
	s.closeGroup()
}

// branch enters a branch whose own condition is c. No branch before it was
// read for sure.
func (s *source) branch(f *frame, line int32, c parser.Tri) {
	switch {
	case c == parser.No:
		f.live = parser.No
		return
	case c == parser.Yes && f.taken == parser.No:
		f.live, f.taken = f.parent, parser.Yes
		return
	}
	f.live = parser.Maybe
	if !f.group {
		f.group = true
		s.openGroup()
	}
	if c == parser.Yes {
		f.taken = parser.Yes
		s.groups[len(s.groups)-1].full = true
		return // the cause is the unknown condition before it
	}
	f.taken, f.cause = parser.Maybe, line
}

// judge decides the condition of an #if, #ifdef, #elif … line. sure says that
// the line is read for sure.
func (s *source) judge(line int32, sure bool) parser.Tri {
	d := &s.lines[line]
	s.lines[line].reached = parser.Yes
	switch d.kind {
	case kindIf, kindElif:
		return s.condition(line, sure)
	}
	if d.name < 0 {
		if sure {
			s.note(line, parser.RemarkBroken, "a name is missing after "+d.kind.String())
		}
		return parser.No
	}
	t := s.defined(d.name)
	if t == parser.Maybe {
		s.doubt(line, doubt{name: d.name})
		return t
	}
	if d.kind == kindIfndef || d.kind == kindElifndef {
		return parser.Yes - t
	}
	return t
}

// act runs a line that is no conditional. live is Yes or Maybe.
func (s *source) act(u *header, i int32, live parser.Tri, cause int32) error {
	d := &s.lines[i]
	if d.reached != parser.Yes {
		d.reached = live
	}
	if live == parser.Maybe {
		s.causes[i] = cause
	}
	switch d.kind {
	case kindDefine:
		if !d.comment {
			s.set(d.name, i)
		}
	case kindUndef:
		if d.name < 0 {
			s.note(i, parser.RemarkBroken, "a name is missing after #undef")
			break
		}
		s.each(s.table.all[d.name].state, func(was state) {
			if was >= 0 && s.lines[was].kind == kindDefine {
				s.lines[was].ended = i
			}
		})
		s.set(d.name, i)
	case kindInclude, kindImport:
		return s.include(u, i, live, cause)
	case kindOnce:
		u.once = true
	case kindPush, kindPop:
		return s.remember(u, d, live)
	case kindError:
		if live == parser.Yes {
			s.note(i, parser.RemarkBroken,
				"#error stops the build here: "+u.file.Cite(parser.Quote(s.body(i))))
		}
	case kindBad:
		if live == parser.Yes {
			text := parser.Quote(strings.TrimSpace(u.text[d.start:d.end]))
			s.note(i, parser.RemarkBroken, "the compiler refuses this line: "+u.file.Cite(text))
		}
	}
	return nil
}

// remember puts a macro on the stack of its name, or makes it what was put there
// last; nothing was put there: nothing happens.
func (s *source) remember(u *header, d *directive, live parser.Tri) error {
	if live != parser.Yes {
		return parser.Errorf(u.span(d.start, d.start), "what a macro is gets saved or restored here, "+
			"and whether it does cannot be told; take it out of the condition")
	}
	if s.pushed == nil {
		s.pushed = make(map[int32][]state)
	}
	stack := s.pushed[d.name]
	if d.kind == kindPush {
		s.pushed[d.name] = append(stack, s.table.all[d.name].state)
	} else if n := len(stack) - 1; n >= 0 {
		s.pushed[d.name] = stack[:n]
		s.set(d.name, stack[n])
	}
	return nil
}

// note remembers a remark, once for each line.
func (s *source) note(line int32, kind parser.RemarkKind, text string) {
	if s.noted[line] {
		return
	}
	if s.noted == nil {
		s.noted = make(map[int32]bool)
	}
	s.noted[line] = true
	u, d := s.unitOf(line), &s.lines[line]
	start := skipBlanks(u.text, int(d.start))
	s.remarks = append(s.remarks, parser.Remark{Kind: kind, Text: text,
		At: u.span(int32(start), int32(trimEnd(u.text, start, int(d.end))))})
}

func tooMany(at parser.Span) error {
	return parser.Errorf(at, "reading takes more than %d steps up to here; no configuration does: "+
		"look for macros or includes that multiply", maxSteps)
}

// String is the directive as a person writes it.
func (k kind) String() string {
	return [...]string{
		"#define", "#undef", "#if", "#ifdef", "#ifndef", "#elif", "#elifdef", "#elifndef", "#else",
		"#endif", "#include", "#import", "#pragma once", "#error", "#pragma push_macro",
		"#pragma pop_macro", "#",
	}[k]
}
