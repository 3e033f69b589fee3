package sections

import (
	"strconv"
	"strings"

	"preflash/parser"
)

// Others reads what the tool's own settings leave out.
func (c *config) Others() []parser.Heater {
	own := c.heaterOf(hotendName(c.tool))
	var list []parser.Heater
	for _, s := range c.sections {
		if s.name == own || !heats(s) {
			continue
		}
		h := parser.Heater{Name: "[" + s.name + "]", Tool: toolOf(s.name)}
		anyFigure := func(key parser.Key, option string) {
			f := c.optional(key, s.name, option, 0, anything)
			h.Settings = append(h.Settings, f.Describe())
		}
		anyFigure(parser.MinTemp, "min_temp")
		anyFigure(parser.MaxTemp, "max_temp")
		anyFigure(parser.PowerLimit("heater"), "max_power")
		anyFigure(parser.HotendPullup, "pullup_resistor")
		if s.name != bedHeater {
			sensor := c.sensor(parser.HotendSensor, s.name)
			w := c.watch(s.name, hotendWatch, parser.Setting[float64]{State: parser.Unknown})
			h.Settings = append(h.Settings, sensor.Describe())
			w.Describe(func(d parser.Description) { h.Settings = append(h.Settings, d) })
		}
		list = append(list, h)
	}
	return list
}

// heats reports whether a section describes a heater, or a fan that is driven
// by a temperature of its own.
func heats(s *section) bool {
	return s.kind == bedHeater || s.kind == "heater_generic" || s.kind == "temperature_fan" ||
		toolOf(s.name) != parser.NoTool
}

// toolOf is the tool that a hotend's section belongs to, from 0.
func toolOf(section string) int {
	number, ok := strings.CutPrefix(section, "extruder")
	if !ok {
		return parser.NoTool
	}
	if number == "" {
		return 0
	}
	if n, err := strconv.Atoi(number); err == nil && n > 0 && hotendName(n) == section {
		return n
	}
	return parser.NoTool
}

// elsewhere reports whether an option protects or measures a heater that is not
// the tool's own.
func (c *config) elsewhere(o *option, key string) bool {
	own := c.heaterOf(hotendName(c.tool))
	switch s := o.section; {
	case s.kind == "verify_heater":
		return s.own != own
	case s.name != own && heats(s), s.kind == "thermistor", s.kind == "adc_temperature":
		switch key {
		case "min_temp", "max_temp", "max_power", "sensor_type", "pullup_resistor", "inline_resistor":
			return true
		}
		return strings.HasPrefix(key, "temperature") || strings.HasPrefix(key, "resistance") || key == "beta"
	}
	return false
}
