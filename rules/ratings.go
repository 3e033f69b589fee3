package rules

import (
	"math"

	"preflash/parser"
	"preflash/parser/sheet"
)

// ptfeLinerC is how hot a PTFE liner may get: common practice, no source.
const ptfeLinerC = 240

// tripSlackC is how far above a rating the firmware's own shutdown may lie: it
// is met for moments and not held. Common practice, no source.
const tripSlackC = 15

// overshootRoomK is what a loop needs between its target and the shutdown
// where the firmware keeps no margin of its own: common practice, no source.
const overshootRoomK = 10

// rating is the lowest of the temperatures that the parts of a hotend stand.
type rating struct {
	C  float64     // °C
	By string      // the part that limits
	At parser.Span // the key of the sheet that says so
}

// weakestRating gives the rating that limits a hotend. Of equal ones the more
// particular part is named.
func weakestRating(h *sheet.Hotend) rating {
	r := rating{h.RatedC.Value, "hotend", h.RatedC.At}
	if s := &h.Sensor.RatedC; s.Given && s.Value < r.C {
		r = rating{s.Value, "sensor", s.At}
	}
	if h.Liner.Value == "ptfe" && ptfeLinerC < r.C {
		r = rating{ptfeLinerC, "PTFE liner", h.Liner.At}
	}
	return r
}

// highestMaxTemp is the highest whole max temp that a rating allows, °C: the
// highest target, which lies a margin below it, stays within the rating, and
// the shutdown at most tripSlackC above.
func (r rating) highestMaxTemp(marginK float64) float64 {
	return math.Floor(r.C + min(marginK, tripSlackC) + rounding)
}

// rounding forgives what binary fractions do to figures written in decimals.
const rounding = 1e-9

// ceiling is how hot the firmware lets the hotend get, °C. What does not look is
// infinite.
type ceiling struct {
	maxC, marginK float64
	buildsC       float64 // the highest max temp that it is built with
	tableC        float64 // the hottest that the sensor's table reads, which caps all
}

// A reading at the end of a sensor's table is a shutdown, so the highest good
// one lies a degree below it, and targets lie another degree below that, as
// the style's firmware publishes it.
const (
	tableTripK = 1
	tableTopK  = 2
)

// highest is the highest whole max temp that a rating and the build allow.
func (c ceiling) highest(r rating) float64 {
	return min(r.highestMaxTemp(c.marginK), math.Floor(c.buildsC+rounding))
}

// targetC is the highest temperature that a user can ask for.
func (c ceiling) targetC() float64 { return c.maxC - c.marginK }

// usableC is the highest target that can be held: that which a user can ask
// for, or the one that the sensor's table still reads.
func (c ceiling) usableC() float64 { return min(c.targetC(), c.tableC-tableTopK) }

// reachC is the highest target at which overshoot has room below the shutdown.
func (c ceiling) reachC() float64 { return min(c.maxC-c.roomK(), c.tableC-tableTopK) }

// tripC is the reading above which the firmware shuts the heater down.
func (c ceiling) tripC() float64 { return min(c.maxC, c.tableC-tableTripK) }

// neededMaxTemp is the lowest whole max temp that lets the hotend reach the
// top of its printing range.
func (c ceiling) neededMaxTemp(topC float64) float64 {
	return math.Ceil(topC + c.roomK() - rounding)
}

// roomK is what must lie between the highest target and the shutdown.
func (c ceiling) roomK() float64 {
	if c.marginK > 0 {
		return c.marginK
	}
	return overshootRoomK
}

// ceilingOf reads the temperature limits of a configuration. Where one cannot
// be told it reports that and returns false; so it does, without a word, where
// there is no max temp, which is the business of temp-ceiling.
func ceilingOf(in *Input, report func(Finding)) (ceiling, bool) {
	l := &in.Printer.Limits
	switch {
	case l.MaxTemp.State == parser.Unknown:
		report(cannotTell(Warning, &l.MaxTemp))
		return ceiling{}, false
	case l.Margin.State == parser.Unknown:
		report(cannotTell(Warning, &l.Margin))
		return ceiling{}, false
	case !l.MaxTemp.Known():
		return ceiling{}, false
	}
	c := ceiling{maxC: l.MaxTemp.Value, buildsC: math.Inf(1), tableC: tableTopC(in)}
	if most := l.MaxTemp.Most; most > 0 {
		c.buildsC = most
	}
	if l.Margin.Known() {
		c.marginK = max(l.Margin.Value, 0)
	}
	return c, true
}

// tableTopC is where the hotend's readings end, °C: at the end of a table, the
// one that the findings so far would change to where there is one; of two that
// it may be, the one that ends first.
func tableTopC(in *Input) float64 {
	s := &in.Printer.Hotend.Sensor
	def, changed := in.Changed[parser.HotendSensor].(parser.SensorDef)
	if !changed {
		if !s.Known() {
			return math.Inf(1)
		}
		def = s.Value
	}
	top := math.Inf(1)
	for d := &def; d != nil; d = d.Or {
		if d.Form != parser.FormAmplifier && d.HighC > d.LowC {
			top = min(top, d.HighC)
		}
	}
	return top
}

// settled is the ceiling once temp-ceiling and temp-reach have made their
// changes.
func (c ceiling) settled(h *sheet.Hotend) ceiling {
	highest := c.highest(weakestRating(h))
	needed := c.neededMaxTemp(h.PrintC.Value[1])
	switch {
	case c.maxC > highest:
		c.maxC = highest
	case c.maxC < needed && needed <= weakestRating(h).highestMaxTemp(c.marginK):
		c.maxC = max(c.maxC, min(needed, highest))
	}
	return c
}

// placed gives where a setting stands, or another place for a default, which
// stands nowhere.
func placed(at, otherwise parser.Span) parser.Span {
	if at.IsZero() {
		return otherwise
	}
	return at
}

// orAssumed appends a word to a figure that the sheet does not give.
func orAssumed[T any](text string, k sheet.Key[T]) string {
	if k.Given {
		return text
	}
	return text + " (assumed)"
}
