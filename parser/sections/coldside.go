package sections

import (
	"strings"

	"preflash/parser"
)

// coldSide finds the fan that follows the heater. Of several, the one counts
// that starts at the lowest temperature.
func (c *config) coldSide(heater string) parser.ColdSide {
	cold := parser.ColdSide{Fan: parser.Setting[string]{Key: parser.FanOutput, State: parser.Off}}
	for _, s := range c.sections {
		if s.kind != "heater_fan" {
			continue
		}
		fan := parser.Setting[string]{Key: parser.FanOutput, Value: s.name, State: parser.Set, Name: "[" + s.name + "]"}
		fan.Place = parser.Place{At: c.headingSpan(s.name), Value: s.name}
		follows := []string{"extruder"}
		if o, _ := c.find(s.name, "heater"); o != nil {
			fan.Place, fan.Name = c.place(o), fan.Name+" heater"
			follows = strings.Split(fan.Place.Value, ",")
		}
		if !names(follows, heater) || c.standsStill(s.name) {
			cold.Elsewhere = append(cold.Elsewhere, fan.Place)
			continue
		}
		above := c.read(figure{key: parser.FanOnAbove, section: s.name, option: "heater_temp", usual: usualFanStart, optional: true, demand: anything})
		if cold.Fan.State == parser.Off || above.Known() && cold.OnAboveC.Known() && above.Value < cold.OnAboveC.Value {
			cold.Fan, cold.OnAboveC = fan, above
		}
	}
	return cold
}

// names reports whether a list of heaters holds one.
func names(list []string, heater string) bool {
	for _, name := range list {
		if strings.TrimSpace(name) == heater {
			return true
		}
	}
	return false
}

// standsStill reports whether a fan's speed while it runs is 0.
func (c *config) standsStill(fan string) bool {
	speed := c.read(figure{section: fan, option: "fan_speed", usual: 1, optional: true, demand: atLeast(0)})
	return speed.Known() && speed.Value == 0
}

// geometry finds the probe's trigger height.
func (c *config) geometry() parser.Geometry {
	g := parser.Geometry{TriggerMM: parser.Setting[float64]{Key: parser.ProbeTrigger, State: parser.Off}}
	for _, s := range c.sections {
		if !isProbe(s.kind) {
			continue
		}
		o, _ := c.find(s.name, "z_offset")
		if o == nil && len(s.headers) == 0 {
			continue // only the firmware writes of it
		}
		g.TriggerMM = c.read(figure{key: parser.ProbeTrigger, section: s.name, option: "z_offset", demand: anything})
		if s.kind == "probe_eddy_current" {
			g.TriggerMM.State = parser.Unknown
			g.TriggerMM.Why = "[" + s.name + "] measures distance by a calibration that was made with the old nozzle; calibrate it again"
		}
		break
	}
	return g
}

// isProbe reports whether sections of that kind describe a Z probe whose
// trigger height is its z_offset.
func isProbe(kind string) bool {
	switch kind {
	case "probe", "bltouch", "smart_effector", "load_cell_probe", "dockable_probe", "probe_eddy_current":
		return true
	}
	return false
}
