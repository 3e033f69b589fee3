package worklist

import (
	"fmt"
	"math"
	"path"
	"strings"

	"preflash/parser"
	"preflash/rules/unit"
)

// coldK is how far the cold reading may be off the room: common practice, no
// source.
const coldK = 3

func (b *builder) afterFlashing() Section {
	s := Section{
		Title: "After flashing or restart",
		Note:  "Power on, heaters off.",
	}
	restart := b.steps(parser.Task{Kind: parser.TaskRestart})
	if len(restart) > 0 {
		s.Items = append(s.Items, Item{
			Do:     "Put the files on the printer (" + b.files() + ") and have them read again.",
			Expect: "it starts without an error",
			Steps:  restart,
		})
	} else {
		s.Items = append(s.Items, Item{
			Do:     "Build from these files (" + b.files() + ") and flash.",
			Expect: "the printer starts, and says at its start that the build is the new one",
		})
	}
	s.Items = append(s.Items, b.stored()...)
	return Section{Title: s.Title, Note: s.Note, Items: append(s.Items, b.coldReading())}
}

// files names the configuration's own files, without those that they include.
func (b *builder) files() string {
	var names []string
	for _, k := range b.in.Sheet.Printer.Config {
		names = append(names, path.Base(k.Value))
	}
	return strings.Join(names, ", ")
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
	doubt := ""
	if s.On.State == parser.Unknown {
		doubt = "Whether it stores any cannot be told: " + s.On.Why + ". "
	}
	show := b.steps(parser.Task{Kind: parser.TaskShowStored})
	return []Item{{
		Do:     doubt + "Have the firmware print what it has in force, and keep a copy.",
		Expect: "figures that you want to keep and that the files lack, such as one found by measuring: write them into the files first",
		Steps:  show,
	}, {
		Do:     "Reset the stored settings. What was stored outlives the flash and hides the files: " + what + ".",
		Expect: "no error; what was stored is gone",
		Steps:  reset,
	}, {
		Do:     "Print them again.",
		Expect: "the files' own figures" + b.storedFigures(),
		Else:   "the reset was not saved, or another build is on the board",
		Steps:  show,
	}}
}

// storedFigures are some of the files' figures to look for.
func (b *builder) storedFigures() string {
	var list []string
	loop, z := &b.in.Printer.Hotend.Loop, &b.in.Printer.Geometry.TriggerMM
	if loop.Control.Known() && loop.Control.Value == parser.ControlPID && loop.Kp.Known() && loop.Ki.Known() && loop.Kd.Known() {
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
		Do:     "Read the temperatures, everything cold.",
		Expect: fmt.Sprintf("the hotend shows the room, %s here, within %s", unit.Celsius(room), unit.Kelvin(coldK)),
		Else:   "do not heat: sensor, wiring or definition are not what the sheet says",
		Steps:  b.steps(parser.Task{Kind: parser.TaskReport}),
	}
	if bed := &b.in.Printer.Bed.Heated; bed.Known() && bed.Value {
		item.Expect += ", and so does the bed"
	}
	if o := b.other; o != nil && !o.old {
		if shows := o.Indicated(b.real, room); math.Abs(shows-room) > coldK {
			item.Expect += "; read by the definition now in the files, " + o.name + ", it would show " + unit.Celsius(shows)
		}
	}
	return item
}
