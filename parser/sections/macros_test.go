package sections

import (
	"fmt"
	"strings"
	"testing"

	"preflash/parser"
)

// Targets count where they are plain numbers, for this heater, in a macro or
// a menu that is used.
func TestPresets(t *testing.T) {
	const head = "[extruder]\n[gcode_macro A]\ngcode:\n"
	for _, test := range []struct {
		text string
		want string
	}{
		{head + "  M104 S200\n", "200"},
		{head + "  m109 s215 ; wait\n  M104 T0 S190.5 # c\n", "215 190.5"},
		{head + "  M104S230\n", "230"},
		{head + "  M104 S200;not M104 S999\n  M109;S300\n", "200"},
		{head + "  M104 S{params.T|default(200)}\n  M104 S{ 2 + 3 } T0\n", ""},
		{head + "  M104 T{tool} S200\n", ""},
		{head + "  M104 T1 S200\n", ""},
		{head + "  M104 S0\n  M140 S60\n  M190 S60\n  M1045 S9\n", ""},
		{head + "  SET_HEATER_TEMPERATURE HEATER=extruder TARGET=205\n", "205"},
		{head + "  set_heater_temperature target=206 heater=extruder\n", "206"},
		{head + `  SET_HEATER_TEMPERATURE HEATER=heater_bed TARGET=60
  SET_HEATER_TEMPERATURE HEATER=extruder
`, ""},
		{head + "  {% if x %}\n  M104 S220\n  {% endif %}\n  ; M104 S1\n  # M104 S2\n  G1 X104 S3\n", "220"},
		{"[extruder]\n[gcode_macro A]\ngcode: M104 S201\n", "201"},
		{"[extruder]\n[menu __main __heat]\ngcode:\n  M104 S202\n", "202"},
		{"[extruder]\n[delayed_gcode later]\ngcode:\n  M104 S203\n", ""},
		{head + "  {% set hot = params.NOZZLE_TEMP|default(240)|int %}\n  M109 S{hot}\n", "240"},
		{head + "  {% set hot = params.Hot | default( 245.5, true ) %}" +
			" {% set b = params.BED_TEMP|default(60) %}\n", "245.5"},
		{head + "  {% set hot = params.TEMP|default(def_temp) %}" +
			"{% set t = params.TEMP_TIMEOUT|default(600) %}\n", ""},
		{`[extruder]
[gcode_macro A]
variable_load_temp: 235
variable_bed_temp: 60
variable_max_temp: 300
variable_temp_wait: 90
variable_temps: 'x'
gcode:
`, "235"},
		{`[extruder]
[gcode_macro A]
variable_temp: 600
variable_hotend: 1
variable_template: 7
gcode:
`, ""},
		{`[extruder]
[gcode_macro A]
variable_material: {'PLA': {'extruder': 210, 'bed': 60},
  "PETG": {"nozzle_temp": 240.0, 'fan': 30}}
gcode:
`, "210 240.0"},
		{`[extruder]
[gcode_macro A]
variable_material: {'extruder': 210 + 5, extruder: 220, 'extruder': '230'}
gcode:
`, ""},
		{head + "  M104 S200\n[gcode_macro A]\ngcode:\n  M104 S210\n", "210"},
	} {
		c := readText(t, test.text)
		var got []string
		for i, s := range c.Printer().Limits.Presets {
			got = append(got, s.At.Text())
			if v, _ := number(s.At.Text()); v != s.Value ||
				!strings.HasPrefix(string(s.Key), string(parser.Preset(i+1))+" (") {
				t.Errorf("%q: %+v does not match its place", test.text, s)
			}
		}
		if strings.Join(got, " ") != test.want {
			t.Errorf("%q: %q, want %q", test.text, got, test.want)
		}
	}
}

func TestCarriedOver(t *testing.T) {
	c := readText(t, `[extruder]
pressure_advance: 0.05
[firmware_retraction]
retract_length: 0.8
[gcode_macro LOAD]
variable_load_length: 60
variable_Unload_Length = 80.5
variable_load_speed: 300
variable_retract_len: {1}
variable_path: 'a'
gcode:
  G1 E{load_length}
`)
	var got []string
	for _, s := range c.Printer().Flow.CarriedOver {
		got = append(got, fmt.Sprintf("%s %g %s", s.Key, s.Value, s.State))
	}
	want := "pressure advance 0.05 set, retract length 0.8 set, extra length after retract 0 default, " +
		"load length of LOAD 60 set, unload length of LOAD 80.5 set"
	if g := strings.Join(got, ", "); g != want {
		t.Errorf("got  %s\nwant %s", g, want)
	}
}

// Advance counts where it is a plain number, for this hotend, and is called by
// its macro.
func TestAdvancesInMacros(t *testing.T) {
	c := readText(t, `[extruder]
[gcode_macro START]
variable_pa: 0.035
variable_pa_smooth_time: 0.04
variable_materials: {'PLA': {'pa': 0.03}, 'ABS': {'pressure_advance': 0.05}}
gcode:
  SET_PRESSURE_ADVANCE ADVANCE=0.06
  set_pressure_advance extruder=extruder advance=0.07 SMOOTH_TIME=0.02
  SET_PRESSURE_ADVANCE EXTRUDER=extruder1 ADVANCE=0.08
  SET_PRESSURE_ADVANCE ADVANCE={params.PA|default(0.09)}
`)
	var got []string
	for _, s := range c.Printer().Flow.CarriedOver[1:] {
		if s.Key != "pressure advance of START" || s.At.Text() != s.Written {
			t.Errorf("%+v", s)
		}
		got = append(got, s.At.Text())
	}
	if want := "0.035 0.03 0.05 0.06 0.07 0.09"; strings.Join(got, " ") != want {
		t.Errorf("%q, want %q", got, want)
	}
}
