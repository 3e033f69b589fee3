package rules

import (
	"strings"
	"testing"

	"preflash/parser"
	"preflash/parser/sheet"
)

func tuned(kp, ki, kd float64) *sheet.Tuned {
	return &sheet.Tuned{
		AtC: given("tuned.at_c", 220.0),
		Kp:  given("tuned.kp", kp), Ki: given("tuned.ki", ki), Kd: given("tuned.kd", kd),
	}
}

func TestPIDStale(t *testing.T) {
	in := healthyInput()
	in.Sheet.Tuned = nil
	f := one(t, pidStale, in)
	wantSaid(t, f, "kp 21.7, ki 1.4, kd 84", "TUNE 225 °C")
	wantChanges(t, f)
	if f.Level != Warning {
		t.Errorf("level %s, want warning", f.Level)
	}

	in.Sheet.Tuned = tuned(21.7, 1.4, 84)
	silent(t, pidStale, in)
	in.Sheet.Tuned = tuned(21.74, 1.403, 84.3) // rounded in the configuration
	silent(t, pidStale, in)
	in.Sheet.Tuned = tuned(18.2, 1.1, 75)
	wantSaid(t, one(t, pidStale, in), "kp 18.2, ki 1.1, kd 75")

	in.Printer.Hotend.Loop.Ki = unknown[float64](parser.GainI)
	wantSaid(t, one(t, pidStale, in), "cannot tell the ki")
}

func TestPIDStaleOtherControl(t *testing.T) {
	in := healthyInput()
	in.Printer.Hotend.Loop.Control.Value = parser.ControlOnOff
	silent(t, pidStale, in)
	in.Printer.Hotend.Loop.Control.Value = parser.ControlModel
	silent(t, pidStale, in)
	in.Sheet.Tuned = nil
	wantSaid(t, one(t, pidStale, in), "heater model", "TUNE MODEL")
	in.Printer.Hotend.Loop.Control = unknown[parser.Control](parser.LoopControl)
	wantSaid(t, one(t, pidStale, in), "cannot tell the control")
}

// published gives the printer the loop of a generation: its samples, and what
// its derivative starts from.
func published(in *Input, older, newer bool) {
	l := &in.Printer.Hotend.Loop
	l.Variants = nil
	if older {
		l.Variants = append(l.Variants,
			parser.LoopVariant{Name: "older", OwnFar: true, SamplesS: []float64{0.16, 0.08, 0.01}})
	}
	if newer {
		l.Variants = append(l.Variants,
			parser.LoopVariant{Name: "newer", KeepsLast: true, SamplesS: []float64{0.16, 0.01}})
	}
}

func gainsOf(in *Input, kp, ki, kd float64) {
	l := &in.Printer.Hotend.Loop
	l.Kp.Value, l.Ki.Value, l.Kd.Value = kp, ki, kd
}

// The newer generation's loop starts its derivative at 0 °C: at 40 W the first
// heat-up to 250 °C overshoots by 4.9 K, where the older one has less than 1 K.
func TestPIDStaleByGeneration(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.PrintC.Value[1] = 250
	gainsOf(in, 22.89, 1.87, 70.18)
	over := func() float64 { return one(t, pidStale, in).Values["overshoot_c"].(float64) }
	published(in, false, true)
	newer := over()
	if newer < 4.6 || newer > 5.2 {
		t.Errorf("newer: %.2f K", newer)
	}
	published(in, true, false)
	if x := over(); x >= 1 {
		t.Errorf("older: %.2f K", x)
	}
	published(in, true, true)
	if x := over(); x != newer {
		t.Errorf("either: %.2f K, want the worse, %.2f K", x, newer)
	}
}

// A watch that trips on some boards only is a warning that says on which.
func TestPIDStaleOnSomeBoards(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.PrintC.Value[1] = 220
	gainsOf(in, 15, 0.6, 120)
	published(in, false, true)
	f := one(t, pidStale, in)
	wantSaid(t, f, "shuts it down after 120 s",
		"boards that read the sensor every 0.16 s and not on those that do every 0.01 s")
	if f.Level != Warning {
		t.Errorf("level %s", f.Level)
	}
	published(in, true, true)
	wantSaid(t, one(t, pidStale, in),
		"that is the newer firmware, and the files do not say which they are for")
	published(in, true, false)
	if f = one(t, pidStale, in); strings.Contains(f.Text(), "shuts it down") {
		t.Errorf("the older one does not trip: %s", f.Text())
	}
	in.Printer.Hotend.Loop.Variants[0].SamplesS = []float64{0.16}
	in.Printer.Hotend.Loop.Variants[0].KeepsLast = true
	if f = one(t, pidStale, in); f.Level != Error {
		t.Errorf("every board trips: %s: %s", f.Level, f.Text())
	}
}

// A target that the firmware refuses is not simulated.
func TestPIDStaleKeepsToItsTargets(t *testing.T) {
	in := healthyInput()
	in.Sheet.Tuned = nil
	in.Printer.Limits.MaxTemp.Value = 250 // print_c goes to 260
	published(in, true, true)
	if f := one(t, pidStale, in); f.Level != Warning {
		t.Errorf("with a margin: %s: %s", f.Level, f.Text())
	}
	noMargin(in.Printer)
	l := &in.Printer.Hotend.Loop
	l.Form, l.Variants, l.SmoothS = parser.LoopClamped, nil, set(parser.DerivativeTime, 1.0)
	f := one(t, pidStale, in) // temp-reach raises it to 270 in this run
	if f.Level != Warning {
		t.Errorf("without: %s: %s", f.Level, f.Text())
	}
	wantSaid(t, f, "overshoots 260 °C")
	in.Sheet.New.RatedC.Value = 250 // which is not allowed here
	if f = one(t, pidStale, in); f.Level != Warning {
		t.Errorf("rated for 250 °C: %s: %s", f.Level, f.Text())
	}
	wantSaid(t, f, "overshoots 240 °C")
}

// The sheet's limit of the duty may not be configured yet: the worse one counts.
func TestPIDStaleDutyInForce(t *testing.T) {
	in := healthyInput()
	gainsOf(in, 60, 5, 0)
	in.Sheet.New.Heater.RatedW.Value, in.Sheet.New.Heater.DutyLimit.Value = 60, 0.5
	before := one(t, pidStale, in).Values["overshoot_c"].(float64)
	for i := range in.Printer.Hotend.Loop.PowerLimits {
		in.Printer.Hotend.Loop.PowerLimits[i].Value = 0.5
	}
	if after := one(t, pidStale, in).Values["overshoot_c"].(float64); before <= after {
		t.Errorf("with full power configured %.2f K, with the limit %.2f K", before, after)
	}
}

// A loop that swings without end gets no time, but how far and how fast.
func TestPIDStaleSwing(t *testing.T) {
	in := healthyInput()
	gainsOf(in, 120, 40, 0)
	in.Sheet.New.Block.SensorLagS.Value = 8
	f := one(t, pidStale, in)
	wantSaid(t, f, "swings without end", "from peak to peak", "its block by")
	if f.Values["settle_s"] != nil {
		t.Errorf("settles: %v", f.Values)
	}
}

// Overshoot that meets the shutdown with a little more power is an error.
func TestPIDStaleOverheats(t *testing.T) {
	in := healthyInput()
	noMargin(in.Printer)
	in.Printer.Limits.MaxTemp.Value = 270
	gainsOf(in, 120, 40, 0)
	in.Sheet.New.Block.SensorLagS.Value, in.Sheet.New.Heater.RatedW.Value = 8, 80
	f := one(t, pidStale, in)
	wantSaid(t, f, "past the 270 °C at which the firmware shuts down")
	if f.Level != Error {
		t.Errorf("%s: %s", f.Level, f.Text())
	}
	// A shutdown a little above the peak is met with 5 % more power.
	peak := 260 + f.Values["overshoot_c"].(float64)
	in.Sheet.New.PrintC.Value[1] = 260
	in.Printer.Limits.MaxTemp.Value = peak + 0.2
	wantSaid(t, one(t, pidStale, in), "with 5 % more power and 10 % less loss it gets to")
}
