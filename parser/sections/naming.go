package sections

import (
	"strings"

	"preflash/parser"
)

// usesSensor reports whether sections of a kind read a sensor as they are made.
// Hotends are made after all of them.
func usesSensor(kind string) bool {
	switch kind {
	case bedHeater, "heater_generic", "temperature_sensor", "temperature_fan", "temperature_probe",
		"z_thermal_adjust":
		return true
	}
	return false
}

// ownSensors gathers the sensor definitions of the configuration by name, in
// their order, and the place of the first section that reads a sensor.
func (c *config) ownSensors() {
	c.own = make(map[string][]*section)
	c.firstUse = len(c.sections)
	for _, s := range c.sections {
		switch {
		case s.kind == "thermistor" || s.kind == "adc_temperature":
			name := strings.Join(strings.Fields(s.own), " ")
			c.own[name] = append(c.own[name], s)
		case usesSensor(s.kind) && c.firstUse == len(c.sections):
			c.firstUse = s.place
		}
	}
}

// placeOf is the place of a section among the others; past the end for a
// hotend, which is made last, and for one that is not there.
func (c *config) placeOf(user string) int {
	s := c.byName[user]
	if s == nil || !usesSensor(s.kind) {
		return len(c.sections)
	}
	return s.place
}

// builtInOf returns the type that the firmware ships with under this name.
func builtInOf(name string) *builtIn {
	for i := range builtIns {
		if builtIns[i].name == name {
			return &builtIns[i]
		}
	}
	return nil
}

// sensorType finds what a sensor_type stands for in a section: a definition of
// the configuration, or a built-in type. Of two with one name the later counts,
// as the style's firmware has it. A built-in type is made when the first section
// that reads a sensor is, unless a [thermistor] of that name stands before it.
func (c *config) sensorType(name, user string) parser.SensorDef {
	at := c.placeOf(user)
	own := c.own[name]
	for len(own) > 0 && own[len(own)-1].place > at {
		own = own[:len(own)-1]
	}
	b := builtInOf(name)
	switch {
	case len(own) == 0 && b == nil:
		return c.unnamed(name)
	case len(own) == 0:
		return b.def()
	case b == nil || b.removed != "":
		return c.defined(own[len(own)-1], name)
	}
	last := own[len(own)-1]
	above := last.place < c.firstUse
	switch {
	case b.kind != parser.NTC || len(own) > 1:
		return unplaced(name, "["+last.name+"] has the name of a built-in type, "+
			"and which of the two the firmware takes is not known; give it another name")
	case last.kind == "thermistor" && !above:
		return unplaced(name, "["+last.name+"] has the name of a built-in type "+
			"and stands below a section that reads a sensor; "+
			"the firmware refuses to start with it, so give it another name")
	case last.kind == "adc_temperature" && above:
		return b.def()
	}
	return c.defined(last, name)
}

// defined reads a definition of the configuration.
func (c *config) defined(s *section, name string) parser.SensorDef {
	if s.kind == "thermistor" {
		return c.thermistor(s.name, name)
	}
	return c.adcTemperature(s.name, name)
}

// unnamed is the definition of a name that nothing has.
func (c *config) unnamed(name string) parser.SensorDef {
	for i := range builtIns {
		if strings.EqualFold(builtIns[i].name, name) {
			return unplaced(name, "the firmware compares sensor types letter by letter, and knows “"+
				builtIns[i].name+"” only")
		}
	}
	switch own := c.own[name]; {
	case len(own) > 0:
		return unplaced(name, "["+own[0].name+"] stands below the section that uses it, "+
			"and the firmware refuses to start with it; put it above")
	case len(c.lacking) > 0:
		return unplaced(name, "no section that is here has this name, "+
			"and no built-in type of the firmware that Preflash knows; "+
			"it may be defined in "+listed(c.lacking)+", which is not here")
	}
	return unplaced(name, "no section of the configuration "+
		"and no built-in type of the firmware that Preflash knows has this name")
}
