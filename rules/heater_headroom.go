package rules

import (
	"fmt"
	"math"

	"preflash/parser"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

// fullHeadroom is the share of the needed power from which on nothing is said:
// common practice, no source.
const fullHeadroom = 1.15

var heaterHeadroom = &Rule{
	ID:      "heater-headroom",
	Level:   Error,
	Figure:  FigureOf{"headroom", "%", Lower},
	Summary: "The heater has too little power for its top temperature and flow.",
	Doc: `at_c = top of new.print_c, part fan full:
  available = P(at_c) · duty limit, the lower of sheet and configuration
  loss      = loss_fan_w_per_k · (at_c − ambient_c)
  melt      = 0.0024 J/(mm³·K) · max_flow_mm3_s · (at_c − ambient_c)
  headroom  = available / (loss + melt)
0.0024 is about 1.2 g/cm³ times 2 J/(g·K)*.
Error: available does not even cover the loss with the fan off and no flow.
Warning: headroom below 1. Note: below 1.15*.
hold_settle_c is where the sensor ends up at full duty, fan full, at the full
flow; hold_trip_s is when the drop check then trips, starting from the target,
null where it never does. A firmware that slows the fan as the temperature sinks
has stopped it before it checks.
Power may be 5 % off and given losses 10 %*: an error that this turns about is a
warning, and says so.
Warning of its own: the sheet gives a PTC heater's power cold alone, no hot_w.
Warning of its own: heating with the fan full stalls so near at_c that no check
trips, and below at_c all the same.
Values: at_c, available_w, loss_w, melt_w, headroom, hold_settle_c, hold_trip_s.
No change: it takes another heater, less flow or a lower temperature.
* Common practice, no source.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		at := in.Sheet.New.PrintC.Value[1]
		p, assumed := plantOf(in)
		if at <= p.AmbientC {
			return
		}
		watch, missing := watchOf(in) // runaway-tight reports a missing one
		flow := in.Sheet.New.Nozzle.MaxFlowMM3S.Value
		h := p.Headroom(at, flow)
		load := heat.Load{Fan: 1, FlowMM3S: flow}
		trip, trips := dropCheckTrip(p, load, watch, at)
		values := Values{
			"at_c": at, "available_w": h.AvailableW, "loss_w": h.LossW, "melt_w": h.MeltW,
			"headroom":      h.Ratio,
			"hold_settle_c": orNull(p.Settle(p.DutyLimit, load, at)), "hold_trip_s": nil,
		}
		if trips {
			values["hold_trip_s"] = trip
		}
		place := in.Sheet.New.Heater.RatedW.At
		if label := &in.Sheet.New.Heater; labelOnly(label) {
			report(unknownHot(in, p, at, flow).With(values))
			return
		}
		r := rangesOf(p, assumed, heat.Loss|heat.LossFan)
		if level, brief, text := shortOfPower(in, p, h, at); text != "" {
			if level == Error &&
				r.flips(func(q heat.Plant) bool { return cannotHold(q.Headroom(at, flow)) }) {
				level = Warning
			}
			switch {
			case level != Warning: // nothing sinks, or the target is out of reach
			case missing != nil:
				text += "; whether the drop check trips cannot be told"
			default:
				text += sagText(p, load, watch, at)
				if s := &in.Printer.Hotend.Watch.SlowsFan; s.State != parser.Absent && s.State != parser.Off {
					text += "; the firmware slows the part fan as it sinks, so that this is seen in the " +
						"print and seldom by the drop check"
				}
			}
			text += headroomRange(r, h, at, flow)
			report(Findingf(level, place, "%s", brief).Explain("%s", text).With(values))
		}
		if brief, text := stalls(rangesOf(p, assumed, heat.LossFan), watch, at); brief != "" {
			report(Findingf(Warning, place, "%s", brief).Explain("%s", text).With(values))
		}
	},
}

// shortOfPower says how bad the headroom is, in short and in full, or nothing.
func shortOfPower(in *Input, p heat.Plant, h heat.Headroom, at float64) (level Level, brief, text string) {
	has := fmt.Sprintf("at %s the heater gives %s", unit.Celsius(at), unit.Watts(h.AvailableW))
	need := fmt.Sprintf("and the block loses %s with the part fan full", unit.Watts(h.LossW))
	if k := &in.Sheet.New.Nozzle.MaxFlowMM3S; k.Given {
		need += fmt.Sprintf(", and melting %s takes %s", unit.FlowRate(k.Value), unit.Watts(h.MeltW))
	} else {
		need += " (the melt is left out, as the sheet gives no max_flow_mm3_s)"
	}
	share := "that is " + unit.Percent(h.Ratio) + " of what is needed"
	switch {
	case cannotHold(h):
		level = Error
		brief = fmt.Sprintf("fit a stronger heater, or print cooler: it gives %s at %s, and even with the "+
			"fan off and nothing extruded the block loses %s",
			unit.Watts(h.AvailableW), unit.Celsius(at), unit.Watts(h.LossOffW))
		text = fmt.Sprintf("%s, less than the %s that the block loses with the part fan off and nothing "+
			"extruded: it gets no further than %s",
			has, unit.Watts(h.LossOffW), unit.Celsius(p.Settle(p.DutyLimit, heat.Load{}, p.AmbientC)))
	case h.Ratio < 1 && h.FitsMM3S > 0:
		level = Warning
		brief = fmt.Sprintf("print slower or cooler, or fit a stronger heater: at %s and full flow it "+
			"gives %s of what is needed, and a flow of %s fits",
			unit.Celsius(at), unit.Percent(h.Ratio), unit.FlowRate(h.FitsMM3S))
		text = fmt.Sprintf("%s %s; %s", has, need, share)
	case h.Ratio < 1:
		level = Warning
		brief = fmt.Sprintf("print cooler, or fit a stronger heater: at %s it gives %s of what is needed, "+
			"and no flow fits while the fan is full",
			unit.Celsius(at), unit.Percent(h.Ratio))
		text = fmt.Sprintf("%s %s; %s", has, need, share)
	case h.Ratio < fullHeadroom:
		brief = fmt.Sprintf("expect little to spare at %s and full flow: the heater gives %s of what is "+
			"needed", unit.Celsius(at), unit.Percent(h.Ratio))
		text = fmt.Sprintf("%s %s; %s", has, need, share)
	}
	return level, brief, text
}

// dropCheckTrip is when the drop check trips under a load, where there is one.
func dropCheckTrip(p heat.Plant, l heat.Load, w heat.Watch, at float64) (float64, bool) {
	switch {
	case w.Form == heat.ErrorSumWatch:
		return w.Sum.TripsAfter(p, l, at)
	case w.Form == heat.WindowWatch && w.Drop.PeriodS > 0:
		return w.Drop.TripsAfter(p, l, at)
	}
	return 0, false
}

// sagText says what becomes of a hotend that has reached its target when the
// load comes on.
func sagText(p heat.Plant, l heat.Load, w heat.Watch, at float64) string {
	endC := p.Settle(p.DutyLimit, l, at)
	if endC >= at || w.Form == heat.NoWatch {
		return ""
	}
	text := "; from its target it sinks to " + unit.Celsius(endC)
	if s, trips := dropCheckTrip(p, l, w, at); trips {
		return text + ", and the drop check shuts down after " + unit.Seconds(s)
	}
	return text + ", and no check notices"
}

// cannotHold reports whether a target cannot be held even with the fan off and
// nothing extruded.
func cannotHold(h heat.Headroom) bool { return h.AvailableW < h.LossOffW }

// headroomClass sorts headrooms by what is said of them.
func headroomClass(h heat.Headroom) int {
	switch {
	case cannotHold(h):
		return 0
	case h.Ratio < 1:
		return 1
	case h.Ratio < fullHeadroom:
		return 2
	}
	return 3
}

// headroomRange says how far the ratio moves, and whether another level could
// be true. Of a ratio above 1 it speaks only where figures are assumed.
func headroomRange(r ranges, h heat.Headroom, at, flow float64) string {
	least, most := r.span(func(q heat.Plant) float64 { return q.Headroom(at, flow).Ratio })
	flips := (h.Ratio < 1 || r.assumed != 0) &&
		r.flips(func(q heat.Plant) bool { return headroomClass(q.Headroom(at, flow)) == headroomClass(h) })
	return r.text("the share is "+unit.Figure(100*least, 0)+" to "+unit.Percent(most), flips)
}

// unknownHot says that the power at temperature is not known.
func unknownHot(in *Input, p heat.Plant, at, flow float64) Finding {
	least := p.WithPower(labelLeast)
	return Findingf(Warning, in.Sheet.New.Heater.HotW.At,
		"measure this PTC heater hot and give hot_w, two points at least: its power falls as it gets hot, "+
			"and the sheet gives its label of %s alone",
		unit.Watts(in.Sheet.New.Heater.RatedW.Value)).
		Explain("with %s to all of that it has %s to %s of what is needed at %s",
			unit.Percent(labelLeast), unit.Figure(100*least.Headroom(at, flow).Ratio, 0),
			unit.Percent(p.Headroom(at, flow).Ratio), unit.Celsius(at))
}

// stalls says that a heat-up with the part fan full ends below the target
// where neither watch looks, or nothing.
func stalls(r ranges, w heat.Watch, at float64) (brief, text string) {
	p := r.plant
	unseen := func(q heat.Plant) bool {
		end := q.Settle(q.DutyLimit, heat.FanFull, q.AmbientC)
		switch {
		case end >= at:
			return false
		case w.Form == heat.ErrorSumWatch:
			o := heat.PredictSum(q, heat.FanFull, w.Sum, at)
			return end >= at-w.Sum.HysteresisC && !o.Trips
		case w.Form == heat.WindowWatch && w.Heating.WindowS > 0:
			r := heat.PredictRise(q, heat.FanFull, w.Heating, at)
			return r.Gets && !r.Trips(w.Heating)
		}
		return false
	}
	if !unseen(p) {
		return "", ""
	}
	end := func(q heat.Plant) float64 { return q.Settle(q.DutyLimit, heat.FanFull, q.AmbientC) }
	brief = fmt.Sprintf("print cooler, or with less fan: heating to %s with the part fan full stalls at "+
		"%s, so near the target that no check trips and nothing says so",
		unit.Celsius(at), unit.Celsius(end(p)))
	least, most := r.span(end)
	if math.IsInf(most, 1) {
		return brief, ""
	}
	return brief, r.text("it ends at "+unit.Figure(least, 1)+" to "+unit.Celsius(most), r.flips(unseen))
}
