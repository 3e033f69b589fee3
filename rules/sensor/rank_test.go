package sensor

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/parser/styles"

	"pgregory.net/rapid"
)

func measure(c Curve, temps ...float64) (points []parser.SensorPoint) {
	for _, t := range temps {
		points = append(points, parser.SensorPoint{TempC: t, Ohm: c.Ohms(t)})
	}
	return points
}

// perfect is a thermometer that shows what is simulated.
var perfect = Thermometer{OffK: 0.3}

func rank(t testing.TB, points []parser.SensorPoint) *Ranking {
	t.Helper()
	r, err := Rank(points, perfect, 260)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func styleNamed(t testing.TB, name string) parser.Style {
	t.Helper()
	for _, s := range styles.All() {
		if s.Name() == name {
			return s
		}
	}
	t.Fatalf("no style %s", name)
	return nil
}

// Points of a known curve must lead back to it, and to its definition in each
// style that has one.
func TestRankFindsTheCurve(t *testing.T) {
	for _, k := range All() {
		r := rank(t, measure(k.Curve, 25, 150, 250))
		if best := r.Curves[0]; best.ID != k.ID || math.Abs(best.WorstK) > 1e-6 ||
			math.Abs(best.TopErrorK) > 0.05 {
			t.Errorf("%s: best is %s, worst %g K, at the top %g K", k.ID, best.ID, best.WorstK,
				best.TopErrorK)
		}
		if len(r.Curves) != len(All()) {
			t.Errorf("%s: %d curves ranked, want %d", k.ID, len(r.Curves), len(All()))
		}
		for _, s := range styles.All() {
			choice, answer := r.Choose(s.Blank(), UsualPullupOhm)
			ok := answer == Chosen
			switch want := ownNames[s.Name()][k.ID]; {
			case k.ID == "pt100": // sections has none, and that of defines is 12 K off
				if ok {
					t.Errorf("%s: %s chooses %+v", k.ID, s.Name(), choice.Def)
				}
			case !ok || math.Abs(choice.WorstK) > coldWithinK || math.Abs(choice.TopErrorK) > 2 ||
				choice.PullupK != 0:
				t.Errorf("%s: %s chooses %+v", k.ID, s.Name(), choice)
			case choice.Def.Name != want:
				t.Errorf("%s: %s chooses %q, want %q", k.ID, s.Name(), choice.Def.Name, want)
			}
		}
	}
}

// ownNames are the definitions of each style that read a curve right on 4.7 kΩ;
// a custom one serves for the others.
var ownNames = map[string]map[string]string{
	"defines": {
		"ntc-100k-3950": "61", "ntc-100k-3960": "11", "ntc-100k-4300": "5", "ntc-100k-4092": "1",
		"ntc-100k-4145": "13", "ntc-100k-4267": "5", "ntc-100k-3974": "71",
		"ntc-200k-4338": "2", "ntc-500k-3950": "67", "pt1000": "1047",
	},
	"sections": {
		"ntc-100k-3950": "Generic 3950", "ntc-100k-4092": "EPCOS 100K B57560G104F",
		"ntc-100k-4267": "ATC Semitec 104GT-2",
		"ntc-100k-4300": "ATC Semitec 104NT-4-R025H42G", "ntc-100k-4485": "TDK NTCG104LH104JT1",
		"ntc-500k-3950": "SliceEngineering 450", "ntc-100k-3974": "Honeywell 100K 135-104LAG-J01",
		"ntc-100k-3960": "Honeywell 100K 135-104LAG-J01", "pt1000": "PT1000",
	},
}

// The errors at the points, by hand: at 1770 Ω the 3950 bead has 150 °C, where
// the Beta formula of 3974 K on 100 kΩ shows
// 1/(1/298.15 + ln(1770/100000)/3974) − 273.15.
func TestRankErrors(t *testing.T) {
	r := rank(t, measure(known(t, "ntc-100k-3950"), 25, 150))
	want := 150 - (1/(1/298.15+math.Log(1770.0/100e3)/3974) - 273.15)
	for _, c := range r.Curves {
		if c.ID != "ntc-100k-3974" {
			continue
		}
		if got := c.AtPointsK; math.Abs(got[0]) > 1e-9 || math.Abs(got[1]-want) > 1e-9 {
			t.Errorf("errors %v, want 0 and %g", got, want)
		}
		if rms := math.Abs(want) / math.Sqrt2; math.Abs(c.RMSK-rms) > 1e-9 || c.WorstAtC != 150 ||
			c.WorstK != c.AtPointsK[1] {
			t.Errorf("root mean square %g, worst %g at %g; want %g", c.RMSK, c.WorstK, c.WorstAtC, rms)
		}
	}
	// The first line of the table: 4267 read for a 3950 bead.
	for _, c := range r.Curves {
		if c.ID == "ntc-100k-4267" {
			if got := 260 + c.TopErrorK; math.Abs(got-277.3) > 0.3 {
				t.Errorf("260 °C indicated is %g, want 277.3", got)
			}
		}
	}
}

// By hand: errors of 3 and 4 K are 5/√2 K in the mean of squares; of equal ones
// the first is the worst.
func TestErrorsAt(t *testing.T) {
	points := []parser.SensorPoint{{TempC: 103, Ohm: 1100}, {TempC: 204, Ohm: 1200}}
	e := errorsAt(points, straight(t, 0).TempC)
	if !slices.Equal(e.AtPointsK, []float64{3, 4}) || math.Abs(e.RMSK-5/math.Sqrt2) > 1e-12 ||
		e.WorstK != 4 || e.WorstAtC != 204 {
		t.Errorf("%+v", e)
	}
	points[0].TempC = 96
	if e := errorsAt(points, straight(t, 0).TempC); e.WorstK != -4 || e.WorstAtC != 96 {
		t.Errorf("%+v", e)
	}
}

// A curve is possible up to three times what the thermometer may be off, and
// within it up to once.
func TestAgainstOnTheLimit(t *testing.T) {
	k, _ := Find("ntc-100k-3960")
	for _, c := range []struct {
		offK             float64
		possible, within bool
	}{{1, true, true}, {1.01, true, false}, {3, true, false}, {3.01, false, false}} {
		p := parser.SensorPoint{TempC: k.Curve.TempC(100e3) + c.offK, Ohm: 100e3}
		for _, got := range against([]parser.SensorPoint{p}, Thermometer{OffK: 1}) {
			if got.ID == k.ID && (got.Possible != c.possible || got.Within != c.within) {
				t.Errorf("%g K off: possible %v, within %v", c.offK, got.Possible, got.Within)
			}
		}
	}
}

// A curve that one point rules out stands behind one that is possible, though
// its sum of squares be less. By hand, of the 3950 bead: (1 + 9 + 9 + 25)/2².
func TestPossibleComesFirst(t *testing.T) {
	points := measure(known(t, "ntc-100k-3950"), 25, 100, 180, 250)
	for i, off := range []float64{-1, -3, -3, 5} {
		points[i].TempC += off
	}
	curves := against(points, Thermometer{OffK: 2})
	if first := curves[0]; first.ID != "ntc-100k-3950" || !first.Possible ||
		math.Abs(first.Misfit-11) > 1e-9 {
		t.Errorf("first is %s, possible %v, misfit %g", first.ID, first.Possible, first.Misfit)
	}
	if second := curves[1]; second.Possible || second.Misfit >= 11 {
		t.Errorf("second is %s, possible %v, misfit %g", second.ID, second.Possible, second.Misfit)
	}
}

// A fit holds that is good to 5 K at the top, three times what it may be off, and
// no further from a point than the thermometer may be.
func TestFitHolds(t *testing.T) {
	for _, c := range []struct {
		topOffK, offK float64
		want          bool
	}{{5.0 / 3, 2, true}, {1.67, 2, false}, {1, 2, true}, {1, 2.01, false}, {1, -2.01, false}} {
		r := Ranking{Points: []parser.SensorPoint{{TempC: 25, Ohm: 1e5}}, Thermometer: Thermometer{OffK: 2}}
		r.Beta = &Fitted{TopOffK: c.topOffK, Errors: Errors{AtPointsK: []float64{c.offK}}}
		if r.FitHolds() != c.want {
			t.Errorf("%+v: it holds: %v", c, !c.want)
		}
	}
	if (&Ranking{}).FitHolds() {
		t.Error("no fit holds")
	}
}

// At room temperature a 3950 and a 104-type bead read alike, and points there
// must be said to tell nothing: the curves that fit lie far apart at the top,
// and a fit swings by many degrees for each degree of the thermometer.
func TestRankNearRoomTemperature(t *testing.T) {
	for _, by := range []Thermometer{perfect, {OffK: 1, Low: 0.02}, UsualThermometer} {
		r, err := Rank(measure(known(t, "ntc-100k-3950"), 20, 25, 30), by, 260)
		if err != nil {
			t.Fatal(err)
		}
		least, most := math.Inf(1), math.Inf(-1)
		for _, c := range r.Possible() {
			least, most = min(least, c.TopErrorK), max(most, c.TopErrorK)
		}
		if most-least < 14 {
			t.Errorf("%+v: possible curves lie from %g to %g K at 260 °C, want more than 14 K apart", by,
				least, most)
		}
		if fit := r.Fit(); fit == nil || 2*fit.TopOffK < 10*by.OffK || r.FitHolds() {
			t.Errorf("the fit is said to hold: %+v", fit)
		}
		for _, s := range styles.All() {
			if c, answer := r.Choose(s.Blank(), UsualPullupOhm); answer != Untold {
				t.Errorf("%s chooses %+v", s.Name(), c)
			}
		}
	}
}

// One wrong point of several is named; what is typed in other units is refused
// with what to do.
func TestRankNamesWhatIsWrong(t *testing.T) {
	good := measure(known(t, "ntc-100k-3950"), 25, 100, 150, 200, 250)
	for i := range good[1:4] {
		points := slices.Clone(good)
		points[i+1].TempC += 18
		r, err := Rank(points, Thermometer{OffK: 1, Low: 0.02}, 260)
		if err != nil || r.Odd != i+1 || r.KiloHint(r.Odd) != "" {
			t.Errorf("point %d wrong: odd is %d, %v", i+1, r.Odd, err)
			continue
		}
		for _, s := range styles.All() {
			if c, answer := r.Choose(s.Blank(), UsualPullupOhm); answer != Untold {
				t.Errorf("%s chooses %+v with a wrong point", s.Name(), c)
			}
		}
	}
	if r := rank(t, good); r.Odd != -1 {
		t.Errorf("point %d of good ones is odd", r.Odd)
	}
	kilo := slices.Clone(good)
	kilo[2].Ohm /= 1000
	var point *PointError
	if _, err := Rank(kilo, UsualThermometer, 260); !errors.As(err, &point) || point.Point != 2 ||
		!strings.Contains(err.Error(), "As 1.77 kΩ it does: write 1770 Ω") {
		t.Errorf("one point in kΩ: %v", err)
	}
	odd := ownBead(t)
	for _, c := range []struct {
		name string
		of   Curve
		slip func(p *parser.SensorPoint)
		says string
	}{
		{"kΩ", known(t, "ntc-100k-4267"), func(p *parser.SensorPoint) { p.Ohm /= 1000 },
			"if these are resistances in kΩ: multiply each by 1000"},
		{"kΩ of platinum", known(t, "pt1000"), func(p *parser.SensorPoint) { p.Ohm /= 1000 },
			"with pt1000 if these are resistances in kΩ"},
		{"MΩ", known(t, "ntc-100k-4267"), func(p *parser.SensorPoint) { p.Ohm /= 1e6 }, "resistances in MΩ"},
		{"Fahrenheit", known(t, "ntc-100k-3950"), func(p *parser.SensorPoint) { p.TempC = p.TempC*1.8 + 32 },
			"temperatures in Fahrenheit: convert each"},
		{"kelvin", known(t, "ntc-100k-3950"), func(p *parser.SensorPoint) { p.TempC += 273.15 },
			"temperatures in kelvin: take 273.15 off each"},
		{"kΩ of no known bead", odd, func(p *parser.SensorPoint) { p.Ohm /= 1000 },
			"is too little for a bead of a hotend: are the resistances in kΩ?"},
	} {
		points := measure(c.of, 25, 150, 250)
		for i := range points {
			c.slip(&points[i])
		}
		if _, err := Rank(points, UsualThermometer, 260); err == nil ||
			!strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %v, want %q", c.name, err, c.says)
		}
	}
}

// A custom definition is made only where no known one goes with the points.
func TestRankPrefersTheKnown(t *testing.T) {
	points := measure(known(t, "ntc-100k-3950"), 25, 150, 250)
	for i, off := range []float64{0.5, -0.8, 0.9} {
		points[i].TempC += off
	}
	r, err := Rank(points, Thermometer{OffK: 1, Low: 0.02}, 260)
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range styles.All() {
		if c, answer := r.Choose(s.Blank(), UsualPullupOhm); answer != Chosen || c.Def.Name == "" {
			t.Errorf("%s chooses %+v, %d", s.Name(), c, answer)
		}
	}
}

// A bead that is none of the known: both styles get a custom definition that
// reads it right.
func TestRankOwnCurve(t *testing.T) {
	odd := ownBead(t)
	for name, temps := range map[string][]float64{"three": {25, 150, 250},
		"six": {22, 60, 100, 150, 200, 245}} {
		r := rank(t, measure(odd, temps...))
		if r.Curves[0].Possible || r.ThreePoint == nil || r.Reference != "" {
			t.Fatalf("%s: best %s, three points %+v, taken for %q", name, r.Curves[0].ID, r.ThreePoint,
				r.Reference)
		}
		if f := r.ThreePoint; math.Abs(f.WorstK) > 0.1 || math.Abs(f.R25Ohm-50e3) > 50 || len(f.Points) != 3 {
			t.Errorf("%s: fitted %+v", name, f)
		}
		if math.Abs(r.Beta.WorstK) < 0.5 {
			t.Errorf("%s: a Beta follows a bent curve within %g K", name, r.Beta.WorstK)
		}
		for _, s := range styles.All() {
			c, answer := r.Choose(s.Blank(), UsualPullupOhm)
			if answer != Chosen || c.Curve != "" || c.Def.Form != s.Blank().CustomForm() ||
				math.Abs(c.WorstK) > 0.2 || math.Abs(c.TopErrorK) > 0.2 {
				t.Errorf("%s: %s chooses %+v", name, s.Name(), c)
			}
		}
	}
}

func TestRankRefuses(t *testing.T) {
	p := func(list ...float64) (points []parser.SensorPoint) {
		for i := 0; i < len(list); i += 2 {
			points = append(points, parser.SensorPoint{TempC: list[i], Ohm: list[i+1]})
		}
		return points
	}
	for _, c := range []struct {
		name   string
		points []parser.SensorPoint
		at     int // -1: no point of its own
		says   string
	}{
		{"one temperature", p(25, 100e3, 25.4, 98e3, 25.1, 99e3), -1, "all points lie at 25.17 °C"},
		{"1 K apart", p(25, 100e3, 26, 95e3), -1, "all points lie at 25.5 °C"},
		{"turns back", p(25, 100e3, 250, 230, 150, 260e3), 2,
			"260000 Ω at 150 °C does not go with 100000 Ω at 25 °C and the other points"},
		{"turns back before", p(25, 100e3, 150, 100, 250, 230), 1,
			"100 Ω at 150 °C does not go with 230 Ω at 250 °C and the other points"},
		{"the coldest in kΩ", p(25, 100, 150, 1770, 250, 230), 0,
			"100 Ω at 25 °C does not go with 1770 Ω at 150 °C and the other points: a sensor's resistance " +
				"falls or rises steadily; correct one or measure again. As 100 kΩ it does: write 100000 Ω"},
		{"two that are wrong, and right ends",
			p(29, 1086.7, 68, 1280.8, 144, 1566.5, 150, 787.19, 170, 1621.1, 215, 1857.1, 266, 2998.6,
				275, 1990.9), 3,
			"787.19 Ω at 150 °C does not go with 1566.5 Ω at 144 °C and the other points"},
		{"stands still", p(25, 100e3, 150, 1770, 250, 1770), 2, "does not go with"},
		{"no resistance", p(25, 100e3, 150, -1), 1, "cannot be"},
		{"not a number", p(math.NaN(), 100e3, 150, 1770), 0, "cannot be"},
	} {
		_, err := Rank(c.points, perfect, 260)
		if err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %v, want %q", c.name, err, c.says)
			continue
		}
		var point *PointError
		if at := -1; errors.As(err, &point) {
			at = point.Point
			if at != c.at {
				t.Errorf("%s: blames point %d, want %d", c.name, at, c.at)
			}
		} else if c.at >= 0 {
			t.Errorf("%s: blames no point, want %d", c.name, c.at)
		}
	}
}

// Platinum measured through its leads is off by their resistance and still
// found.
func TestRankPlatinum(t *testing.T) {
	points := measure(known(t, "pt1000"), 22, 100, 180)
	for i := range points {
		points[i].Ohm += 1.5
	}
	r := rank(t, points)
	if r.Curves[0].ID != "pt1000" || r.Fit() != nil || math.Abs(r.R0Ohm-1001) > 1 {
		t.Errorf("best %s, R0 %g, fit %v", r.Curves[0].ID, r.R0Ohm, r.Fit())
	}
}

// Whatever is measured, ranking ends with finite figures or an error.
func TestRankProperties(t *testing.T) {
	all := styles.All()
	rapid.Check(t, func(t *rapid.T) {
		points := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) parser.SensorPoint {
			return parser.SensorPoint{
				TempC: rapid.Float64Range(-50, 600).Draw(t, "temp"),
				Ohm:   math.Exp(rapid.Float64Range(-2, 18).Draw(t, "ln r")),
			}
		}), 1, 5).Draw(t, "points")
		by := rapid.SampledFrom(append(thermometers, perfect)).Draw(t, "thermometer")
		r, err := Rank(points, by, rapid.Float64Range(100, 500).Draw(t, "top"))
		if err != nil {
			return
		}
		figures := []float64{r.R0Ohm}
		for _, c := range r.Curves {
			figures = append(append(figures, c.AtPointsK...), c.RMSK, c.WorstK, c.TopErrorK, c.Misfit, c.Low)
		}
		for _, f := range []*Fitted{r.ThreePoint, r.Beta} {
			if f != nil {
				figures = append(append(figures, f.AtPointsK...), f.R25Ohm, f.BetaK, f.Cubic, f.TopOffK)
				if f.Cubic < 0 || f.BetaK <= 0 || len(f.Points) != 3 {
					t.Fatalf("fitted %+v", f)
				}
			}
		}
		for _, s := range all {
			if c, answer := r.Choose(s.Blank(), 4700); answer == Chosen {
				figures = append(append(figures, c.AtPointsK...), c.TopErrorK, c.PullupK, c.LeastTopK,
					c.MostTopK)
			}
		}
		for _, x := range figures {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				t.Fatalf("%v", figures)
			}
		}
		for i := 1; i < len(r.Curves); i++ {
			a, b := &r.Curves[i-1], &r.Curves[i]
			if b.Possible && (!a.Possible || b.Misfit < a.Misfit) || !a.Possible && b.RMSK < a.RMSK {
				t.Fatal("not in order")
			}
		}
	})
}

// The resistance told from what was shown leads back to what was shown.
func TestOhmAt(t *testing.T) {
	used := circuit(known(t, "ntc-100k-4267"), 4700)
	for _, boardOhm := range []float64{1000, 4700} {
		real := &Circuit{Curve: known(t, "ntc-100k-3950"), PullupOhm: boardOhm}
		shown := used.Indicated(real, 214.2)
		if got := used.OhmAt(shown, boardOhm); math.Abs(got/real.Curve.Ohms(214.2)-1) > 1e-9 {
			t.Errorf("%g Ω of pull-up: %g Ω, want %g", boardOhm, got, real.Curve.Ohms(214.2))
		}
	}
}
