// Package heat computes how a hotend warms, holds and cools: heater, block,
// sensor, the firmware's watches over them and its control loops. It is pure
// arithmetic on plain figures and knows no file and no rule.
//
// Units everywhere: °C, K for differences, s, W, J/K, W/K, V, mm³/s. A duty
// is a share of full power, 0 to 1.
package heat

import (
	"encoding/binary"
	"math"
	"slices"
	"sort"
)

// Point is the power of a heater at one temperature, at its rated voltage.
type Point struct{ TempC, PowerW float64 }

// Table is a list of points in rising order of temperature. It is immutable
// and comparable, so that a plant can be the key of a map.
type Table struct{ bits string }

const pointBytes = 16

// NewTable sorts the points. Of two at one temperature the later one counts.
func NewTable(points ...Point) Table {
	sorted := slices.Clone(points)
	sort.SliceStable(sorted, func(i, j int) bool { return sorted[i].TempC < sorted[j].TempC })
	var buf []byte
	for i, pt := range sorted {
		if i+1 < len(sorted) && sorted[i+1].TempC == pt.TempC {
			continue
		}
		buf = binary.LittleEndian.AppendUint64(buf, math.Float64bits(pt.TempC))
		buf = binary.LittleEndian.AppendUint64(buf, math.Float64bits(pt.PowerW))
	}
	return Table{string(buf)}
}

// Points returns the points in rising order of temperature.
func (t Table) Points() []Point {
	points := make([]Point, len(t.bits)/pointBytes)
	for i := range points {
		b := []byte(t.bits[i*pointBytes : (i+1)*pointBytes])
		points[i] = Point{
			math.Float64frombits(binary.LittleEndian.Uint64(b)),
			math.Float64frombits(binary.LittleEndian.Uint64(b[8:])),
		}
	}
	return points
}

// Beyond says how the power goes on past the last point of a table.
type Beyond uint8

const (
	// Falling: along the last slope, never up and never below 0, for where too
	// little power matters.
	Falling Beyond = iota
	// Flat: held, for where too much power matters.
	Flat
)

// Heater is a resistive heater on a direct supply.
type Heater struct {
	RatedV    float64
	RatedW    float64 // at RatedV; a cartridge gives it at every temperature
	Hot       Table   // of a PTC heater, at RatedV; empty for a cartridge
	Beyond    Beyond  // Hot
	SupplyV   float64
	DutyLimit float64 // highest duty that the firmware gives, 0 to 1
}

// Power returns the power at full duty, W: (SupplyV/RatedV)² times the rated
// power, or times the table, which is linear between its points, flat
// before them, and goes on past them as Beyond says.
func (h Heater) Power(tempC float64) float64 {
	ps := h.pieces()
	pc := ps[pieceAt(ps, tempC)]
	return pc.offset + pc.slope*tempC
}

// piece is a stretch of temperatures on which power is offset + slope·T.
type piece struct{ from, to, offset, slope float64 }

func pieceAt(ps []piece, tempC float64) int {
	i := 0
	for i+1 < len(ps) && tempC >= ps[i].to {
		i++
	}
	return i
}

// pieces covers every temperature, in rising order.
func (h Heater) pieces() []piece {
	ratio := h.SupplyV / h.RatedV
	scale := ratio * ratio
	points := h.Hot.Points()
	if len(points) == 0 {
		return []piece{{math.Inf(-1), math.Inf(1), scale * h.RatedW, 0}}
	}
	first, last := points[0], points[len(points)-1]
	all := append(make([]piece, 0, 8), piece{math.Inf(-1), first.TempC, scale * first.PowerW, 0})
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		slope := (b.PowerW - a.PowerW) / (b.TempC - a.TempC)
		all = append(all, piece{a.TempC, b.TempC, scale * (a.PowerW - slope*a.TempC), scale * slope})
	}
	if slope := all[len(all)-1].slope; h.Beyond == Falling && slope < 0 {
		offset := scale*last.PowerW - slope*last.TempC
		none := max(last.TempC, -offset/slope)
		return append(all, piece{last.TempC, none, offset, slope}, piece{none, math.Inf(1), 0, 0})
	}
	return append(all, piece{last.TempC, math.Inf(1), scale * last.PowerW, 0})
}
