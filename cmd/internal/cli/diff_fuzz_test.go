package cli

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"sync"
	"testing"

	"preflash/cmd/internal/testfiles"
	"preflash/patch"
)

// FuzzActualTemperature runs whole commands on a printer whose sensor may be read
// wrong, and applies the diff. Its oracle knows nothing of the proof: a Beta
// formula for the sensor that is wired, a divider, and what the firmware makes of
// the files' text. No diff may take the hotend, at the highest target, to where
// it is both above its rating and hotter than it was before.
func FuzzActualTemperature(f *testing.F) {
	f.Add(true, byte(0), uint16(1000), uint16(3950), uint16(3950), uint16(240), uint16(285), uint16(265),
		byte(0), byte(0))
	f.Add(true, byte(1), uint16(1000), uint16(4500), uint16(3950), uint16(240), uint16(285), uint16(265),
		byte(1), byte(1))
	f.Add(true, byte(3), uint16(1000), uint16(3950), uint16(4267), uint16(300), uint16(300), uint16(250),
		byte(2), byte(2))
	f.Add(false, byte(0), uint16(1000), uint16(3950), uint16(3950), uint16(240), uint16(285), uint16(265),
		byte(0), byte(3))
	f.Add(false, byte(1), uint16(900), uint16(4300), uint16(3950), uint16(330), uint16(300), uint16(250),
		byte(1), byte(0))
	f.Add(false, byte(2), uint16(1000), uint16(3950), uint16(4300), uint16(250), uint16(260), uint16(255),
		byte(0), byte(1))
	f.Add(true, byte(2), uint16(1000), uint16(3950), uint16(650), uint16(90), uint16(85), uint16(70),
		byte(0), byte(4))
	f.Add(true, byte(2), uint16(1000), uint16(3950), uint16(650), uint16(90), uint16(85), uint16(70),
		byte(0), byte(16))
	f.Add(false, byte(0), uint16(500), uint16(1200), uint16(650), uint16(90), uint16(85), uint16(70),
		byte(0), byte(8))
	f.Add(true, byte('P'), uint16(1122), uint16(4074), uint16(4355), uint16(273), uint16(222), uint16(160),
		byte('A'), byte(0xf2))
	f.Add(true, byte(0xbe), uint16(1000), uint16(4140), uint16(4040), uint16(365), uint16(136), uint16(259),
		byte(0x13), byte('$'))
	rows := rowsOf(f)
	f.Fuzz(func(t *testing.T, defines bool, reads byte, r25, beta, wired, maxC, ratedC, topC uint16,
		board, shape byte) {
		c := drawn{
			defines: defines, r25: 100 * float64(500+r25%1500), beta: float64(3000 + beta%2000),
			wired: float64(3300 + wired%1300),
			maxC:  150 + int(maxC%300), ratedC: 200 + int(ratedC%150), shape: shape,
			board: [...]float64{4700, 1000, 10000, 2200}[board%4],
		}
		c.topC = 195 + int(topC)%150
		c.number = [...]int{1000, 1, 5, 11, 61, 12, 13, 60, 1047, 998}[reads%10]
		t.Chdir(t.TempDir())
		c.write(t)
		before := c.actual(t, rows)
		args := []string{"diff", "--today", "2026-11-25", "."}
		switch { // a wrong reading may stay because nobody asks for its change
		case shape&4 != 0:
			args = append(args, "--only", "temp-reach,runaway-tight")
		case shape&8 != 0:
			args = append(args, "--except", "sensor-curve,sensor-kind")
		}
		var out, problems bytes.Buffer
		switch code := Run(args, &out, &problems); code {
		case 0, 2:
			if out.Len() > 0 {
				t.Fatalf("exit %d with a diff\n%s", code, out.String())
			}
			return
		case 1:
		default:
			t.Fatalf("exit %d: %s", code, problems.String())
		}
		text, err := os.ReadFile(c.file())
		if err != nil {
			t.Fatal(err)
		}
		applied, err := patch.Patch(map[string][]byte{c.file(): text}, out.Bytes())
		if err != nil {
			t.Fatal(err)
		}
		testfiles.Write(t, ".", map[string]string{c.file(): string(applied[c.file()])})
		after := c.actual(t, rows)
		const slack = 1.2 // K: half a degree of the proof's, and what rows are rounded by
		if after > float64(c.ratedC)+slack && after > before+slack {
			t.Errorf("rated for %d °C; at the highest target it was at %.1f °C and would be at %.1f °C\n%s",
				c.ratedC, before, after, out.String())
		}
		if code := Run(args, &out, &problems); code == 1 {
			t.Error("a second diff is not empty")
		}
	})
}

// drawn is a printer as the fuzzer draws it.
type drawn struct {
	defines            bool
	number             int     // of the definition; 1000 is r25 and beta
	r25, beta          float64 // of the definition
	wired              float64 // Beta of the sensor that is wired, 100 kΩ
	board              float64 // its pull-up
	maxC, ratedC, topC int
	shape              byte
}

func (c *drawn) file() string {
	if c.defines {
		return "Configuration.h"
	}
	return "printer.cfg"
}

func (c *drawn) write(t *testing.T) {
	put := func(name, text string) { testfiles.Write(t, ".", map[string]string{name: text}) }
	waiver := ""
	if c.shape&16 != 0 {
		waiver = "[[waiver]]\nrule = \"sensor-curve\"\nat = 100\nreason = \"as drawn\"\nuntil = 2027-01-01\n"
	}
	put("swap.toml", fmt.Sprintf(`format = 1
[printer]
name = "egret-95"
config = [%q]
pullup_ohm = %g
supply_v = 24
[new]
rated_c = %d
print_c = [190, %d]
[new.sensor]
kind = "ntc"
beta = { r25_ohm = 100000, b_k = %g }
[new.heater]
kind = "cartridge"
rated_v = 24
rated_w = 40
%s`, c.file(), c.board, c.ratedC, c.topC, c.wired, waiver))
	if !c.defines {
		pullup := fmt.Sprintf("pullup_resistor: %g\n", c.board)
		if c.shape&1 != 0 {
			pullup = ""
		}
		kind := "Generic 3950"
		if c.number == 1000 || c.shape&2 != 0 {
			kind = "mine"
		}
		put("printer.cfg", fmt.Sprintf("[thermistor mine]\ntemperature1: 25\nresistance1: %g\nbeta: %g\n\n"+
			"[extruder]\nsensor_type: %s\n%smin_temp: 0\nmax_temp: %d\ncontrol: pid\npid_kp: 20\n"+
			"pid_ki: 1\npid_kd: 80\nnozzle_diameter: 0.4\nfilament_diameter: 1.75\n\n[heater_fan break]\n"+
			"heater: extruder\n",
			c.r25, c.beta, kind, pullup, c.maxC))
		return
	}
	limit := fmt.Sprintf("#define HEATER_0_MAXTEMP %d\n", c.maxC)
	if c.shape&1 != 0 { // another limit once the sensor is another
		limit = fmt.Sprintf("#if TEMP_SENSOR_0 == %d\n%s#else\n#define HEATER_0_MAXTEMP %d\n#endif\n",
			c.number, limit, c.maxC+60)
	}
	version := "02010300"
	if c.shape&2 != 0 {
		version = "02000901"
	}
	put("Configuration.h", fmt.Sprintf("#define CONFIGURATION_H_VERSION %s\n#define TEMP_SENSOR_0 %d\n"+
		"#define HOTEND0_PULLUP_RESISTOR_OHMS 4700\n#define HOTEND0_RESISTANCE_25C_OHMS %g\n"+
		"#define HOTEND0_BETA %g\n#define HEATER_0_MINTEMP 5\n%s#define HOTEND_OVERSHOOT 15\n"+
		"#define PIDTEMP\n#define DEFAULT_Kp 20\n#define DEFAULT_Ki 1\n#define DEFAULT_Kd 80\n"+
		"#define PREVENT_COLD_EXTRUSION\n#define EXTRUDE_MINTEMP 170\n#define E0_AUTO_FAN_PIN 7\n"+
		"#define THERMAL_PROTECTION_HOTENDS\n#define THERMAL_PROTECTION_PERIOD 40\n"+
		"#define THERMAL_PROTECTION_HYSTERESIS 4\n#define WATCH_TEMP_PERIOD 20\n"+
		"#define WATCH_TEMP_INCREASE 2\n#define TEMP_HYSTERESIS 3\n",
		version, c.number, c.r25, c.beta, limit))
}

// actual reads the file as the firmware does and gives the temperature of the
// hotend at the highest target: infinite where none belongs to it, NaN where the
// oracle does not know the definition.
func (c *drawn) actual(t *testing.T, rows func(number int, newer bool) [][2]float64) float64 {
	data, err := os.ReadFile(c.file())
	if err != nil {
		t.Fatal(err)
	}
	options := optionsOf(string(data))
	number := func(name string) float64 {
		x, err := strconv.ParseFloat(options[name], 64)
		if err != nil {
			return math.NaN()
		}
		return x
	}
	// What is wired, on its own pull-up: the ratio of the divider tells its
	// resistance, and that its temperature.
	wired := func(ratio float64) float64 {
		ohm := ratio / (1 - ratio) * c.board
		return inverted(1/(25+zero) + math.Log(ohm/100e3)/c.wired)
	}
	ratioOf := func(ohm, pullup float64) float64 { return ohm / (ohm + pullup) }
	if !c.defines {
		target, pullup := number("extruder max_temp"), number("extruder pullup_resistor")
		if math.IsNaN(pullup) {
			pullup = 4700
		}
		name := options["extruder sensor_type"]
		for i, p := range builtIns[name] {
			for key, x := range map[string]float64{"temperature": p[0], "resistance": p[1]} {
				options[fmt.Sprintf("thermistor %s %s%d", name, key, i+1)] = fmt.Sprint(x)
			}
		}
		if options["thermistor "+name+" resistance1"] == "" {
			return math.NaN()
		}
		at := func(key string) float64 { return number("thermistor " + name + " " + key) }
		if b := at("beta"); !math.IsNaN(b) {
			ohm := at("resistance1") * math.Exp(b*(1/(target+zero)-1/(at("temperature1")+zero)))
			return wired(ratioOf(ohm, pullup))
		}
		// Steinhart and Hart through three points; the resistance by halving.
		var x, l [3]float64
		for i := range x {
			n := strconv.Itoa(i + 1)
			x[i], l[i] = 1/(at("temperature"+n)+zero), math.Log(at("resistance"+n))
		}
		g2, g3 := (x[1]-x[0])/(l[1]-l[0]), (x[2]-x[0])/(l[2]-l[0])
		cubic := (g3 - g2) / (l[2] - l[1]) / (l[0] + l[1] + l[2])
		slope := g2 - cubic*(l[0]*l[0]+l[0]*l[1]+l[1]*l[1])
		base := x[0] - (slope+cubic*l[0]*l[0])*l[0]
		return wired(ratioOf(halve(func(ohm float64) float64 {
			lr := math.Log(ohm)
			return inverted(base + slope*lr + cubic*lr*lr*lr)
		}, target), pullup))
	}
	target, sensor := number("HEATER_0_MAXTEMP")-number("HOTEND_OVERSHOOT"), int(number("TEMP_SENSOR_0"))
	if sensor == 1000 {
		r25, beta, cubic := number("HOTEND0_RESISTANCE_25C_OHMS"), number("HOTEND0_BETA"),
			number("HOTEND0_SH_C_COEFF")
		if math.IsNaN(cubic) {
			cubic = 0
		}
		ln := math.Log(r25)
		base := 1/(25+zero) - ln/beta - cubic*ln*ln*ln
		return wired(ratioOf(halve(func(ohm float64) float64 {
			lr := math.Log(ohm)
			return inverted(base + lr/beta + cubic*lr*lr*lr)
		}, target), number("HOTEND0_PULLUP_RESISTOR_OHMS")))
	}
	table := rows(sensor, options["CONFIGURATION_H_VERSION"] == "02010300")
	if table == nil || sensor == 1047 { // a dummy, or platinum: nothing belongs to it
		return math.Inf(1)
	}
	// Straight lines in the divider's ratio, between rows by rising temperature.
	target = math.Min(target, table[len(table)-1][0])
	for i := 1; i < len(table); i++ {
		if a, b := table[i-1], table[i]; target <= b[0] {
			ra, rb := ratioOf(a[1], pullupOf(sensor)), ratioOf(b[1], pullupOf(sensor))
			return wired(ra + (rb-ra)*(target-a[0])/(b[0]-a[0]))
		}
	}
	return math.Inf(1)
}

// builtIns are types of the other style by the points that define them, °C and
// ohm, as its firmware publishes them.
var builtIns = map[string][][2]float64{
	"Generic 3950":           {{25, 100000}, {150, 1770}, {250, 230}},
	"ATC Semitec 104GT-2":    {{20, 126800}, {150, 1360}, {300, 80.65}},
	"EPCOS 100K B57560G104F": {{25, 100000}, {150, 1641.9}, {250, 226.15}},
}

const zero = 273.15 // K at 0 °C

// inverted is the temperature, °C, of which a formula gives the inverse, 1/K;
// infinite where no temperature is high enough.
func inverted(inverse float64) float64 {
	if inverse <= 0 {
		return math.Inf(1)
	}
	return 1/inverse - zero
}

// halve finds where a falling function of the resistance has a value.
func halve(shown func(ohm float64) float64, want float64) float64 {
	low, high := 0.01, 1e8
	for range 80 {
		if mid := math.Sqrt(low * high); shown(mid) > want {
			low = mid
		} else {
			high = mid
		}
	}
	return low
}

var defineLine = regexp.MustCompile(`^\s*#define\s+(\w+)\s*([^/\s]*)`)

// optionsOf reads what both kinds of file set. Of conditions it knows those that
// drawn writes.
func optionsOf(text string) map[string]string {
	options := make(map[string]string)
	section, skip := "", false
	for line := range strings.Lines(text) {
		line = strings.TrimRight(line, "\r\n")
		var number string
		if n, _ := fmt.Sscanf(line, "#if TEMP_SENSOR_0 == %s", &number); n == 1 {
			skip = options["TEMP_SENSOR_0"] != number
		}
		switch key, value, found := strings.Cut(line, ":"); {
		case line == "#else":
			skip = !skip
		case line == "#endif":
			skip = false
		case skip:
		case defineLine.MatchString(line):
			m := defineLine.FindStringSubmatch(line)
			options[m[1]] = m[2]
		case strings.HasPrefix(line, "["):
			section = strings.Trim(line, "[]")
		case found:
			options[section+" "+strings.TrimSpace(key)] = strings.TrimSpace(value)
		}
	}
	return options
}

// pullupOf is the pull-up that a numbered definition is made for, ohm.
func pullupOf(number int) float64 {
	switch number {
	case 51, 52, 55, 110, 1010:
		return 1000
	case 99, 666:
		return 10000
	case 1022:
		return 2200
	}
	return 4700
}

// rowsOf gives the rows of a numbered definition, by rising temperature, as the
// style's firmware publishes them: °C shown and the ohm of the sensor.
func rowsOf(f *testing.F) func(number int, newer bool) [][2]float64 {
	name, err := filepath.Abs("../../../parser/defines/sensor-rows.csv")
	if err != nil {
		f.Fatal(err)
	}
	all := sync.OnceValue(func() [][]string {
		file, err := os.Open(name)
		if err != nil {
			return nil
		}
		defer file.Close()
		list, _ := csv.NewReader(file).ReadAll()
		return list
	})
	if len(all()) < 1000 {
		f.Fatalf("%s has %d rows", name, len(all()))
	}
	return func(number int, newer bool) (list [][2]float64) {
		generation := map[bool]string{false: "older", true: "newer"}[newer]
		for _, r := range all() {
			if r[0] != strconv.Itoa(number) || r[1] != "both" && r[1] != generation {
				continue
			}
			shown, _ := strconv.ParseFloat(r[2], 64)
			ohm, _ := strconv.ParseFloat(r[3], 64)
			list = append(list, [2]float64{shown, ohm})
		}
		return list
	}
}
