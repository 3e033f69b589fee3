package sensor

import (
	"math"

	"preflash/parser"
)

// Choice is the definition that a style should use for a measured sensor.
type Choice struct {
	Def   parser.SensorDef
	Curve string // the known curve that Def stands for; "" where it was made from a fit
	Errors
	TopErrorK float64
	// The error at the top of the range, were the sensor any of the known curves
	// that the points allow: from LeastTopK to MostTopK.
	LeastTopK, MostTopK float64
	// PullupK is how far off the top of the range reads where the pull-up is
	// set beside Def and stays what firmware usually assumes.
	PullupK float64
}

// Answer is what Choose can tell.
type Answer uint8

const (
	Chosen Answer = iota
	None          // the style has no definition, and none can be written out for it
	Untold        // the points do not tell
)

// Choose returns the definition that reads the measured points and the top of
// the range best, of those that every firmware of a style has, else a custom
// one. The sensor hangs on a pull-up of boardOhm. Untold comes with the likeliest
// definition, which is not to be used.
func (r *Ranking) Choose(config parser.Config, boardOhm float64) (Choice, Answer) {
	if r.Odd >= 0 || r.Reference == "" && !r.FitHolds() || r.Reference != "" && !r.Curves[0].Possible {
		return Choice{}, Untold
	}
	c, ok := r.likeliest(config, boardOhm)
	switch {
	case !ok:
		return Choice{}, None
	case max(-c.LeastTopK, c.MostTopK) > mostOffK, !r.agrees():
		return c, Untold
	}
	return c, Chosen
}

// agrees reports whether the reference goes so well with the hottest points that
// it may be right at the top of the range, were the sensor none of the known:
// what it is off there, on a straight line from 0 °C, and what the thermometer
// may be, are together no more than a definition may be off.
func (r *Ranking) agrees() bool {
	hottest := math.Inf(-1)
	for _, p := range r.Points {
		hottest = max(hottest, p.TempC)
	}
	var sum, n float64
	for _, p := range r.Points {
		if p.TempC >= hottest-usualRangeK/2 {
			sum, n = sum+p.TempC-r.reference.TempC(p.Ohm), n+1
		}
	}
	share := min(max(hottest/r.TopC, 0), 1)
	return math.Abs(sum/n) <= share*(mostOffK-r.Thermometer.OffK/math.Sqrt(n))
}

// likeliest is the choice for the reference.
func (r *Ranking) likeliest(config parser.Config, boardOhm float64) (Choice, bool) {
	kind := parser.NTC
	if r.R0Ohm != 0 {
		kind = parser.Platinum
	}
	demand := Demand{
		Real: &Circuit{Curve: r.reference, PullupOhm: boardOhm}, Kind: kind, Curve: r.Reference,
		LowC: r.TopC - usualRangeK, HighC: r.TopC, TopC: r.TopC, ColdC: usualRoomC,
	}
	var fit []parser.SensorDef
	beside := false // the pull-up is a setting of its own
	for _, d := range config.Definitions() {
		beside = beside || d.PullupOhm == 0
		c, ok := demand.Judge(d)
		if !ok || math.Abs(c.WorstK) > LeavesK {
			continue
		}
		if choice, ok := r.choice(c.Def, d.Curve, boardOhm, false); ok && r.serves(choice.AtPointsK) {
			fit = append(fit, d)
		}
	}
	if best, ok := demand.Best(fit); ok {
		return r.choice(best.Def, best.Def.Curve, boardOhm, beside)
	}
	d := parser.SensorDef{Form: config.CustomForm(), Kind: parser.NTC, PullupOhm: boardOhm}
	from, ok := r.custom(&d)
	if !ok {
		return Choice{}, false
	}
	return r.choice(d, from, boardOhm, true)
}

// serves reports whether a definition with these errors at the points will do:
// near printing temperatures its own error and that of the thermometer may add
// up, and a cold hotend it must show near the room.
func (r *Ranking) serves(atPointsK []float64) bool {
	for i, e := range atPointsK {
		off := farOff * r.Thermometer.Off(r.Points[i].TempC)
		allowed := coldWithinK + off
		if r.Points[i].TempC >= r.TopC-usualRangeK {
			allowed = LeavesK + off
		}
		if math.Abs(e) > allowed {
			return false
		}
	}
	return true
}

// custom writes out the reference curve in the form that d has.
func (r *Ranking) custom(d *parser.SensorDef) (from string, ok bool) {
	if r.R0Ohm != 0 {
		return "", false // no style writes platinum out
	}
	var err error
	fit := r.Fit()
	switch known := r.Reference != ""; {
	case known && d.Form == parser.FormBeta:
		d.R25Ohm, d.BetaK, d.CubicC, err = FitBeta(r.reference, r.TopC-usualRangeK, r.TopC)
	case known && d.Form == parser.FormPoints:
		d.Points, err = FitPoints(r.reference, r.TopC-usualRangeK, r.TopC)
	case fit != nil && d.Form == parser.FormBeta:
		d.R25Ohm, d.BetaK, d.CubicC = fit.R25Ohm, fit.BetaK, fit.Cubic
		return "", true
	case fit != nil && d.Form == parser.FormPoints:
		d.Points = fit.Points
		return "", true
	default:
		return "", false
	}
	return r.Reference, err == nil
}

// usualRangeK is how wide a printing range is (common practice, no source).
const usualRangeK = 100

// usualRoomC is a room, °C (common practice, no source).
const usualRoomC = 22

// choice judges a definition by the measured points, with the right pull-up.
// False where it stands for no curve, or its table ends below the top. beside:
// the pull-up is set beside the definition.
func (r *Ranking) choice(d parser.SensorDef, curve string, boardOhm float64, beside bool) (Choice, bool) {
	believed, err := OfDef(&d)
	if err != nil || !believed.Reaches(r.TopC) {
		return Choice{}, false
	}
	c := Choice{Def: d, Curve: curve, TopErrorK: r.topError(believed.Curve)}
	c.LeastTopK, c.MostTopK = c.TopErrorK, c.TopErrorK
	for _, k := range r.Possible() {
		e := topError(k.Curve, believed.Curve, r.TopC)
		c.LeastTopK, c.MostTopK = min(c.LeastTopK, e), max(c.MostTopK, e)
	}
	c.Errors = errorsAt(r.Points,
		func(ohm float64) float64 { return believed.saturate(believed.Curve.TempC(ohm)) })
	if beside && math.Abs(UsualPullupOhm-boardOhm) > 1e-3*boardOhm {
		left := &Circuit{Curve: believed.Curve, PullupOhm: UsualPullupOhm, SeriesOhm: believed.SeriesOhm}
		real := &Circuit{Curve: r.reference, PullupOhm: boardOhm}
		c.PullupK = left.Actual(real, r.TopC) - r.TopC
	}
	return c, true
}

// OhmAt is the resistance that a sensor on a pull-up of boardOhm has while
// firmware that believes c indicates a temperature.
func (c *Circuit) OhmAt(indicatedC, boardOhm float64) float64 {
	x := bound(c.Ratio(indicatedC), 0, 1, 1)
	return boundOhm(boardOhm * x / (1 - x))
}
