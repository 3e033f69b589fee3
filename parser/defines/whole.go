package defines

import "preflash/parser"

// Lacks: one of the two headers holds the sensors, the other one the figures of
// the protections.
func (c *config) Lacks() (list []parser.Lack) {
	if len(c.request.Absent) > 0 {
		return nil
	}
	for _, part := range [...]struct {
		names   []string
		without bool
	}{
		{[]string{"TEMP_SENSOR_0"}, false},
		{[]string{hotendWatch.dropPeriod, hotendWatch.oldPeriod, hotendWatch.heatingWindow}, true},
	} {
		found := false
		for _, name := range part.names {
			found = found || len(c.s.mentions(name)) > 0
		}
		if !found {
			list = append(list, parser.Lack{What: part.names[0], Without: part.without})
		}
	}
	return list
}

// Tools is how many extruders there are, each of which a sheet may name.
func (c *config) Tools() int { return c.tools }

// Hotends is how many of them the firmware has.
func (c *config) Hotends() int { return c.hotends }
