package patch

import (
	"errors"
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"

	"preflash/parser"
)

// failure is what the proof has against the changes, as far as one printer goes.
type failure struct {
	of  *trial
	err error
	// others: another heater is concerned. Then the files tie heaters together in a
	// way that a person must look at before anything is applied.
	others bool
}

func (f *failure) Error() string {
	also := ""
	if f.of.Silent {
		also = " (it reads a file of the diff; name its sheet as well, and its own changes are made with it)"
	}
	return fmt.Sprintf("%s: the diff failed when it was tried in memory and is not shown%s: %v",
		f.of.Owner, also, f.err)
}

// failureOf is the first failure of an error; nil where it came to no proof.
func failureOf(err error) *failure {
	var f *failure
	errors.As(err, &f)
	return f
}

// withoutOne proves the group again without one setting's changes, for each of
// them, and returns what has least against it: nil where nothing is better, or
// nothing would remain to be shown.
func (g *group) withoutOne(failed error) (best *group, least error) {
	least = failed
	for _, r := range g.suspects(failed) {
		less := *g
		less.leftOut, less.late = maps.Clone(g.leftOut), maps.Clone(g.late)
		for _, same := range g.beside(r) {
			why := "the diff fails with it when tried in memory: " + firstOf(failed, same.Owner)
			less.leftOut[claimOf(same.Owner, same.Finding)] = errors.New(why)
		}
		err := less.prove()
		if err == nil && len(less.plan.Files) > 0 {
			return &less, nil
		}
		if *g.attempts == 0 {
			return nil, failed
		}
		if err != nil && against(err) < against(least) {
			best, least = &less, err
		}
	}
	return best, least
}

// against counts what is wrong: what came to no proof is worse than all that a
// proof may say.
func against(failed error) int {
	if failureOf(failed) == nil {
		return math.MaxInt
	}
	return parts(failed)
}

// parts is how many errors an error is made of.
func parts(err error) int {
	switch e := err.(type) {
	case *failure:
		return parts(e.err)
	case interface{ Unwrap() []error }:
		sum := 0
		for _, one := range e.Unwrap() {
			sum += parts(one)
		}
		return sum
	}
	return 1
}

// suspects lists what was asked for in the order in which it is to be left out:
// what protects less first, then what is less dangerous.
func (g *group) suspects(failed error) []Reason {
	var loose, rest []Reason
	for _, r := range slices.Backward(g.plan.Reasons) {
		was := g.trialOf(r).before.settings
		if slices.ContainsFunc(r.Finding.Changes,
			func(c parser.Change) bool { return c.Key.Looser(c.Value, was[c.Key].Value) }) {
			loose = append(loose, r)
		} else {
			rest = append(rest, r)
		}
	}
	if f := failureOf(failed); f != nil && f.others {
		return loose
	}
	return append(loose, rest...)
}

func (g *group) trialOf(r Reason) *trial {
	return g.trials[slices.IndexFunc(g.trials, func(t *trial) bool { return t.Owner == r.Owner })]
}

// beside lists all reasons that ask for a setting that this one asks for, itself
// too.
func (g *group) beside(r Reason) []Reason {
	var list []Reason
	for _, c := range r.Finding.Changes {
		for u, key := range g.sharing(g.trialOf(r), c.Key) {
			for _, other := range g.plan.Reasons {
				if other.Owner == u.Owner && other.asksFor(key) {
					list = append(list, other)
				}
			}
		}
	}
	return list
}

// firstOf is the first thing that is wrong, as it is said to a printer.
func firstOf(failed error, owner string) string {
	text := failed.Error()
	if f := failureOf(failed); f != nil {
		text = f.of.Owner + ": " + f.err.Error()
	}
	text, _, _ = strings.Cut(text, "\n")
	return strings.TrimPrefix(text, owner+": ")
}
