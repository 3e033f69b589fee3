package worklist_test

import (
	"fmt"
	"math"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// definesCommands are the console commands of the defines style and their
// arguments, as the style's firmware publishes them for its newer generation. Of
// the older one only the settings' commands are published (M301, M851, M206,
// M218, M500 and their like). From memory: G28, G30, G90, G91, M83, M114, M211,
// T0, T1, the T of M104 and M109, and that M109 waits.
var definesCommands = map[string]string{
	"M104": "S ?T", "M109": "S ?T", "M140": "S", "M105": "", "M106": "S", "M107": "",
	"M500": "", "M501": "", "M502": "", "M503": "",
	"M303": "?E S ?C ?U", "M301": "?E P I D", "M306": "?E T", "M851": "Z", "M206": "Z", "M218": "T Z",
	"G28": "", "G30": "X Y", "G90": "", "G91": "", "M83": "", "M114": "", "M211": "S", "G1": "?X ?Y ?Z ?E ?F",
}

// definesConsole is a printer of the defines style.
type definesConsole struct {
	machine
	options map[string]string // active names, as far as a plain reader tells

	// Where no file names an option that says what homes, it is what the sheet says.
	saysProbe, named bool

	relative, relativeE, limitOff bool
	offset, home                  float64         // in force: the probe's, negative below the nozzle, and Z's
	distances                     map[int]float64 // in force: a tool's offset in Z, below 0 where it hangs lower
	reference                     float64         // the height at which tool 0 reaches the paper, by the last homing
	trigger, endstop              float64         // tool 0's height above the paper as probe and switch trigger, mm
	probed, shown                 float64         // what G30 and M114 showed last
	pending                       string          // what was set and not saved
	tuned                         bool            // a tune printed gains that are not in force
	copied, flashed, reset        bool
}

var defineLine = regexp.MustCompile(`^[ \t]*#define[ \t]+(\w+)[ \t]*(.*?)[ \t]*(//.*)?$`)

func newDefinesConsole(t *testing.T, files []string, shift float64, swapped int) *definesConsole {
	t.Helper()
	c := &definesConsole{machine: newMachine(shift, swapped), options: map[string]string{}}
	for _, f := range files {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		for line := range strings.Lines(string(data)) {
			line = strings.TrimRight(line, "\r\n")
			c.named = c.named || strings.Contains(line, "Z_MIN_PROBE_USES_Z_MIN_ENDSTOP_PIN") || strings.Contains(line, "USE_PROBE_FOR_Z_HOMING")
			if name, ok := strings.CutPrefix(strings.TrimSpace(line), "#undef "); ok {
				delete(c.options, strings.TrimSpace(name))
			} else if m := defineLine.FindStringSubmatch(line); m != nil {
				c.options[m[1]] = m[2]
			}
		}
	}
	c.headers()
	c.trigger = -c.offset - c.tip(0)
	c.endstop = c.base() - c.tip(0)
	c.powerOn()
	return c
}

// headers puts the files' own values in force.
func (c *definesConsole) headers() {
	c.offset, c.home, c.distances = c.last("NOZZLE_TO_PROBE_OFFSET"), 0, map[int]float64{}
	for n := range c.hotends() {
		c.distances[n] = c.entry("HOTEND_OFFSET_Z", n)
	}
}

func (c *definesConsole) powerOn() {
	c.off()
	c.relative, c.relativeE, c.limitOff, c.tool, c.halted = false, false, false, 0, ""
	c.pending, c.tuned, c.probed, c.shown = "", false, math.NaN(), math.NaN()
}

// tip is how much lower than the old tool 0 a tool's tip sits: what the files had
// for the old hotend, and what the swap adds.
func (c *definesConsole) tip(n int) float64 {
	lower := -c.entry("HOTEND_OFFSET_Z", n)
	if n == c.swapped {
		lower += c.shift
	}
	return lower
}

// touch is the height that the firmware counts where the active nozzle reaches
// the paper.
func (c *definesConsole) touch() float64 {
	return c.reference + c.tip(c.tool) - c.tip(0) + c.distances[c.tool]
}

// list gives the figures of an option in braces.
func (c *definesConsole) list(name string) []float64 {
	var figures []float64
	for _, text := range strings.Split(strings.Trim(c.options[name], "{} "), ",") {
		if x := figureOf(strings.TrimSpace(text)); !math.IsNaN(x) {
			figures = append(figures, x)
		}
	}
	return figures
}

func (c *definesConsole) last(name string) float64 {
	if figures := c.list(name); len(figures) > 0 {
		return figures[len(figures)-1]
	}
	return 0
}

func (c *definesConsole) entry(name string, n int) float64 {
	if figures := c.list(name); n < len(figures) {
		return figures[n]
	}
	return 0
}

// base is the height that homing by the switch gives (the option from memory).
func (c *definesConsole) base() float64 {
	if x := figureOf(c.options["MANUAL_Z_HOME_POS"]); !math.IsNaN(x) {
		return x
	}
	return 0
}

// probeHomes: Z homes by the probe. The options are from memory.
func (c *definesConsole) probeHomes() bool {
	return c.probe() && c.homesDown() && (!c.named && c.saysProbe || c.on("Z_MIN_PROBE_USES_Z_MIN_ENDSTOP_PIN") || c.on("USE_PROBE_FOR_Z_HOMING"))
}

// homesDown: the option is from memory.
func (c *definesConsole) homesDown() bool { return c.options["Z_HOME_DIR"] == "-1" }

func (c *definesConsole) probe() bool {
	_, servo := c.options["Z_PROBE_SERVO_NR"]
	return servo || slices.ContainsFunc([]string{"BLTOUCH", "FIX_MOUNTED_PROBE", "NOZZLE_AS_PROBE", "TOUCH_MI_PROBE",
		"Z_PROBE_ALLEN_KEY", "Z_PROBE_SLED", "SOLENOID_PROBE", "SENSORLESS_PROBING", "RACK_AND_PINION_PROBE"}, c.on) ||
		c.version() >= newerVersion && slices.ContainsFunc([]string{"MAGLEV4", "MAG_MOUNTED_PROBE", "BD_SENSOR"}, c.on)
}

// on is the condition language's: defined as nothing, 1, 0x1 or true.
func (c *definesConsole) on(name string) bool {
	value, ok := c.options[name]
	return ok && slices.Contains([]string{"", "1", "0x1", "true"}, value)
}

// modelVersion has the model first, newerVersion is the newer generation.
const modelVersion, newerVersion = 2010202, 2010300

func (c *definesConsole) version() int {
	if x := figureOf(c.options["CONFIGURATION_H_VERSION"]); !math.IsNaN(x) {
		return int(x)
	}
	return 0
}

func (c *definesConsole) extruders() int { return int(figureOf(c.options["EXTRUDERS"])) }

// hotends leaves out switching extruders, which no file in testdata has.
func (c *definesConsole) hotends() int {
	if c.on("SINGLENOZZLE") || c.on("MIXING_EXTRUDER") {
		return 1
	}
	return c.extruders()
}

// unsaved is what the power takes with it. Without a store the list says that the
// figures go into the files.
func (c *definesConsole) unsaved() string {
	if c.tuned {
		return "a tune"
	}
	if !c.on("EEPROM_SETTINGS") {
		return ""
	}
	return c.pending
}

func (c *definesConsole) by(do string) error {
	flashed := strings.Contains(do, "flash.")
	if strings.HasPrefix(do, "Power off") || strings.Contains(do, "power on") || flashed {
		if lost := c.unsaved(); lost != "" {
			return fmt.Errorf("it forgets %s", lost)
		}
		c.powerOn()
	}
	c.flashed = c.flashed || flashed
	c.plugs(do)
	if strings.Contains(do, "Move the probe") {
		c.trigger = max(c.trigger, 1)
	}
	if strings.Contains(do, "move the endstop") {
		c.endstop = max(c.endstop, 1)
	}
	return nil
}

func (c *definesConsole) after(do string) error {
	if strings.Contains(do, "wait until") || strings.Contains(do, "let it stand") {
		c.wait()
	}
	if strings.Contains(do, "switch the power off") {
		return c.by("Power off")
	}
	return nil
}

func (c *definesConsole) further() bool { return false }

func (c *definesConsole) end() error {
	switch {
	case c.unsaved() != "":
		return fmt.Errorf("%s is not saved", c.unsaved())
	case c.limitOff:
		return fmt.Errorf("the limits are left off")
	case c.relative:
		return fmt.Errorf("moves are left relative")
	case c.flashed && !c.reset && c.on("EEPROM_SETTINGS"):
		return fmt.Errorf("what is stored beats the files that were flashed")
	}
	return c.left()
}

// figure reads an argument: a number, or what the person is told to fill in.
func (c *definesConsole) figure(text string) (float64, error) {
	var x float64
	switch {
	case !strings.HasPrefix(text, "<"):
		x = figureOf(text)
	case text == "<the Z that M114 shows, less the Z that G30 showed>":
		x = c.shown - c.probed
	case text == "<the Z that M114 shows>":
		x = c.shown
	case text == "<the Z that M114 shows, with the other sign>":
		x = -c.shown
	default:
		var n int
		if _, err := fmt.Sscanf(text, "<the height of tool 0, less that of tool %d>", &n); err != nil {
			return 0, fmt.Errorf("nobody knows %s", text)
		}
		zero, ok := c.heights[0]
		own, also := c.heights[n]
		if !ok || !also {
			return 0, fmt.Errorf("the heights of tool 0 and %d were not both measured", n)
		}
		x = zero - own
	}
	if math.IsNaN(x) {
		return 0, fmt.Errorf("there is no figure for %s", text)
	}
	return x, nil
}

func (c *definesConsole) enter(line string) error {
	name, args := arguments(line)
	if c.halted != "" {
		return fmt.Errorf("the firmware is stopped by %s until the power was off", c.halted)
	}
	if len(name) == 2 && name[0] == 'T' {
		return c.take(int(name[1] - '0'))
	}
	known, ok := definesCommands[name]
	if !ok {
		return fmt.Errorf("unknown command")
	}
	if err := only(args, known); err != nil {
		return err
	}
	for _, key := range []string{"E", "T"} {
		if index, given := args[key]; given && index != "" && name != "G1" && int(figureOf(index)) >= c.hotends() {
			return fmt.Errorf("there is no hotend %s", index)
		}
	}
	switch name {
	case "M104", "M109", "M140", "M303", "M301", "M306":
		return c.heaters(name, args)
	case "M500", "M502", "M503":
		return c.store(name)
	case "M851", "M206", "M218":
		return c.height(name, args)
	case "G28":
		return c.goHome()
	case "G30":
		switch {
		case !c.probe():
			return fmt.Errorf("no probe")
		case !c.homed:
			return fmt.Errorf("not homed")
		case c.offset != 0:
			return fmt.Errorf("it shows a height with the offset in it")
		case c.trigger < 0:
			return fmt.Errorf("the nozzle strikes the bed before the probe triggers")
		}
		if err := c.moved(true); err != nil {
			return err
		}
		// Where the nozzle was as the probe triggered; it stays there.
		c.probed, c.gap = c.touch()+c.trigger, c.trigger
		return c.cold()
	case "M114":
		c.shown = c.gap + c.touch()
		if math.Abs(c.gap) < strikesMM {
			c.heights[c.tool] = c.shown
		}
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

// take fetches a tool. The nozzle of it goes to where the other one was, by the
// distances in force (from memory).
func (c *definesConsole) take(n int) error {
	switch {
	case n < 0 || n >= c.extruders():
		return fmt.Errorf("no tool %d", n)
	case !c.homed:
		return fmt.Errorf("not homed")
	}
	z := c.gap + c.touch()
	if err := c.moved(true); err != nil {
		return err
	}
	c.tool = n
	c.gap = z - c.touch()
	return c.moved(true)
}

// goHome homes X and Y before Z, and leaves Z where it triggered (both from
// memory).
func (c *definesConsole) goHome() error {
	if err := c.moved(true); err != nil {
		return err
	}
	if c.tool != 0 {
		return fmt.Errorf("it homes with tool %d, and the height in the files is tool 0's", c.tool)
	}
	c.homed = true
	switch {
	case c.probeHomes() && c.trigger < 0:
		return fmt.Errorf("the nozzle strikes the bed before the probe triggers")
	case c.probeHomes():
		c.gap, c.reference = c.trigger, -c.offset-c.trigger
	case !c.homesDown():
		c.gap, c.reference = 100, c.tip(0)+c.home
	case c.endstop < -1e-9:
		return fmt.Errorf("the nozzle strikes the bed before the switch triggers")
	default:
		c.gap, c.reference = c.endstop, c.base()+c.home-c.endstop
	}
	return nil
}

func (c *definesConsole) heaters(name string, args map[string]string) error {
	target := figureOf(args["S"])
	switch name {
	case "M140":
		// Without a bed heater the command is not known, and there is nothing to switch off.
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
		case figureOf(c.options["HEATER_0_MAXTEMP"]) < 215:
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
	crosses := false
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
