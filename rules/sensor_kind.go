package rules

import "preflash/parser"

var sensorKind = &Rule{
	ID:       "sensor-kind",
	Level:    Error,
	Unwaived: true,
	Summary:  "The definition is for another kind of sensor than the one that goes in.",
	Doc: `Kinds: bead thermistor, bare platinum, platinum behind an amplifier,
thermocouple. One kind read as another gives temperatures that mean nothing. It
is a matter of wiring, so there is no change: a person must look at the board.
Cannot be waived. Source: common practice, no source.`,
	Check: func(in *Input, report func(Finding)) {
		s := &in.Printer.Hotend.Sensor
		want := &in.Sheet.New.Sensor
		if k := sheetCurveKind(want); k != want.Kind.Value && want.Kind.Value != parser.PlatinumAmplifier {
			report(Sayf(Error, want.Curve.At, "the sheet says that the sensor is %s, but %s is the curve of %s: correct one of the two",
				kindName(want.Kind.Value), want.Curve.Value, kindName(k)))
		}
		if s.State == parser.Unknown {
			report(cannotTell(Error, s))
			return
		}
		d := &s.Value
		if s.State == parser.Off || d.Form == parser.FormNone {
			report(Sayf(Error, sensorAt(in), "the configuration says that this hotend has no sensor, the sheet names %s; the wiring decides: look at the board before anything is heated",
				kindName(want.Kind.Value)))
			return
		}
		switch kind := kindOf(d); {
		case d.Form == parser.FormUnknown || d.Form == parser.FormPlaceholder:
			// sensor-unknown and sensor-placeholder speak.
		case kind == parser.KindUnknown || kind == want.Kind.Value:
		default:
			report(Sayf(Error, sensorAt(in), "the firmware reads the sensor as %s, which is for %s; the sheet names %s; they are wired differently, so look at the board before anything is heated",
				definition(d), kindName(kind), kindName(want.Kind.Value)))
		}
	},
}
