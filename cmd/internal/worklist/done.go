package worklist

import (
	"fmt"

	"preflash/parser"
	"preflash/patch"
	"preflash/rules"
	"preflash/rules/unit"
)

// done ends the swap: what goes into the sheet, and a check that is clean.
func (b *builder) done() Section {
	s := Section{Title: "The end of the swap"}
	name := b.in.Sheet.File.Name
	if b.keepsNothing() {
		s.add(Item{
			Do: "Copy the files back from the printer to where the sheet is: what was saved, " +
				"or written by hand, stands there.",
			Expect: "preflash values shows the gains and the height that were measured",
		})
	}
	var lines []string
	if control := &b.in.Printer.Hotend.Loop.Control; b.in.Sheet.Tuned == nil && control.Known() {
		at := "at_c = " + unit.Figure(rules.TuneC(b.in), 1)
		switch control.Value {
		case parser.ControlPID:
			lines = append(lines, "[tuned]", at,
				"kp = ________", "ki = ________", "kd = ________", "on = 20__-__-__")
		case parser.ControlModel:
			lines = append(lines, "[tuned]", at, "on = 20__-__-__")
		}
	}
	measures := b.reference() != "nozzle" || len(b.in.Printer.Geometry.Offsets) > 0
	if !b.in.Sheet.Done.HeightOn.Given && measures {
		lines = append(lines, "[done]", "height_on = 20__-__-__")
	}
	if len(lines) > 0 {
		s.add(Item{
			Do:     fmt.Sprintf("Write in the sheet, %s, with the days on which it was done:", name),
			Expect: "gains that stand in the files exactly as in the sheet",
			Sheet:  lines,
		})
	}
	s.add(Item{
		Do:     "Check the sheet once more.",
		Run:    []string{"preflash check " + patch.Typed(name)},
		Expect: "no error and no warning; notes may stay. The swap is over",
		Else:   "what it still says is still to be done",
	})
	return s
}
