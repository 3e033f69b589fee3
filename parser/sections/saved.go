package sections

import (
	"bytes"
	"errors"
	"fmt"
	"strings"

	"preflash/parser"
)

// The firmware saves what was tuned at the console in a block of comment
// lines at the end of the main file.
const (
	savedMark   = "#*#"
	savedPrefix = len("#*# ")
	savedWord   = " SAVE_CONFIG "
)

// savedHeader are the lines that the block begins with, as the style's firmware
// publishes them. It looks for them letter by letter, behind a line end, and
// takes every other text for no block at all.
var savedHeader = [...]string{
	"#*# <---------------------- SAVE_CONFIG ---------------------->",
	"#*# DO NOT EDIT THIS BLOCK OR BELOW. The contents are auto-generated.",
	"#*#",
}

// savedBlock is where the block stands.
type savedBlock struct {
	file  *parser.File
	start int // offset of the ruler line
	from  int // offset of the first line of its contents
	sound bool
}

// findSaved looks for the saved block of the main file, and returns where the
// hand-written part ends. A block that the firmware would ignore is remarked
// upon; its lines are comments then.
func (r *reader) findSaved(f *parser.File) (end int) {
	data := f.Data
	r.saved = savedBlock{file: f, start: len(data)}
	at := markedLine(data, 0)
	if at == 0 {
		// The firmware looks for lines behind a line end.
		stop, _ := lineAt(data, 0)
		if isRuler(data[:stop]) {
			r.damaged(0, stop, "the saved block starts in the first line of the file, "+
				"where the firmware does not find it; put an empty line above it")
			return len(data)
		}
		at = markedLine(data, stop)
	}
	if at < 0 {
		return len(data)
	}
	r.saved.start = at
	if r.saved.from = r.savedHead(at); r.saved.from < 0 {
		return len(data)
	}
	// White space around the contents does not matter.
	blank, _ := leading(data[r.saved.from:])
	tail := len(data) - trailing(data[r.saved.from:])
	r.saved.from += blank
	for from := r.saved.from; from < tail; {
		stop, next := lineAt(data[:tail], from)
		if string(data[from:stop]) == savedHeader[0] {
			r.damaged(from, stop, "delete one of the two saved blocks: the second begins here")
			return len(data)
		}
		line := data[from:stop]
		marked := bytes.HasPrefix(line, []byte(savedMark))
		if !marked || len(line) >= savedPrefix && line[savedPrefix-1] != ' ' {
			r.damaged(from, stop, fmt.Sprintf("move this line above the saved block, or delete it: "+
				"the block ends the file, and its lines are %q or start with %q", savedMark, savedMark+" "))
			return len(data)
		}
		from = next
	}
	r.saved.sound = true
	return at
}

// savedHead holds the lines from the first marked one on against the header of
// a saved block, and returns where its contents begin; −1 where it is another.
func (r *reader) savedHead(at int) (from int) {
	data := r.saved.file.Data
	ruler, _ := lineAt(data, at)
	for i, want := range savedHeader {
		stop, next := lineAt(data, at)
		switch {
		case string(data[at:stop]) == want && next > stop:
		case i == 0 && !isRuler(data[at:stop]):
			r.damaged(at, stop, "put the saved block's ruler back above this line of the block")
			return -1
		default:
			r.damaged(r.saved.start, ruler, fmt.Sprintf(
				"correct the lines that the saved block begins with: line %d of it should be exactly %q",
				i+1, want))
			return -1
		}
		at = next
	}
	return at
}

// damaged remarks that the saved block counts for nothing.
func (r *reader) damaged(from, stop int, why string) {
	r.remark(parser.RemarkSavedDamaged, parser.Span{File: r.saved.file, Start: from, End: stop},
		"%s; the firmware ignores the whole block, so none of its values is used, and it refuses to save",
		why)
}

// markedLine finds the first line that starts behind offset at, or at 0, with
// the mark of the saved block and a space; −1 where there is none.
func markedLine(data []byte, at int) int {
	// The star is rare; the # before it is not.
	for at++; at < len(data); {
		n := bytes.Index(data[at:], []byte("*# "))
		if n < 0 {
			return -1
		}
		at += n
		if data[at-1] == '#' && (at == 1 || data[at-2] == '\n' || data[at-2] == '\r') {
			return at - 1
		}
		at++
	}
	return -1
}

// isRuler reports whether a line is meant to open a saved block.
func isRuler(line []byte) bool {
	return bytes.HasPrefix(line, []byte(savedMark)) && bytes.Contains(line, []byte(savedWord))
}

// foreignSaved remarks on a saved block in an included file.
func (r *reader) foreignSaved(f *parser.File) {
	if at := markedLine(f.Data, 0); at >= 0 {
		stop, _ := lineAt(f.Data, at)
		r.remark(parser.RemarkSavedDamaged, parser.Span{File: f, Start: at, End: stop},
			"move the saved block to the main file: in an included one the firmware does not look for it, "+
				"and none of its values is used")
	}
}

// readSaved reads the saved block, after all that is written by hand.
func (r *reader) readSaved() {
	if !r.saved.sound {
		return
	}
	f := r.saved.file
	options, sections := len(r.options), len(r.sections)
	p := piece{reader: r, file: f, saved: true}
	for at := r.saved.from; at < len(f.Data); {
		stop, next := lineAt(f.Data, at)
		if err := p.line(at, min(at+savedPrefix, stop), stop, next); err != nil {
			r.forget(options, sections)
			var e *parser.Error
			errors.As(err, &e)
			r.remark(parser.RemarkSavedDamaged, parser.Span{File: f, Start: at, End: stop},
				"in the saved block, %s; the firmware does not start with it, "+
					"and none of the block's values is read here", e.Message)
			r.saved.sound = false
			return
		}
		at = next
	}
	for i := options; i < len(r.options); i++ {
		o := &r.options[i]
		o.hidden = r.hides(o.section, r.keyOf(o))
	}
}

// forget drops the options and sections that were read after a point.
func (c *config) forget(options, sections int) {
	c.options = c.options[:options]
	for _, s := range c.sections[sections:] {
		delete(c.byName, s.name)
	}
	c.sections = c.sections[:sections]
	for _, s := range c.sections {
		for len(s.options) > 0 && s.options[len(s.options)-1] >= options {
			s.options = s.options[:len(s.options)-1]
		}
	}
}

// hides reports whether a hand-written option hides a saved one. The firmware
// looks for the part of the name up to the first character that is no ASCII
// letter, digit or underscore.
func (c *config) hides(s *section, key []byte) bool {
	for i, b := range key {
		if b != '_' && (b < '0' || b > '9') && (b < 'A' || b > 'Z') && (b < 'a' || b > 'z') {
			key = key[:i]
			break
		}
	}
	name := fold(key)
	d := c.byName[defaultSection]
	return c.hasByHand(s, name) || d != nil && len(s.headers) > 0 && c.hasByHand(d, name)
}

// remarkHidden names each saved value that is hidden and that a setting is
// about, and the others in one sentence.
func (c *config) remarkHidden() {
	var others []string
	var first parser.Span
	type place struct {
		section *section
		key     string
	}
	said := map[place]bool{}
	for i := range c.options {
		o := &c.options[i]
		if !o.hidden {
			continue
		}
		key := place{o.section, fold(c.keyOf(o))}
		switch {
		case said[key]:
		case o.asked:
			name := string(c.keyOf(o))
			winner, _ := c.find(o.section.name, key.key)
			text := fmt.Sprintf("the saved %s of [%s] is not used", name, o.section.name)
			if winner != nil {
				text += fmt.Sprintf(": %s = %s at %s, written by hand, hides it",
					c.keyOf(winner), quoted(c.text(winner)), winner.valueSpan())
			}
			c.remark(parser.RemarkSavedHidden, o.valueSpan(), "%s", text)
		default:
			if len(others) == 0 {
				first = o.valueSpan()
			}
			others = append(others, o.section.name+"."+key.key)
		}
		said[key] = true
	}
	if len(others) > 0 {
		c.remark(parser.RemarkSavedHidden, first,
			"%d saved values are hidden by hand-written ones of the same name: %s",
			len(others), listed(others))
	}
}

// listed joins names, of which a long list shows the first ones.
func listed(names []string) string {
	const most = 8
	if len(names) <= most {
		return strings.Join(names, ", ")
	}
	return fmt.Sprintf("%s and %d more", strings.Join(names[:most], ", "), len(names)-most)
}

// quoted shows a value, cut where it is long.
func quoted(value string) string {
	const most = 40
	if len(value) > most {
		return fmt.Sprintf("“%s…”", strings.ToValidUTF8(value[:most], ""))
	}
	return "“" + value + "”"
}
