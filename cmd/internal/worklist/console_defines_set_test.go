package worklist_test

import (
	"fmt"
	"math"
	"strings"
)

// What the commands of the defines style set, and where they move.

func (c *definesConsole) heaters(name string, args map[string]string) error {
	target := figureOf(args["S"])
	switch name {
	case "M140":
		// From memory: without a bed heater the command is not known, and there is nothing to switch off.
		if bed, ok := c.options["TEMP_SENSOR_BED"]; (!ok || bed == "0") && target != 0 {
			return fmt.Errorf("there is no bed heater")
		}
		return c.heat("bed", target)
	case "M301":
		if !c.on("PIDTEMP") {
			return fmt.Errorf("no PID")
		}
		c.tuned, c.pending = false, "gains"
		return nil
	case "M306": // the newer generation's
		switch {
		case !c.on("MPCTEMP") || c.version() < modelVersion:
			return fmt.Errorf("no model")
		case !(figureOf(c.options["HEATER_"+tool(args["E"], 0)+"_MAXTEMP"]) > 200):
			return fmt.Errorf("it heats past 200 °C whatever the max temp")
		}
		if err := c.cold(); err != nil {
			return err
		}
		if err := c.goHome(); err != nil {
			return err
		}
		c.gap = 1 - c.touch()
		if err := c.moved(false); err != nil {
			return err
		}
		c.gap, c.pending = 10-c.touch(), "the model"
		return nil
	case "M303":
		switch cycles, given := args["C"]; {
		case !c.on("PIDTEMP"):
			return fmt.Errorf("no PID")
		case given && figureOf(cycles) < 3:
			return fmt.Errorf("at least 3 cycles")
		}
		heater := tool(args["E"], 0)
		if err := c.highest(heater, target); err != nil {
			return err
		}
		if err := c.heat(heater, target); err != nil {
			return err
		}
		if c.tuned = args["U"] != "1"; !c.tuned {
			c.pending = "gains"
		}
		return c.heat(heater, 0)
	}
	heater := tool(args["T"], c.tool)
	if err := c.highest(heater, target); err != nil {
		return err
	}
	err := c.heat(heater, target)
	if name == "M109" {
		c.wait()
	}
	return err
}

func tool(index string, active int) string {
	if index == "" {
		return fmt.Sprint(active)
	}
	return index
}

// highest refuses a target above what the firmware takes: it would be lowered
// unsaid.
func (c *definesConsole) highest(heater string, tempC float64) error {
	margin := 15.0
	if text, ok := c.options["HOTEND_OVERSHOOT"]; ok {
		margin = figureOf(text)
	}
	if limit := figureOf(c.options["HEATER_"+heater+"_MAXTEMP"]); tempC != 0 && !(tempC <= limit-margin) {
		return fmt.Errorf("%g is above %g", tempC, limit-margin)
	}
	return nil
}

func (c *definesConsole) store(name string) error {
	stores := c.on("EEPROM_SETTINGS")
	switch name {
	case "M500":
		switch {
		case !stores:
			return fmt.Errorf("it stores nothing")
		case c.tuned:
			return fmt.Errorf("the tuned gains are not in force, and the old ones are stored")
		}
		c.reset = c.reset || c.pending == "the reset"
		c.pending = ""
	case "M502":
		switch {
		case c.pending != "" || c.tuned:
			return fmt.Errorf("it undoes what was measured: %s", c.pending)
		case stores && !c.copied && !c.on("DISABLE_M503"):
			return fmt.Errorf("it drops settings that nobody copied")
		}
		c.headers()
		c.pending = "the reset"
	case "M503":
		if c.on("DISABLE_M503") {
			return fmt.Errorf("unknown command")
		}
		c.copied = true
	}
	return nil
}

// height sets what was measured. That a distance does not move the nozzle before
// the tool is taken, and that M206 adds to what homing gives, is from memory.
func (c *definesConsole) height(name string, args map[string]string) error {
	x, err := c.figure(args["Z"])
	if err != nil {
		return err
	}
	if err := c.cold(); err != nil {
		return err
	}
	filled := strings.HasPrefix(args["Z"], "<")
	off := func(want float64) error {
		if filled && math.Abs(x-want) > strikesMM {
			return fmt.Errorf("%s gives %.2f mm, and it is %.2f mm", args["Z"], x, want)
		}
		return nil
	}
	switch name {
	case "M851":
		if !c.probe() {
			return fmt.Errorf("no probe")
		}
		low, high := "Z_PROBE_OFFSET_RANGE_MIN", "Z_PROBE_OFFSET_RANGE_MAX"
		if c.version() >= modelVersion {
			low, high = "PROBE_OFFSET_ZMIN", "PROBE_OFFSET_ZMAX"
		}
		if x < figureOf(c.options[low]) || x > figureOf(c.options[high]) {
			return fmt.Errorf("%g mm is outside of %s and %s", x, low, high)
		}
		c.offset, c.pending = x, "the probe's height"
		return off(-c.trigger)
	case "M206":
		if c.on("NO_HOME_OFFSETS") {
			return fmt.Errorf("unknown command")
		}
		was := c.home
		c.home, c.pending = x, "the home offset"
		return off(was - c.reference)
	default:
		n := int(figureOf(args["T"]))
		if n == 0 || c.hotends() < 2 {
			return fmt.Errorf("tool 0 has no distance")
		}
		c.distances[n], c.pending = x, "the distance"
		return off(c.tip(0) - c.tip(n))
	}
}

func (c *definesConsole) move(args map[string]string) error {
	if e, ok := args["E"]; ok {
		longest := math.Inf(1)
		if c.on("PREVENT_LENGTHY_EXTRUDE") {
			longest = figureOf(c.options["EXTRUDE_MAXLENGTH"])
		}
		heater := fmt.Sprint(c.tool)
		hot := c.warm[heater] && c.targets[heater] >= figureOf(c.options["EXTRUDE_MINTEMP"])
		switch {
		case !c.relativeE:
			return fmt.Errorf("lengths are not relative")
		case !hot && c.on("PREVENT_COLD_EXTRUSION"):
			return fmt.Errorf("too cold to extrude, or nobody waited")
		case !(figureOf(e) <= longest):
			return fmt.Errorf("%s mm is dropped as too long", e)
		case c.gap < clearMM:
			return fmt.Errorf("filament is pushed into the bed")
		}
		return nil
	}
	if !c.homed {
		return fmt.Errorf("not homed")
	}
	crosses := false // a place beside the bed is from memory
	for _, axis := range []string{"X", "Y"} {
		to, ok := args[axis]
		if size := figureOf(c.options[axis+"_BED_SIZE"]); ok && (figureOf(to) < 0 || figureOf(to) > size) {
			return fmt.Errorf("%s%s is beside the bed", axis, to)
		}
		crosses = crosses || ok
	}
	z := c.gap + c.touch()
	if to, ok := args["Z"]; ok && c.relative {
		z += figureOf(to)
	} else if ok {
		z = figureOf(to)
	}
	if z < 0 && !c.limitOff {
		return fmt.Errorf("the lower limit stops it")
	}
	c.gap = z - c.touch()
	return c.moved(crosses)
}
