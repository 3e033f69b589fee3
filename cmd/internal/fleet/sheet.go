package fleet

import (
	"fmt"

	"preflash/parser"
	"preflash/parser/sheet"
)

// ReadSheet reads the one sheet that a path names, and gives its name as
// shown. root bounds the reading as everywhere.
func ReadSheet(path, root string) (*sheet.Sheet, string, error) {
	f := open([]string{path}, Options{Root: root})
	defer f.Close()
	switch {
	case len(f.problems) > 0:
		p := f.problems[0]
		return nil, "", &parser.Error{File: p.File, Line: p.Line, Column: p.Column, Message: p.Message}
	case len(f.Sources) > 1:
		return nil, "", fmt.Errorf("%s holds %d sheets; name one of them, such as %s", path, len(f.Sources), f.Sources[0].Owner)
	}
	t := f.Sources[0].target
	s, err := sheet.Read(t.Tree, t.Sheet)
	return s, t.Shown(), err
}
