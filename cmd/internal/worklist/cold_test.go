package worklist_test

import (
	"math"
	"strings"
	"testing"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/worklist"
	"preflash/parser"
)

// What the list says of boiling water, against the standard atmosphere (ISO 2533)
// and Antoine's equation for water, whose constants are from memory.
func TestBoilingPointByHeight(t *testing.T) {
	boils := func(height float64) float64 {
		mmHg := 760 * math.Pow(1-2.25577e-5*height, 5.25588)
		return 1730.63/(8.07131-math.Log10(mmHg)) - 233.426
	}
	for height, said := range map[float64]float64{0: 100, 600: 98, 1500: 95, 3000: 90} {
		if got := boils(height); math.Abs(got-said) > 0.3 {
			t.Errorf("at %g m water boils at %.2f °C, and the list says %g", height, got, said)
		}
	}
	text := section(t, worklist.Unknown(), "Which sensor it is")
	for _, want := range []string{"1 °C less for every 300 m", "98 °C at 600 m, 95 °C at 1500 m"} {
		if !strings.Contains(text, want) {
			t.Errorf("the list does not say %q", want)
		}
	}
	for _, item := range worklist.Unknown().Sections[0].Items {
		if len(item.Steps) > 0 {
			t.Errorf("%q enters %q before the sensor is known", item.Do, item.Steps)
		}
	}
}

// What is stored is copied before the flash, with a warning where the diff that
// is left lays the memory out anew.
func TestStoredSettingsAreCopiedFirst(t *testing.T) {
	f := fleet.Load([]string{"../../../testdata/forms/two-tools"},
		fleet.Options{Today: today, Root: "../../../testdata", Keep: true}, nil)
	defer f.Close()
	f.Check()
	in := f.Inputs()[0]
	custom := parser.Change{Key: parser.HotendSensor, Value: parser.SensorDef{Form: parser.FormBeta,
		Kind: parser.NTC, R25Ohm: 1e5, BetaK: 3950}}
	for _, c := range []struct {
		changes []parser.Change
		says    string
	}{
		{nil, "A new build that lays its memory out anew drops all"},
		{[]parser.Change{custom}, "the new build drops all that is stored at its first start"},
	} {
		list := worklist.New(in, worklist.Open{Changes: c.changes})
		if list.Sections[0].Title != "Before the swap" {
			t.Fatalf("the list begins with %q", list.Sections[0].Title)
		}
		if text := section(t, list, "Before the swap"); !strings.Contains(text, c.says) ||
			!strings.Contains(text, "M503") {
			t.Errorf("%q is not in\n%s", c.says, text)
		}
	}
}
