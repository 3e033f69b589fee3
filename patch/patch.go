// Package patch turns edits into new text and prints what changed as a
// unified diff. It never writes to a configuration.
package patch

import (
	"bytes"
	"fmt"

	"preflash/parser"
)

// Apply returns the text of f with the edits made. They come sorted by place, as
// Merge gives them; insertions at one place keep their order. Edits that overlap
// or are not sorted, belong to another file or point outside of f are an error.
func Apply(f *parser.File, edits []parser.Edit) ([]byte, error) {
	for i, e := range edits {
		if !sameFile(e.At.File, f) {
			return nil, &parser.Error{File: f.Name,
				Message: fmt.Sprintf("an edit of the %s belongs to another file (%s); this is a fault in "+
					"preflash, please report it", e.For, e.At)}
		}
		if e.At.Start < 0 || e.At.End < e.At.Start || e.At.End > len(f.Data) {
			return nil, &parser.Error{File: f.Name,
				Message: fmt.Sprintf("an edit of the %s covers bytes %d to %d of %d; this is a fault in "+
					"preflash, please report it", e.For, e.At.Start, e.At.End, len(f.Data))}
		}
		if i > 0 && edits[i-1].At.End > e.At.Start {
			return nil, parser.Errorf(e.At,
				"the edits of the %s and the %s overlap, or come out of order; this is a fault in "+
					"preflash, please report it", edits[i-1].For, e.For)
		}
	}
	text := make([]byte, 0, len(f.Data))
	done := 0
	for _, e := range edits {
		text = append(text, f.Data[done:e.At.Start]...)
		text = append(text, e.New...)
		done = e.At.End
	}
	return append(text, f.Data[done:]...), nil
}

func sameFile(a, b *parser.File) bool {
	return a == b || a != nil && b != nil && a.Name == b.Name && bytes.Equal(a.Data, b.Data)
}
