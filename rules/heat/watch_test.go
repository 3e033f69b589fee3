package heat

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

var (
	windowRise = HeatingCheck{RiseC: 2, WindowS: 20, MarginC: 3}
	sumDefault = SumWatch{HysteresisC: 5, RiseC: 2, WindowS: 20, LimitCS: 120, SmoothS: 1}
)

// Two worked examples, reckoned by hand: a ring and a cartridge.
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

func TestHeatingCheckThatIsNeverArmedOrNeverGetsThere(t *testing.T) {
	p := ptcPlant()
	if r := PredictRise(p, FanFull, windowRise, 27); r.Armed || r.Trips(windowRise) {
		t.Errorf("a target just above ambient arms the watch: %+v", r)
	}
	r := PredictRise(p, FanFull, windowRise, 290)
	if r.Gets || r.LastC != 0 || !r.Trips(windowRise) {
		t.Errorf("290 °C cannot be reached: %+v", r)
	}
}

// The style's firmware arms the check with the defaults only from T ≤ target − 7,
// T cut to whole degrees.
func TestWhenTheHeatingCheckIsArmed(t *testing.T) {
	p := ptcPlant()
	for _, c := range []struct {
		room, target float64
		armed        bool
	}{{22, 29, true}, {22.9, 29, true}, {23, 29, false}, {22, 28.1, true}, {22, 28, false},
		{21.9, 28, true}} {
		p.AmbientC = c.room
		if r := PredictRise(p, Load{}, windowRise, c.target); r.Armed != c.armed {
			t.Errorf("from %v to %v °C: %+v", c.room, c.target, r)
		}
	}
}

// What the check sees of a cartridge, in closed form: the first window, the last,
// and the time over the required rise from the last whole degree, though that be
// longer than the window.
func TestRiseInClosedForm(t *testing.T) {
	p := cartridgePlant() // to 358 °C with the fan
	sensor := func(at float64) float64 { return closedForm(p, FanFull, 25, at) }
	time := func(level float64) float64 { return closedTime(p, FanFull, 25, level) }
	for _, w := range []HeatingCheck{{2, 20, 3}, {2, 1, 3}, {8, 1, 3}, {8, 60, 3}} {
		level := 340 - w.RiseC - 4
		r := PredictRise(p, FanFull, w, 340)
		near(t, "armed for the last time", r.ArmedS, time(level), 1e-3)
		near(t, "last rise", r.LastC, sensor(r.ArmedS+w.WindowS)-level, 1e-3)
		near(t, "first rise", r.FirstC, sensor(w.WindowS)-25, 1e-3)
		near(t, "time needed", r.NeededS, time(level-1+w.RiseC)-time(level-1), 0.01)
		if least := min(r.FirstC, r.LastC); r.LeastC() != least {
			t.Errorf("the least rise is %v, want %v", r.LeastC(), least)
		}
	}
}

// A rise that takes just the window trips nothing, nor does what differs by no
// more than rounding.
func TestTripsOnTheLimit(t *testing.T) {
	w := HeatingCheck{RiseC: 2, WindowS: 20}
	for needs, trips := range map[float64]bool{19: false, 20: false, 20 + sameS/2: false, 20 + sameS: false,
		20 + 2*sameS: true, math.Inf(1): true} {
		if got := (Rise{Armed: true, NeededS: needs}).Trips(w); got != trips {
			t.Errorf("%v s: trips is %v", needs, got)
		}
		if (Rise{NeededS: needs}).Trips(w) {
			t.Errorf("%v s: it trips unarmed", needs)
		}
	}
}

func TestHeatingMonitor(t *testing.T) {
	m := windowRise.Watch(100) // armed below 94
	for _, c := range []struct {
		t, s  float64
		trips bool
	}{
		{0, 20.9, false},    // of which it sees 20
		{5, 60, false},      // it does not look
		{19.9, 21.9, false}, // not yet
		{20, 22, false},     // 22 are enough, and again
		{39.9, 23, false},
		{40, 24.2, false}, // and again
		{60, 25.9, true},  // of which it sees 25
	} {
		if got := m.Feed(c.t, c.s); got != c.trips {
			t.Errorf("at %v s, %v °C: trips is %v", c.t, c.s, got)
		}
	}
	m = windowRise.Watch(100)
	for at := 0.0; at < 100; at++ {
		if m.Feed(at, 94) {
			t.Error("trips where it is not armed")
		}
	}
	if m = windowRise.Watch(100); m.Feed(0, 93.9) || !m.armed {
		t.Error("93 and 2 are below 96: it is armed")
	}
}

// A real watch that meets the predicted heat-up must agree wherever the
// prediction says that nothing trips, at whatever moments it samples and
// whatever fraction of a degree it starts from.
func TestHeatingMonitorAgreesWithPrediction(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyPlant(t)
		w := HeatingCheck{float64(rapid.IntRange(1, 8).Draw(t, "rise")),
			float64(rapid.IntRange(5, 60).Draw(t, "window")), 3}
		target := float64(rapid.IntRange(60, 300).Draw(t, "target"))
		r := PredictRise(p, Load{}, w, target)
		c := p.Run(p.Ambient(), 1, Load{}, 1500)
		m := w.Watch(target)
		phase := rapid.Float64Range(0, w.WindowS).Draw(t, "phase")
		tripped := false
		for at := phase; at < 1500; at += 0.16 {
			tripped = m.Feed(at, c.Sensor(at)) || tripped
		}
		if tripped && !r.Trips(w) {
			t.Fatalf("the watch trips, the prediction is %+v", r)
		}
		if !r.Gets && r.Armed && c.EndS() < 1400 && !tripped && c.Sensor(1500) < w.lastWhole(target) {
			t.Fatalf("S stays where the watch is armed, and nothing trips: %+v", r)
		}
	})
}

// The share of starts that trip is none or all where the prediction is sure,
// and some in between.
func TestTripShare(t *testing.T) {
	p := ptcPlant()
	near(t, "240 °C", TripShare(p, FanFull, windowRise, 240), 0, 0)
	near(t, "290 °C", TripShare(p, FanFull, windowRise, 290), 1, 0)
	if s := TripShare(p, FanFull, windowRise, 270); s < 0.2 || s > 0.8 {
		t.Errorf("270 °C: %v", s)
	}
}

func TestDropMonitor(t *testing.T) {
	m := DropCheck{HysteresisC: 4, PeriodS: 40}.Watch(200)
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
		{13, 30, 5, false},
		{14, 35, 0, false}, // the band begins here
		{15, 10, 25, false},
		{16, 10, 50, true}, // just the limit
	} {
		if got := m.Feed(c.t, c.s); got != c.trips || m.SumCS != c.sum {
			t.Errorf("at %v s, %v °C: trips is %v, sum %v; want %v, %v", c.t, c.s, got, m.SumCS, c.trips,
				c.sum)
		}
	}
	if m.MostCS != 53 {
		t.Errorf("largest sum held against the limit: %v, want 53", m.MostCS)
	}
}

// What the sum watch sees of a cartridge at full duty: its reading lags by the
// smoothing, its power acts a reading late, and the sight ends in the band.
func TestSightInClosedForm(t *testing.T) {
	p, w := cartridgePlant(), SumWatch{HysteresisC: 5}
	s := w.sight(p, FanFull, 300)
	if s.Readings[0] != 25 || s.Readings[1] != 25 || s.Readings[2] <= 25 {
		t.Errorf("it begins with %v", s.Readings[:3])
	}
	in := closedTime(p, FanFull, 25, 295) + clampedSampleS
	if near(t, "in the band", s.endS(), in+clampedSampleS, clampedSampleS); !s.Gets {
		t.Error("it never gets there")
	}
	near(t, "seen after 60 s", s.at(60.1), closedForm(p, FanFull, 25, 60-clampedSampleS), 1e-3)
	near(t, "seen before", s.at(-1), 25, 0)
	near(t, "seen later", s.at(1e4), 295, 0.5)

	// 358.3 °C is all that it gets to, at first by 30/12 K/s: a band from 358 °C on
	// is met, one from 359 °C not, and the sight ends where nothing moves.
	if s := w.sight(p, FanFull, 363); !s.Gets {
		t.Error("358 °C are never met")
	}
	if s := w.sight(p, FanFull, 364); s.Gets || s.endS() != horizonS {
		t.Errorf("359 °C are met after %v s", s.endS())
	} else {
		tau := 12 / 0.09
		near(t, "at rest", float64(len(s.Readings))*clampedSampleS, tau*math.Log(30./12/restKPerS),
			64*clampedSampleS)
	}
	near(t, "the end of a sight", (&Sight{Readings: make([]float64, 10), Gets: true}).endS(), 3, 1e-12)
}

// Half a kelvin each second from 20 °C on is 1.5 K in a window of 3 s, too little:
// from then on the shortfall to 35 °C counts, 15 + 14.5 + 14 …, and the most where
// the checks begin as long before the first reading as they may.
func TestMostOfTheSums(t *testing.T) {
	s := Sight{Gets: true}
	for at := 0.0; at < 30.2; at += clampedSampleS {
		s.Readings = append(s.Readings, 20+at/2)
	}
	w := SumWatch{HysteresisC: 5, RiseC: 2, WindowS: 3, LimitCS: 50}
	sum := func(phase float64) (sum float64) {
		for at := phase; at < 31; at++ {
			sum += max(0, 35-s.at(at))
		}
		return sum
	}
	want := 0.0
	for phase := -0.279; phase < 1; phase += 0.001 {
		want = max(want, sum(phase))
	}
	near(t, "most", w.most(&s, 40), want, 0.2)
	// The looks come 0.279 s early, and what they see is 0.15 s old on average.
	near(t, "by hand", want, 30*15-0.5*435+29*0.5*(0.279+0.15), 2.5)
	s.Gets = false
	if got := w.most(&s, 40); !math.IsInf(got, 1) {
		t.Errorf("the band is never met, but the most is %v", got)
	}
}

// A heater that stays cold gains nothing: after the window of 20 s everything
// counts, 170 K each second, in all eight phases.
func TestSumOutcomeOfADeadHeater(t *testing.T) {
	p := ptcPlant()
	p.SupplyV = 0
	p.AmbientC = 25
	want := SumOutcome{Trips: true, Share: 1, TripS: 21, MostCS: math.Inf(1)}
	if got := PredictSum(p, FanFull, sumDefault, 200); got != want {
		t.Errorf("got %+v, want %+v", got, want)
	}
	trace := SumTrace(p, FanFull, sumDefault, 200, 30)
	if len(trace) != 31 {
		t.Fatalf("%d looks in 30 s", len(trace))
	}
	for i, s := range trace {
		held := 0.0
		if i > 20 {
			held = float64(i+1) * 170
		}
		near(t, "time", s.TimeS, float64(i), 0)
		near(t, "held against the limit", s.HeldC, held, 1e-6)
	}
}

// Of a heat-up that always gains enough nothing is ever held against the limit; of
// another the trace shows the most.
func TestSumTrace(t *testing.T) {
	trace := SumTrace(cartridgePlant(), Load{}, sumDefault, 200, 60)
	if len(trace) != 61 || trace[0].TimeS != 0 {
		t.Errorf("%d looks from %+v on", len(trace), trace[:min(1, len(trace))])
	}
	for _, s := range trace {
		near(t, "held", s.HeldC, 0, 0)
	}
	out, most := PredictSum(ptcPlant(), FanFull, sumDefault, 272), 0.0
	for _, s := range SumTrace(ptcPlant(), FanFull, sumDefault, 272, 900) {
		most = max(most, s.HeldC)
	}
	if near(t, "most", most, out.MostCS, 0); !(most > 50) {
		t.Errorf("only %v is held", most)
	}
}

func TestDropTrip(t *testing.T) {
	p, flow := ptcPlant(), Load{Fan: 1, FlowMM3S: 18}
	near(t, "settles", p.Settle(1, flow, 270), 222.91, 0.005) // SciPy
	window := DropCheck{HysteresisC: 4, PeriodS: 40}
	at, ok := window.TripsAfter(p, flow, 270)
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
	if at, ok := sumDefault.TripsAfter(p, flow, 270); !ok || math.Abs(at-second) > 2 {
		t.Errorf("the sum watch trips at %v, %v; want about %v", at, ok, second)
	}
	for name, trip := range map[string]func(Plant, Load, float64) (float64, bool){"window": window.TripsAfter,
		"sum": sumDefault.TripsAfter} {
		if at, ok := trip(p, flow, 220); ok {
			t.Errorf("%s: 220 °C can be held, but it trips after %v s", name, at)
		}
		if at, ok := trip(p, flow, 225); ok {
			t.Errorf("%s: it settles inside the hysteresis, but trips after %v s", name, at)
		}
	}
}

// A part fan that slows as S sags stands still before the watch looks: it trips
// only where the heater cannot hold without it either, and later.
func TestDropTripWithASlowedFan(t *testing.T) {
	p, w := ptcPlant(), DropCheck{HysteresisC: 4, PeriodS: 40}
	slow := w
	slow.SlowsFan = true
	for _, c := range []struct {
		flow        float64
		full, still bool
	}{{18, true, true}, {8, true, false}, {0, false, false}} {
		full, trips := w.TripsAfter(p, Load{Fan: 1, FlowMM3S: c.flow}, 270)
		later, tripsSlow := slow.TripsAfter(p, Load{Fan: 1, FlowMM3S: c.flow}, 270)
		if trips != c.full || tripsSlow != c.still || tripsSlow && later <= full {
			t.Errorf("%v mm³/s: fan full %v, %v; slowed %v, %v", c.flow, full, trips, later, tripsSlow)
		}
	}
	for short, want := range map[float64]float64{1: 1, 1.3: 0.75, 2: 0.5, 3.2: 0.25, 3.3: 0} {
		near(t, "share of the fan", w.fanShare(short), want, 0)
	}
}
