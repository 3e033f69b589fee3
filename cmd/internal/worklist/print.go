package worklist

import (
	"fmt"
	"math"

	"preflash/parser"
	"preflash/rules"
	"preflash/rules/unit"
)

const (
	usualFilamentMM = 1.75    // where the configuration does not say it: common practice, no source
	slowMM3S        = 2.0     // a flow that any hotend melts: common practice, no source
	mostPushMM      = 50.0    // at once, where nothing limits it: common practice, no source
	pushShare       = 0.9     // of the longest push, which rounding may otherwise exceed
	pushes          = 4       // for one weighing
	densityGPerMM3  = 1.24e-3 // PLA: common practice, no source
	leastShare      = 0.95    // of the mass at the slow flow
)

func (b *builder) flow() Section {
	d := usualFilamentMM
	if f := &b.in.Printer.Flow.FilamentMM; f.Known() && f.Value > 0 {
		d = f.Value
	}
	area := math.Pi / 4 * d * d
	pushMM := b.push()
	if pushMM == 0 {
		longest := &b.in.Printer.Flow.PushMM
		return Section{Title: "Flow test", Items: []Item{{
			Do: fmt.Sprintf("Allow pushes of filament in the files first: the longest at once is %s%s, "+
				"so the firmware refuses every one, the printer's own loading too. %s is usual. "+
				"Then print this list again.",
				unit.Millimetres(longest.Value), place(longest.At), unit.Millimetres(mostPushMM)),
		}}}
	}
	at := rules.TuneC(b.in)
	push := func(flow float64) []string {
		return b.steps(parser.Task{Kind: parser.TaskExtrude, LengthMM: pushMM, SpeedMMS: flow / area})
	}
	total := pushes * pushMM
	s := Section{
		Title: "Flow test",
		Note: fmt.Sprintf("At %s, nozzle in the air, filament loaded. Each weighing takes %d times %s, "+
			"about %s g with PLA. Several flows in a file: preflash flow works them out.",
			unit.Celsius(at), pushes, unit.Millimetres(pushMM), unit.Figure(total*area*densityGPerMM3, 1)),
		Items: []Item{b.intoTheAir(), {
			Do:     "Set " + unit.Celsius(at) + " and wait until the reading has stood for a minute.",
			Expect: "it stands at the target; as long as it is too cold, the firmware pushes no filament",
			Steps:  b.heatTo(at),
		}, {
			Do: fmt.Sprintf("Slow: push %s of filament at %s (%s of %s filament), the last step %d "+
				"times, and weigh what comes out.", unit.Millimetres(total), unit.FlowRate(slowMM3S),
				unit.Speed(slowMM3S/area), unit.Millimetres(d), pushes),
			Expect: "an even strand; this mass is the measure for the next",
			Else:   "a drive that slips already here has a grip problem, no melting one",
			Steps:  push(slowMM3S),
			Note:   []Reading{{"slow", "g"}},
		}},
	}
	off := Item{Do: "Switch the heaters off.", Expect: "no target is left",
		Steps: b.steps(parser.Task{Kind: parser.TaskHeatersOff})}
	limit := &b.in.Sheet.New.Nozzle.MaxFlowMM3S
	if !limit.Given {
		s.add(Item{
			Do: "The same again, each time a quarter faster, until less than " +
				unit.Percent(leastShare) + " of that mass comes out or the drive clicks.",
			Expect: "the last flow that was well is new.nozzle.max_flow_mm3_s of the sheet",
			Note:   []Reading{{"max_flow_mm3_s", "mm³/s"}},
		}, off)
		return s
	}
	s.add(Item{
		Do: fmt.Sprintf("Full: the same at %s (%s), the sheet's max_flow_mm3_s.",
			unit.FlowRate(limit.Value), unit.Speed(limit.Value/area)),
		Expect: "at least " + unit.Percent(leastShare) +
			" of the slow mass, no clicking, and the temperature holds",
		Else:  "try 80 % of it, and write what holds in the sheet and in the slicer",
		Steps: push(limit.Value),
		Note:  []Reading{{"full", "g"}},
	}, off)
	return s
}

// push is how much filament is pushed at once, mm; 0 where the firmware refuses
// to push any.
func (b *builder) push() float64 {
	longest := &b.in.Printer.Flow.PushMM
	if !longest.Known() || longest.Value*pushShare > mostPushMM {
		return mostPushMM
	}
	mm := longest.Value * pushShare
	if mm >= 1 {
		return math.Floor(mm)
	}
	return math.Floor(mm*100) / 100
}

// inTheAirMM is how far above the bed filament is pushed out, mm: common practice,
// no source.
const inTheAirMM = 50

// intoTheAir lifts the nozzle, which stands at the bed since its height was
// measured, and takes the tool to push filament with, where there are several: to
// fetch it may take a printer that has homed.
func (b *builder) intoTheAir() Item {
	if b.reference() == "" {
		return Item{Do: "Lift the nozzle by hand, well clear of the bed.", Expect: "it hangs in the air"}
	}
	item := Item{
		Do:     "Home, and lift the nozzle well clear of the bed; hand at the switch.",
		Expect: "it hangs in the air",
		Steps:  append(b.steps(parser.Task{Kind: parser.TaskHome}), b.raise(inTheAirMM)...),
	}
	if b.otherTools() > 0 || b.in.Printer.Tool > 0 {
		item.Steps = append(item.Steps, b.steps(parser.Task{Kind: parser.TaskSelect})...)
	}
	return item
}

// left lists what is measured and was not guessed.
func (b *builder) left() Section {
	s := Section{
		Title: "Left to measurement",
		Note:  "Preflash changes none of these: they follow from no formula.",
	}
	loop := &b.in.Printer.Hotend.Loop
	if loop.Control.Known() && loop.Control.Value == parser.ControlPID && loop.Kp.Known() {
		text := "Gains: " + gains(loop.Kp.Value, loop.Ki.Value, loop.Kd.Value) + place(loop.Kp.At)
		s.add(Item{Do: text + ". From the tune above."})
	}
	for _, h := range b.heights() {
		s.add(Item{Do: fmt.Sprintf("%s: %s%s. As measured above.", capital(string(h.Key)),
			unit.Millimetres(h.Value), place(h.At))})
	}
	for i := range b.in.Printer.Flow.CarriedOver {
		c := &b.in.Printer.Flow.CarriedOver[i]
		if c.State == parser.Set && c.Value != 0 {
			s.add(Item{Do: fmt.Sprintf("%s: %s%s. From a test print with the new hotend.",
				capital(string(c.Key)), unit.Figure(c.Value, 3), place(c.At))})
		}
	}
	for _, name := range rules.Assumed(b.in) {
		s.add(Item{Do: "Of the block, assumed so far: " + name + ". " +
			"From a recorded heat-up (preflash heat)."})
	}
	return s
}

func capital(text string) string {
	if text == "" || text[0] < 'a' || text[0] > 'z' {
		return text
	}
	return string(text[0]-'a'+'A') + text[1:]
}
