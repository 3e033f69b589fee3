// Package sheet reads the swap sheet: swap.toml, one printer, one hotend swap.
package sheet

import (
	"time"

	"preflash/parser"
)

// Key is one key of the sheet: its value, whether the sheet gives it, and
// where. Value holds the documented default where Given is false.
type Key[T any] struct {
	Value T
	Given bool
	At    parser.Span // the value's bytes; the nearest table or the file's start where it is not given
	Path  string      // such as new.heater.rated_w
}

// Sheet is one swap sheet. Figures carry their unit in the key.
type Sheet struct {
	File    *parser.File
	Printer Printer
	New     Hotend
	Old     *Hotend // nil where the sheet does not describe it
	Tuned   *Tuned  // nil before the new hotend was tuned
	Done    Done
	Waivers []Waiver
}

// Printer is the sheet's [printer]: what the configuration cannot know.
type Printer struct {
	Name       Key[string]
	Style      Key[string]     // empty: told from the files
	Config     []Key[string]   // paths inside the tree
	ZReference Key[string]     // probe, endstop or nozzle; empty where not given
	Absent     []Key[string]   // from the tree's root, or absolute; also outside it
	Outside    []parser.Define // defined and undefined: what board or build say
	Tool       Key[int]        // default 0
	SupplyV    Key[float64]    // required
	SupplyW    Key[float64]    // not given: the budget cannot be told
	OtherLoadW Key[float64]    // default 0
	OutputA    Key[float64]    // not given: the current limit cannot be told
	PullupOhm  Key[float64]    // default 4700
	ADCBits    Key[int]        // default 12
	AmbientC   Key[float64]    // default 22
}

// Hotend is the sheet's [new] or [old]. Keys of a file named by use are
// merged in; a key of the sheet itself wins. In [old] every key is optional.
type Hotend struct {
	Use    Key[string] // the file merged in, a path inside the tree; empty for none
	Name   Key[string]
	RatedC Key[float64]
	PrintC Key[[2]float64] // lowest and highest, °C
	Liner  Key[string]     // none or ptfe; default none
	// CutoffC is where something independent of the firmware cuts the heater,
	// °C; not given or 0: nothing does.
	CutoffC Key[float64]
	Sensor  Sensor
	Heater  Heater
	Block   Block
	Fan     Fan
	Nozzle  Nozzle
}

// Sensor is [new.sensor]. Of Curve, Points and Beta one is given, except for
// amplifiers and thermocouples.
type Sensor struct {
	Kind   Key[parser.SensorKind]
	Curve  Key[string]
	Points Key[[]parser.SensorPoint]
	Beta   Key[Beta]
	RatedC Key[float64] // not given: no limit of its own

	// Tolerances of R25 and B as a share of 1, both 0.01 by default.
	R25Tolerance  Key[float64]
	BetaTolerance Key[float64]
}

// Beta is the two-constant description of an NTC.
type Beta struct{ R25Ohm, BK float64 }

// HeaterKind is what a heater physically is.
type HeaterKind string

const (
	Cartridge HeaterKind = "cartridge" // power hardly depends on temperature
	PTC       HeaterKind = "ptc"       // power falls with temperature
)

// Heater is [new.heater].
type Heater struct {
	Kind      Key[HeaterKind]
	RatedV    Key[float64]
	RatedW    Key[float64]      // at RatedV, 25 °C
	HotW      Key[[][2]float64] // PTC: °C, W at RatedV
	DutyLimit Key[float64]      // 0 to 1, default 1
}

// Block is [new.block]; the defaults are assumptions, to be named as such.
type Block struct {
	HeatCapacityJPerK Key[float64] // default 16.7
	LossWPerK         Key[float64] // part fan off, default 0.068
	LossFanWPerK      Key[float64] // part fan full, default 0.097
	SensorLagS        Key[float64] // default 4.5
}

// Fan is [new.fan], the heat-break fan.
type Fan struct {
	RatedV   Key[float64] // not given: the voltage cannot be checked
	Wires    Key[int]     // default 2
	OutputV  Key[float64] // default supply_v
	AlwaysOn Key[bool]    // default false
	OnAboveC Key[float64] // default 50
}

// Nozzle is [new.nozzle].
type Nozzle struct {
	DiameterMM  Key[float64] // not given: unknown
	TipShiftMM  Key[float64] // + : tip sits lower than the old one; default 0
	MaxFlowMM3S Key[float64] // not given: unknown
}

// Tuned is [tuned]: the tune made on the new hotend.
type Tuned struct {
	AtC        Key[float64]
	Kp, Ki, Kd Key[float64] // per 255 duty counts, as the style writes them
	On         Key[time.Time]
}

// Gains returns the tune where it gave gains; nil where there is none, or it
// is that of a heater model. It may be called on nil.
func (t *Tuned) Gains() *Tuned {
	if t == nil || !t.Kp.Given {
		return nil
	}
	return t
}

// Done is [done]: what was made on the new hotend, with the day.
type Done struct {
	// HeightOn is when the nozzle's height was measured again, and the distances
	// to other tools with it.
	HeightOn Key[time.Time]
}

// Waiver is one [[waiver]]. It covers the findings of a rule, or those about one
// setting, as long as they are no worse than a figure.
type Waiver struct {
	Rule    Key[string]
	Setting Key[string]  // which of several things the rule speaks of
	At      Key[float64] // in the unit of the finding
	Reason  Key[string]
	Until   Key[time.Time] // the last day it holds
}
