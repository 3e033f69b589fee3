package worklist_test

import (
	"fmt"
	"math"
	"strings"
)

// What the commands of the defines style set, and where they move.

func (c *definesConsole) heaters(name string, args map[string]string) error {
	target := figureOf(args["S"])
	if target > 0 && c.flashed && !c.reset && c.pending != "the reset" && c.on("EEPROM_SETTINGS") {
		return fmt.Errorf("what is stored of the old hotend is still in force")
	}
	switch name {
	case "M140":
		// From memory: without a bed heater the command is not known, and there is nothing to switch off.
		if bed, ok := c.options["TEMP_SENSOR_BED"]; (!ok || bed == "0") && target != 0 {
			return fmt.Errorf("there is no bed heater")
		}
		margin := c.figureOr("BED_OVERSHOOT", 10)
		if limit := figureOf(c.options["BED_MAXTEMP"]) - margin; target != 0 && !(target <= limit) {
			return fmt.Errorf("%g is above %g", target, limit)
		}
		return c.heat("bed", target, false)
	case "M301":
		if !c.on("PIDTEMP") {
			return fmt.Errorf("no PID")
		}
		if err := c.gains(args); err != nil {
			return err
		}
		c.tuned, c.pending = false, "gains"
		return nil
	case "M306": // the newer generation's
		switch {
		case !c.on("MPCTEMP") || c.version() < modelVersion:
			return fmt.Errorf("no model")
		case tool(args["E"], 0) != c.own:
			return fmt.Errorf("another hotend")
		case len(c.targets) > 0:
			return fmt.Errorf("it homes with a heater on")
		case !(c.hottest(c.own)-c.margin() >= modelC) || c.rated < modelC:
			return fmt.Errorf("it heats past 200 °C whatever the max temp")
		}
		if err := c.goHome(); err != nil {
			return err
		}
		if z := c.touch(); math.Abs(z) > strikesMM {
			return fmt.Errorf("it heats at 1 mm, and the nozzle reaches the paper at %.2f mm", z)
		}
		c.gap, c.pending, c.hot = 10, "the model", true
		return nil
	case "M303":
		switch cycles, given := args["C"]; {
		case !c.on("PIDTEMP"):
			return fmt.Errorf("no PID")
		case given && figureOf(cycles) < 3:
			return fmt.Errorf("at least 3 cycles")
		}
		heater := tool(args["E"], 0)
		if limit := c.hottest(heater) - c.margin(); !(target <= limit) {
			return fmt.Errorf("%g is above %g", target, limit)
		}
		if err := c.heat(heater, target, false); err != nil {
			return err
		}
		if c.tuned = args["U"] != "1"; !c.tuned {
			c.pending = "gains"
		}
		return c.heat(heater, 0, false) // from memory
	}
	heater := tool(args["T"], c.tool)
	if err := c.highest(heater, target); err != nil {
		return err
	}
	err := c.heat(heater, target, c.stops(target))
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

// modelC is what M306 heats past. How far is not published: the files' own margin
// has to do (common practice, no source).
const modelC = 200

// hottestRow is where the tables end that do so below 350 °C, as the style's
// firmware publishes them; 13 ends at 300 °C in the older generation.
var hottestRow = map[string]float64{"12": 180, "13": 350, "14": 275, "15": 275, "17": 309, "60": 272,
	"70": 270, "71": 300, "75": 200, "110": 300, "147": 300, "331": 300, "332": 150, "502": 300, "503": 300,
	"504": 330, "512": 300, "1010": 300, "2000": 125}

// hottest is the highest reading that the firmware allows.
func (c *definesConsole) hottest(heater string) float64 {
	limit, sensor := figureOf(c.options["HEATER_"+heater+"_MAXTEMP"]), c.options["TEMP_SENSOR_"+heater]
	row, ok := hottestRow[sensor]
	if sensor == "13" && c.version() < newerVersion {
		row = 300
	}
	if ok && limit > row-1 {
		return row - 1
	}
	return limit
}

func (c *definesConsole) margin() float64 { return c.figureOr("HOTEND_OVERSHOOT", 15) }

func (c *definesConsole) figureOr(name string, usual float64) float64 {
	if text, ok := c.options[name]; ok {
		return figureOf(text)
	}
	return usual
}

// highest refuses a target above what the firmware takes, which would be lowered
// unsaid, and one so close to the end of the table that the output is cut.
func (c *definesConsole) highest(heater string, tempC float64) error {
	limit := min(figureOf(c.options["HEATER_"+heater+"_MAXTEMP"])-c.margin(), c.hottest(heater)-1)
	if tempC != 0 && !(tempC <= limit) {
		return fmt.Errorf("%g is above %g", tempC, limit)
	}
	return nil
}

// stops: a watch sees that a hotend with this target does not heat, from the room
// or, where it was warmed from outside, as it sinks.
func (c *definesConsole) stops(targetC float64) bool {
	if !c.on("THERMAL_PROTECTION_HOTENDS") {
		return false
	}
	if c.dried {
		return figureOf(c.options["THERMAL_PROTECTION_PERIOD"]) > 0 &&
			targetC-figureOf(c.options["THERMAL_PROTECTION_HYSTERESIS"]) > roomC
	}
	rise := figureOf(c.options["WATCH_TEMP_INCREASE"])
	return figureOf(c.options["WATCH_TEMP_PERIOD"]) > 0 &&
		roomC+rise < targetC-c.figureOr("TEMP_HYSTERESIS", 3)-1
}

// gains: each figure goes to its letter, and to the hotend that was tuned, or to
// all where there is one set.
func (c *definesConsole) gains(args map[string]string) error {
	if index, given := args["E"]; (given || c.on("PID_PARAMS_PER_HOTEND")) && tool(index, 0) != c.own {
		return fmt.Errorf("another hotend's gains")
	}
	for letter, says := range map[string]string{"P": "<kp>", "I": "<ki>", "D": "<kd>"} {
		if text := args[letter]; text != says && !(figureOf(text) >= 0) {
			return fmt.Errorf("%s is not for %s", text, letter)
		}
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
	if filled && !c.over {
		return fmt.Errorf("it was measured where it homed, and not over the bed")
	}
	off := func(want float64) error {
		if filled && math.Abs(x-want) > strikesMM {
			return fmt.Errorf("%s gives %.2f mm, and it is %.2f mm", args["Z"], x, want)
		}
		return nil
	}
	if text := args["T"]; filled && text != "" && !strings.HasSuffix(args["Z"], "of tool "+text+">") {
		return fmt.Errorf("%s is not tool %s's", args["Z"], text)
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
		hotC, waited := c.warm[fmt.Sprint(c.tool)]
		hot := waited && hotC >= figureOf(c.options["EXTRUDE_MINTEMP"])
		switch {
		case len(args) > 2 || len(args) == 2 && args["F"] == "":
			return fmt.Errorf("it moves as it pushes")
		case !c.relativeE:
			return fmt.Errorf("lengths are not relative")
		case !hot && (c.on("PREVENT_COLD_EXTRUSION") || !waited): // without the option it would grind
			return fmt.Errorf("too cold to extrude, or nobody waited")
		case !(figureOf(e) <= longest):
			return fmt.Errorf("%s mm is dropped as too long", e)
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
	crosses := false // a place beside the bed is from memory
	for _, axis := range []string{"X", "Y"} {
		to, ok := args[axis]
		if size := figureOf(c.options[axis+"_BED_SIZE"]); ok && (figureOf(to) < 0 || figureOf(to) > size) {
			return fmt.Errorf("%s%s is beside the bed", axis, to)
		}
		crosses = crosses || ok
	}
	c.over = c.over || crosses
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
