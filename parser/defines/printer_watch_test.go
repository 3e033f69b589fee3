package defines

import (
	"strings"
	"testing"

	"preflash/parser"
)

// hotends is the switch of the hotend's protection.
const hotends = "#define THERMAL_PROTECTION_HOTENDS\n"

// rest is a second file in which the hotend's protection is complete, apart
// from its switch.
const rest = `#if ENABLED(THERMAL_PROTECTION_HOTENDS)
  #define THERMAL_PROTECTION_PERIOD 40
  #define THERMAL_PROTECTION_HYSTERESIS 4
  #define WATCH_TEMP_PERIOD 20
  #define WATCH_TEMP_INCREASE 2
#endif
`

// Every way to have the protection off, or on by an odd route.
func TestProtectionSpellings(t *testing.T) {
	const period = "#define THERMAL_RUNAWAY_PROTECTION_PERIOD 40\n"
	tests := []struct {
		name, text, adv string
		on, rise        string // as described; the place is what to look at
		canTurnOn       bool
	}{
		{name: "not defined, version known", text: "#define CONFIGURATION_H_VERSION 020007\n",
			on: "off", rise: "off", canTurnOn: true},
		{name: "not defined, nothing known", text: "#define TEMP_SENSOR_0 1\n", adv: "\n",
			on: "off", rise: "off"},
		{name: "named by a condition only", text: "#define TEMP_SENSOR_0 1\n", on: "off", rise: "off"},
		{name: "commented out", text: "//#define THERMAL_PROTECTION_HOTENDS\n",
			on: "off a.h:1:11", rise: "off a.h:1:11", canTurnOn: true},
		{name: "0", text: "#define THERMAL_PROTECTION_HOTENDS 0\n",
			on: "off a.h:1:36", rise: "off a.h:1:36", canTurnOn: true},
		{name: "false", text: "#define THERMAL_PROTECTION_HOTENDS false\n",
			on: "off a.h:1:36", rise: "off a.h:1:36", canTurnOn: true},
		{name: "undef later", text: hotends, adv: rest + "#undef THERMAL_PROTECTION_HOTENDS\n",
			on: "off b.h:7:1", rise: "off b.h:7:1", canTurnOn: true},
		{name: "undef before its figures", text: hotends + "#undef THERMAL_PROTECTION_HOTENDS // noisy\n",
			on: "off a.h:2:1", rise: "off a.h:2:1", canTurnOn: true},
		{name: "redefined later in a second file", text: hotends,
			adv: rest + "#define THERMAL_PROTECTION_HOTENDS 0\n",
			on:  "off b.h:7:36", rise: "off b.h:7:36", canTurnOn: true},
		{name: "under #if 0", text: "#if 0\n" + hotends + "#endif\n",
			on: "off a.h:2:9", rise: "off a.h:2:9", canTurnOn: true},
		{name: "in a block comment", text: "/* for later:\n" + hotends + "*/\n",
			on: "off a.h:2:9", rise: "off a.h:2:9", canTurnOn: true},
		{name: "on, zero window", text: hotends, adv: strings.Replace(rest, "20", "0", 1),
			on: "true set a.h:1:9", rise: "off b.h:4:29", canTurnOn: true},
		{name: "on, window commented out", text: hotends,
			adv: strings.Replace(rest, "#define WATCH_TEMP_P", "//#define WATCH_TEMP_P", 1),
			on:  "true set a.h:1:9", rise: "off b.h:4:13", canTurnOn: true},
		{name: "on, window nowhere", text: hotends, adv: "\n",
			on: "true set a.h:1:9", rise: "unknown", canTurnOn: true},

		{name: "on, empty", text: hotends,
			on: "true set a.h:1:9", rise: "true set b.h:4:29", canTurnOn: true},
		{name: "on, 1", text: "#define THERMAL_PROTECTION_HOTENDS 1\n",
			on: "true set a.h:1:36", rise: "true set b.h:4:29", canTurnOn: true},
		{name: "on, true", text: "#define THERMAL_PROTECTION_HOTENDS true\n",
			on: "true set a.h:1:36", rise: "true set b.h:4:29", canTurnOn: true},
		{name: "on, in an else", text: "#ifdef NOZZLE_AS_PROBE\n#else\n" + hotends + "#endif\n",
			on: "true set a.h:3:9", rise: "true set b.h:4:29", canTurnOn: true},
		{name: "on, undef and define again",
			text: "#define THERMAL_PROTECTION_HOTENDS 0\n#undef THERMAL_PROTECTION_HOTENDS\n" + hotends,
			on:   "true set a.h:3:9", rise: "true set b.h:4:29", canTurnOn: true},
		{name: "on, through another macro", text: "#define SAFE 1\n#define THERMAL_PROTECTION_HOTENDS SAFE\n",
			on: "true set a.h:2:36", rise: "true set b.h:4:29", canTurnOn: true},

		{name: "unknown condition", text: "#ifdef BOARD_IS_NEW\n" + hotends + "#endif\n",
			on: "unknown a.h:2:9", rise: "unknown b.h:4:29", canTurnOn: true},

		{name: "first generation, period", text: period,
			adv: "#define WATCH_TEMP_PERIOD 20000\n#define WATCH_TEMP_INCREASE 10\n",
			on:  "true set a.h:1:43", rise: "true set b.h:1:27", canTurnOn: true},
		{name: "first generation, period 0", text: "#define THERMAL_RUNAWAY_PROTECTION_PERIOD 0\n", adv: "\n",
			on: "off a.h:1:43", rise: "unknown", canTurnOn: true},
		{name: "first generation, commented out", text: "//#define THERMAL_RUNAWAY_PROTECTION_PERIOD 40\n",
			adv: "//#define WATCH_TEMP_PERIOD 40000\n",
			on:  "off a.h:1:11", rise: "off b.h:1:11", canTurnOn: true},
		{name: "first generation, seconds or not", text: period, adv: "#define WATCH_TEMP_PERIOD 40\n",
			on: "true set a.h:1:43", rise: "unknown b.h:1:27", canTurnOn: true},
		{name: "first generation, window 0", text: period, adv: "#define WATCH_TEMP_PERIOD 0\n",
			on: "true set a.h:1:43", rise: "unknown b.h:1:27", canTurnOn: true},
		{name: "first generation, too old", text: "#define PREVENT_DANGEROUS_EXTRUDE\n", adv: "\n",
			on: "off", rise: "unknown"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			adv := test.adv
			if adv == "" {
				adv = rest
			}
			c := readText(t, 0, "a.h", test.text, "b.h", adv)
			if got := described(c, parser.HotendWatchOn); got != test.on {
				t.Errorf("protection: %s, want %s", got, test.on)
			}
			if got := described(c, parser.HotendRiseOn); got != test.rise {
				t.Errorf("rise watch: %s, want %s", got, test.rise)
			}
			w := c.printer.Hotend.Watch
			if w.CanTurnOn != test.canTurnOn {
				t.Errorf("can be turned on: %v, want %v", w.CanTurnOn, test.canTurnOn)
			}
			if w.On.State == parser.Unknown && !strings.Contains(w.On.Why, "BOARD_IS_NEW") {
				t.Errorf("the reason does not quote the condition: %q", w.On.Why)
			}
		})
	}
}

// The figures of a watch that is off are off too, not unknown.
func TestFiguresOfAWatchThatIsOff(t *testing.T) {
	c := readText(t, 0, "a.h", "//#define THERMAL_PROTECTION_HOTENDS\n", "b.h", rest)
	for _, key := range []parser.Key{
		parser.HotendHoldPeriod, parser.HotendHysteresis, parser.HotendRiseWindow, parser.HotendRise,
	} {
		if got := described(c, key); !strings.HasPrefix(got, "off b.h:") {
			t.Errorf("%s: %s", key, got)
		}
	}
	c = readText(t, 0, "a.h", hotends, "b.h", strings.ReplaceAll(rest, "#define WATCH", "//#define WATCH"))
	for key, want := range map[parser.Key]string{
		parser.HotendRiseWindow: "off b.h:4:13", parser.HotendRise: "off b.h:5:13",
		parser.HotendHoldPeriod: "40 set b.h:2:37",
	} {
		if got := described(c, key); got != want {
			t.Errorf("%s: %s, want %s", key, got, want)
		}
	}
	// A hold period of 0 is no switch.
	c = readText(t, 0, "a.h", hotends, "b.h", strings.Replace(rest, "40", "0", 1))
	got := described(c, parser.HotendWatchOn) + ", " + described(c, parser.HotendHoldPeriod)
	if got != "true set a.h:1:9, 0 set b.h:2:37" {
		t.Error(got)
	}
}

func TestThroughInclude(t *testing.T) {
	c := readText(t, 0, "a.h", "#include \"safe.h\"\n", "safe.h", hotends, "b.h", rest)
	if got, want := described(c, parser.HotendWatchOn), "true set safe.h:1:9"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

// The configuration's version settles which of two spellings counts.
func TestProtectionsOfTwoGenerations(t *testing.T) {
	const both = "#define THERMAL_PROTECTION_HOTENDS\n//#define THERMAL_RUNAWAY_PROTECTION_PERIOD 40\n"
	c := readText(t, 0, "h", "#define CONFIGURATION_H_VERSION 010109\n"+both)
	if got, want := described(c, parser.HotendWatchOn), "true set h:2:9"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

// What cannot be told is said with its reason.
func TestUnknownSettings(t *testing.T) {
	tests := []struct {
		name, text string
		key        parser.Key
		want, why  string
	}{
		{"absent", "\n", parser.MaxTemp, "unknown", "no file that was read defines HEATER_0_MAXTEMP"},
		{"no value", "#define HEATER_0_MAXTEMP\n", parser.MaxTemp, "unknown h:1:9", "has no value"},
		{"no number", "#define HEATER_0_MAXTEMP \"hot\"\n", parser.MaxTemp, "unknown h:1:26", "is no number"},
		{"from outside", "#define HEATER_0_MAXTEMP BOARD_LIMIT\n",
			parser.MaxTemp, "unknown h:1:26", "BOARD_LIMIT"},
		{"with parameters", "#define HEATER_0_MAXTEMP(x) x\n",
			parser.MaxTemp, "unknown h:1:29", "parameters"},
		{"condition", "#if BOARD > 3\n#define HEATER_0_MAXTEMP 285\n#endif\n",
			parser.MaxTemp, "unknown h:2:26", "BOARD > 3"},
		{"undef", "#define HEATER_0_MAXTEMP 285\n#undef HEATER_0_MAXTEMP\n",
			parser.MaxTemp, "unknown h:2:1", "is not used"},
		{"list too short", "#define MPCTEMP\n#define MPC_HEATER_POWER { }\n",
			parser.ModelPower, "unknown h:2:26", "empty list"},
		{"no list", "#define FIX_MOUNTED_PROBE\n#define NOZZLE_TO_PROBE_OFFSET 3\n",
			parser.ProbeTrigger, "unknown h:2:32", "should be a list"},
		{"two of three", "#define FIX_MOUNTED_PROBE\n#define NOZZLE_TO_PROBE_OFFSET { 1, 2 }\n",
			parser.ProbeTrigger, "unknown h:2:32", "number 3 is needed"},
		{"a probe, but which",
			"#define AUTO_BED_LEVELING_BILINEAR\n#define NOZZLE_TO_PROBE_OFFSET { 1, 2, -3 }\n",
			parser.ProbeTrigger, "unknown h:2:40", "whether the printer has a probe"},
		{"sensor", "#define TEMP_SENSOR_0 1.5\n",
			parser.HotendSensor, "unknown h:1:23", "no number of a definition"},
		{"sensor by a name that is unknown",
			"#ifdef BOARD\n#define BEAD 1\n#else\n#define BEAD 5\n#endif\n#define TEMP_SENSOR_0 BEAD\n",
			parser.HotendSensor, "unknown h:6:23",
			`which these files leave open: BEAD depends on "#ifdef BOARD"`},
		{"sensor from outside", "#define TEMP_SENSOR_0 BOARD_BEAD\n", parser.HotendSensor, "unknown h:1:23",
			"BOARD_BEAD is set outside these files"},
		{"custom sensor without figures", "#define TEMP_SENSOR_0 1000\n#define HOTEND0_BETA 3950\n",
			parser.HotendSensor, "unknown h:1:23", "HOTEND0_PULLUP_RESISTOR_OHMS"},
		{"the board's fan", "\n", parser.FanOutput, "unknown", "the board's own pin file decides"},
		{"protections of two generations", hotends + "//#define THERMAL_RUNAWAY_PROTECTION_PERIOD 40\n",
			parser.HotendWatchOn, "unknown h:1:9",
			"THERMAL_RUNAWAY_PROTECTION_PERIOD is read by old firmware"},
		{"control", "#if BOARD\n#define PIDTEMP\n#endif\n", parser.LoopControl, "unknown h:2:9", "BOARD"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			c := readText(t, 0, "x.h", test.text)
			if got := strings.Replace(described(c, test.key), "x.h:", "h:", 1); got != test.want {
				t.Errorf("%s, want %s", got, test.want)
			}
			for d := range c.printer.Settings() {
				if d.Key == test.key && !strings.Contains(d.Why, test.why) {
					t.Errorf("why is %q, want %q in it", d.Why, test.why)
				}
			}
		})
	}
}

// Places that lose are named; one that an #undef took back is not a loser.
func TestHides(t *testing.T) {
	c := readText(t, 0, "a.h", "#define HEATER_0_MAXTEMP 275\n", "b.h",
		"#define HEATER_0_MAXTEMP 300 // hot\n")
	s := c.printer.Limits.MaxTemp
	if s.Value != 300 || len(s.Hides) != 1 || s.Hides[0].Written != "275" ||
		s.Hides[0].At.File.Path != "a.h" {
		t.Errorf("value %v hides %v", s.Value, s.Hides)
	}
	c = readText(t, 0, "a.h",
		"#define HEATER_0_MAXTEMP 275\n#undef HEATER_0_MAXTEMP\n#define HEATER_0_MAXTEMP 300\n")
	if s := c.printer.Limits.MaxTemp; s.Value != 300 || len(s.Hides) != 0 {
		t.Errorf("value %v hides %v", s.Value, s.Hides)
	}
}
