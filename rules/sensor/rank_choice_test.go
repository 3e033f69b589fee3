package sensor

import (
	"math"
	"slices"
	"testing"

	"preflash/parser"
)

// What a style's table cannot show it must not be chosen for, and a pull-up
// that differs must be told.
func TestChooseLooksAtTheBoard(t *testing.T) {
	c4145 := known(t, "ntc-100k-4145") // the table of its definition ends at 300 °C
	r, err := Rank(measure(c4145, 25, 150, 290), perfect, 320)
	if err != nil {
		t.Fatal(err)
	}
	if c, answer := r.Choose(styleNamed(t, "defines").Blank(), UsualPullupOhm); answer != Chosen ||
		c.Def.Form != parser.FormBeta || c.Def.Name != "" {
		t.Errorf("chosen %+v, want a custom definition", c.Def)
	}
	for _, c := range []struct {
		curve, style string
		boardOhm     float64
		want         string
		tellsPullup  bool // it is set beside the definition, and must be
	}{
		{"ntc-100k-3950", "defines", 4700, "61", false},
		{"ntc-100k-3950", "defines", 2200, "", true}, // a custom one
		{"ntc-100k-4267", "defines", 1000, "55", false},
		{"pt1000", "defines", 1000, "1010", false},
		{"pt1000", "sections", 4700, "PT1000", false},
		{"pt1000", "sections", 1000, "PT1000", true},
	} {
		r := rank(t, measure(known(t, c.curve), 25, 150, 250))
		got, answer := r.Choose(styleNamed(t, c.style).Blank(), c.boardOhm)
		if answer != Chosen || got.Def.Name != c.want || math.Abs(got.Def.PullupOhm-c.boardOhm) > 1e-9 {
			t.Errorf("%s on %g Ω: %s chooses %q with %g Ω, want %q", c.curve, c.boardOhm, c.style,
				got.Def.Name, got.Def.PullupOhm, c.want)
		}
		if c.tellsPullup != (math.Abs(got.PullupK) > 20) {
			t.Errorf("%s on %g Ω: %s left at the usual pull-up is off by %g K", c.curve, c.boardOhm, c.style,
				got.PullupK)
		}
	}
}

// By hand: the mean error of what was measured within 50 K of the hottest, on
// a line from 0 °C to the top, against 5 K less the scatter of the mean.
func TestAgrees(t *testing.T) {
	type errorAt struct{ tempC, errorK float64 }
	for _, c := range []struct {
		name   string
		topC   float64
		offK   float64
		points []errorAt
		want   bool
	}{
		{"just 5 K", 250, 0, []errorAt{{250, 5}}, true},
		{"above 5 K", 250, 0, []errorAt{{250, 5.01}}, false},
		{"50 K below the hottest", 250, 0, []errorAt{{200, 12}, {250, 0}}, false},
		{"further below", 250, 0, []errorAt{{199, 12}, {250, 0}}, true},
		{"half way up", 250, 0, []errorAt{{125, 2.5}}, true},
		{"half way up, too much", 250, 0, []errorAt{{125, 2.51}}, false},
		{"beyond the top", 200, 0, []errorAt{{250, 5}}, true},
		{"beyond the top, too much", 200, 0, []errorAt{{250, 5.01}}, false},
		{"four within 2 K", 250, 2, []errorAt{{250, 4}, {249, 4}, {248, 4}, {247, 4}}, true},
		{"four within 2 K, too much", 250, 2, []errorAt{{250, 4.01}, {249, 4}, {248, 4}, {247, 4}}, false},
	} {
		r := Ranking{TopC: c.topC, Thermometer: Thermometer{OffK: c.offK}, reference: straight(t, 0)}
		for _, p := range c.points {
			r.Points = append(r.Points, parser.SensorPoint{TempC: p.tempC, Ohm: 1000 + p.tempC - p.errorK})
		}
		if r.agrees() != c.want {
			t.Errorf("%s: agrees %v", c.name, !c.want)
		}
	}
}

// Three times 1 K of the thermometer come on top of 2.5 K within 100 K of the
// top, and of 10 K where it is cold.
func TestServes(t *testing.T) {
	for _, c := range []struct {
		tempC, errorK float64
		want          bool
	}{{160, 5.5, true}, {160, 5.6, false}, {160, -5.6, false}, {159.9, 13, true}, {159.9, 13.1, false},
		{260, 5.5, true}, {25, 13, true}, {25, -13.1, false}} {
		r := Ranking{TopC: 260, Thermometer: Thermometer{OffK: 1},
			Points: []parser.SensorPoint{{TempC: 200, Ohm: 500}, {TempC: c.tempC, Ohm: 1000}}}
		if r.serves([]float64{0, c.errorK}) != c.want {
			t.Errorf("%+v: it serves: %v", c, !c.want)
		}
	}
	// Twice as bad a thermometer allows 3 K more.
	r := Ranking{TopC: 260, Thermometer: Thermometer{OffK: 2}, Points: []parser.SensorPoint{{TempC: 260}}}
	if !r.serves([]float64{8.5}) || r.serves([]float64{8.6}) {
		t.Error("8.5 K are not the limit")
	}
}

// A known curve is written out by what follows it over the 100 K below the top, a
// fit as it is, and platinum not at all.
func TestCustom(t *testing.T) {
	// straight lines between points are no thermistor's, so that the range matters
	bead, err := FromTable(measure(known(t, "ntc-100k-3950"), 0, 50, 100, 150, 180, 220, 250, 300))
	if err != nil {
		t.Fatal(err)
	}
	fit := &Fitted{R25Ohm: 50e3, BetaK: 4000, Cubic: 1e-8, Points: measure(bead, 20, 100, 200)}
	for _, c := range []struct {
		name string
		r    Ranking
		form parser.SensorForm
		from string
		ok   bool
	}{
		{"known, as Beta", Ranking{Reference: "ntc-100k-3950"}, parser.FormBeta, "ntc-100k-3950", true},
		{"known, as points", Ranking{Reference: "ntc-100k-3950"}, parser.FormPoints, "ntc-100k-3950", true},
		{"known, as a chip", Ranking{Reference: "ntc-100k-3950", Beta: fit}, parser.FormAmplifier, "", false},
		{"fit, as Beta", Ranking{Beta: fit}, parser.FormBeta, "", true},
		{"fit, as points", Ranking{ThreePoint: fit}, parser.FormPoints, "", true},
		{"fit, as a chip", Ranking{ThreePoint: fit}, parser.FormAmplifier, "", false},
		{"neither", Ranking{}, parser.FormBeta, "", false},
		{"platinum", Ranking{Reference: "pt1000", R0Ohm: 1000}, parser.FormBeta, "", false},
	} {
		c.r.reference, c.r.TopC = bead, 260
		got := parser.SensorDef{Form: c.form}
		from, ok := c.r.custom(&got)
		if from != c.from || ok != c.ok {
			t.Errorf("%s: from %q, %v", c.name, from, ok)
		}
		var want parser.SensorDef
		switch {
		case !c.ok:
		case c.from == "" && c.form == parser.FormBeta:
			want = parser.SensorDef{R25Ohm: 50e3, BetaK: 4000, CubicC: 1e-8}
		case c.from == "":
			want.Points = fit.Points
		case c.form == parser.FormBeta:
			want.R25Ohm, want.BetaK, want.CubicC, _ = FitBeta(bead, 160, 260)
		default:
			want.Points, _ = FitPoints(bead, 160, 260)
		}
		if got.R25Ohm != want.R25Ohm || got.BetaK != want.BetaK || got.CubicC != want.CubicC ||
			!slices.Equal(got.Points, want.Points) {
			t.Errorf("%s: %+v, want %+v", c.name, got, want)
		}
	}
}

// By hand: firmware that believes 4.7 kΩ takes a Pt1000 on 1 kΩ for 4.7 times its
// resistance. 0.1 % of pull-up are not spoken of.
func TestPullupLeft(t *testing.T) {
	pt := known(t, "pt1000")
	r := rank(t, measure(pt, 25, 150, 250))
	def := parser.SensorDef{Kind: parser.Platinum, Form: parser.FormCurve, Curve: "pt1000"}
	left := func(boardOhm float64, beside bool) float64 {
		c, ok := r.choice(def, "pt1000", boardOhm, beside)
		if !ok {
			t.Fatalf("no choice on %g Ω", boardOhm)
		}
		return c.PullupK
	}
	want := pt.TempC(pt.Ohms(260)*1000/4700) - 260
	if got := left(1000, true); math.Abs(got-want) > 1e-6 {
		t.Errorf("%g K, want %g", got, want)
	}
	for _, ohm := range []float64{4700, 4704, 4696} {
		if got := left(ohm, true); got != 0 {
			t.Errorf("%g Ω leave %g K", ohm, got)
		}
	}
	if left(4705, true) == 0 || left(4695, true) == 0 || left(1000, false) != 0 {
		t.Error("a pull-up that is off is not told, or one that is no setting is")
	}
}
