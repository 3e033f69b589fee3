package sections

import (
	"sync"

	"preflash/parser"
)

// usualPullup is the pull-up that the firmware assumes, ohm, as the style's
// firmware publishes it.
const usualPullup = 4700

const (
	noteRetired = "a plain Beta formula; " +
		"it is far from the three-point curve of the same B at printing temperatures"
	noteBeta = "a plain Beta formula"
	noteChip = "a chip that measures air or a board; no sensor for a hotend"
)

// builtIn is a sensor type that the firmware knows by name.
type builtIn struct {
	name  string
	form  parser.SensorForm
	kind  parser.SensorKind
	curve string  // FormCurve
	beta  float64 // FormBeta, K, with 100 kΩ at 25 °C
	r0Ohm float64 // FormAmplifier: at 0 °C, of the platinum sensor that it is for
	note  string

	removed string // the day from which the firmware refuses the name, "" for none
	instead string // what to write then
}

// builtIns are the types that the firmware ships with, those first that a
// change would choose, as the style's firmware publishes them.
var builtIns = [...]builtIn{
	{name: "Generic 3950", form: parser.FormCurve, kind: parser.NTC, curve: "ntc-100k-3950"},
	{name: "EPCOS 100K B57560G104F", form: parser.FormCurve, kind: parser.NTC, curve: "ntc-100k-4092"},
	{name: "ATC Semitec 104GT-2", form: parser.FormCurve, kind: parser.NTC, curve: "ntc-100k-4267"},
	{name: "ATC Semitec 104NT-4-R025H42G", form: parser.FormCurve, kind: parser.NTC, curve: "ntc-100k-4300"},
	{name: "TDK NTCG104LH104JT1", form: parser.FormCurve, kind: parser.NTC, curve: "ntc-100k-4485"},
	{name: "SliceEngineering 450", form: parser.FormCurve, kind: parser.NTC, curve: "ntc-500k-3950"},
	{name: "Honeywell 100K 135-104LAG-J01", form: parser.FormBeta, kind: parser.NTC,
		curve: "ntc-100k-3974", beta: 3974, note: noteBeta},
	{name: "NTC 100K MGB18-104F39050L32", form: parser.FormBeta, kind: parser.NTC,
		beta: 4100, note: noteBeta},
	{name: "NTC 100K beta 3950", form: parser.FormBeta, kind: parser.NTC, beta: 3950, note: noteRetired,
		removed: "2024-02-15",
		instead: "write Generic 3950, which is another curve, or the same one in a [thermistor …] " +
			"section of your own: temperature1 25, resistance1 100000, beta 3950"},
	{name: "PT1000", form: parser.FormPoints, kind: parser.Platinum, curve: "pt1000"},

	{name: "PT100 INA826", form: parser.FormAmplifier, kind: parser.PlatinumAmplifier, r0Ohm: 100},
	{name: "MAX31865", form: parser.FormAmplifier, kind: parser.PlatinumAmplifier},
	{name: "MAX6675", form: parser.FormAmplifier, kind: parser.Thermocouple},
	{name: "MAX31855", form: parser.FormAmplifier, kind: parser.Thermocouple},
	{name: "MAX31856", form: parser.FormAmplifier, kind: parser.Thermocouple},
	{name: "AD595", form: parser.FormAmplifier, kind: parser.Thermocouple},
	{name: "AD597", form: parser.FormAmplifier, kind: parser.Thermocouple},
	{name: "AD8494", form: parser.FormAmplifier, kind: parser.Thermocouple},
	{name: "AD8495", form: parser.FormAmplifier, kind: parser.Thermocouple},
	{name: "AD8496", form: parser.FormAmplifier, kind: parser.Thermocouple},
	{name: "AD8497", form: parser.FormAmplifier, kind: parser.Thermocouple},

	{name: "temperature_combined", note: "a mean or an extreme of other sensors"},
	{name: "rpi_temperature", note: noteChip, removed: "2021-11-02", instead: "write temperature_host"},
	{name: "temperature_mcu", note: noteChip},
	{name: "temperature_host", note: noteChip},
	{name: "DS18B20", note: noteChip},
	{name: "LM75", note: noteChip},
	{name: "BME280", note: noteChip},
	{name: "SHT3X", note: noteChip},
	{name: "AHT10", note: noteChip},
	{name: "AHT1X", note: noteChip},
	{name: "AHT2X", note: noteChip},
	{name: "AHT3X", note: noteChip},
	{name: "SI7013", note: noteChip},
	{name: "SI7020", note: noteChip},
	{name: "SI7021", note: noteChip},
	{name: "SHT21", note: noteChip},
	{name: "HTU21D", note: noteChip},
}

// def is the definition in neutral form.
func (b *builtIn) def() parser.SensorDef {
	d := parser.SensorDef{
		Form: b.form, Kind: b.kind, Name: b.name, Curve: b.curve, R0Ohm: b.r0Ohm, Note: b.note,
	}
	switch b.form {
	case parser.FormBeta:
		d.R25Ohm, d.BetaK = 100e3, b.beta
	case parser.FormPoints:
		d.Points, d.Join = platinumPoints(), parser.JoinOhm
	}
	return d
}

// platinumPoints is the table of the type PT1000: every 10 °C from 0 to 490,
// straight lines between, as the style's firmware publishes it.
var platinumPoints = sync.OnceValue(func() []parser.SensorPoint {
	const r0, a, b = 1000, 3.9083e-3, -5.775e-7
	var points []parser.SensorPoint
	for t := 0.0; t <= 490; t += 10 {
		points = append(points, parser.SensorPoint{TempC: t, Ohm: r0 * (1 + t*(a+t*b))})
	}
	return points
})

// MaxTempWith is 0: this firmware starts with any.
func (*config) MaxTempWith(parser.SensorDef) float64 { return 0 }

// Definitions lists the built-in types that are read as a resistance, but
// retired ones and those whose name a section of the configuration has taken.
// The pull-up is a setting of its own.
func (c *config) Definitions() []parser.SensorDef {
	var all []parser.SensorDef
	for i := range builtIns {
		b := &builtIns[i]
		switch b.form {
		case parser.FormCurve, parser.FormBeta, parser.FormPoints:
			if d := b.def(); b.removed == "" && sameDefinition(c.sensorType(b.name, hotendName(c.tool)), d) {
				all = append(all, d)
			}
		}
	}
	return all
}

// CustomForm: three points, or a table, in a section of their own.
func (*config) CustomForm() parser.SensorForm { return parser.FormPoints }

// Blank is a configuration of which nothing is known.
func (style) Blank() parser.Config {
	return &config{byName: map[string]*section{}, printer: &parser.Printer{Style: style{}.Name()}}
}

// sensor reads how a heater's temperature is read.
func (c *config) sensor(key parser.Key, heater string) parser.Setting[parser.SensorDef] {
	s := parser.Setting[parser.SensorDef]{Key: key}
	if adopt(c, &s, heater, "sensor_type") == nil {
		if s.State != parser.Unknown {
			s.State = parser.Unknown
			s.At = c.headingSpan(heater)
			s.Why = "[" + heater + "] has no sensor_type, and the firmware does not start without it"
		}
		return s
	}
	s.Value = c.sensorType(s.Written, heater)
	d := &s.Value
	c.chip(d, heater)
	if d.Form == parser.FormAmplifier || d.Kind == parser.KindUnknown {
		return s
	}
	if p := c.read(pullup(key, heater)); p.Known() {
		d.PullupOhm = p.Value
	} else {
		*d = unplaced(d.Name, p.Why)
		return s
	}
	if d.Kind == parser.NTC && d.Join == parser.JoinSteinhart {
		r := c.optional(noKey, heater, "inline_resistor", 0, atLeast(0))
		if !r.Known() {
			*d = unplaced(d.Name, r.Why)
			return s
		}
		d.SeriesOhm = r.Value
	}
	return s
}

func pullup(key parser.Key, heater string) numberOption {
	return numberOption{
		key: key, section: heater, option: "pullup_resistor",
		usual: usualPullup, optional: true, demand: positive,
	}
}

func unplaced(name, why string) parser.SensorDef {
	return parser.SensorDef{Name: name, Note: why}
}
