package worklist_test

import (
	"fmt"
	"math"
	"os"
	"regexp"
	"strings"
	"testing"
)

// definesCommands are the console commands of the defines style and their
// arguments, as the style's firmware publishes them; G28, G30, G90, G91, M83,
// M114 and M211 are from memory.
var definesCommands = map[string]string{
	"M104": "S ?T", "M140": "S", "M105": "", "M500": "", "M501": "", "M502": "", "M503": "",
	"M303": "?E S ?C ?U", "M301": "?E P I D", "M306": "?E T", "M851": "Z", "M206": "Z", "M218": "T Z",
	"G28": "", "G30": "X Y", "G90": "", "G91": "", "M83": "", "M114": "", "M211": "S", "G1": "?X ?Y ?Z ?E ?F",
}

// definesConsole is a printer of the defines style.
type definesConsole struct {
	options map[string]string // active names, as far as a plain reader tells
	shift   float64

	homed, relative, relativeE, limitOff, hot bool
	z, offset, home, probed                   float64
	pending                                   string // what was set and not saved
	tuned                                     bool   // a tune printed gains that are not in force
}

var defineLine = regexp.MustCompile(`(?m)^[ \t]*#define[ \t]+(\w+)[ \t]*(.*?)[ \t]*(//.*)?\r?$`)

func newDefinesConsole(t *testing.T, files []string, shift float64) *definesConsole {
	t.Helper()
	c := &definesConsole{options: map[string]string{}, shift: shift}
	for _, f := range files {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range defineLine.FindAllStringSubmatch(string(data), -1) {
			c.options[m[1]] = m[2]
		}
	}
	c.powerOn()
	return c
}

func (c *definesConsole) powerOn() {
	c.homed, c.relative, c.relativeE, c.limitOff, c.hot, c.z = false, false, false, false, false, 100
	c.pending, c.tuned, c.probed = "", false, math.NaN()
}

// above is the way to the paper in the place that M114 shows. With an offset of
// 0 the probe triggers at 0, and the paper lies below by the new trigger height.
func (c *definesConsole) above() float64 {
	if c.probe() && c.probeHomes() && c.offset == 0 {
		return c.z + c.trigger() - c.shift
	}
	return c.z - c.shift
}

// probeHomes: Z homes by the probe.
func (c *definesConsole) probeHomes() bool {
	return c.options["Z_HOME_DIR"] == "-1" && (c.on("Z_MIN_PROBE_USES_Z_MIN_ENDSTOP_PIN") ||
		c.on("USE_PROBE_FOR_Z_HOMING"))
}

func (c *definesConsole) probe() bool {
	for _, name := range []string{"FIX_MOUNTED_PROBE", "BLTOUCH", "NOZZLE_AS_PROBE", "Z_PROBE_SERVO_NR",
		"TOUCH_MI_PROBE", "BD_SENSOR"} {
		if c.on(name) {
			return true
		}
	}
	return false
}

func (c *definesConsole) on(name string) bool {
	value, ok := c.options[name]
	return ok && value != "0" && value != "false"
}

func (c *definesConsole) trigger() float64 {
	list := strings.Split(strings.Trim(c.options["NOZZLE_TO_PROBE_OFFSET"], "{} "), ",")
	return -figureOf(strings.TrimSpace(list[len(list)-1]))
}

func (c *definesConsole) unsaved() string {
	if c.tuned {
		return "a tune"
	}
	if !c.on("EEPROM_SETTINGS") {
		return "" // the list says that they go into the files
	}
	return c.pending
}

func (c *definesConsole) enter(line string) error {
	name, args := arguments(line)
	extruders := int(figureOf(c.options["EXTRUDERS"]))
	if len(name) == 2 && name[0] == 'T' {
		if int(name[1]-'0') >= extruders {
			return fmt.Errorf("no tool %c", name[1])
		}
		return nil
	}
	known, ok := definesCommands[name]
	if !ok {
		return fmt.Errorf("unknown command")
	}
	if err := only(args, known); err != nil {
		return err
	}
	for _, key := range []string{"E", "T"} {
		if index, given := args[key]; given && index != "" && name != "G1" && int(figureOf(index)) >= extruders {
			return fmt.Errorf("there is no hotend %s", index)
		}
	}
	switch name {
	case "M104":
		c.hot = figureOf(args["S"]) >= figureOf(c.options["EXTRUDE_MINTEMP"])
		return c.target(args["T"], figureOf(args["S"]))
	case "M503":
		if c.on("DISABLE_M503") {
			return fmt.Errorf("unknown command")
		}
	case "M303":
		if !c.on("PIDTEMP") {
			return fmt.Errorf("no PID")
		}
		c.tuned = args["U"] != "1"
		return c.target(args["E"], figureOf(args["S"]))
	case "M301":
		c.tuned, c.pending = false, "gains"
	case "M306":
		if !c.on("MPCTEMP") {
			return fmt.Errorf("no model")
		}
		c.pending = "the model"
	case "M500":
		switch {
		case !c.on("EEPROM_SETTINGS"):
			return fmt.Errorf("it stores nothing")
		case c.tuned:
			return fmt.Errorf("the tuned gains are not in force, and the old ones are stored")
		}
		c.pending = ""
	case "M502":
		c.pending = "the reset"
	case "M851":
		if !c.probe() {
			return fmt.Errorf("no probe")
		}
		if c.offset = figureOf(args["Z"]); args["Z"] == "FILL" {
			if c.offset = c.z; !c.probeHomes() {
				if math.IsNaN(c.probed) {
					return fmt.Errorf("nothing was probed to take off")
				}
				c.offset -= c.probed
			}
			if want := -(c.trigger() - c.shift); math.Abs(c.offset-want) > 0.15 {
				return fmt.Errorf("an offset of %.2f, and the probe triggers at %.2f", c.offset, -want)
			}
		}
		c.pending = "the probe's height"
	case "M206":
		if c.on("NO_HOME_OFFSETS") {
			return fmt.Errorf("unknown command")
		}
		if c.home = -c.z; math.Abs(c.home+c.shift) > 0.15 {
			return fmt.Errorf("a home offset of %.2f, and the tip sits %.2f lower", c.home, c.shift)
		}
		c.pending = "the home offset"
	case "G28":
		c.homed, c.z = true, 5
	case "G30":
		switch {
		case !c.homed:
			return fmt.Errorf("not homed")
		case c.offset != 0:
			return fmt.Errorf("it shows a height with the offset in it")
		}
		c.probed = c.trigger() // where the nozzle was, by the switch, as the probe triggered
	case "M218":
		c.pending = "the distance"
	case "G90", "G91":
		c.relative = name == "G91"
	case "M83":
		c.relativeE = true
	case "M211":
		c.limitOff = args["S"] == "0"
	case "G1":
		return c.move(args)
	}
	return nil
}

// target refuses one above what the firmware takes: it would be lowered unsaid.
func (c *definesConsole) target(index string, tempC float64) error {
	if index == "" {
		index = "0"
	}
	margin := 15.0
	if text, ok := c.options["HOTEND_OVERSHOOT"]; ok {
		margin = figureOf(text)
	}
	if limit := figureOf(c.options["HEATER_"+index+"_MAXTEMP"]); tempC > limit-margin {
		return fmt.Errorf("%g is above %g", tempC, limit-margin)
	}
	return nil
}

func (c *definesConsole) move(args map[string]string) error {
	if e, ok := args["E"]; ok {
		longest := math.Inf(1)
		if c.on("PREVENT_LENGTHY_EXTRUDE") {
			longest = figureOf(c.options["EXTRUDE_MAXLENGTH"])
		}
		switch {
		case !c.relativeE:
			return fmt.Errorf("lengths are not relative")
		case !c.hot && c.on("PREVENT_COLD_EXTRUSION"):
			return fmt.Errorf("too cold to extrude")
		case figureOf(e) > longest:
			return fmt.Errorf("%s mm is dropped as too long", e)
		}
		return nil
	}
	z, ok := args["Z"]
	switch {
	case !c.homed:
		return fmt.Errorf("not homed")
	case !ok:
		return nil
	case c.relative:
		c.z += figureOf(z)
	default:
		c.z = figureOf(z)
	}
	switch {
	case c.z < 0 && !c.limitOff:
		return fmt.Errorf("the lower limit stops it")
	case c.above() < -0.15:
		return fmt.Errorf("the nozzle strikes the bed")
	}
	return nil
}
