package sensor

import (
	"math"
	"testing"

	"preflash/rules/internal/scipy"
)

const referenceDir = "../../testdata/reference/sensor/"

// reference is the output of sensor.py, which computes the same figures with
// NumPy and SciPy, by other means.
type reference struct {
	Ohms   map[string][][2]float64
	Chains []struct {
		Real, Believed    string
		RealPullupOhm     float64      `json:"real_pullup_ohm"`
		BelievedPullupOhm float64      `json:"believed_pullup_ohm"`
		IndicatedActualC  [][2]float64 `json:"indicated_actual_c"`
	}
	CPerCount []struct {
		Curve     string
		PullupOhm float64 `json:"pullup_ohm"`
		Bits      int
		AtC       float64 `json:"at_c"`
		CPerCount float64 `json:"c_per_count"`
	} `json:"c_per_count"`
	Fits []struct {
		Curve     string
		LowC      float64    `json:"low_c"`
		HighC     float64    `json:"high_c"`
		R25BCubic [3]float64 `json:"r25_b_cubic"`
	}
}

func readReference(t *testing.T) reference {
	t.Helper()
	var r reference
	scipy.Reference(t, referenceDir, "sensor", &r)
	if len(r.Ohms) == 0 || len(r.Chains) == 0 || len(r.CPerCount) == 0 || len(r.Fits) == 0 {
		t.Fatal("the reference is empty")
	}
	return r
}

func parsed(t *testing.T, text string) Curve {
	t.Helper()
	k, err := Parse(text)
	if err != nil {
		t.Fatal(err)
	}
	return k.Curve
}

// near reports whether two figures agree to eight digits; the reference is
// written with nine.
func near(a, b float64) bool { return math.Abs(a-b) <= 1e-8*max(math.Abs(a), math.Abs(b), 1) }

func TestAgainstSciPy(t *testing.T) {
	r := readReference(t)
	for name, points := range r.Ohms {
		c := parsed(t, name)
		for _, p := range points {
			if got := c.Ohms(p[0]); !near(got, p[1]) {
				t.Errorf("%s at %g °C: %.9g Ω, SciPy %.9g", name, p[0], got, p[1])
			}
		}
	}
	for _, ref := range r.Chains {
		real, believed := circuit(parsed(t, ref.Real), ref.RealPullupOhm),
			circuit(parsed(t, ref.Believed), ref.BelievedPullupOhm)
		for _, p := range ref.IndicatedActualC {
			if got := believed.Actual(real, p[0]); !near(got, p[1]) {
				t.Errorf("%s on %g Ω read as %s on %g Ω: %g indicated is %.9g, SciPy %.9g",
					ref.Real, ref.RealPullupOhm, ref.Believed, ref.BelievedPullupOhm, p[0], got, p[1])
			}
		}
	}
	for _, ref := range r.CPerCount {
		got := circuit(parsed(t, ref.Curve), ref.PullupOhm).CPerCount(ref.AtC, ref.Bits)
		if math.Abs(got/ref.CPerCount-1) > 1e-6 { // both take differences, of different steps
			t.Errorf("%s at %g °C: %.6g K a count, SciPy %.6g", ref.Curve, ref.AtC, got, ref.CPerCount)
		}
	}
	// A fit is judged by what it reads: its figures are rounded.
	for _, ref := range r.Fits {
		real := parsed(t, ref.Curve)
		r25, b, cubic, err := FitBeta(real, ref.LowC, ref.HighC)
		if err != nil {
			t.Errorf("%s: %v", ref.Curve, err)
			continue
		}
		ours, err := FromBeta(r25, b, cubic)
		if err != nil {
			t.Fatal(err)
		}
		theirs, err := FromBeta(ref.R25BCubic[0], ref.R25BCubic[1], ref.R25BCubic[2])
		if err != nil {
			t.Fatal(err)
		}
		for temp := ref.LowC; temp <= ref.HighC; temp += 10 {
			ohms := real.Ohms(temp)
			if a, b := ours.TempC(ohms), theirs.TempC(ohms); math.Abs(a-b) > 0.02 {
				t.Errorf("%s fitted, at %g °C: %.4f, SciPy's fit %.4f", ref.Curve, temp, a, b)
			}
		}
	}
}
