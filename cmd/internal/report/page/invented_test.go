package page

import (
	"bytes"
	"io"
	"testing"

	"preflash/cmd/internal/fleet"
	"preflash/patch"
	"preflash/rules"
)

// invented is a survey of printers that nobody has, without what was computed:
// one with findings, one without, one that cannot be read, one with a waived
// finding, and one whose files try to act on the reader's screen.
func invented() *fleet.Survey {
	printer := func(name string, findings ...fleet.Finding) fleet.Printer {
		for i := range findings {
			f := &findings[i]
			f.Rank, f.Danger = rules.RankOf(&rules.Finding{Rule: f.Rule, Level: f.Level})
		}
		return fleet.Printer{Name: name, Sheet: "printers/" + name + "/swap.toml", Style: "sections",
			Files: []string{"printers/" + name + "/printer.cfg"}, Findings: findings}
	}
	at := func(name string, line int) fleet.Region {
		return fleet.Region{File: "printers/" + name + "/printer.cfg", Line: line, Column: 14,
			EndLine: line, EndColumn: 17}
	}
	broken := printer("egret-04")
	broken.Problem = &fleet.Problem{File: "printers/egret-04/printer.cfg", Line: 12, Column: 10,
		Message: "includes panel.cfg, which does not exist; correct the name, or add the file"}
	r := &fleet.Result{Version: "v1.2.3", Printers: []fleet.Printer{
		printer("egret-01"),
		printer("egret-03",
			fleet.Finding{Rule: "sensor-curve", Level: rules.Error, Region: at("egret-03", 142),
				Change:  "hotend sensor: 5 → 11, line 142",
				Message: "Read as ntc-100k-4267, the sensor shows 200 °C when the nozzle is at 214.2 °C.",
				Detail:  "its tolerance explains 1.9 K"},
			fleet.Finding{Rule: "temp-ceiling", Level: rules.Error, Region: at("egret-03", 310),
				Change:  "max temp: 315 → 255, line 310",
				Message: "A user can ask for 300 °C, but the liner is rated 240 °C."},
			fleet.Finding{Rule: "coldside-fan", Level: rules.Warning, Region: at("egret-03", 1204),
				Message: "No fan output follows this hotend."},
			fleet.Finding{Rule: "heater-stuck-on", Level: rules.Note,
				Message: "Stuck on, the heater takes the block to 345.5 °C at most: fit an independent " +
					"thermal cut-off."}),
		broken,
		printer("egret-05", fleet.Finding{Rule: "fan-wires", Level: rules.Note,
			Message: "A fan with 3 wires goes on an output with 2.", Waived: "the third wire is cut"}),
		printer("egret-06", fleet.Finding{
			Rule: "sensor-unknown", Level: rules.Error, Region: at("egret-06", 7),
			Message: "The sensor is called \x1b[2J\u202eevil</script>\r\n" +
				"`*_@bench_*` [x](http://bench.invalid) D\xfcse: it fits no known curve."}),
	}}
	none := make([]*rules.Input, len(r.Printers))
	return &fleet.Survey{Result: r, Before: none, After: none, Diff: &fleet.Diff{Plan: &patch.Plan{}}}
}

func render(t testing.TB, page func(io.Writer) error) string {
	t.Helper()
	var b bytes.Buffer
	if err := page(&b); err != nil {
		t.Fatal(err)
	}
	return b.String()
}
