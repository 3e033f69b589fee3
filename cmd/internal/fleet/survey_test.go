package fleet

import (
	"strings"
	"testing"

	"preflash/rules"
)

// A survey holds what the rules saw, as it is and with the diff applied.
func TestSurvey(t *testing.T) {
	write(t, texts{
		"a/swap.toml": sheetFor("c.h"), "a/c.h": wrong(),
		"b/swap.toml": sheetFor("c.h"), "b/c.h": good,
		"c/swap.toml": sheetFor("gone.h"),
	})
	s := survey()
	if len(s.Printers) != 3 || len(s.Before) != 3 || len(s.After) != 3 || s.Err() != nil {
		t.Fatalf("%d printers, %d and %d inputs, %v", len(s.Printers), len(s.Before), len(s.After), s.Err())
	}
	sensor := func(in *rules.Input) string { return in.Printer.Hotend.Sensor.Value.Name }
	if was, is := sensor(s.Before[0]), sensor(s.After[0]); was != "5" || is != "61" {
		t.Errorf("the first sensor goes from %s to %s, want from 5 to 61", was, is)
	}
	if s.Before[1] == nil || s.After[1] != s.Before[1] {
		t.Error("the diff does not touch the second printer, but it was read anew")
	}
	if s.Before[2] != nil || s.After[2] != nil || s.Printers[2].Problem == nil {
		t.Error("the third printer cannot be read, but something was made of it")
	}
	if len(s.Plan.Files) != 1 || s.Plan.Files[0].Name != "a/c.h" {
		t.Errorf("the plan changes %v", s.Plan.Files)
	}
}

func TestSurveyOfNothing(t *testing.T) {
	write(t, texts{"readme": ""})
	s := survey()
	if len(s.Printers) != 1 || s.Printers[0].Problem == nil || len(s.Plan.Files) > 0 || len(s.Before) != 1 {
		t.Errorf("%+v", s)
	}
}

// Changes that fail their proof leave a report without a diff.
func TestSurveyWithoutProof(t *testing.T) {
	lower := strings.Replace(sheetFor("../c.h"), "rated_c = 300", "rated_c = 280", 1)
	c := strings.Replace(good, "MAXTEMP 275", "MAXTEMP 400", 1) + `#if HEATER_0_MAXTEMP < 400
#undef TEMP_SENSOR_BED
#define TEMP_SENSOR_BED 5
#endif
`
	write(t, texts{"a/swap.toml": lower, "c.h": c})
	s := survey()
	if s.Err() == nil || s.Before[0] == nil || s.After[0] != s.Before[0] {
		t.Errorf("a lower limit makes the bed's sensor another one, and the plan is %+v, %v", s.Plan, s.Err())
	}
}
