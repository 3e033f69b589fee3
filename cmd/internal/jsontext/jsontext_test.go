package jsontext

import (
	"math"
	"reflect"
	"testing"

	"preflash/rules"
)

func TestValue(t *testing.T) {
	number := 3.5
	tests := []struct{ in, want any }{
		{214.2187123, 214.219},
		{-1.23456789e-8, -1.23457e-8},
		{math.Copysign(0, -1), 0.0},
		{math.NaN(), nil},
		{math.Inf(-1), nil},
		{nil, nil},
		{12, 12},
		{true, true},
		{"x", "x"},
		{&number, 3.5},
		{(*float64)(nil), nil},
		{[]float64{1, math.NaN()}, []any{1.0, nil}},
		{[][2]float64{{25, 1e5}}, []any{[]any{25.0, 1e5}}},
		{rules.Warning, "warning"},
	}
	for _, tt := range tests {
		if got := Value(tt.in); !reflect.DeepEqual(got, tt.want) {
			t.Errorf("Value(%v) = %v, want %v", tt.in, got, tt.want)
		}
	}
}
