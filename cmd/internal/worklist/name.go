package worklist

import (
	"preflash/parser/sheet"
	"preflash/rules/unit"
)

// sensorName says which sensor a sheet names.
func sensorName(s *sheet.Sensor) string {
	switch {
	case s.Curve.Given:
		return s.Curve.Value
	case s.Points.Given:
		return "the points of the sheet"
	case s.Beta.Given:
		return "a Beta of " + unit.Kelvin(s.Beta.Value.BK)
	}
	return s.Kind.Value.String()
}
