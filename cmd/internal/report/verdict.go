package report

import (
	"fmt"
	"strings"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/plaintext"
	"preflash/rules"
)

// DoNotHeat is what is said wherever an error counts.
const DoNotHeat = "Do not heat before the errors are fixed."

// Verdict sums a result up and says what to do next.
func Verdict(r *fleet.Result) string {
	s := r.Summary()
	var say plaintext.Remarks
	checked := s.Printers - s.Unreadable
	found := levels(s)
	switch {
	case found != "":
		say.Add("%s on %d of %s.", found, withFindings(r),
			plaintext.Plural(s.Printers, "printer"))
	case checked > 0 && s.Known > 0:
		say.Add("nothing new on %s.", plaintext.Plural(checked, "printer"))
	case checked > 0 && len(r.Bare()) < checked:
		say.Add("nothing to change on %s.", plaintext.Plural(checked, "printer"))
	case checked > 0:
		say.Add("nothing found on %s.", plaintext.Plural(checked, "printer"))
	case r.Since != "" && s.Unreadable == 0 && len(r.Unchanged) > 0:
		say.Add("nothing changed since %s, so no printer was checked: %s.", r.Since,
			listed(r.Unchanged))
	case r.Since != "" && s.Unreadable == 0:
		say = append(say, "nothing changed since "+r.Since+", so no printer was checked.")
	default:
		say = append(say, "no printer was checked.")
	}
	if len(r.Unchanged) > 0 && (checked > 0 || s.Unreadable > 0) {
		say.Add("Not checked, since nothing changed in them since %s: %s.", r.Since,
			listed(r.Unchanged))
	}
	if len(r.Gone) > 0 {
		say.Add("No longer checked, since the sheet is gone since %s: %s.", r.Since,
			listed(r.Gone))
	}
	if s.Waived > 0 {
		say.Add("Waived, not counted: %d.", s.Waived)
	}
	if s.Known > 0 {
		say.Add("Known, not counted: %d.", s.Known)
	}
	if len(r.Fixed) > 0 {
		say = append(say, fixed(r.Fixed))
	}
	if list := unread(r); len(list) > 0 {
		say.Add("Fix first what cannot be read, or not whole: %s. Nothing is known of what "+
			"stands there.", listed(list))
	}
	if s.Errors > 0 {
		say = append(say, DoNotHeat)
	}
	if list := r.Bare(); len(list) > 0 {
		say = append(say, withoutSheet(list))
	}
	if found != "" && len(r.Bare()) < checked {
		say = append(say, nextStep(r))
	}
	return strings.Join(say, " ")
}

// fixed names known findings that are gone.
func fixed(list []fleet.Fixed) string {
	const most = 10
	var names []string
	for _, f := range list[:min(len(list), most)] {
		name := f.Printer + " " + f.Rule
		if f.Setting != "" {
			name += " (" + f.Setting + ")"
		}
		names = append(names, name)
	}
	text := "Known and fixed: " + strings.Join(names, ", ")
	if n := len(list) - most; n > 0 {
		text += fmt.Sprintf(" and %d more", n)
	}
	return text + "."
}

// unread lists the printers that could not be read; an entry that tells of the
// call as a whole is none.
func unread(r *fleet.Result) []string {
	var list []string
	for _, p := range r.Printers {
		if p.Problem != nil && p.Named() {
			list = append(list, p.Name)
		}
	}
	return list
}

// listed gives names, a good many at most.
func listed(list []string) string {
	const most = 20
	text := strings.Join(list[:min(len(list), most)], ", ")
	if n := len(list) - most; n > 0 {
		text += fmt.Sprintf(" and %d more", n)
	}
	return text
}

// levels lists how many findings of each level count.
func levels(s fleet.Summary) string {
	var parts []string
	for _, level := range []struct {
		n    int
		word string
	}{{s.Errors, "error"}, {s.Warnings, "warning"}, {s.Notes, "note"}} {
		if level.n > 0 {
			parts = append(parts, plaintext.Plural(level.n, level.word))
		}
	}
	return plaintext.Join(parts, "and")
}

// nextStep says what preflash diff can do, and what is left to a person. Notes
// ask for nothing.
func nextStep(r *fleet.Result) string {
	changes, hands := 0, 0
	for _, p := range r.Printers {
		for _, f := range p.Findings {
			switch {
			case !f.Counts():
			case f.Change != "":
				changes += f.Count()
			case f.Level > 0:
				hands += f.Count()
			}
		}
	}
	switch {
	case changes == 0 && hands == 0:
		return "The notes ask for no change."
	case changes == 0:
		return "No edit fixes this; it takes a person: wiring, parts, measuring or the sheet."
	case hands == 0:
		return "Next: preflash diff prints the changes to review."
	}
	return fmt.Sprintf("Next: preflash diff prints the changes for %s to review. For the rest (%d) it "+
		"takes a person: wiring, parts, measuring or the sheet.", plaintext.Plural(changes, "finding"), hands)
}

func withFindings(r *fleet.Result) int {
	n := 0
	for _, p := range r.Printers {
		for _, f := range p.Findings {
			if f.Counts() {
				n++
				break
			}
		}
	}
	return n
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
	text := fmt.Sprintf("No sheet says which hotend goes in: with one, %d more rules judge sensor, "+
		"temperatures, heater, supply, gains, runaway protection, fan and nozzle height, and preflash diff "+
		"prints the changes. Begin one: %s",
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
