package rules

import (
	"math"
	"strings"
	"testing"

	"preflash/parser"
)

func TestRunawayTight(t *testing.T) {
	silent(t, runawayTight, healthyInput())
	silent(t, runawayTight, worked(240))

	f := one(t, runawayTight, worked(270))
	wantValues(t, f, Values{
		"window_s": 20.0, "required_rise_c": 2.0, "at_c": 270.0,
		"predicted_rise_c": 1.517, "predicted_rise_off_c": 9.245, // SciPy
		"error_sum": nil, "error_limit": nil,
	})
	wantSaid(t, f, "near 270 °C", "1.52 K", "20 s", "shut down in 41 % of starts",
		"though not with the fan off", "too weak",
		"holds up to 240 °C, with 7 % less power, 10 % more loss and a room of 15 °C")
	wantChanges(t, f) // with less power it settles at 262 °C
	if strings.Contains(f.Text(), "assumed") {
		t.Errorf("the sheet gives every figure: %s", f.Text())
	}
	if f.Level != Warning || f.At.Text() != string(parser.HotendHeatingWindow) {
		t.Errorf("%s at %q", f.Level, f.At.Text())
	}

	f = one(t, runawayTight, worked(290))
	wantChanges(t, f)
	wantSaid(t, f, "too weak")
	if f.Values["predicted_rise_c"] != 0.0 {
		t.Errorf("S never gets there: %v", f.Values)
	}
}

// weak is a printer with a cartridge of so many watts, and a watch that is
// tight for it: 4 °C in 8 s.
func weak(watts float64) *Input {
	in := healthyInput()
	in.Sheet.New.Heater.RatedW.Value = watts
	w := &in.Printer.Hotend.Watch
	w.RiseC.Value, w.HeatingWindowS.Value = 4, 8
	return in
}

func TestRunawayTightWidens(t *testing.T) {
	f := one(t, runawayTight, weak(26))
	wantSaid(t, f, "a hotend heating check window of 19 s would do with these figures")
	wantChanges(t, f, parser.Change{Key: parser.HotendHeatingWindow, Value: 50.0})
	in := weak(26)
	in.Printer.Hotend.Watch.HeatingWindowS.Value = 50
	silent(t, runawayTight, in)
	in.Printer.Hotend.Watch.HeatingWindowS.Value = 19
	silent(t, runawayTight, in) // a healthy hotend holds with 19 s
	in.Printer.Hotend.Watch.HeatingWindowS.Value = 18
	one(t, runawayTight, in)
}

// Where nothing is wide enough, the finding names what is to blame.
func TestRunawayTightBlame(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.Heater.DutyLimit.Value = 0.6
	f := one(t, runawayTight, in)
	wantSaid(t, f, "the power limit of 60 % is to blame", "holds up to 210 °C")
	wantChanges(t, f)
	in = weak(26)
	in.Sheet.Printer.AmbientC.Value = -20
	wantSaid(t, one(t, runawayTight, in), "the room at -20 °C is to blame", "a room of -20 °C")
}

func TestRunawayTightSum(t *testing.T) {
	tight := func(topC float64) *Input {
		in := worked(topC)
		sumHotend(in)
		return in
	}
	silent(t, runawayTight, tight(268))

	f := one(t, runawayTight, tight(272))
	wantSaid(t, f, "165.3 °C·s", "the limit is 120 °C·s", "in 50 % of starts", "though not with the fan off",
		"too weak", "holds up to 240 °C")
	wantChanges(t, f)
	if sum := f.Values["error_sum"].(float64); sum < 165 || sum > 165.5 {
		t.Errorf("error_sum %v", sum)
	}

	f = one(t, runawayTight, tight(278)) // S settles below the band
	wantChanges(t, f)
	wantSaid(t, f, "grows without end")
	if f.Values["error_sum"] != nil {
		t.Errorf("a sum without end: %v", f.Values)
	}

	// The window widens, and the sum, which guards holding too, stays.
	in := weak(26)
	sumHotend(in)
	in.Printer.Hotend.Watch.RiseC.Value, in.Printer.Hotend.Watch.HeatingWindowS.Value = 4, 8
	f = one(t, runawayTight, in)
	wantSaid(t, f, "a hotend heating check window of 17 s would do")
	wantChanges(t, f, parser.Change{Key: parser.HotendHeatingWindow, Value: 50.0})
	in.Printer.Hotend.Watch.HeatingWindowS.Value = 50
	silent(t, runawayTight, in)
}

// tooHot is the worked example up to 500 °C, which every part stands.
func tooHot() *Input {
	in := worked(500)
	in.Sheet.New.RatedC.Value, in.Sheet.New.Sensor.RatedC.Value = 520, 520
	in.Printer.Hotend.Sensor.Value.LowC, in.Printer.Hotend.Sensor.Value.HighC = 0, 0
	return in
}

// A target that the firmware refuses is not simulated.
func TestRunawayTightKeepsToItsTargets(t *testing.T) {
	in := worked(270)
	in.Sheet.New.RatedC.Value = 240
	silent(t, runawayTight, in)
	in.Sheet.New.RatedC.Value = 300
	in.Printer.Hotend.Sensor.Value.HighC = 250
	silent(t, runawayTight, in)
}

func TestRunawayTightAssumed(t *testing.T) {
	in := worked(270)
	assumeBlock(in)
	f := one(t, runawayTight, in)
	wantSaid(t, f, "heat capacity 16.7 J/K", "loss with the part fan 0.097 W/K", "sensor lag 4.5 s",
		"30 % off", "uncertain")
	if strings.Contains(f.Text(), "loss 0.068 W/K") {
		t.Errorf("the loss without fan plays no part: %s", f.Text())
	}
	in.Sheet.New.Block.LossFanWPerK.Given = true
	in = tooHot() // far too hot, whatever the figures are
	assumeBlock(in)
	f = one(t, runawayTight, in)
	if strings.Contains(f.Text(), "uncertain") {
		t.Errorf("no figure within 30 %% lets it pass: %s", f.Text())
	}
	in = worked(278)
	assumeBlock(in)
	sumHotend(in)
	wantSaid(t, one(t, runawayTight, in), "anything from 0 °C·s to one that grows without end", "uncertain")
	in = tooHot()
	assumeBlock(in)
	sumHotend(in)
	if f = one(t, runawayTight, in); strings.Contains(f.Text(), "Inf") {
		t.Errorf("an infinite sum has no figure: %s", f.Text())
	}
	wantSaid(t, f, "the sum still grows without end")
}

func TestRunawayTightStates(t *testing.T) {
	for name, spoil := range map[string]func(*parser.Watch){
		"off":           func(w *parser.Watch) { w.On = off[bool](parser.HotendWatchOn) },
		"unknown":       func(w *parser.Watch) { w.On = unknown[bool](parser.HotendWatchOn) },
		"rise off":      func(w *parser.Watch) { w.HeatingOn = off[bool](parser.HotendHeatingOn) },
		"no rise":       func(w *parser.Watch) { w.RiseC.Value = 0 },
		"no window":     func(w *parser.Watch) { w.HeatingWindowS.Value = 0 },
		"said to be no": func(w *parser.Watch) { w.On.Value = false },
	} {
		t.Run(name, func(t *testing.T) {
			in := worked(270)
			spoil(&in.Printer.Hotend.Watch)
			silent(t, runawayTight, in)
		})
	}
	in := worked(270)
	in.Printer.Hotend.Watch.ArmMarginC = unknown[float64](parser.HotendArmMargin)
	wantSaid(t, one(t, runawayTight, in), "cannot tell the hotend arming margin")
}

func TestRunawayTightDropPeriod(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Watch.DropPeriodS.Value = 0
	f := one(t, runawayTight, in)
	wantSaid(t, f, "at 0 s the first dip", "more than 4 K", "drop check period to 40 s")
	wantChanges(t, f, parser.Change{Key: parser.HotendDropPeriod, Value: 40.0})

	// Off is runaway-off's business.
	in.Printer.Hotend.Watch.On = off[bool](parser.HotendWatchOn)
	silent(t, runawayTight, in)
}

func TestInShare(t *testing.T) {
	for share, want := range map[float64]string{0: "", 0.41: " in 41 % of starts", 1: ""} {
		if got := inShare(share); got != want {
			t.Errorf("%v: %q, want %q", share, got, want)
		}
	}
}

func TestSumRange(t *testing.T) {
	for _, tt := range []struct {
		least, most float64
		want        string
	}{
		{90, 130, "the sum is 90 to 130 °C·s"},
		{90, math.Inf(1), "the sum is anything from 90 °C·s to one that grows without end"},
		{math.Inf(1), math.Inf(1), "the sum still grows without end"},
	} {
		if got := sumRange(tt.least, tt.most); got != tt.want {
			t.Errorf("%v to %v: %q, want %q", tt.least, tt.most, got, tt.want)
		}
	}
}
