package heat

import (
	"math"
	"math/rand/v2"
	"reflect"
	"testing"
)

// phase is a stretch of a recorded run.
type phase struct{ forS, duty, fan float64 }

// A heat-up at full duty, a hold near 220 °C with the part fan coming on, and
// a cool-down: what the manual asks for.
func fullRun(holdDuty float64) []phase {
	return []phase{{150, 1, 0}, {120, holdDuty, 0}, {120, holdDuty, 1}, {200, 0, 0}}
}

// simulate drives a plant through phases, from the given start, and reads its
// sensor with noise of so many K, rounded to 0.1 °C as printers show it.
func simulate(p Plant, from State, phases []phase, everyS, noiseK float64, seed uint64) []Reading {
	random := rand.New(rand.NewPCG(seed, 1))
	var log []Reading
	t, s := 0.0, from
	for _, ph := range phases {
		for range int(ph.forS / everyS) {
			shown := s.Sensor + noiseK*random.NormFloat64()
			log = append(log, Reading{Input{t, ph.duty, ph.fan}, math.Round(shown*10) / 10})
			s = p.Advance(s, ph.duty, Load{Fan: ph.fan}, everyS)
			t += everyS
		}
	}
	return log
}

func fitRun(t *testing.T, p Plant, log []Reading) *Fit {
	t.Helper()
	f, err := FitRun(p.Heater, Estimate{Value: p.AmbientC}, log)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// The contract: known figures come back from noisy records within 5 %.
func TestFitRecovers(t *testing.T) {
	for _, c := range []struct {
		name   string
		plant  Plant
		phases []phase
		fitted Figures
	}{
		{"ptc, full run", ptcPlant(), fullRun(0.5), AllFigures},
		{"cartridge, full run", cartridgePlant(), fullRun(0.42), AllFigures},
		{"cartridge, no fan", cartridgePlant(), []phase{{150, 1, 0}, {100, 0.4, 0}, {200, 0, 0}},
			Capacity | Loss | Lag},
		{"ptc, heat-up alone with the fan on", ptcPlant(), []phase{{400, 1, 1}}, Capacity | LossFan | Lag},
	} {
		t.Run(c.name, func(t *testing.T) {
			for seed := range uint64(5) {
				f := fitRun(t, c.plant, simulate(c.plant, c.plant.Ambient(), c.phases, 0.5, 0.5, seed))
				if f.Fitted != c.fitted {
					t.Fatalf("fitted %b, want %b", f.Fitted, c.fitted)
				}
				for _, x := range []struct {
					name   string
					figure Figures
					got    Estimate
					want   float64
				}{
					{"capacity", Capacity, f.Capacity, c.plant.CapacityJPerK},
					{"loss", Loss, f.Loss, c.plant.LossWPerK},
					{"loss with fan", LossFan, f.LossFan, c.plant.LossFanWPerK},
					{"lag", Lag, f.Lag, c.plant.LagS},
				} {
					if c.fitted&x.figure == 0 {
						continue
					}
					near(t, x.name, x.got.Value, x.want, 0.05*x.want)
					near(t, x.name+", in standard errors", (x.got.Value-x.want)/x.got.StdErr, 0, 4.5)
					if !x.got.Told() {
						t.Errorf("%s is said not to be told: %+v", x.name, x.got)
					}
				}
				near(t, "root mean square", f.RMSK, 0.5, 0.05)
			}
		})
	}
}

// The stated uncertainty must be the scatter of the results, neither a boast
// nor an excuse.
func TestFitUncertaintyIsTheScatter(t *testing.T) {
	p := cartridgePlant()
	const runs = 40
	var sum, square, stated float64
	for seed := range uint64(runs) {
		f := fitRun(t, p, simulate(p, p.Ambient(), []phase{{120, 1, 0}, {120, 0, 0}}, 1, 0.5, 100+seed))
		sum += f.Lag.Value
		square += f.Lag.Value * f.Lag.Value
		stated += f.Lag.StdErr / runs
	}
	scatter := math.Sqrt((square - sum*sum/runs) / (runs - 1))
	if ratio := stated / scatter; ratio < 0.7 || ratio > 1.5 {
		t.Errorf("stated ±%.4f s, scatter %.4f s", stated, scatter)
	}
}

// A run that begins hot and rising has its block ahead of the sensor; what is
// not known of that start must not spoil the figures.
func TestFitFromAHotStart(t *testing.T) {
	p := ptcPlant()
	warm := p.Advance(p.Ambient(), 1, Load{}, 60)
	f := fitRun(t, p, simulate(p, warm, []phase{{90, 1, 0}, {60, 0.5, 0}, {150, 0, 0}}, 0.5, 0.3, 7))
	near(t, "capacity", f.Capacity.Value, 16.7, 0.05*16.7)
	near(t, "lag", f.Lag.Value, 4.5, 0.05*4.5)
	near(t, "loss", f.Loss.Value, 0.068, 0.05*0.068)
}

// A short heat-up cannot tell the loss, and must say so; a fan that stands at
// a third tells neither loss of the sheet.
func TestFitSaysWhatItCannotTell(t *testing.T) {
	p := cartridgePlant()
	short := fitRun(t, p, simulate(p, p.Ambient(), []phase{{25, 1, 0}}, 0.5, 0.5, 3))
	if short.Loss.Told() {
		t.Errorf("25 s of heating are said to tell the loss: %+v", short.Loss)
	}
	part := fitRun(t, p, simulate(p, p.Ambient(), []phase{{150, 1, 1. / 3}, {150, 0, 1. / 3}}, 0.5, 0.3, 3))
	if part.Fitted != Capacity|Lag {
		t.Errorf("fitted %b, want capacity and lag alone", part.Fitted)
	}
	near(t, "loss at a third of the fan", part.PartLoss.Value, 0.07, 0.05*0.07)
	near(t, "fan", part.PartFan, 1./3, 1e-9)
	if r := part.Run; r.Rows != 600 || math.Abs(r.LengthS-299.5) > 1e-9 || math.Abs(r.SpacingS-0.5) > 1e-9 ||
		r.CoolS < 60 || r.FanS != 0 {
		t.Errorf("run told as %+v", r)
	}
}

func TestFitRefuses(t *testing.T) {
	p := cartridgePlant()
	log := simulate(p, p.Ambient(), []phase{{60, 1, 0}}, 10, 0, 1)
	if _, err := FitRun(p.Heater, Estimate{Value: p.AmbientC}, log); err == nil {
		t.Error("6 rows are fitted")
	}
	if _, err := FitRun(p.Heater, Estimate{Value: p.AmbientC}, nil); err == nil {
		t.Error("no rows are fitted")
	}
	// Heat that comes from nowhere: it rises with the heater off, and falls
	// with it on.
	for i := range 200 {
		x := float64(i)
		log = append(log, Reading{Input{1000 + x, float64(i / 100), 0}, 150 + 100*math.Sin(x/32)})
	}
	if f, err := FitRun(p.Heater, Estimate{Value: p.AmbientC}, log[6:]); err == nil && f.RMSK < 10 {
		t.Errorf("nonsense is fitted within %g K: %+v", f.RMSK, f)
	}
}

func BenchmarkFitRun(b *testing.B) {
	p := ptcPlant()
	log := simulate(p, p.Ambient(), fullRun(0.5), 0.5, 0.5, 1)
	for b.Loop() {
		if _, err := FitRun(p.Heater, Estimate{Value: p.AmbientC}, log); err != nil {
			b.Fatal(err)
		}
	}
}

// By hand, of two and a half standard errors and the usual spread of 0.3: on the
// limit a log tells the figure.
func TestTold(t *testing.T) {
	near(t, "plus or minus", Estimate{25, 3}.PlusMinus(), 7.5, 0)
	for _, c := range []struct {
		e    Estimate
		told bool
	}{{Estimate{25, 2.99}, true}, {Estimate{25, 3}, true}, {Estimate{25, 3.01}, false},
		{Estimate{25, math.Inf(1)}, false}} {
		if got := c.e.Told(); got != c.told {
			t.Errorf("%+v: told is %v", c.e, got)
		}
	}
}

// Fan off, full or between, by how far it is open all the time.
func TestWhichLossIsFitted(t *testing.T) {
	for _, c := range []struct {
		fan    float64
		fitted Figures
		part   float64
	}{
		{0, Loss, 0}, {0.049, Loss, 0}, {0.05, 0, 0.05}, {0.5, 0, 0.5}, {0.95, 0, 0.95}, {0.951, LossFan, 0},
		{1, LossFan, 0},
	} {
		p := newProblem(cartridgePlant().Heater, Estimate{Value: 25}, steady(12, 60, c.fan, nil))
		f := p.fit(p.guess(3))
		if f.Fitted != Capacity|Lag|c.fitted || f.PartFan != c.part ||
			(f.PartLoss.Value != 0) != (c.part != 0) {
			t.Errorf("a fan of %v: fitted %b, %v at %v", c.fan, f.Fitted, f.PartLoss, f.PartFan)
		}
		near(t, "the first guess of it", max(f.Loss.Value, f.LossFan.Value, f.PartLoss.Value), 0.07, 1e-9)
	}
}

// The figures that are told of residuals, from the residuals themselves.
func TestFiguresOfResiduals(t *testing.T) {
	p := cartridgePlant()
	log := simulate(p, p.Ambient(), []phase{{60, 1, 0}, {60, 0, 0}}, 1, 0.5, 9)
	log[100].TempC -= 4 // the worst by far
	f := fitRun(t, p, log)
	var squares, neighbours float64
	for i, r := range f.Residuals {
		squares += r * r
		if i > 0 {
			neighbours += r * f.Residuals[i-1]
		}
	}
	near(t, "root mean square", f.RMSK, math.Sqrt(squares/120), 1e-12)
	near(t, "correlation", f.Correlation, max(neighbours/squares, 0), 1e-12)
	near(t, "worst", f.WorstK, f.Residuals[100], 0)
	near(t, "time of the worst", f.WorstS, 100, 1e-9)

	still, x := alternating(12)
	near(t, "correlation in turn", still.fit(x).Correlation, 0, 0)
	near(t, "time of the first of equals", still.fit(x).WorstS, 0, 0)
	for i := range still.tempC {
		still.tempC[i] = 27
	}
	near(t, "correlation of a constant error", still.fit(x).Correlation, 11./12, 1e-12)
	x[still.starting()] = 0
	still.ambient.Value = 27
	if f := still.fit(x); f.RMSK != 0 || f.Correlation != 0 {
		t.Errorf("no residuals: %v K, correlation %v", f.RMSK, f.Correlation)
	}
}

// What is told of a run, by hand: only rows that are 50 K above the room and last
// until the next count, the heater off below a hundredth, the fan on above half.
func TestRunByHand(t *testing.T) {
	var log []Reading
	for _, r := range [][4]float64{ // time, duty, fan, temperature
		{100, 1, 0, 20}, {101, 1, 1, 74.9}, {102, 0, 1, 75}, {104, 0.009, 0.51, 80}, {107, 0.01, 0.5, 90},
		{111, 0, 0, 85}, {114, 0, 1, 80}, {134, 0.5, 0, 76}, {135, 0.5, 1, 75}, {136, 0, 1, 60},
		{137, 0, 1, 85},
	} {
		log = append(log, Reading{Input{r[0], r[1], r[2]}, r[3]})
	}
	got := newProblem(cartridgePlant().Heater, Estimate{25, 1}, log).run()
	want := Run{Rows: 11, LengthS: 37, SpacingS: 3.7, LowC: 20, HighC: 90, CoolS: 2 + 3 + 3, FanS: 2 + 3 + 1,
		Gaps: []int{7}}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("got %+v, want %+v", got, want)
	}
}

// Four rows more than there are figures are enough: four figures at rest.
func TestFewestRows(t *testing.T) {
	p := cartridgePlant()
	log := simulate(p, p.Ambient(), []phase{{40, 1, 0}, {40, 0, 0}}, 10, 0, 1)
	fitRun(t, p, log)
	if f, err := FitRun(p.Heater, Estimate{Value: p.AmbientC}, log[:7]); err == nil {
		t.Errorf("7 rows are fitted: %+v", f)
	}
}

// Capacity, loss and loss with the fan scale with the power, and may be what they
// are in any hotend, the least and the most included. What a log does not tell, or
// was not fitted, speaks against nothing.
func TestPhysical(t *testing.T) {
	for _, c := range []struct {
		name     string
		figures  [3]float64
		times    float64
		physical bool
	}{
		{"usual", [3]float64{16, 0.07, 0.1}, 1, true},
		{"all at their least", [3]float64{4, 0.035, 0.04}, 1, true},
		{"all at their most", [3]float64{60, 0.25, 0.4}, 1, true},
		{"too small a block", [3]float64{3.9, 0.07, 0.1}, 1, false},
		{"too large a block", [3]float64{61, 0.07, 0.1}, 1, false},
		{"too little loss", [3]float64{16, 0.034, 0.1}, 1, false},
		{"too much loss with the fan", [3]float64{16, 0.07, 0.41}, 1, false},
		{"small, with twice the power", [3]float64{3, 0.03, 0.05}, 2, true},
		{"usual, with ten times the power", [3]float64{16, 0.07, 0.1}, 10, false},
	} {
		told := func(i int) Estimate { return Estimate{c.figures[i], 0.01 * c.figures[i]} }
		f := Fit{Fitted: AllFigures, Capacity: told(0), Loss: told(1), LossFan: told(2)}
		if got := f.Physical(c.times); got != c.physical {
			t.Errorf("%s: physical is %v", c.name, got)
		}
		f.Fitted = Lag
		if !f.Physical(c.times) {
			t.Errorf("%s, not fitted: not physical", c.name)
		}
	}
	if f := (Fit{Fitted: Loss, Loss: Estimate{0.01, 0.1}}); !f.Physical(1) {
		t.Error("a loss that is not told: not physical")
	}
}
