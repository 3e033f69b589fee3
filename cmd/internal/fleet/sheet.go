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
		return nil, "", fmt.Errorf("%s holds %d sheets; name one of them, such as %s", path, len(f.Sources),
			f.Sources[0].Owner)
	}
	t := f.Sources[0].target
	s, err := sheet.Read(t.Tree, t.Sheet)
	return s, t.Shown(), err
}

// ReadBegun reads a sheet that may have blanks: its text, the configuration that
// it names, and the path inside its tree.
func ReadBegun(name, root string) (text string, c *Configuration, place string, err error) {
	tree, root, err := treeOf(name, root)
	if err != nil {
		return "", nil, "", err
	}
	defer func() {
		if err != nil {
			_ = tree.Close() // it was only read
		}
	}()
	if place, err = insideOf(root, name); err != nil {
		return "", nil, "", err
	}
	f, err := tree.Open(place)
	if err != nil {
		return "", nil, "", err
	}
	p, err := sheet.ReadPrinter(tree, place)
	if err != nil {
		return "", nil, "", err
	}
	c = &Configuration{Tree: tree, root: root}
	for _, k := range p.Config {
		c.Files = append(c.Files, k.Value)
	}
	for _, k := range p.Absent {
		c.Absent = append(c.Absent, k.Value)
	}
	if len(c.Files) == 0 {
		return "", nil, "", &parser.Error{File: tree.Shown(place),
			Message: "names no configuration (printer.config), so it cannot be gone on with; begin a new " +
				"one: preflash sheet"}
	}
	if c.Style, err = recognise(tree, c.Files); err != nil {
		return "", nil, "", err
	}
	return string(f.Data), c, place, c.read(p.Tool.Value)
}
