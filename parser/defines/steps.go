package defines

import (
	"math"
	"strconv"

	"preflash/parser"
)

// Steps returns the console commands of a task. Texts in angle brackets are
// for the person to fill in.
func (*config) Steps(task parser.Task) []string {
	e, temp := " E"+strconv.Itoa(task.Tool), " S"+decimal(task.TempC)
	tool := " T" + strconv.Itoa(task.Tool)
	switch task.Kind {
	case parser.TaskResetStored:
		return []string{"M502", "M500"}
	case parser.TaskSaveStored:
		return []string{"M500"}
	case parser.TaskTune:
		return []string{"M303" + e + temp + " C8"}
	case parser.TaskSetGains:
		p, i, d := "<kp>", "<ki>", "<kd>"
		if task.Kp != 0 || task.Ki != 0 || task.Kd != 0 {
			p, i, d = decimal(task.Kp), decimal(task.Ki), decimal(task.Kd)
		}
		return []string{"M301" + e + " P" + p + " I" + i + " D" + d}
	case parser.TaskReplaceTrigger:
		// With an offset of 0 and the lower limit off, the nozzle is brought
		// down by hand until paper drags; the height shown is the new offset.
		return []string{"M851 Z0", "G28", "M211 S0", "M114", "M851 Z<the height shown when paper drags, negative>", "M211 S1", "M500"}
	case parser.TaskHeat:
		return []string{"M104" + tool + temp}
	case parser.TaskReport:
		return []string{"M105"}
	case parser.TaskHeatersOff:
		return []string{"M104" + tool + " S0", "M140 S0"}
	case parser.TaskShowStored:
		return []string{"M503"}
	case parser.TaskTuneModel:
		return []string{"M306" + e + " T"} // it chooses its own temperatures
	case parser.TaskExtrude:
		// Relative lengths; the speed is in mm/min.
		return []string{"T" + strconv.Itoa(task.Tool), "M83", "G1 E" + decimal(task.LengthMM) + " F" + decimal(math.Round(60*task.SpeedMMS))}
	}
	return nil
}

// decimal writes a figure in the shortest way that keeps it, without exponent.
func decimal(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
