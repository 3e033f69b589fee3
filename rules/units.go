package rules

// The units of say.go, for those who show figures beside the findings.

func Celsius(t float64) string { return celsius(t) }

// Kelvin writes a difference of temperatures.
func Kelvin(d float64) string        { return kelvin(d) }
func Seconds(s float64) string       { return seconds(s) }
func Watts(w float64) string         { return watts(w) }
func Volts(v float64) string         { return volts(v) }
func DegreeSeconds(s float64) string { return degreeSeconds(s) }
func FlowRate(f float64) string      { return flowRate(f) }
func Percent(share float64) string   { return percent(share) }

// Figure rounds to at most so many decimals and drops trailing zeros.
func Figure(x float64, decimals int) string { return figure(x, decimals) }
