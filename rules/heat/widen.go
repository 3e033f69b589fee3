package heat

import "math"

// What a watch has to bear before it is proposed, each alone: common practice,
// no source.
const (
	MarginPower    = 0.93 // of the heater's power
	MarginLoss     = 1.10 // of what the block loses
	MarginAmbientC = 15.0 // a cold room
)

// WithPower scales the power at every temperature, through the voltage that
// it grows with the square of.
func (p Plant) WithPower(by float64) Plant {
	p.SupplyV *= math.Sqrt(by)
	return p
}

func (p Plant) scaleLoss(by float64) Plant {
	p.LossWPerK *= by
	p.LossFanWPerK *= by
	return p
}

func (p Plant) inRoom(ambientC float64) Plant {
	p.AmbientC = min(p.AmbientC, ambientC)
	return p
}

// Margins returns the plants that a proposed watch must leave alone: the plant
// itself, and with each margin alone.
func (p Plant) Margins() [4]Plant {
	return [...]Plant{p, p.WithPower(MarginPower), p.scaleLoss(MarginLoss), p.inRoom(MarginAmbientC)}
}

// Worst is the plant with all margins together.
func (p Plant) Worst() Plant {
	return p.WithPower(MarginPower).scaleLoss(MarginLoss).inRoom(MarginAmbientC)
}

// Wider is a watch that was made wide enough.
type Wider struct {
	Nominal Watch // the least that leaves the plant alone
	Watch   Watch // the least that leaves it alone with each margin, rounded up
	Holds   bool  // within the bounds such a watch exists; false leaves Watch empty
}

// Bounds is how wide a watch may get.
type Bounds struct{ WindowS, LimitCS float64 }

type widerKey struct {
	plant  Plant
	load   Load
	watch  Watch
	target float64
	bounds Bounds
}

var widers memo[widerKey, Wider]

// Widen returns the watch that is no wider than it must be to leave a plant at
// full duty alone, on the way from ambient to a target. The window widens
// first, which leaves holding alone, and the limit of a sum only where that is
// not enough.
func Widen(p Plant, l Load, w Watch, targetC float64, b Bounds) Wider {
	return widers.get(widerKey{p, l, w, targetC, b}, func() Wider {
		plants := p.Margins()
		if w.Form == WindowWatch {
			return widenHeating(plants, l, w, targetC, b)
		}
		return widenSum(plants, l, w, targetC, b)
	})
}

func widenHeating(plants [4]Plant, l Load, w Watch, targetC float64, b Bounds) Wider {
	needs := func(p Plant) float64 {
		if r := PredictRise(p, l, w.Heating, targetC); r.Armed {
			return r.NeededS
		}
		return 0
	}
	out := Wider{Nominal: w, Watch: w}
	nominal := needs(plants[0])
	most := nominal
	for _, p := range plants[1:] {
		most = max(most, needs(p))
	}
	out.Nominal.Heating.WindowS = max(w.Heating.WindowS, math.Ceil(nominal-sameS))
	if most > w.Heating.WindowS+sameS {
		out.Watch.Heating.WindowS = roundUp(most)
	}
	if out.Holds = out.Watch.Heating.WindowS <= b.WindowS; !out.Holds {
		out.Watch = Watch{}
	}
	return out
}

func widenSum(plants [4]Plant, l Load, w Watch, targetC float64, b Bounds) Wider {
	var sights [4]Sight
	for i, p := range plants {
		sights[i] = w.Sum.sight(p, l, targetC)
	}
	out := Wider{Nominal: w}
	if s, ok := w.Sum.leastFor(sights[:1], targetC, b, math.Ceil); ok {
		out.Nominal.Sum = s
	}
	if s, ok := w.Sum.leastFor(sights[:], targetC, b, roundUp); ok {
		out.Holds, out.Watch = true, w
		out.Watch.Sum = s
	}
	return out
}

// leastFor widens the window, then the limit, until the watch trips at none of
// what it sees. Both only ever make it trip later: a longer window ends the
// approach no earlier, and so resets the sum at least as often.
func (w SumWatch) leastFor(
	sights []Sight, targetC float64, b Bounds, round func(float64) float64,
) (SumWatch, bool) {
	most := func(windowS float64) float64 {
		w.WindowS = windowS
		sum := 0.0
		for i := range sights {
			sum = max(sum, w.most(&sights[i], targetC))
		}
		return sum
	}
	least := w.WindowS
	widest := max(least, b.WindowS)
	atMost := most(widest)
	if !(atMost < w.LimitCS) {
		if math.IsInf(atMost, 1) {
			return SumWatch{}, false
		}
		if w.LimitCS = round(math.Floor(atMost) + 1); w.LimitCS > b.LimitCS {
			return SumWatch{}, false
		}
	}
	// The least whole window that holds.
	low, high := math.Ceil(least)-1, math.Ceil(widest)
	if most(least) < w.LimitCS {
		high = least
	}
	for high-low > 1 {
		if mid := math.Floor((low + high) / 2); most(mid) < w.LimitCS {
			high = mid
		} else {
			low = mid
		}
	}
	if high > least {
		high = min(round(high), widest)
	}
	w.WindowS = high
	return w, true
}

// roundUp gives a figure as a person would write it: in fives, above 60 in
// tens.
func roundUp(x float64) float64 {
	step := 5.0
	if x > 60 {
		step = 10
	}
	return math.Ceil(x/step-sameS) * step
}

// HoldsUpTo is the highest whole target, at most mostC, up to which a watch
// leaves a plant alone at full duty; false where there is none above ambient.
func HoldsUpTo(p Plant, l Load, w Watch, mostC float64) (float64, bool) {
	trips := func(targetC float64) bool {
		if w.Form == WindowWatch {
			return w.Heating.WindowS > 0 && PredictRise(p, l, w.Heating, targetC).Trips(w.Heating)
		}
		return PredictSum(p, l, w.Sum, targetC).Trips
	}
	low, high := math.Ceil(p.AmbientC), math.Floor(mostC)+1
	for high-low > 1 {
		if mid := math.Floor((low + high) / 2); trips(mid) {
			high = mid
		} else {
			low = mid
		}
	}
	return low, low > math.Ceil(p.AmbientC)
}
