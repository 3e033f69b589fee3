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
// firmware publishes, written without the steps. It starts anew where the power
// goes off, and keeps what is saved.
type console interface {
	// enter runs one command, and says why the printer refuses it, or why it does
	// not do what it is there for.
	enter(line string) error
	powerOn()
	// above is how far the nozzle is from the paper, mm.
	above() float64
	// unsaved says what was measured and not kept.
	unsaved() string
}

var fillIn = regexp.MustCompile(`<[^>]*>`)

// work goes through a list as a person does: every step in order, those that are
// to be repeated until the paper is reached.
func work(t *testing.T, c console, list *worklist.List) (commands int) {
	t.Helper()
	for _, s := range list.Sections {
		for _, item := range s.Items {
			if strings.Contains(item.Do, "ower off") || strings.Contains(item.Do, "flash.") ||
				strings.Contains(item.Do, "switch the power off") && len(item.Steps) == 0 {
				c.powerOn()
			}
			again := func() bool { return false }
			if strings.Contains(item.Do, "again and again") {
				far := 0.0
				if strings.Contains(item.Do, "close to the paper") {
					far = 1.5
				}
				again = func() bool { return c.above() > far }
			}
			for _, step := range item.Steps {
				for n := 0; n == 0 || again(); n++ {
					commands++
					if err := c.enter(step); err != nil {
						t.Errorf("%s: %s: %s: %v", s.Title, item.Do, step, err)
						return commands
					}
					if n > 400 {
						t.Errorf("%s: %s does not get to the paper", s.Title, step)
						return commands
					}
				}
			}
			if strings.Contains(item.Do, "by hand") && strings.Contains(item.Do, "over the old ones") {
				if hand, ok := c.(interface{ byHand() }); ok {
					hand.byHand()
				}
			}
			if strings.Contains(item.Do, "switch the power off") {
				c.powerOn()
			}
		}
	}
	if left := c.unsaved(); left != "" {
		t.Errorf("at the end %s is not saved", left)
	}
	return commands
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
				if n < 10 && len(list.Sections) > 3 { // where the sensor is not known nothing is entered
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
			if n := work(t, newDefinesConsole(t, []string{in.Printer.Files[0].Name}, shift),
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
	write("Configuration.h", "#define EXTRUDERS 1\n#define TEMP_SENSOR_0 1\n#define HEATER_0_MAXTEMP 275\n"+
		"#define PIDTEMP\n#define EEPROM_SETTINGS\n")
	for _, c := range []struct {
		style string
		steps []string
		why   string
	}{
		{"sections", []string{"G28", "PROBE_CALIBRATE", "TESTZ Z=-0.1", "ACCEPT"}, "4.9 mm above the paper"},
		{"sections", []string{"PROBE_CALIBRATE"}, "not homed"},
		{"sections", []string{"G28", "Z_ENDSTOP_CALIBRATE"}, "unknown command"},
		{"sections", []string{"PID_CALIBRATE HEATER=extruder TARGET=220", "SAVE_CONFIG"}, "hot.cfg"},
		{"sections", []string{"SAVE_CONFIG"}, "nothing to save"},
		{"sections", []string{"SET_HEATER_TEMPERATURE HEATER=extruder TARGET=251"}, "max_temp"},
		{"sections", []string{"SET_HEATER_TEMPERATURE HEATER=Extruder TARGET=200"}, "no heater"},
		{"sections", []string{"SET_HEATER_TEMPERATURE HEATER=extruder TARGET=200", "M83", "G1 E50 F100"},
			"too long"},
		{"sections", []string{"M83", "G1 E45 F100"}, "too cold"},
		{"sections", []string{"T1"}, "unknown command"},
		{"defines", []string{"M303 E0 S220 C8", "M500"}, "tuned gains are not in force"},
		{"defines", []string{"M303 E1 S220 C8"}, "no hotend 1"},
		{"defines", []string{"M851 Z0"}, "no probe"},
		{"defines", []string{"G28", "G91", "G1 Z-20 F60"}, "limit"},
		{"defines", []string{"M306 E0 T"}, "no model"},
	} {
		var con console
		if c.style == "sections" {
			con = newSectionsConsole(t, filepath.Join(dir, "printer.cfg"), 0)
		} else {
			con = newDefinesConsole(t, []string{filepath.Join(dir, "Configuration.h")}, 0)
		}
		var err error
		for _, s := range c.steps {
			if err = con.enter(s); err != nil {
				break
			}
		}
		if err == nil || !strings.Contains(err.Error(), c.why) {
			t.Errorf("%s %q: %v, want %q", c.style, c.steps, err, c.why)
		}
	}
}

func consoleOf(t *testing.T, in *rules.Input) console {
	shift := in.Sheet.New.Nozzle.TipShiftMM.Value
	var files []string
	for _, k := range in.Sheet.Printer.Config {
		files = append(files, filepath.Join("../../../testdata", k.Value))
	}
	if in.Printer.Style == "sections" {
		return newSectionsConsole(t, files[0], shift)
	}
	return newDefinesConsole(t, files, shift)
}

// arguments splits a command line: KEY=value for the longer commands, letter and
// figure for the short ones.
func arguments(line string) (name string, args map[string]string) {
	words := strings.Fields(fillIn.ReplaceAllString(line, "FILL"))
	args = map[string]string{}
	for _, w := range words[1:] {
		if key, value, ok := strings.Cut(w, "="); ok {
			args[key] = value
		} else {
			args[w[:1]] = w[1:]
		}
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
