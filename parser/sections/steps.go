package sections

import (
	"math"
	"strconv"

	"preflash/parser"
)

// Steps returns the console commands of a task. This firmware keeps nothing
// apart from its files, so there is nothing to reset; gains take effect when
// they are saved or written in the file, so none are set at the console.
func (*config) Steps(task parser.Task) []string {
	heater := " HEATER=" + hotendName(task.Tool)
	target := " TARGET=" + strconv.FormatFloat(task.TempC, 'f', -1, 64)
	switch task.Kind {
	case parser.TaskSaveStored:
		return []string{"SAVE_CONFIG"}
	case parser.TaskTune:
		return []string{"PID_CALIBRATE" + heater + target, "SAVE_CONFIG"}
	case parser.TaskReplaceTrigger:
		return []string{"G28", "PROBE_CALIBRATE", "TESTZ Z=-0.1", "ACCEPT", "SAVE_CONFIG"}
	case parser.TaskHeat:
		return []string{"SET_HEATER_TEMPERATURE" + heater + target}
	case parser.TaskReport:
		return []string{"M105"}
	case parser.TaskHeatersOff:
		return []string{"TURN_OFF_HEATERS"}
	case parser.TaskRestart:
		return []string{"FIRMWARE_RESTART"}
	case parser.TaskTuneModel:
		return []string{"MPC_CALIBRATE" + heater, "SAVE_CONFIG"}
	case parser.TaskExtrude:
		// Relative lengths; the speed is in mm/min.
		return []string{"ACTIVATE_EXTRUDER EXTRUDER=" + hotendName(task.Tool), "M83",
			"G1 E" + strconv.FormatFloat(task.LengthMM, 'f', -1, 64) + " F" + strconv.FormatFloat(math.Round(60*task.SpeedMMS), 'f', -1, 64)}
	}
	return nil
}

// hotendName is the section of a hotend, and the name of its heater.
func hotendName(tool int) string {
	if tool == 0 {
		return "extruder"
	}
	return "extruder" + strconv.Itoa(tool)
}
