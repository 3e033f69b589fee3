package defines

import (
	"slices"
	"strconv"

	"preflash/parser"
)

// oversample is how many readings of the converter become one temperature, as
// the style's firmware publishes it, where the board does not filter by itself.
const oversample = 16

// printer reads everything that the neutral printer has.
func (r *reader) printer(tool int) *parser.Printer {
	p := &parser.Printer{Style: styleName, Tool: tool, Files: r.s.files, Remarks: r.s.remarks}
	r.tool(p)
	n := strconv.Itoa(r.hotend)
	p.Hotend.Oversample = oversample
	p.Hotend.FewerOfFine = r.basis.may(older)
	p.Hotend.Sensor = r.sensor(parser.HotendSensor, "TEMP_SENSOR_"+n, "HOTEND"+n)
	p.Hotend.CustomCubic = readsCubic(r.s, r.basis, "HOTEND"+n)
	p.Hotend.Loop = r.loop()
	p.Hotend.Outputs = r.outputs()
	p.Hotend.Watch = r.watch(&hotendWatch)
	r.atTemperature(&p.Hotend.Watch)
	r.second(&p.Hotend)
	p.Bed = r.bed()
	p.Limits = r.limits(n)
	r.guards(p)
	r.bounds(p)
	p.ColdSide = r.coldSide()
	p.Flow = r.flow()
	p.Geometry = r.geometry()
	p.Storage = r.storage(p)
	r.unbuildable(p)
	if s := &p.Hotend.Sensor; !mismatched(p) && s.State == parser.Set && s.Value.Form == parser.FormNone {
		mismatch(p, s.At,
			"the configuration has no sensor for tool "+strconv.Itoa(tool)+": "+s.Name+" is 0")
	}
	return p
}

// mismatched reports whether the sheet's tool is known to be missing.
func mismatched(p *parser.Printer) bool {
	return slices.ContainsFunc(p.Remarks, func(r parser.Remark) bool {
		return r.Kind == parser.RemarkMismatch
	})
}

// mismatch remarks that the sheet's tool is missing.
func mismatch(p *parser.Printer, at parser.Span, text string) {
	p.Remarks = append(p.Remarks, parser.Remark{Kind: parser.RemarkMismatch, At: at, Text: text})
}

// tool finds the hotend's index and whether the configuration has that tool.
func (r *reader) tool(p *parser.Printer) {
	r.hotend = p.Tool
	count := r.value(numberSpelling{names: []string{"EXTRUDERS"}, absent: absentDefault})
	switch {
	case count.Known() && count.Value < 1:
		text := "the configuration has no extruder (EXTRUDERS is 0), and so no hotend"
		if r.s.macro("TEMP_SENSOR_0").removed {
			text += "; its TEMP_SENSOR_0 has no effect"
		}
		mismatch(p, count.At, text)
		return
	case count.Known() && float64(p.Tool) >= count.Value:
		mismatch(p, count.At, "correct printer.tool, which is "+strconv.Itoa(p.Tool)+", counted from 0: "+
			"the configuration has "+strconv.Itoa(int(count.Value))+" (EXTRUDERS)")
	}
	extruders := 1
	if count.Known() && count.Value <= mostHotends {
		extruders = int(count.Value)
		r.tools = extruders
	}
	r.hotends = extruders
	// Several extruders may feed one hotend: the firmware derives how many of
	// those there are. All feed the one, or two each.
	if n, known := r.s.number("HOTENDS"); known == parser.Yes && n >= 1 && n < float64(extruders) {
		r.hotends = int(n)
		r.hotend = p.Tool / 2
		if r.hotends == 1 {
			r.hotend = 0
		}
	}
	if p.Tool == 1 && r.on("TEMP_SENSOR_1_AS_REDUNDANT") == parser.Yes {
		mismatch(p, r.s.macro("TEMP_SENSOR_1_AS_REDUNDANT").winner.at, "correct printer.tool, which is 1: "+
			"the configuration uses that sensor as a second one for tool 0 (TEMP_SENSOR_1_AS_REDUNDANT)")
	}
}

// bed reads the bed. One without a sensor is not heated.
func (r *reader) bed() parser.Bed {
	const name = "TEMP_SENSOR_BED"
	b := parser.Bed{Heated: parser.Setting[bool]{Key: parser.BedHeated, Name: name}}
	if len(r.s.mentions(name)) == 0 {
		b.Heated.State = parser.Off
		return b
	}
	b.Sensor = r.sensor(parser.BedSensor, name, "BED")
	h, s := &b.Heated, &b.Sensor
	h.State, h.Place, h.Hides, h.Why = s.State, s.Place, nil, s.Why
	switch {
	case s.State == parser.Set && s.Value.Form == parser.FormNone, r.s.macro(name).state == parser.No:
		*h = parser.Setting[bool]{Key: h.Key, Name: name, State: parser.Off, Place: s.Place}
		b.Sensor = parser.Setting[parser.SensorDef]{}
		return b
	case s.State == parser.Set:
		h.Value = true
	}
	b.Watch = r.watch(&bedWatch)
	return b
}

// limits reads the temperatures that the firmware enforces. n is the heater.
func (r *reader) limits(n string) parser.Limits {
	minName, maxName := "HEATER_"+n+"_MINTEMP", "HEATER_"+n+"_MAXTEMP"
	l := parser.Limits{}
	l.MinTemp = r.number(numberSpelling{
		key: parser.MinTemp, names: []string{minName}, round: roundNearest,
		near: []string{maxName, "BED_MINTEMP", "TEMP_SENSOR_" + n},
	})
	l.MaxTemp = r.number(numberSpelling{
		key: parser.MaxTemp, names: []string{maxName}, round: roundDown,
		near: []string{minName, "BED_MAXTEMP", "TEMP_SENSOR_" + n},
	})
	margin := numberSpelling{
		key: parser.Margin, names: []string{"HOTEND_OVERSHOOT"}, round: roundUp,
		absent: absentDefault, near: []string{"BED_OVERSHOOT", maxName},
	}
	if r.gen >= genOlder || len(r.s.mentions(margin.names[0])) > 0 {
		margin.usual = 15 // in both that are known; earlier ones may not clamp at all
	}
	l.Margin = r.number(margin)
	l.Presets = r.presets()
	r.autoTarget(&l)

	guards := []string{"PREVENT_COLD_EXTRUSION", "PREVENT_DANGEROUS_EXTRUDE"}
	if r.gen == gen10 {
		guards[0], guards[1] = guards[1], guards[0]
	}
	l.ColdGuard = r.flag(parser.ColdGuard, guards,
		[]string{"EXTRUDE_MINTEMP", "PREVENT_LENGTHY_EXTRUDE", "PIDTEMP"})
	l.MinExtrude = r.number(numberSpelling{
		key: parser.MinExtrude, names: []string{"EXTRUDE_MINTEMP"}, round: roundNearest,
		near: []string{l.ColdGuard.Name, "PREVENT_LENGTHY_EXTRUDE"},
	})
	// As the style's firmware publishes it, in both generations: for so long
	// after the target rises from 0, the minimum is not looked at.
	l.Graces = appendFound(l.Graces, r.number(numberSpelling{
		key:   parser.Grace("while heating up"),
		names: []string{"PREHEAT_TIME_HOTEND_MS", "MILLISECONDS_PREHEAT_TIME"},
		unit:  unitMillis, round: roundDown, absent: absentHidden,
	}))
	// The first bad reading switches every heater off and sets the targets to 0,
	// so that most faults do not show again once this time is over.
	l.HaltGrace = r.number(numberSpelling{
		key: parser.HaltGrace, names: []string{"BOGUS_TEMPERATURE_GRACE_PERIOD"},
		unit: unitMillis, round: roundDown, absent: absentHidden,
	})
	l.BadSamples = appendFound(l.BadSamples,
		r.number(numberSpelling{
			key:   parser.BadSamples("below the minimum"),
			names: []string{"MAX_CONSECUTIVE_LOW_TEMPERATURE_ERROR_ALLOWED"},
			round: roundDown, absent: absentHidden,
		}))
	return l
}

// appendFound adds a setting unless it is hidden.
func appendFound(list []parser.Setting[float64], s parser.Setting[float64]) []parser.Setting[float64] {
	if s.State == parser.Absent {
		return list
	}
	return append(list, s)
}

// presetNames are the spellings of each preset's hotend temperature, the
// newest first.
var presetNames = [...][]string{
	{"PREHEAT_1_TEMP_HOTEND", "PLA_PREHEAT_HOTEND_TEMP"},
	{"PREHEAT_2_TEMP_HOTEND", "ABS_PREHEAT_HOTEND_TEMP"},
	{"PREHEAT_3_TEMP_HOTEND"},
	{"PREHEAT_4_TEMP_HOTEND"},
	{"PREHEAT_5_TEMP_HOTEND"},
	{"PREHEAT_6_TEMP_HOTEND"},
	{"PREHEAT_7_TEMP_HOTEND"},
	{"PREHEAT_8_TEMP_HOTEND"},
	{"PREHEAT_9_TEMP_HOTEND"},
	{"PREHEAT_10_TEMP_HOTEND"},
}

// targets are other temperatures that the firmware itself sets as a target,
// where the option in gate is on.
var targets = [...]struct {
	key   parser.Key
	name  string
	gates []string
}{
	{"preset mesh test", "MESH_TEST_HOTEND_TEMP", []string{"G26_MESH_VALIDATION", "UBL_G26_MESH_VALIDATION"}},
	{"preset probing", "PROBING_NOZZLE_TEMP", []string{"PREHEAT_BEFORE_PROBING"}},
	{"preset levelling", "LEVELING_NOZZLE_TEMP", []string{"PREHEAT_BEFORE_LEVELING"}},
}

func (r *reader) presets() []parser.Setting[float64] {
	var list []parser.Setting[float64]
	for i, names := range presetNames {
		list = appendFound(list, r.number(numberSpelling{
			key: parser.Preset(i + 1), names: names, round: roundDown, absent: absentHidden,
		}))
	}
	for _, t := range targets {
		if r.any(t.gates) != parser.No {
			list = appendFound(list, r.number(numberSpelling{
				key: t.key, names: []string{t.name}, round: roundDown, absent: absentHidden,
			}))
		}
	}
	return list
}

// isTarget reports whether a key is one of targets, which are not stored.
func isTarget(key parser.Key) bool {
	for i := range targets {
		if targets[i].key == key {
			return true
		}
	}
	return false
}

// any reports whether one of several options is on.
func (r *reader) any(names []string) parser.Tri {
	all := parser.No
	for _, name := range names {
		switch r.on(name) {
		case parser.Yes:
			return parser.Yes
		case parser.Maybe:
			all = parser.Maybe
		}
	}
	return all
}
