package rules

import "preflash/parser"

var configGap = &Rule{
	ID:      "config-gap",
	Level:   Warning,
	Summary: "Something that bears on the configuration could not be read or recognised.",
	Doc: `Note: a file that the sheet calls absent, a pattern that matches nothing, an
override outside the files. Warning: an active option that looks like a
protection or a sensor and fits none that Preflash knows. Each says what it
could hide.`,
	Check: func(in *Input, report func(Finding)) {
		remarks(parser.RemarkGap, Note)(in, report)
		remarks(parser.RemarkUnrecognised, Warning)(in, report)
	},
}
