package starter

import (
	"errors"
	"flag"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"preflash/cmd/internal/testfiles"
	"preflash/parser"
	"preflash/parser/sheet"
)

var update = flag.Bool("update", false, "write the golden files anew")

// place points at a line of an invented file.
func place(name string, line int) parser.Place {
	f := parser.NewFile(name, []byte(strings.Repeat("x\n", line)))
	return parser.Place{At: parser.Span{File: f, Start: 2 * (line - 1), End: 2*line - 1}}
}

func written[T any](key parser.Key, v T, name string, line int) parser.Setting[T] {
	return parser.Setting[T]{Key: key, Value: v, State: parser.Set, Place: place(name, line)}
}

// definesFacts is a printer of C headers with everything that a sheet tells.
func definesFacts() Facts {
	const main = "printers/egret-91/Configuration.h"
	p := &parser.Printer{Style: "defines", Tool: 0}
	p.Hotend.Sensor = written(parser.HotendSensor, parser.SensorDef{
		Form: parser.FormBeta, Kind: parser.NTC, Name: "1000", R25Ohm: 100e3, BetaK: 4300,
	}, main, 220)
	p.Limits.MinTemp = written(parser.MinTemp, 5.0, main, 263)
	p.Limits.MaxTemp = written(parser.MaxTemp, 275.0, main, 264)
	p.Limits.Margin = parser.Setting[float64]{Key: parser.Margin, State: parser.Default, Value: 15}
	l := &p.Hotend.Loop
	l.Control = written(parser.LoopControl, parser.ControlPID, main, 293)
	l.Kp, l.Ki, l.Kd = written(parser.GainP, 22.2, main, 294), written(parser.GainI, 1.08, main, 295),
		written(parser.GainD, 114.0, main, 296)
	p.Flow.NozzleMM = written(parser.NozzleDiameter, 0.4, main, 727)
	p.Geometry.TriggerMM = written(parser.ProbeTrigger, 2.15, main, 528)
	p.Geometry.Homes = written(parser.ZHoming, parser.HomesByProbe, main, 530)
	p.ColdSide.Fan = written(parser.FanOutput, "PC7", main, 234)
	p.ColdSide.OnAboveC = written(parser.FanOnAbove, 50.0, main, 243)
	return Facts{Name: "egret-91", Place: "printers/egret-91/swap.toml",
		Config: []string{"Configuration.h", "Configuration_adv.h"}, Printer: p}
}

// sectionsFacts is a printer of sections, found by itself, with a missing
// include, no probe and no heat-break fan.
func sectionsFacts() Facts {
	const main = "printer.cfg"
	p := &parser.Printer{Style: "sections", Tool: 1}
	p.Hotend.Sensor = written(parser.HotendSensor, parser.SensorDef{
		Form: parser.FormCurve, Kind: parser.Platinum, Name: "PT1000", Curve: "pt1000",
		Note: "the firmware draws straight lines between a few points of the curve",
	}, main, 15)
	p.Hotend.PullupOhm = written(parser.HotendPullup, 1000.0, main, 17)
	p.Limits.MinTemp = written(parser.MinTemp, 0.0, main, 18)
	p.Limits.MaxTemp = written(parser.MaxTemp, 290.0, main, 19)
	p.Hotend.Loop.Control = written(parser.LoopControl, parser.ControlModel, main, 20)
	p.Hotend.Loop.ModelPowerW = written(parser.ModelPower, 60.0, main, 21)
	p.Geometry.TriggerMM = parser.Setting[float64]{Key: parser.ProbeTrigger, State: parser.Off}
	p.ColdSide.Fan = parser.Setting[string]{Key: parser.FanOutput, State: parser.Off}
	return Facts{Name: "egret-92", Place: "swap.toml", Guess: true,
		Config: []string{"printer.cfg"}, Absent: []string{"panel.cfg"}, Printer: p}
}

func TestGolden(t *testing.T) {
	testfiles.Golden(t, *update, "testdata/defines.txt", New(definesFacts()).Text())
	testfiles.Golden(t, *update, "testdata/sections.txt", New(sectionsFacts()).Text())
}

// read gives a text to the reader of sheets.
func read(t testing.TB, text string) (*sheet.Sheet, error) {
	t.Helper()
	tree, err := parser.OpenTree(".")
	if err != nil {
		t.Fatal(err)
	}
	defer tree.Close()
	const name = "testdata/made.toml"
	return sheet.Read(tree.With(map[string][]byte{tree.Shown(name): []byte(text)}), name)
}

// complaints are what the reader says that is not about a blank.
func complaints(err error) []string {
	var list []string
	var walk func(error)
	walk = func(err error) {
		var one *parser.Error
		if many, ok := err.(interface{ Unwrap() []error }); ok {
			for _, e := range many.Unwrap() {
				walk(e)
			}
		} else if errors.As(err, &one) && !strings.Contains(one.Message, " is blank and ") {
			list = append(list, one.Message)
		}
	}
	walk(err)
	return list
}

// blanksOf lists the entries that are still to be filled in, in order.
func blanksOf(s *Sheet) (list []*Entry) {
	for _, g := range s.groups {
		for _, e := range g.entries {
			if e.Blank {
				list = append(list, e)
			}
		}
	}
	return list
}

// filled is the text with the example of each blank in its place.
func filled(s *Sheet) string {
	for _, e := range blanksOf(s) {
		e.Value, e.Blank = e.Example, false
	}
	return s.Text()
}

// Every example is an answer that the reader takes.
func TestExamplesAreAnswers(t *testing.T) {
	for _, facts := range []Facts{definesFacts(), sectionsFacts()} {
		if _, err := read(t, filled(New(facts))); err != nil {
			t.Errorf("%s: %v", facts.Printer.Style, err)
		}
	}
}

// A key that is commented out shows what holds without it, or an example that
// the reader takes.
func TestOptionsShowTheirDefaults(t *testing.T) {
	examples := map[string]bool{
		"new.use": true, "new.name": true, "new.cutoff_c": true, "new.sensor.kind": true,
		"new.sensor.points": true, "new.sensor.beta": true, "new.sensor.rated_c": true,
		"new.heater.hot_w": true, "new.fan.output_v": true, "new.nozzle.max_flow_mm3_s": true,
	}
	facts := definesFacts()
	without, err := read(t, filled(New(facts)))
	if err != nil {
		t.Fatal(err)
	}
	s := New(facts)
	for i := range s.groups {
		for _, e := range s.groups[i].entries {
			if e.off && !examples[e.Path] && s.groups[i].header != "tuned" {
				e.off = false
			}
		}
	}
	with, err := read(t, filled(s))
	if err != nil {
		t.Fatal(err)
	}
	type pair[T comparable] struct{ a, b sheet.Key[T] }
	for _, p := range []pair[float64]{
		{without.Printer.PullupOhm, with.Printer.PullupOhm},
		{without.Printer.AmbientC, with.Printer.AmbientC},
		{without.New.Heater.DutyLimit, with.New.Heater.DutyLimit},
		{without.New.Block.HeatCapacityJPerK, with.New.Block.HeatCapacityJPerK},
		{without.New.Block.LossWPerK, with.New.Block.LossWPerK},
		{without.New.Block.LossFanWPerK, with.New.Block.LossFanWPerK},
		{without.New.Block.SensorLagS, with.New.Block.SensorLagS},
		{without.New.Fan.OnAboveC, with.New.Fan.OnAboveC},
	} {
		if p.a.Given || !p.b.Given || p.a.Value != p.b.Value {
			t.Errorf("%s: %v without it, %v as shown", p.b.Path, p.a.Value, p.b.Value)
		}
	}
	for _, p := range []pair[int]{{without.Printer.ADCBits, with.Printer.ADCBits},
		{without.New.Fan.Wires, with.New.Fan.Wires}} {
		if p.a.Given || !p.b.Given || p.a.Value != p.b.Value {
			t.Errorf("%s: %v without it, %v as shown", p.b.Path, p.a.Value, p.b.Value)
		}
	}
	for i := range s.groups {
		for _, e := range s.groups[i].entries {
			// A hotend file that does not exist, a second curve and the power
			// table of a PTC are the owner's to settle.
			switch e.Path {
			case "new.use", "new.sensor.kind", "new.sensor.points", "new.sensor.beta", "new.heater.hot_w":
			default:
				e.off = false
			}
		}
	}
	if _, err := read(t, filled(s)); err != nil {
		t.Errorf("with its examples: %v", err)
	}
}

// Whatever a printer and its files are called, the sheet says so again.
func TestNamesSurvive(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		name := rapid.StringMatching(`\PZ{1,20}`).Draw(rt, "name")
		facts := definesFacts()
		facts.Name = name
		got, err := read(t, filled(New(facts)))
		if strings.TrimSpace(name) == "" {
			return
		}
		if err != nil || got.Printer.Name.Value != name {
			rt.Fatalf("%q became %+v, %v", name, got, err)
		}
	})
}

// A pull-up that the configuration does not tell, where a wrong one would show,
// is asked for.
func TestPullupBlank(t *testing.T) {
	platinum := parser.SensorDef{Form: parser.FormCurve, Kind: parser.Platinum, Name: "PT1000",
		Curve: "pt1000", PullupOhm: 4700}
	bead := parser.SensorDef{Form: parser.FormCurve, Kind: parser.NTC, Name: "Generic 3950",
		Curve: "ntc-100k-3950", PullupOhm: 4700}
	numbered := func(name string, pullupOhm float64) parser.SensorDef {
		d := bead
		d.Name, d.PullupOhm = name, pullupOhm
		return d
	}
	own := func(s parser.State, ohm float64) parser.Setting[float64] {
		return parser.Setting[float64]{Key: parser.HotendPullup, Value: ohm, State: s}
	}
	for _, c := range []struct {
		name   string
		def    parser.SensorDef
		pullup parser.Setting[float64]
		want   string // example of the blank; "" for none
	}{
		{"made for 10 kΩ", numbered("99", 10000), parser.Setting[float64]{}, "10000"},
		{"made for 1 kΩ", numbered("51", 1000), parser.Setting[float64]{}, "1000"},
		{"made for the usual one", numbered("61", 4700), parser.Setting[float64]{}, ""},
		{"a chip", parser.SensorDef{Form: parser.FormAmplifier, Name: "-3"}, parser.Setting[float64]{}, ""},
		{"platinum, not written", platinum, own(parser.Default, 4700), "4700"},
		{"platinum, written", platinum, own(parser.Set, 2200), ""},
		{"a bead, not written", bead, own(parser.Default, 4700), ""},
	} {
		f := definesFacts()
		f.Printer.Hotend.Sensor = written(parser.HotendSensor, c.def, "Configuration.h", 1)
		f.Printer.Hotend.PullupOhm = c.pullup
		got := ""
		for _, e := range blanksOf(New(f)) {
			if e.Path == "printer.pullup_ohm" {
				got = e.Example
			}
		}
		if got != c.want {
			t.Errorf("%s: blank with %q, want %q", c.name, got, c.want)
		}
	}
}
