package rules

import (
	"testing"

	"preflash/parser"
	"preflash/parser/sheet"
)

func TestSensorUnknown(t *testing.T) {
	silent(t, sensorUnknown, healthyInput())

	for _, c := range []struct {
		name string
		def  parser.SensorDef
		said []string
	}{
		{"no known number",
			parser.SensorDef{Form: parser.FormUnknown, Name: "77", Note: "its table is not known"},
			[]string{"definition 77, it is not recognised: its table is not known"}},
		{"a curve that is none",
			parser.SensorDef{Form: parser.FormCurve, Kind: parser.NTC, Name: "5", Curve: "ntc-0"},
			[]string{`no curve is known as "ntc-0"`}},
		{"a Beta of 0", parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, Name: "own", R25Ohm: 100e3},
			[]string{"own", "above 0"}},
		{"rising points", parser.SensorDef{Form: parser.FormPoints, Kind: parser.NTC, Name: "own",
			Points: []parser.SensorPoint{
				{TempC: 25, Ohm: 100}, {TempC: 150, Ohm: 200}, {TempC: 250, Ohm: 300}}},
			[]string{"own (a curve through points)", "falls while it gets hotter"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			in := healthyInput()
			in.Printer.Hotend.Sensor.Value = c.def
			f := one(t, sensorUnknown, in)
			wantSaid(t, f, c.said...)
			wantChanges(t, f)
			silent(t, sensorCurve, in)
			silent(t, sensorFault, in)
		})
	}
}

func TestSensorUnknownInSheet(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.Sensor.Curve.Value = "ntc-100k-3590"
	f := one(t, sensorUnknown, in)
	wantSaid(t, f, `no curve is known as "ntc-100k-3590"`, "ntc-100k-3950")
	if f.At.Text() != "new.sensor.curve" {
		t.Errorf("points at %q", f.At.Text())
	}

	in = healthyInput()
	in.Sheet.New.Sensor.Curve = absent("new.sensor.curve", "")
	in.Sheet.New.Sensor.Points = given("new.sensor.points", []parser.SensorPoint{
		{TempC: 25, Ohm: 100e3}, {TempC: 26, Ohm: 1000}, {TempC: 250, Ohm: 999}})
	f = one(t, sensorUnknown, in)
	wantSaid(t, f, "does not fall steadily")
	if f.At.Text() != "new.sensor.points" {
		t.Errorf("points at %q", f.At.Text())
	}

	in.Sheet.New.Sensor = sheet.Sensor{Kind: given("new.sensor.kind", parser.NTC)}
	wantSaid(t, one(t, sensorUnknown, in), "give curve, points or beta")
}

// What is made of an amplifier's reading belongs to the old amplifier.
func TestSensorUnknownCorrection(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.Sensor.Kind.Value = parser.Thermocouple
	d := &in.Printer.Hotend.Sensor.Value
	*d = parser.SensorDef{Form: parser.FormAmplifier, Kind: parser.Thermocouple, Name: "-1", Gain: 1}
	silent(t, sensorUnknown, in)
	d.Gain, d.OffsetK = 2, -3
	f := one(t, sensorUnknown, in)
	wantSaid(t, f, "multiplied by 2 and shifted by -3 K", "thermometer")
	if f.Level != Warning {
		t.Errorf("level %s, want warning", f.Level)
	}
}
