package defines

import (
	"testing"

	"preflash/parser"
)

// FuzzEdits reads any text as a configuration and asks for a change of every
// setting. Nothing may panic, and edits that are given must be in order and
// apart from each other; that they take hold is checked by Edits itself.
func FuzzEdits(f *testing.F) {
	for _, text := range []string{
		first, second, third, rest, "", "#define HEATER_0_MAXTEMP (\\\r\n285)",
		"#define MPCTEMP\n#define MPC_HEATER_POWER {,}\n",
	} {
		f.Add([]byte(text), 260.5, uint8(0))
	}
	tree := openTree(f, f.TempDir())
	f.Fuzz(func(t *testing.T, text []byte, value float64, tool uint8) {
		with := tree.With(map[string][]byte{tree.Shown("h"): text})
		c, err := readConfig(with, parser.Request{Files: []string{"h"}, Tool: int(tool % 9)})
		if err != nil {
			return
		}
		c.Entries()
		for d := range c.printer.Settings() {
			for _, v := range []any{
				value, true, parser.SensorDef{Form: parser.FormBeta, R25Ohm: 1e5, BetaK: 3950, CubicC: 1e-8},
			} {
				edits, err := c.Edits([]parser.Change{{Key: d.Key, Value: v}})
				if err != nil {
					continue
				}
				end := 0
				for _, e := range edits {
					if e.At.Start < end || e.At.End < e.At.Start || e.At.End > len(text) {
						t.Fatalf("%s: edit of %d to %d after one that ends at %d",
							d.Key, e.At.Start, e.At.End, end)
					}
					end = e.At.End
				}
			}
		}
	})
}
