package fleet

import (
	"errors"
	"fmt"
	"os"
	"path"
	"path/filepath"
	"slices"

	"preflash/parser"
)

// Configuration is a configuration that was read without a sheet.
type Configuration struct {
	Tree   *parser.Tree
	Style  parser.Style
	Files  []string // in reading order, paths inside the tree
	Absent []string // included files that are not there, paths inside the tree
	Guess  bool     // not all of the files were named: some were found
	Passed []string // what was found beside them and is none of it, with the reason
	Alone  bool     // no other configuration lies in the folder
	parser.Config
	root string
}

// Inside gives a path of a person as one inside the configuration's tree.
func (c *Configuration) Inside(name string) (string, error) { return insideOf(c.root, name) }

// maxAbsent bounds how often a configuration is read again because an included
// file is missing.
const maxAbsent = 32

// ReadConfiguration reads the files of a configuration, in this order, or the
// one that a folder holds; where none is named, that of the working directory. An
// included file that is missing is taken to be one that lies elsewhere. tool is the
// hotend, from 0. The error says what a part lacks, and what there is to choose.
// Close the configuration's tree when done with it.
func ReadConfiguration(names []string, root string, tool int) (*Configuration, error) {
	if len(names) == 0 {
		names = []string{"."}
	}
	tree, root, err := treeOf(names[0], root)
	if err != nil {
		return nil, err
	}
	c, err := readConfiguration(&Configuration{Tree: tree, root: root}, names, tool)
	if err != nil {
		_ = tree.Close() // it was only read
		return nil, err
	}
	return c, nil
}

// readConfiguration does so in a tree that is open.
func readConfiguration(c *Configuration, names []string, tool int) (*Configuration, error) {
	first := names[0]
	inside, err := insideOf(c.root, first)
	if err != nil {
		return nil, err
	}
	if info, err := os.Stat(first); err == nil && info.IsDir() {
		if len(names) > 1 {
			return nil, &parser.Error{File: filepath.ToSlash(first),
				Message: "is a folder; name one folder alone, or the files of one printer"}
		}
		if err := c.look(inside); err != nil {
			return nil, err
		}
	} else if err := c.named(names); err != nil {
		return nil, err
	}
	if n := c.Tools(); n > 0 && tool >= n {
		return nil, fmt.Errorf("--tool %d is not there: this configuration has %s", tool, toolsText(n))
	}
	return c, c.read(tool)
}

// toolsText says how many tools there are.
func toolsText(n int) string {
	if n == 1 {
		return "one tool, 0"
	}
	between := "to"
	if n == 2 {
		between = "and"
	}
	return fmt.Sprintf("%d tools, 0 %s %d", n, between, n-1)
}

// named reads files that a person names. One header of two finds the other.
func (c *Configuration) named(names []string) error {
	for _, name := range names {
		inside, err := insideOf(c.root, name)
		if err != nil {
			return err
		}
		c.Files = append(c.Files, inside)
	}
	var err error
	if c.Style, err = recognise(c.Tree, c.Files); err != nil {
		return err
	}
	if err := c.read(0); err != nil {
		return err
	}
	lacks := c.Lacks()
	if len(lacks) == 0 {
		return nil
	}
	f := c.folder(path.Dir(c.Files[0]))
	if len(names) == 1 && c.Style.Joins() {
		if other := f.completes(c); other != nil {
			if !lacks[0].Without { // the one that holds more comes first
				return &parser.Error{File: c.Tree.Shown(c.Files[0]),
					Message: "is a part of a configuration: it lacks " + lackText(lacks) +
						". " + path.Base(other.Files[0]) + " beside it has that; name both: preflash sheet " +
						typedAll(c.Tree, []string{other.Files[0], c.Files[0]})}
			}
			c.Files, c.Guess = append(c.Files, other.Files...), true
			return c.read(0)
		}
	}
	if slices.ContainsFunc(lacks, func(l parser.Lack) bool { return !l.Without }) {
		return &parser.Error{File: c.Tree.Shown(c.Files[0]),
			Message: "is a part of a configuration: it lacks " + lackText(lacks) + f.whoReads(c)}
	}
	return nil
}

// treeOf opens the root that bounds all reading of a file.
func treeOf(name, root string) (*parser.Tree, string, error) {
	abs, err := filepath.Abs(name)
	if err != nil {
		return nil, "", err
	}
	if root, err = boundOf(abs, root); err != nil {
		return nil, "", err
	}
	tree, err := parser.OpenTree(root)
	return tree, root, err
}

// recognise returns the style that one of the files looks like.
func recognise(tree *parser.Tree, files []string) (parser.Style, error) {
	for _, name := range files {
		f, err := tree.Open(name)
		if err != nil {
			return nil, err
		}
		if style := styleLike(f); style != nil {
			return style, nil
		}
	}
	return nil, &parser.Error{File: tree.Shown(files[0]),
		Message: "looks like no configuration: neither #define lines nor [sections] are in it"}
}

func styleLike(f *parser.File) parser.Style {
	for _, style := range allStyles() {
		if style.Recognises(f) {
			return style
		}
	}
	return nil
}

// read reads the files, as often as it takes to name every missing include.
func (c *Configuration) read(tool int) error {
	for {
		tree, _ := c.Tree.ForPrinter() // as bounded as that of a sheet
		var err error
		c.Config, err = c.Style.Read(tree, parser.Request{Files: c.Files, Absent: c.Absent, Tool: tool})
		var e *parser.Error
		if !errors.As(err, &e) || e.Missing == "" || len(c.Absent) >= maxAbsent ||
			slices.Contains(c.Absent, e.Missing) || !filepath.IsLocal(filepath.FromSlash(e.Missing)) {
			return err
		}
		c.Absent = append(c.Absent, e.Missing)
	}
}
