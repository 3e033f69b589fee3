package parser

import (
	"errors"
	"io/fs"
	"path"
	"path/filepath"
	"strings"
	"syscall"
	"unicode"
)

// maxLinks is how many links may lie on the way to one file, as Linux has it
// (path_resolution(7)).
const maxLinks = 40

// Trace follows a path inside the tree through every link. It returns the real
// path, free of links, and the real paths of the links on the way, in the order
// in which they are met. What does not exist is fs.ErrNotExist, with the path
// at which it would lie. Whether a path leaves the tree is told here, from the
// links themselves.
func (t *Tree) Trace(name string) (real string, links []string, err error) {
	name = path.Clean(filepath.ToSlash(name)) // Windows takes a backslash too
	if !filepath.IsLocal(filepath.FromSlash(name)) {
		return name, nil, errOutside
	}
	if strings.Count(name, "/") > MaxFolderDepth {
		return name, nil, errTooDeep
	}
	dir, base := path.Split(name)
	at := traced{real: "."}
	if dir != "" {
		if at = t.traceFolder(path.Clean(dir)); at.err != nil {
			return path.Join(at.real, base), at.links, at.err
		}
	}
	at = t.follow(at, base)
	return at.real, at.links, at.err
}

// traced is how far a path was followed.
type traced struct {
	real  string
	links []string
	err   error
}

// traceFolder is Trace of a folder, remembered: many files lie in one.
func (t *Tree) traceFolder(name string) traced {
	if known, ok := t.disk.folders.Load(name); ok {
		return known.(traced)
	}
	at := t.follow(traced{real: "."}, name)
	t.disk.folders.Store(name, at)
	return at
}

// follow goes on from a real folder.
func (t *Tree) follow(at traced, name string) traced {
	links := at.links[:len(at.links):len(at.links)]
	real := at.real
	rest := strings.Split(name, "/")
	stop := func(err error) traced {
		return traced{path.Join(append([]string{real}, rest...)...), links, err}
	}
	for len(rest) > 0 {
		part := rest[0]
		switch part {
		case "", ".":
			rest = rest[1:]
			continue
		case "..":
			if real == "." {
				return stop(errOutside)
			}
			real, rest = path.Dir(real), rest[1:]
			continue
		}
		if private(part) {
			return stop(errPrivate)
		}
		next := path.Join(real, part)
		if strings.Count(next, "/") > MaxFolderDepth {
			return stop(errTooDeep)
		}
		info, err := t.Lstat(next)
		switch {
		case err != nil:
			return stop(err)
		case info.Mode()&fs.ModeSymlink == 0:
			real, rest = next, rest[1:]
			continue
		}
		if links = append(links, next); len(links) > maxLinks {
			return stop(errLoop)
		}
		target, err := t.root.Readlink(filepath.FromSlash(next))
		if err != nil {
			return stop(err)
		}
		if target = filepath.ToSlash(target); path.IsAbs(target) || filepath.VolumeName(target) != "" {
			return stop(errOutside)
		}
		rest = append(strings.Split(target, "/"), rest[1:]...)
	}
	return traced{real, links, nil}
}

// missing takes a path through what is no folder for one that does not exist.
func missing(err error) error {
	if errors.Is(err, syscall.ENOTDIR) {
		return fs.ErrNotExist
	}
	return err
}

// Readlink gives what a link, by its real path, leads to, as it is written.
func (t *Tree) Readlink(real string) (string, error) {
	return t.root.Readlink(filepath.FromSlash(real))
}

// private reports whether a part of a path is git's own folder, by any name
// under which a disk may find it: in other letters, as its short name, with the
// dots and blanks that Windows drops or a stream behind a colon, or with
// characters that macOS ignores (the ones that git itself guards against).
func private(part string) bool {
	part, _, _ = strings.Cut(part, ":")
	part = strings.TrimRight(part, ". ")
	part = strings.Map(func(r rune) rune {
		if unicode.Is(unicode.Cf, r) {
			return -1
		}
		return r
	}, part)
	return strings.EqualFold(part, ".git") || strings.EqualFold(part, "git~1")
}
