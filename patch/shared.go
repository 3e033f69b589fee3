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
	changed := g.changedSettings()
	for _, t := range g.trials {
		if t.now == t.before {
			continue
		}
		for was := range t.before.config.Printer().Settings() {
			is := t.now.settings[was.Key]
			untold := was.State == parser.Unknown && is.State == parser.Unknown
			told := was.State != parser.Unknown && len(t.askedBy[was.Key]) > 0 && !alike(was, is)
			if !untold && !told || g.asks(t, was.Key) || g.moves(t, was.Key) {
				continue
			}
			if told {
				g.shares(t, wouldBe(was, is))
				continue
			}
			u, ok := changed.byOther(t, was.Name)
			switch {
			case !ok:
			case g.moves(u.trial, u.key):
				err := fmt.Errorf("the %s would protect less, and for %s, which reads the same files, "+
					"it cannot be told: %s", u.key, t.Owner, is.Why)
				errs = append(errs, &failure{of: u.trial, err: err})
			default:
				g.shares(t, fmt.Sprintf("the %s, which cannot be told, may be another", was.Key))
			}
		}
	}
	return errors.Join(errs...)
}

// changedSettings are those that change for a printer that asks for it, by their
// names in the files.
type changedSettings map[string][]changedSetting

type changedSetting struct {
	trial *trial
	key   parser.Key
}

func (g *group) changedSettings() changedSettings {
	list := make(changedSettings)
	for _, u := range g.trials {
		for was := range u.before.config.Printer().Settings() {
			if was.Name != "" && !alike(was, u.now.settings[was.Key]) && g.asks(u, was.Key) {
				list[was.Name] = append(list[was.Name], changedSetting{u, was.Key})
			}
		}
	}
	return list
}

// byOther finds one that another printer changes.
func (c changedSettings) byOther(t *trial, name string) (changedSetting, bool) {
	for _, one := range c[name] {
		if one.trial != t {
			return one, true
		}
	}
	return changedSetting{}, false
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

func (g *group) shares(t *trial, text string) {
	g.plan.Asides = append(g.plan.Asides, Aside{Owner: t.Owner, Text: text, Shared: true})
}
