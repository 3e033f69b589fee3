package sections

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"

	"preflash/parser"
)

const zeroC = 273.15 // K

// thermistor reads a [thermistor NAME] section: one point and a Beta, or three
// points.
func (c *config) thermistor(section, name string) parser.SensorDef {
	d := parser.SensorDef{Kind: parser.NTC, Name: name}
	var why string
	read := func(option string, demand demand) float64 {
		s := c.required(noKey, section, option, demand)
		if !s.Known() && why == "" {
			why = s.Why
		}
		return s.Value
	}
	point := func(n string) parser.SensorPoint {
		return parser.SensorPoint{
			TempC: read("temperature"+n, demand{math.NaN(), -zeroC, math.NaN()}),
			Ohm:   read("resistance"+n, positive),
		}
	}
	first := point("1")
	if o, _ := c.find(section, "beta"); o != nil {
		beta := read("beta", positive)
		if why != "" {
			return unplaced(name, why)
		}
		return betaThrough(d, first, beta)
	}
	d.Points = []parser.SensorPoint{first, point("2"), point("3")}
	if why != "" {
		return unplaced(name, why)
	}
	slices.SortFunc(d.Points, func(a, b parser.SensorPoint) int {
		return cmp.Or(cmp.Compare(a.TempC, b.TempC), cmp.Compare(a.Ohm, b.Ohm))
	})
	d.Form = parser.FormPoints
	cold, hot := d.Points[0], d.Points[2]
	switch cubic := cubicCoefficient(d.Points); {
	case math.IsNaN(cubic) || math.IsInf(cubic, 0):
		return unplaced(name,
			"two points of ["+section+"] are the same, and the firmware does not start with them")
	case cubic <= 0:
		// The firmware gives up the middle point then.
		l := math.Log(cold.Ohm / hot.Ohm)
		d.Points = nil
		d = betaThrough(d, cold, l/(1/(cold.TempC+zeroC)-1/(hot.TempC+zeroC)))
		d.Note = "no curve of three constants goes through these points, " +
			"so the firmware takes a Beta formula through the coldest and the hottest"
	}
	return d
}

// betaThrough makes d the Beta formula through a point.
func betaThrough(d parser.SensorDef, p parser.SensorPoint, beta float64) parser.SensorDef {
	d.Form, d.BetaK = parser.FormBeta, beta
	room := 25.0 // a variable: a constant sum is rounded later, and R25 would not come out even
	d.R25Ohm = p.Ohm * math.Exp(beta*(1/(room+zeroC)-1/(p.TempC+zeroC)))
	if !(beta > 0) || !(d.R25Ohm > 0) || math.IsInf(d.R25Ohm, 0) || math.IsInf(beta, 0) {
		return unplaced(d.Name, fmt.Sprintf(
			"its Beta of %g K through %g Ω at %g °C is that of no thermistor", beta, p.Ohm, p.TempC))
	}
	return d
}

// cubicCoefficient is C of 1/T = A + B·L + C·L³, L = ln R, through three points
// (Steinhart and Hart 1968). The firmware needs to be followed in its sign
// alone.
func cubicCoefficient(p []parser.SensorPoint) float64 {
	var l, y [3]float64
	for i := range l {
		l[i], y[i] = math.Log(p[i].Ohm), 1/(p[i].TempC+zeroC)
	}
	l12, l13 := l[0]-l[1], l[0]-l[2]
	c12, c13 := l[0]*l[0]*l[0]-l[1]*l[1]*l[1], l[0]*l[0]*l[0]-l[2]*l[2]*l[2]
	y12, y13 := y[0]-y[1], y[0]-y[2]
	return (y12 - y13*l12/l13) / (c12 - c13*l12/l13)
}

// mostPoints is how many points the firmware reads of one section.
const mostPoints = 999

// adcTemperature reads an [adc_temperature NAME] section: resistances or
// voltages, straight lines between them.
func (c *config) adcTemperature(section, name string) parser.SensorDef {
	if o, _ := c.find(section, "resistance1"); o == nil {
		return unplaced(name,
			"it is defined by voltages behind an amplifier, which says nothing about the sensor itself")
	}
	d := parser.SensorDef{Form: parser.FormPoints, Name: name, Join: parser.JoinOhm}
	for i := 1; i <= mostPoints; i++ {
		n := strconv.Itoa(i)
		if o, _ := c.find(section, "temperature"+n); o == nil {
			break
		}
		t := c.required(noKey, section, "temperature"+n, anything)
		r := c.required(noKey, section, "resistance"+n, anything)
		for _, s := range []parser.Setting[float64]{t, r} {
			if !s.Known() {
				return unplaced(name, s.Why)
			}
		}
		d.Points = append(d.Points, parser.SensorPoint{TempC: t.Value, Ohm: r.Value})
	}
	slices.SortFunc(d.Points, func(a, b parser.SensorPoint) int { return cmp.Compare(a.TempC, b.TempC) })
	if len(d.Points) < 2 {
		return unplaced(name,
			"["+section+"] has fewer than two points, and the firmware does not start with it")
	}
	d.Kind = parser.NTC
	rising := d.Points[1].Ohm > d.Points[0].Ohm
	if rising {
		d.Kind = parser.Platinum
	}
	for i := 1; i < len(d.Points); i++ {
		a, b := d.Points[i-1], d.Points[i]
		if a.TempC == b.TempC || a.Ohm == b.Ohm || (b.Ohm > a.Ohm) != rising || a.Ohm <= 0 || b.Ohm <= 0 {
			return unplaced(name, fmt.Sprintf(
				"the points of [%s] at %g and %g °C do not lie on one rising or falling line",
				section, a.TempC, b.TempC))
		}
	}
	return d
}
