package patch_test

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"preflash/parser"
	"preflash/parser/sections"
	"preflash/parser/sheet"
	"preflash/patch"
)

const proofSheet = `format = 1
[printer]
name = "egret-91"
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

const proofConfig = `[extruder]
sensor_type: Generic 3950
min_temp: 0
max_temp: 290
control: pid
pid_Kp: 20
pid_Ki: 1
pid_Kd: 80
nozzle_diameter: 0.4
filament_diameter: 1.75

[heater_fan break]
heater: extruder
heater_temp: 50

[verify_heater extruder]
max_error: 120
`

// printers reads one printer for each sheet name, all in one folder.
func printers(t *testing.T, files map[string]string, sheets ...string) []*patch.Source {
	t.Helper()
	dir := t.TempDir()
	t.Chdir(dir)
	for name, text := range files {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	tree, err := parser.OpenTree(dir)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { tree.Close() })
	var list []*patch.Source
	for _, name := range sheets {
		s, err := sheet.Read(tree, name)
		if err != nil {
			t.Fatal(err)
		}
		list = append(list, &patch.Source{
			Owner: name, Tree: tree, Style: sections.Style, Sheet: s,
			Request: parser.Request{Files: []string{"printer.cfg"}},
			Today:   time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC),
		})
	}
	return list
}

func all(string) bool { return true }

func replace(old, new string) string { return strings.Replace(proofConfig, old, new, 1) }

func TestProve(t *testing.T) {
	tests := []struct {
		name   string
		config string
		want   []string // lines of the new text
	}{
		{"nothing to change", proofConfig, nil},
		{"limit", replace("max_temp: 290", "max_temp: 330"), []string{"max_temp: 300"}},
		{"sensor, with an owner's comment", replace("Generic 3950", "ATC Semitec 104GT-2  # as it came"),
			[]string{"sensor_type: Generic 3950  # as it came"}},
		{"two at once", replace("max_temp: 290", "max_temp: 330") + "check_gain_time: 500\n",
			[]string{"max_temp: 300", "check_gain_time: 20"}},
		{"a blind watch", replace("max_error: 120", "max_error: 1e9\nhysteresis: 400"), []string{"max_error: 120", "hysteresis: 5"}},
		{"a guard above the limit goes down with it", replace("max_temp: 290", "max_temp: 330\nmin_extrude_temp: 310"),
			[]string{"max_temp: 300", "min_extrude_temp: 190"}},
		{"a preset follows the limit", replace("max_temp: 290", "max_temp: 330") + "\n[gcode_macro HOT]\ngcode:\n  M104 S320\n",
			[]string{"max_temp: 300", "  M104 S300"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			list := printers(t, map[string]string{"swap.toml": proofSheet, "printer.cfg": tt.config}, "swap.toml")
			plan, err := patch.Prove(list, all)
			if err != nil {
				t.Fatal(err)
			}
			if tt.want == nil {
				if len(plan.Files) != 0 {
					t.Fatalf("changes %q", plan.Files[0].New)
				}
				return
			}
			if len(plan.Files) != 1 {
				t.Fatalf("changes %d files, want 1", len(plan.Files))
			}
			old, new := strings.Split(string(plan.Files[0].Old), "\n"), strings.Split(string(plan.Files[0].New), "\n")
			var changed []string
			for i, line := range new {
				if len(new) == len(old) && line != old[i] {
					changed = append(changed, line)
				}
			}
			if !slices.Equal(changed, tt.want) {
				t.Errorf("changed lines are %q, want %q", changed, tt.want)
			}
			// A second proof on the result has nothing to do.
			if err := os.WriteFile("printer.cfg", plan.Files[0].New, 0o666); err != nil {
				t.Fatal(err)
			}
			again, err := patch.Prove(list, all)
			if err != nil || len(again.Files) != 0 {
				t.Errorf("a second diff is not empty: %v, %v", again, err)
			}
		})
	}
}

// A waived finding, or one of a rule that does not count, asks for nothing.
func TestProveLeavesOut(t *testing.T) {
	config := replace("max_temp: 290", "max_temp: 330")
	waiver := proofSheet + "[[waiver]]\nrule = \"temp-ceiling\"\nat = 330\nreason = \"bench only\"\nuntil = 2027-01-01\n"
	plan, err := patch.Prove(printers(t, map[string]string{"swap.toml": waiver, "printer.cfg": config}, "swap.toml"), all)
	if err != nil || len(plan.Files) != 0 {
		t.Errorf("a waived finding changes something: %v, %v", plan, err)
	}
	none := func(rule string) bool { return rule != "temp-ceiling" }
	plan, err = patch.Prove(printers(t, map[string]string{"swap.toml": proofSheet, "printer.cfg": config}, "swap.toml"), none)
	if err != nil || len(plan.Files) != 0 {
		t.Errorf("a rule that does not count changes something: %v, %v", plan, err)
	}
}

// Printers that share a file must agree.
func TestProveShared(t *testing.T) {
	config := replace("max_temp: 290", "max_temp: 330")
	other := strings.Replace(proofSheet, "rated_c = 300", "rated_c = 280", 1)
	list := printers(t, map[string]string{"a.toml": proofSheet, "b.toml": proofSheet, "printer.cfg": config}, "a.toml", "b.toml")
	plan, err := patch.Prove(list, all)
	if err != nil || len(plan.Files) != 1 || strings.Count(string(plan.Files[0].New), "max_temp: 300") != 1 {
		t.Errorf("two printers that agree: %v, %v", plan, err)
	}
	list = printers(t, map[string]string{"a.toml": proofSheet, "b.toml": other, "printer.cfg": config}, "a.toml", "b.toml")
	plan, err = patch.Prove(list, all)
	if err != nil || !strings.Contains(texts(plan)["printer.cfg"], "max_temp: 280") || plan.Reasons[0].YieldsTo != "b.toml" {
		t.Errorf("two printers of which one has the lower limit: %v, %v", plan, err)
	}

	// One has nothing to change until the other has changed it.
	hotter := strings.Replace(strings.Replace(proofSheet, "rated_c = 300", "rated_c = 320", 1), "250]", "310]", 1)
	list = printers(t, map[string]string{"a.toml": hotter, "b.toml": proofSheet, "printer.cfg": proofConfig}, "a.toml", "b.toml")
	plan, err = patch.Prove(list, all)
	if err != nil || !strings.Contains(texts(plan)["printer.cfg"], "max_temp: 300") || len(plan.Left) != 1 || plan.Left[0].Owner != "a.toml" {
		t.Errorf("two printers that undo each other's changes: %+v, %v", plan, err)
	}

	// Neither protects more: both are left out, and nothing else.
	other = strings.Replace(proofSheet, "ntc-100k-3950", "ntc-100k-4267", 1)
	config = strings.Replace(config, "Generic 3950", "SliceEngineering 450", 1)
	list = printers(t, map[string]string{"a.toml": proofSheet, "b.toml": other, "printer.cfg": config}, "a.toml", "b.toml")
	plan, err = patch.Prove(list, all)
	if err != nil || texts(plan)["printer.cfg"] != strings.Replace(config, "330", "300", 1) || len(plan.Left) != 2 ||
		!strings.HasPrefix(plan.Left[0].Err.Error(), "b.toml wants it otherwise: the hotend sensor is wanted as ") {
		t.Errorf("two printers that want two sensors: %q, %+v, %v", texts(plan), plan.Left, err)
	}
	// One has it right, so the other's sensor would be an error there.
	config = strings.Replace(config, "SliceEngineering 450", "Generic 3950", 1)
	list = printers(t, map[string]string{"a.toml": proofSheet, "b.toml": other, "printer.cfg": config}, "a.toml", "b.toml")
	plan, err = patch.Prove(list, all)
	if err != nil || texts(plan)["printer.cfg"] != strings.Replace(config, "330", "300", 1) || len(plan.Left) != 1 ||
		plan.Left[0].Owner != "b.toml" || !strings.Contains(plan.Left[0].Err.Error(), "undo each other's changes") {
		t.Errorf("a sensor that is right for one: %q, %+v, %v", texts(plan), plan.Left, err)
	}
}

// saboteur is a style whose edits do more, or less, than they were asked.
type saboteur struct {
	parser.Style
	edit func(f *parser.File, edits []parser.Edit) []parser.Edit
}

type sabotaged struct {
	parser.Config
	edit func(f *parser.File, edits []parser.Edit) []parser.Edit
}

func (s saboteur) Read(t *parser.Tree, r parser.Request) (parser.Config, error) {
	c, err := s.Style.Read(t, r)
	return sabotaged{c, s.edit}, err
}

func (s sabotaged) Edits(changes []parser.Change) ([]parser.Edit, error) {
	edits, err := s.Config.Edits(changes)
	return s.edit(s.Printer().Files[0], edits), err
}

// swap is an edit that replaces the first occurrence of old.
func swap(f *parser.File, old, new string) []parser.Edit {
	at := strings.Index(string(f.Data), old)
	if at < 0 {
		return nil
	}
	return []parser.Edit{{At: parser.Span{File: f, Start: at, End: at + len(old)}, New: new}}
}

// The proof must refuse whatever a faulty style would do.
func TestProveRefuses(t *testing.T) {
	tests := []struct {
		name string
		edit func(f *parser.File, edits []parser.Edit) []parser.Edit
		want string
	}{
		{"loosens a watch as well", func(f *parser.File, edits []parser.Edit) []parser.Edit {
			return append(edits, swap(f, "max_error: 120", "max_error: 300")...)
		}, "hotend error sum would change although no rule asked for it"},
		{"brings up a new error", func(f *parser.File, edits []parser.Edit) []parser.Edit {
			return append(edits, swap(f, "min_temp: 0", "min_temp: 30")...)
		}, "min-temp-high"},
		{"changes another setting", func(f *parser.File, edits []parser.Edit) []parser.Edit {
			return append(edits, swap(f, "pid_Kp: 20", "pid_Kp: 21")...)
		}, "the kp would change although no rule asked for it"},
		{"breaks the file", func(f *parser.File, edits []parser.Edit) []parser.Edit {
			return append(edits, swap(f, "[extruder]", "extruder")...)
		}, "cannot be read"},
		{"loses a setting", func(f *parser.File, edits []parser.Edit) []parser.Edit {
			return append(edits, swap(f, "nozzle_diameter: 0.4\n", "")...)
		}, "nozzle diameter"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			config := replace("max_temp: 290", "max_temp: 330")
			list := printers(t, map[string]string{"swap.toml": proofSheet, "printer.cfg": config}, "swap.toml")
			list[0].Style = saboteur{list[0].Style, tt.edit}
			plan, err := patch.Prove(list, all)
			if err == nil || !strings.Contains(err.Error(), tt.want) {
				t.Fatalf("Prove gives %v, want an error with %q", err, tt.want)
			}
			if plan != nil {
				t.Error("Prove gives a plan beside its error")
			}
		})
	}
}

// A change that does not take hold is left out, and said; the others are made.
func TestProveLeaves(t *testing.T) {
	config := replace("max_temp: 290", "max_temp: 330") + "check_gain_time: 500\n"
	list := printers(t, map[string]string{"swap.toml": proofSheet, "printer.cfg": config}, "swap.toml")
	list[0].Style = saboteur{list[0].Style, func(f *parser.File, edits []parser.Edit) []parser.Edit {
		for i := range edits {
			if edits[i].For == parser.MaxTemp {
				edits[i] = swap(f, "nozzle_diameter: 0.4", "nozzle_diameter: 0.4 ")[0]
			}
		}
		return edits
	}}
	plan, err := patch.Prove(list, all)
	if err != nil {
		t.Fatal(err)
	}
	if len(plan.Left) != 1 || plan.Left[0].Finding.Rule != "temp-ceiling" || !strings.Contains(plan.Left[0].Err.Error(), "does not change the max temp: another place decides; change it by hand") {
		t.Errorf("left are %+v", plan.Left)
	}
	if len(plan.Files) != 1 || !strings.Contains(string(plan.Files[0].New), "check_gain_time: 20") {
		t.Errorf("the other change is not made: %v", plan.Files)
	}
}

// One that missed because another change of its round made another place decide
// is made after that one.
func TestProvePutsOff(t *testing.T) {
	header := fmt.Sprintf(sweepHeader, "02000901", 61) + `#undef THERMAL_PROTECTION_HYSTERESIS
#define THERMAL_PROTECTION_HYSTERESIS 20
#undef WATCH_TEMP_PERIOD
#if THERMAL_PROTECTION_HYSTERESIS < 20
  #define WATCH_TEMP_PERIOD 400
#else
  #define WATCH_TEMP_PERIOD 400
#endif
`
	list := sources(t, map[string]string{"swap.toml": sheetOf("c.h", "0"), "c.h": header}, "swap.toml")
	plan, err := patch.Prove(list, all)
	if err != nil || len(plan.Left) > 0 {
		t.Fatalf("%+v, %v", plan, err)
	}
	text := texts(plan)["c.h"]
	if !strings.Contains(text, "HYSTERESIS 4\n#undef WATCH") || !strings.Contains(text, "PERIOD 40\n#else") || !strings.Contains(text, "PERIOD 400\n#endif") {
		t.Errorf("the text is %q", text)
	}
	if err := os.WriteFile("c.h", []byte(text), 0o666); err != nil {
		t.Fatal(err)
	}
	if err := list[0].Read(); err != nil {
		t.Fatal(err)
	}
	if again, err := patch.Prove(list, all); err != nil || len(again.Files) > 0 {
		t.Errorf("a second diff is not empty: %v", err)
	}
}

// One that makes a limit which the firmware refuses is left out.
func TestProveLeavesRefused(t *testing.T) {
	config := strings.Replace(replace("max_temp: 290", "max_temp: 330"), "min_temp: 0", "min_temp: 310", 1) + "check_gain_time: 500\n"
	list := printers(t, map[string]string{"swap.toml": proofSheet, "printer.cfg": config}, "swap.toml")
	plan, err := patch.Prove(list, all)
	if err != nil {
		t.Fatal(err)
	}
	if len(plan.Left) != 1 || plan.Left[0].Finding.Rule != "temp-ceiling" || !strings.Contains(plan.Left[0].Err.Error(), "must be above 310") {
		t.Errorf("left are %+v", plan.Left)
	}
	if len(plan.Files) != 1 || !strings.Contains(string(plan.Files[0].New), "check_gain_time: 20") || !strings.Contains(string(plan.Files[0].New), "max_temp: 330") {
		t.Errorf("the plan is %v", texts(plan))
	}

	// With the reading put right the hotend would be too hot without that limit.
	config = strings.Replace(config, "min_temp", "pullup_resistor: 1000\nmin_temp", 1)
	list = printers(t, map[string]string{"swap.toml": strings.Replace(proofSheet, "supply_v", "pullup_ohm = 4700\nsupply_v", 1), "printer.cfg": config}, "swap.toml")
	plan, err = patch.Prove(list, all)
	if err != nil || len(plan.Left) != 2 || plan.Left[0].Finding.Rule != "temp-ceiling" || plan.Left[1].Finding.Rule != "sensor-curve" ||
		!strings.HasSuffix(plan.Left[1].Err.Error(), "and the hotend is rated for 300 °C") || !strings.Contains(texts(plan)["printer.cfg"], "check_gain_time: 20") {
		t.Errorf("%+v, %v", plan, err)
	}
	// Without the watch nothing remains to be shown.
	plan, err = patch.Prove(list, func(rule string) bool { return rule != "runaway-loose" })
	if plan != nil || err == nil || !strings.Contains(err.Error(), "and the hotend is rated for 300 °C\n") ||
		!strings.Contains(err.Error(), "swap.toml: the change of temp-ceiling had been left out, since ") {
		t.Errorf("refused with %v", err)
	}
}

// A raise that is too much for another printer of the same file is left out.
func TestProveLeavesRaiseOfNeighbour(t *testing.T) {
	config := strings.Replace(replace("max_temp: 290", "max_temp: 240"), "max_error: 120", "max_error: 900", 1)
	list := printers(t, map[string]string{"a.toml": proofSheet, "printer.cfg": config,
		"b.toml": strings.NewReplacer("egret-91", "egret-90", "300", "250", "250]", "225]").Replace(proofSheet)}, "a.toml", "b.toml")
	list[1].Silent = true
	plan, err := patch.Prove(list, all)
	if err != nil {
		t.Fatal(err)
	}
	if text := texts(plan)["printer.cfg"]; !strings.Contains(text, "max_error: 120") || !strings.Contains(text, "max_temp: 240") {
		t.Errorf("the text is %q", text)
	}
	if len(plan.Left) != 1 || plan.Left[0].Owner != "a.toml" || plan.Left[0].Finding.Rule != "temp-reach" ||
		!strings.Contains(plan.Left[0].Err.Error(), "the diff fails with it when tried in memory: b.toml: the changes would bring up a new error, temp-ceiling") {
		t.Errorf("left are %+v", plan.Left)
	}
}
