package sections

import (
	"fmt"
	"strconv"
	"strings"

	"preflash/parser"
)

// The firmware refuses to start with an option that no part of it asks for, as
// it is published. So an option that belonged to another sensor or another
// control must go.

// sensorClass is what decides which options belong beside a sensor_type.
type sensorClass uint8

const (
	classUnknown sensorClass = iota
	classBead                // a resistor read by a formula
	classTable               // a resistor read by straight lines
	classVoltage             // an amplifier
	classChip                // a converter chip
)

func classOf(d *parser.SensorDef) sensorClass {
	switch {
	case d.Form == parser.FormAmplifier && strings.HasPrefix(d.Name, "MAX"):
		return classChip
	case d.Form == parser.FormAmplifier:
		return classVoltage
	case d.Kind == parser.Platinum, d.Kind == parser.NTC && d.Join != parser.JoinSteinhart:
		return classTable
	case d.Kind == parser.NTC:
		return classBead
	}
	return classUnknown
}

// misfit says to what an option belongs that does not belong beside a sensor
// and a control; "" where it does, or where that cannot be told.
func misfit(key string, d *parser.SensorDef, control string) string {
	switch key {
	case "pid_kp", "pid_ki", "pid_kd":
		if control == "watermark" {
			return "control: pid"
		}
		return ""
	case "max_delta":
		if control == "pid" {
			return "control: watermark"
		}
		return ""
	}
	class := classOf(d)
	if class == classUnknown {
		return ""
	}
	switch key {
	case "inline_resistor":
		if class != classBead {
			return "a thermistor"
		}
	case "pullup_resistor":
		if class != classBead && class != classTable {
			return "a sensor that is a resistor"
		}
	case "adc_voltage", "voltage_offset":
		if class != classVoltage {
			return "an amplifier"
		}
	case "rtd_nominal_r", "rtd_reference_r", "rtd_num_of_wires", "rtd_use_50hz_filter":
		if d.Name != chipPlatinum {
			return chipPlatinum
		}
	case "tc_type", "tc_averaging_count", "tc_use_50hz_filter":
		if d.Name != chipThermocouple {
			return chipThermocouple
		}
	}
	return ""
}

// leftOver calls yield for each option of a section, written by hand, that does
// not belong beside a sensor and a control, with what it belongs to.
func (c *config) leftOver(s *section, d *parser.SensorDef, control string, yield func(o *option, to string)) {
	for _, i := range s.options {
		o := &c.options[i]
		if o.saved {
			return // those come last, and the firmware lets them be
		}
		if to := misfit(fold(c.keyOf(o)), d, control); to != "" {
			yield(o, to)
		}
	}
}

// removedOptions are those that the firmware no longer asks for, as it is
// published, with the day from which it refuses them.
var removedOptions = [...]struct{ key, since string }{
	{"step_distance", "2021-11-02; write rotation_distance"},
	{"pid_integral_max", "2021-11-02"},
	{"shared_heater", "2024-02-15"},
}

// remarkRefused names what the firmware refuses to start with, as far as it
// has to do with heaters, sensors and fans.
func (c *config) remarkRefused() {
	// A fork has an option that lets unknown options be.
	strict := c.flag("danger_options", "error_on_unused_config_options", true)
	for _, s := range c.sections {
		if len(s.headers) == 0 {
			continue
		}
		c.remarkName(s)
		switch {
		case isHotend(s.kind), usesSensor(s.kind):
			c.remarkHeater(s, strict)
		case s.kind == "thermistor":
			c.remarkThermistor(s, strict)
		case s.kind == "adc_temperature":
			c.remarkPoints(s, strict)
		case strings.HasPrefix(s.kind, "tmc") && strict:
			c.refusedOption(s, "microsteps", "belongs in the section of its motor")
		case s.kind == "heater_fan", s.kind == "temperature_fan":
			c.remarkFan(s)
		}
	}
}

func (c *config) broken(at parser.Span, format string, args ...any) {
	c.remark(parser.RemarkBroken, at,
		"%s; the firmware refuses to start with it", fmt.Sprintf(format, args...))
}

// refusedOption remarks on an option that is written by hand.
func (c *config) refusedOption(s *section, key, why string) {
	if o, _ := c.findIn(s, key); o != nil && !o.saved {
		c.broken(o.keySpan(), "%s in [%s] %s", key, s.name, why)
	}
}

// knownKinds are the kinds of sections that Preflash reads by name.
var knownKinds = [...]string{
	"extruder", bedHeater, "heater_generic", "heater_fan", "controller_fan", "temperature_fan",
	"temperature_sensor", "verify_heater", "thermistor", "adc_temperature", "probe", "bltouch",
	"smart_effector", "firmware_retraction", "fan", "printer", "mcu",
}

// remarkName looks at the name of a section.
func (c *config) remarkName(s *section) {
	h := s.headers[0]
	at := parser.Span{File: h.file, Start: h.name, End: h.name + len(s.name)}
	first, _, _ := strings.Cut(strings.TrimSpace(s.name), " ")
	for _, kind := range knownKinds {
		if s.kind != kind && strings.EqualFold(first, kind) {
			c.broken(at, "[%s] is no section that the firmware knows: it compares names letter by letter, "+
				"spaces in front included; write [%s…", s.name, kind)
			return
		}
	}
	switch s.kind {
	case "thermistor", "verify_heater", "heater_fan", "controller_fan":
		if strings.TrimSpace(s.own) == "" {
			c.broken(at, "[%s] needs a name of its own behind the first word", s.name)
		}
	}
	if n, ok := strings.CutPrefix(s.name, "extruder"); ok {
		tool, err := strconv.Atoi(n)
		if err == nil && hotendName(tool) == s.name && tool > 0 && c.byName[hotendName(tool-1)] == nil {
			c.broken(at, "[%s] is there without [%s], where the counting stops", s.name, hotendName(tool-1))
		}
	}
}

// isHotend reports whether a section is one of the hotends.
func isHotend(kind string) bool {
	n, ok := strings.CutPrefix(kind, "extruder")
	return ok && strings.Trim(n, "0123456789") == ""
}

// remarkHeater looks at one section that reads a sensor.
func (c *config) remarkHeater(s *section, strict bool) {
	o, _ := c.findIn(s, "sensor_type")
	if o == nil {
		return
	}
	d := c.sensorType(c.text(o), s.name)
	if b := builtInOf(d.Name); b != nil && b.removed != "" && len(c.own[d.Name]) == 0 {
		c.broken(o.valueSpan(), "the sensor type %s was removed from the firmware on %s (%s)",
			quoted(d.Name), b.removed, b.instead)
	}
	if !strict {
		return
	}
	control, _ := c.value(s.name, "control")
	c.leftOver(s, &d, control, func(o *option, to string) {
		c.broken(o.keySpan(), "%s in [%s] belongs to %s and is left over here; take it out",
			c.keyOf(o), s.name, to)
	})
	for _, removed := range removedOptions {
		c.refusedOption(s, removed.key, "was removed from the firmware on "+removed.since)
	}
	if _, driven := c.value(s.name, "step_pin"); isHotend(s.kind) && !driven {
		c.refusedOption(s, "pressure_advance", "is there without the pins of a motor")
	}
}

// remarkThermistor looks at one thermistor: a point with a beta, or three. It is
// read even where nothing uses it; of one that is used, sensor says the same.
func (c *config) remarkThermistor(s *section, strict bool) {
	others := [...]string{"temperature2", "resistance2", "temperature3", "resistance3"}
	needed := append([]string{"temperature1", "resistance1"}, others[:]...)
	if _, beta := c.value(s.name, "beta"); beta {
		needed = needed[:2]
		for _, key := range others {
			if strict {
				c.refusedOption(s, key,
					"stands beside beta, which takes one point alone; take one of the two out")
			}
		}
	}
	p := c.printer
	switch strings.Join(strings.Fields(s.own), " ") {
	case "", p.Hotend.Sensor.Value.Name, p.Bed.Sensor.Value.Name:
		return
	}
	for _, key := range needed {
		if _, there := c.value(s.name, key); !there {
			c.broken(c.headingSpan(s.name), "[%s] has no %s", s.name, key)
			return
		}
	}
}

// remarkPoints looks at the points of one table: they are read up to the first
// that is missing.
func (c *config) remarkPoints(s *section, strict bool) {
	if !strict {
		return
	}
	measured, other := "voltage", "resistance"
	if _, ok := c.value(s.name, "resistance1"); ok {
		measured, other = other, measured
	}
	last := 0
	for last < mostPoints && c.hasByHand(s, "temperature"+strconv.Itoa(last+1)) {
		last++
	}
	for _, i := range s.options {
		o := &c.options[i]
		key := fold(c.keyOf(o))
		name := strings.TrimRight(key, "0123456789")
		n, err := strconv.Atoi(key[len(name):])
		switch {
		case o.saved || err != nil:
		case name == other:
			c.broken(o.keySpan(), "%s in [%s] stands beside %s1; take it out", key, s.name, measured)
		case (name == "temperature" || name == measured) && n > last:
			c.broken(o.keySpan(),
				"%s in [%s] stands behind a gap: there is no temperature%d", key, s.name, last+1)
		}
	}
}

// remarkFan looks at one fan that runs by itself. A pin that the firmware
// switches by itself can only be full or off once it has shut down.
func (c *config) remarkFan(s *section) {
	share := func(option string) float64 {
		return c.optional(noKey, s.name, option, 1, atLeast(0)).Value
	}
	stop := min(share("max_power"), share("shutdown_speed"))
	if stop > 0 && stop < 1 && !c.flag(s.name, "hardware_pwm", false) {
		c.broken(c.headingSpan(s.name), "[%s] would run at %g of full power after a shutdown, "+
			"which takes hardware_pwm: true, or shutdown_speed: 0", s.name, stop)
	}
}
