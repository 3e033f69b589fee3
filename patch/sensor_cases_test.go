package patch_test

import (
	"fmt"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"preflash/patch"
	"preflash/rules"
	"preflash/rules/sensor"
)

// findings checks one printer as it stands.
func findings(t *testing.T, p *patch.Source) []rules.Finding {
	t.Helper()
	config, err := p.Style.Read(p.Tree, p.Request)
	if err != nil {
		t.Fatal(err)
	}
	in := rules.Input{Printer: config.Printer(), Config: config, Sheet: p.Sheet, Today: p.Today}
	return rules.Check(&in)
}

// What is said of numbered definitions and what they become. The errors are
// computed from the points by the second way of the sweep.
func TestSensorCases(t *testing.T) {
	const older, between, newer = "02000901", "02010202", "02010300"
	const e, w = rules.Error, rules.Warning
	none := math.NaN()
	tables := map[string]map[int]*published{
		older: publications(t, "older"), newer: publications(t, "newer"), between: publications(t, "newer"),
	}
	for _, c := range []struct {
		version  string
		number   int
		curve    string
		boardOhm float64 // 0: the sheet does not say
		topC     float64
		rule     string // that speaks; "" for none
		level    rules.Level
		errorC   float64 // at topC, to 0.5 K; NaN: no actual temperature
		becomes  int     // the same number: no change
		said     string
	}{
		{newer, 1, "ntc-100k-3950", 0, 250, "", 0, 0, 1, ""},
		{older, 1, "ntc-100k-3950", 0, 250, "", 0, 0, 1, ""},
		{newer, 61, "ntc-100k-3950", 0, 250, "", 0, 0, 61, ""},
		{older, 61, "ntc-100k-3950", 0, 250, "", 0, 0, 61, ""},
		{newer, 5, "ntc-100k-3950", 0, 250, "sensor-curve", e, 16.1, 61,
			"4700 Ω (assumed: the sheet does not say)"},
		{older, 5, "ntc-100k-3950", 4700, 250, "sensor-curve", e, 16.1, 61, ""},
		{newer, 11, "ntc-100k-3950", 0, 250, "sensor-curve", e, -21.5, 61, "plain Beta of 3950 K"},
		{newer, 60, "ntc-100k-3950", 0, 250, "sensor-curve", e, -21.5, 61, "plain Beta of 3950 K"},
		{older, 60, "ntc-100k-3950", 4700, 250, "sensor-curve", e, -21.5, 61, ""},
		// What the board has is asked for.
		{newer, 99, "ntc-100k-4092", 0, 250, "sensor-curve", w, 50.7, 99, "give printer.pullup_ohm"},
		{newer, 51, "ntc-100k-4092", 0, 250, "sensor-curve", w, -81.6, 51, "give printer.pullup_ohm"},
		{newer, 99, "ntc-100k-4092", 10000, 250, "", 0, 0, 99, ""},
		{newer, 51, "ntc-100k-4092", 1000, 320, "sensor-curve", e, 26, 1000, "hotter than shown"},
		{newer, 147, "pt100", 4700, 220, "sensor-curve", e, -11, 147,
			"no better definition; put in an amplifier"},
		{older, 147, "pt100", 4700, 220, "sensor-curve", e, -11, 147, "cut to whole counts of 1024"},
		// The right one at hand.
		{newer, 1, "ntc-100k-4267", 4700, 250, "sensor-curve", e, -16.3, 5, ""},
		{newer, 51, "ntc-100k-4267", 1000, 250, "sensor-curve", e, -15.2, 55, ""},
		{newer, 55, "ntc-100k-4092", 1000, 250, "sensor-curve", e, 16.5, 51, ""},
		{older, 1, "ntc-100k-4092", 10000, 250, "sensor-curve", e, -44, 99, ""},
		// Bead and bare platinum.
		{newer, 1, "pt1000", 4700, 250, "sensor-kind", e, none, 1047,
			"the reading falls as the hotend heats, so the heater stays on"},
		{older, 1, "pt1000", 4700, 250, "sensor-kind", e, none, 1047, "for a pull-up of 4700 Ω"},
		{newer, 61, "pt1000", 0, 250, "sensor-kind", e, none, 1047,
			"4700 Ω (assumed: the sheet does not say)"},
		{newer, 1, "pt1000", 2200, 250, "sensor-kind", e, none, 1022, ""},
		{older, 1, "pt1000", 2200, 250, "sensor-kind", e, none, 1, "has no definition"},
		{newer, 1, "pt100", 4700, 250, "sensor-kind", e, none, 147, "the best there is and leaves 12.5 K"},
		{newer, 1047, "ntc-100k-3950", 4700, 250, "sensor-kind", e, none, 61,
			"a cold one shows 500 °C, so the firmware shuts down at once"},
		{newer, 1010, "ntc-100k-3950", 0, 250, "sensor-kind", e, none, 1010, "give printer.pullup_ohm"},
		// Where the files may be for either, only what both have is proposed.
		{between, 5, "ntc-100k-3950", 4700, 250, "sensor-curve", e, 16.1, 61, "the worse counts"},
		{between, 1, "pt1000", 2200, 250, "sensor-kind", e, none, 1, "has no definition"},
		{between, 1022, "ntc-100k-3950", 4700, 250, "sensor-kind", e, none, 61, ""},
		// A table that ends too low.
		{newer, 75, "ntc-100k-3950", 4700, 250, "sensor-curve", w, none, 61,
			"its table ends at 200 °C, where the firmware shuts down"},
	} {
		t.Run(fmt.Sprintf("%s, %d, %s, %g Ω", c.version, c.number, c.curve, c.boardOhm), func(t *testing.T) {
			k, ok := sensor.Find(c.curve)
			if !ok {
				t.Fatal("no such curve")
			}
			sheet := sheetWith(`"ntc"`, strconv.Quote(k.Kind.String()), "ntc-100k-3950", c.curve,
				"printer.cfg", "Configuration.h", "250]", fmt.Sprintf("%g]", c.topC),
				"rated_c = 300", "rated_c = 330")
			if c.boardOhm != 0 {
				pullup := fmt.Sprintf("pullup_ohm = %g\nsupply_v", c.boardOhm)
				sheet = strings.Replace(sheet, "supply_v", pullup, 1)
			}
			header := fmt.Sprintf(sweepHeader, c.version, c.number)
			header = strings.Replace(header, "275", fmt.Sprint(max(275, c.topC+15)), 1)
			list := patch.Printers(t, files{"swap.toml": sheet, "Configuration.h": header})

			said := false
			for _, f := range findings(t, list[0]) {
				if !strings.HasPrefix(f.Rule, "sensor-") || f.Rule == "sensor-resolution" {
					continue
				}
				said = true
				if f.Rule != c.rule || f.Level != c.level || !strings.Contains(f.Text(), c.said) {
					t.Errorf("%s %s: %s\nwant %s %s, saying %q",
						f.Level, f.Rule, f.Text(), c.level, c.rule, c.said)
				}
				if math.IsNaN(c.errorC) {
					continue
				}
				boardOhm := c.boardOhm
				if boardOhm == 0 {
					boardOhm = 4700
				}
				was, _ := readerOf(t, header, tables[c.version])
				seen := func(tempC float64) float64 { return k.Curve.Ohms(tempC) * was.pullupOhm / boardOhm }
				want := actual(was.shown, seen, c.topC) - c.topC
				got := f.Values["error_c"].(float64)
				if math.Abs(got-want) > 0.05 || math.Abs(got-c.errorC) > 0.5 {
					t.Errorf("error_c %.2f, by the second way %.2f, want %g", got, want, c.errorC)
				}
			}
			if said != (c.rule != "") {
				t.Errorf("a sensor rule speaks: %v", said)
			}
			plan, err := patch.Prove(list, all)
			if err != nil {
				t.Fatal(err)
			}
			now := c.number
			if len(plan.Files) > 0 {
				_, now = readerOf(t, string(plan.Files[0].New), tables[c.version])
				if err := os.WriteFile("Configuration.h", plan.Files[0].New, 0o666); err != nil {
					t.Fatal(err)
				}
			}
			if now != c.becomes {
				t.Errorf("becomes %d, want %d", now, c.becomes)
			}
			if again, err := patch.Prove(list, all); err != nil || len(again.Files) > 0 {
				t.Errorf("a second diff is not empty: %v", err)
			}
		})
	}
}

// A higher max temp while a wrong definition stays takes the hotend past its
// rating: it is left out, and hides nothing else. With the definition put right
// it is proved.
func TestProveActualTemperature(t *testing.T) {
	sheet := sheetWith("printer.cfg", "Configuration.h", "250]", "285]", "rated_c = 300", "rated_c = 298")
	header := fmt.Sprintf(sweepHeader, "02010300", 5)
	header = strings.Replace(header, "WATCH_TEMP_PERIOD 40", "WATCH_TEMP_PERIOD 400", 1)
	list := patch.Printers(t, files{"swap.toml": sheet, "Configuration.h": header})
	const tooHot = "at the highest target instead of 277.7 °C, and the hotend is rated for 298 °C"
	plan, err := patch.Prove(list, func(rule string) bool { return rule == "temp-reach" })
	if plan != nil || !says(err, tooHot) {
		t.Errorf("nothing but the raise: %+v, %v", plan, err)
	}
	plan, err = patch.Prove(list,
		func(rule string) bool { return rule == "temp-reach" || rule == "runaway-loose" })
	if err != nil || len(plan.Files) != 1 || !strings.Contains(string(plan.Files[0].New), "MAXTEMP 275\n") ||
		!leavesOne(plan, "temp-reach", tooHot) {
		t.Errorf("the raise beside a watch: %+v, %v", plan, err)
	}
	plan, err = patch.Prove(list, all)
	if err != nil {
		t.Fatal(err)
	}
	if text := string(plan.Files[0].New); !has(text, "TEMP_SENSOR_0 61\n", "MAXTEMP 300\n") {
		t.Errorf("%s", text)
	}
}
