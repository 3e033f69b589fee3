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
	Mend     string // what must be mended before anything else, or ""
	Sections []Section
}

// Section is one stage of the work.
type Section struct {
	Title string
	Note  string // what holds for all of it
	Items []Item
}

// Item is one thing to do and tick off.
type Item struct {
	Do     string
	Expect string   // what must be seen then
	Else   string   // what follows where it is not
	Steps  []string // console commands, in order
}

// New makes the list of a printer. errors are the rules of the findings that
// keep it from being heated, one for each finding.
func New(in *rules.Input, errors []string) *List {
	b := newBuilder(in)
	return &List{
		Mend: mend(errors),
		Sections: []Section{
			b.beforePower(),
			b.afterFlashing(),
			b.firstHeat(),
			b.protection(),
			b.tune(),
			b.height(),
			b.flow(),
			b.left(),
		},
	}
}

func mend(errors []string) string {
	if len(errors) == 0 {
		return ""
	}
	names := slices.Compact(slices.Sorted(slices.Values(errors)))
	noun, them := "error", "it"
	if len(errors) > 1 {
		noun, them = "errors", "them"
	}
	return fmt.Sprintf("The configuration or the sheet still has %d %s: %s. Mend %s before the heater gets power (preflash check says what is wrong, preflash diff what an edit can do), then print this list again: its figures are those of the files as they stand.",
		len(errors), noun, strings.Join(names, ", "), them)
}

// builder holds what several sections need.
type builder struct {
	in      *rules.Input
	real    *sensor.Circuit // what is wired in, nil where it has no curve
	inForce *sensor.Circuit // what the firmware believes, nil where that is no curve of this kind
	other   *definition     // the wrong definition to tell apart, nil where there is none
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

// place says where a setting stands, or nothing.
func place(at parser.Span) string {
	if at.IsZero() {
		return ""
	}
	return " (" + at.String() + ")"
}
