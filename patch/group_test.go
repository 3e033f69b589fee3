package patch_test

import (
	"errors"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/patch"
)

// sheetOf is proofSheet for a main file and a tool, with some parts replaced.
func sheetOf(main, tool string, pairs ...string) string {
	return sheetWith(append(pairs, `["printer.cfg"]`, `["`+main+"\"]\ntool = "+tool)...)
}

// sources are printers whose configurations have been read.
func sources(t *testing.T, f files) []*patch.Source {
	t.Helper()
	list := patch.Printers(t, f)
	for _, s := range list {
		if err := s.Read(); err != nil {
			t.Fatal(err)
		}
	}
	return list
}

// texts are the new texts of a plan, by file.
func texts(p *patch.Plan) map[string]string {
	m := make(map[string]string)
	for _, f := range p.Files {
		m[f.Name] = string(f.New)
	}
	return m
}

// Each group stands alone, and what asks for nothing is in none.
func TestProveAll(t *testing.T) {
	list := sources(t, files{
		"a.toml": sheetOf("common.cfg", "0"),
		"b.toml": sheetOf("common.cfg", "0", "rated_c = 300", "rated_c = 280"),
		"c.toml": sheetOf("own.cfg", "0"), "d.toml": sheetOf("fine.cfg", "0"),
		"e.toml": sheetOf("reads.cfg", "0"),
		"f.toml": sheetOf("hot.cfg", "0", "rated_c = 300", "rated_c = 340"),
		// Above what the others want.
		"hot.cfg":    "[include common.cfg]\n[gcode_macro HOT]\ngcode:\n  M104 S320\n",
		"common.cfg": hotConfig, "own.cfg": hotConfig, "fine.cfg": proofConfig,
		"reads.cfg": "[include own.cfg]\n[extruder]\nmax_temp: 290\n",
	})
	list[5].Silent = true
	got := patch.ProveAll(list, all)
	if len(got) != 2 {
		t.Fatalf("%d outcomes, want 2: %+v", len(got), got)
	}
	if !slices.Equal(got[0].Owners, []string{"a.toml", "b.toml", "f.toml"}) || got[0].Plan != nil ||
		got[0].Err == nil {
		t.Errorf("the printers whose limit is too low for a silent one: %+v", got[0])
	}
	if !slices.Equal(got[1].Owners, []string{"c.toml", "e.toml"}) || got[1].Err != nil {
		t.Fatalf("the printer beside them: %+v", got[1])
	}
	plan := patch.Join([]*patch.Plan{got[1].Plan})
	if text := texts(plan)["own.cfg"]; len(plan.Files) != 1 || !strings.Contains(text, "max_temp: 300") {
		t.Errorf("the plan is %q", texts(plan))
	}
	if plan.After("c.toml") == nil || plan.After("e.toml") == nil || plan.After("a.toml") != nil ||
		plan.After("d.toml") != nil {
		t.Error("the plan does not say how the printers that it touches are afterwards, or speaks of others")
	}
	if after := plan.After("c.toml").Printer.Limits.MaxTemp.Value; after != 300 {
		t.Errorf("the max temp is %g afterwards", after)
	}
}

// Two names of one file by a hard link are one file, which no diff may part.
func TestProveAllHardLink(t *testing.T) {
	list := sources(t, files{
		"a.toml": sheetOf("a.cfg", "0"), "b.toml": sheetOf("b.cfg", "0"), "c.toml": sheetOf("c.cfg", "0"),
		"a.cfg": hotConfig, "b.cfg": proofConfig, "c.cfg": hotConfig,
	})
	if err := os.Remove("b.cfg"); err != nil {
		t.Fatal(err)
	}
	if err := os.Link("a.cfg", "b.cfg"); err != nil {
		t.Skip(err)
	}
	for _, s := range list {
		if err := s.Read(); err != nil {
			t.Fatal(err)
		}
	}
	list[1].Silent = true
	got := patch.ProveAll(list, all)
	if len(got) != 2 || !slices.Equal(got[0].Owners, []string{"a.toml", "b.toml"}) ||
		!says(got[0].Err, "hard link") || got[1].Err != nil {
		t.Errorf("outcomes are %+v", got)
	}
}

// A later round may come to a file that another printer reads.
func TestProveAllLaterFile(t *testing.T) {
	list := sources(t, files{
		"a.toml": sheetOf("a.cfg", "0"), "b.toml": sheetOf("b.cfg", "0"),
		"a.cfg":     hotConfig + "\n[include macro.cfg]\n",
		"b.cfg":     replace("max_temp: 290", "max_temp: 300") + "\n[include macro.cfg]\n",
		"macro.cfg": "[gcode_macro HOT]\ngcode:\n  M104 S320\n",
	})
	list[1].Silent = true
	got := patch.ProveAll(list, all)
	if len(got) != 1 || got[0].Err != nil || !slices.Equal(got[0].Owners, []string{"a.toml", "b.toml"}) {
		t.Fatalf("outcomes are %+v", got)
	}
	text := texts(got[0].Plan)
	if !strings.Contains(text["a.cfg"], "max_temp: 300") || !strings.Contains(text["macro.cfg"], "S300") {
		t.Errorf("the plan is %q", text)
	}
}

// What is not kept is read again where it is needed.
func TestProveReadsAgain(t *testing.T) {
	list := sources(t, files{"a.toml": proofSheet, "printer.cfg": hotConfig})
	list[0].Config = nil
	if got := patch.ProveAll(list, all); len(got) != 1 || got[0].Err != nil || len(got[0].Plan.Files) != 1 {
		t.Errorf("outcomes are %+v", got)
	}
	list[0].Config = nil
	if err := os.Remove("printer.cfg"); err != nil {
		t.Fatal(err)
	}
	if got := patch.ProveAll(list, all); len(got) != 1 || got[0].Err == nil || got[0].Plan != nil {
		t.Errorf("the file is gone, and outcomes are %+v", got)
	}
}

const twoTools = `#define CONFIGURATION_H_VERSION 02000905
#define EXTRUDERS 2
#define TEMP_SENSOR_0 11
#define TEMP_SENSOR_1 11
#define HEATER_0_MINTEMP 5
#define HEATER_1_MINTEMP 5
#define HEATER_0_MAXTEMP 300
#define HEATER_1_MAXTEMP 300
#define PREHEAT_1_TEMP_HOTEND 200
#define PREVENT_COLD_EXTRUSION
#define EXTRUDE_MINTEMP 170
#define THERMAL_PROTECTION_HOTENDS
#define THERMAL_PROTECTION_PERIOD 40
#define THERMAL_PROTECTION_HYSTERESIS 4
#define WATCH_TEMP_PERIOD 20
#define WATCH_TEMP_INCREASE 2
#define TEMP_HYSTERESIS 3
#define NOZZLE_TO_PROBE_OFFSET { 0, 0, 0 }
`

// What two tools of one printer want differently gets the value that protects
// more, also where one of them asks only after the other was heard.
func TestProveTools(t *testing.T) {
	tests := []struct {
		name, config string
		one, other   []string // parts of the two sheets that are replaced
		want         []string // lines that come
		left         string   // the rule that is overruled, and the sheet that does it
		yields       bool
	}{
		{"each its own limit", strings.ReplaceAll(twoTools, "MAXTEMP 300", "MAXTEMP 400"),
			nil, []string{"rated_c = 300", "rated_c = 290"},
			[]string{"#define HEATER_0_MAXTEMP 315", "#define HEATER_1_MAXTEMP 305"}, "", false},
		{"a shared preset", strings.NewReplacer("0_MAXTEMP 300", "0_MAXTEMP 315", "1_MAXTEMP 300",
			"1_MAXTEMP 295", "HOTEND 200", "HOTEND 320", "MINTEMP 170", "MINTEMP 100").Replace(twoTools),
			nil, []string{"rated_c = 300", "rated_c = 280"},
			[]string{"#define PREHEAT_1_TEMP_HOTEND 280", "#define EXTRUDE_MINTEMP 150"}, "", true},
		{"a watch that is too wide for one and then too tight for the other",
			strings.Replace(twoTools, "WATCH_TEMP_PERIOD 20", "WATCH_TEMP_PERIOD 500", 1),
			nil, []string{"rated_w = 40", "rated_w = 28\n[new.block]\nheat_capacity_j_per_k = 150"},
			nil, "runaway-tight", false},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			list := sources(t, files{
				"c.h": tt.config, "one.toml": sheetOf("c.h", "0", tt.one...),
				"other.toml": sheetOf("c.h", "1", tt.other...),
			})
			for range 2 {
				plan, err := patch.Prove(list, all)
				if err != nil {
					t.Fatal(err)
				}
				lines := strings.Split(texts(plan)["c.h"], "\n")
				for _, want := range tt.want {
					if !slices.Contains(lines, want) {
						t.Errorf("%q is not in %q", want, lines)
					}
				}
				const why = " that both read at a value that protects more"
				if tt.left != "" && (!leavesOne(plan, tt.left, why) || plan.Left[0].Owner == "") {
					t.Errorf("left are %+v", plan.Left)
				}
				yield := func(r patch.Reason) bool { return r.YieldsTo != "" }
				if yields := slices.ContainsFunc(plan.Reasons, yield); tt.left == "" && yields != tt.yields {
					t.Errorf("one yields: %v, want %v: %+v", yields, tt.yields, plan.Reasons)
				}
				for _, r := range plan.Reasons {
					if r.YieldsTo == r.Owner ||
						tt.left == "" && r.YieldsTo != "" && r.Finding.Rule != "preset-over" {
						t.Errorf("%s, %s yields to %s", r.Owner, r.Finding.Rule, r.YieldsTo)
					}
				}
				slices.Reverse(list) // the order of the sheets is of no matter
			}
		})
	}
}

// Two tools that melt with one heater cannot have two sensors on it: neither is
// done.
func TestProveToolsDisagree(t *testing.T) {
	list := sources(t, files{
		"one.toml":   sheetOf("printer.cfg", "0"),
		"other.toml": sheetOf("printer.cfg", "1", "ntc-100k-3950", "ntc-100k-4267"),
		"printer.cfg": replace("Generic 3950", "SliceEngineering 450") +
			"\n[extruder1]\nshared_heater: extruder\nnozzle_diameter: 0.4\nfilament_diameter: 1.75\n",
	})
	plan, err := patch.Prove(list, all)
	if err != nil || len(plan.Files) > 0 || len(plan.Left) != 2 {
		t.Fatalf("the plan is %v, %v", plan, err)
	}
	for i, other := range []string{"other.toml", "one.toml"} {
		got, want := plan.Left[i].Err.Error(), other+" wants it otherwise: the hotend sensor is wanted as "
		if !strings.HasPrefix(got, want) {
			t.Errorf("%s is left, since %s", plan.Left[i].Owner, got)
		}
	}
}

// jointly fails, or not, by how many changes it is asked for.
type jointly struct {
	parser.Style
	fails func(changes []parser.Change) error
}

type jointConfig struct {
	parser.Config
	fails func(changes []parser.Change) error
}

func (j jointly) Read(t *parser.Tree, r parser.Request) (parser.Config, error) {
	c, err := j.Style.Read(t, r)
	return jointConfig{c, j.fails}, err
}

func (j jointConfig) Edits(changes []parser.Change) ([]parser.Edit, error) {
	if err := j.fails(changes); err != nil {
		return nil, err
	}
	return j.Config.Edits(changes)
}

func TestProveEditsFail(t *testing.T) {
	config := hotConfig + "check_gain_time: 500\n"
	prove := func(fails func([]parser.Change) error) (*patch.Plan, error) {
		list := printer(t, config)
		list[0].Style = jointly{list[0].Style, fails}
		return patch.Prove(list, all)
	}
	plan, err := prove(func(c []parser.Change) error {
		if len(c) > 1 {
			return errors.New("not both")
		}
		return nil
	})
	if plan != nil || !says(err, "cannot be made together: not both") {
		t.Errorf("changes that exclude each other: %v, %v", plan, err)
	}
	plan, err = prove(func(c []parser.Change) error {
		if slices.ContainsFunc(c, func(c parser.Change) bool { return c.Key == parser.MaxTemp }) {
			return errors.New("not that one")
		}
		return nil
	})
	if err != nil || !leavesOne(plan, "temp-ceiling", "not that one") ||
		plan.Left[0].Err.Error() != "not that one" {
		t.Fatalf("a change that cannot be made: %+v, %v", plan, err)
	}
	if text := texts(plan)["printer.cfg"]; !has(text, "check_gain_time: 20", "max_temp: 330") {
		t.Errorf("the other one is not made: %q", text)
	}
	list := printer(t, config)
	list[0].Style = saboteur{list[0].Style, func(*parser.File, []parser.Edit) []parser.Edit { return nil }}
	plan, err = patch.Prove(list, all)
	if err != nil || len(plan.Left) != 2 || !says(plan.Left[0].Err, "the files say so already") {
		t.Errorf("no edit comes of the changes: %+v, %v", plan, err)
	}
	plan, err = prove(func([]parser.Change) error { return errors.New("none") })
	if err != nil || len(plan.Left) != 2 || len(plan.Files) != 0 {
		t.Errorf("no change can be made: %+v, %v", plan, err)
	}
}

// A style that makes one change less each time is not tried for ever.
func TestProveGivesUp(t *testing.T) {
	for _, tt := range []struct {
		presets int
		fails   bool
	}{{33, false}, {34, true}} {
		config := proofConfig + "\n[gcode_macro HOT]\ngcode:\n"
		for range tt.presets {
			config += "  M104 S299\n"
		}
		list := printer(t, config)
		list[0].Style = saboteur{list[0].Style, func(_ *parser.File, edits []parser.Edit) []parser.Edit {
			if len(edits) < 2 {
				return edits // one change by itself can be made
			}
			return edits[1:]
		}}
		plan, err := patch.Prove(list, all)
		if tt.fails != says(err, "the diff still fails after 64 attempts in memory") ||
			!tt.fails && err != nil {
			t.Errorf("%d presets: %v", tt.presets, err)
		}
		// The last one is made by itself, and so is the last of those that were put off.
		if !tt.fails &&
			(len(plan.Left) != tt.presets-2 || strings.Count(texts(plan)["printer.cfg"], "S290") != 2) {
			t.Errorf("%d presets: %d are left, and the text is %q", tt.presets, len(plan.Left), texts(plan))
		}
	}
}

// Where no change alone is to blame, all that is wrong with the diff is said, also
// where there are more changes than attempts.
func TestProveRefusesTogether(t *testing.T) {
	config := proofConfig + "\n[gcode_macro HOT]\ngcode:\n" + strings.Repeat("  M104 S330\n", 70)
	list := printer(t, config)
	list[0].Style = saboteur{list[0].Style, func(f *parser.File, edits []parser.Edit) []parser.Edit {
		return append(edits, swap(f, "pid_Kp: 20", "pid_Kp: 21")...)
	}}
	const want = "swap.toml: the diff failed when it was tried in memory and is not shown: " +
		"the kp would change although no rule asked for it"
	if plan, err := patch.Prove(list, all); plan != nil || err == nil || err.Error() != want {
		t.Errorf("%+v, %v", plan, err)
	}
}

// Two changes that both fail the proof are both left out, and a third is made.
func TestProveLeavesTwo(t *testing.T) {
	config := hotConfig + "check_gain_time: 500\nhysteresis: 400\n"
	list := printer(t, config)
	list[0].Style = saboteur{list[0].Style, func(f *parser.File, edits []parser.Edit) []parser.Edit {
		for _, e := range slices.Clone(edits) {
			switch e.For {
			case parser.HotendRiseWindow:
				edits = append(edits, swap(f, "pid_Kp: 20", "pid_Kp: 21")...)
			case parser.MaxTemp:
				edits = append(edits, swap(f, "pid_Ki: 1", "pid_Ki: 2")...)
			}
		}
		return edits
	}}
	plan, err := patch.Prove(list, all)
	if err != nil {
		t.Fatal(err)
	}
	want := strings.Replace(config, "hysteresis: 400", "hysteresis: 5", 1)
	if got := texts(plan)["printer.cfg"]; got != want {
		t.Errorf("the text is %q, want %q", got, want)
	}
	if len(plan.Left) != 2 || !says(errors.Join(plan.Left[0].Err, plan.Left[1].Err),
		"the ki would change", "the kp would change") {
		t.Errorf("left are %+v", plan.Left)
	}
}

// Changes that bring up new ones without end are refused, and the rule named.
func TestProveUnsettled(t *testing.T) {
	list := printer(t, hotConfig)
	rising := 330
	list[0].Style = saboteur{list[0].Style, func(f *parser.File, edits []parser.Edit) []parser.Edit {
		rising++
		return []parser.Edit{{At: edits[0].At, New: strconv.Itoa(rising), For: edits[0].For}}
	}}
	plan, err := patch.Prove(list, all)
	const want = "swap.toml: the changes come to no end in 8 rounds; the last rule to ask for one is " +
		"temp-ceiling"
	if plan != nil || err == nil || err.Error() != want {
		t.Errorf("%v, %v", plan, err)
	}
}

// Tools of two printers that share a file get the value that protects more too,
// but neither changes a heater of the other's.
func TestProveToolsOfTwoPrinters(t *testing.T) {
	prove := func(sensor string) (*patch.Plan, error) {
		common := strings.NewReplacer(
			"#define HEATER_0_MAXTEMP 300\n", "", "#define HEATER_1_MAXTEMP 300\n", "",
			"HOTEND 200", "HOTEND 320", "_0 11", "_0 "+sensor, "_1 11", "_1 "+sensor).Replace(twoTools)
		return patch.Prove(sources(t, files{
			"a.toml": sheetOf("a.h", "0"), "b.toml": sheetOf("b.h", "1", "rated_c = 300", "rated_c = 280"),
			"shared.h": common,
			"a.h":      "#define HEATER_0_MAXTEMP 315\n#define HEATER_1_MAXTEMP 250\n#include \"shared.h\"\n",
			"b.h":      "#define HEATER_0_MAXTEMP 250\n#define HEATER_1_MAXTEMP 295\n#include \"shared.h\"\n",
		}), all)
	}
	if plan, err := prove("61"); err != nil || !strings.Contains(texts(plan)["shared.h"], "HOTEND 280\n") {
		t.Errorf("the plan is %v, %v", plan, err)
	}
	plan, err := prove("11")
	const want = "a.toml: the diff failed when it was tried in memory and is not shown: " +
		"the sensor of tool 1 would change"
	if plan != nil || !says(err, want) {
		t.Errorf("the plan is %v, %v", plan, err)
	}
}
