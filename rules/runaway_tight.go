package rules

import (
	"fmt"
	"math"
	"strings"

	"preflash/parser"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

var runawayTight = &Rule{
	ID:    "runaway-tight",
	Level: Warning,
	MayLoosen: []parser.Key{parser.HotendRiseWindow, parser.HotendHoldPeriod, parser.HotendErrorSum,
		parser.HotendRise},
	Summary: "The runaway protection would shut down a healthy new hotend.",
	Doc: `The new hotend is heated from ambient_c at full duty, part fan full, in the
model C dT/dt = P(T) − h (T − ambient), dS/dt = (T − S)/lag (fixed-step
Runge-Kutta of order 4; checked against SciPy). at_c = top of new.print_c, or
the highest target that the firmware takes after this run, as in pid-stale.
Warning, check with a window: looks once, when the window W is over, and in
whole degrees; the sensor S is to have risen by the required rise R, for as long
as S < at_c − (R + arming margin + 1). From some whole degree it has not. The
predicted rise is that over the window which begins where this ends, or over the
first one where that is less.
Warning, check with an error sum: looks once a second at the smoothed S; the
shortfall below at_c − hysteresis adds up; each gain of R within W begins it
anew; once a window was missed it trips at its limit. The sum reaches that limit
at one of 8 phases of the second.
Warning, drop check: a period of 0 s, where that is no switch.
Full duty is the best case: gains that throttle earlier belong to pid-stale.
Figures of the block that the sheet lacks are assumed, and taken to be up to
30 % off; power may be 5 % off and given losses 10 %. A PTC heater whose hot
power the sheet lacks is judged at 40 % of its label. These figures are common
practice, no source.
Values: window_s, required_rise_c, predicted_rise_c, predicted_rise_off_c (part
fan off), at_c, error_sum, error_limit (°C·s); those of the other kind of check
are null, and so is a sum that grows without end.
Change: the least window, and only then a larger sum, with which nothing trips
with each of these alone: 7 % less power, 10 % more loss, a room of 15 °C;
rounded up, never past what runaway-loose allows (120 s, 360 °C·s); none where
that is not enough.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		dropCheckTight(&in.Printer.Hotend.Watch, report)
		watch, missing := watchOf(in)
		switch {
		case missing != nil:
			report(cannotTell(Warning, missing))
		case watch.Form == heat.WindowWatch && watch.Heating.RiseC > 0 && watch.Heating.WindowS > 0,
			watch.Form == heat.ErrorSumWatch && watch.Sum.RiseC > 0:
			watchTight(in, watch, report)
		}
	},
}

// dropCheckTight reports a hold period of nothing where that is no switch: the
// first reading below the band shuts the heater down.
func dropCheckTight(w *parser.Watch, report func(Finding)) {
	s := &w.HoldPeriodS
	if w.Form != parser.WatchWindow || !w.On.Known() || !w.On.Value || !s.Known() || s.Value > 0 {
		return
	}
	report(Findingf(Warning, placed(s.At, w.On.At),
		"set the %s to %s: at %s the first dip of more than %s below the target shuts a healthy heater down",
		s.Key, unit.Seconds(w.Usual.HoldPeriodS), unit.Seconds(s.Value), unit.Kelvin(w.HysteresisC.Value)).
		Of(s.Key).Change(s.To(w.Usual.HoldPeriodS)))
}

// tight is a watch held against the new hotend on the way to the top of its range.
type tight struct {
	ranges
	in    *Input
	watch heat.Watch
	atC   float64
}

func watchTight(in *Input, watch heat.Watch, report func(Finding)) {
	p, assumed := plantOf(in)
	label := labelOnly(&in.Sheet.New.Heater)
	if label {
		p = p.WithPower(labelLeast)
	}
	at, _ := stepTarget(in)
	t := tight{rangesOf(p, assumed, heat.AllFigures&^heat.Loss), in, watch, at}
	if !t.trips(p, heat.FanFull) {
		return
	}
	w := &in.Printer.Hotend.Watch
	s, f := &w.RiseWindowS, Finding{}
	if watch.Form == heat.WindowWatch {
		f = t.rise()
	} else {
		s, f = &w.ErrorSumCS, t.sum()
	}
	f.Level, f.At, f.About = Warning, placed(s.At, in.Sheet.New.PrintC.At), string(s.Key)
	if label {
		full := p.WithPower(1 / labelLeast)
		f.explain("the sheet gives the power of this PTC heater cold alone (hot_w is missing), and it was " +
			"taken to give " + unit.Percent(labelLeast) + " of its label hot")
		if !t.trips(full, heat.FanFull) {
			f.Message = "measure this PTC heater hot before you change the heating check: " + f.Message
			f.explain("with all of its label nothing trips")
			report(f)
			return
		}
	}
	report(t.widened(f))
}

func (t *tight) trips(p heat.Plant, l heat.Load) bool {
	if t.watch.Form == heat.WindowWatch {
		return heat.PredictRise(p, l, t.watch.Heating, t.atC).Trips(t.watch.Heating)
	}
	return heat.PredictSum(p, l, t.watch.Sum, t.atC).Trips
}

func (t *tight) rise() Finding {
	w := t.watch.Heating
	full, off := heat.PredictRise(t.plant, heat.FanFull, w, t.atC),
		heat.PredictRise(t.plant, heat.Load{}, w, t.atC)
	short := fmt.Sprintf("near %s a healthy hotend rises by %s in the %s of the heating check, and %s are "+
		"required",
		unit.Celsius(t.atC), riseText(full.LeastC()), unit.Seconds(w.WindowS), riseText(w.RiseC))
	text := fmt.Sprintf("with the part fan full it is shut down%s%s",
		inShare(heat.TripShare(t.plant, heat.FanFull, w, t.atC)), fanOffToo(off.Trips(w)))
	least, most := t.span(func(q heat.Plant) float64 {
		return heat.PredictRise(q, heat.FanFull, w, t.atC).LeastC()
	})
	text += t.text("the rise is "+unit.Figure(least, 1)+" to "+unit.Kelvin(most), t.flipped())
	return Finding{Message: short, Detail: text, Values: Values{
		"window_s": w.WindowS, "required_rise_c": w.RiseC, "at_c": t.atC,
		"predicted_rise_c": full.LeastC(), "predicted_rise_off_c": off.LeastC(),
		"error_sum": nil, "error_limit": nil,
	}}
}

func (t *tight) sum() Finding {
	w := t.watch.Sum
	full, off := heat.PredictSum(t.plant, heat.FanFull, w, t.atC),
		heat.PredictSum(t.plant, heat.Load{}, w, t.atC)
	short := fmt.Sprintf("near %s a healthy hotend gains less than %s in the %s of the heating check, and "+
		"is shut down after %s",
		unit.Celsius(t.atC), unit.Kelvin(w.RiseC), unit.Seconds(w.WindowS), unit.Seconds(full.TripS))
	text := fmt.Sprintf("with the part fan full its error sum %s, the limit is %s, and it is shut down%s%s",
		growsTo(full), unit.DegreeSeconds(w.LimitCS), inShare(full.Share), fanOffToo(off.Trips))
	least, most := t.span(func(q heat.Plant) float64 {
		return heat.PredictSum(q, heat.FanFull, w, t.atC).MostCS
	})
	text += t.text(sumRange(least, most), t.flipped())
	return Finding{Message: short, Detail: text, Values: Values{
		"window_s": w.WindowS, "required_rise_c": w.RiseC, "at_c": t.atC,
		"predicted_rise_c": nil, "predicted_rise_off_c": nil,
		"error_sum": orNull(full.MostCS), "error_limit": w.LimitCS,
	}}
}

func (t *tight) flipped() bool {
	return t.flips(func(q heat.Plant) bool { return t.trips(q, heat.FanFull) })
}

// hotendBounds is how wide a watch may get.
var hotendBounds = heat.Bounds{WindowS: loosestHotend.riseWindowS, LimitCS: loosestHotend.errorSumCS}

// widened adds the change to a finding about a watch that is too tight, or
// what is to blame where no change would do.
func (t *tight) widened(f Finding) Finding {
	wider := heat.Widen(t.plant, heat.FanFull, t.watch, t.atC, hotendBounds)
	if !wider.Holds {
		f.Message = "fit a stronger heater, or print cooler: " + f.Message
		f.explain("no check that still protects is wide enough" + t.blame())
		return f
	}
	w := &t.in.Printer.Hotend.Watch
	var widen []string
	add := func(s *parser.Setting[float64], was, nominal, to float64, unit func(float64) string) {
		if to <= was {
			return
		}
		widen = append(widen, "the "+string(s.Key)+" to "+unit(to))
		if nominal > was && nominal < to {
			f.explain("a " + string(s.Key) + " of " + unit(nominal) +
				" would do with these figures, the rest is for a weaker heater, a draught or a cold room")
		}
		f = f.Change(s.To(to))
	}
	if t.watch.Form == heat.WindowWatch {
		add(&w.RiseWindowS, t.watch.Heating.WindowS, wider.Nominal.Heating.WindowS,
			wider.Watch.Heating.WindowS, unit.Seconds)
	} else {
		add(&w.RiseWindowS, t.watch.Sum.WindowS, wider.Nominal.Sum.WindowS, wider.Watch.Sum.WindowS,
			unit.Seconds)
		add(&w.ErrorSumCS, t.watch.Sum.LimitCS, wider.Nominal.Sum.LimitCS, wider.Watch.Sum.LimitCS,
			unit.DegreeSeconds)
	}
	f.Message = "widen " + strings.Join(widen, " and ") + ": " + f.Message
	return f
}

// usualRoomC is a room that nobody calls cold: common practice, no source.
const usualRoomC = 22

// blame says what keeps any watch from being wide enough, and up to which
// temperature the configured one is wide enough.
func (t *tight) blame() string {
	var text string
	suffices := func(p heat.Plant) bool {
		return heat.Widen(p, heat.FanFull, t.watch, t.atC, hotendBounds).Holds
	}
	unlimited, warm := t.plant, t.plant
	unlimited.DutyLimit, warm.AmbientC = 1, usualRoomC
	switch {
	case t.plant.DutyLimit < 1 && suffices(unlimited):
		text = ": the power limit of " + unit.Percent(t.plant.DutyLimit) + " is to blame"
	case t.plant.AmbientC < usualRoomC && suffices(warm):
		text = ": the room at " + unit.Celsius(t.plant.AmbientC) + " is to blame"
	default:
		text = ": the heater is too weak for this temperature"
	}
	upTo, ok := heat.HoldsUpTo(t.plant.Worst(), heat.FanFull, t.watch, t.atC)
	if upTo = math.Floor(upTo/5) * 5; ok && upTo > t.plant.AmbientC {
		text += "; the check as it is set holds up to " + unit.Celsius(upTo) + ", with " +
			unit.Percent(1-heat.MarginPower) + " less power, " +
			unit.Percent(heat.MarginLoss-1) + " more loss and a room of " +
			unit.Celsius(min(t.plant.AmbientC, heat.MarginAmbientC))
	}
	return text
}

// inShare says in what share of starts something happens, where not in all.
func inShare(share float64) string {
	if share >= 1 || share <= 0 {
		return ""
	}
	return " in " + unit.Percent(share) + " of starts"
}

func fanOffToo(trips bool) string {
	if trips {
		return ", with the fan off too"
	}
	return ", though not with the fan off"
}

func growsTo(o heat.SumOutcome) string {
	if !o.Gets {
		return "grows without end"
	}
	return "grows to " + unit.DegreeSeconds(o.MostCS)
}

// sumRange says between which bounds an error sum lies.
func sumRange(least, most float64) string {
	switch {
	case math.IsInf(least, 1):
		return "the sum still grows without end"
	case math.IsInf(most, 1):
		return "the sum is anything from " + unit.DegreeSeconds(least) + " to one that grows without end"
	}
	return "the sum is " + unit.Figure(least, 1) + " to " + unit.DegreeSeconds(most)
}
