package report

import (
	"fmt"
	"strings"

	"preflash/cmd/internal/fleet"
	"preflash/rules"
)

// bare lists the printers that were checked without a sheet.
func bare(r *fleet.Result) []*fleet.Printer {
	var list []*fleet.Printer
	for i := range r.Printers {
		if p := &r.Printers[i]; p.Begin != "" && p.Problem == nil {
			list = append(list, p)
		}
	}
	return list
}

// maxBegin is how many of the commands that begin a sheet are shown.
const maxBegin = 3

// withoutSheet says what a sheet would add, and how to begin one.
func withoutSheet(list []*fleet.Printer) string {
	more := 0
	for _, rule := range rules.All() {
		if rule.NeedsSheet {
			more++
		}
	}
	var begin []string
	for _, p := range list[:min(len(list), maxBegin)] {
		begin = append(begin, p.Begin)
	}
	text := fmt.Sprintf("No sheet says which hotend goes in: with one, %d more rules judge sensor, temperatures, heater, supply, gains, runaway protection, fan and nozzle height, and preflash diff prints the changes. Begin one: %s",
		more, strings.Join(begin, "; or "))
	if n := len(list) - len(begin); n > 0 {
		text += fmt.Sprintf(" (%d more have none either)", n)
	}
	text += "."
	if passed := list[0].Passed; len(passed) > 0 {
		text += " Passed over in its folder: " + strings.Join(passed, "; ") + "."
	}
	return text
}
