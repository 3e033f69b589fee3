package rules

import (
	"math"

	"preflash/rules/sensor"
	"preflash/rules/unit"
)

// Limits of sensor-resolution, K: common practice, no source.
const (
	coarseAveragedK = 1
	coarseRawK      = 4

	fewBits = 10 // of the converter on many older boards: common practice, no source
)

var sensorResolution = &Rule{
	ID:      "sensor-resolution",
	Level:   Warning,
	Figure:  FigureOf{"c_per_count", "K", Higher},
	Summary: "The smallest step of the reading is so large that control gets coarse.",
	Doc: `c_per_count = dT/dcount of the sheet's sensor on the board's pull-up, read by a
converter of adc_bits, at the top of print_c (at_c). effective_c is what is left
after the firmware averages n readings: c_per_count / √n, since the noise of n
independent readings falls with the square root of n.
Warning: effective_c above 1 K, or c_per_count above 4 K (common practice, no
source).
Note: it would be so with 10 bits, and the sheet does not say how many it has.
It says so where the firmware takes a reading that does not move for a fault.
Values: at_c, c_per_count, effective_c. No change: it is the board.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		want := &in.Sheet.New.Sensor
		curve, err := sensor.OfSheet(want)
		if err != nil {
			return // a chip, or sensor-unknown speaks
		}
		at := in.Sheet.New.PrintC.Value[1]
		board := sensor.Circuit{Curve: curve, PullupOhm: boardPullup(in)}
		if believed, err := believedCircuits(in); err == nil {
			board.SeriesOhm = believed[0].SeriesOhm
		}
		converter := Converter(in)
		bits, averaged := converter.Bits, converter.Averaged
		raw := board.CPerCount(at, bits)
		effective := raw / math.Sqrt(float64(averaged))
		if raw <= coarseRawK && effective <= coarseAveragedK {
			if given := in.Sheet.Printer.ADCBits.Given; !given && bits > fewBits {
				few := board.CPerCount(at, fewBits)
				effective := few / math.Sqrt(float64(in.Printer.Hotend.Averaged(fewBits)))
				if few > coarseRawK || effective > coarseAveragedK {
					report(Findingf(Note, sheetCurveAt(want),
						"give adc_bits in the sheet: with %d, as on many older boards, the smallest step "+
							"at %s would be %s, too coarse; %d were assumed",
						fewBits, unit.Celsius(at), unit.Kelvin(few), bits).
						With(Values{"at_c": at, "c_per_count": few, "effective_c": effective}))
				}
			}
			return
		}
		still := ""
		if s := &in.Printer.Hotend.Watch.StillS; s.Known() {
			still = "; a reading that does not move for " + unit.Seconds(s.Value) +
				" shuts the printer down, which such steps can do to a steady hotend"
		}
		report(Findingf(Warning, sheetCurveAt(want), "fit a smaller pull-up, a converter of more bits or "+
			"an amplifier: at %s the smallest step of the reading is %s, and control will be coarse",
			unit.Celsius(at), unit.Kelvin(raw)).
			Explain("the converter has %d bits; after the firmware averages %d readings the step is %s%s",
				bits, averaged, unit.Kelvin(effective), still).
			With(Values{"at_c": at, "c_per_count": raw, "effective_c": effective}))
	},
}
