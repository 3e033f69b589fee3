// Package melt tells from weighed extrusions how much plastic a hotend and
// its extruder deliver. It knows no files.
//
// Two losses are told apart. The shortfall compares what came out with what was
// commanded, through density and filament diameter: it holds every error of
// these and of the extruder's calibration, which are easily some per cent. The
// loss compares the mass of each metre with that at the lowest flow, where all
// of these cancel: it holds nothing but what the flow takes away, and is what
// the usable flow is judged by.
package melt

import (
	"cmp"
	"fmt"
	"math"
	"slices"
)

// Trial is one weighed extrusion.
type Trial struct {
	FlowMM3S    float64
	CommandedMM float64 // of filament
	MassG       float64
	MassStepG   float64 // resolution of the scale; 0 where not known
	DensityGCM3 float64
	Setup
}

// Setup is what may not be mixed: trials of one setup belong together.
type Setup struct {
	Extruder string
	Filament string
	TempC    float64 // 0 where not known
}

// Options are what the trials do not say.
type Options struct {
	FilamentMM float64 // diameter
	Loss       float64 // largest that counts as usable, a share of 1
}

const (
	// sameFlow is how near two flows are that count as one, as a share.
	sameFlow = 0.02
	// noticeable is a loss that shows behind the scatter of weighing: common
	// practice, no source.
	noticeable = 0.02
	// apart is how far two filaments' usable flows differ to speak of it:
	// common practice, no source.
	apart = 0.1
)

// Step is the mean of all trials of a setup at one flow.
type Step struct {
	FlowMM3S   float64
	SpeedMMS   float64 // of the filament
	Trials     int
	GPerM      float64 // mass for each commanded metre
	Loss       float64 // against the lowest flow, a share of 1
	Shortfall  float64 // against what was commanded
	resolution float64 // one step of the scale, as a share of the mass
}

// Series is one setup's steps, by rising flow.
type Series struct {
	Setup
	Steps []Step
	// UsableMM3S is the largest flow up to which the loss stays within the
	// limit, between steps by a straight line. Open: the limit was never
	// passed, and UsableMM3S is the highest flow tried.
	UsableMM3S float64
	Open       bool
	// Early: the loss starts at the lowest flows already, so that it is hardly
	// the melting that limits.
	Early bool
	// Coarse: one step of the scale is worth as much of the lightest
	// extrusion, where that is a noticeable share; otherwise 0.
	Coarse float64
}

// Shortfall is that at the lowest flow, where melting does not limit yet.
func (s *Series) Shortfall() float64 { return s.Steps[0].Shortfall }

// Extruder is all series of one extruder.
type Extruder struct {
	Name   string
	Series []Series
	// MaxFlowMM3S is the lowest usable flow of its series, that of Limiting.
	MaxFlowMM3S float64
	Limiting    int
	// Differ: usable flows of two filaments at one temperature differ so much
	// that one figure for both wastes some.
	Differ []Difference
}

// Difference is two series of one extruder and temperature, by index.
type Difference struct{ Slower, Faster int }

// Judge sorts trials into series and finds each one's usable flow. It fails
// where a series has a single flow, or nothing came out at its lowest.
func Judge(trials []Trial, o Options) ([]Extruder, error) {
	trials = slices.Clone(trials)
	slices.SortStableFunc(trials, func(a, b Trial) int {
		return cmp.Or(cmp.Compare(a.Extruder, b.Extruder), cmp.Compare(a.Filament, b.Filament),
			cmp.Compare(a.TempC, b.TempC), cmp.Compare(a.FlowMM3S, b.FlowMM3S))
	})
	var all []Extruder
	for len(trials) > 0 {
		n := 1
		for n < len(trials) && trials[n].Setup == trials[0].Setup {
			n++
		}
		s, err := judge(trials[:n], o)
		if err != nil {
			return nil, err
		}
		if len(all) == 0 || all[len(all)-1].Name != s.Extruder {
			all = append(all, Extruder{Name: s.Extruder})
		}
		e := &all[len(all)-1]
		e.Series = append(e.Series, s)
		trials = trials[n:]
	}
	for i := range all {
		all[i].compare()
	}
	return all, nil
}

// SetupError is a setup whose trials do not suffice.
type SetupError struct {
	Setup
	Message string
}

func (e *SetupError) Error() string { return e.Message }

func judge(trials []Trial, o Options) (Series, error) {
	s := Series{Setup: trials[0].Setup}
	area := math.Pi / 4 * o.FilamentMM * o.FilamentMM
	for len(trials) > 0 {
		n := 1
		for n < len(trials) && trials[n].FlowMM3S <= trials[0].FlowMM3S*(1+sameFlow) {
			n++
		}
		s.Steps = append(s.Steps, mean(trials[:n], area))
		trials = trials[n:]
	}
	switch base := s.Steps[0]; {
	case len(s.Steps) < 2:
		return s, &SetupError{s.Setup, fmt.Sprintf("all trials are at %.3g mm³/s; weigh at two flows at least, one of them low", base.FlowMM3S)}
	case base.GPerM == 0:
		return s, &SetupError{s.Setup, fmt.Sprintf("nothing came out at %.3g mm³/s, the lowest flow; start lower", base.FlowMM3S)}
	}
	for i := range s.Steps {
		s.Steps[i].Loss = 1 - s.Steps[i].GPerM/s.Steps[0].GPerM
		if r := s.Steps[i].resolution; r > noticeable/2 {
			s.Coarse = max(s.Coarse, r)
		}
	}
	s.UsableMM3S, s.Open = usable(s.Steps, o.Loss)
	s.Early = s.Shortfall() > o.Loss || early(s.Steps)
	return s, nil
}

// mean makes one step of the trials at one flow. Longer extrusions count more.
func mean(trials []Trial, areaMM2 float64) Step {
	var flow, mass, length, full float64
	s := Step{Trials: len(trials)}
	for _, t := range trials {
		flow += t.FlowMM3S / float64(len(trials))
		mass += t.MassG
		length += t.CommandedMM
		full += t.CommandedMM * areaMM2 * t.DensityGCM3 / 1000 // g
		if t.MassG > 0 {
			s.resolution = max(s.resolution, t.MassStepG/t.MassG)
		}
	}
	s.FlowMM3S, s.SpeedMMS = flow, flow/areaMM2
	s.GPerM, s.Shortfall = 1000*mass/length, 1-mass/full
	return s
}

// usable finds where the loss first passes the limit.
func usable(steps []Step, limit float64) (flow float64, open bool) {
	for i := 1; i < len(steps); i++ {
		a, b := steps[i-1], steps[i]
		if b.Loss > limit {
			return a.FlowMM3S + (b.FlowMM3S-a.FlowMM3S)*(limit-a.Loss)/(b.Loss-a.Loss), false
		}
	}
	return steps[len(steps)-1].FlowMM3S, true
}

// early reports whether the loss grows from the lowest flow on, in the lower
// half of what was tried, and not only past a knee.
func early(steps []Step) bool {
	if len(steps) < 3 {
		return false
	}
	second, last := steps[1], steps[len(steps)-1]
	return second.Loss > noticeable && second.FlowMM3S <= last.FlowMM3S/2
}

// compare finds the series that limits, and filaments that differ.
func (e *Extruder) compare() {
	for i := range e.Series {
		a := &e.Series[i]
		if i == 0 || a.UsableMM3S < e.MaxFlowMM3S {
			e.MaxFlowMM3S, e.Limiting = a.UsableMM3S, i
		}
		for j := range i {
			b := &e.Series[j]
			if a.TempC != b.TempC || a.Filament == b.Filament {
				continue
			}
			d := Difference{i, j}
			if b.UsableMM3S < a.UsableMM3S {
				d = Difference{j, i}
			}
			// An open series goes further than tried: only the lower of the
			// two has to be known.
			slow, fast := &e.Series[d.Slower], &e.Series[d.Faster]
			if !slow.Open && slow.UsableMM3S < (1-apart)*fast.UsableMM3S {
				e.Differ = append(e.Differ, d)
			}
		}
	}
}
