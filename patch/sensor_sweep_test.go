package patch_test

import (
	"encoding/csv"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"sort"
	"strconv"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/patch"
	"preflash/rules/sensor"
)

// The sweep reads definitions by a second way: the points of their tables, as
// counts of 1024, and the temperature of the sensor by bisection.

// published is a numbered definition as one generation publishes it.
type published struct {
	platinum   bool
	pullupOhm  float64
	highC      float64
	counts, at []float64 // by rising counts, with the temperature of each
}

// shown is what the firmware indicates at a resistance.
func (p *published) shown(ohm float64) float64 {
	c := 1024 * ohm / (p.pullupOhm + ohm)
	n := len(p.counts)
	switch {
	case c <= p.counts[0]:
		return p.at[0]
	case c >= p.counts[n-1]:
		return p.at[n-1]
	}
	i := sort.SearchFloat64s(p.counts, c)
	share := (c - p.counts[i-1]) / (p.counts[i] - p.counts[i-1])
	return p.at[i-1] + share*(p.at[i]-p.at[i-1])
}

// publications reads the tables of a generation.
func publications(t *testing.T, generation string) map[int]*published {
	t.Helper()
	read := func(name string) [][]string {
		f, err := os.Open(filepath.Join("..", "parser", "defines", name))
		if err != nil {
			t.Fatal(err)
		}
		defer f.Close()
		rows, err := csv.NewReader(f).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		return rows[1:]
	}
	number := func(text string) float64 {
		x, err := strconv.ParseFloat(text, 64)
		if err != nil {
			t.Fatal(err)
		}
		return x
	}
	all := map[int]*published{}
	for _, r := range read("sensors.csv") {
		if r[1] == generation || r[1] == "both" {
			p := &published{platinum: r[2] == "platinum", pullupOhm: number(r[4]), highC: number(r[6])}
			all[int(number(r[0]))] = p
		}
	}
	for _, r := range read("sensor-rows.csv") {
		p := all[int(number(r[0]))]
		if p == nil || r[1] != generation && r[1] != "both" {
			continue
		}
		ohm := number(r[3])
		p.counts = append(p.counts, 1024*ohm/(p.pullupOhm+ohm))
		p.at = append(p.at, number(r[2]))
	}
	for _, p := range all {
		if p.counts[0] > p.counts[1] { // a bead: by rising temperature the counts fall
			for i, j := 0, len(p.counts)-1; i < j; i, j = i+1, j-1 {
				p.counts[i], p.counts[j] = p.counts[j], p.counts[i]
				p.at[i], p.at[j] = p.at[j], p.at[i]
			}
		}
	}
	return all
}

// customShown is what definition 1000 indicates: 1/T = A + ln R/B + C·(ln R)³,
// with A such that R25 is 25 °C.
func customShown(pullupOhm, r25, b, c float64) func(ohm float64) float64 {
	l25 := math.Log(r25)
	a := 1/298.15 - l25/b - c*l25*l25*l25
	return func(ohm float64) float64 {
		l := math.Log(ohm)
		return min(1/(a+l/b+c*l*l*l)-273.15, 999)
	}
}

// actual is the temperature at which a sensor of these resistances on a board
// makes the firmware indicate shownC: by bisection, since both are monotonic.
func actual(shown func(ohm float64) float64, ohms func(tempC float64) float64, shownC float64) float64 {
	low, high := -60.0, 1200.0
	for range 45 {
		mid := (low + high) / 2
		if shown(ohms(mid)) < shownC {
			low = mid
		} else {
			high = mid
		}
	}
	return (low + high) / 2
}

// reader is a way to read a sensor on some pull-up, up to a temperature.
type reader struct {
	shown     func(ohm float64) float64
	pullupOhm float64
	highC     float64
	platinum  bool
}

func (p *published) reader() reader { return reader{p.shown, p.pullupOhm, p.highC, p.platinum} }

// worst is the largest |actual − indicated| while the firmware indicates from
// lowC to highC, of a sensor on a board's pull-up; what it cannot indicate is
// left out.
func (r reader) worst(real sensor.Curve, boardOhm, lowC, highC float64) float64 {
	// A resistance on the board's pull-up looks to the firmware like this one on
	// its own.
	seen := func(tempC float64) float64 { return real.Ohms(tempC) * r.pullupOhm / boardOhm }
	worst := 0.0
	for t := lowC; t <= min(highC, r.highC); t += 2 {
		worst = max(worst, math.Abs(actual(r.shown, seen, t)-t))
	}
	return worst
}

var (
	numberLine = regexp.MustCompile(`(?m)^#define TEMP_SENSOR_0 (\d+)$`)
	customLine = regexp.MustCompile(`(?m)^#define HOTEND0_` +
		`(PULLUP_RESISTOR_OHMS|RESISTANCE_25C_OHMS|BETA|SH_C_COEFF) (\S+)$`)
)

// readerOf is what a header's text makes of the hotend's sensor.
func readerOf(t *testing.T, text string, tables map[int]*published) (reader, int) {
	t.Helper()
	n, err := strconv.Atoi(numberLine.FindStringSubmatch(text)[1])
	if err != nil {
		t.Fatal(err)
	}
	if n != 1000 {
		return tables[n].reader(), n
	}
	figures := map[string]float64{}
	for _, m := range customLine.FindAllStringSubmatch(text, -1) {
		if figures[m[1]], err = strconv.ParseFloat(m[2], 64); err != nil {
			t.Fatal(err)
		}
	}
	p := figures["PULLUP_RESISTOR_OHMS"]
	shown := customShown(p, figures["RESISTANCE_25C_OHMS"], figures["BETA"], figures["SH_C_COEFF"])
	return reader{shown, p, 999, false}, n
}

const sweepHeader = `#define CONFIGURATION_H_VERSION %s
#define TEMP_SENSOR_0 %d
#define HEATER_0_MINTEMP 5
#define HEATER_0_MAXTEMP 275
#define HOTEND_OVERSHOOT 15
#define PREVENT_COLD_EXTRUSION
#define EXTRUDE_MINTEMP 170
#define THERMAL_PROTECTION_HOTENDS
#define THERMAL_PROTECTION_PERIOD 40
#define THERMAL_PROTECTION_HYSTERESIS 4
#define WATCH_TEMP_PERIOD 40
#define WATCH_TEMP_INCREASE 2
#define TEMP_HYSTERESIS 3
`

// Whatever numbered definition is in force and whatever bead or platinum goes
// in, on each board and in each generation: the diff leaves little of the error
// or has said how much, makes none worse, and is there wherever a definition
// reads the sensor better.
func TestSensorSweep(t *testing.T) {
	if testing.Short() {
		t.Skip("takes longer than all other tests here; mutation runs leave it out")
	}
	const lowC, highC, topC, roomC = 190, 250, 260, 22
	changed, better := 0, 0
	published := map[string]map[int]*published{
		"older": publications(t, "older"), "newer": publications(t, "newer"),
	}
	for generation, version := range map[string]string{"older": "02000901", "newer": "02010300"} {
		tables := published[generation]
		for _, boardOhm := range []float64{1000, 4700, 10000} {
			for _, k := range sensor.All() {
				if !sensor.HasCurve(k.Kind) {
					continue
				}
				platinum := k.Kind == parser.Platinum
				text := sheetWith("printer.cfg", "Configuration.h",
					`"ntc"`, strconv.Quote(k.Kind.String()), "ntc-100k-3950", k.ID,
					"supply_v", fmt.Sprintf("pullup_ohm = %g\nsupply_v", boardOhm))
				list := patch.Printers(t, files{"swap.toml": text})
				band := sensor.NTCBand(k.Curve, highC, 0.01, 0.01)
				if platinum {
					band = sensor.PlatinumBand(highC)
				}
				allowed := func(limitK float64) float64 { return max(limitK, min(band, 6)) }

				least := math.Inf(1) // of the numbers that are for this kind and board
				for _, p := range tables {
					r := p.reader()
					onBoard := math.Abs(p.pullupOhm-boardOhm) < 0.01*boardOhm
					fits := p.platinum == platinum && onBoard && p.highC-2 >= highC
					cold := p.shown(k.Curve.Ohms(roomC)*p.pullupOhm/boardOhm) - roomC
					if fits && math.Abs(cold) <= 10 {
						least = min(least, r.worst(k.Curve, boardOhm, lowC, topC))
					}
				}
				for number := range tables {
					name := fmt.Sprintf("%s, %s on %g Ω, read as %d", generation, k.ID, boardOhm, number)
					header := fmt.Sprintf(sweepHeader, version, number)
					if err := os.WriteFile("Configuration.h", []byte(header), 0o666); err != nil {
						t.Fatal(err)
					}
					plan, err := patch.Prove(list, all)
					if err != nil {
						t.Errorf("%s: %v", name, err)
						continue
					}
					was, _ := readerOf(t, header, tables)
					before := math.Inf(1)
					if was.platinum == platinum && was.highC-2 >= highC {
						before = was.worst(k.Curve, boardOhm, lowC, topC)
					}
					after, now := before, number
					if len(plan.Files) > 0 {
						var is reader
						is, now = readerOf(t, string(plan.Files[0].New), tables)
						after = is.worst(k.Curve, boardOhm, lowC, topC)
						if now != number && (is.platinum != platinum || is.highC-2 < highC) {
							t.Errorf("%s: becomes %d", name, now)
						}
					}
					said := ""
					for _, r := range plan.Reasons {
						said += r.Finding.Text()
					}
					const rounding = 0.1
					switch {
					case now != number && after > before:
						t.Errorf("%s: %.1f K off becomes %d, %.1f K off", name, before, now, after)
					case now != number && after >= allowed(2.5)+rounding && !strings.Contains(said, "leaves"):
						t.Errorf("%s: becomes %d, %.1f K off, and nothing says so: %s",
							name, now, after, said)
					case now == number && before > allowed(2)+rounding &&
						(least <= before/2-rounding && least < allowed(2.5)-rounding ||
							before > 20+rounding && least < before-rounding):
						t.Errorf("%s: %.1f K off, and one that is %.1f K off is not proposed",
							name, before, least)
					case now == number && before > allowed(2)+rounding && generation == "newer" &&
						!platinum && before > 5:
						t.Errorf("%s: %.1f K off, and a custom one is not proposed", name, before)
					case now != number && after > least+1+rounding && least < allowed(2.5)-rounding:
						t.Errorf("%s: becomes %d, %.1f K off, and there is one that is %.1f K off",
							name, now, after, least)
					}
					if now != number {
						changed++
					}
					if least < before {
						better++
					}
				}
			}
		}
	}
	if changed < 1000 || better < 1000 {
		t.Errorf("%d pairs changed, %d have something better: the sweep does not sweep", changed, better)
	}
	t.Logf("%d pairs changed, %d have something better", changed, better)
}
