package rules

import (
	"fmt"
	"math"

	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

// What the sensor rules share: the definition that the firmware believes and
// the sensor that the sheet names, as circuits that can be computed with.

// hotendCircuits returns what the firmware may believe, and the real sensor; false
// where one of them is no curve, or where they differ in kind: then sensor-kind,
// sensor-placeholder or sensor-unknown speaks.
func hotendCircuits(in *Input) ([]*sensor.Circuit, *reading, bool) {
	if s := &in.Printer.Hotend.Sensor; !s.Known() || kindOf(&s.Value) != in.Sheet.New.Sensor.Kind.Value {
		return nil, nil, false
	}
	all, err := believedCircuits(in)
	if err != nil {
		return nil, nil, false
	}
	r, ok := newReading(in, all[0].SeriesOhm)
	return all, r, ok
}

// believedCircuits are the configured definition, with the pull-up that the
// configuration sets on its own where its style does that: more than one where
// the files do not tell which firmware reads it.
func believedCircuits(in *Input) ([]*sensor.Circuit, error) {
	all, err := sensor.OfDefs(&in.Printer.Hotend.Sensor.Value)
	if err != nil {
		return nil, err
	}
	if own := &in.Printer.Hotend.PullupOhm; ownPullup(in) && own.Known() && own.Value > 0 {
		for _, c := range all {
			c.PullupOhm = own.Value
		}
	}
	return all, nil
}

// reversed reports whether the firmware's reading falls as the hotend heats:
// definition and sensor run in opposite directions, and there is no actual
// temperature that belongs to what is shown.
func reversed(in *Input) bool {
	s, want := &in.Printer.Hotend.Sensor, in.Sheet.New.Sensor.Kind.Value
	if !s.Known() || !sensor.HasCurve(want) {
		return false
	}
	has := kindOf(&s.Value)
	if !sensor.HasCurve(has) || has == want {
		return false
	}
	_, err := sensor.OfDef(&s.Value)
	return err == nil
}

// ownPullup reports whether the pull-up is a setting of its own, and not part
// of the sensor's definition.
func ownPullup(in *Input) bool { return in.Printer.Hotend.PullupOhm.State != parser.Absent }

// boardPullup is the pull-up that the board really has. The sheet says; where
// it does not, a configuration that was written with a pull-up of its own, or
// with a definition that is made for another than the usual one, knows its
// board better than the usual figure does.
func boardPullup(in *Input) float64 {
	sheetOhm, own := &in.Sheet.Printer.PullupOhm, &in.Printer.Hotend.PullupOhm
	switch {
	case !sheetOhm.Given && ownPullup(in) && own.State == parser.Set && own.Value > 0:
		return own.Value
	case pullupUnsaid(in):
		return in.Printer.Hotend.Sensor.Value.PullupOhm
	}
	return sheetOhm.Value
}

// pullupUnsaid reports whether the configured definition is made for another
// pull-up than the usual one, and nothing says what the board has.
func pullupUnsaid(in *Input) bool {
	s := &in.Printer.Hotend.Sensor
	if in.Sheet.Printer.PullupOhm.Given || ownPullup(in) || !s.Known() {
		return false
	}
	p := s.Value.PullupOhm
	return p > 0 && math.Abs(p-sensor.UsualPullupOhm) > sensor.PullupTolerance*p
}

// pullupText names the board's pull-up and, where the sheet does not say it,
// what it rests on.
func pullupText(in *Input) string {
	sheetOhm, own := &in.Sheet.Printer.PullupOhm, &in.Printer.Hotend.PullupOhm
	text := unit.Ohms(boardPullup(in))
	switch {
	case sheetOhm.Given:
		return text
	case ownPullup(in) && own.State == parser.Set, pullupUnsaid(in):
		return text + ", as the configuration has it"
	}
	return text + " (assumed: the sheet does not say)"
}

// kindOf is the kind of sensor that a definition is for.
func kindOf(d *parser.SensorDef) parser.SensorKind {
	if d.Kind == parser.KindUnknown {
		switch d.Form {
		case parser.FormCurve:
			k, _ := sensor.Find(d.Curve)
			return k.Kind
		case parser.FormBeta, parser.FormPoints:
			return parser.NTC
		}
	}
	return d.Kind
}

// sheetCurveKind is the kind that the sheet's curve belongs to.
func sheetCurveKind(s *sheet.Sensor) parser.SensorKind {
	if k, ok := sensor.Find(s.Curve.Value); ok && s.Curve.Given {
		return k.Kind
	}
	return s.Kind.Value
}

// sheetCurveAt is the key that gives the sheet's curve.
func sheetCurveAt(s *sheet.Sensor) parser.Span {
	switch {
	case s.Curve.Given:
		return s.Curve.At
	case s.Points.Given:
		return s.Points.At
	case s.Beta.Given:
		return s.Beta.At
	}
	return s.Kind.At
}

// sensorAt is where the hotend's sensor is defined, or the sheet's sensor where
// the configuration does not define one.
func sensorAt(in *Input) parser.Span {
	return placed(in.Printer.Hotend.Sensor.At, in.Sheet.New.Sensor.Kind.At)
}

// definition names a definition as its owner wrote it, and what it stands for.
func definition(d *parser.SensorDef) string {
	var means string
	switch d.Form {
	case parser.FormCurve:
		means = d.Curve
	case parser.FormBeta:
		means = "a plain Beta of " + unit.Figure(d.BetaK, 1) + " K"
		if d.CubicC != 0 {
			means = "a Beta of " + unit.Figure(d.BetaK, 1) + " K with a cubic term"
		}
	case parser.FormPoints:
		switch {
		case d.Curve != "":
			means = d.Curve
		case d.Join != parser.JoinRatio: // its note says what it is
			means = "a curve through points"
		}
	}
	switch {
	case means == "" || means == d.Name:
		return d.Name
	case d.Name == "":
		return means
	}
	return fmt.Sprintf("%s (%s)", d.Name, means)
}

// noteOn appends what the style says about a definition.
func noteOn(d *parser.SensorDef) string {
	if d.Note == "" {
		return ""
	}
	return "; definition " + d.Name + ": " + d.Note
}

// sheetSensor names the sensor of the sheet.
func sheetSensor(s *sheet.Sensor) string {
	switch {
	case s.Curve.Given:
		return s.Curve.Value
	case s.Points.Given:
		return "the one of the sheet's points"
	case s.Beta.Given:
		return "a Beta of " + unit.Figure(s.Beta.Value.BK, 1) + " K"
	}
	return kindName(s.Kind.Value)
}

// kindName says a kind in words.
func kindName(k parser.SensorKind) string {
	switch k {
	case parser.NTC:
		return "a bead thermistor"
	case parser.Platinum:
		return "a bare platinum sensor"
	case parser.PlatinumAmplifier:
		return "a platinum sensor behind an amplifier"
	case parser.Thermocouple:
		return "a thermocouple"
	}
	return "a sensor of unknown kind"
}
