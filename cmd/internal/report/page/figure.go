package page

import (
	"fmt"
	"html/template"
	"math"
	"slices"
	"strings"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/plot"
	"preflash/parser"
	"preflash/rules"
	"preflash/rules/unit"
)

// figure is one plot: a title that states the conclusion, the drawing, what to
// know about it, and its numbers.
type figure struct {
	ID    string
	Title string
	Backs []link // the findings that it proves
	SVG   template.HTML
	Notes []string
	Head  []string
	Rows  [][]string // one cell alone is the name of the rows below it
}

// figureOf draws a plot. The title and the notes are plain texts.
func figureOf(p *plot.Plot, title string, notes ...string) *figure {
	p.Title = shown(title)
	p.Desc = shown(p.Desc)
	for i := range p.Lines {
		p.Lines[i].Name = shown(p.Lines[i].Name)
	}
	for i := range p.Strips {
		p.Strips[i].Name = shown(p.Strips[i].Name)
	}
	f := &figure{ID: p.ID, Title: p.Title, SVG: template.HTML(p.SVG())} // SVG escapes its texts
	for _, n := range notes {
		if n != "" {
			f.Notes = append(f.Notes, shown(n))
		}
	}
	return f
}

// table gives the numbers of a figure: a column for each name.
func (f *figure) table(head ...string) { f.Head = head }

// row adds numbers, each with its decimals; one that does not exist is a dash.
func (f *figure) row(decimals int, values ...float64) {
	cells := make([]string, len(values))
	for i, v := range values {
		cells[i] = plot.Number(v, decimals)
	}
	f.Rows = append(f.Rows, cells)
}

// proofs draws the figures of a printer, each when the first finding asks for
// it that it proves.
type proofs struct {
	swap
	id    string
	drawn []*figure // by the index in proofKinds
}

func newProofs(id string, before, after *rules.Input) *proofs {
	return &proofs{swap: swap{before: before, after: after}, id: id, drawn: make([]*figure, len(proofKinds))}
}

// proofKind is a figure, and the findings that it proves: a rule, or a rule and
// its setting.
type proofKind struct {
	draw func(*swap) *figure
	of   []string
}

var proofKinds = []proofKind{
	{sensorFigure, []string{"sensor-curve"}},
	{heatFigure, []string{"temp-ceiling"}},
	{watchFigure, []string{
		"runaway-tight", "runaway-loose " + string(parser.HotendHeatingWindow),
		"runaway-loose " + string(parser.HotendErrorSum), "runaway-loose " + string(parser.HotendRise),
	}},
	{loopFigure, []string{"pid-stale"}},
	{headroomFigure, []string{"heater-overpower", "heater-headroom", "heater-underpower"}},
}

// of returns the id of the figure that proves a finding, "" where there is none;
// and the figure itself for the first finding that it proves.
func (p *proofs) of(f *fleet.Finding, back link) (id string, first *figure) {
	setting, _ := f.Values["setting"].(string)
	i := slices.IndexFunc(proofKinds, func(kind proofKind) bool {
		return slices.Contains(kind.of, f.Rule) || slices.Contains(kind.of, f.Rule+" "+setting)
	})
	if i < 0 || p.before == nil {
		return "", nil
	}
	if p.drawn[i] == nil {
		p.swap.id = fmt.Sprintf("%s-plot%d", p.id, i+1)
		if first = proofKinds[i].draw(&p.swap); first == nil {
			return "", nil
		}
		p.drawn[i] = first
	}
	if setting != "" {
		back.Text += ", " + setting
	}
	p.drawn[i].Backs = append(p.drawn[i].Backs, back)
	return p.drawn[i].ID, first
}

// swap is what a figure is drawn from.
type swap struct {
	before, after *rules.Input
	id            string // of the plot
}

// nearK is how far from the rest of a plot a rating may lie to be drawn in it, K.
const nearK = 100

// rate draws the rating of the hotend as a line, where it is not too far off.
func rate(in *rules.Input, p *plot.Plot, axis *plot.Axis, top float64) {
	rated, by := rules.Rating(in)
	if rated > top+nearK {
		return
	}
	if axis.High > axis.Low {
		axis.High = max(axis.High, rated+5)
		axis.Low = min(axis.Low, rated-5)
	} else {
		axis.Include = append(axis.Include, rated+5)
	}
	p.Marks = append(p.Marks, plot.Mark{At: rated, Horizontal: axis == &p.Y,
		Name: "rated, " + unit.Celsius(rated) + " by the " + by})
}

// printStrip marks the range that the hotend will be asked for.
func printStrip(in *rules.Input) plot.Strip {
	low, high := printRange(in)
	return plot.Strip{Name: "asked for, " + unit.Figure(low, 1) + " to " + unit.Celsius(high),
		Low: low, High: high}
}

func printRange(in *rules.Input) (low, high float64) {
	return in.Sheet.New.PrintC.Value[0], in.Sheet.New.PrintC.Value[1]
}

// assumedNote names the figures that the sheet leaves to be assumed.
func assumedNote(in *rules.Input) string {
	names := rules.Assumed(in)
	if len(names) == 0 {
		return ""
	}
	return "Assumed, since the sheet gives none: " + strings.Join(names, ", ") + "."
}

// grid returns round values from low to high, both of which it holds.
func grid(low, high, step float64) []float64 {
	values := []float64{low}
	for i := math.Floor(low/step) + 1; i*step < high && len(values) < 1000; i++ {
		values = append(values, i*step)
	}
	return append(values, high)
}

// sampled is a function as a line, and linePoints reads one off in many
// points.
func sampled(at []float64, y func(float64) float64) []plot.Point {
	points := make([]plot.Point, len(at))
	for i, x := range at {
		points[i] = plot.Point{X: x, Y: y(x)}
	}
	return points
}
