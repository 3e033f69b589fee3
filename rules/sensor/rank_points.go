package sensor

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"preflash/parser"
)

// steady merges points of one temperature and sees that the others rise or
// fall steadily.
func steady(points []parser.SensorPoint, by Thermometer) (merged []parser.SensorPoint, rising bool,
	err error) {
	order := make([]int, len(points))
	for i := range points {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		return cmp.Compare(points[a].TempC, points[b].TempC)
	})
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
		return nil, false, fmt.Errorf("all points lie at %.4g °C, within %g K, where most curves agree: "+
			"measure at another temperature, best near printing", merged[0].TempC, sameTempK)
	}
	rising = merged[len(merged)-1].Ohm > merged[0].Ohm
	i := turn(merged)
	if i == 0 {
		return merged, rising, nil
	}
	suspects, last := []int{first[i], first[i-1]}, len(merged)-1
	// The ends say which way it goes, so that one of them may be the wrong one.
	if turn(merged[1:]) == 0 {
		suspects = append(suspects, first[0])
	}
	if turn(merged[:last]) == 0 {
		suspects = append(suspects, first[last])
	}
	at, other := wrongOf(points, by, suspects), merged[i-1]
	if at == first[i-1] {
		other = merged[i]
	}
	return nil, false, &PointError{at, fmt.Sprintf(
		"%s does not go with %s and the other points: a sensor's resistance falls or rises steadily; "+
			"correct one or measure again%s",
		pointText(points[at]), pointText(other), kiloHint(points, by, at))}
}

// turn is the index of the first point that does not go on from the one before as
// the ends of all go; 0 where there is none.
func turn(points []parser.SensorPoint) int {
	rising := points[len(points)-1].Ohm > points[0].Ohm
	for i := 1; i < len(points); i++ {
		if a, b := points[i-1].Ohm, points[i].Ohm; a == b || (b > a) != rising {
			return i
		}
	}
	return 0
}

func pointText(p parser.SensorPoint) string {
	return plain(p.Ohm, 5) + " Ω at " + plain(p.TempC, 4) + " °C"
}

func plain(x float64, n int) string { return parser.Decimal(digits(x, n)) }

// wrongOf is which of some points is the wrong one: the first of those without
// which the others go best with a known curve.
func wrongOf(points []parser.SensorPoint, by Thermometer, suspects []int) int {
	least := func(i int) float64 {
		misfit := math.Inf(1)
		for _, c := range without(points, by, i) {
			misfit = min(misfit, c.Misfit)
		}
		return misfit
	}
	return slices.MinFunc(suspects, func(a, b int) int { return cmp.Compare(least(a), least(b)) })
}

// without holds all points but one against the known curves.
func without(points []parser.SensorPoint, by Thermometer, i int) []Ranked {
	return against(slices.Concat(points[:i], points[i+1:]), by)
}

// kiloHint says that a point is right where its resistance was typed in kΩ.
func kiloHint(points []parser.SensorPoint, by Thermometer, i int) string {
	rest := without(points, by, i)[0]
	p := points[i]
	off := math.Abs(p.TempC - rest.Curve.TempC(1000*p.Ohm))
	if len(points) > 2 && rest.Possible && off <= farOff*by.Off(p.TempC) {
		return fmt.Sprintf(". As %s kΩ it does: write %s Ω", plain(p.Ohm, 5), plain(1000*p.Ohm, 5))
	}
	return ""
}

// odd is the point without which a known curve, or for five points and more a
// fit, goes with the others as well as the thermometer allows, where with it
// none is possible; -1 for none, or where more than one would do.
func (r *Ranking) odd() int {
	const least, leastFit = 4, 5
	if r.Curves[0].Possible || len(r.Points) < least {
		return -1
	}
	if f := r.Fit(); f != nil && len(r.Points) > leastFit && f.Within(r) {
		return -1
	}
	found := -1
	for i, p := range r.Points {
		curve := r.goWithout(i, len(r.Points) >= leastFit)
		if curve == nil || math.Abs(p.TempC-curve.TempC(p.Ohm)) <= farOff*r.Thermometer.Off(p.TempC) {
			continue
		}
		if found >= 0 {
			return -1
		}
		found = i
	}
	return found
}

// goWithout is a curve that goes with all points but one, nil where none does.
func (r *Ranking) goWithout(i int, fits bool) Curve {
	rest := slices.Concat(r.Points[:i], r.Points[i+1:])
	if best := against(rest, r.Thermometer)[0]; best.Possible && best.Within {
		return best.Curve
	}
	if !fits || r.R0Ohm != 0 {
		return nil
	}
	merged, _, err := steady(rest, r.Thermometer)
	if err != nil || len(merged) < 4 { // three points fit any three
		return nil
	}
	q := Ranking{Points: rest, Thermometer: r.Thermometer}
	if f := fitThree(rest, merged, r.Thermometer, r.TopC); f != nil && f.Within(&q) {
		return f.Curve
	}
	return nil
}

// KiloHint says that a point is right where its resistance was typed in kΩ; ""
// where it is not.
func (r *Ranking) KiloHint(i int) string { return kiloHint(r.Points, r.Thermometer, i) }

// unitSlips are what temperatures and resistances are typed in by mistake.
var unitSlips = [...]struct {
	what, remedy string
	right        func(p parser.SensorPoint) parser.SensorPoint
}{
	{"resistances in kΩ", "multiply each by 1000", func(p parser.SensorPoint) parser.SensorPoint {
		return parser.SensorPoint{TempC: p.TempC, Ohm: 1000 * p.Ohm}
	}},
	{"resistances in MΩ", "multiply each by 1000000", func(p parser.SensorPoint) parser.SensorPoint {
		return parser.SensorPoint{TempC: p.TempC, Ohm: 1e6 * p.Ohm}
	}},
	{"temperatures in Fahrenheit", "convert each, (F − 32) / 1.8",
		func(p parser.SensorPoint) parser.SensorPoint {
			return parser.SensorPoint{TempC: (p.TempC - 32) / 1.8, Ohm: p.Ohm}
		}},
	{"temperatures in kelvin", "take 273.15 off each", func(p parser.SensorPoint) parser.SensorPoint {
		return parser.SensorPoint{TempC: p.TempC - 273.15, Ohm: p.Ohm}
	}},
}

// A bead for a hotend has more than this where it is no warmer, Ω and °C: common
// practice, no source.
const leastRoomOhm, roomC = 500.0, 45.0

// inOtherUnits refuses points that no known curve goes with as they are, and one
// does in another unit; and a falling resistance that is no bead's at room
// temperature.
func inOtherUnits(points []parser.SensorPoint, by Thermometer) error {
	for i, p := range points {
		if err := possible(p); err != nil {
			return &PointError{i, err.Error() + "; correct it"}
		}
	}
	if len(points) < 2 || against(points, by)[0].Possible {
		return nil
	}
	for _, slip := range unitSlips {
		moved := make([]parser.SensorPoint, len(points))
		for i, p := range points {
			moved[i] = slip.right(p)
		}
		if best := against(moved, by)[0]; best.Possible && best.Within {
			return fmt.Errorf("the points go with no known curve, and with %s if these are %s: %s",
				best.ID, slip.what, slip.remedy)
		}
	}
	coldest := slices.MinFunc(points,
		func(a, b parser.SensorPoint) int { return cmp.Compare(a.TempC, b.TempC) })
	hottest := slices.MaxFunc(points,
		func(a, b parser.SensorPoint) int { return cmp.Compare(a.TempC, b.TempC) })
	if coldest.Ohm > hottest.Ohm && coldest.Ohm < leastRoomOhm && coldest.TempC <= roomC {
		return fmt.Errorf("%s is too little for a bead of a hotend: are the resistances in kΩ? Multiply "+
			"each by 1000",
			pointText(coldest))
	}
	return nil
}
