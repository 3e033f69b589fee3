// Package worklist makes the list to work through with a printer whose hotend
// was changed, with that printer's own figures. What it says of tools and
// order is common practice, no source; figures come from the rules' models.
package worklist

import (
	"fmt"
	"slices"
	"strings"

	"preflash/parser"
	"preflash/rules"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

// List is the work on one printer, in order.
type List struct {
	First    string // what must be fixed before anything else, or ""
	Sections []Section
}

// Section is one stage of the work.
type Section struct {
	Title string
	Note  string // what holds for all of it
	Items []Item
}

func (s *Section) add(items ...Item) { s.Items = append(s.Items, items...) }

// Item is one thing to do and tick off.
type Item struct {
	Do     string
	Expect string   // what must be seen then
	Else   string   // what follows where it is not
	Steps  []string // console commands, in order
	Run    []string // commands of Preflash
	Sheet  []string // lines that go into the sheet
	Note   []Reading
}

// Reading is something to write down.
type Reading struct{ Name, Unit string }

// Open is what is left to do before the list that it is printed with.
type Open struct {
	// Errors are the rules of the findings that keep the hotend from being
	// heated, one for each finding.
	Errors []string
	// Before are those of them before which not even an attended first heat may come:
	// they can start a fire, and cannot be waived or say that no reading is true.
	Before []string
	// Changes are what a diff would change.
	Changes []parser.Change
}

// New makes the list of a printer.
func New(in *rules.Input, open Open) *List {
	b := newBuilder(in)
	b.changes = open.Changes
	list := &List{First: fixFirst(open.Errors), Sections: []Section{b.before(), b.beforePower()}}
	if !b.placed() {
		cold := coldSensor()
		cold.Items = append([]Item{{
			Do: fmt.Sprintf("Stop here: what the firmware makes of definition %s%s is not known, "+
				"so nothing may heat. Write a definition that is known for the sheet's sensor, "+
				"and print this list again; where that sensor is not sure either, measure it first.",
				rules.Definition(b.in), place(b.in.Printer.Hotend.Sensor.At)),
		}}, cold.Items...)
		list.Sections = append(list.Sections, cold)
		return list
	}
	// With the heater unplugged the protection is tested cold, so that the first heat
	// is not the first test of what has to stop it.
	protection, unprotected := b.protection(), b.unprotected()
	if len(open.Before) > 0 && !unprotected {
		protection.add(Item{Do: "Stop here: the heater must not get power before this is fixed: " +
			strings.Join(slices.Compact(slices.Sorted(slices.Values(open.Before))), ", ") +
			" (preflash check says what is wrong). Then print this list again."})
	}
	list.Sections = append(list.Sections, b.afterFlashing(), protection)
	if len(open.Before) > 0 || unprotected {
		return list
	}
	list.Sections = append(list.Sections, b.firstHeat())
	if b.tooHot() {
		return list
	}
	tune, height := []Section{b.tune()}, b.height()
	if c := &in.Printer.Hotend.Loop.Control; c.Known() && c.Value == parser.ControlModel {
		tune, height = height, tune // its tune homes, and moves close to the bed
	}
	list.Sections = append(list.Sections,
		slices.Concat(tune, height, []Section{b.flow(), b.left(), b.done()})...)
	return list
}

// Unknown is the list of a printer whose sensor is not known yet, so that there
// is no sheet to go by.
func Unknown() *List { return &List{Sections: []Section{coldSensor()}} }

// placed reports whether it is known what the firmware makes of the sensor.
func (b *builder) placed() bool {
	s := &b.in.Printer.Hotend.Sensor
	return s.Known() && s.Value.Kind != parser.KindUnknown
}

func fixFirst(errors []string) string {
	if len(errors) == 0 {
		return ""
	}
	names := slices.Compact(slices.Sorted(slices.Values(errors)))
	noun, them := "error", "it"
	if len(errors) > 1 {
		noun, them = "errors", "them"
	}
	return fmt.Sprintf("The configuration or the sheet still has %d %s: %s. Fix %s before the heater gets "+
		"power (preflash check says what is wrong, preflash diff what an edit can do), then print this "+
		"list again: its figures are those of the files as they stand.",
		len(errors), noun, strings.Join(names, ", "), them)
}

// builder holds what several sections need.
type builder struct {
	in      *rules.Input
	real    *sensor.Circuit // what is wired in, nil where it has no curve
	inForce *sensor.Circuit // what the firmware believes, nil where that is no curve of this kind
	other   *definition     // the wrong definition to tell apart, nil where there is none
	changes []parser.Change // what a diff would change
}

// definition is a way to read the sensor that would be wrong.
type definition struct {
	*sensor.Circuit
	name string
	old  bool // of the hotend that went out; else it is the configuration's
}

// apartK is how far two definitions must lie apart somewhere up to 150 °C to be
// two, in K.
const apartK = 1

func newBuilder(in *rules.Input) *builder {
	b := &builder{in: in}
	curve, err := sensor.OfSheet(&in.Sheet.New.Sensor)
	if err == nil {
		b.real = &sensor.Circuit{Curve: curve, PullupOhm: rules.BoardPullup(in)}
	}
	if believed, real, ok := rules.Circuits(in); ok {
		b.inForce, b.real = believed, real
	}
	if b.real == nil {
		return b
	}
	if b.inForce != nil && apart(b.inForce, b.real) {
		b.other = &definition{Circuit: b.inForce, name: rules.Definition(in)}
		if b.inForce.PullupOhm != b.real.PullupOhm {
			b.other.name += " with a pull-up of " + unit.Ohms(b.inForce.PullupOhm)
		}
		return b
	}
	if old := in.Sheet.Old; old != nil {
		if curve, err := sensor.OfSheet(&old.Sensor); err == nil {
			c := *b.real
			c.Curve = curve
			if apart(&c, b.real) {
				b.other = &definition{Circuit: &c, name: sensorName(&old.Sensor), old: true}
			}
		}
	}
	return b
}

// apart reports whether two definitions read one sensor differently.
func apart(believed, real *sensor.Circuit) bool {
	for _, t := range []float64{20, 50, 100, 150} {
		if d := believed.Actual(real, t) - t; d > apartK || d < -apartK {
			return true
		}
	}
	return false
}

// steps gives the console commands of a task on this hotend.
func (b *builder) steps(task parser.Task) []string {
	task.Tool = b.in.Printer.Tool
	return b.in.Config.Steps(task)
}

// heatTo sets the hotend's target.
func (b *builder) heatTo(tempC float64) []string {
	return b.steps(parser.Task{Kind: parser.TaskHeat, TempC: tempC})
}

// restart brings the firmware back after the power was off, or after it stopped,
// where that takes a command.
func (b *builder) restart() []string { return b.steps(parser.Task{Kind: parser.TaskRestart}) }

// place says where a setting stands, or nothing.
func place(at parser.Span) string {
	if at.IsZero() {
		return ""
	}
	return " (" + at.String() + ")"
}
