package defines

import (
	"math"
	"strconv"

	"preflash/parser"
)

// findNumbered looks a numbered definition up.
func findNumbered(number int) (*numbered, bool) {
	low, high := 0, len(numberedSensors)
	for low < high {
		mid := int(uint(low+high) >> 1)
		if numberedSensors[mid].number < number {
			low = mid + 1
		} else {
			high = mid
		}
	}
	if low < len(numberedSensors) && numberedSensors[low].number == number {
		return &numberedSensors[low], true
	}
	return nil, false
}

// def gives the definition in neutral form.
func (n *numbered) def(gen generation) parser.SensorDef {
	d := parser.SensorDef{
		Form: n.form, Kind: n.kind, Name: strconv.Itoa(n.number), Curve: n.curve,
		R25Ohm: n.r25, BetaK: n.beta, LowC: n.low, HighC: n.high, Note: n.note, Doubt: n.doubt,
	}
	switch n.form {
	case parser.FormPoints:
		d.Points = n.points[:]
	case parser.FormNone, parser.FormAmplifier, parser.FormPlaceholder:
		return d
	}
	if d.PullupOhm = n.pullup; d.PullupOhm == 0 {
		d.PullupOhm = commonPullup
	}
	if n.number == 1 && gen < gen20 {
		d.LowC, d.HighC = 0, 300 // the table was extended later
	}
	return d
}

// pullupTolerance is how far a resistor may be off what a definition assumes,
// as a share: that of the usual part (common practice, no source).
const pullupTolerance = 0.01

// Defines returns the best numbered definition of a known curve for a hotend
// on a board with this pull-up.
func (style) Defines(curve string, pullupOhm float64) (parser.SensorDef, bool) {
	for _, h := range hotendSensors {
		if h.curve != curve {
			continue
		}
		if n, ok := findNumbered(h.number); ok {
			d := n.def(genOlder)
			if math.Abs(d.PullupOhm-pullupOhm) <= pullupTolerance*d.PullupOhm {
				return d, true
			}
		}
	}
	return parser.SensorDef{}, false
}

// CustomForm is the form of definition 1000.
func (style) CustomForm() parser.SensorForm { return parser.FormBeta }

// sensor reads the definition of a heater's sensor. heater is the part of the
// name that custom constants begin with, such as HOTEND0 or BED.
func (r *reader) sensor(key parser.Key, name, heater string) parser.Setting[parser.SensorDef] {
	s := parser.Setting[parser.SensorDef]{Key: key, Name: name}
	m := r.s.macro(name)
	r.slots = append(r.slots, slot{key: key, kind: slotSensor, name: name, heater: heater})
	if !settle(r, &s, m) {
		return s
	}
	number, known := r.s.number(m.winner.value())
	switch {
	case known == parser.Maybe:
		s.State, s.Why = parser.Unknown, r.unsettled(m.winner)
		return s
	case known == parser.No || number != math.Trunc(number) || math.Abs(number) > 1e6:
		s.State, s.Why = parser.Unknown, m.winner.body.String()+": "+name+" is “"+m.winner.value()+"”, which is no number of a definition"
		return s
	}
	s.State = parser.Set
	n, ok := findNumbered(int(number))
	if !ok {
		s.Value = parser.SensorDef{Name: strconv.Itoa(int(number)), Note: "definition " + strconv.Itoa(int(number)) + " is not known here"}
		return s
	}
	s.Value = n.def(r.gen)
	switch n.number {
	case placeholderCold:
		s.Value.FixedC, s.Why = r.fixed("DUMMY_THERMISTOR_998_VALUE", 25)
	case placeholderHot:
		s.Value.FixedC, s.Why = r.fixed("DUMMY_THERMISTOR_999_VALUE", 100)
	case customSensor:
		r.custom(&s, heater)
	}
	r.amplifier(&s.Value, name)
	if s.Why != "" {
		s.State = parser.Unknown
	}
	return s
}

// fixed reads what a placeholder always shows.
func (r *reader) fixed(name string, usual float64) (tempC float64, why string) {
	v := r.value(figure{names: []string{name}, absent: absentDefault, usual: usual})
	return v.Value, v.Why
}

// customOptions are the options of definition 1000 after the heater's name,
// in the order in which they are written.
var customOptions = [...]struct {
	suffix string
	of     func(*parser.SensorDef) *float64
}{
	{"_PULLUP_RESISTOR_OHMS", func(d *parser.SensorDef) *float64 { return &d.PullupOhm }},
	{"_RESISTANCE_25C_OHMS", func(d *parser.SensorDef) *float64 { return &d.R25Ohm }},
	{"_BETA", func(d *parser.SensorDef) *float64 { return &d.BetaK }},
	{cubicSuffix, func(d *parser.SensorDef) *float64 { return &d.CubicC }},
}

// cubicSuffix is the one custom option that may be absent: it is 0 then.
const cubicSuffix = "_SH_C_COEFF"

// readsCubic reports whether the firmware reads the cubic coefficient of a
// heater's custom sensor. It came later than the other options (from memory).
// One that does not read it takes B for a plain Beta, and is tens of degrees
// off.
func readsCubic(s *source, gen generation, heater string) bool {
	return gen >= genBetween || len(s.mentions(heater+cubicSuffix)) > 0
}

// custom fills a definition 1000 from its options.
func (r *reader) custom(s *parser.Setting[parser.SensorDef], heater string) {
	for _, o := range &customOptions {
		f := figure{names: []string{heater + o.suffix}}
		if o.suffix == cubicSuffix {
			f.absent = absentDefault
		}
		v := r.value(f)
		if !v.Known() {
			s.Why = "the custom definition needs " + heater + o.suffix + ": " + v.Why
			return
		}
		*o.of(&s.Value) = v.Value
	}
}
