package sensor

import (
	"sync"

	"preflash/parser"
)

// Known is a curve that can be named, in a sheet or by a style's definition.
//
// An NTC's id is ntc-R25-B: its nominal resistance at 25 °C and its nominal B,
// or where none is known the B between 25 °C and a point near 150 °C. It is the
// curve of the points or constants below, not the Beta formula with that B,
// unless Form says so.
type Known struct {
	ID         string
	Kind       parser.SensorKind
	Form       Form
	LowC       float64 // the curve is meant for LowC to HighC
	HighC      float64
	Source     string // where the figures come from
	FromMemory bool   // figures written down without the source at hand
	Curve      Curve
}

// Form is the formula of a known curve.
type Form uint8

const (
	ThreePoints Form = iota // Steinhart-Hart through three points
	PlainBeta               // Beta formula
	CVD                     // Callendar-Van Dusen
)

func (f Form) String() string {
	return [...]string{"Steinhart-Hart through three points", "Beta", "Callendar-Van Dusen"}[f]
}

const (
	sourceShared = "points as printer firmware commonly carries them for this type of bead"
	sourceBeta   = "R25 and B as printer firmware commonly carries them for this type of bead"
	sourceCounts = "points computed from counts of a 10-bit converter, as printer firmware commonly " +
		"carries them"
	sourceIEC = "IEC 60751"
)

// curves are sorted by id. Every figure but those of IEC 60751 is from memory.
var curves = [...]struct {
	id          string
	form        Form
	lowC, highC float64
	source      string
	points      [3]parser.SensorPoint // ThreePoints
	r25, beta   float64               // PlainBeta, ohm and K
	r0          float64               // CVD, ohm at 0 °C
}{
	{id: "ntc-100k-3950", form: ThreePoints, lowC: 0, highC: 300, source: sourceShared,
		points: [3]parser.SensorPoint{{TempC: 25, Ohm: 100e3}, {TempC: 150, Ohm: 1770},
			{TempC: 250, Ohm: 230}}},
	{id: "ntc-100k-3960", form: PlainBeta, lowC: 0, highC: 300, source: sourceBeta, r25: 100e3, beta: 3960},
	{id: "ntc-100k-3974", form: PlainBeta, lowC: 0, highC: 300, source: sourceBeta, r25: 100e3, beta: 3974},
	{id: "ntc-100k-4092", form: ThreePoints, lowC: 0, highC: 300, source: sourceShared,
		points: [3]parser.SensorPoint{{TempC: 25, Ohm: 100e3}, {TempC: 150, Ohm: 1641.9},
			{TempC: 250, Ohm: 226.15}}},
	{id: "ntc-100k-4145", form: ThreePoints, lowC: 0, highC: 300, source: sourceCounts,
		points: [3]parser.SensorPoint{{TempC: 20, Ohm: 122.05e3}, {TempC: 160, Ohm: 1291.4},
			{TempC: 300, Ohm: 93.8}}},
	{id: "ntc-100k-4267", form: ThreePoints, lowC: 0, highC: 300, source: sourceShared,
		points: [3]parser.SensorPoint{{TempC: 20, Ohm: 126.8e3}, {TempC: 150, Ohm: 1360},
			{TempC: 300, Ohm: 80.65}}},
	{id: "ntc-100k-4300", form: ThreePoints, lowC: 0, highC: 300, source: sourceShared,
		points: [3]parser.SensorPoint{{TempC: 25, Ohm: 100e3}, {TempC: 160, Ohm: 1074},
			{TempC: 300, Ohm: 82.78}}},
	{id: "ntc-100k-4485", form: ThreePoints, lowC: 0, highC: 150, source: sourceShared,
		points: [3]parser.SensorPoint{{TempC: 25, Ohm: 100e3}, {TempC: 50, Ohm: 31230},
			{TempC: 125, Ohm: 2066}}},
	{id: "ntc-200k-4338", form: ThreePoints, lowC: 0, highC: 300, source: sourceCounts,
		points: [3]parser.SensorPoint{{TempC: 25, Ohm: 200e3}, {TempC: 150, Ohm: 2516},
			{TempC: 250, Ohm: 308}}},
	{id: "ntc-4700k-5130", form: ThreePoints, lowC: 100, highC: 500, source: sourceCounts,
		points: [3]parser.SensorPoint{{TempC: 160, Ohm: 22082}, {TempC: 320, Ohm: 789.1},
			{TempC: 500, Ohm: 83.6}}},
	{id: "ntc-500k-3950", form: ThreePoints, lowC: 0, highC: 450, source: sourceShared,
		points: [3]parser.SensorPoint{{TempC: 25, Ohm: 500e3}, {TempC: 200, Ohm: 3734},
			{TempC: 400, Ohm: 240}}},
	{id: "pt100", form: CVD, lowC: -200, highC: 850, source: sourceIEC, r0: 100},
	{id: "pt1000", form: CVD, lowC: -200, highC: 850, source: sourceIEC, r0: 1000},
}

var solved = sync.OnceValue(func() []Known {
	all := make([]Known, 0, len(curves))
	for _, c := range curves {
		k := Known{ID: c.id, Kind: parser.NTC, Form: c.form, LowC: c.lowC, HighC: c.highC,
			Source: c.source, FromMemory: c.source != sourceIEC}
		switch c.form {
		case ThreePoints:
			// The points are ours: a test proves that each set solves.
			k.Curve, _ = FromPoints(c.points[:])
		case PlainBeta:
			k.Curve, _ = FromBeta(c.r25, c.beta, 0)
		case CVD:
			k.Kind, k.Curve = parser.Platinum, FromPlatinum(c.r0)
		}
		all = append(all, k)
	}
	return all
})

// All returns the known curves, sorted by id. Callers do not change them.
func All() []Known { return solved() }

// IDs returns the ids of the known curves, sorted.
func IDs() []string {
	var list []string
	for _, k := range solved() {
		list = append(list, k.ID)
	}
	return list
}

// Find returns the known curve with this id.
func Find(id string) (Known, bool) {
	for _, k := range solved() {
		if k.ID == id {
			return k, true
		}
	}
	return Known{}, false
}
