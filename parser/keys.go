package parser

import (
	"strconv"
)

// The keys of the settings, as people read them in messages and in `values`.
const (
	HotendSensor Key = "hotend sensor"
	SecondSensor Key = "second hotend sensor"
	SecondDiff   Key = "second sensor difference"
	HotendPullup Key = "hotend pull-up"
	MinTemp      Key = "min temp"
	MaxTemp      Key = "max temp"
	Margin       Key = "target margin"
	ColdGuard    Key = "cold extrusion guard"
	MinExtrude   Key = "min extrude temp"
	AutoTarget   Key = "highest automatic target"
	Trips        Key = "trips at min and max temp"
	FaultChecks  Key = "sensor fault checks"
	HaltGrace    Key = gracePrefix + "before a fault halts"

	LoopControl     Key = "control"
	GainP           Key = "kp"
	GainI           Key = "ki"
	GainD           Key = "kd"
	FunctionalRange Key = "functional range"
	DerivativeShare Key = "derivative filter"
	DerivativeTime  Key = "derivative smoothing time"
	OnOffBand       Key = "on/off band"
	ModelPower      Key = "model heater power"
	ModelRefTemp    Key = "model reference temp"

	HotendWatchOn       Key = "hotend runaway protection"
	HotendHeatingOn     Key = "hotend heating check"
	HotendRise          Key = "hotend required rise"
	HotendHeatingWindow Key = "hotend heating check window"
	HotendArmMargin     Key = "hotend arming margin"
	HotendHysteresis    Key = "hotend drop check hysteresis"
	HotendDropPeriod    Key = "hotend drop check period"
	HotendErrorSum      Key = "hotend error sum"
	HotendStill         Key = "hotend still-reading time"
	SlowsFan            Key = "part fan slowed as the hotend sags"
	Watchdog            Key = "watchdog"
	HeaterOutputs       Key = "heater outputs on one command"
	BedHeated           Key = "heated bed"
	BedSensor           Key = "bed sensor"
	BedWatchOn          Key = "bed runaway protection"
	BedHeatingOn        Key = "bed heating check"
	BedRise             Key = "bed required rise"
	BedHeatingWindow    Key = "bed heating check window"
	BedArmMargin        Key = "bed arming margin"
	BedWatchHysteresis  Key = "bed drop check hysteresis"
	BedDropPeriod       Key = "bed drop check period"
	BedErrorSum         Key = "bed error sum"

	FanOutput      Key = "heat-break fan"
	FanOnAbove     Key = "heat-break fan threshold"
	FanPower       Key = "heat-break fan power"
	FanAtShutdown  Key = "heat-break fan power after a shutdown"
	NozzleDiameter Key = "nozzle diameter"
	FilamentWidth  Key = "filament diameter"
	MaxFlow        Key = "volumetric limit"
	LongestPush    Key = "longest push of filament"
	LineSection    Key = "largest cross section of a line"
	ZHoming        Key = "Z homes by"
	ProbeTrigger   Key = "probe trigger height"
	TowerHeight    Key = "ends of the towers' travel"
	NozzleProbes   Key = "nozzle as its own probe"
	StorageOn      Key = "stored settings"
)

const (
	presetPrefix  = "preset "
	gracePrefix   = "grace time "
	powerPrefix   = "power limit "
	samplesPrefix = "number of bad samples "
	offsetPrefix  = "hotend offset "
	endstopPrefix = "Z endstop height"
)

// Preset is the key of the nth temperature preset, from 1.
func Preset(n int) Key { return Key(presetPrefix + strconv.Itoa(n)) }

// PresetOf is the key of the nth preset where it stands in something that has a
// name, such as a macro.
func PresetOf(n int, where string) Key { return Preset(n) + Key(" ("+where+")") }

// PowerBelowRange is the power limit of a ranged loop below its functional
// range, where another may hold than inside it.
const PowerBelowRange Key = powerPrefix + "below range"

// PowerLimit is the key of a power limit; kind tells several apart, such as
// the loop that it belongs to.
func PowerLimit(kind string) Key { return Key(powerPrefix + kind) }

// Offset is the key of the distance between hotends along an axis.
func Offset(axis string) Key { return Key(offsetPrefix + axis) }

// Endstop is the key of the nozzle's height at the switch that homes; tower is
// the one that it belongs to on a delta, else empty.
func Endstop(tower string) Key {
	if tower == "" {
		return endstopPrefix
	}
	return Key(endstopPrefix + " of tower " + tower)
}

// Grace is the key of a grace time, BadSamples that of a number of bad samples
// that is tolerated, Carried that of a figure that belongs to the old melt
// path; kind says which.
func Grace(kind string) Key      { return Key(gracePrefix + kind) }
func BadSamples(kind string) Key { return Key(samplesPrefix + kind) }
func Carried(kind string) Key    { return Key(kind) }
