package sensor

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"preflash/parser"
	"preflash/parser/styles"
)

// forms of thermometers and points as people have them.
var (
	thermometers = []Thermometer{UsualThermometer, {OffK: 2, Low: 0.02}, {OffK: 1, Low: 0.02}}
	pointSets    = [][]float64{{25, 150, 250}, {22, 60, 120, 180, 225}, {25, 100, 150, 200, 250},
		{0, 25, 100, 150}}
)

// chosenOff is how far the choice of each style is off at 260 °C indicated; NaN
// where it chooses nothing.
func chosenOff(t *testing.T, real Curve, points []parser.SensorPoint, by Thermometer) (off []float64) {
	t.Helper()
	r, err := Rank(points, by, 260)
	for _, s := range styles.All() {
		off = append(off, math.NaN())
		if err != nil {
			continue // points that turn back, by noise
		}
		if c, answer := r.Choose(s.Blank(), UsualPullupOhm); answer == Chosen {
			believed, err := OfDef(&c.Def)
			if err != nil {
				t.Fatal(err)
			}
			off[len(off)-1] = real.TempC(believed.Curve.Ohms(260)) - 260
		}
	}
	return off
}

// A thermometer that scatters by 2 K must never lead to a definition that is
// more than 5 K off at 260 °C, in 25 rankings of each bead at each set of
// points; and not by choosing nothing.
func TestRankNoisy(t *testing.T) {
	const runs, noiseK, mostK = 25, 2.0, 5.0
	for _, by := range thermometers[:2] {
		chosen := 0
		for _, id := range []string{"ntc-100k-3950", "ntc-100k-3974", "ntc-100k-4092", "ntc-100k-4145",
			"ntc-100k-4267", "ntc-100k-4300", "ntc-200k-4338", "ntc-500k-3950"} {
			real := known(t, id)
			for _, temps := range pointSets {
				random := rand.New(rand.NewPCG(21, 8))
				for run := range runs {
					points := measure(real, temps...)
					for i := range points {
						points[i].TempC += noiseK * random.NormFloat64()
					}
					for i, off := range chosenOff(t, real, points, by) {
						if math.Abs(off) > mostK {
							t.Errorf("%s at %v, run %d, %+v: style %d chooses one that is %.1f K off at "+
								"260 °C", id, temps, run, by, i, off)
						}
						if !math.IsNaN(off) {
							chosen++
						}
					}
				}
			}
		}
		t.Logf("%+v: %d of %d chosen", by, chosen, 8*len(pointSets)*runs*2)
		if chosen < 8*len(pointSets)*runs/2 {
			t.Errorf("%+v: only %d are chosen at all", by, chosen)
		}
	}
}

// A thermometer that reads 5 % low, its points in perfect order, must not lead
// astray either; where the points allow a wrong curve, the right one is named
// beside it.
func TestRankLowThermometer(t *testing.T) {
	for _, id := range []string{"ntc-100k-3950", "ntc-100k-4092", "ntc-100k-4145", "ntc-100k-4267",
		"ntc-100k-4300", "ntc-100k-3974", "ntc-200k-4338"} {
		real := known(t, id)
		for _, temps := range pointSets {
			for _, by := range thermometers {
				points := measure(real, temps...)
				for i := range points {
					points[i].TempC *= 0.95
				}
				for i, off := range chosenOff(t, real, points, by) {
					if math.Abs(off) > mostOffK {
						t.Errorf("%s at %v, %+v: style %d chooses one that is %.1f K off at 260 °C", id,
							temps, by, i, off)
					}
				}
			}
			points := measure(real, temps...)
			for i := range points {
				points[i].TempC *= 0.95
			}
			r, err := Rank(points, UsualThermometer, 260)
			if err != nil {
				t.Fatal(err)
			}
			if !slices.ContainsFunc(r.Possible(), func(c *Ranked) bool { return c.ID == id }) {
				t.Errorf("%s at %v is said to be impossible: %+v", id, temps, r.Curves[0])
			}
		}
	}
}
