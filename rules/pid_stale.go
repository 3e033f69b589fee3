package rules

import (
	"fmt"
	"math"

	"preflash/parser"
	"preflash/rules/unit"
)

var pidStale = &Rule{
	ID:        "pid-stale",
	Level:     Error,
	MayWorsen: true, // gains whose overshoot meets a max temp that was lowered to a rating
	Figure:    FigureOf{"overshoot_c", "K", Higher},
	Summary:   "The control gains are not those tuned on the new hotend.",
	Doc: `Gains belong to one heater, block and sensor. They are compared with [tuned],
to the precision in which the configuration writes them (0.5 %). What they
would do is simulated: a step from ambient_c to the top of new.print_c, or to
the highest target that the firmware takes after this run where that is lower
(without a margin of the firmware's own: 10 °C below max temp), part fan off,
through the loop of the style's generation, in the model of runaway-tight. Of
generations, and of power limits now and after this run, the worse one counts.
The files do not tell how often a board reads its sensor: all that the
generation's boards have are tried.
Warning: gains that are not the tuned ones.
Error: such gains whose overshoot, with 5 % more power and 10 % less loss,
reaches the temperature at which the firmware shuts down, or that alone make the
runaway protection trip, which full power up to the target does not; a warning
where that is so on some boards only.
Values: kp, ki, kd, overshoot_c, settle_s (within 2 °C, for the last third of a
run of 900 s or more; null where it does not get steady, or not there).
Gains are measured, not guessed, so there is no change: the finding gives the
console steps of a tune.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		l := &in.Printer.Hotend.Loop
		switch {
		case l.Control.State == parser.Absent:
		case l.Control.State == parser.Unknown:
			report(cannotTell(Warning, &l.Control))
		case l.Control.Value == parser.ControlPID:
			gainsStale(in, report)
		case l.Control.Value == parser.ControlModel && in.Sheet.Tuned == nil:
			report(Findingf(Warning, l.Control.At,
				"measure the heater model on the new hotend%s: the one in the configuration belongs to "+
					"the old",
				stepsText(in, parser.Task{Kind: parser.TaskTuneModel, Tool: in.Printer.Tool},
					parser.ModelPower)))
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
	t := in.Sheet.Tuned.Gains()
	if t != nil && near(l.Kp.Value, t.Kp.Value) && near(l.Ki.Value, t.Ki.Value) &&
		near(l.Kd.Value, t.Kd.Value) {
		return
	}
	here := fmt.Sprintf("kp %s, ki %s, kd %s", unit.Gain(l.Kp.Value), unit.Gain(l.Ki.Value),
		unit.Gain(l.Kd.Value))
	text, more := "", ""
	if t == nil {
		text = "tune the new hotend: the gains (" + here + ") are not known to be its own"
		more = "tune it" + stepsText(in, parser.Task{Kind: parser.TaskTune, Tool: in.Printer.Tool,
			TempC: tuneAt(in)}, parser.GainP, parser.GainI, parser.GainD) +
			", then write the result in the configuration and in [tuned] of the sheet"
	} else {
		text = fmt.Sprintf("write the tuned gains in the configuration, kp %s, ki %s, kd %s: it has others",
			unit.Gain(t.Kp.Value), unit.Gain(t.Ki.Value), unit.Gain(t.Kd.Value))
		more = "it has " + here
	}
	figures := Values{"kp": l.Kp.Value, "ki": l.Ki.Value, "kd": l.Kd.Value, "overshoot_c": nil,
		"settle_s": nil}
	level := Warning
	if s := stepOf(in); s != nil {
		level = s.level()
		figures["overshoot_c"] = s.worst.OvershootC
		if s.worst.Settles {
			figures["settle_s"] = s.worst.SettleS
		}
		text += s.brief()
		more += s.text(in)
	}
	report(Findingf(level, l.Kp.At, "%s", text).Explain("%s", more).With(figures))
}

func near(a, b float64) bool {
	return math.Abs(a-b) <= gainTolerance*max(math.Abs(a), math.Abs(b))
}

// tuneAt is the temperature to tune at: the one of an earlier tune, else the
// middle of the printing range.
func tuneAt(in *Input) float64 {
	if t := in.Sheet.Tuned; t != nil {
		return t.AtC.Value
	}
	span := in.Sheet.New.PrintC.Value
	return math.Round((span[0]+span[1])/10) * 5
}
