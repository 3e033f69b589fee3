package cli

import (
	"io"
	"sync"

	"github.com/vbauerster/mpb/v8"
	"github.com/vbauerster/mpb/v8/decor"
)

// fewPrinters are checked before anybody would look at a bar.
const fewPrinters = 200

// progress shows a bar on a terminal where the work is long; finish takes it
// away. The first result is nil where nobody would see a bar.
func progress(stderr io.Writer) (step func(done, all int), finish func()) {
	if _, ok := terminal(stderr); !ok {
		return nil, func() {}
	}
	bars := mpb.New(mpb.WithOutput(stderr))
	var once sync.Once
	var bar *mpb.Bar
	step = func(_, all int) {
		if all < fewPrinters {
			return
		}
		once.Do(func() {
			bar = bars.AddBar(int64(all), mpb.BarRemoveOnComplete(),
				mpb.PrependDecorators(decor.CountersNoUnit("%d of %d printers ")))
		})
		bar.Increment()
	}
	return step, bars.Wait
}
