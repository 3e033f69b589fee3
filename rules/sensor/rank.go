package sensor

import (
	"cmp"
	"math"
	"slices"

	"preflash/parser"
)

const (
	// Points closer than this count as one temperature, measured twice.
	sameTempK = 1.0
	// mostOffK is how far a definition may be off at the top of the range, were
	// the sensor any that the points allow, and still be chosen.
	mostOffK = 5.0
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
	// Misfit is the sum of squares of the errors against what the thermometer
	// may be off; Low the common error of the thermometer by which it is that
	// small, as a share, at most 0.
	Misfit, Low float64
	Possible    bool    // the points allow that the sensor is this one
	Within      bool    // no point is further off than the thermometer may be
	TopErrorK   float64 // at TopC indicated, were the sensor the reference
}

// Ranking is what measured points say about a sensor.
type Ranking struct {
	Points      []parser.SensorPoint // as measured
	Thermometer Thermometer
	TopC        float64  // top of the printing range
	Curves      []Ranked // best first

	// Of the fits, ThreePoint is nil with fewer than three temperatures, or
	// where the points bend as no bead does; both are nil for a sensor that
	// is no NTC.
	ThreePoint *Fitted
	Beta       *Fitted
	R0Ohm      float64 // at 0 °C, of a platinum sensor; otherwise 0

	// Odd is the point without which the others go together, and with which
	// nothing does; -1 for none.
	Odd int

	// Reference is what the sensor is taken for at the top of the range: the
	// id of the likeliest known curve, or "" for the better fit, where no known
	// one is possible.
	Reference string
	reference Curve
}

// PointError is a measured point that cannot be.
type PointError struct {
	Point   int // its index
	Message string
}

func (e *PointError) Error() string { return e.Message }

// Rank holds measured points against every known curve, and fits curves of
// their own to them. It takes two temperatures at least.
func Rank(points []parser.SensorPoint, by Thermometer, topC float64) (*Ranking, error) {
	if err := inOtherUnits(points, by); err != nil {
		return nil, err
	}
	merged, rising, err := steady(points, by)
	if err != nil {
		return nil, err
	}
	r := &Ranking{Points: points, Thermometer: by, TopC: topC, Curves: against(points, by)}
	if rising {
		r.R0Ohm = platinumR0(points)
	} else {
		r.ThreePoint, r.Beta = fitThree(points, merged, by, topC), fitTwo(points, merged, by, topC)
	}
	r.refer()
	r.Odd = r.odd()
	return r, nil
}

// against holds points against every known curve: those that are possible first,
// the likeliest of them before the others, then by their error.
func against(points []parser.SensorPoint, by Thermometer) []Ranked {
	var curves []Ranked
	for _, k := range All() {
		if !HasCurve(k.Kind) {
			continue
		}
		c := Ranked{Known: k, Errors: errorsAt(points, k.Curve.TempC), Within: true}
		c.Misfit, c.Low = by.misfit(points, c.AtPointsK)
		c.Possible = true
		for i, p := range points {
			c.Possible = c.Possible && math.Abs(by.left(p, c.AtPointsK[i], c.Low)) <= farOff
			c.Within = c.Within && math.Abs(c.AtPointsK[i]) <= by.Off(p.TempC)
		}
		curves = append(curves, c)
	}
	slices.SortStableFunc(curves, func(a, b Ranked) int { return cmp.Compare(a.Misfit, b.Misfit) })
	for i := range curves {
		curves[i].Possible = curves[i].Possible && curves[i].Misfit <= curves[0].Misfit+leastMisfit
	}
	slices.SortStableFunc(curves, func(a, b Ranked) int { // those that are possible stay first
		switch {
		case a.Possible && b.Possible:
			return 0
		case a.Possible:
			return -1
		case b.Possible:
			return 1
		}
		return cmp.Compare(a.RMSK, b.RMSK)
	})
	return curves
}

// Possible lists the known curves that the points allow, the likeliest first.
func (r *Ranking) Possible() []*Ranked {
	var list []*Ranked
	for i := range r.Curves {
		if r.Curves[i].Possible {
			list = append(list, &r.Curves[i])
		}
	}
	return list
}

// platinumR0 is the mean resistance at 0 °C that the points stand for.
func platinumR0(points []parser.SensorPoint) float64 {
	unit, sum := FromPlatinum(1), 0.0
	for _, p := range points {
		sum += p.Ohm / unit.Ohms(p.TempC)
	}
	return sum / float64(len(points))
}

// refer chooses what the sensor is taken for: the likeliest known curve, or a fit
// where none is possible.
func (r *Ranking) refer() {
	best := &r.Curves[0]
	r.Reference, r.reference = best.ID, best.Curve
	if fit := r.Fit(); fit != nil && !best.Possible {
		r.Reference, r.reference = "", fit.Curve
	}
	for i := range r.Curves {
		r.Curves[i].TopErrorK = r.topError(r.Curves[i].Curve)
	}
}

// topError is what the reference has while believed indicates TopC, in K
// above that. What is left of rounding is cut off.
func (r *Ranking) topError(believed Curve) float64 { return topError(r.reference, believed, r.TopC) }

func topError(real, believed Curve, topC float64) float64 {
	return math.Round(1e6*(real.TempC(believed.Ohms(topC))-topC)) / 1e6
}

// Fit is the better fit: three points, else Beta, else nil.
func (r *Ranking) Fit() *Fitted {
	if r.ThreePoint != nil {
		return r.ThreePoint
	}
	return r.Beta
}

// FitHolds reports whether the fit may be written out as a definition: it goes
// with every point, and no thermometer as good as this one moves it further at
// the top of the range than a definition may be off.
func (r *Ranking) FitHolds() bool {
	f := r.Fit()
	return f != nil && f.Within(r) && f.TopGoodK() <= mostOffK
}

// TopGoodK is what the fit is good to at the top of the range.
func (f *Fitted) TopGoodK() float64 { return farOff * f.TopOffK }

// Within reports whether no point is further from the fit than the thermometer
// may be off.
func (f *Fitted) Within(r *Ranking) bool {
	for i, p := range r.Points {
		if math.Abs(f.AtPointsK[i]) > r.Thermometer.Off(p.TempC) {
			return false
		}
	}
	return true
}
