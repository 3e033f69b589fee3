package record

import (
	"math"
	"strings"

	"preflash/parser"
)

// Flow is a set of weighed extrusions:
// flow_mm3_s,commanded_mm,mass_g[,temp_c,filament,extruder,density_g_cm3].
type Flow struct {
	File *parser.File
	Rows []FlowRow
	// MassStepG is the finest digit that a mass was written with: the
	// resolution of the scale, where spreadsheets dropped no zeros.
	MassStepG float64
}

// FlowRow is one extrusion: CommandedMM of filament, pushed at a flow, weighed.
type FlowRow struct {
	Line        int
	FlowMM3S    float64
	CommandedMM float64
	MassG       float64
	TempC       float64 // NaN where not given
	DensityGCM3 float64 // NaN where not given
	Filament    string  // "" where not given
	Extruder    string
}

// ReadFlow reads weighed extrusions.
func ReadFlow(f *parser.File) (*Flow, error) {
	t, err := readTable(f, []column{
		{name: "flow_mm3_s", low: 0.01, high: 1000},
		{name: "commanded_mm", low: 1, high: 1e5},
		{name: "mass_g", low: 0, high: 1e4},
		{name: "temp_c", low: 0, high: 1000, optional: true, may: true},
		{name: "filament", text: true, optional: true},
		{name: "extruder", text: true, optional: true},
		{name: "density_g_cm3", low: 0.3, high: 10, optional: true, may: true},
	})
	if err != nil {
		return nil, err
	}
	flow := &Flow{File: f, Rows: make([]FlowRow, len(t.rows)), MassStepG: 1}
	for i, r := range t.rows {
		row := &flow.Rows[i]
		row.Line, row.Filament, row.Extruder = r.line, r.cells[4], r.cells[5]
		flow.MassStepG = min(flow.MassStepG, lastDigit(r.cells[2]))
		err := t.numbers(r,
			&row.FlowMM3S, &row.CommandedMM, &row.MassG, &row.TempC, &row.DensityGCM3)
		if err != nil {
			return nil, err
		}
	}
	return flow, nil
}

// lastDigit is what one step of the last digit of a written number is worth;
// 0 where it is written with an exponent, and cannot be told.
func lastDigit(text string) float64 {
	if strings.ContainsAny(text, "eExX") {
		return 0
	}
	_, fraction, _ := strings.Cut(text, ".")
	return math.Pow10(-len(fraction))
}
