package sections

import (
	"strconv"
	"strings"

	"preflash/parser"
)

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

// towers reports whether the head hangs on three towers.
func (c *config) towers() bool {
	kinematics, _ := c.value("printer", "kinematics")
	return kinematics == "delta" || kinematics == "rotary_delta"
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
	f := numberOption{section: "stepper_z", option: "position_min", optional: true, demand: anything}
	if c.towers() {
		f.section, f.option = "printer", "minimum_z_position"
	}
	return c.read(f)
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
		low := c.optional(noKey, rail, "position_min", 0, anything)
		high := c.required(noKey, rail, "position_max", anything)
		if !low.Known() || !high.Known() {
			return 0, 0, false
		}
		at[i] = (low.Value + high.Value) / 2
	}
	return at[0], at[1], true
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
