package patch

import (
	"bytes"
	"fmt"
	"slices"

	"preflash/parser"
)

// Owned are the edits that one sheet asks for.
type Owned struct {
	Owner string // the sheet, as shown to a person
	Edits []parser.Edit
}

// FileEdits are all edits of one file, sorted by place, none overlapping.
type FileEdits struct {
	File   *parser.File
	Edits  []parser.Edit
	Owners []string // who asks for them, in the order given
}

// Conflict is two sheets that want different text at one place of a file that
// they share.
type Conflict struct {
	Owners [2]string
	Edits  [2]parser.Edit
}

func (c *Conflict) Error() string {
	return fmt.Sprintf("%s: %s and %s share this file and want different changes here: %s and %s; let their sheets agree, or give each printer a file of its own",
		c.Edits[1].At, c.Owners[0], c.Owners[1], wish(c.Edits[0]), wish(c.Edits[1]))
}

func wish(e parser.Edit) string { return fmt.Sprintf("%s %q", e.For, e.New) }

// owned is one edit and the sheet that asked for it first.
type owned struct {
	parser.Edit
	owner string
}

// Merge gathers the edits of several printers file by file, in order of first
// appearance. Files are told apart by their real names as shown, since two trees
// may hold the same inner path, and two paths may lead to one file. Equal edits
// are kept once. The error is a *Conflict where two sheets disagree, and a *parser.Error where the sheets met
// different contents under one name.
func Merge(sets []Owned) ([]FileEdits, error) {
	var files []FileEdits
	var wishes [][]owned // by index of files
	index := map[string]int{}
	for _, set := range sets {
		for _, e := range set.Edits {
			if e.At.File == nil {
				return nil, &parser.Error{File: set.Owner, Message: fmt.Sprintf("an edit of the %s belongs to no file; this is a fault in preflash, please report it", e.For)}
			}
			i, seen := index[e.At.File.Real]
			if !seen {
				i = len(files)
				index[e.At.File.Real] = i
				files = append(files, FileEdits{File: e.At.File})
				wishes = append(wishes, nil)
			}
			f := &files[i]
			if e.At.File != f.File {
				if !bytes.Equal(e.At.File.Data, f.File.Data) {
					return nil, &parser.Error{File: f.File.Name, Message: fmt.Sprintf("changed while it was read for %s and for %s; run again", f.Owners[0], set.Owner)}
				}
				e.At.File = f.File
			}
			if !slices.Contains(f.Owners, set.Owner) {
				f.Owners = append(f.Owners, set.Owner)
			}
			wishes[i] = append(wishes[i], owned{e, set.Owner})
		}
	}
	for i := range files {
		var err error
		if files[i].Edits, err = settle(wishes[i]); err != nil {
			return nil, err
		}
	}
	return files, nil
}

// settle sorts the edits of one file and keeps equal ones once.
func settle(wishes []owned) ([]parser.Edit, error) {
	slices.SortStableFunc(wishes, func(a, b owned) int { return byPlace(a.Edit, b.Edit) })
	var kept []owned
	for _, w := range wishes {
		equal := false
		// Kept edits do not overlap: from the first that ends before w on, none
		// can touch it.
		for i := len(kept) - 1; i >= 0 && kept[i].At.End >= w.At.Start && !equal; i-- {
			k := kept[i]
			equal = k.At == w.At && k.New == w.New
			if !equal && collide(k.Edit, w.Edit) {
				return nil, &Conflict{Owners: [2]string{k.owner, w.owner}, Edits: [2]parser.Edit{k.Edit, w.Edit}}
			}
		}
		if !equal {
			kept = append(kept, w)
		}
	}
	edits := make([]parser.Edit, len(kept))
	for i, k := range kept {
		edits[i] = k.Edit
	}
	return edits, nil
}

// collide reports whether two edits of one file, the first not after the
// second, cannot both be made. Two insertions at one place can, unless they
// spell one setting in two ways.
func collide(a, b parser.Edit) bool {
	if a.At == b.At && a.At.Start == a.At.End {
		return a.For == b.For
	}
	return a.At.End > b.At.Start
}
