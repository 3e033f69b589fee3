package fleet

import (
	"strings"
	"testing"

	"preflash/rules"
)

// No message is longer than what is read in passing.
func TestWords(t *testing.T) {
	for _, dir := range []string{"demo", "order", "hostile"} {
		r := check(Options{Today: today}, "../../../testdata/"+dir)
		if len(r.Printers) < 5 {
			t.Fatalf("%s: %d printers", dir, len(r.Printers))
		}
		for i := range r.Printers {
			p := &r.Printers[i]
			for _, list := range [][]Finding{p.Findings, p.Every()} {
				for _, f := range list {
					if n := len(strings.Fields(f.Message)); n > rules.MostWords {
						t.Errorf("%s: %d words: %s", p.Name, n, f.Message)
					}
					if strings.Contains(f.Message, " …") {
						t.Errorf("%s, %s: cut in the middle: %s", p.Name, f.Rule, f.Message)
					}
				}
			}
		}
	}
}
