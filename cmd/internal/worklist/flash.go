package worklist

import (
	"fmt"
	"math"
	"path"
	"slices"
	"strings"

	"preflash/parser"
	"preflash/rules"
	"preflash/rules/unit"
)

// coldK is how far the cold reading may be off the room: common practice, no
// source.
const coldK = 3

// before keeps what the swap may lose.
func (b *builder) before() Section {
	s := Section{Title: "Before the swap", Note: "The printer still as it was, power on, heaters off."}
	s.add(Item{
		Do:     "Keep a copy of the files that the printer runs on: " + b.files() + ".",
		Expect: "a copy to go back to",
	})
	on := &b.in.Printer.Storage.On
	if b.keepsNothing() || on.State == parser.Off || on.Known() && !on.Value {
		return s
	}
	item := Item{
		Expect: "figures that the files lack, such as a probe's height, a mesh, steps per mm: " +
			"write those that stay into the files",
		Steps: b.steps(parser.Task{Kind: parser.TaskShowStored}),
		Note:  []Reading{{"kept as", ""}},
	}
	if item.Do = "Have the old firmware print its stored settings, and keep a copy."; len(item.Steps) == 0 {
		item.Do = "The firmware stores settings, and this one does not print them at the console: " +
			"write them down from its display."
	}
	if on.State == parser.Unknown {
		item.Do = "Whether the firmware stores settings cannot be told: " + on.Why + ". " + item.Do
	}
	if b.drops() {
		item.Do += " The change of the sensor definition lays its memory out anew: the new build drops all " +
			"that is stored at its first start, probe height and gains too."
	} else {
		item.Do += " A new build that lays its memory out anew drops all that is stored at its first " +
			"start: so it is with a custom sensor definition that comes or goes, another kind of control, " +
			"another number of hotends."
	}
	s.add(item)
	return s
}

// drops reports whether a change that is left makes the firmware drop what it
// stored.
func (b *builder) drops() bool {
	return slices.ContainsFunc(b.changes, func(c parser.Change) bool {
		def, ok := c.Value.(parser.SensorDef)
		return ok && c.Key == parser.HotendSensor && rules.Drops(b.in, def)
	})
}

// keepsNothing reports whether the firmware keeps nothing apart from its files,
// into which it writes what was tuned.
func (b *builder) keepsNothing() bool {
	return len(b.steps(parser.Task{Kind: parser.TaskResetStored})) == 0
}

func (b *builder) afterFlashing() Section {
	restart := b.restart()
	s := Section{Title: "After flashing", Note: "Power on, heaters off."}
	if len(restart) > 0 {
		s.Title = "After the restart"
		s.add(Item{
			Do: "Put every file that was changed on the printer, included ones too" + b.changed() +
				", and have them read again.",
			Expect: "it starts without an error",
			Else:   "the copy from above brings it back",
			Steps:  restart,
		})
	} else {
		s.add(Item{
			Do:     "Build from these files, " + b.files() + b.changed() + ", and flash.",
			Expect: "the printer starts, and says at its start that the build is the new one",
		})
	}
	s.add(b.stored()...)
	s.add(b.coldReading())
	return s
}

// mostFiles are named one by one.
const mostFiles = 8

// files names the files of the configuration as seen from its first one.
func (b *builder) files() string { return b.named(b.in.Printer.Files) }

func (b *builder) named(files []*parser.File) string {
	var names []string
	if len(b.in.Printer.Files) == 0 {
		return ""
	}
	home := path.Dir(b.in.Printer.Files[0].Path) + "/"
	for _, f := range files {
		if name := strings.TrimPrefix(f.Path, home); !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	if more := len(names) - mostFiles; more > 0 {
		names = append(names[:mostFiles], fmt.Sprintf("%d more", more))
	}
	return strings.Join(names, ", ")
}

// changed names the files that a diff changes.
func (b *builder) changed() string {
	edits, err := b.in.Config.Edits(b.changes)
	if err != nil || len(edits) == 0 {
		return ""
	}
	files := make([]*parser.File, len(edits))
	for i := range edits {
		files[i] = edits[i].At.File
	}
	return " (the diff that is left changes " + b.named(files) + ")"
}

// stored has the settings reset that the firmware keeps apart from the files.
func (b *builder) stored() []Item {
	s := &b.in.Printer.Storage
	reset := b.steps(parser.Task{Kind: parser.TaskResetStored})
	if len(reset) == 0 || s.On.State == parser.Off || s.On.Known() && !s.On.Value {
		return nil
	}
	kept := make([]string, len(s.Keeps))
	for i, key := range s.Keeps {
		kept[i] = string(key)
	}
	what := "settings"
	if len(kept) > 0 {
		what = strings.Join(kept, ", ")
	}
	items := []Item{{
		Do: "Reset the stored settings. " +
			"What was stored outlives the flash and hides the files: " + what + ".",
		Expect: "no error; what was stored is gone, and the copy from above has it",
		Steps:  reset,
	}}
	if show := b.steps(parser.Task{Kind: parser.TaskShowStored}); len(show) > 0 {
		items = append(items, Item{
			Do:     "Print the settings again.",
			Expect: "the files' own figures" + b.storedFigures(),
			Else:   "the reset was not saved, or another build is on the board",
			Steps:  show,
		})
	}
	return items
}

// storedFigures are some of the files' figures to look for.
func (b *builder) storedFigures() string {
	var list []string
	loop, z := &b.in.Printer.Hotend.Loop, &b.in.Printer.Geometry.TriggerMM
	if loop.Control.Known() && loop.Control.Value == parser.ControlPID && loop.Kp.Known() &&
		loop.Ki.Known() && loop.Kd.Known() {
		list = append(list, gains(loop.Kp.Value, loop.Ki.Value, loop.Kd.Value))
	}
	if z.Known() {
		list = append(list, "trigger height "+unit.Millimetres(z.Value))
	}
	if d := &b.in.Printer.Hotend.Sensor.Value; d.Form == parser.FormBeta {
		list = append(list, fmt.Sprintf("sensor R25 %s, Beta %s", unit.Ohms(d.R25Ohm), unit.Kelvin(d.BetaK)))
	}
	if len(list) == 0 {
		return ""
	}
	return ": " + strings.Join(list, "; ")
}

func gains(kp, ki, kd float64) string {
	return "kp " + unit.Gain(kp) + ", ki " + unit.Gain(ki) + ", kd " + unit.Gain(kd)
}

// coldReading compares the sensor with the room, which shows a wrong kind of
// sensor, but seldom a wrong curve.
func (b *builder) coldReading() Item {
	room := b.in.Sheet.Printer.AmbientC.Value
	item := Item{
		Do: "Read the temperatures, everything cold.",
		Expect: fmt.Sprintf("the hotend shows the room, %s here, within %s", unit.Celsius(room),
			unit.Kelvin(coldK)),
		Else:  "do not heat: sensor, wiring or definition are not what the sheet says",
		Steps: b.steps(parser.Task{Kind: parser.TaskReport}),
		Note:  []Reading{{"room", "°C"}, {"hotend", "°C"}},
	}
	if bed := &b.in.Printer.Bed.Heated; bed.Known() && bed.Value {
		item.Expect += ", and so does the bed"
	}
	if o := b.other; o != nil && !o.old {
		if shows := o.Indicated(b.real, room); math.Abs(shows-room) > coldK {
			item.Expect += "; read by the definition now in the files, " + o.name + ", it would show " +
				unit.Celsius(shows)
		}
	}
	return item
}
