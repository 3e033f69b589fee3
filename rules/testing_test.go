package rules

import (
	"math"
	"reflect"
	"strings"
	"testing"
	"time"

	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/rules/unit"
)

// The builders that all rule tests share: a printer and a sheet that fit each
// other, on which every rule is silent. A test spoils one thing.

// set is a setting that the configuration sets. Its span covers the key's own
// name, so that a test can ask a finding's place with At.Text.
func set[T any](key parser.Key, value T) parser.Setting[T] {
	at := wholeFile("printer.cfg", string(key))
	return parser.Setting[T]{Key: key, Value: value, State: parser.Set, Place: parser.Place{At: at}}
}

// byDefault is a setting that nobody set.
func byDefault[T any](key parser.Key, value T) parser.Setting[T] {
	return parser.Setting[T]{Key: key, Value: value, State: parser.Default}
}

// off is a setting that is switched off.
func off[T any](key parser.Key) parser.Setting[T] {
	s := set(key, *new(T))
	s.State = parser.Off
	return s
}

// unknown is a setting that is unknown.
func unknown[T any](key parser.Key) parser.Setting[T] {
	s := set(key, *new(T))
	s.State, s.Why = parser.Unknown, "it stands under a condition that these files do not settle"
	return s
}

// given is a key that the sheet gives.
func given[T any](path string, value T) sheet.Key[T] {
	return sheet.Key[T]{Value: value, Given: true, At: wholeFile("swap.toml", path), Path: path}
}

// absent is a key that the sheet leaves to its default.
func absent[T any](path string, value T) sheet.Key[T] {
	return sheet.Key[T]{Value: value, At: wholeFile("swap.toml", path), Path: path}
}

func wholeFile(name, text string) parser.Span {
	return parser.Span{File: parser.NewFile(name, []byte(text)), End: len(text)}
}

// healthyPrinter fits healthySheet: protection on at its usual figures, a
// margin of 15 K under the max temp, PID control.
func healthyPrinter() *parser.Printer {
	curve := parser.SensorDef{
		Form: parser.FormCurve, Kind: parser.NTC, Name: "11", Curve: "ntc-100k-3950",
		PullupOhm: 4700, LowC: 0, HighC: 340,
	}
	return &parser.Printer{
		Style: "test",
		Files: []*parser.File{parser.NewFile("printer.cfg", nil)},
		Hotend: parser.Hotend{
			Sensor:      set(parser.HotendSensor, curve),
			Oversample:  16,
			CustomCubic: true,
			Loop: parser.Loop{
				Form:      parser.LoopRange,
				Control:   set(parser.LoopControl, parser.ControlPID),
				Kp:        set(parser.GainP, 21.7),
				Ki:        set(parser.GainI, 1.4),
				Kd:        set(parser.GainD, 84.0),
				RangeC:    set(parser.FunctionalRange, 10.0),
				FilterOld: byDefault(parser.DerivativeShare, 0.95),
				BandC:     byDefault(parser.OnOffBand, 2.0),
				PowerLimits: []parser.Setting[float64]{
					set(parser.PowerLimit("all"), 1.0),
					set(parser.PowerLimit("loop"), 1.0),
				},
			},
			Watch: parser.Watch{
				Form:           parser.WatchWindow,
				On:             set(parser.HotendWatchOn, true),
				HeatingOn:      set(parser.HotendHeatingOn, true),
				RiseC:          set(parser.HotendRise, 2.0),
				HeatingWindowS: set(parser.HotendHeatingWindow, 20.0),
				ArmMarginC:     byDefault(parser.HotendArmMargin, 3.0),
				HysteresisC:    set(parser.HotendHysteresis, 4.0),
				DropPeriodS:    set(parser.HotendDropPeriod, 40.0),
				Usual: parser.WatchFigures{
					RiseC: 2, HeatingWindowS: 20, HysteresisC: 4, DropPeriodS: 40},
				CanTurnOn: true,
			},
		},
		Bed: parser.Bed{
			Heated: set(parser.BedHeated, true),
			Sensor: set(parser.BedSensor, curve),
			Watch: parser.Watch{
				Form:           parser.WatchWindow,
				On:             set(parser.BedWatchOn, true),
				HeatingOn:      set(parser.BedHeatingOn, true),
				RiseC:          set(parser.BedRise, 2.0),
				HeatingWindowS: set(parser.BedHeatingWindow, 60.0),
				ArmMarginC:     byDefault(parser.BedArmMargin, 3.0),
				HysteresisC:    set(parser.BedWatchHysteresis, 2.0),
				DropPeriodS:    set(parser.BedDropPeriod, 20.0),
				Usual: parser.WatchFigures{
					RiseC: 2, HeatingWindowS: 60, HysteresisC: 2, DropPeriodS: 20},
				CanTurnOn: true,
			},
		},
		Limits: parser.Limits{
			MinTemp: set(parser.MinTemp, 5.0),
			MaxTemp: set(parser.MaxTemp, 275.0),
			Margin:  set(parser.Margin, 15.0),
			Presets: []parser.Setting[float64]{set(parser.Preset(1), 200.0),
				set(parser.Preset(2), 240.0)},
			ColdGuard:       set(parser.ColdGuard, true),
			MinExtrude:      set(parser.MinExtrude, 170.0),
			MinWhileHeating: true,
		},
		ColdSide: parser.ColdSide{
			Fan:      set(parser.FanOutput, "fan 1"),
			OnAboveC: set(parser.FanOnAbove, 50.0),
		},
		Flow: parser.Flow{
			NozzleMM:   set(parser.NozzleDiameter, 0.4),
			FilamentMM: set(parser.FilamentWidth, 1.75),
			MaxMM3PerS: set(parser.MaxFlow, 8.0),
		},
		Geometry: parser.Geometry{TriggerMM: set(parser.ProbeTrigger, 1.8)},
		Storage:  parser.Storage{On: off[bool](parser.StorageOn)},
	}
}

// noMargin turns a printer into one whose firmware has no margin: the highest
// target is the max temp, and any overshoot shuts it down.
func noMargin(p *parser.Printer) {
	p.Limits.Margin = parser.Setting[float64]{}
	p.Limits.MinWhileHeating = false
}

// healthySheet is a 40 W cartridge at 24 V with a 3950 bead, printing from
// 190 to 260 °C, rated for 300 and cut off at 290, tuned with the gains of
// healthyPrinter.
func healthySheet() *sheet.Sheet {
	return &sheet.Sheet{
		File: parser.NewFile("swap.toml", nil),
		Printer: sheet.Printer{
			Name:       given("printer.name", "egret-01"),
			Style:      absent("printer.style", ""),
			Config:     []sheet.Key[string]{given("printer.config", "printer.cfg")},
			ZReference: given("printer.z_reference", "probe"),
			Tool:       absent("printer.tool", 0),
			SupplyV:    given("printer.supply_v", 24.0),
			SupplyW:    given("printer.supply_w", 350.0),
			OtherLoadW: given("printer.other_load_w", 220.0),
			OutputA:    given("printer.output_a", 5.0),
			PullupOhm:  given("printer.pullup_ohm", 4700.0),
			ADCBits:    given("printer.adc_bits", 12),
			AmbientC:   given("printer.ambient_c", 22.0),
		},
		New: sheet.Hotend{
			Name:    given("new.name", "test hotend"),
			RatedC:  given("new.rated_c", 300.0),
			CutoffC: given("new.cutoff_c", 290.0),
			PrintC:  given("new.print_c", [2]float64{190, 260}),
			Liner:   given("new.liner", "none"),
			Sensor: sheet.Sensor{
				Kind:          given("new.sensor.kind", parser.NTC),
				Curve:         given("new.sensor.curve", "ntc-100k-3950"),
				Points:        absent("new.sensor.points", []parser.SensorPoint(nil)),
				Beta:          absent("new.sensor.beta", sheet.Beta{}),
				RatedC:        given("new.sensor.rated_c", 300.0),
				R25Tolerance:  absent("new.sensor.r25_tolerance", 0.01),
				BetaTolerance: absent("new.sensor.beta_tolerance", 0.01),
			},
			Heater: sheet.Heater{
				Kind:      given("new.heater.kind", sheet.Cartridge),
				RatedV:    given("new.heater.rated_v", 24.0),
				RatedW:    given("new.heater.rated_w", 40.0),
				HotW:      absent("new.heater.hot_w", [][2]float64(nil)),
				DutyLimit: absent("new.heater.duty_limit", 1.0),
			},
			Block: sheet.Block{
				HeatCapacityJPerK: given("new.block.heat_capacity_j_per_k", 16.7),
				LossWPerK:         given("new.block.loss_w_per_k", 0.068),
				LossFanWPerK:      given("new.block.loss_fan_w_per_k", 0.097),
				SensorLagS:        given("new.block.sensor_lag_s", 4.5),
			},
			Fan: sheet.Fan{
				RatedV:   given("new.fan.rated_v", 24.0),
				Wires:    given("new.fan.wires", 2),
				OutputV:  given("new.fan.output_v", 24.0),
				AlwaysOn: absent("new.fan.always_on", false),
				OnAboveC: given("new.fan.on_above_c", 50.0),
			},
			Nozzle: sheet.Nozzle{
				DiameterMM:  given("new.nozzle.diameter_mm", 0.4),
				TipShiftMM:  given("new.nozzle.tip_shift_mm", 0.0),
				MaxFlowMM3S: given("new.nozzle.max_flow_mm3_s", 8.0),
			},
		},
		Tuned: tuned(21.7, 1.4, 84),
	}
}

// ptc makes the sheet's heater the PTC ring of the worked example.
func ptc(s *sheet.Sheet) {
	s.New.Heater.Kind = given("new.heater.kind", sheet.PTC)
	s.New.Heater.RatedW = given("new.heater.rated_w", 48.0)
	s.New.Heater.HotW = given("new.heater.hot_w", [][2]float64{{25, 48}, {200, 30}, {300, 22}})
}

func healthyInput() *Input {
	return &Input{
		Printer: healthyPrinter(),
		Sheet:   healthySheet(),
		Config:  stubConfig{defs: []parser.SensorDef{stubDef}, form: parser.FormBeta},
		Today:   time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC),
	}
}

// run gives a rule's findings, each marked with the rule's name. It fails
// where a finding breaks what every finding must keep.
func run(t *testing.T, rule *Rule, in *Input) []Finding {
	t.Helper()
	var got []Finding
	rule.Check(in, func(f Finding) {
		if f.Rule != "" && f.Rule != rule.ID {
			t.Errorf("finding is marked %q, the rule is %q", f.Rule, rule.ID)
		}
		f.Rule = rule.ID
		if f.Level > rule.Level {
			t.Errorf("%s reports %s, above its highest level %s", rule.ID, f.Level, rule.Level)
		}
		if f.At.IsZero() {
			t.Errorf("%s points nowhere: %s", rule.ID, f.Text())
		}
		if f.Text() == "" || strings.Contains(f.Text(), "%!") || strings.Contains(f.Text(), "NaN") {
			t.Errorf("%s has a broken message: %q", rule.ID, f.Text())
		}
		got = append(got, f)
	})
	return got
}

// one gives the only finding of a rule.
func one(t *testing.T, rule *Rule, in *Input) Finding {
	t.Helper()
	got := run(t, rule, in)
	if len(got) != 1 {
		t.Fatalf("%s: %d findings, want 1: %v", rule.ID, len(got), messages(got))
	}
	return got[0]
}

// silent fails where a rule says anything.
func silent(t *testing.T, rule *Rule, in *Input) {
	t.Helper()
	if got := run(t, rule, in); len(got) > 0 {
		t.Errorf("%s should be silent, says: %v", rule.ID, messages(got))
	}
}

func messages(list []Finding) []string {
	var all []string
	for _, f := range list {
		all = append(all, f.Level.String()+": "+f.Text())
	}
	return all
}

// wantValues compares figures to 0.001 and anything else exactly.
func wantValues(t *testing.T, f Finding, want Values) {
	t.Helper()
	if len(f.Values) != len(want) {
		t.Errorf("values %v, want %v", f.Values, want)
		return
	}
	for name, w := range want {
		g, ok := f.Values[name]
		if !ok {
			t.Errorf("no value %s in %v", name, f.Values)
			continue
		}
		wf, wIs := w.(float64)
		gf, gIs := g.(float64)
		if wIs && gIs && math.Abs(wf-gf) <= 0.001 {
			continue
		}
		if g != w {
			t.Errorf("value %s is %v, want %v", name, g, w)
		}
	}
}

// wantChanges compares the changes of a finding in order.
func wantChanges(t *testing.T, f Finding, want ...parser.Change) {
	t.Helper()
	if len(f.Changes) != len(want) {
		t.Errorf("changes %v, want %v", f.Changes, want)
		return
	}
	for i := range want {
		if !reflect.DeepEqual(f.Changes[i], want[i]) {
			t.Errorf("change %d is %v, want %v", i, f.Changes[i], want[i])
		}
	}
}

// wantSaid fails where the message lacks one of the parts.
func wantSaid(t *testing.T, f Finding, parts ...string) {
	t.Helper()
	for _, p := range parts {
		if !strings.Contains(f.Text(), p) {
			t.Errorf("message %q does not say %q", f.Text(), p)
		}
	}
}

// Steps are those of invented spelling.
func (stubConfig) Steps(task parser.Task) []string {
	return [][]string{
		parser.TaskResetStored: {"RESET STORED", "SAVE STORED"},
		parser.TaskShowStored:  {"SHOW STORED"},
		parser.TaskTune:        {"TUNE " + unit.Celsius(task.TempC)},
		parser.TaskTuneModel:   {"TUNE MODEL"},
		parser.TaskSetGains:    {"SET GAINS"},
		parser.TaskHeat:        {"HEAT " + unit.Celsius(task.TempC)},
		parser.TaskReport:      {"REPORT"},
		parser.TaskHeatersOff:  {"HEATERS OFF"},
	}[task.Kind]
}

// Keep is that of a memory of its own.
func (stubConfig) Keep(...parser.Key) parser.Keeping {
	return parser.Keeping{Steps: []string{"SAVE STORED"}}
}

// stubConfig has the definitions that a test gives it, and nothing else.
type stubConfig struct {
	builds map[string]float64 // the highest max temp, by definition
	parser.Config
	defs   []parser.SensorDef
	form   parser.SensorForm
	others []parser.Heater
}

func (c stubConfig) Others() []parser.Heater { return c.others }

func (c stubConfig) Definitions() []parser.SensorDef { return c.defs }

func (c stubConfig) MaxTempWith(d parser.SensorDef) float64 { return c.builds[d.Name] }
func (c stubConfig) CustomForm() parser.SensorForm          { return c.form }

// stubDef is the stub's one definition.
var stubDef = parser.SensorDef{Form: parser.FormCurve, Kind: parser.NTC, Name: "11", Curve: "ntc-100k-3950",
	PullupOhm: 4700}
