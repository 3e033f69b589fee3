package heat

import (
	"math"
	"testing"
)

// The hotends of DESIGN section 8: a short melt zone with a PTC ring, and a
// 30 W cartridge.
func ptcPlant() Plant {
	return Plant{
		Heater{RatedV: 24, RatedW: 48, Hot: NewTable(Point{25, 48}, Point{200, 30}, Point{300, 22}),
			SupplyV: 24, DutyLimit: 1},
		Block{CapacityJPerK: 16.7, LossWPerK: 0.068, LossFanWPerK: 0.097, LagS: 4.5, AmbientC: 22},
	}
}

func cartridgePlant() Plant {
	return Plant{
		Heater{RatedV: 24, RatedW: 30, SupplyV: 24, DutyLimit: 1},
		Block{CapacityJPerK: 12, LossWPerK: 0.06, LossFanWPerK: 0.09, LagS: 3, AmbientC: 25},
	}
}

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: got %.5g, want %.5g within %g", what, got, want, within)
	}
}
