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
	"G28": "", "G30": "X Y", "G90": "", "G91": "", "M83": "", "M114": "", "M211": "S",
	"G1": "?X ?Y ?Z ?E ?F",
}

// definesConsole is a printer of the defines style.
type definesConsole struct {
	machine
	options map[string]string // active names, as far as a plain reader tells

	// Where no file names an option that says what homes, it is what the sheet says:
	// the published pages do not tell, and an option that is undefined counts as off.
	saysProbe, named bool

	relative, relativeE, limitOff bool
	// In force: the probe's offset, negative below the nozzle, Z's home offset, and
	// those of the tools in Z, below 0 where one hangs lower (their sign from memory).
	offset, home, lowered float64
	distances             map[int]float64
	// reference is the height at which tool 0 reaches the paper, by the last homing;
	// the others are its heights above the paper as probe and switch trigger, mm.
	reference, trigger, endstop float64
	probed, shown               float64 // what G30 and M114 showed last
	pending                     string  // what was set and not saved
	tuned                       bool    // a tune printed gains that are not in force
	copied, flashed, reset      bool
}

var defineLine = regexp.MustCompile(`^[ \t]*#define[ \t]+(\w+)[ \t]*(.*?)[ \t]*(//.*)?$`)

var conditionLine = regexp.MustCompile(`^#(?:if|elif)[ \t]+(?:0$|defined\((\w+)\))`)

func newDefinesConsole(t *testing.T, files []string, shift float64, swapped int) *definesConsole {
	t.Helper()
	c := &definesConsole{machine: newMachine(shift, swapped), options: map[string]string{}}
	for _, f := range files {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		var left []bool // what stands in each conditional that is open is left out
		for line := range strings.Lines(string(data)) {
			line = strings.TrimRight(line, "\r\n")
			if left = c.conditional(left, strings.TrimSpace(line)); slices.Contains(left, true) {
				continue
			}
			for _, name := range probeHomesBy {
				c.named = c.named || strings.Contains(line, name)
			}
			if name, ok := strings.CutPrefix(strings.TrimSpace(line), "#undef "); ok {
				delete(c.options, strings.TrimSpace(name))
			} else if m := defineLine.FindStringSubmatch(line); m != nil {
				c.options[m[1]] = m[2]
			}
		}
	}
	c.own = fmt.Sprint(swapped)
	c.headers()
	if c.trigger = -c.offset - c.tip(0); c.on("NOZZLE_AS_PROBE") {
		c.trigger = 0 // whatever its length
	}
	c.endstop = c.base() - c.tip(0)
	c.powerOn()
	return c
}

// conditional reads as much of #if as the files in testdata turn options off by: 0
// and a name that nothing defined. All else counts as true.
func (c *definesConsole) conditional(left []bool, line string) []bool {
	off := false
	if m := conditionLine.FindStringSubmatch(line); m != nil {
		_, defined := c.options[m[1]]
		off = m[1] == "" || !defined
	}
	switch {
	case strings.HasPrefix(line, "#if"):
		return append(left, off)
	case strings.HasPrefix(line, "#endif") && len(left) > 0:
		return left[:len(left)-1]
	case strings.HasPrefix(line, "#el") && len(left) > 0:
		left[len(left)-1] = off
	}
	return left
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

// probeHomesBy are the options by which Z homes by the probe, from memory.
var probeHomesBy = []string{"Z_MIN_PROBE_USES_Z_MIN_ENDSTOP_PIN", "USE_PROBE_FOR_Z_HOMING"}

// probeHomes: Z homes by the probe.
func (c *definesConsole) probeHomes() bool {
	return c.probe() && c.homesDown() && (!c.named && c.saysProbe || slices.ContainsFunc(probeHomesBy, c.on))
}

// homesDown: the option is from memory.
func (c *definesConsole) homesDown() bool { return c.options["Z_HOME_DIR"] == "-1" }

func (c *definesConsole) probe() bool {
	_, servo := c.options["Z_PROBE_SERVO_NR"]
	probes := []string{"BLTOUCH", "FIX_MOUNTED_PROBE", "NOZZLE_AS_PROBE", "TOUCH_MI_PROBE",
		"Z_PROBE_ALLEN_KEY", "Z_PROBE_SLED", "SOLENOID_PROBE", "SENSORLESS_PROBING",
		"RACK_AND_PINION_PROBE"}
	if c.version() >= newerVersion {
		probes = append(probes, "MAGLEV4", "MAG_MOUNTED_PROBE", "BD_SENSOR")
	}
	return servo || slices.ContainsFunc(probes, c.on)
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
		switch lost := c.unsaved(); {
		case lost != "":
			return fmt.Errorf("it forgets %s", lost)
		case flashed && c.on("EEPROM_SETTINGS") && !c.copied && !c.on("DISABLE_M503"):
			return fmt.Errorf("a new layout drops what is stored, and nobody copied it")
		}
		c.powerOn()
	}
	c.flashed = c.flashed || flashed
	c.hand(do)
	if strings.Contains(do, "Move the probe") {
		c.trigger = max(c.trigger, 1)
	}
	if strings.Contains(do, "move the endstop") {
		c.endstop = max(c.endstop, 1)
	}
	if strings.Contains(do, "write the old figure less the one that was shown") {
		c.lowered += c.shown // towers of which the files have the height (from memory)
	}
	if strings.Contains(do, "move the switch by what was shown: up where that is above 0") {
		c.endstop += c.shown
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
		index := args[key]
		if index != "" && name != "G1" && int(figureOf(index)) >= c.hotends() {
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
		if math.Abs(c.gap) < strikesMM && c.over {
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

// goHome homes X and Y before Z, by what tool 0 has, whichever is in use, and leaves
// Z where it triggered (all from memory).
func (c *definesConsole) goHome() error {
	if err := c.wired(); err != nil {
		return err
	}
	if err := c.moved(true); err != nil {
		return err
	}
	c.homed, c.lifted, c.over = true, true, false
	switch {
	case c.probeHomes() && c.trigger < 0:
		return fmt.Errorf("the nozzle strikes the bed before the probe triggers")
	case c.probeHomes():
		c.gap = c.trigger
	case !c.homesDown():
		c.gap = 100
	case c.endstop < -1e-9:
		return fmt.Errorf("the nozzle strikes the bed before the switch triggers")
	default:
		c.gap = c.endstop
	}
	c.reference = c.homesAt()
	c.gap -= c.tip(c.tool) - c.tip(0)
	return c.moved(false)
}

// homesAt is the height at which tool 0 reaches the paper after homing.
func (c *definesConsole) homesAt() float64 {
	switch {
	case c.probeHomes():
		return -c.offset - c.trigger
	case !c.homesDown():
		return c.tip(0) + c.home - c.lowered
	}
	return c.base() + c.home - c.endstop
}

func (c *definesConsole) settled() error {
	if c.probe() && math.Abs(c.offset+c.trigger) > strikesMM {
		return fmt.Errorf("the probe's offset is %.2f mm, and it triggers at %.2f mm", c.offset, c.trigger)
	}
	for n := range c.hotends() {
		if z := c.homesAt() + c.tip(n) - c.tip(0) + c.distances[n]; math.Abs(z) > strikesMM {
			return fmt.Errorf("tool %d reaches the paper at %.2f mm", n, z)
		}
	}
	return nil
}
