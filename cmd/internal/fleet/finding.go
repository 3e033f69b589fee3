package fleet

import (
	"fmt"
	"strings"
)

// Rest is what a finding says beside its message.
func (f *Finding) Rest() string {
	return strings.TrimPrefix(strings.TrimPrefix(f.Text(), f.Message), "; ")
}

// Heading is what a finding stands under: its danger, or why it does not count.
func (f *Finding) Heading() string {
	switch {
	case f.Waived != "":
		return "Waived, not counted"
	case f.Known != "":
		return "Known, not counted"
	}
	return f.Danger.Text()
}

// Place is the file of a region with its line, as far as it has them.
func (r Region) Place() string {
	if r.File == "" || r.Line == 0 {
		return r.File
	}
	return fmt.Sprintf("%s:%d", r.File, r.Line)
}
