package patch_test

import (
	"strings"
	"testing"

	"preflash/patch"
)

// proveDefines proves the changes of one header, for a sheet of which some
// parts are replaced, and returns its new text.
func proveDefines(t *testing.T, header string, replace ...string) string {
	t.Helper()
	sheet := sheetWith(append(replace, "printer.cfg", "Configuration.h")...)
	list := patch.Printers(t, files{"swap.toml": sheet, "Configuration.h": header})
	plan, err := patch.Prove(list, all)
	if err != nil {
		t.Fatal(err)
	}
	if len(plan.Files) != 1 {
		t.Fatalf("changes %d files, want 1", len(plan.Files))
	}
	return string(plan.Files[0].New)
}

const proofHeader = `#define CONFIGURATION_H_VERSION 02000905
#define TEMP_SENSOR_0 5
#define HEATER_0_MINTEMP 5
#define HEATER_0_MAXTEMP 300
#define PREVENT_COLD_EXTRUSION
#define EXTRUDE_MINTEMP 170
#define THERMAL_PROTECTION_HOTENDS
#define THERMAL_PROTECTION_PERIOD 40
#define THERMAL_PROTECTION_HYSTERESIS 4
#define WATCH_TEMP_PERIOD 20
#define WATCH_TEMP_INCREASE 2
#define TEMP_HYSTERESIS 3
`

// Of the numbered definitions the one that reads the sensor best.
func TestProveNumberedSensor(t *testing.T) {
	want := strings.Replace(proofHeader, "SENSOR_0 5", "SENSOR_0 61", 1)
	if got := proveDefines(t, proofHeader); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

// A generation that may not read a cubic coefficient gets a Beta alone on a
// pull-up that no number is made for.
func TestProveWithoutCubic(t *testing.T) {
	const custom = `SENSOR_0 1000
#define HOTEND0_PULLUP_RESISTOR_OHMS 2200
#define HOTEND0_RESISTANCE_25C_OHMS 126830
#define HOTEND0_BETA 4554.72`
	old := strings.NewReplacer("02000905", "02000901", "SENSOR_0 5", "SENSOR_0 11").Replace(proofHeader)
	want := strings.Replace(old, "SENSOR_0 11", custom, 1)
	got := proveDefines(t, old, "ntc-100k-3950", "ntc-100k-4300", "[190, 250]", "[190, 270]",
		"supply_v", "pullup_ohm = 2200\nsupply_v")
	if got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

// The board's pull-up belongs to the number.
func TestProvePullup(t *testing.T) {
	old := strings.Replace(proofHeader, "SENSOR_0 5", "SENSOR_0 1047", 1)
	want := strings.Replace(proofHeader, "SENSOR_0 5", "SENSOR_0 1010", 1)
	got := proveDefines(t, old, "supply_v", "pullup_ohm = 1000\nsupply_v",
		`"ntc"`, `"platinum"`, "ntc-100k-3950", "pt1000")
	if got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

// The oldest generation has no rise watch for the bed, and its hotend's is a
// switch of its own.
func TestProveOldestGeneration(t *testing.T) {
	const old = `#define TEMP_SENSOR_0 61
#define TEMP_SENSOR_BED 1
#define HEATER_0_MINTEMP 5
#define HEATER_0_MAXTEMP 275
#define PREVENT_DANGEROUS_EXTRUDE
#define EXTRUDE_MINTEMP 170
//#define THERMAL_RUNAWAY_PROTECTION_PERIOD 40
//#define THERMAL_RUNAWAY_PROTECTION_HYSTERESIS 4
//#define THERMAL_RUNAWAY_PROTECTION_BED_PERIOD 20
//#define THERMAL_RUNAWAY_PROTECTION_BED_HYSTERESIS 2
//#define WATCH_TEMP_PERIOD 40000
//#define WATCH_TEMP_INCREASE 10
`
	if got, want := proveDefines(t, old), strings.ReplaceAll(old, "//", ""); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}
