package patch

import (
	"errors"
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"

	"preflash/parser"
	"preflash/rules"
	"preflash/rules/unit"
)

// compareTrial compares what the changes led to with the start, edited being the
// lines that they touch. All that is wrong is in the error, a *failure.
func (g *group) compareTrial(t *trial, edited editedLines) error {
	others := errors.Join(g.compareHeaters(t), g.compareOptions(t, edited))
	err := errors.Join(g.compareFindings(t), g.compareTemperature(t), g.compareSettings(t, edited), others)
	if err == nil {
		return nil
	}
	return &failure{t, err, others != nil}
}

// worst finds the worst finding about what one is about; nil where there is none.
func worst(findings []rules.Finding, about rules.Finding) *rules.Finding {
	var w *rules.Finding
	for i := range findings {
		f := &findings[i]
		if f.Rule == about.Rule && f.About == about.About &&
			(w == nil || f.Level > w.Level || f.Level == w.Level && f.Figure.WorseThan(w.Figure)) {
			w = f
		}
	}
	return w
}

// compareFindings demands that every change removed its finding, that no error is
// new, and that none got worse.
func (g *group) compareFindings(t *trial) error {
	var errs []error
	for _, r := range g.plan.Reasons {
		if r.Owner != t.Owner || r.Finding.Partial || g.isLeftOut(t, r.Finding) {
			continue
		}
		// A note may remain beside the change that it is about.
		if w := worst(t.now.findings, r.Finding); w != nil && (w.Level > rules.Note || len(w.Changes) > 0) {
			errs = append(errs, fmt.Errorf(
				"%s still speaks after the change that should have silenced it: %s", w.Rule, w.Text()))
		}
	}
	for _, f := range t.now.findings {
		if f.Level < rules.Error {
			continue
		}
		was := worst(t.before.findings, f)
		if was == nil && !t.hidden(f) {
			errs = append(errs, fmt.Errorf("the changes would bring up a new error, %s: %s%s",
				f.Rule, f.Text(), g.notCounted(f.Rule)))
		} else if was == nil || was.Level < rules.Error && rules.Find(f.Rule).MayWorsen {
			g.plan.Worse = append(g.plan.Worse, Reason{Owner: t.Owner, Finding: f})
		} else if was.Level < rules.Error {
			errs = append(errs,
				fmt.Errorf("the changes would make an error of a %s, %s: %s", was.Level, f.Rule, f.Text()))
		} else if f.Figure.WorseThan(was.Figure) {
			errs = append(errs, fmt.Errorf("the changes would make %s worse, %.4g %s instead of %.4g: %s",
				f.Rule, f.Figure.Value, f.Figure.Unit, was.Figure.Value, f.Text()))
		}
	}
	return errors.Join(errs...)
}

// notCounted explains an error whose rule does not count.
func (g *group) notCounted(rule string) string {
	if g.counts(rule) {
		return ""
	}
	return " (--only or --except leaves this rule out; with it, its change would be made too)"
}

// hidden reports whether a cause that is gone kept a rule from speaking
// before: its finding counts as there at the start.
func (t *trial) hidden(f rules.Finding) bool {
	return slices.ContainsFunc(t.before.findings, func(cause rules.Finding) bool {
		return slices.Contains(rules.Find(cause.Rule).Hides, f.Rule) && worst(t.now.findings, cause) == nil
	})
}

// compareTemperature demands that the hotend does not get hotter at the highest
// target, and that no higher one can be asked for, where that is above a rating.
func (g *group) compareTemperature(t *trial) error {
	wasC, wasKnown := rules.ActualAtHighestTarget(t.before.input)
	isC, isKnown := rules.ActualAtHighestTarget(t.now.input)
	ratedC, by := rules.Rating(t.now.input)
	oldC, hadLimit := rules.HighestTarget(t.before.input)
	newC, hasLimit := rules.HighestTarget(t.now.input)
	rated := fmt.Sprintf("the %s is rated for %s", by, unit.Celsius(ratedC))
	rises := hadLimit && newC > oldC+rules.HotterK
	if hadLimit && !hasLimit {
		return errors.New("the highest target could no longer be told")
	}
	if !isKnown || math.IsInf(isC, 1) {
		if wasKnown && !math.IsInf(wasC, 1) {
			return fmt.Errorf("nothing would say any more how hot the hotend is at the highest target, "+
				"and %s", rated)
		}
		if rises {
			return fmt.Errorf("the highest target would rise from %s to %s while nothing says how hot the "+
				"hotend is then, and %s",
				unit.Celsius(oldC), unit.Celsius(newC), rated)
		}
		return nil
	}
	if isC <= ratedC+rules.HotterK {
		return nil
	}
	if wasKnown && isC > wasC+rules.HotterK {
		return fmt.Errorf("the hotend would be at %s at the highest target instead of %s, and %s",
			unit.Celsius(isC), unit.Celsius(wasC), rated)
	}
	if rises {
		return fmt.Errorf("the highest target would rise from %s to %s, where the hotend is at %s, and %s",
			unit.Celsius(oldC), unit.Celsius(newC), unit.Celsius(isC), rated)
	}
	return nil
}

// compareSettings demands that only what was asked for changed, that no
// protection turned off, and that no figure moved to the less safe side
// unless a rule that may ask for it did.
func (g *group) compareSettings(t *trial, edited editedLines) error {
	var errs []error
	for is := range t.now.config.Printer().Settings() {
		if _, was := t.before.settings[is.Key]; was || is.State == parser.Off || len(t.askedFor(is.Key)) > 0 {
			continue
		}
		if is.Key.Safer() == parser.Neither {
			if !edited.touches(is.At, false) {
				g.aside(t, fmt.Sprintf("the %s, %s, would come into force", is.Key, is.Text()))
			}
			continue
		}
		errs = append(errs, fmt.Errorf("the %s would come into force although no rule asked for it", is.Key))
	}
	for was := range t.before.config.Printer().Settings() {
		is, still := t.now.settings[was.Key]
		if !still {
			errs = append(errs, fmt.Errorf("the %s would be lost", was.Key))
			continue
		}
		if err := g.compareSetting(t, was, is, edited); err != nil {
			errs = append(errs, err)
		}
	}
	return errors.Join(errs...)
}

// aside says what becomes of something that nobody asked to change and that no
// edit names.
func (g *group) aside(t *trial, text string) {
	g.plan.Asides = append(g.plan.Asides, Aside{Owner: t.Owner, Text: text})
}

// askedFor lists the rules that asked for a setting, or for one that carries it
// along.
func (t *trial) askedFor(key parser.Key) []string {
	asked := slices.Clone(t.askedBy[key])
	for _, other := range key.With() {
		asked = append(asked, t.askedBy[other]...)
	}
	return asked
}

// wouldBe says what becomes of a setting.
func wouldBe(was, is parser.Description) string {
	return fmt.Sprintf("the %s would be %s instead of %s", was.Key, is.Text(), was.Text())
}

func (g *group) compareSetting(t *trial, was, is parser.Description, edited editedLines) error {
	if alike(was, is) {
		return nil
	}
	askers := t.askedFor(was.Key)
	on := func(d parser.Description) bool { return d.Value == true && d.State != parser.Off }
	wasKnown := was.State == parser.Set || was.State == parser.Default
	if on(was) && !on(is) {
		return fmt.Errorf("the %s would turn off", was.Key)
	}
	if _, figure := was.Value.(float64); figure && wasKnown && was.Key.Safer() != parser.Neither &&
		is.State == parser.Off {
		return fmt.Errorf("the %s would turn off", was.Key)
	}
	if is.State == parser.Unknown && was.State != parser.Unknown {
		return fmt.Errorf("the %s would become unknown: %s", was.Key, is.Why)
	}
	if wasKnown && len(askers) == 0 && !on(is) && !isFormula(was, is) {
		return fmt.Errorf("the %s would change although no rule asked for it", was.Key)
	}
	unasked := len(askers) == 0 && is.State != parser.Off ||
		wasKnown && len(t.askedBy[was.Key]) == 0 && !is.At.IsZero()
	if unasked && !edited.touches(is.At, false) {
		g.aside(t, wouldBe(was, is))
	}
	if !wasKnown || !was.Key.Looser(is.Value, was.Value) {
		return nil
	}
	if len(askers) == 0 { // a formula of what was asked for, but not of what may itself protect less
		for key, by := range t.askedBy {
			askers = append(askers, slices.DeleteFunc(slices.Clone(by), func(rule string) bool {
				return slices.Contains(rules.Find(rule).MayLoosen, key)
			})...)
		}
	}
	askers = slices.DeleteFunc(askers,
		func(rule string) bool { return !slices.Contains(rules.Find(rule).MayLoosen, was.Key) })
	if len(askers) == 0 {
		return fmt.Errorf("the %s would protect less: %s instead of %s", was.Key, is.Text(), was.Text())
	}
	slices.Sort(askers)
	g.plan.Moves = append(g.plan.Moves, Move{t.Owner, was, is, slices.Compact(askers)})
	return nil
}

// isFormula reports whether a figure stands as it did and is another one all the
// same: it is a formula of what changed.
func isFormula(was, is parser.Description) bool {
	return is.State == parser.Set && was.At.Text() == is.At.Text() && was.Key.Safer() != parser.Neither
}

// compareHeaters demands that nothing changed of other tools, the bed, the chamber
// and further heaters. A tool that has a sheet of its own here answers for
// itself.
func (g *group) compareHeaters(t *trial) error {
	heaters, after := t.before.config.Others(), t.now.config.Others()
	is := make(map[parser.Key]parser.Description)
	for _, h := range after {
		for _, d := range h.Settings {
			is[d.Key.Of(h.Name)] = d
		}
	}
	var errs []error
	if len(heaters) != len(after) {
		errs = append(errs, errors.New("a heater would come or go"))
	}
	for _, h := range heaters {
		if slices.ContainsFunc(g.trials,
			func(u *trial) bool { return t.isOtherToolOf(u) && u.Request.Tool == h.Tool }) {
			continue
		}
		for _, was := range h.Settings {
			if was.State != parser.Absent && !alike(was, is[was.Key.Of(h.Name)]) {
				errs = append(errs, fmt.Errorf("the %s of %s would change although no rule asked for it",
					strings.TrimPrefix(string(was.Key), "hotend "), h.Name))
			}
		}
	}
	return errors.Join(errs...)
}

// compareOptions looks for options that change although no edit touches them. One
// that guards another heater is an error, any other is said.
func (g *group) compareOptions(t *trial, edited editedLines) error {
	before, after := inForce(t.before.config), inForce(t.now.config)
	var errs []error
	all := maps.Clone(before)
	maps.Copy(all, after)
	for _, name := range slices.Sorted(maps.Keys(all)) {
		was, is := before[name], after[name]
		if was.Active == is.Active && was.Value == is.Value && was.Means == is.Means ||
			edited.touches(was.At, true) || edited.touches(is.At, false) {
			continue
		}
		text := changeOf(name, was, is)
		switch {
		case t.owns(name):
		case was.Elsewhere || is.Elsewhere:
			errs = append(errs,
				fmt.Errorf("%s: it guards or measures another heater, and no edit touches it", text))
		default:
			g.aside(t, text)
		}
	}
	return errors.Join(errs...)
}

// owns reports whether an option is one of the tool's own settings, which
// compareSettings looks at.
func (t *trial) owns(option string) bool {
	for _, st := range []*checkedConfig{t.before, t.now} {
		for _, d := range st.settings {
			if d.Name == option && d.State != parser.Off {
				return true
			}
		}
	}
	return false
}

func changeOf(name string, was, is parser.Entry) string {
	if is.Active == parser.No {
		return name + " would go out of use"
	}
	if was.Active == parser.No {
		return name + " would come into use"
	}
	if is.Active != was.Active {
		return fmt.Sprintf("whether %s is in use would change from %s to %s", name, was.Active, is.Active)
	}
	if is.Value == was.Value {
		return fmt.Sprintf("%s would come to %s instead of %s", name, is.Means, was.Means)
	}
	return fmt.Sprintf("%s would be %q instead of %q", name, is.Value, was.Value)
}
