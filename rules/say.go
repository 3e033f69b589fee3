package rules

import (
	"math"
	"strings"

	"preflash/parser"
	"preflash/rules/unit"
)

// Short names for the one way to write each unit.

func celsius(t float64) string              { return unit.Celsius(t) }
func kelvin(d float64) string               { return unit.Kelvin(d) }
func seconds(s float64) string              { return unit.Seconds(s) }
func watts(w float64) string                { return unit.Watts(w) }
func volts(v float64) string                { return unit.Volts(v) }
func millimetres(d float64) string          { return unit.Millimetres(d) }
func amperes(a float64) string              { return unit.Amperes(a) }
func ohms(r float64) string                 { return unit.Ohms(r) }
func percent(share float64) string          { return unit.Percent(share) }
func degreeSeconds(s float64) string        { return unit.DegreeSeconds(s) }
func count(n float64) string                { return unit.Count(n) }
func flowRate(f float64) string             { return unit.FlowRate(f) }
func speed(v float64) string                { return unit.Speed(v) }
func gain(g float64) string                 { return unit.Gain(g) }
func figure(x float64, decimals int) string { return unit.Figure(x, decimals) }

// rise writes a rise so that one just short of what is required shows it.
func rise(d float64) string { return figure(d, 2) + " K" }

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
