package sections

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"preflash/parser"
)

// Edits turns changes into edits. Two changes that want different text at one
// place are an error.
func (c *config) Edits(changes []parser.Change) ([]parser.Edit, error) {
	e := editor{config: c, settings: make(map[parser.Key]parser.Description)}
	for s := range c.printer.Settings() {
		e.settings[s.Key] = s
	}
	for _, change := range changes {
		if err := e.change(change); err != nil {
			return nil, err
		}
	}
	return e.sorted(), nil
}

// editor gathers edits.
type editor struct {
	*config
	settings map[parser.Key]parser.Description
	edits    []ranked
	opened   map[string]anchor // sections that the edits add, and where
	inserted int               // how many those are, sensor definitions too
	added    map[added]string  // options that the edits add, and their values
	cleared  []parser.Span     // lines that the edits take out
}

// ranked is an edit with its rank among those at one place: what goes into a
// section comes before the sections that follow it.
type ranked struct {
	parser.Edit
	rank int
}

type added struct{ section, option string }

const (
	rankOption  = iota
	rankSection // of the first section that is added; the next ones come behind it
)

// sorted returns the edits by file, in reading order, and offset, without those
// of a line that is taken out.
func (e *editor) sorted() []parser.Edit {
	e.edits = slices.DeleteFunc(e.edits, func(edit ranked) bool {
		return slices.ContainsFunc(e.cleared, func(line parser.Span) bool {
			return edit.At != line && edit.At.File == line.File &&
				edit.At.Start > line.Start && edit.At.Start < line.End
		})
	})
	order := make(map[*parser.File]int, len(e.files))
	for i, f := range e.files {
		order[f] = i
	}
	slices.SortStableFunc(e.edits, func(a, b ranked) int {
		return cmp.Or(cmp.Compare(order[a.At.File], order[b.At.File]), cmp.Compare(a.At.Start, b.At.Start),
			cmp.Compare(a.At.End, b.At.End), cmp.Compare(a.rank, b.rank))
	})
	edits := make([]parser.Edit, len(e.edits))
	for i := range e.edits {
		edits[i] = e.edits[i].Edit
	}
	return edits
}

func (e *editor) change(change parser.Change) error {
	s, known := e.settings[change.Key]
	if !known {
		return &parser.Error{File: e.main.Name, Message: fmt.Sprintf(
			"the %s is not a setting of this configuration, so it cannot be changed", change.Key)}
	}
	switch v := change.Value.(type) {
	case float64:
		return e.figure(s, v)
	case parser.SensorDef:
		return e.sensorDef(s, v)
	case parser.Control:
		word := [...]string{
			parser.ControlPID: "pid", parser.ControlOnOff: "watermark", parser.ControlModel: "mpc",
		}
		if int(v) < len(word) {
			heater := e.heaterOf(hotendName(e.tool))
			sensor := e.printer.Hotend.Sensor.Value
			e.clear(s.Key, heater, &sensor, word[v])
			return e.option(s, word[v])
		}
	case bool:
		return e.turn(s, v)
	}
	return e.cannot(s, "a value of this kind cannot be written")
}

// cannot is the error of a change that no edit makes.
func (e *editor) cannot(s parser.Description, format string, args ...any) error {
	at := s.At
	if at.IsZero() {
		at = e.nowhere()
	}
	return parser.Errorf(at, "the %s cannot be changed by an edit: %s", s.Key, fmt.Sprintf(format, args...))
}

func (e *editor) figure(s parser.Description, v float64) error {
	switch {
	case math.IsNaN(v) || math.IsInf(v, 0):
		return e.cannot(s, "%g is no figure", v)
	case s.Key == parser.FanPower:
		return e.fanPower(s, v)
	case s.Key == parser.FanAtShutdown:
		return e.cannot(s, "it follows from two options of the fan")
	}
	return e.option(s, decimal(v, s.Written))
}

// fanPower gives a fan a share of full power, by its speed as far as that goes.
func (e *editor) fanPower(s parser.Description, v float64) error {
	fan := e.printer.ColdSide.Fan.Value
	limit := e.optional(noKey, fan, "max_power", 1, positive)
	speed := v
	if limit.State == parser.Set {
		speed = min(v/limit.Value, 1)
		if speed == 1 && limit.Value != v {
			if err := e.write(s, fan, "max_power", decimal(v, limit.Written)); err != nil {
				return err
			}
		}
	}
	was, written := e.value(fan, "fan_speed")
	if !written && speed == 1 {
		return nil
	}
	return e.write(s, fan, "fan_speed", decimal(speed, was))
}

// decimal writes a figure with no fewer decimals than the one it replaces.
func decimal(v float64, was string) string {
	text := parser.Decimal(v)
	if _, decimals, found := strings.Cut(was, "."); found && literalNumber([]byte(was)) {
		_, own, pointed := strings.Cut(text, ".")
		if missing := len(decimals) - len(own); missing > 0 && missing <= mostDecimals {
			if !pointed {
				text += "."
			}
			text += strings.Repeat("0", missing)
		}
	}
	return text
}

// mostDecimals is how many a person writes.
const mostDecimals = 6

// option writes the option that a setting stands for.
func (e *editor) option(s parser.Description, text string) error {
	section, option := spelling(s)
	if section == "" {
		// A figure inside a macro, or one of a macro's variables.
		if s.At.IsZero() || s.Saved {
			return e.cannot(s, "no option of this style holds it")
		}
		return e.replace(s, s.At, text)
	}
	return e.write(s, section, option, text)
}

// write gives an option a value: in place where it is written by hand, else by
// a new line, which hides a saved value.
func (e *editor) write(s parser.Description, section, option, text string) error {
	o, _ := e.find(section, option)
	if o != nil && o.section.name == section && !o.saved {
		at := o.valueSpan()
		if o.value == o.valueEnd {
			text = " " + text
		}
		return e.replace(s, at, text)
	}
	if o != nil && o.saved {
		if steps := e.retune(s.Key); len(steps) > 0 {
			return parser.Errorf(o.valueSpan(), "the %s stands in the saved block, "+
				"which only the firmware writes; replace it at the console: %s",
				s.Key, strings.Join(steps, ", then "))
		}
	}
	return e.insert(s.Key, section, option, text)
}

// retune gives the console steps that measure a setting again and keep it; none
// for one that is chosen.
func (e *editor) retune(key parser.Key) []string {
	switch key {
	case parser.GainP, parser.GainI, parser.GainD, parser.LoopControl:
		top := e.printer.Limits.MaxTemp
		task := parser.Task{Kind: parser.TaskTune, Tool: e.tool, TempC: tuneC}
		if top.Known() && top.Value-tuneMarginC < tuneC {
			task.TempC = top.Value - tuneMarginC
		}
		return append(e.Steps(task), e.Keep(parser.GainP, parser.GainI, parser.GainD).Steps...)
	case parser.ProbeTrigger:
		return append(e.beginPaper(key),
			append([]string{"the nozzle down to the paper and ACCEPT"}, e.Keep(key).Steps...)...)
	}
	return nil
}

// Where gains are tuned when nothing says where: a common printing
// temperature, with room for overshoot below the trip. Common practice, no
// source.
const (
	tuneC       = 220
	tuneMarginC = 30
)

func (e *editor) replace(s parser.Description, at parser.Span, text string) error {
	if at.Text() == text {
		return nil
	}
	for _, other := range e.edits {
		if other.At == at && at.Start < at.End {
			if other.New == text {
				return nil
			}
			return parser.Errorf(at, "the %s is to be %s and %s at the same time", s.Key, other.New, text)
		}
	}
	e.edits = append(e.edits, ranked{parser.Edit{At: at, New: text, For: s.Key}, rankOption})
	return nil
}

// turn switches a protection on.
func (e *editor) turn(s parser.Description, on bool) error {
	if !on {
		return e.cannot(s, "Preflash turns nothing off")
	}
	if s.State != parser.Off && s.Value == true {
		return nil
	}
	p := e.printer
	switch s.Key {
	case parser.ColdGuard:
		return e.write(s, e.heaterOf(hotendName(e.tool)), "min_extrude_temp", strconv.Itoa(usualMinExtrude))
	case parser.HotendWatchOn:
		return e.unblind(&p.Hotend.Watch, p.Limits.MaxTemp)
	case parser.BedWatchOn:
		return e.unblind(&p.Bed.Watch, e.required(noKey, bedHeater, "max_temp", anything))
	}
	return e.cannot(s, "it depends on what is wired to the printer")
}

// clear takes out what a section no longer may hold once it has this sensor and
// this control.
func (e *editor) clear(key parser.Key, section string, d *parser.SensorDef, control string) {
	s := e.byName[section]
	if s == nil {
		return
	}
	e.leftOver(s, d, control, func(o *option, _ string) {
		line := parser.Span{File: o.file, Start: o.line, End: o.end}
		if slices.Contains(e.cleared, line) {
			return
		}
		e.cleared = append(e.cleared, line)
		e.edits = append(e.edits, ranked{parser.Edit{At: line, For: key}, rankOption})
	})
}

// unblind gives the figures that blind a watch the values that the firmware
// assumes.
func (e *editor) unblind(w *parser.Watch, maxTemp parser.Setting[float64]) error {
	var errs []error
	for _, f := range e.blinding(w, maxTemp) {
		var usual float64
		switch f {
		case &w.HysteresisC:
			usual = w.Usual.HysteresisC
		case &w.ErrorSumCS:
			usual = w.Usual.ErrorSumCS
		case &w.HeatingWindowS:
			usual = w.Usual.HeatingWindowS
		}
		errs = append(errs, e.figure(f.Describe(), usual))
	}
	return errors.Join(errs...)
}

// spelling is the section and the option that hold a setting, as its name says;
// "" where it has no option of its own.
func spelling(s parser.Description) (section, option string) {
	section, option, ok := strings.Cut(strings.TrimPrefix(s.Name, "["), "] ")
	if !ok {
		return "", ""
	}
	return section, fold([]byte(option))
}
