package rules

import (
	"strings"

	"preflash/parser"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

var sensorUnknown = &Rule{
	ID:      "sensor-unknown",
	Level:   Error,
	Hides:   []string{"sensor-curve", "sensor-fault"},
	Summary: "A sensor definition, or the sheet's sensor, is not recognised.",
	Doc: `What is not recognised cannot be compared: there is no guess and no change. Put
the number or name of a known definition in the configuration, or measure the
sensor. sensor-curve is silent meanwhile. The sheet's sensor is looked at too:
a curve that is not known, or points that give no curve. The known ones are
listed by: preflash sensor curves.
Warning: an amplifier's reading is multiplied or shifted: whether that suits the
new amplifier or thermocouple cannot be told from here.`,
	Check: func(in *Input, report func(Finding)) {
		want := &in.Sheet.New.Sensor
		if sensor.HasCurve(want.Kind.Value) {
			if _, err := sensor.OfSheet(want); err != nil {
				report(Findingf(Error, sheetCurveAt(want),
					"correct the sheet's sensor, it is not recognised: %v",
					err).Of("sheet"))
			}
		}
		s := &in.Printer.Hotend.Sensor
		if !s.Known() {
			return // sensor-kind speaks
		}
		d := &s.Value
		if corrected := correction(d); corrected != "" {
			report(Findingf(Warning, sensorAt(in),
				"compare with a thermometer before the first print, or take it out: the amplifier's "+
					"reading is %s, which belonged to the old amplifier and thermocouple",
				corrected))
		}
		switch d.Form {
		case parser.FormUnknown:
			why := d.Note
			if why == "" {
				why = "what it makes of the new sensor is unknown"
			}
			report(Findingf(Error, sensorAt(in), "replace the sensor definition %s, it is not recognised: %s",
				definition(d), why))
		case parser.FormCurve, parser.FormBeta, parser.FormPoints:
			if _, err := sensor.OfDefs(d); err != nil {
				report(Findingf(Error, sensorAt(in),
					"replace the sensor definition %s, it is not recognised: %v",
					definition(d), err))
			}
		}
	},
}

// correction says what is made of an amplifier's reading, or nothing.
func correction(d *parser.SensorDef) string {
	var parts []string
	if d.Gain != 0 && d.Gain != 1 {
		parts = append(parts, "multiplied by "+unit.Figure(d.Gain, 3))
	}
	if d.OffsetK != 0 {
		parts = append(parts, "shifted by "+unit.Kelvin(d.OffsetK))
	}
	return strings.Join(parts, " and ")
}
