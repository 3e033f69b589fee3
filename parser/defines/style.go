package defines

import (
	"bytes"
	"strings"

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
	return !mayOpenBracket(f.Data) || firstText(textOf(f.Data)) != '['
}

// mayOpenBracket reports whether a bracket stands where some line or comment
// ends before it. It is a quick look, since in headers none does.
func mayOpenBracket(data []byte) bool {
	for at := 0; ; at++ {
		n := bytes.IndexByte(data[at:], '[')
		if n < 0 {
			return false
		}
		at += n
		lead := bytes.TrimRight(data[1+bytes.LastIndexByte(data[:at], '\n'):at], " \t\v\f\r\ufeff")
		if len(lead) == 0 || bytes.HasSuffix(lead, []byte("/")) {
			return true
		}
	}
}

// firstText is the first character outside comments and directives; 0 where
// there is none.
func firstText(text string) byte {
	text = strings.TrimPrefix(text, "\ufeff")
	for v := logical(text, 0); ; {
		v.skip(skipBlanks(v.text, 0))
		switch {
		case strings.HasPrefix(v.text, "/*"):
			if !v.skipComment(text, 0) {
				return 0
			}
		case v.text != "" && v.text[0] != '#' && !strings.HasPrefix(v.text, "//"):
			return v.text[0]
		case v.end == len(text):
			return 0
		default:
			v.join(text, v.end)
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
	return &config{
		tree: t, request: request, s: s, gen: r.gen, basis: r.basis, hotend: r.hotend,
		hotends: r.hotends, tools: r.tools, slots: r.slots, printer: p,
		looks: r.basis.may(newer) && r.on(storedMaxTemp) == parser.No,
	}, nil
}

// config is one configuration that was read.
type config struct {
	tree    *parser.Tree
	request parser.Request
	s       *source
	gen     generation
	basis   basis
	hotend  int
	hotends int
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
	defer func(steps int) { c.s.steps = steps }(c.s.steps) // so that every call tells the same
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
		list = append(list, parser.Entry{
			Name: name, Value: p.Written, Means: c.s.means(p.Written),
			At: p.At, Active: m.state, Elsewhere: elsewhere(name, c.hotend),
		})
	}
	return list
}
