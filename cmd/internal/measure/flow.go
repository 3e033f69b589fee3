package measure

import (
	"errors"
	"math"

	"preflash/parser"
	"preflash/parser/record"
	"preflash/rules/melt"
)

// FlowOptions say what was extruded, and what counts as usable.
type FlowOptions struct {
	FilamentMM   float64
	DensityGCM3  float64 // where the file has none
	DensityGiven bool    // by a person
	LossPercent  float64 // the largest that counts as usable
}

// UsualFlow is what is taken where nobody says: filament of 1.75 mm, PLA's density,
// a loss of 5 %; common practice, no source.
var UsualFlow = FlowOptions{FilamentMM: 1.75, DensityGCM3: 1.24, LossPercent: 5}

// FlowTrials is what weighed extrusions tell.
type FlowTrials struct {
	File       string
	FilamentMM float64
	Loss       float64 // a share of 1
	// DensityGCM3 is what was taken where the file does not say; 0 where it
	// always does. DensityGiven: a person gave it.
	DensityGCM3  float64
	DensityGiven bool
	Extruders    []melt.Extruder
}

// JudgeFlow judges the weighed extrusions of a file.
func JudgeFlow(name string, o FlowOptions) (FlowTrials, error) {
	t := FlowTrials{FilamentMM: o.FilamentMM, Loss: o.LossPercent / 100, DensityGiven: o.DensityGiven}
	file, err := record.Open(name)
	if err != nil {
		return t, err
	}
	rec, err := record.ReadFlow(file)
	if err != nil {
		return t, err
	}
	t.File = file.Name
	trials := make([]melt.Trial, len(rec.Rows))
	for i, r := range rec.Rows {
		trials[i] = melt.Trial{
			FlowMM3S: r.FlowMM3S, CommandedMM: r.CommandedMM, MassG: r.MassG, MassStepG: rec.MassStepG,
			DensityGCM3: r.DensityGCM3,
			Setup:       melt.Setup{Extruder: r.Extruder, Filament: r.Filament, TempC: r.TempC},
		}
		if math.IsNaN(r.DensityGCM3) {
			trials[i].DensityGCM3, t.DensityGCM3 = o.DensityGCM3, o.DensityGCM3
		}
		if math.IsNaN(r.TempC) {
			trials[i].TempC = 0
		}
	}
	t.Extruders, err = melt.Judge(trials, melt.Options{FilamentMM: o.FilamentMM, Loss: t.Loss})
	var setup *melt.SetupError
	if errors.As(err, &setup) {
		return t, &parser.Error{File: file.Name, Line: lineOf(trials, setup.Setup, rec),
			Message: "begins trials that tell nothing: " + setup.Message}
	}
	return t, err
}

// lineOf is the first row of a setup.
func lineOf(trials []melt.Trial, s melt.Setup, rec *record.Flow) int {
	for i, t := range trials {
		if t.Setup == s {
			return rec.Rows[i].Line
		}
	}
	return 0
}
