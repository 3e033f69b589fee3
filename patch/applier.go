package patch

import (
	"bytes"
	"fmt"
	"strconv"
	"strings"

	"preflash/parser"
)

// Patch applies a diff, as Unified prints it, to the old texts by file name. It
// returns the new text of the files that the diff names. It is strict: every
// line must match where the hunk says, and nothing may stand between. Errors
// are *parser.Error, with the line of the diff.
func Patch(old map[string][]byte, diff []byte) (map[string][]byte, error) {
	p := &applier{rest: diff}
	if err := p.skipLead(); err != nil {
		return nil, err
	}
	texts := map[string][]byte{}
	for len(p.rest) > 0 {
		name, err := p.header()
		if err != nil {
			return nil, err
		}
		text, ok := old[name]
		if !ok {
			return nil, p.fail("changes %s, which was not read", name)
		}
		if _, twice := texts[name]; twice {
			return nil, p.fail("changes %s twice", name)
		}
		if texts[name], err = p.hunks(text); err != nil {
			return nil, err
		}
	}
	return texts, nil
}

// applier reads a diff line by line.
type applier struct {
	rest []byte
	line int // number of the line that was read last
}

func (p *applier) fail(format string, args ...any) error {
	return &parser.Error{File: "diff", Line: p.line, Message: fmt.Sprintf(format, args...)}
}

// next reads one line with its ending.
func (p *applier) next() []byte {
	n := forward(p.rest, 0, 1)
	line := p.rest[:n]
	p.rest = p.rest[n:]
	p.line++
	return line
}

func (p *applier) skipLead() error {
	for len(p.rest) > 0 && !bytes.HasPrefix(p.rest, []byte("--- ")) {
		if line := p.next(); line[0] != '#' {
			return p.fail("has a line above its first file that does not start with #")
		}
	}
	return nil
}

// header reads the two lines that name a file.
func (p *applier) header() (string, error) {
	var names [2]string
	for i, prefix := range [2][2]string{{"--- ", "a/"}, {"+++ ", "b/"}} {
		line := strings.TrimSuffix(string(p.next()), "\n")
		quoted, marked := strings.CutPrefix(line, prefix[0])
		name, ok := unquoteName(quoted)
		inner, prefixed := strings.CutPrefix(name, prefix[1])
		if !marked || !ok || !prefixed {
			return "", p.fail("has no file name where %s%s… should be", prefix[0], prefix[1])
		}
		names[i] = inner
	}
	if names[0] != names[1] {
		return "", p.fail("names two files, %q and %q", names[0], names[1])
	}
	if !bytes.HasPrefix(p.rest, []byte("@@ ")) {
		return "", p.fail("has no hunk for %s", names[0])
	}
	return names[0], nil
}

// hunks applies all hunks that follow.
func (p *applier) hunks(old []byte) ([]byte, error) {
	var text []byte
	at, line := 0, 1 // in the old text
	gained := 0
	for bytes.HasPrefix(p.rest, []byte("@@ ")) {
		before, after, err := p.extents()
		if err != nil {
			return nil, err
		}
		if before.first < line {
			return nil, p.fail("goes back to line %d", before.first)
		}
		if after.first != before.first+gained {
			return nil, p.fail("puts line %d at %d, not %d", before.first, after.first, before.first+gained)
		}
		start := forward(old, at, before.first-line)
		if count(old[at:start]) != before.first-line {
			return nil, p.fail("starts at line %d, past the end", before.first)
		}
		text = append(text, old[at:start]...)
		at = start
		removed, added := 0, 0
		for removed < before.lines || added < after.lines {
			mark, content, err := p.body()
			if err != nil {
				return nil, err
			}
			if mark != '+' {
				if removed++; removed > before.lines || !bytes.HasPrefix(old[at:], content) ||
					forward(old, at, 1) != at+len(content) {
					return nil, p.fail("does not match line %d of the text", before.first+removed-1)
				}
				at += len(content)
			}
			if mark != '-' {
				if added++; added > after.lines {
					return nil, p.fail("has more new lines than its hunk says")
				}
				if len(text) > 0 && text[len(text)-1] != '\n' {
					return nil, p.fail("puts a line after one that has no newline")
				}
				text = append(text, content...)
			}
		}
		line = before.first + before.lines
		gained += after.lines - before.lines
	}
	rest := old[at:]
	if len(rest) > 0 && len(text) > 0 && text[len(text)-1] != '\n' {
		return nil, p.fail("leaves no newline in the middle of the text")
	}
	return append(text, rest...), nil
}

// body reads one line of a hunk and, where the diff says so, takes its line
// break away.
func (p *applier) body() (mark byte, content []byte, err error) {
	line := p.next()
	if len(line) == 0 || !bytes.HasSuffix(line, []byte("\n")) {
		return 0, nil, p.fail("ends in the middle of a hunk")
	}
	mark, content = line[0], line[1:]
	if !strings.ContainsRune(" +-", rune(mark)) {
		return 0, nil, p.fail("has a line in a hunk that starts with %q", mark)
	}
	if bytes.HasPrefix(p.rest, []byte(unfinished)) {
		p.next()
		content = content[:len(content)-1]
	}
	return mark, content, nil
}

// lineRange is a range of lines. With no lines, first is where they would
// start.
type lineRange struct{ first, lines int }

func (p *applier) extents() (before, after lineRange, err error) {
	fields := strings.Split(strings.TrimSuffix(string(p.next()), "\n"), " ")
	if len(fields) != 4 || fields[0] != "@@" || fields[3] != "@@" {
		return before, after, p.fail("has a malformed hunk")
	}
	before, ok := parseExtent(fields[1], "-")
	after, also := parseExtent(fields[2], "+")
	if !ok || !also {
		return before, after, p.fail("has a malformed hunk")
	}
	return before, after, nil
}

func parseExtent(s, sign string) (lineRange, bool) {
	s, ok := strings.CutPrefix(s, sign)
	first, lines, both := strings.Cut(s, ",")
	r := lineRange{lines: 1}
	var err, errLines error
	r.first, err = strconv.Atoi(first)
	if both {
		r.lines, errLines = strconv.Atoi(lines)
	}
	if r.lines == 0 {
		r.first++
	}
	const most = parser.MaxFileBytes // no text has more lines than bytes
	return r, ok && err == nil && errLines == nil && r.first >= 1 && r.first <= most && r.lines >= 0 &&
		r.lines <= most
}
