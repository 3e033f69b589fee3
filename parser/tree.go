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
	"strconv"
	"strings"
	"syscall"
)

// Limits of what is read at all.
const (
	MaxFileBytes    = 8 << 20
	MaxFiles        = 256 // of one printer, patterns counted
	MaxIncludeDepth = 16
	MaxFolderDepth  = 64 // folders in folders, below the root
)

// Tree is the one door through which files are read. Nothing outside its root
// can be reached: not by "..", an absolute path or a symbolic link; nor what
// git keeps in .git. A Tree is safe for use by several goroutines.
type Tree struct {
	root    *os.Root
	dir     string // root, absolute
	shown   string // root, relative to the working directory, with slashes
	below   string // the working directory inside the root; empty where it is not
	overlay map[string][]byte
	disk    *disk
	reading *Reading // what is counted; nil where nothing is
}

// OpenTree opens dir as the root of all reading.
func OpenTree(dir string) (*Tree, error) {
	root, err := os.OpenRoot(dir)
	if err != nil {
		return nil, &Error{File: filepath.ToSlash(dir),
			Message: "cannot be opened as a folder: " + reason(err)}
	}
	abs, err := filepath.Abs(dir)
	if err != nil {
		abs = dir
	}
	return &Tree{root: root, dir: abs, shown: shownFrom(dir), below: belowOf(dir), disk: newDisk()}, nil
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

// With returns the same tree in which the files of these real names (as
// File.Real has them) have other contents: how a diff is tried before anybody
// applies it. What is read through it is counted anew.
func (t *Tree) With(contents map[string][]byte) *Tree {
	u := *t
	u.overlay = contents
	u.reading = new(Reading)
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
// It refuses what leaves the tree, what lies in .git, what is no regular file,
// what is larger than MaxFileBytes, and what is no 8-bit text. The error is an
// *Error whose File is the path as shown.
func (t *Tree) Open(name string) (*File, error) {
	name = path.Clean(name)
	f := &File{Path: name, Name: t.Shown(name)}
	if err := t.read(f); err != nil {
		if e := (*Error)(nil); errors.As(err, &e) {
			e.File = f.Name
			return nil, e
		}
		return nil, &Error{File: f.Name, Message: reason(err)}
	}
	return f, nil
}

// read fills a file whose names are known.
func (t *Tree) read(f *File) error {
	if err := t.reading.name(f.Path); err != nil {
		return err
	}
	real, _, err := t.Trace(f.Path)
	f.Real = t.Shown(real)
	edited, isEdited := t.overlay[f.Real]
	if err != nil && !(isEdited && errors.Is(err, fs.ErrNotExist)) {
		return err
	}
	if err == nil {
		if err := t.readDisk(f, real); err != nil {
			return err
		}
		edited, isEdited = t.overlay[f.Real]
	}
	if isEdited {
		f.Data = edited
	}
	if err := t.reading.bytes(len(f.Data)); err != nil {
		return err
	}
	if bytes.HasPrefix(f.Data, []byte("\xff\xfe")) || bytes.HasPrefix(f.Data, []byte("\xfe\xff")) {
		return errors.New("is UTF-16; save it as UTF-8 or another 8-bit encoding")
	}
	if at := bytes.IndexByte(f.Data, 0); at >= 0 {
		line := 1 + bytes.Count(f.Data[:at], []byte("\n"))
		return &Error{Line: line,
			Message: fmt.Sprintf("holds a NUL byte in line %d; it is not a text file", line)}
	}
	return nil
}

// readDisk fills in what the disk holds under a real name. A file that was
// read before, under whatever name, is not read again.
func (t *Tree) readDisk(f *File, real string) error {
	// O_NONBLOCK: opening a FIFO must not wait for a writer.
	file, err := t.root.OpenFile(filepath.FromSlash(real), os.O_RDONLY|syscall.O_NONBLOCK, 0)
	if err != nil {
		return err
	}
	defer file.Close()
	info, err := file.Stat()
	if err != nil {
		return err
	}
	switch {
	case info.IsDir():
		return errors.New("is a folder where a file should be")
	case !info.Mode().IsRegular():
		return errors.New("is not a regular file; only regular files are read")
	case info.Size() > MaxFileBytes:
		return errTooLarge
	}
	f.ID = idOf(file, info)
	f.Real = t.Shown(t.disk.spelling(f.ID, real, t.lists))
	if data, kept := t.disk.content(f.ID, info); kept {
		f.Data = data
		return nil
	}
	if f.Data, err = readAll(file, info.Size()); err != nil {
		return err
	}
	t.disk.keep(f.ID, info, f.Data)
	return nil
}

// readAll reads a file that says to have so many bytes.
func readAll(file io.Reader, size int64) ([]byte, error) {
	data := make([]byte, size+1)
	n, err := io.ReadFull(file, data)
	switch {
	case err == io.EOF || err == io.ErrUnexpectedEOF:
		return data[:n], nil
	case err != nil:
		return nil, err
	}
	// The file grew while it was read, or has no true size (as under /proc).
	rest, err := io.ReadAll(io.LimitReader(file, MaxFileBytes))
	if err != nil {
		return nil, err
	}
	if data = append(data[:n], rest...); len(data) > MaxFileBytes {
		return nil, errTooLarge
	}
	return data, nil
}

// OutsideRoot is what is said of a file that the tree does not hold.
const OutsideRoot = "lies outside the root that bounds all reading; " +
	"move it inside, or name a wider folder with --root"

var (
	errOutside  = errors.New(OutsideRoot)
	errTooLarge = errors.New("is larger than " + strconv.Itoa(MaxFileBytes>>20) + " MiB; no configuration is")
	errTooDeep  = errors.New("lies more than " + strconv.Itoa(MaxFolderDepth) + " folders deep; " +
		"move it nearer to the root")
	errLoop = errors.New("leads through more than " + strconv.Itoa(maxLinks) + " links, or in a circle; " +
		"let it name the file itself")
	errPrivate = errors.New("belongs to git, and is not read; name a file outside of .git")
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
	case errors.As(err, &pathErr):
		return "cannot be read: " + pathErr.Err.Error()
	}
	return err.Error()
}
