package defines

import (
	"strconv"
	"strings"

	"preflash/parser"
)

// chamberWatch and coolerWatch are spelled like the bed's.
var chamberWatch, coolerWatch = furtherWatch("CHAMBER"), furtherWatch("COOLER")

func furtherWatch(name string) watchSpelling {
	return watchSpelling{
		keys: hotendWatch.keys,
		on:   "THERMAL_PROTECTION_" + name, hold: "THERMAL_PROTECTION_" + name + "_PERIOD",
		hysteresis: "THERMAL_PROTECTION_" + name + "_HYSTERESIS",
		riseWindow: "WATCH_" + name + "_TEMP_PERIOD", rise: "WATCH_" + name + "_TEMP_INCREASE",
		arm: "TEMP_" + name + "_HYSTERESIS",
	}
}

// Others reads what the tool's own settings leave out.
func (c *config) Others() []parser.Heater {
	list := []parser.Heater{c.other("the bed", parser.NoTool, "BED", "", nil)}
	for n := range mostHotends {
		if n != c.hotend {
			id := strconv.Itoa(n)
			list = append(list, c.other("tool "+id, n, "HEATER_"+id, "TEMP_SENSOR_"+id, nil))
		}
	}
	return append(list,
		c.other("the chamber", parser.NoTool, "CHAMBER", "TEMP_SENSOR_CHAMBER", &chamberWatch),
		c.other("the cooler", parser.NoTool, "COOLER", "TEMP_SENSOR_COOLER", &coolerWatch))
}

// other reads the limits of a heater, and its sensor and watch where they are
// none of the tool's own settings. What is absent is off.
func (c *config) other(name string, tool int, prefix, sensor string, watch *watchSpelling) parser.Heater {
	r := &reader{s: c.s, gen: c.gen} // its slots are for nobody
	h := parser.Heater{Name: name, Tool: tool, Settings: make([]parser.Description, 0, 5)}
	for _, f := range [...]numberSpelling{
		{key: parser.MinTemp, names: []string{prefix + "_MINTEMP"}, absent: absentOff},
		{key: parser.MaxTemp, names: []string{prefix + "_MAXTEMP"}, absent: absentOff},
		{key: parser.Margin, names: []string{prefix + "_OVERSHOOT"}, absent: absentOff},
		{key: parser.PowerLimit("heater"), names: []string{"MAX_" + prefix + "_POWER"},
			unit: unitCounts, absent: absentOff},
	} {
		s := r.value(f)
		h.Settings = append(h.Settings, s.Describe())
	}
	if sensor != "" {
		custom := prefix
		if tool >= 0 {
			custom = "HOTEND" + strconv.Itoa(tool)
		}
		s := r.sensor(parser.HotendSensor, sensor, custom)
		if tool >= c.hotends && s.State == parser.Set {
			s.State = parser.Off // there is no such hotend
		}
		h.Settings = append(h.Settings, s.Describe())
	}
	if watch != nil && c.gen != gen10 { // which had neither a chamber nor a cooler
		w := r.watch(watch)
		w.Describe(func(d parser.Description) { h.Settings = append(h.Settings, d) })
	}
	return h
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
