package rules

import (
	"testing"

	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/rules/sensor"
)

func TestTempReach(t *testing.T) {
	tests := []struct {
		name           string
		margin         bool
		maxTemp        float64
		rated, top     float64
		target, needed float64
		change         bool
		says           string
	}{
		{"with a margin", true, 275, 300, 270, 260, 285, true,
			"raise the max temp to 285 °C: the sheet asks for printing at up to 270 °C, but the firmware " +
				"takes targets up to 260 °C"},
		{"just as far as the rating goes", true, 275, 270, 270, 260, 285, true,
			"raise the max temp to 285 °C"},
		{"the rating forbids it", true, 275, 265, 270, 260, 285, false,
			"lower the top of print_c to 265 °C: it is 270 °C, and the hotend, rated for 265 °C, allows " +
				"no higher max temp than 280 °C"},
		{"no margin", false, 265, 300, 260, 265, 270, true,
			"raise the max temp to 270 °C: the sheet asks for printing at up to 260 °C, but the firmware " +
				"shuts down at 265 °C and needs 10 K of room for overshoot"},
		{"no margin, the rating forbids it", false, 265, 265, 260, 265, 270, false,
			"lower the top of print_c to 255 °C"},
		{"a fraction is rounded up", true, 275, 300, 260.5, 260, 276, true, "raise the max temp to 276 °C"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			in := healthyInput()
			if !tt.margin {
				noMargin(in.Printer)
			}
			in.Printer.Limits.MaxTemp.Value = tt.maxTemp
			in.Sheet.New.RatedC.Value = tt.rated
			in.Sheet.New.PrintC.Value[1] = tt.top
			f := one(t, tempReach, in)
			if f.Level != Warning {
				t.Errorf("level %s", f.Level)
			}
			wantValues(t, f, Values{"target_limit_c": tt.target, "top_c": tt.top, "needed_max_c": tt.needed})
			wantSaid(t, f, tt.says)
			if !tt.change {
				wantChanges(t, f)
				if f.At.Text() != "new.print_c" {
					t.Errorf("points at %s, want the key that must change", f.At.Text())
				}
				return
			}
			wantChanges(t, f, parser.Change{Key: parser.MaxTemp, Value: tt.needed})
			in.Printer.Limits.MaxTemp.Value = tt.needed
			silent(t, tempReach, in)
			silent(t, tempCeiling, in) // never raised past a rating
		})
	}
}

func TestTempReachSilent(t *testing.T) {
	in := healthyInput() // 275 − 15 = 260, the top of print_c
	silent(t, tempReach, in)
	noMargin(in.Printer)
	silent(t, tempReach, in)
	in.Printer.Limits.MaxTemp.Value = 270 // 260 and the room of 10
	silent(t, tempReach, in)
	in.Printer.Limits.MaxTemp = unknown[float64](parser.MaxTemp)
	wantSaid(t, one(t, tempReach, in), "cannot tell the max temp")
}

// The firmware's own checks bound the max temp; a change goes as far as they do.
func TestTempReachBuilds(t *testing.T) {
	in := healthyInput() // prints to 260 °C with 15 K of margin: 275
	s := &in.Printer.Limits.MaxTemp
	s.Value, s.Most = 255, 257.0
	f := one(t, tempReach, in)
	wantSaid(t, f, "raise the max temp to 257 °C, or lower the top of print_c to 242 °C",
		"lower the top of print_c to 242 °C")
	wantChanges(t, f, parser.Change{Key: parser.MaxTemp, Value: 257.0})
	s.Value = 257
	wantChanges(t, one(t, tempReach, in))
	silent(t, configBroken, in)
	s.Most = 335
	wantChanges(t, one(t, tempReach, in), parser.Change{Key: parser.MaxTemp, Value: 275.0})
}

// What is above the bound does not build, and no other rule asks for it.
func TestTooHighToBuild(t *testing.T) {
	in := healthyInput()
	s := &in.Printer.Limits.MaxTemp
	s.Most = 257.5
	f := one(t, configBroken, in)
	wantSaid(t, f, "lower the max temp to 257 °C: it is 275 °C")
	wantValues(t, f, Values{"max_temp_c": 275.0, "most_c": 257.0})
	wantChanges(t, f, parser.Change{Key: parser.MaxTemp, Value: 257.0})
	// The preset that fits under 275 does not under 257.
	in.Printer.Limits.Presets[1].Value = 265
	wantChanges(t, one(t, presetOver, in), parser.Change{Key: parser.Preset(2), Value: 242.0})
	// A weak hotend's change keeps to both.
	in.Sheet.New.RatedC.Value = 250
	wantChanges(t, one(t, tempCeiling, in), parser.Change{Key: parser.MaxTemp, Value: 257.0})
	// So low that nothing melts, the definition is at fault, and not the limit.
	in.Sheet.New.RatedC.Value, s.Most = 300, 204
	f = one(t, configBroken, in)
	wantChanges(t, f) // prints from 190 °C, and 189 °C would remain
	wantSaid(t, f, "take another sensor definition")
	s.Most = 205
	wantChanges(t, one(t, configBroken, in), parser.Change{Key: parser.MaxTemp, Value: 205.0})
	in.Sheet.New.PrintC.Value[0], s.Most = 100, 164
	wantChanges(t, one(t, configBroken, in))
	in.Sheet.New.PrintC.Value[0], s.Most = 190, 257.5
	// Another definition may reach further.
	in.Changed = map[parser.Key]any{parser.HotendSensor: parser.SensorDef{}}
	wantChanges(t, one(t, configBroken, in))
}

// While the reading falls as the hotend heats, a higher max temp only takes the
// last stop away.
func TestTempReachReversed(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.PrintC.Value[1] = 270
	wantChanges(t, one(t, tempReach, in), parser.Change{Key: parser.MaxTemp, Value: 285.0})
	in.Printer.Hotend.Sensor.Value = parser.SensorDef{Form: parser.FormCurve, Kind: parser.Platinum,
		Name: "P", Curve: "pt1000", PullupOhm: 4700}
	f := one(t, tempReach, in)
	wantChanges(t, f)
	wantSaid(t, f, "nothing is proposed while the reading falls")
}

// amplifier puts a sensor behind an amplifier into the sheet, a Pt1000 where it
// is platinum, and into the configuration what reads one.
func amplifier(in *Input, kind parser.SensorKind, d parser.SensorDef) {
	in.Sheet.New.Sensor.Kind.Value, in.Sheet.New.Sensor.Curve = kind, absent("new.sensor.curve", "")
	if kind == parser.PlatinumAmplifier {
		in.Sheet.New.Sensor.Curve = given("new.sensor.curve", "pt1000")
	}
	d.Form, d.Name = parser.FormAmplifier, "x"
	in.Printer.Hotend.Sensor.Value = d
}

// A max temp is not raised while nobody can say how hot the hotend is.
func TestTempReachInDoubt(t *testing.T) {
	short := func() *Input {
		in := healthyInput()
		in.Printer.Limits.MaxTemp.Value, in.Sheet.New.PrintC.Value[1] = 265, 260
		return in
	}
	wantChanges(t, one(t, tempReach, short()), parser.Change{Key: parser.MaxTemp, Value: 275.0})
	for _, tt := range []struct {
		spoil func(in *Input)
		says  string
	}{
		{func(in *Input) {
			in.Sheet.Printer.PullupOhm = absent("printer.pullup_ohm", 4700.0)
			in.Printer.Hotend.Sensor.Value.PullupOhm = 10_000
		}, "give printer.pullup_ohm"},
		{func(in *Input) { readAs(in, parser.SensorDef{Kind: parser.NTC, Name: "22"}) },
			"how hot the hotend is"},
		{func(in *Input) { in.Printer.Hotend.Sensor = unknown[parser.SensorDef](parser.HotendSensor) },
			"how hot the hotend is"},
		{func(in *Input) { // no definition reads it better
			in.Config = stubConfig{form: parser.FormAmplifier}
			in.Printer.Hotend.Sensor.Value.Curve = "ntc-100k-4267"
		}, "as far off as sensor-curve says"},
		{func(in *Input) { // one does, and its change is waived
			in.Printer.Hotend.Sensor.Value.Curve = "ntc-100k-4267"
			in.Sheet.Waivers = []sheet.Waiver{waiver("sensor-curve", "2027-01-01")}
		}, "as far off as sensor-curve says"},
		{func(in *Input) { amplifier(in, parser.Thermocouple, parser.SensorDef{}) }, "how hot the hotend is"},
		{func(in *Input) {
			amplifier(in, parser.Thermocouple, parser.SensorDef{Kind: parser.Thermocouple, Gain: 0.5})
		}, "how hot the hotend is"},
		{func(in *Input) {
			amplifier(in, parser.PlatinumAmplifier,
				parser.SensorDef{Kind: parser.PlatinumAmplifier, R0Ohm: 1000, ReferenceOhm: 430})
		}, "how hot the hotend is"},
		{func(in *Input) {
			amplifier(in, parser.PlatinumAmplifier,
				parser.SensorDef{Kind: parser.PlatinumAmplifier, R0Ohm: 100})
		}, "how hot the hotend is"},
	} {
		in := short()
		tt.spoil(in)
		f := one(t, tempReach, in)
		wantSaid(t, f, tt.says)
		wantChanges(t, f)
	}
	for _, d := range []parser.SensorDef{
		{Kind: parser.Thermocouple, Gain: 1},
		{Kind: parser.PlatinumAmplifier, R0Ohm: 1000, ReferenceOhm: 4300},
	} {
		in := short()
		amplifier(in, d.Kind, d)
		wantChanges(t, one(t, tempReach, in), parser.Change{Key: parser.MaxTemp, Value: 275.0})
	}
}

// What a definition leaves counts where a rating is near: the max temp goes only
// as far as the hotend itself may.
func TestRatingsByTheHotend(t *testing.T) {
	known, _ := sensor.Find("ntc-100k-3950")
	shows := func(k float64) parser.SensorDef { // the hotend is so much hotter than shown
		def := parser.SensorDef{Form: parser.FormPoints, Join: parser.JoinRatio, Kind: parser.NTC, Name: "99",
			PullupOhm: 4700, LowC: 20, HighC: 420}
		for c := 20.0; c <= 420; c += 5 {
			def.Points = append(def.Points, parser.SensorPoint{TempC: c, Ohm: known.Curve.Ohms(c + k)})
		}
		return def
	}
	for _, tt := range []struct{ hotterK, maxTemp, rated, top, want float64 }{
		{0, 400, 280, 250, 295}, {0.8, 400, 280, 250, 295}, {1.8, 400, 280, 250, 293},
		{-1.8, 400, 280, 250, 295},
		{1.8, 255, 280, 278, 293}, {1.8, 255, 280, 279, 0}, {0.8, 255, 280, 280, 295},
	} {
		in := healthyInput()
		in.Config = stubConfig{form: parser.FormAmplifier}
		readAs(in, shows(tt.hotterK))
		in.Printer.Limits.MaxTemp.Value, in.Sheet.New.RatedC.Value, in.Sheet.New.PrintC.Value[1] = tt.maxTemp,
			tt.rated, tt.top
		rule := tempCeiling
		if tt.maxTemp < tt.top {
			rule = tempReach
		}
		if f := one(t, rule, in); tt.want == 0 {
			wantChanges(t, f)
			wantSaid(t, f, "allows no higher max temp than 293 °C")
		} else {
			wantChanges(t, f, parser.Change{Key: parser.MaxTemp, Value: tt.want})
		}
	}
	// A new definition brings the max temp down with it.
	in := healthyInput()
	in.Printer.Limits.MaxTemp.Value, in.Sheet.New.RatedC.Value, in.Sheet.New.PrintC.Value[1] = 295, 280, 250
	in.Printer.Hotend.Sensor.Value.Curve = "ntc-100k-4267"
	in.Config = stubConfig{defs: []parser.SensorDef{shows(1.8)}, form: parser.FormAmplifier}
	f := one(t, sensorCurve, in)
	wantSaid(t, f, "lower the max temp to 293 °C too")
	if len(f.Changes) != 2 || f.Changes[1].Value != 293.0 {
		t.Errorf("%d changes, the last is no max temp of 293", len(f.Changes))
	}
	// So it does where the new table would not build with it, and a max temp is
	// raised as far as the new table builds.
	in.Config = stubConfig{defs: []parser.SensorDef{shows(0)}, form: parser.FormAmplifier,
		builds: map[string]float64{"99": 288.5, "11": 257}}
	if f := one(t, sensorCurve, in); len(f.Changes) != 2 || f.Changes[1].Value != 288.0 {
		t.Errorf("%d changes, the last is no max temp of 288", len(f.Changes))
	}
	in.Changed = map[parser.Key]any{parser.HotendSensor: shows(0)}
	in.Printer.Limits.MaxTemp.Value, in.Sheet.New.PrintC.Value[1] = 250, 270
	wantChanges(t, one(t, tempReach, in), parser.Change{Key: parser.MaxTemp, Value: 285.0})
	in.Sheet.New.PrintC.Value[1] = 280
	wantChanges(t, one(t, tempReach, in), parser.Change{Key: parser.MaxTemp, Value: 288.0})
}
