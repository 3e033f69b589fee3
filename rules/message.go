package rules

import (
	"math"
	"strings"

	"preflash/parser"
	"preflash/rules/unit"
)

// MostWords is how many words a finding's message has at most: what a person
// reads in passing. The rest is its detail.
const MostWords = 35

// Brief splits what is too long for a message: the last clauses go, or the last
// words where one clause is too long.
func Brief(text string) (message, rest string) {
	words := strings.Fields(text)
	if len(words) <= MostWords {
		return text, ""
	}
	cut := MostWords - 1
	for i := cut; i > MostWords/3; i-- {
		if strings.HasSuffix(words[i-1], ";") || strings.HasSuffix(words[i-1], ".") {
			cut = i
			break
		}
	}
	message, rest = strings.Join(words[:cut], " "), strings.Join(words[cut:], " ")
	if clause := strings.TrimRight(message, ";."); clause != message {
		return clause, rest
	}
	return message + " …", "… " + rest
}

// shorten moves what is too much of a message to the front of its detail.
func (f *Finding) shorten() {
	message, rest := Brief(f.Message)
	detail := f.Detail
	f.Message, f.Detail = message, ""
	f.explain(rest)
	f.explain(detail)
}

// riseText writes a rise so that one just short of what is required shows it.
func riseText(d float64) string { return unit.Figure(d, 2) + " K" }

// orNull gives null to what JSON has no number for.
func orNull(x float64) any {
	if math.IsInf(x, 0) || math.IsNaN(x) {
		return nil
	}
	return x
}

// stepsText gives the console steps of a task in brackets, to follow what they
// do, or nothing where the style has none; and those that keep what it measured
// of some settings.
func stepsText(in *Input, task parser.Task, keys ...parser.Key) string {
	steps := in.Config.Steps(task)
	if kept := in.Config.Keep(keys...); len(steps) > 0 && len(keys) > 0 {
		if task.Kind == parser.TaskTune {
			steps = append(steps, in.Config.Steps(parser.Task{Kind: parser.TaskSetGains, Tool: task.Tool})...)
		}
		if len(kept.ByHand) > 0 {
			steps = append(steps, "the figures by hand over those at "+kept.ByHand[0].At.String())
		}
		steps = append(steps, kept.Steps...)
	}
	if len(steps) == 0 {
		return ""
	}
	return " (" + strings.Join(steps, ", then ") + ")"
}

// cannotTell is the finding of a rule that met a setting in state unknown. It
// never guesses: it says what it could not tell and why.
func cannotTell[T any](level Level, s *parser.Setting[T]) Finding {
	f := Findingf(level, s.At, "cannot tell the %s: %s", s.Key, s.Why)
	f.Unknown = s.Key
	return f.Of(s.Key)
}
