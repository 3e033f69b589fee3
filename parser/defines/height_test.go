package defines

import (
	"testing"

	"preflash/parser"
)

// What homes Z; the options that decide are from memory.
func TestHoming(t *testing.T) {
	const probe = `#define Z_HOME_DIR -1
#define FIX_MOUNTED_PROBE
#define NOZZLE_TO_PROBE_OFFSET { -20, 5, -2 }
`
	for _, tt := range []struct {
		name, text string
		state      parser.State
		homes      parser.Homing
		endstop    float64 // 0: none
	}{
		{"the probe in the switch's place", probe + "#define Z_MIN_PROBE_USES_Z_MIN_ENDSTOP_PIN\n",
			parser.Set, parser.HomesByProbe, 0},
		{"the probe on its own pin",
			probe + "//#define Z_MIN_PROBE_USES_Z_MIN_ENDSTOP_PIN\n#define USE_PROBE_FOR_Z_HOMING\n",
			parser.Set, parser.HomesByProbe, 0},
		{"a switch, and the probe levels", probe + "//#define USE_PROBE_FOR_Z_HOMING\n",
			parser.Set, parser.HomesAtBed, 0},
		{"not said", probe, parser.Absent, 0, 0},
		{"a switch", "#define Z_HOME_DIR -1\n#define MANUAL_Z_HOME_POS 0.3\n",
			parser.Set, parser.HomesAtBed, 0.3},
		{"upwards", `#define Z_HOME_DIR 1
#define FIX_MOUNTED_PROBE
#define USE_PROBE_FOR_Z_HOMING
#define MANUAL_Z_HOME_POS 201
`, parser.Set, parser.HomesFar, 201},
		{"towers", "#define DELTA\n#define Z_HOME_DIR 1\n#define DELTA_HEIGHT 300.5\n",
			parser.Set, parser.HomesFar, 300.5},
		{"no direction", "#define FIX_MOUNTED_PROBE\n", parser.Absent, 0, 0},
	} {
		g := readText(t, 0, "Configuration.h", tt.text).Printer().Geometry
		if g.Homes.State != tt.state || g.Homes.Value != tt.homes {
			t.Errorf("%s: homes %+v", tt.name, g.Homes)
		}
		if tt.endstop == 0 && len(g.EndstopMM) > 0 ||
			tt.endstop != 0 && (len(g.EndstopMM) != 1 || g.EndstopMM[0].Value != tt.endstop) {
			t.Errorf("%s: heights %+v", tt.name, g.EndstopMM)
		}
	}
	if g := readText(t, 0, "Configuration.h", probe).Printer().Geometry; !g.BesideNozzle {
		t.Error("the probe is not beside the nozzle")
	}
	const below = "#define Z_PROBE_OFFSET_FROM_EXTRUDER -1\n#define Y_PROBE_OFFSET_FROM_EXTRUDER 0\n"
	if g := readText(t, 0, "Configuration.h", below).Printer().Geometry; g.BesideNozzle {
		t.Error("the probe is beside the nozzle")
	}
}

// What stops Z may be its motor, which stalls with the nozzle on the bed, or the
// same as a probe; both from memory.
func TestStall(t *testing.T) {
	const down, stall = "#define Z_HOME_DIR -1\n",
		"#define SENSORLESS_HOMING\n#define Z_STALL_SENSITIVITY 8\n"
	for _, tt := range []struct {
		text           string
		stalls, nozzle bool
	}{
		{down + stall, true, false},
		{"#define Z_HOME_DIR 1\n" + stall, false, false},
		{down + "#define SENSORLESS_HOMING\n", false, false},
		{down + `#define SENSORLESS_PROBING
#define NOZZLE_TO_PROBE_OFFSET { 0, 0, 0 }
#define USE_PROBE_FOR_Z_HOMING
`, false, true},
		{down + `#define NOZZLE_AS_PROBE
#define NOZZLE_TO_PROBE_OFFSET { 0, 0, 0 }
#define USE_PROBE_FOR_Z_HOMING
`, false, true},
	} {
		g := readText(t, 0, "Configuration.h", tt.text).Printer().Geometry
		if g.HomesByStall != tt.stalls || (g.NozzleProbes.Known() && g.NozzleProbes.Value) != tt.nozzle {
			t.Errorf("%q: by stall %t, nozzle %+v", tt.text, g.HomesByStall, g.NozzleProbes)
		}
	}
}
