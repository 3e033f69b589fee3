package defines

import (
	"slices"
	"strings"

	"preflash/parser"
)

// carried are figures that belong to the old melt path. They count only where
// one of the gates is on; no gate is always on.
var carried = [...]struct {
	key   string
	names []string
	gates []string
}{
	{"pressure advance", []string{"ADVANCE_K", "LIN_ADVANCE_K", "EXTRUDER_ADVANCE_K"}, []string{"LIN_ADVANCE", "ADVANCE"}},
	{"loop term of the speed", []string{"DEFAULT_Kc"}, []string{"PID_EXTRUSION_SCALING", "PID_ADD_EXTRUSION_RATE"}},
	{"loop term of the part fan", []string{"DEFAULT_Kf"}, []string{"PID_FAN_SCALING"}},
	{"retract length", []string{"RETRACT_LENGTH"}, []string{"FWRETRACT"}},
	{"retract length at a tool change", []string{"RETRACT_LENGTH_SWAP"}, []string{"FWRETRACT"}},
	{"retract recovery length", []string{"RETRACT_RECOVER_LENGTH"}, []string{"FWRETRACT"}},
	{"unload length", []string{"FILAMENT_CHANGE_UNLOAD_LENGTH", "FILAMENTCHANGE_FINALRETRACT"}, pauseGates},
	{"load length", []string{"FILAMENT_CHANGE_FAST_LOAD_LENGTH", "FILAMENT_CHANGE_LOAD_LENGTH"}, pauseGates},
	{"slow load length", []string{"FILAMENT_CHANGE_SLOW_LOAD_LENGTH"}, pauseGates},
	{"purge length", []string{"ADVANCED_PAUSE_PURGE_LENGTH", "ADVANCED_PAUSE_EXTRUDE_LENGTH", "FILAMENT_CHANGE_EXTRUDE_LENGTH"}, pauseGates},
	{"pause retract length", []string{"PAUSE_PARK_RETRACT_LENGTH", "FILAMENT_CHANGE_RETRACT_LENGTH", "FILAMENTCHANGE_FIRSTRETRACT"}, pauseGates},
	{"tool change length", []string{"TOOLCHANGE_FS_LENGTH", "TOOLCHANGE_FIL_SWAP_LENGTH"}, []string{"TOOLCHANGE_FILAMENT_SWAP"}},
}

var pauseGates = []string{"ADVANCED_PAUSE_FEATURE", "FILAMENT_CHANGE_FEATURE", "FILAMENTCHANGEENABLE"}

// flow reads what the configuration knows of filament and melt.
func (r *reader) flow() parser.Flow {
	var f parser.Flow
	f.NozzleMM = r.number(figure{key: parser.NozzleDiameter, names: []string{"MESH_TEST_NOZZLE_SIZE"}, absent: absentHidden})
	f.FilamentMM = r.number(figure{key: parser.FilamentWidth, names: []string{"DEFAULT_NOMINAL_FILAMENT_DIA", "D_FILAMENT"}})
	f.MaxMM3PerS = r.maxFlow()
	if r.on("PREVENT_LENGTHY_EXTRUDE") == parser.Yes {
		f.PushMM = r.number(figure{key: parser.LongestPush, names: []string{"EXTRUDE_MAXLENGTH"}, absent: absentHidden})
	}
	for _, c := range carried {
		gate := r.any(c.gates)
		if gate == parser.No {
			continue
		}
		s := r.number(figure{key: parser.Carried(c.key), names: c.names, list: true, element: r.hotend, repeats: true, absent: absentHidden})
		if gate == parser.Maybe && s.Known() {
			s.State, s.Why = parser.Unknown, "it cannot be told whether "+c.gates[0]+" is on"
			r.hangsOn(s.Key, c.gates...)
		}
		if s.State == parser.Set && s.Value == 0 {
			continue // a length of 0 is none
		}
		f.CarriedOver = appendFound(f.CarriedOver, s)
	}
	return f
}

// maxFlow reads the volumetric limit; a limit of 0 is none.
func (r *reader) maxFlow() parser.Setting[float64] {
	const gate = "VOLUMETRIC_EXTRUDER_LIMIT"
	s := r.number(figure{key: parser.MaxFlow, names: []string{"DEFAULT_VOLUMETRIC_EXTRUDER_LIMIT"}, absent: absentOff,
		list: true, element: r.hotend, repeats: true, near: []string{gate}})
	switch r.on(gate) {
	case parser.No:
		s = parser.Setting[float64]{Key: s.Key, Name: s.Name, State: parser.Off}
	case parser.Maybe:
		s.State, s.Why = parser.Unknown, "it cannot be told whether "+gate+" is on"
		r.hangsOn(s.Key, gate)
	}
	if s.State == parser.Set && s.Value == 0 {
		s.State = parser.Off
	}
	return s
}

// probes are the options that say that the printer has a probe, as both
// generations publish them; the last three are the newer one's.
var probes = []string{
	"FIX_MOUNTED_PROBE", nozzleProbe, "BLTOUCH", "TOUCH_MI_PROBE", "Z_PROBE_ALLEN_KEY", "Z_PROBE_SLED", "SOLENOID_PROBE",
	"SENSORLESS_PROBING", "RACK_AND_PINION_PROBE", "MAGLEV4", "MAG_MOUNTED_PROBE", "BD_SENSOR",
}

// nozzleProbe says that the nozzle itself touches.
const nozzleProbe = "NOZZLE_AS_PROBE"

// geometry reads where nozzle and probe are.
func (r *reader) geometry() parser.Geometry {
	g := parser.Geometry{TriggerMM: r.trigger()}
	if r.on(nozzleProbe) != parser.No {
		g.NozzleProbes = r.flag(parser.NozzleProbes, []string{nozzleProbe}, nil)
	}
	r.homing(&g)
	if r.hotends < 2 {
		return g
	}
	// Offsets are seen from hotend 0: those of the next one tell of that.
	index := max(r.hotend, 1)
	for _, axis := range [...]string{"x", "y", "z"} {
		g.Offsets = appendFound(g.Offsets, r.number(figure{key: parser.Offset(axis), names: []string{"HOTEND_OFFSET_" + strings.ToUpper(axis)},
			list: true, element: index, absent: absentHidden}))
	}
	return g
}

// homesByProbe are the options of which one says that the probe homes.
var homesByProbe = []string{"Z_MIN_PROBE_USES_Z_MIN_ENDSTOP_PIN", "USE_PROBE_FOR_Z_HOMING"}

// homing tells what homes Z. That a probe homes only where one of two options
// says so is from memory, and so is the end that Z_HOME_DIR names. Files that do not mention
// those options, commented out or not, do not tell.
func (r *reader) homing(g *parser.Geometry) {
	g.Towers = r.on("DELTA") == parser.Yes
	g.Away = parser.Maybe
	switch end := r.value(figure{names: []string{"Z_HOME_DIR"}, absent: absentHidden}); {
	case g.Towers, end.Known() && end.Value > 0:
		g.Away = parser.Yes
	case end.Known() && end.Value < 0:
		g.Away = parser.No
	}
	byProbe := r.any(homesByProbe)
	spoken := slices.ContainsFunc(homesByProbe, func(name string) bool { return len(r.s.mentions(name)) > 0 })
	switch {
	case g.TriggerMM.State == parser.Off, g.Away == parser.Yes:
		g.Homes = parser.HomesSwitch
	case g.TriggerMM.State == parser.Unknown || byProbe == parser.Maybe || !spoken:
		g.Homes = parser.HomesUnknown
	case byProbe == parser.Yes:
		g.Homes = parser.HomesProbe
	default:
		g.Homes = parser.HomesSwitch
	}
}

// probing are the options that need a probe, unless the person is the probe.
var probing = []string{
	"AUTO_BED_LEVELING_3POINT", "AUTO_BED_LEVELING_LINEAR", "AUTO_BED_LEVELING_BILINEAR", "AUTO_BED_LEVELING_NONLINEAR",
	"AUTO_BED_LEVELING_UBL", "AUTO_BED_LEVELING_FEATURE", "ENABLE_AUTO_BED_LEVELING",
}

// trigger reads the height at which the probe triggers. The option holds where
// the probe is, seen from the nozzle: below is negative.
func (r *reader) trigger() parser.Setting[float64] {
	f := figure{key: parser.ProbeTrigger, names: []string{"NOZZLE_TO_PROBE_OFFSET"}, unit: unitNegative, list: true, element: 2}
	if r.s.macro(f.names[0]).state == parser.No {
		f = figure{key: f.key, names: []string{"Z_PROBE_OFFSET_FROM_EXTRUDER"}, unit: unitNegative}
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

// storedMaxTemp says that the max temp is edited at a display, which wins over
// the files; the firmware's own checks of the files are left out then.
const storedMaxTemp = "HAS_PROUI_MAXTEMP"

// storage reads whether the firmware stores settings, and which.
func (r *reader) storage(p *parser.Printer) parser.Storage {
	st := parser.Storage{On: r.flag(parser.StorageOn, []string{"EEPROM_SETTINGS"}, nil)}
	if st.On.State == parser.Off {
		return st
	}
	st.CustomLays = true // as the style's firmware publishes it, in both generations
	keep := func(found bool, keys ...parser.Key) {
		if found {
			st.Keeps = append(st.Keeps, keys...)
		}
	}
	keep(p.Hotend.Sensor.Value.Name == "1000", parser.HotendSensor)
	keep(p.Hotend.Loop.Kp.State != parser.Absent, parser.GainP, parser.GainI, parser.GainD)
	keep(p.Hotend.Loop.ModelPowerW.State != parser.Absent, parser.ModelPower)
	for _, s := range p.Limits.Presets {
		keep(!isTarget(s.Key), s.Key)
	}
	keep(p.Geometry.TriggerMM.State != parser.Off, parser.ProbeTrigger)
	for _, s := range p.Geometry.Offsets {
		keep(true, s.Key)
	}
	// A display of the newer generation can edit and store it.
	keep(r.on(storedMaxTemp) != parser.No, parser.MaxTemp)
	keep(p.Flow.FilamentMM.Known(), parser.FilamentWidth)
	keep(p.Flow.MaxMM3PerS.State != parser.Off, parser.MaxFlow)
	for _, s := range p.Flow.CarriedOver {
		keep(true, s.Key)
	}
	return st
}
