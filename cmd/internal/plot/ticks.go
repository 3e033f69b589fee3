package plot

import (
	"math"
	"strconv"
	"strings"
)

// ticks are the values that an axis names.
type ticks struct {
	at       []float64
	decimals int // that tell them apart
}

// ticksOf returns ticks inside a range, in steps of 1, 2 or 5 times a power of
// ten, about as many as asked for. After P. Heckbert, Nice numbers for graph
// labels, in Graphics Gems (1990).
func ticksOf(s span, about int) ticks {
	rough := (s.high - s.low) / float64(max(about, 1))
	if !(rough > 0) || !drawable(s.low) || !drawable(s.high) {
		return ticks{}
	}
	exponent := math.Floor(math.Log10(rough))
	unit := math.Pow(10, exponent)
	step := 10 * unit
	for _, nice := range [...]float64{1, 2, 5} {
		if rough <= nice*unit*(1+1e-9) {
			step = nice * unit
			break
		}
	}
	t := ticks{decimals: max(0, -int(math.Floor(math.Log10(step)+1e-9)))}
	for i := math.Ceil(s.low/step - 1e-9); i <= s.high/step+1e-9 && len(t.at) < 10*about; i++ {
		t.at = append(t.at, i*step)
	}
	if len(t.at) == 0 && about > 0 {
		return ticksOf(s, 2*about) // the range lies between two multiples of the step
	}
	return t
}

func (t ticks) label(i int) string { return Number(t.at[i], t.decimals) }

// Number writes a number with a true minus sign; one that rounds to zero has
// none.
func Number(x float64, decimals int) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return "–"
	}
	s := strconv.FormatFloat(x, 'f', decimals, 64)
	digits, negative := strings.CutPrefix(s, "-")
	if negative && strings.Trim(digits, "0.") != "" {
		return "−" + digits
	}
	return digits
}
