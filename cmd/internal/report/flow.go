package report

import (
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"preflash/patch"
	"preflash/rules/melt"
	"preflash/rules/unit"
)

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

// gained is how much more than was commanded may come out before the figures
// are doubted, as a share: common practice, no source.
const gained = 0.1

// FlowText prints the loss at each flow and what to put in the sheet.
func FlowText(w io.Writer, t FlowTrials) error {
	var b strings.Builder
	density := "the file's density"
	if t.DensityGCM3 > 0 {
		density = unit.Figure(t.DensityGCM3, 3) + " g/cm³"
		if !t.DensityGiven {
			density += " (assumed, as of PLA; --density gives yours)"
		}
	}
	paragraph(&b, "", fmt.Sprintf("%s: filament of %s and %s. The loss is that of mass for each metre against the lowest flow, where density, diameter and calibration cancel. The shortfall is against what was commanded, and holds the errors of all three.",
		t.File, unit.Millimetres(t.FilamentMM), density))
	for i := range t.Extruders {
		e := &t.Extruders[i]
		for j := range e.Series {
			t.series(&b, &e.Series[j])
		}
		t.summary(&b, e)
	}
	_, err := io.WriteString(patch.HarmlessWriter(w), b.String())
	return err
}

func (t *FlowTrials) series(b *strings.Builder, s *melt.Series) {
	fmt.Fprintf(b, "\n%s\n", patch.Visible(setupText(s.Setup)))
	fmt.Fprintf(b, "%12s %15s %10s %8s %12s\n", "flow mm³/s", "filament mm/s", "g/m", "loss %", "shortfall %")
	for _, st := range s.Steps {
		fmt.Fprintf(b, "%12.1f %15.2f %10.3f %8s %12s\n", st.FlowMM3S, st.SpeedMMS, st.GPerM, percents(st.Loss), percents(st.Shortfall))
	}
	area := math.Pi / 4 * t.FilamentMM * t.FilamentMM
	if s.Open {
		paragraph(b, "  ", fmt.Sprintf("The loss stays within %s up to %s, the highest flow tried: the limit lies above.", unit.Percent(t.Loss), unit.FlowRate(s.UsableMM3S)))
	} else {
		paragraph(b, "  ", fmt.Sprintf("Usable up to %s, that is %s of filament: from there on more than %s is lost.", unit.FlowRate(s.UsableMM3S), unit.Speed(s.UsableMM3S/area), unit.Percent(t.Loss)))
	}
	for _, note := range t.notes(s) {
		paragraph(b, "  ", note)
	}
}

// percents writes a share with one decimal, and no negative zero.
func percents(share float64) string {
	text := strconv.FormatFloat(100*share, 'f', 1, 64)
	if text == "-0.0" {
		return "0.0"
	}
	return text
}

// notes says what else a series tells.
func (t *FlowTrials) notes(s *melt.Series) []string {
	var list []string
	short := s.Shortfall()
	switch {
	case short > t.Loss:
		list = append(list, fmt.Sprintf("%s is missing at the lowest flow already, where no hotend fails to melt. Look at the grip first: a worn or clogged drive, too little pressure on the filament; a drive that grips from one side slips early, one with two driven gears does not (common practice, no source). Or the extruder's calibration, the filament's diameter or its density is off by as much.", unit.Percent(short)))
	case s.Early:
		list = append(list, "The loss starts at the lowest flows already. That points to grip rather than to melting: a drive that grips from one side slips early, one with two driven gears does not (common practice, no source). Mend the grip and weigh again, or take this for what hotend and drive do together.")
	case short < -gained:
		list = append(list, fmt.Sprintf("%s more came out than was commanded: density, diameter or the commanded length is wrong; the usable flow holds all the same.", unit.Percent(-short)))
	}
	if s.Coarse > 0 {
		list = append(list, fmt.Sprintf("One step of the scale is %s of the lightest extrusion: weigh longer extrusions, a metre or more.", unit.Figure(100*s.Coarse, 1)+" %"))
	}
	return list
}

// summary prints what goes into the sheet of an extruder.
func (t *FlowTrials) summary(b *strings.Builder, e *melt.Extruder) {
	limiting := &e.Series[e.Limiting]
	b.WriteByte('\n')
	for _, d := range e.Differ {
		paragraph(b, "", differText(e, d))
	}
	why := "the highest flow tried"
	if !limiting.Open {
		why = setupText(limiting.Setup)
	}
	fmt.Fprintf(b, "max_flow_mm3_s = %s   # [new.nozzle]; %s\n", unit.Figure(sheetFlow(e), 1), patch.Visible(why))
}

// differText says that two filaments want limits of their own.
func differText(e *melt.Extruder, d melt.Difference) string {
	slow, fast := &e.Series[d.Slower], &e.Series[d.Faster]
	return fmt.Sprintf("%s and %s differ: %s against %s. The sheet takes the lower; give each its own limit in the slicer.",
		named(slow.Filament), named(fast.Filament), unit.FlowRate(slow.UsableMM3S), unit.FlowRate(fast.UsableMM3S))
}

// sheetFlow rounds a flow down to what a sheet needs.
func sheetFlow(e *melt.Extruder) float64 { return math.Floor(e.MaxFlowMM3S*10+1e-6) / 10 }

func setupText(s melt.Setup) string {
	var parts []string
	if s.Extruder != "" {
		parts = append(parts, "extruder "+s.Extruder)
	}
	if s.Filament != "" {
		parts = append(parts, "filament "+s.Filament)
	}
	if s.TempC != 0 {
		parts = append(parts, unit.Celsius(s.TempC))
	}
	if parts == nil {
		return "all trials"
	}
	return strings.Join(parts, ", ")
}

func named(filament string) string {
	if filament == "" {
		return "the filament without a name"
	}
	return filament
}

// paragraph prints text in lines of at most 80 columns.
func paragraph(b *strings.Builder, indent, text string) {
	for _, line := range wrap(patch.Visible(text), 80-len(indent)) {
		b.WriteString(indent + line + "\n")
	}
}

type flowJSON struct {
	File        string         `json:"file"`
	FilamentMM  float64        `json:"filament_mm"`
	DensityGCM3 any            `json:"density_g_cm3"` // null where the file says it
	LossLimit   float64        `json:"loss_limit"`
	Extruders   []extruderJSON `json:"extruders"`
}

type extruderJSON struct {
	Extruder    string       `json:"extruder"`
	MaxFlowMM3S any          `json:"max_flow_mm3_s"`
	Limiting    int          `json:"limiting"` // index into series
	Series      []seriesJSON `json:"series"`
}

type seriesJSON struct {
	Filament   string     `json:"filament"`
	TempC      any        `json:"temp_c"` // null where not given
	UsableMM3S any        `json:"usable_mm3_s"`
	AtLeast    bool       `json:"at_least"` // the limit lies above the highest flow tried
	Early      bool       `json:"early"`
	Notes      []string   `json:"notes"`
	Steps      []stepJSON `json:"steps"`
}

type stepJSON struct {
	FlowMM3S     any `json:"flow_mm3_s"`
	FilamentMMS  any `json:"filament_mm_s"`
	Trials       int `json:"trials"`
	GPerM        any `json:"g_per_m"`
	LossShare    any `json:"loss"`
	MissingShare any `json:"shortfall"`
}

// FlowJSON prints the same for programs. Losses are shares of 1.
func FlowJSON(w io.Writer, t FlowTrials) error {
	out := flowJSON{File: t.File, FilamentMM: t.FilamentMM, LossLimit: t.Loss, Extruders: []extruderJSON{}}
	if t.DensityGCM3 > 0 {
		out.DensityGCM3 = t.DensityGCM3
	}
	for i := range t.Extruders {
		e := &t.Extruders[i]
		x := extruderJSON{Extruder: e.Name, MaxFlowMM3S: plainValue(sheetFlow(e)), Limiting: e.Limiting}
		for j := range e.Series {
			s := &e.Series[j]
			row := seriesJSON{Filament: s.Filament, UsableMM3S: plainValue(s.UsableMM3S), AtLeast: s.Open, Early: s.Early,
				Notes: append([]string{}, t.notes(s)...)}
			if s.TempC != 0 {
				row.TempC = s.TempC
			}
			for _, st := range s.Steps {
				row.Steps = append(row.Steps, stepJSON{plainValue(st.FlowMM3S), plainValue(st.SpeedMMS), st.Trials,
					plainValue(st.GPerM), plainValue(st.Loss), plainValue(st.Shortfall)})
			}
			x.Series = append(x.Series, row)
		}
		out.Extruders = append(out.Extruders, x)
	}
	return writeJSON(w, out)
}
