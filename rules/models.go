package rules

import (
	"preflash/rules/heat"
	"preflash/rules/sensor"
)

// What the rules compute with, for a report that draws it. The figures are
// those of the findings.

// Circuits returns what the firmware believes about the hotend's sensor and
// what is really wired. ok is false where one of them is no curve, or where
// they differ in kind.
func Circuits(in *Input) (believed, real *sensor.Circuit, ok bool) {
	all, r, ok := hotendCircuits(in)
	if !ok {
		return nil, nil, false
	}
	return r.judge(all).believed, r.Real, true
}

// BoardPullup is the pull-up that the board really has, Ω.
func BoardPullup(in *Input) float64 { return boardPullup(in) }

// Converter is what reads the hotend's sensor.
func Converter(in *Input) sensor.Converter {
	bits := in.Sheet.Printer.ADCBits.Value
	return sensor.Converter{Bits: bits, Averaged: in.Printer.Hotend.Averaged(bits)}
}

// RightWithinK is the error up to which a reading counts as right, K: the first
// limit of sensor-curve.
const RightWithinK = curveWarnK

// SensorBand is the uncertainty of the sheet's sensor itself at a temperature, K.
func SensorBand(in *Input, real *sensor.Circuit, tempC float64) float64 {
	return bandAt(in, real.Curve, tempC)
}

// HighestTarget is the highest temperature that the firmware lets a user ask
// for, °C; false where it is unknown.
func HighestTarget(in *Input) (float64, bool) {
	c, ok := ceilingOf(in, func(Finding) {})
	return c.targetC(), ok
}

// ReachableTarget is the highest target, °C, at which overshoot has room below the
// max temp and the sensor's table still reads; false where it is unknown.
func ReachableTarget(in *Input) (float64, bool) {
	c, ok := ceilingOf(in, func(Finding) {})
	return c.reachC(), ok
}

// Rating is the lowest of the temperatures that the parts of the new hotend
// stand, °C, and the part that limits.
func Rating(in *Input) (tempC float64, by string) {
	r := weakestRating(&in.Sheet.New)
	return r.C, r.By
}

// Plant is the hotend that goes in, as the heat model wants it.
func Plant(in *Input) heat.Plant {
	p, _ := plantOf(in)
	return p
}

// Assumed names the figures of the plant that the sheet does not give, each
// with the value that is assumed.
func Assumed(in *Input) []string {
	p, assumed := plantOf(in)
	return namesOf(p, assumed)
}

// Loop is the control loop of the configuration, in the way of running that the
// findings speak of: the worst.
func Loop(in *Input) heat.Loop {
	if s := stepOf(in); s != nil {
		return s.worst.Loop
	}
	return loopsOf(in)[0].Loop
}

// LoopStep is what a loop makes of a step from ambient to the target that the
// findings speak of, with every sample.
func LoopStep(in *Input, loop heat.Loop) (targetC float64, r heat.Response, samples []heat.Sample) {
	p, _ := plantOf(in)
	p.Beyond = heat.Flat
	watch, _ := watchOf(in)
	targetC, _ = stepTarget(in)
	r, samples = heat.StepTrace(p, heat.Load{}, loop, watch, targetC)
	return targetC, r, samples
}

// StartingGains are gains to begin a tune with, for a loop and a target in °C;
// false where the heater cannot hold it.
func StartingGains(in *Input, loop heat.Loop, targetC float64) (heat.Gains, bool) {
	return heat.StartingGains(Plant(in), loop, targetC)
}

// LongestHeatS bounds a heat-up that is drawn, s.
const LongestHeatS = 900

// HeatUp is the way from ambient to the top of the range at full duty.
type HeatUp struct {
	Plant     heat.Plant
	TargetC   float64
	Full, Off heat.Curve // part fan full and off
	Gets      bool       // with the fan full, the sensor reaches the target
	Seconds   float64    // when, or when nothing moves any more
}

// HeatUpOf runs the new hotend up.
func HeatUpOf(in *Input) HeatUp {
	h := HeatUp{Plant: Plant(in), TargetC: in.Sheet.New.PrintC.Value[1]}
	h.Full = h.Plant.Run(h.Plant.Ambient(), h.Plant.DutyLimit, heat.FanFull, 2*LongestHeatS)
	h.Off = h.Plant.Run(h.Plant.Ambient(), h.Plant.DutyLimit, heat.Load{}, 2*LongestHeatS)
	h.Seconds, h.Gets = h.Full.Cross(h.TargetC)
	if !h.Gets {
		h.Seconds = h.Full.EndS()
	}
	h.Seconds = min(h.Seconds, LongestHeatS)
	return h
}

// ErrorSum is how far the error sum of a watch grows on the way to a target in
// °C, part fan full.
func ErrorSum(in *Input, w heat.SumWatch, targetC float64) heat.SumOutcome {
	return heat.PredictSum(Plant(in), heat.FanFull, w, targetC)
}

// ErrorSums is the same over time, for so many seconds.
func ErrorSums(in *Input, l heat.Load, w heat.SumWatch, targetC, seconds float64) []heat.SumSample {
	return heat.SumTrace(Plant(in), l, w, targetC, seconds)
}

// Watch is the hotend's runaway protection as far as it is on; false where a
// figure of it is unknown.
func Watch(in *Input) (heat.Watch, bool) {
	w, missing := watchOf(in)
	return w, missing == nil
}

// TuneC is the temperature to tune the loop at, °C.
func TuneC(in *Input) float64 { return tuneAt(in) }

// SensorName says which sensor the sheet names.
func SensorName(in *Input) string { return sheetSensor(&in.Sheet.New.Sensor) }

// Definition says by which definition the firmware reads the hotend's sensor.
func Definition(in *Input) string { return definition(&in.Printer.Hotend.Sensor.Value) }
