// Package unit is the one way to write each figure with its unit. Each function
// takes a figure in the unit that it writes; Percent takes a share of 1, Ohms a
// resistance in ohm.
package unit

import (
	"math"
	"strconv"
	"strings"
)

func Celsius(t float64) string       { return Of(t, "°C") }
func Kelvin(d float64) string        { return Of(d, "K") } // a difference
func Seconds(s float64) string       { return Of(s, "s") }
func Watts(w float64) string         { return Of(w, "W") }
func Volts(v float64) string         { return Of(v, "V") }
func Millimetres(d float64) string   { return Of(d, "mm") }
func Area(a float64) string          { return Of(a, "mm²") }
func Amperes(a float64) string       { return Of(a, "A") }
func Percent(share float64) string   { return Of(share*100, "%") }
func DegreeSeconds(s float64) string { return Of(s, "°C·s") }
func FlowRate(f float64) string      { return Of(f, "mm³/s") }
func Speed(v float64) string         { return Of(v, "mm/s") }
func Count(n float64) string         { return Of(n, "") }

// Gain writes a gain of a control loop, which has no unit of its own.
func Gain(g float64) string { return Figure(g, 3) }

// Ohms writes a resistance, from 10 kΩ on in kΩ.
func Ohms(r float64) string {
	if r >= 10e3 {
		return Of(r/1e3, "kΩ")
	}
	return Of(r, "Ω")
}

// Of writes a figure in the unit with this sign; per cent as such, not as a share.
func Of(x float64, sign string) string {
	return strings.TrimSpace(Figure(x, decimals(sign)) + " " + sign)
}

// Step is the smallest difference that figures in a unit show.
func Step(sign string) float64 { return math.Pow10(-decimals(sign)) }

func decimals(sign string) int {
	switch sign {
	case "A", "mm²":
		return 2
	case "%", "":
		return 0
	case "mm": // a height is set to the µm
		return 3
	}
	return 1
}

// Figure rounds to at most so many decimals and drops trailing zeros.
func Figure(x float64, decimals int) string {
	s := strconv.FormatFloat(x, 'f', decimals, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}
