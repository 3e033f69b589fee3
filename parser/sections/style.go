// Package sections reads and edits configurations in INI style: sections in
// brackets, options with : or =, files that include others, and a block at
// the end of the main file that the firmware writes itself.
//
// How the text is read follows the firmware, which hands it to Python's
// configparser piece by piece; the tests hold it against that program.
package sections

import "preflash/parser"

// Style is the style of this package.
var Style parser.Style = style{}

type style struct{}

func (style) Name() string { return "sections" }

// Recognises reports whether the first line that is no comment opens a
// section.
func (style) Recognises(f *parser.File) bool {
	data := f.Data
	if len(data) >= len(bom) && string(data[:len(bom)]) == string(bom) {
		data = data[len(bom):]
	}
	for at := 0; at < len(data); {
		stop, next := lineAt(data, at)
		if b := clean(data[at:stop]); len(b.text) > 0 {
			_, ok := header(b.text)
			return ok
		}
		at = next
	}
	return false
}

// Joins: the main file includes the others.
func (style) Joins() bool { return false }
