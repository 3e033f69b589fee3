package cli

import (
	"io"
	"sync"

	"github.com/schollz/progressbar/v3"
)

// fewPrinters are checked before anybody would look at a bar.
const fewPrinters = 200

// progress shows a bar on a terminal where the work is long. It returns nil
// where nobody would see it.
func progress(stderr io.Writer) func(done, all int) {
	if _, ok := terminal(stderr); !ok {
		return nil
	}
	var once sync.Once
	var bar *progressbar.ProgressBar
	return func(done, all int) {
		if all < fewPrinters {
			return
		}
		once.Do(func() {
			bar = progressbar.NewOptions(all,
				progressbar.OptionSetWriter(stderr),
				progressbar.OptionSetDescription("printers"),
				progressbar.OptionShowCount(),
				progressbar.OptionClearOnFinish())
		})
		_ = bar.Add(1) // a bar that cannot be drawn is no reason to stop
	}
}
