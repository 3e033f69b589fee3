package sensor

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"

	"preflash/parser"
)

const (
	// FitsWithinK is how far a curve may be off at a measured point and still
	// count as the sensor's: about what a bench thermometer is good for
	// (common practice, no source).
	FitsWithinK = 2.0
	// Points closer than this count as one temperature, measured twice.
	sameTempK = 1.0
	// weakFitK is how far a fit may swing at the top of the range for each
	// kelvin of the thermometer before it is worth nothing there (common
	// practice, no source).
	weakFitK = 3.0
	// A fit speaks for the top of the range where a point lies this near it.
	nearTopK = 20.0
)

// Errors are what firmware that believes a curve makes of measured points:
// actual − indicated at each, in K, above 0 where the sensor is hotter than
// shown.
type Errors struct {
	AtPointsK []float64
	RMSK      float64
	WorstK    float64 // the largest, with its sign
	WorstAtC  float64 // actual
}

// Fits reports whether no point is off by more than FitsWithinK.
func (e *Errors) Fits() bool { return math.Abs(e.WorstK) <= FitsWithinK }

func errorsAt(points []parser.SensorPoint, indicated func(ohm float64) float64) Errors {
	var e Errors
	var sum float64
	for _, p := range points {
		d := p.TempC - indicated(p.Ohm)
		e.AtPointsK = append(e.AtPointsK, d)
		sum += d * d
		if math.Abs(d) > math.Abs(e.WorstK) {
			e.WorstK, e.WorstAtC = d, p.TempC
		}
	}
	e.RMSK = math.Sqrt(sum / float64(len(points)))
	return e
}

// Ranked is a known curve against measured points.
type Ranked struct {
	Known
	Errors
	TopErrorK float64 // at TopC indicated, were the sensor the reference
}

// Ranking is what measured points say about a sensor.
type Ranking struct {
	Points []parser.SensorPoint // as measured
	TopC   float64              // top of the printing range
	Curves []Ranked             // best first

	// Of the fits, ThreePoint is nil with fewer than three temperatures, or
	// where the points bend as no bead does; both are nil for a sensor that
	// is no NTC.
	ThreePoint *Fitted
	Beta       *Fitted
	R0Ohm      float64 // at 0 °C, of a platinum sensor; otherwise 0

	// Reference is what the sensor is taken for at the top of the range: the
	// id of a known curve, or "" for the better fit.
	Reference string
	reference Curve
	// ApartK is how far the known curves that fit the points lie apart at
	// TopC; Extremes are the two that do. Above FitsWithinK the points cannot
	// tell which sensor it is.
	ApartK   float64
	Extremes [2]string
}

// PointError is a measured point that cannot be.
type PointError struct {
	Point   int // its index
	Message string
}

func (e *PointError) Error() string { return e.Message }

// Rank holds measured points against every known curve, and fits curves of
// their own to them. It takes two temperatures at least.
func Rank(points []parser.SensorPoint, topC float64) (*Ranking, error) {
	merged, rising, err := steady(points)
	if err != nil {
		return nil, err
	}
	r := &Ranking{Points: points, TopC: topC}
	for _, k := range All() {
		if HasCurve(k.Kind) {
			r.Curves = append(r.Curves, Ranked{Known: k, Errors: errorsAt(points, k.Curve.TempC)})
		}
	}
	slices.SortStableFunc(r.Curves, func(a, b Ranked) int { return cmp.Compare(a.RMSK, b.RMSK) })
	if rising {
		r.R0Ohm = platinumR0(points)
	} else {
		r.ThreePoint, r.Beta = fitThree(points, merged, topC), fitTwo(points, merged, topC)
	}
	r.refer(merged)
	r.tellApart()
	return r, nil
}

// steady merges points of one temperature and sees that the others rise or
// fall steadily.
func steady(points []parser.SensorPoint) (merged []parser.SensorPoint, rising bool, err error) {
	order := make([]int, len(points))
	for i, p := range points {
		if order[i] = i; possible(p) != nil {
			return nil, false, &PointError{i, possible(p).Error() + "; correct it"}
		}
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(points[a].TempC, points[b].TempC) })
	var first []int // of the points that were merged into each
	for i := 0; i < len(order); {
		from := points[order[i]].TempC
		var t, l, n float64
		first = append(first, order[i])
		for ; i < len(order) && points[order[i]].TempC <= from+sameTempK; i++ {
			p := points[order[i]]
			t, l, n = t+p.TempC, l+math.Log(p.Ohm), n+1
		}
		merged = append(merged, parser.SensorPoint{TempC: t / n, Ohm: math.Exp(l / n)})
	}
	if len(merged) < 2 {
		return nil, false, fmt.Errorf("all points lie at %.4g °C, within %g K, where most curves agree: measure at another temperature, best near printing", merged[0].TempC, sameTempK)
	}
	rising = merged[len(merged)-1].Ohm > merged[0].Ohm
	for i := 1; i < len(merged); i++ {
		if a, b := merged[i-1], merged[i]; a.Ohm == b.Ohm || (b.Ohm > a.Ohm) != rising {
			return nil, false, &PointError{first[i], fmt.Sprintf(
				"%s does not go with %s and the other points: a sensor's resistance falls or rises steadily; correct one or measure again",
				pointText(b), pointText(a))}
		}
	}
	return merged, rising, nil
}

func pointText(p parser.SensorPoint) string {
	plain := func(x float64, n int) string { return strconv.FormatFloat(digits(x, n), 'f', -1, 64) }
	return plain(p.Ohm, 5) + " Ω at " + plain(p.TempC, 4) + " °C"
}

// platinumR0 is the mean resistance at 0 °C that the points stand for.
func platinumR0(points []parser.SensorPoint) float64 {
	unit, sum := FromPlatinum(1), 0.0
	for _, p := range points {
		sum += p.Ohm / unit.Ohms(p.TempC)
	}
	return sum / float64(len(points))
}

// refer chooses what the sensor is taken for at the top of the range: a fit
// where the points reach that far, else the known curve that fits best, else
// the fit after all.
func (r *Ranking) refer(merged []parser.SensorPoint) {
	fit := r.Fit()
	best := &r.Curves[0]
	reaches := merged[len(merged)-1].TempC >= r.TopC-nearTopK
	switch {
	case fit != nil && (reaches && fit.Fits() || !best.Fits()):
		r.reference = fit.Curve
	default:
		r.Reference, r.reference = best.ID, best.Curve
	}
	for i := range r.Curves {
		r.Curves[i].TopErrorK = r.topError(r.Curves[i].Curve)
	}
}

// topError is what the reference has while believed indicates TopC, in K
// above that. What is left of rounding is cut off.
func (r *Ranking) topError(believed Curve) float64 {
	return math.Round(1e6*(r.reference.TempC(believed.Ohms(r.TopC))-r.TopC)) / 1e6
}

// Fit is the better fit: three points, else Beta, else nil.
func (r *Ranking) Fit() *Fitted {
	if r.ThreePoint != nil {
		return r.ThreePoint
	}
	return r.Beta
}

// Weak reports whether the points lie too close together, or too far from the
// top of the range, for the fit to hold there.
func (r *Ranking) Weak() bool {
	f := r.Fit()
	return f != nil && f.TopMovesK > weakFitK
}

// Tells reports whether the points tell the sensor at the top of the range. If
// not, any choice would be a guess.
func (r *Ranking) Tells() bool {
	return r.ApartK <= FitsWithinK && (r.Reference != "" || !r.Weak())
}

// tellApart finds how far the curves that fit lie apart at the top.
func (r *Ranking) tellApart() {
	var low, high *Ranked
	for i := range r.Curves {
		c := &r.Curves[i]
		if !c.Fits() {
			continue
		}
		if low == nil || c.TopErrorK < low.TopErrorK {
			low = c
		}
		if high == nil || c.TopErrorK > high.TopErrorK {
			high = c
		}
	}
	if low != nil {
		r.ApartK, r.Extremes = high.TopErrorK-low.TopErrorK, [2]string{low.ID, high.ID}
	}
}
