package defines

import (
	"math"
	"strconv"

	"preflash/parser"
)

// Definitions lists the numbered definitions with a table that every firmware
// has which this configuration may be for.
func (c *config) Definitions() []parser.SensorDef { return c.basis.definitions(c.basis) }

// CustomForm is the form of definition 1000.
func (*config) CustomForm() parser.SensorForm { return parser.FormBeta }

// Blank is a configuration that may be for any generation.
func (style) Blank() parser.Config {
	return blank{&config{s: &source{}, basis: older | newer, printer: &parser.Printer{Style: styleName}}}
}

type blank struct{ *config }

// Definitions lists those that only some generation has too, and says so.
func (b blank) Definitions() []parser.SensorDef { return b.basis.definitions(0) }

func (b basis) String() string {
	switch b {
	case older:
		return "older"
	case newer:
		return "newer"
	}
	return "older or newer"
}

// sensor reads the definition of a heater's sensor. heater is the part of the
// name that custom constants begin with, such as HOTEND0 or BED.
func (r *reader) sensor(key parser.Key, name, heater string) parser.Setting[parser.SensorDef] {
	s := parser.Setting[parser.SensorDef]{Key: key, Name: name}
	m := r.s.macro(name)
	r.slots = append(r.slots, slot{key: key, kind: slotSensor, name: name, heater: heater})
	if !fillFrom(r, &s, m) {
		return s
	}
	number, known := r.s.number(m.winner.value())
	switch {
	case known == parser.Maybe:
		s.State, s.Why = parser.Unknown, r.unsettled(m.winner)
		return s
	case known == parser.No || number != math.Trunc(number) || math.Abs(number) > 1e6:
		s.State, s.Why = parser.Unknown, m.winner.body.String()+": "+name+" is “"+m.winner.value()+
			"”, which is no number of a definition"
		return s
	}
	s.State = parser.Set
	var ok bool
	if s.Value, ok = r.basis.definition(int(number)); !ok {
		note := "the " + r.basis.String() + " generation of this firmware has no such definition"
		if r.checks != 0 {
			note += ", and refuses to build with it"
		}
		s.Value = parser.SensorDef{Name: strconv.Itoa(int(number)), Note: note}
		return s
	}
	switch int(number) {
	case placeholderCold:
		s.Value.FixedC, s.Why = r.fixed("DUMMY_THERMISTOR_998_VALUE")
	case placeholderHot:
		s.Value.FixedC, s.Why = r.fixed("DUMMY_THERMISTOR_999_VALUE")
	case customSensor:
		r.custom(&s, heater)
	}
	r.amplifier(&s.Value, name)
	if s.Why != "" {
		s.State = parser.Unknown
	}
	return s
}

// fixed reads what a placeholder always shows: 25 °C where no option says, as
// the style's firmware publishes it.
func (r *reader) fixed(name string) (tempC float64, why string) {
	v := r.value(numberSpelling{names: []string{name}, absent: absentDefault, usual: 25})
	return v.Value, v.Why
}

// customOptions are the options of definition 1000 after the heater's name,
// in the order in which they are written, with the least and the most that the
// firmware takes at its console, as the style's firmware publishes it.
var customOptions = [...]struct {
	suffix      string
	of          func(*parser.SensorDef) *float64
	least, most float64
}{
	{"_PULLUP_RESISTOR_OHMS", func(d *parser.SensorDef) *float64 { return &d.PullupOhm }, 1, 1e6},
	{"_RESISTANCE_25C_OHMS", func(d *parser.SensorDef) *float64 { return &d.R25Ohm }, 1, 1e7},
	{"_BETA", func(d *parser.SensorDef) *float64 { return &d.BetaK }, 1, 1e6},
	{cubicSuffix, func(d *parser.SensorDef) *float64 { return &d.CubicC }, -0.01, 0.01},
}

// cubicSuffix is the one custom option that may be absent: it is 0 then.
const cubicSuffix = "_SH_C_COEFF"

// readsCubic reports whether the firmware is sure to read the cubic coefficient
// of a heater's custom sensor: an option of the newer generation. The older one
// takes it from the console alone and B for a plain Beta, and would be tens of
// degrees off.
func readsCubic(s *source, b basis, heater string) bool {
	return b.is(newer) || !b.is(older) && len(s.mentions(heater+cubicSuffix)) > 0
}

// custom fills a definition 1000 from its options. The older generation reads no
// cubic coefficient out of the files: there B alone makes the curve.
func (r *reader) custom(s *parser.Setting[parser.SensorDef], heater string) {
	for _, o := range &customOptions {
		f := numberSpelling{names: []string{heater + o.suffix}}
		if o.suffix == cubicSuffix {
			f.absent = absentDefault
		}
		if o.suffix == cubicSuffix && r.basis.is(older) {
			if v := r.value(f); v.State == parser.Set && v.Value != 0 {
				s.Value.Note = "this generation of the firmware does not read " + heater + o.suffix
			}
			continue
		}
		v := r.value(f)
		if !v.Known() {
			s.Why = "the custom definition needs " + heater + o.suffix + ": " + v.Why
			return
		}
		*o.of(&s.Value) = v.Value
	}
}
