package sections

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"preflash/parser"
)

// apply makes edits and gives the changed files. It demands what every list of
// edits must keep: sorted, none overlapping, inside its file.
func apply(t interface{ Fatalf(string, ...any) }, edits []parser.Edit) map[string][]byte {
	changed := map[string][]byte{}
	var last parser.Edit
	done := map[string]bool{}
	for _, e := range edits {
		f := e.At.File
		switch {
		case e.At.Start < 0 || e.At.Start > e.At.End || e.At.End > len(f.Data):
			t.Fatalf("an edit at %d to %d of %d bytes", e.At.Start, e.At.End, len(f.Data))
		case last.At.File == f && e.At.Start < last.At.End:
			t.Fatalf("edits overlap or are out of order: %v, %v", last, e)
		case last.At.File != f && done[f.Name]:
			t.Fatalf("the edits of %s are not together", f.Name)
		}
		if last.At.File != f {
			done[f.Name] = true
			changed[f.Name] = nil
			last = parser.Edit{At: parser.Span{File: f}}
		}
		changed[f.Name] = append(append(changed[f.Name], f.Data[last.At.End:e.At.Start]...), e.New...)
		last = e
	}
	for path := range changed {
		end := 0
		var file *parser.File
		for _, e := range edits {
			if e.At.File.Name == path {
				file, end = e.At.File, e.At.End
			}
		}
		changed[path] = append(changed[path], file.Data[end:]...)
	}
	return changed
}

// edited applies changes to a configuration of one file and gives its text.
func edited(t *testing.T, text string, changes ...parser.Change) string {
	t.Helper()
	c := readText(t, text)
	edits, err := c.Edits(changes)
	if err != nil {
		t.Fatal(err)
	}
	if len(edits) == 0 {
		return text
	}
	return string(apply(t, edits)[c.main.Name])
}

// definitionOf is the built-in definition of a curve.
func definitionOf(id string) parser.SensorDef {
	for _, d := range Style.Blank().Definitions() {
		if d.Curve == id {
			return d
		}
	}
	return parser.SensorDef{}
}

func num(key parser.Key, v float64) parser.Change { return parser.Change{Key: key, Value: v} }

// Only the bytes of the value change, and a new line looks like its
// neighbours.
func TestEdits(t *testing.T) {
	beta := parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, R25Ohm: 100e3, BetaK: 3990}
	points := parser.SensorDef{
		Form: parser.FormPoints, Kind: parser.NTC, Name: "short melt, bead",
		Points: []parser.SensorPoint{
			{TempC: 25, Ohm: 1e5}, {TempC: 150, Ohm: 1700.5}, {TempC: 250, Ohm: 230},
		},
	}
	curve := definitionOf
	lower := []parser.Change{num(parser.MaxTemp, 285)}
	for _, test := range []struct {
		name, text string
		changes    []parser.Change
		want       string
	}{
		{"a value, its comment stays", "[extruder]\nmax_temp:    300   # hot\n", lower,
			"[extruder]\nmax_temp:    285   # hot\n"},
		{"decimals stay", "[extruder]\nnozzle_diameter = 0.400 ; x\nmax_temp = 300.0\n",
			[]parser.Change{num(parser.NozzleDiameter, 0.6), num(parser.MaxTemp, 250)},
			"[extruder]\nnozzle_diameter = 0.600 ; x\nmax_temp = 250.0\n"},
		{"the winner is edited", "[extruder]\nmax_temp: 300\n[fan]\n[extruder]\nMax_Temp: 310\n", lower,
			"[extruder]\nmax_temp: 300\n[fan]\n[extruder]\nMax_Temp: 285\n"},
		{"a value on the next line", "[extruder]\nmax_temp:\n  300 ; c\nmin_temp: 0\n", lower,
			"[extruder]\nmax_temp:\n  285 ; c\nmin_temp: 0\n"},
		{"an empty value", "[extruder]\nmax_temp:\nmin_temp: 0\n", lower,
			"[extruder]\nmax_temp: 285\nmin_temp: 0\n"},
		{"an empty value before a comment", "[extruder]\nmax_temp:   # hot\nmin_temp: 0\n", lower,
			"[extruder]\nmax_temp: 285   # hot\nmin_temp: 0\n"},
		{"a new option beside its relative", `[extruder]
sensor_pin = a

# limits
min_temp = 0
max_temp = 300  ; c

step_pin = b
[fan]
`, []parser.Change{num(parser.PowerLimit("heater"), 0.9)},
			`[extruder]
sensor_pin = a
max_power = 0.9

# limits
min_temp = 0
max_temp = 300  ; c

step_pin = b
[fan]
`},
		{"aligned values stay aligned", "[extruder]\nsensor_pin:     a\ncontrol:        pid\n",
			[]parser.Change{num(parser.HotendPullup, 2200), num(parser.PowerLimit("heater"), 0.9)},
			`[extruder]
sensor_pin:     a
pullup_resistor: 2200
control:        pid
max_power:      0.9
`},
		{"no last newline", "[extruder]\r\nmin_temp=0\r\nmax_temp=300",
			[]parser.Change{num(parser.MinExtrude, 180), num(parser.PowerLimit("heater"), 0.5)},
			"[extruder]\r\nmin_temp=0\r\nmax_power=0.5\r\nmax_temp=300\r\nmin_extrude_temp=180"},
		{"an empty section without a last newline",
			"[extruder]", []parser.Change{num(parser.PowerLimit("heater"), 0.5)},
			"[extruder]\nmax_power: 0.5"},
		{"an indented section", "[fan]\n  pin: a\n [extruder]\n   min_temp: 0\n",
			[]parser.Change{num(parser.PowerLimit("heater"), 0.5)},
			"[fan]\n  pin: a\n [extruder]\n   min_temp: 0\n   max_power: 0.5\n"},
		{"a new section behind its heater, before the saved block",
			"[extruder]\nmax_temp: 300" + "\n" + savedHead + "#*# [extruder]\n#*# pid_kp = 1\n",
			[]parser.Change{num(parser.HotendErrorSum, 150), num(parser.HotendRiseWindow, 40)},
			"[extruder]\nmax_temp: 300\n\n[verify_heater extruder]\nmax_error: 150\ncheck_gain_time: 40\n" +
				savedHead + "#*# [extruder]\n#*# pid_kp = 1\n"},
		{"a new section at the end of a file without a last newline", "[heater_bed]\nmax_temp=100",
			[]parser.Change{num(parser.BedErrorSum, 150), num(parser.BedRiseWindow, 90)},
			"[heater_bed]\nmax_temp=100\n\n[verify_heater heater_bed]\nmax_error=150\ncheck_gain_time=90"},
		{"a value that only the saved block has",
			"[extruder]\nmin_temp = 0\n" + savedHead + "#*# [extruder]\n#*# max_temp = 300\n", lower,
			"[extruder]\nmin_temp = 0\nmax_temp = 285\n" + savedHead +
				"#*# [extruder]\n#*# max_temp = 300\n"},
		{"a value that every section inherits", "[DEFAULT]\nmax_power: 1\n[extruder]\nmin_temp: 0\n",
			[]parser.Change{num(parser.PowerLimit("heater"), 0.5)},
			"[DEFAULT]\nmax_power: 1\n[extruder]\nmin_temp: 0\nmax_power: 0.5\n"},
		{"a built-in sensor", "[extruder]\nsensor_type: NTC 100K beta 3950 # old\n",
			[]parser.Change{{Key: parser.HotendSensor, Value: curve("ntc-100k-3950")}},
			"[extruder]\nsensor_type: Generic 3950 # old\n"},
		{"a sensor section goes before its heater and its comments",
			"[fan]\npin: a\n\n# the hotend\n# of ours\n[extruder]\nsensor_type: Generic 3950\n",
			[]parser.Change{{Key: parser.HotendSensor, Value: points}},
			`[fan]
pin: a

[thermistor short_melt_bead]
temperature1: 25
resistance1: 100000
temperature2: 150
resistance2: 1700.5
temperature3: 250
resistance3: 230

# the hotend
# of ours
[extruder]
sensor_type: short_melt_bead
`},
		{"a sensor section never ends up in a macro",
			"[gcode_macro A]\ngcode:\n  G28\n  # c\n[extruder]\r\nsensor_type=Generic 3950\r\n",
			[]parser.Change{{Key: parser.HotendSensor, Value: beta}},
			"[gcode_macro A]\ngcode:\n  G28\n  # c\n[thermistor new_hotend_sensor]\ntemperature1=25\n" +
				"resistance1=100000\nbeta=3990\n\n[extruder]\r\nsensor_type=new_hotend_sensor\r\n"},
		{"a sensor section that is there already", `[thermistor new_hotend_sensor]
temperature1: 25
resistance1: 100000
beta: 3990
[extruder]
sensor_type: Generic 3950
`, []parser.Change{{Key: parser.HotendSensor, Value: beta}},
			`[thermistor new_hotend_sensor]
temperature1: 25
resistance1: 100000
beta: 3990
[extruder]
sensor_type: new_hotend_sensor
`},
		{"a name that is taken", `[thermistor new_hotend_sensor]
temperature1: 25
resistance1: 100000
beta: 3000
[extruder]
sensor_type: Generic 3950
`, []parser.Change{{Key: parser.HotendSensor, Value: beta}},
			`[thermistor new_hotend_sensor]
temperature1: 25
resistance1: 100000
beta: 3000
[thermistor new_hotend_sensor_2]
temperature1: 25
resistance1: 100000
beta: 3990

[extruder]
sensor_type: new_hotend_sensor_2
`},
		{"a preset", "[extruder]\n[gcode_macro A]\ngcode:\n  M104 S240 ; c\n  G28\n",
			[]parser.Change{num(parser.PresetOf(1, "A"), 220)},
			"[extruder]\n[gcode_macro A]\ngcode:\n  M104 S220 ; c\n  G28\n"},
		{"the cold guard", "[extruder]\nmin_temp: -100\nmin_extrude_temp: 0 # cold pulls\n",
			[]parser.Change{{Key: parser.ColdGuard, Value: true}},
			"[extruder]\nmin_temp: -100\nmin_extrude_temp: 170 # cold pulls\n"},
		{"a blind watch",
			"[extruder]\nmax_temp: 300\n[verify_heater extruder]\nmax_error: inf\nhysteresis: 999 # c\n",
			[]parser.Change{{Key: parser.HotendWatchOn, Value: true}},
			"[extruder]\nmax_temp: 300\n[verify_heater extruder]\nmax_error: 120\nhysteresis: 5 # c\n"},
		{"what is on already", "[extruder]\nmax_temp: 300\n", []parser.Change{
			{Key: parser.HotendWatchOn, Value: true}, {Key: parser.ColdGuard, Value: true},
			num(parser.MaxTemp, 300),
		}, "[extruder]\nmax_temp: 300\n"},
		{"a fan's power", "[extruder]\n[heater_fan f]\nfan_speed: 0.60\n",
			[]parser.Change{num(parser.FanPower, 1)}, "[extruder]\n[heater_fan f]\nfan_speed: 1.00\n"},
		{"a fan's power in two options",
			"[extruder]\n[heater_fan f]\nmax_power: 0.8\nfan_speed: 0.5\nshutdown_speed: 0\n",
			[]parser.Change{num(parser.FanPower, 1)},
			"[extruder]\n[heater_fan f]\nmax_power: 1.0\nfan_speed: 1.0\nshutdown_speed: 0\n"},
		{"a fan's power within its limit", "[extruder]\n[heater_fan f]\nmax_power: 0.8\nshutdown_speed: 0\n",
			[]parser.Change{num(parser.FanPower, 0.4)},
			"[extruder]\n[heater_fan f]\nmax_power: 0.8\nfan_speed: 0.5\nshutdown_speed: 0\n"},
		{"what a sensor leaves over", `[extruder]
sensor_type: Generic 3950
pullup_resistor: 2200
inline_resistor: 100 # c
  0
# own
max_temp: 300
Inline_Resistor: 1`, []parser.Change{{Key: parser.HotendSensor, Value: curve("pt1000")}},
			"[extruder]\nsensor_type: PT1000\npullup_resistor: 2200\n# own\nmax_temp: 300\n"},
		{"what a control leaves over", `[extruder]
control: pid
pid_kp: 1
pid_ki: 1
max_temp: 300
pid_kd: 1
[extruder]
pid_kp: 2
`, []parser.Change{
			num(parser.GainP, 3), {Key: parser.LoopControl, Value: parser.ControlOnOff}, num(parser.GainD, 3),
		}, "[extruder]\ncontrol: watermark\nmax_temp: 300\n[extruder]\n"},
		{"control", "[extruder]\ncontrol: watermark\n",
			[]parser.Change{{Key: parser.LoopControl, Value: parser.ControlPID}},
			"[extruder]\ncontrol: pid\n"},
		{"the same wish twice", "[extruder]\nmax_temp: 300\n", []parser.Change{
			num(parser.MaxTemp, 285), num(parser.MaxTemp, 285), num(parser.PowerLimit("heater"), 0.5),
			num(parser.PowerLimit("heater"), 0.5),
		}, "[extruder]\nmax_temp: 285\nmax_power: 0.5\n"},
	} {
		if got := edited(t, test.text, test.changes...); got != test.want {
			t.Errorf("%s:\ngot\n%s\nwant\n%s", test.name, got, test.want)
		}
	}
}

// What cannot be changed by an edit says why and where.
func TestEditsThatCannotBe(t *testing.T) {
	const text = "[extruder]\nmax_temp: 300\n[probe]\npin: a\n" + savedHead +
		"#*# [extruder]\n#*# control = pid\n#*# pid_kp = 20\n#*#\n#*# [probe]\n#*# z_offset = 1.5\n"
	for _, test := range []struct {
		change parser.Change
		line   int
		says   string
	}{
		{num(parser.GainP, 30), 11, "PID_CALIBRATE HEATER=extruder TARGET=220, then SAVE_CONFIG"},
		{parser.Change{Key: parser.LoopControl, Value: parser.ControlOnOff}, 10, "PID_CALIBRATE"},
		{num(parser.ProbeTrigger, 2), 14, "PROBE_CALIBRATE"},
		{parser.Change{Key: parser.HotendWatchOn, Value: false}, 1, "turns nothing off"},
		{num(parser.Margin, 15), 1, "no option of this style"},
		{parser.Change{Key: parser.MaxTemp, Value: "300"}, 2, "cannot be written"},
		{num("no such thing", 1), 0, "is not a setting"},
		{parser.Change{
			Key: parser.HotendSensor, Value: parser.SensorDef{Form: parser.FormPlaceholder, Name: "none"},
		}, 1, "no built-in type"},
		{parser.Change{
			Key:   parser.HotendSensor,
			Value: parser.SensorDef{Form: parser.FormBeta, R25Ohm: 1, BetaK: 1, CubicC: 1},
		}, 1, "three points"},
		{parser.Change{
			Key: parser.HotendSensor, Value: parser.SensorDef{Form: parser.FormCurve, Curve: "pt100"},
		}, 1, "no built-in type “pt100”"},
		{parser.Change{Key: parser.BedHeated, Value: true}, 1, "what is wired"},
	} {
		_, err := readText(t, text).Edits([]parser.Change{test.change})
		var e *parser.Error
		if !errors.As(err, &e) || e.Line != test.line || !strings.Contains(e.Message, test.says) {
			t.Errorf("%v: %v; want line %d, %q", test.change, err, test.line, test.says)
		}
	}
	for _, changes := range [][]parser.Change{
		{num(parser.MaxTemp, 1), num(parser.MaxTemp, 2)},
		{num(parser.PowerLimit("heater"), 1), num(parser.PowerLimit("heater"), 2)},
	} {
		if _, err := readText(t, text).Edits(changes); err == nil ||
			!strings.Contains(err.Error(), "at the same time") {
			t.Errorf("%v: %v", changes, err)
		}
	}
}

func ExampleStyle() {
	fmt.Println(Style.Blank().Steps(parser.Task{Kind: parser.TaskTune, Tool: 1, TempC: 220}))
	// Output: [PID_CALIBRATE HEATER=extruder1 TARGET=220]
}

// Two sections that go to one place stay whole, in whatever order their options
// are asked for.
func TestEditsKeepNewSectionsWhole(t *testing.T) {
	got := edited(t, "[extruder]\nsensor_type: Generic 3950\n[heater_bed]\nsensor_type: Generic 3950\n",
		num(parser.HotendHysteresis, 4),
		parser.Change{Key: parser.BedSensor, Value: parser.SensorDef{
			Form: parser.FormPoints, Kind: parser.Platinum, Name: "own", Join: parser.JoinOhm,
			Points: []parser.SensorPoint{{TempC: 0, Ohm: 500}, {TempC: 100, Ohm: 692.5}},
		}},
		num(parser.HotendErrorSum, 100))
	if !strings.Contains(got, "[verify_heater extruder]\nhysteresis: 4\nmax_error: 100\n") {
		t.Errorf("got\n%s", got)
	}
}
