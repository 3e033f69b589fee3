package defines

import (
	"math"
	"slices"
	"strconv"

	"preflash/parser"
)

// Steps returns the console commands of a task. Texts in angle brackets are
// for the person to fill in.
func (c *config) Steps(task parser.Task) []string {
	e, temp := " E"+strconv.Itoa(c.hotendOf(task.Tool)), " S"+parser.Decimal(task.TempC)
	tool := " T" + strconv.Itoa(task.Tool)
	switch task.Kind {
	case parser.TaskResetStored:
		return []string{"M502", "M500"}
	case parser.TaskTune:
		return []string{"M303" + e + temp + " C8"}
	case parser.TaskSetGains:
		p, i, d := "<kp>", "<ki>", "<kd>"
		if task.Kp != 0 || task.Ki != 0 || task.Kd != 0 {
			p, i, d = parser.Decimal(task.Kp), parser.Decimal(task.Ki), parser.Decimal(task.Kd)
		}
		return []string{"M301" + e + " P" + p + " I" + i + " D" + d}
	case parser.TaskHeat:
		return []string{"M104" + tool + temp}
	case parser.TaskReport:
		return []string{"M105"}
	case parser.TaskHeatersOff:
		return []string{"M104" + tool + " S0", "M140 S0"}
	case parser.TaskShowStored:
		if c.on("DISABLE_M503") == parser.Yes {
			return nil
		}
		return []string{"M503"}
	case parser.TaskTuneModel:
		return []string{"M306" + e + " T"} // it chooses its own temperatures
	case parser.TaskSelect:
		return []string{"T" + strconv.Itoa(task.Tool)}
	case parser.TaskSelectBare:
		take := []string{"T" + strconv.Itoa(task.Tool)}
		if task.Tool == 0 {
			return take // the others are measured from it
		}
		return append([]string{"M218" + tool + " Z0"}, take...)
	case parser.TaskSetOffset: // that a nozzle which hangs lower is below 0 is from memory
		less := "less that of tool " + strconv.Itoa(task.Tool)
		return []string{"M218" + tool + " Z<the height of tool 0, " + less + ">"}
	case parser.TaskExtrude:
		// Relative lengths; the speed is in mm/min.
		return []string{"M83",
			"G1 E" + parser.Decimal(task.LengthMM) + " F" + parser.Decimal(math.Round(60*task.SpeedMMS))}
	}
	return c.paperSteps(task)
}

// hotendOf is the hotend of a tool: several tools may feed one.
func (c *config) hotendOf(tool int) int {
	if c.printer.Tool == tool && c.read() {
		return c.hotend
	}
	return tool
}

// read reports whether there are files that were read.
func (c *config) read() bool { return len(c.s.files) > 0 }

// paperSteps are those of the nozzle's height: what paper shows is the place of
// the nozzle. G28, G30, G90, G91, M114 and M211 are from memory.
func (c *config) paperSteps(task parser.Task) []string {
	probe := task.Figure == parser.ProbeTrigger
	switch task.Kind {
	case parser.TaskHome:
		return []string{"G28"}
	case parser.TaskRaise:
		return []string{"G90", rise(task.LengthMM)}
	case parser.TaskBeginPaper:
		// With an offset of 0 the height at which a probe that homes triggers is 0,
		// and the place at which the paper drags is the new offset. One that only
		// levels is made to probe: what it shows is taken off that place. The lower
		// limit is off, since that place may lie below 0.
		steps := []string{"G90", rise(task.LengthMM), "G1 " + c.middle() + " F3000", "M211 S0", "G91"}
		switch {
		case probe && c.probeHomes():
			steps = append([]string{"M851 Z0", "G28"}, steps...)
		case probe:
			steps = append([]string{"M851 Z0", "G90", rise(task.LengthMM), "G30 " + c.middle()}, steps...)
		}
		return steps
	case parser.TaskLower:
		return []string{"G1 Z-" + parser.Decimal(task.LengthMM) + " F60"}
	case parser.TaskEndPaper:
		steps := []string{"M114"}
		switch {
		case probe && c.probeHomes():
			steps = append(steps, "M851 Z<the Z that M114 shows>")
		case probe:
			steps = append(steps, "M851 Z<the Z that M114 shows, less the Z that G30 showed>")
		case task.Figure == parser.Endstop("") && c.homeOffset():
			steps = append(steps, "M206 Z<the Z that M114 shows, with the other sign>")
		}
		return append(steps, upAndOut...)
	case parser.TaskAbortPaper:
		return slices.Clone(upAndOut)
	}
	return nil
}

// rise moves so far above the bed.
func rise(clearMM float64) string {
	return "G1 Z" + parser.Decimal(max(clearMM, parser.LeastClearMM)) + " F600"
}

// upAndOut leaves the paper: up from where the nozzle is, which may be anywhere.
var upAndOut = []string{"G1 Z10 F600", "G90", "M211 S1"}

// probeHomes reports whether it is sure that Z homes by the probe.
func (c *config) probeHomes() bool {
	homes := &c.printer.Geometry.Homes
	return homes.Known() && homes.Value == parser.HomesByProbe
}

// homeOffset reports whether the console takes an offset of the homed place. That
// towers have none is from memory.
func (c *config) homeOffset() bool {
	return c.on("NO_HOME_OFFSETS") != parser.Yes && c.on("DELTA") != parser.Yes
}

// middle is the middle of the bed, as the coordinates of a move.
func (c *config) middle() string {
	if c.on("DELTA") == parser.Yes || c.on("BED_CENTER_AT_0_0") == parser.Yes {
		return "X0 Y0"
	}
	x, y := c.figure("X_BED_SIZE"), c.figure("Y_BED_SIZE")
	if x <= 0 || y <= 0 {
		return "X<middle of the bed> Y<middle of the bed>"
	}
	return "X" + parser.Decimal(x/2) + " Y" + parser.Decimal(y/2)
}

// on reports whether an option is on that is no setting.
func (c *config) on(name string) parser.Tri {
	if !c.read() {
		return parser.Maybe
	}
	return (&reader{s: c.s, gen: c.gen, basis: c.basis}).on(name)
}

// figure is the number that an option holds; 0 where it cannot be told.
func (c *config) figure(name string) float64 {
	if !c.read() {
		return 0
	}
	r := &reader{s: c.s, gen: c.gen, basis: c.basis}
	s := r.value(numberSpelling{names: []string{name}, absent: absentHidden})
	if !s.Known() {
		return 0
	}
	return s.Value
}

// Keep says how figures outlive a restart: in the firmware's own memory where it
// has one, and else in the files alone.
func (c *config) Keep(keys ...parser.Key) parser.Keeping {
	// That the place where it homed is the option's figure is from memory.
	height := slices.ContainsFunc(keys, func(k parser.Key) bool {
		return k == parser.Endstop("") || k == parser.TowerHeight
	})
	if on := &c.printer.Storage.On; on.State == parser.Off || on.State == parser.Set && !on.Value {
		return parser.Keeping{
			ByHand: c.heldIn(keys, height), Less: height,
			Why: "this firmware stores none, so they hold until the next start only",
		}
	}
	if height && !c.homeOffset() {
		return parser.Keeping{
			ByHand: c.heldIn(keys, height), Less: true,
			Why: "this firmware takes no home offset at the console",
		}
	}
	return parser.Keeping{Steps: []string{"M500"}}
}

// heldIn is where the files hold some settings, or the height at which Z homes.
func (c *config) heldIn(keys []parser.Key, height bool) (list []parser.Place) {
	if height {
		keys = []parser.Key{parser.Endstop("")}
	}
	for s := range c.printer.Settings() {
		for _, key := range keys {
			if s.Key == key && !s.At.IsZero() {
				list = append(list, s.Place)
			}
		}
	}
	return list
}

// decimal writes a figure in the shortest way that keeps it, without exponent.
