package fleet

import (
	"fmt"

	"preflash/parser"
	"preflash/parser/sheet"
)

// ReadSheet reads the one sheet that a path names, and gives its name as
// shown. root bounds the reading as it does for Find.
func ReadSheet(path, root string) (*sheet.Sheet, string, error) {
	targets, problems := Find([]string{path}, root)
	switch {
	case len(problems) > 0:
		p := problems[0]
		return nil, "", &parser.Error{File: p.File, Line: p.Line, Column: p.Column, Message: p.Message}
	case len(targets) > 1:
		return nil, "", fmt.Errorf("%s holds %d sheets; name one of them, such as %s", path, len(targets), targets[0].Shown())
	}
	s, err := sheet.Read(targets[0].Tree, targets[0].Sheet)
	return s, targets[0].Shown(), err
}
