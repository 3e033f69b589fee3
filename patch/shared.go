package patch

import (
	"errors"
	"fmt"
	"slices"

	"preflash/parser"
)

// compareShared says what a change does to the printers that read the same line and
// did not ask for it. Where one of them cannot tell the setting, the line may be the
// one that decides there, so a figure that protects less is an error.
func (g *group) compareShared() error {
	var errs []error
	for _, t := range g.trials {
		if t.now == t.before {
			continue
		}
		for was := range t.before.config.Printer().Settings() {
			is := t.now.settings[was.Key]
			switch {
			case g.asks(t, was.Key) || g.moves(t, was.Key):
			case was.State == parser.Unknown && is.State == parser.Unknown:
				u, key := g.changing(t, was.Name)
				if u == nil {
					continue
				}
				if g.moves(u, key) {
					err := fmt.Errorf("the %s would protect less, and for %s, which reads the same files, "+
						"it cannot be told: %s", key, t.Owner, is.Why)
					errs = append(errs, &failure{of: u, err: err})
					continue
				}
				g.shares(t, fmt.Sprintf("the %s, which cannot be told, may be another", was.Key))
			case was.State != parser.Unknown && len(t.askedBy[was.Key]) > 0 && !alike(was, is):
				g.shares(t, fmt.Sprintf("the %s would be %s instead of %s", was.Key, is.Text(), was.Text()))
			}
		}
	}
	return errors.Join(errs...)
}

// asks reports whether a printer itself asks for a setting, or for one that carries
// it along.
func (g *group) asks(t *trial, key parser.Key) bool {
	return slices.ContainsFunc(g.plan.Reasons, func(r Reason) bool {
		return r.Owner == t.Owner && (r.asksFor(key) || slices.ContainsFunc(key.With(), r.asksFor))
	})
}

// moves reports whether a figure of a printer protects less, which is said anyway.
func (g *group) moves(t *trial, key parser.Key) bool {
	return slices.ContainsFunc(g.plan.Moves,
		func(m Move) bool { return m.Owner == t.Owner && m.Was.Key == key })
}

// changing finds another printer that changes a setting by its name in the files.
func (g *group) changing(t *trial, name string) (*trial, parser.Key) {
	for _, u := range g.trials {
		if u == t || name == "" {
			continue
		}
		for was := range u.before.config.Printer().Settings() {
			if was.Name == name && g.asks(u, was.Key) && !alike(was, u.now.settings[was.Key]) {
				return u, was.Key
			}
		}
	}
	return nil, ""
}

func (g *group) shares(t *trial, text string) {
	g.plan.Asides = append(g.plan.Asides, Aside{Owner: t.Owner, Text: text, Shared: true})
}
