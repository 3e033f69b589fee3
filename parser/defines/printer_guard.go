package defines

import (
	"strconv"
	"strings"

	"preflash/parser"
)

// What here is said of the firmware is as the style's firmware publishes it,
// in both generations where none is named.

// isChip reports whether a definition is a converter chip, which reports faults
// and whose readings are held against the limits even when cold.
func isChip(d *parser.SensorDef) bool {
	switch d.Name {
	case "-2", "-3", "-5":
		return true
	}
	return false
}

// isLinearAmplifier reports whether a definition takes volts for degrees. The
// firmware holds its reading against neither limit.
func isLinearAmplifier(d *parser.SensorDef) bool { return d.Name == "-1" || d.Name == "-4" }

// guards reads what keeps the firmware from heating blindly, besides the
// limits and the watches themselves.
func (r *reader) guards(p *parser.Printer) {
	r.watchdog(p)
	l, sensor := &p.Limits, &p.Hotend.Sensor
	// A chip's reading below the minimum is a fault at once, cold and idle too.
	l.MinWhileHeating = !isChip(&sensor.Value)
	if !sensor.Known() {
		return
	}
	l.Trips = parser.Setting[bool]{Key: parser.Trips, State: parser.Default, Name: sensor.Name, Value: true}
	if isLinearAmplifier(&sensor.Value) {
		l.Trips.State, l.Trips.Place = parser.Off, sensor.Place
	}
	if !isChip(&sensor.Value) {
		return
	}
	l.FaultChecks = r.ignored(parser.FaultChecks, "IGNORE_THERMOCOUPLE_ERRORS")
	// Each reading takes a quarter of a second.
	l.Graces = appendFound(l.Graces, r.number(numberSpelling{
		key: parser.Grace("for faults of a chip"), names: []string{"THERMOCOUPLE_MAX_ERRORS"},
		unit: unitQuarters, round: roundDown, absent: absentHidden,
	}))
}

// ignored reads an option that switches something off: the setting is on while
// the option is not.
func (r *reader) ignored(key parser.Key, name string) parser.Setting[bool] {
	s := parser.Setting[bool]{Key: key, State: parser.Default, Name: name, Value: true}
	m := r.s.macro(name)
	switch r.enabled(name, m) {
	case parser.Yes:
		s.State, s.Place, s.Value = parser.Off, placeOf(m.winner), false
	case parser.Maybe:
		fillFrom(r, &s, m)
		s.State = parser.Unknown
		if s.Why == "" {
			s.Why = r.unsettled(m.winner)
		}
	}
	return s
}

// watchdog reads whether a program that hangs is restarted. Files that do not
// speak of it leave that open, unless they are known to be there as a whole
// and for a firmware that was read.
func (r *reader) watchdog(p *parser.Printer) {
	const name = "USE_WATCHDOG"
	one := r.checks == older || r.checks == newer
	if len(r.s.mentions(name)) > 0 || one && r.s.macro(secondVersion).state == parser.Yes {
		p.Watchdog = r.flag(parser.Watchdog, []string{name}, []string{"EMERGENCY_PARSER", "EEPROM_SETTINGS"})
	}
}

// autoFigures are what the automatic target is shipped with, as the style's
// firmware publishes it: switched on, with these.
var autoFigures = [...]struct {
	name  string
	value float64
}{{"AUTOTEMP_MIN", 210}, {"AUTOTEMP_MAX", 250}, {"AUTOTEMP_FACTOR", 0.1}}

// autoTarget reads how far the firmware raises the target by itself as more is
// extruded. It does so once a print asks for it, or, in proportion, with every
// target. Nearly every configuration holds it as it is shipped and no print of
// its owner asks for it: then it is left out.
func (r *reader) autoTarget(l *parser.Limits) {
	const gate, always = "AUTOTEMP", "AUTOTEMP_PROPORTIONAL"
	on := r.on(gate)
	// In proportion, up to AUTOTEMP_MAX_P is added to each target instead.
	l.AutoAlways = on != parser.No && r.on(always) != parser.No
	if on == parser.No || !l.AutoAlways && r.asShipped() {
		return
	}
	l.AutoMax = r.number(numberSpelling{
		key: parser.AutoTarget, names: []string{"AUTOTEMP_MAX"}, round: roundDown,
		absent: absentDefault, usual: 250, near: []string{"AUTOTEMP_MIN", gate},
	})
	if on == parser.Maybe {
		l.AutoMax.State, l.AutoMax.Why = parser.Unknown, "it cannot be told whether "+gate+" is on"
	}
}

// asShipped reports whether no figure of the automatic target was changed.
func (r *reader) asShipped() bool {
	for i := range autoFigures {
		f := &autoFigures[i]
		v := r.value(numberSpelling{names: []string{f.name}, absent: absentDefault, usual: f.value})
		if v.Value != f.value {
			return false
		}
	}
	return true
}

// atTemperature reads what the drop check of the hotend does besides.
func (r *reader) atTemperature(w *parser.Watch) {
	if w.On.State == parser.Off {
		return
	}
	if r.on("ADAPTIVE_FAN_SLOWING") != parser.No {
		w.SlowsFan = r.flag(parser.SlowsFan, []string{"ADAPTIVE_FAN_SLOWING"}, nil)
	}
	if r.on("THERMAL_PROTECTION_VARIANCE_MONITOR") == parser.No {
		return
	}
	f := numberSpelling{
		key: parser.HotendStill, names: []string{"THERMAL_PROTECTION_VARIANCE_MONITOR_PERIOD"},
		round: roundUp, absent: absentDefault,
	}
	if f.usual = w.DropPeriodS.Value; !w.DropPeriodS.Known() {
		f.absent = absentUnknown
	}
	w.StillS = r.number(f)
}

// outputs reads how many heater outputs run on the hotend's command.
func (r *reader) outputs() parser.Setting[float64] {
	const name = "HEATERS_PARALLEL"
	on := r.flag(parser.HeaterOutputs, []string{name}, nil)
	if on.State == parser.Off {
		return parser.Setting[float64]{}
	}
	return parser.Setting[float64]{
		Key: on.Key, Name: name, Value: 2, State: on.State, Place: on.Place, Hides: on.Hides, Why: on.Why,
	}
}

// second reads a second sensor that must agree with the hotend's own.
func (r *reader) second(h *parser.Hotend) {
	const (
		old    = "TEMP_SENSOR_1_AS_REDUNDANT"
		number = "TEMP_SENSOR_REDUNDANT"
		target = "TEMP_SENSOR_REDUNDANT_TARGET"
	)
	none := parser.Setting[parser.SensorDef]{}
	diff := numberSpelling{
		key:   parser.SecondDiff,
		names: []string{"TEMP_SENSOR_REDUNDANT_MAX_DIFF", "MAX_REDUNDANT_TEMP_SENSOR_DIFF"},
		round: roundNearest, absent: absentDefault, usual: 10,
	}
	on := r.on(old)
	if on != parser.No && r.hotend == 0 {
		h.Second = r.sensor(parser.SecondSensor, "TEMP_SENSOR_1", "HOTEND1")
		diff.names[0], diff.names[1] = diff.names[1], diff.names[0]
	} else {
		if r.s.macro(number).state == parser.No {
			h.Second = none
			return
		}
		h.Second = r.sensor(parser.SecondSensor, number, "REDUNDANT")
		of := r.target(target)
		if of != "" && of != "E"+strconv.Itoa(r.hotend) {
			h.Second = none
			return
		}
		if of == "" && h.Second.Known() {
			h.Second.State = parser.Unknown
			h.Second.Why = "which sensor it must agree with cannot be told (" + target + ")"
		}
	}
	if h.Second.Known() && h.Second.Value.Form == parser.FormNone {
		h.Second = none
		return
	}
	if on == parser.Maybe && h.Second.Known() {
		h.Second.State, h.Second.Why = parser.Unknown, "it cannot be told whether "+old+" is on"
	}
	h.SecondK = r.number(diff)
}

// target gives the sensor that an option names, such as E0 or BED: E0 where
// nothing says, "" where it cannot be told.
func (r *reader) target(name string) string {
	m := r.s.macro(name)
	switch {
	case m.state == parser.No:
		return "E0"
	case m.state == parser.Maybe || m.winner.function:
		return ""
	}
	return strings.TrimSpace(m.winner.value())
}

// amplifier fills what the options say of a chip or an amplifier.
func (r *reader) amplifier(d *parser.SensorDef, name string) {
	figureOf := func(names ...string) float64 {
		v := r.value(numberSpelling{names: names, absent: absentHidden})
		if v.State != parser.Set {
			return 0
		}
		return v.Value
	}
	switch index := strings.TrimPrefix(name, "TEMP_SENSOR_"); d.Name {
	case "-1":
		d.Gain, d.OffsetK = figureOf("TEMP_SENSOR_AD595_GAIN"), figureOf("TEMP_SENSOR_AD595_OFFSET")
	case "-4":
		d.Gain, d.OffsetK = figureOf("TEMP_SENSOR_AD8495_GAIN"), figureOf("TEMP_SENSOR_AD8495_OFFSET")
	case "-5":
		d.R0Ohm = figureOf("MAX31865_SENSOR_OHMS_"+index, "MAX31865_SENSOR_OHMS")
		d.ReferenceOhm = figureOf("MAX31865_CALIBRATION_OHMS_"+index, "MAX31865_CALIBRATION_OHMS")
		d.Wires = int(figureOf("MAX31865_SENSOR_WIRES_" + index))
	}
}
