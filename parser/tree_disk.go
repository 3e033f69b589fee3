package parser

import (
	"io/fs"
	"path"
	"strings"
	"sync"
	"time"
)

// FileID tells a file from every other on this computer, whatever name it was
// reached by. The zero FileID is of no file on a disk.
type FileID struct{ volume, index uint64 }

// maxKeptBytes bounds what is kept of the files that were read last, so that a
// printer's files, and those that printers share, are read once.
const maxKeptBytes = 8 << 20

// disk remembers what was found on the disk in this run.
type disk struct {
	folders  sync.Map // path as written → traced
	listings sync.Map // real folder → []fs.DirEntry, sorted by name

	mu      sync.Mutex
	files   map[FileID]kept
	order   []FileID          // of files, the one that was read first first
	bytes   int               // in files
	reads   int               // of whole files
	spelled map[FileID]string // the real path that was met first
}

// kept is a file that was read, and how it looked then.
type kept struct {
	size  int64
	mtime time.Time
	data  []byte
}

func newDisk() *disk {
	return &disk{files: make(map[FileID]kept), spelled: make(map[FileID]string)}
}

// content gives what was read of a file, where it did not change since.
func (d *disk) content(id FileID, info fs.FileInfo) ([]byte, bool) {
	d.mu.Lock()
	defer d.mu.Unlock()
	k, ok := d.files[id]
	return k.data, ok && id != FileID{} && k.size == info.Size() && k.mtime.Equal(info.ModTime())
}

// keep remembers what was read of a file.
func (d *disk) keep(id FileID, info fs.FileInfo, data []byte) {
	d.mu.Lock()
	defer d.mu.Unlock()
	d.reads++
	if len(data) > maxKeptBytes || (id == FileID{}) {
		return
	}
	if _, again := d.files[id]; !again {
		d.order = append(d.order, id)
	}
	d.bytes += len(data) - len(d.files[id].data)
	d.files[id] = kept{info.Size(), info.ModTime(), data}
	for d.bytes > maxKeptBytes {
		first := d.order[0]
		d.order = d.order[1:]
		d.bytes -= len(d.files[first].data)
		delete(d.files, first)
	}
}

// spelling gives a file one real path where the disk takes upper and lower case
// for the same: the one met first. Two names in one folder, both of which lists
// knows, are two: hard links.
func (d *disk) spelling(id FileID, real string, lists func(real string) bool) string {
	d.mu.Lock()
	known, met := d.spelled[id]
	if !met {
		d.spelled[id] = real
	}
	d.mu.Unlock()
	if !met || (id == FileID{}) || !strings.EqualFold(known, real) {
		return real
	}
	if known == real || lists(known) && lists(real) {
		return real
	}
	return known
}

// lists reports whether every folder on the way holds a real path's part in
// just this spelling.
func (t *Tree) lists(real string) bool {
	for ; real != "."; real = path.Dir(real) {
		entries, err := fs.ReadDir(t.root.FS(), path.Dir(real))
		if err != nil {
			return true // then nothing says that the names are one
		}
		found := false
		for _, e := range entries {
			found = found || e.Name() == path.Base(real)
		}
		if !found {
			return false
		}
	}
	return true
}
