package starter

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"

	"preflash/parser"
	"preflash/parser/sheet"
)

// measure is the unit of a key, as its end tells, and how people type it.
type measure struct {
	end, name string
	typed     map[string]float64 // what is typed, in lower case, and how much of the unit it is
}

var measures = sync.OnceValue(func() []measure {
	return []measure{
		{"_v", "V", map[string]float64{"v": 1, "volt": 1, "volts": 1}},
		{"_w", "W", map[string]float64{"w": 1, "watt": 1, "watts": 1}},
		{"_a", "A", map[string]float64{"a": 1, "amp": 1, "amps": 1, "ampere": 1, "ma": 0.001}},
		{"_ohm", "Ω", map[string]float64{"ω": 1, "ohm": 1, "ohms": 1, "k": 1000, "kω": 1000, "kohm": 1000}},
		{"_c", "°C", map[string]float64{"c": 1, "°c": 1, "º c": 1, "ºc": 1, "°": 1, "deg c": 1, "degc": 1,
			"degrees": 1, "celsius": 1}},
		{"_mm", "mm", map[string]float64{"mm": 1, "cm": 10}},
	}
})

// unitOf is the unit of a key; nil for none.
func unitOf(key string) *measure {
	for _, m := range measures() {
		if strings.HasSuffix(key, m.end) {
			return &m
		}
	}
	return nil
}

var (
	figureForm = sync.OnceValue(func() *regexp.Regexp {
		return regexp.MustCompile(`^([+-]?(?:[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+))\s*(.*)$`)
	})
	rangeSign = sync.OnceValue(func() *regexp.Regexp {
		return regexp.MustCompile(`([0-9CcWw])\s*(?:-|–|\.\.|to|and)\s*([0-9])`)
	})
	inList = sync.OnceValue(func() *regexp.Regexp {
		return regexp.MustCompile(`^([+-]?[0-9]+(?:\.[0-9]+)?)(?:°?[Cc]|[Ww])?$`)
	})
)

// literal writes an answer in TOML, by the kind of the example; or says what is
// wrong with it.
func literal(example, answer string, u *measure) (value, wrong string) {
	switch {
	case strings.HasPrefix(example, `"`):
		return sheet.Quote(strings.Trim(answer, `"`)), ""
	case strings.HasPrefix(example, "["):
		return list(example, answer)
	}
	m := figureForm().FindStringSubmatch(answer)
	if m == nil {
		return "", fmt.Sprintf("%q must be a number, such as %s", answer, example)
	}
	x, err := strconv.ParseFloat(strings.Replace(m[1], ",", ".", 1), 64)
	if err != nil {
		return "", fmt.Sprintf("%q must be a number, such as %s", answer, example)
	}
	if typed := strings.ToLower(strings.TrimSpace(m[2])); typed != "" {
		factor, ok := 0.0, false
		if u != nil {
			factor, ok = u.typed[typed]
		}
		switch {
		case u == nil:
			return "", fmt.Sprintf("%q must be a number alone, such as %s", answer, example)
		case !ok:
			return "", fmt.Sprintf("%q must be a number in %s, such as %s", answer, u.name, example)
		}
		x *= factor
	}
	return parser.Decimal(x), ""
}

// list writes figures, or pairs of them, as an answer gives them.
func list(example, answer string) (value, wrong string) {
	plain := rangeSign().ReplaceAllString(strings.NewReplacer("°", "", "º", "").Replace(answer), "$1 $2")
	var figures []string
	for _, f := range strings.FieldsFunc(plain,
		func(r rune) bool { return strings.ContainsRune("[], \t;", r) }) {
		switch m := inList().FindStringSubmatch(f); {
		case m != nil:
			figures = append(figures, m[1])
		case slices.Contains([]string{"c", "w"}, strings.ToLower(f)):
		default:
			return "", fmt.Sprintf("%q in it is no figure; it must look like %s", f, example)
		}
	}
	if strings.HasPrefix(example, "[[") {
		if len(figures)%2 != 0 {
			return "", "it must be pairs, such as " + example + "; a decimal has a point here"
		}
		var pairs []string
		for pair := range slices.Chunk(figures, 2) {
			pairs = append(pairs, "["+strings.Join(pair, ", ")+"]")
		}
		figures = pairs
	}
	return "[" + strings.Join(figures, ", ") + "]", ""
}
