package measure

import (
	"fmt"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"

	"preflash/cmd/internal/jsontext"
	"preflash/cmd/internal/plaintext"
	"preflash/patch"
	"preflash/rules/melt"
	"preflash/rules/unit"
)

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
	paragraph(&b, "",
		fmt.Sprintf("%s: filament of %s and %s. The loss is that of mass for each metre against the lowest "+
			"flow, where density, diameter and calibration cancel. The shortfall is against what was "+
			"commanded, and holds the errors of all three.",
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
	fmt.Fprintf(b, "%12s %15s %10s %8s %12s\n",
		"flow mm³/s", "filament mm/s", "g/m", "loss %", "shortfall %")
	for _, st := range s.Steps {
		fmt.Fprintf(b, "%12.1f %15.2f %10.3f %8s %12s\n", st.FlowMM3S, st.SpeedMMS, st.GPerM,
			percents(st.Loss), percents(st.Shortfall))
	}
	if s.Certain() {
		paragraph(b, "  ", t.usableText(s))
	}
	for _, note := range t.Notes(s) {
		paragraph(b, "  ", note)
	}
}

// usableText says up to which flow a series is usable.
func (t *FlowTrials) usableText(s *melt.Series) string {
	if s.Open {
		return fmt.Sprintf("The loss stays within %s up to %s, the highest flow tried: the limit lies above.",
			unit.Percent(t.Loss), unit.FlowRate(s.UsableMM3S))
	}
	area := math.Pi / 4 * t.FilamentMM * t.FilamentMM
	text := fmt.Sprintf("Usable up to %s, that is %s of filament: from there on more than %s is lost.",
		unit.FlowRate(s.UsableMM3S), unit.Speed(s.UsableMM3S/area), unit.Percent(t.Loss))
	if least, most := unit.Figure(s.LeastMM3S, 1), unit.FlowRate(s.MostMM3S); s.Repeated &&
		least+" mm³/s" != most {
		text += fmt.Sprintf(" By the scatter of the weighings it lies from %s to %s.", least, most)
	}
	return text
}

// percents writes a share with one decimal, and no negative zero.
func percents(share float64) string {
	text := strconv.FormatFloat(100*share, 'f', 1, 64)
	if text == "-0.0" {
		return "0.0"
	}
	return text
}

// Notes says what else a series tells.
func (t *FlowTrials) Notes(s *melt.Series) []string {
	var list plaintext.Remarks
	short := s.Shortfall()
	ref := &s.Steps[s.Reference]
	if s.Short > 0 {
		list.Add("At %s, the lowest flow, %s less came out than at the next ones. "+
			"No hotend does that: this trial is short, as where the filament was not pressed on before. "+
			"Weigh it again; the loss is judged against %s.",
			unit.FlowRate(s.Steps[0].FlowMM3S), unit.Percent(s.Short), unit.FlowRate(ref.FlowMM3S))
	}
	if s.Gained > 0 {
		st := &s.Steps[s.Gained]
		list.Add("At %s %s more came out for each metre than at %s, which no hotend does: "+
			"see commanded_mm and mass_g of both. Until then no usable flow can be told.",
			unit.FlowRate(st.FlowMM3S), unit.Percent(-st.Loss), unit.FlowRate(ref.FlowMM3S))
	}
	switch {
	case s.Missing:
		list.Add("%s is missing at %s already, where every hotend melts: the extruder's steps for "+
			"each mm are wrong, or the drive slips. Push 100 mm through without the hotend and measure. "+
			"Or the density is %s g/cm³: weigh a metre of the filament. Until then no usable flow "+
			"can be told.",
			unit.Percent(short), unit.FlowRate(ref.FlowMM3S), unit.Figure(t.densityOf(s)*(1-short), 2))
	case short > t.Loss:
		list.Add("%s is missing at the lowest flow already, where every hotend melts. "+
			"Look at the grip first: a worn or clogged drive, too little pressure on the filament; "+
			"a drive that grips from one side slips early, one with two driven gears does not (common "+
			"practice, no source). Or the extruder's calibration, the filament's diameter or its density "+
			"is off by as much.", unit.Percent(short))
	case s.Early && s.Cause == melt.Melting:
		list = append(list, "The loss starts at the lowest flows already, and still it is the melting that "+
			"limits: the usable flow rises with heat.")
	case s.Early:
		list = append(list, "The loss starts at the lowest flows already. That points to grip rather than "+
			"to melting: a drive that grips from one side slips early, one with two driven gears does not "+
			"(common practice, no source). Fix the grip and weigh again, or take this for what hotend and "+
			"drive do together.")
	case short < -gained:
		list.Add("%s more came out than was commanded: density, diameter or the commanded length is "+
			"wrong; the usable flow holds all the same.", unit.Percent(-short))
	}
	if s.Wide && s.Certain() {
		a, b := &s.Steps[s.Below], &s.Steps[s.Below+1]
		third := (b.FlowMM3S - a.FlowMM3S) / 3
		list.Add("From %s to %s the loss goes from %s %% to %s %%, and nothing was tried between: "+
			"weigh at %s and %s too. The usable flow is taken from a straight line.",
			unit.FlowRate(a.FlowMM3S), unit.FlowRate(b.FlowMM3S), percents(a.Loss), percents(b.Loss),
			unit.Figure(a.FlowMM3S+third, 1), unit.FlowRate(a.FlowMM3S+2*third))
	}
	if s.LateStart && s.Certain() {
		list.Add("The lowest flow, %s, is more than half of the usable one and may lose something "+
			"itself, which no loss against it shows: begin lower.", unit.FlowRate(ref.FlowMM3S))
	}
	for _, i := range s.Heavy {
		list.Add("At %s less is lost than at %s: one of the two was weighed wrong, "+
			"or the drive slipped once. Weigh both again.",
			unit.FlowRate(s.Steps[i].FlowMM3S), unit.FlowRate(s.Steps[i-1].FlowMM3S))
	}
	if s.Scatter > t.Loss/2 {
		list.Add("Weighings at one flow differ by %s %% (standard deviation), too much to tell a "+
			"loss of %s: press the filament on before each, extrude longer, weigh each flow three times.",
			percents(s.Scatter), unit.Percent(t.Loss))
	}
	if s.Coarse > 0 {
		list.Add("One step of the scale is %s of the lightest extrusion: weigh longer extrusions, "+
			"a metre or more.", unit.Figure(100*s.Coarse, 1)+" %")
	}
	return list
}

// densityOf is what a series was taken to have, g/cm³: what would have come out
// is what was missing and what was not.
func (t *FlowTrials) densityOf(s *melt.Series) float64 {
	st := &s.Steps[s.Reference]
	area := math.Pi / 4 * t.FilamentMM * t.FilamentMM
	return st.GPerM / (1 - st.Shortfall) / area
}

// summary prints what goes into the sheet of an extruder.
func (t *FlowTrials) summary(b *strings.Builder, e *melt.Extruder) {
	b.WriteByte('\n')
	for _, text := range Comparisons(e) {
		paragraph(b, "", text)
	}
	if e.MaxFlowMM3S == 0 {
		b.WriteString("# max_flow_mm3_s cannot be told from these trials.\n")
		return
	}
	limiting := &e.Series[e.Limiting]
	why := "the highest flow tried"
	if !limiting.Open {
		why = setupText(limiting.Setup)
	}
	fmt.Fprintf(b, "max_flow_mm3_s = %s   # [new.nozzle]; %s\n", unit.Figure(sheetFlow(e), 1),
		patch.Visible(why))
}

// Comparisons says what the series of an extruder tell together: what limits,
// and which filaments want limits of their own.
func Comparisons(e *melt.Extruder) []string {
	var list []string
	causes := map[melt.Cause]bool{}
	for _, h := range e.Heated {
		causes[h.Cause] = true
		list = append(list, heatedText(e, h))
	}
	for _, d := range e.Differ {
		list = append(list, differText(e, d))
	}
	early := slices.ContainsFunc(e.Series, func(s melt.Series) bool { return s.Early && s.Certain() })
	switch {
	case causes[melt.Grip] && len(e.Differ) > 0:
		list = append(list, "That filaments differ at one temperature goes with it: what a drive grips, "+
			"it grips differently.")
	case causes[melt.Melting], causes[melt.Grip]:
	case len(e.Differ) > 0, early:
		list = append(list, "Grip or melting? Weigh one filament at two temperatures, 20 K apart: "+
			"a melting limit rises with heat, by 10 % or more; a drive that slips hardly gains (common "+
			"practice, no source).")
	}
	if slices.ContainsFunc(e.Series, func(s melt.Series) bool { return !s.Repeated }) {
		list = append(list, "Where no flow was weighed twice, nothing tells the scatter: weigh each twice.")
	}
	return list
}

// heatedText says what heat changed for one filament.
func heatedText(e *melt.Extruder, h melt.Heated) string {
	cool, hot := &e.Series[h.Cooler], &e.Series[h.Hotter]
	more := ""
	if hot.Open {
		more = "more than "
	}
	text := fmt.Sprintf("%s: %s at %s, %s%s at %s. ", named(cool.Filament), unit.FlowRate(cool.UsableMM3S),
		unit.Celsius(cool.TempC),
		more, unit.FlowRate(hot.UsableMM3S), unit.Celsius(hot.TempC))
	switch h.Cause {
	case melt.Melting:
		return text + "The usable flow rises with heat, so that it is the melting that limits."
	case melt.Grip:
		return text + "The usable flow hardly rises with heat, as that of a drive that slips: " +
			"fix the grip before you judge the hotend."
	}
	return text + "That tells grip and melting not apart: the temperatures are too near to each other, " +
		"the weighings scatter, or it is both."
}

// differText says that two filaments want limits of their own.
func differText(e *melt.Extruder, d melt.Difference) string {
	slow, fast := &e.Series[d.Slower], &e.Series[d.Faster]
	return fmt.Sprintf("%s and %s differ: %s against %s. The sheet takes the lower; give each its own "+
		"limit in the slicer.",
		named(slow.Filament), named(fast.Filament),
		unit.FlowRate(slow.UsableMM3S), unit.FlowRate(fast.UsableMM3S))
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

// SeriesName tells the series of one extruder apart.
func SeriesName(s *melt.Series) string {
	setup := s.Setup
	setup.Extruder = ""
	return strings.TrimPrefix(setupText(setup), "filament ")
}

func named(filament string) string {
	if filament == "" {
		return "the filament without a name"
	}
	return filament
}

// paragraph prints text in lines of at most 80 columns.
func paragraph(b *strings.Builder, indent, text string) {
	b.WriteString(plaintext.Hanging(indent, indent, text, 80-len(indent)))
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
	MaxFlowMM3S any          `json:"max_flow_mm3_s"` // null where the trials do not tell it
	Limiting    int          `json:"limiting"`       // index into series
	Notes       []string     `json:"notes"`
	Series      []seriesJSON `json:"series"`
}

type seriesJSON struct {
	Filament   string     `json:"filament"`
	TempC      any        `json:"temp_c"`       // null where not given
	UsableMM3S any        `json:"usable_mm3_s"` // null where the trials do not tell it
	LeastMM3S  any        `json:"usable_least_mm3_s"`
	MostMM3S   any        `json:"usable_most_mm3_s"`
	Scatter    any        `json:"scatter"`  // a share, assumed where no flow was weighed twice
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
		notes := append([]string{}, Comparisons(e)...)
		x := extruderJSON{Extruder: e.Name, Limiting: e.Limiting, Notes: notes}
		if e.MaxFlowMM3S > 0 {
			x.MaxFlowMM3S = jsontext.Value(sheetFlow(e))
		}
		for j := range e.Series {
			s := &e.Series[j]
			row := seriesJSON{Filament: s.Filament, AtLeast: s.Open, Early: s.Early,
				Scatter: jsontext.Value(s.Scatter),
				Notes:   append([]string{}, t.Notes(s)...)}
			if s.Certain() {
				row.UsableMM3S, row.LeastMM3S, row.MostMM3S = jsontext.Value(s.UsableMM3S),
					jsontext.Value(s.LeastMM3S), jsontext.Value(s.MostMM3S)
			}
			if s.TempC != 0 {
				row.TempC = s.TempC
			}
			for _, st := range s.Steps {
				row.Steps = append(row.Steps,
					stepJSON{jsontext.Value(st.FlowMM3S), jsontext.Value(st.SpeedMMS), st.Trials,
						jsontext.Value(st.GPerM), jsontext.Value(st.Loss), jsontext.Value(st.Shortfall)})
			}
			x.Series = append(x.Series, row)
		}
		out.Extruders = append(out.Extruders, x)
	}
	return jsontext.Write(w, out)
}
