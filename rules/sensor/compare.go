package sensor

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"preflash/parser"
)

// Row is one line of a comparison, °C and K.
type Row struct {
	IndicatedC float64
	ActualC    float64
	ErrorC     float64 // actual − indicated: above 0 is hotter than shown
}

// Compare tells, from lowC to highC in steps of stepC, what temperature the
// sensor real has while firmware that believes the other indicates each. It
// gives at most 1001 rows.
func Compare(real, believed *Circuit, lowC, highC, stepC float64) []Row {
	lowC, highC = boundC(lowC), boundC(highC)
	if !(stepC > 0) {
		stepC = math.Inf(1) // one row
	}
	n := int(bound(math.Floor((highC-lowC)/stepC+1e-9), 0, 1000, 0))
	rows := make([]Row, 0, n+1)
	for i := range n + 1 {
		t := lowC
		if i > 0 {
			t += float64(i) * stepC
		}
		actual := believed.Actual(real, t)
		rows = append(rows, Row{t, actual, actual - t})
	}
	return rows
}

// Parse reads how a person names a curve: the id of a known one, or
// beta:R25:B for the Beta formula, such as beta:100000:3950.
func Parse(text string) (Known, error) {
	rest, isBeta := strings.CutPrefix(text, "beta:")
	if !isBeta {
		if k, ok := Find(text); ok {
			return k, nil
		}
		return Known{},
			fmt.Errorf("no curve is known as %q; %s Or write beta:R25:B, such as beta:100000:3950",
				text, strings.TrimSuffix(meant(text), "?")+".")
	}
	r25, b, _ := strings.Cut(rest, ":")
	r, errR := strconv.ParseFloat(r25, 64)
	k, errK := strconv.ParseFloat(b, 64)
	if errR != nil || errK != nil {
		return Known{}, fmt.Errorf("%q is no Beta definition; write beta:R25:B in ohm and kelvin, such as "+
			"beta:100000:3950", text)
	}
	c, err := FromBeta(r, k, 0)
	if err != nil {
		return Known{}, fmt.Errorf("%q: %w", text, err)
	}
	return Known{ID: text, Kind: parser.NTC, Form: PlainBeta, LowC: 0, HighC: 300,
		Source: "given", Curve: c}, nil
}
