package rules

import (
	"math"
	"testing"
)

// The worked example of DESIGN.md section 8: a PTC ring of 48 W, 30 W at
// 200 °C and 22 W at 300 °C, on 24 V.
func TestHeaterOf(t *testing.T) {
	s := healthySheet()
	ptc(s)
	h := HeaterOf(&s.New.Heater, 24)
	for at, want := range map[float64]float64{0: 48, 25: 48, 200: 30, 240: 26.8, 270: 24.4, 300: 22, 400: 14} {
		if got := h.Power(at); math.Abs(got-want) > 1e-9 {
			t.Errorf("at %v °C: %v W, want %v", at, got, want)
		}
	}
	if got := HeaterOf(&s.New.Heater, 48).Power(200); math.Abs(got-120) > 1e-9 {
		t.Errorf("twice the voltage gives %v W, want four times 30", got)
	}
	if got := peakW(&s.New.Heater, 12); math.Abs(got-12) > 1e-9 {
		t.Errorf("half the voltage gives a peak of %v W, want 12", got)
	}
}
