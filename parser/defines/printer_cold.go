package defines

import (
	"strconv"

	"preflash/parser"
)

// mostHotends is how many hotends the newest generation numbers.
const mostHotends = 8

// autoFanNames are the spellings of the heat-break fan's output for a hotend,
// the newer first.
func autoFanNames(hotend int) []string {
	n := strconv.Itoa(hotend)
	return []string{"E" + n + "_AUTO_FAN_PIN", "EXTRUDER_" + n + "_AUTO_FAN_PIN"}
}

// coldSide reads the fan that cools the heat break.
func (r *reader) coldSide() parser.ColdSide {
	c := parser.ColdSide{Fan: r.autoFan(r.hotend)}
	if c.Fan.State == parser.Unknown &&
		r.s.macro(c.Fan.Name).state != parser.Yes && len(r.s.mentions(c.Fan.Name)) == 0 {
		c.Fan.Why = c.Fan.Name + " is not set: the board's own pin file decides"
	}
	for n := range mostHotends {
		if n == r.hotend {
			continue
		}
		if d := r.unheeded(autoFanNames(n)[0]); d != nil {
			c.Elsewhere = append(c.Elsewhere, placeOf(d))
		} else if f := r.autoFan(n); f.State == parser.Set {
			c.Elsewhere = append(c.Elsewhere, f.Place)
		}
	}
	c.OnAboveC = r.number(numberSpelling{
		key: parser.FanOnAbove, names: []string{"EXTRUDER_AUTO_FAN_TEMPERATURE"}, round: roundNearest,
		absent: absentDefault, usual: 50, near: []string{"EXTRUDER_AUTO_FAN_SPEED", c.Fan.Name},
	})
	c.Power = r.number(numberSpelling{
		key: parser.FanPower, names: []string{"EXTRUDER_AUTO_FAN_SPEED"},
		unit: unitCounts, round: roundNearest, absent: absentDefault, usual: 1,
		near: []string{"EXTRUDER_AUTO_FAN_TEMPERATURE", c.Fan.Name},
	})
	return c
}

// unheeded returns the define of a fan's output that the firmware takes out
// again because there is no such hotend: the fan on it never runs.
func (r *reader) unheeded(name string) *define {
	m := r.s.macro(name)
	if !m.removed || len(m.others) == 0 {
		return nil
	}
	d := m.others[len(m.others)-1]
	if x, known := r.s.number(d.value()); d.value() == "" || known == parser.Yes && x < 0 {
		return nil
	}
	return d
}

// autoFan reads the output that follows a hotend; -1 is none. The name of a
// pin, which only the board can resolve, is an output as well.
func (r *reader) autoFan(hotend int) parser.Setting[string] {
	s := parser.Setting[string]{Key: parser.FanOutput}
	var m macro
	s.Name, m = r.pick(autoFanNames(hotend))
	if !fillFrom(r, &s, m) {
		return s
	}
	s.Value = m.winner.value()
	switch x, known := r.s.number(s.Value); {
	case s.Value == "":
		s.State, s.Why = parser.Unknown, m.winner.at.String()+": "+s.Name+" has no value"
	case known == parser.Yes && x < 0:
		s.State = parser.Off
	}
	return s
}
