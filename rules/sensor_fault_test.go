package rules

import (
	"math"
	"testing"

	"preflash/parser"
	"preflash/rules/sensor"
)

// noEnds takes the ends of the table away.
func noEnds(in *Input) {
	in.Printer.Hotend.Sensor.Value.LowC, in.Printer.Hotend.Sensor.Value.HighC = 0, 0
}

func TestSensorFault(t *testing.T) {
	silent(t, sensorFault, healthyInput())

	for _, c := range []struct {
		name  string
		spoil func(*Input)
		at    string
		said  []string
	}{
		{"no minimum",
			func(in *Input) { in.Printer.Limits.MinTemp = off[float64](parser.MinTemp); noEnds(in) },
			"min temp", []string{"open, the sensor reads", "trips only above 275 °C"}},
		{"a minimum below what it reads",
			func(in *Input) { in.Printer.Limits.MinTemp.Value = -200; noEnds(in) },
			"min temp", []string{"below -200 °C or above 275 °C", "only while heating"}},
		{"a trip that no reading passes",
			func(in *Input) { in.Printer.Limits.MaxTemp.Value = 1e6; noEnds(in) },
			"max temp", []string{"shorted, the sensor reads"}},
		{"another firmware that it may be", func(in *Input) {
			other := curveDef("x", "ntc-100k-3950")
			in.Printer.Limits.MinTemp.Value = -200
			in.Printer.Hotend.Sensor.Value.Or = &other
		}, "min temp", []string{"open, the sensor reads"}},
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

// At the ends of its table the firmware gives the heater no power, wherever the
// limits lie.
func TestSensorFaultTableEnds(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Sensor.Value.LowC, in.Printer.Hotend.Sensor.Value.HighC = 10, 260
	silent(t, sensorFault, in)
	in.Printer.Limits.MaxTemp = off[float64](parser.MaxTemp)
	silent(t, sensorFault, in)
}

// The min temp goes up where that shows both faults: an open bead reads far
// below 0 °C, a shorted amplifier about 0 °C.
func TestSensorFaultRaisesTheMinimum(t *testing.T) {
	for _, c := range []struct {
		name  string
		spoil func(*Input)
		want  float64 // NaN for no change
	}{
		{"a bead", func(in *Input) {}, 0},
		{"a room that is colder", func(in *Input) { in.Sheet.Printer.AmbientC.Value = -5 }, math.NaN()},
		{"a minimum that reaches no further", func(in *Input) { in.Printer.Limits.MinTemp.Most = -10 },
			math.NaN()},
		{"a hot fault beside it", func(in *Input) { in.Printer.Limits.MaxTemp.Value = 1e6 }, math.NaN()},
		{"a definition that is changed first", func(in *Input) {
			in.Changed = map[parser.Key]any{parser.HotendSensor: parser.SensorDef{}}
		}, math.NaN()},
		{"nothing to edit", func(in *Input) { in.Printer.Limits.MinTemp.State = parser.Default }, math.NaN()},
	} {
		in := healthyInput()
		noEnds(in)
		in.Printer.Limits.MinTemp.Value = -200
		c.spoil(in)
		f := one(t, sensorFault, in)
		switch {
		case math.IsNaN(c.want) && len(f.Changes) > 0:
			t.Errorf("%s: %v", c.name, f.Changes)
		case !math.IsNaN(c.want):
			wantChanges(t, f, parser.Change{Key: parser.MinTemp, Value: c.want})
			in.Printer.Limits.MinTemp.Value = c.want
			silent(t, sensorFault, in)
		}
	}
}

func TestSensorFaultValues(t *testing.T) {
	in := healthyInput()
	noEnds(in)
	in.Printer.Limits.MinTemp.Value = -200
	k, _ := sensor.Find("ntc-100k-3950")
	openC := k.Curve.TempC(4700 * (16*4096 - 0.5) / 0.5) // half a count below 16 readings of 12 bits
	shortC := k.Curve.TempC(4700 * 0.5 / (16*4096 - 0.5))
	wantValues(t, one(t, sensorFault, in),
		Values{"open_c": openC, "short_c": shortC, "min_c": -200.0, "trip_c": 275.0})
}

// Platinum fails the other way round: open is hot, shorted is cold.
func TestSensorFaultPlatinum(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Sensor.Value = parser.SensorDef{Form: parser.FormCurve, Kind: parser.Platinum,
		Curve: "pt1000", PullupOhm: 4700}
	silent(t, sensorFault, in)
	in.Printer.Limits.MinTemp.Value = -250
	wantSaid(t, one(t, sensorFault, in), "shorted, the sensor reads -240 °C")
}

// Without any trip the watches are all that is left.
func TestSensorFaultWithoutTrips(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Sensor.Value = parser.SensorDef{Form: parser.FormAmplifier, Kind: parser.Thermocouple,
		Name: "-1"}
	in.Printer.Limits.Trips = byDefault(parser.Trips, true)
	silent(t, sensorFault, in)
	in.Printer.Limits.Trips = off[bool](parser.Trips)
	f := one(t, sensorFault, in)
	wantSaid(t, f, "definition -1", "neither min nor max temp", "only the runaway protection is left")
	wantChanges(t, f)
	if f.Level != Error || f.At.Text() != string(parser.Trips) {
		t.Errorf("%s at %s", f.Level, f.At.Text())
	}
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

// A reading just at a limit passes for a good one; at the end of a table it does
// not.
func TestFaultLimits(t *testing.T) {
	limits := faultLimits{minC: 5, tripC: 275}
	whole, table := &sensor.Circuit{}, &sensor.Circuit{LowC: 10, HighC: 260}
	for tempC, want := range map[float64][2]bool{
		4.9: {false, false}, 5: {true, false}, 10: {true, false}, 10.1: {true, true},
		259.9: {true, true}, 260: {true, false}, 275: {true, false}, 275.1: {false, false},
	} {
		if got := [2]bool{limits.pass(whole, tempC), limits.pass(table, tempC)}; got != want {
			t.Errorf("%v °C passes %v, want %v", tempC, got, want)
		}
	}
}

func TestFaultLimitsText(t *testing.T) {
	never := math.Inf(1)
	for want, l := range map[string]faultLimits{
		"only below 5 °C or above 275 °C": {minC: 5, tripC: 275}, "only below 5 °C": {minC: 5, tripC: never},
		"only above 275 °C": {minC: -never, tripC: 275}, "at no temperature": {minC: -never, tripC: never},
	} {
		if got := l.String(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
