package sections

import (
	"strings"

	"preflash/parser"
)

// config is one configuration that was read.
type config struct {
	style    style
	tool     int
	files    []*parser.File // in reading order, each once
	main     *parser.File
	sections []*section // in order of first appearance
	byName   map[string]*section
	spare    []section
	options  []option // in reading order, the saved ones last
	saved    savedBlock
	remarks  []parser.Remark
	own      map[string][]*section // sensor definitions by name
	firstUse int                   // place of the first section that reads a sensor
	lacking  []string              // included files that are not here, as the sheet says
	printer  *parser.Printer
}

// section is all that stands under one name, wherever it stands.
type section struct {
	name    string
	kind    string    // the first word of the name
	own     string    // what follows it
	place   int       // among the sections, in order of first appearance
	headers []heading // written by hand, in reading order
	options []int     // indices into config.options, in reading order

	index map[string][]int // options by folded key; made when it is needed

	// Room for what most sections need, so that they take one allocation.
	oneHeader  [1]heading
	fewOptions [6]int
}

// heading is one [section] line.
type heading struct {
	file *parser.File
	line int // offset of its line
	name int // offset of the name in the brackets
	end  int // offset behind its line, line ending included
}

// option is one option line with the lines that continue it. Its offsets
// point into the file; nothing is decoded before it is asked for.
type option struct {
	section         *section
	file            *parser.File
	line            int // offset of its line
	key, keyEnd     int
	sep             int // offset behind the separator
	value, valueEnd int // from the first byte that counts to the last, comments between included
	end             int // offset behind the last line that counts, line ending included
	heading         int // index of the heading it stands under, in section.headers
	saved           bool
	hidden          bool // saved, and a hand-written one hides it
	asked           bool // the printer has a setting for it
}

func (c *config) keyOf(o *option) []byte { return o.file.Data[o.key:o.keyEnd] }

func (o *option) keySpan() parser.Span {
	return parser.Span{File: o.file, Start: o.key, End: o.keyEnd}
}

func (o *option) valueSpan() parser.Span {
	return parser.Span{File: o.file, Start: o.value, End: o.valueEnd}
}

// nowhere is where a finding points that has no place of its own.
func (c *config) nowhere() parser.Span { return parser.Span{File: c.main} }

// place is where an option is written.
func (c *config) place(o *option) parser.Place {
	return parser.Place{At: o.valueSpan(), Written: c.text(o), Saved: o.saved}
}

// text decodes the value of an option: what the firmware sees, its lines
// joined by line feeds.
func (c *config) text(o *option) string {
	data := o.file.Data
	if stop, _ := lineAt(data[:o.valueEnd], o.sep); stop == o.valueEnd {
		return string(data[o.value:o.valueEnd])
	}
	var pieces []string
	o.pieces(func(_ int, piece []byte) { pieces = append(pieces, string(piece)) })
	return strings.Join(pieces, "\n")
}

// pieces calls yield for each line of an option's value that is no comment,
// with the piece of the value on it and its offset. Lines that are empty
// count: they are part of the value as long as something follows.
func (o *option) pieces(yield func(at int, piece []byte)) {
	data := o.file.Data[:o.end]
	for at, next := o.line, 0; at < o.end; at = next {
		var stop int
		stop, next = lineAt(data, at)
		from := at
		if o.saved {
			from = min(at+savedPrefix, stop)
		}
		b := clean(data[from:stop])
		switch {
		case at == o.line:
			piece := data[o.sep : from+b.from+len(b.text)]
			n, _ := leading(piece)
			yield(o.sep+n, piece[n:])
		case len(b.text) > 0 || !b.comment:
			yield(from+b.from, b.text)
		}
	}
}

// sectionOf returns the section of that name, made where it is new.
func (c *config) sectionOf(name []byte) *section {
	if s := c.byName[string(name)]; s != nil {
		return s
	}
	if len(c.spare) == 0 {
		c.spare = make([]section, 32) // one allocation for many
	}
	s := &c.spare[0]
	c.spare = c.spare[1:]
	s.name, s.place = string(name), len(c.sections)
	s.kind = s.name
	if n := strings.IndexByte(s.name, ' '); n >= 0 {
		s.kind, s.own = s.name[:n], s.name[n+1:]
	}
	if n := strings.IndexByte(s.kind, '\t'); n >= 0 {
		s.kind, s.own = s.name[:n], s.name[n+1:]
	}
	s.headers, s.options = s.oneHeader[:0], s.fewOptions[:0]
	c.byName[s.name] = s
	c.sections = append(c.sections, s)
	return s
}

// defaultSection is the section whose options count in every other one.
const defaultSection = "DEFAULT"

// find returns the option that is in force for a key, which is folded, and the
// others that set it and lose. An option of the default section counts where
// the section exists and has none of its own.
func (c *config) find(name, key string) (winner *option, hides []*option) {
	s := c.byName[name]
	if s == nil {
		return nil, nil
	}
	winner, hides = c.findIn(s, key)
	if d := c.byName[defaultSection]; winner == nil && d != nil {
		return c.findIn(d, key)
	}
	return winner, hides
}

// boundDefault refuses a default section that makes too many options.
func (c *config) boundDefault() error {
	d := c.byName[defaultSection]
	if d == nil || len(d.options)*len(c.sections) <= mostLines {
		return nil
	}
	o := &c.options[d.options[0]]
	return parser.Errorf(parser.Span{File: o.file, Start: o.key},
		"[%s] stands in every section, which makes more than %d options; no printer needs so many",
		defaultSection, mostLines)
}

// remarkDefault says that an option of the default section, which stands in
// every other one, is unknown to some of them: the firmware refuses it.
func (c *config) remarkDefault() {
	d := c.byName[defaultSection]
	if d == nil || len(d.options) == 0 {
		return
	}
	o := &c.options[d.options[0]]
	c.remark(parser.RemarkBroken, o.keySpan(),
		"what stands in [%s] stands in every section; "+
			"those that do not know %s make the firmware refuse to start: "+
			"write it in the sections that it is meant for", defaultSection, fold(c.keyOf(o)))
}

func (c *config) findIn(s *section, key string) (winner *option, hides []*option) {
	list, sure := c.spelled(s, key)
	for _, i := range list {
		o := &c.options[i]
		if !sure && !isKey(c.keyOf(o), key) {
			continue
		}
		o.asked = true
		switch {
		case o.hidden:
			hides = append(hides, o)
			continue
		case winner != nil:
			hides = append(hides, winner)
		}
		winner = o
	}
	return winner, hides
}

// manyOptions is where an index of a section's keys pays.
const manyOptions = 64

// spelled lists the options of a section that may have a key, which is
// folded, in reading order; sure where all of them do.
func (c *config) spelled(s *section, key string) (list []int, sure bool) {
	if len(s.options) < manyOptions {
		return s.options, false
	}
	if s.index == nil {
		s.index = make(map[string][]int, len(s.options))
		for _, i := range s.options {
			folded := fold(c.keyOf(&c.options[i]))
			s.index[folded] = append(s.index[folded], i)
		}
	}
	return s.index[key], true
}

// value returns the text in force for a key, or "" and false.
func (c *config) value(name, key string) (string, bool) {
	if o, _ := c.find(name, key); o != nil {
		return c.text(o), true
	}
	return "", false
}

// hasByHand reports whether a hand-written option has this folded key.
func (c *config) hasByHand(s *section, key string) bool {
	list, sure := c.spelled(s, key)
	for _, i := range list {
		o := &c.options[i]
		if o.saved {
			return false // those come last
		}
		if sure || isKey(c.keyOf(o), key) {
			return true
		}
	}
	return false
}

// Entries lists every option in reading order, then what each section has from
// the default one.
func (c *config) Entries() []parser.Entry {
	type place struct {
		section *section
		key     string
	}
	winners := make(map[place]int, len(c.options))
	keys := make([]string, len(c.options))
	for i := range c.options {
		o := &c.options[i]
		keys[i] = fold(c.keyOf(o))
		if !o.hidden {
			winners[place{o.section, keys[i]}] = i
		}
	}
	all := make([]parser.Entry, len(c.options))
	for i := range c.options {
		o := &c.options[i]
		e := parser.Entry{
			Name: o.section.name + "." + keys[i], Value: c.text(o),
			At: o.valueSpan(), Elsewhere: c.elsewhere(o, keys[i]),
		}
		if o.value == o.valueEnd {
			e.At = o.keySpan()
		}
		if w, ok := winners[place{o.section, keys[i]}]; ok && w == i {
			e.Active = parser.Yes
		}
		all[i] = e
	}
	d := c.byName[defaultSection]
	if d == nil {
		return all
	}
	for _, s := range c.sections {
		for _, i := range d.options {
			_, own := winners[place{s, keys[i]}]
			if e := all[i]; s != d && !own && e.Active == parser.Yes {
				e.Name = s.name + "." + keys[i]
				all = append(all, e)
			}
		}
	}
	return all
}

func (c *config) Printer() *parser.Printer { return c.printer }
