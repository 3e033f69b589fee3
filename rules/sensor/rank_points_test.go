package sensor

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"preflash/parser"
)

// ownBead is a bead that is none of the known.
func ownBead(t testing.TB) Curve {
	t.Helper()
	c, err := FromPoints([]parser.SensorPoint{{TempC: 25, Ohm: 50e3}, {TempC: 150, Ohm: 1100},
		{TempC: 250, Ohm: 150}})
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// By hand: what was measured within 1 K becomes one point, at the mean
// temperature and the geometric mean of the resistances.
func TestSteadyMerges(t *testing.T) {
	points := []parser.SensorPoint{{TempC: 150, Ohm: 10}, {TempC: 26, Ohm: 100}, {TempC: 25, Ohm: 400}}
	merged, rising, err := steady(points, perfect)
	if err != nil || rising || len(merged) != 2 || merged[0].TempC != 25.5 ||
		math.Abs(merged[0].Ohm-200) > 1e-9 {
		t.Errorf("%v, rising %v, %v", merged, rising, err)
	}
	points[1].TempC = 26.1
	if merged, _, err := steady(points, perfect); err != nil || len(merged) != 3 {
		t.Errorf("what is 1.1 K apart became %v, %v", merged, err)
	}
}

// A point typed in kΩ is told by the others, as far off as three times what the
// thermometer may be, here 6 K. One other point tells nothing: some curve
// passes it.
func TestKiloHint(t *testing.T) {
	c := known(t, "ntc-100k-3950")
	for _, k := range []struct {
		others []float64
		offK   float64
		want   string
	}{
		{[]float64{25, 250}, 0, ". As 1.77 kΩ it does: write 1770 Ω"},
		{[]float64{25, 250}, 6, ". As 1.77 kΩ it does: write 1770 Ω"},
		{[]float64{25, 250}, 6.1, ""},
		{[]float64{25}, 0, ""},
	} {
		wrong := parser.SensorPoint{TempC: c.TempC(1770) + k.offK, Ohm: 1.77}
		points := append(measure(c, k.others...), wrong)
		if got := kiloHint(points, Thermometer{OffK: 2}, len(points)-1); got != k.want {
			t.Errorf("%+v: %q", k, got)
		}
	}
}

// A wrong point is named where the others go with a known curve, from four
// points on, or from five on with a fit: three points fit any three.
func TestOdd(t *testing.T) {
	bead, own := known(t, "ntc-100k-3950"), ownBead(t)
	four, five := []float64{25, 100, 150, 250}, []float64{25, 100, 150, 200, 250}
	for _, c := range []struct {
		name  string
		of    Curve
		temps []float64
		at    int
		wrong float64 // K
		by    Thermometer
		want  int
	}{
		{"four of a known, the first", bead, four, 0, 18, Thermometer{OffK: 2}, 0},
		{"four of a known, the last", bead, four, 3, 18, Thermometer{OffK: 2}, 3},
		{"three of a known", bead, []float64{25, 150, 250}, 1, 18, Thermometer{OffK: 2}, -1},
		{"four of none", own, four, 1, 18, Thermometer{OffK: 1}, -1},
		{"five of none, the first", own, five, 0, 18, Thermometer{OffK: 1}, 0},
		{"five of none, the last", own, five, 4, 18, Thermometer{OffK: 1}, 4},
		{"five of none, the first a little", own, five, 0, 4, Thermometer{OffK: 1}, 0},
		{"five of none, all good", own, five, 0, 0, Thermometer{OffK: 1}, -1},
		// Without the first point, or without the second, the others go together.
		{"one of two", own, five, 1, -4, Thermometer{OffK: 1, Low: 0.02}, -1},
		// 4 K are within three times 2 K, and not within three times 1.
		{"scatter", own, []float64{25, 75, 125, 175, 225, 250}, 3, 4, Thermometer{OffK: 2}, -1},
		{"more than scatter", own, []float64{25, 75, 125, 175, 225, 250}, 3, 4, Thermometer{OffK: 1}, 3},
		// A fit to points that lie together swings at one far away. With six, one
		// that goes with all of them is believed; with five it proves little.
		{"a fit that goes with six", own, []float64{20, 25, 30, 35, 40, 250}, 5, 18, Thermometer{OffK: 1},
			-1},
		{"a fit that goes with five", own, []float64{20, 25, 30, 35, 250}, 4, 18, Thermometer{OffK: 1}, 4},
		{"platinum of no known R0", FromPlatinum(700), five, 1, 18, Thermometer{OffK: 1}, -1},
	} {
		points := measure(c.of, c.temps...)
		points[c.at].TempC += c.wrong
		r, err := Rank(points, c.by, 260)
		if err != nil || r.Odd != c.want {
			t.Errorf("%s: odd is %d, want %d; %v", c.name, r.Odd, c.want, err)
			continue
		}
		if got, answer := r.Choose(styleNamed(t, "sections").Blank(), 4700); c.want >= 0 && answer != Untold {
			t.Errorf("%s: chooses %+v", c.name, got)
		}
	}
}

// Two points of a known bead are enough to tell the unit. Below 500 Ω at a room
// that is no warmer than 45 °C a bead of any curve is in kΩ.
func TestUnits(t *testing.T) {
	const kilo, little = "with ntc-100k-3950 if these are resistances in kΩ", "is too little for a bead"
	for _, c := range []struct {
		name   string
		points []parser.SensorPoint
		says   string // "" for no error
	}{
		{"two in kΩ", []parser.SensorPoint{{TempC: 25, Ohm: 100}, {TempC: 250, Ohm: 0.23}}, kilo},
		{"just enough", []parser.SensorPoint{{TempC: 45, Ohm: 500}, {TempC: 150, Ohm: 90}}, ""},
		{"too little", []parser.SensorPoint{{TempC: 45, Ohm: 499}, {TempC: 150, Ohm: 90}}, little},
		{"warmer", []parser.SensorPoint{{TempC: 45.1, Ohm: 499}, {TempC: 150, Ohm: 90}}, ""},
		{"standing still", []parser.SensorPoint{{TempC: 25, Ohm: 100}, {TempC: 150, Ohm: 100}},
			"does not go with"},
		{"rising", []parser.SensorPoint{{TempC: 25, Ohm: 90}, {TempC: 150, Ohm: 499}}, ""},
	} {
		_, err := Rank(c.points, perfect, 260)
		if said := fmt.Sprint(err); (err != nil) != (c.says != "") || !strings.Contains(said, c.says) {
			t.Errorf("%s: %v, want %q", c.name, said, c.says)
		}
	}
}
