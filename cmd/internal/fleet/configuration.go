package fleet

import (
	"errors"
	"fmt"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"preflash/parser"
)

// Configuration is a configuration that was read without a sheet.
type Configuration struct {
	Tree   *parser.Tree
	Style  parser.Style
	Files  []string // in reading order, paths inside the tree
	Absent []string // included files that are not there, paths inside the tree
	Guess  bool     // the files were found, not named

	parser.Config
	root string
}

// Inside gives a path of a person as one inside the configuration's tree.
func (c *Configuration) Inside(name string) (string, error) { return insideOf(c.root, name) }

// maxAbsent bounds how often a configuration is read again because an included
// file is missing.
const maxAbsent = 32

// ReadConfiguration reads the files of a configuration, in this order; where
// none is named, the ones in the working directory. An included file that is
// missing is taken to be one that lies elsewhere. tool is the hotend, from 0.
func ReadConfiguration(names []string, root string, tool int) (*Configuration, error) {
	first := "."
	if len(names) > 0 {
		first = names[0]
	}
	tree, root, err := treeOf(first, root)
	if err != nil {
		return nil, err
	}
	c := &Configuration{Tree: tree, root: root}
	if len(names) == 0 {
		if err := c.look(root, tool); err != nil {
			return nil, err
		}
		c.Guess, c.root = true, root
		return c, nil
	}
	for _, name := range names {
		inside, err := insideOf(root, name)
		if err != nil {
			return nil, err
		}
		c.Files = append(c.Files, inside)
	}
	if c.Style, err = recognise(tree, c.Files); err != nil {
		return nil, err
	}
	return c, c.read(tool)
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
	return nil, &parser.Error{File: tree.Shown(files[0]), Message: "looks like no configuration: neither #define lines nor [sections] are in it"}
}

func styleLike(f *parser.File) parser.Style {
	for _, style := range known() {
		if style.Recognises(f) {
			return style
		}
	}
	return nil
}

// read reads the files, as often as it takes to name every missing include.
func (c *Configuration) read(tool int) error {
	for {
		var err error
		c.Config, err = c.Style.Read(c.Tree, parser.Request{Files: c.Files, Absent: c.Absent, Tool: tool})
		var e *parser.Error
		if !errors.As(err, &e) || e.Missing == "" || len(c.Absent) >= maxAbsent ||
			slices.Contains(c.Absent, e.Missing) || !filepath.IsLocal(filepath.FromSlash(e.Missing)) {
			return err
		}
		c.Absent = append(c.Absent, e.Missing)
	}
}

// maxLook is how many files of a folder are looked at.
const maxLook = 64

// look finds the configuration in the working directory: the files that a style
// recognises and that no other of them includes.
func (c *Configuration) look(root string, tool int) error {
	entries, err := os.ReadDir(".")
	if err != nil {
		return err
	}
	var found []*Configuration
	looked := 0
	for _, e := range entries {
		ext := strings.ToLower(path.Ext(e.Name()))
		if e.IsDir() || ext != ".h" && ext != ".cfg" {
			continue
		}
		if looked++; looked > maxLook {
			return fmt.Errorf("there are more than %d files here that could be a configuration; name those of the printer: preflash sheet FILE…", maxLook)
		}
		inside, err := insideOf(root, e.Name())
		if err != nil {
			return err
		}
		f, err := c.Tree.Open(inside)
		if err != nil {
			continue // a link out of the tree, or no text
		}
		style := styleLike(f)
		if style == nil {
			continue
		}
		one := &Configuration{Tree: c.Tree, Style: style, Files: []string{inside}}
		if err := one.read(tool); err != nil {
			return err
		}
		found = append(found, one)
	}
	if len(found) == 0 {
		return errors.New("there is no configuration here (no .h or .cfg file that looks like one); name its files: preflash sheet FILE…")
	}
	if own := mains(found); len(own) > 0 {
		found = own
	}
	if len(found) == 1 {
		*c = *found[0]
		return nil
	}
	if !joins(found) {
		var list []string
		for _, one := range found {
			list = append(list, path.Base(one.Files[0]))
		}
		return fmt.Errorf("which files are the printer's cannot be told; name them in reading order, such as: preflash sheet %s", strings.Join(list, " "))
	}
	c.Style = found[0].Style
	for _, one := range found {
		c.Files = append(c.Files, one.Files...)
	}
	return c.read(tool)
}

// mains leaves out what another configuration includes and what sets nothing.
func mains(found []*Configuration) []*Configuration {
	return slices.DeleteFunc(slices.Clone(found), func(one *Configuration) bool {
		return len(one.sets()) == 0 || slices.ContainsFunc(found, func(other *Configuration) bool {
			return one != other && slices.ContainsFunc(other.Printer().Files, func(f *parser.File) bool {
				return f.Path == one.Files[0]
			})
		})
	})
}

// sets lists what a configuration sets by itself.
func (c *Configuration) sets() []parser.Key {
	var keys []parser.Key
	for _, s := range c.Printer().Settings() {
		if s.State == parser.Set {
			keys = append(keys, s.Key)
		}
	}
	return keys
}

// joins reports whether files make one configuration together: their style
// reads several, and no two set mostly the same, as a copy would.
func joins(found []*Configuration) bool {
	for i, one := range found {
		if one.Style != found[0].Style || !one.Style.Joins() {
			return false
		}
		own := one.sets()
		for _, other := range found[i+1:] {
			theirs := other.sets()
			both := 0
			for _, key := range own {
				if slices.Contains(theirs, key) {
					both++
				}
			}
			if 2*both > min(len(own), len(theirs)) {
				return false
			}
		}
	}
	return true
}
