package melt

import (
	"errors"
	"math"
	"slices"
	"testing"
)

// What is just on a limit, below it and above it.

// gramsPerM makes trials of a metre each, of these flows and masses.
func gramsPerM(flowAndMass ...float64) (trials []Trial) {
	for i := 0; i < len(flowAndMass); i += 2 {
		trials = append(trials, Trial{FlowMM3S: flowAndMass[i], CommandedMM: 1000, MassG: flowAndMass[i+1],
			DensityGCM3: 1.24})
	}
	return trials
}

// Between two steps the loss runs straight; that of the reference is 0 whatever
// the scatter. By hand: 12 % at 8 mm³/s passes 5 % at 4 + 4·5/12.
func TestUsable(t *testing.T) {
	for _, c := range []struct {
		name       string
		steps      []Step
		more, flow float64
		open       bool
	}{
		{"on the limit", []Step{{FlowMM3S: 4}, {FlowMM3S: 8, Loss: 0.05}}, 0, 8, true},
		{"just above", []Step{{FlowMM3S: 4}, {FlowMM3S: 8, Loss: 0.0501}}, 0, 4 + 4*0.05/0.0501, false},
		{"with two errors more", []Step{{FlowMM3S: 4, LossErr: 0.01},
			{FlowMM3S: 8, Loss: 0.1, LossErr: 0.01}}, 2, 4 + 4*5.0/12, false},
		{"the errors of both steps", []Step{{FlowMM3S: 2, LossErr: 0.01}, {FlowMM3S: 4, LossErr: 0.01},
			{FlowMM3S: 8, Loss: 0.1, LossErr: 0.01}}, 2, 4 + 4*3.0/10, false},
	} {
		flow, open := usable(c.steps, 0.05, c.more)
		near(t, c.name, flow, c.flow, 1e-12)
		if open != c.open {
			t.Errorf("%s: open %v", c.name, open)
		}
	}
}

func TestSpaced(t *testing.T) {
	for _, c := range []struct {
		name   string
		a, b   Step // at the limit's either side, above one without loss
		wide   bool
		passed int
	}{
		{"30 % apart", Step{FlowMM3S: 10}, Step{FlowMM3S: 13, Loss: 0.2}, false, 1},
		{"more than 30 % apart", Step{FlowMM3S: 10}, Step{FlowMM3S: 13.1, Loss: 0.2}, true, 1},
		{"twice the limit", Step{FlowMM3S: 10}, Step{FlowMM3S: 20, Loss: 0.1}, false, 1},
		{"more than twice the limit", Step{FlowMM3S: 10}, Step{FlowMM3S: 20, Loss: 0.101}, true, 1},
		{"the lower on the limit", Step{FlowMM3S: 10, Loss: 0.05}, Step{FlowMM3S: 20, Loss: 0.2}, true, 1},
		{"the lower above the limit", Step{FlowMM3S: 10, Loss: 0.051}, Step{FlowMM3S: 20, Loss: 0.2}, false,
			0},
	} {
		s := Series{Steps: []Step{{FlowMM3S: 9}, c.a, c.b}}
		s.spaced(0.05)
		if s.Wide != c.wide || s.Below != c.passed {
			t.Errorf("%s: wide %v, below %d", c.name, s.Wide, s.Below)
		}
	}
}

// Early is a noticeable loss, above 2 %, in the lower half of three steps.
func TestEarly(t *testing.T) {
	for _, c := range []struct {
		name               string
		second, loss, last float64
		want               bool
	}{
		{"in the lower half", 4, 0.021, 8, true},
		{"above it", 4.1, 0.021, 8, false},
		{"hardly noticeable", 4, 0.02, 8, false},
	} {
		steps := []Step{{FlowMM3S: 2}, {FlowMM3S: c.second, Loss: c.loss}, {FlowMM3S: c.last, Loss: 0.1}}
		if got := early(steps); got != c.want {
			t.Errorf("%s: %v", c.name, got)
		}
		if early(steps[:2]) {
			t.Errorf("%s: two steps are enough", c.name)
		}
	}
}

// By hand: ±3 % of a weighing and a step of the scale of 4·√12 %, which is spread
// evenly, are 5 % together, and half of it as the mean of four.
func TestStdErr(t *testing.T) {
	s := Series{Scatter: 0.03}
	near(t, "standard error", s.stdErr(&Step{Trials: 4, resolution: 0.04 * math.Sqrt(12)}), 0.025, 1e-12)
}

// Flows 2 % apart are one, weighed twice.
func TestSameFlow(t *testing.T) {
	for flow, want := range map[float64]int{51: 2, 51.1: 3} {
		s := judged(t, gramsPerM(50, 3, flow, 3, 60, 3))[0].Series[0]
		if len(s.Steps) != want || s.Repeated != (want == 2) {
			t.Errorf("50 and %g mm³/s: %d steps, repeated %v", flow, len(s.Steps), s.Repeated)
		}
	}
}

// Two pieces of one filament weigh alike for each metre, however long they are.
func TestScatterOfUnequalLengths(t *testing.T) {
	trials := gramsPerM(5, 3, 5, 3, 10, 3)
	trials[1].CommandedMM, trials[1].MassG = 500, 1.5
	s := judged(t, trials)[0].Series[0]
	near(t, "scatter", s.Scatter, 0, 1e-12)
	near(t, "g/m", s.Steps[0].GPerM, 3, 1e-12)
}

// Where nothing comes out, twice, there is neither a scatter nor a step of the
// scale to tell: the flow ends before.
func TestNothingAtTheHighestFlow(t *testing.T) {
	s := judged(t, weigh(Setup{}, 4, 0, 8, 1, 8, 1))[0].Series[0]
	near(t, "scatter", s.Scatter, 0, 0)
	near(t, "coarse", s.Coarse, 0, 0)
	near(t, "usable flow", s.UsableMM3S, 4+4*0.05, 1e-9)
}

// One step of the scale is coarse above half of a noticeable loss, 1 %.
func TestCoarseAboveOnePercent(t *testing.T) {
	for step, want := range map[float64]float64{0.01: 0, 0.011: 0.011} {
		trials := gramsPerM(5, 1, 10, 1)
		for i := range trials {
			trials[i].CommandedMM, trials[i].MassStepG = 335, step
		}
		near(t, "coarse", judged(t, trials)[0].Series[0].Coarse, want, 1e-12)
	}
}

// By hand: single weighings scatter by 1 %, so that the loss is good to
// 1.12·√2 %. A gain of 12 % is within 10 % and twice that, one of 14 % is not.
func TestGainedBeyondScatter(t *testing.T) {
	for loss, want := range map[float64]int{-0.12: 0, -0.14: 2} {
		s := judged(t, weigh(Setup{}, 2, 0, 4, 0, 6, loss, 8, 0.02))[0].Series[0]
		if s.Gained != want || s.Certain() != (want == 0) {
			t.Errorf("loss %g: gained at step %d, told %v", loss, s.Gained, s.Certain())
		}
	}
}

// Heavy is what beats the step below by a noticeable 2 % and twice the usual
// scatter of 1 %. Beside the reference either may be the wrong one.
func TestHeavy(t *testing.T) {
	for _, c := range []struct {
		name        string
		flowAndLoss []float64
		want        []int
	}{
		{"by 3 %", []float64{3, 0, 6, 0, 9, 0.03, 12, 0, 15, 0.02}, nil},
		{"by 4.5 %", []float64{3, 0, 6, 0, 9, 0.045, 12, 0, 15, 0.02}, []int{3}},
		{"beside the reference", []float64{3, 0, 6, -0.06, 9, 0, 12, 0.02}, nil},
	} {
		if s := judged(t, weigh(Setup{}, c.flowAndLoss...))[0].Series[0]; !slices.Equal(s.Heavy, c.want) {
			t.Errorf("%s: heavy %v, want %v", c.name, s.Heavy, c.want)
		}
	}
}

// A first trial is short by more than 2 % and twice √2 %, what two weighings
// scatter: 3 % is not.
func TestFirstTrialHardlyShort(t *testing.T) {
	for short, want := range map[float64]int{0.03: 0, 0.06: 1} {
		s := judged(t, weigh(Setup{}, 3, short, 6, 0, 9, 0, 12, 0))[0].Series[0]
		if s.Reference != want {
			t.Errorf("%g short: reference %d", short, s.Reference)
		}
	}
}

// By hand: half of what came out at 4 mm³/s is lost at 12; a quarter, the limit
// here, at 8: the lowest flow is just half of that.
func TestLateStart(t *testing.T) {
	for highest, want := range map[float64]bool{12: false, 11.9: true} {
		all, err := Judge(gramsPerM(4, 2, highest, 1), Options{FilamentMM: 1.75, Loss: 0.25})
		if err != nil {
			t.Fatal(err)
		}
		if s := all[0].Series[0]; s.LateStart != want {
			t.Errorf("up to %g: late %v, usable %g", highest, s.LateStart, s.UsableMM3S)
		}
	}
}

// Half of what was commanded is no more than a limit of a half. Five times may
// pass for grams.
func TestAgainstWhatWasCommanded(t *testing.T) {
	// The mass of 1.75 mm filament in g, for each metre of 1.24 g/cm³: in the
	// order of Judge, to be equal to the last bit.
	filamentMM, full := 1.75, 1000.0
	full *= math.Pi / 4 * filamentMM * filamentMM
	full = full * 1.24 / 1000
	for _, c := range []struct {
		times        float64
		early, fails bool
	}{{0.5, false, false}, {0.499, true, false}, {5, false, false}, {5.01, false, true}} {
		all, err := Judge(gramsPerM(4, c.times*full, 8, c.times*full), Options{FilamentMM: 1.75, Loss: 0.5})
		var setup *SetupError
		if errors.As(err, &setup) != c.fails {
			t.Errorf("%g times: %v", c.times, err)
		}
		if err == nil && all[0].Series[0].Early != c.early {
			t.Errorf("%g times: %+v", c.times, all[0].Series[0])
		}
	}
}

// By hand: from 8 to 9 mm³/s in 25 K is 12.5 %, or 10 % for each 20 K.
func TestHeated(t *testing.T) {
	// heat is two series 25 K apart, of these flows.
	heat := func(cool, hot Series) []Series {
		cool.TempC, hot.TempC = 200, 225
		return []Series{cool, hot}
	}
	flow := func(usable float64) Series { return Series{UsableMM3S: usable} }
	within := func(usable, least, most float64) Series {
		return Series{UsableMM3S: usable, LeastMM3S: least, MostMM3S: most, Repeated: true}
	}
	for _, c := range []struct {
		name   string
		series []Series
		want   Cause
	}{
		{"a tenth", heat(flow(8), flow(9)), Melting},
		{"less than a tenth", heat(flow(8), flow(8.99)), Untold},
		{"a tenth, and the ranges meet", heat(within(8, 7, 8.5), within(9, 8.5, 10)), Untold},
		{"a tenth, and the ranges are apart", heat(within(8, 7, 8.4), within(9, 8.5, 10)), Melting},
		{"a twentieth", heat(flow(16), flow(17)), Grip},
		{"more than a twentieth", heat(flow(16), flow(17.1)), Untold},
		{"a twentieth, it may be a fifth", heat(within(16, 16, 16), within(17, 16, 20)), Untold},
		{"a twentieth, hardly a fifth", heat(within(16, 16, 16), within(17, 16, 19.9)), Grip},
		{"a twentieth at least", heat(flow(16), Series{UsableMM3S: 17, Open: true}), Untold},
	} {
		e := Extruder{Series: c.series}
		e.heated(0, 1)
		if len(e.Heated) != 1 || e.Heated[0].Cause != c.want || e.Series[0].Cause != c.want {
			t.Errorf("%s: %+v", c.name, e.Heated)
		}
	}
	for apartK, want := range map[float64]int{9.9: 0, 10: 1} {
		e := Extruder{Series: []Series{flow(8), flow(9)}}
		e.Series[0].TempC, e.Series[1].TempC = 200, 200+apartK
		if e.heated(0, 1); len(e.Heated) != want {
			t.Errorf("%g K apart: %+v", apartK, e.Heated)
		}
	}
}

// Usable flows that differ by a tenth are not spoken of, and the first of equal
// ones limits.
func TestCompareSeries(t *testing.T) {
	for _, c := range []struct {
		flows    []float64
		limiting int
		differ   []Difference
	}{
		{[]float64{9, 10}, 0, nil},
		{[]float64{10, 9}, 1, nil},
		{[]float64{8.9, 10}, 0, []Difference{{0, 1}}},
		{[]float64{10, 8.9}, 1, []Difference{{1, 0}}},
		{[]float64{10, 10}, 0, nil},
	} {
		var e Extruder
		for i, f := range c.flows {
			e.Series = append(e.Series, Series{Setup: Setup{Filament: string(rune('a' + i))}, UsableMM3S: f})
		}
		e.compare()
		if e.Limiting != c.limiting || e.MaxFlowMM3S != c.flows[c.limiting] ||
			!slices.Equal(e.Differ, c.differ) {
			t.Errorf("%v: %d limits at %g, differ %v", c.flows, e.Limiting, e.MaxFlowMM3S, e.Differ)
		}
	}
}
