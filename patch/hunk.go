package patch

import "bytes"

// Hunk is a group of changes with the lines around them. Where it has no old
// or no new lines, the number is that of the line at which they would start.
type Hunk struct {
	OldLine, OldLines int
	NewLine, NewLines int
	Lines             []Line
}

// Line is one line of a hunk. Text holds its line ending, which only the last
// line of a file may lack.
type Line struct {
	Mark byte // ' ', '-' or '+'
	Text []byte
}

// Hunks returns what changed in a file: changes whose contexts touch stand in
// one hunk.
func Hunks(c FileChange) []Hunk {
	list := lineChanges(c.Old, c.New)
	var hunks []Hunk
	line, counted := 1, 0 // number of the old line at offset counted
	moved := 0            // lines that the text so far has gained
	for len(list) > 0 {
		n := 1
		for n < len(list) && forward(c.Old, list[n-1].old1, 2*context) >= list[n].old0 {
			n++
		}
		group := list[:n]
		list = list[n:]

		first, last := group[0], group[n-1]
		start := back(c.Old, first.old0, context)
		end := forward(c.Old, last.old1, context)
		line += bytes.Count(c.Old[counted:start], []byte("\n"))
		counted = start
		h := Hunk{
			OldLine: line, OldLines: count(c.Old[start:end]),
			NewLine:  line + moved,
			NewLines: count(c.New[first.new0-(first.old0-start) : last.new1+(end-last.old1)]),
		}
		moved += h.NewLines - h.OldLines
		for _, g := range group {
			h.add(' ', c.Old[start:g.old0])
			h.add('-', c.Old[g.old0:g.old1])
			h.add('+', c.New[g.new0:g.new1])
			start = g.old1
		}
		h.add(' ', c.Old[start:end])
		hunks = append(hunks, h)
	}
	return hunks
}

func (h *Hunk) add(mark byte, text []byte) {
	for len(text) > 0 {
		n := forward(text, 0, 1)
		h.Lines = append(h.Lines, Line{mark, text[:n]})
		text = text[n:]
	}
}
