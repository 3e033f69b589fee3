package rules

import (
	"math"
	"testing"

	"preflash/parser"
)

// Figures by hand for platinum: dR/dT = R0·(A + 2·B·t) of IEC 60751, and the
// divider moves 4700/(R + 4700)² per ohm.
func TestSensorResolution(t *testing.T) {
	silent(t, sensorResolution, healthyInput())

	perCount := func(r0 float64, bits int) float64 {
		const at = 260.0
		r := r0 * (1 + 3.9083e-3*at - 5.775e-7*at*at)
		slope := r0 * (3.9083e-3 - 2*5.775e-7*at)
		return 1 / (slope * 4700 / ((r + 4700) * (r + 4700)) * math.Exp2(float64(bits)))
	}
	for _, c := range []struct {
		curve    string
		r0       float64
		bits     int
		averaged int
		speaks   bool
	}{
		{"pt1000", 1000, 12, 16, false},
		{"pt1000", 1000, 10, 16, false},
		{"pt1000", 1000, 10, 1, true}, // 2.6 K a count, and nothing is averaged
		{"pt100", 100, 12, 16, false}, // 3.4 K a count, 0.9 K averaged
		{"pt100", 100, 12, 8, true},   // 1.2 K averaged
		{"pt100", 100, 10, 400, true}, // 14 K a count, however often it is averaged
		{"pt100", 100, 12, 0, true},   // a style that does not say averages nothing
	} {
		in := healthyInput()
		in.Sheet.New.Sensor.Kind.Value = parser.Platinum
		in.Sheet.New.Sensor.Curve.Value = c.curve
		in.Sheet.Printer.ADCBits.Value = c.bits
		in.Printer.Hotend.Oversample = c.averaged
		if !c.speaks {
			silent(t, sensorResolution, in)
			continue
		}
		f := one(t, sensorResolution, in)
		raw := perCount(c.r0, c.bits)
		wantValues(t, f,
			Values{"at_c": 260.0, "c_per_count": raw,
				"effective_c": raw / math.Sqrt(float64(max(c.averaged, 1)))})
		if f.At.Text() != "new.sensor.curve" {
			t.Errorf("points at %q", f.At.Text())
		}
	}
}

func TestSensorResolutionOfChip(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.Sensor.Kind.Value = parser.Thermocouple
	silent(t, sensorResolution, in)
}

// A fleet of older boards has converters of 10 bits, which the sheet may leave
// out.
func TestSensorResolutionAssumedBits(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.Sensor.Kind = given("new.sensor.kind", parser.Platinum)
	in.Sheet.New.Sensor.Curve = given("new.sensor.curve", "pt100")
	in.Printer.Hotend.Oversample = 16
	silent(t, sensorResolution, in)
	in.Sheet.Printer.ADCBits = absent("printer.adc_bits", 12)
	f := one(t, sensorResolution, in)
	if f.Level != Note {
		t.Errorf("level %s, want note", f.Level)
	}
	wantSaid(t, f, "12 were assumed", "with 10")

	// 2.6 K a count with 10 bits: averaging decides.
	in.Sheet.New.Sensor.Curve.Value = "pt1000"
	silent(t, sensorResolution, in)
	in.Printer.Hotend.Oversample = 4 // 1.3 K averaged, and 0.3 with 12 bits
	wantSaid(t, one(t, sensorResolution, in), "with 10", "12 were assumed")
	in.Sheet.Printer.ADCBits.Value = 10
	one(t, sensorResolution, in)
}

// Where a reading that stands still is a fault, coarse counts can cause it.
func TestSensorResolutionStill(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Watch.StillS = byDefault(parser.HotendStill, 40.0)
	silent(t, sensorResolution, in)
	in.Sheet.New.Sensor.Kind.Value, in.Sheet.New.Sensor.Curve.Value = parser.Platinum, "pt100"
	in.Sheet.Printer.ADCBits.Value = 10
	wantSaid(t, one(t, sensorResolution, in), "does not move for 40 s")
}

// Of a finer converter some firmware averages fewer readings.
func TestSensorResolutionFewerReadings(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.Sensor.Kind = given("new.sensor.kind", parser.Platinum)
	in.Sheet.New.Sensor.Curve = given("new.sensor.curve", "pt100")
	in.Sheet.Printer.ADCBits = given("printer.adc_bits", 12)
	in.Printer.Hotend.Oversample = 16
	silent(t, sensorResolution, in) // 3.4 K a count, 0.9 K after 16 readings
	in.Printer.Hotend.FewerOfFine = true
	wantSaid(t, one(t, sensorResolution, in), "averages 8 readings")
	for bits, want := range map[int]int{8: 16, 10: 16, 11: 9, 12: 8, 16: 4, 24: 1} {
		if got := in.Printer.Hotend.Averaged(bits); got != want {
			t.Errorf("%d bits: %d readings, want %d", bits, got, want)
		}
	}
}
