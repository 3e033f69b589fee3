package measure

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"preflash/cmd/internal/testfiles"
	"preflash/parser"
	"preflash/parser/record"
	"preflash/parser/sheet"
	"preflash/rules/heat"
	"preflash/rules/melt"
	"preflash/rules/sensor"
)

// fittedLog is a cartridge's run, simulated, and its fit.
func fittedLog(t *testing.T) HeatFit {
	t.Helper()
	p := heat.Plant{
		Heater: heat.Heater{RatedV: 24, RatedW: 40, SupplyV: 24, DutyLimit: 1},
		Block:  heat.Block{CapacityJPerK: 14, LossWPerK: 0.07, LossFanWPerK: 0.098, LagS: 3.5, AmbientC: 22},
	}
	var text strings.Builder
	text.WriteString("time_s,temp_c,duty,fan\n")
	s := p.Ambient()
	for i := range 400 {
		duty, fan := 1.0, 0.0
		if i >= 120 {
			duty, fan = 0, float64(i/270)
		}
		fmt.Fprintf(&text, "%d,%.1f,%g,%g\n", i, s.Sensor, duty, fan)
		s = p.Advance(s, duty, heat.Load{Fan: fan}, 1)
	}
	h := HeatFit{Heater: p.Heater, HeaterFrom: "as the flags say"}
	var err error
	file := parser.NewFile("log\x1b[31m.csv", []byte(text.String()))
	if h.Log, err = record.ReadHeat(file, 0, 0); err != nil {
		t.Fatal(err)
	}
	var log []heat.Reading
	for _, r := range h.Log.Rows {
		in := heat.Input{TimeS: r.TimeS, Duty: r.Duty, Fan: r.Fan}
		log = append(log, heat.Reading{Input: in, TempC: r.TempC})
	}
	if h.Fit, err = heat.FitRun(p.Heater, heat.Estimate{Value: 22}, log); err != nil {
		t.Fatal(err)
	}
	return h
}

// What is printed must paste into a sheet as it is, comments included, and
// read back as what was fitted.
func TestHeatTextPastesIntoASheet(t *testing.T) {
	var text strings.Builder
	if err := HeatText(&text, fittedLog(t)); err != nil {
		t.Fatal(err)
	}
	tree, err := parser.OpenTree(t.TempDir())
	if err != nil {
		t.Fatal(err)
	}
	defer tree.Close()
	tree = tree.With(map[string][]byte{tree.Shown("swap.toml"): []byte(testfiles.Sheet + text.String())})
	s, err := sheet.Read(tree, "swap.toml")
	if err != nil {
		t.Fatalf("%v\n%s", err, &text)
	}
	for _, c := range []struct {
		key  sheet.Key[float64]
		want float64
	}{
		{s.New.Block.HeatCapacityJPerK, 14}, {s.New.Block.LossWPerK, 0.07}, {s.New.Block.LossFanWPerK, 0.098},
		{s.New.Block.SensorLagS, 3.5},
	} {
		if !c.key.Given || math.Abs(c.key.Value-c.want) > 0.01*c.want {
			t.Errorf("%s is %g, want %g\n%s", c.key.Path, c.key.Value, c.want, &text)
		}
	}
}

// A file, filament or extruder may be called anything; no control character
// may reach a terminal or a program raw.
func TestMeasuredNamesAreShownHarmlessly(t *testing.T) {
	const evil = "pla\x1b[31m\u202e"
	trials := []melt.Trial{
		{FlowMM3S: 5, CommandedMM: 1000, MassG: 3, DensityGCM3: 1.24,
			Setup: melt.Setup{Filament: evil, Extruder: evil}},
		{FlowMM3S: 10, CommandedMM: 1000, MassG: 2.7, DensityGCM3: 1.24,
			Setup: melt.Setup{Filament: evil, Extruder: evil}},
	}
	all, err := melt.Judge(trials, melt.Options{FilamentMM: 1.75, Loss: 0.05})
	if err != nil {
		t.Fatal(err)
	}
	flow := FlowTrials{File: evil, FilamentMM: 1.75, Loss: 0.05, DensityGCM3: 1.24, Extruders: all}
	ranking, err := sensor.Rank([]parser.SensorPoint{{TempC: 25, Ohm: 100e3}, {TempC: 200, Ohm: 600}},
		sensor.UsualThermometer, 260)
	if err != nil {
		t.Fatal(err)
	}
	rank := SensorRank{File: evil, Used: evil, PullupOhm: 4700, Ranking: ranking, Lines: []int{2, 3}}
	fit := fittedLog(t)
	for name, render := range map[string]func(*strings.Builder) error{
		"flow text": func(b *strings.Builder) error { return FlowText(b, flow) },
		"flow json": func(b *strings.Builder) error { return FlowJSON(b, flow) },
		"rank text": func(b *strings.Builder) error { return RankText(b, rank) },
		"rank json": func(b *strings.Builder) error { return RankJSON(b, rank) },
		"heat text": func(b *strings.Builder) error { return HeatText(b, fit) },
		"heat json": func(b *strings.Builder) error { return HeatJSON(b, fit) },
	} {
		t.Run(name, func(t *testing.T) {
			var b strings.Builder
			if err := render(&b); err != nil {
				t.Fatal(err)
			}
			for _, r := range b.String() {
				if r != '\n' && parser.Hidden(r) {
					t.Fatalf("%q is printed raw:\n%q", r, b.String())
				}
			}
			if strings.HasSuffix(name, "json") && !json.Valid([]byte(b.String())) {
				t.Errorf("no valid JSON:\n%s", b.String())
			}
			if !strings.Contains(strings.ToLower(b.String()), "1b") {
				t.Errorf("the name is not shown at all:\n%s", b.String())
			}
		})
	}
}

// A figure is written to the digits that its uncertainty leaves.
func TestEstimateText(t *testing.T) {
	for _, c := range []struct {
		value, stdErr float64
		text, spread  string
	}{
		{16.70636, 0.0062592, "16.71", "0.02"},
		{0.0679722, 3.3946e-05, "0.06797", "0.00009"},
		{4.442568, 0.042984, "4.44", "0.11"},
		{4.442568, 0.42984, "4.44", "1.08"},
		{23.4, 2.6, "23.4", "6.5"},
		{0.08, 0.05, "0.08", "0.125"},
		{142.4, 31, "142", "78"},
		{12, 0, "12", "0.01"},
	} {
		value, spread := estimateText(heat.Estimate{Value: c.value, StdErr: c.stdErr})
		if value != c.text || spread != c.spread {
			t.Errorf("%g with a standard error of %g is written %s ± %s, want %s ± %s", c.value, c.stdErr,
				value, spread, c.text, c.spread)
		}
	}
}

// What a log leaves open must be said, and nothing of one that tells all.
func TestHeatDoubts(t *testing.T) {
	good := fittedLog(t)
	if list := good.doubts(); len(list) != 0 {
		t.Errorf("a full log is doubted: %q", list)
	}
	for _, c := range []struct {
		name, says string
		spoil      func(h *HeatFit)
	}{
		{"no fan column", "loss_fan_w_per_k: there is no fan column",
			func(h *HeatFit) { h.Fit.Fitted &^= heat.LossFan; h.Log.HasFan = false }},
		{"fan never on", "loss_fan_w_per_k: the part fan never runs",
			func(h *HeatFit) { h.Fit.Fitted &^= heat.LossFan }},
		{"fan always on", "loss_w_per_k: the part fan runs full throughout",
			func(h *HeatFit) { h.Fit.Fitted &^= heat.Loss }},
		{"fan at a half", "either loss: the part fan stands at 50 %",
			func(h *HeatFit) { h.Fit.Fitted, h.Fit.PartFan = heat.Capacity|heat.Lag, 0.5 }},
		{"fan not full", "loss_fan_w_per_k above 60 % of the fan", func(h *HeatFit) {
			for i := range h.Log.Rows {
				h.Log.Rows[i].Fan *= 0.6
			}
		}},
		{"weak loss", "loss_w_per_k: it comes out as 0.07 ± 0.075; record longer, with a cool-down",
			func(h *HeatFit) { h.Fit.Loss = heat.Estimate{Value: 0.07, StdErr: 0.03} }},
		{"no cool-down", "there is no cool-down", func(h *HeatFit) { h.Fit.Run.CoolS = 3 }},
		{"ends low", "the log ends at 120 °C", func(h *HeatFit) { h.Fit.Run.HighC = 120 }},
		{"few rows", "a lag much shorter than 5 s", func(h *HeatFit) { h.Fit.Run.SpacingS = 5 }},
		{"gap", "what went on from 99 s to 100 s (lines 101 and 102): nothing was recorded; " +
			"the fit begins afresh", func(h *HeatFit) { h.Fit.Run.Gaps = []int{100} }},
		{"no hotend", "heat capacity or losses are far from what hotends have",
			func(h *HeatFit) { h.Fit.Capacity = heat.Estimate{Value: 3, StdErr: 0.01} }},
		{"another room", "a room of 22 °C: it goes better with 35 °C", func(h *HeatFit) {
			h.Fit.Given.StdErr, h.Fit.Ambient.Value = 2, 35
		}},
		{"bad fit", "residuals of 4 K", func(h *HeatFit) { h.Fit.RMSK = 4 }},
		{"bends otherwise", "the residuals run together", func(h *HeatFit) { h.Fit.Correlation = 0.9 }},
		{"ptc without its power at heat", "no hot_w says how its power falls",
			func(h *HeatFit) { h.FlatPTC = true }},
	} {
		t.Run(c.name, func(t *testing.T) {
			h, fit, log := good, *good.Fit, *good.Log
			log.Rows = slices.Clone(log.Rows)
			h.Fit, h.Log = &fit, &log
			c.spoil(&h)
			if list := h.doubts(); len(list) != 1 || !strings.Contains(list[0], c.says) {
				t.Errorf("said %q, want %q alone", list, c.says)
			}
		})
	}
}
