package patch

import (
	"errors"
	"maps"
	"slices"
	"strings"
	"testing"
	"time"

	"preflash/parser"
	"preflash/parser/sections"
	"preflash/parser/sheet"
	"preflash/rules"
)

// Each guard of the proof has a case here in which it speaks, and it alone.

const heldSheet = `format = 1
[printer]
name = "egret-92"
config = ["printer.cfg"]
supply_v = 24
[new]
rated_c = 300
print_c = [190, 250]
[new.sensor]
kind = "ntc"
curve = "ntc-100k-3950"
[new.heater]
kind = "cartridge"
rated_v = 24
rated_w = 40
`

const heldConfig = `[extruder]
sensor_type: Generic 3950
min_temp: 0
max_temp: 290
control: pid
pid_kp: 20
pid_ki: 1
pid_kd: 80
nozzle_diameter: 0.4
filament_diameter: 1.75
[heater_generic chamber]
sensor_type: Generic 3950
min_temp: 0
max_temp: 80
control: watermark
`

// altered is a configuration of which another reading says something else.
type altered struct {
	parser.Config
	heaters []parser.Heater
	options []parser.Entry
}

func (a *altered) Others() []parser.Heater { return a.heaters }
func (a *altered) Entries() []parser.Entry { return a.options }

// reading reads heldConfig.
func reading(t *testing.T) (*Source, *altered) {
	t.Helper()
	tree, err := parser.OpenTree(t.TempDir())
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { tree.Close() })
	text := map[string][]byte{tree.Shown("printer.cfg"): []byte(heldConfig), tree.Shown("swap.toml"): []byte(heldSheet)}
	tree = tree.With(text)
	s := &Source{Owner: "swap.toml", Tree: tree, Style: sections.Style, Request: parser.Request{Files: []string{"printer.cfg"}},
		Today: time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC)}
	if s.Sheet, err = sheet.Read(tree, "swap.toml"); err != nil {
		t.Fatal(err)
	}
	if err := s.Read(); err != nil {
		t.Fatal(err)
	}
	return s, &altered{s.Config, s.Config.Others(), s.Config.Entries()}
}

// alter makes a trial whose configuration was altered by the changes.
func alter(t *testing.T, before, after func(*altered)) (*group, *trial) {
	t.Helper()
	var states [2]*checkedConfig
	var source *Source
	for i, change := range []func(*altered){before, after} {
		s, c := reading(t)
		if change != nil {
			change(c)
		}
		source, states[i] = s, s.checked(c, nil)
	}
	one := &trial{Source: source, before: states[0], now: states[1], askedBy: make(map[parser.Key][]string)}
	return &group{counts: func(string) bool { return true }, leftOut: make(map[claim]error), plan: &Plan{after: make(map[string]*rules.Input)}, trials: []*trial{one}}, one
}

// expect holds an error to its lines.
func expect(t *testing.T, err error, want string) {
	t.Helper()
	got := ""
	if err != nil {
		got = err.Error()
	}
	if got != want {
		t.Errorf("the guard says %q, want %q", got, want)
	}
}

func finding(rule, about string, level rules.Level, figure float64) rules.Finding {
	return rules.Finding{Rule: rule, About: about, Level: level, Message: "so it is", Figure: rules.Figure{Value: figure, Unit: "K", Worse: rules.Higher}}
}

func TestCompareFindings(t *testing.T) {
	const e, w, n = rules.Error, rules.Warning, rules.Note
	asks := finding("temp-ceiling", "", n, 0)
	asks.Changes = []parser.Change{{Key: parser.MaxTemp, Value: 1.0}}
	partial := finding("temp-reach", "", w, 1)
	partial.Partial = true
	plain := rules.Finding{Rule: "sensor-fault", Level: e, Message: "so it is"}
	tests := []struct {
		name          string
		before, after []rules.Finding
		mended        []rules.Finding
		want          string
	}{
		{name: "nothing"},
		{"still speaks, as was said", []rules.Finding{finding("temp-reach", "", w, 1)}, []rules.Finding{finding("temp-reach", "", w, 1)}, []rules.Finding{partial}, ""},
		{"still speaks and was left out", nil, []rules.Finding{finding("pid-stale", "barred", w, 1)}, []rules.Finding{finding("pid-stale", "barred", e, 1)}, ""},
		{"mended", []rules.Finding{finding("temp-ceiling", "", e, 1)}, nil, []rules.Finding{finding("temp-ceiling", "", e, 1)}, ""},
		{"still speaks", []rules.Finding{finding("temp-reach", "", w, 1)}, []rules.Finding{finding("temp-reach", "", w, 1)}, []rules.Finding{finding("temp-reach", "", w, 1)},
			"temp-reach still speaks after the change that should have silenced it: so it is"},
		{"leaves a note", nil, []rules.Finding{finding("temp-ceiling", "", n, 1)}, []rules.Finding{finding("temp-ceiling", "", e, 1)}, ""},
		{"leaves a note that asks", nil, []rules.Finding{asks}, []rules.Finding{finding("temp-ceiling", "", e, 1)},
			"temp-ceiling still speaks after the change that should have silenced it: so it is"},
		{"speaks of something else", []rules.Finding{finding("preset-over", "preset 2", w, 1)}, []rules.Finding{finding("preset-over", "preset 2", w, 1)},
			[]rules.Finding{finding("preset-over", "preset 1", w, 1)}, ""},
		{"a new error", nil, []rules.Finding{finding("temp-ceiling", "", e, 1)}, nil, "the changes would bring up a new error, temp-ceiling: so it is"},
		{"a new error of a rule that speaks of something else", []rules.Finding{finding("preset-over", "preset 1", e, 1)}, []rules.Finding{finding("preset-over", "preset 2", e, 1)}, nil,
			"the changes would bring up a new error, preset-over: so it is"},
		{"a new error of a rule left out", nil, []rules.Finding{finding("min-temp-high", "", e, 1)}, nil,
			"the changes would bring up a new error, min-temp-high: so it is (--only or --except leaves this rule out; with it, its change would be made too)"},
		{"a new warning", nil, []rules.Finding{finding("temp-ceiling", "", w, 1)}, nil, ""},
		{"an error that stays", []rules.Finding{finding("temp-ceiling", "", e, 2)}, []rules.Finding{finding("temp-ceiling", "", e, 2)}, nil, ""},
		{"fewer errors, one of them worse", []rules.Finding{finding("temp-ceiling", "", e, 2), finding("temp-ceiling", "", e, 1)}, []rules.Finding{finding("temp-ceiling", "", e, 3)}, nil,
			"the changes would make temp-ceiling worse, 3 K instead of 2: so it is"},
		{"an error beside a warning with a worse figure", []rules.Finding{finding("temp-ceiling", "", e, 2), finding("temp-ceiling", "", w, 5)}, []rules.Finding{finding("temp-ceiling", "", e, 3)}, nil,
			"the changes would make temp-ceiling worse, 3 K instead of 2: so it is"},
		{"more errors, none of them worse", []rules.Finding{finding("temp-ceiling", "", e, 2)}, []rules.Finding{finding("temp-ceiling", "", e, 2), finding("temp-ceiling", "", e, 1)}, nil, ""},
		{"an error without a figure that stays", []rules.Finding{plain}, []rules.Finding{plain}, nil, ""},
		{"a warning that became an error", []rules.Finding{finding("temp-ceiling", "", w, 2)}, []rules.Finding{finding("temp-ceiling", "", e, 2)}, nil,
			"the changes would make an error of a warning, temp-ceiling: so it is"},
		{"gains that meet a lower limit", []rules.Finding{finding("pid-stale", "", w, 2)}, []rules.Finding{finding("pid-stale", "", e, 2)}, nil, ""},
		{"gains that got worse", []rules.Finding{finding("pid-stale", "", e, 2)}, []rules.Finding{finding("pid-stale", "", e, 3)}, nil,
			"the changes would make pid-stale worse, 3 K instead of 2: so it is"},
		{"hidden by a cause that is gone", []rules.Finding{finding("runaway-off", "", e, 0)}, []rules.Finding{finding("runaway-loose", "", e, 2)}, nil, ""},
		{"hidden by a cause that is not gone", []rules.Finding{finding("runaway-off", "", e, 0)}, []rules.Finding{finding("runaway-off", "", e, 0), finding("runaway-loose", "", e, 2)}, nil,
			"the changes would bring up a new error, runaway-loose: so it is"},
		{"a cause that hides something else", []rules.Finding{finding("runaway-off", "", e, 0)}, []rules.Finding{finding("temp-ceiling", "", e, 2)}, nil,
			"the changes would bring up a new error, temp-ceiling: so it is"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			g, trial := alter(t, nil, nil)
			g.counts = func(rule string) bool { return rule != "min-temp-high" }
			g.leftOut[claim{trial.Owner, "pid-stale", "barred"}] = errors.New("so it is")
			trial.before.findings, trial.now.findings = tt.before, tt.after
			for _, f := range tt.mended {
				g.plan.Reasons = append(g.plan.Reasons, Reason{Owner: trial.Owner, Finding: f})
			}
			for _, f := range tt.after { // another printer's change is none of this one's
				g.plan.Reasons = append(g.plan.Reasons, Reason{Owner: "another.toml", Finding: f})
			}
			expect(t, g.compareFindings(trial), tt.want)
			if worse := len(g.plan.Worse) > 0; worse != (tt.name == "gains that meet a lower limit" || tt.name == "hidden by a cause that is gone") {
				t.Errorf("said to be worse: %v", g.plan.Worse)
			}
		})
	}
}

func TestCompareTemperature(t *testing.T) {
	printer := func(change func(*parser.Printer)) func(*altered) {
		return func(a *altered) { change(a.Printer()) }
	}
	sensor := func(def parser.SensorDef, maxC float64) func(*altered) {
		return printer(func(p *parser.Printer) { p.Hotend.Sensor.Value, p.Limits.MaxTemp.Value = def, maxC })
	}
	curve := func(name string) parser.SensorDef {
		return parser.SensorDef{Form: parser.FormCurve, Kind: parser.NTC, Curve: name, PullupOhm: 4700}
	}
	right := curve("ntc-100k-3950")
	colder := parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, R25Ohm: 100e3, BetaK: 3950, PullupOhm: 4700}
	hotter := parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, R25Ohm: 100e3, BetaK: 4500, PullupOhm: 4700}
	chip := parser.SensorDef{Form: parser.FormAmplifier, Kind: parser.Thermocouple}
	tests := []struct {
		name          string
		before, after func(*altered)
		want          string
	}{
		{"a limit that rises to the rating", sensor(right, 260), sensor(right, 300), ""},
		{"a limit that rises above the rating", sensor(right, 260), sensor(right, 303),
			"the hotend would be at 303 °C at the highest target instead of 260 °C, and the hotend is rated for 300 °C"},
		{"a limit that falls and is still above", sensor(right, 330), sensor(right, 320), ""},
		{"a wrong reading, below the rating", sensor(colder, 280), sensor(colder, 290), ""},
		{"a definition that reads hotter than it is", sensor(hotter, 280), sensor(right, 280), ""},
		{"a chip that is not there", sensor(right, 280), sensor(chip, 270),
			"nothing would say any more how hot the hotend is at the highest target, and the hotend is rated for 300 °C"},
		{"a chip all the time", sensor(chip, 280), sensor(chip, 270), ""},
		{"a chip all the time, and nothing else", sensor(chip, 270), sensor(chip, 270), ""},
		{"a chip all the time, and what rounding does", sensor(chip, 270), sensor(chip, 270.5), ""},
		{"a chip all the time, and a limit that rises", sensor(chip, 240), sensor(chip, 250),
			"the highest target would rise from 240 °C to 250 °C while nothing says how hot the hotend is then, and the hotend is rated for 300 °C"},
		{"a chip that goes", sensor(chip, 320), sensor(right, 320), ""},
		{"a chip that goes, and a limit that rises", sensor(chip, 280), sensor(right, 320),
			"the highest target would rise from 280 °C to 320 °C, where the hotend is at 320 °C, and the hotend is rated for 300 °C"},
		{"a chip that goes, and a limit that rises within the rating", sensor(chip, 280), sensor(right, 300), ""},
		{"no limit any more", nil, printer(func(p *parser.Printer) { p.Limits.MaxTemp.State = parser.Unknown }),
			"the highest target could no longer be told"},
		{"a limit that could not be told", printer(func(p *parser.Printer) { p.Limits.MaxTemp.State = parser.Unknown }), nil, ""},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			g, trial := alter(t, tt.before, tt.after)
			expect(t, g.compareTemperature(trial), tt.want)
		})
	}
	// A wrong reading that would be hotter than it shows.
	g, trial := alter(t, sensor(hotter, 270), sensor(hotter, 290))
	if is, _ := rules.ActualAtHighestTarget(trial.now.input); is < 303 {
		t.Fatalf("290 °C shown is %.1f °C: the case is no case", is)
	}
	if err := g.compareTemperature(trial); err == nil || !strings.Contains(err.Error(), "rated for 300 °C") {
		t.Errorf("the guard says %v", err)
	}
}

func TestCompareSettings(t *testing.T) {
	on := func(change func(*parser.Printer)) func(*altered) {
		return func(a *altered) { change(a.Printer()) }
	}
	type asked map[parser.Key][]string
	tests := []struct {
		name   string
		change func(*altered)
		asked  asked
		want   string
		moves  int
	}{
		{name: "nothing"},
		{"turns off", on(func(p *parser.Printer) { p.Hotend.Watch.On.State = parser.Off }), asked{parser.HotendWatchOn: {"runaway-tight"}}, "the hotend runaway protection would turn off", 0},
		{"turns off by its value", on(func(p *parser.Printer) { p.Hotend.Watch.On.Value = false }), asked{parser.HotendWatchOn: {"runaway-tight"}}, "the hotend runaway protection would turn off", 0},
		{"a limit turns off", on(func(p *parser.Printer) { p.Limits.MaxTemp.State, p.Limits.MaxTemp.Value = parser.Off, 0 }),
			asked{parser.MaxTemp: {"temp-ceiling"}}, "the max temp would turn off", 0},
		{"becomes unknown", on(func(p *parser.Printer) { p.Flow.NozzleMM.State, p.Flow.NozzleMM.Why = parser.Unknown, "it hangs" }), asked{parser.NozzleDiameter: {"nozzle-size"}}, "the nozzle diameter would become unknown: it hangs", 0},
		{"changes unasked", on(func(p *parser.Printer) { p.Hotend.Loop.Kp.Value = 21 }), asked{parser.GainI: {"pid-stale"}}, "the kp would change although no rule asked for it", 0},
		{"changes unasked to what protects more, elsewhere", on(func(p *parser.Printer) { p.Limits.MaxTemp.Value, p.Limits.MaxTemp.At = 280, parser.Span{} }),
			nil, "the max temp would change although no rule asked for it", 0},
		{"follows by a formula to what protects more", on(func(p *parser.Printer) { p.Limits.MaxTemp.Value = 280 }), nil, "", 0},
		{"follows by a formula to what protects less", on(func(p *parser.Printer) { p.Limits.MaxTemp.Value = 295 }), nil, "the max temp would protect less: 295 °C instead of 290 °C", 0},
		{"follows by a formula to what protects less, for what may ask for that", on(func(p *parser.Printer) { p.Limits.MaxTemp.Value = 300 }),
			asked{parser.Margin: {"temp-reach"}}, "", 1},
		{"follows by a formula to what protects less, for what may not", on(func(p *parser.Printer) { p.Limits.MaxTemp.Value = 300 }),
			asked{parser.Margin: {"temp-ceiling"}}, "the max temp would protect less: 300 °C instead of 290 °C", 0},
		{"follows by a formula what was itself loosened", on(func(p *parser.Printer) {
			p.Hotend.Watch.RiseWindowS.Value, p.Hotend.Watch.RiseWindowS.State = 90, parser.Set
		}),
			asked{parser.HotendErrorSum: {"runaway-tight"}}, "the hotend heating check window would protect less: 90 s instead of 20 s", 0},
		{"follows by a formula to a limit that is none", on(func(p *parser.Printer) { p.Limits.MaxTemp.Value, p.Limits.MaxTemp.State = 280, parser.Default }),
			nil, "the max temp would change although no rule asked for it", 0},
		{"changes a default unasked", on(func(p *parser.Printer) { p.Limits.MinExtrude.Value = 200 }), nil, "the min extrude temp would change although no rule asked for it", 0},
		{"changes with its switch", on(func(p *parser.Printer) { p.Limits.MinExtrude.Value = 200 }), asked{parser.ColdGuard: {"cold-extrusion"}}, "", 0},
		{"changes where it stands, with its switch", on(func(p *parser.Printer) {
			f := p.Files[0]
			p.Limits.MinExtrude.Value, p.Limits.MinExtrude.At = 200, parser.Span{File: f, Start: 0, End: 1}
		}), asked{parser.ColdGuard: {"cold-extrusion"}}, "", 0},
		{"protects less", on(func(p *parser.Printer) { p.Limits.MaxTemp.Value = 300 }), asked{parser.MaxTemp: {"temp-ceiling"}}, "the max temp would protect less: 300 °C instead of 290 °C", 0},
		{"protects less, as is its right", on(func(p *parser.Printer) { p.Limits.MaxTemp.Value = 300 }), asked{parser.MaxTemp: {"temp-reach", "temp-ceiling"}}, "", 1},
		{"protects more", on(func(p *parser.Printer) { p.Limits.MaxTemp.Value = 280 }), asked{parser.MaxTemp: {"temp-ceiling"}}, "", 0},
		{"demands less of a watch", on(func(p *parser.Printer) { p.Hotend.Watch.RiseC.Value = 1 }), asked{parser.HotendRise: {"runaway-loose"}}, "the hotend required rise would protect less: 1 K instead of 2 K", 0},
		{"turns on unasked", on(func(p *parser.Printer) { p.Storage.On.State, p.Storage.On.Value = parser.Set, true }), nil, "", 0},
		{"is lost", on(func(p *parser.Printer) { p.Flow.NozzleMM = parser.Setting[float64]{} }), asked{parser.NozzleDiameter: {"nozzle-size"}}, "the nozzle diameter would be lost", 0},
		{"comes into force", on(func(p *parser.Printer) {
			p.Limits.Graces = append(p.Limits.Graces, parser.Setting[float64]{Key: parser.Grace("anyhow"), State: parser.Set, Value: 9})
		}), nil, "the grace time anyhow would come into force although no rule asked for it", 0},
		{"comes into force, asked for", on(func(p *parser.Printer) {
			p.Limits.Graces = append(p.Limits.Graces, parser.Setting[float64]{Key: parser.Grace("anyhow"), State: parser.Set, Value: 9})
		}), asked{parser.Grace("anyhow"): {"runaway-loose"}}, "", 0},
		{"comes into force without a safer way", on(func(p *parser.Printer) {
			p.Flow.CarriedOver = append(p.Flow.CarriedOver, parser.Setting[float64]{Key: parser.Carried("load length"), State: parser.Set, Value: 9})
		}), nil, "", 0},
	}
	asides := map[string]string{
		"follows by a formula to what protects more":                            "the max temp would be 280 °C instead of 290 °C",
		"follows by a formula to what protects less":                            "the max temp would be 295 °C instead of 290 °C",
		"follows by a formula to what protects less, for what may ask for that": "the max temp would be 300 °C instead of 290 °C",
		"follows by a formula to what protects less, for what may not":          "the max temp would be 300 °C instead of 290 °C",
		"follows by a formula what was itself loosened":                         "the hotend heating check window would be 90 s instead of 20 s",
		"changes where it stands, with its switch":                              "the min extrude temp would be 200 °C instead of 170 °C",
		"turns on unasked":                     "the stored settings would be on instead of off",
		"comes into force without a safer way": "the load length, 9, would come into force",
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			g, trial := alter(t, nil, tt.change)
			for key, by := range tt.asked {
				trial.askedBy[key] = by
			}
			expect(t, g.compareSettings(trial, g.editedLines()), tt.want)
			said := ""
			for _, a := range g.plan.Asides {
				said += a.Text
			}
			if want := asides[tt.name]; said != want {
				t.Errorf("said aside: %q, want %q", said, want)
			}
			if len(g.plan.Moves) != tt.moves {
				t.Errorf("moves are %v, want %d", g.plan.Moves, tt.moves)
			}
			if tt.moves > 0 {
				if m := g.plan.Moves[0]; m.Was.Value != 290.0 || m.Is.Value != 300.0 || !slices.Equal(m.Rules, []string{"temp-reach"}) {
					t.Errorf("the move is %+v", m)
				}
			}
		})
	}
}

func TestCompareHeaters(t *testing.T) {
	chamber := func(change func(*parser.Heater)) func(*altered) {
		return func(a *altered) { change(&a.heaters[0]) }
	}
	figure := func(h *parser.Heater, key parser.Key) *parser.Description {
		return &h.Settings[slices.IndexFunc(h.Settings, func(d parser.Description) bool { return d.Key == key })]
	}
	tests := []struct {
		name   string
		change func(*altered)
		want   string
	}{
		{"nothing", nil, ""},
		{"another limit", chamber(func(h *parser.Heater) { figure(h, parser.MaxTemp).Value = 90.0 }),
			"the max temp of [heater_generic chamber] would change although no rule asked for it"},
		{"a lower limit", chamber(func(h *parser.Heater) { figure(h, parser.MaxTemp).Value = 70.0 }),
			"the max temp of [heater_generic chamber] would change although no rule asked for it"},
		{"another sensor", chamber(func(h *parser.Heater) { figure(h, parser.HotendSensor).Value = parser.SensorDef{} }),
			"the sensor of [heater_generic chamber] would change although no rule asked for it"},
		{"no watch", chamber(func(h *parser.Heater) { figure(h, parser.HotendWatchOn).State = parser.Off }),
			"the runaway protection of [heater_generic chamber] would change although no rule asked for it"},
		{"a heater that comes", func(a *altered) { a.heaters = append(a.heaters, parser.Heater{Name: "cooler"}) }, "a heater would come or go"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			g, trial := alter(t, nil, tt.change)
			expect(t, g.compareHeaters(trial), tt.want)
		})
	}

	// A tool with a sheet of its own answers for itself; another tool does not.
	for _, tool := range []int{1, 2} {
		g, trial := alter(t, func(a *altered) { a.heaters[0].Tool = 1 }, chamber(func(h *parser.Heater) { figure(h, parser.MaxTemp).Value = 90.0 }))
		_, other := alter(t, nil, nil)
		other.Source.Request.Tool, other.Source.Files = tool, trial.Files
		g.trials = append(g.trials, other)
		if err := g.compareHeaters(trial); (err == nil) != (tool == 1) {
			t.Errorf("beside the sheet of tool %d the guard says %v", tool, err)
		}
	}
}

func TestCompareOptions(t *testing.T) {
	entry := func(name, value string, active parser.Tri, elsewhere bool) func(*altered) {
		return func(a *altered) {
			a.options = append(slices.Clone(a.options), parser.Entry{Name: name, Value: value, Active: active, Elsewhere: elsewhere})
		}
	}
	means := func(what string, elsewhere bool) func(*altered) {
		return func(a *altered) {
			a.options = append(slices.Clone(a.options), parser.Entry{Name: "a", Value: "B", Means: what, Active: parser.Yes, Elsewhere: elsewhere})
		}
	}
	const guards = ": it guards or measures another heater, and no edit touches it"
	tests := []struct {
		name          string
		before, after func(*altered)
		want, aside   string
	}{
		{"nothing", entry("a", "1", parser.Yes, true), entry("a", "1", parser.Yes, true), "", ""},
		{"a guard goes", entry("a", "1", parser.Yes, true), entry("a", "1", parser.No, true), "a would go out of use" + guards, ""},
		{"a guard is gone", entry("a", "1", parser.Yes, true), nil, "a would go out of use" + guards, ""},
		{"a guard comes", entry("a", "1", parser.No, true), entry("a", "1", parser.Yes, true), "a would come into use" + guards, ""},
		{"a guard changes", entry("a", "1", parser.Yes, true), entry("a", "2", parser.Yes, true), `a would be "2" instead of "1"` + guards, ""},
		{"a guard becomes unknown", entry("a", "1", parser.Yes, true), entry("a", "1", parser.Maybe, true), "whether a is in use would change from yes to unknown" + guards, ""},
		{"an idle guard changes", entry("a", "1", parser.No, true), entry("a", "2", parser.No, true), "", ""},
		{"an option goes", entry("a", "1", parser.Yes, false), nil, "", "a would go out of use"},
		{"an option changes", entry("a", "1", parser.Yes, false), entry("a", "2", parser.Yes, false), "", `a would be "2" instead of "1"`},
		{"a guard comes to something else", means("1", true), means("2", true), "a would come to 2 instead of 1" + guards, ""},
		{"an option comes to something else", means("1", false), means("2", false), "", "a would come to 2 instead of 1"},
		{"one of its own settings", entry("[extruder] max_temp", "1", parser.Yes, true), nil, "", ""},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			g, trial := alter(t, tt.before, tt.after)
			expect(t, g.compareOptions(trial, g.editedLines()), tt.want)
			aside := ""
			for _, a := range g.plan.Asides {
				aside += a.Text
			}
			if aside != tt.aside {
				t.Errorf("aside it says %q, want %q", aside, tt.aside)
			}
		})
	}
}

// Two rules that want a setting differently get the value that protects more,
// where one of them does.
func TestCollect(t *testing.T) {
	to := func(key parser.Key, value any) parser.Change { return parser.Change{Key: key, Value: value} }
	wants := func(rule string, c ...parser.Change) rules.Finding {
		return rules.Finding{Rule: rule, Level: rules.Error, Changes: c}
	}
	tests := []struct {
		name     string
		findings []rules.Finding
		want     map[parser.Key]any
		err      string
	}{
		{"apart", []rules.Finding{wants("temp-ceiling", to(parser.MaxTemp, 280.0)), wants("nozzle-size", to(parser.NozzleDiameter, 0.6))},
			map[parser.Key]any{parser.MaxTemp: 280.0, parser.NozzleDiameter: 0.6}, ""},
		{"the lower limit", []rules.Finding{wants("temp-ceiling", to(parser.MaxTemp, 280.0)), wants("temp-reach", to(parser.MaxTemp, 300.0)), wants("temp-ceiling", to(parser.MaxTemp, 270.0))},
			map[parser.Key]any{parser.MaxTemp: 270.0}, ""},
		{"neither protects", []rules.Finding{wants("nozzle-size", to(parser.NozzleDiameter, 0.4)), wants("flow-limit", to(parser.NozzleDiameter, 0.6))},
			nil, "swap.toml: flow-limit asks otherwise than another rule does: the nozzle diameter is wanted as 0.4 and as 0.6"},
		{"waived, or asking for nothing", []rules.Finding{{Rule: "temp-ceiling", Changes: []parser.Change{to(parser.MaxTemp, 280.0)}, Waived: "known"}, wants("temp-ceiling")},
			map[parser.Key]any{}, ""},
	}
	for _, tt := range tests {
		g, trial := alter(t, nil, nil)
		trial.now.findings = tt.findings
		err := g.collect(trial, false)
		if (err != nil) != (tt.err != "") || err != nil && !strings.HasPrefix(err.Error(), tt.err) {
			t.Errorf("%s: %v, want %q", tt.name, err, tt.err)
		}
		if err == nil && !maps.Equal(trial.roundValues, tt.want) {
			t.Errorf("%s: %v, want %v", tt.name, trial.roundValues, tt.want)
		}
		trial.Silent = true
		if err := g.collect(trial, false); err != nil || len(trial.roundValues)+len(trial.roundReasons) > 0 {
			t.Errorf("%s: a silent printer asks for %v, %v", tt.name, trial.roundValues, err)
		}
	}
}

// Who undid whose change is said of two printers, and of one.
func TestUnsettled(t *testing.T) {
	reason := func(owner, rule string) Reason { return Reason{Owner: owner, Finding: rules.Finding{Rule: rule}} }
	for _, tt := range []struct {
		reasons []Reason
		want    string
	}{
		{[]Reason{reason("a", "temp-ceiling"), reason("a", "temp-reach")}, "a: the changes come to no end in 8 rounds; the last rule to ask for one is temp-reach"},
		{[]Reason{reason("a", "temp-ceiling"), reason("b", "temp-reach")}, "a and b share a file and undo each other's changes (temp-ceiling, temp-reach); let their sheets agree, or give each printer a file of its own"},
	} {
		expect(t, endless(tt.reasons), tt.want)
	}
}

func TestSafer(t *testing.T) {
	tests := []struct {
		key  parser.Key
		a, b any
		want any // nil: decide by hand
	}{
		{parser.MaxTemp, 280.0, 270.0, 270.0},
		{parser.MinTemp, 5.0, 0.0, 5.0},
		{parser.HotendRiseWindow, 30.0, 40.0, 30.0},
		{parser.HotendWatchOn, true, true, true},
		{parser.HotendWatchOn, false, true, true},
		{parser.NozzleDiameter, 0.4, 0.6, nil},
		{parser.NozzleDiameter, 0.4, 0.4, 0.4},
		{parser.HotendSensor, parser.SensorDef{Name: "5"}, parser.SensorDef{Name: "11"}, nil},
	}
	for _, tt := range tests {
		for range 2 {
			got, err := safer(tt.key, tt.a, tt.b)
			if (err != nil) != (tt.want == nil) || err == nil && got != tt.want {
				t.Errorf("%s, %v and %v: %v, %v, want %v", tt.key, tt.a, tt.b, got, err, tt.want)
			}
			tt.a, tt.b = tt.b, tt.a
		}
	}
}
