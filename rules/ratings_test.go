package rules

import (
	"math"
	"testing"
)

func TestWeakestRating(t *testing.T) {
	tests := []struct {
		name            string
		hotend, sensor  float64
		sensorGiven     bool
		liner           string
		c               float64
		by, placeOfText string
	}{
		{"hotend alone", 285, 0, false, "none", 285, "hotend", "new.rated_c"},
		{"sensor is weaker", 300, 260, true, "none", 260, "sensor", "new.sensor.rated_c"},
		{"sensor is stronger", 285, 300, true, "none", 285, "hotend", "new.rated_c"},
		{"liner", 300, 300, true, "ptfe", 240, "PTFE liner", "new.liner"},
		{"liner stands more than the sensor", 300, 230, true, "ptfe", 230, "sensor", "new.sensor.rated_c"},
		{"equal", 300, 300, true, "none", 300, "hotend", "new.rated_c"},
		{"equal to the liner", 240, 300, true, "ptfe", 240, "hotend", "new.rated_c"},
	}
	for _, tt := range tests {
		h := healthySheet().New
		h.RatedC.Value, h.Liner.Value = tt.hotend, tt.liner
		h.Sensor.RatedC.Value, h.Sensor.RatedC.Given = tt.sensor, tt.sensorGiven
		if r := weakestRating(&h); r.C != tt.c || r.By != tt.by || r.At.Text() != tt.placeOfText {
			t.Errorf("%s: got %v %s at %s, want %v %s at %s", tt.name, r.C, r.By, r.At.Text(), tt.c, tt.by,
				tt.placeOfText)
		}
	}
}

// The highest max temp keeps both conditions of temp-ceiling, and one degree
// more breaks one of them.
func TestHighestMaxTemp(t *testing.T) {
	for _, tt := range []struct{ rated, margin, want float64 }{
		{240, 15, 255}, {240, 0, 240}, {240, 10, 250}, {240, 30, 255}, {285.5, 0, 285}, {285.5, 14.6, 300},
	} {
		got := rating{C: tt.rated}.highestMaxTemp(tt.margin)
		if got != tt.want {
			t.Errorf("rated %v, margin %v: %v, want %v", tt.rated, tt.margin, got, tt.want)
		}
		fits := func(maxTemp float64) bool {
			return maxTemp-tt.margin <= tt.rated+rounding && maxTemp <= tt.rated+tripSlackC+rounding
		}
		if !fits(got) || fits(got+1) {
			t.Errorf("rated %v, margin %v: %v is not the highest", tt.rated, tt.margin, got)
		}
	}
}

// A table caps what the limits allow; the findings move them to where they want
// them.
func TestCeiling(t *testing.T) {
	c := ceiling{maxC: 300, marginK: 15, tableC: 250, buildsC: math.Inf(1)}
	if c.usableC() != 248 || c.reachC() != 248 || c.tripC() != 249 {
		t.Errorf("usable %v, reach %v, trip %v °C", c.usableC(), c.reachC(), c.tripC())
	}
	h := healthySheet().New
	for _, tt := range []struct{ maxC, rated, top, want float64 }{
		{275, 270, 270, 285}, // just as far as the rating goes
		{275, 269, 270, 275}, // which forbids it
		{300, 270, 250, 285},
		{285, 270, 250, 285},
	} {
		h.RatedC.Value, h.Sensor.RatedC.Value, h.PrintC.Value[1] = tt.rated, tt.rated, tt.top
		c := ceiling{maxC: tt.maxC, marginK: 15, tableC: math.Inf(1), buildsC: math.Inf(1)}
		if got := c.afterChanges(&h).maxC; got != tt.want {
			t.Errorf("max temp %v, rated %v, top %v °C: %v, want %v", tt.maxC, tt.rated, tt.top, got, tt.want)
		}
	}
}
