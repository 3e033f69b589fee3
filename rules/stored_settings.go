package rules

import (
	"slices"
	"strings"

	"preflash/parser"
)

var storedSettings = &Rule{
	ID:      "stored-settings",
	Level:   Warning,
	Summary: "The firmware keeps settings in its own memory, which outlive a flash.",
	Doc: `What the firmware stored at the console stays in force after flashing until the
stored settings are reset and saved. Note: that it does. Warning: a change of
this run touches one of them, and does nothing until the reset. For sensor
constants the reset is the first step on the bench. Source: the firmware of the
style, as published.`,
	Check: func(in *Input, report func(Finding)) {
		s := &in.Printer.Storage
		if s.On.State == parser.Unknown {
			report(cannotTell(Warning, &s.On))
			return
		}
		if s.On.State == parser.Off || !s.On.Value || len(s.Keeps) == 0 {
			return
		}
		reset := stepsText(in, parser.Task{Kind: parser.TaskResetStored, Tool: in.Printer.Tool})
		var touched []string
		for _, key := range s.Keeps {
			if value, changed := in.Changed[key]; changed && stores(value) {
				touched = append(touched, string(key))
			}
		}
		if len(touched) > 0 {
			report(Sayf(Warning, s.On.At, "after flashing, reset the stored settings and save them%s: the firmware also stores what this run changes, and until then goes by the old ones",
				reset).Explain("these: %s", strings.Join(touched, ", ")))
			return
		}
		display := ""
		if slices.Contains(s.Keeps, parser.MaxTemp) {
			display = "the max temp is one of them, edited at the display: look there which one is used"
		}
		report(Sayf(Note, s.On.At, "after flashing, reset the stored settings and save them%s: until then the firmware goes by those in its own memory", reset).Explain("%s", display))
	},
}

// stores reports whether the firmware keeps such a value in its own memory. A
// sensor definition of its own is compiled in; only the constants of a custom
// one are stored.
func stores(value any) bool {
	def, isSensor := value.(parser.SensorDef)
	return !isSensor || def.Form == parser.FormBeta
}
