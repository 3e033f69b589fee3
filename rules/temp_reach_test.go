package rules

import (
	"testing"

	"preflash/parser"
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
		{"with a margin", true, 275, 300, 270, 260, 285, true, "takes targets up to 260 °C; raise the max temp to 285 °C"},
		{"just as far as the rating goes", true, 275, 270, 270, 260, 285, true, "raise the max temp to 285 °C"},
		{"the rating forbids it", true, 275, 265, 270, 260, 285, false, "the hotend, rated for 265 °C, allows no higher max temp than 280 °C; lower the top of print_c to 265 °C"},
		{"no margin", false, 265, 300, 260, 265, 270, true, "shuts down at 265 °C and needs 10 K of room for overshoot; raise the max temp to 270 °C"},
		{"no margin, the rating forbids it", false, 265, 265, 260, 265, 270, false, "lower the top of print_c to 255 °C"},
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
	wantSaid(t, f, "cannot be built with a max temp above 257 °C; raise it to that", "lower the top of print_c to 242 °C")
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
	wantSaid(t, f, "must not be above 257 °C, and it is 275 °C")
	wantValues(t, f, Values{"max_temp_c": 275.0, "most_c": 257.0})
	wantChanges(t, f, parser.Change{Key: parser.MaxTemp, Value: 257.0})
	// The preset that fits under 275 does not under 257.
	in.Printer.Limits.Presets[1].Value = 265
	wantChanges(t, one(t, presetOver, in), parser.Change{Key: parser.Preset(2), Value: 242.0})
	// A weak hotend's change keeps to both.
	in.Sheet.New.RatedC.Value = 250
	wantChanges(t, one(t, tempCeiling, in), parser.Change{Key: parser.MaxTemp, Value: 257.0})
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
	in.Printer.Hotend.Sensor.Value = parser.SensorDef{Form: parser.FormCurve, Kind: parser.Platinum, Name: "P", Curve: "pt1000", PullupOhm: 4700}
	f := one(t, tempReach, in)
	wantChanges(t, f)
	wantSaid(t, f, "see first that the sensor is read right")
}
