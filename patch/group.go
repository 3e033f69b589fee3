package patch

import (
	"errors"
	"fmt"
	"iter"
	"maps"
	"reflect"
	"slices"

	"preflash/parser"
	"preflash/rules"
)

// maxRounds bounds the iteration to a fixed point. One change can bring up
// another, such as a protection that is turned on with figures too wide.
const maxRounds = 8

// maxAttempts bounds how often a group begins anew: to put a change off, to leave
// it out, or to see what the proof says without it.
const maxAttempts = 64

// Prove collects the changes of all findings that count and are not waived,
// makes them in memory, and reads and checks the result again, until nothing
// more is to be changed. Then it compares the result with the start, with all
// rules. A change that this fails with is left out, where less is wrong without
// it. An error, and no plan, says what is wrong where that does not help.
func Prove(sources []*Source, counts func(rule string) bool) (*Plan, error) {
	attempts := maxAttempts
	g := &group{counts: counts, leftOut: make(map[claim]error), late: make(map[claim]bool),
		attempts: &attempts}
	for _, s := range sources {
		t, err := newTrial(s)
		if err != nil {
			return nil, err
		}
		g.trials = append(g.trials, t)
	}
	err := g.prove()
	if err == nil {
		return g.plan, nil
	}
	refusal := err
	for _, left := range g.left() { // which may be what it lacks
		refusal = errors.Join(refusal, fmt.Errorf("%s: the change of %s had been left out, since %w",
			left.Owner, left.Finding.Rule, left.Err))
	}
	for err != nil {
		less, errLess := g.withoutOne(err)
		if less == nil {
			return nil, refusal
		}
		g, err = less, errLess
	}
	return g.plan, nil
}

// group is printers on their way to one plan.
type group struct {
	counts   func(rule string) bool
	leftOut  map[claim]error // findings whose changes are not made, and why
	late     map[claim]bool  // findings whose changes are made once nothing else is asked for
	attempts *int            // that are left

	plan     *Plan
	trials   []*trial
	contents map[string][]byte // what was changed, by real name
}

// claim names a finding that asks for changes.
type claim struct{ owner, rule, about string }

func claimOf(owner string, f rules.Finding) claim { return claim{owner, f.Rule, f.About} }

func (g *group) isLeftOut(t *trial, f rules.Finding) bool {
	return g.leftOut[claimOf(t.Owner, f)] != nil
}

// left lists the findings that still ask for changes which were left out.
func (g *group) left() []Reason {
	var list []Reason
	for _, t := range g.trials {
		for _, f := range t.now.findings {
			if err := g.leftOut[claimOf(t.Owner, f)]; err != nil && wanted(f, g.counts) {
				list = append(list, Reason{Owner: t.Owner, Finding: f, Err: err})
			}
		}
	}
	return list
}

// errAgain says that a change which was in the way was put off or left out, so that
// the group must begin anew.
var errAgain = errors.New("a change is in the way")

// prove attempts until there is a plan that is proved, or an error.
func (g *group) prove() error {
	for *g.attempts > 0 {
		*g.attempts--
		if err := g.attempt(); err != errAgain {
			return err
		}
	}
	return fmt.Errorf("%s: the diff still fails after %d attempts in memory, "+
		"each without a change that was in the way; make some of the changes by hand",
		g.trials[0].Owner, maxAttempts)
}

// attempt makes rounds until nothing is asked for any more, and compares.
func (g *group) attempt() error {
	g.plan, g.contents = &Plan{after: make(map[string]*rules.Input)}, make(map[string][]byte)
	for _, t := range g.trials {
		t.start()
	}
	before := 0 // reasons there were when the round before began
	for round := 0; ; round++ {
		start := len(g.plan.Reasons)
		sets, err := g.round()
		if err != nil {
			return err
		}
		if len(sets) == 0 {
			return g.compareAll()
		}
		if round == maxRounds {
			return endless(g.plan.Reasons[before:])
		}
		before = start
		if err := g.apply(sets); err != nil {
			return err
		}
		took := true
		for _, t := range g.trials {
			if err := t.read(g.contents); err != nil {
				return err
			}
			took = g.tookHold(t) && took
		}
		if !took {
			return errAgain
		}
	}
}

// tookHold leaves out what was changed this round and did not take hold. What was
// changed in one round with others gets a round of its own first: another edit
// may have made another place the one that decides.
func (g *group) tookHold(t *trial) bool {
	took := true
	for _, r := range t.roundReasons {
		for _, c := range r.Finding.Changes {
			err := t.unmoved(c.Key)
			if err == nil {
				continue
			}
			took = false
			if one := claimOf(t.Owner, r.Finding); !g.late[one] {
				g.late[one] = true
			} else {
				g.leftOut[one] = err
			}
			break
		}
	}
	t.roundReasons = nil
	return took
}

// round collects what is asked for and turns it into edits.
func (g *group) round() ([]Owned, error) {
	for _, late := range [...]bool{false, true} {
		anyone := false
		for _, t := range g.trials {
			if err := g.collect(t, late); err != nil {
				return nil, err
			}
			anyone = anyone || len(t.roundReasons) > 0
		}
		if anyone {
			break
		}
	}
	if !g.agree() {
		return nil, errAgain
	}
	var sets []Owned
	for _, t := range g.trials {
		edits, err := g.edits(t)
		if err != nil {
			return nil, err
		}
		if len(edits) == 0 {
			continue
		}
		sets = append(sets, Owned{Owner: t.Owner, Edits: edits})
		g.plan.Reasons = append(g.plan.Reasons, t.roundReasons...)
		for _, r := range t.roundReasons {
			for _, c := range r.Finding.Changes {
				for u, key := range g.sharing(t, c.Key) {
					u.askedBy[key] = append(u.askedBy[key], r.Finding.Rule)
				}
			}
		}
		maps.Copy(t.lastValues, t.roundValues)
	}
	return sets, nil
}

// sharing yields every printer that reads a setting of another one at the same
// place, with its key there: that printer itself too.
func (g *group) sharing(t *trial, key parser.Key) iter.Seq2[*trial, parser.Key] {
	at := placeOf(t.now.settings[key])
	return func(yield func(*trial, parser.Key) bool) {
		for _, u := range g.trials {
			for other, d := range u.now.settings {
				if at != (place{}) && placeOf(d) == at && !yield(u, other) {
					return
				}
			}
		}
	}
}

// collect takes what one printer asks for in this round.
func (g *group) collect(t *trial, late bool) error {
	t.roundReasons, t.roundValues = nil, make(map[parser.Key]any)
	if t.Silent {
		return nil
	}
	for _, f := range t.now.findings {
		if g.isLeftOut(t, f) || !wanted(f, g.counts) || g.late[claimOf(t.Owner, f)] != late {
			continue
		}
		if u, key := g.overruling(t, f); u != nil {
			err := fmt.Errorf("%s wants the %s that both read at a value that protects more", u.Owner, key)
			g.leftOut[claimOf(t.Owner, f)] = err
			continue
		}
		t.roundReasons = append(t.roundReasons, Reason{Owner: t.Owner, Finding: f})
		for _, c := range f.Changes {
			value := c.Value
			if other, twice := t.roundValues[c.Key]; twice {
				var err error
				if value, err = safer(c.Key, other, value); err != nil {
					return fmt.Errorf("%s: %s asks otherwise than another rule does: %w",
						t.Owner, f.Rule, err)
				}
			}
			t.roundValues[c.Key] = value
		}
	}
	return nil
}

// overruling returns another printer that set in an earlier round what a
// finding wants looser.
func (g *group) overruling(t *trial, f rules.Finding) (*trial, parser.Key) {
	for _, c := range f.Changes {
		for u, key := range g.sharing(t, c.Key) {
			if u != t && g.samePlace(t, c.Key, u) && c.Key.Looser(c.Value, u.lastValues[key]) {
				return u, c.Key
			}
		}
	}
	return nil, ""
}

// agree gives a setting that several printers want differently one value: the one
// that protects more. Where neither does, both wishes are left out, and it
// reports false.
func (g *group) agree() bool {
	agreed := true
	for _, t := range g.trials {
		for _, key := range slices.Sorted(maps.Keys(t.roundValues)) {
			for u, other := range g.sharing(t, key) {
				theirs, too := u.roundValues[other]
				if !too || !g.samePlace(t, key, u) {
					continue
				}
				value, err := safer(key, t.roundValues[key], theirs)
				if err != nil {
					agreed = false
					g.leaveOutKey(t, key, fmt.Errorf("%s wants it otherwise: %w", u.Owner, err))
					g.leaveOutKey(u, other, fmt.Errorf("%s wants it otherwise: %w", t.Owner, err))
					continue
				}
				u.yield(other, value, t)
				t.yield(key, value, u)
			}
		}
	}
	return agreed
}

// samePlace reports whether what is written nowhere yet would come to stand in the
// same place for both.
func (g *group) samePlace(t *trial, key parser.Key, u *trial) bool {
	return !t.now.settings[key].At.IsZero() || slices.Equal(t.Files, u.Files)
}

// leaveOutKey leaves out what a printer asks for in this round of one setting.
func (g *group) leaveOutKey(t *trial, key parser.Key, err error) {
	for _, r := range t.roundReasons {
		if r.asksFor(key) {
			g.leftOut[claimOf(t.Owner, r.Finding)] = err
		}
	}
}

// yield takes the value that was agreed on, and notes in the reasons whose it
// is.
func (t *trial) yield(key parser.Key, value any, to *trial) {
	if reflect.DeepEqual(t.roundValues[key], value) {
		return
	}
	t.roundValues[key] = value
	for i := range t.roundReasons {
		if t.roundReasons[i].asksFor(key) {
			t.roundReasons[i].YieldsTo = to.Owner
		}
	}
}

// edits turns the changes of a round into edits. Findings whose changes no edit can
// make are left out.
func (g *group) edits(t *trial) ([]parser.Edit, error) {
	var changes []parser.Change
	for _, r := range t.roundReasons {
		for _, c := range r.Finding.Changes {
			if !slices.ContainsFunc(changes, func(o parser.Change) bool { return o.Key == c.Key }) {
				changes = append(changes, parser.Change{Key: c.Key, Value: t.roundValues[c.Key]})
			}
		}
	}
	if len(changes) == 0 {
		return nil, nil
	}
	edits, err := t.now.config.Edits(changes)
	if err == nil && len(edits) > 0 {
		return edits, nil
	}
	err = fmt.Errorf("%s: the changes cannot be made together: %w", t.Owner, err)
	for _, r := range t.roundReasons {
		alone, errAlone := t.now.config.Edits(r.Finding.Changes)
		if errAlone == nil && len(alone) == 0 {
			errAlone = errors.New("the files say so already, and something else decides")
		}
		if errAlone != nil {
			g.leftOut[claimOf(t.Owner, r.Finding)], err = errAlone, errAgain
		}
	}
	return nil, err
}

// apply makes the edits of one round on top of the rounds before.
func (g *group) apply(sets []Owned) error {
	merged, err := Merge(sets)
	if err != nil {
		return err
	}
	for _, m := range merged {
		text, err := Apply(m.File, m.Edits)
		if err != nil {
			return err
		}
		if _, again := g.contents[m.File.Real]; !again {
			g.plan.Files = append(g.plan.Files, FileChange{Name: m.File.Real, Old: m.File.Data})
			g.plan.changed = append(g.plan.changed, RefOf(m.File))
		}
		g.contents[m.File.Real] = text
	}
	for i := range g.plan.Files {
		g.plan.Files[i].New = g.contents[g.plan.Files[i].Name]
	}
	return nil
}

// compareAll compares what the changes led to with the start, for every printer. All
// that is wrong is in the error.
func (g *group) compareAll() error {
	if err := g.refuseHardLinks(); err != nil {
		return err
	}
	edited := g.editedLines()
	var errs []error
	for _, t := range g.trials {
		if t.now == t.before {
			continue // untouched
		}
		if err := g.compareTrial(t, edited); err != nil {
			errs = append(errs, err)
		}
		g.plan.after[t.Owner] = t.now.input
	}
	errs = append(errs, g.compareShared())
	g.plan.Left = g.left()
	return errors.Join(errs...)
}

// endless says who asked for changes in the last two rounds: one printer, or
// two that share a file and undo each other's.
func endless(reasons []Reason) error {
	last := reasons[len(reasons)-1]
	for _, other := range reasons {
		if other.Owner != last.Owner {
			return fmt.Errorf("%s and %s share a file and undo each other's changes (%s, %s); let their "+
				"sheets agree, or give each printer a file of its own",
				other.Owner, last.Owner, other.Finding.Rule, last.Finding.Rule)
		}
	}
	return fmt.Errorf("%s: the changes come to no end in %d rounds; the last rule to ask for one is %s",
		last.Owner, maxRounds, last.Finding.Rule)
}
