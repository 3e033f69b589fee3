package rules

import (
	"strings"
	"testing"

	"preflash/parser"
	"preflash/rules/heat"
)

// Figures reckoned by hand.
func TestHeaterHeadroom(t *testing.T) {
	silent(t, heaterHeadroom, healthyInput())

	f := one(t, heaterHeadroom, worked(270))
	got := f.Values
	for key, want := range map[string]float64{
		"available_w": 24.4, "loss_w": 24.056, "melt_w": 10.714, "headroom": 0.7018,
		"hold_settle_c": 222.908, "hold_trip_s": 50.91, // SciPy
	} {
		if x, ok := got[key].(float64); !ok || x < want*0.9995 || x > want*1.0005 {
			t.Errorf("%s is %v, want %v", key, got[key], want)
		}
	}
	wantSaid(t, f, "24.4 W", "24.1 W", "10.7 W", "70 %", "a flow of 0.6 mm³/s fits", "sinks to 222.9 °C",
		"after 50.9 s")
	if f.Level != Warning {
		t.Errorf("level %s", f.Level)
	}

	f = one(t, heaterHeadroom, worked(240))
	wantSaid(t, f, "26.8 W", "21.1 W", "9.4 W", "88 %")

	in := worked(270)
	sumHotend(in)
	f = one(t, heaterHeadroom, in)
	if s, ok := f.Values["hold_trip_s"].(float64); !ok || s < 10 || s > 60 {
		t.Errorf("the sum watch trips at %v", f.Values["hold_trip_s"])
	}

	// A duty limit counts, whoever sets it.
	in = healthyInput()
	in.Printer.Hotend.Loop.PowerLimits[0].Value = 0.71 // 28.4 W for 27.7 W
	f = one(t, heaterHeadroom, in)
	wantSaid(t, f, "28.4 W", "little to spare")
	if f.Level != Note {
		t.Errorf("level %s", f.Level)
	}

	// Fan off and no flow: the last slope goes on to 14.8 W against
	// 0.068·(390 − 22) W = 25 W.
	f = one(t, heaterHeadroom, worked(390))
	wantSaid(t, f, "25 W", "no further than 320.9 °C")
	if f.Level != Error {
		t.Errorf("level %s", f.Level)
	}
	if strings.Contains(f.Text(), "sinks") {
		t.Errorf("it never was at its target: %s", f.Text())
	}

	in = worked(270)
	in.Sheet.New.Nozzle.MaxFlowMM3S = absent("new.nozzle.max_flow_mm3_s", 0.0)
	f = one(t, heaterHeadroom, in)
	wantSaid(t, f, "no max_flow_mm3_s", "101 %")
}

func TestHeaterHeadroomAssumed(t *testing.T) {
	in := worked(270)
	assumeBlock(in)
	f := one(t, heaterHeadroom, in)
	// By hand: 0.95·24.4/(1.3·24.056 + 10.714) and 1.05·24.4/(0.7·24.056 + 10.714).
	wantSaid(t, f, "the share is 55 to 93 %", "assumed")
	if strings.Contains(f.Text(), "uncertain") {
		t.Errorf("a warning at every corner: %s", f.Text())
	}
	in = worked(240) // 1.05·26.8/(0.7·21.146 + 9.418) is 116 %
	assumeBlock(in)
	wantSaid(t, one(t, heaterHeadroom, in), "to 116 %", "uncertain")
}

// A heater that stalls between the end of the heating check and the target: with
// a window of 120 s the heating check is content.
func TestHeaterHeadroomStall(t *testing.T) {
	in := worked(273) // settles at 271.9 with the fan full
	in.Printer.Hotend.Watch.HeatingWindowS.Value = 120
	got := run(t, heaterHeadroom, in)
	if len(got) != 2 {
		t.Fatalf("%d findings, want 2: %v", len(got), messages(got))
	}
	wantSaid(t, got[1], "stalls at 271.9 °C", "nothing says so")

	in = worked(273)
	sumHotend(in)
	in.Printer.Hotend.Watch.ErrorSumCS.Value = 360
	if got = run(t, heaterHeadroom, in); len(got) != 2 {
		t.Errorf("%d findings, want 2: %v", len(got), messages(got))
	}
	in.Printer.Hotend.Watch.ErrorSumCS.Value = 120 // trips on the way
	one(t, heaterHeadroom, in)
}

// What the sheet gives may be a little off too: a share near 1 is uncertain,
// and a target that may just be held is no error.
func TestHeaterHeadroomGivenRanges(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.Heater.RatedW.Value = 27 // for 27.7 W
	f := one(t, heaterHeadroom, in)
	wantSaid(t, f, "98 %", "with the power up to 5 % and losses up to 10 % off, the share is 86 to 112 %",
		"uncertain")
	in.Sheet.New.Heater.RatedW.Value = 16 // for 16.2 W with the fan off
	if f = one(t, heaterHeadroom, in); f.Level != Warning {
		t.Errorf("level %s, want warning: %s", f.Level, f.Text())
	}
	wantSaid(t, f, "uncertain")
	in.Sheet.New.Heater.RatedW.Value = 12
	if f = one(t, heaterHeadroom, in); f.Level != Error {
		t.Errorf("level %s, want error: %s", f.Level, f.Text())
	}
}

// A PTC heater of which only the label is known is never passed in silence.
func TestHeaterHeadroomOfALabel(t *testing.T) {
	in := worked(270)
	in.Sheet.New.Heater.HotW = absent("new.heater.hot_w", [][2]float64(nil))
	f := one(t, heaterHeadroom, in)
	wantSaid(t, f, "of what is needed at 270 °C", "55 to 138 %", "give hot_w, two points at least")
	if f.Level != Warning || f.At.Text() != "new.heater.hot_w" {
		t.Errorf("%s at %q", f.Level, f.At.Text())
	}
	wantSaid(t, one(t, runawayTight, in), "taken to give 40 % of its label hot",
		"with all of its label nothing trips")
}

// A table that ends at 200 °C goes on along its last slope: near the truth of
// one to 300 °C, and never above it.
func TestTableThatEndsEarly(t *testing.T) {
	whole, short := worked(270), worked(270)
	short.Sheet.New.Heater.HotW.Value = [][2]float64{{25, 48}, {200, 30}}
	a, b := one(t, heaterHeadroom, whole).Values, one(t, heaterHeadroom, short).Values
	if r := b["headroom"].(float64) / a["headroom"].(float64); r < 0.85 || r > 1 {
		t.Errorf("headroom is %.2f of the whole table's", r)
	}
	a, b = one(t, runawayTight, whole).Values, one(t, runawayTight, short).Values
	if b["predicted_rise_c"].(float64) > a["predicted_rise_c"].(float64) {
		t.Errorf("the rise is %v, with the whole table %v", b["predicted_rise_c"], a["predicted_rise_c"])
	}
}

// A firmware that slows the part fan hides the sag from the watch.
func TestHeaterHeadroomSlowsFan(t *testing.T) {
	in := worked(270)
	in.Printer.Hotend.Watch.SlowsFan = set(parser.SlowsFan, true)
	// With the fan stopped it settles at 244 °C with 18 mm³/s, below 266, and
	// the watch trips a little later; with 8 mm³/s it holds 266, and nothing does.
	f := one(t, heaterHeadroom, in)
	wantSaid(t, f, "slows the part fan as it sinks")
	if s, ok := f.Values["hold_trip_s"].(float64); !ok || s <= 50.91 || s > 80 {
		t.Errorf("hold_trip_s %v", f.Values["hold_trip_s"])
	}
	in.Sheet.New.Nozzle.MaxFlowMM3S.Value = 8
	if s := one(t, heaterHeadroom, in).Values["hold_trip_s"]; s != nil {
		t.Errorf("the fan stops, and the watch trips after %v", s)
	}
	in.Printer.Hotend.Watch.SlowsFan.Value = false
	if s := one(t, heaterHeadroom, in).Values["hold_trip_s"]; s == nil {
		t.Error("the fan blows, and no watch trips")
	}
	silent(t, heaterHeadroom, func() *Input {
		in := healthyInput()
		in.Printer.Hotend.Watch.SlowsFan = set(parser.SlowsFan, true)
		return in
	}())
}

// What is said of a headroom, on either side of each limit.
func TestHeadroomWords(t *testing.T) {
	in := healthyInput()
	p, _ := plantOf(in)
	for _, tt := range []struct {
		h     heat.Headroom
		level Level
		class int
		says  string // the beginning
	}{
		{heat.Headroom{AvailableW: 9.9, LossOffW: 10, Ratio: 0.5}, Error, 0, "fit a stronger heater"},
		{heat.Headroom{AvailableW: 10, LossOffW: 10, Ratio: 0.5, FitsMM3S: 1}, Warning, 1, "print slower or"},
		{heat.Headroom{AvailableW: 10, Ratio: 0.99, FitsMM3S: 0}, Warning, 1, "print cooler, or fit"},
		{heat.Headroom{AvailableW: 10, Ratio: 1, FitsMM3S: 1}, Note, 2, "expect little to spare"},
		{heat.Headroom{AvailableW: 10, Ratio: 1}, Note, 2, "expect little to spare"},
		{heat.Headroom{AvailableW: 10, Ratio: fullHeadroom}, Note, 3, ""},
	} {
		level, brief, text := shortOfPower(in, p, tt.h, 250)
		if level != tt.level || !strings.HasPrefix(brief, tt.says) || (text == "") != (tt.says == "") ||
			tt.says == "" && brief != "" {
			t.Errorf("%+v: %s %q, %q", tt.h, level, brief, text)
		}
		if got := headroomClass(tt.h); got != tt.class {
			t.Errorf("%+v is of class %d, want %d", tt.h, got, tt.class)
		}
	}
	// Of a ratio above 1 it speaks only where figures are assumed: 101 % here.
	above := worked(270)
	above.Sheet.New.Nozzle.MaxFlowMM3S.Value = 0
	p, _ = plantOf(above)
	figures := heat.Loss | heat.LossFan
	h := p.Headroom(270, 0)
	if text := headroomRange(rangesOf(p, 0, figures), h, 270, 0); text != "" {
		t.Errorf("given: %s", text)
	}
	wantSaid(t, Finding{Message: headroomRange(rangesOf(p, figures, figures), h, 270, 0)}, "uncertain")
}

// Where there is no check, none trips.
func TestHeadroomWithoutChecks(t *testing.T) {
	p, _ := plantOf(worked(270))
	load := heat.Load{Fan: 1, FlowMM3S: 18}
	if s, trips := dropCheckTrip(p, load, heat.Watch{Form: heat.WindowWatch}, 270); trips {
		t.Errorf("a drop check without a period trips after %v s", s)
	}
	in := worked(273)
	in.Printer.Hotend.Watch.HeatingOn = off[bool](parser.HotendHeatingOn)
	one(t, heaterHeadroom, in)
}
