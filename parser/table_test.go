package parser

import "testing"

func TestLooser(t *testing.T) {
	tests := []struct {
		key     Key
		was, is any
		want    bool
	}{
		{MaxTemp, 260.0, 261.0, true},
		{MaxTemp, 260.0, 259.0, false},
		{MaxTemp, 260.0, 260.0, false},
		{MaxTemp.Of("tool 1"), 260.0, 280.0, true},
		{MinTemp, 5.0, 0.0, true},
		{MinTemp, 0.0, -10.0, true},
		{MinTemp, 0.0, 5.0, false},
		{HotendRiseWindow, 20.0, 40.0, true},
		{HotendRiseWindow, 0.0, 40.0, false}, // it was off
		{BedHoldPeriod, 0.0, 20.0, false},
		{BadSamples("in a row"), 0.0, 4.0, true},
		{HeaterOutputs, 1.0, 2.0, true},
		{Grace("while heating up"), 0.0, 30.0, true},
		{Preset(3), 200.0, 220.0, true},
		{PowerLimit("heater"), 0.5, 1.0, true},
		{HotendWatchOn, true, false, true},
		{HotendWatchOn, false, true, false},
		{BedHeated, true, false, false},
		{GainP, 20.0, 30.0, false},
		{MaxTemp, 260.0, true, false},
		{MaxTemp, nil, 260.0, false},
	}
	for _, tt := range tests {
		if got := tt.key.Looser(tt.is, tt.was); got != tt.want {
			t.Errorf("%s, %v instead of %v: looser %v, want %v", tt.key, tt.is, tt.was, got, tt.want)
		}
	}
}

func TestTable(t *testing.T) {
	for key, r := range rows() {
		for _, other := range r.with {
			if _, ok := rows()[other]; !ok || other == key {
				t.Errorf("%s goes with %q, which is no other setting of the table", key, other)
			}
		}
	}
	if unit := MaxTemp.Of("bed").Unit(); unit != "°C" {
		t.Errorf("the max temp of the bed is in %q", unit)
	}
}
