package plaintext

import (
	"slices"
	"testing"
)

func TestWrap(t *testing.T) {
	tests := []struct {
		text  string
		width int
		want  []string
	}{
		{"", 10, []string{""}},
		{"one two three", 7, []string{"one two", "three"}},
		{"at 200 °C it is 14.2 K, hotter", 11, []string{"at 200 °C", "it is", "14.2 K,", "hotter"}},
		{"a averyveryverylongword b", 10, []string{"a", "averyveryverylongword", "b"}},
		{"tab\there\nthere", 40, []string{"tab here there"}},
		{"no unit: 5 K-factor", 10, []string{"no unit: 5", "K-factor"}},
	}
	for _, tt := range tests {
		if got := Wrap(tt.text, tt.width); !slices.Equal(got, tt.want) {
			t.Errorf("Wrap(%q, %d) = %q, want %q", tt.text, tt.width, got, tt.want)
		}
	}
}

func TestSentence(t *testing.T) {
	for _, tt := range [][2]string{
		{"the heater is weak", "The heater is weak."},
		{"At 200 °C.", "At 200 °C."},
		{"pid_kp is old", "pid_kp is old."},
		{"", ""},
	} {
		if got := Sentence(tt[0]); got != tt[1] {
			t.Errorf("Sentence(%q) = %q, want %q", tt[0], got, tt[1])
		}
	}
}
