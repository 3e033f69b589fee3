package record

import (
	"math"

	"preflash/parser"
)

// Heat is a recorded run of a heater: time_s,temp_c,duty[,fan].
type Heat struct {
	File   *parser.File
	Rows   []HeatRow
	HasFan bool
	// DutyFull and FanFull are what full power and full fan were written as,
	// such as 1 or 255. FanFull is 0 without a fan column.
	DutyFull, FanFull float64
}

// HeatRow is one moment of a run. Duty and Fan are shares of full, 0 to 1,
// and hold until the next row.
type HeatRow struct {
	Line  int
	TimeS float64
	TempC float64 // as the sensor says
	Duty  float64
	Fan   float64 // 0 without a fan column
}

const (
	countsFull = 255.0
	// A record of counts holds at least this many somewhere: less heats
	// nothing.
	leastCounts = 5.0
	// longestRunS bounds the simulation of a run.
	longestRunS = 2 * 3600.0
	// leastRiseK is how far a run must go to tell anything about a heater.
	leastRiseK = 20.0
)

// ReadHeat reads a run. dutyFull is what the file writes for full power; 0
// lets the file tell: up to 1 they are shares, else counts of 255.
func ReadHeat(f *parser.File, dutyFull float64) (*Heat, error) {
	most := countsFull
	if dutyFull > 0 {
		most = dutyFull
	}
	t, err := readTable(f, []column{
		{name: "time_s", low: -1e12, high: 1e12},
		{name: "temp_c", low: -60, high: 1000},
		{name: "duty", low: 0, high: most},
		{name: "fan", low: 0, high: countsFull, optional: true},
	})
	if err != nil {
		return nil, err
	}
	h := &Heat{File: f, Rows: make([]HeatRow, len(t.rows)), HasFan: t.has(3), DutyFull: dutyFull}
	for i, r := range t.rows {
		row := &h.Rows[i]
		row.Line = r.line
		if err := t.numbers(r, &row.TimeS, &row.TempC, &row.Duty, &row.Fan); err != nil {
			return nil, err
		}
		if !h.HasFan {
			row.Fan = 0
		}
		if err := h.inOrder(t, i); err != nil {
			return nil, err
		}
	}
	if h.DutyFull == 0 {
		if h.DutyFull, err = h.full(t, "duty", func(r *HeatRow) *float64 { return &r.Duty }); err != nil {
			return nil, err
		}
	}
	if h.HasFan {
		if h.FanFull, err = h.full(t, "fan", func(r *HeatRow) *float64 { return &r.Fan }); err != nil {
			return nil, err
		}
	}
	for i := range h.Rows {
		h.Rows[i].Duty /= h.DutyFull
		if h.HasFan {
			h.Rows[i].Fan /= h.FanFull
		}
	}
	return h, h.heats(t)
}

func (h *Heat) inOrder(t *table, i int) error {
	row := &h.Rows[i]
	if i == 0 {
		return nil
	}
	switch last := &h.Rows[i-1]; {
	case row.TimeS == last.TimeS:
		return t.errorf(row.Line, "has the same time as line %d, %g s; keep one of the two, or record fractions of a second", last.Line, row.TimeS)
	case row.TimeS < last.TimeS:
		return t.errorf(row.Line, "goes back in time, from %g s to %g s; sort the rows by time, and keep one run to a file", last.TimeS, row.TimeS)
	case row.TimeS-h.Rows[0].TimeS > longestRunS:
		return t.errorf(row.Line, "is more than %g hours after the first row; keep the heat-up alone, and see that time_s is in seconds", longestRunS/3600)
	}
	return nil
}

// full tells what a column writes for full: 1 or 255.
func (h *Heat) full(t *table, name string, cell func(*HeatRow) *float64) (float64, error) {
	largest, line := math.Inf(-1), 0
	for i := range h.Rows {
		if x := *cell(&h.Rows[i]); x > largest {
			largest, line = x, h.Rows[i].Line
		}
	}
	switch {
	case largest <= 1:
		return 1, nil
	case largest < leastCounts:
		return 0, t.errorf(line, "has %g as %s, outside of 0 to 1; as counts of 255 it would be next to nothing, and it is the largest in the file: correct it", largest, name)
	}
	return countsFull, nil
}

// heats refuses a run in which nothing was heated.
func (h *Heat) heats(t *table) error {
	first, last := h.Rows[0], h.Rows[len(h.Rows)-1]
	lowest, highest, duty := math.Inf(1), math.Inf(-1), 0.0
	for _, r := range h.Rows {
		lowest, highest, duty = min(lowest, r.TempC), max(highest, r.TempC), max(duty, r.Duty)
	}
	switch {
	case duty == 0:
		return t.errorf(first.Line, "begins a log in which duty is 0 from here to line %d: the heater was never on; record a heat-up", last.Line)
	case highest-lowest < leastRiseK:
		return t.errorf(first.Line, "begins a log that never heats: the temperature stays between %g and %g °C; record a heat-up from cold to a printing temperature", lowest, highest)
	}
	return nil
}
