package defines

import (
	"strconv"
	"strings"

	"preflash/parser"
)

// generation is which state of the firmware a configuration is written for, in
// the order in which they came. Names, units and the meaning of a zero changed
// from one to the next.
type generation uint8

const (
	genUnknown generation = iota
	gen10                 // one period per protection; the heating check in ms
	gen11                 // protections are switches; periods in s
	gen20                 // HEATER_n and PREHEAT_n names; custom sensors
	genOlder              // as published in 2021, version 02000901
	genBetween            // model-based control; how it behaves was not read
	genNewer              // as published in 2024, version 02010300
	genAbove              // gains spelled DEFAULT_KP; how it behaves was not read
)

// basis is the published firmware by which a configuration is judged: one, or
// both where neither is sure; then the worse of the two counts, and it is said.
type basis uint8

const (
	older basis = 1 << iota // as published in 2021
	newer                   // as published in 2024
)

// may reports whether the firmware may behave as the other publishes it.
func (b basis) may(other basis) bool { return b&other != 0 }

// is reports whether it is sure to.
func (b basis) is(other basis) bool { return b == other }

// basis tells the basis of a generation. What came before the older one is
// judged as that.
func (g generation) basis() basis {
	switch g {
	case gen10, gen11, gen20, genOlder:
		return older
	case genNewer:
		return newer
	}
	return older | newer
}

// The versions whose sources were read, as the hexadecimal numbers that the
// style's firmware compares.
const (
	olderVersion = 0x02000901
	newerVersion = 0x02010300
)

// versionOptions state the version, the one in the first file and the other in
// the second.
var versionOptions = [...]string{"CONFIGURATION_H_VERSION", secondVersion}

const secondVersion = "CONFIGURATION_ADV_H_VERSION"

// generationMarks are options that came with a generation, the newest first; of
// genBetween and genNewer as the style's firmware publishes them, the others from
// memory. A commented-out one counts: it was in the file that the owner started
// from.
var generationMarks = [...]struct {
	gen   generation
	names []string
}{
	{genAbove, []string{"DEFAULT_KP"}},
	{genNewer, []string{"PREHEAT_TIME_HOTEND_MS", "PREHEAT_TIME_BED_MS", "TEMP_TUNING_MAINTAIN_FAN",
		"REPORT_ADAPTIVE_FAN_SLOWING", "FAN_KICKSTART_POWER"}},
	{genBetween, []string{"MPCTEMP", "ADVANCE_K", "THERMAL_PROTECTION_VARIANCE_MONITOR",
		"DISABLE_OTHER_EXTRUDERS"}},
	{gen20, []string{"HOTEND_OVERSHOOT", "NOZZLE_TO_PROBE_OFFSET", "TEMP_SENSOR_PROBE", "PREHEAT_1_LABEL"}},
	{gen11, []string{"THERMAL_PROTECTION_HOTENDS", "THERMAL_PROTECTION_BED", "PREVENT_COLD_EXTRUSION",
		"PREHEAT_1_TEMP_HOTEND"}},
	{gen10, []string{"THERMAL_RUNAWAY_PROTECTION_PERIOD", "THERMAL_RUNAWAY_PROTECTION_BED_PERIOD",
		"PREVENT_DANGEROUS_EXTRUDE", "PLA_PREHEAT_HOTEND_TEMP"}},
}

// generationOf tells the generation from the configuration's own version
// where it has one, else from the names that occur.
func generationOf(s *source) generation {
	if g, _ := statedGeneration(s); g != genUnknown {
		return g
	}
	for _, mark := range &generationMarks {
		for _, name := range mark.names {
			if len(s.mentions(name)) > 0 {
				return mark.gen
			}
		}
	}
	return genUnknown
}

// basisOf tells by which firmware files are judged. Those that state no version
// may be for a later one than their names show, unless they have a name that it
// no longer takes.
func basisOf(s *source, g generation) basis {
	b := g.basis()
	if b != older || stated(s) {
		return b
	}
	for i := range refusedNames {
		if name := strings.ReplaceAll(refusedNames[i].name, "#", "0"); len(s.mentions(name)) > 0 {
			return b
		}
	}
	return older | newer
}

// statedGeneration tells the generation from the configuration's own version,
// and where that stands.
func statedGeneration(s *source) (generation, *define) {
	for _, name := range versionOptions {
		if m := s.macro(name); m.winner != nil {
			if g := versionGeneration(m.winner.value()); g != genUnknown {
				return g, m.winner
			}
		}
	}
	return genUnknown, nil
}

// stated reports whether the configuration states its version.
func stated(s *source) bool {
	g, _ := statedGeneration(s)
	return g != genUnknown
}

// versionGeneration reads a version such as 010109 or 02000901: two digits
// for each part, which are compared as a hexadecimal number.
func versionGeneration(text string) generation {
	version, err := strconv.ParseUint(text, 16, 64)
	if err != nil || len(text) != 6 && len(text) != 8 {
		return genUnknown
	}
	switch {
	case version < 0x010000:
		return genUnknown
	case version < 0x010100:
		return gen10
	case version < 0x020000:
		return gen11
	case version < olderVersion:
		return gen20
	case version == olderVersion:
		return genOlder
	case version < newerVersion:
		return genBetween
	case version == newerVersion:
		return genNewer
	}
	return genAbove
}

// judgedByBoth says once that it is not sure by which firmware a configuration
// is judged.
func judgedByBoth(s *source) []parser.Remark {
	if s.basis != older|newer {
		return nil
	}
	const versions = "02000901 and 02010300"
	if _, d := statedGeneration(s); d != nil {
		return []parser.Remark{{Kind: parser.RemarkGap, At: d.body, Text: d.name + " is " + d.value() +
			"; what the firmware does is known of " + versions + ": " +
			"where these two differ, the worse counts"}}
	}
	return []parser.Remark{{Kind: parser.RemarkGap, Text: "nothing in these files says " +
		"which firmware they are for (" + versionOptions[0] + "); " +
		"where " + versions + " differ, the worse counts"}}
}

// outOfOrder says that the second file is named before the first, which the
// firmware reads before it.
func outOfOrder(s *source) []parser.Remark {
	m := s.macro(secondVersion)
	if m.winner == nil || len(s.files) < 2 || m.winner.at.File != s.files[0] {
		return nil
	}
	return []parser.Remark{{Kind: parser.RemarkGap, At: m.winner.at,
		Text: "this is the second file, and the sheet names it before " + s.files[1].Name + "; " +
			"name them in the order in which the firmware reads them"}}
}
