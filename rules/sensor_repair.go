package rules

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"preflash/parser"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

// What sensor-curve, sensor-kind and sensor-placeholder would have the firmware
// read the sheet's sensor by.

// hopelessK is the error, K, above which the best there is beats what is there,
// whatever it leaves: common practice, no source.
const hopelessK = 20

// repair is what makes the firmware read the sensor right, or as right as can be.
type repair struct {
	changes []parser.Change
	def     parser.SensorDef
	leaves  misreading
	partial bool   // something is left that the rule still speaks of
	reason  string // why there is none that is better
	waits   bool   // none is needed once the max temp is lowered
}

// repair returns the smallest changes that leave at most half of an error and
// little of it; false where there are none.
func (r *reading) repair(in *Input, believed []*sensor.Circuit) (repair, bool) {
	r = r.afterChanges(in)
	m := r.judge(believed)
	if !m.wrong() {
		return repair{waits: true}, false
	}
	var pullup []parser.Change
	if ownPullup(in) && believed[0].PullupOhm != r.Real.PullupOhm {
		pullup = append(pullup, in.Printer.Hotend.PullupOhm.To(r.Real.PullupOhm))
		right := make([]*sensor.Circuit, len(believed))
		for i, c := range believed {
			moved := *c
			moved.PullupOhm = r.Real.PullupOhm
			right[i] = &moved
		}
		if leaves := r.judge(right); !leaves.wrong() {
			return repair{changes: pullup, leaves: leaves}, true
		}
	}
	fix := r.best(in)
	switch {
	case fix.def.Form == parser.FormUnknown:
		return fix, false
	case fix.leaves.rangeK < r.tolerated(sensor.LeavesK) && fix.leaves.rangeK <= m.rangeK/2:
	case m.rangeK > hopelessK && fix.leaves.rangeK < m.rangeK:
	default:
		return fix, false
	}
	fix.changes = append(pullup, in.Printer.Hotend.Sensor.To(fix.def))
	fix.partial = fix.leaves.wrong()
	return fix, true
}

// afterChanges is what the sheet demands of the sensor once the max temp is where its ratings
// and print_c want it: a definition is not chosen for targets that go.
func (r *reading) afterChanges(in *Input) *reading {
	c, ok := ceilingOf(in, func(Finding) {})
	if !ok {
		return r
	}
	c.buildsC = math.Inf(1) // of the configured definition
	after := *r
	after.limitC = c.afterChanges(&in.Sheet.New).targetC()
	after.TopC = max(after.HighC, after.limitC)
	return &after
}

// best is the definition of the sheet's sensor that the firmware should have:
// one that it carries, else a custom one, else the better of the two that leave
// more than they should. Its form is FormUnknown where there is none. One that
// would hide a broken sensor, where the configured definition does not, is
// passed over.
func (r *reading) best(in *Input) repair {
	r = r.afterChanges(in)
	limits := limitsOf(in)
	configured, err := believedCircuits(in)
	mayBeBlind := err == nil && limits.blind(configured)
	seen := func(c sensor.Candidate) bool { return mayBeBlind || !limits.blind(c.Believed) }
	var able []parser.SensorDef
	for _, d := range in.Config.Definitions() {
		if c, ok := r.Judge(d); ok && seen(c) {
			able = append(able, d)
		}
	}
	carried, has := r.Best(able)
	if has && math.Abs(carried.WorstK) < r.tolerated(sensor.LeavesK) {
		return r.fix(carried)
	}
	d, err := r.custom(in)
	if err == nil {
		if c, ok := r.Judge(d); ok && seen(c) && (!has || math.Abs(c.WorstK) < math.Abs(carried.WorstK)) {
			return r.fix(c)
		}
		err = fmt.Errorf("a custom one does not read it right either")
	}
	if !has {
		return repair{reason: err.Error()}
	}
	fix := r.fix(carried)
	fix.reason = err.Error()
	return fix
}

func (r *reading) fix(c sensor.Candidate) repair {
	return repair{def: c.Def, leaves: r.judge(c.Believed)}
}

// custom fits a definition that a person can write out in full.
func (r *reading) custom(in *Input) (parser.SensorDef, error) {
	d := parser.SensorDef{
		Form: in.Config.CustomForm(), Kind: r.Kind, Name: "",
		PullupOhm: r.Real.PullupOhm, SeriesOhm: r.SeriesOhm,
	}
	var err error
	switch {
	case d.Form == parser.FormPoints && d.Kind == parser.Platinum:
		d.Name, d.Join, d.Points = r.Curve, parser.JoinOhm, sensor.TablePoints(r.Real.Curve, r.TopC)
	case d.Kind != parser.NTC:
		err = fmt.Errorf("a custom one is for beads alone")
	case d.Form == parser.FormPoints:
		d.Name = r.Curve
		err = r.customPoints(in, &d)
	case in.Printer.Hotend.CustomCubic:
		d.R25Ohm, d.BetaK, d.CubicC, err = sensor.FitBeta(r.Real.Curve, r.LowC, r.TopC)
	default:
		d.R25Ohm, d.BetaK, err = sensor.FitPlainBeta(r.Real.Curve, r.LowC, r.HighC, r.TopC)
	}
	return d, err
}

// customPoints gives a definition the sheet's own three points, its Beta, or
// three points of its curve: firmware draws a cubic curve only where the
// coefficient is above 0, and gets the nearest Beta where it would not be.
func (r *reading) customPoints(in *Input, d *parser.SensorDef) error {
	s := &in.Sheet.New.Sensor
	if s.Points.Given && !s.Curve.Given && len(s.Points.Value) == 3 && sensor.Bends(r.Real.Curve) {
		d.Points = slices.SortedFunc(slices.Values(s.Points.Value),
			func(a, b parser.SensorPoint) int { return cmp.Compare(a.TempC, b.TempC) })
		return nil
	}
	if r25Ohm, betaK, ok := sensor.IsBeta(r.Real.Curve); ok {
		d.Form, d.R25Ohm, d.BetaK = parser.FormBeta, r25Ohm, betaK
		return nil
	}
	var err error
	if d.Points, err = sensor.FitPoints(r.Real.Curve, r.LowC, r.TopC); err == nil {
		return nil
	}
	d.Form = parser.FormBeta
	d.R25Ohm, d.BetaK, err = sensor.FitPlainBeta(r.Real.Curve, r.LowC, r.HighC, r.TopC)
	return err
}

// fixText says what a change leaves and rests on, or why there is none.
func (r *reading) fixText(in *Input, fix repair, repaired bool) string {
	if !repaired {
		switch {
		case fix.waits:
			return "; up to the highest target that the max temp should leave, it is right"
		case fix.def.Form == parser.FormUnknown:
			return "; this firmware has no definition that reads it right: " + orNone(fix.reason) +
				r.otherwise()
		case fix.def.Name != "" && fix.def.Name == in.Printer.Hotend.Sensor.Value.Name:
			return "; this firmware has no better definition" + r.otherwise()
		}
		return fmt.Sprintf("; this firmware has no definition that reads it better by half: the best is "+
			"%s, %s off%s",
			definitionOr(&fix.def), unit.Kelvin(fix.leaves.rangeK), r.otherwise())
	}
	text := ""
	if fix.partial || fix.leaves.rangeK >= curveWarnK {
		text = "; the change "
		if fix.partial || fix.leaves.rangeK >= r.tolerated(sensor.LeavesK) { // else no other was looked for
			text += "is the best there is and "
		}
		text += "leaves " + unit.Kelvin(fix.leaves.rangeK)
		if n := noteOn(&fix.def); n != "" {
			text += n
		}
	}
	return text + r.offCold(in, &fix.def) + restsOn(in)
}

// otherwise is what to do where no definition reads the sensor right.
func (r *reading) otherwise() string {
	if r.Kind == parser.Platinum {
		return "; put in an amplifier or a converter chip for it, or another sensor"
	}
	return "; put in a sensor that it knows"
}

func orNone(reason string) string {
	if reason == "" {
		return "none will do for this kind and pull-up"
	}
	return reason
}

// definitionOr names a definition, or says that it is one to be written out.
func definitionOr(d *parser.SensorDef) string {
	if d.Name == "" {
		return "a custom one"
	}
	return definition(d)
}

// restsOn says what a proposed definition takes for granted.
func restsOn(in *Input) string {
	if in.Sheet.Printer.PullupOhm.Given {
		return ""
	}
	return "; the change takes the board's pull-up to be " + pullupText(in)
}

// offCold says what a custom definition that is proposed shows on a cold
// hotend, where that is off.
func (r *reading) offCold(in *Input, d *parser.SensorDef) string {
	if d.Form != parser.FormBeta {
		return ""
	}
	c, err := sensor.OfDef(d)
	if err != nil || math.Abs(c.Indicated(r.Real, r.ColdC)-r.ColdC) <= curveWarnK {
		return ""
	}
	why := "since nothing shows that this firmware reads one"
	if in.Config.CustomForm() == parser.FormPoints {
		why = "since this firmware draws no cubic curve through three points of this sensor"
	}
	return fmt.Sprintf("; the change is a Beta without a cubic term, %s: it shows %s at %s",
		why, unit.Celsius(c.Indicated(r.Real, r.ColdC)), unit.Celsius(r.ColdC))
}
