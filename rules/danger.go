package rules

import (
	"cmp"
	"slices"

	"preflash/parser"
)

// Danger is what a finding can lead to, the worst first.
type Danger uint8

const (
	Fire Danger = iota // it can start a fire, or the firmware is blind to one
	Heat               // something overheats, strikes, or shuts down
	Bad                // it prints badly
	Know               // it is good to know
)

func (d Danger) String() string { return [...]string{"fire", "heat", "print", "know"}[d] }

// Text says it in a few words.
func (d Danger) Text() string {
	return [...]string{
		"Can start a fire, or blinds the firmware",
		"Overheats, strikes or shuts down",
		"Prints badly",
		"Good to know",
	}[d]
}

// Harms that set some findings of a rule apart from the others.
const (
	pastRating = "past a rating"
	overShown  = "hotter than shown"
)

// Rank is a place in the order of danger.
type Rank struct {
	Danger Danger
	Rule   string
	From   Level  // holds for findings of this level and above
	Only   string // holds for this harm, or this setting; "" for all
}

// ranks is the order of danger: common practice, no source. A finding stands at
// the first row that holds for it. What surely happens goes before what may, the
// cause before what follows from it.
var ranks = []Rank{
	// There is no such hotend, or no true temperature.
	{Fire, "sheet-mismatch", Note, ""},
	{Fire, "sensor-placeholder", Note, ""},
	{Fire, "sensor-kind", Warning, ""},
	{Fire, "sensor-unknown", Error, ""},
	// One more fault is a fire.
	{Fire, "runaway-off", Note, ""},
	{Fire, "runaway-off-bed", Note, ""},
	{Fire, "heater-overpower", Note, ""},
	{Fire, "sensor-curve", Warning, pastRating},
	{Fire, "heater-current", Note, ""},
	{Fire, "supply-budget", Error, ""},
	{Fire, "runaway-loose", Error, string(parser.HotendHeatingWindow)},
	{Fire, "runaway-loose", Error, string(parser.HotendErrorSum)},
	{Fire, "runaway-loose", Error, string(parser.HotendDropPeriod)},
	{Fire, "runaway-loose", Error, ""},
	{Fire, "sensor-fault", Error, ""},
	{Fire, "watchdog-off", Note, ""},
	// The reading is true, and all the same something gets too hot.
	{Heat, "temp-ceiling", Note, ""},
	{Heat, "heater-duty", Note, ""},
	{Heat, "heater-model", Note, ""},
	{Heat, "sensor-curve", Warning, overShown},
	{Heat, "sensor-unknown", Note, ""},
	{Heat, "fan-voltage", Note, ""},
	{Heat, "coldside-fan", Note, ""},
	{Heat, "runaway-loose", Warning, ""},
	{Heat, "sensor-fault", Note, ""},
	{Heat, "supply-budget", Note, ""},
	// It strikes or stops.
	{Heat, "tip-shift", Error, ""},
	{Heat, "pid-stale", Error, ""},
	{Heat, "runaway-tight", Note, ""},
	{Heat, "sensor-redundant", Note, ""},
	{Heat, "min-temp-high", Note, ""},
	{Heat, "config-broken", Note, ""},
	{Heat, "saved-damaged", Note, ""},
	{Heat, "preset-over", Warning, ""},

	{Bad, "sensor-curve", Note, ""},
	{Bad, "cold-extrusion", Note, ""},
	{Bad, "heater-headroom", Warning, ""},
	{Bad, "heater-underpower", Note, ""},
	{Bad, "temp-reach", Note, ""},
	{Bad, "stored-settings", Warning, ""},
	{Bad, "control-coarse", Note, ""},
	{Bad, "pid-stale", Note, ""},
	{Bad, "tip-shift", Warning, ""},
	{Bad, "sensor-resolution", Warning, ""},
	{Bad, "nozzle-size", Note, ""},
	{Bad, "flow-limit", Warning, ""},
	{Bad, "setting-shadowed", Note, ""},
	{Bad, "advance-stale", Note, ""},

	{Know, "waiver-expired", Note, ""},
	{Know, "tip-shift", Note, ""},
	{Know, "sensor-kind", Note, ""},
	{Know, "runaway-loose", Note, ""},
	{Know, "preset-over", Note, ""},
	{Know, "heater-stuck-on", Note, ""},
	{Know, "heater-headroom", Note, ""},
	{Know, "stored-settings", Note, ""},
	{Know, "saved-hidden", Note, ""},
	{Know, "sensor-resolution", Note, ""},
	{Know, "flow-limit", Note, ""},
	{Know, "fan-wires", Note, ""},
	{Know, "config-gap", Note, ""},
}

// Ranks returns the order of danger, the worst first.
func Ranks() []Rank { return slices.Clone(ranks) }

// dangerOf is the danger of a finding whose rule has no row.
var dangerOf = [...]Danger{Note: Know, Warning: Bad, Error: Heat}

// RankOf finds the place of a finding in the order of danger, from 1: that of
// the first row that holds for it, else the last of its level's danger.
func RankOf(f *Finding) (int, Danger) {
	for i, r := range ranks {
		if r.Rule == f.Rule && f.Level >= r.From && (r.Only == "" || r.Only == f.Harm || r.Only == f.About) {
			return i + 1, r.Danger
		}
	}
	danger, last := dangerOf[f.Level], 0
	for i, r := range ranks {
		if r.Danger == danger {
			last = i + 1
		}
	}
	return last, danger
}

// ByDanger sorts findings: the worst first, then by level, file and place.
func ByDanger(findings []Finding) {
	type placed struct {
		Finding
		rank int
	}
	list := make([]placed, len(findings))
	for i := range findings {
		rank, _ := RankOf(&findings[i])
		list[i] = placed{findings[i], rank}
	}
	slices.SortStableFunc(list, func(a, b placed) int {
		return cmp.Or(
			cmp.Compare(a.rank, b.rank),
			cmp.Compare(b.Level, a.Level),
			cmp.Compare(fileName(a.At), fileName(b.At)),
			cmp.Compare(a.At.Start, b.At.Start),
		)
	})
	for i := range list {
		findings[i] = list[i].Finding
	}
}
