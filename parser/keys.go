package parser

import (
	"strconv"
	"strings"
)

// The keys of the settings, as people read them in messages and in `values`.
const (
	HotendSensor Key = "hotend sensor"
	HotendPullup Key = "hotend pull-up"
	MinTemp      Key = "min temp"
	MaxTemp      Key = "max temp"
	Margin       Key = "target margin"
	ColdGuard    Key = "cold extrusion guard"
	MinExtrude   Key = "min extrude temp"

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

	HotendWatchOn      Key = "hotend runaway protection"
	HotendRiseOn       Key = "hotend rise watch"
	HotendRise         Key = "hotend required rise"
	HotendRiseWindow   Key = "hotend rise window"
	HotendArmMargin    Key = "hotend arming margin"
	HotendHysteresis   Key = "hotend watch hysteresis"
	HotendHoldPeriod   Key = "hotend hold period"
	HotendErrorSum     Key = "hotend error sum"
	BedHeated          Key = "heated bed"
	BedSensor          Key = "bed sensor"
	BedWatchOn         Key = "bed runaway protection"
	BedRiseOn          Key = "bed rise watch"
	BedRise            Key = "bed required rise"
	BedRiseWindow      Key = "bed rise window"
	BedArmMargin       Key = "bed arming margin"
	BedWatchHysteresis Key = "bed watch hysteresis"
	BedHoldPeriod      Key = "bed hold period"
	BedErrorSum        Key = "bed error sum"

	FanOutput      Key = "heat-break fan"
	FanOnAbove     Key = "heat-break fan threshold"
	NozzleDiameter Key = "nozzle diameter"
	FilamentWidth  Key = "filament diameter"
	MaxFlow        Key = "volumetric limit"
	ProbeTrigger   Key = "probe trigger height"
	StorageOn      Key = "stored settings"
)

// Unit is the unit of a setting that is a figure, "" for one that has none.
func (k Key) Unit() string {
	switch k {
	case HotendPullup:
		return "Ω"
	case MinTemp, MaxTemp, MinExtrude, ModelRefTemp, FanOnAbove:
		return "°C"
	case Margin, FunctionalRange, OnOffBand, HotendRise, HotendArmMargin, HotendHysteresis,
		BedRise, BedArmMargin, BedWatchHysteresis:
		return "K"
	case DerivativeTime, HotendRiseWindow, HotendHoldPeriod, BedRiseWindow, BedHoldPeriod:
		return "s"
	case HotendErrorSum, BedErrorSum:
		return "°C·s"
	case ModelPower:
		return "W"
	case NozzleDiameter, FilamentWidth, ProbeTrigger:
		return "mm"
	case MaxFlow:
		return "mm³/s"
	}
	switch name := string(k); {
	case strings.HasPrefix(name, presetPrefix):
		return "°C"
	case strings.HasPrefix(name, gracePrefix):
		return "s"
	}
	return ""
}

const (
	presetPrefix = "preset "
	gracePrefix  = "grace time "
	powerPrefix  = "power limit "
)

// Preset is the key of the nth temperature preset, from 1.
func Preset(n int) Key { return Key(presetPrefix + strconv.Itoa(n)) }

// PowerBelowRange is the power limit of a ranged loop below its functional
// range, where another may hold than inside it.
const PowerBelowRange Key = powerPrefix + "below range"

// PowerLimit is the key of a power limit; kind tells several apart, such as
// the loop that it belongs to.
func PowerLimit(kind string) Key { return Key(powerPrefix + kind) }

// Grace is the key of a grace time, BadSamples that of a number of bad samples
// that is tolerated, Carried that of a figure that belongs to the old melt
// path; kind says which.
func Grace(kind string) Key      { return Key(gracePrefix + kind) }
func BadSamples(kind string) Key { return Key("number of bad samples " + kind) }
func Carried(kind string) Key    { return Key(kind) }
