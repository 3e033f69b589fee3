package measure

import (
	"cmp"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"preflash/cmd/internal/jsontext"
	"preflash/cmd/internal/plaintext"
	"preflash/parser"
	"preflash/patch"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

func (s *SensorRank) width() int { return cmp.Or(s.Width, 80) }

func (s *SensorRank) paragraph(b *strings.Builder, format string, args ...any) {
	b.WriteString(plaintext.Hanging("", "", fmt.Sprintf(format, args...), s.width()))
}

// pointsAbreast is how many points go into one table.
func (s *SensorRank) pointsAbreast() int {
	const others = 33 // columns of the name, the rms and the top
	if s.width() >= 80 {
		return 7
	}
	return max(1, (s.width()-others)/8)
}

// RankText prints the ranking, what each style should use, and what to mind.
func RankText(w io.Writer, s SensorRank) error {
	var b strings.Builder
	r := s.Ranking
	low, high := span(r.Points)
	how := ""
	if s.Used != "" {
		how = ", told from what firmware with " + s.Used + " indicated"
	}
	s.paragraph(&b, "%s: %d points from %s to %s%s. The thermometer is taken to be good to %s. "+
		"Errors are actual − indicated in K, of firmware that believes the curve; "+
		"the last column is at %s indicated, the sensor taken for %s.",
		s.File, len(r.Points), unit.Celsius(low), unit.Celsius(high), how, s.thermometer(),
		unit.Celsius(r.TopC), s.takenFor())
	for from := 0; from < len(r.Points); from += s.pointsAbreast() {
		s.table(&b, from, min(from+s.pointsAbreast(), len(r.Points)))
	}
	b.WriteByte('\n')
	s.possible(&b)
	if r.Reference == "" {
		s.fits(&b)
	}
	if s.certain() {
		b.WriteString("\nWhat each style should use:\n")
		for _, c := range s.Choices {
			s.choice(&b, c)
		}
	} else {
		b.WriteString("\nWhich definition to use cannot be told from these points.\n")
	}
	if doubts := s.doubts(); len(doubts) > 0 {
		b.WriteString("\nMind:\n")
		for _, d := range doubts {
			s.item(&b, "- ", "%s", d)
		}
	}
	_, err := io.WriteString(patch.HarmlessWriter(w), b.String())
	return err
}

func span(points []parser.SensorPoint) (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	for _, p := range points {
		low, high = min(low, p.TempC), max(high, p.TempC)
	}
	return low, high
}

func (s *SensorRank) takenFor() string {
	if s.Ranking.Reference == "" {
		return "the curve fitted to the points"
	}
	return s.Ranking.Reference
}

func (s *SensorRank) table(b *strings.Builder, from, to int) {
	r := s.Ranking
	fmt.Fprintf(b, "\n%-15s %6s", "curve", "rms")
	for _, p := range r.Points[from:to] {
		fmt.Fprintf(b, " %6s°", unit.Figure(p.TempC, 1))
	}
	fmt.Fprintf(b, "   at %s°\n", unit.Figure(r.TopC, 0))
	for i := range r.Curves {
		c := &r.Curves[i]
		fmt.Fprintf(b, "%-15s %6s", c.ID, strings.TrimPrefix(signed(c.RMSK), "+"))
		for _, d := range c.AtPointsK[from:to] {
			fmt.Fprintf(b, " %7s", signed(d))
		}
		fmt.Fprintf(b, " %8s\n", signed(c.TopErrorK))
	}
}

// thermometer says how good the thermometer is taken to be.
func (s *SensorRank) thermometer() string {
	m := s.Ranking.Thermometer
	if s.Within > 0 {
		return unit.Kelvin(m.OffK)
	}
	return fmt.Sprintf("%s and %s (--within says better)", unit.Kelvin(m.OffK), unit.Percent(m.OffShare))
}

// atMost writes the size of an error, not finer than the thermometer tells.
func (s *SensorRank) atMost(d float64) string {
	return unit.Kelvin(max(math.Abs(d), s.Ranking.Thermometer.OffK))
}

// certain reports whether any style can be told what to use, or that it has
// nothing.
func (s *SensorRank) certain() bool {
	for _, c := range s.Choices {
		if c.Answer != sensor.Untold {
			return true
		}
	}
	return false
}

// possible says which known curves the points allow.
func (s *SensorRank) possible(b *strings.Builder) {
	r := s.Ranking
	list := r.Possible()
	switch {
	case len(list) == 0:
		s.paragraph(b, "No known curve goes with these points: each is further off at one of "+
			"them than a thermometer of %s.", strings.TrimSuffix(s.thermometer(), " (--within says better)"))
	case len(list) == 1:
		s.paragraph(b, "%s alone of the known curves goes with these points.", list[0].ID)
	default:
		var parts []string
		for _, c := range list[1:] {
			parts = append(parts, fmt.Sprintf("%s (%s K)", c.ID, cmp.Or(signed(c.TopErrorK), "0")))
		}
		s.paragraph(b, "%s is the likeliest, and these cannot be told from it: %s. "+
			"In brackets, how much hotter (+) or colder (-) than %s a nozzle with %s is while firmware "+
			"that believes the other shows %s.",
			list[0].ID, strings.Join(parts, ", "), unit.Celsius(r.TopC), list[0].ID, unit.Celsius(r.TopC))
	}
}

// beyondK is an error whose size says nothing more.
const beyondK = 200.0

// signed writes an error with its sign; none where it rounds to 0.
func signed(d float64) string {
	text := unit.Figure(d, 1)
	switch {
	case math.Abs(d) > beyondK:
		return "far"
	case d > 0 && text != "0":
		return "+" + text
	}
	return text
}

// fits prints the curves fitted to the points.
func (s *SensorRank) fits(b *strings.Builder) {
	r := s.Ranking
	if r.R0Ohm != 0 {
		s.paragraph(b, "The resistance rises with temperature: a platinum sensor of %s at 0 "+
			"°C. Leads and plugs add to what is measured.", ohmText(r.R0Ohm))
		return
	}
	if r.ThreePoint == nil && r.Beta == nil {
		return
	}
	b.WriteString("\nFitted to the points:\n")
	if f := r.ThreePoint; f != nil {
		s.item(b, "three points: ", "%s, or R25 %s, B %s K, cubic %s /K; at %s good to %s",
			pointsText(f.Points),
			ohmText(f.R25Ohm), plainFigure(f.BetaK), plainFigure(f.Cubic), unit.Celsius(r.TopC),
			unit.Kelvin(f.TopGoodK()))
	}
	if f := r.Beta; f != nil {
		s.item(b, "Beta: ", "R25 %s, B %s K; off by up to %s at the points", ohmText(f.R25Ohm),
			plainFigure(f.BetaK), s.atMost(f.WorstK))
	}
}

func (s *SensorRank) choice(b *strings.Builder, c StyleChoice) {
	lead := c.Style + ": "
	switch c.Answer {
	case sensor.None:
		s.item(b, lead, "it has no definition of this sensor, and none can be written out for it")
		return
	case sensor.Untold:
		s.item(b, lead, "cannot be told: the likeliest definition may be off by %s at %s",
			s.topRange(c), unit.Celsius(s.Ranking.TopC))
		return
	}
	text := definitionText(c.Def)
	if c.Curve != "" && c.Def.Name != "" && c.Def.Form == parser.FormCurve {
		text += ", which stands for " + c.Curve
	} else if c.Curve != "" {
		text += ", which follows " + c.Curve
	}
	switch d := s.topRange(c); {
	case s.Ranking.Reference == "":
		text += fmt.Sprintf("; at %s good to %s", unit.Celsius(s.Ranking.TopC),
			unit.Kelvin(s.Ranking.Fit().TopGoodK()))
	case d != "0 K":
		text += fmt.Sprintf("; itself %s off at %s", d, unit.Celsius(s.Ranking.TopC))
	}
	if c.PullupK != 0 {
		text += fmt.Sprintf("; set its pull-up to %s: left at %s, %s indicated is %s off",
			ohmText(s.PullupOhm), ohmText(sensor.UsualPullupOhm), unit.Celsius(s.Ranking.TopC),
			unit.Kelvin(math.Abs(c.PullupK)))
	}
	if c.Def.Note != "" {
		text += "; " + c.Def.Note
	}
	s.item(b, lead, "%s", text)
}

// topRange is how far a definition may be off at the top, whichever of the
// possible sensors it is.
func (s *SensorRank) topRange(c StyleChoice) string {
	least, most := signed(c.LeastTopK), signed(c.MostTopK)
	if least == most {
		return least + " K"
	}
	return least + " to " + most + " K"
}

// definitionText writes a definition out for a person to type.
func definitionText(d parser.SensorDef) string {
	switch {
	case d.Name != "":
		return d.Name
	case d.Form == parser.FormBeta && d.CubicC != 0:
		return fmt.Sprintf("its custom definition with R25 %s, B %s K, cubic coefficient %s, "+
			"where the firmware reads one", ohmText(d.R25Ohm), plainFigure(d.BetaK), plainFigure(d.CubicC))
	case d.Form == parser.FormBeta:
		return fmt.Sprintf("its custom definition with R25 %s, B %s K, cubic coefficient 0",
			ohmText(d.R25Ohm), plainFigure(d.BetaK))
	}
	return "its custom definition with the points " + pointsText(d.Points)
}

func pointsText(points []parser.SensorPoint) string {
	var parts []string
	for _, p := range points {
		parts = append(parts, ohmText(p.Ohm)+" at "+plainFigure(p.TempC)+" °C")
	}
	return strings.Join(parts, ", ")
}

// ohmText writes every digit of a resistance that is to be typed.
func ohmText(r float64) string {
	if r >= 1000 {
		return unit.Figure(r, 0) + " Ω"
	}
	return unit.Figure(r, 2) + " Ω"
}

// plainFigure writes a figure that is to be typed, with all its digits.
func plainFigure(x float64) string { return strconv.FormatFloat(x, 'g', 6, 64) }

// doubts says what the points cannot tell, and what to do.
func (s *SensorRank) doubts() []string {
	var list plaintext.Remarks
	r := s.Ranking
	_, high := span(r.Points)
	top := unit.Celsius(r.TopC)
	f := r.Fit()
	if r.Odd >= 0 {
		p := r.Points[r.Odd]
		text := fmt.Sprintf("Line %d, %s at %s, does not go with the other points, which go together: "+
			"measure it again, or remove the row.", s.Lines[r.Odd], ohmText(p.Ohm), unit.Celsius(p.TempC))
		if hint := r.KiloHint(r.Odd); hint != "" {
			text += strings.TrimPrefix(hint, ".") + "."
		}
		return append(list, text)
	}
	var low []string
	for _, c := range r.Possible() {
		if c.Low < -lowShare {
			low = append(low, fmt.Sprintf("%s by %s", c.ID, unit.Figure(-100*c.Low, 1)+" %"))
		}
	}
	if low != nil {
		list.Add("A thermometer that reads low, as a tip does that touches the metal badly, "+
			"would make these fit: %s. See to its contact and measure again.", strings.Join(low, ", "))
	}
	switch {
	case s.certain() && r.Reference != "" && high < r.TopC-farBelowK:
		list.Add("The points end at %s. Up to %s the curve is taken on trust; "+
			"compare with a thermometer there.", unit.Celsius(high), top)
	case s.certain():
	case r.Reference != "":
		list.Add("Measure nearer to %s, more points, or with a better thermometer: "+
			"one that shows ice water as 0 °C and boiling water right is good to about 1 K, "+
			"which --within 1 says. Room temperature alone says little.", top)
	case f != nil && f.Within(r):
		list.Add("The fit is good to %s at %s and no better, as the thermometer is: "+
			"too little for a definition. Measure at room temperature, near %s and in between with a "+
			"better one, and say so with --within.",
			unit.Kelvin(f.TopGoodK()), top, top)
	case f != nil:
		list.Add("Even the fit is up to %s off at the points: one of them is measured wrong, "+
			"or this is no bead.", unit.Kelvin(math.Abs(f.WorstK)))
	}
	return list
}

// lowShare is how low a thermometer must read for a curve before that is said:
// common practice, no source.
const lowShare = 0.015

// farBelowK is how far below the top points may end before it is said.
const farBelowK = 60.0

// item prints a lead word and text beside it, further lines indented.
func (s *SensorRank) item(b *strings.Builder, lead, format string, args ...any) {
	b.WriteString(plaintext.Hanging("  ", "    ", lead+fmt.Sprintf(format, args...), s.width()-4))
}

type rankJSON struct {
	File      string           `json:"file"`
	Used      string           `json:"used,omitempty"`
	PullupOhm float64          `json:"pullup_ohm"`
	Points    []pointJSON      `json:"points"`
	TopC      float64          `json:"print_top_c"`
	OffK      float64          `json:"thermometer_k"`
	OffShare  float64          `json:"thermometer_share"`
	OddLine   any              `json:"odd_line"`  // of the point that does not go with the others
	TakenFor  string           `json:"taken_for"` // a known curve; "" for the fit
	Curves    []rankedJSON     `json:"curves"`
	Fits      map[string]any   `json:"fits"`
	R0Ohm     any              `json:"r0_ohm"`
	Styles    []definitionJSON `json:"styles"`
	Doubts    []string         `json:"doubts"`
}

type pointJSON struct {
	TempC any `json:"temp_c"`
	Ohm   any `json:"ohm"`
}

type rankedJSON struct {
	Curve  string `json:"curve"`
	RMSK   any    `json:"rms_k"`
	WorstK any    `json:"worst_k"`
	Errors any    `json:"errors_k"`
	TopK   any    `json:"top_error_k"`
	Misfit any    `json:"misfit"`
	Low    any    `json:"thermometer_low"` // a share, 0 to −1
	May    bool   `json:"possible"`
}

type definitionJSON struct {
	Style      string      `json:"style"`
	Definition *string     `json:"definition"` // null for a custom one, or none
	Curve      *string     `json:"curve"`
	R25Ohm     any         `json:"r25_ohm"`
	BetaK      any         `json:"b_k"`
	Cubic      any         `json:"cubic"`
	Points     []pointJSON `json:"points"`
	WorstK     any         `json:"worst_k"`
	TopK       any         `json:"top_error_k"`
	LeastTopK  any         `json:"least_top_error_k"`
	MostTopK   any         `json:"most_top_error_k"`
	Untold     bool        `json:"untold"`
}

// RankJSON prints the same for programs.
func RankJSON(w io.Writer, s SensorRank) error {
	r := s.Ranking
	out := rankJSON{File: s.File, Used: s.Used, PullupOhm: s.PullupOhm,
		Points: pointsJSON(r.Points), TopC: r.TopC,
		OffK: r.Thermometer.OffK, OffShare: r.Thermometer.OffShare, TakenFor: r.Reference,
		Fits: map[string]any{}, Styles: []definitionJSON{}, Doubts: append([]string{}, s.doubts()...)}
	if r.Odd >= 0 {
		out.OddLine = s.Lines[r.Odd]
	}
	if r.R0Ohm != 0 {
		out.R0Ohm = jsontext.Value(r.R0Ohm)
	}
	for i := range r.Curves {
		c := &r.Curves[i]
		out.Curves = append(out.Curves, rankedJSON{c.ID, jsontext.Value(c.RMSK), jsontext.Value(c.WorstK),
			jsontext.Value(c.AtPointsK), jsontext.Value(c.TopErrorK),
			jsontext.Value(c.Misfit), jsontext.Value(c.Low), c.Possible})
	}
	for name, f := range map[string]*sensor.Fitted{"three_point": r.ThreePoint, "beta": r.Beta} {
		out.Fits[name] = nil
		if f != nil {
			out.Fits[name] = map[string]any{"r25_ohm": jsontext.Value(f.R25Ohm),
				"b_k": jsontext.Value(f.BetaK), "cubic": jsontext.Value(f.Cubic),
				"points": pointsJSON(f.Points), "worst_k": jsontext.Value(f.WorstK),
				"top_good_k": jsontext.Value(f.TopGoodK())}
		}
	}
	for _, c := range s.Choices {
		d := definitionJSON{Style: c.Style, Points: []pointJSON{}, Untold: c.Answer == sensor.Untold}
		if c.Answer == sensor.Chosen {
			d.Definition, d.Curve = jsontext.OrNull(c.Def.Name), jsontext.OrNull(c.Curve)
			d.WorstK, d.TopK = jsontext.Value(c.WorstK), jsontext.Value(c.TopErrorK)
			d.LeastTopK, d.MostTopK = jsontext.Value(c.LeastTopK), jsontext.Value(c.MostTopK)
			if c.Def.Name == "" { // to be written out
				d.Points = pointsJSON(c.Def.Points)
			}
			if c.Def.Form == parser.FormBeta {
				d.R25Ohm, d.BetaK, d.Cubic = jsontext.Value(c.Def.R25Ohm), jsontext.Value(c.Def.BetaK),
					jsontext.Value(c.Def.CubicC)
			}
		}
		out.Styles = append(out.Styles, d)
	}
	return jsontext.Write(w, out)
}

func pointsJSON(points []parser.SensorPoint) []pointJSON {
	list := make([]pointJSON, len(points))
	for i, p := range points {
		list[i] = pointJSON{jsontext.Value(p.TempC), jsontext.Value(p.Ohm)}
	}
	return list
}
