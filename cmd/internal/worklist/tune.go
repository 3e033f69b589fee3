package worklist

import (
	"fmt"
	"slices"
	"strings"

	"preflash/parser"
	"preflash/rules"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

func (b *builder) tune() Section {
	s := Section{Title: "Tune, save, write down"}
	at := rules.TuneC(b.in)
	loop := &b.in.Printer.Hotend.Loop
	switch {
	case !loop.Control.Known():
		s.Note = "How the heater is controlled cannot be told: " + loop.Control.Why + "."
	case loop.Control.Value == parser.ControlOpen:
		s.Note = "The control loop is open: nothing controls the temperature. See preflash check before " +
			"anything is heated."
	case loop.Control.Value == parser.ControlOnOff:
		s.Note = "The hotend is under on/off control: there are no gains to tune. It swings by some " +
			"degrees; PID control is the better one."
	case loop.Control.Value == parser.ControlModel:
		s.Note = "The heater is controlled by a model. Stay with it; no filament, part fan free to run, " +
			"the hotend at room temperature at the start."
		if highest := b.highest(); highest < modelTuneC && !b.keepsNothing() {
			s.add(Item{Do: fmt.Sprintf("Do not have the firmware measure the model: it heats past %s to do "+
				"so, whatever the max temp, and no more than %s may be asked of this hotend. "+
				"Use PID control.",
				unit.Celsius(modelTuneC), unit.Celsius(highest))})
			break
		}
		s.add(b.measureModel())
		s.add(b.keep("the figures", parser.ModelPower))
		if !b.keepsNothing() {
			s.add(Item{
				Do: "Write the figures in the configuration too, where the old ones stand: " +
					"beside the model's heater power" + place(loop.ModelPowerW.At) + ".",
				Expect: "the same figures after the next flash",
			})
		}
	default:
		s.Note = "Part fan as in your prints, bed cold, no filament, " +
			"the nozzle away from the bed. Stay with it."
		s.add(b.starting(at)...)
		put := append([]Item{b.measureGains(at), b.putGains()}, b.writeGains()...)
		if b.in.Sheet.Tuned.Gains() != nil {
			s.add(b.compareGains())
			for i := range put[1:] {
				put[i+1].Do = "After such a tune: " + put[i+1].Do
			}
		}
		s.add(put...)
	}
	return Section{Title: s.Title, Note: s.Note, Items: append(s.Items, b.holds(at))}
}

// modelTuneC is what the measuring of a model heats past, °C, as the newer firmware
// of style defines publishes it.
const modelTuneC = 200

// measureModel has the firmware measure a model. The one that has a memory homes
// first, and measures 1 mm above the bed, as it is published; the other was not
// read.
func (b *builder) measureModel() Item {
	item := Item{
		Do:     "Have the firmware measure the model's figures; hand at the switch.",
		Expect: "it heats once, cools, and prints the figures",
		Else: "see that the heater power in the files is the heater's: " +
			"the figures are wrong by as much as it is",
		Note:  []Reading{{"figures", ""}},
		Steps: b.steps(parser.Task{Kind: parser.TaskTuneModel}),
	}
	if !b.keepsNothing() {
		item.Expect = fmt.Sprintf("it homes, goes to 1 mm above the middle of the bed, cools with the part "+
			"fan, heats past %s whatever the max temp, and prints the figures", unit.Celsius(modelTuneC))
	}
	return item
}

// starting offers gains to begin with where the tune made on the new hotend is
// not known.
func (b *builder) starting(at float64) []Item {
	if b.in.Sheet.Tuned.Gains() != nil {
		return nil
	}
	p, loop := rules.Plant(b.in), rules.Loop(b.in)
	g, ok := heat.StartingGains(p, loop, at)
	if !ok {
		return nil
	}
	item := Item{
		Do: fmt.Sprintf("Only if the tune fails with the present gains: begin from %s. That is a starting "+
			"point and no tune (SIMC on the model of this hotend%s).",
			gains(g.Kp, g.Ki, g.Kd), b.assumed()),
		Steps: b.steps(parser.Task{
			Kind: parser.TaskSetGains, Kp: round(g.Kp), Ki: round(g.Ki), Kd: round(g.Kd),
		}),
	}
	if len(item.Steps) == 0 {
		item.Do += " Write it in the files: this firmware takes no gains at the console."
	}
	begin := loop
	begin.Kp, begin.Ki, begin.Kd = g.Kp, g.Ki, g.Kd
	item.Expect = "by the model, " + response("the present gains", p, loop, at) + "; " +
		response("these", p, begin, at)
	return []Item{item}
}

// response says what the model makes of a step from cold with some gains.
func response(gains string, p heat.Plant, loop heat.Loop, at float64) string {
	r := heat.Step(p, heat.Load{}, loop, heat.Watch{}, at)
	overshoots := fmt.Sprintf("%s overshoot %s by %s", gains, unit.Celsius(at), unit.Kelvin(r.OvershootC))
	switch {
	case !r.Reached && r.Settles:
		return fmt.Sprintf("%s come within %s of %s after %s, without overshoot", gains,
			unit.Kelvin(heat.SettleBandC), unit.Celsius(at), unit.Seconds(r.SettleS))
	case !r.Reached:
		return gains + " do not reach " + unit.Celsius(at)
	case r.SwingC > 0:
		return overshoots + fmt.Sprintf(" and swing without end, by %s up and down", unit.Kelvin(r.SwingC))
	case !r.Settles:
		return overshoots + " and do not become steady"
	}
	return overshoots + " and are steady after " + unit.Seconds(r.SettleS)
}

func (b *builder) assumed() string {
	names := rules.Assumed(b.in)
	if len(names) == 0 {
		return ""
	}
	return "; assumed: " + strings.Join(names, ", ")
}

// round keeps the digits that a person would type.
func round(gain float64) float64 {
	var x float64
	fmt.Sscan(unit.Gain(gain), &x)
	return x
}

func (b *builder) measureGains(at float64) Item {
	item := Item{
		Do: fmt.Sprintf("Tune at %s.", unit.Celsius(at)),
		Expect: "the temperature swings around the target a few times, " +
			"then the firmware prints kp, ki and kd",
		Steps: b.steps(parser.Task{Kind: parser.TaskTune, TempC: at}),
		Note:  []Reading{{"kp", ""}, {"ki", ""}, {"kd", ""}},
	}
	if n := b.in.Printer.Hotend.Loop.Shared; n > 1 {
		item.Do += fmt.Sprintf(" All %d hotends run on one set of gains: this tune replaces that of the "+
			"others too.", n)
		item.Else = "write down the old gains first: a hotend that they suit and the new ones do not needs " +
			"gains of its own (one set for each hotend), which the files do not have yet"
	}
	if b.in.Sheet.Tuned.Gains() != nil {
		item.Do = fmt.Sprintf("Tune again, at %s, only if sensor, heater or block changed since.",
			unit.Celsius(at))
	}
	return item
}

func (b *builder) putGains() Item {
	set := b.steps(parser.Task{Kind: parser.TaskSetGains})
	item := b.keep("the gains that were printed", parser.GainP, parser.GainI, parser.GainD)
	if len(set) > 0 {
		item.Do = "Set the gains that were printed. " + item.Do
		item.Steps = slices.Concat(set, item.Steps)
	}
	return item
}

// keep makes figures outlive the next start.
func (b *builder) keep(what string, keys ...parser.Key) Item {
	k := b.in.Config.Keep(keys...)
	switch {
	case k.Less && len(k.ByHand) == 0:
		return Item{
			Do: capital(k.Why) + ", and the files hold no height of the switch. So move the switch by " +
				"what was shown: up where that is above 0, down where it is below.",
			Expect: "measured again, the paper drags at a height of 0",
		}
	case len(k.ByHand) > 0:
		item := Item{
			Do: fmt.Sprintf("%s. So write %s over the old ones by hand: %s.", capital(k.Why), what,
				places(k.ByHand)),
			Expect: "the figures that were printed stand there",
			Steps:  k.Steps,
		}
		if k.Less {
			item.Do = fmt.Sprintf("%s. So write the old figure less the one that was shown, by hand: %s.",
				capital(k.Why), places(k.ByHand))
			item.Expect = "the old figure, changed by as much as the nozzle was off"
			if !b.keepsNothing() {
				item.Do += " Then flash, and reset the stored settings where there are some."
			}
		}
		if len(k.Steps) > 0 {
			item.Expect += ", in the printer's own files, and it starts with them"
		}
		return item
	case len(k.Steps) == 0:
		return Item{Do: capital(k.Why) + "."}
	case b.keepsNothing():
		item := Item{
			Do: "Save " + what + ".",
			Expect: "it restarts by itself, and the saved block at the end of the main file holds " + what +
				"; what stood there by hand before has become a comment",
			Else: "a refusal names the option and where it stands: " +
				"write the new figure there by hand and restart",
			Steps: k.Steps,
		}
		return item
	}
	return Item{Do: "Save " + what + ".", Expect: "no error", Steps: k.Steps}
}

// places lists places by file, with their lines.
func places(list []parser.Place) string {
	var names []string
	lines := make(map[string][]string)
	for _, p := range list {
		if p.At.IsZero() {
			continue
		}
		line, _ := p.At.Position()
		name := p.At.File.Name
		if lines[name] == nil {
			names = append(names, name)
		}
		lines[name] = append(lines[name], fmt.Sprint(line))
	}
	for i, name := range names {
		noun := "line "
		if len(lines[name]) > 1 {
			noun = "lines "
		}
		names[i] = name + ", " + noun + strings.Join(lines[name], ", ")
	}
	return strings.Join(names, "; ")
}

// gainPlaces says where the gains stand.
func gainPlaces(loop *parser.Loop) string {
	return places([]parser.Place{loop.Kp.Place, loop.Ki.Place, loop.Kd.Place})
}

// writeGains keeps the tune where it outlives the next flash.
func (b *builder) writeGains() []Item {
	places := gainPlaces(&b.in.Printer.Hotend.Loop)
	if places == "" || b.keepsNothing() || len(b.in.Config.Keep(parser.GainP).ByHand) > 0 {
		return nil
	}
	return []Item{{
		Do:     "Write the same gains in the files: " + places + ".",
		Expect: "they hold after the next flash and the next reset too",
	}}
}

// compareGains sees that a tune that was made is used.
func (b *builder) compareGains() Item {
	loop, t := &b.in.Printer.Hotend.Loop, b.in.Sheet.Tuned
	item := Item{
		Do: fmt.Sprintf("The sheet has a tune at %s: %s. See that the configuration has these gains",
			unit.Celsius(t.AtC.Value), gains(t.Kp.Value, t.Ki.Value, t.Kd.Value)),
		Expect: "the same figures, and preflash check says nothing of pid-stale",
	}
	if places := gainPlaces(loop); places != "" {
		item.Do += ": " + places
	}
	item.Do += "."
	return item
}

// holds looks whether the loop keeps its target.
func (b *builder) holds(at float64) Item {
	item := Item{
		Do: fmt.Sprintf("Set %s, let it stand for five minutes, then switch the part fan on full.",
			unit.Celsius(at)),
		Expect: fmt.Sprintf("within %s of the target while it stands; with the fan it dips and comes back, "+
			"and the firmware does not stop", unit.Kelvin(heat.SettleBandC)),
		Else: "tune again; a dip that does not come back is a heater with too little power (rule " +
			"heater-headroom)",
		Steps: b.heatTo(at),
	}
	if c := &b.in.Printer.Hotend.Loop.Control; c.Known() && c.Value == parser.ControlOnOff {
		item.Expect = "it swings around the target by a few K; with the fan it dips and comes back, " +
			"and the firmware does not stop"
		item.Else = "a dip that does not come back is a heater with too little power (rule heater-headroom)"
	}
	return item
}
