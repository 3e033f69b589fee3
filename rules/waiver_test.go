package rules

import (
	"strings"
	"testing"

	"preflash/parser"
	"preflash/parser/sheet"
)

// A waiver holds as long as the figure does not get worse; what it lacks is
// shown as the line to write.
func TestWaiverFigure(t *testing.T) {
	upTo := func(at float64, setting string) sheet.Waiver {
		w := waiver("runaway-loose", "2027-11-25")
		w.At, w.Setting = given("waiver.at", at), given("waiver.setting", setting)
		w.Setting.Given = setting != ""
		return w
	}
	bare := waiver("runaway-loose", "2027-11-25")
	bare.Setting = given("waiver.setting", string(parser.HotendDropPeriod))
	long := upTo(200, string(parser.HotendDropPeriod))
	long.Until.Value = long.Until.Value.AddDate(0, 0, 1)
	tests := []struct {
		name   string
		waiver sheet.Waiver
		waived bool
		says   string
	}{
		{"at the figure", upTo(200, "hotend drop check period"), true, ""},
		{"within what is shown", upTo(199.9, "hotend drop check period"), true, ""},
		{"worse", upTo(199.8, "hotend drop check period"), false, "accepted up to 199.8 s and is 200 s now"},
		{"of another setting", upTo(500, "hotend heating check window"), false, ""},
		{"of a misspelt setting", upTo(500, "hotend drop check perod"), false,
			`did you mean "hotend drop check period"?`},
		{"without the setting", upTo(200, ""), false,
			`setting = "hotend drop check period" and at = 200 (s)`},
		{"without a figure", bare, false, `at = 200 (s)`},
		{"for more than a year", long, false, "until = 2027-11-25 at the latest"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			in := healthyInput()
			in.Printer.Hotend.Watch.DropPeriodS.Value = 200
			in.Sheet.Waivers = []sheet.Waiver{tt.waiver}
			var said string
			waived, found := false, false
			for _, f := range Check(in) {
				switch f.Rule {
				case "runaway-loose":
					found, waived = true, f.Waived != ""
				case "waiver-expired":
					said += f.Text()
				}
			}
			if !found || waived != tt.waived || !strings.Contains(said, tt.says) || tt.says == "" &&
				said != "" {
				t.Errorf("found %v, waived %v, says %q", found, waived, said)
			}
		})
	}
}

// A waiver of a rule that does not exist says which one may be meant.
func TestWaiverOfNoRule(t *testing.T) {
	for name, want := range map[string]string{
		"runaway-lose": "did you mean runaway-loose?",
		"whatever":     "preflash rules lists them",
	} {
		in := healthyInput()
		in.Sheet.Waivers = []sheet.Waiver{waiver(name, "2026-12-31")}
		said := ""
		for _, f := range Check(in) {
			if f.Rule == "waiver-expired" {
				said += f.Text()
			}
		}
		if !strings.Contains(said, want) {
			t.Errorf("%s: %q, want %q", name, said, want)
		}
	}
}

func TestOutgrows(t *testing.T) {
	share := func(v float64, w Worse) Figure { return Figure{v, "%", w} }
	tests := []struct {
		is, accepted Figure
		want         bool
	}{
		{share(86, Higher), share(85, Higher), false},
		{share(86.1, Higher), share(85, Higher), true},
		{share(84, Lower), share(85, Lower), false},
		{share(83.9, Lower), share(85, Lower), true},
		{share(90, Lower), share(85, Lower), false},
		{Figure{500.2, "°C", Higher}, Figure{500, "°C", Higher}, true},
		{Figure{3.02, "A", Higher}, Figure{3, "A", Higher}, true},
		{Figure{}, Figure{}, false},
	}
	for _, tt := range tests {
		if got := tt.is.Outgrows(tt.accepted); got != tt.want {
			t.Errorf("%v outgrows %v: %v", tt.is, tt.accepted, got)
		}
	}
}
