package defines

import (
	"strings"
	"testing"

	"preflash/parser"
)

func TestSteps(t *testing.T) {
	for kind, want := range map[parser.TaskKind]string{
		parser.TaskResetStored: "M502; M500", parser.TaskTune: "M303 E1 S220 C8",
		parser.TaskSetGains: "M301 E1 P21.7 I1.4 D84", parser.TaskHeat: "M104 T1 S220",
		parser.TaskReport: "M105", parser.TaskHeatersOff: "M104 T1 S0; M140 S0",
		parser.TaskShowStored: "M503", parser.TaskTuneModel: "M306 E1 T", parser.TaskSelect: "T1",
		parser.TaskExtrude: "M83; G1 E100 F150", parser.TaskRestart: "", parser.TaskHome: "G28",
		parser.TaskLower: "G1 Z-100 F60", 200: "",
	} {
		task := parser.Task{
			Kind: kind, Tool: 1, TempC: 220, Kp: 21.7, Ki: 1.4, Kd: 84, LengthMM: 100, SpeedMMS: 2.5,
		}
		if got := strings.Join(Style.Blank().Steps(task), "; "); got != want {
			t.Errorf("task %d: %q, want %q", kind, got, want)
		}
	}
}

func TestStepsOfAConfiguration(t *testing.T) {
	paper := func(figure parser.Key, kind parser.TaskKind) parser.Task {
		return parser.Task{Kind: kind, Figure: figure}
	}
	const bed = "#define X_BED_SIZE 235\n#define Y_BED_SIZE 220\n"
	const down, up = "M211 S0; G91", "G1 Z10 F600; G90; M211 S1"
	const homing = bed + `#define FIX_MOUNTED_PROBE
#define NOZZLE_TO_PROBE_OFFSET { 10, 10, -2 }
#define Z_HOME_DIR -1
#define Z_MIN_PROBE_USES_Z_MIN_ENDSTOP_PIN
#define USE_PROBE_FOR_Z_HOMING
`
	for _, c := range []struct {
		name, text string
		task       parser.Task
		want       string
	}{
		{"a probe", homing, paper(parser.ProbeTrigger, parser.TaskBeginPaper),
			"M851 Z0; G28; G90; G1 Z10 F600; G1 X117.5 Y110 F3000; " + down},
		{"its height", homing, paper(parser.ProbeTrigger, parser.TaskEndPaper),
			"M114; M851 Z<the Z that M114 shows>; " + up},
		{"a probe that only levels",
			strings.ReplaceAll(homing, "#define Z_MIN_PROBE_USES_Z_MIN_ENDSTOP_PIN\n#define USE",
				"//#define Z_MIN_PROBE_USES_Z_MIN_ENDSTOP_PIN\n//#define USE"),
			paper(parser.ProbeTrigger, parser.TaskBeginPaper),
			"M851 Z0; G90; G1 Z10 F600; G30 X117.5 Y110; G90; G1 Z10 F600; G1 X117.5 Y110 F3000; " + down},
		{"its height", bed, paper(parser.ProbeTrigger, parser.TaskEndPaper),
			"M114; M851 Z<the Z that M114 shows, less the Z that G30 showed>; " + up},
		{"a height to cross at", bed, parser.Task{Kind: parser.TaskBeginPaper, LengthMM: 40},
			"G90; G1 Z40 F600; G1 X117.5 Y110 F3000; " + down},
		{"a tool by itself", "", parser.Task{Kind: parser.TaskSelectBare, Tool: 1}, "M218 T1 Z0; T1"},
		{"the first tool by itself", "", parser.Task{Kind: parser.TaskSelectBare}, "T0"},
		{"how far it is from the first", "", parser.Task{Kind: parser.TaskSetOffset, Tool: 1},
			"M218 T1 Z<the height of tool 0, less that of tool 1>"},
		{"a switch", bed, paper(parser.Endstop(""), parser.TaskBeginPaper),
			"G90; G1 Z10 F600; G1 X117.5 Y110 F3000; " + down},
		{"its height", bed, paper(parser.Endstop(""), parser.TaskEndPaper),
			"M114; M206 Z<the Z that M114 shows, with the other sign>; " + up},
		{"no home offset", "#define NO_HOME_OFFSETS\n",
			paper(parser.Endstop(""), parser.TaskEndPaper), "M114; " + up},
		{"towers", bed + "#define DELTA\n", paper("", parser.TaskBeginPaper),
			"G90; G1 Z10 F600; G1 X0 Y0 F3000; " + down},
		{"a bed of which nothing is known", "", paper("", parser.TaskBeginPaper),
			"G90; G1 Z10 F600; G1 X<middle of the bed> Y<middle of the bed> F3000; " + down},
		{"a firmware that prints nothing", "#define DISABLE_M503\n",
			parser.Task{Kind: parser.TaskShowStored}, ""},
	} {
		if got := strings.Join(readText(t, 0, "Configuration.h", c.text).Steps(c.task), "; "); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

func TestKeep(t *testing.T) {
	for _, c := range []struct {
		name, text string
		key        parser.Key
		steps      string
		byHand     int
		says       string
	}{
		{"a memory", "#define EEPROM_SETTINGS\n", parser.GainP, "M500", 0, ""},
		{"none", "#define PIDTEMP\n#define DEFAULT_Kp 20\n//#define EEPROM_SETTINGS\n",
			parser.GainP, "", 1, "stores none"},
		{"a height that the console does not take", "#define EEPROM_SETTINGS\n#define NO_HOME_OFFSETS\n",
			parser.Endstop(""), "", 0, "no home offset"},
		{"none, and a height",
			"#define Z_HOME_DIR 1\n#define MANUAL_Z_HOME_POS 200\n//#define EEPROM_SETTINGS\n",
			parser.Endstop(""), "", 1, "stores none"},
		{"towers", "#define EEPROM_SETTINGS\n#define DELTA\n#define Z_HOME_DIR 1\n#define DELTA_HEIGHT 250\n",
			parser.TowerHeight, "", 1, "no home offset"},
	} {
		kept := readText(t, 0, "Configuration.h", c.text).Keep(c.key)
		if strings.Join(kept.Steps, "; ") != c.steps || len(kept.ByHand) != c.byHand ||
			kept.Less != (c.key == parser.Endstop("") || c.key == parser.TowerHeight) ||
			!strings.Contains(kept.Why, c.says) {
			t.Errorf("%s: %+v", c.name, kept)
		}
	}
}
