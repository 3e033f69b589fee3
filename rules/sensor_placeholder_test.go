package rules

import (
	"testing"

	"preflash/parser"
)

func TestSensorPlaceholder(t *testing.T) {
	dummy := parser.SensorDef{Form: parser.FormPlaceholder, Name: "998", FixedC: 25}
	right := stubDef

	silent(t, sensorPlaceholder, healthyInput())

	in := healthyInput()
	in.Printer.Hotend.Sensor.Value = dummy
	f := one(t, sensorPlaceholder, in)
	wantSaid(t, f, "give the hotend the definition of its real sensor",
		"a dummy (998) that always reads 25 °C")
	wantChanges(t, f, in.Printer.Hotend.Sensor.To(right))

	// A hotend without a curve leaves nothing to propose.
	in.Sheet.New.Sensor.Kind.Value = parser.Thermocouple
	wantChanges(t, one(t, sensorPlaceholder, in))

	in = healthyInput()
	in.Printer.Bed.Sensor.Value = dummy
	f = one(t, sensorPlaceholder, in)
	wantSaid(t, f, "give the bed the definition of its real sensor")
	wantChanges(t, f)
	if f.At.Text() != "bed sensor" {
		t.Errorf("points at %q", f.At.Text())
	}

	in.Printer.Bed.Heated = off[bool](parser.BedHeated)
	silent(t, sensorPlaceholder, in)
}

// Another hotend on a dummy is no part of the swap, and said all the same.
func TestSensorPlaceholderElsewhere(t *testing.T) {
	in := healthyInput()
	sensor := set(parser.HotendSensor,
		parser.SensorDef{Form: parser.FormPlaceholder, Name: "998", FixedC: 25})
	tool := parser.Heater{Name: "tool 1", Tool: 1, Settings: []parser.Description{sensor.Describe()}}
	in.Config = stubConfig{others: []parser.Heater{tool}}
	f := one(t, sensorPlaceholder, in)
	wantSaid(t, f,
		"on the output of tool 1, or name its sensor: definition 998 is a dummy that always reads 25 °C")
	wantChanges(t, f)
	if f.Level != Warning || f.About != "tool 1: hotend sensor" {
		t.Errorf("%s about %q", f.Level, f.About)
	}
	tool.Settings[0].State = parser.Off // no such hotend
	silent(t, sensorPlaceholder, in)
	tool.Settings[0].State, tool.Settings[0].Value = parser.Set, any(stubDef)
	silent(t, sensorPlaceholder, in)
}

func TestSensorPlaceholderCannotTell(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Sensor = unknown[parser.SensorDef](parser.HotendSensor)
	in.Printer.Bed.Sensor = unknown[parser.SensorDef](parser.BedSensor)
	got := run(t, sensorPlaceholder, in)
	if len(got) != 2 || got[0].Level != Error || got[1].Level != Error {
		t.Errorf("findings %v, want two errors: it cannot be waived", messages(got))
	}
}
