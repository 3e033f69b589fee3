package parser

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strings"
	"syscall"
	"unicode/utf8"
)

// Limits of what is read at all.
const (
	MaxFileBytes    = 8 << 20
	MaxFiles        = 256 // of one printer
	MaxIncludeDepth = 16
)

// Tree is the one door through which files are read. Nothing outside its root
// can be reached: not by "..", an absolute path or a symbolic link. A Tree is
// safe for use by several goroutines.
type Tree struct {
	root    *os.Root
	dir     string // root, absolute
	shown   string // root, relative to the working directory, with slashes
	below   string // the working directory inside the root; empty where it is not
	overlay map[string][]byte
}

// OpenTree opens dir as the root of all reading.
func OpenTree(dir string) (*Tree, error) {
	root, err := os.OpenRoot(dir)
	if err != nil {
		return nil, &Error{File: filepath.ToSlash(dir), Message: "cannot be opened as a folder: " + reason(err)}
	}
	abs, err := filepath.Abs(dir)
	if err != nil {
		abs = dir
	}
	return &Tree{root: root, dir: abs, shown: shownFrom(dir), below: belowOf(dir)}, nil
}

// belowOf gives the working directory as a path inside dir, with slashes; empty
// where it is dir itself or lies outside.
func belowOf(dir string) string {
	abs, err := filepath.Abs(dir)
	if err != nil {
		return ""
	}
	wd, err := os.Getwd()
	if err != nil {
		return ""
	}
	rel, err := filepath.Rel(abs, wd)
	if err != nil || rel == "." || !filepath.IsLocal(rel) {
		return ""
	}
	return filepath.ToSlash(rel)
}

// shownFrom gives dir relative to the working directory, or dir as it is
// where there is no such path.
func shownFrom(dir string) string {
	abs, err := filepath.Abs(dir)
	if err != nil {
		return filepath.ToSlash(dir)
	}
	wd, err := os.Getwd()
	if err != nil {
		return filepath.ToSlash(abs)
	}
	rel, err := filepath.Rel(wd, abs)
	if err != nil {
		return filepath.ToSlash(abs)
	}
	return filepath.ToSlash(rel)
}

// Dir is the root's absolute path.
func (t *Tree) Dir() string { return t.dir }

// Close releases the root.
func (t *Tree) Close() error { return t.root.Close() }

// With returns the same tree in which the files of these names (as shown) have
// other contents: how a diff is tried before anybody applies it.
func (t *Tree) With(contents map[string][]byte) *Tree {
	u := *t
	u.overlay = contents
	return &u
}

// Shown gives a path inside the tree as a person at the working directory
// would write it.
func (t *Tree) Shown(name string) string {
	if name = path.Clean(name); path.IsAbs(name) {
		return name // outside, and refused by the name that was written
	}
	// Where the working directory lies inside the root, shown is a way up
	// that must not lead down again into the same folders.
	up, below := t.shown, t.below
	for below != "" {
		folder, rest, _ := strings.Cut(below, "/")
		first, inside, deeper := strings.Cut(name, "/")
		if first != folder {
			break
		}
		if up = strings.TrimPrefix(strings.TrimPrefix(up, ".."), "/"); !deeper {
			inside = "."
		}
		below, name = rest, inside
	}
	return path.Join(up, name)
}

// Open reads the regular file with this slash-separated path inside the tree.
// It refuses what leaves the tree, what is no regular file, what is larger
// than MaxFileBytes, and what is no 8-bit text. The error is an *Error whose
// File is the path as shown.
func (t *Tree) Open(name string) (*File, error) {
	name = path.Clean(name)
	f := &File{Path: name, Name: t.Shown(name)}
	data, err := t.read(name)
	if err != nil {
		if e := (*Error)(nil); errors.As(err, &e) {
			e.File = f.Name
			return nil, e
		}
		return nil, &Error{File: f.Name, Message: reason(err)}
	}
	f.Data = data
	return f, nil
}

func (t *Tree) read(name string) ([]byte, error) {
	data, edited := t.overlay[t.Shown(name)]
	if !edited {
		var err error
		if data, err = t.readDisk(name); err != nil {
			return nil, err
		}
	}
	if bytes.HasPrefix(data, []byte("\xff\xfe")) || bytes.HasPrefix(data, []byte("\xfe\xff")) {
		return nil, errors.New("is UTF-16; save it as UTF-8 or another 8-bit encoding")
	}
	if at := bytes.IndexByte(data, 0); at >= 0 {
		line := 1 + bytes.Count(data[:at], []byte("\n"))
		return nil, &Error{Line: line, Message: fmt.Sprintf("holds a NUL byte in line %d; it is not a text file", line)}
	}
	return data, nil
}

func (t *Tree) readDisk(name string) ([]byte, error) {
	if !filepath.IsLocal(filepath.FromSlash(name)) {
		return nil, errOutside
	}
	// O_NONBLOCK: opening a FIFO must not wait for a writer.
	f, err := t.root.OpenFile(filepath.FromSlash(name), os.O_RDONLY|syscall.O_NONBLOCK, 0)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return nil, err
	}
	switch {
	case info.IsDir():
		return nil, errors.New("is a folder where a file should be")
	case !info.Mode().IsRegular():
		return nil, errors.New("is not a regular file; only regular files are read")
	case info.Size() > MaxFileBytes:
		return nil, errTooLarge
	}
	data := make([]byte, info.Size()+1)
	n, err := io.ReadFull(f, data)
	switch {
	case err == io.EOF || err == io.ErrUnexpectedEOF:
		return data[:n], nil
	case err != nil:
		return nil, err
	}
	// The file grew while it was read, or has no true size (as under /proc).
	rest, err := io.ReadAll(io.LimitReader(f, MaxFileBytes))
	if err != nil {
		return nil, err
	}
	if data = append(data[:n], rest...); len(data) > MaxFileBytes {
		return nil, errTooLarge
	}
	return data, nil
}

// OutsideRoot is what is said of a file that the tree does not hold.
const OutsideRoot = "lies outside the root that bounds all reading; move it inside, or name a wider folder with --root"

var (
	errOutside  = errors.New(OutsideRoot)
	errTooLarge = fmt.Errorf("is larger than %d MiB; no configuration is", MaxFileBytes>>20)
)

// reason says why a file could not be read, without the operating system's
// own name for the call.
func reason(err error) string {
	var pathErr *fs.PathError
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return "does not exist; correct the name, or add the file"
	case errors.Is(err, fs.ErrPermission):
		return "may not be read; give read permission"
	case isOutside(err):
		return errOutside.Error()
	case errors.As(err, &pathErr):
		return "cannot be read: " + pathErr.Err.Error()
	}
	return err.Error()
}

// Exists reports whether the tree may hold something of that name. A link that
// leads nowhere is nothing. What cannot be told counts as there, such as what
// lies behind a link out of the tree: Open then says why it is refused.
func (t *Tree) Exists(name string) bool {
	_, err := t.root.Stat(filepath.FromSlash(path.Clean(name)))
	return !isMissing(err)
}

func isMissing(err error) bool {
	return errors.Is(err, fs.ErrNotExist) || errors.Is(err, syscall.ENOTDIR)
}

// Lacks reports whether the tree holds nothing of that name that could be read:
// it is missing, it would lie outside the root, or it is a link to either, or
// to itself.
func (t *Tree) Lacks(name string) bool {
	local := filepath.FromSlash(path.Clean(name))
	if !filepath.IsLocal(local) {
		return true
	}
	_, err := t.root.Stat(local)
	return isMissing(err) || isOutside(err) || errors.Is(err, syscall.ELOOP)
}

func isOutside(err error) bool {
	return err != nil && strings.Contains(err.Error(), "path escapes from parent")
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
	if !strings.ContainsAny(part, `*?[\`) {
		// A link that leads nowhere matches, as in a shell.
		name := path.Join(dir, part)
		if _, err := t.root.Lstat(filepath.FromSlash(name)); isMissing(err) {
			return nil, nil
		}
		return []string{name}, nil
	}
	info, err := t.root.Stat(filepath.FromSlash(dir))
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, nil
	case err != nil:
		return nil, &Error{File: t.Shown(dir), Message: reason(err)}
	case !info.IsDir():
		return nil, nil
	}
	entries, err := fs.ReadDir(t.root.FS(), dir)
	if err != nil {
		return nil, &Error{File: t.Shown(dir), Message: reason(err)}
	}
	var names []string
	for _, e := range entries {
		if ok, _ := path.Match(part, e.Name()); ok {
			// As a shell's glob: a leading dot must be asked for.
			if strings.HasPrefix(e.Name(), ".") && !strings.HasPrefix(part, ".") {
				continue
			}
			names = append(names, path.Join(dir, e.Name()))
		}
	}
	return names, nil // fs.ReadDir sorts by name
}

// Walk calls visit for everything below dir that is no folder, in the order of
// the paths, and failed for each folder that cannot be read: what it holds
// stays unknown, and the walk goes on. What is no regular file is left to Open,
// which refuses it by name or follows a link inside the tree. Walk itself
// follows no link, and passes over folders whose name starts with a dot.
func (t *Tree) Walk(dir string, visit func(file string), failed func(error)) {
	dir = path.Clean(dir)
	// The function below returns nothing but SkipDir, so WalkDir no error.
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
		case !d.IsDir():
			visit(name)
		}
		return nil
	})
}
