package rules

import (
	"fmt"
	"math"

	"preflash/parser"
	"preflash/rules/heat"
)

var pidStale = &Rule{
	ID:      "pid-stale",
	Level:   Error,
	Summary: "The control gains are not those tuned on the new hotend.",
	Doc: `Gains belong to one heater, block and sensor. They are compared with [tuned],
to the precision in which the configuration writes them (0.5 %). What they
would do is simulated: a step from ambient_c to the top of new.print_c, part fan
off, through the loop of the style, in the model of runaway-tight.
Warning: gains that are not the tuned ones.
Error: such gains whose overshoot reaches the max temp, or that alone make the
runaway protection trip, which full power up to the target does not.
Values: kp, ki, kd, overshoot_c, settle_s (within 2 °C; null where it does not
settle, or does not reach the target).
Gains are measured, not guessed, so there is no change: the finding gives the
console steps of a tune.`,
	Check: func(in *Input, report func(Finding)) {
		l := &in.Printer.Hotend.Loop
		switch {
		case l.Control.State == parser.Unknown:
			report(cannotTell(Warning, &l.Control))
		case l.Control.Value == parser.ControlPID:
			gainsStale(in, report)
		case l.Control.Value == parser.ControlModel && in.Sheet.Tuned == nil:
			report(Sayf(Warning, l.Control.At, "the heater model in the configuration was measured on the old hotend; measure it on the new one%s",
				stepsText(in, parser.Task{Kind: parser.TaskTuneModel, Tool: in.Printer.Tool})))
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
	if t != nil && near(l.Kp.Value, t.Kp.Value) && near(l.Ki.Value, t.Ki.Value) && near(l.Kd.Value, t.Kd.Value) {
		return
	}
	text := fmt.Sprintf("the gains (kp %s, ki %s, kd %s) are not ", gain(l.Kp.Value), gain(l.Ki.Value), gain(l.Kd.Value))
	if t == nil {
		text += "known to be tuned on the new hotend; tune it" +
			stepsText(in, parser.Task{Kind: parser.TaskTune, Tool: in.Printer.Tool, TempC: tuneAt(in)}) +
			"; then write the result in the configuration and in [tuned] of the sheet"
	} else {
		text += fmt.Sprintf("the ones tuned on the new hotend (kp %s, ki %s, kd %s); write those in the configuration",
			gain(t.Kp.Value), gain(t.Ki.Value), gain(t.Kd.Value))
	}
	level, figures, does := gainsDo(in)
	f := Sayf(level, l.Kp.At, "%s%s", text, does).With(figures)
	figures["kp"], figures["ki"], figures["kd"] = l.Kp.Value, l.Ki.Value, l.Kd.Value
	report(f)
}

// gainsDo says what the loop with the configuration's gains does on the new
// hotend, and how bad that is.
func gainsDo(in *Input) (Level, Values, string) {
	p, assumed := plantOf(in)
	assumed &^= heat.LossFan // the part fan is off
	watch, _ := watchOf(in)  // one that cannot be told is another rule's finding
	loop, at := loopOf(in), in.Sheet.New.PrintC.Value[1]
	step := func(q heat.Plant) heat.Response { return heat.Step(q, heat.Load{}, loop, watch, at) }
	r := step(p)
	figures := Values{"overshoot_c": r.OvershootC, "settle_s": nil}
	text := "; by the model, with them the hotend "
	switch {
	case !r.Reached && !r.Settles:
		text += "does not reach " + celsius(at)
	case !r.Settles:
		text += fmt.Sprintf("overshoots %s by %s and does not settle", celsius(at), kelvin(r.OvershootC))
	default:
		figures["settle_s"] = r.SettleS
		text += fmt.Sprintf("overshoots %s by %s and settles after %s", celsius(at), kelvin(r.OvershootC), seconds(r.SettleS))
	}
	bad := func(q heat.Plant) bool { return reachesTrip(in, step(q)) || gainsTrip(q, loop, watch, at, step(q)) }
	level := Warning
	switch {
	case reachesTrip(in, r):
		level = Error
		text += fmt.Sprintf(", past the max temp of %s: the firmware shuts down", celsius(in.Printer.Limits.MaxTemp.Value))
	case gainsTrip(p, loop, watch, at, r):
		level = Error
		text += fmt.Sprintf(", and the runaway protection shuts it down after %s although nothing is broken", seconds(r.TripS))
	}
	if assumed != 0 {
		least, most := p.Range(assumed, func(q heat.Plant) float64 { return step(q).OvershootC })
		text += ifAssumed(p, assumed, "the overshoot is "+figure(least, 1)+" to "+kelvin(most), p.Flips(assumed, bad))
	}
	return level, figures, text
}

// reachesTrip reports whether the overshoot alone shuts the heater down.
func reachesTrip(in *Input, r heat.Response) bool {
	trip := &in.Printer.Limits.MaxTemp
	return trip.Known() && r.PeakC >= trip.Value
}

// gainsTrip reports whether a watch trips with the gains, and does not where
// the heater gets full power up to the target.
func gainsTrip(p heat.Plant, loop heat.Loop, watch heat.Watch, at float64, r heat.Response) bool {
	if r.Trip == heat.NoTrip {
		return false
	}
	full := heat.Loop{Form: loop.Form, OnOff: true}
	return heat.Step(p, heat.Load{}, full, watch, at).Trip == heat.NoTrip
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
