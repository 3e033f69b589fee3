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
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

// CurvesText lists the known curves, and their sources once below.
func CurvesText(w io.Writer, list []sensor.Known) error {
	var b strings.Builder
	fmt.Fprintf(&b, "%-16s %-9s %12s %12s %12s  %s\n", "curve", "kind", "Ω at 25 °C", "Ω at 150 °C",
		"Ω at 250 °C", "source")
	var sources []string
	for _, k := range list {
		number := slices.Index(sources, source(k))
		if number < 0 {
			number = len(sources)
			sources = append(sources, source(k))
		}
		fmt.Fprintf(&b, "%-16s %-9s %12s %12s %12s  %d\n", k.ID, k.Kind,
			ohmsWithin(k, 25, 1), ohmsWithin(k, 150, 2), ohmsWithin(k, 250, 2), number+1)
	}
	b.WriteString("\nA - is a temperature at which the curve is not known.\n")
	for i, s := range sources {
		b.WriteString(plaintext.Hanging(fmt.Sprintf("%-2d ", i+1), "   ", s, 77))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// ohmsWithin is a curve's resistance where it is known.
func ohmsWithin(k sensor.Known, tempC float64, decimals int) string {
	if tempC < k.LowC || tempC > k.HighC {
		return "-"
	}
	return strconv.FormatFloat(k.Curve.Ohms(tempC), 'f', decimals, 64)
}

func source(k sensor.Known) string {
	s := k.Form.String()
	if k.Source != "" {
		s += ", " + k.Source
	}
	if k.FromMemory {
		s += " (from memory)"
	}
	return s
}

type curveJSON struct {
	ID         string  `json:"id"`
	Kind       string  `json:"kind"`
	Form       string  `json:"form"`
	LowC       float64 `json:"low_c"`
	HighC      float64 `json:"high_c"`
	R25Ohm     float64 `json:"r25_ohm"`
	Source     string  `json:"source"`
	FromMemory bool    `json:"from_memory"`
}

// CurvesJSON lists the known curves for programs.
func CurvesJSON(w io.Writer, list []sensor.Known) error {
	out := struct {
		Curves []curveJSON `json:"curves"`
	}{[]curveJSON{}}
	for _, k := range list {
		out.Curves = append(out.Curves, curveJSON{k.ID, k.Kind.String(), k.Form.String(), k.LowC, k.HighC,
			k.Curve.Ohms(25), k.Source, k.FromMemory})
	}
	return jsontext.Write(w, out)
}

// Comparison is sensor Real, read by firmware that believes it to be Believed.
type Comparison struct {
	Real, Believed                   sensor.Known
	RealPullupOhm, BelievedPullupOhm float64
	FromC, ToC, StepC                float64
}

func (c *Comparison) rows() []sensor.Row {
	return sensor.Compare(
		&sensor.Circuit{Curve: c.Real.Curve, PullupOhm: c.RealPullupOhm},
		&sensor.Circuit{Curve: c.Believed.Curve, PullupOhm: c.BelievedPullupOhm},
		c.FromC, c.ToC, c.StepC)
}

// ComparisonText prints the comparison as a table.
func ComparisonText(w io.Writer, c Comparison) error {
	var b strings.Builder
	fmt.Fprintf(&b, "sensor %s on %g Ω, read as %s on %g Ω\n\n", c.Real.ID, c.RealPullupOhm, c.Believed.ID,
		c.BelievedPullupOhm)
	fmt.Fprintf(&b, "%12s %12s %12s\n", "indicated °C", "actual °C", "error K")
	var worst sensor.Row
	for _, r := range c.rows() {
		fmt.Fprintf(&b, "%12.1f %12.1f %+12.1f  %s\n", r.IndicatedC, r.ActualC, r.ErrorC, direction(r.ErrorC))
		if math.Abs(r.ErrorC) > math.Abs(worst.ErrorC) {
			worst = r
		}
	}
	if worst.ErrorC == 0 {
		b.WriteString("\nThey read the same.\n")
	} else {
		fmt.Fprintf(&b, "\nWorst: %s indicated is %s, %s %s than shown.\n",
			unit.Celsius(worst.IndicatedC), unit.Celsius(worst.ActualC), unit.Kelvin(math.Abs(worst.ErrorC)),
			direction(worst.ErrorC))
	}
	for _, k := range []sensor.Known{c.Real, c.Believed} {
		if c.ToC > k.HighC || c.FromC < k.LowC {
			fmt.Fprintf(&b, "%s is meant for %g to %g °C; outside of that the figures are extrapolated.\n",
				k.ID, k.LowC, k.HighC)
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// direction says in a word what an error means at the nozzle.
func direction(errorC float64) string {
	switch {
	case errorC > 0.05:
		return "hotter"
	case errorC < -0.05:
		return "colder"
	}
	return ""
}

type rowJSON struct {
	IndicatedC float64 `json:"indicated_c"`
	ActualC    float64 `json:"actual_c"`
	ErrorC     float64 `json:"error_c"`
}

// ComparisonJSON prints the comparison for programs.
func ComparisonJSON(w io.Writer, c Comparison) error {
	out := struct {
		Real              string    `json:"real"`
		Believed          string    `json:"believed"`
		PullupOhm         float64   `json:"pullup_ohm"`
		BelievedPullupOhm float64   `json:"believed_pullup_ohm"`
		Rows              []rowJSON `json:"rows"`
	}{c.Real.ID, c.Believed.ID, c.RealPullupOhm, c.BelievedPullupOhm, []rowJSON{}}
	for _, r := range c.rows() {
		out.Rows = append(out.Rows, rowJSON(r))
	}
	return jsontext.Write(w, out)
}
