package sections

import (
	"math"
	"slices"
	"strconv"

	"preflash/parser"
)

// Steps returns the console commands of a task. This firmware keeps nothing
// apart from its files, so there is nothing to reset; gains take effect when
// they are saved or written in the file, so none are set at the console. Texts
// in angle brackets are for the person to fill in.
func (c *config) Steps(task parser.Task) []string {
	heater := " HEATER=" + c.heaterOf(hotendName(task.Tool))
	target := " TARGET=" + parser.Decimal(task.TempC)
	switch task.Kind {
	case parser.TaskTune:
		return []string{"PID_CALIBRATE" + heater + target}
	case parser.TaskTuneModel:
		return []string{"MPC_CALIBRATE" + heater}
	case parser.TaskHeat:
		return []string{"SET_HEATER_TEMPERATURE" + heater + target}
	case parser.TaskReport:
		return []string{"M105"}
	case parser.TaskHeatersOff:
		return []string{"TURN_OFF_HEATERS"}
	case parser.TaskRestart:
		return []string{"FIRMWARE_RESTART"}
	case parser.TaskSelect:
		return c.selects(task.Tool)
	case parser.TaskSelectBare: // the macro of a tool sets its distance
		return append(c.selects(task.Tool), "SET_GCODE_OFFSET Z=0")
	case parser.TaskExtrude:
		// Relative lengths; the speed is in mm/min.
		return []string{"M83",
			"G1 E" + parser.Decimal(task.LengthMM) + " F" + parser.Decimal(math.Round(60*task.SpeedMMS))}
	case parser.TaskHome:
		return []string{"G28"}
	case parser.TaskBeginPaper:
		return append(c.overBed(task.LengthMM), c.beginPaper(task.Figure)...)
	case parser.TaskLower:
		return []string{"TESTZ Z=-" + parser.Decimal(task.LengthMM)}
	case parser.TaskRaise:
		return []string{"G90", rise(task.LengthMM)}
	case parser.TaskEndPaper:
		if task.Figure == parser.TowerHeight {
			return []string{"ACCEPT"} // it may go to more points by itself, and homing goes up
		}
		return []string{"ACCEPT", rise(task.LengthMM)}
	case parser.TaskAbortPaper:
		return []string{"ABORT"}
	}
	return nil
}

// selects takes a tool: by its macro where there is one, which may fetch it, else
// by the firmware's own command, where there are several.
func (c *config) selects(tool int) []string {
	if macro := c.toolMacro(tool); macro != nil {
		return []string{macro.own}
	}
	if c.byName[hotendName(1)] == nil {
		return nil
	}
	return []string{"ACTIVATE_EXTRUDER EXTRUDER=" + hotendName(tool)}
}

// overBed moves over the middle of the bed, so far above it.
func (c *config) overBed(clearMM float64) []string {
	at := "X<middle of the bed> Y<middle of the bed>"
	if x, y, known := c.middle(); known {
		at = "X" + parser.Decimal(x) + " Y" + parser.Decimal(y)
	}
	return []string{"G90", rise(clearMM), "G1 " + at + " F3000"}
}

// rise moves so far above the bed.
func rise(clearMM float64) string {
	return "G1 Z" + parser.Decimal(max(clearMM, parser.LeastClearMM)) + " F600"
}

// beginPaper begins to measure a height with paper.
func (c *config) beginPaper(figure parser.Key) []string {
	switch figure {
	case parser.ProbeTrigger:
		probe := c.probe()
		switch {
		case probe == nil:
		case probe.kind == eddyProbe:
			return []string{"PROBE_EDDY_CURRENT_CALIBRATE CHIP=" + probe.own}
		default:
			return []string{"PROBE_CALIBRATE"}
		}
	case parser.Endstop(""):
		if o, _ := c.find("stepper_z", "position_endstop"); o != nil {
			return []string{"Z_ENDSTOP_CALIBRATE"}
		}
	case parser.TowerHeight:
		if c.byName["delta_calibrate"] != nil {
			return []string{"DELTA_CALIBRATE METHOD=manual"}
		}
	}
	return []string{"MANUAL_PROBE"}
}

// Keep says whether the firmware's own saving reaches the options that hold
// some figures. As it is published, it comments out hand-written ones in the
// main file, but refuses all where one stands in an included file, in an indented
// line, or under a header with text behind its bracket; and where the saved
// block is damaged.
func (c *config) Keep(keys ...parser.Key) parser.Keeping {
	var refused []parser.Place
	for _, at := range c.saves(keys) {
		s := c.byName[at.section]
		if s == nil {
			continue
		}
		list, sure := c.spelled(s, at.option)
		for _, i := range list {
			if o := &c.options[i]; !o.saved && (sure || isKey(c.keyOf(o), at.option)) && !c.commentsOut(o) {
				refused = append(refused, c.place(o))
			}
		}
	}
	if slices.Contains(keys, parser.TowerHeight) && c.byName["delta_calibrate"] == nil {
		return parser.Keeping{
			Steps: []string{"RESTART"}, ByHand: c.towerEnds(), Less: true,
			Why: "without [delta_calibrate] no command saves it",
		}
	}
	if len(refused) > 0 {
		why := "SAVE_CONFIG refuses to save them: the old ones stand where it does not write"
		if refused[0].At.File != c.main {
			why = "SAVE_CONFIG refuses to save them: the old ones stand in an included file"
		}
		return parser.Keeping{Steps: []string{"RESTART"}, ByHand: refused, Why: why}
	}
	for _, r := range c.remarks {
		if r.Kind == parser.RemarkSavedDamaged && r.At.File == c.main {
			return parser.Keeping{
				Steps: []string{"RESTART"}, ByHand: []parser.Place{{At: r.At}},
				Why: "SAVE_CONFIG refuses to save anything while the saved block is damaged: fix that first",
			}
		}
	}
	return parser.Keeping{Steps: []string{"SAVE_CONFIG"}}
}

// towerEnds is where the ends of the towers' travel are written.
func (c *config) towerEnds() (list []parser.Place) {
	for _, tower := range [...]string{"stepper_a", "stepper_b", "stepper_c"} {
		if o, _ := c.find(tower, "position_endstop"); o != nil {
			list = append(list, c.place(o))
		}
	}
	return list
}

type sectionOption struct{ section, option string }

// saves lists the options that a calibration of some settings writes, as the
// firmware publishes it.
func (c *config) saves(keys []parser.Key) (list []sectionOption) {
	heater := c.heaterOf(hotendName(c.tool))
	add := func(section string, options ...string) {
		for _, o := range options {
			list = append(list, sectionOption{section, o})
		}
	}
	for _, key := range keys {
		switch key {
		case parser.GainP:
			add(heater, "control", "pid_kp")
		case parser.GainI:
			add(heater, "pid_ki")
		case parser.GainD:
			add(heater, "pid_kd")
		case parser.ModelPower: // option names of forks; what they save was not read
			add(heater, "control", "block_heat_capacity",
				"sensor_responsiveness", "ambient_transfer", "fan_ambient_transfer")
		case parser.ProbeTrigger:
			if probe := c.probe(); probe != nil && probe.kind == eddyProbe {
				add(probe.name, "calibrate")
			} else if probe != nil {
				add(probe.name, "z_offset")
			}
		case parser.Endstop(""):
			add("stepper_z", "position_endstop")
		case parser.TowerHeight:
			add("printer", "delta_radius")
			for _, tower := range [...]string{"stepper_a", "stepper_b", "stepper_c"} {
				add(tower, "position_endstop", "angle", "arm_length")
			}
		}
	}
	return list
}

// commentsOut reports whether the firmware's saving finds a hand-written option.
func (c *config) commentsOut(o *option) bool {
	if o.file != c.main || o.key != o.line {
		return false
	}
	h := o.section.headers[o.heading]
	stop, _ := lineAt(h.file.Data, h.line)
	bracket := h.name + len(o.section.name) + 1
	return bracket > stop || len(clean(h.file.Data[bracket:stop]).text) == 0
}

// hotendName is the section of a hotend, and the name of its heater.
func hotendName(tool int) string {
	if tool == 0 {
		return "extruder"
	}
	return "extruder" + strconv.Itoa(tool)
}
