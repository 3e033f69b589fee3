package rules

import (
	"strings"
	"testing"

	"preflash/parser"
)

// Every rule on the border of what it says: the last value that passes, or the
// first that does not.
func TestBorders(t *testing.T) {
	slack := float64(rounding) // what rounding forgives
	carried := func(n int) func(*Input) {
		return func(in *Input) {
			for _, name := range []string{"a", "b", "c", "d", "e", "f"}[:n] {
				in.Printer.Flow.CarriedOver = append(in.Printer.Flow.CarriedOver,
					set(parser.Carried(name), 1.0))
			}
		}
	}
	// A table that ends at endC, where the sheet prints at up to 260 °C.
	table := func(endC, maxC float64) func(*Input) {
		return func(in *Input) {
			in.Printer.Hotend.Sensor.Value.HighC, in.Printer.Limits.MaxTemp.Value = endC, maxC
		}
	}
	platinum := func(r0, reference float64) func(*Input) {
		return func(in *Input) {
			in.Sheet.New.Sensor.Kind.Value, in.Sheet.New.Sensor.Curve.Value = parser.PlatinumAmplifier,
				"pt100"
			in.Printer.Hotend.Sensor.Value = parser.SensorDef{Form: parser.FormAmplifier,
				Kind: parser.PlatinumAmplifier, Name: "-5", R0Ohm: r0, ReferenceOhm: reference}
		}
	}
	const silent = ""
	for _, tt := range []struct {
		rule  *Rule
		name  string
		spoil func(*Input)
		says  string // silent where it says nothing
		not   string // what it leaves out
	}{
		{advanceStale, "as many as are named", carried(4), "hotend: a 1, b 1, c 1, d 1", "more"},
		{advanceStale, "two more", carried(6), "a 1, b 1, c 1, d 1 and 2 more; all of them: a 1, b 1", ""},

		{coldsideFan, "an output that is set", func(in *Input) {
			in.Printer.ColdSide.Fan = off[string](parser.FanOutput)
			in.Printer.ColdSide.Elsewhere = []parser.Place{{At: wholeFile("printer.cfg", "fan"),
				Written: "-1"}}
		}, "its output does not (it is set to “-1”), and", ""},
		{coldsideFan, "an output that says nothing", func(in *Input) {
			in.Printer.ColdSide.Fan = off[string](parser.FanOutput)
			in.Printer.ColdSide.Elsewhere = []parser.Place{{At: wholeFile("printer.cfg", "fan")}}
		}, "its output does not, and", ""},

		{coldExtrusion, "as warm as the room",
			func(in *Input) { in.Printer.Limits.MinExtrude.Value = in.Sheet.Printer.AmbientC.Value },
			"no warmer than the room", ""},

		{flowLimit, "just the flow", func(in *Input) { in.Printer.Flow.MaxMM3PerS.Value = 8 + slack }, silent,
			""},
		{flowLimit, "a limit of nothing", func(in *Input) { in.Printer.Flow.MaxMM3PerS.Value = 0 },
			"set a limit of 8 mm³/s in the slicer", ""},
		{flowLimit, "a filament of nothing", func(in *Input) {
			in.Printer.Flow.MaxMM3PerS.Value, in.Printer.Flow.FilamentMM.Value = 9, 0
		}, "3.3 mm/s of 1.75 mm filament", ""},
		{flowLimit, "a filament of its own", func(in *Input) {
			in.Printer.Flow.MaxMM3PerS.Value, in.Printer.Flow.FilamentMM.Value = 9, 2.85
		}, "1.3 mm/s of 2.85 mm filament", ""},

		{heaterCurrent, "5 % more is just what it stands",
			func(in *Input) { in.Sheet.Printer.OutputA.Value = 40 * 1.05 / 24 }, silent, ""},
		{heaterCurrent, "its label is just what it stands",
			func(in *Input) { in.Sheet.Printer.OutputA.Value = 40.0 / 24 },
			"up to 1.67 A, or 1.75 A where it gives 5 % more", "duty limit"},

		{heaterDuty, "half a count above", func(in *Input) {
			in.Sheet.New.Heater.DutyLimit.Value = 0.6
			for i := range in.Printer.Hotend.Loop.PowerLimits {
				in.Printer.Hotend.Loop.PowerLimits[i].Value = in.Sheet.New.Heater.DutyLimit.Value + halfCount
			}
		}, silent, ""},

		{heaterStuckOn, "ends just at the rating", func(in *Input) {
			uncut(in).Sheet.New.Heater.RatedW.Value = 12
			in.Sheet.New.RatedC.Value = StuckOn(in).C
		}, silent, ""},
		{heaterStuckOn, "cut off just at the rating", func(in *Input) { in.Sheet.New.CutoffC.Value = 300 },
			"below that rating, this one is at 300 °C", ""},

		{minTempHigh, "0 °C, with no least", func(in *Input) {
			in.Sheet.Printer.AmbientC.Value, in.Printer.Limits.MinTemp.Value = -5, 0
			in.Printer.Limits.MinWhileHeating = false
		}, "below that of a cold room", ""},
		{minTempHigh, "the longest grace", func(in *Input) {
			in.Printer.Limits.MinTemp.Value = 25
			in.Printer.Limits.Graces = []parser.Setting[float64]{set(parser.Grace("x"), 30.0)}
		}, silent, ""},

		{nozzleSize, "a cross section just as it follows", func(in *Input) {
			in.Printer.Flow.CrossMM2 = set(parser.LineSection, 1-slack)
			in.Sheet.New.Nozzle.DiameterMM.Value = 0.5
		}, "set the nozzle diameter to 0.5 mm", "cross section"},

		{presetOver, "just at the target limit", func(in *Input) { in.Printer.Limits.Presets[1].Value = 260 },
			silent, ""},
		{presetOver, "within rounding", func(in *Input) { in.Printer.Limits.Presets[1].Value = 260 + slack },
			silent, ""},
		{presetOver, "just what the raise makes room for", func(in *Input) {
			in.Sheet.New.PrintC.Value[1], in.Printer.Limits.Presets[1].Value = 270, 270+slack
			in.Changed = map[parser.Key]any{parser.MaxTemp: 285.0}
		}, "raise the max temp to 285 °C, and it fits", ""},
		{presetOver, "the coldest preset", func(in *Input) {
			in.Sheet.New.PrintC.Value[1], in.Printer.Limits.MaxTemp.Value = 150, coldestPreset+15
		}, "lower preset 2 to 150 °C", ""},
		{presetOver, "an automatic target just at the limit",
			func(in *Input) { in.Printer.Limits.AutoMax = set(parser.AutoTarget, 260+slack) }, silent, ""},

		{runawayLoose, "armed just at the room",
			func(in *Input) { in.Sheet.Printer.AmbientC.Value = 190 - 2 - 3 - 1 },
			"lower the hotend arming margin of 3 K", ""},
		{runawayLoose, "the rise as far as the margin", func(in *Input) {
			in.Sheet.Printer.AmbientC.Value, in.Printer.Hotend.Watch.RiseC.Value = 185, 3
		}, "lower the hotend arming margin of 3 K", ""},
		{runawayLoose, "the least rise", func(in *Input) { in.Printer.Hotend.Watch.RiseC.Value = 1 }, silent,
			""},
		{runawayLoose, "a rise of nothing is runaway-off's",
			func(in *Input) { in.Printer.Hotend.Watch.RiseC.Value = 0 }, silent, ""},
		{runawayLoose, "no heating check, so no window", func(in *Input) {
			w := &in.Printer.Hotend.Watch
			w.HeatingOn, w.HeatingWindowS.Value = off[bool](parser.HotendHeatingOn), 500
		}, silent, ""},
		{runawayLoose, "one check for both", func(in *Input) {
			sumHotend(in)
			w := &in.Printer.Hotend.Watch
			w.HeatingOn = off[bool](parser.HotendHeatingOn)
			w.HeatingWindowS = set(parser.HotendHeatingWindow, 500.0)
		}, "lower the hotend heating check window", ""},
		{runawayTight, "an error sum that asks for no rise", func(in *Input) {
			in.Sheet.New.Heater.RatedW.Value = 5
			sumHotend(in)
			in.Printer.Hotend.Watch.RiseC.Value = 0
		}, silent, ""},

		{sensorFault, "a min temp as warm as the room", func(in *Input) {
			noEnds(in)
			in.Printer.Limits.MinTemp.Value, in.Sheet.Printer.AmbientC.Value = -200, 0
		}, "correct the sensor definition", "raise"},
		{sensorFault, "the most that the firmware takes", func(in *Input) {
			noEnds(in)
			in.Printer.Limits.MinTemp.Value, in.Printer.Limits.MinTemp.Most = -200, -1
		}, "correct the sensor definition", "raise"},

		{sensorKind, "platinum within 5 %", platinum(104, 430), silent, ""},
		{sensorKind, "the least reference", platinum(100, 300), silent, ""},
		{sensorKind, "the most reference", platinum(100, 600), silent, ""},
		{sensorKind, "a chip that is told of no resistance", platinum(0, 430), silent, ""},

		{tempCeiling, "a target just at the rating", func(in *Input) {
			noMargin(in.Printer)
			in.Printer.Limits.MaxTemp.Value = 300 + slack
		}, silent, ""},
		{tempCeiling, "a shutdown just as far above", func(in *Input) {
			in.Printer.Limits.Margin.Value, in.Printer.Limits.MaxTemp.Value = 30, 300+tripSlackC+slack
		}, silent, ""},

		{tempReach, "a table that ends just high enough", table(262, 270),
			"raise the max temp to 275 °C: the sheet", ""},
		{tempReach, "a table that ends lower", table(259, 275),
			"lower the top of print_c to 257 °C, or take a sensor definition that goes further: its table " +
				"ends at 259 °C", "raise the max temp"},
		{tempReach, "a max temp that its table leaves room for", table(259, 272), "ends at 259 °C",
			"raise the max temp"},
		{tempReach, "one that is lower", table(259, 265), "raise the max temp to 272 °C", ""},
		{tempReach, "a table that ends lower, and what builds", func(in *Input) {
			table(259, 265)(in)
			in.Printer.Limits.MaxTemp.Most = 270
		}, "lower the top of print_c to 255 °C", ""},
		{tempReach, "just what builds", func(in *Input) {
			in.Printer.Limits.MaxTemp.Value, in.Printer.Limits.MaxTemp.Most = 270, 275
		}, "raise the max temp to 275 °C: the sheet asks", ""},
		{tempReach, "all that builds", func(in *Input) {
			in.Printer.Limits.MaxTemp.Value, in.Printer.Limits.MaxTemp.Most = 270, 270
		}, "take another sensor definition, or lower the top of print_c to 255 °C", ""},

		{tipShift, "a trigger height of nothing", func(in *Input) {
			in.Printer.Geometry.TriggerMM.Value, in.Sheet.New.Nozzle.TipShiftMM.Value = 0, 0.5
		}, "else move the probe", ""},
		{tipShift, "another tool", func(in *Input) {
			in.Printer.Tool, in.Sheet.New.Nozzle.TipShiftMM.Value = 1, 0.5
			in.Printer.Geometry.Offsets = []parser.Setting[float64]{set(parser.Offset("x"), 20.0)}
		}, "where this tool homes, the trigger height goes from 1.8 mm to about 1.3 mm", ""},
		{tipShift, "the first of two tools", func(in *Input) {
			in.Sheet.New.Nozzle.TipShiftMM.Value = 0.5
			in.Printer.Geometry.Offsets = []parser.Setting[float64]{set(parser.Offset("x"), 20.0)}
		}, "measure the trigger height again", "where this tool homes"},
		{tipShift, "another tool without an offset", func(in *Input) {
			in.Printer.Tool, in.Sheet.New.Nozzle.TipShiftMM.Value = 1, 0.5
		}, "measure the trigger height again", "where this tool homes"},
		{tipShift, "one endstop", func(in *Input) {
			in.Printer.Geometry.Homes = set(parser.ZHoming, parser.HomesAtBed)
			in.Printer.Geometry.EndstopMM = []parser.Setting[float64]{set(parser.Endstop(""), 2.0)}
			in.Sheet.Printer.ZReference.Value, in.Sheet.New.Nozzle.TipShiftMM.Value = "endstop", -0.5
		}, "the new tip sits 0.5 mm higher", "towers"},
	} {
		t.Run(tt.rule.ID+": "+tt.name, func(t *testing.T) {
			in := healthyInput()
			tt.spoil(in)
			said := strings.Join(messages(run(t, tt.rule, in)), "\n")
			switch {
			case tt.says == silent && said != "":
				t.Errorf("should be silent, says: %s", said)
			case !strings.Contains(said, tt.says):
				t.Errorf("does not say %q: %s", tt.says, said)
			case tt.not != "" && strings.Contains(said, tt.not):
				t.Errorf("says %q: %s", tt.not, said)
			}
		})
	}
}
