package patch_test

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/patch"
)

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

// hotConfig has a limit above what proofSheet's hotend is rated for.
var hotConfig = replace("max_temp: 290", "max_temp: 330")

type files = map[string]string

func all(string) bool { return true }

// replace is proofConfig with some parts replaced, sheetWith is proofSheet.
func replace(pairs ...string) string   { return strings.NewReplacer(pairs...).Replace(proofConfig) }
func sheetWith(pairs ...string) string { return strings.NewReplacer(pairs...).Replace(proofSheet) }

const proofSheet = patch.ProofSheet

// printer reads the one printer of proofSheet.
func printer(t *testing.T, config string) []*patch.Source {
	t.Helper()
	return patch.Printers(t, files{"swap.toml": proofSheet, "printer.cfg": config})
}

// has reports whether all parts stand in a text, says whether they do in an error's.
func has(text string, parts ...string) bool {
	return !slices.ContainsFunc(parts, func(p string) bool { return !strings.Contains(text, p) })
}

func says(err error, parts ...string) bool { return err != nil && has(err.Error(), parts...) }

// leavesOne reports whether only this rule's change is left out, and why.
func leavesOne(p *patch.Plan, rule, why string) bool {
	return len(p.Left) == 1 && p.Left[0].Finding.Rule == rule && says(p.Left[0].Err, why)
}

func TestProve(t *testing.T) {
	tests := []struct {
		name   string
		config string
		want   []string // lines of the new text
	}{
		{"nothing to change", proofConfig, nil},
		{"limit", hotConfig, []string{"max_temp: 300"}},
		{"sensor, with an owner's comment", replace("Generic 3950", "ATC Semitec 104GT-2  # as it came"),
			[]string{"sensor_type: Generic 3950  # as it came"}},
		{"two at once", hotConfig + "check_gain_time: 500\n",
			[]string{"max_temp: 300", "check_gain_time: 20"}},
		{"a blind watch", replace("max_error: 120", "max_error: 1e9\nhysteresis: 400"),
			[]string{"max_error: 120", "hysteresis: 5"}},
		{"a guard above the limit goes down with it",
			replace("max_temp: 290", "max_temp: 330\nmin_extrude_temp: 310"),
			[]string{"max_temp: 300", "min_extrude_temp: 190"}},
		{"a preset follows the limit", hotConfig + "\n[gcode_macro HOT]\ngcode:\n  M104 S320\n",
			[]string{"max_temp: 300", "  M104 S300"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			list := printer(t, tt.config)
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
			old := strings.Split(string(plan.Files[0].Old), "\n")
			new := strings.Split(string(plan.Files[0].New), "\n")
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
	config := hotConfig
	const waiver = proofSheet + `[[waiver]]
rule = "temp-ceiling"
at = 330
reason = "bench only"
until = 2027-01-01
`
	plan, err := patch.Prove(patch.Printers(t, files{"swap.toml": waiver, "printer.cfg": config}), all)
	if err != nil || len(plan.Files) != 0 {
		t.Errorf("a waived finding changes something: %v, %v", plan, err)
	}
	none := func(rule string) bool { return rule != "temp-ceiling" }
	plan, err = patch.Prove(printer(t, config), none)
	if err != nil || len(plan.Files) != 0 {
		t.Errorf("a rule that does not count changes something: %v, %v", plan, err)
	}
}

// Printers that share a file must agree.
func TestProveShared(t *testing.T) {
	config := hotConfig
	other := sheetWith("rated_c = 300", "rated_c = 280")
	list := patch.Printers(t, files{"a.toml": proofSheet, "b.toml": proofSheet, "printer.cfg": config})
	plan, err := patch.Prove(list, all)
	if err != nil || len(plan.Files) != 1 || strings.Count(string(plan.Files[0].New), "max_temp: 300") != 1 {
		t.Errorf("two printers that agree: %v, %v", plan, err)
	}
	list = patch.Printers(t, files{"a.toml": proofSheet, "b.toml": other, "printer.cfg": config})
	plan, err = patch.Prove(list, all)
	if err != nil || !strings.Contains(texts(plan)["printer.cfg"], "max_temp: 280") ||
		plan.Reasons[0].YieldsTo != "b.toml" {
		t.Errorf("two printers of which one has the lower limit: %v, %v", plan, err)
	}

	// One has nothing to change until the other has changed it.
	hotter := strings.Replace(sheetWith("rated_c = 300", "rated_c = 320"), "250]", "310]", 1)
	list = patch.Printers(t, files{"a.toml": hotter, "b.toml": proofSheet, "printer.cfg": proofConfig})
	plan, err = patch.Prove(list, all)
	if err != nil || !strings.Contains(texts(plan)["printer.cfg"], "max_temp: 300") || len(plan.Left) != 1 ||
		plan.Left[0].Owner != "a.toml" {
		t.Errorf("two printers that undo each other's changes: %+v, %v", plan, err)
	}

	// Neither protects more: both are left out, and nothing else.
	other = sheetWith("ntc-100k-3950", "ntc-100k-4267")
	config = strings.Replace(config, "Generic 3950", "SliceEngineering 450", 1)
	list = patch.Printers(t, files{"a.toml": proofSheet, "b.toml": other, "printer.cfg": config})
	plan, err = patch.Prove(list, all)
	const otherwise = "b.toml wants it otherwise: the hotend sensor is wanted as "
	if err != nil || texts(plan)["printer.cfg"] != strings.Replace(config, "330", "300", 1) ||
		len(plan.Left) != 2 || !strings.HasPrefix(plan.Left[0].Err.Error(), otherwise) {
		t.Errorf("two printers that want two sensors: %q, %+v, %v", texts(plan), plan.Left, err)
	}
	// One has it right, so the other's sensor would be an error there.
	config = strings.Replace(config, "SliceEngineering 450", "Generic 3950", 1)
	list = patch.Printers(t, files{"a.toml": proofSheet, "b.toml": other, "printer.cfg": config})
	plan, err = patch.Prove(list, all)
	if err != nil || texts(plan)["printer.cfg"] != strings.Replace(config, "330", "300", 1) ||
		len(plan.Left) != 1 || plan.Left[0].Owner != "b.toml" ||
		!says(plan.Left[0].Err, "undo each other's changes") {
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
			config := hotConfig
			list := printer(t, config)
			list[0].Style = saboteur{list[0].Style, tt.edit}
			plan, err := patch.Prove(list, all)
			if !says(err, tt.want) {
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
	config := hotConfig + "check_gain_time: 500\n"
	list := printer(t, config)
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
	const why = "does not change the max temp: another place decides; change it by hand"
	if !leavesOne(plan, "temp-ceiling", why) {
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
	list := sources(t, files{"swap.toml": sheetOf("c.h", "0"), "c.h": header})
	plan, err := patch.Prove(list, all)
	if err != nil || len(plan.Left) > 0 {
		t.Fatalf("%+v, %v", plan, err)
	}
	text := texts(plan)["c.h"]
	if !has(text, "HYSTERESIS 4\n#undef WATCH", "PERIOD 40\n#else", "PERIOD 400\n#endif") {
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
	config := replace("max_temp: 290", "max_temp: 330", "min_temp: 0", "min_temp: 310") +
		"check_gain_time: 500\n"
	list := printer(t, config)
	plan, err := patch.Prove(list, all)
	if err != nil {
		t.Fatal(err)
	}
	if !leavesOne(plan, "temp-ceiling", "must be above 310") {
		t.Errorf("left are %+v", plan.Left)
	}
	if len(plan.Files) != 1 || !has(string(plan.Files[0].New), "check_gain_time: 20", "max_temp: 330") {
		t.Errorf("the plan is %v", texts(plan))
	}

	// With the reading put right the hotend would be too hot without that limit.
	config = strings.Replace(config, "min_temp", "pullup_resistor: 1000\nmin_temp", 1)
	withPullup := sheetWith("supply_v", "pullup_ohm = 4700\nsupply_v")
	list = patch.Printers(t, files{"swap.toml": withPullup, "printer.cfg": config})
	plan, err = patch.Prove(list, all)
	if err != nil || len(plan.Left) != 2 ||
		plan.Left[0].Finding.Rule != "temp-ceiling" || plan.Left[1].Finding.Rule != "sensor-curve" ||
		!strings.HasSuffix(plan.Left[1].Err.Error(), "and the hotend is rated for 300 °C") ||
		!strings.Contains(texts(plan)["printer.cfg"], "check_gain_time: 20") {
		t.Errorf("%+v, %v", plan, err)
	}
	// Without the watch nothing remains to be shown.
	plan, err = patch.Prove(list, func(rule string) bool { return rule != "runaway-loose" })
	if plan != nil || !says(err, "and the hotend is rated for 300 °C\n",
		"swap.toml: the change of temp-ceiling had been left out, since ") {
		t.Errorf("refused with %v", err)
	}
}

// A raise that is too much for another printer of the same file is left out.
func TestProveLeavesRaiseOfNeighbour(t *testing.T) {
	config := replace("max_temp: 290", "max_temp: 240", "max_error: 120", "max_error: 900")
	list := patch.Printers(t, files{"a.toml": proofSheet, "printer.cfg": config,
		"b.toml": sheetWith("egret-91", "egret-90", "300", "250", "250]", "225]")})
	list[1].Silent = true
	plan, err := patch.Prove(list, all)
	if err != nil {
		t.Fatal(err)
	}
	if text := texts(plan)["printer.cfg"]; !has(text, "max_error: 120", "max_temp: 240") {
		t.Errorf("the text is %q", text)
	}
	const why = "the diff fails with it when tried in memory: b.toml: " +
		"the changes would bring up a new error, temp-ceiling"
	if !leavesOne(plan, "temp-reach", why) || plan.Left[0].Owner != "a.toml" {
		t.Errorf("left are %+v", plan.Left)
	}
}
