package page

import (
	"fmt"
	"math"
	"slices"

	"preflash/cmd/internal/measure"
	"preflash/cmd/internal/plot"
	"preflash/rules/melt"
	"preflash/rules/unit"
)

// trialsView is the section of weighed extrusions.
type trialsView struct {
	File      string
	Extruders []extruderView
}

type extruderView struct {
	ID, Title string
	Figures   []figure
}

// trialsOf draws weighed extrusions, and marks the flow of the sheet where
// there is one.
func trialsOf(t *measure.FlowTrials, sheetMM3S float64) *trialsView {
	if t == nil {
		return nil
	}
	view := &trialsView{File: shown(t.File)}
	for i := range t.Extruders {
		e := &t.Extruders[i]
		x := extruderView{ID: fmt.Sprintf("trials%d", i+1), Title: "All trials"}
		if e.Name != "" {
			x.Title = shown("Extruder " + e.Name)
		}
		from := 0
		for series := range slices.Chunk(e.Series, plot.Styles) {
			id := fmt.Sprintf("%s-plot%d", x.ID, len(x.Figures)+1)
			x.Figures = append(x.Figures, *trialsFigure(t, e, series, from, id, sheetMM3S))
			from += len(series)
		}
		view.Extruders = append(view.Extruders, x)
	}
	return view
}

// trialsFigure shows what is lost at each flow, for as many series as there
// are line styles.
func trialsFigure(t *measure.FlowTrials, e *melt.Extruder, series []melt.Series, from int, id string,
	sheetMM3S float64) *figure {
	p := &plot.Plot{
		ID: id,
		Desc: "Share of the plastic that is lost over the flow, against the lowest flow, " +
			"for each filament and temperature.",
		X:     plot.Axis{Label: "flow, mm³/s", Include: []float64{0}},
		Y:     plot.Axis{Label: "loss against the lowest flow, %", Include: []float64{0, 120 * t.Loss}},
		Marks: []plot.Mark{{At: 100 * t.Loss, Horizontal: true, Name: "largest loss that counts as usable"}},
	}
	if sheetMM3S > 0 {
		p.X.Include = append(p.X.Include, sheetMM3S)
		p.Marks = append(p.Marks, plot.Mark{At: sheetMM3S, Name: "max flow of the sheet"})
	}
	least := 0
	var notes []string
	for i := range series {
		s := &series[i]
		if s.UsableMM3S < series[least].UsableMM3S {
			least = i
		}
		line := plot.Line{Name: measure.SeriesName(s), Style: i, Dots: true}
		for _, st := range s.Steps {
			line.Points = append(line.Points, plot.Point{X: st.FlowMM3S, Y: 100 * st.Loss})
		}
		p.Lines = append(p.Lines, line)
		for _, note := range t.Notes(s) {
			notes = append(notes, measure.SeriesName(s)+": "+note)
		}
	}
	if from == 0 {
		notes = append(notes, measure.Comparisons(e)...)
	}
	f := figureOf(p, trialsTitle(t, &series[least]), notes...)
	f.table("flow, mm³/s", "filament, mm/s", "mass, g/m", "loss, %", "short of what was commanded, %")
	for i := range series {
		if len(series) > 1 {
			f.Rows = append(f.Rows, []string{shown(measure.SeriesName(&series[i]))})
		}
		for _, st := range series[i].Steps {
			f.Rows = append(f.Rows, []string{
				plot.Number(st.FlowMM3S, 1), plot.Number(st.SpeedMMS, 2), plot.Number(st.GPerM, 3),
				plot.Number(100*st.Loss, 1), plot.Number(100*st.Shortfall, 1),
			})
		}
	}
	return f
}

func trialsTitle(t *measure.FlowTrials, s *melt.Series) string {
	if s.Missing {
		return "The trials tell no usable flow: too much is missing at the lowest"
	}
	if s.Open {
		return fmt.Sprintf("No more than %s is lost up to %s, the highest flow tried", unit.Percent(t.Loss),
			unit.FlowRate(s.UsableMM3S))
	}
	area := math.Pi / 4 * t.FilamentMM * t.FilamentMM
	return fmt.Sprintf("Up to %s no more than %s is lost: %s of filament", unit.FlowRate(s.UsableMM3S),
		unit.Percent(t.Loss), unit.Speed(s.UsableMM3S/area))
}
