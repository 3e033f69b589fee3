package sections

import (
	"testing"

	"preflash/parser"
)

// What homes Z, and where the nozzle is then: facts of the style, as its
// firmware publishes them.
func TestHoming(t *testing.T) {
	const z = "[printer]\nkinematics: cartesian\n[stepper_z]\nposition_max: 200\n"
	for _, tt := range []struct {
		name, text string
		homes      parser.Homing
		endstop    []float64
	}{
		{"virtual endstop", z + "endstop_pin: probe:z_virtual_endstop\n", parser.HomesByProbe, nil},
		{"a switch below", z + "endstop_pin: ^PC2\nposition_endstop: 0.5\n",
			parser.HomesAtBed, []float64{0.5}},
		{"a switch in the lowest quarter",
			z + "endstop_pin: PC2\nposition_min: -10\nposition_endstop: 42.5\n",
			parser.HomesAtBed, []float64{42.5}},
		{"a switch above", z + "endstop_pin: PC2\nposition_endstop: 150\n", parser.HomesFar, []float64{150}},
		{"between the quarters", z + "endstop_pin: PC2\nposition_endstop: 118\n",
			parser.HomesBySwitch, []float64{118}},
		{"written direction", z + "endstop_pin: PC2\nposition_endstop: 0\nhoming_positive_dir: true\n",
			parser.HomesFar, []float64{0}},
		{"a driver's own endstop",
			z + "endstop_pin: tmc2209_stepper_z:virtual_endstop\nposition_endstop: 0\n",
			parser.HomesAtBed, []float64{0}},
		{"three towers", `[printer]
kinematics: delta
[stepper_a]
endstop_pin: ^PC0
position_endstop: 297
[stepper_b]
endstop_pin: ^PC1
position_endstop: 297.2
[stepper_c]
endstop_pin: ^PC2
`,
			parser.HomesFar, []float64{297, 297.2}},
	} {
		g := readText(t, tt.text).Printer().Geometry
		if g.Homes.State != parser.Set || g.Homes.Value != tt.homes || g.Homes.At.IsZero() {
			t.Errorf("%s: homes %+v, want by %s", tt.name, g.Homes, tt.homes)
		}
		if len(g.EndstopMM) != len(tt.endstop) {
			t.Errorf("%s: %d heights, want %v", tt.name, len(g.EndstopMM), tt.endstop)
			continue
		}
		for i, want := range tt.endstop {
			if s := &g.EndstopMM[i]; !s.Known() || s.Value != want {
				t.Errorf("%s: height %+v, want %v", tt.name, s, want)
			}
		}
	}
	homes := readText(t, "[printer]\nkinematics: cartesian\n").Printer().Geometry.Homes
	if homes.State != parser.Absent {
		t.Errorf("homes %+v without a Z", homes)
	}
}

// A driver that feels its motor stall stops it near the bed, as a rule with the
// nozzle on it.
func TestHomesByStall(t *testing.T) {
	const z = "[printer]\nkinematics: cartesian\n[stepper_z]\nposition_max: 200\nendstop_pin: "
	for text, want := range map[string]bool{
		"tmc2209_stepper_z:virtual_endstop\nposition_endstop: 0\n":   true,
		"tmc2209_stepper_z:virtual_endstop\nposition_endstop: 200\n": false,
		"probe:z_virtual_endstop\n":                                  false,
		"^PC2\nposition_endstop: 0\n":                                false,
	} {
		if g := readText(t, z+text).Printer().Geometry; g.HomesByStall != want {
			t.Errorf("%q: by stall %t", text, g.HomesByStall)
		}
	}
}

func TestNozzleProbes(t *testing.T) {
	for _, tt := range []struct {
		text           string
		probes, beside bool
	}{
		{"[smart_effector]\nz_offset: -0.1\n", true, false},
		{"[load_cell_probe]\nz_offset: 0\n", true, false},
		{"[probe]\nz_offset: -1.7\n", false, false},
		{"[probe]\nz_offset: 1.7\nx_offset: 0\ny_offset: -12\n", false, true},
		{"[bltouch]\nz_offset: 1.7\nx_offset: 0\n", false, false},
	} {
		g := readText(t, tt.text).Printer().Geometry
		if n := &g.NozzleProbes; (n.Known() && n.Value) != tt.probes || g.BesideNozzle != tt.beside {
			t.Errorf("%q: nozzle %+v, beside %v", tt.text, n, g.BesideNozzle)
		}
	}
}

// How far the tools are apart stands in the macro of the tool, or in the section of
// an add-on.
func TestToolOffsets(t *testing.T) {
	for _, tt := range []struct {
		name, text string
		tool       int
		want       map[parser.Key]float64
	}{
		{"macro", `[gcode_macro T1]
gcode:
    DOCK
    SET_GCODE_OFFSET X=0.35 Y=-0.2 Z=-0.465 MOVE=0 ; apart
`, 1, map[parser.Key]float64{
			parser.Offset("x"): 0.35, parser.Offset("y"): -0.2, parser.Offset("z"): -0.465,
		}},
		{"seen from tool 0", "[gcode_macro t1]\ngcode:\n  set_gcode_offset z=0.1\n",
			0, map[parser.Key]float64{parser.Offset("z"): 0.1}},
		{"computed", "[gcode_macro T1]\ngcode:\n  SET_GCODE_OFFSET Z={z}\n", 1, nil},
		{"another tool's", "[gcode_macro T2]\ngcode:\n  SET_GCODE_OFFSET Z=1\n", 1, nil},
		{"add-on", "[tool right]\nextruder: extruder1\ngcode_z_offset: 0.2\n",
			1, map[parser.Key]float64{parser.Offset("z"): 0.2}},
	} {
		c := readFiles(t, files{"printer.cfg": "[extruder]\n[extruder1]\n" + tt.text}, forTool(tt.tool))
		got := c.Printer().Geometry.Offsets
		if len(got) != len(tt.want) {
			t.Errorf("%s: %+v, want %v", tt.name, got, tt.want)
		}
		for _, s := range got {
			if want, ok := tt.want[s.Key]; !ok || s.Value != want || s.At.Text() == "" {
				t.Errorf("%s: %s is %v at %q", tt.name, s.Key, s.Value, s.At.Text())
			}
		}
	}
}
