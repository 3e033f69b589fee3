package rules

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"preflash/rules/heat"
	"preflash/rules/unit"
)

// steps is what the configured loop does on the new hotend, over every way in
// which it may run.
type steps struct {
	ranges
	watch heat.Watch
	atC   float64
	tripC float64 // where the firmware shuts down; infinite where that is unknown
	cases []stepCase
	worst *stepCase
}

type stepCase struct {
	loopCase
	heat.Response
	hottest heat.Response // with more power and less loss
	fault   stepFault
}

// stepFault is why a loop's step ends in a shutdown, worse ones last.
type stepFault uint8

const (
	noStepFault stepFault = iota
	watchTrips
	overheats
)

// stepTarget is the target of the step, °C, and where the firmware then shuts
// down: the top of the printing range, or the highest that it takes after
// this run.
func stepTarget(in *Input) (atC, tripC float64) {
	atC, tripC = in.Sheet.New.PrintC.Value[1], math.Inf(1)
	c, ok := ceilingOf(in, func(Finding) {})
	if !ok {
		return atC, tripC
	}
	c = c.afterChanges(&in.Sheet.New)
	return min(atC, c.reachC()), c.tripC()
}

// stepOf drives the new hotend through the loop; nil where no target lies
// above the room's temperature.
func stepOf(in *Input) *steps {
	p, assumed := plantOf(in)
	p.Beyond = heat.Flat                                                    // too much power is what matters
	s := steps{ranges: rangesOf(p, assumed, heat.AllFigures&^heat.LossFan)} // the part fan is off
	// one that is unknown is another rule's finding
	s.watch, _ = watchOf(in)
	if s.atC, s.tripC = stepTarget(in); s.atC <= p.AmbientC {
		return nil
	}
	hottest := p.Hottest(heat.SpreadsOf(s.inPlay, 0))
	for _, l := range loopsOf(in) {
		c := stepCase{loopCase: l, Response: s.run(p, l.Loop), hottest: s.run(hottest, l.Loop)}
		c.fault = s.fault(p, l.Loop, c.Response, c.hottest)
		s.cases = append(s.cases, c)
	}
	s.worst = &s.cases[0]
	for i := range s.cases {
		if s.worse(&s.cases[i], s.worst) {
			s.worst = &s.cases[i]
		}
	}
	return &s
}

func (s *steps) run(p heat.Plant, l heat.Loop) heat.Response {
	return heat.Step(p, heat.Load{}, l, s.watch, s.atC)
}

// fault says why a step ends in a shutdown. A watch trips by the gains alone
// where it does not with full power up to the target.
func (s *steps) fault(p heat.Plant, l heat.Loop, r, hottest heat.Response) stepFault {
	switch {
	case max(r.PeakC, hottest.PeakC) >= s.tripC:
		return overheats
	case r.Trip == heat.NoTrip:
		return noStepFault
	}
	full := heat.Loop{Form: l.Form, OnOff: true, SampleS: l.SampleS, Limit: l.Limit}
	if s.run(p, full).Trip != heat.NoTrip {
		return noStepFault
	}
	return watchTrips
}

// worse puts what shuts down on every board of a generation first, then any
// shutdown, then swings, then overshoot.
func (s *steps) worse(a, b *stepCase) bool {
	one := func(yes bool) int {
		if yes {
			return 1
		}
		return 0
	}
	return cmp.Or(
		cmp.Compare(one(s.everywhere(a.variant)), one(s.everywhere(b.variant))),
		cmp.Compare(a.fault, b.fault),
		cmp.Compare(one(!a.Settles), one(!b.Settles)),
		cmp.Compare(a.OvershootC, b.OvershootC),
	) > 0
}

// everywhere reports whether a generation ends in a shutdown on all its boards.
func (s *steps) everywhere(variant int) bool {
	return !slices.ContainsFunc(s.boards(variant), func(b board) bool { return b.fault == noStepFault })
}

// level is an error where the worst comes to pass on every board of a generation.
func (s *steps) level() Level {
	if s.everywhere(s.worst.variant) {
		return Error
	}
	return Warning
}

// board is how boards that read the sensor so often behave, at the worse power limit.
type board struct {
	sampleS float64
	fault   stepFault
}

func (s *steps) boards(variant int) []board {
	var list []board
	for i := range s.cases {
		c := &s.cases[i]
		if c.variant != variant {
			continue
		}
		if n := len(list); n > 0 && list[n-1].sampleS == c.SampleS {
			list[n-1].fault = max(list[n-1].fault, c.fault)
		} else {
			list = append(list, board{c.SampleS, c.fault})
		}
	}
	return list
}

// brief says in a few words what the worst loop does, where that is bad.
func (s *steps) brief() string {
	r := &s.worst.Response
	switch {
	case s.worst.fault == overheats:
		return fmt.Sprintf(", and get to %s, where the firmware shuts down", unit.Celsius(s.tripC))
	case s.worst.fault == watchTrips:
		return fmt.Sprintf(", and let the runaway protection trip after %s", unit.Seconds(r.TripS))
	case !r.Settles && r.SwingC > 0:
		return fmt.Sprintf(", and swing by %s without end", unit.Kelvin(r.SwingC))
	case r.Reached:
		return fmt.Sprintf(", and overshoot by %s", unit.Kelvin(r.OvershootC))
	}
	return fmt.Sprintf(", and do not reach %s", unit.Celsius(s.atC))
}

// text says what the worst loop does.
func (s *steps) text(in *Input) string {
	r := &s.worst.Response
	text := "; by the model, with them the hotend " + doesAt(s.atC, r)
	switch s.worst.fault {
	case overheats:
		if r.PeakC >= s.tripC {
			text += fmt.Sprintf(", past the %s at which the firmware shuts down", unit.Celsius(s.tripC))
		} else {
			text += fmt.Sprintf("; with %s more power and %s less loss it gets to %s, and the firmware "+
				"shuts down at %s",
				unit.Percent(heat.PowerSpread), unit.Percent(heat.LossSpread),
				unit.Celsius(s.worst.hottest.PeakC), unit.Celsius(s.tripC))
		}
	case watchTrips:
		text += fmt.Sprintf(", and the runaway protection shuts it down after %s although nothing is broken",
			unit.Seconds(r.TripS))
		if share := r.TripShare; share < 1 {
			text += " (in " + unit.Percent(share) + " of starts)"
		}
	}
	text += s.where()
	if weakest := weakestRating(&in.Sheet.New); r.BlockPeakC > weakest.C {
		text += fmt.Sprintf("; its block gets to %s, past the %s of the %s", unit.Celsius(r.BlockPeakC),
			unit.Celsius(weakest.C), weakest.By)
	}
	if s.assumed != 0 {
		over := func(q heat.Plant) float64 { return s.run(q, s.worst.Loop).OvershootC }
		bad := func(q heat.Plant) bool {
			r := s.run(q, s.worst.Loop)
			return s.fault(q, s.worst.Loop, r, r) != noStepFault
		}
		least, most := s.span(over)
		text += s.ranges.text("the overshoot is "+unit.Figure(least, 1)+" to "+unit.Kelvin(most),
			s.flips(bad))
	}
	return text
}

// doesAt says how a step to a target ends.
func doesAt(atC float64, r *heat.Response) string {
	over := fmt.Sprintf("overshoots %s by %s", unit.Celsius(atC), unit.Kelvin(r.OvershootC))
	if r.BlockPeakC-atC > r.OvershootC+0.05 {
		over += fmt.Sprintf(" (its block by %s)", unit.Kelvin(r.BlockPeakC-atC))
	}
	switch {
	case r.Settles:
		return over + " and is steady after " + unit.Seconds(r.SettleS)
	case r.SwingC > 0:
		return over + fmt.Sprintf(" and swings without end, by %s up and down, %s from peak to peak",
			unit.Kelvin(r.SwingC), unit.Seconds(r.PeriodS))
	case r.Reached:
		return over + " and does not get steady"
	}
	return "does not reach " + unit.Celsius(atC)
}

// spared reports whether another generation than the worst ends in no shutdown.
func (s *steps) spared() bool {
	faulty := func(b board) bool { return b.fault != noStepFault }
	for i := range s.cases {
		v := s.cases[i].variant
		if v != s.worst.variant && !slices.ContainsFunc(s.boards(v), faulty) {
			return true
		}
	}
	return false
}

// where says on which generation and boards it is so, where not on all.
func (s *steps) where() string {
	if s.worst.fault == noStepFault {
		return ""
	}
	list := func(faulty bool) []string {
		var all []string
		for _, b := range s.boards(s.worst.variant) {
			if (b.fault != noStepFault) == faulty {
				all = append(all, unit.Figure(b.sampleS, 2)+" s")
			}
		}
		return all
	}
	text := ""
	if fine := list(false); len(fine) > 0 {
		text = "; so it is on boards that read the sensor every " + strings.Join(list(true), " or ") +
			" and not on those that do every " + strings.Join(fine, " or ")
	}
	if s.spared() && s.worst.name != "" {
		text += "; that is the " + s.worst.name + " firmware, and the files do not say which they are for"
	}
	return text
}
