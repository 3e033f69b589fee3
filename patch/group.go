package patch

import (
	"errors"
	"fmt"
	"iter"
	"reflect"
	"slices"
	"strings"

	"preflash/parser"
	"preflash/rules"
)

// maxRounds bounds the iteration to a fixed point. One change can bring up
// another, such as a protection that is turned on with figures too wide.
const maxRounds = 8

// maxUnmade bounds the changes of a group that no edit makes. For each of them it
// starts again twice at most: to put it off, and to leave it out.
const maxUnmade = 16

// Prove collects the changes of all findings that count and are not waived,
// makes them in memory, and reads and checks the result again, until nothing
// more is to be changed. Then it holds the result against the start, with all
// rules. It returns an error, and no plan, where the changes contradict each
// other, do not settle, leave what they were made for, or make anything worse.
func Prove(sources []*Source, counts func(rule string) bool) (*Plan, error) {
	g := group{counts: counts, barred: make(map[claim]Reason), late: make(map[claim]bool)}
	for range 2 * maxUnmade {
		plan, err := g.attempt(sources)
		if plan != nil || err != nil {
			return plan, err
		}
	}
	return nil, fmt.Errorf("%s: more than %d changes that no edit of the files makes; make them by hand. Nothing is shown", sources[0].Owner, maxUnmade)
}

// group is printers on their way to one plan.
type group struct {
	counts func(rule string) bool
	barred map[claim]Reason // findings whose changes are not made, and why
	late   map[claim]bool   // findings whose changes are made once nothing else is asked for

	plan     *Plan
	trials   []*trial
	contents map[string][]byte // what was changed, by real name
}

// claim names a finding that asks for changes.
type claim struct{ owner, rule, about string }

func claimOf(owner string, f rules.Finding) claim { return claim{owner, f.Rule, f.About} }

// bar leaves a finding out from now on.
func (g *group) bar(owner string, f rules.Finding, err error) {
	g.barred[claimOf(owner, f)] = Reason{Owner: owner, Finding: f, Err: err}
	g.plan.Left = append(g.plan.Left, Reason{Owner: owner, Finding: f, Err: err})
}

// attempt makes rounds until nothing is asked for any more. Neither a plan nor
// an error means that a change did not take hold: it is put off, then barred,
// and the group must start again.
func (g *group) attempt(sources []*Source) (*Plan, error) {
	g.plan, g.trials, g.contents = &Plan{after: make(map[string]*rules.Input)}, nil, make(map[string][]byte)
	for _, s := range sources {
		t, err := newTrial(s)
		if err != nil {
			return nil, err
		}
		g.trials = append(g.trials, t)
		for _, f := range t.now.findings {
			if r, ok := g.barred[claimOf(s.Owner, f)]; ok {
				g.plan.Left = append(g.plan.Left, r)
			}
		}
	}
	before := 0 // reasons there were when the round before began
	for round := 0; ; round++ {
		start := len(g.plan.Reasons)
		sets, err := g.round()
		if err != nil {
			return nil, err
		}
		if len(sets) == 0 {
			return g.hold()
		}
		if round == maxRounds {
			return nil, unsettled(g.plan.Reasons[before:])
		}
		before = start
		if err := g.apply(sets); err != nil {
			return nil, err
		}
		held := true
		for _, t := range g.trials {
			if err := t.read(g.contents); err != nil {
				return nil, err
			}
			held = g.holdsFast(t) && held
		}
		if !held {
			return nil, nil
		}
	}
}

// holdsFast bars what was changed this round and did not take hold. What was
// changed in one round with others gets a round of its own first: another edit
// may have made another place the one that decides.
func (g *group) holdsFast(t *trial) bool {
	held := true
	for _, r := range t.made {
		for _, c := range r.Finding.Changes {
			err := t.unmoved(c.Key)
			if err == nil {
				continue
			}
			held = false
			if one := claimOf(t.Owner, r.Finding); !g.late[one] {
				g.late[one] = true
			} else {
				g.bar(t.Owner, r.Finding, err)
			}
			break
		}
	}
	t.made = nil
	return held
}

// round collects what is asked for, settles it, and turns it into edits.
func (g *group) round() ([]Owned, error) {
	for _, late := range [...]bool{false, true} {
		asked := false
		for _, t := range g.trials {
			if err := g.collect(t, late); err != nil {
				return nil, err
			}
			asked = asked || len(t.made) > 0
		}
		if asked {
			break
		}
	}
	if err := g.settle(); err != nil {
		return nil, err
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
		g.plan.Reasons = append(g.plan.Reasons, t.made...)
		for _, r := range t.made {
			for _, c := range r.Finding.Changes {
				for u, key := range g.sharing(t, c.Key) {
					u.asked[key] = append(u.asked[key], r.Finding.Rule)
				}
			}
		}
		for key, value := range t.changes {
			t.last[key] = value
		}
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
	t.made, t.changes = nil, make(map[parser.Key]any)
	if t.Silent {
		return nil
	}
	for _, f := range t.now.findings {
		if g.isBarred(t, f) || !wanted(f, g.counts) || g.late[claimOf(t.Owner, f)] != late {
			continue
		}
		if u, key := g.overruling(t, f); u != nil {
			if !t.tools(u) {
				return fmt.Errorf("%s and %s share a file and undo each other's changes of the %s (%s); let their sheets agree, or give each printer a file of its own. Nothing is shown",
					u.Owner, t.Owner, key, f.Rule)
			}
			g.bar(t.Owner, f, fmt.Errorf("%s, another tool of the same printer, has set the %s, and that protects more", u.Owner, key))
			continue
		}
		t.made = append(t.made, Reason{Owner: t.Owner, Finding: f})
		for _, c := range f.Changes {
			value := c.Value
			if other, twice := t.changes[c.Key]; twice {
				var err error
				if value, err = safer(c.Key, other, value); err != nil {
					return fmt.Errorf("%s: %s asks otherwise than another rule does: %w", t.Owner, f.Rule, err)
				}
			}
			t.changes[c.Key] = value
		}
	}
	return nil
}

// overruling returns another printer that set in an earlier round what a
// finding wants looser.
func (g *group) overruling(t *trial, f rules.Finding) (*trial, parser.Key) {
	for _, c := range f.Changes {
		for u, key := range g.sharing(t, c.Key) {
			if u != t && c.Key.Looser(c.Value, u.last[key]) {
				return u, c.Key
			}
		}
	}
	return nil, ""
}

// settle gives a setting that several tools of one printer want differently one
// value: the one that protects more.
func (g *group) settle() error {
	for _, t := range g.trials {
		for key := range t.changes {
			for u, other := range g.sharing(t, key) {
				if theirs, too := u.changes[other]; too && t.tools(u) {
					value, err := safer(key, t.changes[key], theirs)
					if err != nil {
						return fmt.Errorf("%s and %s are tools of one printer: %w", t.Owner, u.Owner, err)
					}
					u.yield(other, value, t)
					t.yield(key, value, u)
				}
			}
		}
	}
	return nil
}

// yield takes the value that was settled on, and notes in the reasons whose it
// is.
func (t *trial) yield(key parser.Key, value any, to *trial) {
	if reflect.DeepEqual(t.changes[key], value) {
		return
	}
	t.changes[key] = value
	for i := range t.made {
		if slices.ContainsFunc(t.made[i].Finding.Changes, func(c parser.Change) bool { return c.Key == key }) {
			t.made[i].YieldsTo = to.Owner
		}
	}
}

// edits turns what is left of the changes into edits. Findings whose changes
// no edit can make are barred.
func (g *group) edits(t *trial) ([]parser.Edit, error) {
	for len(t.made) > 0 {
		var changes []parser.Change
		for _, r := range t.made {
			for _, c := range r.Finding.Changes {
				if !slices.ContainsFunc(changes, func(o parser.Change) bool { return o.Key == c.Key }) {
					changes = append(changes, parser.Change{Key: c.Key, Value: t.changes[c.Key]})
				}
			}
		}
		edits, err := t.now.config.Edits(changes)
		if err == nil && len(edits) > 0 {
			return edits, nil
		}
		n := len(t.made)
		t.made = slices.DeleteFunc(t.made, func(r Reason) bool {
			alone, errAlone := t.now.config.Edits(r.Finding.Changes)
			if errAlone == nil && len(alone) == 0 {
				errAlone = fmt.Errorf("the files say so already, and something else decides")
			}
			if errAlone != nil {
				g.bar(t.Owner, r.Finding, errAlone)
			}
			return errAlone != nil
		})
		if len(t.made) == n {
			return nil, fmt.Errorf("%s: the changes cannot be made together: %w", t.Owner, err)
		}
	}
	return nil, nil
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

// hold holds what the changes led to against the start, for every printer. As in
// attempt, neither a plan nor an error means that the group must start again.
func (g *group) hold() (*Plan, error) {
	if err := g.holdNames(); err != nil {
		return nil, err
	}
	for _, t := range g.trials {
		if t.now == t.before {
			continue // untouched
		}
		if err := g.holdTrial(t); err != nil {
			if g.barRaises(t, err) {
				return nil, nil
			}
			also := ""
			if t.Silent {
				also = " (it reads a file of the diff; name its sheet as well, and its own changes are made with it)"
			}
			err = fmt.Errorf("%s: the diff failed when it was tried in memory and is not shown%s: %w", t.Owner, also, err)
			for _, left := range g.plan.Left { // which may be what it lacks
				err = errors.Join(err, fmt.Errorf("%s: the change of %s had been left out, since %w", left.Owner, left.Finding.Rule, left.Err))
			}
			return nil, err
		}
		g.plan.after[t.Owner] = t.now.input
	}
	return g.plan, nil
}

// barRaises bars what raised the max temp of a printer that failed its proof, such
// as by getting too hot, or of those beside it: that alone must not hide the rest.
// It reports whether there is any.
func (g *group) barRaises(t *trial, err error) bool {
	text, _, _ := strings.Cut(err.Error(), "\n")
	barred := false
	for _, own := range [...]bool{true, false} {
		if !own {
			text = t.Owner + ": " + text
		}
		for _, u := range g.trials {
			was := u.before.settings[parser.MaxTemp]
			raises := func(c parser.Change) bool { return c.Key == was.Key && c.Key.Looser(c.Value, was.Value) }
			for _, r := range g.plan.Reasons {
				if (u == t) == own && r.Owner == u.Owner && slices.ContainsFunc(r.Finding.Changes, raises) {
					g.bar(u.Owner, r.Finding, errors.New("the proof fails with it: "+text))
					barred = true
				}
			}
		}
		if barred {
			break
		}
	}
	return barred
}

// unsettled says who asked for changes in the last two rounds: one printer, or
// two that share a file and undo each other's.
func unsettled(reasons []Reason) error {
	last := reasons[len(reasons)-1]
	for _, other := range reasons {
		if other.Owner != last.Owner {
			return fmt.Errorf("%s and %s share a file and undo each other's changes (%s, %s); let their sheets agree, or give each printer a file of its own. Nothing is shown",
				other.Owner, last.Owner, other.Finding.Rule, last.Finding.Rule)
		}
	}
	return fmt.Errorf("%s: the changes come to no end in %d rounds; the last rule to ask for one is %s. Nothing is shown",
		last.Owner, maxRounds, last.Finding.Rule)
}
