package rules

import "preflash/parser"

var configGap = &Rule{
	ID:      "config-gap",
	Level:   Warning,
	Whole:   true,
	Summary: "Something that bears on the configuration could not be read or recognised.",
	Doc: `Note: a file that the sheet calls absent, a pattern that matches nothing, an
override outside the files, a setting that cannot be told and that no other rule
asks for, such as a figure that the firmware would refuse.
Warning: an active option that looks like a protection or a sensor and fits none
that Preflash knows. Each says what it could hide. No change: a person must
look.`,
	Check: func(in *Input, report func(Finding)) {
		remarks(parser.RemarkGap, Note)(in, report)
		remarks(parser.RemarkUnrecognised, Warning)(in, report)
		if lacksHotend(in.Printer) {
			return
		}
		for s := range in.Printer.Settings() {
			if s.State == parser.Unknown && !in.unknowns[s.Key] {
				f := Findingf(Note, s.At, "cannot tell the %s: %s", s.Key, s.Why).Of(s.Key)
				f.Unknown = s.Key
				report(f)
			}
		}
	},
}
