package rules

import (
	"testing"

	"preflash/parser"
)

func TestSensorKind(t *testing.T) {
	silent(t, sensorKind, healthyInput())

	kinds := []parser.SensorKind{parser.NTC, parser.Platinum, parser.PlatinumAmplifier, parser.Thermocouple}
	curve := map[parser.SensorKind]string{parser.NTC: "ntc-100k-3950", parser.Platinum: "pt1000",
		parser.PlatinumAmplifier: "pt100"}
	for _, defined := range kinds {
		for _, wired := range kinds {
			in := healthyInput()
			in.Printer.Hotend.Sensor.Value = parser.SensorDef{Form: parser.FormAmplifier, Kind: defined,
				Name: "x"}
			in.Sheet.New.Sensor.Kind.Value = wired
			in.Sheet.New.Sensor.Curve = given("new.sensor.curve", curve[wired])
			if curve[wired] == "" {
				in.Sheet.New.Sensor.Curve = absent("new.sensor.curve", "")
			}
			if defined == wired {
				silent(t, sensorKind, in)
				continue
			}
			f := one(t, sensorKind, in)
			if f.Level != Error || f.Changes != nil { // no curve, so nothing is known of its wiring
				t.Errorf("%s read as %s: %s, changes %v", wired, defined, f.Level, f.Changes)
			}
			wantSaid(t, f, kindName(defined), kindName(wired))
			silent(t, sensorCurve, in)
		}
	}
}

// A chip for platinum is told the sensor's resistance.
func TestSensorKindPlatinumMismatch(t *testing.T) {
	tests := []struct {
		r0Ohm float64
		curve string
		want  []string
	}{
		{0, "pt1000", nil}, // not told
		{100, "pt100", nil},
		{1000, "pt1000", nil},
		{100, "pt1000", []string{"100 Ω at 0 °C", "pt1000, which has 1000 Ω"}},
		{1000, "pt100", []string{"sensor of 1000 Ω", "pt100, which has 100 Ω"}},
	}
	for _, tt := range tests {
		in := healthyInput()
		in.Printer.Hotend.Sensor.Value = parser.SensorDef{Form: parser.FormAmplifier,
			Kind: parser.PlatinumAmplifier, Name: "x", R0Ohm: tt.r0Ohm}
		in.Sheet.New.Sensor.Kind.Value = parser.PlatinumAmplifier
		in.Sheet.New.Sensor.Curve = given("new.sensor.curve", tt.curve)
		if tt.want == nil {
			silent(t, sensorKind, in)
			continue
		}
		f := one(t, sensorKind, in)
		if f.Level != Error || f.Changes != nil {
			t.Errorf("%s, changes %v", f.Level, f.Changes)
		}
		wantSaid(t, f, tt.want...)
	}
}

// A definition without a kind has that of its curve.
func TestSensorKindOfCurve(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Sensor.Value.Kind = parser.KindUnknown
	silent(t, sensorKind, in)
	in.Printer.Hotend.Sensor.Value.Curve = "pt1000"
	wantSaid(t, one(t, sensorKind, in), "a bare platinum sensor", "ntc-100k-3950")
}

func TestSensorKindLeavesToOthers(t *testing.T) {
	for _, form := range []parser.SensorForm{parser.FormUnknown, parser.FormPlaceholder} {
		in := healthyInput()
		in.Printer.Hotend.Sensor.Value = parser.SensorDef{Form: form, Kind: parser.Platinum}
		silent(t, sensorKind, in)
	}
}

func TestSensorKindNoSensor(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Sensor.Value = parser.SensorDef{Form: parser.FormNone}
	wantSaid(t, one(t, sensorKind, in), "has no sensor", "a bead thermistor")
	in.Printer.Hotend.Sensor = off[parser.SensorDef](parser.HotendSensor)
	wantSaid(t, one(t, sensorKind, in), "has no sensor")
}

func TestSensorKindOfSheetItself(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.Sensor.Curve.Value = "pt1000"
	f := one(t, sensorKind, in)
	wantSaid(t, f,
		"it says that the sensor is a bead thermistor, but pt1000 is the curve of a bare platinum sensor")
	if f.At.Text() != "new.sensor.curve" {
		t.Errorf("points at %q", f.At.Text())
	}
}

func TestSensorKindCannotTell(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Sensor = unknown[parser.SensorDef](parser.HotendSensor)
	if f := one(t, sensorKind, in); f.Level != Error {
		t.Errorf("level %s, want error: it cannot be waived", f.Level)
	}
}

// What a chip is told besides can only be looked up at the board.
func TestSensorKindAmplifierNote(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Sensor.Value = parser.SensorDef{Form: parser.FormAmplifier, Kind: parser.Thermocouple,
		Name: "x", Note: "the chip is told of type J"}
	in.Sheet.New.Sensor.Kind.Value = parser.Thermocouple
	in.Sheet.New.Sensor.Curve = absent("new.sensor.curve", "")
	f := one(t, sensorKind, in)
	wantSaid(t, f, "see that it is so: of the sensor definition x, the chip is told of type J")
	if f.Level != Note {
		t.Errorf("level %s, want note", f.Level)
	}
}

// The reference resistor of a chip goes with the sensor that it is told of.
func TestSensorKindChip(t *testing.T) {
	chip := func(r0, reference float64, wires int) *Input {
		in := healthyInput()
		in.Sheet.New.Sensor.Kind.Value, in.Sheet.New.Sensor.Curve.Value = parser.PlatinumAmplifier, "pt1000"
		in.Printer.Hotend.Sensor.Value = parser.SensorDef{Form: parser.FormAmplifier,
			Kind: parser.PlatinumAmplifier, Name: "-5",
			R0Ohm: r0, ReferenceOhm: reference, Wires: wires}
		return in
	}
	silent(t, sensorKind, chip(1000, 4300, 0))
	silent(t, sensorKind, chip(1000, 4000, 0))
	silent(t, sensorKind, chip(1000, 0, 0)) // not told
	f := one(t, sensorKind, chip(1000, 430, 0))
	wantSaid(t, f, "sensor of 1000 Ω", "430 Ω", "do not go together")
	if f.Level != Error || f.Changes != nil {
		t.Errorf("%s, changes %v", f.Level, f.Changes)
	}
	got := run(t, sensorKind, chip(100, 4300, 0)) // and it is not the sheet's sensor
	if len(got) != 2 {
		t.Errorf("findings %v, want two", messages(got))
	}
	if f = one(t, sensorKind, chip(1000, 4300, 3)); f.Level != Note {
		t.Errorf("level %s, want note", f.Level)
	}
	wantSaid(t, f, "set up for 3")
}

// Bead and bare platinum hang on the same two wires: the definition to write is
// the change, for the board's pull-up.
func TestSensorKindSameWires(t *testing.T) {
	platinum := parser.SensorDef{Form: parser.FormCurve, Kind: parser.Platinum, Name: "P", Curve: "pt1000",
		PullupOhm: 4700}
	for _, c := range []struct {
		name  string
		spoil func(*Input)
		want  []parser.Change
		said  []string
	}{
		{"a bead read as platinum", func(*Input) {},
			[]parser.Change{{Key: parser.HotendSensor, Value: stubDef}},
			[]string{"the reading falls as the hotend heats",
				"make the sensor definition 11 (ntc-100k-3950)"}},
		{"the sheet does not say the pull-up",
			func(in *Input) { in.Sheet.Printer.PullupOhm = absent("printer.pullup_ohm", 4700.0) },
			[]parser.Change{{Key: parser.HotendSensor, Value: stubDef}},
			[]string{"for a pull-up of 4700 Ω (assumed: the sheet does not say)"}},
		{"made for another pull-up, and nothing says which", func(in *Input) {
			in.Sheet.Printer.PullupOhm = absent("printer.pullup_ohm", 4700.0)
			in.Printer.Hotend.Sensor.Value.PullupOhm = 1000
		}, nil, []string{"give printer.pullup_ohm, and correct"}},
		{"no definition of it", func(in *Input) {
			in.Config = stubConfig{form: parser.FormBeta}
			in.Printer.Hotend.Sensor.Value = curveDef("5", "ntc-100k-4267")
			in.Sheet.New.Sensor.Kind.Value, in.Sheet.New.Sensor.Curve.Value = parser.Platinum, "pt100"
		}, nil, []string{"no definition of it for a pull-up of 4700 Ω: a custom one is for beads alone"}},
		{"a pull-up of its own goes along", func(in *Input) {
			in.Printer.Hotend.PullupOhm = set(parser.HotendPullup, 2200.0)
		}, []parser.Change{{Key: parser.HotendPullup, Value: 4700.0},
			{Key: parser.HotendSensor, Value: stubDef}}, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			in := healthyInput()
			in.Printer.Hotend.Sensor.Value = platinum
			c.spoil(in)
			f := one(t, sensorKind, in)
			wantChanges(t, f, c.want...)
			wantSaid(t, f, c.said...)
			silent(t, sensorCurve, in)
		})
	}
}

// What a cold hotend shows decides whether the firmware shuts down at once.
func TestSensorKindShownCold(t *testing.T) {
	platinum := parser.SensorDef{Form: parser.FormCurve, Kind: parser.Platinum, Name: "P", Curve: "pt1000",
		PullupOhm: 4700}
	for _, tt := range []struct {
		name  string
		spoil func(*Input)
		trips bool
	}{
		{"a bead read as platinum", func(in *Input) {}, true},
		{"no max temp", func(in *Input) { in.Printer.Limits.MaxTemp = off[float64](parser.MaxTemp) }, false},
		{"no max temp, and a table that ends", func(in *Input) {
			in.Printer.Limits.MaxTemp = off[float64](parser.MaxTemp)
			in.Printer.Hotend.Sensor.Value.LowC, in.Printer.Hotend.Sensor.Value.HighC = -50, 500
		}, true},
		{"platinum read as a bead", func(in *Input) {
			in.Sheet.New.Sensor.Kind.Value, in.Sheet.New.Sensor.Curve.Value = parser.Platinum, "pt1000"
			readAs(in, stubDef)
		}, false},
		{"and a table that reaches further", func(in *Input) {
			in.Sheet.New.Sensor.Kind.Value, in.Sheet.New.Sensor.Curve.Value = parser.Platinum, "pt1000"
			readAs(in, stubDef)
			in.Printer.Hotend.Sensor.Value.HighC = 300
		}, false},
	} {
		in := healthyInput()
		readAs(in, platinum)
		tt.spoil(in)
		f := one(t, sensorKind, in)
		if tt.trips {
			wantSaid(t, f, "and a cold one shows ", "so the firmware shuts down at once")
		} else {
			wantSaid(t, f, "so the heater stays on and no limit holds")
		}
	}
}
