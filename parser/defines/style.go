package defines

import (
	"bytes"

	"preflash/parser"
)

const styleName = "defines"

// style writes configurations as C header files.
type style struct{}

// Style is the style of this package.
var Style parser.Style = style{}

// Name is what a sheet calls the style.
func (style) Name() string { return styleName }

// recognisedDefines is how many #define lines, commented-out ones included,
// make a file look like this style.
const recognisedDefines = 3

// Recognises reports whether a file looks like this style: its first line that
// is neither a comment nor a directive does not begin with a bracket, as none
// does in C, and it has enough #define lines. Those are looked at whole, since
// in another style # begins a comment, which may speak of a #define.
func (style) Recognises(f *parser.File) bool {
	if firstText(f.Data) == '[' {
		return false
	}
	found := 0
	for rest := f.Data; found < recognisedDefines; {
		at := bytes.Index(rest, []byte("#define"))
		if at < 0 {
			return false
		}
		start := 1 + bytes.LastIndexByte(rest[:at], '\n')
		if lead := bytes.TrimLeft(rest[start:at], " \t/\ufeff"); len(lead) == 0 {
			found++
		}
		rest = rest[at+len("#define"):]
	}
	return true
}

// firstText is the first character outside comments and directives; 0 where
// there is none.
func firstText(data []byte) byte {
	for rest := bytes.TrimPrefix(data, []byte("\ufeff")); ; {
		rest = bytes.TrimLeft(rest, " \t\r\n")
		switch {
		case len(rest) == 0:
			return 0
		case bytes.HasPrefix(rest, []byte("/*")):
			_, rest, _ = bytes.Cut(rest, []byte("*/"))
			continue
		case rest[0] != '#' && !bytes.HasPrefix(rest, []byte("//")):
			return rest[0]
		}
		for spliced := true; spliced; {
			var line []byte
			line, rest, _ = bytes.Cut(rest, []byte("\n"))
			spliced = bytes.HasSuffix(bytes.TrimSuffix(line, []byte("\r")), []byte("\\"))
		}
	}
}

// Joins: a build reads several headers, one after the other.
func (style) Joins() bool { return true }

// Read reads one printer.
func (style) Read(t *parser.Tree, request parser.Request) (parser.Config, error) {
	c, err := readConfig(t, request)
	if err != nil {
		return nil, err
	}
	return c, nil
}

func readConfig(t *parser.Tree, request parser.Request) (*config, error) {
	s, err := load(t, request, option)
	if err != nil {
		return nil, err
	}
	r := &reader{s: s, gen: s.gen, basis: s.basis, checks: published(s), slots: make([]slot, 0, 64)}
	p := r.printer(request.Tool)
	p.Causes = r.causes(p.Settings())
	p.Remarks = append(p.Remarks, judgedByBoth(s)...)
	p.Remarks = append(p.Remarks, outOfOrder(s)...)
	p.Remarks = append(p.Remarks, unrecognised(s)...)
	p.Remarks = append(p.Remarks, overrides(t, s)...)
	return &config{tree: t, request: request, s: s, gen: r.gen, basis: r.basis, hotend: r.hotend, tools: r.tools, slots: r.slots, printer: p,
		looks: r.basis.may(newer) && r.on(storedMaxTemp) == parser.No}, nil
}

// config is one configuration that was read.
type config struct {
	tree    *parser.Tree
	request parser.Request
	s       *source
	gen     generation
	basis   basis
	hotend  int
	tools   int
	slots   []slot
	printer *parser.Printer
	looks   bool // its build may hold the max temp against the table of the sensor
}

// Printer returns what the configuration says.
func (c *config) Printer() *parser.Printer { return c.printer }

// Entries lists every macro once, in the order in which the names first occur:
// with the value in force, or the last one mentioned where none is.
func (c *config) Entries() []parser.Entry {
	var list []parser.Entry
	for name := range c.s.names {
		m := c.s.macro(name)
		d := m.winner
		if d == nil {
			mentions := c.s.mentions(name)
			if len(mentions) == 0 {
				continue
			}
			d = mentions[len(mentions)-1]
			if len(m.others) > 0 {
				d = m.others[len(m.others)-1]
			}
		}
		p := placeOf(d)
		list = append(list, parser.Entry{Name: name, Value: p.Value, At: p.At, Active: m.state, Elsewhere: elsewhere(name, c.hotend)})
	}
	return list
}
