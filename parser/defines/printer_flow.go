package defines

import (
	"preflash/parser"
)

// carried are figures that belong to the old melt path. They count only where
// one of the gates is on; no gate is always on.
var carried = [...]struct {
	key   string
	names []string
	gates []string
}{
	{"pressure advance", []string{"ADVANCE_K", "LIN_ADVANCE_K", "EXTRUDER_ADVANCE_K"},
		[]string{"LIN_ADVANCE", "ADVANCE"}},
	{"loop term of the speed", []string{"DEFAULT_Kc"},
		[]string{"PID_EXTRUSION_SCALING", "PID_ADD_EXTRUSION_RATE"}},
	{"loop term of the part fan", []string{"DEFAULT_Kf"}, []string{"PID_FAN_SCALING"}},
	{"retract length", []string{"RETRACT_LENGTH"}, []string{"FWRETRACT"}},
	{"retract length at a tool change", []string{"RETRACT_LENGTH_SWAP"}, []string{"FWRETRACT"}},
	{"retract recovery length", []string{"RETRACT_RECOVER_LENGTH"}, []string{"FWRETRACT"}},
	{"unload length", []string{"FILAMENT_CHANGE_UNLOAD_LENGTH", "FILAMENTCHANGE_FINALRETRACT"}, pauseGates},
	{"load length", []string{"FILAMENT_CHANGE_FAST_LOAD_LENGTH", "FILAMENT_CHANGE_LOAD_LENGTH"}, pauseGates},
	{"slow load length", []string{"FILAMENT_CHANGE_SLOW_LOAD_LENGTH"}, pauseGates},
	{"purge length", []string{
		"ADVANCED_PAUSE_PURGE_LENGTH", "ADVANCED_PAUSE_EXTRUDE_LENGTH", "FILAMENT_CHANGE_EXTRUDE_LENGTH",
	}, pauseGates},
	{"pause retract length", []string{
		"PAUSE_PARK_RETRACT_LENGTH", "FILAMENT_CHANGE_RETRACT_LENGTH", "FILAMENTCHANGE_FIRSTRETRACT",
	}, pauseGates},
	{"tool change length", []string{"TOOLCHANGE_FS_LENGTH", "TOOLCHANGE_FIL_SWAP_LENGTH"},
		[]string{"TOOLCHANGE_FILAMENT_SWAP"}},
}

var pauseGates = []string{"ADVANCED_PAUSE_FEATURE", "FILAMENT_CHANGE_FEATURE", "FILAMENTCHANGEENABLE"}

// flow reads what the configuration knows of filament and melt.
func (r *reader) flow() parser.Flow {
	var f parser.Flow
	f.NozzleMM = r.number(numberSpelling{
		key: parser.NozzleDiameter, names: []string{"MESH_TEST_NOZZLE_SIZE"}, absent: absentHidden,
	})
	f.FilamentMM = r.number(numberSpelling{
		key: parser.FilamentWidth, names: []string{"DEFAULT_NOMINAL_FILAMENT_DIA", "D_FILAMENT"},
	})
	f.MaxMM3PerS = r.maxFlow()
	if r.on("PREVENT_LENGTHY_EXTRUDE") == parser.Yes {
		f.PushMM = r.number(numberSpelling{
			key: parser.LongestPush, names: []string{"EXTRUDE_MAXLENGTH"}, absent: absentHidden,
		})
	}
	for _, c := range carried {
		gate := r.any(c.gates)
		if gate == parser.No {
			continue
		}
		s := r.number(numberSpelling{
			key: parser.Carried(c.key), names: c.names, list: true,
			element: r.hotend, repeats: true, absent: absentHidden,
		})
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
	s := r.number(numberSpelling{
		key: parser.MaxFlow, names: []string{"DEFAULT_VOLUMETRIC_EXTRUDER_LIMIT"},
		absent: absentOff, list: true, element: r.hotend, repeats: true, near: []string{gate},
	})
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
