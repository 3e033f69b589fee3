package rules

import (
	"fmt"
	"math"
	"strings"

	"preflash/parser"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

// Limits of sensor-curve, K. Below the first a wrong curve is of no matter;
// above the second it is an error, unless the sensor itself is no better. Its
// own uncertainty counts no further than the third: a bad bead excuses nothing.
// Common practice, no source.
const (
	curveWarnK  = 2
	curveErrorK = 5
	mostBandK   = 6
)

var sensorCurve = &Rule{
	ID:      "sensor-curve",
	Level:   Error,
	Summary: "The firmware reads the sensor by another curve, so the nozzle is hotter or colder than shown.",
	Doc: `Chain: indicated temperature → resistance by the definition → ratio of the
divider with the definition's pull-up → resistance of the real sensor at that
ratio with the real pull-up → actual temperature. A series resistor that the
configuration names is taken to be on the board. Error = actual − indicated.
Curves: Steinhart and Hart 1968 through three points, Beta, Callendar and
Van Dusen with the constants of IEC 60751; a table of the firmware by its rows,
as the style's firmware publishes them, straight in the divider's ratio. Where
two generations differ and the files do not tell which it is, the worse counts.
Band: the sensor's own uncertainty at the top of print_c. NTC: 1 % of R25 and
1 % of B where the sheet says nothing, root of the sum of squares. Platinum:
class B of IEC 60751, 0.3 K + 0.005·|t|, where the sheet says nothing. It counts
up to 6 K.
Error: above both 5 K and the band anywhere in print_c, or hotter than the
lowest rating by more than that while the highest target is indicated.
Warning: above both 2 K and the band up to the highest target; more than 1 K
hotter than shown and above the lowest rating at the highest target, whatever
the band; a table that ends below the top of print_c, where the firmware shuts
down. The limits are common practice, no source.
Where the sheet has no pullup_ohm and the definition is made for another than
4.7 kΩ: one warning with what the error would be on 4.7 kΩ, and no change.
Values: at_c (the top of print_c), actual_c, error_c, band_c, worst_at_c,
worst_error_c (from the bottom of print_c to the highest target). A waiver's
figure: the worst error from there to the top of print_c or the lowest rating.
Change: of the definitions that this firmware has for the kind and the pull-up,
and that show a cold hotend within 10 K of the room, the one with the least
worst error from the bottom of print_c to the highest target; among those within
1 K of it, the one that follows the sheet's curve. Where none will do, a custom
one: R25, B and cubic coefficient by least squares in 1/T, or the sheet's three
points, or three of the curve. A change leaves at most half of the error and
less than 2.5 K or the band; above 20 K it is the best there is and says what it
leaves. Where what it leaves would take the hotend past its rating, the max temp
goes down with it. A wrong pull-up that is a setting of its own is changed too.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		s := &in.Printer.Hotend.Sensor
		if s.State == parser.Unknown {
			report(cannotTell(Warning, s))
			return
		}
		if !s.Known() || kindOf(&s.Value) != in.Sheet.New.Sensor.Kind.Value {
			return
		}
		believed, err := believedCircuits(in)
		if err != nil {
			return
		}
		r, ok := newReading(in, believed[0].SeriesOhm)
		if !ok {
			return
		}
		if own := &in.Printer.Hotend.PullupOhm; own.State == parser.Unknown {
			report(cannotTell(Warning, own))
			return
		}
		if pullupUnsaid(in) {
			report(r.unsaid(in, believed))
			return
		}
		m := r.judge(believed)
		if !m.wrong() {
			return
		}
		fix, repaired := r.repair(in, believed)
		f := Findingf(m.level, sensorAt(in), "%s: %s", curveAction(fix, repaired), r.brief(m)).
			Explain("%s", r.sentence(in, m)+r.fixText(in, fix, repaired))
		f.Partial, f.Harm = repaired && fix.partial, m.harm()
		f = f.With(r.values(m)).Bad(r.figure(believed)).Change(fix.changes...)
		if repaired {
			f = lowered(in, f, fix)
		}
		report(f)
	},
}

// lowered adds to a change of the definition the max temp that goes with it,
// where the configured one would take the hotend past its rating, or would not
// build with the table.
func lowered(in *Input, f Finding, fix repair) Finding {
	c, ok := ceilingOf(in, func(Finding) {})
	if !ok || fix.def.Form == parser.FormUnknown {
		return f
	}
	highest := math.Floor(min(c.maxC, buildsWith(in, fix.def)) + rounding)
	if fix.leaves.overRating {
		highest = min(highest, withinRating(in, c, weakestRating(&in.Sheet.New)))
	}
	if highest >= math.Floor(c.maxC) {
		return f
	}
	f.Message += "; lower the max temp to " + unit.Celsius(highest) + " too"
	return f.Change(in.Printer.Limits.MaxTemp.To(highest))
}

// reading is the real sensor and what the sheet demands of it.
type reading struct {
	sensor.Demand
	ratedC float64 // of the weakest part
	limitC float64 // the highest target; NaN where it is unknown
	bandK  float64
}

// newReading is what the sheet asks of its sensor, on the board as it is; false
// where the sheet's sensor has no curve.
func newReading(in *Input, seriesOhm float64) (*reading, bool) {
	n := &in.Sheet.New
	curve, err := sensor.OfSheet(&n.Sensor)
	if err != nil || sheetCurveKind(&n.Sensor) != n.Sensor.Kind.Value {
		return nil, false
	}
	r := &reading{
		Demand: sensor.Demand{
			Real:  &sensor.Circuit{Curve: curve, PullupOhm: boardPullup(in), SeriesOhm: seriesOhm},
			Kind:  n.Sensor.Kind.Value,
			LowC:  n.PrintC.Value[0],
			HighC: n.PrintC.Value[1],
			ColdC: in.Sheet.Printer.AmbientC.Value,
		},
		ratedC: weakestRating(n).C, limitC: math.NaN(),
	}
	if c := &n.Sensor.Curve; c.Given {
		r.Curve = c.Value
	}
	if ownPullup(in) {
		r.SeriesOhm = seriesOhm
	}
	r.bandK = bandAt(in, curve, r.HighC)
	r.TopC = r.HighC
	if limitC, ok := HighestTarget(in); ok {
		r.limitC = limitC
		r.TopC = max(r.TopC, limitC)
	}
	return r, true
}

// bandAt is the uncertainty of the sheet's sensor itself at a temperature, K.
func bandAt(in *Input, c sensor.Curve, tempC float64) float64 {
	s := &in.Sheet.New.Sensor
	if s.Kind.Value != parser.Platinum {
		return sensor.NTCBand(c, tempC, s.R25Tolerance.Value, s.BetaTolerance.Value)
	}
	if !s.R25Tolerance.Given {
		return sensor.PlatinumBand(tempC)
	}
	return sensor.NTCBand(c, tempC, s.R25Tolerance.Value, 0) // platinum has no B
}

// tolerated is a limit, or the sensor's own uncertainty where that is more.
func (r *reading) tolerated(limitK float64) float64 { return max(limitK, min(r.bandK, mostBandK)) }

// misreading is what a definition makes of the real sensor.
type misreading struct {
	believed     *sensor.Circuit
	level        Level   // Note: nothing is wrong
	actualC      float64 // at the top of print_c
	worstAtC     float64
	worstK       float64 // actual − indicated, from the bottom of print_c to the highest target
	rangeK       float64 // its size; infinite where the definition ends below the top of print_c
	limitActualC float64
	overRating   bool // the highest target takes the hotend past its rating
	short        bool // the table ends below the top of print_c
}

// figure is the worst error from the bottom of print_c to its top or the rating,
// whatever the highest target is: a change of the limits does not move it.
func (r *reading) figure(believed []*sensor.Circuit) Figure {
	f := Figure{Unit: "K", Worse: Higher}
	for _, c := range believed {
		_, worstK := c.Worst(r.Real, r.LowC, max(r.HighC, r.ratedC))
		f.Value = max(f.Value, math.Abs(worstK))
	}
	return f
}

func (m *misreading) wrong() bool { return m.level != Note }

// harm says where in the order of danger the misreading stands.
func (m *misreading) harm() string {
	switch {
	case m.overRating:
		return pastRating
	case m.worstK > 0:
		return overShown
	}
	return ""
}

// judge holds a definition against the sensor; of several the worst counts.
func (r *reading) judge(believed []*sensor.Circuit) (worst misreading) {
	for i, c := range believed {
		m := r.judgeOne(c)
		if i == 0 || m.level > worst.level || m.level == worst.level && m.rangeK > worst.rangeK {
			worst = m
		}
	}
	return worst
}

func (r *reading) judgeOne(c *sensor.Circuit) misreading {
	m := misreading{believed: c, short: !c.Reaches(r.HighC), actualC: c.Actual(r.Real, r.HighC)}
	_, printing := c.Worst(r.Real, r.LowC, r.HighC)
	m.worstAtC, m.worstK = c.Worst(r.Real, r.LowC, r.TopC)
	m.rangeK = math.Abs(m.worstK)
	overBy := 0.0
	if !math.IsNaN(r.limitC) {
		limitC := r.limitC
		if c.Ends() {
			limitC = min(limitC, c.HighC)
		}
		m.limitActualC = c.Actual(r.Real, limitC)
		// Without an error of its own, a limit above the rating is temp-ceiling's.
		if m.limitActualC-limitC > HotterK {
			overBy = m.limitActualC - r.ratedC
		}
	}
	m.overRating = overBy > 0
	switch {
	case math.Abs(printing) > r.tolerated(curveErrorK), overBy > r.tolerated(curveErrorK):
		m.level = Error
	case m.rangeK > r.tolerated(curveWarnK), m.overRating, m.short:
		m.level = Warning
	}
	if m.short {
		m.rangeK = math.Inf(1)
	}
	return m
}

func (r *reading) values(m misreading) Values {
	return Values{
		"at_c": r.HighC, "actual_c": m.actualC, "error_c": m.actualC - r.HighC, "band_c": r.bandK,
		"worst_at_c": m.worstAtC, "worst_error_c": m.worstK,
	}
}

// curveAction says what to do about a definition that reads the sensor wrong.
func curveAction(fix repair, repaired bool) string {
	switch {
	case repaired:
		return "correct the sensor definition"
	case fix.waits:
		return "lower the max temp first"
	}
	return "fit a sensor that this firmware can read"
}

// brief says in a few words how far off a reading is.
func (r *reading) brief(m misreading) string {
	text := ""
	switch d := m.actualC - r.HighC; {
	case m.short:
		text = fmt.Sprintf("its table ends at %s, below the %s that the sheet asks for",
			unit.Celsius(m.believed.HighC), unit.Celsius(r.HighC))
	case math.Abs(d) > 0.05:
		text = fmt.Sprintf("%s shown is %s at the nozzle, %s", unit.Celsius(r.HighC), unit.Celsius(m.actualC),
			hotter(d))
	default:
		text = fmt.Sprintf("at %s the nozzle is %s than shown", unit.Celsius(m.worstAtC), hotter(m.worstK))
	}
	if m.overRating {
		text += fmt.Sprintf("; at the highest target it is at %s, above its rating of %s",
			unit.Celsius(m.limitActualC), unit.Celsius(r.ratedC))
	}
	return text
}

func (r *reading) sentence(in *Input, m misreading) string {
	var b strings.Builder
	b.WriteString("the firmware reads the sensor as " + definition(&in.Printer.Hotend.Sensor.Value))
	name := sheetSensor(&in.Sheet.New.Sensor)
	if p := m.believed.PullupOhm; math.Abs(p-r.Real.PullupOhm) > sensor.PullupTolerance*p {
		fmt.Fprintf(&b, " with a pull-up of %s, the board has %s and the sensor is %s", unit.Ohms(p),
			pullupText(in), name)
	} else {
		b.WriteString(", and it is " + name)
	}
	if m.short {
		fmt.Fprintf(&b,
			"; its table ends at %s, where the firmware shuts down: below the %s that the sheet asks for",
			unit.Celsius(m.believed.HighC), unit.Celsius(r.HighC))
	} else {
		fmt.Fprintf(&b, ": %s indicated is %s actual", unit.Celsius(r.HighC), unit.Celsius(m.actualC))
		if d := m.actualC - r.HighC; math.Abs(d) > 0.05 {
			fmt.Fprintf(&b, ", %s than shown", hotter(d))
		}
	}
	if m.worstAtC != r.HighC || m.short {
		fmt.Fprintf(&b, "; worst at %s: %s", unit.Celsius(m.worstAtC), hotter(m.worstK))
	}
	fmt.Fprintf(&b, " (the sensor itself is good for ±%s)", unit.Kelvin(r.bandK))
	if m.overRating {
		fmt.Fprintf(&b, "; at the highest target, %s, the hotend is at %s, above its rating of %s",
			unit.Celsius(r.limitC), unit.Celsius(m.limitActualC), unit.Celsius(r.ratedC))
	}
	if in.Printer.Hotend.Sensor.Value.Or != nil {
		b.WriteString("; the files do not tell which generation of the firmware reads it, and the worse " +
			"counts")
	}
	b.WriteString(noteOn(&in.Printer.Hotend.Sensor.Value))
	return b.String()
}

// hotter says an error with its direction.
func hotter(d float64) string {
	if d < 0 {
		return unit.Kelvin(-d) + " colder"
	}
	return unit.Kelvin(d) + " hotter"
}

// unsaid is the warning that a definition for another pull-up than the usual
// one asks for a figure of the sheet.
func (r *reading) unsaid(in *Input, believed []*sensor.Circuit) Finding {
	usual := *r
	usual.Real = &sensor.Circuit{Curve: r.Real.Curve, PullupOhm: sensor.UsualPullupOhm,
		SeriesOhm: r.Real.SeriesOhm}
	m := usual.judge(believed)
	own := r.judge(believed)
	made, common := unit.Ohms(r.Real.PullupOhm), unit.Ohms(sensor.UsualPullupOhm)
	f := Findingf(Warning, sensorAt(in),
		"give printer.pullup_ohm: the definition %s is made for a pull-up of %s; on %s, %s shown would be "+
			"%s at the nozzle, %s",
		definition(&in.Printer.Hotend.Sensor.Value), made, common, unit.Celsius(r.HighC),
		unit.Celsius(m.actualC), hotter(m.actualC-r.HighC))
	text := "the sheet does not say what the board has"
	if own.wrong() {
		text += fmt.Sprintf(" (on %s it would be %s)", made, unit.Celsius(own.actualC))
	}
	text += fmt.Sprintf("; the cold hotend tells: in a room of %s it shows %s on %s, and %s on %s",
		unit.Celsius(r.ColdC), unit.Celsius(own.believed.Indicated(r.Real, r.ColdC)), made,
		unit.Celsius(m.believed.Indicated(usual.Real, r.ColdC)), common)
	return f.Explain("%s", text).With(usual.values(m))
}
