package sections

import (
	"strings"
	"testing"

	"preflash/parser"
)

func TestSteps(t *testing.T) {
	for _, test := range []struct {
		task parser.Task
		want string
	}{
		{parser.Task{Kind: parser.TaskResetStored}, ""},
		{parser.Task{Kind: parser.TaskSetGains, Kp: 1}, ""},
		{parser.Task{Kind: parser.TaskSaveStored}, "SAVE_CONFIG"},
		{parser.Task{Kind: parser.TaskHeat, TempC: 212.5}, "SET_HEATER_TEMPERATURE HEATER=extruder TARGET=212.5"},
		{parser.Task{Kind: parser.TaskHeat, Tool: 2, TempC: 200}, "SET_HEATER_TEMPERATURE HEATER=extruder2 TARGET=200"},
		{parser.Task{Kind: parser.TaskReplaceTrigger}, "G28 | PROBE_CALIBRATE | TESTZ Z=-0.1 | ACCEPT | SAVE_CONFIG"},
		{parser.Task{Kind: parser.TaskReport}, "M105"},
		{parser.Task{Kind: parser.TaskHeatersOff}, "TURN_OFF_HEATERS"},
		{parser.Task{Kind: parser.TaskExtrude, Tool: 1, LengthMM: 50, SpeedMMS: 2.5}, "ACTIVATE_EXTRUDER EXTRUDER=extruder1 | M83 | G1 E50 F150"},
	} {
		if got := strings.Join(Style.Blank().Steps(test.task), " | "); got != test.want {
			t.Errorf("%+v: %s, want %s", test.task, got, test.want)
		}
	}
}
