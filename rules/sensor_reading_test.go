package rules

import (
	"testing"

	"preflash/parser"
	"preflash/rules/sensor"
)

// How a misreading is worded, in brief and in full.
func TestMisreadingWords(t *testing.T) {
	in := healthyInput() // 3950, printing from 190 to 260 °C
	r, ok := newReading(in, 0)
	if !ok {
		t.Fatal("the sheet's sensor has no curve")
	}
	r.bandK, r.limitC = 1.5, 285
	believed := sensor.Circuit{Curve: r.Real.Curve, PullupOhm: 4700, HighC: 250}
	close, other := believed, believed
	close.PullupOhm = 4740
	other.PullupOhm = 10000
	const full = "the firmware reads the sensor as 11 (ntc-100k-3950)"
	for _, tt := range []struct {
		name        string
		m           misreading
		harm        string
		brief, text string
	}{
		{"too hot", misreading{believed: &believed, actualC: 277.3, worstAtC: 260, worstK: 17.3}, overShown,
			"260 °C shown is 277.3 °C at the nozzle, 17.3 K hotter",
			", and it is ntc-100k-3950: 260 °C indicated is 277.3 °C actual, 17.3 K hotter than shown " +
				"(the sensor itself is good for ±1.5 K)"},
		{"too cold", misreading{believed: &believed, actualC: 255, worstAtC: 200, worstK: -6}, "",
			"260 °C shown is 255 °C at the nozzle, 5 K colder",
			", and it is ntc-100k-3950: 260 °C indicated is 255 °C actual, 5 K colder than shown; worst " +
				"at 200 °C: 6 K colder (the sensor itself is good for ±1.5 K)"},
		{"right at the top", misreading{believed: &believed, actualC: 260.02, worstAtC: 200, worstK: -6}, "",
			"at 200 °C the nozzle is 6 K colder than shown",
			", and it is ntc-100k-3950: 260 °C indicated is 260 °C actual; worst at 200 °C: 6 K colder " +
				"(the sensor itself is good for ±1.5 K)"},
		{"right", misreading{believed: &believed, actualC: 260, worstAtC: 260}, "",
			"at 260 °C the nozzle is 0 K hotter than shown",
			", and it is ntc-100k-3950: 260 °C indicated is 260 °C actual (the sensor itself is good for " +
				"±1.5 K)"},
		{"a table that ends", misreading{believed: &believed, actualC: 260, worstAtC: 260, short: true}, "",
			"its table ends at 250 °C, below the 260 °C that the sheet asks for",
			", and it is ntc-100k-3950; its table ends at 250 °C, where the firmware shuts down: below " +
				"the 260 °C that the sheet asks for; worst at 260 °C: 0 K hotter (the sensor itself is " +
				"good for ±1.5 K)"},
		{"a pull-up within its tolerance", misreading{believed: &close, actualC: 260, worstAtC: 260}, "",
			"at 260 °C the nozzle is 0 K hotter than shown",
			", and it is ntc-100k-3950: 260 °C indicated is 260 °C actual (the sensor itself is good for " +
				"±1.5 K)"},
		{"past its rating", misreading{believed: &believed, actualC: 270, worstAtC: 260, worstK: 10,
			limitActualC: 301, overRating: true}, pastRating,
			"260 °C shown is 270 °C at the nozzle, 10 K hotter; at the highest target it is at 301 °C, " +
				"above its rating of 300 °C",
			", and it is ntc-100k-3950: 260 °C indicated is 270 °C actual, 10 K hotter than shown (the " +
				"sensor itself is good for ±1.5 K); at the highest target, 285 °C, the hotend is at 301 " +
				"°C, above its rating of 300 °C"},
		{"another pull-up", misreading{believed: &other, actualC: 270, worstAtC: 260, worstK: 10}, overShown,
			"260 °C shown is 270 °C at the nozzle, 10 K hotter",
			" with a pull-up of 10 kΩ, the board has 4700 Ω and the sensor is ntc-100k-3950: 260 °C " +
				"indicated is 270 °C actual, 10 K hotter than shown (the sensor itself is good for ±1.5 K)"},
	} {
		if got := tt.m.harm(); got != tt.harm {
			t.Errorf("%s: harm %q, want %q", tt.name, got, tt.harm)
		}
		if got := r.brief(tt.m); got != tt.brief {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.brief)
		}
		if got := r.sentence(in, tt.m); got != full+tt.text {
			t.Errorf("%s:\n%q, want\n%q", tt.name, got, full+tt.text)
		}
	}
}

// Of several definitions the worst counts, in whatever order they come.
func TestJudgeWorst(t *testing.T) {
	in := healthyInput()
	r, _ := newReading(in, 0)
	circuit := func(curve string) *sensor.Circuit {
		known, _ := sensor.Find(curve)
		return &sensor.Circuit{Curve: known.Curve, PullupOhm: 4700}
	}
	worst, bad, good := circuit("ntc-100k-4267"), circuit("ntc-100k-4300"), circuit("ntc-100k-3950")
	for i, all := range [][]*sensor.Circuit{{worst, bad, good}, {good, bad, worst}, {bad, worst, good}} {
		want := worst
		if a, b := r.judgeOne(worst), r.judgeOne(bad); b.rangeK > a.rangeK {
			want = bad
		}
		if m := r.judge(all); m.believed != want || m.level != Error {
			t.Errorf("order %d: %+v", i, m)
		}
	}
}

// What nothing says of the pull-up, and what it rests on then.
func TestPullup(t *testing.T) {
	for _, tt := range []struct {
		name    string
		own     parser.Setting[float64] // of the configuration
		defOhm  float64                 // what the definition is made for
		given   bool                    // by the sheet
		wantOhm float64
		unsaid  bool
		text    string
	}{
		{"the sheet says it", parser.Setting[float64]{}, 1000, true, 4700, false, "4700 Ω"},
		{"nothing does", parser.Setting[float64]{}, 4700, false, 4700, false,
			"4700 Ω (assumed: the sheet does not say)"},
		{"a definition that is as good as usual", parser.Setting[float64]{}, 4740, false, 4700, false,
			"4700 Ω (assumed: the sheet does not say)"},
		{"a definition for another", parser.Setting[float64]{}, 1000, false, 1000, true,
			"1000 Ω, as the configuration has it"},
		{"a definition for none", parser.Setting[float64]{}, 0, false, 4700, false,
			"4700 Ω (assumed: the sheet does not say)"},
		{"the configuration says it", set(parser.HotendPullup, 2200.0), 4700, false, 2200, false,
			"2200 Ω, as the configuration has it"},
		{"by default", byDefault(parser.HotendPullup, 4700.0), 4700, false, 4700, false,
			"4700 Ω (assumed: the sheet does not say)"},
		{"of nothing", set(parser.HotendPullup, 0.0), 4700, false, 4700, false,
			"4700 Ω, as the configuration has it"},
	} {
		in := healthyInput()
		in.Printer.Hotend.PullupOhm, in.Printer.Hotend.Sensor.Value.PullupOhm = tt.own, tt.defOhm
		in.Sheet.Printer.PullupOhm.Given = tt.given
		if got := boardPullup(in); got != tt.wantOhm {
			t.Errorf("%s: %g Ω, want %g", tt.name, got, tt.wantOhm)
		}
		if got := pullupUnsaid(in); got != tt.unsaid {
			t.Errorf("%s: unsaid %v", tt.name, got)
		}
		if got := pullupText(in); got != tt.text {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.text)
		}
		if all, err := believedCircuits(in); tt.own.Value == 0 &&
			(err != nil || tt.defOhm > 0 && all[0].PullupOhm != tt.defOhm) {
			t.Errorf("%s: the firmware goes by %+v", tt.name, all)
		}
	}
}
