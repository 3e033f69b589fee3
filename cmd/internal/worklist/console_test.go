package worklist_test

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/worklist"
	"preflash/parser/sheet"
	"preflash/rules"
)

// console is what a printer makes of console commands, by tables of what each
// firmware publishes, written without the steps.
type console interface {
	// enter runs one command, and says why the printer refuses it, why it does
	// not do what it is there for, or what it harms.
	enter(line string) error
	// by does by hand what an item says, before its commands; after, what it says
	// of the time after them.
	by(do string) error
	after(do string) error
	// above is how far the nozzle is from the paper, mm.
	above() float64
	// further tells that the height is asked at one more point.
	further() bool
	// end says what must not be left as it is.
	end() error
}

// A cold nozzle may stand so close to the bed, and not cross it; a hot one, or
// one that pushes filament, has to be further up (common practice, no source).
const (
	closeMM = 1.0
	clearMM = 5.0
)

// strikesMM is how far into the paper the nozzle may press it, and how well a
// height is measured, mm (common practice, no source).
const strikesMM = 0.15

// machine is what both kinds of printer have.
type machine struct {
	shift   float64 // the new tip is so much lower, mm
	swapped int     // the tool that has it

	gap             float64 // from the active nozzle down to the paper, mm
	homed           bool
	tool            int
	heights         map[int]float64    // the height at which a tool's nozzle reached the paper
	targets         map[string]float64 // those above 0, by heater
	warm            map[string]bool    // the heater got there, since somebody waited
	noWire, noProbe bool               // heater or sensor are unplugged
	halted          string             // why the firmware stopped, "" where it works
}

func newMachine(shift float64, swapped int) machine {
	m := machine{shift: shift, swapped: swapped, gap: 100, heights: map[int]float64{}}
	m.off()
	return m
}

func (m *machine) above() float64 { return m.gap }

// off is what a restart does, with or without the power.
func (m *machine) off() {
	m.homed, m.targets, m.warm = false, map[string]float64{}, map[string]bool{}
}

// heat sets a target. With the heater or its sensor unplugged a firmware that
// works trips, sooner or later.
func (m *machine) heat(heater string, targetC float64) error {
	delete(m.warm, heater)
	delete(m.targets, heater)
	switch {
	case math.IsNaN(targetC):
		return fmt.Errorf("no target")
	case targetC == 0:
		return nil
	case m.gap < clearMM:
		return fmt.Errorf("the nozzle heats up %.1f mm above the bed", m.gap)
	case m.noWire || m.noProbe:
		m.halted = "the protection"
		return nil
	}
	m.targets[heater] = targetC
	return nil
}

func (m *machine) wait() {
	for heater := range m.targets {
		m.warm[heater] = true
	}
}

// plugs is what an item says of the wires.
func (m *machine) plugs(do string) {
	switch {
	case strings.Contains(do, "plug heater and sensor in"):
		m.noWire, m.noProbe = false, false
	case strings.Contains(do, "Unplug the heater"):
		m.noWire = true
	case strings.Contains(do, "unplug the sensor"):
		m.noProbe = true
	}
}

// moved is the nozzle after a move.
func (m *machine) moved(crosses bool) error {
	switch {
	case m.gap < -strikesMM:
		return fmt.Errorf("the nozzle strikes the bed")
	case crosses && m.gap < closeMM:
		return fmt.Errorf("the nozzle is drawn over the bed at %.1f mm", m.gap)
	}
	return nil
}

// cold: a height is measured with nozzle and bed at room temperature.
func (m *machine) cold() error {
	if len(m.targets) > 0 {
		return fmt.Errorf("a height is measured with a heater on: %v", m.targets)
	}
	return nil
}

func (m *machine) left() error {
	switch {
	case len(m.targets) > 0:
		return fmt.Errorf("a heater is left on: %v", m.targets)
	case m.noWire || m.noProbe:
		return fmt.Errorf("heater or sensor are left unplugged")
	case m.halted != "":
		return fmt.Errorf("the firmware is left stopped by %s", m.halted)
	}
	return nil
}

var fillIn = regexp.MustCompile(`<[^>]*>`)

// work goes through a list as a person does: every step in order, those that are
// to be repeated until the paper is reached, the height at each point that is asked
// for, and the four steps of one tool again with another.
func work(t *testing.T, c console, list *worklist.List) (commands int) {
	t.Helper()
	for _, s := range list.Sections {
		begin := 0
		for at := range s.Items {
			items := s.Items[at : at+1 : at+1]
			switch do := items[0].Do; {
			case strings.Contains(do, "Begin to measure"):
				begin = at
			case strings.Contains(do, "do the four steps again"):
				items = append(items, s.Items[begin:begin+4]...)
			}
			for points := 0; len(items) > 0; items = items[1:] {
				n, err := workItem(c, items[0])
				if commands += n; err != nil {
					t.Errorf("%s: %s: %v", s.Title, items[0].Do, err)
					return commands
				}
				if c.further() && strings.Contains(items[0].Do, "take the height") && points < 20 {
					points++
					items = append(items, s.Items[begin+1:begin+4]...) // "do the next three for each one"
				}
			}
		}
	}
	if err := c.end(); err != nil {
		t.Errorf("at the end %v", err)
	}
	return commands
}

// workItem does one item.
func workItem(c console, item worklist.Item) (commands int, err error) {
	if err := c.by(item.Do); err != nil {
		return 0, err
	}
	again := func() bool { return false }
	if strings.Contains(item.Do, "again and again") {
		far := 0.0
		if strings.Contains(item.Do, "close to the paper") {
			far = 1.5
		}
		again = func() bool { return c.above() > far+1e-9 }
	}
	for _, step := range item.Steps {
		for n := 0; n == 0 || again(); n++ {
			commands++
			if err := c.enter(step); err != nil {
				return commands, fmt.Errorf("%s: %w", step, err)
			}
			if n > 400 {
				return commands, fmt.Errorf("%s does not get to the paper", step)
			}
		}
	}
	return commands, c.after(item.Do)
}

// Every sequence that a list prints runs on the console of the printer that it
// was printed for.
func TestStepsRun(t *testing.T) {
	commands := 0
	for _, root := range []string{"../../../testdata/forms", "../../../testdata/demo"} {
		f := fleet.Load([]string{root}, fleet.Options{Today: today, Root: "../../../testdata", Keep: true}, nil)
		defer f.Close()
		r, inputs := f.Check(), f.Inputs()
		for i, in := range inputs {
			if in == nil {
				t.Fatalf("%s is not read: %v", r.Printers[i].Name, r.Printers[i].Problem)
			}
			t.Run(r.Printers[i].Name, func(t *testing.T) {
				list := worklist.New(in, worklist.Open{})
				n := work(t, consoleOf(t, in), list)
				if n < 10 && len(list.Sections) > 4 { // where nothing may heat little is entered
					t.Errorf("the list has %d commands", n)
				}
				commands += n
			})
		}
	}
	if commands < 300 {
		t.Errorf("%d commands were run in all", commands)
	}
}

// The same for forms that no file in testdata has.
func TestStepsRunFurther(t *testing.T) {
	for name, more := range map[string]string{
		"a probe that only levels": "#define PIDTEMP\n#define FIX_MOUNTED_PROBE\n" +
			"#define NOZZLE_TO_PROBE_OFFSET { 10, 10, -2 }\n" +
			"//#define USE_PROBE_FOR_Z_HOMING\n//#define Z_MIN_PROBE_USES_Z_MIN_ENDSTOP_PIN\n",
		"a probe that homes": "#define PIDTEMP\n#define FIX_MOUNTED_PROBE\n" +
			"#define NOZZLE_TO_PROBE_OFFSET { 10, 10, -2 }\n#define USE_PROBE_FOR_Z_HOMING\n",
		"a model": "#define MPCTEMP\n#define MPC_HEATER_POWER { 50 }\n",
	} {
		t.Run(name, func(t *testing.T) {
			const shift = 0.3
			in := definesInput(t, more+"#define EXTRUDE_MINTEMP 170\n#define PREVENT_COLD_EXTRUSION\n")
			in.Sheet.New.Nozzle.TipShiftMM = sheet.Key[float64]{Value: shift, Given: true}
			if n := work(t, newDefinesConsole(t, []string{in.Printer.Files[0].Name}, shift, 0),
				worklist.New(in, worklist.Open{})); n < 20 {
				t.Errorf("the list has %d commands", n)
			}
		})
	}
}

// What was printed once: an offset that was taken without the paper, gains for
// an included file, a length at the limit.
func TestConsolesRefuse(t *testing.T) {
	dir := t.TempDir()
	write := func(name, text string) {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	write("printer.cfg", "[include hot.cfg]\n[stepper_z]\nendstop_pin: probe:z_virtual_endstop\n"+
		"position_min: -2\n[probe]\nz_offset: 2\n")
	write("hot.cfg", "[extruder]\ncontrol: pid\nmin_temp: 0\nmax_temp: 250\nstep_pin: PB1\n")
	write("Configuration.h", "#define CONFIGURATION_H_VERSION 02010300\n#define EXTRUDERS 1\n"+
		"#define TEMP_SENSOR_0 1\n"+
		"#define HEATER_0_MAXTEMP 275\n#define PIDTEMP\n#define EEPROM_SETTINGS\n"+
		"#define PREVENT_COLD_EXTRUSION\n#define EXTRUDE_MINTEMP 170\n#define Z_HOME_DIR -1\n")
	flat := []string{"G28", "G90", "G1 Z10 F600"}
	const heat = "SET_HEATER_TEMPERATURE HEATER=extruder TARGET="
	for _, c := range []struct {
		style string
		steps []string // "(…)" is done by hand
		why   string
	}{
		{"sections", append(flat, "PROBE_CALIBRATE", "TESTZ Z=-0.1", "ACCEPT"), "mm above the paper"},
		{"sections", []string{"PROBE_CALIBRATE"}, "not homed"},
		{"sections", []string{"G28", "Z_ENDSTOP_CALIBRATE"}, "unknown command"},
		{"sections", []string{"PID_CALIBRATE HEATER=extruder TARGET=220", "SAVE_CONFIG"}, "hot.cfg"},
		{"sections", []string{"PID_CALIBRATE HEATER=extruder TARGET=220", "RESTART"}, "forgets"},
		{"sections", []string{"PID_CALIBRATE HEATER=extruder TARGET=220", "(Power off.)"}, "forgets"},
		{"sections", []string{"PID_CALIBRATE HEATER=extruder TARGET=250"}, "close to max_temp"},
		{"sections", []string{"SAVE_CONFIG"}, "nothing to save"},
		{"sections", []string{heat + "251"}, "max_temp"},
		{"sections", []string{"SET_HEATER_TEMPERATURE HEATER=Extruder TARGET=200"}, "no heater"},
		{"sections", []string{heat + "200", "TEMPERATURE_WAIT SENSOR=extruder MINIMUM=195", "M83",
			"G1 E50 F100"}, "too long"},
		{"sections", []string{heat + "200", "M83", "G1 E45 F100"}, "too cold"},
		{"sections", []string{"M83", "G1 E45 F100"}, "too cold"},
		{"sections", []string{"T1"}, "unknown command"},
		{"sections", []string{"G28", heat + "200"}, "heats up"},
		{"sections", append(flat, heat+"200", "PROBE_CALIBRATE"), "heater on"},
		{"sections", []string{"(Power off. Unplug the heater)", heat + "100"}, "stopped by"},
		{"sections", []string{"(Power off. Unplug the heater)", "FIRMWARE_RESTART", heat + "100", "RESTART",
			heat + "0"}, "stopped by"},
		{"sections", append(flat, "PROBE_CALIBRATE", "TESTZ Z=-7", "ACCEPT", "SAVE_CONFIG", "G28"),
			"drawn over the bed"},
		{"sections", []string{"G28", "G90", "G1 Z-0.3 F60"}, "strikes"},
		{"sections", []string{heat + "200", "(end)"}, "left on"},
		{"defines", []string{"M303 E0 S220 C8", "M500"}, "tuned gains are not in force"},
		{"defines", []string{"M303 E0 S220 C8", "(Power off.)"}, "forgets"},
		{"defines", []string{"M303 E0 S220 C2"}, "at least 3"},
		{"defines", []string{"M303 E1 S220 C8"}, "no hotend 1"},
		{"defines", []string{"M104 T0 S261"}, "above 260"},
		{"defines", []string{"M502"}, "nobody copied"},
		{"defines", []string{"M503", "M502", "(Power off.)"}, "forgets"},
		{"defines", []string{"M851 Z0"}, "no probe"},
		{"defines", []string{"G28", "G91", "G1 Z-20 F60"}, "limit"},
		{"defines", append(flat, "M211 S0", "G91", "(end)"), "limits are left off"},
		{"defines", []string{"M306 E0 T"}, "no model"},
		{"defines", []string{"M104 S200", "M83", "G1 E45 F100"}, "too cold"},
		{"defines", []string{"M109 S200", "G1 E45 F100"}, "not relative"},
		{"defines", []string{"(Power off. Unplug the heater)", "M104 S100", "M104 S0"}, "stopped by"},
	} {
		var con console
		if c.style == "sections" {
			con = newSectionsConsole(t, filepath.Join(dir, "printer.cfg"), 0, 0)
		} else {
			con = newDefinesConsole(t, []string{filepath.Join(dir, "Configuration.h")}, 0, 0)
		}
		var err error
		for _, s := range c.steps {
			if hand, ok := strings.CutPrefix(s, "("); ok && hand == "end)" {
				err = con.end()
			} else if ok {
				err = con.by(hand)
			} else {
				err = con.enter(s)
			}
			if err != nil {
				break
			}
		}
		if err == nil || !strings.Contains(err.Error(), c.why) {
			t.Errorf("%s %q: %v, want %q", c.style, c.steps, err, c.why)
		}
	}
}

func consoleOf(t *testing.T, in *rules.Input) console {
	shift, tool := in.Sheet.New.Nozzle.TipShiftMM.Value, int(in.Sheet.Printer.Tool.Value)
	var files []string
	for _, k := range in.Sheet.Printer.Config {
		files = append(files, filepath.Join("../../../testdata", k.Value))
	}
	if in.Printer.Style == "sections" {
		return newSectionsConsole(t, files[0], shift, tool)
	}
	c := newDefinesConsole(t, files, shift, tool)
	c.saysProbe = in.Sheet.Printer.ZReference.Value == "probe"
	return c
}

// arguments splits a command line: KEY=value for the longer commands, letter and
// figure for the short ones. A figure that is to be filled in stays as it is
// printed.
func arguments(line string) (name string, args map[string]string) {
	var filled []string
	words := strings.Fields(fillIn.ReplaceAllStringFunc(line, func(text string) string {
		filled = append(filled, text)
		return "<>"
	}))
	args = map[string]string{}
	for _, w := range words[1:] {
		key, value, ok := strings.Cut(w, "=")
		if !ok {
			key, value = w[:1], w[1:]
		}
		if value == "<>" {
			value, filled = filled[0], filled[1:]
		}
		args[key] = value
	}
	return words[0], args
}

// only refuses an argument that a command does not know, or lacks one that it
// needs: those in capitals are needed, in "Z E? ?F" a ? goes before one that is
// not.
func only(args map[string]string, known string) error {
	allowed := map[string]bool{}
	for _, k := range strings.Fields(known) {
		name, optional := strings.CutPrefix(k, "?")
		allowed[name] = true
		if _, given := args[name]; !given && !optional {
			return fmt.Errorf("it lacks %s", name)
		}
	}
	for name := range args {
		if !allowed[name] {
			return fmt.Errorf("it knows no %s", name)
		}
	}
	return nil
}

func figureOf(text string) float64 {
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return math.NaN()
	}
	return x
}
