package rules

import (
	"slices"
	"testing"

	"preflash/parser"
	"preflash/rules/heat"
)

// worked is the sheet of DESIGN section 4, printing up to topC: a PTC ring on
// a short melt zone.
func worked(topC float64) *Input {
	in := healthyInput()
	ptc(in.Sheet)
	in.Sheet.New.PrintC.Value[1] = topC
	in.Sheet.New.Nozzle.MaxFlowMM3S = given("new.nozzle.max_flow_mm3_s", 18.0)
	return in
}

// assumeBlock takes the block's figures out of the sheet; the defaults are
// those of the worked example.
func assumeBlock(in *Input) {
	b := &in.Sheet.New.Block
	b.HeatCapacityJPerK.Given, b.LossWPerK.Given, b.LossFanWPerK.Given, b.SensorLagS.Given = false, false,
		false, false
}

// sumHotend gives the printer a watch that adds up errors, at its defaults.
func sumHotend(in *Input) {
	w := sumWatch()
	in.Printer.Hotend.Watch = w
}

func TestPlantOf(t *testing.T) {
	in := worked(270)
	in.Sheet.New.Heater.DutyLimit.Value = 0.9
	in.Printer.Hotend.Loop.PowerLimits[1].Value = 0.8
	p, assumed := plantOf(in)
	if p.Power(270) < 24.39 || p.Power(270) > 24.41 || p.DutyLimit != 0.8 || p.AmbientC != 22 ||
		assumed != 0 {
		t.Errorf("%+v, assumed %b", p, assumed)
	}
	assumeBlock(in)
	if _, assumed = plantOf(in); assumed != heat.AllFigures {
		t.Errorf("assumed %b", assumed)
	}
}

func TestLoopOf(t *testing.T) {
	in := healthyInput()
	want := heat.Loop{Kp: 21.7, Ki: 1.4, Kd: 84, BandC: 2, RangeC: 10, FilterOld: 0.95, SmoothS: 1, Limit: 1,
		FarLimit: 1}
	if got := loopOf(in, parser.LoopVariant{}); got != want {
		t.Errorf("got %+v, want %+v", got, want)
	}
	l := &in.Printer.Hotend.Loop
	l.Form, l.Control.Value, l.SmoothS = parser.LoopClamped, parser.ControlOnOff,
		set(parser.DerivativeTime, 2.0)
	want.Form, want.OnOff, want.SmoothS = heat.LoopClamped, true, 2
	if got := loopOf(in, parser.LoopVariant{}); got != want {
		t.Errorf("got %+v, want %+v", got, want)
	}
}

// Generations differ in the limit below the range; the sheet's limit, which is
// not yet configured, makes a case of its own.
func TestLoopsOf(t *testing.T) {
	in := healthyInput()
	l := &in.Printer.Hotend.Loop
	l.PowerLimits = []parser.Setting[float64]{set(parser.PowerLimit("in range"), 0.5),
		set(parser.PowerBelowRange, 0.9)}
	l.Variants = []parser.LoopVariant{
		{Name: "older", OwnFar: true, SamplesS: []float64{0.16, 0.08}},
		{Name: "newer", KeepsLast: true, SamplesS: []float64{0.01}},
	}
	in.Sheet.New.Heater.DutyLimit.Value = 0.7
	type short struct {
		variant            int
		sample, limit, far float64
		keeps              bool
	}
	var got []short
	for _, c := range loopsOf(in) {
		got = append(got, short{c.variant, c.SampleS, c.Limit, c.FarLimit, c.KeepsLast})
	}
	want := []short{
		{0, 0.16, 0.5, 0.9, false}, {0, 0.16, 0.5, 0.7, false},
		{0, 0.08, 0.5, 0.9, false}, {0, 0.08, 0.5, 0.7, false},
		{1, 0.01, 0.5, 0.5, true},
	}
	if !slices.Equal(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
}

func TestWatchOf(t *testing.T) {
	in := healthyInput()
	want := heat.Watch{Form: heat.WindowWatch,
		Heating: heat.HeatingCheck{RiseC: 2, WindowS: 20, MarginC: 3},
		Drop:    heat.DropCheck{HysteresisC: 4, PeriodS: 40}}
	if got, missing := watchOf(in); got != want || missing != nil {
		t.Errorf("got %+v, missing %v", got, missing)
	}
	in.Printer.Hotend.Watch.RiseOn.Value = false
	want.Heating = heat.HeatingCheck{}
	if got, _ := watchOf(in); got != want {
		t.Errorf("heating check off: %+v", got)
	}
	sumHotend(in)
	want = heat.Watch{Form: heat.ErrorSumWatch,
		Sum: heat.SumWatch{HysteresisC: 5, RiseC: 2, WindowS: 20, LimitCS: 120, SmoothS: 1}}
	if got, _ := watchOf(in); got != want {
		t.Errorf("sum: %+v", got)
	}
	in.Printer.Hotend.Watch.ErrorSumCS = unknown[float64](parser.HotendErrorSum)
	if _, missing := watchOf(in); missing == nil || missing.Key != parser.HotendErrorSum {
		t.Errorf("missing %v", missing)
	}
	in.Printer.Hotend.Watch.On.Value = false
	if got, missing := watchOf(in); got.Form != heat.NoWatch || missing != nil {
		t.Errorf("off: %+v, %v", got, missing)
	}
}

// BenchmarkHeatRules is a printer that every heat rule speaks about; the memo
// holds its plant from the second time on, as it does in a fleet.
func BenchmarkHeatRules(b *testing.B) {
	in := worked(270)
	assumeBlock(in)
	b.ReportAllocs()
	for b.Loop() {
		for _, r := range []*Rule{heaterHeadroom, heaterStuckOn, runawayTight, flowLimit} {
			r.Check(in, func(Finding) {})
		}
	}
}

// A figure of the watch that is unknown leaves it unknown.
func TestWatchUnknown(t *testing.T) {
	in := healthyInput()
	if w, ok := Watch(in); !ok || w.Heating.WindowS != 20 {
		t.Errorf("%+v, %v", w, ok)
	}
	in.Printer.Hotend.Watch.RiseWindowS = unknown[float64](parser.HotendRiseWindow)
	if w, ok := Watch(in); ok {
		t.Errorf("%+v", w)
	}
}
