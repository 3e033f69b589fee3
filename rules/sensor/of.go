package sensor

import (
	"errors"
	"fmt"
	"strings"

	"preflash/parser"
	"preflash/parser/sheet"
)

// UsualPullupOhm is the pull-up on most controller boards: common practice,
// no source.
const UsualPullupOhm = 4700

// HasCurve reports whether sensors of a kind are read as a resistance. The
// chips of the other kinds report a temperature.
func HasCurve(k parser.SensorKind) bool { return k == parser.NTC || k == parser.Platinum }

// OfDefs returns what firmware with this definition believes: one circuit, or
// that of each firmware which the definition may be built into. The error says
// why a definition stands for no curve.
func OfDefs(d *parser.SensorDef) ([]*Circuit, error) {
	var all []*Circuit
	for ; d != nil; d = d.Or {
		c, err := OfDef(d)
		if err != nil {
			return nil, err
		}
		all = append(all, c)
	}
	return all, nil
}

// OfDef returns what firmware with this definition believes, leaving out what
// another firmware would. The error says why a definition stands for no curve.
func OfDef(d *parser.SensorDef) (*Circuit, error) {
	c := &Circuit{PullupOhm: d.PullupOhm, SeriesOhm: d.SeriesOhm, LowC: d.LowC, HighC: d.HighC}
	if !(c.PullupOhm > 0) { // it is a setting of its own
		c.PullupOhm = UsualPullupOhm
	}
	if !(c.SeriesOhm > 0) {
		c.SeriesOhm = 0
	}
	var err error
	switch d.Form {
	case parser.FormCurve:
		c.Curve, err = named(d.Curve)
	case parser.FormBeta:
		c.Curve, err = curve(FromBeta(d.R25Ohm, d.BetaK, d.CubicC))
	case parser.FormPoints:
		switch d.Join {
		case parser.JoinRatio:
			c.Curve, err = curve(FromRatios(d.Points, c.PullupOhm))
		case parser.JoinOhm:
			c.Curve, err = curve(FromTable(d.Points))
		default:
			c.Curve, err = curve(FromPoints(d.Points))
		}
	default:
		err = errors.New("the definition stands for no curve")
	}
	if err != nil {
		return nil, err
	}
	return c, nil
}

// OfSheet returns the curve of the sheet's sensor. The error says what is
// wrong with the sheet.
func OfSheet(s *sheet.Sensor) (Curve, error) {
	switch {
	case !HasCurve(s.Kind.Value):
		return nil, fmt.Errorf("a sensor of kind %s has no curve", s.Kind.Value)
	case s.Curve.Given:
		return named(s.Curve.Value)
	case s.Points.Given && s.Kind.Value == parser.Platinum:
		return curve(FromTable(s.Points.Value))
	case s.Points.Given:
		return curve(FromPoints(s.Points.Value))
	case s.Beta.Given:
		return curve(FromBeta(s.Beta.Value.R25Ohm, s.Beta.Value.BK, 0))
	}
	return nil, errors.New("nothing says which curve the sensor follows: give curve, points or beta")
}

// curve keeps a nil pointer of a failed constructor out of the interface.
func curve[C Curve](c C, err error) (Curve, error) {
	if err != nil {
		return nil, err
	}
	return c, nil
}

func named(id string) (Curve, error) {
	k, ok := Find(id)
	if !ok {
		return nil, fmt.Errorf("no curve is known as %q; %s", id, meant(id))
	}
	return k.Curve, nil
}

// meant says which curve a name may have been meant for.
func meant(id string) string {
	var ids []string
	for _, k := range All() {
		ids = append(ids, k.ID)
	}
	if near := parser.Nearest(id, ids); near != "" {
		return "did you mean " + near + "?"
	}
	return "known are " + strings.Join(Near(id), ", ")
}

// Near returns the ids that begin like id, or all where none does.
func Near(id string) []string {
	id = strings.ToLower(id)
	var near []string
	best := 1 // one letter in common says nothing
	for _, k := range All() {
		n := 0
		for n < len(id) && n < len(k.ID) && id[n] == k.ID[n] {
			n++
		}
		switch {
		case n > best:
			near, best = append(near[:0], k.ID), n
		case n == best && n > 1:
			near = append(near, k.ID)
		}
	}
	if near == nil {
		for _, k := range All() {
			near = append(near, k.ID)
		}
	}
	return near
}
