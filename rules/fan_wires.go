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
			report(Sayf(Note, wires.At, "the heat-break fan has 3 wires: connect plus and minus by its label; the third gives the speed and stays free where the board has no input for it").With(values))
		case wires.Value == 4:
			report(Sayf(Note, wires.At, "the heat-break fan has 4 wires: connect plus and minus by its label; the third gives the speed and may stay free, the fourth takes a speed command and lets the fan run full where it stays free").With(values))
		case in.Sheet.Old != nil && in.Sheet.Old.Fan.Wires.Value > wires.Value:
			report(Sayf(Note, wires.At, "the old heat-break fan gave its speed on a third wire, the new one has %d: switch off any fan speed check of the firmware", wires.Value).With(values))
		}
	},
}
