package page

import (
	"fmt"
	"math"

	"preflash/cmd/internal/plot"
	"preflash/parser"
	"preflash/rules"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

// loopLook is how far below the target the plot of the loop begins, K.
const loopLook = 25

// trace is what one set of gains makes of a step to the target.
type trace struct {
	name     string // as the subject of a sentence
	response heat.Response
	samples  []heat.Sample
}

// driven reports whether gains that are known drive a loop, or an on/off control.
func driven(l *parser.Loop) bool {
	switch {
	case !l.Control.Known():
		return false
	case l.Control.Value == parser.ControlPID:
		return l.Kp.Known() && l.Ki.Known() && l.Kd.Known()
	}
	return l.Control.Value != parser.ControlOpen && l.Control.Value != parser.ControlModel
}

// loopFigure compares the gains of the configuration with starting gains.
func loopFigure(s *swap) *figure {
	in := s.before
	if !driven(&in.Printer.Hotend.Loop) {
		return nil
	}
	loop := rules.Loop(in)
	var target float64
	run := func(name string, loop heat.Loop) (t trace) {
		t.name = name
		target, t.response, t.samples = rules.LoopStep(in, loop)
		return t
	}
	own := "the configuration's gains"
	if loop.OnOff {
		own = "on/off control"
	}
	traces := []trace{run(own, loop)}
	note := "No gains for a start can be given: the heater cannot hold this temperature."
	withGains := loop
	withGains.OnOff = false
	if g, ok := rules.StartingGains(in, withGains, target); ok {
		withGains.Kp, withGains.Ki, withGains.Kd = g.Kp, g.Ki, g.Kd
		traces = append(traces, run("the starting gains", withGains))
		note = fmt.Sprintf("Starting gains: kp %s, ki %s, kd %s (SIMC, Skogestad 2003). They begin a tune "+
			"and do not replace it.",
			unit.Gain(g.Kp), unit.Gain(g.Ki), unit.Gain(g.Kd))
	}
	pl := &plot.Plot{
		ID: s.id,
		Desc: "Temperature of the sensor over time on a step from ambient to the target, part fan off, " +
			"from a little below the target on.",
		Y: plot.Axis{Label: "sensor temperature, °C", Include: []float64{target - 10, target + 5}},
		Strips: []plot.Strip{{Name: "steady, within " + unit.Kelvin(heat.SettleBandC), Horizontal: true,
			Low: target - heat.SettleBandC, High: target + heat.SettleBandC}},
		Marks: []plot.Mark{{At: target, Horizontal: true, Name: "target"}},
	}
	from, to, peak := window(traces, target-loopLook)
	pl.X = plot.Axis{Label: "time since the start, s", Low: from, High: to}
	if limit := &in.Printer.Limits.MaxTemp; limit.Known() && limit.Value < peak+5 {
		pl.Marks = append(pl.Marks,
			plot.Mark{At: limit.Value, Horizontal: true, Name: "max temp, shuts down"})
	}
	for i, t := range traces {
		line := plot.Line{Name: t.name, Style: i}
		for _, smp := range t.samples {
			line.Points = append(line.Points, plot.Point{X: smp.TimeS, Y: smp.Sensor})
		}
		pl.Lines = append(pl.Lines, line)
	}
	pl.Y.Low, pl.Y.High = lowest(traces, target), math.Ceil((max(peak, target)+4)/5)*5
	rate(in, pl, &pl.Y, max(peak, target))
	f := figureOf(pl, loopTitle(traces, target), note, assumedNote(in))
	head := []string{"time, s"}
	for _, t := range traces {
		head = append(head, t.name+", °C")
	}
	f.table(head...)
	for _, at := range grid(math.Floor(from), math.Ceil(to), tableStep(to-from)) {
		row := []float64{at}
		for _, t := range traces {
			row = append(row, t.sensorAt(at))
		}
		f.row(1, row...)
	}
	return f
}

// window is the time in which traces are of interest: from when the first
// comes near the target until the last has settled, and the highest peak.
func window(traces []trace, near float64) (from, to, peak float64) {
	from = math.Inf(1)
	for _, t := range traces {
		for _, s := range t.samples {
			if s.Sensor >= near {
				from = min(from, s.TimeS)
				break
			}
		}
		end := t.samples[len(t.samples)-1].TimeS
		if t.response.Settles {
			end = min(end, t.response.SettleS+30)
		}
		to, peak = max(to, end), max(peak, t.response.PeakC)
	}
	if !(from < to) {
		from = 0
	}
	return math.Floor(from/10) * 10, math.Ceil(to/10) * 10, peak
}

// lowest is the bottom of the plot: a little below the target, or as far down
// as a trace sinks after it was near.
func lowest(traces []trace, target float64) float64 {
	low := target - loopLook
	for _, t := range traces {
		if !t.response.Reached {
			low = min(low, t.response.PeakC-loopLook)
		}
	}
	return math.Floor(low/5) * 5
}

func (t *trace) sensorAt(s float64) float64 {
	for i := 1; i < len(t.samples); i++ {
		if a, b := t.samples[i-1], t.samples[i]; b.TimeS >= s {
			return a.Sensor + (b.Sensor-a.Sensor)*(s-a.TimeS)/(b.TimeS-a.TimeS)
		}
	}
	return math.NaN() // it had settled before
}

// tableStep gives a table of some twenty rows.
func tableStep(span float64) float64 {
	for _, step := range []float64{1, 2, 5, 10, 20, 50} {
		if span/step <= 20 {
			return step
		}
	}
	return 100
}

func loopTitle(traces []trace, target float64) string {
	text := fmt.Sprintf("With %s it %s", traces[0].name, does(traces[0].response, target))
	if len(traces) > 1 {
		text += fmt.Sprintf("; with %s it %s", traces[1].name, does(traces[1].response, target))
	}
	return text
}

func does(r heat.Response, target float64) string {
	var text string
	settles := " and is steady after " + unit.Seconds(math.Round(r.SettleS))
	switch {
	case r.Settles && r.OvershootC < 0.05:
		text = fmt.Sprintf("reaches %s without passing it", unit.Celsius(target)) + settles
	case r.Settles:
		text = fmt.Sprintf("passes %s by %s", unit.Celsius(target), unit.Kelvin(r.OvershootC)) + settles
	case r.SwingC > 0:
		text = fmt.Sprintf("passes %s by %s and swings without end, by %s up and down", unit.Celsius(target),
			unit.Kelvin(r.OvershootC), unit.Kelvin(r.SwingC))
	case r.Reached:
		text = fmt.Sprintf("passes %s by %s and does not get steady", unit.Celsius(target),
			unit.Kelvin(r.OvershootC))
	default:
		text = "does not reach " + unit.Celsius(target)
	}
	if r.Trip != heat.NoTrip {
		text += fmt.Sprintf(", and the protection shuts down after %s", unit.Seconds(math.Round(r.TripS)))
	}
	return text
}
