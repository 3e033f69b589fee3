package parser

import (
	"strings"
	"sync"
)

// Safer is the way in which a setting protects more.
type Safer uint8

const (
	Neither Safer = iota // no way is safer as such
	Lower
	Higher
	On
)

// row is all that is known of a setting apart from its spelling.
type row struct {
	unit  string
	safer Safer
	// with are the settings that carry this one along, because they are two
	// readings of one thing: a change of one of them may change it too.
	with []Key
	// switches: a figure of 0 can be what switches the thing off.
	switches bool
}

// rows is the table of the settings. A key that is not in it has neither a
// unit nor a safer way.
var rows = sync.OnceValue(func() map[Key]row {
	table := map[Key]row{
		HotendSensor: {with: []Key{HotendPullup}}, // a definition includes its pull-up
		HotendPullup: {unit: "Ω"},
		MinTemp:      {unit: "°C", safer: Higher},
		MaxTemp:      {unit: "°C", safer: Lower},
		Margin:       {unit: "K", safer: Higher},
		ColdGuard:    {safer: On},
		MinExtrude:   {unit: "°C", safer: Higher, with: []Key{ColdGuard}}, // one that is on needs it
		AutoTarget:   {unit: "°C", safer: Lower},
		SecondDiff:   {unit: "K", safer: Lower},
		Trips:        {safer: On, with: []Key{HotendSensor}}, // some definitions are held against no limit
		FaultChecks:  {safer: On, with: []Key{HotendSensor}},
		Watchdog:     {safer: On},

		HeaterOutputs: {safer: Lower},

		FunctionalRange: {unit: "K"},
		DerivativeTime:  {unit: "s"},
		OnOffBand:       {unit: "K"},
		ModelPower:      {unit: "W"},
		ModelRefTemp:    {unit: "°C"},

		HotendStill: {unit: "s", safer: Lower},

		FanOnAbove:     {unit: "°C", safer: Lower},
		FanPower:       {safer: Higher},
		FanAtShutdown:  {safer: Higher, with: []Key{FanPower}}, // one limit holds for both
		NozzleDiameter: {unit: "mm"},
		FilamentWidth:  {unit: "mm"},
		LongestPush:    {unit: "mm", safer: Lower},
		LineSection:    {unit: "mm²", safer: Lower},
		MaxFlow:        {unit: "mm³/s", safer: Lower},
		ProbeTrigger:   {unit: "mm"},
	}
	for _, k := range []*WatchKeys{&HotendWatch, &BedWatch} {
		on := []Key{k.On}
		heating := []Key{k.HeatingOn, k.On}
		// Figures can blind a watch, or switch it off: to turn it on is to set them.
		table[k.On] = row{safer: On}
		table[k.HeatingOn] = row{safer: On, with: on}
		table[k.Rise] = row{unit: "K", safer: Higher, with: heating}
		table[k.HeatingWindow] = row{unit: "s", safer: Lower, with: heating, switches: true}
		table[k.ArmMargin] = row{unit: "K", safer: Lower, with: append(heating, k.Rise)}
		table[k.Hysteresis] = row{unit: "K", safer: Lower, with: on}
		table[k.DropPeriod] = row{unit: "s", safer: Lower, with: on, switches: true}
		table[k.ErrorSum] = row{unit: "°C·s", safer: Lower, with: on}
	}
	return table
})

// WatchKeys are the settings of one heater's runaway protection.
type WatchKeys struct{ On, HeatingOn, Rise, HeatingWindow, ArmMargin, Hysteresis, DropPeriod, ErrorSum Key }

var (
	HotendWatch = WatchKeys{HotendWatchOn, HotendHeatingOn, HotendRise, HotendHeatingWindow,
		HotendArmMargin, HotendHysteresis, HotendDropPeriod, HotendErrorSum}
	BedWatch = WatchKeys{BedWatchOn, BedHeatingOn, BedRise, BedHeatingWindow,
		BedArmMargin, BedWatchHysteresis, BedDropPeriod, BedErrorSum}
)

// families are the settings of which there may be many, by how their keys
// begin.
var families = [...]struct {
	prefix string
	row
}{
	{presetPrefix, row{unit: "°C", safer: Lower}},
	{gracePrefix, row{unit: "s", safer: Lower}},
	{samplesPrefix, row{safer: Lower}},
	{powerPrefix, row{safer: Lower}},
	{offsetPrefix, row{unit: "mm"}},
	{endstopPrefix, row{unit: "mm"}},
}

func (k Key) row() row {
	_, own, found := strings.Cut(string(k), ofHeater)
	if found {
		k = Key(own)
	}
	if r, ok := rows()[k]; ok {
		return r
	}
	for _, f := range families {
		if strings.HasPrefix(string(k), f.prefix) {
			return f.row
		}
	}
	return row{}
}

// Unit is the unit of a setting that is a figure, "" for one that has none.
func (k Key) Unit() string { return k.row().unit }

// Safer says which way the setting protects more.
func (k Key) Safer() Safer { return k.row().safer }

// With lists the settings whose change may change this one too.
func (k Key) With() []Key { return k.row().with }

// ofHeater stands between the name of a heater and the key of its setting.
const ofHeater = ": "

// Of is the key of the same setting of another heater, or of the heater of
// another tool.
func (k Key) Of(heater string) Key { return Key(heater + ofHeater + string(k)) }

// Looser reports whether a value of the setting protects less than another
// one. What a figure of 0 switched off protects less than with any figure.
func (k Key) Looser(is, was any) bool {
	switch was := was.(type) {
	case float64:
		is, ok := is.(float64)
		switch k.Safer() {
		case Lower:
			return ok && is > was && !(was == 0 && k.row().switches)
		case Higher:
			return ok && is < was
		}
	case bool:
		return k.Safer() == On && was && is != true
	}
	return false
}
