// Package defines reads configurations written as C header files: #define
// lines, switched on and off by the preprocessor's conditionals.
package defines

import (
	"bytes"
	"fmt"
	"hash/maphash"
	"slices"
	"sort"
	"strconv"
	"strings"

	"preflash/parser"
)

// source is what the preprocessor makes of some header files: the state of
// every macro after the last line, and each line that could have set it. It
// is not safe for use by several goroutines.
type source struct {
	files   []*parser.File // in reading order, each once
	remarks []parser.Remark

	tree     *parser.Tree
	isOption func(name string) bool
	gen      generation
	basis    basis
	firmware firmware
	absent   []string
	units    map[string]*header // by path
	order    []*header          // by their place in lines

	lines []directive
	table nameTable

	// While the lines are run.
	journal []undo
	groups  []group
	pushed  map[int32][]state // by name, what #pragma push_macro saved
	sets    []alternatives
	depth   int      // of includes
	trail   []string // the includes that are open
	steps   int
	again   bool // a name was taken to come from outside, and is mentioned
	noted   map[int32]bool
	doubts  map[int32]doubt // why the condition of a line cannot be told
	causes  map[int32]int32 // the condition that a line of an unknown branch depends on
	tokens  []token         // scratch
	scratch []byte

	definitions map[int32]*definition
	made        map[int32]*define
}

// define is one #define line in the files, in force or not, commented out or
// not.
type define struct {
	name string
	at   parser.Span // the name
	// body is the value's bytes, without blanks and comments around them;
	// empty, right after the name (and parameters), where there is none.
	body parser.Span
	line parser.Span // the whole logical line with its line end

	// commentedOut is true for `//#define X 3`. Without the bytes of
	// uncomment the line is a define; uncomment is zero where no single cut
	// does it, as inside a block comment.
	commentedOut bool
	uncomment    parser.Span

	function  bool        // takes parameters
	active    parser.Tri  // in force at the end
	reached   parser.Tri  // its line stands in a branch that is read
	condition string      // where reached is Maybe: the condition, quoted, with file and line
	ended     parser.Span // the #undef that ended it, where one did

	raw    string // the text of body
	joined bool
}

// value is the body as the preprocessor sees it: line splices taken out, each
// comment one blank.
func (d *define) value() string {
	if d.joined {
		return unspliced(d.raw)
	}
	return strings.Clone(d.raw)
}

// macro is the state of a macro after the last line.
type macro struct {
	state  parser.Tri // defined: Yes, No, or Maybe
	winner *define    // the define in force; nil unless state is Yes
	// same holds the defines of which one is in force instead of winner,
	// with the same value, depending on an unknown condition. A change must
	// be made to them too.
	same []*define
	// others are the defines that were read, and lost to a later define or #undef;
	// with Maybe, all that may be in force.
	others []*define
	undef  parser.Span // the #undef that ended it, where state is No for that reason
	// removed: the firmware itself takes it out, since what it belongs to is not there.
	removed bool
	why     string // Maybe: what could not be told, the condition quoted with file:line
}

// load reads the files of a request and everything that they include, and
// runs all directives. A name for which option is true is an option of the
// style: where nothing defines it, it is not defined.
func load(t *parser.Tree, r parser.Request, option func(name string) bool) (*source, error) {
	s := &source{tree: t, isOption: option, units: make(map[string]*header), basis: genUnknown.basis()}
	s.doubts, s.causes = make(map[int32]doubt), make(map[int32]int32)
	s.absent = r.Absent
	if err := s.openFirmware(r.Outside); err != nil {
		return nil, err
	}
	var units []*header
	for _, name := range r.Files {
		u, err := s.open(name)
		if err != nil {
			return nil, err
		}
		units = append(units, u)
	}
	s.gen = s.likely()
	for range maxRounds {
		if err := s.run(units); err != nil {
			return nil, err
		}
		// Which names the files mention, and so for which generation they are,
		// is known only when all includes were found.
		gen := generationOf(s)
		if b := basisOf(s, gen); gen != s.gen || b != s.basis {
			s.gen, s.basis = gen, b
		} else if !s.again {
			break
		}
	}
	return s, s.contradicted(r.Outside)
}

// likely is the generation that the files look like before they are run: it
// mostly saves a round.
func (s *source) likely() generation {
	for _, name := range versionOptions {
		if id := s.table.find(name); id >= 0 && s.table.all[id].last >= 0 {
			if g := versionGeneration(s.body(s.table.all[id].last)); g != genUnknown {
				return g
			}
		}
	}
	for _, mark := range &generationMarks {
		for _, name := range mark.names {
			if id := s.table.find(name); id >= 0 && s.table.all[id].last >= 0 {
				return mark.gen
			}
		}
	}
	return genUnknown
}

// grow makes room for the lines and names of a file. There are about as many
// directives as number signs, and half as many names: counting them is cheaper
// than growing step by step.
func (s *source) grow(data []byte) {
	signs := bytes.Count(data, []byte{'#'})
	s.lines = slices.Grow(s.lines, signs)
	if s.table.slots == nil {
		s.table.seed = maphash.MakeSeed()
		s.table.room(signs/2 + len(styleTests))
		s.internTests()
		return
	}
	s.table.room(signs / 2)
}

// unitOf returns the file of a line.
func (s *source) unitOf(line int32) *header {
	n := sort.Search(len(s.order), func(i int) bool { return s.order[i].to > line })
	if n == len(s.order) {
		n-- // the file that is being scanned
	}
	return s.order[n]
}

// at returns the define of a line, always the same pointer.
func (s *source) at(line int32) *define {
	if d := s.made[line]; d != nil {
		return d
	}
	if s.made == nil {
		s.made = make(map[int32]*define)
	}
	u, l := s.unitOf(line), &s.lines[line]
	d := &define{
		name:         s.table.all[l.name].text,
		at:           u.span(l.nameAt, l.nameEnd),
		body:         u.span(l.rest, l.restEnd),
		line:         u.span(l.start, l.end),
		commentedOut: l.comment,
		function:     l.function,
		reached:      l.reached,
		raw:          u.text[l.rest:l.restEnd],
		joined:       l.joined,
	}
	if l.comment && !l.block {
		comment := logical(u.text, int(l.slashes))
		end := comment.after(slashes(comment.text))
		// One blank belongs to the slashes; more are an indentation.
		if u.text[end] == ' ' && u.text[end+1] == '#' {
			end++
		}
		d.uncomment = u.span(l.slashes, end)
	}
	if l.reached == parser.Maybe {
		d.condition = s.reason(s.causes[line])
	}
	if l.ended >= 0 {
		d.ended = u.span(0, 0)
		e := &s.lines[l.ended]
		d.ended = s.unitOf(l.ended).span(e.start, e.end)
	}
	s.each(s.table.all[l.name].state, func(one state) {
		if one == line {
			d.active = parser.Yes
		}
	})
	if d.active == parser.Yes && s.table.all[l.name].state < none {
		d.active = parser.Maybe
	}
	s.made[line] = d
	return d
}

// all returns every define line, in reading order.
func (s *source) all() []*define {
	read := make([]*header, len(s.files))
	for _, u := range s.order {
		if u.place > 0 {
			read[u.place-1] = u
		}
	}
	var list []*define
	for _, u := range read {
		for i := u.from; i < u.to; i++ {
			if s.lines[i].kind == kindDefine {
				list = append(list, s.at(i))
			}
		}
	}
	return list
}

// defining returns the define lines of a name, in reading order. Those of a
// file that is included stand behind those of the whole including file.
func (s *source) defining(id int32) []int32 {
	var list []int32
	for i := s.table.all[id].first; i >= 0; i = s.lines[i].next {
		if s.unitOf(i).place > 0 {
			list = append(list, i)
		}
	}
	slices.SortStableFunc(list, func(a, b int32) int { return s.unitOf(a).place - s.unitOf(b).place })
	return list
}

// mentions returns every define line of a name, in reading order.
func (s *source) mentions(name string) []*define {
	id := s.table.find(name)
	if id < 0 {
		return nil
	}
	var list []*define
	for _, i := range s.defining(id) {
		list = append(list, s.at(i))
	}
	return list
}

// macro returns the final state of a name.
func (s *source) macro(name string) macro {
	id := s.table.intern(name)
	m := macro{state: s.defined(id)}
	st := s.table.all[id].state
	line, sure := s.define(id)
	if m.state == parser.Yes && !sure || m.state == parser.Maybe {
		m.state = parser.Maybe
		if d := s.since(doubt{name: id}); d.cause >= 0 {
			m.why = "it depends on " + s.reason(d.cause)
		} else {
			m.why = s.explain(d)
		}
		s.each(st, func(one state) {
			if one >= 0 && s.lines[one].kind == kindDefine {
				m.others = append(m.others, s.at(one))
			}
		})
		return m
	}
	if line >= 0 {
		m.winner = s.at(line)
		s.each(st, func(one state) {
			if one != line {
				m.same = append(m.same, s.at(one))
			}
		})
	} else if st >= 0 {
		u := s.unitOf(st)
		if m.removed = u.firmware; !m.removed {
			m.undef = u.span(s.lines[st].start, s.lines[st].end)
		}
	}
	for _, i := range s.defining(id) {
		if l := &s.lines[i]; !l.comment && l.reached == parser.Yes && i != line {
			m.others = append(m.others, s.at(i))
		}
	}
	return m
}

// names yields every name that some define line mentions.
func (s *source) names(yield func(name string) bool) {
	for i := range s.table.all {
		if s.table.all[i].first >= 0 && !yield(s.table.all[i].text) {
			return
		}
	}
}

// number expands a value and computes it: Yes and the figure; No where it is
// no arithmetic expression of constants; Maybe where it depends on something
// unknown. Integers divide as integers do in C.
func (s *source) number(text string) (float64, parser.Tri) {
	e := s.expander(tokenise(text, nil))
	v, _ := e.compute(allNumbers)
	e.close()
	switch v.kind {
	case knownValue:
		return v.number(), parser.Yes
	case unknownValue:
		return 0, parser.Maybe
	}
	return 0, parser.No
}

// means gives what a value with names in it comes to: its figure, else its text
// with all macros expanded. "" where it has no name, or where that would take
// more than a printer may take.
func (s *source) means(text string) string {
	tokens := tokenise(text, nil)
	if s.steps > maxSteps || !slices.ContainsFunc(tokens, func(t token) bool { return t.kind == tokenWord }) {
		return ""
	}
	if x, known := s.number(text); known == parser.Yes {
		return strconv.FormatFloat(x, 'g', -1, 64)
	}
	var out strings.Builder
	e := s.expander(tokens)
	for t := e.next(); t.kind != tokenEnd; t = e.next() {
		out.WriteString(t.text + " ")
	}
	e.close()
	return strings.TrimSpace(out.String())
}

// unsettled says why a value cannot be told: the limit that it goes over, with
// over, or the name that these files do not settle. "" where nothing says so.
func (s *source) unsettled(text string) (why string, over bool) {
	e := s.expander(tokenise(text, nil))
	v, d := e.compute(allNumbers)
	e.close()
	if v.kind != unknownValue {
		return "", false
	}
	return s.explain(s.since(d)), d.over
}

// enabled says what the style's ENABLED(name) is after the last line.
func (s *source) enabled(name string) parser.Tri {
	e := s.expander(nil)
	defer e.close()
	on, _ := e.on([]token{{kind: tokenWord, text: name}})
	if e.broken != "" {
		return parser.Maybe
	}
	return on
}

// quote gives a condition as a person can find it.
func (s *source) quote(line int32) string {
	u, l := s.unitOf(line), &s.lines[line]
	text := l.kind.String()
	if l.rest < l.restEnd {
		text += " " + s.body(line)
	} else if l.name >= 0 {
		text += " " + s.table.all[l.name].text
	}
	n, _ := u.file.Position(int(l.start))
	return fmt.Sprintf("%q (%s:%d)", u.file.Cite(parser.Quote(text)), u.file.Name, n)
}

// reason quotes a condition and says why it cannot be told.
func (s *source) reason(line int32) string {
	if d, ok := s.doubts[line]; ok {
		return s.quote(line) + ": " + s.explain(d)
	}
	return s.quote(line)
}

// explain says what could not be told.
func (s *source) explain(d doubt) string {
	switch {
	case d.name < 0:
		return d.text
	case d.cause >= 0 && s.unitOf(d.cause).firmware:
		from := s.doubts[d.cause]
		for range maxAlternatives {
			if from.cause >= 0 && s.unitOf(from.cause).firmware {
				from = s.doubts[from.cause]
			}
		}
		return s.table.all[d.name].text + " is derived by the firmware: " + s.explain(from)
	case d.cause >= 0:
		return s.table.all[d.name].text + " depends on " + s.quote(d.cause)
	case s.table.all[d.name].text == isNewer:
		return "that differs from one firmware to the other, and these files do not say which they are for"
	case d.text != "":
		return s.table.all[d.name].text + d.text
	}
	return s.table.all[d.name].text + " is set outside these files"
}
