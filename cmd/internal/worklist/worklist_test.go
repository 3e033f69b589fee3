package worklist_test

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/testfiles"
	"preflash/cmd/internal/worklist"
	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/rules"
)

var today = time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC)

const configuration = `[extruder]
heater_pin: PC8
sensor_type: Generic 3950
control: pid
pid_kp: 21.5
pid_ki: 0.83
pid_kd: 139
min_temp: 0
max_temp: 260
nozzle_diameter: 0.4
filament_diameter: 1.75
[heater_fan heat_break]
pin: PC7
heater: extruder
[probe]
pin: PC14
z_offset: 1.8
`

var swap = strings.NewReplacer("supply_v", "z_reference = \"probe\"\nsupply_v", "250]", "240]",
	"rated_w = 40.0", "rated_w = 50.0").Replace(testfiles.Sheet) + `[new.block]
heat_capacity_j_per_k = 14.0
loss_w_per_k = 0.07
loss_fan_w_per_k = 0.1
sensor_lag_s = 0.1
`

// input is a small printer on which no rule finds an error.
func input(t testing.TB) *rules.Input {
	t.Helper()
	return loaded(t, map[string]string{"printer.cfg": configuration, "swap.toml": swap})
}

// loaded is the one printer of some files.
func loaded(t testing.TB, files map[string]string) *rules.Input {
	t.Helper()
	dir := t.TempDir()
	testfiles.Write(t, dir, files)
	f := fleet.Load([]string{dir}, fleet.Options{Root: dir, Today: today}, nil)
	defer f.Close()
	r, inputs := f.Check(), f.Inputs()
	if len(inputs) != 1 || inputs[0] == nil {
		t.Fatalf("not read: %+v", r.Printers)
	}
	return inputs[0]
}

func homes(h parser.Homing) parser.Setting[parser.Homing] {
	return parser.Setting[parser.Homing]{State: parser.Set, Value: h}
}

// given is a key of a sheet that somebody wrote.
func given(v float64) sheet.Key[float64] { return sheet.Key[float64]{Value: v, Given: true} }

// section gives a section's text by its title, one line for each item.
func section(t testing.TB, list *worklist.List, title string) string {
	t.Helper()
	for _, s := range list.Sections {
		if s.Title == title {
			lines := []string{s.Note}
			for _, i := range s.Items {
				lines = append(lines,
					strings.Join([]string{i.Do, i.Expect, i.Else,
						strings.Join(slices.Concat(i.Steps, i.Sheet), "; ")}, " | "))
			}
			return strings.Join(lines, "\n")
		}
	}
	t.Fatalf("there is no section %q", title)
	return ""
}

func TestSections(t *testing.T) {
	for _, tt := range []struct {
		name    string
		change  func(in *rules.Input)
		title   string
		says    string // regular expression
		silence string // regular expression, or ""
	}{
		{name: "a cartridge, (12 V)² / 40 W = 3.6 Ω", title: "Before power",
			says: `3\.2 Ω to 4 Ω: V²/P = \(12 V\)² / 40 W = 3\.6 Ω, within 10 %`,
			change: func(in *rules.Input) {
				in.Sheet.New.Heater.RatedV.Value, in.Sheet.New.Heater.RatedW.Value = 12, 40
			}},
		{name: "a PTC tells little", title: "Before power", says: `roughly 11\.5 Ω .*says little`,
			silence: `within 10 %`,
			change:  func(in *rules.Input) { in.Sheet.New.Heater.Kind.Value = sheet.PTC }},
		{name: "pt100 at 0 °C is 100 Ω (IEC 60751)", title: "Before power",
			says: `\| 100 Ω at 0 °C; 98\.7 Ω to 101\.3 Ω between -3 °C and 3 °C \|`,
			change: func(in *rules.Input) {
				s := &in.Sheet.New.Sensor
				s.Kind.Value, s.Curve.Value = parser.Platinum, "pt100"
				in.Sheet.Printer.AmbientC.Value = 0
			}},
		{name: "a pt100 behind its amplifier", title: "Before power",
			says: `off its amplifier.*108\.6 Ω at 22 °C`,
			change: func(in *rules.Input) {
				s := &in.Sheet.New.Sensor
				s.Kind.Value, s.Curve.Value = parser.PlatinumAmplifier, "pt100"
			}},
		{name: "a platinum element that is not named", title: "Before power",
			says: `pt100 reads about 109 Ω, pt1000 about 1086 Ω`,
			change: func(in *rules.Input) {
				s := &in.Sheet.New.Sensor
				s.Kind.Value, s.Curve.Given = parser.PlatinumAmplifier, false
			}},
		{name: "a thermocouple is polar", title: "Before power", says: `the thermocouple's are polar`,
			silence: `within a pair the wires may be either way`,
			change: func(in *rules.Input) {
				s := &in.Sheet.New.Sensor
				s.Kind.Value, s.Curve.Given = parser.Thermocouple, false
			}},
		{name: "beads are not polar", title: "Before power",
			says: `within a pair the wires may be either way round, but the pairs must not be swapped`},
		{name: "a fan for another voltage", title: "Before power",
			says:   `should say 12 V.*a fan for 24 V.*does not fit`,
			change: func(in *rules.Input) { in.Sheet.New.Fan.RatedV = given(12) }},
		{name: "no fan output", title: "Before power", says: `No output that follows this hotend is known`,
			change: func(in *rules.Input) { in.Printer.ColdSide.Fan.State = parser.Off }},
		{name: "nothing stored, nothing to reset", title: "After the restart", says: `FIRMWARE_RESTART`,
			silence: `stored`},
		{name: "no hotter than it may get", title: "First heat", says: `no more than 120 °C may be asked`,
			silence: `Set 150 °C`,
			change:  func(in *rules.Input) { in.Sheet.New.RatedC.Value = 120 }},
		{name: "a fan that starts late is looked at late", title: "First heat",
			says: `(?s)Set 150 °C.*from 100 °C on`,
			change: func(in *rules.Input) {
				in.Printer.ColdSide.WithTarget, in.Printer.ColdSide.OnAboveC.Value = false, 100
			}},
		{name: "a fan that runs with its target is looked at first", title: "First heat",
			says: `(?s)Set 50 °C.*since the target was set.*Set 100 °C`},
		{name: "figures that cannot be told", title: "Protection test",
			says: `cannot be told from these files`, silence: `after about`,
			change: func(in *rules.Input) { in.Printer.Hotend.Watch.ErrorSumCS.State = parser.Unknown }},
		{name: "a protection that may be off", title: "Protection test",
			says:    `(?s)Whether the protection is on cannot be told.*firmware switches every heater off`,
			silence: `Stop here|after about`,
			change:  func(in *rules.Input) { in.Printer.Hotend.Watch.On.State = parser.Unknown }},
		{name: "a watch that is as good as off", title: "Protection test", says: `as good as off`,
			change: func(in *rules.Input) { in.Printer.Hotend.Watch.HeatingWindowS.Value = 5000 }},
		{name: "a tune that was made", title: "Tune, save, write down",
			says: `has a tune at 230 °C: kp 20, ki 1, kd 90`, silence: `starting point`,
			change: func(in *rules.Input) {
				in.Sheet.Tuned = &sheet.Tuned{AtC: given(230), Kp: given(20), Ki: given(1), Kd: given(90)}
			}},
		{name: "the saving comments the old gains out", title: "Tune, save, write down",
			says: `what stood there by hand before has become a comment.*\| SAVE_CONFIG$`},
		{name: "gains for all hotends", title: "Tune, save, write down",
			says:   `All 2 hotends run on one set of gains`,
			change: func(in *rules.Input) { in.Printer.Hotend.Loop.Shared = 2 }},
		{name: "a definition that is not known is not heated", title: "Which sensor it is",
			says:   `Stop here: .*nothing may heat`,
			change: func(in *rules.Input) { in.Printer.Hotend.Sensor.Value.Kind = parser.KindUnknown }},
		{name: "the files do not tell what homes", title: "Nozzle height",
			says: `Look at what finds the bed\. The sheet says the endstop.*a switch on the Z axis`,
			change: func(in *rules.Input) {
				in.Sheet.Printer.ZReference = sheet.Key[string]{Value: "endstop", Given: true}
				in.Printer.Geometry.Homes = parser.Setting[parser.Homing]{}
			}},
		{name: "a switch that strikes", title: "Nozzle height",
			says: `without that the nozzle strikes the bed`, silence: "Move the probe",
			change: func(in *rules.Input) {
				in.Sheet.Printer.ZReference.Value = "endstop"
				in.Sheet.New.Nozzle.TipShiftMM = given(2)
			}},
		{name: "a switch that clears the bed", title: "Nozzle height",
			says: `about 0\.4 mm above the bed \(0\.6 mm before`, silence: "strikes the bed",
			change: func(in *rules.Input) {
				in.Printer.Geometry.Homes = homes(parser.HomesAtBed)
				in.Printer.Geometry.EndstopMM = []parser.Setting[float64]{{Key: parser.Endstop(""),
					State: parser.Set, Value: 0.6}}
				in.Sheet.New.Nozzle.TipShiftMM = given(0.2)
			}},
		{name: "a way down that ends too early", title: "Nozzle height",
			says: `it ends at -1 mm, so write -3 mm there first`,
			change: func(in *rules.Input) {
				in.Printer.Geometry.LowestMM = parser.Setting[float64]{State: parser.Set, Value: -1}
				in.Sheet.New.Nozzle.TipShiftMM = given(-1.5)
			}},
		{name: "a nozzle that seems to be the probe", title: "Nozzle height",
			says:   `Look whether the nozzle itself is the probe`,
			change: func(in *rules.Input) { in.Printer.Geometry.TriggerMM.Value = -0.9 }},
		{name: "what is done is not written again", title: "The end of the swap",
			says: `Check the sheet once more`, silence: `height_on`,
			change: func(in *rules.Input) {
				in.Sheet.Done.HeightOn = sheet.Key[time.Time]{Value: today, Given: true}
			}},
		{name: "what ends it", title: "The end of the swap", says: `height_on`},
		{name: "a tip below the probe's reach", title: "Nozzle height",
			says: `Move the probe down by more than 0\.2 mm before anything homes`,
			change: func(in *rules.Input) {
				in.Sheet.New.Nozzle.TipShiftMM = given(2)
			}},
		{name: "nothing that finds the bed", title: "Nozzle height", says: `does not say what finds the bed`,
			silence: "PROBE_CALIBRATE",
			change:  func(in *rules.Input) { in.Sheet.Printer.ZReference.Value = "" }},
		{name: "2 mm³/s through 2.85 mm are 0.3135 mm/s", title: "Flow test",
			says:   `0\.3 mm/s of 2\.85 mm filament.*G1 E45 F19$`,
			change: func(in *rules.Input) { in.Printer.Flow.FilamentMM.Value = 2.85 }},
		{name: "the nozzle is off the bed, and hot, before filament is pushed", title: "Flow test",
			says: `(?s)^.*G28; G90; G1 Z50 F600.*Set 215 °C and wait.*G1 E45.*TURN_OFF_HEATERS$`},
		{name: "no homing where it is not known what finds the bed", title: "Flow test",
			says: `Lift the nozzle by hand`, silence: `G28`,
			change: func(in *rules.Input) { in.Sheet.Printer.ZReference.Value = "" }},
		{name: "a tune that is made again is kept", title: "Tune, save, write down",
			says: `After such a tune: .*SAVE_CONFIG$`,
			change: func(in *rules.Input) {
				in.Sheet.Tuned = &sheet.Tuned{AtC: given(230), Kp: given(20), Ki: given(1), Kd: given(90)}
			}},
		{name: "the nozzle leaves the paper upwards", title: "Nozzle height", says: `ACCEPT; G1 Z10 F600$`},
		{name: "a firmware that pushes nothing", title: "Flow test",
			says: `Allow pushes of filament in the files first: the longest at once is 0 mm`, silence: "G1 E",
			change: func(in *rules.Input) { in.Printer.Flow.PushMM.Value = 0 }},
		{name: "a firmware that pushes next to nothing", title: "Flow test", says: `G1 E0\.45 F50$`,
			change: func(in *rules.Input) { in.Printer.Flow.PushMM.Value = 0.5 }},
		{name: "the board starts again after the power was off", title: "Protection test",
			says: `(?s)leave the sensor plugged\. Power on\. .*? ` +
				`FIRMWARE_RESTART.*as before \|  \| FIRMWARE_RESTART; M105`},
		{name: "a definition that is held against no limit", title: "Protection test",
			says:    `looks at neither min nor max temp, and only the heating check stops it`,
			silence: `reports a faulty sensor`,
			change:  func(in *rules.Input) { in.Printer.Limits.Trips.State = parser.Off }},
		{name: "the part fan while it tunes", title: "Tune, save, write down",
			says: `Part fan as in your prints, bed cold`},
		{name: "a nozzle that probes has no height to measure", title: "Left to measurement", says: `Gains`,
			silence: `trigger height|Nozzle height:`,
			change: func(in *rules.Input) {
				in.Printer.Geometry.NozzleProbes = parser.Setting[bool]{State: parser.Set, Value: true}
			}},
		{name: "nor one to date", title: "The end of the swap", says: `\[tuned\]`, silence: `height_on`,
			change: func(in *rules.Input) {
				in.Printer.Geometry.NozzleProbes = parser.Setting[bool]{State: parser.Set, Value: true}
			}},
		{name: "the height of a switch", title: "Left to measurement", says: `endstop height: 0\.6 mm`,
			change: func(in *rules.Input) {
				in.Printer.Geometry.Homes = homes(parser.HomesAtBed)
				in.Printer.Geometry.EndstopMM = []parser.Setting[float64]{{Key: parser.Endstop(""),
					State: parser.Set, Value: 0.6}}
			}},
		{name: "the first way down with a shift that is not known", title: "Nozzle height",
			says: `G90; G1 Z50 F600`, silence: `G1 Z10`,
			change: func(in *rules.Input) {
				in.Printer.Geometry.Homes = homes(parser.HomesFar)
			}},
		{name: "and with a long one", title: "Nozzle height", says: `G90; G1 Z25 F600`,
			change: func(in *rules.Input) {
				in.Printer.Geometry.Homes = homes(parser.HomesFar)
				in.Sheet.New.Nozzle.TipShiftMM = given(14.2)
			}},
		{name: "no longer than the firmware pushes", title: "Flow test",
			says: `Each weighing takes 4 times 18 mm`, silence: "45 mm",
			change: func(in *rules.Input) { in.Printer.Flow.PushMM.Value = 20 }},
	} {
		t.Run(tt.name, func(t *testing.T) {
			in := input(t)
			if tt.change != nil {
				tt.change(in)
			}
			text := section(t, worklist.New(in, worklist.Open{}), tt.title)
			if !regexp.MustCompile("(?m)" + tt.says).MatchString(text) {
				t.Errorf("nothing says %q in\n%s", tt.says, text)
			}
			if tt.silence != "" && regexp.MustCompile(tt.silence).MatchString(text) {
				t.Errorf("%q should not be in\n%s", tt.silence, text)
			}
		})
	}
}

func TestFirst(t *testing.T) {
	in := input(t)
	if got := worklist.New(in, worklist.Open{}).First; got != "" {
		t.Errorf("a clean printer is told to mend: %s", got)
	}
	got := worklist.New(in,
		worklist.Open{Errors: []string{"runaway-loose", "heater-current", "runaway-loose"}}).First
	if want := "3 errors: heater-current, runaway-loose. Fix them before"; !strings.Contains(got, want) {
		t.Errorf("%q does not say %q", got, want)
	}
}

// The demo has every kind of printer: nothing in its lists may be empty, half
// finished or no number.
func TestDemoListsAreWhole(t *testing.T) {
	f := fleet.Load([]string{"../../../testdata/demo"}, fleet.Options{Today: today}, nil)
	defer f.Close()
	r, inputs := f.Check(), f.Inputs()
	for i, in := range inputs {
		if in == nil {
			t.Fatalf("%s is not read: %v", r.Printers[i].Name, r.Printers[i].Problem)
		}
		whole(t, worklist.New(in, worklist.Open{}))
	}
}

var broken = regexp.MustCompile(`%!|NaN|Inf|  | \.|\.\.|,,|;;`)

func whole(t testing.TB, list *worklist.List) {
	t.Helper()
	for _, s := range list.Sections {
		if s.Title == "" || len(s.Items) == 0 {
			t.Errorf("section %q has %d items", s.Title, len(s.Items))
		}
		for _, item := range s.Items {
			for _, text := range append([]string{s.Note, item.Do, item.Expect, item.Else}, item.Steps...) {
				if broken.MatchString(text) && !strings.Contains(text, "../") {
					t.Errorf("%s: %q holds %q", s.Title, text, broken.FindString(text))
				}
			}
			if item.Do == "" {
				t.Errorf("%s: an item says nothing to do", s.Title)
			}
		}
	}
}

// The protection is tested before the hotend gets heat: what has to stop a heater
// is not tried first by a heater that may be another than the sheet's. Where it is
// known to be off nothing follows.
func TestProtectionBeforeHeat(t *testing.T) {
	for name, change := range map[string]func(in *rules.Input){
		"on":  func(*rules.Input) {},
		"off": func(in *rules.Input) { in.Printer.Hotend.Watch.On = parser.Setting[bool]{State: parser.Set} },
		"unknown": func(in *rules.Input) {
			in.Printer.Hotend.Watch.On = parser.Setting[bool]{State: parser.Unknown}
		},
	} {
		in := input(t)
		change(in)
		tested := false
		sections := worklist.New(in, worklist.Open{}).Sections
		if last := sections[len(sections)-1].Title; (last == "Protection test") != (name == "off") {
			t.Errorf("%s: the last section is %q", name, last)
		}
		for _, s := range sections {
			tested = tested || s.Title == "Protection test"
			if s.Title == "First heat" && !tested {
				t.Errorf("%s: the hotend is heated before", name)
			}
		}
		if !tested {
			t.Errorf("%s: there is no test", name)
		}
	}
}

// No figures that a sheet or a configuration may hold make a list that is
// broken.
func TestAnyFiguresMakeAWholeList(t *testing.T) {
	in := input(t)
	rapid.Check(t, func(rt *rapid.T) {
		within := func(name string, low, high float64) float64 {
			return rapid.Float64Range(low, high).Draw(rt, name)
		}
		n, p := &in.Sheet.New, in.Printer
		n.RatedC.Value = within("rated_c", 40, 1000)
		n.PrintC.Value[1] = within("print_c", n.PrintC.Value[0], 1000)
		n.Heater.RatedV.Value, n.Heater.RatedW.Value = within("rated_v", 3, 60), within("rated_w", 1, 1000)
		n.Block.HeatCapacityJPerK.Value = within("capacity", 0.1, 1000)
		n.Block.LossWPerK.Value = within("loss", 0.001, 10)
		n.Block.SensorLagS.Value = within("lag", 0.05, 120)
		n.Nozzle.MaxFlowMM3S.Value = within("flow", 0.1, 500)
		in.Sheet.Printer.AmbientC.Value = within("ambient", -40, 80)
		w := &p.Hotend.Watch
		w.RiseC.Value, w.HeatingWindowS.Value = within("rise", 0, 1e3), within("window", 0, 1e4)
		w.HysteresisC.Value, w.ErrorSumCS.Value = within("hysteresis", 0, 500), within("sum", 0, 1e6)
		p.Limits.MinTemp.Value, p.Limits.MaxTemp.Value = within("min", -273, 50), within("max", 0, 2000)
		p.Geometry.TriggerMM.Value = within("trigger", -10, 10)
		whole(t, worklist.New(in, worklist.Open{}))
		if t.Failed() {
			rt.FailNow()
		}
	})
}

var aboutSeconds = regexp.MustCompile(`about ([0-9.]+) s after ([0-9.]+) °C is passed`)

// The hold test against the closed form of a block that cools by itself,
// T − room = (T0 − room) e^(−t h/C), with a sensor that hardly lags: the
// shortfall below 35 °C adds up to 120 °C·s.
func TestDropTestAgainstClosedForm(t *testing.T) {
	in := input(t)
	text := section(t, worklist.New(in, worklist.Open{}), "Protection test")
	m := aboutSeconds.FindStringSubmatch(text)
	if m == nil || m[2] != "40" {
		t.Fatalf("no time from 40 °C on in\n%s", text)
	}
	const room, from, below, sum = 22.0, 40.0, 35.0, 120.0
	tau := 14.0 / 0.07
	sunk := tau * math.Log((from-room)/(below-room))
	// ∫ (below − T) dt from sunk to x = (below−room)(x − sunk) − (below−room) τ (1 − e^(−(x−sunk)/τ)).
	x := sunk
	for add := 0.0; add < sum; x += 0.01 {
		d := x - sunk
		add = (below - room) * (d - tau*(1-math.Exp(-d/tau)))
	}
	if want := strconv.Itoa(int(math.Round(x/5) * 5)); m[1] != want {
		t.Errorf("about %s s, and the closed form gives %.1f s", m[1], x)
	}
}

// definesInput is a printer of the defines style with one hotend, by what is
// written behind the usual options.
func definesInput(t testing.TB, more string) *rules.Input {
	t.Helper()
	const usual = `#define CONFIGURATION_H_VERSION 02010300
#define EXTRUDERS 1
#define TEMP_SENSOR_0 61
#define HEATER_0_MINTEMP 5
#define HEATER_0_MAXTEMP 300
#define HEATER_1_MINTEMP 5
#define HEATER_1_MAXTEMP 275
#define HOTEND_OVERSHOOT 15
#define EEPROM_SETTINGS
#define THERMAL_PROTECTION_HOTENDS
#define THERMAL_PROTECTION_PERIOD 40
#define THERMAL_PROTECTION_HYSTERESIS 4
#define WATCH_TEMP_PERIOD 40
#define WATCH_TEMP_INCREASE 2
#define Z_HOME_DIR -1
#define X_BED_SIZE 200
#define Y_BED_SIZE 200
`
	return loaded(t, map[string]string{"Configuration.h": usual + more,
		"swap.toml": strings.ReplaceAll(swap, "printer.cfg", "Configuration.h")})
}

// Options of hotends that are not there make no tool.
func TestOneHotend(t *testing.T) {
	list := worklist.New(definesInput(t, "#define PIDTEMP\n"), worklist.Open{})
	for _, s := range list.Sections {
		if s.Title == "Distances between the tools" {
			t.Errorf("there is a section %q", s.Title)
		}
	}
	if text := section(t, list, "Nozzle height"); strings.Contains(text, "tool") {
		t.Errorf("a tool is taken in\n%s", text)
	}
}

// The measuring of a model homes, goes close to the bed and heats past 200 °C.
func TestModelTune(t *testing.T) {
	in := definesInput(t, "#define MPCTEMP\n#define MPC_HEATER_POWER { 50 }\n")
	list := worklist.New(in, worklist.Open{})
	order := make(map[string]int)
	for i, s := range list.Sections {
		order[s.Title] = i
	}
	if order["Nozzle height"] > order["Tune, save, write down"] {
		t.Error("the model is measured before the nozzle's height")
	}
	text := section(t, list, "Tune, save, write down")
	if !strings.Contains(text, "M306 E0 T") ||
		!strings.Contains(text, "it homes, goes to 1 mm above the middle of the bed") {
		t.Error(text)
	}
	in.Sheet.New.RatedC.Value = 180
	in.Sheet.New.PrintC.Value = [2]float64{150, 180}
	text = section(t, worklist.New(in, worklist.Open{}), "Tune, save, write down")
	if strings.Contains(text, "M306") || !strings.Contains(text, "no more than 180 °C may be asked") {
		t.Error(text)
	}
}
