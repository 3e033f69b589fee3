package patch

import (
	"slices"
	"testing"

	"preflash/parser"
)

// Each guard over printers that read a line of which another one asked for the
// change.
func TestCompareShared(t *testing.T) {
	limit := func(c float64) func(*altered) {
		return func(a *altered) { a.Printer().Limits.MaxTemp.Value = c }
	}
	untold := func(a *altered) {
		s := &a.Printer().Limits.MaxTemp
		s.State, s.Why = parser.Unknown, "it hangs on X"
	}
	const changes, may = "the max temp would be 250 °C instead of 260 °C",
		"the max temp, which cannot be told, may be another"
	for name, tt := range map[string]struct {
		before, after func(*altered) // of the printer that did not ask
		asked, asks   bool           // that a rule asked for it: of any printer, of this one
		moves         bool           // its own figure protects less
		raised        bool           // so does that of the printer that asked
		other         float64        // what that one has afterwards
		name          string         // how that one spells it
		aside, err    string
	}{
		"another figure":   {before: limit(260), after: limit(250), asked: true, aside: changes},
		"asked for itself": {before: limit(260), after: limit(250), asked: true, asks: true},
		"said as a raise":  {before: limit(250), after: limit(260), asked: true, moves: true},
		"nobody asked":     {before: limit(260), after: limit(250)},
		"the same figure":  {before: limit(260), after: limit(260), asked: true},
		"told now":         {before: untold, after: limit(250), asked: true},
		"cannot be told":   {before: untold, after: untold, other: 250, aside: may},
		"a raise, untold": {before: untold, after: untold, other: 290, raised: true,
			err: "b.toml: the diff failed when it was tried in memory and is not shown: the max temp would " +
				"protect less, and for a.toml, which reads the same files, it cannot be told: it hangs on X"},
		"the other one stays": {before: untold, after: untold, other: 260},
		"spelled another way": {before: untold, after: untold, other: 250, name: "HEATER_1_MAXTEMP"},
	} {
		t.Run(name, func(t *testing.T) {
			g, one := alter(t, tt.before, tt.after)
			one.Owner = "a.toml"
			_, other := alter(t, limit(260), func(a *altered) {
				s := &a.Printer().Limits.MaxTemp
				s.Value = 260
				if tt.other != 0 {
					s.Value = tt.other
				}
				if tt.name != "" {
					s.Name = tt.name
				}
			})
			other.Owner = "b.toml"
			if tt.name != "" {
				other.before.config.Printer().Limits.MaxTemp.Name = tt.name
			}
			g.trials = append(g.trials, other)
			ask := Reason{Owner: "b.toml"}
			ask.Finding.Changes = []parser.Change{{Key: parser.MaxTemp, Value: 250.0}}
			g.plan.Reasons = []Reason{ask}
			if tt.asked {
				one.askedBy[parser.MaxTemp] = []string{"temp-ceiling"}
			}
			if tt.asks {
				ask.Owner = "a.toml"
				g.plan.Reasons = append(g.plan.Reasons, ask)
			}
			move := Move{Was: parser.Description{Key: parser.MaxTemp}}
			if tt.moves {
				move.Owner = "a.toml"
				g.plan.Moves = append(g.plan.Moves, move)
			}
			if tt.raised {
				move.Owner = "b.toml"
				g.plan.Moves = append(g.plan.Moves, move)
			}
			expect(t, g.compareShared(), tt.err)
			var want []Aside
			if tt.aside != "" {
				want = []Aside{{Owner: "a.toml", Text: tt.aside, Shared: true}}
			}
			if !slices.Equal(g.plan.Asides, want) {
				t.Errorf("said aside %v, want %v", g.plan.Asides, want)
			}
			one.now = one.before
			g.plan.Asides = nil
			if err := g.compareShared(); err != nil || len(g.plan.Asides) > 0 {
				t.Errorf("of a printer that stays as it is: %v, %v", err, g.plan.Asides)
			}
		})
	}
}
