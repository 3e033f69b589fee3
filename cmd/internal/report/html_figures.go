package report

import (
	"html/template"
	"math"
	"strings"

	"preflash/cmd/internal/plot"
	"preflash/rules"
	"preflash/rules/unit"
)

// figure is one plot: a title that states the conclusion, the drawing, what to
// know about it, and its numbers.
type figure struct {
	Title string
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
	f := &figure{Title: p.Title, SVG: template.HTML(p.SVG())} // SVG escapes its texts
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

// draw adds the figures of a printer, as it is and with the diff applied.
func (v *printerView) draw(before, after *rules.Input) {
	for i, make := range []func(*swap) (*figure, string){sensorFigure, heatFigure, watchFigure, loopFigure, headroomFigure} {
		sw := &swap{before: before, after: after, id: v.ID + "-plot" + string(rune('1'+i))}
		f, why := make(sw)
		if f != nil {
			v.Figures = append(v.Figures, *f)
		} else if why != "" {
			v.NotDrawn = append(v.NotDrawn, shown(why))
		}
	}
	v.Nozzle, v.Power = nozzleText(before), powerText(before)
}

// swap is what a figure is drawn from.
type swap struct {
	before, after *rules.Input
	id            string // of the plot
}

// printStrip marks the range that the hotend will be asked for.
func printStrip(in *rules.Input) plot.Strip {
	low, high := printRange(in)
	return plot.Strip{Name: "asked for, " + unit.Figure(low, 1) + " to " + unit.Celsius(high), Low: low, High: high}
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
