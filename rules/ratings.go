package rules

import (
	"math"
	"slices"

	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/rules/sensor"
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

// ceiling is how hot the firmware lets the hotend get, °C. What does not look is infinite.
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
func (c ceiling) highest(r rating) float64 { return c.builds(r.highestMaxTemp(c.marginK)) }

// builds is a whole max temp as far as it can be built.
func (c ceiling) builds(maxC float64) float64 { return min(maxC, math.Floor(c.buildsC+rounding)) }

// withinRating is the highest whole max temp, °C, at which the hotend itself
// stays within a rating at the highest target, with the definition that it has
// after this run. Where the reading is so far off that no few degrees help, that
// is sensor-curve's: then the rating alone counts.
func withinRating(in *Input, c ceiling, r rating) float64 {
	highest := r.highestMaxTemp(c.marginK)
	reading, believed, ok := readingToCome(in)
	if !ok {
		return highest
	}
	const mostLowered = 30
	for maxC := highest; maxC > highest-mostLowered; maxC-- {
		reading.limitC = maxC - c.marginK
		if !slices.ContainsFunc(believed,
			func(c *sensor.Circuit) bool { return reading.judgeOne(c).overRating }) {
			return maxC
		}
	}
	return highest
}

// readingToCome is the hotend's sensor, and the definition that reads it, once
// sensor-curve has made its change, unless that may be waived; false where there
// is none, or where nothing says which pull-up it is on.
func readingToCome(in *Input) (*reading, []*sensor.Circuit, bool) {
	s := &in.Printer.Hotend.Sensor
	if !s.Known() || kindOf(&s.Value) != in.Sheet.New.Sensor.Kind.Value || pullupUnsaid(in) {
		return nil, nil, false
	}
	believed, err := believedCircuits(in)
	if err != nil {
		return nil, nil, false
	}
	r, ok := newReading(in, believed[0].SeriesOhm)
	if !ok {
		return nil, nil, false
	}
	if m := r.judge(believed); m.wrong() && !mayWaive(in, "sensor-curve") {
		if fix, repaired := r.repair(in, believed); repaired {
			believed = []*sensor.Circuit{fix.leaves.believed}
		}
	}
	return r, believed, true
}

// buildsWith is the highest max temp that builds with a definition; +Inf where
// the firmware does not look.
func buildsWith(in *Input, d parser.SensorDef) float64 {
	if most := in.Config.MaxTempWith(d); most > 0 {
		return most
	}
	return math.Inf(1)
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
	s := &in.Printer.Hotend.Sensor
	if d, changes := in.Changed[s.Key].(parser.SensorDef); changes {
		c.buildsC = buildsWith(in, d) // its table may reach further, or less far
	} else {
		if most := l.MaxTemp.Most; most > 0 {
			c.buildsC = most
		}
		if s.Known() {
			c.buildsC = min(c.buildsC, buildsWith(in, s.Value))
		}
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

// afterChanges is the ceiling once temp-ceiling and temp-reach have made their changes.
func (c ceiling) afterChanges(h *sheet.Hotend) ceiling {
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
