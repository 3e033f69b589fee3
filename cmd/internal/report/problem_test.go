package report

import (
	"strings"
	"testing"

	"preflash/cmd/internal/fleet"
)

// What is wrong with a sheet is told line by line, so that a person can go
// through it.
func TestEachProblemHasItsLine(t *testing.T) {
	r := &fleet.Result{Printers: []fleet.Printer{{Name: "a.toml", Sheet: "a.toml", Problem: &fleet.Problem{
		File: "a.toml", Line: 7, Message: "first; a.toml:9: second",
		Parts: []fleet.Problem{{File: "a.toml", Line: 7, Message: "first"},
			{File: "a.toml", Line: 9, Message: "second"}},
	}}}}
	const want = ", cannot be read\n  error  a.toml:7: first\n         a.toml:9: second\n"
	if got := text(t, r, TextOptions{}); !strings.Contains(got, want) {
		t.Errorf("printed\n%s\nwithout\n%s", got, want)
	}
}
