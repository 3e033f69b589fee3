package sections

import (
	"testing"

	"preflash/parser"
)

func TestLacks(t *testing.T) {
	for _, tt := range []struct {
		text  string
		lacks []string
		tools int
	}{
		{"[printer]\nkinematics: delta\n[extruder]\n[extruder1]\n[extruder3]\n", nil, 2},
		{"[extruder]\n", []string{"[printer]"}, 1},
		{"[printer]\n", []string{"[extruder]"}, 0},
		{"[verify_heater extruder]\n", []string{"[printer]", "[extruder]"}, 0},
	} {
		c := readText(t, tt.text)
		got := c.Lacks()
		if len(got) != len(tt.lacks) || c.Tools() != tt.tools {
			t.Errorf("%q lacks %v and has %d tools, want %v and %d", tt.text, got, c.Tools(), tt.lacks, tt.tools)
			continue
		}
		for i, want := range tt.lacks {
			if got[i].What != want || got[i].Without {
				t.Errorf("%q lacks %+v, want %s", tt.text, got[i], want)
			}
		}
	}
	absent := readFiles(t, map[string]string{"printer.cfg": "[include machine.cfg]\n[extruder]\n"},
		func(r *parser.Request) { r.Absent = []string{"machine.cfg"} })
	if got := absent.Lacks(); got != nil {
		t.Errorf("lacks %v, which the missing file may have", got)
	}
}
