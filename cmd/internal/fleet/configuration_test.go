package fleet

import (
	"maps"
	"os"
	"path"
	"runtime"
	"runtime/debug"
	"slices"
	"strings"
	"testing"
)

const sectionsBase = `[printer]
kinematics: cartesian
[extruder]
sensor_type: Generic 3950
control: pid
pid_kp: 20
pid_ki: 1
pid_kd: 100
min_temp: 0
max_temp: 260
nozzle_diameter: 0.4
filament_diameter: 1.75
`

// Without names, the configuration is what a style recognises and nothing else
// includes; where that leaves a choice, the choice is the user's.
func TestReadConfigurationLooks(t *testing.T) {
	for _, tt := range []struct {
		name   string
		files  texts
		want   []string
		absent []string
		says   string // of the error
	}{
		{name: "two headers", want: []string{"Configuration.h", "Configuration_adv.h"},
			files: texts{"Configuration.h": base, "Configuration_adv.h": watch,
				"Version.h": "#define A 1\n#define B 2\n#define C 3\n"}},
		{name: "a header that another includes", want: []string{"Configuration.h", "Configuration_adv.h"},
			files: texts{"Configuration.h": base + "#include \"limits.h\"\n", "Configuration_adv.h": watch,
				"limits.h": "#define HEATER_0_MINTEMP 5\n" +
					"#define HEATER_0_MAXTEMP 275\n#define HEATER_1_MAXTEMP 275\n"}},
		{name: "one main file", want: []string{"printer.cfg"}, absent: []string{"panel.cfg"},
			files: texts{"printer.cfg": "[include parts.cfg]\n[include panel.cfg]\n" + sectionsBase,
				"parts.cfg": "[verify_heater extruder]\nmax_error: 100\n", "notes.cfg": "words\n"}},
		{name: "a copy, and what the firmware saved", want: []string{"printer.cfg"},
			files: texts{"printer.cfg": sectionsBase, "printer-old.cfg": sectionsBase,
				"printer (2).cfg": sectionsBase, "printer_autosave.cfg": sectionsBase,
				"printer-20260101_120000.cfg": sectionsBase}},
		{name: "a copy of a header", want: []string{"Configuration.h", "Configuration_adv.h"},
			files: texts{"Configuration.h": base, "Configuration.old.h": base,
				"Configuration_adv.h": watch, "Configuration_adv-backup.h": watch}},
		{name: "a part that nobody includes", want: []string{"printer.cfg"},
			files: texts{"printer.cfg": sectionsBase, "spare.cfg": "[extruder]\nmax_temp: 300\n"}},
		{name: "two printers",
			says: "configurations of 2 printers; name the files of one: " +
				"preflash sheet left.cfg; preflash sheet right.cfg",
			files: texts{"left.cfg": sectionsBase, "right.cfg": sectionsBase}},
		{name: "both styles", says: "2 printers; name the files of one: preflash sheet printer.cfg; " +
			"preflash sheet Configuration.h Configuration_adv.h",
			files: texts{"Configuration.h": base, "Configuration_adv.h": watch, "printer.cfg": sectionsBase}},
		{name: "only parts", says: "holds no whole configuration: hotend.cfg is a part: it lacks [printer]",
			files: texts{"hotend.cfg": "[extruder]\nmax_temp: 300\n"}},
		{name: "only the second header",
			says:  "holds no whole configuration: Configuration_adv.h is a part: it lacks TEMP_SENSOR_0",
			files: texts{"Configuration_adv.h": watch}},
		{name: "below", says: "below it: preflash sheet left, or preflash sheet right/config",
			files: texts{"left/printer.cfg": sectionsBase,
				"right/config/printer.cfg": "[include parts/*.cfg]\n" + sectionsBase,
				"right/config/parts/a.cfg": "[extruder]\nmax_temp: 300\n"}},
		{name: "none", says: "holds no configuration (no .h or .cfg file",
			files: texts{"readme.txt": base, "empty.h": "", "empty.cfg": ""}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			write(t, tt.files)
			c, err := ReadConfiguration(nil, "", 0)
			if tt.says != "" {
				if err == nil || !strings.Contains(err.Error(), tt.says) {
					t.Errorf("error %v, want one that says %q", err, tt.says)
				}
				return
			}
			if err != nil {
				t.Fatal(err)
			}
			if !slices.Equal(c.Files, tt.want) || !slices.Equal(c.Absent, tt.absent) || !c.Guess {
				t.Errorf("read %v, absent %v, want %v and %v", c.Files, c.Absent, tt.want, tt.absent)
			}
		})
	}
}

func TestReadConfigurationRefuses(t *testing.T) {
	write(t, texts{"in/printer.cfg": "[include parts/*.cfg]\n" + sectionsBase,
		"in/parts/hotend.cfg":    "[extruder]\nmax_temp: 250\n",
		"in/two/Configuration.h": base, "in/two/Configuration_adv.h": watch, "in/words.cfg": "words\n",
		"out.h": base})
	for _, tt := range []struct {
		names []string
		says  string
	}{
		{[]string{"in/gone.cfg"}, "in/gone.cfg: does not exist"},
		{[]string{"in/words.cfg"}, "in/words.cfg: looks like no configuration"},
		{[]string{"in/parts/hotend.cfg"},
			"in/parts/hotend.cfg: is a part of a configuration: it lacks [printer]; " +
				"it is read by: preflash sheet in/printer.cfg"},
		{[]string{"in/two/Configuration_adv.h"}, "lacks TEMP_SENSOR_0. Configuration.h beside it has that; " +
			"name both: preflash sheet in/two/Configuration.h in/two/Configuration_adv.h"},
		{[]string{"in", "in/printer.cfg"}, "in: is a folder"},
		{[]string{"in/printer.cfg", "out.h"}, "out.h: lies outside the root"},
	} {
		_, err := ReadConfiguration(tt.names, "in", 0)
		if err == nil || !strings.Contains(err.Error(), tt.says) {
			t.Errorf("%v: error %v, want one that says %q", tt.names, err, tt.says)
		}
	}
}

// What is refused leaves no root open; what is read leaves one, for the caller.
func TestReadConfigurationCloses(t *testing.T) {
	write(t, texts{"a/printer.cfg": sectionsBase,
		"a/swap.toml":       "format = 1\n[printer]\nconfig = [\"printer.cfg\"]\n",
		"a/empty.swap.toml": "format = 1\n"})
	defer debug.SetGCPercent(debug.SetGCPercent(-1)) // a collection closes what is lost
	here, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	// What other tests lost may be closed meanwhile, so only what leads here counts.
	open := func() (count int) {
		list, _ := os.ReadDir("/proc/self/fd") // no such folder: nothing to count
		for _, fd := range list {
			if to, _ := os.Readlink("/proc/self/fd/" + fd.Name()); to == here {
				count++
			}
		}
		return count
	}
	if _, err := ReadConfiguration([]string{"a/gone.cfg"}, "", 0); err == nil {
		t.Error("what is not there was read")
	}
	if _, _, _, err := ReadBegun("a/empty.swap.toml", ""); err == nil {
		t.Error("a sheet without a configuration was gone on with")
	}
	one, err := ReadConfiguration([]string{"a/printer.cfg"}, "", 0)
	if err != nil {
		t.Fatal(err)
	}
	_, two, _, err := ReadBegun("a/swap.toml", "")
	if err != nil {
		t.Fatal(err)
	}
	if during := open(); during != 2 && runtime.GOOS == "linux" {
		t.Errorf("%d roots are open, want 2", during)
	}
	_, _ = one.Tree.Close(), two.Tree.Close()
	if after := open(); after != 0 {
		t.Errorf("%d roots are still open", after)
	}
}

// One header of two finds the other one; a tool that is not there is an error.
func TestReadConfigurationCompletes(t *testing.T) {
	write(t, texts{"Configuration.h": base, "Configuration_adv.h": watch, "Configuration_adv_old.h": watch,
		"two.cfg": sectionsBase + "[extruder1]\n"})
	c, err := ReadConfiguration([]string{"Configuration.h"}, "", 0)
	if err != nil || !slices.Equal(c.Files, []string{"Configuration.h", "Configuration_adv.h"}) || !c.Guess {
		t.Errorf("%+v, %v", c, err)
	}
	if c, err := ReadConfiguration([]string{"two.cfg"}, "", 1); err != nil || c.Printer().Tool != 1 {
		t.Errorf("tool 1 of two: %v", err)
	}
	const says = "--tool 2 is not there: this configuration has 2 tools, 0 and 1"
	_, err = ReadConfiguration([]string{"two.cfg"}, "", 2)
	if err == nil || !strings.Contains(err.Error(), says) {
		t.Errorf("tool 2 of two: %v", err)
	}
}

// A printer is called by the folder that tells, and no two alike.
func TestNameFor(t *testing.T) {
	for _, tt := range []struct {
		name, place string
		files       texts
		want        string
	}{
		{"its folder", "egret-3/printer.cfg", nil, "egret-3"},
		{"above what tells nothing", "egret-3/printer_data/config/printer.cfg", nil, "egret-3"},
		{"two in a folder", "shop/left.cfg", texts{"shop/right.cfg": sectionsBase}, "shop-left"},
		{"several tools", "egret-3/printer.cfg", texts{"egret-3/printer.cfg": sectionsBase + "[extruder1]\n"},
			"egret-3-tool-0"},
		{"taken", "a/egret/printer.cfg",
			texts{"b/swap.toml": "format = 1\n[printer]\nname = \"egret\"\n"}, "egret-2"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			files := texts{tt.place: sectionsBase}
			maps.Copy(files, tt.files)
			write(t, files)
			c, err := ReadConfiguration([]string{tt.place}, "", 0)
			if err != nil {
				t.Fatal(err)
			}
			if got := c.NameFor(path.Join(path.Dir(tt.place), "swap.toml")); got != tt.want {
				t.Errorf("called %q, want %q", got, tt.want)
			}
		})
	}
}
