package patch

import (
	"errors"
	"math"
	"testing"
)

func TestAgainst(t *testing.T) {
	one, lines := errors.New("one"), errors.New("of\nthree\nlines")
	of := func(errs ...error) error {
		return &failure{of: &trial{Source: &Source{}}, err: errors.Join(errs...)}
	}
	for name, tt := range map[string]struct {
		failed error
		want   int
	}{
		"one":              {of(one), 1},
		"a text of lines":  {of(lines), 1},
		"two":              {of(one, lines), 2},
		"nested":           {of(one, errors.Join(one, errors.Join(lines, one))), 4},
		"of two printers":  {errors.Join(of(one, one), of(one)), 3},
		"came to no proof": {errors.Join(one, one), math.MaxInt},
	} {
		if got := against(tt.failed); got != tt.want {
			t.Errorf("%s: against is %d, want %d", name, got, tt.want)
		}
	}
}
