package cli

import (
	"fmt"
	"io"
	"sync"
)

// fewPrinters are checked before anybody would look at a count.
const fewPrinters = 200

// progress counts the printers on a terminal where the work is long; finish takes
// the count away. The first result is nil where nobody would see it.
func progress(stderr io.Writer) (step func(done, all int), finish func()) {
	if _, ok := terminal(stderr); !ok {
		return nil, func() {}
	}
	var counting sync.Mutex
	most, width := 0, 0
	step = func(done, all int) {
		if all < fewPrinters || done%(fewPrinters/10) != 0 {
			return
		}
		counting.Lock()
		defer counting.Unlock()
		if most = max(most, done); most == done {
			width, _ = fmt.Fprintf(stderr, "\r%d of %d printers", done, all)
		}
	}
	return step, func() {
		if width > 0 {
			fmt.Fprintf(stderr, "\r%*s\r", width-len("\r"), "")
		}
	}
}
