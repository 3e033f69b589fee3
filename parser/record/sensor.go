package record

import (
	"preflash/parser"
)

// Sensor is a sensor measured at several temperatures, either by its
// resistance (temp_c,ohm) or by what the firmware showed (indicated_c,actual_c).
type Sensor struct {
	File *parser.File
	Rows []SensorRow
	// Indicated: IndicatedC was recorded; otherwise Ohm was.
	Indicated bool
}

// SensorRow is one measured temperature.
type SensorRow struct {
	Line       int
	ActualC    float64
	Ohm        float64
	IndicatedC float64
}

// ReadSensor reads measured points.
func ReadSensor(f *parser.File) (*Sensor, error) {
	const coldest, hottest = -200, 1000
	columns := []column{
		{name: "temp_c", low: coldest, high: hottest, optional: true},
		{name: "ohm", low: 1e-3, high: 1e9, optional: true},
		{name: "indicated_c", low: coldest, high: hottest, optional: true},
		{name: "actual_c", low: coldest, high: hottest, optional: true},
	}
	t, err := readTable(f, columns)
	if err != nil {
		return nil, err
	}
	s := &Sensor{File: f, Rows: make([]SensorRow, len(t.rows)), Indicated: t.has(2)}
	measured, shown := t.has(0) && t.has(1), t.has(2) && t.has(3)
	if strays := (t.has(0) || t.has(1)) && (t.has(2) || t.has(3)); strays || !measured && !shown {
		return nil, t.errorf(t.headerLine,
			"must name one pair of columns, either temp_c,ohm or indicated_c,actual_c")
	}
	for i, r := range t.rows {
		row := &s.Rows[i]
		row.Line = r.line
		var tempC float64
		if err := t.numbers(r, &tempC, &row.Ohm, &row.IndicatedC, &row.ActualC); err != nil {
			return nil, err
		}
		if !s.Indicated {
			row.ActualC = tempC
		}
	}
	return s, s.distinct(t)
}

// distinct refuses points of which one is there twice: it would count double,
// and was meant to be another.
func (s *Sensor) distinct(t *csvTable) error {
	first := make(map[[2]float64]int, len(s.Rows))
	for _, r := range s.Rows {
		key := [2]float64{r.ActualC, r.Ohm}
		if s.Indicated {
			key[1] = r.IndicatedC
		}
		if line, seen := first[key]; seen {
			return t.errorf(r.Line,
				"is the same point as line %d; remove one, or measure at another temperature", line)
		}
		first[key] = r.Line
	}
	return nil
}
