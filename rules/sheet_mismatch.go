package rules

import "preflash/parser"

var sheetMismatch = &Rule{
	ID:       "sheet-mismatch",
	Level:    Error,
	Whole:    true,
	Unwaived: true,
	Explains: []string{"config-gap", "setting-shadowed"},
	Summary:  "The sheet names a tool that the configuration lacks.",
	Doc: `The sheet's printer.tool must be a hotend of the configuration, counted from 0.
Where it is none, no rule about the hotend runs, so this cannot be waived.
A file that the sheet names and the repository lacks is no finding: the printer
cannot be read then.`,
	Check: func(in *Input, report func(Finding)) {
		for _, r := range in.Printer.Remarks {
			if r.Kind != parser.RemarkMismatch {
				continue
			}
			at := r.At
			if at.IsZero() {
				at = in.Sheet.Printer.Tool.At
			}
			report(Findingf(Error, at, "%s", r.Text))
		}
	},
}
