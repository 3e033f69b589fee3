package sections

import (
	"strings"
	"testing"

	"preflash/parser"
)

// What the firmware refuses to start with is config-broken, at its place.
func TestRefused(t *testing.T) {
	const bead = "[extruder]\nstep_pin: a\nsensor_type: Generic 3950\n"
	for _, test := range []struct {
		text string
		line int
		says string // "" where all is well
	}{
		{bead + "control: watermark\nPid_Kp: 1\n", 5, "Pid_Kp in [extruder] belongs to control: pid"},
		{bead + "control: pid\nmax_delta: 1\n", 5, "belongs to control: watermark"},
		{bead + "control: mpc\npid_kp: 1\n", 0, ""}, // a fork's, of which nothing is known
		{bead + "control: watermark\n" + savedHead + "#*# [extruder]\n#*# pid_kp = 1\n", 0, ""},
		{bead + "inline_resistor: 1\npullup_resistor: 1\n", 0, ""},
		{"[extruder]\nsensor_type: PT1000\ninline_resistor: 0\n", 3, "belongs to a thermistor"},
		{"[extruder]\nsensor_type: AD595\npullup_resistor: 1\nadc_voltage: 3.3\n",
			3, "belongs to a sensor that is a resistor"},
		{bead + "adc_voltage: 5\n", 4, "belongs to an amplifier"},
		{bead + "rtd_nominal_r: 100\n", 4, "belongs to MAX31865"},
		{"[extruder]\nsensor_type: MAX31865\nrtd_nominal_r: 100\nrtd_use_50Hz_filter: True\n", 0, ""},
		{"[extruder]\nsensor_type: MAX31855\ntc_type: K\n", 3, "belongs to MAX31856"},
		{"[extruder]\nsensor_type: unheard of\ninline_resistor: 0\nrtd_nominal_r: 1\n", 0, ""},
		{"[danger_options]\nerror_on_unused_config_options: False\n" + bead + "rtd_nominal_r: 100\n", 0, ""},
		{"[heater_generic x]\nsensor_type: PT1000\ninline_resistor: 0\n", 3, "in [heater_generic x]"},
		{"[thermistor x]\ntemperature1: 25\nresistance1: 1000\nbeta: 3950\nresistance2: 1\n",
			5, "stands beside beta"},
		{"[thermistor x]\ntemperature1: 25\nresistance1: 1000\n", 1, "has no temperature2"},
		{"[thermistor x]\nresistance1: 1000\nbeta: 1\n", 1, "has no temperature1"},
		{"[thermistor x]\nbeta: 1\n[extruder]\nsensor_type: x\n", 0, ""}, // sensor-unknown speaks
		{"[adc_temperature x]\ntemperature1: 1\nresistance1: 1\ntemperature3: 1\n",
			4, "there is no temperature2"},
		{"[adc_temperature x]\ntemperature1: 1\nresistance1: 1\nvoltage1: 1\n",
			4, "stands beside resistance1"},
		{"[adc_temperature x]\ntemperature1: 1\nvoltage1: 1\ntemperature2: 1\nvoltage2: 1\n", 0, ""},
		{"[extruder]\nsensor_type: Generic 3950\npressure_advance: 1\n", 3, "without the pins of a motor"},
		{bead + "pid_integral_max: 1\n", 4, "removed from the firmware on 2021-11-02"},
		{bead + "step_distance: 1\n", 4, "write rotation_distance"},
		{"[tmc2209 extruder]\nmicrosteps: 16\n", 2, "belongs in the section of its motor"},
		{"[thermistor]\n", 1, "needs a name of its own"},
		{"[heater_fan ]\n", 1, "needs a name of its own"},
		{"[Extruder]\n", 1, "letter by letter"},
		{"[DEFAULT]\n" + bead, 0, ""},
		{"[ heater_bed ]\n", 1, "write [heater_bed"},
		{"[extruder]\n[extruder2]\n", 2, "without [extruder1]"},
		{"[extruder1]\n", 1, "without [extruder]"},
		{"[extruder]\n[extruder_stepper x]\nextruder: extruder\n", 0, ""},
		{"[heater_fan f]\nmax_power: 0.8\n", 1, "takes hardware_pwm: true, or shutdown_speed: 0"},
		{"[heater_fan f]\nmax_power: 0.8\nshutdown_speed: 0\n", 0, ""},
		{"[heater_fan f]\nmax_power: 0.8\nhardware_pwm: On\n", 0, ""},
		{"[fan]\nmax_power: 0.8\n", 0, ""},
		{"[extruder]\nsensor_type: rpi_temperature\n", 2, "2021-11-02"},
		{"[heater_bed]\nsensor_type: NTC 100K beta 3950\n", 2, "2024-02-15"},
		{`[thermistor NTC 100K beta 3950]
temperature1: 25
resistance1: 1000
beta: 3950
[heater_bed]
sensor_type: NTC 100K beta 3950
`, 0, ""},
	} {
		broken := remarksOf(readText(t, test.text), parser.RemarkBroken)
		if test.says == "" {
			if len(broken) > 0 {
				t.Errorf("%q: %v", test.text, broken)
			}
			continue
		}
		if len(broken) != 1 || !strings.Contains(broken[0].Text, test.says) ||
			!strings.HasSuffix(broken[0].Text, "refuses to start with it") {
			t.Errorf("%q: %v, want %q", test.text, broken, test.says)
			continue
		}
		if line, _ := broken[0].At.Position(); line != test.line {
			t.Errorf("%q: line %d, want %d", test.text, line, test.line)
		}
	}
}

// Which of two definitions of one name the firmware takes.
func TestSensorNames(t *testing.T) {
	point := func(section string, r int) string {
		if strings.HasPrefix(section, "adc") {
			return "[" + section + "]\ntemperature1: 25\nresistance1: 1000\n" +
				"temperature2: 100\nresistance2: " + strings.Repeat("1", r) + "\n"
		}
		return "[" + section + "]\ntemperature1: 25\nresistance1: 100000\n" +
			"beta: 3" + strings.Repeat("0", r) + "\n"
	}
	const bead, table = "thermistor Generic 3950", "adc_temperature Generic 3950"
	const named = "[extruder]\nsensor_type: Generic 3950\n"
	const bed = "[heater_bed]\nsensor_type: PT1000\n"
	for _, test := range []struct{ name, text, want string }{
		{"thermistor, then table", point("thermistor X", 3) + point("adc_temperature X", 2), "table"},
		{"table, then thermistor", point("adc_temperature X", 2) + point("thermistor X", 3), "beta 3000"},
		{"two thermistors that differ in blanks",
			point("thermistor X", 3) + point("thermistor  X", 4), "beta 30000"},
		{"blanks in a name", point("thermistor my   X", 3) + "[extruder]\nsensor_type: my X\n", "beta 3000"},
		{"blanks in the type", point("thermistor my X", 3) + "[extruder]\nsensor_type: my   X\n",
			"unknown: no section"},
		{"below the hotend", "[extruder]\nsensor_type: X\n" + point("thermistor X", 3), "beta 3000"},
		{"a built-in name above every sensor", point(bead, 3) + bed + named, "beta 3000"},
		{"a built-in name, only hotends use sensors", named + point(bead, 3), "beta 3000"},
		{"a built-in name below a sensor", bed + point(bead, 3) + named,
			"unknown: [thermistor Generic 3950] has the name of a built-in type and stands below"},
		{"a table of a built-in name above every sensor",
			point(table, 2) + bed + named, "curve ntc-100k-3950"},
		{"a table of a built-in name below one", bed + point(table, 2) + named, "table"},
		{"the name of a chip", point("thermistor MAX31865", 3) + "[extruder]\nsensor_type: MAX31865\n",
			"unknown: [thermistor MAX31865] has the name"},
		{"another case", "[extruder]\nsensor_type: generic 3950\n",
			"unknown: the firmware compares sensor types letter by letter"},
		{"a removed name", "[extruder]\nsensor_type: NTC 100K beta 3950\n", "beta 3950"},
	} {
		text := test.text
		if !strings.Contains(text, "[extruder]") {
			text += "[extruder]\nsensor_type: X\n"
		}
		d := readText(t, text).Printer().Hotend.Sensor.Value
		got := "unknown: " + d.Note
		switch d.Form {
		case parser.FormCurve:
			got = "curve " + d.Curve
		case parser.FormBeta:
			got = "beta " + decimal(d.BetaK, "")
		case parser.FormPoints:
			got = "table"
		}
		if !strings.HasPrefix(got, test.want) {
			t.Errorf("%s: %s, want %s", test.name, got, test.want)
		}
	}
	// The bed is made in its place, unlike a hotend.
	c := readText(t, "[heater_bed]\nsensor_type: X\n"+point("thermistor X", 3))
	if d := c.Printer().Bed.Sensor.Value; d.Form != parser.FormUnknown ||
		!strings.Contains(d.Note, "stands below") {
		t.Errorf("a definition below the bed: %+v", d)
	}
	// A name that nobody here has may come from a file that is not here.
	c = readFiles(t, files{"printer.cfg": "[include panel.cfg]\n[extruder]\nsensor_type: X\n"},
		absent("panel.cfg"))
	if d := c.Printer().Hotend.Sensor.Value; !strings.Contains(d.Note, "panel.cfg, which is not here") {
		t.Errorf("a name of an absent file: %+v", d)
	}
}

// What chips and amplifiers are told.
func TestChips(t *testing.T) {
	for _, test := range []struct {
		text string
		want string
	}{
		{"MAX31865\n", "100 430 2"},
		{"MAX31865\nrtd_nominal_r: 1000\nrtd_reference_r: 4300\nrtd_num_of_wires: 3\n", "1000 4300 3"},
		{"MAX31865\nrtd_num_of_wires: 3.0\n", "must be a whole number"},
		{"MAX31865\nrtd_num_of_wires: 5\n", "at most 4"},
		{"MAX31865\nrtd_reference_r: 0\n", "must be above 0"},
		{"MAX31856\n", "of type K"},
		{"MAX31856\ntc_type: J\n", "of type J"},
		{"MAX31856\ntc_type: j\n", "is none of B E J K N R S T"},
		{"AD595\n", "full scale is 5 V"},
		{"PT100 INA826\nadc_voltage: 3.3\nvoltage_offset: 0.1\n",
			"full scale is 3.3 V, and that the amplifier's zero lies at 0.1 V"},
		{"PT100 INA826\nadc_voltage: 0\n", "must be above 0"},
		{"AD597\nadc_voltage: 0\n", "must be above 0"},
	} {
		d := readText(t, "[extruder]\nsensor_type: "+test.text).Printer().Hotend.Sensor.Value
		got := d.Note
		if d.ReferenceOhm > 0 {
			figures := []string{
				decimal(d.R0Ohm, ""), decimal(d.ReferenceOhm, ""), decimal(float64(d.Wires), ""),
			}
			got = strings.Join(figures, " ")
		}
		if !strings.Contains(got, test.want) {
			t.Errorf("%q: %s, want %s", test.text, got, test.want)
		}
	}
}
