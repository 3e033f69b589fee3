package sections

import (
	"testing"
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
			t.Errorf("%q lacks %v and has %d tools, want %v and %d",
				tt.text, got, c.Tools(), tt.lacks, tt.tools)
			continue
		}
		for i, want := range tt.lacks {
			if got[i].What != want || got[i].Without {
				t.Errorf("%q lacks %+v, want %s", tt.text, got[i], want)
			}
		}
	}
	c := readFiles(t, files{"printer.cfg": "[include machine.cfg]\n[extruder]\n"}, absent("machine.cfg"))
	if got := c.Lacks(); got != nil {
		t.Errorf("lacks %v, which the missing file may have", got)
	}
}
