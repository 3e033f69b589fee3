package rules

import "preflash/parser"

var savedHidden = &Rule{
	ID:      "saved-hidden",
	Level:   Note,
	Summary: "A value that the firmware saved is hidden by a hand-written one.",
	Doc: `A hand-written option, included files counted, hides the saved one of the
same name. The saved value is not used, and the next save drops it. A save
that would replace a value written in an included file is refused. Source: the
style's firmware as it is published.`,
	Check: remarks(parser.RemarkSavedHidden, Note),
}

var savedDamaged = &Rule{
	ID:      "saved-damaged",
	Level:   Error,
	Summary: "The saved block is damaged, so the firmware ignores all of it.",
	Doc: `The firmware knows the saved block by the exact lines that it begins with. Any
others, a malformed line, or text after it, make the firmware ignore the block
whole: gains and probe offset fall back to what is written by hand, or to
nothing. No change: nothing is edited inside the block. Source: the style's
firmware as it is published.`,
	Check: remarks(parser.RemarkSavedDamaged, Error),
}

// remarks reports what the style noticed while it read.
func remarks(kind parser.RemarkKind, level Level) func(*Input, func(Finding)) {
	return func(in *Input, report func(Finding)) {
		for _, r := range in.Printer.Remarks {
			if r.Kind == kind {
				report(Findingf(level, r.At, "%s", r.Text).Of(parser.Key(r.At.Text())))
			}
		}
	}
}
