package defines

import (
	"strconv"
	"strings"
	"sync"

	"preflash/parser"
)

// furtherWatch is spelled like the bed's.
func furtherWatch(name string) *watchSpelling {
	return &watchSpelling{
		keys: hotendWatch.keys,
		on:   "THERMAL_PROTECTION_" + name, dropPeriod: "THERMAL_PROTECTION_" + name + "_PERIOD",
		hysteresis:    "THERMAL_PROTECTION_" + name + "_HYSTERESIS",
		heatingWindow: "WATCH_" + name + "_TEMP_PERIOD", rise: "WATCH_" + name + "_TEMP_INCREASE",
		arm: "TEMP_" + name + "_HYSTERESIS",
	}
}

// otherHeater is how the limits of a heater are spelled, and its sensor and watch
// where they are none of the tool's own settings.
type otherHeater struct {
	name           string
	tool           int
	limits         []numberSpelling
	sensor, custom string // the option, and what begins the figures of a custom one
	watch          *watchSpelling
}

// otherHeaters are all that this style knows.
var otherHeaters = sync.OnceValue(func() []otherHeater {
	list := []otherHeater{{name: "the bed", tool: parser.NoTool, limits: limitsOf("BED")}}
	for n := range mostHotends {
		id := strconv.Itoa(n)
		list = append(list, otherHeater{name: "tool " + id, tool: n, limits: limitsOf("HEATER_" + id),
			sensor: "TEMP_SENSOR_" + id, custom: "HOTEND" + id})
	}
	for _, further := range []otherHeater{
		{name: "the chamber", custom: "CHAMBER"},
		{name: "the cooler", custom: "COOLER"},
	} {
		further.tool, further.sensor = parser.NoTool, "TEMP_SENSOR_"+further.custom
		further.limits, further.watch = limitsOf(further.custom), furtherWatch(further.custom)
		list = append(list, further)
	}
	return list
})

// limitsOf spells the limits of a heater. What is absent is off.
func limitsOf(heater string) []numberSpelling {
	return []numberSpelling{
		{key: parser.MinTemp, names: []string{heater + "_MINTEMP"}, absent: absentOff},
		{key: parser.MaxTemp, names: []string{heater + "_MAXTEMP"}, absent: absentOff},
		{key: parser.Margin, names: []string{heater + "_OVERSHOOT"}, absent: absentOff},
		{key: parser.PowerLimit("heater"), names: []string{"MAX_" + heater + "_POWER"},
			unit: unitCounts, absent: absentOff},
	}
}

// Others reads what the tool's own settings leave out.
func (c *config) Others() []parser.Heater {
	var list []parser.Heater
	r := &reader{s: c.s, gen: c.gen} // its slots are for nobody
	for i := range otherHeaters() {
		o := &otherHeaters()[i]
		if o.tool == c.hotend {
			continue
		}
		var settings []parser.Description
		add := func(d parser.Description) { settings = append(settings, d) }
		for _, limit := range o.limits {
			s := r.value(limit)
			add(s.Describe())
		}
		if o.sensor != "" {
			s := r.sensor(parser.HotendSensor, o.sensor, o.custom)
			if o.tool >= c.hotends && s.State == parser.Set {
				s.State = parser.Off // there is no such hotend
			}
			add(s.Describe())
		}
		if o.watch != nil && c.gen != gen10 { // which had neither a chamber nor a cooler
			w := r.watch(o.watch)
			w.Describe(add)
		}
		list = append(list, parser.Heater{Name: o.name, Tool: o.tool, Settings: settings})
	}
	return list
}

// elsewhere reports whether an option protects or measures a heater other than
// the hotend with this index.
func elsewhere(name string, hotend int) bool {
	if !looksProtective(name) && !looksMeasuring(name) {
		return false
	}
	own := strconv.Itoa(hotend)
	switch name {
	case "TEMP_SENSOR_" + own, "HEATER_" + own + "_MAXTEMP", "HEATER_" + own + "_MINTEMP":
		return false
	}
	return !strings.HasPrefix(name, "HOTEND"+own+"_")
}

// looksMeasuring looks for the figures of a custom sensor, for the other limits of
// a heater, and for what puts its trips off.
func looksMeasuring(name string) bool {
	for _, end := range [...]string{
		"_OHMS", "_BETA", "_SH_C_COEFF", "_RESISTANCE_25C_OHMS", "_HYSTERESIS", "_BED_POWER",
		"_CHAMBER_POWER", "_THERMOCOUPLE_ERRORS", "THERMOCOUPLE_MAX_ERRORS", "PREHEAT_TIME_BED_MS",
		"_CHECK_INTERVAL",
	} {
		if strings.HasSuffix(name, end) {
			return true
		}
	}
	return false
}
