package sheet

import (
	"slices"
	"strings"

	"preflash/parser"
)

func readSensor(s *scope) Sensor {
	ohm := span(0.01, 1e8, "Ω")
	n := Sensor{
		Kind:          readKind(s),
		Curve:         s.text("curve", false, "the name of a known curve"),
		Beta:          readBeta(s),
		RatedC:        s.float("rated_c", temperature().within(40, 2000)),
		R25Tolerance:  s.float("r25_tolerance", span(0, 0.2, "").or(0.01)),
		BetaTolerance: s.float("beta_tolerance", span(0, 0.2, "").or(0.01)),
	}
	pairs := s.pairs("points", span(-273, 1500, "°C"), ohm, 3)
	n.Points = Key[[]parser.SensorPoint]{Given: pairs.Given, At: pairs.At, Path: pairs.Path}
	for _, p := range pairs.Value {
		n.Points.Value = append(n.Points.Value, parser.SensorPoint{TempC: p[0], Ohm: p[1]})
	}
	s.kindByCurve(&n)
	s.checkCurve(&n, pairs.Value)
	s.done()
	return n
}

func readKind(s *scope) Key[parser.SensorKind] {
	word := choice(s, "kind", false, "", "ntc", "platinum", "platinum-amplifier", "thermocouple")
	k := Key[parser.SensorKind]{Given: word.Given, At: word.At, Path: word.Path}
	for _, kind := range []parser.SensorKind{
		parser.NTC, parser.Platinum, parser.PlatinumAmplifier, parser.Thermocouple,
	} {
		if kind.String() == word.Value {
			k.Value = kind
		}
	}
	return k
}

func readBeta(s *scope) Key[Beta] {
	k := Key[Beta]{At: s.at, Path: s.full("beta")}
	if v := s.find("beta"); v != nil {
		k.Given, k.At = true, v.at
		if v.kind != tableValue {
			s.walk.wrong(v, k.Path, "must be { r25_ohm = …, b_k = … }, not "+v.kind.String())
			return k
		}
		// A curve is one thing: its figures never come from two files.
		u := s.walk.scope(k.Path, v.at, false, v.table)
		k.Value.R25Ohm = u.float("r25_ohm", span(1, 1e8, "Ω").needed()).Value
		k.Value.BK = u.float("b_k", span(500, 10_000, "K").needed()).Value
		u.done()
	}
	return k
}

// kindByCurve tells the kind of a sensor that the sheet describes without it. What
// a chip reads must be said.
func (s *scope) kindByCurve(n *Sensor) {
	own := func(given bool, at parser.Span) bool { return given && at.File == s.walk.own }
	described := own(n.Curve.Given, n.Curve.At) || own(n.Points.Given, n.Points.At) ||
		own(n.Beta.Given, n.Beta.At)
	if n.Kind.Given && (own(true, n.Kind.At) || !described) || s.misspelt("kind") {
		return
	}
	k := &n.Kind
	switch {
	case n.Curve.Given:
		k.At, k.Value = n.Curve.At, kindOfCurve(n.Curve.Value)
		if k.Value == parser.KindUnknown && n.Curve.Value != "" {
			s.missing("kind", k.Path+" is missing; "+n.Curve.Path+" does not tell it: "+
				"correct the curve, or give the kind")
		}
	case n.Beta.Given:
		k.At, k.Value = n.Beta.At, parser.NTC
	case n.Points.Given:
		k.At, k.Value = n.Points.At, parser.NTC
		if p := n.Points.Value; len(p) > 1 && p[len(p)-1].Ohm > p[0].Ohm {
			k.Value = parser.Platinum
		}
	default:
		if !s.misspelt("curve", "points", "beta") {
			s.missing("curve", s.path+" has no curve; give curve (a known one), points or beta; "+
				"or kind, for an amplifier or a thermocouple")
		}
		return
	}
	k.Given = k.Value != parser.KindUnknown
}

// kindOfCurve tells the kind by how the names of known curves begin.
func kindOfCurve(name string) parser.SensorKind {
	switch {
	case strings.HasPrefix(name, "ntc-"):
		return parser.NTC
	case strings.HasPrefix(name, "pt"):
		return parser.Platinum
	}
	return parser.KindUnknown
}

// checkCurve sees to it that a sensor has the one curve that its kind needs.
func (s *scope) checkCurve(n *Sensor, pairs [][2]float64) {
	own := func(at parser.Span) bool { return at.File == s.walk.own }
	type part struct {
		given *bool
		at    parser.Span
		path  string
	}
	parts := []part{
		{&n.Curve.Given, n.Curve.At, n.Curve.Path},
		{&n.Points.Given, n.Points.At, n.Points.Path},
		{&n.Beta.Given, n.Beta.At, n.Beta.Path},
	}
	mine := slices.ContainsFunc(parts, func(p part) bool { return *p.given && own(p.at) })
	first := ""
	for _, p := range parts {
		switch {
		case !*p.given:
		case mine && !own(p.at):
			*p.given = false // the sheet's own description replaces the file's
		case first != "":
			s.walk.fault(p.at, p.path, p.path+" and "+first+" both describe the sensor; keep one of them")
		default:
			first = p.path
		}
	}
	drop(&n.Curve, s.at)
	drop(&n.Points, s.at)
	drop(&n.Beta, s.at)
	switch kind := n.Kind.Value; kind {
	case parser.NTC, parser.Platinum:
		if first == "" && !s.misspelt("curve", "points", "beta") {
			s.missing("curve", s.path+" has no curve; give curve (a known one), points or beta")
		}
		if kind == parser.Platinum && n.Beta.Given {
			s.walk.fault(n.Beta.At, n.Beta.Path,
				n.Beta.Path+" describes an NTC; for platinum give curve or points")
		}
		if n.Points.Given && pairs != nil && !rising(pairs, kind == parser.Platinum) {
			must := "must fall all the way as it gets warmer, as an NTC's does"
			if kind == parser.Platinum {
				must = "must rise all the way as it gets warmer, as platinum's does"
			}
			s.walk.fault(n.Points.At, n.Points.Path, n.Points.Path+": the resistance "+must)
		}
	case parser.PlatinumAmplifier, parser.Thermocouple:
		for _, p := range parts {
			if *p.given && (kind == parser.Thermocouple || p.path != n.Curve.Path) {
				s.walk.fault(p.at, p.path, p.path+" means nothing here: the chip of a "+kind.String()+
					" reports a temperature; remove it")
			}
		}
	}
}

// drop empties a key that is not given after all.
func drop[T any](k *Key[T], at parser.Span) {
	if !k.Given {
		*k = Key[T]{At: at, Path: k.Path}
	}
}
