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
	// PullupK is how far off the top of the range reads where the pull-up is
	// set beside Def and stays what firmware usually assumes.
	PullupK float64
}

// Choose returns the style's own definition of the best known curve that fits
// the points and the top of the range, else a custom one; false where the
// style can have neither. The sensor hangs on a pull-up of boardOhm.
func (r *Ranking) Choose(style parser.Style, boardOhm float64) (Choice, bool) {
	for i := range r.Curves {
		c := &r.Curves[i]
		if !c.Fits() {
			continue
		}
		if d, ok := style.Defines(c.ID, boardOhm); ok {
			usual, everywhere := style.Defines(c.ID, UsualPullupOhm)
			choice, ok := r.choice(d, c.ID, boardOhm, everywhere && usual.Name == d.Name)
			if ok && choice.Fits() && math.Abs(choice.TopErrorK) <= FitsWithinK {
				return choice, true
			}
		}
	}
	d := parser.SensorDef{Form: style.CustomForm(), Kind: parser.NTC, PullupOhm: boardOhm}
	from, ok := r.custom(&d)
	if !ok {
		return Choice{}, false
	}
	return r.choice(d, from, boardOhm, true)
}

// custom writes out the reference curve in the form that d has.
func (r *Ranking) custom(d *parser.SensorDef) (from string, ok bool) {
	if r.R0Ohm != 0 {
		return "", false // no style writes platinum out
	}
	var err error
	fit := r.Fit()
	switch known := r.Reference != "" && r.Curves[0].Fits(); {
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

// choice judges a definition by the measured points, with the right pull-up.
// False where it stands for no curve, or its table ends below the top. beside:
// the pull-up is set beside the definition.
func (r *Ranking) choice(d parser.SensorDef, curve string, boardOhm float64, beside bool) (Choice, bool) {
	believed, err := OfDef(&d)
	if err != nil || (believed.LowC != 0 || believed.HighC != 0) && believed.HighC < r.TopC {
		return Choice{}, false
	}
	c := Choice{Def: d, Curve: curve, TopErrorK: r.topError(believed.Curve)}
	c.Errors = errorsAt(r.Points, func(ohm float64) float64 { return believed.saturate(believed.Curve.TempC(ohm)) })
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
