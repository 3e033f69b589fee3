package starter

import (
	"strings"
	"testing"

	"preflash/parser/sheet"
)

// ask answers the questions of a sheet with these lines; the last answer ends the
// input.
func ask(t *testing.T, text string, lines ...string) (filled, asked string) {
	t.Helper()
	var out strings.Builder
	saved := text
	q := Questions{About: New(definesFacts()),
		Check: func(text string) error { _, err := read(t, text); return err },
		Save:  func(text string) error { saved = text; return nil }}
	filled, err := q.Ask(text, strings.NewReader(strings.Join(lines, "\n")+"\n"), &out)
	if err != nil {
		t.Fatal(err)
	}
	if saved != filled {
		t.Error("what was saved is not what was answered")
	}
	return filled, out.String()
}

func begun() string { return New(definesFacts()).Text() }

// answers are one to each question, as people write them.
var answers = []string{
	"24 V", "350W", "leave open", "5,0 A", // printer
	"285 C", "190-250 °C", "none",
	"ntc-100k-3950",
	"cartridge", "24", "50 watts",
	"24", "0.4mm", "-0,8",
}

func TestAskFillsTheSheet(t *testing.T) {
	text, asked := ask(t, begun(), answers...)
	got, err := read(t, text)
	if err != nil {
		t.Fatalf("%v\n%s", err, asked)
	}
	switch p, n := got.Printer, got.New; {
	case p.SupplyV.Value != 24, p.SupplyW.Value != 350, p.OtherLoadW.Given, p.OutputA.Value != 5:
		t.Errorf("[printer] is %+v", p)
	case n.RatedC.Value != 285, n.PrintC.Value != [2]float64{190, 250}, n.Liner.Value != "none",
		n.Sensor.Curve.Value != "ntc-100k-3950",
		n.Heater.RatedW.Value != 50, n.Fan.RatedV.Value != 24, n.Nozzle.TipShiftMM.Value != -0.8:
		t.Errorf("[new] is %+v", n)
	}
	for _, want := range []string{
		"14 blanks: 8 that block the check, 6 that may stay open.",
		"Printer and supply: supply_v (14 left)\n", "printer.supply_v in V, such as 24.0; blocks the check: ",
		"New hotend, its nozzle: tip_shift_mm (1 left)\n",
		"new.nozzle.tip_shift_mm in mm, such as 0.8; may stay open: ",
		"No blank is left.",
	} {
		if !strings.Contains(asked, want) {
			t.Errorf("nothing says %q\n%s", want, asked)
		}
	}
	for _, line := range strings.Split(asked, "\n") {
		if len([]rune(line)) > lineWidth+60 ||
			len([]rune(line)) > lineWidth && !strings.Contains(line, ": ") {
			t.Errorf("not wrapped: %q", line)
		}
	}
	if !strings.Contains(text, "#other_load_w = 220.0         # left open\n") {
		t.Error("what was left open does not say so")
	}
}

// An answer that the reader refuses is asked for again, with its reason.
func TestAskRefuses(t *testing.T) {
	for _, tt := range []struct {
		wrong, reason string
	}{
		{"twenty-four", "must be a number"},
		{"-24", "impossible"},
		{`24" # "`, "must be a number in V"},
		{"24 W", "must be a number in V"},
		{"leave open", "This one blocks the check."},
		{"?", "Voltage of the supply that feeds the heater"},
	} {
		text, asked := ask(t, begun(), tt.wrong, "24")
		if !strings.Contains(asked, tt.reason) {
			t.Errorf("%q: nothing says %q\n%s", tt.wrong, tt.reason, asked)
		}
		if !strings.Contains(text, "\nsupply_v = 24\n") {
			t.Errorf("after %q, 24 is not in the sheet\n%s", tt.wrong, text)
		}
	}
	_, asked := ask(t, begun(), append(answers[:7:7], "?", "ntc-100k-3590")...)
	for _, want := range []string{"Known: ", "is not a curve that is known; did you mean ntc-100k-3950?"} {
		if !strings.Contains(asked, want) {
			t.Errorf("nothing says %q\n%s", want, asked)
		}
	}
}

// Enter and the end of the input leave the rest blank, and the questions go on
// from there another time, whatever was written by hand meanwhile.
func TestAskGoesOn(t *testing.T) {
	half, asked := ask(t, begun(), append([]string{""}, answers[1:6]...)...)
	if !strings.Contains(strings.Join(strings.Fields(asked), " "),
		"9 blanks are left: printer.supply_v (blocks the check), new.liner (blocks the check)") {
		t.Errorf("the blanks that are left are not told\n%s", asked)
	}
	half = strings.Replace(half, "#ambient_c = 22", "ambient_c = 17", 1) + "\n# a note of mine\n"
	whole, asked := ask(t, half, append([]string{answers[0]}, answers[6:]...)...)
	got, err := read(t, whole)
	if err != nil {
		t.Fatalf("%v\n%s", err, asked)
	}
	if got.Printer.SupplyV.Value != 24 || got.New.RatedC.Value != 285 || got.Printer.AmbientC.Value != 17 ||
		!strings.Contains(whole, "# a note of mine") {
		t.Errorf("gone on with, the sheet is\n%s", whole)
	}
	if again, asked := ask(t, whole); again != whole || !strings.Contains(asked, "0 blanks") {
		t.Errorf("a whole sheet is asked about\n%s", asked)
	}
}

func TestAskKeepsCRLF(t *testing.T) {
	text, _ := ask(t, strings.ReplaceAll(begun(), "\n", "\r\n"), answers...)
	if strings.Count(text, "\n") != strings.Count(text, "\r\n") || strings.Contains(text, "BLANK") &&
		strings.Contains(text, `= ""`) {
		t.Error("line ends got lost, or a blank was not found")
	}
}

// The power hot is asked of a PTC heater, and of no other; the kind of a sensor
// only where no curve tells it.
func TestAskInTurn(t *testing.T) {
	text, asked := ask(t, begun(), append(append(append([]string{}, answers[:8]...),
		"ptc", "24", "48", "[[25, 48], [200, 30,0]]", "25 48 200 30"), answers[11:]...)...)
	got, err := read(t, text)
	if err != nil {
		t.Fatalf("%v\n%s", err, asked)
	}
	if h := got.New.Heater.HotW; len(h.Value) != 2 || h.Value[1] != [2]float64{200, 30} {
		t.Errorf("hot_w is %+v\n%s", h, asked)
	}
	text, asked = ask(t, begun(),
		append(append(append([]string{}, answers[:7]...), "leave open", "thermocouple"), answers[8:]...)...)
	if got, err = read(t, text); err != nil || got.New.Sensor.Kind.Value.String() != "thermocouple" {
		t.Errorf("%v\n%s", err, asked)
	}
}

func TestLiteral(t *testing.T) {
	for _, tt := range []struct {
		key, example, answer, want string // want "" for a refusal
	}{
		{"rated_v", "24.0", "24 V", "24"}, {"rated_v", "24.0", "0,4", "0.4"},
		{"rated_v", "24.0", "24 volts", "24"}, {"rated_v", "24.0", "24 A", ""},
		{"rated_c", "285", "285 C", "285"}, {"rated_c", "285", "285°C", "285"},
		{"rated_c", "285", "545 F", ""},
		{"pullup_ohm", "4700", "4.7k", "4700"}, {"pullup_ohm", "4700", "4,7 kΩ", "4700"},
		{"pullup_ohm", "4700", "4700 ohm", "4700"},
		{"output_a", "5.0", "5000 mA", "5"}, {"output_a", "5.0", "?", ""}, {"output_a", "5.0", "1.000,5", ""},
		{"print_c", "[190, 250]", "190 250", "[190, 250]"},
		{"print_c", "[190, 250]", "190-250", "[190, 250]"},
		{"print_c", "[190, 250]", "190 to 250 C", "[190, 250]"},
		{"print_c", "[190, 250]", "190°C – 250°C", "[190, 250]"}, {"print_c", "[190, 250]", "hot", ""},
		{"hot_w", "[[25, 48]]", "25 48, 200 30", "[[25, 48], [200, 30]]"},
		{"hot_w", "[[25, 48]]", "25 48 200", ""},
		{"liner", `"none"`, "none", `"none"`},
	} {
		got, wrong := literal(tt.example, tt.answer, unitOf(tt.key))
		if got != tt.want || (wrong == "") != (tt.want != "") {
			t.Errorf("%s = %q becomes %s (%s), want %s", tt.key, tt.answer, got, wrong, tt.want)
		}
	}
}

// A sheet says of its blanks what check says of them.
func TestBlanksSayWhatCheckSays(t *testing.T) {
	text := begun()
	_, err := read(t, text)
	blanks := 0
	for i, line := range strings.Split(text, "\n") {
		_, says, found := strings.Cut(line, "# BLANK, ")
		if !found {
			continue
		}
		blanks++
		word, _, _ := strings.Cut(says, ":")
		if told := atLine(err, i+1); !strings.Contains(told, " is blank and "+word) {
			t.Errorf("line %d, %q: check says %q", i+1, line, told)
		}
	}
	if blanks != 14 || !strings.Contains(text, sheet.MayStay) {
		t.Errorf("%d blanks", blanks)
	}
}
