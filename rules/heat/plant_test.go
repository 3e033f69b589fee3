package heat

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestPower(t *testing.T) {
	ptc := ptcPlant().Heater
	for _, c := range []struct{ at, want float64 }{
		{-10, 48}, {25, 48}, {112.5, 39}, {200, 30}, {240, 26.8}, {270, 24.4}, {300, 22}, {400, 14}, {575, 0},
		{600, 0},
	} {
		near(t, "power", ptc.Power(c.at), c.want, 1e-9)
	}
	ptc.Beyond = Flat
	near(t, "power held flat", ptc.Power(500), 22, 0)
	rising := Heater{RatedV: 24, SupplyV: 24, Hot: NewTable(Point{25, 20}, Point{100, 30})}
	near(t, "power that rose", rising.Power(200), 30, 0)
	if got := cartridgePlant().Heater.Power(250); got != 30 {
		t.Errorf("a cartridge gives %v W, want 30", got)
	}
}

// A point of the table belongs to the piece above it, wherever the block was last.
func TestPieceAt(t *testing.T) {
	ps := ptcPlant().pieces()
	for _, c := range []struct {
		at    float64
		piece int
	}{{math.Inf(-1), 0}, {24.9, 0}, {25, 1}, {199.9, 1}, {200, 2}, {299.9, 2}, {300, 3}, {574.9, 3},
		{575.1, 4}, {math.Inf(1), 4}} {
		if got := pieceAt(ps, c.at); got != c.piece {
			t.Errorf("%v °C lies on piece %d, want %d", c.at, got, c.piece)
		}
		for at := range ps {
			if m := (motion{pieces: ps, at: at}); *m.piece(c.at) != ps[c.piece] {
				t.Errorf("%v °C: from piece %d the motion finds %+v", c.at, at, *m.piece(c.at))
			}
		}
	}
}

func TestTwiceTheVoltageIsFourTimesThePower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h := ptcPlant().Heater
		h.SupplyV = rapid.Float64Range(1, 48).Draw(t, "supply")
		at := rapid.Float64Range(-20, 400).Draw(t, "at")
		before := h.Power(at)
		h.SupplyV *= 2
		if after := h.Power(at); math.Abs(after-4*before) > 1e-9*after {
			t.Fatalf("%v W became %v W", before, after)
		}
	})
}

func TestTableSortsAndKeepsTheLaterOfTwo(t *testing.T) {
	a := NewTable(Point{200, 30}, Point{25, 40}, Point{25, 48})
	if b := NewTable(Point{25, 48}, Point{200, 30}); a != b {
		t.Errorf("got %v, want %v", a.Points(), b.Points())
	}
}

func TestStuckOn(t *testing.T) {
	p := ptcPlant()
	near(t, "PTC", p.StuckOn(), 345.5, 0.05)
	p.DutyLimit = 0.5 // a welded output knows no limit
	near(t, "PTC with a duty limit", p.StuckOn(), 345.5, 0.05)
	p.Hot, p.RatedW = Table{}, 40
	near(t, "cartridge", p.StuckOn(), 610.2, 0.05)
	p.LossWPerK = 0
	if got := p.StuckOn(); !math.IsInf(got, 1) {
		t.Errorf("without losses it settles at %v", got)
	}
}

// Reckoned by hand: 24.4 W, 0.097·248, 0.0024·18·248.
func TestHeadroom(t *testing.T) {
	for _, c := range []struct{ at, available, loss, melt, ratio float64 }{
		{270, 24.4, 24.06, 10.71, 0.702},
		{240, 26.8, 21.15, 9.42, 0.877},
	} {
		limited := ptcPlant()
		limited.DutyLimit = 0.5
		near(t, "available within the limit", limited.Headroom(c.at, 18).AvailableW, c.available/2, 0.005)
		near(t, "loss, fan off", limited.Headroom(c.at, 18).LossOffW, 0.068*(c.at-22), 1e-9)
		h := ptcPlant().Headroom(c.at, 18)
		near(t, "available", h.AvailableW, c.available, 0.005)
		near(t, "loss", h.LossW, c.loss, 0.005)
		near(t, "melt", h.MeltW, c.melt, 0.005)
		near(t, "ratio", h.Ratio, c.ratio, 0.0005)
		fits := ptcPlant().Headroom(c.at, h.FitsMM3S)
		near(t, "ratio at the flow that fits", fits.Ratio, 1, 1e-9)
	}
}

// TestSettleIsWhereTheCurveEnds lets plants of all sizes run for long and
// compares with the exact equilibrium, from above and from below.
func TestSettleIsWhereTheCurveEnds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyPlant(t)
		from := rapid.Float64Range(0, 500).Draw(t, "from")
		load := Load{rapid.Float64Range(0, 1).Draw(t, "fan"), rapid.Float64Range(0, 30).Draw(t, "flow")}
		duty := rapid.Float64Range(0, 1).Draw(t, "duty")
		s := State{from, from}
		s = p.Advance(s, duty, load, 20*p.CapacityJPerK/min(p.LossWPerK, p.LossFanWPerK))
		if want := p.Settle(duty, load, from); math.Abs(s.Block-want) > 0.01 {
			t.Fatalf("it settles at %v, not at %v", s.Block, want)
		}
	})
}

// Reckoned by hand: a cartridge of 12.5 W with 1/16 W/K in a room of 20 °C goes
// to 220, and a PTC ring at half its duty to where 0.5·(46 − 0.08·T) is the loss.
func TestSettleByHand(t *testing.T) {
	p := cartridgePlant()
	p.RatedW, p.LossWPerK, p.AmbientC = 12.5, 0.0625, 20
	for _, from := range []float64{20, 200, 219, 220, 221, 500} {
		near(t, "cartridge", p.Settle(1, Load{}, from), 220, 0)
		near(t, "at half the duty", p.Settle(0.5, Load{}, from), 120, 0)
	}
	for _, from := range []float64{22, 25, 150, 200, 225, 230, 300, 400, 700} {
		near(t, "ring", ptcPlant().Settle(0.5, Load{}, from), (23+0.068*22)/(0.068+0.04), 1e-9)
	}
	// A thousandth of the power lets it cool to below the table's first point.
	near(t, "hardly on", ptcPlant().Settle(0.001, Load{}, 300), 22+0.048/0.068, 1e-9)
}

// anyPlant draws a plant whose power falls with temperature.
func anyPlant(t *rapid.T) Plant {
	p := Plant{
		Heater{RatedV: 24, RatedW: rapid.Float64Range(5, 120).Draw(t, "rated"),
			SupplyV: rapid.Float64Range(10, 30).Draw(t, "supply"), DutyLimit: 1},
		Block{
			CapacityJPerK: rapid.Float64Range(2, 60).Draw(t, "capacity"),
			LossWPerK:     rapid.Float64Range(0.03, 0.2).Draw(t, "loss"),
			LossFanWPerK:  rapid.Float64Range(0.03, 0.4).Draw(t, "loss with fan"),
			LagS:          rapid.Float64Range(0.1, 15).Draw(t, "lag"),
			AmbientC:      rapid.Float64Range(5, 40).Draw(t, "ambient"),
		},
	}
	if rapid.Bool().Draw(t, "ptc") {
		mid := rapid.Float64Range(0.4, 1).Draw(t, "mid") * p.RatedW
		end := rapid.Float64Range(0.3, 1).Draw(t, "end") * mid
		p.Hot = NewTable(Point{25, p.RatedW}, Point{rapid.Float64Range(60, 250).Draw(t, "knee"), mid},
			Point{300, end})
	}
	return p
}
