package rules

import (
	"preflash/parser"
	"preflash/rules/sensor"
)

var sensorUnknown = &Rule{
	ID:      "sensor-unknown",
	Level:   Error,
	Summary: "A sensor definition, or the sheet's sensor, cannot be placed on a curve.",
	Doc: `What cannot be placed cannot be compared: there is no guess and no change. Put
the number or name of a known definition in the configuration, or measure the
sensor. sensor-curve is silent meanwhile. The sheet's sensor is looked at too:
a curve that is not known, or points that give no curve. The known ones are
listed by: preflash sensor curves.`,
	Check: func(in *Input, report func(Finding)) {
		want := &in.Sheet.New.Sensor
		if sensor.HasCurve(want.Kind.Value) {
			if _, err := sensor.OfSheet(want); err != nil {
				report(Sayf(Error, sheetCurveAt(want), "the sheet's sensor cannot be placed on a curve: %v", err))
			}
		}
		s := &in.Printer.Hotend.Sensor
		if !s.Known() {
			return // sensor-kind speaks
		}
		d := &s.Value
		switch d.Form {
		case parser.FormUnknown:
			why := d.Note
			if why == "" {
				why = "what it makes of the new sensor is unknown"
			}
			report(Sayf(Error, sensorAt(in), "the sensor definition %s cannot be placed on a curve: %s", definition(d), why))
		case parser.FormCurve, parser.FormBeta, parser.FormPoints:
			if _, err := sensor.OfDefs(d); err != nil {
				report(Sayf(Error, sensorAt(in), "the sensor definition %s cannot be placed on a curve: %v", definition(d), err))
			}
		}
	},
}
