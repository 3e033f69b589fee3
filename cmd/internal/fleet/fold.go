package fleet

import (
	"fmt"
	"slices"
	"strings"

	"preflash/parser"
	"preflash/rules"
)

// fold makes one finding of all that could not be told for one cause. The
// others stay as they are.
func (src *source) fold(every []Finding) []Finding {
	folded := make([]Finding, 0, len(every))
	at := make(map[string]int) // by cause: index in folded
	hang := make(map[string][]*Finding)
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
		}
		hang[cause] = append(hang[cause], f)
	}
	for cause, list := range hang {
		folded[at[cause]] = src.settle(list)
	}
	return folded
}

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
func (src *source) settle(list []*Finding) Finding {
	first := list[0]
	out := Finding{Rule: first.Rule, Level: first.Level, Region: first.Region, Waived: first.Waived}
	var names []string
	var keys []parser.Key
	for _, f := range list {
		if f.Level > out.Level {
			out.Rule, out.Level = f.Rule, f.Level
		}
		if f.Waived == "" {
			out.Waived = ""
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
	out.Message = src.unsettled(first, keys)
	out.Also = slices.DeleteFunc(slices.Clone(names), func(name string) bool { return name == out.Rule })
	out.Values = rules.Values{"settings": keyTexts(keys), "rules": names}
	return out
}

// unsettled says what hangs on a cause, where to look it up, and what either
// answer would mean.
func (src *source) unsettled(first *Finding, keys []parser.Key) string {
	cause := &first.cause
	text := "cannot tell the " + strings.Join(keyTexts(keys), ", the ") + ": "
	switch {
	case cause.Name == "":
		return text + reasonOf(first)
	case cause.Quoted != "":
		text += "it depends on " + cause.Quoted + ", and "
	}
	text += fmt.Sprintf("%[1]s is set outside these files. Look %[1]s up in the board's pin file or the build's flags.", cause.Name)
	on := src.answer(parser.Define{Name: cause.Name, Value: "1"}, keys)
	off := src.answer(parser.Define{Name: cause.Name, Undefined: true}, keys)
	text += fmt.Sprintf(" Where it is 1 (%s), write defined = [%q] in the sheet's [printer], or the value that it has; where nothing defines it (%s), undefined = [%q].",
		on, cause.Name, off, cause.Name)
	return strings.Clone(text)
}

// answer says what the settings would be with one name more settled.
func (src *source) answer(d parser.Define, keys []parser.Key) string {
	request := src.request
	request.Outside = append(slices.Clone(request.Outside), d)
	config, err := src.style.Read(src.target.Tree, request)
	if err != nil {
		return "the files could not be read"
	}
	var parts []string
	for _, s := range config.Printer().Settings() {
		if !slices.Contains(keys, s.Key) {
			continue
		}
		value := s.Text()
		if s.State == parser.Unknown {
			value = "still unknown"
		}
		parts = append(parts, string(s.Key)+" "+value)
	}
	return strings.Join(parts, ", ")
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
