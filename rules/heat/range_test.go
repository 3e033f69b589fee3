package heat

import "testing"

func TestCorners(t *testing.T) {
	p := ptcPlant()
	seen := map[Plant]bool{}
	for q := range p.Corners(Spreads{Capacity: Spread, Lag: Spread}) {
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
	for q := range p.Corners(Spreads{}) {
		if q != p {
			t.Errorf("all is exact, but %+v", q)
		}
	}
}

// Stuck on, by hand: 22 + 22 W/(0.068·0.7), and the root on the table's
// last slope for 0.068·1.3.
func TestRange(t *testing.T) {
	low, high := ptcPlant().Range(Spreads{Loss: Spread}, Plant.StuckOn)
	near(t, "high", high, 22+22/(0.068*0.7), 1e-9)
	k := 0.068 * 1.3
	near(t, "low", low, (46+k*22)/(k+0.08), 1e-9)
}

func TestFlips(t *testing.T) {
	p := ptcPlant()
	trips := func(at float64) func(Plant) bool {
		return func(q Plant) bool { return PredictRise(q, FanFull, windowRise, at).Trips(windowRise) }
	}
	for at, flips := range map[float64]bool{150: false, 270: true, 300: true, 500: false} {
		if got := p.Flips(SpreadsOf(LossFan|Capacity|Lag, AllFigures), trips(at)); got != flips {
			t.Errorf("at %v °C: flips is %v", at, got)
		}
	}
}

func abs(x float64) float64 { return max(x, -x) }

func TestSpreadsOf(t *testing.T) {
	if got, want := SpreadsOf(Loss|Capacity|Lag, Capacity),
		(Spreads{Power: 0.05, Capacity: 0.3, Loss: 0.1}); got != want {
		t.Errorf("got %+v, want %+v", got, want)
	}
	p := ptcPlant()
	hot := p.Hottest(SpreadsOf(Loss, 0))
	near(t, "power", hot.Power(200), 30*1.05, 1e-9)
	near(t, "loss", hot.LossWPerK, 0.068*0.9, 1e-12)
	near(t, "loss with the fan", hot.LossFanWPerK, 0.097, 0)
	near(t, "loss with the fan in play", p.Hottest(SpreadsOf(LossFan, 0)).LossFanWPerK, 0.097*0.9, 1e-12)
}
