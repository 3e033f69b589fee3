package fleet

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"preflash/parser"
	"preflash/rules"
)

// fold makes one finding of all that could not be told for one cause, and puts
// what follows from a finding inside it. The others stay as they are.
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
		folded[at[cause]] = s.foldCause(hang[cause], i < maxAnswered)
	}
	folded = follow(folded)
	slices.SortStableFunc(folded, func(a, b Finding) int { return cmp.Compare(a.Rank, b.Rank) })
	return folded
}

// follow moves findings that follow from an error into it. What counts stays by
// itself where the error does not.
func follow(list []Finding) []Finding {
	causes := make(map[string]*Finding) // by the rule that follows
	for i := range list {
		f := &list[i]
		if rule := rules.Find(f.Rule); rule != nil && f.Level == rules.Error && f.unknown == "" {
			for _, other := range rule.Explains {
				if causes[other] == nil {
					causes[other] = f
				}
			}
		}
	}
	if len(causes) == 0 {
		return list
	}
	into := make(map[*Finding][]Finding)
	kept := make([]Finding, 0, len(list))
	var heads []*Finding
	for i := range list {
		f := &list[i]
		head := causes[f.Rule]
		if head == nil || head == f || head.Rule == f.Rule && f.Level == rules.Error ||
			f.Counts() != head.Counts() || f.Rank < head.Rank {
			kept = append(kept, *f)
			heads = append(heads, f)
			continue
		}
		into[head] = append(into[head], *f)
	}
	for i, head := range heads {
		for _, f := range into[head] {
			k := &kept[i]
			if f.Rule != k.Rule && !slices.Contains(k.Also, f.Rule) {
				k.Also = append(slices.Clone(k.Also), f.Rule)
			}
			k.Follows = append(k.Follows, f)
		}
	}
	return kept
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
	switch f.unknown {
	case parser.GainP, parser.GainI, parser.GainD, parser.LoopControl:
		return "\x00" + string(parser.LoopControl) // without a control there are no gains
	}
	return "\x00" + string(f.unknown)
}

// foldCause is the one finding for all that hangs on a cause. It is as bad as the
// worst of them, and waived only where each of them is.
func (s *Source) foldCause(list []*Finding, answered bool) Finding {
	first := list[0]
	out := Finding{Rule: first.Rule, Level: first.Level, Rank: first.Rank, Danger: first.Danger,
		Region: first.Region, Waived: first.Waived, Known: first.Known, Baseline: first.Baseline}
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
	out.Message, out.Detail = s.causeText(first, keys, answered)
	out.Also = slices.DeleteFunc(slices.Clone(names), func(name string) bool { return name == out.Rule })
	out.Values = rules.Values{"settings": keyTexts(keys), "rules": names}
	return out
}

// causeText says what hangs on a cause, where to look it up, and what either
// answer would mean.
func (s *Source) causeText(first *Finding, keys []parser.Key, answered bool) (message, detail string) {
	cause := &first.cause
	names := keyTexts(keys)
	if cause.Name == "" {
		message, detail = rules.Brief("cannot tell the " + strings.Join(names, ", the ") + ": " +
			reasonOf(first))
		return strings.Clone(message), strings.Clone(detail)
	}
	const told = 2
	list := strings.Join(names[:min(len(names), told)], ", the ")
	if n := len(names) - told; n > 0 {
		list += fmt.Sprintf(" and %d more", n)
		detail = "cannot tell the " + strings.Join(names, ", the ") + ". "
	}
	message, rest := rules.Brief(fmt.Sprintf("look %s up in the board's pin file or the build's flags: on "+
		"it hang the %s", cause.Name, list))
	detail += rest + cause.Name + " is set outside these files. "
	if cause.Quoted != "" {
		detail += "It depends on " + cause.Quoted + ". "
	}
	on, off := "", ""
	if answered {
		on = s.answer(parser.Define{Name: cause.Name, Value: "1"}, keys)
		off = s.answer(parser.Define{Name: cause.Name, Undefined: true}, keys)
	}
	detail += fmt.Sprintf("Where it is 1%s, write defined = [%q] in the sheet's [printer], or the value "+
		"that it has;"+
		" where nothing defines it%s, undefined = [%q].", on, cause.Name, off, cause.Name)
	return strings.Clone(message), strings.Clone(detail)
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
	for d := range config.Printer().Settings() {
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
	if _, why, found := strings.Cut(f.Text(), ": "); found {
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
