package patch

import (
	"maps"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/rules"
)

// Two rules that want a setting differently get the value that protects more,
// where one of them does.
func TestCollect(t *testing.T) {
	to := func(key parser.Key, value any) parser.Change { return parser.Change{Key: key, Value: value} }
	wants := func(rule string, c ...parser.Change) rules.Finding {
		return rules.Finding{Rule: rule, Level: rules.Error, Changes: c}
	}
	tests := []struct {
		name     string
		findings []rules.Finding
		want     map[parser.Key]any
		err      string
	}{
		{"apart", found{wants("temp-ceiling", to(parser.MaxTemp, 280.0)),
			wants("nozzle-size", to(parser.NozzleDiameter, 0.6))},
			map[parser.Key]any{parser.MaxTemp: 280.0, parser.NozzleDiameter: 0.6}, ""},
		{"the lower limit",
			found{wants("temp-ceiling", to(parser.MaxTemp, 280.0)),
				wants("temp-reach", to(parser.MaxTemp, 300.0)),
				wants("temp-ceiling", to(parser.MaxTemp, 270.0))},
			map[parser.Key]any{parser.MaxTemp: 270.0}, ""},
		{"neither protects",
			found{wants("nozzle-size", to(parser.NozzleDiameter, 0.4)),
				wants("flow-limit", to(parser.NozzleDiameter, 0.6))},
			nil, "swap.toml: flow-limit asks otherwise than another rule does: the nozzle diameter is " +
				"wanted as 0.4 and as 0.6"},
		{"waived, or asking for nothing",
			found{{Rule: "temp-ceiling", Changes: []parser.Change{to(parser.MaxTemp, 280.0)},
				Waived: "known"}, wants("temp-ceiling")},
			map[parser.Key]any{}, ""},
	}
	for _, tt := range tests {
		g, trial := alter(t, nil, nil)
		trial.now.findings = tt.findings
		err := g.collect(trial, false)
		if (err != nil) != (tt.err != "") || err != nil && !strings.HasPrefix(err.Error(), tt.err) {
			t.Errorf("%s: %v, want %q", tt.name, err, tt.err)
		}
		if err == nil && !maps.Equal(trial.roundValues, tt.want) {
			t.Errorf("%s: %v, want %v", tt.name, trial.roundValues, tt.want)
		}
		trial.Silent = true
		if err := g.collect(trial, false); err != nil || len(trial.roundValues)+len(trial.roundReasons) > 0 {
			t.Errorf("%s: a silent printer asks for %v, %v", tt.name, trial.roundValues, err)
		}
	}
}

// Who undid whose change is said of two printers, and of one.
func TestUnsettled(t *testing.T) {
	reason := func(owner, rule string) Reason {
		return Reason{Owner: owner, Finding: rules.Finding{Rule: rule}}
	}
	for _, tt := range []struct {
		reasons []Reason
		want    string
	}{
		{[]Reason{reason("a", "temp-ceiling"), reason("a", "temp-reach")},
			"a: the changes come to no end in 8 rounds; the last rule to ask for one is temp-reach"},
		{[]Reason{reason("a", "temp-ceiling"), reason("b", "temp-reach")},
			"a and b share a file and undo each other's changes (temp-ceiling, temp-reach); let their " +
				"sheets agree, or give each printer a file of its own"},
	} {
		expect(t, endless(tt.reasons), tt.want)
	}
}

func TestSafer(t *testing.T) {
	tests := []struct {
		key  parser.Key
		a, b any
		want any // nil: decide by hand
	}{
		{parser.MaxTemp, 280.0, 270.0, 270.0},
		{parser.MinTemp, 5.0, 0.0, 5.0},
		{parser.HotendRiseWindow, 30.0, 40.0, 30.0},
		{parser.HotendWatchOn, true, true, true},
		{parser.HotendWatchOn, false, true, true},
		{parser.NozzleDiameter, 0.4, 0.6, nil},
		{parser.NozzleDiameter, 0.4, 0.4, 0.4},
		{parser.HotendSensor, parser.SensorDef{Name: "5"}, parser.SensorDef{Name: "11"}, nil},
	}
	for _, tt := range tests {
		for range 2 {
			got, err := safer(tt.key, tt.a, tt.b)
			if (err != nil) != (tt.want == nil) || err == nil && got != tt.want {
				t.Errorf("%s, %v and %v: %v, %v, want %v", tt.key, tt.a, tt.b, got, err, tt.want)
			}
			tt.a, tt.b = tt.b, tt.a
		}
	}
}
