package rules

import (
	"testing"

	"preflash/parser"
)

func TestSensorFault(t *testing.T) {
	silent(t, sensorFault, healthyInput())

	for _, c := range []struct {
		name  string
		spoil func(*Input)
		at    string
		said  []string
	}{
		{"the table ends above the minimum", func(in *Input) { in.Printer.Hotend.Sensor.Value.LowC = 10 },
			"min temp", []string{"open it reads 10 °C", "below 10 °C or above 275 °C", "only while heating", "the output is switched off, and the rise watch stops the printer"}},
		{"no minimum", func(in *Input) { in.Printer.Limits.MinTemp = off[float64](parser.MinTemp) },
			"min temp", []string{"open it reads", "below 0 °C or above 275 °C"}},
		{"a trip that no reading passes", func(in *Input) {
			in.Printer.Limits.MaxTemp.Value = 1e6
			in.Printer.Hotend.Sensor.Value.LowC, in.Printer.Hotend.Sensor.Value.HighC = 0, 0
		}, "max temp", []string{"shorted it reads"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			in := healthyInput()
			c.spoil(in)
			f := one(t, sensorFault, in)
			wantSaid(t, f, c.said...)
			if got := f.At.Text(); got != c.at {
				t.Errorf("points at %q, want the %s", got, c.at)
			}
		})
	}
}

func TestSensorFaultValues(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Sensor.Value.LowC, in.Printer.Hotend.Sensor.Value.HighC = 10, 260
	wantValues(t, one(t, sensorFault, in), Values{"open_c": 10.0, "short_c": 260.0, "min_c": 10.0, "trip_c": 259.0})
	in.Printer.Limits.MaxTemp = off[float64](parser.MaxTemp)
	in.Printer.Limits.MinWhileHeating = false
	f := one(t, sensorFault, in)
	wantValues(t, f, Values{"open_c": 10.0, "short_c": 260.0, "min_c": 10.0, "trip_c": 259.0})
	wantSaid(t, f, "open it reads 10 °C", "below 10 °C or above 259 °C") // the short is seen
	in.Printer.Hotend.Watch.RiseOn = off[bool](parser.HotendRiseOn)
	wantSaid(t, one(t, sensorFault, in), "switched off, and nothing says why")
}

// Platinum fails the other way round: open is hot, shorted is cold.
func TestSensorFaultPlatinum(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Sensor.Value = parser.SensorDef{Form: parser.FormCurve, Kind: parser.Platinum, Curve: "pt1000", PullupOhm: 4700}
	silent(t, sensorFault, in)
	in.Printer.Limits.MinTemp.Value = -250
	wantSaid(t, one(t, sensorFault, in), "shorted it reads -240 °C")
}

func TestSensorFaultCannotTell(t *testing.T) {
	in := healthyInput()
	in.Printer.Limits.MinTemp = unknown[float64](parser.MinTemp)
	if f := one(t, sensorFault, in); f.Level != Warning {
		t.Errorf("level %s, want warning", f.Level)
	}
	in = healthyInput()
	in.Printer.Hotend.Sensor.Value = parser.SensorDef{Form: parser.FormAmplifier, Kind: parser.Thermocouple}
	silent(t, sensorFault, in)
}
