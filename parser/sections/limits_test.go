package sections

import (
	"strings"
	"testing"

	"preflash/parser"
)

// Far too much of anything is one clear error, or a remark, in bounded time
// and memory.
func TestLimits(t *testing.T) {
	saved := savedHead + "#*# [extruder]\n" + strings.Repeat("#*# max_temp = 2\n", 100_000)
	many := func(text string) string { return strings.Repeat(text, 210_000) }
	for _, test := range []struct {
		name  string
		files files
		says  string
	}{
		{"options", files{"printer.cfg": "[a]\n" + many("b:1\n")},
			"printer.cfg:200001: more than 200000 sections and options"},
		{"sections", files{"printer.cfg": many("[a]\n")}, "more than 200000 sections and options"},
		{"included text", files{
			"printer.cfg": strings.Repeat("[include b.cfg]\n", 20),
			"b.cfg":       strings.Repeat("#"+strings.Repeat("x", 62)+"\n", 64<<10),
		}, "more than 64 MiB"},
		{"one file", files{"printer.cfg": strings.Repeat("#", 8<<20+1)}, "larger than 8 MiB"},
	} {
		if _, err := tryFiles(t, test.files); err == nil || !strings.Contains(err.Error(), test.says) {
			t.Errorf("%s: %v, want %q", test.name, err, test.says)
		}
	}
	for name, text := range map[string]string{
		"one long line":  "[a]\nb: " + strings.Repeat("x", 4<<20) + "\n",
		"one long value": "[gcode_macro a]\ngcode:\n" + many("  G1 X1\n"),
		"semicolons":     "[a]\nb: " + strings.Repeat("x;", 1<<20) + "\n",
		"brackets":       strings.Repeat("[", 1<<20) + "]\n",
		"braces":         "[gcode_macro a]\ngcode:\n  M104 " + strings.Repeat("{", 1<<20) + "\n",
		"sensor points": "[extruder]\nsensor_type: a\n[adc_temperature a]\n" +
			strings.Repeat("temperature1: 1\nresistance1: 1\n", 50_000),
		"saved values that hide":   "[extruder]\nmax_temp: 1\n" + saved,
		"saved values of one name": "[extruder]\n" + saved,
	} {
		c, err := tryFiles(t, files{"printer.cfg": text})
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		c.Entries()
	}
	c := readText(t, "[extruder]\n[gcode_macro a]\ngcode:\n"+strings.Repeat("  M104 S200\n", 3000))
	if n := len(c.Printer().Limits.Presets); n > mostPresets+1 {
		t.Errorf("%d presets", n)
	}
	if gaps := remarksOf(c, parser.RemarkGap); len(gaps) != 1 {
		t.Errorf("%v", gaps)
	}
}

// Patterns that match nothing count as files do.
func TestPatternsWithoutMatch(t *testing.T) {
	for n, ok := range map[int]bool{
		parser.MaxFiles - 2: true, parser.MaxFiles - 1: true, parser.MaxFiles: false,
	} {
		patterns := strings.Repeat("[include none*.cfg]\n", n)
		_, err := tryFiles(t, files{"printer.cfg": patterns + "[extruder]\n"})
		if (err == nil) != ok ||
			!ok && !strings.Contains(err.Error(), "printer.cfg:256: more than 256 files") {
			t.Errorf("%d patterns: %v", n, err)
		}
	}
}

// What stands in every section is counted in every section.
func TestDefaultSectionLimit(t *testing.T) {
	const options = 1000
	for n, ok := range map[int]bool{
		mostLines/options - 1: true, mostLines / options: true, mostLines/options + 1: false,
	} {
		text := "[DEFAULT]\n"
		for i := range options {
			text += "k" + decimal(float64(i), "") + ": 1\n"
		}
		for i := range n - 1 {
			text += "[s" + decimal(float64(i), "") + "]\n"
		}
		c, err := tryFiles(t, files{"printer.cfg": text})
		switch {
		case (err == nil) != ok || !ok && !strings.Contains(err.Error(), "more than 200000 options"):
			t.Errorf("%d sections: %v", n, err)
		case ok && len(c.Entries()) != options*n:
			t.Errorf("%d sections have %d options", n, len(c.Entries()))
		}
	}
}

// Colons that are no options' get no more room than as many options as there may be.
func TestRoomForOptions(t *testing.T) {
	c := readText(t, "[extruder]\n#"+strings.Repeat(":", 2*mostLines)+"\n")
	if room := cap(c.options); room > mostLines {
		t.Errorf("room for %d options, of which there may be %d", room, mostLines)
	}
}

// A definition gets a name even where many are taken, and an error where all
// are.
func TestTakenNames(t *testing.T) {
	text := "[extruder]\nsensor_type: Generic 3950\n"
	def := parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, Name: "a", R25Ohm: 1e5, BetaK: 4000}
	change := []parser.Change{{Key: parser.HotendSensor, Value: def}}
	taken := "[thermistor a]\nbeta: 1\n"
	for n := 2; n <= mostNames; n++ {
		taken += "[thermistor a_" + decimal(float64(n), "") + "]\nbeta: 1\n"
	}
	if _, err := readText(t, text).Edits(change); err != nil {
		t.Error(err)
	}
	if _, err := readText(t, taken+text).Edits(change); err == nil ||
		!strings.Contains(err.Error(), "give the new one another") {
		t.Errorf("%v", err)
	}
}
