package rules

import (
	"math"
	"strings"

	"preflash/parser"
	"preflash/rules/unit"
)

// rise writes a rise so that one just short of what is required shows it.
func rise(d float64) string { return unit.Figure(d, 2) + " K" }

// finite gives null to what JSON has no number for.
func finite(x float64) any {
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
	f := Sayf(level, s.At, "cannot tell the %s: %s", s.Key, s.Why)
	f.Unknown = s.Key
	return f.Of(s.Key)
}
