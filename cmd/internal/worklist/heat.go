package worklist

import (
	"fmt"
	"math"

	"preflash/parser"
	"preflash/rules"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

// firstStops are the temperatures at which the first heat is compared with a
// thermometer, °C.
var firstStops = [...]float64{50, 100, 150}

// thermometerK is what a contact thermometer on a hotend is good for: common
// practice, no source.
const thermometerK = 5

func (b *builder) firstHeat() Section {
	s := Section{
		Title: "First heat",
		Note: "Stay beside it, hand at the switch, smoke alarm in the room. Part fan off, no filament, " +
			"the nozzle away from the bed. Hold a thin thermometer against the block, near the sensor; " +
			"held from outside it shows a few °C too little. At smoke, at a smell, or where the reading " +
			"runs past the target: pull the plug.",
	}
	highest := b.highest()
	last := 0.0
	for _, t := range firstStops {
		if t > highest {
			break
		}
		item := b.stop(t)
		if last > 0 {
			item.Expect += b.speed(last, t)
		}
		s.add(item)
		if from := b.fanFrom(); last <= from && from < t {
			since := "from " + unit.Celsius(from) + " on"
			switch {
			case b.in.Sheet.New.Fan.AlwaysOn.Value:
				since = "since power on"
			case b.withTarget():
				since = "since the target was set"
			}
			s.add(Item{
				Do:     "Look at the heat-break fan.",
				Expect: "it runs by now, " + since + ", and blows at the heat break",
				Else:   "heaters off: the heat break clogs without it",
			})
		}
		last = t
	}
	if last < firstStops[len(firstStops)-1] {
		s.add(
			Item{Do: fmt.Sprintf("Go no further: as it is configured and rated, no more than %s may be "+
				"asked of this hotend.", unit.Celsius(highest))})
	} else if text := b.tooAlike(); text != "" {
		s.Items[len(s.Items)-1].Expect += text
	}
	s.add(Item{
		Do:     "Switch the heaters off.",
		Expect: "the reading falls at once",
		Else:   "pull the plug: the output stays on by a fault, and no firmware can stop that",
		Steps:  b.steps(parser.Task{Kind: parser.TaskHeatersOff}),
	})
	if b.tooHot() {
		s.add(Item{Do: fmt.Sprintf("Stop here: what follows needs %s, and as it is configured and rated, no "+
			"more than %s may be asked of this hotend with room for overshoot. Correct the files or the "+
			"sheet, and print this list again.", unit.Celsius(rules.TuneC(b.in)), unit.Celsius(b.reach()))})
	}
	return s
}

// tooHot reports whether what comes after the first heat needs more than may be
// asked of the hotend: such a target is refused or lowered, or trips as the tune
// swings around it.
func (b *builder) tooHot() bool { return rules.TuneC(b.in) > b.reach() }

// reach is the highest temperature around which a tune may swing.
func (b *builder) reach() float64 {
	reach := b.rated()
	if limit, ok := rules.ReachableTarget(b.in); ok {
		reach = min(reach, limit)
	}
	return reach
}

// rated is the highest reading at which the hotend is no hotter than it is rated
// for, by the definition that is in force now.
func (b *builder) rated() float64 {
	rated, _ := rules.Rating(b.in)
	shown := rated
	if b.inForce != nil {
		for shown > 0 && b.inForce.Actual(b.real, shown) > rated+rules.HotterK {
			shown--
		}
	}
	return shown
}

// highest is the highest temperature that may be asked of the hotend.
func (b *builder) highest() float64 {
	highest := b.rated()
	if limit, ok := rules.HighestTarget(b.in); ok {
		highest = min(highest, limit)
	}
	return highest
}

// stop holds one temperature against a thermometer.
func (b *builder) stop(t float64) Item {
	item := Item{
		Do:    fmt.Sprintf("Set %s and wait until the reading has stood for a minute.", unit.Celsius(t)),
		Steps: b.heatTo(t),
		Note:  []Reading{{"thermometer", "°C"}},
	}
	band := 0.0
	if b.real != nil {
		band = rules.SensorBand(b.in, b.real, t)
	}
	// The uncertainties of sensor and thermometer are independent.
	item.Expect = fmt.Sprintf("thermometer at %s, within %s (what sensor and thermometer are good for)",
		unit.Celsius(t), unit.Kelvin(math.Ceil(math.Hypot(band, thermometerK))))
	if o := b.other; o != nil {
		actual := o.Actual(b.real, t)
		item.Expect += fmt.Sprintf("; %s, it would be %s", o.wrong(), b.reads(actual, t))
	}
	item.Else = "heaters off, and find out why before you go on"
	return item
}

// shortOfTarget is where a loop begins to throttle before its target, K.
const shortOfTarget = 15

// speed says how long the heating between two stops takes, which shows a heater
// or a voltage that is not the sheet's.
func (b *builder) speed(from, to float64) string {
	p := rules.Plant(b.in)
	to -= shortOfTarget
	curve := p.Run(heat.State{Block: from, Sensor: from}, p.DutyLimit, heat.Load{}, 600)
	s, ok := curve.Cross(to)
	if !ok {
		return ""
	}
	text := fmt.Sprintf(". From %s to %s it takes about %s at full power", unit.Celsius(from),
		unit.Celsius(to), unit.Seconds(math.Round(s)))
	if len(rules.Assumed(b.in)) > 0 {
		text += " (with assumed figures of the block)"
	}
	return text + "; half or twice that speaks of another heater or voltage than the sheet's"
}

// wrong names a definition as the one that should not be used.
func (d *definition) wrong() string {
	if d.old {
		return "were the sensor still read as the old one, " + d.name
	}
	return "read by the definition now in the files, " + d.name
}

// reads says an actual temperature with its error.
func (b *builder) reads(actual, indicated float64) string {
	switch d := actual - indicated; {
	case math.Abs(d) < 0.05:
		return unit.Celsius(actual) + " as well"
	case d > 0:
		return unit.Celsius(actual) + ", " + unit.Kelvin(d) + " hotter than shown"
	default:
		return unit.Celsius(actual) + ", " + unit.Kelvin(-d) + " colder than shown"
	}
}

// tooAlike says where a thermometer does tell the definitions apart, if it does
// not so far.
func (b *builder) tooAlike() string {
	o, top := b.other, b.in.Sheet.New.PrintC.Value[1]
	if o == nil {
		return ""
	}
	for _, t := range firstStops {
		if math.Abs(o.Actual(b.real, t)-t) > thermometerK {
			return ""
		}
	}
	return fmt.Sprintf(". A thermometer hardly tells these apart: compare again at %s, where it would be %s",
		unit.Celsius(top), b.reads(o.Actual(b.real, top), top))
}

// withTarget reports whether the heat-break fan runs with every target.
func (b *builder) withTarget() bool {
	c := &b.in.Printer.ColdSide
	return c.WithTarget && c.Fan.Known()
}

// fanFrom is the temperature from which on the heat-break fan runs.
func (b *builder) fanFrom() float64 {
	fan, c := &b.in.Sheet.New.Fan, &b.in.Printer.ColdSide
	switch {
	case fan.AlwaysOn.Value:
		return b.in.Sheet.Printer.AmbientC.Value
	case b.withTarget():
		return b.in.Sheet.Printer.AmbientC.Value // it runs from the first target on
	case c.Fan.Known() && c.OnAboveC.Known():
		return c.OnAboveC.Value
	}
	return fan.OnAboveC.Value
}
