package rules

import (
	"slices"
	"testing"

	"preflash/parser"
)

// A style that fills only the max temp hears of nothing else, but for what the
// sheet alone says.
func TestAbsentSettings(t *testing.T) {
	bare := func(maxC float64) []string {
		in := healthyInput()
		ofSheet := Check(in)
		maxTemp := in.Printer.Limits.MaxTemp
		*in.Printer = parser.Printer{Style: in.Printer.Style}
		if maxTemp.Value = maxC; maxC > 0 {
			in.Printer.Limits.MaxTemp = maxTemp
		}
		var found []string
		for _, f := range Check(in) {
			if !slices.ContainsFunc(ofSheet, func(g Finding) bool { return g.Rule == f.Rule }) {
				found = append(found, f.Rule)
			}
		}
		return found
	}
	for _, tt := range []struct {
		maxC float64
		want []string
	}{{0, nil}, {290, nil}, {400, []string{"temp-ceiling"}}} {
		if found := bare(tt.maxC); !slices.Equal(found, tt.want) {
			t.Errorf("with a max temp of %g °C: %q, want %q", tt.maxC, found, tt.want)
		}
	}
}
