package rules

import (
	"fmt"
	"math"
	"strings"

	"preflash/parser"
	"preflash/rules/sensor"
)

// Limits of sensor-curve, K. Below the first a wrong curve is of no matter;
// above the second it is an error, unless the sensor itself is no better.
// Common practice, no source.
const (
	curveWarnK  = 2
	curveErrorK = 5
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
Van Dusen with the constants of IEC 60751.
Band: the sensor's own uncertainty at the top of print_c. NTC: 1 % of R25 and
1 % of B where the sheet says nothing, root of the sum of squares. Platinum:
class B of IEC 60751, 0.3 K + 0.005·|t|, where the sheet says nothing.
Error: above both 5 K and the band anywhere in print_c, or hotter than rated_c
by more than that while the highest target is indicated; also a table that ends
below the top of print_c or the highest target, where the reading stands still
while the hotend gets hotter.
Warning: above 2 K. Both limits are common practice, no source.
Values: at_c (the top of print_c), actual_c, error_c, band_c, worst_at_c,
worst_error_c.
Note: the definition fits, but versions of the firmware may differ.
Change: the style's own definition of the curve; where it has none, a custom
one: R25, B and cubic coefficient by least squares in 1/T, or three points.
Where nothing shows that the firmware reads a cubic coefficient, R25 and B
alone, over print_c and the highest target. A wrong pull-up that is a setting of
its own is changed too. A change is proposed only where it leaves less than 2 K.`,
	Check: func(in *Input, report func(Finding)) {
		s := &in.Printer.Hotend.Sensor
		if s.State == parser.Unknown {
			report(cannotTell(Warning, s))
			return
		}
		believed, real, ok := hotendCircuits(in)
		if !ok {
			return
		}
		if own := &in.Printer.Hotend.PullupOhm; own.State == parser.Unknown {
			report(cannotTell(Warning, own))
			return
		}
		r := newReading(in, real)
		m := r.judge(believed)
		if !m.wrong() {
			if s.Value.Doubt != "" {
				report(Sayf(Note, sensorAt(in), "the sensor definition %s is taken for %s: %s", s.Value.Name, s.Value.Curve, s.Value.Doubt))
			}
			return
		}
		changes := r.repairs(in, believed)
		f := Sayf(m.level, sensorAt(in), "%s", r.sentence(in, m, believed, changes != nil)+r.offCold(in, changes))
		report(f.With(Values{
			"at_c": r.highC, "actual_c": m.actualC, "error_c": m.actualC - r.highC, "band_c": r.bandK,
			"worst_at_c": m.worstAtC, "worst_error_c": m.worstK,
		}).Change(changes...))
	},
}

// reading is the real sensor and what is asked of it.
type reading struct {
	real        *sensor.Circuit
	lowC, highC float64 // print_c
	ratedC      float64
	limitC      float64 // the highest target; NaN where it cannot be told
	bandK       float64
}

func newReading(in *Input, real *sensor.Circuit) *reading {
	n := &in.Sheet.New
	r := &reading{
		real: real, lowC: n.PrintC.Value[0], highC: n.PrintC.Value[1], ratedC: n.RatedC.Value,
		limitC: math.NaN(),
	}
	r.bandK = bandAt(in, real.Curve, r.highC)
	if limitC, ok := HighestTarget(in); ok {
		r.limitC = limitC
	}
	return r
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

// topC is the highest temperature that can be asked for, as far as that can be
// told.
func (r *reading) topC() float64 {
	if r.limitC > r.highC {
		return r.limitC
	}
	return r.highC
}

// misreading is what a definition makes of the real sensor.
type misreading struct {
	level        Level   // Note: nothing is wrong
	actualC      float64 // at the top of print_c
	worstAtC     float64
	worstK       float64 // actual − indicated
	limitActualC float64
	overRating   bool // the highest target takes the hotend past its rating
	stuck        bool // the table ends below what can be asked for
}

func (m *misreading) wrong() bool { return m.level != Note }

// off reports whether readings are off, not only stuck.
func (m *misreading) off() bool { return math.Abs(m.worstK) > curveWarnK || m.overRating }

func (r *reading) judge(believed *sensor.Circuit) (m misreading) {
	const steps = 16
	for i := range steps + 1 {
		t := r.lowC + (r.highC-r.lowC)*float64(i)/steps
		if i == steps {
			t = r.highC
		}
		actual := believed.Actual(r.real, t)
		if d := actual - t; i == 0 || math.Abs(d) > math.Abs(m.worstK) {
			m.worstAtC, m.worstK = t, d
		}
		m.actualC = actual
	}
	tolerated := max(curveErrorK, r.bandK)
	if !math.IsNaN(r.limitC) {
		m.limitActualC = believed.Actual(r.real, r.limitC)
		// Without an error of its own, a limit above the rating is temp-ceiling's.
		m.overRating = m.limitActualC-r.limitC > curveWarnK && m.limitActualC > r.ratedC+tolerated
	}
	m.stuck = believed.HighC > believed.LowC && believed.HighC-tableTopK < r.highC-rounding
	switch worst := math.Abs(m.worstK); {
	case worst > tolerated || m.overRating || m.stuck:
		m.level = Error
	case worst > curveWarnK:
		m.level = Warning
	}
	return m
}

func (r *reading) sentence(in *Input, m misreading, believed *sensor.Circuit, repaired bool) string {
	var b strings.Builder
	b.WriteString("the firmware reads the sensor as " + definition(&in.Printer.Hotend.Sensor.Value))
	name := sheetSensor(&in.Sheet.New.Sensor)
	if math.Abs(believed.PullupOhm-r.real.PullupOhm) > 1e-3*r.real.PullupOhm {
		assumed := ""
		if !in.Sheet.Printer.PullupOhm.Given {
			assumed = " (assumed: the sheet does not say)"
		}
		fmt.Fprintf(&b, " with a pull-up of %s, the board has %s%s and the sensor is %s",
			ohms(believed.PullupOhm), ohms(r.real.PullupOhm), assumed, name)
	} else if m.off() {
		b.WriteString(", but it is " + name)
	}
	if m.stuck {
		fmt.Fprintf(&b, "; its table ends at %s: the firmware switches the heater off at %s and stops above that, whatever the max temp says",
			celsius(believed.HighC), celsius(believed.HighC-tableTripK))
	}
	if m.off() {
		fmt.Fprintf(&b, ": %s indicated is %s actual, %s than shown",
			celsius(r.highC), celsius(m.actualC), hotter(m.actualC-r.highC))
		if m.worstAtC != r.highC {
			fmt.Fprintf(&b, "; worst at %s: %s", celsius(m.worstAtC), hotter(m.worstK))
		}
		fmt.Fprintf(&b, " (the sensor itself is good for ±%s)", kelvin(r.bandK))
	}
	if m.overRating {
		fmt.Fprintf(&b, "; at the highest target, %s, the hotend is at %s, above its rating of %s",
			celsius(r.limitC), celsius(m.limitActualC), celsius(r.ratedC))
	}
	if !repaired {
		b.WriteString("; this style has no definition that reads it right")
	}
	b.WriteString(noteOn(&in.Printer.Hotend.Sensor.Value))
	return b.String()
}

// offCold says what a custom definition that is proposed shows on a cold
// hotend, where that is off.
func (r *reading) offCold(in *Input, changes []parser.Change) string {
	for _, c := range changes {
		d, ok := c.Value.(parser.SensorDef)
		if !ok || d.Form != parser.FormBeta {
			continue
		}
		proposed, err := sensor.OfDef(&d)
		ambientC := in.Sheet.Printer.AmbientC.Value
		if err != nil || math.Abs(proposed.Indicated(r.real, ambientC)-ambientC) <= curveWarnK {
			continue
		}
		return fmt.Sprintf("; the change is a Beta without a cubic term, since nothing shows that this firmware reads one: it is right while printing, and shows %s at %s",
			celsius(proposed.Indicated(r.real, ambientC)), celsius(ambientC))
	}
	return ""
}

// hotter says an error with its direction.
func hotter(d float64) string {
	if d < 0 {
		return kelvin(-d) + " colder"
	}
	return kelvin(d) + " hotter"
}

// repairs returns the smallest changes after which nothing is wrong, or nil.
// Every proposal is judged as the configuration was.
func (r *reading) repairs(in *Input, believed *sensor.Circuit) []parser.Change {
	var pullup []parser.Change
	if ownPullup(in) && believed.PullupOhm != r.real.PullupOhm {
		pullup = append(pullup, in.Printer.Hotend.PullupOhm.To(r.real.PullupOhm))
		right := *believed
		right.PullupOhm = r.real.PullupOhm
		if m := r.judge(&right); !m.wrong() {
			return pullup
		}
	}
	if d, ok := r.bestDefinition(in); ok {
		return append(pullup, in.Printer.Hotend.Sensor.To(d))
	}
	return nil
}

// bestDefinition is the definition of the sheet's sensor that the style should
// have: its own of that curve, else a custom one. False where neither reads
// the sensor right. One that would hide a broken sensor, where the definition
// in force does not, is passed over.
func (r *reading) bestDefinition(in *Input) (parser.SensorDef, bool) {
	var candidates []parser.SensorDef
	if c := &in.Sheet.New.Sensor.Curve; c.Given {
		if d, ok := in.Style.Defines(c.Value, r.real.PullupOhm); ok {
			candidates = append(candidates, d)
		}
	}
	if d, ok := r.custom(in); ok {
		candidates = append(candidates, d)
	}
	limits := limitsOf(in)
	inForce, err := believedCircuit(in)
	mayBeBlind := err == nil && limits.blind(inForce)
	for _, d := range candidates {
		if ownPullup(in) {
			// The sensor's definition leaves the board's resistors alone.
			d.PullupOhm, d.SeriesOhm = r.real.PullupOhm, r.real.SeriesOhm
		}
		c, err := sensor.OfDef(&d)
		if err != nil {
			continue
		}
		if m := r.judge(c); !m.wrong() && (mayBeBlind || !limits.blind(c)) {
			return d, true
		}
	}
	return parser.SensorDef{}, false
}

// custom fits a definition that a person can write out in full.
func (r *reading) custom(in *Input) (parser.SensorDef, bool) {
	d := parser.SensorDef{
		Form: in.Style.CustomForm(), Kind: in.Sheet.New.Sensor.Kind.Value,
		PullupOhm: r.real.PullupOhm, SeriesOhm: r.real.SeriesOhm,
	}
	if d.Kind != parser.NTC {
		return d, false
	}
	var err error
	switch d.Form {
	case parser.FormBeta:
		if in.Printer.Hotend.CustomCubic {
			d.R25Ohm, d.BetaK, d.CubicC, err = sensor.FitBeta(r.real.Curve, r.lowC, r.highC)
		} else {
			d.R25Ohm, d.BetaK, err = sensor.FitPlainBeta(r.real.Curve, r.lowC, r.highC, r.limitC)
		}
	case parser.FormPoints:
		d.Name = in.Sheet.New.Sensor.Curve.Value
		d.Points, err = sensor.FitPoints(r.real.Curve, r.lowC, r.highC)
	default:
		return d, false
	}
	return d, err == nil
}
