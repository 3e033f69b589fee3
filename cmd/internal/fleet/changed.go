package fleet

import (
	"crypto/sha1"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"hash"
	"io/fs"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"preflash/parser"
)

// history is what a tree held at a revision and holds at HEAD.
type history struct {
	tree      *parser.Tree
	prefix    string // of the tree's root inside the repository: "" or ending in a slash
	then, now *snapshot
	sha256    bool
}

// historyOf asks git about the repository that holds a tree.
func historyOf(tree *parser.Tree, rev string) (*history, error) {
	dir, err := filepath.EvalSymlinks(tree.Dir())
	if err != nil {
		return nil, err
	}
	r, err := openRepository(dir)
	if err != nil {
		return nil, err
	}
	defer r.Close()
	h := &history{tree: tree, sha256: r.sha256}
	inside, err := filepath.Rel(r.top, dir)
	if err != nil {
		return nil, err
	}
	if inside != "." {
		h.prefix = filepath.ToSlash(inside) + "/"
	}
	for _, one := range []struct {
		rev  string
		snap **snapshot
	}{{rev, &h.then}, {"HEAD", &h.now}} {
		commit, err := r.commit(one.rev)
		if err != nil {
			return nil, err
		}
		if *one.snap, err = r.snapshot(commit); err != nil {
			return nil, err
		}
	}
	return h, nil
}

// touched reports whether anything that was asked for to read a printer is not
// what it was at the revision: the bytes of a file, a link on the way, what a
// pattern matches, or that there is such a file at all. What git would convert
// differs in its bytes; what lies in a submodule is unknown to the repository.
// Both count as changed.
func (h *history) touched(r *parser.Reading) bool {
	return slices.ContainsFunc(r.Names(), h.nameChanged) ||
		slices.ContainsFunc(r.Patterns(), h.patternChanged)
}

// nameChanged compares one path, and the links on the way to it.
func (h *history) nameChanged(name string) bool {
	real, links, err := h.tree.Trace(name)
	if err != nil && !errors.Is(err, fs.ErrNotExist) || h.linksChanged(links) || h.inSubmodule(real) {
		return true
	}
	was, had := h.then.entries[h.prefix+real]
	if err != nil {
		return had || h.belowFile(real)
	}
	info, err := h.tree.Lstat(real)
	switch {
	case err != nil:
		return true
	case info.IsDir(): // a name that was looked for, and is no file
		return was.mode != modeFolder
	case was.mode != modeFile && was.mode != modeExecutable:
		return true
	}
	f, err := h.tree.Open(real)
	return err != nil || h.hash(f.Data) != was.hash
}

// linksChanged compares what links lead to, by their real paths.
func (h *history) linksChanged(links []string) bool {
	return slices.ContainsFunc(links, func(link string) bool {
		was := h.then.entries[h.prefix+link]
		target, err := h.tree.Readlink(link)
		return err != nil || was.mode != modeLink || h.hash([]byte(target)) != was.hash || h.inSubmodule(link)
	})
}

// inSubmodule reports whether a real path is or lies in a submodule, then or now.
func (h *history) inSubmodule(real string) bool {
	for ; real != "."; real = path.Dir(real) {
		for _, s := range []*snapshot{h.then, h.now} {
			if s.entries[h.prefix+real].mode == modeSubmodule {
				return true
			}
		}
	}
	return false
}

// belowFile reports whether what is no folder now, or not there, was a file or
// a link then, on the way to a path that does not exist.
func (h *history) belowFile(real string) bool {
	for real = path.Dir(real); real != "."; real = path.Dir(real) {
		if was, had := h.then.entries[h.prefix+real]; had && was.mode != modeFolder {
			return true
		}
	}
	return false
}

// patternChanged compares what a pattern matched and matches, part by part.
// Where a folder is reached in the same way and the same names match in it,
// what lies below is compared in its turn.
func (h *history) patternChanged(pattern string) bool {
	found := []string{"."}
	parts := strings.Split(pattern, "/")
	for i, part := range parts {
		var next []string
		for _, dir := range found {
			if !parser.IsPattern(part) {
				next = append(next, path.Join(dir, part))
				continue
			}
			real, links, err := h.tree.Trace(dir)
			missing := errors.Is(err, fs.ErrNotExist)
			if err != nil && !missing || h.linksChanged(links) || h.inSubmodule(real) ||
				missing && h.belowFile(real) {
				return true
			}
			var names []string
			if !missing {
				if names, err = h.tree.List(real, part); err != nil {
					return true
				}
			}
			if !slices.Equal(names, h.matched(real, part)) {
				return true
			}
			for _, name := range names {
				next = append(next, path.Join(dir, name))
			}
		}
		if found = next; i == len(parts)-1 {
			return slices.ContainsFunc(found, h.nameChanged)
		}
	}
	return false
}

// matched lists the names in a folder that matched one part of a pattern then,
// sorted.
func (h *history) matched(real, part string) []string {
	folder := strings.TrimSuffix(h.prefix, "/")
	if real != "." {
		folder = h.prefix + real
	}
	var names []string
	for _, name := range h.then.folders[folder] {
		if parser.Matches(part, name) {
			names = append(names, name)
		}
	}
	slices.Sort(names)
	return names
}

// hash is git's name for the content of a file.
func (h *history) hash(data []byte) string {
	var sum hash.Hash = sha1.New()
	if h.sha256 {
		sum = sha256.New()
	}
	fmt.Fprintf(sum, "blob %d\x00", len(data))
	sum.Write(data)
	return hex.EncodeToString(sum.Sum(nil))
}

// missing lists the sheets below a folder that the revision has and HEAD has
// not, and those that HEAD has and the disk has not.
func (h *history) missing(folder string, onDisk map[string]bool) (gone, notHere []string) {
	for name := range h.then.entries {
		if file, ok := h.sheetBelow(name, folder); ok && !onDisk[file] {
			if _, still := h.now.entries[name]; !still {
				gone = append(gone, file)
			}
		}
	}
	for name := range h.now.entries {
		if file, ok := h.sheetBelow(name, folder); ok && !onDisk[file] {
			notHere = append(notHere, file)
		}
	}
	slices.Sort(gone)
	slices.Sort(notHere)
	return gone, notHere
}

// sheetBelow gives the path inside the tree of an entry that a search of the
// folder would have taken for a sheet.
func (h *history) sheetBelow(name, folder string) (file string, ok bool) {
	file, ok = strings.CutPrefix(name, h.prefix)
	below := file
	if folder != "." {
		var in bool
		below, in = strings.CutPrefix(file, folder+"/")
		ok = ok && in
	}
	hidden := strings.Contains("/"+path.Dir(below), "/.") && path.Dir(below) != "."
	if !ok || hidden || !isSheet(path.Base(file)) {
		return "", false
	}
	return file, true
}

// onlyChanged leaves out the sources of which nothing changed since the revision
// of the options. One that cannot be read stays: what it reads cannot be told.
// Sheets that went are told, of the folders that were searched.
func (f *Fleet) onlyChanged(folders []Target) {
	histories := make(map[*parser.Tree]*history)
	onDisk := make(map[*parser.Tree]map[string]bool)
	ask := func(tree *parser.Tree) {
		if _, asked := histories[tree]; asked {
			return
		}
		h, err := historyOf(tree, f.Options.Since)
		if err != nil {
			f.problems = append(f.problems, problemOf(err))
		}
		histories[tree], onDisk[tree] = h, make(map[string]bool)
	}
	before := len(f.problems)
	for _, s := range f.Sources {
		ask(s.Tree)
		onDisk[s.Tree][s.target.Sheet] = s.target.without == nil
	}
	for _, folder := range folders {
		ask(folder.Tree)
	}
	if len(f.problems) > before {
		f.Sources = nil
		return
	}
	var notHere []string
	for _, folder := range folders {
		gone, missing := histories[folder.Tree].missing(folder.Sheet, onDisk[folder.Tree])
		f.gone = append(f.gone, shownAll(folder.Tree, gone)...)
		notHere = append(notHere, shownAll(folder.Tree, missing)...)
	}
	slices.Sort(f.gone) // one folder may hold another
	slices.Sort(notHere)
	f.gone = slices.Compact(f.gone)
	for _, name := range slices.Compact(notHere) {
		f.problems = append(f.problems, Problem{File: name,
			Message: "is not checked out: HEAD holds this sheet and the disk does not, so its printer is " +
				"not checked; git checkout brings it back, git rm and a commit take it away"})
	}
	f.each(func(i int) { f.Sources[i].load() })
	f.Sources = slices.DeleteFunc(f.Sources, func(s *Source) bool {
		same := s.Err == nil && !histories[s.Tree].touched(s.reading)
		if same {
			f.unchanged = append(f.unchanged, s.Name())
		}
		return same
	})
}
