package heat

import (
	"math"
	"testing"
)

func TestRoundUp(t *testing.T) {
	for _, c := range []struct{ x, want float64 }{
		{0.1, 5}, {5, 5}, {5.1, 10}, {20 + 4e-6, 20}, {20.01, 25}, {55.1, 60}, {60, 60}, {60.1, 70},
		{100, 100},
		{100.1, 110},
	} {
		near(t, "rounded up", roundUp(c.x), c.want, 0)
	}
}

// The window that is proposed is the time needed over the rise, with each margin
// alone; a watch that bears them all is left as it is.
func TestWidenHeatingCheck(t *testing.T) {
	p, w := cartridgePlant(), Watch{Form: WindowWatch, Heating: HeatingCheck{8, 5, 3}}
	need := PredictRise(p, FanFull, w.Heating, 300).NeededS
	worst := 0.0
	for _, q := range p.Margins() {
		worst = max(worst, PredictRise(q, FanFull, w.Heating, 300).NeededS)
	}
	if !(need > 5 && worst > need && worst < 60) {
		t.Fatalf("%v s are needed, with the margins %v", need, worst)
	}
	proposed := 5 * math.Ceil(worst/5)
	for _, c := range []struct {
		windowS, bound   float64
		nominal, margins float64
		holds            bool
	}{
		{5, 120, math.Ceil(need), proposed, true},
		{5, proposed, math.Ceil(need), proposed, true},
		{5, proposed - 1, math.Ceil(need), 0, false},
		{need, 120, math.Ceil(need), proposed, true},
		{worst - 0.01, 120, max(worst-0.01, math.Ceil(need)), proposed, true},
		{worst, 120, max(worst, math.Ceil(need)), worst, true},
		{worst + 1, 120, worst + 1, worst + 1, true},
	} {
		w.Heating.WindowS = c.windowS
		got := Widen(p, FanFull, w, 300, Bounds{WindowS: c.bound})
		near(t, "nominal window", got.Nominal.Heating.WindowS, c.nominal, 0)
		near(t, "window with margins", got.Watch.Heating.WindowS, c.margins, 0)
		if got.Holds != c.holds {
			t.Errorf("a window of %v s within %v s: holds is %v", c.windowS, c.bound, got.Holds)
		}
	}
	if got := Widen(p, FanFull, w, 26, Bounds{}); got.Nominal != w || got.Holds {
		t.Errorf("never armed, and no window allowed: %+v", got)
	}
}

// The window of a sum watch is the least whole one at which nothing trips, and
// where none is, its limit the least whole one under the widest window.
func TestWidenSumWatch(t *testing.T) {
	w := sumDefault
	w.LimitCS = 30
	sights := []Sight{w.sight(ptcPlant(), FanFull, 272)}
	most := func(windowS float64) float64 {
		v := w
		v.WindowS = windowS
		return v.most(&sights[0], 272)
	}
	least := 1.0
	for most(least) >= w.LimitCS {
		least++
	}
	if least < 5 || least > 100 {
		t.Fatalf("a window of %v s is the least", least)
	}
	atWidest := most(least - 2)
	next := least - 1
	for most(next) >= atWidest {
		next++
	}
	for _, c := range []struct {
		name           string
		windowS, limit float64
		bounds         Bounds
		want           [2]float64 // window and limit
		ok             bool
	}{
		{"wide enough", least, 30, Bounds{120, 360}, [2]float64{least, 30}, true},
		{"wider than needed", least + 0.5, 30, Bounds{120, 360}, [2]float64{least + 0.5, 30}, true},
		{"wider than its bound", 130, 30, Bounds{120, 360}, [2]float64{130, 30}, true},
		{"a second too short", least - 1, 30, Bounds{120, 360}, [2]float64{least, 30}, true},
		// It looks once a second, so half of one more is one.
		{"wide enough by a half", least - 0.5, 30, Bounds{120, 360}, [2]float64{least - 0.5, 30}, true},
		{"far too short", 1, 30, Bounds{120, 360}, [2]float64{least, 30}, true},
		{"just as wide as it may be", 1, 30, Bounds{least, 360}, [2]float64{least, 30}, true},
		{"not by the window", 1, 30, Bounds{least - 2, 360},
			[2]float64{least - 2, math.Floor(atWidest) + 1}, true},
		{"a limit just met", least - 2, atWidest, Bounds{least - 2, 360},
			[2]float64{least - 2, math.Floor(atWidest) + 1}, true},
		{"a limit just met, but by no wider window", least - 2, atWidest, Bounds{120, 360},
			[2]float64{next, atWidest}, true},
		{"just as far as it may be", 1, 30, Bounds{least - 2, math.Floor(atWidest) + 1},
			[2]float64{least - 2, math.Floor(atWidest) + 1}, true},
		{"farther than it may be", 1, 30, Bounds{least - 2, math.Floor(atWidest)}, [2]float64{}, false},
	} {
		v := w
		v.WindowS, v.LimitCS = c.windowS, c.limit
		got, ok := v.leastFor(sights, 272, c.bounds, math.Ceil)
		if ok != c.ok || got.WindowS != c.want[0] || got.LimitCS != c.want[1] {
			t.Errorf("%s: window %v s, limit %v, %v; want %v, %v", c.name, got.WindowS, got.LimitCS, ok,
				c.want, c.ok)
		}
	}
	never := []Sight{w.sight(ptcPlant(), FanFull, 400)}
	if got, ok := w.leastFor(never, 400, Bounds{120, 1e9}, math.Ceil); ok {
		t.Errorf("400 °C are never met, but the watch is %+v", got)
	}
}

// A heater without power trips the defaults wherever they are armed: at least 7 K
// above the room. A watch that is off trips nowhere.
func TestHoldsUpToByHand(t *testing.T) {
	dead := ptcPlant()
	dead.SupplyV = 0
	off := Watch{Form: WindowWatch, Heating: HeatingCheck{RiseC: 2, MarginC: 3}}
	on := Watch{Form: WindowWatch, Heating: windowRise}
	for _, c := range []struct {
		name         string
		plant        Plant
		watch        Watch
		mostC, upToC float64
		any          bool
	}{
		{"dead", dead, on, 300, 28, true},
		{"dead, sum watch", dead, sumWatch, 300, 27, true}, // its hysteresis above the room
		{"dead, lower", dead, on, 27.5, 27, true},
		{"no target above the room", dead, on, 22, 22, false},
		{"hardly one", dead, on, 23, 23, true},
		{"a watch that is off", dead, off, 300, 300, true},
		{"strong enough", cartridgePlant(), on, 300.5, 300, true},
	} {
		if got, ok := HoldsUpTo(c.plant, Load{}, c.watch, c.mostC); got != c.upToC || ok != c.any {
			t.Errorf("%s: up to %v °C, %v; want %v, %v", c.name, got, ok, c.upToC, c.any)
		}
	}
}
