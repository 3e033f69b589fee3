package report

import (
	"bytes"
	"cmp"
	"flag"
	"io"
	"math"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/testfiles"
	"preflash/rules"
)

var update = flag.Bool("update", false, "write the golden files anew")

// golden compares with a file of testdata.
func golden(t *testing.T, name, got string) {
	t.Helper()
	testfiles.Golden(t, *update, filepath.Join("testdata", name), got)
}

// render prints any of the reports.
func render(t testing.TB, report func(io.Writer) error) string {
	t.Helper()
	var b bytes.Buffer
	if err := report(&b); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// workshop is a fleet of invented printers: one with all kinds of findings,
// two without, one that cannot be read, one with waived findings only, and one
// whose files try to act on the reader's screen.
func workshop() *fleet.Result {
	egret03 := fleet.Printer{
		Name: "egret-03", Sheet: "printers/egret-03/swap.toml", Style: "defines",
		Files: []string{"printers/egret-03/Configuration.h", "printers/egret-03/Configuration_adv.h"},
	}
	at := func(line, column int, text string) fleet.Region {
		end := column + len(text)
		return fleet.Region{
			File: egret03.Files[0], Line: line, Column: column, CharColumn: column,
			EndLine: line, EndColumn: end, EndCharColumn: end, Text: text,
		}
	}
	egret03.Findings = []fleet.Finding{
		{
			Rule: "heater-stuck-on", Level: rules.Note, Region: fleet.Region{File: egret03.Sheet, Line: 23,
				Column: 9, CharColumn: 9, EndLine: 23, EndColumn: 13, EndCharColumn: 13, Text: "48.0"},
			Message: "Stuck on, the heater takes the block to 345.5 °C at most. No firmware can stop a " +
				"welded output: fit an independent thermal cut-off.",
			Values: rules.Values{"equilibrium_c": 345.4871, "upper_bound": true},
		},
		{
			Rule: "sensor-curve", Level: rules.Error, Region: at(142, 23, "5"),
			Message: "Read as ntc-100k-4267, the sensor shows 200 °C when the nozzle is at 214.2 °C: " +
				"14.2 K hotter, where its tolerance explains 1.9 K.",
			Change: "hotend sensor: 5 → 11, line 142",
			Values: rules.Values{"at_c": 200.0, "actual_c": 214.2187, "error_c": 14.2187, "band_c": 1.92,
				"worst_at_c": 270, "worst_error_c": 17.52},
			Fix: []fleet.Replacement{{Region: at(142, 23, "5"), New: "11"}},
		},
		{
			Rule: "coldside-fan", Level: rules.Warning, Region: at(1204, 1, "#define COOL_PIN -1"),
			Message: "No fan output follows this hotend.",
		},
		{
			Rule: "temp-ceiling", Level: rules.Error, Region: at(310, 24, "315"),
			Message: "A user can ask for 300 °C and the firmware trips at 315 °C, " +
				"but the liner is rated 240 °C.",
			Change: "max temp: 315 → 255, line 310",
			Values: rules.Values{"target_limit_c": 300.0, "trip_c": 315.0, "rated_c": 240.0,
				"limited_by": "new.liner"},
			Fix: []fleet.Replacement{{Region: at(310, 24, "315"), New: "255"}},
		},
		{
			Rule: "supply-budget", Level: rules.Warning, Region: fleet.Region{File: egret03.Sheet, Line: 9,
				Column: 12, CharColumn: 12, EndLine: 9, EndColumn: 17, EndCharColumn: 17, Text: "350.0"},
			Message: "Bed, hotend and the rest draw 298 W of a supply rated 350 W, 85 %.",
			Waived:  "bed and hotend never heat together here",
			Values:  rules.Values{"load_w": 298.0, "supply_w": 350.0, "share": 0.851428571},
		},
	}
	odd := fleet.Printer{
		Name: "egret-06", Sheet: "printers/egret-06/swap.toml", Style: "sections",
		Files: []string{"printers/egret-06/printer.cfg"},
		Findings: []fleet.Finding{{
			Rule: "sensor-unknown", Level: rules.Error,
			Region: fleet.Region{File: "printers/egret-06/printer.cfg", Line: 7, Column: 14, CharColumn: 14,
				EndLine: 7, EndColumn: 30, EndCharColumn: 28, Text: "x\x1b[2J</script>"},
			Message: "The sensor is called \x1b[2J\u202eevil</script>\r\n" +
				"`*_@bench_*` [x](http://bench.invalid) D\xfcse: it fits no known curve.",
			Values: rules.Values{"name": "\x1b[2J\u202e</script>\U000e0041", "nothing": math.NaN(),
				"far": math.Inf(1), "points": [][2]float64{{25, 1e5}, {250, math.Copysign(0, -1)}}},
		}},
	}
	waived := fleet.Printer{
		Name: "egret-05", Sheet: "printers/egret-05/swap.toml", Style: "sections",
		Files: []string{"printers/egret-05/printer.cfg"},
		Findings: []fleet.Finding{{
			Rule: "fan-wires", Level: rules.Note, Region: fleet.Region{},
			Message: "A fan with 3 wires goes on an output with 2.", Waived: "the third wire is cut",
		}},
	}
	clean := func(name string) fleet.Printer {
		return fleet.Printer{Name: name, Sheet: "printers/" + name + "/swap.toml", Style: "sections",
			Files: []string{"printers/" + name + "/printer.cfg"}}
	}
	broken := fleet.Printer{
		Name: "egret-04", Sheet: "printers/egret-04/swap.toml",
		Problem: &fleet.Problem{File: "printers/egret-04/printer.cfg", Line: 12, Column: 10,
			Message: "includes panel.cfg, which does not exist; correct the name, add the file, " +
				"or list it under absent in the sheet"},
	}
	for _, p := range []fleet.Printer{egret03, odd, waived} {
		for i := range p.Findings {
			f := &p.Findings[i]
			f.Rank, f.Danger = rules.RankOf(&rules.Finding{Rule: f.Rule, Level: f.Level})
		}
		slices.SortStableFunc(p.Findings, func(a, b fleet.Finding) int { return cmp.Compare(a.Rank, b.Rank) })
	}
	return &fleet.Result{Version: "v1.2.3", Printers: []fleet.Printer{clean("egret-01"), clean("egret-02"),
		egret03, broken, waived, odd}}
}

func cleanFleet(n int) *fleet.Result {
	r := &fleet.Result{}
	for range n {
		r.Printers = append(r.Printers, fleet.Printer{Name: "egret-01", Sheet: "egret-01/swap.toml",
			Style: "defines"})
	}
	return r
}

func lines(s string) int { return strings.Count(s, "\n") }
