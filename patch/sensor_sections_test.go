package patch_test

import (
	"fmt"
	"maps"
	"math"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/patch"
	"preflash/rules"
	"preflash/rules/sensor"
)

// The other style's types, by the formulas that its firmware publishes.

// threePoints is 1/T = c1 + c2·L + c3·L³ through three points, or the Beta
// through the outer two where c3 is not above 0; points by rising temperature.
func threePoints(p ...parser.SensorPoint) func(ohm float64) float64 {
	var x, l [3]float64
	for i := range p {
		x[i], l[i] = 1/(p[i].TempC+273.15), math.Log(p[i].Ohm)
	}
	cube := func(v float64) float64 { return v * v * v }
	x12, x13, l12, l13 := x[0]-x[1], x[0]-x[2], l[0]-l[1], l[0]-l[2]
	d12, d13 := cube(l[0])-cube(l[1]), cube(l[0])-cube(l[2])
	c3 := (x12 - x13*l12/l13) / (d12 - d13*l12/l13)
	c2 := (x12 - c3*d12) / l12
	if c3 <= 0 {
		c3, c2 = 0, x13/l13
	}
	c1 := x[0] - c2*l[0] - c3*cube(l[0])
	return func(ohm float64) float64 { lr := math.Log(ohm); return 1/(c1+c2*lr+c3*cube(lr)) - 273.15 }
}

func betaType(tempC, ohm, beta float64) func(ohm float64) float64 {
	return func(r float64) float64 { return 1/(1/(tempC+273.15)+math.Log(r/ohm)/beta) - 273.15 }
}

// straight is a table straight in resistance, the outer lines going on.
func straight(points []parser.SensorPoint) func(ohm float64) float64 {
	return func(ohm float64) float64 {
		i := 1
		for i < len(points)-1 && points[i].Ohm < ohm {
			i++
		}
		a, b := points[i-1], points[i]
		return a.TempC + (ohm-a.Ohm)*(b.TempC-a.TempC)/(b.Ohm-a.Ohm)
	}
}

func pt(tempC, ohm float64) parser.SensorPoint { return parser.SensorPoint{TempC: tempC, Ohm: ohm} }

// sectionsTypes are the built-in types that a hotend can have.
func sectionsTypes() map[string]func(ohm float64) float64 {
	var platinum []parser.SensorPoint
	for t := 0.0; t <= 490; t += 10 {
		platinum = append(platinum, pt(t, 1000*(1+3.9083e-3*t-5.775e-7*t*t)))
	}
	return map[string]func(ohm float64) float64{
		"EPCOS 100K B57560G104F":        threePoints(pt(25, 100000), pt(150, 1641.9), pt(250, 226.15)),
		"ATC Semitec 104GT-2":           threePoints(pt(20, 126800), pt(150, 1360), pt(300, 80.65)),
		"ATC Semitec 104NT-4-R025H42G":  threePoints(pt(25, 100000), pt(160, 1074), pt(300, 82.78)),
		"Generic 3950":                  threePoints(pt(25, 100000), pt(150, 1770), pt(250, 230)),
		"SliceEngineering 450":          threePoints(pt(25, 500000), pt(200, 3734), pt(400, 240)),
		"TDK NTCG104LH104JT1":           threePoints(pt(25, 100000), pt(50, 31230), pt(125, 2066)),
		"Honeywell 100K 135-104LAG-J01": betaType(25, 100000, 3974),
		"NTC 100K MGB18-104F39050L32":   betaType(25, 100000, 4100),
		"PT1000":                        straight(platinum),
	}
}

var (
	typeLine  = regexp.MustCompile(`(?m)^sensor_type: (.*)$`)
	pointLine = regexp.MustCompile(`(?m)^(temperature|resistance)(\d+): (\S+)$`)
	betaLine  = regexp.MustCompile(`(?m)^beta: (\S+)$`)
)

// sectionsReader is what a configuration's text makes of the hotend's sensor.
func sectionsReader(t *testing.T, text string) (shown func(ohm float64) float64, name string) {
	t.Helper()
	number := func(text string) float64 {
		x, err := strconv.ParseFloat(text, 64)
		if err != nil {
			t.Fatal(err)
		}
		return x
	}
	name = typeLine.FindStringSubmatch(text)[1]
	if shown := sectionsTypes()[name]; shown != nil {
		return shown, name
	}
	points := map[int]*parser.SensorPoint{}
	for _, m := range pointLine.FindAllStringSubmatch(text, -1) {
		n := int(number(m[2]))
		if points[n] == nil {
			points[n] = &parser.SensorPoint{}
		}
		if m[1] == "temperature" {
			points[n].TempC = number(m[3])
		} else {
			points[n].Ohm = number(m[3])
		}
	}
	var list []parser.SensorPoint
	for _, n := range slices.Sorted(maps.Keys(points)) {
		list = append(list, *points[n])
	}
	switch {
	case strings.Contains(text, "[adc_temperature "+name+"]"):
		return straight(list), name
	case betaLine.MatchString(text):
		return betaType(list[0].TempC, list[0].Ohm, number(betaLine.FindStringSubmatch(text)[1])), name
	}
	if len(list) != 3 {
		t.Fatalf("%d points in\n%s", len(list), text)
	}
	return threePoints(list...), name
}

// Whatever type is in force and whatever goes in: the diff leaves nothing to
// speak of, since this style can write any curve out.
func TestSensorSweepSections(t *testing.T) {
	const lowC, highC, topC = 190, 250, 290
	types := sectionsTypes()
	for _, k := range sensor.All() {
		if !sensor.HasCurve(k.Kind) {
			continue
		}
		sheet := sheetWith(`"ntc"`, strconv.Quote(k.Kind.String()), "ntc-100k-3950", k.ID)
		list := patch.Printers(t, files{"swap.toml": sheet})
		band := sensor.NTCBand(k.Curve, highC, 0.01, 0.01)
		if k.Kind == parser.Platinum {
			band = sensor.PlatinumBand(highC)
		}
		worstOf := func(shown func(ohm float64) float64) float64 {
			worst := 0.0
			for c := float64(lowC); c <= topC; c++ {
				worst = max(worst, math.Abs(actual(shown, k.Curve.Ohms, c)-c))
			}
			return worst
		}
		for name, shown := range types {
			if err := os.WriteFile("printer.cfg", []byte(replace("Generic 3950", name)), 0o666); err != nil {
				t.Fatal(err)
			}
			plan, err := patch.Prove(list, all)
			if err != nil {
				t.Errorf("%s read as %s: %v", k.ID, name, err)
				continue
			}
			before := math.Inf(1)
			if (name == "PT1000") == (k.Kind == parser.Platinum) {
				before = worstOf(shown)
			}
			after, now := before, name
			if len(plan.Files) > 0 {
				var is func(ohm float64) float64
				is, now = sectionsReader(t, string(plan.Files[0].New))
				after = worstOf(is)
			}
			limit := max(2.5, min(band, 6)) + 0.05
			if after >= limit || after > before {
				t.Errorf("%s read as %s: %.1f K off, becomes %s, %.1f K off", k.ID, name, before, now, after)
			}
		}
	}
}

// The sheet's own three points are written as they are given; where the firmware
// would draw no cubic curve through them, a Beta is.
func TestSensorOwnPoints(t *testing.T) {
	for _, c := range []struct {
		points string
		want   []string
		said   string
	}{
		{"points = [[25, 50000], [150, 1100], [250, 150]]",
			[]string{"temperature1: 25\nresistance1: 50000\n", "temperature2: 150\nresistance2: 1100\n",
				"temperature3: 250\nresistance3: 150\n"}, ""},
		{"points = [[25, 200000], [150, 3300], [250, 560]]",
			[]string{"beta: "}, "this firmware draws no cubic curve through three points of this sensor"},
		{"points = [[25, 50000], [90, 5413], [150, 1100], [250, 150]]",
			[]string{"temperature1: 25\n", "resistance3: "}, ""},
		{"beta = { r25_ohm = 47000, b_k = 4000 }", []string{"resistance1: 47000\nbeta: 4000\n"}, ""},
	} {
		sheet := sheetWith(`curve = "ntc-100k-3950"`, c.points)
		config := replace("Generic 3950", "ATC Semitec 104GT-2")
		list := patch.Printers(t, files{"swap.toml": sheet, "printer.cfg": config})
		plan, err := patch.Prove(list, all)
		if err != nil {
			t.Errorf("%s: %v", c.points, err)
			continue
		}
		if len(plan.Files) != 1 {
			t.Errorf("%s: %d files", c.points, len(plan.Files))
			continue
		}
		for _, want := range c.want {
			if !strings.Contains(string(plan.Files[0].New), want) {
				t.Errorf("%s: no %q in\n%s", c.points, want, plan.Files[0].New)
			}
		}
		if said := plan.Reasons[0].Finding.Text(); !strings.Contains(said, c.said) {
			t.Errorf("%s: %q is not said in %q", c.points, c.said, said)
		}
	}
}

// Platinum in the bead's place: one finding, and the built-in type.
func TestSensorKindSections(t *testing.T) {
	sheet := sheetWith(`"ntc"`, `"platinum"`, "ntc-100k-3950", "pt1000", "250]", "285]")
	list := patch.Printers(t, files{"swap.toml": sheet, "printer.cfg": proofConfig})
	said := ""
	for _, f := range findings(t, list[0]) {
		switch {
		case f.Rule == "sensor-kind" && f.Level == rules.Error:
			said = f.Text()
		case f.Rule == "sensor-curve":
			t.Errorf("%s: %s", f.Rule, f.Text())
		}
	}
	if want := "4700 Ω (assumed: the sheet does not say)"; !strings.Contains(said, want) {
		t.Errorf("%q does not say %q", said, want)
	}
	plan, err := patch.Prove(list, all)
	if err != nil {
		t.Fatal(err)
	}
	if _, name := sectionsReader(t, string(plan.Files[0].New)); name != "PT1000" {
		t.Errorf("becomes %s", name)
	}
	if !strings.Contains(string(plan.Files[0].New), "max_temp: 295") { // once the reading is right
		t.Errorf("%s", fmt.Sprint(string(plan.Files[0].New)))
	}
}
