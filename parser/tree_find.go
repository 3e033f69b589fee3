package parser

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"unicode/utf8"
)

// MaxListed is how many entries a folder may have that a pattern is matched
// against.
const MaxListed = 10_000

// Exists reports whether the tree may hold something of that name. A link that
// leads nowhere is nothing. What cannot be told counts as there, such as what
// lies behind a link out of the tree: Open then says why it is refused.
func (t *Tree) Exists(name string) bool {
	name = path.Clean(name)
	if err := t.reading.name(name); err != nil {
		return true
	}
	_, _, err := t.Trace(name)
	return !errors.Is(err, fs.ErrNotExist)
}

// Lstat looks at what stands at a real path, itself and not what a link leads
// to.
func (t *Tree) Lstat(real string) (fs.FileInfo, error) {
	info, err := t.root.Lstat(filepath.FromSlash(real))
	return info, missing(err)
}

// Glob returns the files that match a slash-separated pattern (the syntax of
// path.Match), sorted. It walks the pattern part by part, so that a link out
// of the tree is refused by name where the standard library's glob would pass
// it over in silence. No match is no error.
func (t *Tree) Glob(pattern string) ([]string, error) {
	pattern = path.Clean(pattern)
	if !filepath.IsLocal(filepath.FromSlash(pattern)) {
		return nil, &Error{File: t.Shown(pattern), Message: errOutside.Error()}
	}
	if _, err := path.Match(pattern, ""); err != nil {
		return nil, &Error{File: t.Shown(pattern), Message: "is not a valid pattern"}
	}
	if err := t.reading.pattern(pattern); err != nil {
		return nil, &Error{File: t.Shown(pattern), Message: err.Error()}
	}
	found := []string{"."}
	for _, part := range strings.Split(pattern, "/") {
		var next []string
		for _, dir := range found {
			names, err := t.match(dir, part)
			if err != nil {
				return nil, err
			}
			next = append(next, names...)
		}
		found = next
	}
	return found, nil
}

// match lists the entries of dir that match one part of a pattern.
func (t *Tree) match(dir, part string) ([]string, error) {
	real, _, err := t.Trace(dir)
	if !IsPattern(part) {
		// A link that leads nowhere matches, as in a shell.
		if err == nil {
			_, err = t.Lstat(path.Join(real, part))
		}
		if errors.Is(err, fs.ErrNotExist) {
			return nil, nil
		}
		return []string{path.Join(dir, part)}, nil
	}
	if err == nil {
		var names []string
		if names, err = t.List(real, part); err == nil {
			for i, name := range names {
				names[i] = path.Join(dir, name)
			}
			return names, nil
		}
	}
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	return nil, &Error{File: t.Shown(dir), Message: reason(err)}
}

// IsPattern reports whether one part of a pattern is more than a name.
func IsPattern(part string) bool { return strings.ContainsAny(part, `*?[\`) }

// List gives the names in a folder, by its real path, that match one part of a
// pattern, sorted. What is no folder has none.
func (t *Tree) List(real, part string) ([]string, error) {
	entries, err := t.listing(real)
	if err != nil {
		return nil, err
	}
	if err := t.reading.step(len(entries)); err != nil {
		return nil, err
	}
	var names []string
	for _, name := range entries {
		if Matches(part, name) {
			names = append(names, name)
		}
	}
	return names, nil
}

// Matches reports whether a name matches one part of a pattern. As in a shell,
// a leading dot must be asked for.
func Matches(part, name string) bool {
	ok, _ := path.Match(part, name)
	return ok && (!strings.HasPrefix(name, ".") || strings.HasPrefix(part, "."))
}

// listing reads the names in a real folder, once in a run.
func (t *Tree) listing(real string) ([]string, error) {
	if known, ok := t.disk.listings.Load(real); ok {
		return known.([]string), nil
	}
	info, err := t.Lstat(real)
	if err != nil || !info.IsDir() {
		return nil, err
	}
	folder, err := t.root.Open(filepath.FromSlash(real))
	if err != nil {
		return nil, err
	}
	defer folder.Close()
	names, err := folder.Readdirnames(MaxListed + 1)
	switch {
	case err != nil && err != io.EOF:
		return nil, err
	case len(names) > MaxListed:
		return nil, fmt.Errorf("holds more than %d files, too many for a pattern; "+
			"put those that are meant into a folder of their own", MaxListed)
	}
	slices.Sort(names)
	t.disk.listings.Store(real, names)
	return names, nil
}

// Walk calls visit for everything below dir that is no folder, in the order of
// the paths, until visit returns false, and failed for each folder that cannot be read or lies deeper than
// MaxFolderDepth: what it holds stays unknown, and the walk goes on. What is no
// regular file is left to Open, which refuses it by name or follows a link
// inside the tree. Walk itself follows no link, and passes over folders whose
// name starts with a dot.
func (t *Tree) Walk(dir string, visit func(file string) bool, failed func(error)) {
	dir = path.Clean(dir)
	// The function below returns nothing but SkipDir and SkipAll, so WalkDir no
	// error.
	_ = fs.WalkDir(t.root.FS(), dir, func(name string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			e := &Error{File: t.Shown(name), Message: reason(err)}
			if !utf8.ValidString(name) {
				e.Message = "has a name that is not UTF-8, so what is in it is not read; rename it"
			}
			failed(e)
			return fs.SkipDir
		case d.IsDir() && name != dir && strings.HasPrefix(d.Name(), "."):
			return fs.SkipDir
		case d.IsDir() && strings.Count(name, "/") >= MaxFolderDepth:
			failed(&Error{File: t.Shown(name), Message: errTooDeep.Error()})
			return fs.SkipDir
		case !d.IsDir() && !visit(name):
			return fs.SkipAll
		}
		return nil
	})
}

// RepositoryOf is the nearest folder, from an absolute path upwards, that holds
// .git; "" where none does.
func RepositoryOf(dir string) string {
	for {
		if _, err := os.Lstat(filepath.Join(dir, ".git")); err == nil {
			return dir
		}
		parent := filepath.Dir(dir)
		if parent == dir {
			return ""
		}
		dir = parent
	}
}

// Lacks reports whether the tree holds nothing of that name that could be read:
// it is missing, it would lie outside the root, or it is a link to either, or
// to itself.
func (t *Tree) Lacks(name string) bool {
	name = path.Clean(name)
	if filepath.IsLocal(filepath.FromSlash(name)) && t.reading.name(name) != nil {
		return false // Open says what is the matter
	}
	_, _, err := t.Trace(name)
	return errors.Is(err, fs.ErrNotExist) || errors.Is(err, errOutside) || errors.Is(err, errLoop)
}

// FromRoot gives a path, absolute or from the root, as one from the root, so
// that two of them can be compared: cleaned, beginning with ".." where it lies
// outside.
func (t *Tree) FromRoot(name string) string {
	if path.IsAbs(name) {
		if rel, err := filepath.Rel(t.dir, filepath.FromSlash(name)); err == nil {
			return filepath.ToSlash(rel)
		}
	}
	return path.Clean(name)
}

// Absent reports whether a list of files that may be missing names this one.
func (t *Tree) Absent(list []string, name string) bool {
	for _, may := range list {
		if t.FromRoot(may) == t.FromRoot(name) {
			return true
		}
	}
	return false
}
