package rules

import "preflash/parser"

var configBroken = &Rule{
	Whole:   true,
	ID:      "config-broken",
	Level:   Error,
	Summary: "The configuration stops its own build.",
	Doc: `The configuration itself says, in force, that it must not be built, or holds
what the firmware refuses to start with or the compiler refuses, such as a
condition that is no expression. Not so where a part of it is unknown. No
change: the finding says what stops the build.`,
	Check: remarks(parser.RemarkBroken, Error),
}
