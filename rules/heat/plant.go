package heat

import "math"

// MeltJPerMM3K is the heat that plastic takes up while it is melted, for each
// cubic millimetre and kelvin: about 1.2 g/cm³ times 2 J/(g·K), the latent
// part included (common practice, no source).
const MeltJPerMM3K = 0.0024

// Block is what the heater heats, with its sensor.
type Block struct {
	CapacityJPerK float64
	LossWPerK     float64 // part fan off
	LossFanWPerK  float64 // part fan full
	LagS          float64 // of the sensor behind the block
	AmbientC      float64
}

// Plant is a heater in a block:
//
//	C dT/dt = duty · P(T) − h · (T − ambient) − melt
//	  dS/dt = (T − S) / lag
//
// T is the block, S its sensor. Radiation is left out.
type Plant struct {
	Heater
	Block
}

// Load is what takes heat away besides still air.
type Load struct {
	Fan      float64 // part fan, 0 to 1
	FlowMM3S float64 // plastic melted
}

// FanFull is the part fan at full, nothing extruded. The zero Load is the fan
// off.
var FanFull = Load{Fan: 1}

// Conductance returns the heat that leaves the block for each kelvin above
// ambient, melt included, W/K.
func (b Block) Conductance(l Load) float64 {
	return b.LossWPerK + l.Fan*(b.LossFanWPerK-b.LossWPerK) + MeltJPerMM3K*l.FlowMM3S
}

// Ambient returns block and sensor at ambient temperature.
func (b Block) Ambient() State { return State{b.AmbientC, b.AmbientC} }

// Settle returns where a block that starts at fromC ends at constant duty,
// °C: the nearest T with duty · P(T) = h · (T − ambient) in the direction in
// which it moves. It is exact, and infinite where nothing takes the heat away.
func (p Plant) Settle(duty float64, l Load, fromC float64) float64 {
	k, ps := p.Conductance(l), p.pieces()
	net := func(i int, t float64) float64 {
		return duty*(ps[i].offset+ps[i].slope*t) - k*(t-p.AmbientC)
	}
	i := pieceAt(ps, fromC)
	up := net(i, fromC) >= 0
	for ; i >= 0 && i < len(ps); i += direction(up) {
		root := (duty*ps[i].offset + k*p.AmbientC) / (k - duty*ps[i].slope)
		if root >= ps[i].from && root <= ps[i].to && (root >= fromC) == up {
			return root
		}
	}
	return math.Inf(direction(up))
}

func direction(up bool) int {
	if up {
		return 1
	}
	return -1
}

// StuckOn returns where the block settles when the output is welded on: full
// duty whatever its limit, part fan off. An upper bound, as radiation is left
// out and the power is held flat beyond its table.
func (p Plant) StuckOn() float64 {
	p.Beyond = Flat
	return p.Settle(1, Load{}, p.AmbientC)
}

// Headroom compares the power that a heater has at one temperature with what
// the block needs there.
type Headroom struct {
	AvailableW float64 // at the duty limit
	LossW      float64 // part fan full
	LossOffW   float64 // part fan off
	MeltW      float64
	Ratio      float64 // AvailableW / (LossW + MeltW)
	FitsMM3S   float64 // the flow at which Ratio is 1; below 0 where even none fits
}

// Headroom computes the figures at atC for a flow of plastic.
func (p Plant) Headroom(atC, flowMM3S float64) Headroom {
	above := atC - p.AmbientC
	h := Headroom{
		AvailableW: p.Power(atC) * p.DutyLimit,
		LossW:      p.LossFanWPerK * above,
		LossOffW:   p.LossWPerK * above,
		MeltW:      MeltJPerMM3K * flowMM3S * above,
	}
	h.Ratio = h.AvailableW / (h.LossW + h.MeltW)
	h.FitsMM3S = (h.AvailableW - h.LossW) / (MeltJPerMM3K * above)
	return h
}
