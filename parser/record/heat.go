package record

import (
	"math"
	"slices"

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
	// DutyMay and FanMay are what they may be, from what stands in the file;
	// the last is what the rows were divided by. Rescale chooses another.
	DutyMay, FanMay []float64
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
	// A record of counts or per cent holds at least this many somewhere: less
	// heats nothing.
	leastCounts = 5.0
	// longestRunS bounds the simulation of a run.
	longestRunS = 2 * 3600.0
	// A row for so many units of time, or more, is one of milliseconds.
	leastMilliseconds = 50.0
	// leastRiseK is how far a run must go to tell anything about a heater.
	leastRiseK = 20.0
	// No hotend heats faster, K/s, nor jumps so far and back, K: common
	// practice, no source.
	fastestKS, longestJumpK = 30.0, 50.0
	// What a room is in kelvin no run in °C begins at.
	kelvinC = 273.0
	// A run that begins at what a room is in Fahrenheit, and gets this hot, is
	// one in Fahrenheit.
	coldestF, warmestF, hotF = 50.0, 100.0, 340.0
)

// fullDuties and fullFans are what is written for full: shares, per cent, half
// the counts that a fan has, counts.
var (
	fullDuties = [...]float64{1, 100, 127, countsFull}
	fullFans   = [...]float64{1, 100, countsFull}
)

// ReadHeat reads a run. dutyFull and fanFull are what the file writes for full
// power and full fan; 0 lets the file tell, as far as it does.
func ReadHeat(f *parser.File, dutyFull, fanFull float64) (*Heat, error) {
	most, mostFan := countsFull, countsFull
	if dutyFull > 0 {
		most = dutyFull
	}
	if fanFull > 0 {
		mostFan = fanFull
	}
	t, err := readTable(f, []column{
		{name: "time_s", low: -1e15, high: 1e15},
		{name: "temp_c", low: -60, high: 1000},
		{name: "duty", low: 0, high: most},
		{name: "fan", low: 0, high: mostFan, optional: true},
	})
	if err != nil {
		return nil, err
	}
	h := &Heat{File: f, Rows: make([]HeatRow, len(t.rows)), HasFan: t.has(3)}
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
	if h.DutyMay, err = h.full(t, "duty", dutyFull, fullDuties[:], dutyOf); err != nil {
		return nil, err
	}
	if h.HasFan {
		if h.FanMay, err = h.full(t, "fan", fanFull, fullFans[:], fanOf); err != nil {
			return nil, err
		}
	}
	h.scale()
	return h, h.heats(t)
}

func dutyOf(r *HeatRow) *float64 { return &r.Duty }
func fanOf(r *HeatRow) *float64  { return &r.Fan }

// scale divides the rows by the last of what is written for full.
func (h *Heat) scale() {
	h.DutyFull = h.DutyMay[len(h.DutyMay)-1]
	if h.HasFan {
		h.FanFull = h.FanMay[len(h.FanMay)-1]
	}
	for i := range h.Rows {
		h.Rows[i].Duty /= h.DutyFull
		if h.HasFan {
			h.Rows[i].Fan /= h.FanFull
		}
	}
}

// Rescale sets what is written for full power and, where there is a fan
// column, for full fan.
func (h *Heat) Rescale(dutyFull, fanFull float64) {
	for i := range h.Rows {
		h.Rows[i].Duty = min(h.Rows[i].Duty*h.DutyFull/dutyFull, 1)
		if h.HasFan {
			h.Rows[i].Fan = min(h.Rows[i].Fan*h.FanFull/fanFull, 1)
		}
	}
	h.DutyFull, h.DutyMay = dutyFull, []float64{dutyFull}
	if h.HasFan {
		h.FanFull, h.FanMay = fanFull, []float64{fanFull}
	}
}

func (h *Heat) inOrder(t *csvTable, i int) error {
	row := &h.Rows[i]
	if i == 0 {
		return nil
	}
	switch last := &h.Rows[i-1]; {
	case row.TimeS == last.TimeS:
		return t.errorf(row.Line, "has the same time as line %d, %g s; "+
			"keep one of the two, or record fractions of a second", last.Line, row.TimeS)
	case row.TimeS < last.TimeS:
		return t.errorf(row.Line, "goes back in time, from %g s to %g s; "+
			"sort the rows by time, and keep one run to a file", last.TimeS, row.TimeS)
	case row.TimeS-h.Rows[0].TimeS > longestRunS && row.TimeS-h.Rows[0].TimeS > leastMilliseconds*float64(i):
		return t.errorf(row.Line, "is %g after the first row, a row for every %.0f: that is milliseconds; "+
			"divide time_s by 1000, to give seconds",
			row.TimeS-h.Rows[0].TimeS, (row.TimeS-h.Rows[0].TimeS)/float64(i))
	case row.TimeS-h.Rows[0].TimeS > longestRunS:
		return t.errorf(row.Line, "is more than %g hours after the first row; "+
			"keep the heat-up alone, and see that time_s is in seconds", longestRunS/3600)
	}
	return nil
}

// full lists what a column may write for full, the least first: what is given,
// else all of known that its largest figure leaves. A figure that is one of them
// to the digit leaves itself and counts.
func (h *Heat) full(t *csvTable, name string, given float64, known []float64,
	cell func(*HeatRow) *float64) ([]float64, error) {
	largest, line := math.Inf(-1), 0
	for i := range h.Rows {
		if x := *cell(&h.Rows[i]); x > largest {
			largest, line = x, h.Rows[i].Line
		}
	}
	switch {
	case given > 0:
		return []float64{given}, nil
	case largest <= 1:
		return []float64{1}, nil
	case largest < leastCounts:
		return nil, t.errorf(line,
			"has %g as %s, outside of 0 to 1; as per cent or counts of 255 it would be "+
				"next to nothing, and it is the largest in the file: correct it", largest, name)
	}
	at := slices.IndexFunc(known, func(full float64) bool { return full >= largest })
	if known[at] == largest && largest != countsFull {
		return []float64{largest, countsFull}, nil
	}
	return slices.Clone(known[at:]), nil
}

// heats refuses a run in which nothing was heated, and one in other units.
func (h *Heat) heats(t *csvTable) error {
	first, last := h.Rows[0], h.Rows[len(h.Rows)-1]
	lowest, highest, duty := math.Inf(1), math.Inf(-1), 0.0
	for i, r := range h.Rows {
		lowest, highest, duty = min(lowest, r.TempC), max(highest, r.TempC), max(duty, r.Duty)
		if i == 0 || i+1 == len(h.Rows) {
			continue
		}
		before, after := h.Rows[i-1], h.Rows[i+1]
		jump := math.Abs(r.TempC - before.TempC)
		if jump > longestJumpK && math.Abs(after.TempC-before.TempC) < jump/2 {
			return t.errorf(r.Line, "jumps from %g to %g °C and back, as no hotend does: "+
				"remove the row, and see to the sensor's plug", before.TempC, r.TempC)
		}
	}
	switch {
	case duty == 0:
		return t.errorf(first.Line, "begins a log in which duty is 0 from here to line %d: "+
			"the heater was never on; record a heat-up", last.Line)
	case highest-lowest < leastRiseK:
		return t.errorf(first.Line, "begins a log that never heats: "+
			"the temperature stays between %g and %g °C; "+
			"record a heat-up from cold to a printing temperature", lowest, highest)
	case lowest >= kelvinC:
		return t.errorf(first.Line, "begins a log that is never below %g °C: in kelvin that is %.3g °C; "+
			"take 273.15 off each temp_c, or record from cold", lowest, lowest-273.15)
	case first.TempC >= coldestF && first.TempC <= warmestF && first.TempC < lowest+2 && highest >= hotF:
		return t.errorf(first.Line,
			"begins a log from %g to %g °C: in Fahrenheit that is %.0f to %.0f °C; "+
				"convert each temp_c, (F − 32) / 1.8, or record from cold",
			first.TempC, highest, celsiusOfF(first.TempC), celsiusOfF(highest))
	}
	if fast := h.fastest(lowest, highest); fast > fastestKS {
		return t.errorf(first.Line, "begins a log that heats by %.3g K each second, faster than any hotend: "+
			"is time_s in minutes? Give seconds", fast)
	}
	return nil
}

func celsiusOfF(f float64) float64 { return (f - 32) / 1.8 }

// fastest is the mean rate of the first rise through the middle half of the
// range, K/s.
func (h *Heat) fastest(lowest, highest float64) float64 {
	fromC, toC := lowest+(highest-lowest)/4, highest-(highest-lowest)/4
	low := -1
	for i, r := range h.Rows {
		switch {
		case r.TempC < fromC:
			low = i
		case r.TempC >= toC && low >= 0:
			return (r.TempC - h.Rows[low].TempC) / (r.TimeS - h.Rows[low].TimeS)
		}
	}
	return 0
}
