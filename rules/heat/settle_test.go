package heat

import (
	"math"
	"testing"
)

// judged has a judge look at readings every second, with the block so far ahead of
// its sensor, and tells when the run ended and how.
func judged(aheadK float64, reading func(t float64) float64) (endS float64, r Response) {
	j := newJudge(200)
	for t := 0.0; ; t++ {
		s := reading(t)
		if j.over(t, State{s + aheadK, s}, &monitor{}) {
			j.pronounce(&r)
			return t, r
		}
	}
}

// until gives one reading up to a time, and another afterwards.
func until(t float64, before, after float64) func(float64) float64 {
	return func(at float64) float64 {
		if at <= t {
			return before
		}
		return after
	}
}

func TestHowRunsEnd(t *testing.T) {
	// A saw tooth of 1 K about the middle, with a period of 40 s.
	saw := func(middle, half float64) func(float64) float64 {
		return func(at float64) float64 { return middle + half*(1-math.Abs(math.Mod(at, 40)/10-2)) }
	}
	// One reading of each part is higher than the others, from part to part by more.
	spikes := func(first, more float64) func(float64) float64 {
		return func(at float64) float64 {
			if math.Mod(at, 30) == 15 {
				return 200 + first + more*math.Floor(at/30)
			}
			return 200
		}
	}
	for _, c := range []struct {
		name    string
		aheadK  float64
		reading func(float64) float64
		endS    float64
		want    Response
	}{
		// The first part has none before it to be compared with; four more are calm.
		{"on the target", 0, until(0, 200, 200), 150, Response{Settles: true}},
		{"on the limits of the band", 0, until(0, 198, 202), 150, Response{Settles: true}},
		{"just outside of it", 0, until(0, 202.01, 202.01), 900, Response{}},
		{"outside in the first two parts", 0, until(60, 210, 200), 180, Response{Settles: true, SettleS: 60}},
		{"outside until the third", 0, until(61, 210, 200), 210, Response{Settles: true, SettleS: 61}},
		{"moves half a kelvin in each part", 0, spikes(0.5, 0), 150, Response{Settles: true}},
		{"moves by more", 0, spikes(0.51, 0), 900, Response{Settles: true}},
		{"moves hardly more in each part", 0, spikes(0.1, 0.019), 150, Response{Settles: true}},
		{"moves more in each part", 0, spikes(0.1, 0.021), 900, Response{Settles: true}},
		{"block hardly ahead", 0.5, until(0, 200, 200), 150, Response{Settles: true}},
		{"block ahead", 0.51, until(0, 200, 200), 900, Response{Settles: true}},
		// Never calm, but within the band for the last third.
		{"swings in the band", 0, saw(200, 1), 900, Response{Settles: true}},
		{"outside until shortly before the last third", 0,
			func(at float64) float64 { return saw(until(599, 210, 200)(at), 1)(at) }, 900,
			Response{Settles: true, SettleS: 599}},
		// The last third gets nearer, so the run goes on for as long again.
		{"outside until the last third begins", 0,
			func(at float64) float64 { return saw(until(600, 210, 200)(at), 1)(at) }, 1800,
			Response{Settles: true, SettleS: 600}},
		{"gets nearer for hours", 0, func(at float64) float64 { return 200 - 100*math.Exp(-at/1000) }, 3600,
			Response{}},
		{"swings without end", 0, saw(200, 3), 900, Response{SwingC: 3, PeriodS: 40}},
		{"swings twice in the last third", 0,
			func(at float64) float64 { return 200 + 3*math.Sin(2*math.Pi*at/140) }, 900,
			Response{SwingC: 3, PeriodS: 140}},
		{"hangs 3 K off, after 5", 0, until(590, 205, 203), 900, Response{}},
		{"a peak where the last sixth begins", 0,
			func(at float64) float64 { return until(749, 203, until(750, 210, 203)(at))(at) }, 900,
			Response{}},
	} {
		endS, r := judged(c.aheadK, c.reading)
		if endS != c.endS || r.Settles != c.want.Settles || r.SettleS != c.want.SettleS ||
			math.Abs(r.SwingC-c.want.SwingC) > 0.01 || math.Abs(r.PeriodS-c.want.PeriodS) > 0.01 {
			t.Errorf("%s: ends at %v s, %+v", c.name, endS, r)
		}
	}
}

// A run gets nearer where its last sixth is at least a tenth and half a kelvin
// better than the one before, by hand; at the limits it does not.
func TestWhenARunGetsNearer(t *testing.T) {
	for _, c := range []struct {
		before, last float64
		nearer       bool
	}{{10, 8.9, true}, {10, 9, false}, {10, 9.2, false}, {4, 3.45, true}, {4, 3.5, false}, {4, 3.55, false},
		{20, 17.9, true}, {20, 18.1, false}} {
		for _, sign := range []float64{1, -1} {
			j := newJudge(200)
			j.outsideS = j.endS
			j.sixths[0].add(200 + sign*c.before)
			j.sixths[1].add(200 + sign*c.last)
			if over := j.runOver(); over == c.nearer {
				t.Errorf("%v K off, then %v: the run is over: %v", sign*c.before, sign*c.last, over)
			}
		}
	}
}

// One peak or ripples are no swing.
func TestTurns(t *testing.T) {
	for _, c := range []struct {
		name     string
		readings []float64
		count    int
		period   float64
	}{
		{"none", []float64{5, 4, 3, 2}, 0, 0},
		{"rises only", []float64{2, 3, 4, 5}, 0, 0},
		{"one", []float64{2, 3, 4, 3, 2}, 1, 0},
		{"two", []float64{2, 3, 4, 3, 2, 3, 4, 3}, 2, 4},
		{"three", []float64{2, 4, 1, 4, 2, 1, 3, 5, 1}, 3, 3},
		{"ripples", []float64{0, turnK, 0, turnK, 0, turnK, 0}, 0, 0},
		{"ripples on a swing", []float64{2, 3, 2.9, 4, 3.9, 3, 3.1, 2, 3, 4, 3}, 2, 6},
	} {
		var u turns
		for i, x := range c.readings {
			u.add(float64(i), x)
		}
		if u.count != c.count || c.count > 1 && u.period() != c.period {
			t.Errorf("%s: %d peaks, one every %v s", c.name, u.count, u.period())
		}
	}
}
