package worklist_test

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// sectionsCommands are the console commands of the sections style and their
// arguments, as the style's firmware publishes them: extended commands take
// KEY=value, and T0, T1 exist only as macros. From memory: G90, F in mm/min, and
// the argument of MPC_CALIBRATE, which only forks have.
var sectionsCommands = map[string]string{
	"M105": "", "M112": "", "M114": "", "M115": "", "STATUS": "", "HELP": "",
	"M83": "", "G28": "", "G90": "", "G1": "?X ?Y ?Z ?E ?F",
	"M104": "?S ?T", "M109": "?S ?T", "M140": "?S", "M106": "S", "TURN_OFF_HEATERS": "",
	"SET_HEATER_TEMPERATURE": "HEATER ?TARGET", "TEMPERATURE_WAIT": "SENSOR ?MINIMUM ?MAXIMUM",
	"PID_CALIBRATE": "HEATER TARGET", "MPC_CALIBRATE": "HEATER",
	"SAVE_CONFIG": "", "RESTART": "", "FIRMWARE_RESTART": "",
	"ACTIVATE_EXTRUDER": "EXTRUDER", "SET_GCODE_OFFSET": "?X ?Y ?Z",
	"PROBE_CALIBRATE": "", "Z_ENDSTOP_CALIBRATE": "", "MANUAL_PROBE": "",
	"DELTA_CALIBRATE": "?METHOD", "PROBE_EDDY_CURRENT_CALIBRATE": "CHIP",
	"TESTZ": "Z", "ACCEPT": "", "ABORT": "",
}

// whenHalted work after a shutdown; only FIRMWARE_RESTART ends it.
var whenHalted = []string{"M105", "M112", "M114", "M115", "STATUS", "HELP", "RESTART", "FIRMWARE_RESTART"}

// deltaPoints is how often the measuring of a delta asks for the paper (from
// memory).
const deltaPoints = 7

// tuneMarginC is how far below max_temp a tune has to stay: its swing must not
// reach it (common practice, no source).
const tuneMarginC = 10

// sectionsConsole is a printer of the sections style.
type sectionsConsole struct {
	machine
	options map[string]map[string]string // in force, by section
	written map[string]string            // section.option → the file that has it by hand
	hidden  map[string]bool              // section.option: SAVE_CONFIG does not find it, and refuses
	main    string

	relativeE        bool
	offset           float64 // Z of SET_GCODE_OFFSET
	reference        float64 // the height at which extruder 0's nozzle reaches the paper, by the last homing
	trigger, endstop float64 // extruder 0's height above the paper as probe and switch trigger, mm
	distances        map[int]float64
	open             string  // the manual tool, "" for none
	start            float64 // its height where it was opened
	points           int     // that are left, this one included
	pending          map[string]string
	measured         map[string]float64 // figures among what is pending
}

func newSectionsConsole(t *testing.T, main string, shift float64, swapped int) *sectionsConsole {
	t.Helper()
	c := &sectionsConsole{machine: newMachine(shift, swapped), main: main,
		options: map[string]map[string]string{},
		written: map[string]string{}, hidden: map[string]bool{}, distances: map[int]float64{}}
	c.own = extruderOf(swapped)
	c.read(t, main)
	for n := range 10 {
		c.distances[n] = c.macroOffset(n)
	}
	c.trigger = c.height(c.probe())
	if !c.nozzleProbes() {
		c.trigger -= c.tip(0)
	}
	c.endstop = c.number(c.zSection(), "position_endstop", 0) - c.tip(0)
	c.restart()
	return c
}

// read is a plain reader that is enough for the files in testdata.
func (c *sectionsConsole) read(t *testing.T, name string) {
	data, err := os.ReadFile(name)
	if err != nil {
		return // one that the sheet calls absent
	}
	section, key, saved, trailing := "", "", false, false
	for _, line := range strings.Split(strings.ReplaceAll(string(data), "\r", ""), "\n") {
		if text, ok := strings.CutPrefix(line, "#*# "); ok && name == c.main {
			line, saved = text, true
		}
		line, _, _ = strings.Cut(line, "#")
		line, _, _ = strings.Cut(line, " ;")
		indented := strings.HasPrefix(line, " ") || strings.HasPrefix(line, "\t")
		switch bare := strings.TrimSpace(line); {
		case bare == "" || line[0] == ';':
		case indented && key != "":
			c.options[section][key] += "\n" + bare
		case bare[0] == '[':
			head, rest, _ := strings.Cut(bare[1:], "]")
			section, key, trailing = head, "", strings.TrimSpace(rest) != ""
			if pattern, ok := strings.CutPrefix(section, "include "); ok && !saved {
				files, _ := filepath.Glob(filepath.Join(filepath.Dir(name), pattern))
				slices.Sort(files)
				for _, f := range files {
					c.read(t, f)
				}
				continue
			}
			if c.options[section] == nil {
				c.options[section] = map[string]string{}
			}
		default:
			at := strings.IndexAny(bare, ":=")
			if at < 0 || section == "" {
				continue // the head of the saved block
			}
			key = strings.ToLower(strings.TrimSpace(bare[:at]))
			if _, byHand := c.written[section+"."+key]; saved && byHand {
				key = ""
				continue
			}
			c.options[section][key] = strings.TrimSpace(bare[at+1:])
			if !saved {
				c.written[section+"."+key] = name
				c.hidden[section+"."+key] = indented || trailing
			}
			if indented {
				key = "" // the next one at this indent is an option too
			}
		}
	}
}

var macroZ = regexp.MustCompile(`SET_GCODE_OFFSET[^\n]*\bZ=(-?[\d.]+)`)

// macroOffset is what the macro that fetches a tool sets, positive where it lifts
// the nozzle.
func (c *sectionsConsole) macroOffset(n int) float64 {
	if m := macroZ.FindStringSubmatch(c.options[fmt.Sprintf("gcode_macro T%d", n)]["gcode"]); m != nil {
		return figureOf(m[1])
	}
	return 0
}

// tip is how much lower than the old extruder 0 a tool's tip sits.
func (c *sectionsConsole) tip(n int) float64 {
	lower := c.macroOffset(n)
	if n == c.swapped {
		lower += c.shift
	}
	return lower
}

// touch is the height, without the offset of SET_GCODE_OFFSET, at which the
// active nozzle reaches the paper.
func (c *sectionsConsole) touch() float64 { return c.reference + c.tip(c.tool) - c.tip(0) }

func (c *sectionsConsole) restart() {
	c.off()
	c.relativeE, c.offset, c.open, c.points = false, 0, "", 0
	c.pending, c.measured = map[string]string{}, map[string]float64{}
}

func (c *sectionsConsole) unsaved() string {
	for name, by := range c.pending {
		return name + " of " + by
	}
	return ""
}

func (c *sectionsConsole) by(do string) error {
	if strings.Contains(do, "by hand") && strings.Contains(do, "over the old ones") {
		c.pending = map[string]string{}
	}
	if strings.HasPrefix(do, "Power off") || strings.Contains(do, "power on") {
		if lost := c.unsaved(); lost != "" {
			return fmt.Errorf("it forgets %s", lost)
		}
		c.restart()
		c.halted = "the board that was off" // from memory
	}
	c.hand(do)
	if strings.Contains(do, "Move the probe") {
		c.trigger = max(c.trigger, 1)
	}
	if strings.Contains(do, "move the endstop") {
		c.endstop = max(c.endstop, 1)
	}
	if m := distanceOf.FindStringSubmatch(do); m != nil {
		n := int(figureOf(m[1]))
		zero, ok := c.heights[0]
		own, also := c.heights[n]
		if want := c.tip(n) - c.tip(0); !ok || !also || math.Abs(own-zero-want) > strikesMM {
			return fmt.Errorf("%v gives %.2f mm, and it is %.2f mm", c.heights, own-zero, want)
		}
		c.distances[n] = own - zero
	}
	if strings.Contains(do, "write the old figure less the one that was shown") {
		height, ok := c.heights[0]
		if !ok {
			return fmt.Errorf("none was shown")
		}
		option := c.options[c.zSection()]
		option["position_endstop"] = fmt.Sprint(figureOf(option["position_endstop"]) - height)
	}
	return nil
}

var distanceOf = regexp.MustCompile(`distance in Z of tool (\d) .*: its height less that of tool 0\.`)

func (c *sectionsConsole) after(do string) error {
	if strings.Contains(do, "wait until") || strings.Contains(do, "let it stand") {
		c.wait()
	}
	if strings.Contains(do, "switch the power off") {
		return c.by("Power off")
	}
	return nil
}

func (c *sectionsConsole) further() bool { return c.points > 0 }

func (c *sectionsConsole) end() error {
	switch {
	case c.unsaved() != "":
		return fmt.Errorf("%s is not saved", c.unsaved())
	case c.open != "":
		return fmt.Errorf("%s is still open", c.open)
	}
	return c.left()
}

func (c *sectionsConsole) probe() string {
	for name := range c.options {
		switch kind, _, _ := strings.Cut(name, " "); kind {
		case "probe", "bltouch", "smart_effector", "load_cell_probe", "probe_eddy_current":
			return name
		}
	}
	return ""
}

func eddy(probe string) bool { return strings.HasPrefix(probe, "probe_eddy_current ") }

// nozzleProbes goes by the kind of probe, and by a height that no probe beside the
// nozzle can have.
func (c *sectionsConsole) nozzleProbes() bool {
	name := c.probe()
	beside := c.number(name, "x_offset", 0) != 0 || c.number(name, "y_offset", 0) != 0
	return name == "smart_effector" || name == "load_cell_probe" ||
		name != "" && !eddy(name) && c.height(name) <= 0 && !beside
}

func (c *sectionsConsole) probeHomes() bool {
	return strings.HasSuffix(c.options[c.zSection()]["endstop_pin"], "probe:z_virtual_endstop")
}

func (c *sectionsConsole) delta() bool { return c.options["printer"]["kinematics"] == "delta" }

func (c *sectionsConsole) zSection() string {
	if c.delta() {
		return "stepper_a"
	}
	return "stepper_z"
}

func (c *sectionsConsole) number(section, option string, usual float64) float64 {
	if text, ok := c.options[section][option]; ok {
		return figureOf(text)
	}
	return usual
}

func (c *sectionsConsole) lowest() float64 {
	if c.delta() {
		return c.number("printer", "minimum_z_position", 0)
	}
	return c.number("stepper_z", "position_min", 0)
}

// homesUp: the switch is in the upper quarter of the travel, or the file says so.
func (c *sectionsConsole) homesUp() bool {
	if c.delta() || c.probeHomes() {
		return c.delta()
	}
	if text, ok := c.options["stepper_z"]["homing_positive_dir"]; ok {
		return slices.Contains([]string{"1", "yes", "true", "on"}, strings.ToLower(text))
	}
	low, high := c.lowest(), c.number("stepper_z", "position_max", math.Inf(1))
	return c.number("stepper_z", "position_endstop", 0) > low+0.75*(high-low)
}

func extruderOf(n int) string {
	if n == 0 {
		return "extruder"
	}
	return fmt.Sprintf("extruder%d", n)
}

func (c *sectionsConsole) enter(line string) error {
	name, args := arguments(line)
	if c.halted != "" && !slices.Contains(whenHalted, name) {
		return fmt.Errorf("the firmware is stopped by %s until FIRMWARE_RESTART", c.halted)
	}
	if c.open != "" && !slices.Contains([]string{"TESTZ", "ACCEPT", "ABORT"}, name) {
		return fmt.Errorf("%s is still open", c.open)
	}
	known, ok := sectionsCommands[name]
	if !ok {
		for n := range 10 {
			tool := fmt.Sprintf("T%d", n)
			if _, macro := c.options["gcode_macro "+tool]; macro && name == tool {
				return c.fetch(n)
			}
		}
		return fmt.Errorf("unknown command")
	}
	if err := only(args, known); err != nil {
		return err
	}
	switch name {
	case "M104", "M109", "M140", "TURN_OFF_HEATERS", "SET_HEATER_TEMPERATURE", "TEMPERATURE_WAIT",
		"PID_CALIBRATE", "MPC_CALIBRATE":
		return c.heaters(name, args)
	case "G28":
		return c.goHome()
	case "M83":
		c.relativeE = true
	case "RESTART", "FIRMWARE_RESTART":
		return c.again(name)
	case "ACTIVATE_EXTRUDER":
		for n := range 10 {
			if _, macro := c.options[fmt.Sprintf("gcode_macro T%d", n)]; extruderOf(n) != args["EXTRUDER"] ||
				c.options[args["EXTRUDER"]] == nil {
				continue
			} else if macro {
				return fmt.Errorf("it would push wherever tool %d stands: its macro fetches it", n)
			}
			return c.activate(n)
		}
		return fmt.Errorf("no extruder %s", args["EXTRUDER"])
	case "SET_GCODE_OFFSET":
		if text, ok := args["Z"]; ok {
			if c.offset = figureOf(text); math.IsNaN(c.offset) {
				return fmt.Errorf("nobody knows %s", text)
			}
		}
	case "SAVE_CONFIG":
		return c.save()
	case "G1":
		return c.move(args)
	case "PROBE_CALIBRATE", "Z_ENDSTOP_CALIBRATE", "MANUAL_PROBE", "DELTA_CALIBRATE",
		"PROBE_EDDY_CURRENT_CALIBRATE", "TESTZ", "ACCEPT", "ABORT":
		return c.paper(name, args)
	}
	return nil
}

// again restarts. Which head hangs on the carriage is not known afterwards (from
// memory): a macro would dock the wrong one.
func (c *sectionsConsole) again(name string) error {
	_, macros := c.options["gcode_macro T1"]
	switch {
	case c.unsaved() != "":
		return fmt.Errorf("it forgets %s", c.unsaved())
	case macros && c.tool != 0:
		return fmt.Errorf("after it head %d counts as head 0", c.tool)
	}
	c.restart()
	c.tool = 0
	if name == "RESTART" {
		return nil // it does not clear a shutdown
	}
	if c.halted = ""; c.noProbe {
		c.halted = "the sensor" // where the range check sees an open sensor
	}
	return nil
}

// fetch runs the macro of a tool, as those in testdata are: it crosses the bed.
func (c *sectionsConsole) fetch(n int) error {
	if !c.homed {
		return fmt.Errorf("not homed")
	}
	if err := c.moved(true); err != nil {
		return err
	}
	if err := c.activate(n); err != nil {
		return err
	}
	c.offset, c.over = c.distances[n], false
	return c.moved(true)
}

// activate moves nothing: the height without offset stays, and the nozzle is
// another one.
func (c *sectionsConsole) activate(n int) error {
	z := c.gap + c.touch()
	c.tool = n
	c.gap = z - c.touch()
	return nil
}

// goHome homes X and Y before Z, where towers go up (both from memory), and leaves Z
// where it triggered.
func (c *sectionsConsole) goHome() error {
	if err := c.wired(); err != nil {
		return err
	}
	if err := c.moved(!c.delta()); err != nil {
		return err
	}
	if c.tool != 0 && !c.nozzleProbes() {
		return fmt.Errorf("it homes with tool %d, and the height in the files is tool 0's", c.tool)
	}
	c.homed, c.lifted, c.over = true, true, false
	switch {
	case c.probeHomes() && c.nozzleProbes():
		c.gap = 0
	case c.probeHomes() && c.trigger < 0:
		return fmt.Errorf("the nozzle strikes the bed before the probe triggers")
	case c.probeHomes():
		c.gap = c.trigger
	case !c.homesUp() && c.endstop < -1e-9:
		return fmt.Errorf("the nozzle strikes the bed before the switch triggers")
	default:
		c.gap = c.endstop
	}
	c.reference = c.homesAt()
	return nil
}

// homesAt is the height at which extruder 0's nozzle reaches the paper after homing.
func (c *sectionsConsole) homesAt() float64 {
	switch {
	case c.probeHomes() && c.nozzleProbes():
		return 0
	case c.probeHomes():
		return c.height(c.probe()) - c.trigger
	}
	return c.number(c.zSection(), "position_endstop", 0) - c.endstop
}

// height is what the files have for a probe.
func (c *sectionsConsole) height(probe string) float64 {
	return c.number(probe, "descend_z", c.number(probe, "z_offset", 0))
}

func (c *sectionsConsole) settled() error {
	name := c.probe()
	if z := c.height(name); name != "" && !c.nozzleProbes() && math.Abs(z-c.trigger) > strikesMM {
		return fmt.Errorf("the probe's height is %.2f mm, and it triggers at %.2f mm", z, c.trigger)
	}
	for n := range 10 {
		z := c.homesAt() + c.tip(n) - c.tip(0) - c.distances[n]
		if c.options[extruderOf(n)] != nil && math.Abs(z) > strikesMM {
			return fmt.Errorf("tool %d reaches the paper at %.2f mm", n, z)
		}
	}
	return nil
}
