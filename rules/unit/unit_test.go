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
		{Ohms(114_613), "114.6 kΩ"},
		{Gain(0.7104), "0.71"},
		{Figure(1200, 0), "1200"},
	} {
		if tt.got != tt.want {
			t.Errorf("%q, want %q", tt.got, tt.want)
		}
	}
}
