package starter

import (
	"strings"
	"testing"

	"preflash/parser"
)

// z_reference is what homes Z; where that cannot be told, it is asked for.
func TestZReference(t *testing.T) {
	const main = "printer.cfg"
	homes := func(h parser.Homing) parser.Setting[parser.Homing] {
		return written(parser.ZHoming, h, main, 40)
	}
	trigger := func(mm float64) parser.Setting[float64] { return written(parser.ProbeTrigger, mm, main, 90) }
	for _, tt := range []struct {
		name string
		g    parser.Geometry
		want string // "" for a blank
		says string
	}{
		{"virtual endstop", parser.Geometry{Homes: homes(parser.HomesByProbe), TriggerMM: trigger(2.1),
			BesideNozzle: true}, "probe", "(printer.cfg:40)"},
		{"switch, probe levels", parser.Geometry{Homes: homes(parser.HomesAtBed), TriggerMM: trigger(2.1)},
			"endstop", "a switch near the bed"},
		{"a motor that stalls", parser.Geometry{Homes: homes(parser.HomesAtBed), HomesByStall: true}, "",
			"presses on the bed"},
		{"towers", parser.Geometry{Homes: homes(parser.HomesFar)}, "endstop", "a switch far from the bed"},
		{"the nozzle, by its section",
			parser.Geometry{Homes: homes(parser.HomesByProbe), TriggerMM: trigger(-0.1),
				NozzleProbes: written(parser.NozzleProbes, true, main, 88)}, "nozzle", "the nozzle itself"},
		{"the nozzle, perhaps", parser.Geometry{Homes: homes(parser.HomesByProbe),
			TriggerMM: trigger(-1.745)}, "", "evidence, not proof"},
		{"a probe that may only level", parser.Geometry{TriggerMM: trigger(2.1)}, "", "only levels the bed"},
		{"nothing known", parser.Geometry{}, "", "What finds the bed"},
	} {
		e := zReference(&parser.Printer{Geometry: tt.g})
		got := strings.Trim(e.Value, `"`)
		if got != tt.want || e.Blank != (tt.want == "") || !strings.Contains(e.Note, tt.says) {
			t.Errorf("%s: %q, blank %v, %q", tt.name, got, e.Blank, e.Note)
		}
	}
}
