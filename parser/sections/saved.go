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

// savedBlock is where the block stands. Nothing is inserted from Start on.
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
	if at < 0 {
		return len(data)
	}
	r.saved.start = at
	stop, next := lineAt(data, at)
	if !isRuler(data[at:stop]) {
		r.damaged(at, stop, "this line of a saved block stands above the block's ruler, or the ruler is gone")
		return len(data)
	}
	if at == 0 {
		r.damaged(at, stop, "the saved block starts in the first line of the file, where the firmware does not find it")
		return len(data)
	}
	head := next
	if stop, next := lineAt(data, head); bytes.HasPrefix(data[head:stop], []byte(savedMark+" DO NOT EDIT")) {
		head = next
		if stop, next := lineAt(data, head); string(data[head:stop]) == savedMark {
			head = next
		} else {
			head = -1
		}
	} else {
		head = -1
	}
	if head < 0 {
		r.remark(parser.RemarkGap, parser.Span{File: f, Start: at, End: stop},
			"the two lines that the firmware writes below this ruler are missing; firmware that looks for them ignores the saved block whole")
		head = next
	}
	r.saved.from = head
	tail := len(data) - trailing(data[head:])
	for from := head; from < tail; {
		stop, next := lineAt(data[:tail], from)
		if line := data[from:stop]; !bytes.HasPrefix(line, []byte(savedMark)) || len(line) >= savedPrefix && line[savedPrefix-1] != ' ' {
			if from == head { // white space before the first line does not matter
				if n, _ := leading(line); n > 0 && bytes.HasPrefix(line[n:], []byte(savedMark)) {
					from += n
					continue
				}
			}
			r.damaged(from, stop, fmt.Sprintf("this line does not belong in the saved block, which ends the file and whose lines start with %q", savedMark+" "))
			return len(data)
		}
		from = next
	}
	r.saved.sound = true
	return at
}

// damaged remarks that the saved block counts for nothing.
func (r *reader) damaged(from, stop int, why string) {
	r.remark(parser.RemarkSavedDamaged, parser.Span{File: r.saved.file, Start: from, End: stop},
		"%s; the firmware ignores the whole block, so none of its values is in force", why)
}

// markedLine finds the first line from offset at that starts with the mark of
// the saved block and a space; −1 where there is none.
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

// isRuler reports whether a line opens the saved block.
func isRuler(line []byte) bool {
	before, after, found := strings.Cut(string(line), savedWord)
	return found && strings.Trim(strings.TrimPrefix(before, savedMark+" <"), "-") == "" &&
		strings.TrimLeft(after, "-") == ">"
}

// foreignSaved remarks on a saved block in an included file.
func (r *reader) foreignSaved(f *parser.File) {
	if at := markedLine(f.Data, 0); at >= 0 {
		stop, _ := lineAt(f.Data, at)
		r.remark(parser.RemarkSavedDamaged, parser.Span{File: f, Start: at, End: stop},
			"a saved block stands in an included file, where the firmware does not look for it; none of its values is in force")
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
				"in the saved block, %s; the firmware does not start with it, and none of the block's values is read here", e.Message)
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
			text := fmt.Sprintf("the saved %s of [%s] is not in force", name, o.section.name)
			if winner != nil {
				text += fmt.Sprintf(": %s = %s at %s, written by hand, hides it", c.keyOf(winner), quoted(c.text(winner)), winner.valueSpan())
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
		c.remark(parser.RemarkSavedHidden, first, "%d saved values are hidden by hand-written ones of the same name: %s", len(others), listed(others))
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
