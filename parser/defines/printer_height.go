package defines

import (
	"strings"

	"preflash/parser"
)

// probes are the options that say that the printer has a probe, as both
// generations publish them; the last three are the newer one's.
var probes = []string{
	"FIX_MOUNTED_PROBE", "NOZZLE_AS_PROBE", "BLTOUCH", "TOUCH_MI_PROBE", "Z_PROBE_ALLEN_KEY",
	"Z_PROBE_SLED", "SOLENOID_PROBE", "SENSORLESS_PROBING", "RACK_AND_PINION_PROBE", "MAGLEV4",
	"MAG_MOUNTED_PROBE", "BD_SENSOR",
}

// nozzleProbes say that the nozzle itself touches; of the second, with which the
// motor stalls as it does, that is from memory.
var nozzleProbes = []string{"NOZZLE_AS_PROBE", "SENSORLESS_PROBING"}

// geometry reads where nozzle and probe are.
func (r *reader) geometry() parser.Geometry {
	g := parser.Geometry{TriggerMM: r.trigger(), BesideNozzle: r.beside()}
	if r.any(nozzleProbes) != parser.No {
		g.NozzleProbes = r.flag(parser.NozzleProbes, nozzleProbes, nil)
	}
	g.Towers = r.on("DELTA") == parser.Yes
	r.homing(&g)
	if r.hotends < 2 {
		return g
	}
	// Offsets are seen from hotend 0: those of the next one tell of that.
	index := max(r.hotend, 1)
	for _, axis := range [...]string{"x", "y", "z"} {
		g.Offsets = appendFound(g.Offsets, r.number(numberSpelling{
			key: parser.Offset(axis), names: []string{"HOTEND_OFFSET_" + strings.ToUpper(axis)},
			list: true, element: index, absent: absentHidden,
		}))
	}
	return g
}

// probing are the options that need a probe, unless the person is the probe.
var probing = []string{
	"AUTO_BED_LEVELING_3POINT", "AUTO_BED_LEVELING_LINEAR",
	"AUTO_BED_LEVELING_BILINEAR", "AUTO_BED_LEVELING_NONLINEAR",
	"AUTO_BED_LEVELING_UBL", "AUTO_BED_LEVELING_FEATURE", "ENABLE_AUTO_BED_LEVELING",
}

// trigger reads the height at which the probe triggers. The option holds where
// the probe is, seen from the nozzle: below is negative.
func (r *reader) trigger() parser.Setting[float64] {
	f := numberSpelling{
		key: parser.ProbeTrigger, names: []string{"NOZZLE_TO_PROBE_OFFSET"},
		unit: unitNegative, list: true, element: 2,
	}
	if r.s.macro(f.names[0]).state == parser.No {
		f = numberSpelling{key: f.key, names: []string{"Z_PROBE_OFFSET_FROM_EXTRUDER"}, unit: unitNegative}
		if r.gen >= gen20 && len(r.s.mentions(f.names[0])) == 0 {
			f.names[0] = "NOZZLE_TO_PROBE_OFFSET"
		}
	}
	s := r.number(f)
	probe := r.any(probes)
	// Levelling without a probe came later.
	if r.gen == gen10 && r.on("ENABLE_AUTO_BED_LEVELING") == parser.Yes {
		probe = parser.Yes
	}
	for _, name := range [...]string{"Z_PROBE_SERVO_NR", "Z_ENDSTOP_SERVO_NR"} {
		// Servo 0 is a servo: the number does not switch it off.
		if state := r.s.macro(name).state; state != parser.No && probe == parser.No {
			probe = state
		}
	}
	if probe == parser.No && r.any(probing) != parser.No && r.on("PROBE_MANUALLY") == parser.No {
		probe = parser.Maybe
	}
	switch probe {
	case parser.No:
		return parser.Setting[float64]{Key: s.Key, Name: s.Name, State: parser.Off}
	case parser.Maybe:
		s.State, s.Why = parser.Unknown, "it cannot be told whether the printer has a probe"
		r.hangsOn(s.Key, probes...)
		r.hangsOn(s.Key, probing...)
	}
	return s
}

// homing reads what stops Z. A printer homes with its probe where it homes
// towards the bed and the probe either takes the place of the switch or is said
// to home; from memory, of both generations.
func (r *reader) homing(g *parser.Geometry) {
	h := parser.Setting[parser.Homing]{Key: parser.ZHoming}
	direction := r.value(numberSpelling{key: parser.ZHoming, names: []string{"Z_HOME_DIR"}})
	h.Place, h.Name = direction.Place, direction.Name
	if direction.State != parser.Set || direction.Value == 0 {
		return
	}
	h.State = parser.Set
	if direction.Value > 0 {
		h.Value = parser.HomesFar
	} else {
		switch r.homesWithProbe(g.TriggerMM.State) {
		case parser.Maybe:
			return
		case parser.Yes:
			h.Value = parser.HomesByProbe
			g.Homes = h
			return
		}
		h.Value = parser.HomesAtBed
		// The names are from memory.
		g.HomesByStall = r.on("SENSORLESS_HOMING") == parser.Yes &&
			r.s.macro("Z_STALL_SENSITIVITY").state == parser.Yes
	}
	g.Homes = h
	name := "MANUAL_Z_HOME_POS"
	if h.Value == parser.HomesFar && r.on("DELTA") == parser.Yes {
		name = "DELTA_HEIGHT"
	}
	g.EndstopMM = appendFound(nil,
		r.value(numberSpelling{key: parser.Endstop(""), names: []string{name}, absent: absentHidden}))
}

// homesWithProbe reports whether a printer that homes towards the bed does so with
// its probe. Files that mention none of the options that say so do not tell.
func (r *reader) homesWithProbe(probe parser.State) parser.Tri {
	if probe == parser.Off {
		return parser.No
	}
	options := []string{"Z_MIN_PROBE_USES_Z_MIN_ENDSTOP_PIN", "USE_PROBE_FOR_Z_HOMING"}
	homes, mentioned := r.any(options), false
	for _, name := range options {
		mentioned = mentioned || len(r.s.mentions(name)) > 0
	}
	if probe != parser.Set || homes == parser.No && !mentioned {
		return parser.Maybe
	}
	return homes
}

// beside reports whether the probe is written to be beside the nozzle.
func (r *reader) beside() bool {
	for i, old := range [...]string{"X_PROBE_OFFSET_FROM_EXTRUDER", "Y_PROBE_OFFSET_FROM_EXTRUDER"} {
		for _, f := range [...]numberSpelling{
			{names: []string{"NOZZLE_TO_PROBE_OFFSET"}, list: true, element: i, absent: absentHidden},
			{names: []string{old}, absent: absentHidden},
		} {
			if d := r.value(f); d.Known() && d.Value != 0 {
				return true
			}
		}
	}
	return false
}
