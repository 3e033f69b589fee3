package heat

import "testing"

// A watch whose period is 0 is off: a heater that stays cold, or falls from its
// target, trips the other alone.
func TestMonitorOfHalfAWatch(t *testing.T) {
	heating, drop := HeatingCheck{RiseC: 2, WindowS: 20, MarginC: 3}, DropCheck{HysteresisC: 4, PeriodS: 40}
	for _, c := range []struct {
		name         string
		watch        Watch
		cold, fallen Trip
		coldS        float64
	}{
		{"both", Watch{WindowWatch, heating, drop, SumWatch{}}, HeatingTrip, DropTrip, 20},
		{"heating alone", Watch{Form: WindowWatch, Heating: heating}, HeatingTrip, NoTrip, 20},
		{"drop alone", Watch{Form: WindowWatch, Drop: drop}, NoTrip, DropTrip, 0},
		{"a window of 0", Watch{WindowWatch, HeatingCheck{RiseC: 2}, drop, SumWatch{}}, NoTrip, DropTrip, 0},
		{"a period of 0", Watch{WindowWatch, heating, DropCheck{HysteresisC: 4}, SumWatch{}}, HeatingTrip,
			NoTrip, 20},
	} {
		cold, fallen := c.watch.begin(200, phases[:]), c.watch.begin(200, phases[:])
		fallen.feed(0, 200)
		for at := 1.0; at <= 100; at++ {
			cold.feed(at-1, 20)
			fallen.feed(at, 195)
		}
		if cold.trip != c.cold || cold.tripS != c.coldS || fallen.trip != c.fallen {
			t.Errorf("%s: cold %v at %v s, fallen %v", c.name, cold.trip, cold.tripS, fallen.trip)
		}
	}
}

// The share counts the phases that tripped; a window watch has only one.
func TestMonitorShare(t *testing.T) {
	window, sum := windowWatch.begin(200, phases[:]), sumWatch.begin(200, phases[:])
	near(t, "window, no trip", window.share(), 0, 0)
	near(t, "sum, no trip", sum.share(), 0, 0)
	window.trips(HeatingTrip, 20)
	near(t, "window", window.share(), 1, 0)
	for tripped, want := range []float64{1. / 8, 2. / 8, 3. / 8} {
		sum.sums[tripped].tripped = true
		sum.trips(SumTrip, 30-float64(tripped))
		near(t, "sum", sum.share(), want, 0)
	}
	near(t, "first of the trips", sum.tripS, 28, 0)
}

// A dead heater trips the sum watch's defaults 21 s after the target, as the
// style's firmware was seen to do; each check in its own phase of a second.
func TestMonitorOfADeadHeater(t *testing.T) {
	watch := sumWatch.begin(200, phases[:])
	for i := range 100 {
		watch.feed(float64(i)*clampedSampleS, 25)
	}
	near(t, "trip", watch.tripS, 21, 0)
	near(t, "share", watch.share(), 1, 0)
}

// Nothing is waited for where no check is under way.
func TestMonitorQuiet(t *testing.T) {
	for _, c := range []struct {
		name     string
		watch    Watch
		readings []float64 // one each second
		quiet    bool
	}{
		{"no watch", Watch{}, []float64{20}, true},
		{"heating check armed", windowWatch, []float64{20}, false},
		{"heating check over", windowWatch, []float64{198}, true},
		{"heating check that is off", Watch{Form: WindowWatch, Drop: windowWatch.Drop}, []float64{20}, true},
		{"target met", windowWatch, []float64{200}, true},
		{"fallen to the limit", windowWatch, []float64{200, 196}, true},
		{"fallen below it", windowWatch, []float64{200, 195.9}, false},
		{"never there", windowWatch, []float64{195}, true},
		{"drop check that is off", Watch{Form: WindowWatch, Heating: windowRise}, []float64{200, 195}, true},
		{"sum in the band", sumWatch, []float64{195}, true},
		{"sum below the band", sumWatch, []float64{194.9}, false},
	} {
		m, last := c.watch.begin(200, phases[:]), 0.0
		for i, reading := range c.readings {
			m.feed(float64(i), reading)
			last = reading
		}
		if got := m.quiet(last); got != c.quiet {
			t.Errorf("%s: quiet is %v", c.name, got)
		}
	}
	if m := sumWatch.begin(200, nil); !m.quiet(20) {
		t.Error("no phase is looked at, but something is waited for")
	}
}
