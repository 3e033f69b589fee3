package sections

import (
	"fmt"
	"strings"
	"testing"

	"preflash/parser"
)

// What the whole printer says, for a configuration of the kind that people
// have. Every figure can be checked by eye against printerText and savedText.
func TestPrinter(t *testing.T) {
	c := readText(t, printerText+savedText)
	want := []string{
		"hotend sensor = NTC 100K MGB18-104F39050L32 (Beta 4100 from 100000, pull-up 4700), " +
			"set at 20 as [extruder] sensor_type",
		"hotend pull-up = 4700, default as [extruder] pullup_resistor",
		"min temp = 0, set at 22 as [extruder] min_temp",
		"max temp = 285, set at 23 as [extruder] max_temp",
		"target margin = 0, default",
		"preset 1 (PREHEAT) = 210, set at 52 as [gcode_macro PREHEAT]",
		"cold extrusion guard = true, set at 24 as [extruder] min_extrude_temp",
		"min extrude temp = 170, set at 24 as [extruder] min_extrude_temp",
		"control = PID, set at 59 as [extruder] control, saved",
		"kp = 21.7, set at 60 as [extruder] pid_kp, saved",
		"ki = 1.4, set at 61 as [extruder] pid_ki, saved",
		"kd = 84, set at 62 as [extruder] pid_kd, saved",
		"derivative smoothing time = 1, default as [extruder] smooth_time",
		"power limit heater = 0.9, set at 25 as [extruder] max_power",
		"hotend runaway protection = true, default as [verify_heater extruder]",
		"hotend required rise = 2, default as [verify_heater extruder] heating_gain",
		"hotend heating check window = 20, default as [verify_heater extruder] check_gain_time",
		"hotend drop check hysteresis = 5, default as [verify_heater extruder] hysteresis",
		"hotend error sum = 150, set at 28 as [verify_heater extruder] max_error",
		"heated bed = true, set at 30 as [heater_bed]",
		"bed sensor = Generic 3950 (ntc-100k-3950, pull-up 4700), set at 32 as [heater_bed] sensor_type",
		"bed runaway protection = true, default as [verify_heater heater_bed]",
		"bed required rise = 2, default as [verify_heater heater_bed] heating_gain",
		"bed heating check window = 60, default as [verify_heater heater_bed] check_gain_time",
		"bed drop check hysteresis = 5, default as [verify_heater heater_bed] hysteresis",
		"bed error sum = 120, default as [verify_heater heater_bed] max_error",
		"heat-break fan = heater_fan hotend_fan, set at 40 as [heater_fan hotend_fan] heater",
		"heat-break fan threshold = 45, set at 41 as [heater_fan hotend_fan] heater_temp",
		"heat-break fan power = 1, default as [heater_fan hotend_fan] fan_speed",
		"heat-break fan power after a shutdown = 1, default as [heater_fan hotend_fan] shutdown_speed",
		"nozzle diameter = 0.4, set at 16 as [extruder] nozzle_diameter",
		"filament diameter = 1.75, set at 17 as [extruder] filament_diameter",
		"volumetric limit = 0, off",
		"longest push of filament = 50, default as [extruder] max_extrude_only_distance",
		"pressure advance = 0.045, set at 18 as [extruder] pressure_advance",
		"probe trigger height = 1.85, set at 65 as [probe] z_offset, saved",
		"stored settings = false, off",
	}
	var got []string
	for s := range c.Printer().Settings() {
		got = append(got, shown(s))
	}
	if g, w := strings.Join(got, "\n"), strings.Join(want, "\n"); g != w {
		t.Errorf("got\n%s\nwant\n%s", g, w)
	}
	p := c.Printer()
	if len(p.Remarks) > 0 {
		t.Errorf("remarks on a sound configuration: %v", p.Remarks)
	}
	if p.Hotend.Oversample != 8 || p.Hotend.Loop.Form != parser.LoopClamped ||
		p.Hotend.Watch.Form != parser.WatchSum || !p.Hotend.Watch.CanTurnOn {
		t.Errorf("forms: %+v", p.Hotend)
	}
}

// shown writes a setting on one line.
func shown(s parser.Description) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s = ", s.Key)
	if d, ok := s.Value.(parser.SensorDef); ok {
		curve := d.Curve
		if d.Form == parser.FormBeta {
			curve = fmt.Sprintf("Beta %g from %g", d.BetaK, d.R25Ohm)
		}
		fmt.Fprintf(&b, "%s (%s, pull-up %g)", d.Name, curve, d.PullupOhm)
	} else {
		fmt.Fprint(&b, s.Value)
	}
	fmt.Fprintf(&b, ", %s", s.State)
	if line, _ := s.At.Position(); line > 0 {
		fmt.Fprintf(&b, " at %d", line)
	}
	if s.Name != "" {
		fmt.Fprintf(&b, " as %s", s.Name)
	}
	if s.Saved {
		b.WriteString(", saved")
	}
	return b.String()
}

// A figure that the firmware refuses, or needs and does not find, is unknown,
// and the reason says so.
func TestFiguresThatCannotBe(t *testing.T) {
	for _, test := range []struct {
		was, is string
		key     parser.Key
		says    string
	}{
		{"max_power:         0.9", "max_power: 1.5", parser.PowerLimit("heater"), "must be at most 1"},
		{"max_power:         0.9", "max_power: 0", parser.PowerLimit("heater"), "must be above 0"},
		{"max_power:         0.9", "max_power: 90%", parser.PowerLimit("heater"),
			"“90%”, which is no number"},
		{"max_temp:          285", "max_temp:", parser.MaxTemp, "“”, which is no number"},
		{"max_temp:          285", "max_temp: 0x100", parser.MaxTemp, "no number"},
		{"max_temp:          285", "max_temp: -1", parser.MaxTemp, "must be above 0"},
		{"max_temp:          285", "max_temp: nan", parser.MaxTemp, "switches off every comparison"},
		{"max_temp:          285", "max_temp: 1e999", parser.MaxTemp, "switches off every comparison"},
		{"max_temp:          285", "", parser.MaxTemp, "has no max_temp"},
		{"min_temp:          0", "min_temp: -274", parser.MinTemp, "must be at least -273.15"},
		{"min_extrude_temp:  170", "min_extrude_temp: 300", parser.MinExtrude, "must be at most 285"},
		{"max_error:         150", "check_gain_time: 0", parser.HotendRiseWindow, "must be at least 1"},
		{"max_error:         150", "heating_gain: 0", parser.HotendRise, "must be above 0"},
		{"sensor_type:       NTC 100K MGB18-104F39050L32", "", parser.HotendSensor, "has no sensor_type"},
		{"#*# control = pid", "#*# control = dual", parser.LoopControl,
			"“dual”, which Preflash does not know"},
		{"#*# control = pid\n", "", parser.LoopControl, "has no control"},
		{"#*# pid_kp = 21.700\n", "", parser.GainP, "has no pid_kp"},
		{"nozzle_diameter:   0.400", "nozzle_diameter: 0", parser.NozzleDiameter, "must be above 0"},
	} {
		text := printerText + savedText
		if !strings.Contains(text, test.was) {
			t.Fatalf("the configuration lacks %q", test.was)
		}
		s := described(t, readText(t, strings.Replace(text, test.was, test.is, 1)), test.key)
		if s.State != parser.Unknown || !strings.Contains(s.Why, test.says) {
			t.Errorf("%q: %s is %s (%v), because %q; it should say %q",
				test.is, s.Key, s.State, s.Value, s.Why, test.says)
		}
		if s.At.IsZero() {
			t.Errorf("%q: %s is nowhere", test.is, s.Key)
		}
	}
}

// Figures are read as Python's float reads them.
func TestNumber(t *testing.T) {
	for text, want := range map[string]float64{
		"300": 300, " 300 ": 300, "3e2": 300, ".5": .5, "5.": 5, "+1": 1, "-1": -1, "1_000.5": 1000.5,
		"\n300": 300, "1E2": 100,
	} {
		if got, ok := number(text); !ok || got != want {
			t.Errorf("%q is %v, %v, want %v", text, got, ok, want)
		}
	}
	for _, text := range []string{
		"", "x", "0x10", "1 2", "1,5", "_1", "1_", "1__0", "1e", "--1", "1.5.2", "∞", "1p3", "infinit",
	} {
		if got, ok := number(text); ok {
			t.Errorf("%q is read as %v", text, got)
		}
	}
}

func TestTools(t *testing.T) {
	const second = `[extruder1]
nozzle_diameter: 0.6
filament_diameter: 2.85
sensor_type: PT1000
pullup_resistor: 2200
min_temp: 5
max_temp: 350
control: watermark
[verify_heater extruder1]
check_gain_time: 30
[heater_fan second]
heater: extruder1, heater_bed
[gcode_macro BOTH]
gcode:
  M104 T0 S190
  M104 T1 S240
  M109 S200
  SET_HEATER_TEMPERATURE HEATER=extruder1 TARGET=333
`
	read := func(tool int) *config {
		return readFiles(t, files{"printer.cfg": printerText + second + savedText}, forTool(tool))
	}
	c := read(1)
	p := c.Printer()
	for key, want := range map[parser.Key]any{
		parser.MaxTemp: 350.0, parser.HotendPullup: 2200.0, parser.HotendRiseWindow: 30.0,
		parser.HotendErrorSum: 120.0, parser.NozzleDiameter: 0.6, parser.FanOutput: "heater_fan second",
		parser.LoopControl: parser.ControlOnOff, parser.OnOffBand: 2.0,
		parser.PresetOf(1, "PREHEAT"): 210.0, parser.PresetOf(2, "BOTH"): 240.0,
		parser.PresetOf(3, "BOTH"): 200.0, parser.PresetOf(4, "BOTH"): 333.0,
	} {
		if s := described(t, c, key); s.Value != want {
			t.Errorf("tool 1: %s is %v, want %v", key, s.Value, want)
		}
	}
	if len(p.ColdSide.Elsewhere) != 1 || p.ColdSide.Elsewhere[0].Written != "extruder" {
		t.Errorf("tool 1: fans elsewhere %v", p.ColdSide.Elsewhere)
	}
	if d := p.Hotend.Sensor.Value; d.Kind != parser.Platinum || d.PullupOhm != 2200 {
		t.Errorf("tool 1: sensor %+v", d)
	}
	if got := len(read(0).Printer().Limits.Presets); got != 3 {
		t.Errorf("tool 0 has %d presets, want 210, 190 and 200", got)
	}

	c = read(7)
	if m := remarksOf(c, parser.RemarkMismatch); len(m) != 1 || !strings.Contains(m[0].Text, "[extruder7]") {
		t.Errorf("tool 7: %v", m)
	}
	for _, key := range []parser.Key{
		parser.MaxTemp, parser.HotendSensor, parser.HotendWatchOn, parser.GainP, parser.NozzleDiameter,
	} {
		if s := described(t, c, key); s.State != parser.Unknown || s.Why == "" || s.At.IsZero() {
			t.Errorf("tool 7: %s is %s %q at %s", key, s.State, s.Why, s.At)
		}
	}
}

// Figures that let a heater burn for an hour switch the watch off; merely wide
// ones do not.
func TestBlindWatch(t *testing.T) {
	for _, test := range []struct {
		line string
		on   bool
	}{
		{"max_error: 120", true},
		{"max_error: 100000", true},
		{"max_error: 99999999", false},
		{"max_error: inf", false},
		{"max_error: nan", false},
		{"hysteresis: 50", true},
		{"hysteresis: 285", false},
		{"hysteresis: 1e6", false},
		{"check_gain_time: 900", true},
		{"check_gain_time: 86400", false},
		{"check_gain_time: infinity", false},
		{"heating_gain: 0.001", true},
	} {
		c := readText(t, strings.Replace(printerText, "max_error:         150", test.line, 1)+savedText)
		s := described(t, c, parser.HotendWatchOn)
		if on := s.Value == true && s.State != parser.Off; on != test.on {
			t.Errorf("%s: on is %v (%s), want %v", test.line, s.Value, s.State, test.on)
		}
		if !test.on && s.At.Text() != strings.TrimSpace(test.line[strings.Index(test.line, ":")+1:]) {
			t.Errorf("%s: points at %q", test.line, s.At.Text())
		}
	}
}

func TestColdGuard(t *testing.T) {
	for value, on := range map[string]bool{"170": true, "1": true, "0": false} {
		text := strings.Replace(printerText, "min_extrude_temp:  170", "min_extrude_temp: "+value, 1)
		c := readText(t, text+savedText)
		if s := described(t, c, parser.ColdGuard); (s.State != parser.Off) != on {
			t.Errorf("%s: the guard is %s", value, s.State)
		}
	}
}

func TestProbes(t *testing.T) {
	for _, test := range []struct {
		text  string
		state parser.State
		value float64
	}{
		{"", parser.Off, 0},
		{"[probe]\nz_offset: 1.5\n", parser.Set, 1.5},
		{"[bltouch]\nz_offset = 2\n", parser.Set, 2},
		{"[smart_effector]\nz_offset: 0.1\n", parser.Set, 0.1},
		{"[probe]\npin: a\n", parser.Unknown, 0},
		{"[probe_eddy_current coil]\nz_offset: 1\n", parser.Unknown, 1},
		{"[probe_macro]\nz_offset: 1\n", parser.Off, 0},
	} {
		c := readText(t, "[extruder]\n"+test.text)
		if s := c.Printer().Geometry.TriggerMM; s.State != test.state || s.Value != test.value ||
			s.Key != parser.ProbeTrigger {
			t.Errorf("%q: %+v", test.text, s)
		}
	}
}

// An option that looks like a way round a protection is named, whatever
// section it stands in; a sound configuration has none.
func TestUnrecognised(t *testing.T) {
	for text, says := range map[string]string{
		"[extruder]\nskip_check_heater: true\n":             "skip_check_heater in [extruder]",
		"[danger_options]\nadc_ignore_limits: True\n":       "[danger_options]",
		"[extruder]\n[verify_heater extruder]\nmax_eror: 1": "max_eror is no option",
		"[extruder]\n[heater_bed]\nthermal_runaway: off\n":  "thermal_runaway in [heater_bed]",

		"[extruder]\n[verify_heater extrudr]\n":   "correct the name of [verify_heater extrudr]: no heater",
		"[extruder]\n[verify_heater  extruder]\n": "is a second protection beside [verify_heater extruder]",

		"[heater_generic a]\n[verify_heater heater_generic a]\n": "no heater of this " +
			"configuration is called so",
	} {
		c := readText(t, text)
		all := remarksOf(c, parser.RemarkUnrecognised)
		if len(all) == 0 || !strings.Contains(all[0].Text, says) {
			t.Errorf("%q: %v, want %q", text, all, says)
		}
	}
	c := readText(t, `[extruder]
[heater_generic chamber]
[verify_heater chamber]
max_error: 1
[gcode_macro UNSAFE]
gcode:
  G28
`)
	if all := remarksOf(c, parser.RemarkUnrecognised); len(all) > 0 {
		t.Errorf("nothing is wrong here: %v", all)
	}
}

// A default section counts where a section has no option of its own.
func TestDefaultSection(t *testing.T) {
	c := readText(t, "[DEFAULT]\nmax_power: 0.5\nmax_temp: 200\n[extruder]\nmax_temp: 250\n")
	if s := described(t, c, parser.PowerLimit("heater")); s.Value != 0.5 {
		t.Errorf("power limit %v", s.Value)
	}
	if s := described(t, c, parser.MaxTemp); s.Value != 250.0 {
		t.Errorf("max temp %v", s.Value)
	}
	if all := remarksOf(c, parser.RemarkBroken); len(all) != 1 || all[0].At.Text() != "max_power" ||
		!strings.Contains(all[0].Text, "refuse to start") {
		t.Errorf("remarks %v", all)
	}
	c = readText(t, "[DEFAULT]\n[extruder]\nmax_temp: 250\n")
	if all := remarksOf(c, parser.RemarkBroken); len(all) > 0 {
		t.Errorf("an empty one is harmless: %v", all)
	}
}

// A heater is known by the last word of its section.
func TestHeaters(t *testing.T) {
	c := readText(t, "[extruder]\n[heater_generic  chamber ]\n[heater_generic chamber]\n[fan]\n")
	for name, want := range map[string]bool{
		"extruder": true, "chamber": true, "bed": false, "heater_generic": false,
	} {
		if got := c.heaters()[name]; got != want {
			t.Errorf("%s: %v", name, got)
		}
	}
}

func TestHides(t *testing.T) {
	c := readFiles(t, files{
		"printer.cfg": "[extruder]\nmax_temp: 280\n[include x.cfg]\n[extruder]\nMax_Temp: 300\n" + savedText +
			"#*#\n#*# [extruder]\n#*# max_temp = 290\n",
		"x.cfg": "[extruder]\nmax_temp: 260\n",
	})
	s := described(t, c, parser.MaxTemp)
	var hidden []string
	for _, h := range s.Hides {
		hidden = append(hidden, fmt.Sprintf("%s %s %v", h.At.File.Path, h.Written, h.Saved))
	}
	if got := strings.Join(hidden, ", "); s.Value != 300.0 || s.Name != "[extruder] Max_Temp" ||
		got != "printer.cfg 280 false, x.cfg 260 false, printer.cfg 290 true" {
		t.Errorf("%v %s hides %s", s.Value, s.Name, got)
	}
}
