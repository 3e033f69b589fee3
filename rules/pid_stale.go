package rules

import (
	"math"
	"strings"

	"preflash/parser"
)

var pidStale = &Rule{
	ID:      "pid-stale",
	Level:   Error,
	Summary: "The control gains are not those tuned on the new hotend.",
	Doc: `Gains belong to one heater, block and sensor. They are compared with [tuned],
to the precision in which the configuration writes them (0.5 %). They are
measured, not guessed, so there is no change: the finding gives the console
steps of a tune.`,
	Check: func(in *Input, report func(Finding)) {
		l := &in.Printer.Hotend.Loop
		switch {
		case l.Control.State == parser.Unknown:
			report(cannotTell(Warning, &l.Control))
		case l.Control.Value == parser.ControlPID:
			gainsStale(in, report)
		case l.Control.Value == parser.ControlModel && in.Sheet.Tuned == nil:
			report(Sayf(Warning, l.Control.At, "the heater model in the configuration was measured on the old hotend; measure it on the new one%s",
				stepsText(in, parser.Task{Kind: parser.TaskTune, Tool: in.Printer.Tool, TempC: tuneAt(in)})))
		}
	},
}

// gainTolerance allows for gains that were rounded when they were written.
const gainTolerance = 0.005

func gainsStale(in *Input, report func(Finding)) {
	l := &in.Printer.Hotend.Loop
	gains := []*parser.Setting[float64]{&l.Kp, &l.Ki, &l.Kd}
	for _, g := range gains {
		if g.State == parser.Unknown {
			report(cannotTell(Warning, g))
			return
		}
	}
	tune := parser.Task{Kind: parser.TaskTune, Tool: in.Printer.Tool, TempC: tuneAt(in)}
	var f Finding
	switch t := in.Sheet.Tuned; {
	case t == nil:
		f = Sayf(Warning, l.Kp.At, "the gains (kp %s, ki %s, kd %s) are not known to be tuned on the new hotend; tune it%s; then write the result in the configuration and in [tuned] of the sheet",
			gain(l.Kp.Value), gain(l.Ki.Value), gain(l.Kd.Value), stepsText(in, tune))
	case !near(l.Kp.Value, t.Kp.Value) || !near(l.Ki.Value, t.Ki.Value) || !near(l.Kd.Value, t.Kd.Value):
		f = Sayf(Warning, l.Kp.At, "the gains (kp %s, ki %s, kd %s) are not the ones tuned on the new hotend (kp %s, ki %s, kd %s); write those in the configuration",
			gain(l.Kp.Value), gain(l.Ki.Value), gain(l.Kd.Value), gain(t.Kp.Value), gain(t.Ki.Value), gain(t.Kd.Value))
	default:
		return
	}
	report(f.With(Values{"kp": l.Kp.Value, "ki": l.Ki.Value, "kd": l.Kd.Value}))
}

func near(a, b float64) bool {
	return math.Abs(a-b) <= gainTolerance*max(math.Abs(a), math.Abs(b))
}

func gain(g float64) string { return figure(g, 3) }

// tuneAt is the temperature to tune at: the one of an earlier tune, else the
// middle of the printing range.
func tuneAt(in *Input) float64 {
	if t := in.Sheet.Tuned; t != nil {
		return t.AtC.Value
	}
	span := in.Sheet.New.PrintC.Value
	return math.Round((span[0]+span[1])/10) * 5
}

// stepsText gives the console steps of a task in brackets, to follow what they
// do, or nothing where the style has none.
func stepsText(in *Input, task parser.Task) string {
	steps := in.Style.Steps(task)
	if len(steps) == 0 {
		return ""
	}
	return " (" + strings.Join(steps, ", then ") + ")"
}
