package rules

import (
	"strconv"
	"strings"

	"preflash/parser"
)

// The one way to write each unit.

func celsius(t float64) string     { return figure(t, 1) + " °C" }
func kelvin(d float64) string      { return figure(d, 1) + " K" } // a difference
func seconds(s float64) string     { return figure(s, 1) + " s" }
func watts(w float64) string       { return figure(w, 1) + " W" }
func volts(v float64) string       { return figure(v, 1) + " V" }
func millimetres(d float64) string { return figure(d, 2) + " mm" }
func amperes(a float64) string     { return figure(a, 2) + " A" }
func ohms(r float64) string        { return figure(r, 1) + " Ω" }
func percent(share float64) string {
	return figure(share*100, 0) + " %"
}

// figure rounds to at most so many decimals and drops trailing zeros.
func figure(x float64, decimals int) string {
	s := strconv.FormatFloat(x, 'f', decimals, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}

// cannotTell is the finding of a rule that met a setting in state unknown. It
// never guesses: it says what it could not tell and why.
func cannotTell[T any](level Level, s *parser.Setting[T]) Finding {
	return Sayf(level, s.At, "cannot tell the %s: %s", s.Key, s.Why)
}

func degreeSeconds(s float64) string { return figure(s, 1) + " °C·s" }
func count(n float64) string         { return figure(n, 0) }
func flowRate(f float64) string      { return figure(f, 1) + " mm³/s" }
func speed(v float64) string         { return figure(v, 1) + " mm/s" }
