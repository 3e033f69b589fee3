package sections

import (
	"bytes"
	"strconv"
	"strings"

	"preflash/parser"
)

// geometry finds what homes Z, the probe's trigger height and how far the tools
// are apart.
func (c *config) geometry() parser.Geometry {
	g := parser.Geometry{TriggerMM: parser.Setting[float64]{Key: parser.ProbeTrigger, State: parser.Off}}
	if s := c.probe(); s != nil {
		g.TriggerMM = c.required(parser.ProbeTrigger, s.name, "z_offset", anything)
		switch s.kind {
		case eddyProbe:
			g.TriggerMM.State = parser.Unknown
			g.TriggerMM.Why = "[" + s.name + "] measures distance by a calibration " +
				"that was made with the old nozzle; calibrate it again"
		case "smart_effector", "load_cell_probe": // facts of the style: the nozzle touches
			g.NozzleProbes = parser.Setting[bool]{
				Key: parser.NozzleProbes, Value: true, State: parser.Set, Name: "[" + s.name + "]",
			}
			g.NozzleProbes.Place = parser.Place{At: c.headingSpan(s.name), Written: s.name}
		}
		g.BesideNozzle = c.besideNozzle(s.name)
	}
	g.Towers = c.towers()
	c.homing(&g)
	if c.byName[c.rail()] != nil {
		g.LowestMM = c.lowest()
	}
	g.Offsets, g.OffsetsLift = c.offsets(), true
	return g
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

// besideNozzle reports whether a probe is written to be beside the nozzle. Where
// nothing is written, the firmware takes 0.
func (c *config) besideNozzle(probe string) bool {
	for _, option := range [...]string{"x_offset", "y_offset"} {
		text, _ := c.value(probe, option)
		if v, ok := number(text); ok && v != 0 {
			return true
		}
	}
	return false
}

// virtualEndstop is how a probe is named as an endstop, behind whose it is.
const virtualEndstop = ":z_virtual_endstop"

// driverEndstop is how a driver that feels its motor stall is named as an endstop,
// behind the driver: from memory.
const driverEndstop = ":virtual_endstop"

// homing reads what stops Z: the probe, or a switch with its height.
func (c *config) homing(g *parser.Geometry) {
	axis := c.rail()
	pin, _ := c.find(axis, "endstop_pin")
	if pin == nil {
		return
	}
	h := &g.Homes
	h.Key, h.State, h.Place = parser.ZHoming, parser.Set, c.place(pin)
	h.Name = "[" + axis + "] " + string(c.keyOf(pin))
	if strings.HasSuffix(h.Written, virtualEndstop) {
		h.Value = parser.HomesByProbe
		return
	}
	if g.Towers {
		h.Value = parser.HomesFar // its switches are on top of the towers
		for _, tower := range [...]string{"a", "b", "c"} {
			s := c.optional(parser.Endstop(tower), "stepper_"+tower, "position_endstop", 0, anything)
			if s.State != parser.Default { // as the first tower
				g.EndstopMM = append(g.EndstopMM, s)
			}
		}
		return
	}
	s := c.required(parser.Endstop(""), axis, "position_endstop", anything)
	g.EndstopMM = append(g.EndstopMM, s)
	h.Value = c.direction(axis, &s)
	g.HomesByStall = strings.HasSuffix(h.Written, driverEndstop) && h.Value != parser.HomesFar
}

// direction tells at which end of its travel an axis homes: the firmware goes by
// the quarter of the travel that its switch is in, unless that is written.
func (c *config) direction(axis string, endstop *parser.Setting[float64]) parser.Homing {
	if _, written := c.value(axis, "homing_positive_dir"); written {
		if c.flag(axis, "homing_positive_dir", false) {
			return parser.HomesFar
		}
		return parser.HomesAtBed
	}
	low := c.optional(noKey, axis, "position_min", 0, anything)
	high := c.required(noKey, axis, "position_max", anything)
	if !low.Known() || !high.Known() || !endstop.Known() {
		return parser.HomesBySwitch
	}
	quarter := (high.Value - low.Value) / 4
	switch {
	case endstop.Value <= low.Value+quarter:
		return parser.HomesAtBed
	case endstop.Value >= high.Value-quarter:
		return parser.HomesFar
	}
	return parser.HomesBySwitch
}

// offsets are the distances between the tools, as the macro of the tool sets
// them with plain numbers or a section of an add-on holds them. Tool 0 is what the
// others are measured from: there the ones of the next tool tell.
func (c *config) offsets() (list []parser.Setting[float64]) {
	tool := strconv.Itoa(max(c.tool, 1))
	for _, s := range c.sections {
		switch {
		case s.kind == "tool":
			if of, _ := c.value(s.name, "extruder"); of != "extruder"+tool {
				continue
			}
			for _, axis := range [...]string{"x", "y", "z"} {
				d := c.optional(parser.Offset(axis), s.name, "gcode_"+axis+"_offset", 0, anything)
				if d.State != parser.Default {
					list = append(list, d)
				}
			}
			return list
		case s.kind == "gcode_macro" && strings.EqualFold(s.own, "T"+tool):
			o, _ := c.findIn(s, "gcode")
			if o == nil {
				return nil
			}
			o.pieces(func(at int, piece []byte) {
				if len(list) == 0 {
					list = c.offsetsIn(s, o, at, piece)
				}
			})
			return list
		}
	}
	return nil
}

// offsetsIn reads the distances that a line of a macro sets.
func (c *config) offsetsIn(s *section, o *option, at int, line []byte) (list []parser.Setting[float64]) {
	const command = "SET_GCODE_OFFSET"
	line = bytes.TrimRight(line, " \t")
	lead := len(line) - len(bytes.TrimLeft(line, " \t"))
	if len(line) <= lead+len(command) || !strings.EqualFold(string(line[lead:lead+len(command)]), command) {
		return nil
	}
	for word := range words(line, lead+len(command)) {
		name, text, _ := bytes.Cut(line[word[0]:word[1]], []byte("="))
		axis := strings.ToLower(string(name))
		v, ok := number(string(text))
		if axis != "x" && axis != "y" && axis != "z" || !ok {
			continue // moves, speeds, and what a template computes
		}
		from := word[1] - len(text)
		figure := parser.Span{File: o.file, Start: at + from, End: at + word[1]}
		list = append(list, parser.Setting[float64]{
			Key: parser.Offset(axis), Value: v, State: parser.Set, Name: "[" + s.name + "]",
			Place: parser.Place{At: figure, Written: string(text), Saved: o.saved},
		})
	}
	return list
}
