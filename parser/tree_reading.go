package parser

import (
	"fmt"
	"maps"
	"slices"
	"sync"
)

// Limits of what reading one printer may take, apart from the limits of its
// style. They are far above what any printer needs.
const (
	MaxPrinterBytes = 64 << 20  // of files, as often as they are asked for
	MaxPrinterSteps = 1_000_000 // names asked for, and entries of folders looked at
)

// Reading is what was asked of a tree for one printer: names that were opened
// or looked for, there or not, and patterns. It also counts, and refuses what
// goes over the limits. The nil Reading counts nothing.
type Reading struct {
	mu       sync.Mutex
	names    map[string]bool
	patterns map[string]bool
	sum      int // bytes
	steps    int
}

// ForPrinter returns the same tree for the reading of one printer.
func (t *Tree) ForPrinter() (*Tree, *Reading) {
	u := *t
	u.reading = new(Reading)
	return &u, u.reading
}

// Names lists the paths inside the tree that were asked for, sorted.
func (r *Reading) Names() []string { return slices.Sorted(maps.Keys(r.names)) }

// Patterns lists the patterns that were asked for, sorted.
func (r *Reading) Patterns() []string { return slices.Sorted(maps.Keys(r.patterns)) }

func (r *Reading) name(name string) error {
	if r == nil {
		return nil
	}
	r.mu.Lock()
	defer r.mu.Unlock()
	if r.names == nil {
		r.names = make(map[string]bool)
	}
	r.names[name] = true
	return r.count(1)
}

func (r *Reading) pattern(pattern string) error {
	if r == nil {
		return nil
	}
	r.mu.Lock()
	defer r.mu.Unlock()
	if r.patterns == nil {
		r.patterns = make(map[string]bool)
	}
	r.patterns[pattern] = true
	return r.count(1)
}

func (r *Reading) step(n int) error {
	if r == nil {
		return nil
	}
	r.mu.Lock()
	defer r.mu.Unlock()
	return r.count(n)
}

func (r *Reading) count(n int) error {
	if r.steps += n; r.steps > MaxPrinterSteps {
		return fmt.Errorf("is where reading this printer takes more than %d steps; "+
			"look for patterns or includes that multiply", MaxPrinterSteps)
	}
	return nil
}

func (r *Reading) bytes(n int) error {
	if r == nil {
		return nil
	}
	r.mu.Lock()
	defer r.mu.Unlock()
	if r.sum += n; r.sum > MaxPrinterBytes {
		return fmt.Errorf("is where this printer takes more than %d MiB; no printer needs so much: "+
			"include fewer files", MaxPrinterBytes>>20)
	}
	return nil
}
