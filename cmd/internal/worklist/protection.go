package worklist

import (
	"fmt"
	"math"

	"preflash/parser"
	"preflash/rules"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

// coldTargetC is the target of the test with the heater unplugged, °C: should
// the heater be plugged in after all, it does no harm.
const coldTargetC = 100

// warmK is how far above the room a hotend is warmed by hand for the test of the
// drop check.
const warmK = 20

// longestS bounds a test that is worth waiting for, s.
const longestS = 3600

const stops = "the firmware switches every heater off, stops and says that the hotend does not heat " +
	"as it should"

func (b *builder) protection() Section {
	s := Section{
		Title: "Protection test",
		Note: "The firmware has two checks: the heating check sees a heater that does not heat up, " +
			"the drop check one that does not hold its temperature. With the heater unplugged from the " +
			"board nothing gets hot, and a firmware that works sees a heater that does nothing. " +
			"Unplug and plug with the power off only. Until this test has passed, never leave the " +
			"printer alone.",
	}
	watch, told := rules.Watch(b.in)
	switch {
	case b.unprotected():
		s.add(
			Item{Do: "Stop here: the runaway protection is off in this configuration. There is nothing to " +
				"test, and the heater must not get power before it is on. Turn it on, and print this list " +
				"again."})
		return s
	case b.in.Printer.Hotend.Watch.On.State == parser.Unknown:
		s.Note += " Whether the protection is on cannot be told from these files, so there are no times " +
			"here: see preflash check."
	case !told:
		s.Note += " Some figures of the protection cannot be told from these files, so there are no times " +
			"here: see preflash check."
	}
	s.add(
		Item{Do: "Power off. Unplug the heater from the board, leave the sensor plugged. Power on.",
			Steps: b.restart()})
	s.add(b.heatingTest(watch))
	if watch.Form != heat.NoWatch {
		s.add(b.dropTest(watch)...)
	}
	s.add(b.sensorTest(), Item{
		Do:     "Power off, plug heater and sensor in again, power on, read the temperatures.",
		Expect: "the room's, as before",
		Steps:  append(b.restart(), b.steps(parser.Task{Kind: parser.TaskReport})...),
	})
	s.add(b.cutOff()...)
	return s
}

// unprotected reports whether the runaway protection is off. One of which that
// cannot be told is not: the test tells it.
func (b *builder) unprotected() bool {
	watch, told := rules.Watch(b.in)
	return told && watch.Form == heat.NoWatch && b.in.Printer.Hotend.Watch.On.State != parser.Unknown
}

// heatingTest asks for heat that cannot come.
func (b *builder) heatingTest(watch heat.Watch) Item {
	item := Item{
		Do:    fmt.Sprintf("Set %s and look at the clock.", unit.Celsius(coldTargetC)),
		Steps: b.heatTo(coldTargetC),
		Else:  "power off; the protection does not act, whatever the files say",
		Note:  []Reading{{"stopped after", "s"}},
	}
	room := b.in.Sheet.Printer.AmbientC.Value
	trip, ok := coldTrip(watch, room)
	switch {
	case watch.Form == heat.NoWatch:
		item.Expect = stops
	case !ok && watch.Form == heat.WindowWatch:
		item.Expect = "nothing: the heating check is off in this configuration, and a heater that never " +
			"warms goes unseen"
		item.Else = ""
	case !ok:
		item.Expect = fmt.Sprintf("nothing within %s: with these figures the heating check is as good as off",
			unit.Seconds(longestS))
		item.Else = ""
	case watch.Form == heat.WindowWatch:
		item.Expect = fmt.Sprintf("after %s (%s that do not come) %s. "+
			"Measure the heater output then: no voltage",
			unit.Seconds(trip), unit.Kelvin(watch.Heating.RiseC), stops)
	default:
		item.Expect = fmt.Sprintf("after about %s (a window of %s without a gain of %s, then an error sum "+
			"of %s) %s. Measure the heater output then: no voltage",
			unit.Seconds(trip), unit.Seconds(watch.Sum.WindowS), unit.Kelvin(watch.Sum.RiseC),
			unit.DegreeSeconds(watch.Sum.LimitCS), stops)
	}
	return item
}

// coldTrip is when a watch trips on a heater that stays at room temperature.
func coldTrip(watch heat.Watch, room float64) (float64, bool) {
	var feed func(t, sensor float64) bool
	switch {
	case watch.Form == heat.ErrorSumWatch:
		feed = watch.Sum.Watch(coldTargetC).Feed
	case watch.Form == heat.WindowWatch && watch.Heating.WindowS > 0:
		feed = watch.Heating.Watch(coldTargetC).Feed
	default:
		return 0, false
	}
	for t := 0.0; t <= longestS; t++ { // both look about once a second
		if feed(t, room) {
			return t, true
		}
	}
	return 0, false
}

// dropTest lets a hotend cool below its target that was warmed from outside.
func (b *builder) dropTest(watch heat.Watch) []Item {
	room := b.in.Sheet.Printer.AmbientC.Value
	target := math.Round((room+warmK)/5) * 5
	p := rules.Plant(b.in)
	p.DutyLimit = 0 // unplugged
	var trip, below float64
	var trips bool
	switch {
	case watch.Form == heat.ErrorSumWatch:
		trip, trips = watch.Sum.TripsAfter(p, heat.Load{}, target)
		below = target - watch.Sum.HysteresisC
	case watch.Drop.PeriodS > 0:
		trip, trips = watch.Drop.TripsAfter(p, heat.Load{}, target)
		below = target - watch.Drop.HysteresisC
	default:
		return []Item{{Do: "The drop check is off in this configuration: a heater that fails at " +
			"temperature goes unseen."}}
	}
	again := Item{Do: "Power off and on again.", Steps: b.restart()}
	if len(again.Steps) > 0 {
		again.Do = "Have the firmware start again."
	}
	if !trips {
		return []Item{{Do: fmt.Sprintf("The drop check cannot be tested this way: it looks only below %s, "+
			"which a hotend warmed by hand hardly sinks to.", unit.Celsius(below))}}
	}
	item := Item{
		Do: fmt.Sprintf("The heater still unplugged, warm the block with a hair dryer until it shows more "+
			"than %s, then set %s and take the dryer away.",
			unit.Celsius(target+5), unit.Celsius(target)),
		Steps: b.heatTo(target),
		Else:  "power off; a heater that fails while it prints would go unseen",
	}
	about := unit.Seconds(math.Round(trip/5) * 5)
	if watch.Form == heat.ErrorSumWatch {
		item.Expect = fmt.Sprintf("below %s the shortfall adds up to %s, and the firmware stops, "+
			"about %s after %s is passed", unit.Celsius(below), unit.DegreeSeconds(watch.Sum.LimitCS), about,
			unit.Celsius(target))
	} else {
		item.Expect = fmt.Sprintf("%s after it has sunk below %s the firmware stops, "+
			"about %s after %s is passed", unit.Seconds(watch.Drop.PeriodS), unit.Celsius(below), about,
			unit.Celsius(target))
	}
	return []Item{again, item}
}

// sensorTest opens the sensor.
func (b *builder) sensorTest() Item {
	l := &b.in.Printer.Limits
	item := Item{
		Do:     "Power off, unplug the sensor too, power on, and ask for heat again.",
		Expect: "the firmware reports a faulty sensor and gives no heat",
		Else:   "power off; a wire that breaks would go unseen (rule sensor-fault)",
		Steps:  append(b.restart(), b.heatTo(coldTargetC)...),
	}
	if l.Trips.State == parser.Off {
		item.Expect = "no word of the sensor: with this definition the firmware looks at neither min nor " +
			"max temp, and only the heating check stops it, as above"
		item.Else = "power off; such a sensor that breaks while it prints may go unseen (rule sensor-fault)"
		return item
	}
	c := b.inForce
	if c == nil {
		return item
	}
	open := c.Open(rules.Converter(b.in))
	if trips := l.MinTemp.Known() && open < l.MinTemp.Value || l.MaxTemp.Known() &&
		open > l.MaxTemp.Value; trips && !l.MinWhileHeating {
		item.Do, item.Steps = "Power off, unplug the sensor too, power on.", b.restart()
		item.Expect = "within seconds and without being asked for heat the firmware stops and reports a " +
			"faulty sensor"
	}
	switch {
	case l.MinTemp.Known() && open < l.MinTemp.Value:
		item.Expect = fmt.Sprintf("it would read %s, below the min temp of %s: %s", atMost(open),
			unit.Celsius(l.MinTemp.Value), item.Expect)
	case l.MaxTemp.Known() && open > l.MaxTemp.Value:
		item.Expect = fmt.Sprintf("it would read %s, above the max temp of %s: %s", atMost(open),
			unit.Celsius(l.MaxTemp.Value), item.Expect)
	}
	late := 0.0
	for i := range l.Graces {
		if g := &l.Graces[i]; g.Known() {
			late = max(late, g.Value)
		}
	}
	if late > 0 {
		item.Expect += fmt.Sprintf(", after its grace time of %s at the latest", unit.Seconds(late))
	}
	return item
}

// atMost keeps an extrapolation from looking like a measurement.
func atMost(tempC float64) string {
	switch {
	case tempC < -100:
		return "far below 0 °C"
	case tempC > 700:
		return "far above 700 °C"
	}
	return "about " + unit.Celsius(math.Round(tempC))
}

// cutOff says what no test of the firmware can show.
func (b *builder) cutOff() []Item {
	rated, by := rules.Rating(b.in)
	end := rules.StuckOn(b.in)
	if end.C <= rated {
		return nil
	}
	return []Item{{
		Do: "See to a cut-off that needs no firmware, such as a thermal fuse on the block.",
		Expect: fmt.Sprintf("without one, an output that stays on by a fault takes this block %s (an upper "+
			"bound), past the %s of the %s", end.Text(), unit.Celsius(rated), by),
	}}
}
