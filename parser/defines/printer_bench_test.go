package defines

import (
	"testing"

	"preflash/parser"
)

// BenchmarkMap is the mapping alone: from final macros to the printer, its
// remarks included, for a configuration of 8,000 lines.
func BenchmarkMap(b *testing.B) {
	tree := openTree(b, b.TempDir())
	t := tree.With(map[string][]byte{tree.Shown("h"): []byte(large() + second)})
	s, err := load(t, parser.Request{Files: []string{"h"}}, option)
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		r := &reader{s: s, gen: s.gen, basis: s.basis}
		p := r.printer(0)
		p.Remarks = append(p.Remarks, unrecognised(s)...)
		p.Remarks = append(p.Remarks, overrides(t, s)...)
		if len(p.Remarks) > 0 || p.Limits.MaxTemp.Value != 275 {
			b.Fatal("the printer is not the one that was written")
		}
	}
}
