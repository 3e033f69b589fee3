package plot

import (
	"bytes"
	"encoding/xml"
	"flag"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"preflash/cmd/internal/testfiles"
)

var update = flag.Bool("update", false, "write the golden files anew")

// sample has one of everything.
func samplePlot() *Plot {
	curve := func(y func(float64) float64) []Point {
		var points []Point
		for x := 100.0; x <= 300; x += 5 {
			points = append(points, Point{x, y(x)})
		}
		return points
	}
	return &Plot{
		ID: "sample", Title: "While 190 °C is shown, the nozzle is at 197 °C",
		Desc: "A parabola, its negative half, a band and marks.",
		X:    Axis{Label: "indicated temperature, °C"},
		Y:    Axis{Label: "error, K", Low: -8, High: 12},
		Strips: []Strip{{Name: "asked for", Low: 190, High: 255},
			{Name: "settled", Horizontal: true, Low: -1, High: 1}},
		Areas: []Area{{Name: "uncertainty",
			Low:  curve(func(x float64) float64 { return -x / 80 }),
			High: curve(func(x float64) float64 { return x / 80 })}},
		Lines: []Line{
			{Name: "solid", Points: curve(func(x float64) float64 { return 10 - (x-170)*(x-170)/1000 })},
			{Name: "leaves <the> plot & comes back", Style: 1,
				Points: curve(func(x float64) float64 { return 20 * math.Sin(x/25) })},
			{Name: "dots with a gap", Style: 2, Dots: true,
				Points: []Point{{110, 5}, {120, 6}, {130, math.NaN()}, {140, 5}, {150, 4}}},
			{Name: "one point", Style: 3, Points: []Point{{280, -6}}},
		},
		Marks: []Mark{{Name: "target", At: 260}, {Name: "limit", At: 285}, {Name: "zero", Horizontal: true}},
	}
}

// The golden file is a picture: look at it in any browser.
func TestGolden(t *testing.T) {
	got := samplePlot().SVG()
	testfiles.Golden(t, *update, "testdata/sample.svg", string(got))
	if again := samplePlot().SVG(); !bytes.Equal(got, again) {
		t.Error("the same plot gave two drawings")
	}
}

func TestTicks(t *testing.T) {
	tests := []struct {
		low, high float64
		about     int
		want      string
	}{
		{0, 100, 5, "0 20 40 60 80 100"},
		{22, 318, 8, "50 100 150 200 250 300"},
		{-40, 10, 5, "−40 −30 −20 −10 0 10"},
		{0, 0.7, 5, "0.0 0.2 0.4 0.6"},
		{0.001, 0.0031, 4, "0.001 0.002 0.003"},
		{-0.3, 0.3, 6, "−0.3 −0.2 −0.1 0.0 0.1 0.2 0.3"},
		{9.99e9, 1e10, 2, "9990000000 9995000000 10000000000"},
		{5, 5, 5, ""},
		{7, 3, 5, ""},
		{0, math.Inf(1), 5, ""},
		{math.NaN(), 1, 5, ""},
	}
	for _, tt := range tests {
		k := ticksOf(span{tt.low, tt.high}, tt.about)
		var labels []string
		for i := range k.at {
			labels = append(labels, k.label(i))
		}
		if got := strings.Join(labels, " "); got != tt.want {
			t.Errorf("ticks of %g to %g, about %d: %s, want %s", tt.low, tt.high, tt.about, got, tt.want)
		}
	}
}

// Ticks lie in the range, evenly, in steps of 1, 2 or 5 times a power of ten,
// and their labels tell them apart.
func TestTicksProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		low := rapid.Float64Range(-1e6, 1e6).Draw(t, "low")
		width := math.Pow(10, rapid.Float64Range(-3, 6).Draw(t, "log width"))
		about := rapid.IntRange(2, 12).Draw(t, "about")
		k := ticksOf(span{low, low + width}, about)
		if len(k.at) < 1 || len(k.at) > about+1 {
			t.Fatalf("%d ticks, about %d were asked for", len(k.at), about)
		}
		seen := map[string]bool{}
		for i, v := range k.at {
			if v < low-1e-6*width || v > low+width*(1+1e-6) {
				t.Errorf("%g lies outside", v)
			}
			label := k.label(i)
			if seen[label] {
				t.Errorf("%s stands twice", label)
			}
			seen[label] = true
			read, err := strconv.ParseFloat(strings.Replace(label, "−", "-", 1), 64)
			if err != nil || math.Abs(read-v) > 1e-6*width {
				t.Errorf("%g is labelled %s", v, label)
			}
			if i > 0 {
				step := v - k.at[i-1]
				unit := step / math.Pow(10, math.Floor(math.Log10(step)+1e-6))
				if math.Abs(unit-1) > 1e-3 && math.Abs(unit-2) > 1e-3 && math.Abs(unit-5) > 1e-3 {
					t.Errorf("a step of %g", step)
				}
			}
		}
	})
}

var anyNumber = rapid.OneOf(
	rapid.SampledFrom([]float64{0, 1, -1, math.NaN(), math.Inf(1), math.Inf(-1), math.MaxFloat64,
		-math.MaxFloat64, math.SmallestNonzeroFloat64, 1e12, 1e-12}),
	rapid.Float64(),
	rapid.Float64Range(-300, 300),
)

func anyPoints(t *rapid.T, label string) []Point {
	return rapid.SliceOfN(rapid.Custom(func(t *rapid.T) Point {
		return Point{anyNumber.Draw(t, "x"), anyNumber.Draw(t, "y")}
	}), 0, 20).Draw(t, label)
}

var coordinate = regexp.MustCompile(`-?\d+(\.\d+)?`)

// Whatever the numbers and names are, the drawing is well-formed, holds no
// number that is none, and stays within its bounds.
func TestAnyInput(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		name := rapid.String()
		axis := func(label string) Axis {
			return Axis{Label: name.Draw(t, label), Low: anyNumber.Draw(t, "low"),
				High: anyNumber.Draw(t, "high"), Include: []float64{anyNumber.Draw(t, "include")}}
		}
		p := &Plot{
			ID: "x", Title: name.Draw(t, "title"), X: axis("x axis"), Y: axis("y axis"),
			Strips: []Strip{{Name: name.Draw(t, "strip"), Horizontal: rapid.Bool().Draw(t, "horizontal"),
				Low: anyNumber.Draw(t, "from"), High: anyNumber.Draw(t, "to")}},
			Areas: []Area{{Low: anyPoints(t, "low"), High: anyPoints(t, "high")}},
			Lines: []Line{{Name: name.Draw(t, "line"), Style: rapid.Int().Draw(t, "style"),
				Points: anyPoints(t, "points"), Dots: rapid.Bool().Draw(t, "dots")}},
			Marks: []Mark{{At: anyNumber.Draw(t, "mark"), Horizontal: rapid.Bool().Draw(t, "lies")},
				{Name: "second", At: anyNumber.Draw(t, "mark 2")}},
		}
		for _, el := range elements(t, p.SVG()) {
			for _, a := range el.Attr {
				switch a.Name.Local {
				case "d", "x", "y", "cx", "cy":
					for _, s := range coordinate.FindAllString(a.Value, -1) {
						if v, err := strconv.ParseFloat(s, 64); err != nil || v < -10 || v > 2*width {
							t.Errorf("%s = %s lies outside", a.Name.Local, a.Value)
						}
					}
					if rest := coordinate.ReplaceAllString(a.Value, ""); strings.Trim(rest, "MLHVZ ") != "" {
						t.Errorf("%s = %s", a.Name.Local, a.Value)
					}
				}
			}
		}
	})
}

// elements reads the drawing as XML.
func elements(t interface{ Fatalf(string, ...any) }, svg []byte) []xml.StartElement {
	var all []xml.StartElement
	// Characters that XML forbids are the caller's business.
	clean := strings.Map(func(r rune) rune {
		if r < ' ' && r != '\n' && r != '\t' && r != '\r' || r == 0xfffe || r == 0xffff {
			return -1
		}
		return r
	}, string(svg))
	for d := xml.NewDecoder(strings.NewReader(clean)); ; {
		token, err := d.Token()
		if err == io.EOF {
			return all
		}
		if err != nil {
			t.Fatalf("not well-formed: %v\n%s", err, svg)
		}
		if el, ok := token.(xml.StartElement); ok {
			all = append(all, el.Copy())
		}
	}
}

// A line that is simplified is nowhere further off than the tolerance.
func TestSimplify(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		run := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) pixel {
			return pixel{rapid.Float64Range(0, 700).Draw(t, "x"), rapid.Float64Range(0, 300).Draw(t, "y")}
		}), 1, 40).Draw(t, "run")
		before := append([]pixel(nil), run...)
		after := simplify(run)
		if after[0] != before[0] || after[len(after)-1] != before[len(before)-1] {
			t.Fatal("an end was lost")
		}
		for _, p := range before {
			near := len(after) == 1
			for i := 1; i < len(after); i++ {
				near = near || distance2(p, after[i-1], after[i]) <= tolerance*tolerance+1e-9
			}
			if !near {
				t.Errorf("%v is far from the simplified line", p)
			}
		}
	})
	straight := make([]pixel, 1000)
	for i := range straight {
		straight[i] = pixel{float64(i), float64(2 * i)}
	}
	if got := simplify(straight); len(got) != 2 {
		t.Errorf("a straight line kept %d points, want 2", len(got))
	}
}

// What clip leaves lies in the box and on the line.
func TestClip(t *testing.T) {
	box := [2]span{{0, 10}, {-5, 5}}
	tests := []struct {
		a, b, from, to Point
		ok             bool
	}{
		{Point{1, 1}, Point{2, 2}, Point{1, 1}, Point{2, 2}, true},
		{Point{-5, 0}, Point{15, 0}, Point{0, 0}, Point{10, 0}, true},
		{Point{5, 0}, Point{5, 20}, Point{5, 0}, Point{5, 5}, true},
		{Point{5, 20}, Point{5, 0}, Point{5, 5}, Point{5, 0}, true},
		{Point{11, 0}, Point{12, 0}, Point{}, Point{}, false},
		{Point{-1, 6}, Point{11, 6}, Point{}, Point{}, false},
		{Point{3, 3}, Point{3, 3}, Point{3, 3}, Point{3, 3}, true},
	}
	for _, tt := range tests {
		from, to, ok := clip(tt.a, tt.b, box)
		if ok != tt.ok || ok && (from != tt.from || to != tt.to) {
			t.Errorf("clip %v to %v: %v to %v, %v; want %v to %v, %v",
				tt.a, tt.b, from, to, ok, tt.from, tt.to, tt.ok)
		}
	}
}

func TestNumber(t *testing.T) {
	tests := []struct {
		x        float64
		decimals int
		want     string
	}{
		{-3.25, 1, "−3.2"}, {-0.04, 1, "0.0"}, {0, 0, "0"}, {12.5, 2, "12.50"}, {math.NaN(), 1, "–"},
		{math.Inf(-1), 1, "–"},
	}
	for _, tt := range tests {
		if got := Number(tt.x, tt.decimals); got != tt.want {
			t.Errorf("Number(%g, %d) = %q, want %q", tt.x, tt.decimals, got, tt.want)
		}
	}
}
