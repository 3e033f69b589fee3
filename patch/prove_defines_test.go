package patch_test

import (
	"strings"
	"testing"

	"preflash/parser"
	"preflash/parser/defines"
	"preflash/patch"
)

// proveDefines proves the changes of one header and returns its new text.
func proveDefines(t *testing.T, header string) string {
	t.Helper()
	list := printers(t, map[string]string{
		"swap.toml": strings.Replace(proofSheet, "printer.cfg", "Configuration.h", 1), "Configuration.h": header,
	}, "swap.toml")
	list[0].Style = defines.Style
	list[0].Request = parser.Request{Files: []string{"Configuration.h"}}
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

// The definition that a change writes may leave its rule with a note to add.
func TestProveLeavesNote(t *testing.T) {
	want := strings.Replace(proofHeader, "SENSOR_0 5", "SENSOR_0 11", 1)
	if got := proveDefines(t, proofHeader); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

// The oldest generation has no rise watch for the bed, and its hotend's is a
// switch of its own.
func TestProveOldestGeneration(t *testing.T) {
	const old = `#define TEMP_SENSOR_0 11
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
