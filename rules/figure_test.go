package rules

import (
	"testing"

	"preflash/parser"
)

func TestFigureWorseThan(t *testing.T) {
	k := func(x float64, w Worse) Figure { return Figure{x, "K", w} }
	tests := []struct {
		a, b Figure
		want bool
	}{
		{k(3, Higher), k(2, Higher), true},
		{k(2, Higher), k(3, Higher), false},
		{k(2, Higher), k(2, Higher), false},
		{k(2+1e-9, Higher), k(2, Higher), false}, // rounding
		{k(2000.01, Higher), k(2000, Higher), true},
		{k(2, Lower), k(3, Lower), true},
		{k(3, Lower), k(2, Lower), false},
		{k(2-1e-9, Lower), k(2, Lower), false},
		{k(3, Higher), k(2, Lower), false},
		{k(3, Higher), Figure{2, "s", Higher}, false}, // they do not compare
		{k(1e-6, Higher), k(0, Higher), false},        // just as much as rounding does
		{k(-1e-6, Lower), k(0, Lower), false},
		{k(1e6+0.5, Higher), k(1e6, Higher), false},
		{Figure{}, Figure{}, false},
		{k(3, Higher), Figure{}, false},
	}
	for _, tt := range tests {
		if got := tt.a.WorseThan(tt.b); got != tt.want {
			t.Errorf("%+v is worse than %+v: %v, want %v", tt.a, tt.b, got, tt.want)
		}
	}
}

// Check fills in the figure that a rule names, and what the finding is about.
func TestFigureOfFindings(t *testing.T) {
	in := healthyInput()
	in.Printer.Limits.MaxTemp.Value = 330
	in.Printer.Hotend.Watch.HysteresisC.Value = 40
	in.Printer.Limits.Presets[1] = unknown[float64](parser.Preset(2))
	want := map[string]struct {
		about  string
		figure Figure
	}{
		"temp-ceiling":  {"", Figure{330, "°C", Higher}},
		"runaway-loose": {string(parser.HotendHysteresis), Figure{40, "K", Higher}},
		"preset-over":   {string(parser.Preset(2)), Figure{}},
	}
	for _, f := range Check(in) {
		if w, ok := want[f.Rule]; ok {
			delete(want, f.Rule)
			if f.About != w.about || f.Figure != w.figure {
				t.Errorf("%s is about %q, %+v, want %q, %+v", f.Rule, f.About, f.Figure, w.about, w.figure)
			}
		}
	}
	if len(want) > 0 {
		t.Errorf("nothing is said of %v", want)
	}
	rise := set(parser.HotendRise, 0.5)
	if f := figureOf(&rise); f != (Figure{0.5, "K", Lower}) {
		t.Errorf("a required rise is %+v", f)
	}
}

// The names that rules give of their figures and of other rules exist.
func TestRulesNameWhatExists(t *testing.T) {
	for _, r := range All() {
		for _, hidden := range r.Hides {
			if Find(hidden) == nil || hidden == r.ID {
				t.Errorf("%s hides %q", r.ID, hidden)
			}
		}
		if r.Figure.Value != "" && r.Figure.Worse == Never {
			t.Errorf("%s has a figure that never gets worse", r.ID)
		}
	}
}
