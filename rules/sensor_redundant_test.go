package rules

import (
	"math"
	"testing"

	"preflash/parser"
)

func TestSensorRedundant(t *testing.T) {
	bead := func(curve string) parser.SensorDef {
		return parser.SensorDef{Form: parser.FormCurve, Kind: parser.NTC, Name: "5", Curve: curve,
			PullupOhm: 4700}
	}
	with := func(d parser.SensorDef) *Input {
		in := healthyInput()
		in.Printer.Hotend.Second, in.Printer.Hotend.SecondK = set(parser.SecondSensor, d),
			set(parser.SecondDiff, 10.0)
		return in
	}
	silent(t, sensorRedundant, healthyInput())
	silent(t, sensorRedundant, with(bead("ntc-100k-3950"))) // reads the new one right

	f := one(t, sensorRedundant, with(bead("ntc-100k-4267")))
	wantSaid(t, f, "agree with this hotend's to 10 K", "5 (ntc-100k-4267) shows 243.5 °C at 260 °C")
	wantChanges(t, f)
	// Worst at the top: by the three points of each curve, computed apart.
	if off, ok := f.Values["error_k"].(float64); !ok || f.Values["at_c"] != 260.0 ||
		math.Abs(off+16.51) > 0.005 {
		t.Errorf("values %v, want -16.51 K at 260 °C", f.Values)
	}

	for said, d := range map[string]parser.SensorDef{
		"which is for a bare platinum sensor": {Form: parser.FormCurve, Kind: parser.Platinum,
			Curve: "pt1000", PullupOhm: 4700},
		"always reads 25 °C": {Form: parser.FormPlaceholder, Name: "998", FixedC: 25},
		"is not recognised":  {Kind: parser.NTC, Name: "22"},
	} {
		wantSaid(t, one(t, sensorRedundant, with(d)), said)
	}
	in := with(bead("ntc-100k-3950"))
	in.Printer.Hotend.Second = unknown[parser.SensorDef](parser.SecondSensor)
	wantSaid(t, one(t, sensorRedundant, in), "cannot tell the second hotend sensor")

	// Two chips of one kind report temperatures of their own.
	in = with(parser.SensorDef{Form: parser.FormAmplifier, Kind: parser.Thermocouple, Name: "-2"})
	in.Sheet.New.Sensor.Kind.Value = parser.Thermocouple
	silent(t, sensorRedundant, in)
}
