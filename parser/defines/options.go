package defines

// option reports whether a name is an option of the style: where no file
// defines it, it is not defined, as the firmware has it. Any other name may
// come from the board or be derived by the firmware.
func option(name string) bool {
	low, high := 0, len(optionNames)
	for low < high {
		mid := int(uint(low+high) >> 1)
		if optionNames[mid] < name {
			low = mid + 1
		} else {
			high = mid
		}
	}
	return low < len(optionNames) && optionNames[low] == name
}

// generation is which state of the style's option names a configuration
// follows. Names, units and the meaning of a zero changed from one to the next.
type generation uint8

const (
	genUnknown generation = iota
	gen10                 // one period per protection; the rise watch in ms
	gen11                 // protections are switches; periods in s
	gen20                 // targets are clamped below the max temp
	gen21                 // model-based control
)

// generationMarks are options that came with a generation, the newest first.
// A commented-out one counts: it was in the file that the owner started from.
var generationMarks = [...]struct {
	gen  generation
	name string
}{
	{gen21, "MPCTEMP"},
	{gen21, "DEFAULT_KP"},
	{gen20, "HOTEND_OVERSHOOT"},
	{gen20, "NOZZLE_TO_PROBE_OFFSET"},
	{gen20, "TEMP_SENSOR_PROBE"},
	{gen20, "PREHEAT_1_LABEL"},
	{gen11, "THERMAL_PROTECTION_HOTENDS"},
	{gen11, "THERMAL_PROTECTION_BED"},
	{gen11, "PREVENT_COLD_EXTRUSION"},
	{gen11, "PREHEAT_1_TEMP_HOTEND"},
	{gen10, "THERMAL_RUNAWAY_PROTECTION_PERIOD"},
	{gen10, "THERMAL_RUNAWAY_PROTECTION_BED_PERIOD"},
	{gen10, "PREVENT_DANGEROUS_EXTRUDE"},
	{gen10, "PLA_PREHEAT_HOTEND_TEMP"},
}

// generationOf tells the generation from the configuration's own version
// where it has one, else from the names that occur.
func generationOf(s *source) generation {
	if g := statedGeneration(s); g != genUnknown {
		return g
	}
	for _, mark := range generationMarks {
		if len(s.mentions(mark.name)) > 0 {
			return mark.gen
		}
	}
	return genUnknown
}

// statedGeneration tells the generation from the configuration's own version.
func statedGeneration(s *source) generation {
	for _, name := range [...]string{"CONFIGURATION_H_VERSION", "CONFIGURATION_ADV_H_VERSION"} {
		if m := s.macro(name); m.winner != nil {
			if g := versionGeneration(m.winner.value()); g != genUnknown {
				return g
			}
		}
	}
	return genUnknown
}

// versionGeneration reads a version such as 010109 or 02000903: two digits
// for each part. It is no number: the leading zero would make it octal.
func versionGeneration(text string) generation {
	if len(text) != 6 && len(text) != 8 {
		return genUnknown
	}
	for i := range len(text) {
		if text[i] < '0' || text[i] > '9' {
			return genUnknown
		}
	}
	switch major, minor := text[:2], text[2:4]; {
	case major == "01" && minor == "00":
		return gen10
	case major == "01":
		return gen11
	case major == "02" && minor == "00":
		return gen20
	case major >= "02":
		return gen21
	}
	return genUnknown
}

// basis is the published firmware by which a configuration is judged: one, or
// both where neither is sure; then the worse of the two counts, and it is said.
type basis uint8

const (
	older basis = 1 << iota // as published in 2021, version 02000901
	newer                   // as published in 2024, version 02010300
)

// The versions whose sources were read, as the hexadecimal numbers that the
// style's firmware compares.
const (
	olderVersion = 0x02000901
	newerVersion = 0x02010300
)

// versionBasis tells the basis of a stated version.
func versionBasis(version uint64) basis {
	switch {
	case version <= olderVersion:
		return older
	case version == newerVersion:
		return newer
	}
	return older | newer
}

// may reports whether the firmware may behave as b publishes it.
func (b basis) may(other basis) bool { return b&other != 0 }

// is reports whether it is sure to.
func (b basis) is(other basis) bool { return b == other }
