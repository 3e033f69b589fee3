package heat

import (
	"math"
	"testing"

	"preflash/parser/record"
	"preflash/rules/internal/scipy"
)

const heatlogDir = "../../testdata/reference/heatlog/"

// heatlogFit is SciPy's fit of a log; each figure comes with its standard error.
type heatlogFit struct {
	Rows    int
	RMSK    float64 `json:"rms_k"`
	Figures map[string][2]float64
}

func readHeatlog(t *testing.T) map[string]heatlogFit {
	t.Helper()
	var fits map[string]heatlogFit
	scipy.Reference(t, heatlogDir, "heatlog", &fits)
	return fits
}

// The same files, fitted here and by SciPy's least_squares: figures within a
// tenth of their standard error, standard errors within 2 %.
func TestFitMeetsSciPy(t *testing.T) {
	fits := readHeatlog(t)
	for name, plant := range map[string]Plant{"ptc": ptcPlant(), "cartridge": cartridgePlant()} {
		t.Run(name, func(t *testing.T) {
			file, err := record.Open(heatlogDir + name + ".csv")
			if err != nil {
				t.Fatal(err)
			}
			rec, err := record.ReadHeat(file, 0)
			if err != nil {
				t.Fatal(err)
			}
			var log []Reading
			for _, r := range rec.Rows {
				log = append(log, Reading{Input{r.TimeS, r.Duty, r.Fan}, r.TempC})
			}
			f := fitRun(t, plant, log)
			want := fits[name]
			if len(log) != want.Rows || want.Rows < 100 {
				t.Fatalf("%d rows, SciPy had %d", len(log), want.Rows)
			}
			near(t, "root mean square", f.RMSK, want.RMSK, 1e-3*want.RMSK)
			got := map[string]Estimate{"heat_capacity_j_per_k": f.Capacity, "sensor_lag_s": f.Lag, "loss_w_per_k": f.Loss}
			if rec.HasFan {
				got["loss_fan_w_per_k"] = f.LossFan
			}
			// Stated for the independent rows alone; SciPy's take all.
			independent := math.Sqrt((1 - f.Correlation) / (1 + f.Correlation))
			for figure, g := range got {
				w, ok := want.Figures[figure]
				if !ok {
					t.Fatalf("SciPy fitted no %s", figure)
				}
				near(t, figure, g.Value, w[0], 0.1*w[1])
				near(t, figure+", standard error", g.StdErr*independent, w[1], 0.02*w[1])
			}
		})
	}
}
