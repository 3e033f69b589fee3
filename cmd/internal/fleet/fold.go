package fleet

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"preflash/parser"
	"preflash/rules"
)

// fold makes one finding of all that could not be told for one cause. The
// others stay as they are.
func (s *Source) fold(every []Finding) []Finding {
	folded := make([]Finding, 0, len(every))
	at := make(map[string]int) // by cause: index in folded
	hang := make(map[string][]*Finding)
	var causes []string
	for i := range every {
		f := &every[i]
		cause := causeOf(f)
		if cause == "" {
			folded = append(folded, *f)
			continue
		}
		if _, seen := at[cause]; !seen {
			at[cause] = len(folded)
			folded = append(folded, *f)
			causes = append(causes, cause)
		}
		hang[cause] = append(hang[cause], f)
	}
	for i, cause := range causes {
		folded[at[cause]] = s.settle(hang[cause], i < maxAnswered)
	}
	slices.SortStableFunc(folded, func(a, b Finding) int { return cmp.Compare(a.Rank, b.Rank) })
	return folded
}

// maxAnswered is of how many causes it is said what either answer would mean:
// for each the configuration is read twice more.
const maxAnswered = 8

// causeOf tells causes apart: by the name that would settle them, else by the
// condition.
func causeOf(f *Finding) string {
	switch {
	case f.unknown == "":
		return ""
	case f.cause.Name != "":
		return f.cause.Name
	case !f.cause.Condition.IsZero():
		return f.cause.Condition.String()
	}
	return ""
}

// settle is the one finding for all that hangs on a cause. It is as bad as the
// worst of them, and waived only where each of them is.
func (s *Source) settle(list []*Finding, answered bool) Finding {
	first := list[0]
	out := Finding{Rule: first.Rule, Level: first.Level, Rank: first.Rank, Danger: first.Danger, Region: first.Region, Waived: first.Waived, Known: first.Known, Baseline: first.Baseline}
	var names []string
	var keys []parser.Key
	for _, f := range list {
		if f.Level > out.Level || f.Level == out.Level && f.Rank < out.Rank {
			out.Rule, out.Level, out.Rank, out.Danger = f.Rule, f.Level, f.Rank, f.Danger
		}
		if f.Waived == "" {
			out.Waived = ""
		}
		if f.Known == "" {
			out.Known = ""
		}
		if f.Baseline != out.Baseline {
			out.Baseline = Updated
		}
		if !slices.Contains(names, f.Rule) {
			names = append(names, f.Rule)
		}
		if !slices.Contains(keys, f.unknown) {
			keys = append(keys, f.unknown)
		}
	}
	if cause := &first.cause; !cause.Condition.IsZero() {
		out.Region = regionOf(cause.Condition)
	}
	out.Message = s.unsettled(first, keys, answered)
	out.Also = slices.DeleteFunc(slices.Clone(names), func(name string) bool { return name == out.Rule })
	out.Values = rules.Values{"settings": keyTexts(keys), "rules": names}
	return out
}

// unsettled says what hangs on a cause, where to look it up, and what either
// answer would mean.
func (s *Source) unsettled(first *Finding, keys []parser.Key, answered bool) string {
	cause := &first.cause
	text := "cannot tell the " + strings.Join(keyTexts(keys), ", the ") + ": "
	switch {
	case cause.Name == "":
		return text + reasonOf(first)
	case cause.Quoted != "":
		text += "it depends on " + cause.Quoted + ", and "
	}
	text += fmt.Sprintf("%[1]s is set outside these files. Look %[1]s up in the board's pin file or the"+
		" build's flags.", cause.Name)
	on, off := "", ""
	if answered {
		on = s.answer(parser.Define{Name: cause.Name, Value: "1"}, keys)
		off = s.answer(parser.Define{Name: cause.Name, Undefined: true}, keys)
	}
	text += fmt.Sprintf(" Where it is 1%s, write defined = [%q] in the sheet's [printer], or the value that it has;"+
		" where nothing defines it%s, undefined = [%q].", on, cause.Name, off, cause.Name)
	return strings.Clone(text)
}

// answer says in brackets what the settings would be with one name more settled.
func (s *Source) answer(d parser.Define, keys []parser.Key) string {
	request := s.Request
	request.Outside = append(slices.Clone(request.Outside), d)
	config, err := s.Style.Read(s.Tree, request)
	if err != nil {
		return " (then the files could not be read)"
	}
	var parts []string
	for _, d := range config.Printer().Settings() {
		if !slices.Contains(keys, d.Key) {
			continue
		}
		value := d.Text()
		if d.State == parser.Unknown {
			value = "still unknown"
		}
		parts = append(parts, string(d.Key)+" "+value)
	}
	return " (" + strings.Join(parts, ", ") + ")"
}

// reasonOf is what a finding says after the setting that it cannot tell.
func reasonOf(f *Finding) string {
	if _, why, found := strings.Cut(f.Message, ": "); found {
		return why
	}
	return f.Message
}

func keyTexts(keys []parser.Key) []string {
	var list []string
	for _, k := range keys {
		list = append(list, string(k))
	}
	return list
}
