package fleet

import (
	"fmt"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync"

	"preflash/parser"
)

// tellsNothing are names of folders that say nothing of the printer in them:
// common practice, no source.
var tellsNothing = []string{
	"config", "configs", "configuration", "configurations", "conf", "cfg", "data", "printer_data",
	"printer", "printers", "firmware", "src", "source", "include", "includes", "backup", "default",
	"build", "etc", "home", "tmp", "root", "parts", "macros",
}

// Name calls a printer after the folder that tells: that of its sheet, else the
// nearest above it whose name says something. Where a folder holds several
// printers, the main file tells them apart. place is inside the tree.
func (c *Configuration) Name(place string) string {
	abs, err := filepath.Abs(filepath.FromSlash(c.Tree.Shown(place)))
	if err != nil {
		return "printer"
	}
	name := "printer"
	for dir := filepath.Dir(abs); dir != filepath.Dir(dir); dir = filepath.Dir(dir) {
		if base := filepath.Base(dir); !slices.Contains(tellsNothing, strings.ToLower(base)) {
			name = base
			break
		}
	}
	if c.hasNeighbours() {
		name += "-" + stemOf(c.Files[0])
	}
	return name
}

// hasNeighbours reports whether the folder holds other printers too.
func (c *Configuration) hasNeighbours() bool {
	return !c.Alone && len(c.folder(path.Dir(c.Files[0])).printers()) > 1
}

// SheetName is what the sheet of a printer is called: each printer of a folder,
// and each of several tools, has its own.
func (c *Configuration) SheetName() string {
	name := "swap.toml"
	if c.Hotends() > 1 {
		name = fmt.Sprintf("tool-%d.%s", c.Printer().Tool, name)
	}
	if c.hasNeighbours() {
		name = stemOf(c.Files[0]) + "." + name
	}
	return name
}

// NameFor is Name, with the tool where there are several, and unlike that of any
// other sheet below the root.
func (c *Configuration) NameFor(place string) string {
	name := c.Name(place)
	if c.Hotends() > 1 {
		name += fmt.Sprintf("-tool-%d", c.Printer().Tool)
	}
	taken := make(map[string]bool)
	walkSheets(c.Tree, maxWalked, func(file string) bool {
		if f, err := c.Tree.Open(file); err == nil && file != place {
			taken[nameIn(f)] = true
		}
		return true
	}, func(error) {})
	free := name
	for n := 2; taken[free]; n++ {
		free = fmt.Sprintf("%s-%d", name, n)
	}
	return free
}

// nameKey finds the first name of a sheet, which is the printer's.
var nameKey = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile(`(?m)^\s*name\s*=\s*"([^"\n]*)"`)
})

func nameIn(f *parser.File) string {
	if m := nameKey().FindSubmatch(f.Data); m != nil {
		return string(m[1])
	}
	return ""
}
