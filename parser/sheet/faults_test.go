package sheet

import (
	"errors"
	"strings"
	"testing"

	"preflash/parser"
)

// One thing is wrong with the full sheet; the error stands at its line and
// column and says what.
func TestWrong(t *testing.T) {
	tests := []struct {
		name, old, new string
		line, column   int
		says           string
	}{
		{"unknown key", `rated_c = 300`, "rated_c = 300\nsmell = 300",
			21, 1, "new.smell is not a key of the sheet"},
		{"near miss", `rated_w = 48.0`, `rated_watt = 48.0`, 34, 1, "did you mean rated_w?"},
		{"wrong case", `supply_v`, `Supply_V`, 10, 1, "did you mean supply_v?"},
		{"dash", `duty_limit`, `duty-limit`, 36, 1, "did you mean duty_limit?"},
		{"near table", `[new.heater]`, `[new.haeter]`, 31, 1, "did you mean heater?"},
		{"wrong table", "[new.heater]\n", "rated_v = 24.0\n\n[new.heater]\n",
			31, 1, "it belongs in [new.heater] or [new.fan]"},
		{"text for a number", `rated_w = 48.0`, `rated_w = "48"`,
			34, 11, "must be a number from 1 to 1000 W, not text"},
		{"number for text", `name = "egret-03"`, `name = 3`, 4, 8, "must be text between double quotes"},
		{"fraction for a whole number", `adc_bits = 12`, `adc_bits = 12.5`,
			15, 12, "must be a whole number from 8 to 16"},
		{"adc bits", `adc_bits = 12`, `adc_bits = 24`, 15, 12, "impossible"},
		{"power that rises", `[300, 22]]`, `[300, 31]]`, 35, 9, "the power rises above 150 °C"},
		{"label and power at 25 °C differ", `rated_w = 48.0`, `rated_w = 54.0`,
			34, 11, "differ by more than a tenth"},
		{"negative watts", `rated_w = 48.0`, `rated_w = -48.0`,
			34, 11, "new.heater.rated_w = -48.0: impossible"},
		{"NaN", `supply_w = 350.0`, `supply_w = nan`, 11, 12, "NaN"},
		{"infinity", `supply_w = 350.0`, `supply_w = inf`, 11, 12, "infinity"},
		{"overflow", `supply_w = 350.0`, `supply_w = 1e999`, 11, 12, "beyond all bounds"},
		{"absurd voltage", `supply_v = 24.0`, `supply_v = 2400`,
			10, 12, "impossible; it must be a number from 3 to 60 V"},
		{"duty over 1", `duty_limit = 1.0`, `duty_limit = 100`, 36, 14, "from 0.01 to 1"},
		{"print_c reversed", `[190, 270]`, `[270, 190]`, 21, 11, "reversed"},
		{"print_c short", `[190, 270]`, `[190]`, 21, 11, "must be [°C, °C]"},
		{"print_c long", `[190, 270]`, `[190, 220, 270]`, 21, 11, "must be [°C, °C]"},
		{"print_c of text", `[190, 270]`, `["190", 270]`, 21, 11, "wrong in its first figure"},
		{"hot_w unsorted", `[200, 30], [300, 22]`, `[300, 22], [200, 30]`, 35, 9, "pair 3 is out of order"},
		{"hot_w short pair", `[200, 30]`, `[200]`, 35, 9, "pair 2 must be [°C, W]"},
		{"hot_w on a cartridge", `kind = "ptc"`, `kind = "cartridge"`, 35, 9, "is for a PTC heater"},
		{"unknown word", `kind = "ptc"`, `kind = "ceramic"`, 32, 8, `it must be "cartridge" or "ptc"`},
		{"near word", `kind = "ptc"`, `kind = "PTC"`, 32, 8, `did you mean "ptc"?`},
		{"two curves", `curve = "ntc-100k-3950"`, "curve = \"x\"\nbeta = { r25_ohm = 100000, b_k = 3950 }",
			27, 8, "both describe the sensor"},
		{"NTC rises", `curve = "ntc-100k-3950"`, `points = [[25, 100], [150, 200], [250, 300]]`,
			26, 10, "must fall all the way"},
		{"NTC stands still", `curve = "ntc-100k-3950"`, `points = [[25, 100000], [150, 1770], [250, 1770]]`,
			26, 10, "must fall all the way"},
		{"platinum falls", "kind = \"ntc\"\ncurve = \"ntc-100k-3950\"",
			"kind = \"platinum\"\npoints = [[0, 1000], [100, 900], [200, 800]]",
			26, 10, "must rise all the way"},
		{"platinum with beta", "kind = \"ntc\"\ncurve = \"ntc-100k-3950\"",
			"kind = \"platinum\"\nbeta = { r25_ohm = 1000, b_k = 3950 }", 26, 8, "describes an NTC"},
		{"thermocouple with curve", `kind = "ntc"`, `kind = "thermocouple"`, 26, 9, "means nothing here"},
		{"beta not a table", `curve = "ntc-100k-3950"`, `beta = 3950`, 26, 8, "must be { r25_ohm"},
		{"beta lacks b_k", `curve = "ntc-100k-3950"`, `beta = { r25_ohm = 100000 }`,
			26, 8, "new.sensor.beta.b_k is missing"},
		{"beta misspelt", `curve = "ntc-100k-3950"`, `beta = { r25_ohms = 100000, b_k = 3950 }`,
			26, 10, "did you mean r25_ohm?"},
		{"two points", `curve = "ntc-100k-3950"`, `points = [[25, 100000], [250, 230]]`,
			26, 10, "at least 3 pairs"},
		{"no curve", `curve = "ntc-100k-3950"`, ``, 24, 1, "has no curve"},
		{"fan cools less", `loss_fan_w_per_k = 0.097`, `loss_fan_w_per_k = 0.05`, 41, 20, "at least as much"},
		{"date as text", `on = 2026-10-02`, `on = "2026-10-02"`, 61, 6, "must be a date without quotes"},
		{"no such day", `on = 2026-10-02`, `on = 2026-02-30`, 61, 6, "no such day"},
		{"date with a time", `on = 2026-10-02`, `on = 2026-10-02T10:00:00`, 61, 6, "must be a date"},
		{"waiver without a reason", "reason = \"bed and hotend never heat together here\"\n", "",
			63, 1, "waiver.reason is missing"},
		{"waiver with one bracket pair", `[[waiver]]`, `[waiver]`, 63, 1, "must be written [[waiver]]"},
		{"later format", `format = 1`, `format = 2`, 1, 10, "must be 1"},
		{"absolute path", `"Configuration.h"`, `"/etc/passwd"`, 6, 11, "must be relative to the sheet"},
		{"path out of the tree", `"Configuration.h"`, `"../../../x.h"`, 6, 11, "outside the root"},
		{"backslash path", `"Configuration.h"`, `'sub\Configuration.h'`, 6, 11, "written with /"},
		{"path not in a list", `["panel.cfg"]`, `"panel.cfg"`, 8, 10, "must be a list of paths"},
		{"key twice", `wires = 2`, "wires = 2\nwires = 2", 47, 1, "given twice; it first stands in line 46"},
		{"table twice", `[tuned]`, "[new.fan]\n[tuned]", 56, 1, "given twice; it first stands in line 44"},
		{"dotted key into a table", "[tuned]\n", "[new.nozzle.x]\n[tuned]\nat_c.x = 1\n",
			59, 1, "given twice"},
		{"table over a value", `[tuned]`, "[new.rated_c]\n[tuned]",
			56, 1, "given twice; it first stands in line 20"},
		{"number for a table", "[new.fan]\n", "[new]\nfan = 3\n", 44, 1, "given twice"},
		{"unit after a number", `rated_w = 48.0`, `rated_w = 48W`,
			34, 13, "text must stand between double quotes"},
		{"text without quotes", `name = "egret-03"`, `name = egret-03`, 4, 8, "a value should stand here"},
		{"quote left open", `name = "egret-03"`, `name = "egret-03`, 4, 17, "closing quote"},
		{"bracket left open", `[tuned]`, `[tuned`, 56, 7, "a table's name ends with ]"},
		{"no value", `rated_w = 48.0`, `rated_w =`, 34, 10, "a value should stand here"},
		{"no equals sign", `rated_w = 48.0`, `rated_w 48.0`, 34, 9, "a key needs a ="},
		{"invalid UTF-8", `"egret-03"`, "\"h\xe9ron\"", 4, 10, "not UTF-8"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if !strings.Contains(full, tt.old) {
				t.Fatalf("the sheet does not hold %q", tt.old)
			}
			_, err := read(t, strings.Replace(full, tt.old, tt.new, 1), nil)
			if err == nil {
				t.Fatal("no error")
			}
			all := list(t, err)
			if len(all) > 1 {
				t.Errorf("%d errors, want 1: %v", len(all), err)
			}
			e := all[0]
			if e.Line != tt.line || e.Column != tt.column || !strings.Contains(e.Message, tt.says) {
				t.Errorf("got %d:%d %s\nwant %d:%d …%s…",
					e.Line, e.Column, e.Message, tt.line, tt.column, tt.says)
			}
			if !strings.HasSuffix(e.File, "fleet/egret/swap.toml") {
				t.Errorf("file %s", e.File)
			}
		})
	}
}

// An int is fine where a number is meant, and so are TOML's other spellings.
func TestNumbers(t *testing.T) {
	for _, text := range []string{"4700", "4_700", "4.7e3", "+4700.0", "0x125C"} {
		s := mustRead(t, strings.Replace(full, "pullup_ohm = 4700", "pullup_ohm = "+text, 1), nil)
		if s.Printer.PullupOhm.Value != 4700 {
			t.Errorf("%s is %v", text, s.Printer.PullupOhm.Value)
		}
	}
}

// A blank power table is asked of a PTC heater alone.
func TestBlankHotPower(t *testing.T) {
	blank := strings.Replace(full, `hot_w = [[25, 48], [200, 30], [300, 22]]`, `hot_w = ""`, 1)
	if _, err := read(t, blank, nil); err == nil ||
		!strings.Contains(err.Error(), "new.heater.hot_w is blank") {
		t.Errorf("a PTC heater: %v", err)
	}
	s := mustRead(t, strings.Replace(blank, `kind = "ptc"`, `kind = "cartridge"`, 1), nil)
	if s.New.Heater.HotW.Given {
		t.Errorf("a cartridge has %+v", s.New.Heater.HotW)
	}
}

// All that is missing or blank is told at once, in the order of the text.
func TestMissingAndBlank(t *testing.T) {
	_, err := read(t, `format = 1
[printer]
name = ""
config = []
supply_v = 24
[new]
print_c = ["", ""]
[new.heater]
rated_v = ""
rated_w = "  "
`, nil)
	if err == nil {
		t.Fatal("no error")
	}
	want := []struct {
		line int
		says string
	}{
		{3, "printer.name is blank"},
		{4, "printer.config is blank"},
		{6, "new.rated_c is missing"},
		{6, "new.sensor has no curve"},
		{7, "new.print_c is blank"},
		{8, "new.heater.kind is missing"},
		{9, "new.heater.rated_v is blank and blocks the check; give a number from 3 to 60 V"},
		{10, "new.heater.rated_w is blank"},
	}
	all := list(t, err)
	if len(all) != len(want) {
		t.Fatalf("got %d errors, want %d:\n%v", len(all), len(want), err)
	}
	for i, w := range want {
		if all[i].Line != w.line || !strings.Contains(all[i].Message, w.says) {
			t.Errorf("error %d: %d %s, want %d %s", i, all[i].Line, all[i].Message, w.line, w.says)
		}
	}
	_, err = read(t, "", nil)
	if all := list(t, err); all[0].Line != 1 || !strings.Contains(all[0].Message, "format is missing") {
		t.Errorf("an empty sheet: %v", err)
	}
}

func TestManyFaultsAreBounded(t *testing.T) {
	var b strings.Builder
	b.WriteString(least)
	for i := range 5000 {
		b.WriteString("[new.strange" + strings.Repeat("x", i%7) + strings.Repeat("y", i/7%60) +
			strings.Repeat("z", i/420) + "]\n")
	}
	_, err := read(t, b.String(), nil)
	all := list(t, err)
	if len(all) != maxFaults+1 || !strings.HasPrefix(all[maxFaults].Message, "and ") {
		t.Errorf("%d errors, last: %s", len(all), all[len(all)-1].Message)
	}
	for _, much := range []string{"[[waiver]]\n", "\n[new.x.y]", "x.y = 1\n"} {
		_, err := read(t, least+"x = ["+strings.Repeat("1,", 9990)+"1]\n"+strings.Repeat(much, 10_001), nil)
		if err == nil || !strings.Contains(err.Error(), "more than 10000") {
			t.Errorf("%q over and over: %v", much, err)
		}
	}
	deep := least + "x = " + strings.Repeat("[", 9000) + strings.Repeat("]", 9000)
	if _, err := read(t, deep, nil); err == nil || !strings.Contains(err.Error(), "nest") {
		t.Errorf("deep lists: %v", err)
	}
	var pe *parser.Error
	if _, err := read(t, "a."+strings.Repeat("b.", 9000)+"c = 1", nil); !errors.As(err, &pe) || pe.Line != 1 {
		t.Errorf("a long dotted key: %v", err)
	}
}

// A name or a reason is only shown: it is cut, not refused.
func TestLabelsAreCut(t *testing.T) {
	for n, kept := range map[int]int{maxLabel - 1: maxLabel - 1, maxLabel: maxLabel, maxLabel + 1: maxLabel} {
		long := strings.Repeat("x", n)
		s := mustRead(t, strings.NewReplacer(
			`name = "egret-03"`, `name = "`+long+`"`, `name = "short melt zone, PTC ring"`,
			`name = "`+long+`"`,
			`reason = "bed and hotend never heat together here"`, `reason = "`+long+`"`).Replace(full), nil)
		for _, got := range []string{s.Printer.Name.Value, s.New.Name.Value, s.Waivers[0].Reason.Value} {
			if len(got) != kept || (got == long) != (n <= maxLabel) {
				t.Errorf("%d bytes: %d are kept", n, len(got))
			}
		}
	}
}

// A blank that may stay is as if it were not given; beside one that blocks both
// are told, each in its words.
func TestBlanksThatMayStay(t *testing.T) {
	blank := strings.Replace(full, "output_a = 5.0", `output_a = ""`, 1)
	if blank == full {
		t.Fatal("no output_a in the sheet")
	}
	s := mustRead(t, blank, nil)
	if a := s.Printer.OutputA; a.Given || a.Value != 0 || a.At.Text() != `""` {
		t.Errorf("output_a is %+v", a)
	}
	both := strings.Replace(blank, "supply_v = 24.0", `supply_v = ""`, 1)
	_, err := read(t, both, nil)
	for _, want := range []string{
		"printer.supply_v is blank and blocks the check; give", "printer.output_a is blank and may stay open",
	} {
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("error %v does not say %q", err, want)
		}
	}
	if _, err := read(t, strings.Replace(full, `liner = "none"`, `liner = ""`, 1), nil); err == nil ||
		!strings.Contains(err.Error(), "liner is blank and blocks") {
		t.Errorf("a blank liner: %v", err)
	}
}
