package defines

import (
	"slices"
	"testing"
)

// The table is searched by halving: it must be sorted, each name once.
func TestOptionNames(t *testing.T) {
	for i := 1; i < len(optionNames); i++ {
		if optionNames[i-1] >= optionNames[i] {
			t.Errorf("%s stands before %s", optionNames[i-1], optionNames[i])
		}
	}
	for _, name := range optionNames {
		if !isName(name) || !option(name) {
			t.Errorf("%q is no name, or is not found", name)
		}
	}
	for _, name := range []string{
		"", "A", "ZZZ", "EXTRUDER", "EXTRUDERSX", "E0_AUTO_FAN_PIN", "HOTENDS", "HAS_BED", "F_CPU",
	} {
		if option(name) {
			t.Errorf("%q counts as an option; a board or the firmware may define it", name)
		}
	}
}

// Every option that a setting is read from is in the table: else its absence
// would count as unknown. Pins are the board's.
func TestSpellingsAreOptions(t *testing.T) {
	var names []string
	for _, w := range []*watchSpelling{&hotendWatch, &bedWatch} {
		names = append(names, w.on, w.hold, w.hysteresis, w.riseWindow, w.rise, w.oldHold,
			w.oldHysteresis, w.arm)
		names = append(names, w.near...)
	}
	for _, g := range gainNames {
		names = append(names, g.newList, g.oldList, g.newName, g.oldName)
	}
	for _, p := range presetNames {
		names = append(names, p...)
	}
	for _, p := range targets {
		names = append(append(names, p.name), p.gates...)
	}
	for _, c := range carried {
		names = append(append(names, c.names...), c.gates...)
	}
	for _, o := range customOptions {
		names = append(names, "HOTEND0"+o.suffix, "HOTEND7"+o.suffix, "BED"+o.suffix)
	}
	names = slices.Concat(names, probes, probing)
	for _, mark := range generationMarks {
		names = append(names, mark.names...)
	}
	names = append(names, "TEMP_SENSOR_0", "TEMP_SENSOR_7", "TEMP_SENSOR_BED", "HEATER_0_MAXTEMP",
		"HEATER_7_MINTEMP", "HOTEND_OVERSHOOT", "PREVENT_COLD_EXTRUSION", "PREVENT_DANGEROUS_EXTRUDE",
		"EXTRUDE_MINTEMP", "PIDTEMP", "MPCTEMP", "PID_MAX", "BANG_MAX", "MPC_MAX", "MPC_HEATER_POWER",
		"MPC_HEATER_REFTEMP", "MPC_PTC", "PID_FUNCTIONAL_RANGE", "PID_K1", "K1",
		"EXTRUDER_AUTO_FAN_TEMPERATURE", "MESH_TEST_NOZZLE_SIZE", "DEFAULT_NOMINAL_FILAMENT_DIA",
		"D_FILAMENT", "VOLUMETRIC_EXTRUDER_LIMIT", "DEFAULT_VOLUMETRIC_EXTRUDER_LIMIT",
		"NOZZLE_TO_PROBE_OFFSET", "Z_PROBE_OFFSET_FROM_EXTRUDER", "Z_PROBE_SERVO_NR", "PROBE_MANUALLY",
		"EEPROM_SETTINGS", "EXTRUDERS", "PREHEAT_TIME_HOTEND_MS", "MILLISECONDS_PREHEAT_TIME",
		"BOGUS_TEMPERATURE_GRACE_PERIOD", "MAX_CONSECUTIVE_LOW_TEMPERATURE_ERROR_ALLOWED",
		"TEMP_SENSOR_1_AS_REDUNDANT", "DUMMY_THERMISTOR_998_VALUE", "DUMMY_THERMISTOR_999_VALUE",
		"CONFIGURATION_H_VERSION")
	for _, name := range names {
		if !option(name) {
			t.Errorf("%s is read, and is missing in the table of options", name)
		}
	}
}
