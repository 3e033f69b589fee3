package melt

// Cause is what limits the flow.
type Cause uint8

const (
	Untold  Cause = iota
	Melting       // the usable flow rises with heat
	Grip          // it hardly does: the drive slips
)

// Heated is one filament at two temperatures, its series by index.
type Heated struct {
	Cooler, Hotter int
	// Rise is how much the usable flow grows for each 20 K, a share of 1; at
	// least so much where the hotter series is open.
	Rise  float64
	Cause Cause
}

const (
	// A melting limit rises by this share for each 20 K and more, what a drive
	// grips by less than half of it: heat thins the melt that it pushes against
	// (common practice, no source).
	meltingRise = 0.1
	riseK       = 20.0
	// Temperatures nearer than this tell nothing.
	leastApartK = 10.0
)

// heated compares two series of one filament; they lie by rising temperature.
func (e *Extruder) heated(cooler, hotter int) {
	h := Heated{Cooler: cooler, Hotter: hotter}
	cool, hot := &e.Series[cooler], &e.Series[hotter]
	apartK := hot.TempC - cool.TempC
	if cool.TempC == 0 || apartK < leastApartK || cool.Open {
		return
	}
	rise := func(cool, hot float64) float64 { return (hot/cool - 1) * riseK / apartK }
	h.Rise = rise(cool.UsableMM3S, hot.UsableMM3S)
	least, most := h.Rise, h.Rise
	if cool.Repeated && hot.Repeated { // else nothing tells the scatter, as is said
		least, most = rise(cool.MostMM3S, hot.LeastMM3S), rise(cool.LeastMM3S, hot.MostMM3S)
	}
	switch {
	case h.Rise >= meltingRise && least > 0:
		h.Cause = Melting
	case h.Rise <= meltingRise/2 && most < 2*meltingRise && !hot.Open:
		h.Cause = Grip
	}
	if h.Cause != Untold {
		cool.Cause, hot.Cause = h.Cause, h.Cause
	}
	e.Heated = append(e.Heated, h)
}
