package fleet

import (
	"slices"
	"strings"
	"testing"
)

const sectionsBase = `[extruder]
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
		files  map[string]string
		want   []string
		absent []string
		says   string // of the error
	}{
		{name: "two headers", want: []string{"Configuration.h", "Configuration_adv.h"},
			files: map[string]string{"Configuration.h": base, "Configuration_adv.h": watch, "Version.h": "#define A 1\n#define B 2\n#define C 3\n"}},
		{name: "a header that another includes", want: []string{"Configuration.h", "Configuration_adv.h"},
			files: map[string]string{"Configuration.h": base + "#include \"limits.h\"\n", "Configuration_adv.h": watch,
				"limits.h": "#define HEATER_0_MINTEMP 5\n#define HEATER_0_MAXTEMP 275\n#define HEATER_1_MAXTEMP 275\n"}},
		{name: "one main file", want: []string{"printer.cfg"}, absent: []string{"panel.cfg"},
			files: map[string]string{"printer.cfg": "[include parts.cfg]\n[include panel.cfg]\n" + sectionsBase, "parts.cfg": "[verify_heater extruder]\nmax_error: 100\n", "notes.cfg": "words\n"}},
		{name: "a copy", says: "preflash sheet printer-old.cfg printer.cfg",
			files: map[string]string{"printer.cfg": sectionsBase, "printer-old.cfg": sectionsBase}},
		{name: "a copy of a header", says: "preflash sheet Configuration.h old.h",
			files: map[string]string{"Configuration.h": base, "old.h": base}},
		{name: "both styles", says: "cannot be told",
			files: map[string]string{"Configuration.h": base, "printer.cfg": sectionsBase}},
		{name: "none", says: "there is no configuration here",
			files: map[string]string{"readme.txt": base, "empty.h": "", "empty.cfg": ""}},
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
	write(t, map[string]string{"in/printer.cfg": sectionsBase, "in/words.cfg": "words\n", "out.h": base})
	for _, tt := range []struct {
		names []string
		says  string
	}{
		{[]string{"in/gone.cfg"}, "in/gone.cfg: does not exist"},
		{[]string{"in/words.cfg"}, "in/words.cfg: looks like no configuration"},
		{[]string{"in/printer.cfg", "out.h"}, "out.h: lies outside the root"},
	} {
		_, err := ReadConfiguration(tt.names, "in", 0)
		if err == nil || !strings.Contains(err.Error(), tt.says) {
			t.Errorf("%v: error %v, want one that says %q", tt.names, err, tt.says)
		}
	}
}
