package rules

import (
	"testing"

	"preflash/rules/heat"
)

// What a step is called, in brief and in full.
func TestStepWords(t *testing.T) {
	in := healthyInput() // rated for 300 °C
	for _, tt := range []struct {
		name        string
		fault       stepFault
		r           heat.Response
		brief, text string
	}{
		{"steady", noStepFault,
			heat.Response{Reached: true, Settles: true, OvershootC: 3, BlockPeakC: 253.04, SettleS: 90,
				SwingC: 1},
			", and overshoot by 3 K",
			"overshoots 250 °C by 3 K and is steady after 90 s"},
		{"its block ahead", noStepFault,
			heat.Response{Reached: true, Settles: true, OvershootC: 3, BlockPeakC: 256, SettleS: 90},
			", and overshoot by 3 K",
			"overshoots 250 °C by 3 K (its block by 6 K) and is steady after 90 s"},
		{"swings", noStepFault, heat.Response{Reached: true, OvershootC: 3, SwingC: 2, PeriodS: 9},
			", and swing by 2 K without end",
			"overshoots 250 °C by 3 K and swings without end, by 2 K up and down, 9 s from peak to peak"},
		{"neither steady nor swinging", noStepFault, heat.Response{Reached: true, OvershootC: 3},
			", and overshoot by 3 K", "overshoots 250 °C by 3 K and does not get steady"},
		{"too weak", noStepFault, heat.Response{}, ", and do not reach 250 °C", "does not reach 250 °C"},
		{"just at the shutdown", overheats, heat.Response{Reached: true, OvershootC: 25, PeakC: 275},
			", and get to 275 °C, where the firmware shuts down",
			"overshoots 250 °C by 25 K and does not get steady, past the 275 °C at which the firmware " +
				"shuts down"},
		{"at the shutdown with more power", overheats,
			heat.Response{Reached: true, OvershootC: 24, PeakC: 274},
			", and get to 275 °C, where the firmware shuts down",
			"overshoots 250 °C by 24 K and does not get steady; with 5 % more power and 10 % less loss it " +
				"gets to 276 °C, and the firmware shuts down at 275 °C"},
		{"trips", watchTrips, heat.Response{TripS: 30, TripShare: 1},
			", and let the runaway protection trip after 30 s",
			"does not reach 250 °C, and the runaway protection shuts it down after 30 s although nothing " +
				"is broken"},
		{"trips at times", watchTrips, heat.Response{TripS: 30, TripShare: 0.5},
			", and let the runaway protection trip after 30 s",
			"does not reach 250 °C, and the runaway protection shuts it down after 30 s although nothing " +
				"is broken (in 50 % of starts)"},
		{"its block just at its rating", noStepFault,
			heat.Response{Reached: true, Settles: true, OvershootC: 50, BlockPeakC: 300, SettleS: 90},
			", and overshoot by 50 K", "overshoots 250 °C by 50 K and is steady after 90 s"},
		{"its block past its rating", noStepFault,
			heat.Response{Reached: true, Settles: true, OvershootC: 51, BlockPeakC: 301, SettleS: 90},
			", and overshoot by 51 K",
			"overshoots 250 °C by 51 K and is steady after 90 s; its block gets to 301 °C, past the 300 " +
				"°C of the hotend"},
	} {
		c := stepCase{Response: tt.r, hottest: heat.Response{PeakC: 276}, fault: tt.fault}
		s := &steps{atC: 250, tripC: 275, cases: []stepCase{c}, worst: &c}
		if got := s.brief(); got != tt.brief {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.brief)
		}
		if got, want := s.text(in), "; by the model, with them the hotend "+tt.text; got != want {
			t.Errorf("%s:\n%q, want\n%q", tt.name, got, want)
		}
		if s.worse(&c, &c) {
			t.Errorf("%s is worse than itself", tt.name)
		}
		if got := s.fault(heat.Plant{}, heat.Loop{}, tt.r,
			heat.Response{}); (got == overheats) != (tt.r.PeakC >= 275) {
			t.Errorf("%s: peak %v °C is fault %d", tt.name, tt.r.PeakC, got)
		}
	}
}

// What boards that read the sensor at different times make of it.
func TestStepBoards(t *testing.T) {
	board := func(variant int, name string, sampleS float64, fault stepFault) stepCase {
		return stepCase{loopCase: loopCase{heat.Loop{SampleS: sampleS}, variant, name}, fault: fault}
	}
	s := &steps{cases: []stepCase{board(0, "older", 0.16, watchTrips), board(0, "older", 0.01, noStepFault),
		board(1, "newer", 0.16, noStepFault)}}
	s.worst = &s.cases[0]
	want := "; so it is on boards that read the sensor every 0.16 s and not on those that do every 0.01 " +
		"s; that is the older firmware, and the files do not say which they are for"
	if got := s.where(); got != want || s.level() != Warning {
		t.Errorf("%s: %q, want %q", s.level(), got, want)
	}
	s.cases = s.cases[:1]
	if got := s.where(); got != "" || s.level() != Error {
		t.Errorf("on every board: %s, %q", s.level(), got)
	}
}

// No target lies above the room's temperature, so no loop is driven.
func TestStepOfNoTarget(t *testing.T) {
	in := healthyInput()
	in.Sheet.New.PrintC.Value = [2]float64{20, in.Sheet.Printer.AmbientC.Value}
	if s := stepOf(in); s != nil {
		t.Errorf("a step to %v °C", s.atC)
	}
	if got := Loop(in); got != loopsOf(in)[0].Loop {
		t.Errorf("the loop is %+v", got)
	}
}

// The figures of the block that are assumed make an overshoot uncertain.
func TestStepAssumed(t *testing.T) {
	in := healthyInput()
	assumeBlock(in)
	if text := stepOf(in).text(in); text == stepOf(healthyInput()).text(in) {
		t.Errorf("nothing is said of what is assumed: %s", text)
	} else {
		wantSaid(t, Finding{Message: text}, "the overshoot is ", "assumed, since the sheet gives none")
	}
}
