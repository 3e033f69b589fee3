package rules

import (
	"fmt"
	"math"

	"preflash/parser"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

var sensorKind = &Rule{
	ID:       "sensor-kind",
	Level:    Error,
	Unwaived: true,
	Hides:    []string{"sensor-curve"},
	Explains: []string{"sensor-kind", "sensor-fault", "sensor-resolution", "temp-reach"},
	Summary:  "The definition is for another kind of sensor than the one that goes in.",
	Doc: `Kinds: bead thermistor, bare platinum, platinum behind an amplifier,
thermocouple. One kind read as another gives temperatures that mean nothing.
Bead and bare platinum hang on the same two wires and the same divider: the
change is the definition to write, as sensor-curve would choose it; there is
none while nothing says which pull-up the board has. The two run in opposite
directions, so that the reading falls as the hotend heats: no actual temperature
belongs to what is shown.
Behind an amplifier or a chip it is a matter of wiring, and there is no change:
a person must look at the board. So it is where a chip for platinum is told,
or an amplifier is for, another resistance at 0 °C than the sheet's curve has;
and where the chip's reference resistor is below 3 or above 6 times the
sensor's.
Note: for how many wires a chip is set up, and what an amplifier is told.
Cannot be waived. Source: common practice, no source.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		s := &in.Printer.Hotend.Sensor
		want := &in.Sheet.New.Sensor
		if k := sheetCurveKind(want); k != want.Kind.Value && want.Kind.Value != parser.PlatinumAmplifier {
			report(Findingf(Error, want.Curve.At,
				"correct kind or curve in the sheet: it says that the sensor is %s, but %s is the curve "+
					"of %s",
				kindName(want.Kind.Value), want.Curve.Value, kindName(k)).Of("sheet"))
		}
		if s.State == parser.Unknown {
			report(cannotTell(Error, s))
			return
		}
		d := &s.Value
		if s.State == parser.Off || d.Form == parser.FormNone {
			report(Findingf(Error, sensorAt(in), "look at the board before anything is heated: the "+
				"configuration says that this hotend has no sensor, and the sheet names %s",
				kindName(want.Kind.Value)))
			return
		}
		switch kind := kindOf(d); {
		case d.Form == parser.FormUnknown || d.Form == parser.FormPlaceholder:
			// sensor-unknown and sensor-placeholder speak.
		case kind == parser.PlatinumAmplifier && kind == want.Kind.Value:
			platinumMismatch(in, d, report)
			chipMismatch(in, d, report)
		case kind == parser.KindUnknown || kind == want.Kind.Value:
		case reversed(in):
			report(otherDirection(in))
		default:
			report(Findingf(Error, sensorAt(in), "look at the board before anything is heated: the "+
				"firmware reads the sensor as %s, for %s, the sheet names %s, and they are wired differently",
				definition(d), kindName(kind), kindName(want.Kind.Value)))
		}
		if d.Form == parser.FormAmplifier && kindOf(d) == want.Kind.Value && d.Note != "" {
			report(Findingf(Note, sensorAt(in), "see that it is so: of the sensor definition %s, %s",
				definition(d), d.Note))
		}
	},
}

// otherDirection is the finding of a bead that is read as platinum, or the other
// way round.
func otherDirection(in *Input) Finding {
	want := &in.Sheet.New.Sensor
	d := &in.Printer.Hotend.Sensor.Value
	r, ok := newReading(in, d.SeriesOhm)
	effect := "so the heater stays on and no limit holds"
	if ok {
		if shown, trips := r.tripsCold(in); trips {
			effect = "and a cold one shows " + unit.Celsius(shown) + ", so the firmware shuts down at once"
		}
	}
	text := fmt.Sprintf("the firmware reads the sensor as %s, which is for %s, and the sheet names %s",
		definition(d), kindName(kindOf(d)), sheetSensor(want))
	brief := "it is for " + kindName(kindOf(d)) + ", the reading falls as the hotend heats, " + effect
	if !ok {
		return Findingf(Error, sensorAt(in), "correct the sensor definition: %s", brief).Explain("%s", text)
	}
	if pullupUnsaid(in) {
		return Findingf(Error, sensorAt(in), "give printer.pullup_ohm, and correct the sensor definition: %s",
			brief).
			Explain("%s; the definition is made for a pull-up of %s, and only with the board's can the "+
				"right one be told", text, unit.Ohms(d.PullupOhm))
	}
	fix := r.best(in)
	if fix.def.Form == parser.FormUnknown {
		return Findingf(Error, sensorAt(in),
			"fit a sensor that this firmware can read: the definition is wrong, %s", brief).
			Explain("%s; this firmware has no definition of it for a pull-up of %s: %s", text, pullupText(in),
				orNone(fix.reason))
	}
	text += "; the two wires and the board stay; the new definition is for a pull-up of " + pullupText(in)
	if fix.leaves.wrong() {
		text += fmt.Sprintf(", which is the best there is and leaves %s", unit.Kelvin(fix.leaves.rangeK))
	}
	text += noteOn(&fix.def)
	var changes []parser.Change
	if ownPullup(in) && in.Printer.Hotend.PullupOhm.Value != r.Real.PullupOhm {
		changes = append(changes, in.Printer.Hotend.PullupOhm.To(r.Real.PullupOhm))
	}
	return lowered(in,
		Findingf(Error, sensorAt(in), "make the sensor definition %s: %s", definitionOr(&fix.def),
			brief).Explain("%s", text).Change(append(changes, in.Printer.Hotend.Sensor.To(fix.def))...), fix)
}

// tripsCold tells what the configured definition shows of a cold hotend, and
// whether that is past the max temp or the end of its table.
func (r *reading) tripsCold(in *Input) (shownC float64, trips bool) {
	believed, err := believedCircuits(in)
	if err != nil {
		return 0, false
	}
	c, limit := believed[0], &in.Printer.Limits.MaxTemp
	shownC = c.Indicated(r.Real, r.ColdC)
	return shownC, limit.Known() && shownC > limit.Value || c.Ends() && shownC >= c.HighC
}

// platinumMismatch compares the platinum sensor that a chip is told of, or that an
// amplifier is for, with that of the sheet. The two that are sold are a factor of
// ten apart.
func platinumMismatch(in *Input, d *parser.SensorDef, report func(Finding)) {
	want := &in.Sheet.New.Sensor
	k, ok := sensor.Find(want.Curve.Value)
	if !want.Curve.Given || !ok || k.Kind != parser.Platinum || !(d.R0Ohm > 0) {
		return
	}
	if r0 := k.Curve.Ohms(0); math.Abs(d.R0Ohm-r0) > 0.05*r0 {
		report(Findingf(Error, sensorAt(in),
			"look at the board before anything is heated: the firmware takes it for a platinum sensor of "+
				"%.4g Ω at 0 °C, and the sheet names %s, which has %.4g Ω",
			d.R0Ohm, k.ID, r0).Explain("the chip or amplifier on the board must suit the sensor too"))
	}
}

// The reference resistor of a platinum chip, over the sensor's resistance at
// 0 °C: what is sold has 4 to 4.3, and below 3 the chip ends under printing
// temperatures. Common practice, no source.
const leastReference, mostReference = 3, 6

// chipMismatch looks at the chip's reference resistor and at its wires.
func chipMismatch(in *Input, d *parser.SensorDef, report func(Finding)) {
	if ratio := d.ReferenceOhm / d.R0Ohm; d.ReferenceOhm > 0 && d.R0Ohm > 0 &&
		(ratio < leastReference || ratio > mostReference) {
		report(Findingf(Error, sensorAt(in),
			"read the chip's reference resistor on the board, before anything is heated: the chip is told "+
				"of %.4g Ω and of a sensor of %.4g Ω, which do not go together",
			d.ReferenceOhm, d.R0Ohm).Explain("boards have about four times what the sensor has at 0 °C"))
	}
	if d.Wires > 0 {
		report(Findingf(Note, sensorAt(in),
			"count the new sensor's wires: the chip is set up for %d, and with others its figure and its "+
				"solder bridges change", d.Wires))
	}
}
