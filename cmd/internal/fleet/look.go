package fleet

import (
	"fmt"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync"

	"preflash/parser"
)

// maxLook is how many files of a folder are looked at, maxListed how many of
// something a message names.
const (
	maxLook   = 64
	maxListed = 8
)

// folder is what a folder holds of configurations.
type folder struct {
	tree   *parser.Tree
	dir    string // inside the tree
	found  []*Configuration
	passed []string // what is none, with the reason
}

// look finds the one configuration that a folder holds.
func (c *Configuration) look(dir string) error {
	f := c.folder(dir)
	printers := f.whole(c.root)
	shown := c.Tree.Shown(dir)
	switch len(printers) {
	case 1:
		*c = *printers[0]
		return nil
	case 0:
		return f.none()
	}
	var list []string
	for _, p := range printers {
		list = append(list, "preflash sheet "+typedAll(f.tree, p.Files))
	}
	return &parser.Error{File: shown,
		Message: fmt.Sprintf("holds the configurations of %d printers; name the files of one: %s",
			len(printers), some(list, "; "))}
}

// whole lists the configurations of whole printers that a folder holds.
func (f *folder) whole(root string) []*Configuration {
	list := f.printers()
	for _, c := range list {
		c.root, c.Guess, c.Passed, c.Alone = root, true, f.passed, len(list) == 1
	}
	return list
}

// each reads every configuration that a folder holds.
func (f *folder) each(root string) ([]*Configuration, error) {
	list := f.whole(root)
	if len(list) == 0 {
		return nil, f.none()
	}
	for _, c := range list {
		if err := c.read(0); err != nil {
			return nil, err
		}
	}
	return list, nil
}

// some joins the first of a list.
func some(list []string, between string) string {
	if n := len(list) - maxListed; n > 0 {
		list = append(list[:maxListed:maxListed], fmt.Sprintf("and %d more", n))
	}
	return strings.Join(list, between)
}

// folder reads what a folder holds, each file by itself. A file that cannot be
// read hides no other.
func (c *Configuration) folder(dir string) *folder {
	f := &folder{tree: c.Tree, dir: dir}
	entries, err := os.ReadDir(filepath.FromSlash(c.Tree.Shown(dir)))
	if err != nil {
		return f
	}
	pass := func(name, why string) { f.passed = append(f.passed, name+" "+why) }
	looked := 0
	for _, e := range entries {
		name := e.Name()
		if e.IsDir() || !parser.NamedAsConfiguration(name) {
			continue
		}
		if looked++; looked > maxLook {
			pass("the rest", fmt.Sprintf("was not looked at: there are more than %d files", maxLook))
			break
		}
		inside := path.Join(dir, name)
		file, err := c.Tree.Open(inside)
		if err != nil {
			why := "cannot be read: " + reason(err)
			if _, gone := os.Stat(filepath.FromSlash(c.Tree.Shown(inside))); gone != nil &&
				e.Type()&os.ModeSymlink != 0 {
				why = "is a link that leads nowhere"
			}
			pass(name, why)
			continue
		}
		style := styleLike(file)
		if style == nil {
			continue
		}
		if savedBackup().MatchString(name) {
			pass(name, "is a backup that the firmware made")
			continue
		}
		one := &Configuration{Tree: c.Tree, Style: style, Files: []string{inside}}
		if err := one.read(0); err != nil {
			pass(name, "cannot be read: "+reason(err))
			continue
		}
		f.found = append(f.found, one)
	}
	return f
}

// reason is what is wrong, without the file.
func reason(err error) string {
	if e, ok := err.(*parser.Error); ok {
		return e.Message
	}
	return err.Error()
}

// savedBackup is how the sections style's firmware names the file that it
// replaces, and the one that it is about to put there.
var savedBackup = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile(`(?i)-\d{8}_\d{6}\.[a-z]+$|_autosave\.[a-z]+$`)
})

// printers tells the configurations of whole printers from backups, from what
// others include, and from parts.
func (f *folder) printers() (list []*Configuration) {
	var wholes, sensors, protections []*Configuration
	for _, one := range f.found {
		name := path.Base(one.Files[0])
		lacks := one.Lacks()
		switch {
		case slices.ContainsFunc(f.found,
			func(other *Configuration) bool { return other != one && other.reads(one.Files[0]) }):
			f.passed = append(f.passed, name+" is included by another")
		case f.copies(one) != "":
			f.passed = append(f.passed, name+" is, by its name, a copy of "+f.copies(one))
		case len(lacks) == 0:
			wholes = append(wholes, one)
		case one.Style.Joins() && len(lacks) == 1 && lacks[0].Without:
			sensors = append(sensors, one)
		case one.Style.Joins() && len(lacks) == 1:
			protections = append(protections, one)
		case len(one.sets()) > 0:
			f.passed = append(f.passed, name+" is a part: it lacks "+lackText(lacks))
		}
	}
	for _, one := range sensors {
		if i := nearest(one, protections); i >= 0 {
			one.Files = append(one.Files, protections[i].Files...)
			protections = slices.Delete(protections, i, i+1)
		}
		wholes = append(wholes, one)
	}
	for _, one := range protections {
		f.passed = append(f.passed, path.Base(one.Files[0])+" is a part: it lacks "+lackText(one.Lacks()))
	}
	return wholes
}

// reads reports whether a configuration reads a file, not counting itself.
func (c *Configuration) reads(name string) bool {
	return slices.ContainsFunc(c.Printer().Files, func(f *parser.File) bool { return f.Path == name })
}

// sets lists what a configuration sets by itself.
func (c *Configuration) sets() []parser.Key {
	var keys []parser.Key
	for s := range c.Printer().Settings() {
		if s.State == parser.Set {
			keys = append(keys, s.Key)
		}
	}
	return keys
}

// setAside are the words with which people name a file that they set aside:
// common practice, no source.
var setAside = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile(`(?i)^[-_ .(~]*` +
		`(old|orig|original|bak|backup|copy|kopie|save|saved|prev|previous|before|\d[-\d_. ]*)` +
		`([-_ .)~\d].*)?$`)
})

// copies returns the file that another one, by its name, is a copy of: the name
// goes on where that of the other ends, with a word for what was set aside.
func (f *folder) copies(one *Configuration) string {
	stem := stemOf(one.Files[0])
	for _, other := range f.found {
		if other == one || other.Style != one.Style {
			continue
		}
		if rest, ok := strings.CutPrefix(stem, stemOf(other.Files[0])); ok && rest != "" &&
			setAside().MatchString(rest) {
			return path.Base(other.Files[0])
		}
	}
	return ""
}

func stemOf(name string) string {
	return strings.TrimSuffix(path.Base(name), path.Ext(name))
}

// nearest is the index of the configuration whose name is most like another
// one's; -1 for none.
func nearest(one *Configuration, list []*Configuration) int {
	best, most := -1, -1
	for i, other := range list {
		a, b := stemOf(one.Files[0]), stemOf(other.Files[0])
		n := 0
		for n < len(a) && n < len(b) && a[n] == b[n] {
			n++
		}
		for m := 1; m <= len(a)-n && m <= len(b)-n && a[len(a)-m] == b[len(b)-m]; m++ {
			n++
		}
		if n > most {
			best, most = i, n
		}
	}
	return best
}

// completes finds the one file beside a header that has what that lacks.
func (f *folder) completes(c *Configuration) *Configuration {
	lacks := c.Lacks()
	var list []*Configuration
	for _, other := range f.found {
		theirs := other.Lacks()
		if other.Style == c.Style && other.Files[0] != c.Files[0] && len(theirs) == 1 && len(lacks) == 1 &&
			theirs[0].Without != lacks[0].Without && f.copies(other) == "" {
			list = append(list, other)
		}
	}
	if i := nearest(c, list); i >= 0 {
		return list[i]
	}
	return nil
}

// whoReads says which configurations beside a part, or one folder above, read it.
func (f *folder) whoReads(part *Configuration) string {
	list := f.readersOf(part)
	if up := path.Dir(f.dir); len(list) == 0 && up != f.dir {
		list = part.folder(up).readersOf(part)
	}
	if len(list) == 0 {
		return "; name the file that has that or includes this one"
	}
	return "; it is read by: preflash sheet " + some(list, ", or preflash sheet ")
}

func (f *folder) readersOf(part *Configuration) (list []string) {
	for _, other := range f.found {
		if other.Files[0] != part.Files[0] && other.reads(part.Files[0]) && len(other.Lacks()) == 0 &&
			f.copies(other) == "" {
			list = append(list, typedAll(f.tree, other.Files))
		}
	}
	return list
}

// lackText joins what a part lacks.
func lackText(lacks []parser.Lack) string {
	var list []string
	for _, l := range lacks {
		list = append(list, l.What)
	}
	return strings.Join(list, " and ")
}

// none says why a folder holds no printer, and where there are some.
func (f *folder) none() error {
	shown := f.tree.Shown(f.dir)
	if len(f.passed) > 0 {
		return &parser.Error{File: shown, Message: "holds no whole configuration: " + some(f.passed, "; ") +
			"; name the files of the printer: preflash sheet FILE…"}
	}
	if below := f.below(); len(below) > 0 {
		return &parser.Error{File: shown,
			Message: "holds no configuration itself; below it: preflash sheet " +
				some(below, ", or preflash sheet ")}
	}
	return &parser.Error{File: shown,
		Message: "holds no configuration (no .h or .cfg file that looks like one); name its files: " +
			"preflash sheet FILE…"}
}

// maxWalkedBelow is how many files below a folder are passed in search of
// configurations.
const maxWalkedBelow = 2_000

// below lists the folders further down that hold a printer.
func (f *folder) below() (list []string) {
	looked := make(map[string]bool)
	walked := 0
	f.tree.Walk(f.dir, func(name string) bool {
		walked++
		if dir := path.Dir(name); parser.NamedAsConfiguration(name) && !looked[dir] {
			looked[dir] = true
			if len((&Configuration{Tree: f.tree}).folder(dir).printers()) > 0 {
				list = append(list, typedAll(f.tree, []string{dir}))
			}
		}
		return walked < maxWalkedBelow && len(list) <= maxListed
	}, func(error) {})
	return list
}
