package heat

import "testing"

// The style's firmware switches to its far limit where more than the functional
// range is missing, and off where the reading is more than the range too high. On
// either limit the loop is at work. Half counts, by hand: 2·e + 1·0.16·e.
func TestFunctionalRange(t *testing.T) {
	for _, c := range []struct {
		sensor, half float64
		inside       bool
	}{
		{189, 100, false}, {189.9, 100, false}, {190, 10, true}, {195, 5, true}, {198, 2, true},
		{205, 0, true},
		{210, 0, true}, {210.1, 0, false},
	} {
		control := Loop{Kp: 2, Ki: 1, RangeC: 10, FarLimit: 200. / 255}.Start(1)
		near(t, "duty", control.Duty(200, c.sensor), c.half/halfCounts, 0)
		if control.inside != c.inside {
			t.Errorf("at %v °C: inside is %v", c.sensor, control.inside)
		}
	}
}

// A range below 0 leaves nothing inside: full where more is missing than as much
// above 0, and else off, also above the target.
func TestFunctionalRangeBelowZero(t *testing.T) {
	for _, c := range []struct{ sensor, duty float64 }{
		{194.9, 1}, {195, 1}, {195.1, 0}, {200, 0}, {202, 0}, {206, 0},
	} {
		control := Loop{Kp: 2, RangeC: -5}.Start(1)
		near(t, "duty", control.Duty(200, c.sensor), c.duty, 0)
	}
}

// Without a band the heater is on below the target, and not at it.
func TestOnOffWithoutBand(t *testing.T) {
	control := Loop{OnOff: true}.Start(1)
	for _, x := range []struct{ sensor, duty float64 }{{199.9, 1}, {200, 0}, {200, 0}, {199.9, 1},
		{200.1, 0}} {
		if got := control.Duty(200, x.sensor); got != x.duty {
			t.Errorf("at %v °C: duty %v, want %v", x.sensor, got, x.duty)
		}
	}
}

// As the style's firmware has it: D = (D·(smooth − dt) + change)/smooth where the
// smoothing is longer than dt = 0.3 s, and else change/dt.
func TestClampedDerivative(t *testing.T) {
	for _, c := range []struct {
		smoothS float64
		want    [3]float64 // after 190, 190.3 and 190.9 °C
	}{
		{0, [3]float64{0, 1, 2}},
		{0.3, [3]float64{0, 1, 2}},
		{0.6, [3]float64{0, 0.5, 1.25}},
		{1, [3]float64{0, 0.3, 0.81}},
	} {
		control := Loop{Form: LoopClamped, Kd: 1, SmoothS: c.smoothS}.Start(1)
		for i, sensor := range []float64{190, 190.3, 190.9} {
			control.Duty(200, sensor)
			near(t, "derivative", control.derivative, c.want[i], 1e-9)
		}
	}
}

// An output that just meets a limit is not clamped, so the integral is kept;
// without Ki there is none.
func TestIntegralOnTheLimits(t *testing.T) {
	for _, c := range []struct {
		name   string
		loop   Loop
		sensor float64
		want   [3]float64
	}{
		{"no integral", Loop{Form: LoopClamped, Kp: 1}, 190, [3]float64{}},
		{"no integral in a range", Loop{Kp: 1, RangeC: 20}, 190, [3]float64{}},
		{"a Ki below 0 in a range", Loop{Kp: 1, Ki: -1, RangeC: 20}, 190, [3]float64{1.6, 3.2, 4.8}},
		{"a Ki below 0", Loop{Form: LoopClamped, Kp: 1, Ki: -1}, 190, [3]float64{}},
		{"grows by e·dt", Loop{Form: LoopClamped, Ki: 1}, 190, [3]float64{3, 6, 9}},
		{"all of the limit", Loop{Form: LoopClamped, Ki: 1}, -300, [3]float64{150, 255, 255}},
		{"above it", Loop{Form: LoopClamped, Kp: 1, Ki: 1}, -300, [3]float64{}},
		{"none at all", Loop{Form: LoopClamped, Kp: -0.3, Ki: 1}, 190, [3]float64{3, 6, 9}},
		{"below none", Loop{Form: LoopClamped, Kp: -0.4, Ki: 1}, 190, [3]float64{}},
	} {
		control := c.loop.Start(1)
		for _, want := range c.want {
			control.Duty(200, c.sensor)
			near(t, c.name, control.integral, want, 1e-9)
		}
	}
}

// A change of just a twentieth of the limit is sent.
func TestLeastChangeThatIsSent(t *testing.T) {
	for short, want := range map[float64]float64{4.99: 0, 5: 0.05, 5.01: 0.0501} {
		control := Loop{Form: LoopClamped, Kp: 2.55}.Start(1) // 1 % for each kelvin
		control.Duty(200, 200-short)
		near(t, "duty", control.Duty(200, 200-short), want, 1e-9)
	}
}
