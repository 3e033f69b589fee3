package rules

import (
	"fmt"
	"math"

	"preflash/parser"
	"preflash/rules/heat"
)

var runawayTight = &Rule{
	ID:      "runaway-tight",
	Level:   Warning,
	Summary: "The runaway protection would shut down a healthy new hotend.",
	Doc: `The new hotend is heated from ambient_c at full duty, part fan full, in the
model C dT/dt = P(T) − h (T − ambient), dS/dt = (T − S)/lag (fixed-step
Runge-Kutta of order 4; checked against SciPy). at_c = top of new.print_c.
Warning, watch with a window: the sensor S is to rise by the required rise R
within the window W for as long as S < at_c − (R + arming margin + 1). The
predicted rise is that over the window which begins where this ends, the worst
case, or over the first one where that is less; it is below R.
Warning, watch with an error sum: checked once a second; the shortfall below
at_c − hysteresis adds up; each gain of R within W begins it anew; once a
window was missed it trips at its limit. The sum reaches that limit.
Warning, hold watch of a window: a period of 0 s, where that is no switch.
Full duty is the best case: gains that throttle earlier belong to pid-stale.
Figures of the block that the sheet lacks are assumed, and taken to be up to
30 % off (common practice, no source).
Values: window_s, required_rise_c, predicted_rise_c, predicted_rise_off_c (part
fan off), at_c, error_sum, error_limit (°C·s); those of the other kind of watch
are null, and so is a sum that grows without end.
Change: the smallest wider window or sum in whole figures, never past what
runaway-loose allows (120 s, 360 °C·s); none where that is not enough.`,
	Check: func(in *Input, report func(Finding)) {
		holdTight(&in.Printer.Hotend.Watch, report)
		watch, missing := watchOf(in)
		switch {
		case missing != nil:
			report(cannotTell(Warning, missing))
		case watch.Form == heat.WindowWatch && watch.Rise.RiseC > 0 && watch.Rise.WindowS > 0:
			riseTight(in, watch.Rise, report)
		case watch.Form == heat.ErrorSumWatch && watch.Sum.RiseC > 0:
			sumTight(in, watch.Sum, report)
		}
	},
}

// holdTight reports a hold period of nothing where that is no switch: the
// first reading below the band shuts the heater down.
func holdTight(w *parser.Watch, report func(Finding)) {
	s := &w.HoldPeriodS
	if w.Form != parser.WatchWindow || !w.On.Known() || !w.On.Value || s.Key == "" || !s.Known() || s.Value > 0 {
		return
	}
	report(Sayf(Warning, placed(s.At, w.On.At), "the %s is %s: the first dip of more than %s below the target shuts a healthy heater down; set it to %s",
		s.Key, seconds(s.Value), kelvin(w.HysteresisC.Value), seconds(w.Usual.HoldPeriodS)).
		Change(s.To(w.Usual.HoldPeriodS)))
}

func riseTight(in *Input, w heat.RiseWatch, report func(Finding)) {
	p, assumed := plantOf(in)
	assumed &^= heat.Loss
	at := in.Sheet.New.PrintC.Value[1]
	full, off := heat.PredictRise(p, heat.FanFull, w, at), heat.PredictRise(p, heat.Load{}, w, at)
	if !full.Trips(w) {
		return
	}
	s := &in.Printer.Hotend.Watch.RiseWindowS
	text := fmt.Sprintf("on the way to %s the new hotend rises by %s in the %s of the rise watch, part fan full, and %s are required: a healthy heater is shut down%s",
		celsius(at), rise(full.LeastC()), seconds(w.WindowS), rise(w.RiseC), fanOffToo(off.Trips(w)))
	least, most := p.Range(assumed, func(q heat.Plant) float64 { return heat.PredictRise(q, heat.FanFull, w, at).LeastC() })
	text += ifAssumed(p, assumed, "the rise is "+figure(least, 1)+" to "+kelvin(most),
		p.Flips(assumed, func(q heat.Plant) bool { return heat.PredictRise(q, heat.FanFull, w, at).Trips(w) }))
	f := Sayf(Warning, placed(s.At, in.Sheet.New.PrintC.At), "%s", text).With(Values{
		"window_s": w.WindowS, "required_rise_c": w.RiseC, "at_c": at,
		"predicted_rise_c": full.LeastC(), "predicted_rise_off_c": off.LeastC(),
		"error_sum": nil, "error_limit": nil,
	})
	wider, ok := heat.LeastWindow(p, heat.FanFull, w, at, loosestHotend.riseWindowS)
	report(widen(f, s, wider, ok, seconds))
}

func sumTight(in *Input, w heat.SumWatch, report func(Finding)) {
	p, assumed := plantOf(in)
	assumed &^= heat.Loss
	at := in.Sheet.New.PrintC.Value[1]
	full, off := heat.PredictSum(p, heat.FanFull, w, at), heat.PredictSum(p, heat.Load{}, w, at)
	if !full.Trips {
		return
	}
	s := &in.Printer.Hotend.Watch.ErrorSumCS
	text := fmt.Sprintf("on the way to %s the new hotend, part fan full, gains less than %s in a window of %s, and then its error sum %s, which shuts a healthy heater down at %s, after %s%s",
		celsius(at), kelvin(w.RiseC), seconds(w.WindowS), growsTo(full), degreeSeconds(w.LimitCS), seconds(full.TripS), fanOffToo(off.Trips))
	flips := p.Flips(assumed, func(q heat.Plant) bool { return heat.PredictSum(q, heat.FanFull, w, at).Trips })
	least, most := p.Range(assumed, func(q heat.Plant) float64 { return heat.PredictSum(q, heat.FanFull, w, at).MostCS })
	text += ifAssumed(p, assumed, sumRange(least, most), flips)
	f := Sayf(Warning, placed(s.At, in.Sheet.New.PrintC.At), "%s", text).With(Values{
		"window_s": w.WindowS, "required_rise_c": w.RiseC, "at_c": at,
		"predicted_rise_c": nil, "predicted_rise_off_c": nil,
		"error_sum": finite(full.MostCS), "error_limit": w.LimitCS,
	})
	wider, ok := full.LeastLimit()
	report(widen(f, s, wider, ok && wider <= loosestHotend.errorSumCS, degreeSeconds))
}

// widen adds the change to a finding about a watch that is too tight.
func widen(f Finding, s *parser.Setting[float64], to float64, enough bool, unit func(float64) string) Finding {
	if !enough {
		f.Message += "; no watch that still protects is wide enough: the heater is too weak for this temperature"
		return f
	}
	f.Message += "; widen the " + string(s.Key) + " to " + unit(to)
	return f.Change(s.To(to))
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
	return "grows to " + degreeSeconds(o.MostCS)
}

// sumRange says between which bounds an error sum lies.
func sumRange(least, most float64) string {
	switch {
	case math.IsInf(least, 1):
		return "the sum still grows without end"
	case math.IsInf(most, 1):
		return "the sum is anything from " + degreeSeconds(least) + " to one that grows without end"
	}
	return "the sum is " + figure(least, 1) + " to " + degreeSeconds(most)
}
