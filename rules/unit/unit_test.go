package unit

import "testing"

func TestFigures(t *testing.T) {
	for _, tt := range []struct{ got, want string }{
		{Celsius(200), "200 °C"},
		{Celsius(214.24), "214.2 °C"},
		{Celsius(-0.04), "0 °C"},
		{Percent(0.846), "85 %"},
		{Amperes(6.666), "6.67 A"},
		{Ohms(11.52), "11.5 Ω"},
		{Ohms(4700), "4700 Ω"},
		{Ohms(9999.9), "9999.9 Ω"},
		{Ohms(10e3), "10 kΩ"},
		{Ohms(114_613), "114.6 kΩ"},
		{Millimetres(0.4004), "0.4 mm"},
		{Area(0.6418), "0.64 mm²"},
		{Count(2), "2"},
		{Of(84.6, "%"), "85 %"},
		{Of(2, ""), "2"},
		{Gain(0.7104), "0.71"},
		{Figure(1200, 0), "1200"},
	} {
		if tt.got != tt.want {
			t.Errorf("%q, want %q", tt.got, tt.want)
		}
	}
}

func TestStep(t *testing.T) {
	for sign, want := range map[string]float64{"°C": 0.1, "A": 0.01, "mm": 0.001, "%": 1, "": 1} {
		if got := Step(sign); got != want {
			t.Errorf("figures in %q differ by %v, want %v", sign, got, want)
		}
	}
}
