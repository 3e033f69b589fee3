package worklist

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"preflash/rules/heat"
)

// A heater that stays cold trips a heating check when its first window ends. A sum
// watch waits for the window as well, and then for its limit.
func TestColdTripInClosedForm(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		window := rapid.Float64Range(1, 600).Draw(rt, "window")
		room := rapid.Float64Range(0, 40).Draw(rt, "room")
		rise := heat.Watch{Form: heat.WindowWatch,
			Heating: heat.HeatingCheck{RiseC: 2, WindowS: window, MarginC: 3}}
		if got, ok := coldTrip(rise, room); !ok || got != math.Ceil(window) {
			rt.Fatalf("the heating check trips at %v, %v, want %v", got, ok, math.Ceil(window))
		}
		hysteresis := rapid.Float64Range(0, 30).Draw(rt, "hysteresis")
		limit := rapid.Float64Range(1, 1e5).Draw(rt, "limit")
		sum := heat.Watch{Form: heat.ErrorSumWatch, Sum: heat.SumWatch{HysteresisC: hysteresis, RiseC: 2,
			WindowS: window, LimitCS: limit}}
		perSecond := coldTargetC - hysteresis - room
		// The check at second t has added up t + 1 shortfalls.
		want := max(math.Ceil(window)+1, math.Ceil(limit/perSecond-1e-9)-1)
		if got, ok := coldTrip(sum, room); want <= longestS && (!ok || math.Abs(got-want) > 1) {
			rt.Fatalf("the sum watch trips at %v, %v, want %v", got, ok, want)
		}
	})
}

func TestColdTripNever(t *testing.T) {
	for _, w := range []heat.Watch{
		// The heating check is off.
		{Form: heat.WindowWatch, Drop: heat.DropCheck{HysteresisC: 4, PeriodS: 40}},
		{Form: heat.ErrorSumWatch, Sum: heat.SumWatch{HysteresisC: 5, RiseC: 2, WindowS: 20, LimitCS: 1e6}},
		{Form: heat.ErrorSumWatch, Sum: heat.SumWatch{HysteresisC: 400, RiseC: 2, WindowS: 20, LimitCS: 120}},
	} {
		if s, ok := coldTrip(w, 22); ok {
			t.Errorf("%+v trips after %v s", w, s)
		}
	}
}
