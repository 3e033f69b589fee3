package sections

import (
	"bytes"
	"slices"
	"strings"

	"preflash/parser"
)

// anchor is a place where a line can be inserted, and how lines are written
// there.
type anchor struct {
	file   *parser.File
	at     int
	broken bool   // the text before at lacks its line ending
	eol    string // line ending of the file
	indent string
	sep    string // what stands between key and value
	column int    // where values are aligned, counted from the key; 0: they are not
	rank   int    // of a section that is added
}

// order is how a person writes the options of a section; an insertion goes
// beside the nearest relative in it.
var order = [...]string{
	"step_pin", "nozzle_diameter", "filament_diameter", "pressure_advance",
	"heater_pin", "sensor_type", "sensor_pin", "pullup_resistor", "inline_resistor",
	"control", "pid_kp", "pid_ki", "pid_kd", "max_delta", "heater_power",
	"smooth_time", "max_power", "min_temp", "max_temp", "min_extrude_temp",
	"max_error", "check_gain_time", "hysteresis", "heating_gain",
	"pin", "heater", "heater_temp", "fan_speed", "retract_length", "unretract_extra_length",
}

// insert adds an option, in its section where there is one by hand, else in a
// new section beside the heater that it is about.
func (e *editor) insert(key parser.Key, section, option, text string) error {
	line := added{section, option}
	if was, twice := e.added[line]; twice {
		if was == text {
			return nil
		}
		return &parser.Error{File: e.main.Name,
			Message: "the " + string(key) + " is to be " + was + " and " + text + " at the same time"}
	}
	if e.added == nil {
		e.added, e.opened = map[added]string{}, map[string]anchor{}
	}
	e.added[line] = text
	if s := e.byName[section]; s != nil && len(s.headers) > 0 {
		a := e.beside(s, option)
		e.put(key, a, a.line(option, text), rankOption)
		return nil
	}
	a, open := e.opened[section]
	if !open {
		var err error
		if a, err = e.behind(key, section); err != nil {
			return err
		}
		a.rank = e.nextSection()
		e.opened[section] = a
		e.put(key, a, a.eol+a.indent+"["+section+"]"+a.eol+a.line(option, text), a.rank)
		return nil
	}
	e.put(key, a, a.line(option, text), a.rank)
	return nil
}

// nextSection is the rank of one more section, so that what goes into one stays
// together where several are added at one place.
func (e *editor) nextSection() int {
	e.inserted++
	return rankSection + e.inserted - 1
}

// put adds an insertion of whole lines.
func (e *editor) put(key parser.Key, a anchor, lines string, rank int) {
	if a.broken {
		lines = a.eol + strings.TrimSuffix(lines, a.eol)
	}
	at := parser.Span{File: a.file, Start: a.at, End: a.at}
	e.edits = append(e.edits, ranked{parser.Edit{At: at, New: lines, For: key}, rank})
}

// line spells an option as its neighbours are spelled.
func (a *anchor) line(option, value string) string {
	pad := max(0, a.column-len(option)-len(a.sep))
	return a.indent + option + a.sep + strings.Repeat(" ", pad) + value + a.eol
}

// beside is where an option of a section that is there goes: behind its
// nearest relative.
func (c *config) beside(s *section, option string) anchor {
	relative := c.relative(s, option)
	if relative == nil {
		return c.below(s, len(s.headers)-1)
	}
	data := relative.file.Data
	a := c.anchorAt(relative.file, relative.end)
	a.indent = string(data[relative.line:relative.key])
	a.spell(relative)
	return a
}

// spell takes over how a neighbour separates key and value.
func (a *anchor) spell(o *option) {
	data := o.file.Data
	before := string(data[o.keyEnd:o.sep]) // the separator and the white space before it
	after := string(data[o.sep:o.value])
	switch {
	case o.value == o.valueEnd || strings.ContainsAny(after, "\r\n"):
		after = " "
	case len(after) > 1 && len(before) == 1 && !strings.Contains(after, "\t"):
		a.column = o.value - o.key // several spaces line values up
		after = " "
	}
	a.sep = before + after
}

// relative is the hand-written option of a section that is nearest to another
// in the usual order; of those that are not in it, the last.
func (c *config) relative(s *section, option string) (nearest *option) {
	want := slices.Index(order[:], option)
	distance := 2 * len(order)
	for _, i := range s.options {
		o := &c.options[i]
		if o.saved {
			continue
		}
		d := 2 * len(order)
		if at := slices.Index(order[:], fold(c.keyOf(o))); at >= 0 && want >= 0 {
			d = want - at
			if d < 0 {
				d = -d + len(order) // rather behind than before
			}
		}
		if d <= distance {
			nearest, distance = o, d
		}
	}
	return nearest
}

// below is where the first option under a heading goes.
func (c *config) below(s *section, heading int) anchor {
	h := s.headers[heading]
	a := c.anchorAt(h.file, h.end)
	a.sep = ": "
	a.indent = indentAt(h.file.Data, h.line)
	// A following line that is indented deeper would continue the new option.
	if next := indentOfNext(h.file.Data, h.end); len(next) > len(a.indent) {
		a.indent = next
	}
	return a
}

// behind is where a new section goes that is about a heater: behind the last
// block of the heater's section, or at the end of what is written by hand.
func (e *editor) behind(key parser.Key, section string) (anchor, error) {
	owner := strings.TrimPrefix(section, "verify_heater ")
	s := e.byName[owner]
	if s == nil || len(s.headers) == 0 {
		return anchor{}, &parser.Error{File: e.main.Name, Message: "the " + string(key) +
			" cannot be changed: there is no [" + owner + "] to put [" + section + "] beside"}
	}
	last := len(s.headers) - 1
	a := e.below(s, last)
	a.indent = indentAt(s.headers[last].file.Data, s.headers[last].line)
	for _, i := range s.options {
		if o := &e.options[i]; !o.saved && o.heading == last {
			a = e.anchorAt(o.file, o.end)
			a.indent = indentAt(s.headers[last].file.Data, s.headers[last].line)
			a.spell(o)
			a.column = 0
		}
	}
	return a, nil
}

// before is where a new section goes that a heater's section names: before its
// first heading, and before the comment lines that belong to it.
func (c *config) before(s *section) anchor {
	h := s.headers[0]
	data := h.file.Data
	at := h.line
	for at > 0 {
		start := bytes.LastIndexByte(data[:at-1], '\n') + 1
		if line := data[start:at]; line[0] != '#' && line[0] != ';' {
			break
		}
		at = start
	}
	a := c.anchorAt(h.file, at)
	a.broken = false
	a.sep = ": "
	a.indent = indentAt(data, h.line)
	for _, i := range s.options {
		if o := &c.options[i]; !o.saved {
			a.spell(o)
			a.column = 0
			break
		}
	}
	return a
}

// anchorAt is a place between two lines of a file.
func (c *config) anchorAt(f *parser.File, at int) anchor {
	a := anchor{file: f, at: at, eol: "\n"}
	if n := bytes.IndexByte(f.Data, '\n'); n > 0 && f.Data[n-1] == '\r' {
		a.eol = "\r\n"
	}
	a.broken = at > 0 && f.Data[at-1] != '\n' && f.Data[at-1] != '\r'
	return a
}

// indentAt is the white space that the line at an offset starts with.
func indentAt(data []byte, at int) string {
	stop, _ := lineAt(data, at)
	n, _ := leading(data[at:stop])
	return string(data[at : at+n])
}

// indentOfNext is the white space before the next line that counts.
func indentOfNext(data []byte, at int) string {
	for at < len(data) {
		stop, next := lineAt(data, at)
		if b := clean(data[at:stop]); len(b.text) > 0 {
			return string(data[at : at+b.from])
		}
		at = next
	}
	return ""
}
