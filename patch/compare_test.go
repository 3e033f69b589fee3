package patch

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/rules"
)

// Each guard of the proof has a case here in which it speaks, and it alone.

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
	s := Printers(t, map[string]string{"swap.toml": ProofSheet, "printer.cfg": heldConfig})[0]
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
	return &group{counts: func(string) bool { return true }, leftOut: make(map[claim]error),
		plan: &Plan{after: make(map[string]*rules.Input)}, trials: []*trial{one}}, one
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

type found = []rules.Finding

func finding(rule, about string, level rules.Level, figure float64) rules.Finding {
	return rules.Finding{Rule: rule, About: about, Level: level, Message: "so it is",
		Figure: rules.Figure{Value: figure, Unit: "K", Worse: rules.Higher}}
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
		{"still speaks, as was said", found{finding("temp-reach", "", w, 1)},
			found{finding("temp-reach", "", w, 1)}, found{partial}, ""},
		{"still speaks and was left out", nil, found{finding("pid-stale", "barred", w, 1)},
			found{finding("pid-stale", "barred", e, 1)}, ""},
		{"mended",
			found{finding("temp-ceiling", "", e, 1)}, nil, found{finding("temp-ceiling", "", e, 1)}, ""},
		{"still speaks", found{finding("temp-reach", "", w, 1)}, found{finding("temp-reach", "", w, 1)},
			found{finding("temp-reach", "", w, 1)},
			"temp-reach still speaks after the change that should have silenced it: so it is"},
		{"leaves a note",
			nil, found{finding("temp-ceiling", "", n, 1)}, found{finding("temp-ceiling", "", e, 1)}, ""},
		{"leaves a note that asks", nil, found{asks}, found{finding("temp-ceiling", "", e, 1)},
			"temp-ceiling still speaks after the change that should have silenced it: so it is"},
		{"speaks of something else",
			found{finding("preset-over", "preset 2", w, 1)}, found{finding("preset-over", "preset 2", w, 1)},
			found{finding("preset-over", "preset 1", w, 1)}, ""},
		{"a new error", nil, found{finding("temp-ceiling", "", e, 1)}, nil,
			"the changes would bring up a new error, temp-ceiling: so it is"},
		{"a new error of a rule that speaks of something else",
			found{finding("preset-over", "preset 1", e, 1)}, found{finding("preset-over", "preset 2", e, 1)},
			nil, "the changes would bring up a new error, preset-over: so it is"},
		{"a new error of a rule left out", nil, found{finding("min-temp-high", "", e, 1)}, nil,
			"the changes would bring up a new error, min-temp-high: so it is (--only or --except leaves " +
				"this rule out; with it, its change would be made too)"},
		{"a new warning", nil, found{finding("temp-ceiling", "", w, 1)}, nil, ""},
		{"an error that stays",
			found{finding("temp-ceiling", "", e, 2)}, found{finding("temp-ceiling", "", e, 2)}, nil, ""},
		{"fewer errors, one of them worse",
			found{finding("temp-ceiling", "", e, 2), finding("temp-ceiling", "", e, 1)},
			found{finding("temp-ceiling", "", e, 3)}, nil,
			"the changes would make temp-ceiling worse, 3 K instead of 2: so it is"},
		{"an error beside a warning with a worse figure",
			found{finding("temp-ceiling", "", e, 2), finding("temp-ceiling", "", w, 5)},
			found{finding("temp-ceiling", "", e, 3)}, nil,
			"the changes would make temp-ceiling worse, 3 K instead of 2: so it is"},
		{"more errors, none of them worse", found{finding("temp-ceiling", "", e, 2)},
			found{finding("temp-ceiling", "", e, 2), finding("temp-ceiling", "", e, 1)}, nil, ""},
		{"an error without a figure that stays", found{plain}, found{plain}, nil, ""},
		{"a warning that became an error",
			found{finding("temp-ceiling", "", w, 2)}, found{finding("temp-ceiling", "", e, 2)}, nil,
			"the changes would make an error of a warning, temp-ceiling: so it is"},
		{"gains that meet a lower limit",
			found{finding("pid-stale", "", w, 2)}, found{finding("pid-stale", "", e, 2)}, nil, ""},
		{"gains that got worse",
			found{finding("pid-stale", "", e, 2)}, found{finding("pid-stale", "", e, 3)}, nil,
			"the changes would make pid-stale worse, 3 K instead of 2: so it is"},
		{"hidden by a cause that is gone",
			found{finding("runaway-off", "", e, 0)}, found{finding("runaway-loose", "", e, 2)}, nil, ""},
		{"hidden by a cause that is not gone", found{finding("runaway-off", "", e, 0)},
			found{finding("runaway-off", "", e, 0), finding("runaway-loose", "", e, 2)}, nil,
			"the changes would bring up a new error, runaway-loose: so it is"},
		{"a cause that hides something else",
			found{finding("runaway-off", "", e, 0)}, found{finding("temp-ceiling", "", e, 2)}, nil,
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
			if worse := len(g.plan.Worse) > 0; worse != (tt.name == "gains that meet a lower limit" ||
				tt.name == "hidden by a cause that is gone") {
				t.Errorf("said to be worse: %v", g.plan.Worse)
			}
		})
	}
}

func TestCompareTemperature(t *testing.T) {
	sensor := func(def parser.SensorDef, maxC float64) func(*altered) {
		return func(a *altered) {
			a.Printer().Hotend.Sensor.Value, a.Printer().Limits.MaxTemp.Value = def, maxC
		}
	}
	unknown := func(a *altered) { a.Printer().Limits.MaxTemp.State = parser.Unknown }
	right := parser.SensorDef{Form: parser.FormCurve, Kind: parser.NTC, Curve: "ntc-100k-3950",
		PullupOhm: 4700}
	beta := func(k float64) parser.SensorDef {
		return parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, R25Ohm: 100e3, BetaK: k,
			PullupOhm: 4700}
	}
	colder, hotter := beta(3950), beta(4500)
	const rated = ", and the hotend is rated for 300 °C"
	chip := parser.SensorDef{Form: parser.FormAmplifier, Kind: parser.Thermocouple}
	tests := []struct {
		name          string
		before, after func(*altered)
		want          string
	}{
		{"a limit that rises to the rating", sensor(right, 260), sensor(right, 300), ""},
		{"a limit that rises above the rating", sensor(right, 260), sensor(right, 303),
			"the hotend would be at 303 °C at the highest target instead of 260 °C" + rated},
		{"a limit that falls and is still above", sensor(right, 330), sensor(right, 320), ""},
		{"a wrong reading, below the rating", sensor(colder, 280), sensor(colder, 290), ""},
		{"a definition that reads hotter than it is", sensor(hotter, 280), sensor(right, 280), ""},
		{"a chip that is not there", sensor(right, 280), sensor(chip, 270),
			"nothing would say any more how hot the hotend is at the highest target" + rated},
		{"a chip all the time", sensor(chip, 280), sensor(chip, 270), ""},
		{"a chip all the time, and nothing else", sensor(chip, 270), sensor(chip, 270), ""},
		{"a chip all the time, and what rounding does", sensor(chip, 270), sensor(chip, 270.5), ""},
		{"a chip all the time, and a limit that rises", sensor(chip, 240), sensor(chip, 250),
			"the highest target would rise from 240 °C to 250 °C " +
				"while nothing says how hot the hotend is then" + rated},
		{"a chip that goes", sensor(chip, 320), sensor(right, 320), ""},
		{"a chip that goes, and a limit that rises", sensor(chip, 280), sensor(right, 320),
			"the highest target would rise from 280 °C to 320 °C, where the hotend is at 320 °C" + rated},
		{"a chip that goes, and a limit that rises within the rating",
			sensor(chip, 280), sensor(right, 300), ""},
		{"no limit any more", nil, unknown, "the highest target could no longer be told"},
		{"a limit that could not be told", unknown, nil, ""},
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
	type asked map[parser.Key][]string
	tests := []struct {
		name        string
		change      func(*parser.Printer)
		asked       asked
		want, aside string
		moves       int
	}{
		{name: "nothing", change: func(*parser.Printer) {}},
		{"turns off", func(p *parser.Printer) { p.Hotend.Watch.On.State = parser.Off },
			asked{parser.HotendWatchOn: {"runaway-tight"}},
			"the hotend runaway protection would turn off", "", 0},
		{"turns off by its value", func(p *parser.Printer) { p.Hotend.Watch.On.Value = false },
			asked{parser.HotendWatchOn: {"runaway-tight"}},
			"the hotend runaway protection would turn off", "", 0},
		{"a limit turns off",
			func(p *parser.Printer) { p.Limits.MaxTemp.State, p.Limits.MaxTemp.Value = parser.Off, 0 },
			asked{parser.MaxTemp: {"temp-ceiling"}}, "the max temp would turn off", "", 0},
		{"becomes unknown", func(p *parser.Printer) {
			p.Flow.NozzleMM.State, p.Flow.NozzleMM.Why = parser.Unknown, "it hangs"
		}, asked{parser.NozzleDiameter: {"nozzle-size"}},
			"the nozzle diameter would become unknown: it hangs", "", 0},
		{"changes unasked", func(p *parser.Printer) { p.Hotend.Loop.Kp.Value = 21 },
			asked{parser.GainI: {"pid-stale"}}, "the kp would change although no rule asked for it", "", 0},
		{"changes unasked to what protects more, elsewhere",
			func(p *parser.Printer) { p.Limits.MaxTemp.Value, p.Limits.MaxTemp.At = 280, parser.Span{} },
			nil, "the max temp would change although no rule asked for it", "", 0},
		{"follows by a formula to what protects more",
			func(p *parser.Printer) { p.Limits.MaxTemp.Value = 280 }, nil, "",
			"the max temp would be 280 °C instead of 290 °C", 0},
		{"follows by a formula to what protects less",
			func(p *parser.Printer) { p.Limits.MaxTemp.Value = 295 }, nil,
			"the max temp would protect less: 295 °C instead of 290 °C",
			"the max temp would be 295 °C instead of 290 °C", 0},
		{"follows by a formula to what protects less, for what may ask for that",
			func(p *parser.Printer) { p.Limits.MaxTemp.Value = 300 },
			asked{parser.Margin: {"temp-reach"}}, "", "the max temp would be 300 °C instead of 290 °C", 1},
		{"follows by a formula to what protects less, for what may not",
			func(p *parser.Printer) { p.Limits.MaxTemp.Value = 300 },
			asked{parser.Margin: {"temp-ceiling"}},
			"the max temp would protect less: 300 °C instead of 290 °C",
			"the max temp would be 300 °C instead of 290 °C", 0},
		{"follows by a formula what was itself loosened", func(p *parser.Printer) {
			p.Hotend.Watch.RiseWindowS.Value, p.Hotend.Watch.RiseWindowS.State = 90, parser.Set
		}, asked{parser.HotendErrorSum: {"runaway-tight"}},
			"the hotend heating check window would protect less: 90 s instead of 20 s",
			"the hotend heating check window would be 90 s instead of 20 s", 0},
		{"follows by a formula to a limit that is none",
			func(p *parser.Printer) { p.Limits.MaxTemp.Value, p.Limits.MaxTemp.State = 280, parser.Default },
			nil, "the max temp would change although no rule asked for it", "", 0},
		{"changes a default unasked", func(p *parser.Printer) { p.Limits.MinExtrude.Value = 200 }, nil,
			"the min extrude temp would change although no rule asked for it", "", 0},
		{"changes with its switch", func(p *parser.Printer) { p.Limits.MinExtrude.Value = 200 },
			asked{parser.ColdGuard: {"cold-extrusion"}}, "", "", 0},
		{"changes where it stands, with its switch", func(p *parser.Printer) {
			f := p.Files[0]
			p.Limits.MinExtrude.Value, p.Limits.MinExtrude.At = 200, parser.Span{File: f, Start: 0, End: 1}
		}, asked{parser.ColdGuard: {"cold-extrusion"}}, "",
			"the min extrude temp would be 200 °C instead of 170 °C", 0},
		{"protects less", func(p *parser.Printer) { p.Limits.MaxTemp.Value = 300 },
			asked{parser.MaxTemp: {"temp-ceiling"}},
			"the max temp would protect less: 300 °C instead of 290 °C", "", 0},
		{"protects less, as is its right", func(p *parser.Printer) { p.Limits.MaxTemp.Value = 300 },
			asked{parser.MaxTemp: {"temp-reach", "temp-ceiling"}}, "", "", 1},
		{"protects more", func(p *parser.Printer) { p.Limits.MaxTemp.Value = 280 },
			asked{parser.MaxTemp: {"temp-ceiling"}}, "", "", 0},
		{"demands less of a watch", func(p *parser.Printer) { p.Hotend.Watch.RiseC.Value = 1 },
			asked{parser.HotendRise: {"runaway-loose"}},
			"the hotend required rise would protect less: 1 K instead of 2 K", "", 0},
		{"turns on unasked",
			func(p *parser.Printer) { p.Storage.On.State, p.Storage.On.Value = parser.Set, true }, nil, "",
			"the stored settings would be on instead of off", 0},
		{"is lost", func(p *parser.Printer) { p.Flow.NozzleMM = parser.Setting[float64]{} },
			asked{parser.NozzleDiameter: {"nozzle-size"}}, "the nozzle diameter would be lost", "", 0},
		{"comes into force", func(p *parser.Printer) {
			p.Limits.Graces = append(p.Limits.Graces,
				parser.Setting[float64]{Key: parser.Grace("anyhow"), State: parser.Set, Value: 9})
		}, nil, "the grace time anyhow would come into force although no rule asked for it", "", 0},
		{"comes into force, asked for", func(p *parser.Printer) {
			p.Limits.Graces = append(p.Limits.Graces,
				parser.Setting[float64]{Key: parser.Grace("anyhow"), State: parser.Set, Value: 9})
		}, asked{parser.Grace("anyhow"): {"runaway-loose"}}, "", "", 0},
		{"comes into force without a safer way", func(p *parser.Printer) {
			p.Flow.CarriedOver = append(p.Flow.CarriedOver,
				parser.Setting[float64]{Key: parser.Carried("load length"), State: parser.Set, Value: 9})
		}, nil, "", "the load length, 9, would come into force", 0},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			g, trial := alter(t, nil, func(a *altered) { tt.change(a.Printer()) })
			for key, by := range tt.asked {
				trial.askedBy[key] = by
			}
			expect(t, g.compareSettings(trial, g.editedLines()), tt.want)
			said := ""
			for _, a := range g.plan.Asides {
				said += a.Text
			}
			if said != tt.aside {
				t.Errorf("said aside: %q, want %q", said, tt.aside)
			}
			if len(g.plan.Moves) != tt.moves {
				t.Errorf("moves are %v, want %d", g.plan.Moves, tt.moves)
			}
			if tt.moves > 0 {
				if m := g.plan.Moves[0]; m.Was.Value != 290.0 || m.Is.Value != 300.0 ||
					!slices.Equal(m.Rules, []string{"temp-reach"}) {
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
		is := func(d parser.Description) bool { return d.Key == key }
		return &h.Settings[slices.IndexFunc(h.Settings, is)]
	}
	warmer := func(h *parser.Heater) { figure(h, parser.MaxTemp).Value = 90.0 }
	tests := []struct {
		name   string
		change func(*altered)
		want   string
	}{
		{"nothing", nil, ""},
		{"another limit", chamber(warmer),
			"the max temp of [heater_generic chamber] would change although no rule asked for it"},
		{"a lower limit", chamber(func(h *parser.Heater) { figure(h, parser.MaxTemp).Value = 70.0 }),
			"the max temp of [heater_generic chamber] would change although no rule asked for it"},
		{"another sensor",
			chamber(func(h *parser.Heater) { figure(h, parser.HotendSensor).Value = parser.SensorDef{} }),
			"the sensor of [heater_generic chamber] would change although no rule asked for it"},
		{"no watch", chamber(func(h *parser.Heater) { figure(h, parser.HotendWatchOn).State = parser.Off }),
			"the runaway protection of [heater_generic chamber] would change although no rule asked for it"},
		{"a heater that comes",
			func(a *altered) { a.heaters = append(a.heaters, parser.Heater{Name: "cooler"}) },
			"a heater would come or go"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			g, trial := alter(t, nil, tt.change)
			expect(t, g.compareHeaters(trial), tt.want)
		})
	}

	// A tool with a sheet of its own answers for itself; another tool does not.
	for _, tool := range []int{1, 2} {
		toTool1 := func(h *parser.Heater) { h.Tool = 1 }
		g, trial := alter(t, chamber(toTool1), chamber(warmer))
		_, other := alter(t, nil, nil)
		other.Source.Request.Tool, other.Source.Files = tool, trial.Files
		g.trials = append(g.trials, other)
		if err := g.compareHeaters(trial); (err == nil) != (tool == 1) {
			t.Errorf("beside the sheet of tool %d the guard says %v", tool, err)
		}
	}
}

func TestCompareOptions(t *testing.T) {
	has := func(e parser.Entry) func(*altered) {
		return func(a *altered) { a.options = append(slices.Clone(a.options), e) }
	}
	guard := func(value string, active parser.Tri) func(*altered) {
		return has(parser.Entry{Name: "a", Value: value, Active: active, Elsewhere: true})
	}
	option := func(value string) func(*altered) {
		return has(parser.Entry{Name: "a", Value: value, Active: parser.Yes})
	}
	means := func(what string, elsewhere bool) func(*altered) {
		return has(parser.Entry{Name: "a", Value: "B", Means: what, Active: parser.Yes, Elsewhere: elsewhere})
	}
	const guards = ": it guards or measures another heater, and no edit touches it"
	tests := []struct {
		name          string
		before, after func(*altered)
		want, aside   string
	}{
		{"nothing", guard("1", parser.Yes), guard("1", parser.Yes), "", ""},
		{"a guard goes", guard("1", parser.Yes), guard("1", parser.No), "a would go out of use" + guards, ""},
		{"a guard is gone", guard("1", parser.Yes), nil, "a would go out of use" + guards, ""},
		{"a guard comes",
			guard("1", parser.No), guard("1", parser.Yes), "a would come into use" + guards, ""},
		{"a guard changes",
			guard("1", parser.Yes), guard("2", parser.Yes), `a would be "2" instead of "1"` + guards, ""},
		{"a guard becomes unknown", guard("1", parser.Yes), guard("1", parser.Maybe),
			"whether a is in use would change from yes to unknown" + guards, ""},
		{"an idle guard changes", guard("1", parser.No), guard("2", parser.No), "", ""},
		{"an option goes", option("1"), nil, "", "a would go out of use"},
		{"an option changes", option("1"), option("2"), "", `a would be "2" instead of "1"`},
		{"a guard comes to something else",
			means("1", true), means("2", true), "a would come to 2 instead of 1" + guards, ""},
		{"an option comes to something else",
			means("1", false), means("2", false), "", "a would come to 2 instead of 1"},
		{"one of its own settings",
			has(parser.Entry{Name: "[extruder] max_temp", Value: "1", Active: parser.Yes, Elsewhere: true}),
			nil, "", ""},
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
