package defines

import (
	"bytes"
	"strings"
	"testing"

	"preflash/parser"
)

// edited applies changes and gives the text of the first file after them.
func edited(t *testing.T, c *config, changes ...parser.Change) string {
	t.Helper()
	edits, err := c.Edits(changes)
	if err != nil {
		t.Fatal(err)
	}
	return string(applied(c.s.files[0], edits))
}

// to is a change of one setting.
func to(key parser.Key, value any) parser.Change { return parser.Change{Key: key, Value: value} }

func TestEdits(t *testing.T) {
	const bed = "#define THERMAL_PROTECTION_BED\n"
	lower := []parser.Change{to(parser.MaxTemp, 270.0)}
	on := []parser.Change{to(parser.HotendWatchOn, true)}
	numbered := parser.SensorDef{Form: parser.FormPoints, Name: "1"}
	custom := parser.SensorDef{
		Form: parser.FormBeta, R25Ohm: 100e3, BetaK: 4066.123456, CubicC: 7.06e-8, PullupOhm: 4700,
	}
	tests := []struct {
		name, before string
		changes      []parser.Change
		after        string
	}{
		{"only the value's bytes", "#define HEATER_0_MAXTEMP 285   // was 260\n",
			lower, "#define HEATER_0_MAXTEMP 270   // was 260\n"},
		{"whole degrees, down", "#define HEATER_0_MAXTEMP 285\n",
			[]parser.Change{to(parser.MaxTemp, 270.9)}, "#define HEATER_0_MAXTEMP 270\n"},
		{"parentheses", "#define HEATER_0_MAXTEMP (285)\n", lower, "#define HEATER_0_MAXTEMP (270)\n"},
		{"expression", "#define HEATER_0_MAXTEMP (240 + 45) // sum\n",
			lower, "#define HEATER_0_MAXTEMP 270 // sum\n"},
		{"another macro", "#define TOP 285\n#define HEATER_0_MAXTEMP TOP\n",
			lower, "#define TOP 285\n#define HEATER_0_MAXTEMP 270\n"},
		{"the winner of two", "#define HEATER_0_MAXTEMP 275\n#define HEATER_0_MAXTEMP 300\n",
			lower, "#define HEATER_0_MAXTEMP 275\n#define HEATER_0_MAXTEMP 270\n"},
		{"continued line", "#define HEATER_0_MAXTEMP \\\n  285\n",
			lower, "#define HEATER_0_MAXTEMP \\\n  270\n"},
		{"CRLF without a last newline", "#define X 1\r\n#define HEATER_0_MAXTEMP 285",
			lower, "#define X 1\r\n#define HEATER_0_MAXTEMP 270"},
		{"Latin-1 comment", "#define HEATER_0_MAXTEMP 285 // gr\xfc\xdfe\n",
			lower, "#define HEATER_0_MAXTEMP 270 // gr\xfc\xdfe\n"},

		{"duty counts, rounded down", "#define PIDTEMP\n#define PID_MAX 255\n#define BANG_MAX 255\n",
			[]parser.Change{to(parser.PowerLimit("in range"), 0.7),
				to(parser.PowerLimit("below range"), 0.7)},
			"#define PIDTEMP\n#define PID_MAX 178\n#define BANG_MAX 178\n"},
		{"limit by another's name", "#define PIDTEMP\n#define BANG_MAX 255\n#define PID_MAX BANG_MAX\n",
			[]parser.Change{to(parser.PowerLimit("in range"), 0.5)},
			"#define PIDTEMP\n#define BANG_MAX 255\n#define PID_MAX 127\n"},
		{"a limit that is missing", "#define PIDTEMP\n#define BANG_MAX 255\n",
			[]parser.Change{to(parser.PowerLimit("in range"), 0.5)},
			"#define PIDTEMP\n#define BANG_MAX 255\n#define PID_MAX 127\n"},
		{"list element with its suffix", "#define MPCTEMP\n#define MPC_HEATER_POWER { 40.0f /* label */ }\n",
			[]parser.Change{to(parser.ModelPower, 28.2)},
			"#define MPCTEMP\n#define MPC_HEATER_POWER { 28.2f /* label */ }\n"},
		{"decimals stay", "#define LIN_ADVANCE\n#define LIN_ADVANCE_K 0.220\n",
			[]parser.Change{to("pressure advance", 0.1)},
			"#define LIN_ADVANCE\n#define LIN_ADVANCE_K 0.100\n"},
		{"nozzle", "#define MESH_TEST_NOZZLE_SIZE 0.4\n",
			[]parser.Change{to(parser.NozzleDiameter, 0.6)}, "#define MESH_TEST_NOZZLE_SIZE 0.6\n"},
		{"probe, the other sign",
			"#define FIX_MOUNTED_PROBE\n#define NOZZLE_TO_PROBE_OFFSET { -38, -7, -2.15 }\n",
			[]parser.Change{to(parser.ProbeTrigger, 1.35)},
			"#define FIX_MOUNTED_PROBE\n#define NOZZLE_TO_PROBE_OFFSET { -38, -7, -1.35 }\n"},
		{"list by another's name", `#define FIX_MOUNTED_PROBE
#define OFFSETS { 0, 0, -1 }
#define NOZZLE_TO_PROBE_OFFSET OFFSETS
`, []parser.Change{to(parser.ProbeTrigger, 2.0)},
			`#define FIX_MOUNTED_PROBE
#define OFFSETS { 0, 0, -2 }
#define NOZZLE_TO_PROBE_OFFSET OFFSETS
`},
		{"list over two lines", "#define MPCTEMP\n#define MPC_HEATER_POWER { /* a, b */ \\\n  (40.0f), }\n",
			[]parser.Change{to(parser.ModelPower, 30.0)},
			"#define MPCTEMP\n#define MPC_HEATER_POWER { /* a, b */ \\\n  (30.0f), }\n"},
		{"option without a value", "#define HEATER_0_MAXTEMP // hot\n", lower,
			"#define HEATER_0_MAXTEMP 270 // hot\n"},
		{"milliseconds", "#define MILLISECONDS_PREHEAT_TIME 120000\n",
			[]parser.Change{to(parser.Grace("while heating up"), 0.0)},
			"#define MILLISECONDS_PREHEAT_TIME 0\n"},
		{"milliseconds of the first generation",
			"#define THERMAL_RUNAWAY_PROTECTION_PERIOD 40\n#define WATCH_TEMP_PERIOD 200000\n",
			[]parser.Change{to(parser.HotendRiseWindow, 45.5)},
			"#define THERMAL_RUNAWAY_PROTECTION_PERIOD 40\n#define WATCH_TEMP_PERIOD 45500\n"},
		{"window, up to whole seconds", hotends + rest, []parser.Change{to(parser.HotendRiseWindow, 26.1)},
			hotends + strings.Replace(rest, "20", "27", 1)},
		{"margin that is missing", "  #define HEATER_0_MAXTEMP 285\r\n",
			[]parser.Change{to(parser.Margin, 15.0)},
			"  #define HEATER_0_MAXTEMP 285\r\n  #define HOTEND_OVERSHOOT 15\r\n"},
		{"margin after a last line without newline", "#define HEATER_0_MAXTEMP 285",
			[]parser.Change{to(parser.Margin, 15.0)},
			"#define HEATER_0_MAXTEMP 285\n#define HOTEND_OVERSHOOT 15"},

		{"uncomment", "  //#define THERMAL_PROTECTION_HOTENDS   // noisy\n" + rest,
			on, "  #define THERMAL_PROTECTION_HOTENDS   // noisy\n" + rest},
		{"uncomment one that says 0", "//#define THERMAL_PROTECTION_HOTENDS 0\n" + rest,
			on, "#define THERMAL_PROTECTION_HOTENDS 1\n" + rest},
		{"commented out, with the owner's words",
			bed + "//#define THERMAL_PROTECTION_HOTENDS off, it was noisy\n" + rest, on,
			bed + hotends + "//#define THERMAL_PROTECTION_HOTENDS off, it was noisy\n" + rest},
		{"commented out, and so is its next line",
			bed + "//#define THERMAL_PROTECTION_HOTENDS \\\n#define X 1\n" + rest, on,
			bed + hotends + "//#define THERMAL_PROTECTION_HOTENDS \\\n#define X 1\n" + rest},
		{"0 to 1", "#define THERMAL_PROTECTION_HOTENDS 0\n" + rest,
			on, "#define THERMAL_PROTECTION_HOTENDS 1\n" + rest},
		{"false to true", "#define THERMAL_PROTECTION_HOTENDS  false // no\n" + rest,
			on, "#define THERMAL_PROTECTION_HOTENDS  true // no\n" + rest},
		{"after an undef", hotends + "#undef THERMAL_PROTECTION_HOTENDS // no\n" + rest, on,
			hotends + "#undef THERMAL_PROTECTION_HOTENDS // no\n" + hotends + rest},
		{"a dead one, beside its relative",
			"#if 0\n//#define THERMAL_PROTECTION_HOTENDS\n#endif\n" + bed + rest, on,
			"#if 0\n//#define THERMAL_PROTECTION_HOTENDS\n#endif\n" + bed + hotends + rest},
		{"window from 0", hotends + strings.Replace(rest, "20", "0", 1),
			[]parser.Change{to(parser.HotendRiseOn, true)}, hotends + strings.Replace(rest, "20", "40", 1)},
		{"window in a comment, and another figure",
			hotends + strings.Replace(rest, "#define WATCH_TEMP_P", "//#define WATCH_TEMP_P", 1),
			[]parser.Change{to(parser.HotendRiseOn, true), to(parser.HotendRiseWindow, 30.0)},
			hotends + strings.Replace(rest, "20", "30", 1)},
		{"first generation, both figures", `//#define THERMAL_RUNAWAY_PROTECTION_PERIOD 40 // s
//#define THERMAL_RUNAWAY_PROTECTION_HYSTERESIS 4
`, on,
			`#define THERMAL_RUNAWAY_PROTECTION_PERIOD 40 // s
#define THERMAL_RUNAWAY_PROTECTION_HYSTERESIS 4
`},
		{"first generation, 0 and no hysteresis", "#define THERMAL_RUNAWAY_PROTECTION_PERIOD 0\n", on,
			`#define THERMAL_RUNAWAY_PROTECTION_PERIOD 40
#define THERMAL_RUNAWAY_PROTECTION_HYSTERESIS 4
`},
		{"cold guard", "#define CONFIGURATION_H_VERSION 020007\n//#define PREVENT_COLD_EXTRUSION\n",
			[]parser.Change{to(parser.ColdGuard, true)},
			"#define CONFIGURATION_H_VERSION 020007\n#define PREVENT_COLD_EXTRUSION\n"},

		{"numbered sensor", "#define TEMP_SENSOR_0 5 // bead\n",
			[]parser.Change{to(parser.HotendSensor, numbered)}, "#define TEMP_SENSOR_0 1 // bead\n"},
		{"custom sensor, its options missing",
			newerLine + "#define TEMP_SENSOR_0 5\n", []parser.Change{to(parser.HotendSensor, custom)},
			newerLine + `#define TEMP_SENSOR_0 1000
#define HOTEND0_PULLUP_RESISTOR_OHMS 4700
#define HOTEND0_RESISTANCE_25C_OHMS 100000
#define HOTEND0_BETA 4066.123
#define HOTEND0_SH_C_COEFF 7.06e-08
`},
		{"custom sensor, its options in a branch of their own",
			`#define TEMP_SENSOR_0 5
#if TEMP_SENSOR_0 == 1000
  #define HOTEND0_PULLUP_RESISTOR_OHMS 2200 // ohm
  #define HOTEND0_RESISTANCE_25C_OHMS 50000
  #define HOTEND0_BETA 3950
  //#define HOTEND0_SH_C_COEFF 0
#endif
`,
			[]parser.Change{to(parser.HotendSensor, custom)},
			`#define TEMP_SENSOR_0 1000
#if TEMP_SENSOR_0 == 1000
  #define HOTEND0_PULLUP_RESISTOR_OHMS 4700 // ohm
  #define HOTEND0_RESISTANCE_25C_OHMS 100000
  #define HOTEND0_BETA 4066.123
  #define HOTEND0_SH_C_COEFF 7.06e-08
#endif
`},
		{"custom sensor with a pull-up of its own", `#define TEMP_SENSOR_0 1000
#define HOTEND0_PULLUP_RESISTOR_OHMS 2200
#define HOTEND0_RESISTANCE_25C_OHMS 50000
#define HOTEND0_BETA 3950
`,
			[]parser.Change{to(parser.HotendSensor,
				parser.SensorDef{Form: parser.FormBeta, R25Ohm: 100e3, BetaK: 4000})},
			`#define TEMP_SENSOR_0 1000
#define HOTEND0_PULLUP_RESISTOR_OHMS 2200
#define HOTEND0_RESISTANCE_25C_OHMS 100000
#define HOTEND0_BETA 4000
`},
		{"nothing to do", "#define HEATER_0_MAXTEMP 285\n",
			[]parser.Change{to(parser.MaxTemp, 285.0)}, "#define HEATER_0_MAXTEMP 285\n"},
		{"no change", "#define HEATER_0_MAXTEMP 285\n", nil, "#define HEATER_0_MAXTEMP 285\n"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			c := readText(t, 0, "h", test.before)
			if got := edited(t, c, test.changes...); got != test.after {
				t.Errorf("got\n%s\nwant\n%s", got, test.after)
			}
		})
	}
}

// A change that no edit can make is refused with a reason.
func TestEditsRefused(t *testing.T) {
	tests := []struct {
		name, text string
		change     parser.Change
		want       string
	}{
		{"unknown condition", "#if BOARD > 3\n#define HEATER_0_MAXTEMP 285\n#endif\n",
			to(parser.MaxTemp, 270.0), "BOARD > 3"},
		{"nowhere to insert", "#define X 1\n", to(parser.HotendWatchOn, true),
			"add “#define THERMAL_PROTECTION_HOTENDS” by hand"},
		{"relative only in a dead branch", "#if 0\n#define THERMAL_PROTECTION_BED\n#endif\n",
			to(parser.HotendWatchOn, true), "by hand"},
		{"relative only under an unknown condition", "#if BOARD\n#define THERMAL_PROTECTION_BED\n#endif\n",
			to(parser.HotendWatchOn, true), "by hand"},
		{"switching off", hotends, to(parser.HotendWatchOn, false), "by hand only"},
		{"no such setting", "#define X 1\n", to(parser.GainP, 1.0), "cannot be changed"},
		{"wrong type", "#define HEATER_0_MAXTEMP 285\n", to(parser.MaxTemp, true), "cannot be set to true"},
		{"custom sensor in an old generation",
			"#define CONFIGURATION_H_VERSION 010109\n#define TEMP_SENSOR_0 5\n",
			to(parser.HotendSensor, parser.SensorDef{Form: parser.FormBeta, R25Ohm: 1e5, BetaK: 3950}),
			"too old"},
		{"cubic coefficient in a generation that may not read it",
			"#define CONFIGURATION_H_VERSION 020007\n#define TEMP_SENSOR_0 5\n",
			to(parser.HotendSensor, parser.SensorDef{
				Form: parser.FormBeta, R25Ohm: 1e5, BetaK: 4834, CubicC: 1.56e-7,
			}), "HOTEND0_SH_C_COEFF"},
		{"no definition of the curve", "#define TEMP_SENSOR_0 5\n",
			to(parser.HotendSensor, parser.SensorDef{Form: parser.FormCurve, Curve: "ntc-100k-9999"}),
			"custom"},
		{"list in which nothing repeats", "#define MPCTEMP\n#define MPC_HEATER_POWER 40\n",
			to(parser.ModelPower, 30.0), "by hand"},
		{"no rise watch in that generation",
			"#define THERMAL_RUNAWAY_PROTECTION_BED_PERIOD 20\n#define TEMP_SENSOR_BED 1\n",
			to(parser.BedRiseOn, true), "cannot be changed"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			edits, err := readText(t, 0, "main.h", test.text).Edits([]parser.Change{test.change})
			if err == nil || !strings.Contains(err.Error(), test.want) {
				t.Errorf("edits %v, error %v; want %q", edits, err, test.want)
			}
		})
	}
}

// Edits in several files come in reading order, and other files keep their
// bytes.
func TestEditsOrder(t *testing.T) {
	c := readText(t, 0, "z.h", `#define TEMP_SENSOR_0 5
//#define THERMAL_PROTECTION_HOTENDS
#define HEATER_0_MAXTEMP 285
`, "a.h", rest)
	edits, err := c.Edits([]parser.Change{
		{Key: parser.HotendWatchOn, Value: true}, {Key: parser.MaxTemp, Value: 260.0},
		{Key: parser.HotendSensor, Value: parser.SensorDef{Form: parser.FormPoints, Name: "1"}},
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(edits) != 3 || edits[0].For != parser.HotendSensor || edits[1].For != parser.HotendWatchOn ||
		edits[2].For != parser.MaxTemp {
		t.Errorf("edits %v", edits)
	}
	if !bytes.Equal(applied(c.s.files[1], edits), []byte(rest)) {
		t.Error("the second file changed")
	}
}

// A list in which the last element holds for the rest grows before one of
// them changes; the other hotends keep their figure.
func TestEditsOfShortList(t *testing.T) {
	const text = `#define EXTRUDERS 3
#define PIDTEMP
#define PID_PARAMS_PER_HOTEND
#define DEFAULT_Kp_LIST { 22.20 } // one for all
`
	c := readText(t, 2, "h", text)
	if got := described(c, parser.GainP); got != "22.2 set h:4:27" {
		t.Errorf("before: %s", got)
	}
	got := edited(t, c, to(parser.GainP, 30.0))
	if want := strings.Replace(text, "22.20", "22.20, 22.20, 30.00", 1); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
	single := strings.Replace(text, "DEFAULT_Kp_LIST { 22.20 }", "DEFAULT_Kp 22.20", 1)
	got = edited(t, readText(t, 2, "h", single), to(parser.GainP, 30.0))
	if want := strings.Replace(single, "22.20", "30.00", 1); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

func TestSplitLongList(t *testing.T) {
	for n, want := range map[int]bool{listLength: true, 1_000_000: false} {
		text := "{" + strings.Repeat("1,", n) + "}"
		list := parser.Span{File: parser.NewFile("f", []byte(text)), End: len(text)}
		if items, ok := splitList(list); ok != want || ok && len(items) != n {
			t.Errorf("%d elements: %d, %v", n, len(items), ok)
		}
	}
}

func TestSplitList(t *testing.T) {
	for text, want := range map[string]string{
		"{ 1, 2 }": "1|2", "{1,2,}": "1|2", "{}": "", "{ /* none */ }": "",
		"{ f(1, 2), { 3, 4 } }":        "f(1, 2)|{ 3, 4 }",
		"{ 1 /* one */, /* two */ 2 }": "1|2", "{ 1, \\\n 2 }": "1|2", "{ 1, \\\r\n 2 }": "1|2",
		"{ \"a,b\", '}' , 3 }": "\"a,b\"|'}'|3",
		"{ 1 // end \\\n }":    "-", "{ 4 / 2, 1 }": "4 / 2|1", "{ 2\\\n1.70, 20.0 }": "2\\\n1.70|20.0",
		"{ 1, , 2 }": "1||2", "}": "-", ", {": "-",
		"1": "-", "": "-", "{ 1": "-", "{ \"": "-", "{ /* ": "-", "( 1, 2 )": "-",
	} {
		f := parser.NewFile("f", []byte(text))
		items, ok := splitList(parser.Span{File: f, End: len(text)})
		var texts []string
		for _, item := range items {
			texts = append(texts, item.Text())
		}
		got := strings.Join(texts, "|")
		if !ok {
			got = "-"
		}
		if got != want {
			t.Errorf("%q: %s, want %s", text, got, want)
		}
	}
	for text, want := range map[string]string{
		"1 /* a */ * 2": "1   * 2", "\"//\" x": "\"//\" x", "4 / 2": "4 / 2", "2\\\n1.70": "21.70",
		"2\\ \t\r\n1": "21", "\"a\\\"b": "\"a\\\"b",
	} {
		if got := unspliced(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

func TestLiteral(t *testing.T) {
	for _, test := range []struct {
		old  string
		x    float64
		want string
	}{
		{"285", 270, "270"}, {"285", 270.5, "270.5"}, {"40.0f", 48, "48.0f"}, {"40.0f", 28.25, "28.25f"},
		{"22.20", 21.7, "21.70"},
		{"(2)", 3, "(3)"}, {"( 2 )", 3, "( 3 )"}, {"-2.15", -1.35, "-1.35"}, {"-2", 1, "1"}, {"1.", 2, "2."},
		{".5f", .25, "0.25f"},
		{"255U", 178, "178U"}, {"255U", 1.5, "1.5"}, {"0x10", 20, "20"}, {"A + 1", 20, "20"},
		{"(1) + (2)", 20, "20"}, {"", 7, "7"},
		{"0", 7.06e-8, "7.06e-08"}, {"0.0f", 7.06e-8, "7.06e-08f"}, {"100000", 123456789, "123456789"},
		{"1", 1.23456789, "1.234568"},
		{"()", 1, "1"}, {"( )", 1, "1"}, {"--3", 1, "1"},
	} {
		if got := literal(test.old, test.x); got != test.want {
			t.Errorf("%v in place of %q: %q, want %q", test.x, test.old, got, test.want)
		}
	}
}
