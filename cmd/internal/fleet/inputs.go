package fleet

import (
	"sync"

	"preflash/rules"
)

// CheckWithInputs is Check, and gives what the rules looked at as well, by the
// index of the printer: nil where it could not be read.
func CheckWithInputs(paths []string, o Options) (*Result, []*rules.Input) {
	found := make(map[int]*rules.Input)
	var mu sync.Mutex
	r := checkAll(paths, &o, nil, func(i int, src *source) {
		mu.Lock()
		defer mu.Unlock()
		found[i] = src.input(o.Today)
	})
	inputs := make([]*rules.Input, len(r.Printers))
	for i, in := range found {
		inputs[i] = in
	}
	return r, inputs
}
