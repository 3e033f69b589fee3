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
	Doc: `What the firmware stored at the console is used after flashing until the
stored settings are reset and saved. Note: that it does. Warning: a change of
this run touches one of them, and does nothing until the reset; or it lays the
memory out anew, so that the first start drops all that is stored, the height of
the probe too. Print and copy them before flashing. For sensor constants the
reset is the first step on the bench. Source: the firmware of the style, as
published.`,
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
		if drops(in) {
			report(Findingf(Warning, s.On.At, "print the stored settings and copy them before flashing: "+
				"the change of the sensor definition lays the firmware's memory out anew, so the first "+
				"start drops all of them, probe height and gains too%s", copied(in)))
			return
		}
		var touched []string
		for _, key := range s.Keeps {
			if value, changed := in.Changed[key]; changed && stores(value) {
				touched = append(touched, string(key))
			}
		}
		if len(touched) > 0 {
			report(Findingf(Warning, s.On.At,
				"after flashing, reset the stored settings and save them%s: the firmware also stores what "+
					"this run changes, and until then goes by the old ones",
				reset).Explain("these: %s", strings.Join(touched, ", ")))
			return
		}
		display := ""
		if slices.Contains(s.Keeps, parser.MaxTemp) {
			display = "the max temp is one of them, edited at the display: look there which one is used"
		}
		report(Findingf(Note, s.On.At,
			"after flashing, reset the stored settings and save them%s: until then the firmware goes by "+
				"those in its own memory", reset).Explain("%s", display))
	},
}

// stores reports whether the firmware keeps such a value in its own memory. A
// sensor definition of its own is compiled in; only the constants of a custom
// one are stored.
func stores(value any) bool {
	def, isSensor := value.(parser.SensorDef)
	return !isSensor || def.Form == parser.FormBeta
}

// drops reports whether a change of this run makes the firmware drop all that it stored.
func drops(in *Input) bool {
	def, changed := in.Changed[parser.HotendSensor].(parser.SensorDef)
	return changed && Drops(in, def)
}

// Drops reports whether another definition of the hotend's sensor makes the
// firmware drop all that it stored.
func Drops(in *Input, def parser.SensorDef) bool {
	was := in.Printer.Hotend.Sensor.Value.Form == parser.FormBeta
	return in.Printer.Storage.CustomLays && was != (def.Form == parser.FormBeta)
}

func copied(in *Input) string {
	return stepsText(in, parser.Task{Kind: parser.TaskShowStored, Tool: in.Printer.Tool})
}
