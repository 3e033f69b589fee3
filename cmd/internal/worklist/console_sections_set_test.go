package worklist_test

import (
	"fmt"
	"math"
	"strings"
)

// What the commands of the sections style set, and where they move.

func (c *sectionsConsole) heaters(name string, args map[string]string) error {
	heater, text := args["HEATER"], args["TARGET"]
	switch name {
	case "TURN_OFF_HEATERS":
		c.targets, c.warm = map[string]float64{}, map[string]float64{}
		return nil
	case "TEMPERATURE_WAIT":
		target, ok := c.targets[args["SENSOR"]]
		if low := figureOf(args["MINIMUM"]); !ok || math.IsNaN(low) || low > target {
			return fmt.Errorf("it waits for ever, or for nothing")
		}
		c.warm[args["SENSOR"]] = figureOf(args["MINIMUM"])
		return nil
	case "M104", "M109":
		n := c.tool
		if index, given := args["T"]; given {
			n = int(figureOf(index))
		}
		heater, text = extruderOf(n), args["S"]
	case "M140":
		heater, text = "heater_bed", args["S"]
	}
	if c.options[heater]["heater_pin"] == "" && c.options[heater]["max_temp"] == "" {
		return fmt.Errorf("no heater %s", heater)
	}
	if name == "MPC_CALIBRATE" {
		if c.options[heater]["control"] != "mpc" {
			return fmt.Errorf("no model")
		}
		c.pending[heater+".control"] = name
		text = "200" // past which it heats is not published
	}
	target := 0.0
	if text != "" {
		target = figureOf(text)
	}
	high := c.number(heater, "max_temp", 0)
	if low := c.number(heater, "min_temp", 0); target != 0 && !(target >= low && target <= high) {
		return fmt.Errorf("%g is not within min_temp and max_temp", target)
	}
	// The watch sees a block that does not come within its hysteresis of the target.
	watch := "verify_heater " + heater
	if err := c.heat(heater, target, target-c.number(watch, "hysteresis", 5) > roomC); err != nil {
		return err
	}
	switch name {
	case "M109":
		c.wait()
	case "MPC_CALIBRATE":
		return c.heat(heater, 0, false)
	case "PID_CALIBRATE":
		if c.targets["heater_bed"] > 0 {
			return fmt.Errorf("the bed is to be cold")
		}
		if target > high-tuneMarginC {
			return fmt.Errorf("%g is so close to max_temp that its swing may trip", target)
		}
		for _, o := range []string{"control", "pid_kp", "pid_ki", "pid_kd"} {
			c.pending[heater+"."+o] = name
		}
		return c.heat(heater, 0, false)
	}
	return nil
}

// save checks every option, and what the next start would refuse.
func (c *sectionsConsole) save() error {
	if len(c.pending) == 0 {
		return fmt.Errorf("nothing to save, so it does nothing")
	}
	for option, by := range c.pending {
		section := option[:strings.LastIndex(option, ".")]
		switch file := c.written[option]; {
		case file != "" && file != c.main:
			return fmt.Errorf("%s is written in %s", option, file)
		case c.hidden[option]:
			return fmt.Errorf("%s stands where it is not found", option)
		case by == "PID_CALIBRATE" && c.options[section]["max_delta"] != "":
			return fmt.Errorf("max_delta beside control: pid, and the next start refuses")
		}
	}
	for option, x := range c.measured {
		at := strings.LastIndex(option, ".")
		section, key := option[:at], option[at+1:]
		z := key == "position_endstop" || c.probeHomes()
		if z && !c.delta() && (x < c.lowest() || x > c.number("stepper_z", "position_max", math.Inf(1))) {
			return fmt.Errorf("%s %g is out of the travel, and the next start refuses", option, x)
		}
		c.options[section][key] = fmt.Sprintf("%.3f", x)
	}
	c.pending = map[string]string{}
	return c.again("RESTART")
}

func (c *sectionsConsole) move(args map[string]string) error {
	if e, ok := args["E"]; ok {
		extruder := extruderOf(c.tool)
		hotC, waited := c.warm[extruder]
		hot := waited && hotC >= c.number(extruder, "min_extrude_temp", 170)
		switch length := figureOf(e); {
		case len(args) > 2 || len(args) == 2 && args["F"] == "":
			return fmt.Errorf("it moves as it pushes")
		case !c.relativeE:
			return fmt.Errorf("lengths are not relative")
		case !hot:
			return fmt.Errorf("too cold to extrude, or nobody waited")
		// At the limit rounding may refuse it.
		case !(length < c.number(extruder, "max_extrude_only_distance", 50)):
			return fmt.Errorf("%g mm is too long", length)
		case c.gap < clearMM:
			return fmt.Errorf("filament is pushed into the bed")
		}
		return c.pushes(args)
	}
	if !c.homed {
		return fmt.Errorf("not homed")
	}
	if err := c.wired(); err != nil {
		return err
	}
	crosses := false
	for _, axis := range []string{"X", "Y"} {
		to, ok := args[axis]
		section := "stepper_" + strings.ToLower(axis)
		// That a move out of range is refused is from memory.
		low, high := c.number(section, "position_min", 0), c.number(section, "position_max", 0)
		if at := figureOf(to); ok && !c.delta() && (at < low || at > high) {
			return fmt.Errorf("%s%s is out of range", axis, to)
		}
		crosses = crosses || ok
	}
	c.over = c.over || crosses
	if to, ok := args["Z"]; ok {
		z := figureOf(to) + c.offset
		// The highest: an option of Z, and the end of the towers (both from memory).
		high := c.number("stepper_z", "position_max", math.Inf(1))
		if c.delta() {
			high = c.number("stepper_a", "position_endstop", 0)
		}
		if !(z >= c.lowest() && z <= high) {
			return fmt.Errorf("%g is out of range of %g to %g", z, c.lowest(), high)
		}
		c.gap = z - c.touch()
	}
	return c.moved(crosses)
}

// paper is the manual tool.
func (c *sectionsConsole) paper(name string, args map[string]string) error {
	switch name {
	case "TESTZ", "ACCEPT", "ABORT":
		if c.open == "" {
			return fmt.Errorf("no tool is open")
		}
	default:
		if !c.homed {
			return fmt.Errorf("not homed")
		}
		if err := c.cold(); err != nil {
			return err
		}
		if c.offset != 0 {
			return fmt.Errorf("an offset is in force: whether the height has it in it is not published")
		}
		if !c.over && name != "DELTA_CALIBRATE" {
			return fmt.Errorf("it is not moved over the bed first")
		}
	}
	begin := func() error {
		c.open, c.start = name, c.gap+c.touch()
		return nil
	}
	switch name {
	case "PROBE_CALIBRATE":
		switch {
		case c.probe() == "":
			return fmt.Errorf("unknown command")
		case eddy(c.probe()):
			return fmt.Errorf("unknown command")
		case c.nozzleProbes():
			return fmt.Errorf("the nozzle is the probe: its height is no length to measure by paper")
		case c.trigger < 0:
			return fmt.Errorf("the nozzle strikes the bed before the probe triggers")
		}
		// It lifts by 5 mm from where it probed, and crosses to the probed spot.
		c.gap = c.trigger + 5
		return begin()
	case "Z_ENDSTOP_CALIBRATE":
		if _, ok := c.options["stepper_z"]["position_endstop"]; !ok || c.delta() || c.probeHomes() {
			return fmt.Errorf("unknown command")
		}
		return begin()
	case "DELTA_CALIBRATE":
		switch {
		case c.options["delta_calibrate"] == nil || !c.delta():
			return fmt.Errorf("unknown command")
		case args["METHOD"] == "manual":
		case c.probe() == "":
			return fmt.Errorf("no probe")
		case math.Abs(c.height(c.probe())-c.trigger) > strikesMM:
			return fmt.Errorf("it goes by the probe, whose height is not the new one")
		default: // by itself: no paper
			return c.towers(name, c.touch())
		}
		c.points = deltaPoints
		return begin()
	case "PROBE_EDDY_CURRENT_CALIBRATE":
		if c.options["probe_eddy_current "+args["CHIP"]] == nil {
			return fmt.Errorf("unknown command")
		}
		return begin()
	case "MANUAL_PROBE":
		return begin()
	case "TESTZ":
		z := c.gap + c.touch() + figureOf(args["Z"])
		if math.IsNaN(z) || z < c.lowest()-1e-9 {
			return fmt.Errorf("out of range below %g: the tool ends", c.lowest())
		}
		c.gap = z - c.touch()
		return c.moved(false)
	case "ABORT":
		c.open, c.points = "", 0
	case "ACCEPT":
		return c.accept()
	}
	return nil
}

func (c *sectionsConsole) accept() error {
	z := c.gap + c.touch()
	switch {
	case z >= c.start:
		return fmt.Errorf("the nozzle is not below its start")
	case c.gap > strikesMM:
		return fmt.Errorf("the nozzle is %.1f mm above the paper, and the firmware does not notice", c.gap)
	}
	by := c.open
	set := func(option string, x float64) { c.pending[option], c.measured[option] = by, x }
	switch by {
	case "PROBE_CALIBRATE": // old z_offset − z_accepted + z_probed, which is by the offset too
		set(c.probe()+".z_offset", c.touch()+c.trigger-z)
	case "Z_ENDSTOP_CALIBRATE":
		set("stepper_z.position_endstop", c.number("stepper_z", "position_endstop", 0)-z)
	case "PROBE_EDDY_CURRENT_CALIBRATE":
		// What it measures is where the bed is from the new tip.
		c.pending[c.probe()+".calibrate"], c.trigger = by, c.height(c.probe())
	case "MANUAL_PROBE":
		c.heights[c.tool] = z
	case "DELTA_CALIBRATE":
		if c.points--; c.points > 0 {
			c.gap += 5 // it lifts and goes to the next point (from memory)
			c.start = c.gap + c.touch()
			return nil
		}
		c.open = ""
		return c.towers(by, z)
	}
	c.open = ""
	return nil
}

// towers is what the measuring of a delta sets, where the nozzle reached the paper
// at height z.
func (c *sectionsConsole) towers(by string, z float64) error {
	c.pending["printer.delta_radius"] = by
	for _, tower := range []string{"a", "b", "c"} {
		section := "stepper_" + tower
		if _, ok := c.options[section]; !ok {
			c.options[section] = map[string]string{}
		}
		c.pending[section+".angle"], c.pending[section+".arm_length"] = by, by
		old := c.number(section, "position_endstop", c.number("stepper_a", "position_endstop", 0))
		c.pending[section+".position_endstop"] = by
		c.measured[section+".position_endstop"] = old - z
	}
	return nil
}
