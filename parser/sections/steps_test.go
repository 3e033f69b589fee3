package sections

import (
	"path"
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
		{parser.Task{Kind: parser.TaskHeat, TempC: 212.5},
			"SET_HEATER_TEMPERATURE HEATER=extruder TARGET=212.5"},
		{parser.Task{Kind: parser.TaskHeat, Tool: 2, TempC: 200},
			"SET_HEATER_TEMPERATURE HEATER=extruder2 TARGET=200"},
		{parser.Task{Kind: parser.TaskReport}, "M105"},
		{parser.Task{Kind: parser.TaskHeatersOff}, "TURN_OFF_HEATERS"},
		{parser.Task{Kind: parser.TaskSelect}, ""},
		{parser.Task{Kind: parser.TaskExtrude, LengthMM: 45, SpeedMMS: 2.5}, "M83 | G1 E45 F150"},
	} {
		if got := strings.Join(Style.Blank().Steps(test.task), " | "); got != test.want {
			t.Errorf("%+v: %s, want %s", test.task, got, test.want)
		}
	}
}

const twoTools = `[printer]
kinematics: corexy
[stepper_x]
position_max: 200
[stepper_y]
position_min: -10
position_max: 210
[stepper_z]
endstop_pin: probe:z_virtual_endstop
[probe]
z_offset: 1.2
[extruder]
control: pid
pid_kp: 20
[extruder1]
control: pid
`

func TestStepsOfAConfiguration(t *testing.T) {
	paper := func(figure parser.Key) parser.Task {
		return parser.Task{Kind: parser.TaskBeginPaper, Figure: figure}
	}
	const over = "G90 | G1 Z10 F600 | G1 X100 Y100 F3000 | "
	for _, test := range []struct {
		name, more string
		task       parser.Task
		want       string
	}{
		{"no macro", "", parser.Task{Kind: parser.TaskSelect, Tool: 1},
			"ACTIVATE_EXTRUDER EXTRUDER=extruder1"},
		{"a macro, as it is written", "[gcode_macro t1]\ngcode:\n  M105\n",
			parser.Task{Kind: parser.TaskSelect, Tool: 1}, "t1"},
		{"a tool by itself", "", parser.Task{Kind: parser.TaskSelectBare, Tool: 1},
			"ACTIVATE_EXTRUDER EXTRUDER=extruder1 | SET_GCODE_OFFSET Z=0"},
		{"a height to cross at", "", parser.Task{Kind: parser.TaskBeginPaper, LengthMM: 40},
			"G90 | G1 Z40 F600 | G1 X100 Y100 F3000 | MANUAL_PROBE"},
		{"a probe", "", paper(parser.ProbeTrigger), over + "PROBE_CALIBRATE"},
		{"no switch", "", paper(parser.Endstop("")), over + "MANUAL_PROBE"},
		{"a switch", "[stepper_z]\nposition_endstop: 0.4\n",
			paper(parser.Endstop("")), over + "Z_ENDSTOP_CALIBRATE"},
		{"a coil", "[probe_eddy_current Coil]\nz_offset: 2\n",
			paper(parser.ProbeTrigger), over + "PROBE_CALIBRATE"},
		{"towers that calibrate", "[delta_calibrate]\nradius: 80\n",
			paper(parser.TowerHeight), over + "DELTA_CALIBRATE METHOD=manual"},
		{"towers that do not", "", paper(parser.TowerHeight), over + "MANUAL_PROBE"},
	} {
		c := readFiles(t, files{"printer.cfg": twoTools + test.more})
		if got := strings.Join(c.Steps(test.task), " | "); got != test.want {
			t.Errorf("%s: %s, want %s", test.name, got, test.want)
		}
	}
}

// As the firmware publishes its saving: it comments out in the main file, and
// refuses all that it does not find there.
func TestKeep(t *testing.T) {
	const main = "[extruder]\ncontrol: pid\npid_kp: 20\npid_ki: 1\npid_kd: 100\n"
	saved := strings.Join(savedHeader[:], "\n") + "\n" + savedGain
	for _, test := range []struct {
		name  string
		files files
		want  string // files and values that are written by hand
	}{
		{"in the main file", files{"printer.cfg": main}, ""},
		{"nothing there yet", files{"printer.cfg": "[extruder]\nmin_temp: 0\n"}, ""},
		{"in the saved block", files{"printer.cfg": "[extruder]\nmin_temp: 0\n\n" + saved}, ""},
		{"in an included file", files{"printer.cfg": "[include hot.cfg]\n", "hot.cfg": main},
			"hot.cfg pid, hot.cfg 20, hot.cfg 1, hot.cfg 100"},
		{"control alone in an included file", files{
			"printer.cfg": "[include hot.cfg]\n\n" + saved, "hot.cfg": "[extruder]\ncontrol: pid\n",
		}, "hot.cfg pid"},
		{"one that hides another in the main file", files{
			"printer.cfg": "[include hot.cfg]\n" + main, "hot.cfg": "[extruder]\npid_kp: 7\n",
		}, "hot.cfg 7"},
		{"indented", files{"printer.cfg": "[extruder]\n  control: pid\n"}, "printer.cfg pid"},
		{"text behind the bracket", files{"printer.cfg": "[extruder] main\ncontrol: pid\n"},
			"printer.cfg pid"},
		{"a comment behind the bracket", files{"printer.cfg": "[extruder] # main\ncontrol: pid\n"}, ""},
		{"a comment after a ;", files{"printer.cfg": "[extruder] ; main\ncontrol: pid\n"}, ""},
	} {
		kept := readFiles(t, test.files).Keep(parser.GainP, parser.GainI, parser.GainD)
		var places []string
		for _, p := range kept.ByHand {
			places = append(places, path.Base(p.At.File.Name)+" "+p.Written)
		}
		steps, want := strings.Join(kept.Steps, ", "), "SAVE_CONFIG"
		if test.want != "" {
			want = "RESTART"
		}
		got := strings.Join(places, ", ")
		if got != test.want || steps != want || (kept.Why == "") != (test.want == "") {
			t.Errorf("%s: by hand %q, steps %s (%s); want %q, %s",
				test.name, got, steps, kept.Why, test.want, want)
		}
	}
}

func TestKeepWithADamagedBlock(t *testing.T) {
	kept := readText(t, "[extruder]\ncontrol: pid\n\n"+strings.Join(savedHeader[:], "\n")+
		"\n#*# [extruder]\nmine: 1\n").Keep(parser.GainP)
	if !strings.Contains(kept.Why, "damaged") || strings.Join(kept.Steps, "") != "RESTART" {
		t.Errorf("%+v", kept)
	}
}
