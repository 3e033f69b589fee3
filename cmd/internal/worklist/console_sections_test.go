package worklist_test

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// sectionsCommands are the console commands of the sections style and their
// arguments, as the style's firmware publishes them: extended commands take
// KEY=value, and T0, T1 exist only as macros. G0, G1, G90, M83 and MPC_CALIBRATE
// (of forks) are from memory.
var sectionsCommands = map[string]string{
	"M105": "", "M112": "", "M83": "", "G28": "", "G90": "", "G1": "?X ?Y ?Z ?E ?F",
	"TURN_OFF_HEATERS": "", "SET_HEATER_TEMPERATURE": "HEATER TARGET",
	"PID_CALIBRATE": "HEATER TARGET", "MPC_CALIBRATE": "HEATER", "SAVE_CONFIG": "", "RESTART": "",
	"FIRMWARE_RESTART":  "",
	"ACTIVATE_EXTRUDER": "EXTRUDER", "SET_GCODE_OFFSET": "Z",
	"PROBE_CALIBRATE": "", "Z_ENDSTOP_CALIBRATE": "", "MANUAL_PROBE": "", "DELTA_CALIBRATE": "?METHOD",
	"PROBE_EDDY_CURRENT_CALIBRATE": "CHIP",
	"TESTZ":                        "Z", "ACCEPT": "", "ABORT": "",
}

// sectionsConsole is a printer of the sections style.
type sectionsConsole struct {
	options map[string]map[string]string // in force, by section
	written map[string]string            // section.option → the file that has it by hand
	main    string
	shift   float64 // the new tip is so much lower, mm

	homed, relativeE bool
	targets          map[string]float64
	z                float64
	tool             string            // the manual tool that is open, "" for none
	start            float64           // where it was opened
	pending          map[string]string // section.option → what set it
}

func newSectionsConsole(t *testing.T, main string, shift float64) *sectionsConsole {
	t.Helper()
	c := &sectionsConsole{options: map[string]map[string]string{}, written: map[string]string{},
		main: main, shift: shift}
	c.read(t, main)
	c.powerOn()
	return c
}

// read is a plain reader that is enough for the files in testdata.
func (c *sectionsConsole) read(t *testing.T, name string) {
	data, err := os.ReadFile(name)
	if err != nil {
		return // one that the sheet calls absent
	}
	section, saved := "", false
	for _, line := range strings.Split(strings.ReplaceAll(string(data), "\r", ""), "\n") {
		if text, ok := strings.CutPrefix(line, "#*# "); ok {
			line, saved = text, true
		}
		line, _, _ = strings.Cut(line, "#")
		line, _, _ = strings.Cut(line, " ;")
		switch bare := strings.TrimSpace(line); {
		case bare == "" || line[0] == ';' || line[0] == ' ' || line[0] == '\t':
		case bare[0] == '[':
			section = strings.Trim(bare, "[]")
			if pattern, ok := strings.CutPrefix(section, "include "); ok {
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
			key := strings.ToLower(strings.TrimSpace(bare[:at]))
			if _, byHand := c.written[section+"."+key]; saved && byHand {
				continue
			}
			c.options[section][key] = strings.TrimSpace(bare[at+1:])
			if !saved {
				c.written[section+"."+key] = name
			}
		}
	}
}

func (c *sectionsConsole) powerOn() {
	c.homed, c.relativeE, c.tool, c.z = false, false, "", 100
	c.targets, c.pending = map[string]float64{}, map[string]string{}
}

func (c *sectionsConsole) byHand() { c.pending = map[string]string{} }

func (c *sectionsConsole) unsaved() string {
	for name, by := range c.pending {
		return name + " of " + by
	}
	return ""
}

// above is the way to the paper: the old height was 0 there.
func (c *sectionsConsole) above() float64 { return c.z - c.shift }

func (c *sectionsConsole) probe() string {
	for name := range c.options {
		switch kind, _, _ := strings.Cut(name, " "); kind {
		case "probe", "bltouch", "smart_effector", "load_cell_probe":
			return name
		}
	}
	return ""
}

func (c *sectionsConsole) number(section, option string, usual float64) float64 {
	if text, ok := c.options[section][option]; ok {
		return figureOf(text)
	}
	return usual
}

func (c *sectionsConsole) lowest() float64 {
	if c.options["printer"]["kinematics"] == "delta" {
		return c.number("printer", "minimum_z_position", 0)
	}
	return c.number("stepper_z", "position_min", 0)
}

func (c *sectionsConsole) enter(line string) error {
	name, args := arguments(line)
	for section := range c.options {
		if strings.EqualFold(section, "gcode_macro "+name) {
			if !c.homed {
				return fmt.Errorf("not homed")
			}
			return nil
		}
	}
	known, ok := sectionsCommands[name]
	if !ok {
		return fmt.Errorf("unknown command")
	}
	if err := only(args, known); err != nil {
		return err
	}
	if heater, ok := args["HEATER"]; ok && c.options[heater]["heater_pin"] == "" &&
		c.options[heater]["max_temp"] == "" {
		return fmt.Errorf("no heater %s", heater)
	}
	if c.tool != "" && !slices.Contains([]string{"TESTZ", "ACCEPT", "ABORT"}, name) {
		return fmt.Errorf("%s is still open", c.tool)
	}
	switch name {
	case "G28":
		c.homed, c.z = true, 10
	case "M83":
		c.relativeE = true
	case "TURN_OFF_HEATERS":
		c.targets = map[string]float64{}
	case "RESTART", "FIRMWARE_RESTART":
		if len(c.pending) > 0 && name == "FIRMWARE_RESTART" {
			return fmt.Errorf("it forgets %s", c.unsaved())
		}
		c.powerOn()
	case "SET_HEATER_TEMPERATURE", "PID_CALIBRATE":
		heater, target := args["HEATER"], figureOf(args["TARGET"])
		if low, high := c.number(heater, "min_temp", 0), c.number(heater, "max_temp", 0); target != 0 &&
			!(target >= low && target <= high) {
			return fmt.Errorf("%g is not within min_temp and max_temp", target)
		}
		c.targets[heater] = target
		if name == "PID_CALIBRATE" {
			c.targets[heater] = 0
			for _, o := range []string{"control", "pid_kp", "pid_ki", "pid_kd"} {
				c.pending[heater+"."+o] = name
			}
		}
	case "MPC_CALIBRATE":
		if c.options[args["HEATER"]]["control"] != "mpc" {
			return fmt.Errorf("no model")
		}
		c.pending[args["HEATER"]+".control"] = name
	case "ACTIVATE_EXTRUDER":
		if c.options[args["EXTRUDER"]] == nil {
			return fmt.Errorf("no extruder %s", args["EXTRUDER"])
		}
	case "SAVE_CONFIG":
		if len(c.pending) == 0 {
			return fmt.Errorf("nothing to save, so it does nothing")
		}
		for option := range c.pending {
			if file := c.written[option]; file != "" && file != c.main {
				return fmt.Errorf("%s is written in %s", option, file)
			}
		}
		c.powerOn()
	case "G1":
		return c.move(args)
	default:
		return c.paper(name, args)
	}
	return nil
}

func (c *sectionsConsole) move(args map[string]string) error {
	if e, ok := args["E"]; ok {
		length, longest, hot := figureOf(e), 0.0, false
		for section, options := range c.options {
			if strings.HasPrefix(section, "extruder") &&
				c.targets[section] >= c.number(section, "min_extrude_temp", 170) {
				hot, longest = true, c.number(section, "max_extrude_only_distance", 50)
				_ = options
			}
		}
		switch {
		case !c.relativeE:
			return fmt.Errorf("lengths are not relative")
		case !hot:
			return fmt.Errorf("too cold to extrude")
		case !(length < longest): // at the limit rounding may refuse it
			return fmt.Errorf("%g mm is too long", length)
		}
		return nil
	}
	if !c.homed {
		return fmt.Errorf("not homed")
	}
	if z, ok := args["Z"]; ok {
		c.z = figureOf(z)
	}
	if c.above() < -0.15 {
		return fmt.Errorf("the nozzle strikes the bed")
	}
	return nil
}

// paper is the manual tool.
func (c *sectionsConsole) paper(name string, args map[string]string) error {
	open := func() error {
		if !c.homed {
			return fmt.Errorf("not homed")
		}
		c.tool, c.start = name, c.z
		return nil
	}
	delta := c.options["printer"]["kinematics"] == "delta"
	switch name {
	case "PROBE_CALIBRATE":
		if c.probe() == "" {
			return fmt.Errorf("unknown command")
		}
		offset := c.number(c.probe(), "z_offset", 0)
		c.z = c.shift + offset - c.shift + 5 - offset // 5 mm above 0
		return open()
	case "Z_ENDSTOP_CALIBRATE":
		if c.written["stepper_z.position_endstop"] == "" || delta {
			return fmt.Errorf("unknown command")
		}
		return open()
	case "DELTA_CALIBRATE":
		if c.options["delta_calibrate"] == nil || !delta {
			return fmt.Errorf("unknown command")
		}
		return open()
	case "MANUAL_PROBE":
		return open()
	case "TESTZ":
		if c.tool == "" {
			return fmt.Errorf("no tool is open")
		}
		if c.z += figureOf(args["Z"]); math.IsNaN(c.z) || c.z < c.lowest() {
			return fmt.Errorf("out of range below %g: the tool ends", c.lowest())
		}
	case "ABORT":
		c.tool = ""
	case "ACCEPT":
		switch {
		case c.tool == "":
			return fmt.Errorf("no tool is open")
		case c.z >= c.start:
			return fmt.Errorf("the nozzle is not below its start")
		case c.above() > 0.15:
			return fmt.Errorf("the nozzle is %.1f mm above the paper, and the firmware does not notice", c.above())
		}
		for _, o := range map[string][]string{
			"PROBE_CALIBRATE":     {c.probe() + ".z_offset"},
			"Z_ENDSTOP_CALIBRATE": {"stepper_z.position_endstop"},
			"DELTA_CALIBRATE": {"printer.delta_radius", "stepper_a.position_endstop",
				"stepper_b.position_endstop", "stepper_c.position_endstop"},
		}[c.tool] {
			c.pending[o] = c.tool
		}
		c.tool = ""
	}
	return nil
}
