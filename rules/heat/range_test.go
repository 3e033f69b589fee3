package heat

import "testing"

func TestCorners(t *testing.T) {
	p := ptcPlant()
	seen := map[Plant]bool{}
	for q := range p.Corners(Capacity | Lag) {
		seen[q] = true
		if q.LossWPerK != p.LossWPerK || q.LossFanWPerK != p.LossFanWPerK {
			t.Errorf("a given figure moved: %+v", q.Block)
		}
		near(t, "capacity", abs(q.CapacityJPerK/p.CapacityJPerK-1), 0.3, 1e-9)
		near(t, "lag", abs(q.LagS/p.LagS-1), 0.3, 1e-9)
	}
	if len(seen) != 4 {
		t.Errorf("%d corners, want 4", len(seen))
	}
	for q := range p.Corners(0) {
		if q != p {
			t.Errorf("nothing is assumed, but %+v", q)
		}
	}
}

// Stuck on, by hand: 22 + 22 W/(0.068·0.7), and the root on the table's
// last slope for 0.068·1.3.
func TestRange(t *testing.T) {
	low, high := ptcPlant().Range(Loss, Plant.StuckOn)
	near(t, "high", high, 22+22/(0.068*0.7), 1e-9)
	k := 0.068 * 1.3
	near(t, "low", low, (46+k*22)/(k+0.08), 1e-9)
}

func TestFlips(t *testing.T) {
	p := ptcPlant()
	trips := func(at float64) func(Plant) bool {
		return func(q Plant) bool { return PredictRise(q, FanFull, windowRise, at).Trips(windowRise) }
	}
	for at, flips := range map[float64]bool{150: false, 270: true, 320: true, 500: false} {
		if got := p.Flips(LossFan|Capacity|Lag, trips(at)); got != flips {
			t.Errorf("at %v °C: flips is %v", at, got)
		}
	}
}

func abs(x float64) float64 { return max(x, -x) }
