package rules

var fanWires = &Rule{
	ID:      "fan-wires",
	Level:   Note,
	Summary: "The heat-break fan has other wires than plus and minus.",
	Doc: `The third wire gives the fan's speed, the fourth takes a speed command (common
practice, no source). Both may stay unconnected. Silent on two wires, unless
[old.fan] says that the old one had more.
Values: wires.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		wires := &in.Sheet.New.Fan.Wires
		values := Values{"wires": wires.Value}
		switch {
		case wires.Value == 3:
			report(Findingf(Note, wires.At,
				"connect plus and minus of the heat-break fan by its label: it has 3 wires, and the "+
					"third, its speed, stays free where the board has no input for it").
				With(values))
		case wires.Value == 4:
			report(Findingf(Note, wires.At,
				"connect plus and minus of the heat-break fan by its label: it has 4 wires, and the "+
					"others may stay free").
				Explain("the third gives the speed; the fourth takes a speed command, and the fan runs " +
					"full where it stays free").With(values))
		case in.Sheet.Old != nil && in.Sheet.Old.Fan.Wires.Value > wires.Value:
			report(Findingf(Note, wires.At,
				"switch off any fan speed check of the firmware: the old heat-break fan gave its speed on "+
					"a third wire, the new one has %d", wires.Value).With(values))
		}
	},
}
