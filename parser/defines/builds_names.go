package defines

import (
	"strconv"
	"strings"

	"preflash/parser"
)

// refusedName is an option that was replaced, by the firmware of which basis it
// is refused, and what to do.
type refusedName struct {
	name string // # stands for the number of a hotend
	by   basis
	do   string
}

var refusedNames = [...]refusedName{
	{"K1", both, "call it PID_K1"},
	{"EXTRUDER_#_AUTO_FAN_PIN", both, "call it E#_AUTO_FAN_PIN"},
	{"ORIG_E#_AUTO_FAN_PIN", both, "call it E#_AUTO_FAN_PIN"},
	{"PID_PARAMS_PER_EXTRUDER", both, "call it PID_PARAMS_PER_HOTEND"},
	{"PID_ADD_EXTRUSION_RATE", both, "call it PID_EXTRUSION_SCALING"},
	{"PREVENT_DANGEROUS_EXTRUDE", both, "call it PREVENT_COLD_EXTRUSION"},
	{"PLA_PREHEAT_HOTEND_TEMP", both, "call it PREHEAT_1_TEMP_HOTEND"},
	{"ABS_PREHEAT_HOTEND_TEMP", both, "call it PREHEAT_2_TEMP_HOTEND"},
	{"EXTRUDER_OFFSET_X", both, "call it HOTEND_OFFSET_X"},
	{"EXTRUDER_OFFSET_Y", both, "call it HOTEND_OFFSET_Y"},
	{"X_PROBE_OFFSET_FROM_EXTRUDER", both, "write it into NOZZLE_TO_PROBE_OFFSET"},
	{"Y_PROBE_OFFSET_FROM_EXTRUDER", both, "write it into NOZZLE_TO_PROBE_OFFSET"},
	{"Z_PROBE_OFFSET_FROM_EXTRUDER", both, "write it into NOZZLE_TO_PROBE_OFFSET"},
	{"MAX31865_SENSOR_OHMS", both, "call it MAX31865_SENSOR_OHMS_0"},
	{"MAX31865_CALIBRATION_OHMS", both, "call it MAX31865_CALIBRATION_OHMS_0"},
	{"TEMP_SENSOR_1_AS_REDUNDANT", both, "describe the second sensor with TEMP_SENSOR_REDUNDANT"},
	{"MAX_REDUNDANT_TEMP_SENSOR_DIFF", both, "call it TEMP_SENSOR_REDUNDANT_MAX_DIFF"},
	{"FIL_RUNOUT_INVERTING", both, "say the level without filament with FIL_RUNOUT_STATE"},
	{"ADVANCE", both, "use LIN_ADVANCE"},
	{"LIN_ADVANCE_E_D_RATIO", both, "remove it"},
	{"DEFAULT_XYJERK", both, "write DEFAULT_XJERK and DEFAULT_YJERK"},
	{"EXTRUDER_WATTS", both, "remove it"},
	{"MILLISECONDS_PREHEAT_TIME", newer, "call it PREHEAT_TIME_HOTEND_MS"},
	{"NO_FAN_SLOWING_IN_PID_TUNING", newer, "call it TEMP_TUNING_MAINTAIN_FAN"},
	{"LIN_ADVANCE_K", newer, "call it ADVANCE_K"},
	{"EXTRA_LIN_ADVANCE_K", newer, "call it ADVANCE_K_EXTRA"},
	{"DISABLE_INACTIVE_EXTRUDER", newer, "call it DISABLE_OTHER_EXTRUDERS"},
	{"E#_MAX_CURRENT", newer, "call it E#_CURRENT"},
	{"FAN_PIN", newer, "call it FAN0_PIN"},
	{"NUM_Z_STEPPER_DRIVERS", newer, "define a driver type for each motor"},
	{"X_DUAL_STEPPER_DRIVERS", newer, "define X2_DRIVER_TYPE"},
	{"PID_OPENLOOP", newer, "remove it"},
}

// refused reports options in force that the firmware is sure to refuse.
func (r *reader) refused(broken func(parser.Span, string)) {
	for i := range refusedNames {
		n := &refusedNames[i]
		if !r.refuses(n.by) {
			continue
		}
		for index := range mostHotends {
			numbered := strings.NewReplacer("#", strconv.Itoa(index))
			name := numbered.Replace(n.name)
			if d := r.defined(name); d != nil {
				broken(d.at, name+" is no option any more; "+numbered.Replace(n.do))
			}
			if name == n.name {
				break // one for all hotends
			}
		}
	}
}
