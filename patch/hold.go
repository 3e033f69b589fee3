package patch

import (
	"errors"
	"fmt"
	"math"
	"reflect"
	"slices"

	"preflash/parser"
	"preflash/rules"
	"preflash/rules/unit"
)

// hold holds what the changes led to against the start.
func (t *trial) hold() error {
	return errors.Join(t.holdFindings(), t.holdSettings(), t.holdHeat())
}

// mayWorsen lists the rules whose warning may become an error through a change
// that protects more: gains whose overshoot meets a max temp that was lowered
// to a rating shut the heater down, and to leave the rating exceeded would be
// worse. What became of them is said above the diff.
var mayWorsen = map[string]bool{"pid-stale": true}

// holdFindings demands that every change removed its finding and that no new
// error appeared. One that a mended cause had hidden was there before.
func (t *trial) holdFindings() error {
	before, after := tally(t.before.findings), tally(t.after.findings)
	for rule, mended := range t.mended {
		// A finding may first come up on the way; it must be gone as well.
		if left := after[rule].all; mended > 0 && left > 0 && left > before[rule].all-mended {
			return fmt.Errorf("%s still speaks after the change that should have silenced it: %s", rule, first(t.after.findings, rule).Message)
		}
	}
	for rule, n := range after {
		if n.errors > before[rule].errors && mayWorsen[rule] && n.all <= before[rule].all {
			t.worse = append(t.worse, Reason{Owner: t.Owner, Finding: first(t.after.findings, rule)})
			continue
		}
		if n.errors > before[rule].errors && !slices.Contains(t.uncovered, rule) {
			left := ""
			if !t.counts(rule) {
				left = " (--only or --except leaves this rule out; with it, its change would be made too)"
			}
			return fmt.Errorf("the changes would bring up a new error, %s: %s%s", rule, first(t.after.findings, rule).Message, left)
		}
	}
	return nil
}

// tallied counts the findings of a rule. A note that asks for nothing is left
// out of all: it may remain beside the change that it is about.
type tallied struct{ all, errors int }

func tally(findings []rules.Finding) map[string]tallied {
	m := make(map[string]tallied)
	for _, f := range findings {
		n := m[f.Rule]
		if f.Level > rules.Note || len(f.Changes) > 0 {
			n.all++
		}
		if f.Level == rules.Error {
			n.errors++
		}
		m[f.Rule] = n
	}
	return m
}

func first(findings []rules.Finding, rule string) rules.Finding {
	return findings[slices.IndexFunc(findings, func(f rules.Finding) bool { return f.Rule == rule })]
}

// mayLoosen lists the rules that may move a figure to the less safe side: a
// watch that would trip a healthy hotend, a trip below what is printed, a guard
// against cold filament above the max temp.
var mayLoosen = map[string]bool{"runaway-tight": true, "temp-reach": true, "temp-ceiling": true}

// companions are settings that another one carries with it, because they are
// two readings of one thing.
var companions = map[parser.Key][]parser.Key{
	parser.MinExtrude:   {parser.ColdGuard},    // a guard that is on needs a figure
	parser.HotendSensor: {parser.HotendPullup}, // a definition includes its pull-up

	parser.FanAtShutdown: {parser.FanPower}, // one limit holds for both

	// Figures can blind a watch, or switch it off: to turn it on is to set them.
	parser.HotendRise:         {parser.HotendRiseOn, parser.HotendWatchOn},
	parser.HotendRiseWindow:   {parser.HotendRiseOn, parser.HotendWatchOn},
	parser.HotendHysteresis:   {parser.HotendWatchOn},
	parser.HotendHoldPeriod:   {parser.HotendWatchOn},
	parser.HotendErrorSum:     {parser.HotendWatchOn},
	parser.BedRise:            {parser.BedRiseOn, parser.BedWatchOn},
	parser.BedRiseWindow:      {parser.BedRiseOn, parser.BedWatchOn},
	parser.BedWatchHysteresis: {parser.BedWatchOn},
	parser.BedHoldPeriod:      {parser.BedWatchOn},
	parser.BedErrorSum:        {parser.BedWatchOn},
}

// holdSettings demands that only what was asked for changed, that no
// protection turned off, and that no figure moved to the less safe side
// unless a rule that may ask for it did.
func (t *trial) holdSettings() error {
	after := make(map[parser.Key]parser.Description)
	for _, s := range t.after.printer.Settings() {
		after[s.Key] = s
	}
	for _, was := range t.before.printer.Settings() {
		is, still := after[was.Key]
		if !still {
			return fmt.Errorf("the %s would be lost", was.Key)
		}
		if was.State == is.State && reflect.DeepEqual(was.Value, is.Value) {
			continue
		}
		asked := slices.Clone(t.asked[was.Key])
		for _, key := range companions[was.Key] {
			asked = append(asked, t.asked[key]...)
		}
		switch on, isSwitch := is.Value.(bool); {
		case isSwitch && was.Value == true && was.State != parser.Off && (!on || is.State == parser.Off):
			return fmt.Errorf("the %s would turn off", was.Key)
		case is.State == parser.Unknown && was.State != parser.Unknown:
			return fmt.Errorf("the %s would become unknown: %s", was.Key, is.Why)
		case len(asked) == 0 && (was.State == parser.Set || was.State == parser.Default) && !isSwitch:
			return fmt.Errorf("the %s would change although no rule asked for it", was.Key)
		}
		if was.State != parser.Off && was.State != parser.Unknown && looser(was, is) &&
			!slices.ContainsFunc(asked, func(rule string) bool { return mayLoosen[rule] }) {
			return fmt.Errorf("the %s would protect less: %v instead of %v", was.Key, is.Value, was.Value)
		}
	}
	return nil
}

// looser reports whether a figure moved to the less safe side. A window of 0,
// which switches its watch off, is not safer than any other.
func looser(was, is parser.Description) bool {
	a, ok := was.Value.(float64)
	b, also := is.Value.(float64)
	if !ok || !also || a == 0 {
		return false
	}
	switch direction(was.Key) {
	case lowerIsSafer:
		return b > a
	case higherIsSafer:
		return b < a
	}
	return false
}

// hotterK is how much of a rise in temperature is rounding.
const hotterK = 0.5

// holdHeat demands that the hotend gets no hotter than before at the highest
// target where that is above a rating, as far as both can be told.
func (t *trial) holdHeat() error {
	before, told := rules.ActualAtHighestTarget(t.before.in)
	after, also := rules.ActualAtHighestTarget(t.after.in)
	rated, by := rules.Rating(t.after.in)
	if !told || !also || after <= rated+hotterK || after <= before+hotterK {
		return nil
	}
	if math.IsInf(after, 1) {
		return errors.New("the reading would fall as the hotend heats")
	}
	return fmt.Errorf("the hotend would be at %s at the highest target, above the %s of the %s, and hotter than now (%s)",
		unit.Celsius(after), unit.Celsius(rated), by, unit.Celsius(before))
}
