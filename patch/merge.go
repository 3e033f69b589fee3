package patch

import (
	"bytes"
	"cmp"
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
	File  *parser.File
	Edits []parser.Edit
}

// wish is one edit and the sheet that asked for it first.
type wish struct {
	parser.Edit
	owner string
}

// Merge gathers the edits of several printers file by file, in order of first
// appearance. Files are told apart by their real names as shown, since two trees
// may hold the same inner path, and two paths may lead to one file. Equal edits
// are kept once. The error is a *parser.Error: two sheets disagree, or they met
// different contents under one name.
func Merge(sets []Owned) ([]FileEdits, error) {
	var files []FileEdits
	var wishes [][]wish // by index of files
	index := map[string]int{}
	for _, set := range sets {
		for _, e := range set.Edits {
			if e.At.File == nil {
				return nil, &parser.Error{File: set.Owner,
					Message: fmt.Sprintf("an edit of the %s belongs to no file; this is a fault in "+
						"preflash, please report it", e.For)}
			}
			i, seen := index[e.At.File.Real]
			if !seen {
				i = len(files)
				index[e.At.File.Real] = i
				files = append(files, FileEdits{File: e.At.File})
				wishes = append(wishes, nil)
			}
			if f := files[i].File; e.At.File != f {
				if !bytes.Equal(e.At.File.Data, f.Data) {
					return nil, &parser.Error{File: f.Name,
						Message: fmt.Sprintf("changed while it was read for %s and for %s; run again",
							wishes[i][0].owner, set.Owner)}
				}
				e.At.File = f
			}
			wishes[i] = append(wishes[i], wish{e, set.Owner})
		}
	}
	for i := range files {
		var err error
		if files[i].Edits, err = mergeEdits(wishes[i]); err != nil {
			return nil, err
		}
	}
	return files, nil
}

// byPlace orders edits of one file; an insertion comes before a replacement
// that starts where it stands.
func byPlace(a, b parser.Edit) int {
	return cmp.Or(cmp.Compare(a.At.Start, b.At.Start), cmp.Compare(a.At.End, b.At.End))
}

// mergeEdits sorts the edits of one file and keeps equal ones once.
func mergeEdits(wishes []wish) (edits []parser.Edit, err error) {
	slices.SortStableFunc(wishes, func(a, b wish) int { return byPlace(a.Edit, b.Edit) })
	var kept []wish
	for _, w := range wishes {
		equal := false
		// Kept edits do not overlap: from the first that ends before w on, none
		// can touch it.
		for i := len(kept) - 1; i >= 0 && kept[i].At.End >= w.At.Start && !equal; i-- {
			k := kept[i]
			equal = k.At == w.At && k.New == w.New
			if !equal && collide(k.Edit, w.Edit) {
				return nil, parser.Errorf(w.At,
					"%s and %s share this file and want different changes here: %s %q and %s %q; let their "+
						"sheets agree, or give each printer a file of its own",
					k.owner, w.owner, k.For, k.New, w.For, w.New)
			}
		}
		if !equal {
			kept = append(kept, w)
			edits = append(edits, w.Edit)
		}
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
