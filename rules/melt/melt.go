// Package melt tells from weighed extrusions how much plastic a hotend and
// its extruder deliver. It knows no files.
//
// Two losses are told apart. The shortfall compares what came out with what was
// commanded, through density and filament diameter: it holds every error of
// these and of the extruder's calibration, which are easily some per cent, but no
// 10 %. The
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
	// usualScatter is that of a weighing where none was repeated: common
	// practice, no source.
	usualScatter = 0.01
	// mostShort is what density, diameter and calibration may leave missing at
	// the lowest flow: common practice, no source.
	mostShort = 0.1
	// mostGained is how much more than at the reference may come out for each
	// metre, and mostMass how many times what was commanded: what goes beyond was
	// written down wrong (common practice, no source).
	mostGained, mostMass = 0.1, 5.0
	// Steps are too far apart where the flow grows by this share from one that
	// is well to one that loses so many times the limit.
	wideStep, steepLoss = 0.3, 2.0
)

// Step is the mean of all trials of a setup at one flow.
type Step struct {
	FlowMM3S   float64
	SpeedMMS   float64 // of the filament
	Trials     int
	GPerM      float64 // mass for each commanded metre
	Loss       float64 // against the reference, a share of 1
	LossErr    float64 // its standard error
	Shortfall  float64 // against what was commanded
	resolution float64 // one step of the scale, as a share of the mass
	gPerMM     []float64
}

// Series is one setup's steps, by rising flow.
type Series struct {
	Setup
	Steps []Step
	// Reference is the step that losses are judged against: the lowest flow, or
	// the one above it where the lowest is short of all others by Short.
	Reference int
	Short     float64
	// Scatter is the standard deviation of a weighing, a share of 1. Repeated:
	// some flow was weighed twice, which tells it.
	Scatter  float64
	Repeated bool
	// UsableMM3S is the largest flow up to which the loss stays within the
	// limit, between steps by a straight line. Open: the limit was never
	// passed, and UsableMM3S is the highest flow tried.
	UsableMM3S float64
	Open       bool
	// The scatter leaves the usable flow between these.
	LeastMM3S, MostMM3S float64
	// Wide: the steps on either side of the limit are too far apart; they are
	// Below and the next.
	Wide  bool
	Below int
	// Heavy are steps at which more came out than at a lower flow, by more than
	// the scatter explains.
	Heavy []int
	// LateStart: the lowest flow is more than half of the usable one, and may
	// lose something itself.
	LateStart bool
	// Missing: more is missing at the reference than density, diameter and
	// calibration explain. Then the series tells no usable flow.
	Missing bool
	// Gained is a step at which more came out for each metre than at the reference,
	// by more than any scatter explains; 0 for none. Then neither does it.
	Gained int
	// Cause is what limits, as far as trials of the filament at other
	// temperatures tell.
	Cause Cause
	// Early: the loss starts at the lowest flows already, so that it is hardly
	// the melting that limits.
	Early bool
	// Coarse: one step of the scale is worth as much of the lightest
	// extrusion, where that is a noticeable share; otherwise 0.
	Coarse float64
}

// Shortfall is that at the reference, where melting does not limit yet.
func (s *Series) Shortfall() float64 { return s.Steps[s.Reference].Shortfall }

// Certain reports whether the series tells a usable flow.
func (s *Series) Certain() bool { return !s.Missing && s.Gained == 0 }

// Extruder is all series of one extruder.
type Extruder struct {
	Name   string
	Series []Series
	// MaxFlowMM3S is the lowest usable flow of its series, that of Limiting; 0
	// where none tells one.
	MaxFlowMM3S float64
	Limiting    int
	// Heated are the trials of one filament at two temperatures, and what they
	// tell.
	Heated []Heated
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
		return s, &SetupError{s.Setup, fmt.Sprintf("all trials are at %.3g mm³/s; weigh at two flows at "+
			"least, one of them low", base.FlowMM3S)}
	case base.GPerM == 0:
		return s, &SetupError{s.Setup,
			fmt.Sprintf("nothing came out at %.3g mm³/s, the lowest flow; start lower", base.FlowMM3S)}
	}
	s.weigh()
	s.refer()
	ref := &s.Steps[s.Reference]
	for i := range s.Steps {
		st := &s.Steps[i]
		st.Loss = 1 - st.GPerM/ref.GPerM
		st.LossErr = st.GPerM / ref.GPerM * math.Hypot(s.stdErr(st), s.stdErr(ref))
		if st.resolution > noticeable/2 {
			s.Coarse = max(s.Coarse, st.resolution)
		}
		if s.Gained == 0 && st.Loss < -mostGained-2*st.LossErr {
			s.Gained = i
		}
		if i > s.Reference+1 && st.Loss < s.Steps[i-1].Loss-noticeable-2*s.Scatter {
			s.Heavy = append(s.Heavy, i)
		}
	}
	tried := s.Steps[s.Reference:]
	s.UsableMM3S, s.Open = usable(tried, o.Loss, 0)
	s.LeastMM3S, _ = usable(tried, o.Loss, 2)
	s.MostMM3S, _ = usable(tried, o.Loss, -2)
	s.spaced(o.Loss)
	s.LateStart = !s.Open && ref.FlowMM3S > s.UsableMM3S/2
	s.Missing = s.Shortfall() > mostShort
	if got := 1 - s.Shortfall(); got > mostMass {
		return s, &SetupError{s.Setup, fmt.Sprintf("%.3g times what was commanded came out: is mass_g in "+
			"milligrams, or commanded_mm in cm or m? Give g and mm", got)}
	}
	s.Early = s.Shortfall() > o.Loss || early(tried)
	return s, nil
}

// weigh finds the scatter of a weighing, from flows that were weighed more than
// once: the root of the mean square about each flow's mean.
func (s *Series) weigh() {
	var sum, free float64
	for _, st := range s.Steps {
		mean := 0.0
		for _, g := range st.gPerMM {
			mean += g / float64(len(st.gPerMM))
		}
		for _, g := range st.gPerMM {
			if mean > 0 {
				off := g/mean - 1
				sum += off * off
			}
		}
		free += float64(len(st.gPerMM) - 1)
	}
	s.Scatter = usualScatter
	if s.Repeated = free > 0; s.Repeated {
		s.Scatter = math.Sqrt(sum / free)
	}
}

// stdErr is that of a step's mass for each metre, as a share, the scale's
// resolution included.
func (s *Series) stdErr(st *Step) float64 {
	rounding := st.resolution / math.Sqrt(12)
	return math.Hypot(s.Scatter, rounding) / math.Sqrt(float64(st.Trials))
}

// refer chooses the step that losses are judged against. No hotend delivers less
// at the lowest flow than at the next ones: where it did, that trial is short.
func (s *Series) refer() {
	first := &s.Steps[0]
	for i := 1; i < min(len(s.Steps), 3); i++ {
		st := &s.Steps[i]
		if first.GPerM/st.GPerM > 1-noticeable-2*math.Hypot(s.stdErr(first), s.stdErr(st)) {
			return
		}
	}
	s.Reference, s.Short = 1, 1-first.GPerM/s.Steps[1].GPerM
}

// spaced sees whether the steps on either side of the limit are near enough.
func (s *Series) spaced(limit float64) {
	for i := s.Reference + 1; i < len(s.Steps); i++ {
		a, b := &s.Steps[i-1], &s.Steps[i]
		if b.Loss > limit {
			s.Below = i - 1
			s.Wide = b.FlowMM3S > (1+wideStep)*a.FlowMM3S && b.Loss > steepLoss*limit
			return
		}
	}
}

// mean makes one step of the trials at one flow. Longer extrusions count more.
func mean(trials []Trial, areaMM2 float64) Step {
	var flow, mass, length, full float64
	s := Step{Trials: len(trials)}
	for _, t := range trials {
		flow += t.FlowMM3S / float64(len(trials))
		mass += t.MassG
		s.gPerMM = append(s.gPerMM, t.MassG/t.CommandedMM)
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

// usable finds where the loss, so many standard errors more, first passes the
// limit.
func usable(steps []Step, limit, more float64) (flow float64, open bool) {
	for i := 1; i < len(steps); i++ {
		a, b := steps[i-1], steps[i]
		from, to := a.Loss, b.Loss+more*b.LossErr
		if i > 1 {
			from += more * a.LossErr
		}
		if to > limit {
			return a.FlowMM3S + (b.FlowMM3S-a.FlowMM3S)*min(max((limit-from)/(to-from), 0), 1), false
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

// compare finds the series that limits, filaments that differ, and what heat
// changes.
func (e *Extruder) compare() {
	e.Limiting = -1
	for i := range e.Series {
		a := &e.Series[i]
		if a.Certain() && (e.Limiting < 0 || a.UsableMM3S < e.MaxFlowMM3S) {
			e.MaxFlowMM3S, e.Limiting = a.UsableMM3S, i
		}
		for j := range i {
			if !a.Certain() || !e.Series[j].Certain() {
				continue
			}
			if a.Filament == e.Series[j].Filament {
				e.heated(j, i)
			} else if a.TempC == e.Series[j].TempC {
				e.differ(j, i)
			}
		}
	}
	e.Limiting = max(e.Limiting, 0)
}

// differ notes two filaments whose usable flows differ at one temperature.
func (e *Extruder) differ(i, j int) {
	d := Difference{j, i}
	if e.Series[i].UsableMM3S < e.Series[j].UsableMM3S {
		d = Difference{i, j}
	}
	// An open series goes further than tried: only the lower of the two has to
	// be known.
	slow, fast := &e.Series[d.Slower], &e.Series[d.Faster]
	if !slow.Open && slow.UsableMM3S < (1-apart)*fast.UsableMM3S {
		e.Differ = append(e.Differ, d)
	}
}
