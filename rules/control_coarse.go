package rules

import "preflash/parser"

var controlCoarse = &Rule{
	ID:      "control-coarse",
	Level:   Warning,
	Summary: "The hotend is switched on and off instead of being controlled.",
	Doc: `On/off control swings by several degrees, since block and sensor lag behind the
heater; a light block with a strong heater swings most (common practice, no
source). No change: PID control needs gains, and these are measured.`,
	Check: func(in *Input, report func(Finding)) {
		c := &in.Printer.Hotend.Loop.Control
		switch {
		case c.State == parser.Unknown:
			report(cannotTell(Warning, c))
		case c.Known() && c.Value == parser.ControlOnOff:
			report(Findingf(Warning, placed(c.At, in.Sheet.New.Heater.Kind.At),
				"switch to PID control and tune it on the new hotend: on/off control swings by several "+
					"degrees"))
		}
	},
}
