package fleet

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"preflash/parser"
)

// maxWalked is how many files are passed while sheets are looked for that might
// name a file.
const maxWalked = 100_000

// NamedBy returns a sheet that names a file, or names what includes it, or has
// a pattern that the file matches, also where the file does not exist: what is
// written there would be read as a configuration. "" where none does. It looks
// at every sheet below the root: the one that is given, where the file lies in
// it, else the nearest parent that holds .git, else the working directory.
func NamedBy(file, root string) (string, error) { return namedBy(file, root, maxWalked) }

func namedBy(file, root string, most int) (string, error) {
	abs, err := filepath.Abs(file)
	if err != nil {
		return "", err
	}
	bound, err := boundOf(abs, root)
	if err != nil {
		return "", err
	}
	inside, err := insideOf(bound, file)
	if err != nil {
		if bound = rootOf(abs); root == "" {
			return "", nil // no root holds it, so no sheet can
		}
		if inside, err = insideOf(bound, file); err != nil {
			return "", nil
		}
	}
	tree, err := parser.OpenTree(bound)
	if err != nil {
		return "", err
	}
	defer tree.Close()
	real, _, err := tree.Trace(inside)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return "", fmt.Errorf("%s cannot be told from a configuration (%w)", file, err)
	}
	info, _ := os.Lstat(abs)
	var named string
	if !walkSheets(tree, most, func(name string) bool {
		if readsFile(Target{Tree: tree, Sheet: name}, inside, real, info) {
			named = tree.Shown(name)
		}
		return named == ""
	}, func(error) {}) {
		return "", fmt.Errorf("whether a sheet names %s cannot be told: there are more than %d files below "+
			"%s; name a new file", file, most, filepath.ToSlash(bound))
	}
	return named, nil
}

// readsFile reports whether a printer reads a file, or would if it were there.
func readsFile(t Target, inside, real string, info fs.FileInfo) bool {
	s := newSource(t, Options{})
	s.load() // what it asked for counts, whatever came of it
	tree, reading := s.Tree, s.reading
	for _, pattern := range reading.Patterns() {
		for _, name := range []string{inside, real} {
			if ok, _ := path.Match(pattern, name); ok {
				return true
			}
		}
	}
	return slices.ContainsFunc(reading.Names(), func(name string) bool {
		if strings.EqualFold(name, inside) || strings.EqualFold(name, real) {
			return true
		}
		other, _, err := tree.Trace(name)
		if err != nil {
			return strings.EqualFold(other, real)
		}
		there, err := tree.Lstat(other)
		return err == nil && info != nil && os.SameFile(info, there)
	})
}
