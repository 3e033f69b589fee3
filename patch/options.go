package patch

import (
	"bytes"

	"preflash/parser"
)

// inForce lists the options of a configuration that are, or may be, in force,
// by name.
func inForce(c parser.Config) map[string]parser.Entry {
	found := make(map[string]parser.Entry)
	for _, e := range c.Entries() {
		if e.Active != parser.No {
			found[e.Name] = e
		}
	}
	return found
}

// editedLines are the byte ranges of whole lines that a plan changes, in the
// old texts and in the new ones, by file.
type editedLines map[string][]lineChange

func (g *group) editedLines() editedLines {
	e := make(editedLines)
	for _, f := range g.plan.Files {
		e[f.Name] = lineChanges(f.Old, f.New)
	}
	return e
}

// touches reports whether a place lies on a line that was edited, in the old
// text or in the new one.
func (e editedLines) touches(at parser.Span, old bool) bool {
	if at.IsZero() {
		return false
	}
	// A change ends where the line after it begins.
	start := 1 + bytes.LastIndexByte(at.File.Data[:at.Start], '\n')
	for _, c := range e[at.File.Real] {
		from, to := c.new0, c.new1
		if old {
			from, to = c.old0, c.old1
		}
		if start < to && at.End >= from {
			return true
		}
	}
	return false
}
