package sections

import (
	"strconv"
	"strings"

	"preflash/parser"
)

// geometry finds what homes, and where the nozzle is then. What the firmware
// assumes is as it is published.
func (c *config) geometry() parser.Geometry {
	g := parser.Geometry{TriggerMM: parser.Setting[float64]{Key: parser.ProbeTrigger, State: parser.Off}}
	if probe := c.probe(); probe != nil {
		g.TriggerMM = c.read(figure{key: parser.ProbeTrigger, section: probe.name, option: "z_offset", demand: anything})
		if probe.kind == eddyProbe {
			g.TriggerMM.State = parser.Unknown
			g.TriggerMM.Why = "[" + probe.name + "] measures distance by a calibration that was made with the old nozzle; calibrate it again"
		}
		g.NozzleProbes, g.NozzleSeems = c.nozzleProbes(probe, &g.TriggerMM)
	}
	g.Towers = c.towers()
	g.Offsets = c.toolOffsets()
	rail := c.rail()
	if c.byName[rail] == nil {
		return g
	}
	g.LowestMM = c.lowest()
	if pin, _ := c.value(rail, "endstop_pin"); strings.Contains(pin, virtualEndstop) {
		g.Homes, g.Away = parser.HomesProbe, parser.No
		return g
	}
	g.Homes = parser.HomesSwitch
	g.EndstopMM = c.read(figure{key: parser.EndstopHeight, section: rail, option: "position_endstop", demand: anything})
	g.Away = c.away(&g)
	return g
}

// virtualEndstop is what a probe that homes is called as a pin.
const virtualEndstop = "z_virtual_endstop"

const eddyProbe = "probe_eddy_current"

// probe is the section of the Z probe whose trigger height counts; nil where
// there is none.
func (c *config) probe() *section {
	for _, s := range c.sections {
		if !isProbe(s.kind) {
			continue
		}
		if o, _ := c.find(s.name, "z_offset"); o == nil && len(s.headers) == 0 {
			continue // only the firmware writes of it
		}
		return s
	}
	return nil
}

// isProbe reports whether sections of that kind describe a Z probe whose
// trigger height is its z_offset.
func isProbe(kind string) bool {
	switch kind {
	case "probe", "bltouch", "smart_effector", "load_cell_probe", "dockable_probe", eddyProbe:
		return true
	}
	return false
}

// nozzleProbes tells whether the nozzle itself is the probe, and whether it seems
// to be: with a trigger height below 0 a probe beside it could not trigger
// first, which is evidence and no proof.
func (c *config) nozzleProbes(probe *section, trigger *parser.Setting[float64]) (is parser.Setting[bool], seems bool) {
	switch {
	case probe.kind == "smart_effector", probe.kind == "load_cell_probe":
		return parser.Setting[bool]{Key: parser.NozzleProbes, Value: true, State: parser.Set, Name: "[" + probe.name + "]",
			Place: parser.Place{At: c.headingSpan(probe.name)}}, true
	case !trigger.Known() || trigger.Value >= 0:
		return is, false
	}
	for _, axis := range [...]string{"x_offset", "y_offset"} {
		if at := c.read(figure{section: probe.name, option: axis, optional: true, demand: anything}); !at.Known() || at.Value != 0 {
			return is, false
		}
	}
	return is, true
}

// towers reports whether the head hangs on three towers.
func (c *config) towers() bool {
	kinematics, _ := c.value("printer", "kinematics")
	return kinematics == "delta"
}

// rail is the section whose endstop homes Z.
func (c *config) rail() string {
	if c.towers() {
		return "stepper_a"
	}
	return "stepper_z"
}

// lowest reads the height below which no move goes.
func (c *config) lowest() parser.Setting[float64] {
	f := figure{section: "stepper_z", option: "position_min", optional: true, demand: anything}
	if c.towers() {
		f.section, f.option = "printer", "minimum_z_position"
	}
	return c.read(f)
}

// away tells whether Z homes far from the bed: the end in whose quarter of the
// travel the endstop lies, if nothing else is written.
func (c *config) away(g *parser.Geometry) parser.Tri {
	if g.Towers {
		return parser.Yes
	}
	if text, written := c.value("stepper_z", "homing_positive_dir"); written && text != "" {
		if c.flag("stepper_z", "homing_positive_dir", false) {
			return parser.Yes
		}
		return parser.No
	}
	top := c.read(figure{section: "stepper_z", option: "position_max", demand: anything})
	if !g.EndstopMM.Known() || !g.LowestMM.Known() || !top.Known() {
		return parser.Maybe
	}
	switch travel := top.Value - g.LowestMM.Value; {
	case g.EndstopMM.Value <= g.LowestMM.Value+travel/4:
		return parser.No
	case g.EndstopMM.Value >= top.Value-travel/4:
		return parser.Yes
	}
	return parser.Maybe
}

// middle is the middle of the travel in X and Y.
func (c *config) middle() (x, y float64, known bool) {
	if c.towers() {
		return 0, 0, true
	}
	var at [2]float64
	for i, rail := range [...]string{"stepper_x", "stepper_y"} {
		if c.byName[rail] == nil {
			return 0, 0, false
		}
		low := c.read(figure{section: rail, option: "position_min", optional: true, demand: anything})
		high := c.read(figure{section: rail, option: "position_max", demand: anything})
		if !low.Known() || !high.Known() {
			return 0, 0, false
		}
		at[i] = (low.Value + high.Value) / 2
	}
	return at[0], at[1], true
}

// toolOffsets reads how far the tool is from the others: what its own macro
// sets, or a tool changer keeps.
func (c *config) toolOffsets() (list []parser.Setting[float64]) {
	hotend := hotendName(c.tool)
	for _, s := range c.sections {
		if extruder, _ := c.value(s.name, "extruder"); s.kind != "tool" || extruder != hotend {
			continue
		}
		for _, axis := range [...]string{"x", "y", "z"} {
			if o, _ := c.find(s.name, "gcode_"+axis+"_offset"); o != nil {
				list = append(list, c.read(figure{key: parser.Offset(axis), section: s.name, option: "gcode_" + axis + "_offset", demand: anything}))
			}
		}
	}
	if macro := c.toolMacro(c.tool); macro != nil && len(list) == 0 {
		list = c.macroOffsets(macro)
	}
	return list
}

// toolMacro is the macro that fetches a tool; nil where nothing but the
// firmware's own command takes it.
func (c *config) toolMacro(tool int) *section {
	name := "T" + strconv.Itoa(tool)
	for _, s := range c.sections {
		if s.kind == "gcode_macro" && strings.EqualFold(strings.TrimSpace(s.own), name) {
			return s
		}
	}
	return nil
}
