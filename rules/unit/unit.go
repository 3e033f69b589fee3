// Package unit is the one way to write each figure with its unit. Each function
// takes a figure in the unit that it writes; Percent takes a share of 1, Ohms a
// resistance in ohm.
package unit

import (
	"math"
	"strconv"
	"strings"
)

func Celsius(t float64) string       { return Figure(t, 1) + " °C" }
func Kelvin(d float64) string        { return Figure(d, 1) + " K" } // a difference
func Seconds(s float64) string       { return Figure(s, 1) + " s" }
func Watts(w float64) string         { return Figure(w, 1) + " W" }
func Volts(v float64) string         { return Figure(v, 1) + " V" }
func Millimetres(d float64) string   { return Figure(d, 3) + " mm" } // a height is set to the µm
func Area(a float64) string          { return Figure(a, 2) + " mm²" }
func Amperes(a float64) string       { return Figure(a, 2) + " A" }
func Percent(share float64) string   { return Figure(share*100, 0) + " %" }
func DegreeSeconds(s float64) string { return Figure(s, 1) + " °C·s" }
func FlowRate(f float64) string      { return Figure(f, 1) + " mm³/s" }
func Speed(v float64) string         { return Figure(v, 1) + " mm/s" }
func Count(n float64) string         { return Figure(n, 0) }

// Gain writes a gain of a control loop, which has no unit of its own.
func Gain(g float64) string { return Figure(g, 3) }

// Ohms writes a resistance, from 10 kΩ on in kΩ.
func Ohms(r float64) string {
	if r >= 10e3 {
		return Figure(r/1e3, 1) + " kΩ"
	}
	return Figure(r, 1) + " Ω"
}

// Of writes a figure in the unit with this sign; per cent as such, not as a share.
func Of(x float64, sign string) string {
	return strings.TrimSpace(Figure(x, decimals(sign)) + " " + sign)
}

// Step is the smallest difference that figures in a unit show.
func Step(sign string) float64 { return math.Pow10(-decimals(sign)) }

func decimals(sign string) int {
	switch sign {
	case "A":
		return 2
	case "%", "":
		return 0
	case "mm":
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
