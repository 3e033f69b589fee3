package heat

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

var (
	windowRise = RiseWatch{RiseC: 2, WindowS: 20, MarginC: 3}
	sumDefault = SumWatch{HysteresisC: 5, RiseC: 2, WindowS: 20, LimitCS: 120}
)

// The worked example of DESIGN section 8 and the cartridge of issue 3.
func TestWorkedExample(t *testing.T) {
	p := ptcPlant()
	for _, c := range []struct {
		at, rise float64
		trips    bool
	}{{240, 7.25, false}, {270, 1.52, true}} {
		r := PredictRise(p, FanFull, windowRise, c.at)
		near(t, "rise", r.LastC, c.rise, 0.005)
		if r.Trips(windowRise) != c.trips {
			t.Errorf("%v °C: trips is %v", c.at, !c.trips)
		}
	}
	for at, trips := range map[float64]bool{240: false, 268: false, 278: true} {
		if got := PredictSum(p, FanFull, sumDefault, at); got.Trips != trips {
			t.Errorf("sum watch at %v °C: %+v", at, got)
		}
	}
	r := PredictRise(cartridgePlant(), FanFull, windowRise, 250)
	near(t, "armed", r.ArmedS, 145.7, 0.05)
	near(t, "rise of the cartridge", r.LastC, 15.9, 0.05)
}

func TestRiseThatIsNeverArmedOrNeverGetsThere(t *testing.T) {
	p := ptcPlant()
	if r := PredictRise(p, FanFull, windowRise, 27); r.Armed || r.Trips(windowRise) {
		t.Errorf("a target just above ambient arms the watch: %+v", r)
	}
	r := PredictRise(p, FanFull, windowRise, 290)
	if r.Gets || r.LastC != 0 || !r.Trips(windowRise) {
		t.Errorf("290 °C cannot be reached: %+v", r)
	}
}

func TestRiseMonitor(t *testing.T) {
	m := windowRise.Watch(100) // armed below 94
	for _, c := range []struct {
		t, s  float64
		trips bool
	}{
		{0, 20, false},
		{19.9, 21.9, false},
		{20, 22, false},   // made it in time, and again
		{39.9, 23, false}, // not yet late
		{40, 23, true},    // late
		{41, 95, false},   // past the goal and no more armed
		{90, 95, false},
	} {
		if got := m.Feed(c.t, c.s); got != c.trips {
			t.Errorf("at %v s, %v °C: trips is %v", c.t, c.s, got)
		}
	}
	if windowRise.Watch(100).Feed(0, 94) {
		t.Error("trips at once")
	}
}

// A real watch that meets the predicted heat-up must agree wherever the
// prediction says that nothing trips, at whatever moments it samples.
func TestRiseMonitorAgreesWithPrediction(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyPlant(t)
		w := RiseWatch{rapid.Float64Range(0.5, 8).Draw(t, "rise"), rapid.Float64Range(5, 60).Draw(t, "window"), 3}
		target := rapid.Float64Range(60, 300).Draw(t, "target")
		r := PredictRise(p, Load{}, w, target)
		c := p.Run(p.Ambient(), 1, Load{}, 1500)
		m := w.Watch(target)
		phase := rapid.Float64Range(0, 1).Draw(t, "phase")
		tripped := false
		for at := phase; at < 1500; at += 0.16 {
			tripped = m.Feed(at, c.Sensor(at)) || tripped
		}
		// A sample may come 0.16 s late for the goal.
		late := w
		late.WindowS -= 0.2
		if tripped && !PredictRise(p, Load{}, late, target).Trips(w) {
			t.Fatalf("the watch trips, the prediction is %+v", r)
		}
		if !r.Gets && r.Armed && c.EndS() < 1400 && !tripped {
			t.Fatalf("S stays where the watch is armed, and nothing trips: %+v", r)
		}
	})
}

func TestLeastWindow(t *testing.T) {
	p := ptcPlant()
	s, ok := LeastWindow(p, FanFull, windowRise, 270, 120)
	if !ok {
		t.Fatal("no window up to 120 s is wide enough")
	}
	for wide, trips := range map[float64]bool{s: false, s - 1: true} {
		w := windowRise
		w.WindowS = wide
		if PredictRise(p, FanFull, w, 270).Trips(w) != trips {
			t.Errorf("a window of %v s: trips is %v", wide, !trips)
		}
	}
	if s, ok := LeastWindow(p, FanFull, windowRise, 290, 120); ok {
		t.Errorf("290 °C is never reached, but %v s are enough", s)
	}
}

func TestLeastLimit(t *testing.T) {
	p := ptcPlant()
	limit, ok := PredictSum(p, FanFull, sumDefault, 272).LeastLimit()
	if !ok || limit != 158 { // SciPy: 157.27
		t.Fatalf("got %v, %v, want 158", limit, ok)
	}
	for sum, trips := range map[float64]bool{limit: false, limit - 1: true} {
		w := sumDefault
		w.LimitCS = sum
		if PredictSum(p, FanFull, w, 272).Trips != trips {
			t.Errorf("a limit of %v: trips is %v", sum, !trips)
		}
	}
	if limit, ok := PredictSum(p, FanFull, sumDefault, 285).LeastLimit(); ok {
		t.Errorf("285 °C is never reached, but %v is enough", limit)
	}
}

func TestHoldMonitor(t *testing.T) {
	m := HoldWatch{HysteresisC: 4, PeriodS: 40}.Watch(200)
	for _, c := range []struct {
		t, s  float64
		trips bool
	}{
		{0, 20, false}, {500, 199, false}, // never reached: not armed
		{501, 200, false},
		{510, 195, false}, {540.9, 195, false},
		{541, 196, false}, // back inside in time
		{542, 195, false}, {580, 195, false}, {581, 195, true},
	} {
		if got := m.Feed(c.t, c.s); got != c.trips {
			t.Errorf("at %v s, %v °C: trips is %v", c.t, c.s, got)
		}
	}
}

func TestSumMonitor(t *testing.T) {
	m := SumWatch{HysteresisC: 5, RiseC: 2, WindowS: 3, LimitCS: 50}.Watch(40)
	for _, c := range []struct {
		t, s, sum float64
		trips     bool
	}{
		{0, 20, 15, false},
		{1, 21, 29, false},
		{2, 22, 0, false}, // the gain: sum and window begin again
		{3, 23, 12, false},
		{4, 23, 24, false},
		{5, 23, 36, false}, // the window is missed: no trip
		{6, 23, 48, false}, // but the sum counts
		{7, 30, 53, true},
		{8, 36, 0, false}, // inside the band
		{9, 30, 5, false}, // holding: the same machine
		{10, 30, 10, false},
		{11, 46, 10, false}, // above the band nothing is reset
		{12, 45, 0, false},
	} {
		if got := m.Feed(c.t, c.s); got != c.trips || m.SumCS != c.sum {
			t.Errorf("at %v s, %v °C: trips is %v, sum %v; want %v, %v", c.t, c.s, got, m.SumCS, c.trips, c.sum)
		}
	}
	if m.MostCS != 53 {
		t.Errorf("largest sum held against the limit: %v, want 53", m.MostCS)
	}
}

func TestHoldTrip(t *testing.T) {
	p, flow := ptcPlant(), Load{Fan: 1, FlowMM3S: 18}
	near(t, "settles", p.Settle(1, flow, 270), 222.91, 0.005) // SciPy
	window := HoldWatch{HysteresisC: 4, PeriodS: 40}
	at, ok := window.HoldTrip(p, flow, 270)
	if near(t, "window watch", at, 50.91, 0.01); !ok { // SciPy
		t.Error("the window watch never trips")
	}
	// The sum grows as the integral of the shortfall: SciPy's curve below
	// 265 °C, summed once a second.
	c := p.Run(State{270, 270}, 1, flow, 100)
	sum, second := 0.0, 0.0
	for ; sum < 120; second++ {
		sum += max(0, 265-c.Sensor(second))
	}
	if at, ok := sumDefault.HoldTrip(p, flow, 270); !ok || math.Abs(at-second) > 2 {
		t.Errorf("the sum watch trips at %v, %v; want about %v", at, ok, second)
	}
	for name, trip := range map[string]func(Plant, Load, float64) (float64, bool){"window": window.HoldTrip, "sum": sumDefault.HoldTrip} {
		if at, ok := trip(p, flow, 220); ok {
			t.Errorf("%s: 220 °C can be held, but it trips after %v s", name, at)
		}
		if at, ok := trip(p, flow, 225); ok {
			t.Errorf("%s: it settles inside the hysteresis, but trips after %v s", name, at)
		}
	}
}
