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

// The same files, fitted here and by SciPy's least_squares, with the room's
// temperature as it was and fitted along: figures within a tenth of their
// standard error, standard errors within 2 %.
func TestFitMeetsSciPy(t *testing.T) {
	fits := readHeatlog(t)
	for _, c := range []struct {
		name, log string
		plant     Plant
		noiseK    float64 // heatlog.py weighs the room by it
	}{
		{"ptc", "ptc", ptcPlant(), 0}, {"ptc room", "ptc", ptcPlant(), 0.4},
		{"cartridge", "cartridge", cartridgePlant(), 0},
		{"cartridge room", "cartridge", cartridgePlant(), 0.3},
	} {
		t.Run(c.name, func(t *testing.T) {
			log, hasFan := readLog(t, c.log)
			ambient := Estimate{Value: c.plant.AmbientC}
			if c.noiseK > 0 {
				ambient = Estimate{c.plant.AmbientC + 3, 2}
			}
			p := newProblem(c.plant.Heater, ambient, log)
			p.weigh(c.noiseK)
			best, _ := p.descend(p.guess(5))
			if best == nil || !p.converged(best) {
				t.Fatal("no fit")
			}
			f := p.fit(best)
			want := fits[c.name]
			if len(log) != want.Rows || want.Rows < 100 {
				t.Fatalf("%d rows, SciPy had %d", len(log), want.Rows)
			}
			near(t, "root mean square", f.RMSK, want.RMSK, 1e-3*want.RMSK)
			// SciPy's standard errors take every row to be independent.
			errs := p.stdErrs(best, p.variance(best)/f.Together)
			at := map[string]int{"heat_capacity_j_per_k": atCapacity, "sensor_lag_s": atLag,
				"loss_w_per_k": atLoss}
			if hasFan {
				at["loss_fan_w_per_k"] = atLossFan
			}
			for figure, i := range at {
				w, ok := want.Figures[figure]
				if !ok {
					t.Fatalf("SciPy fitted no %s", figure)
				}
				got := positive(best[i])
				near(t, figure, got, w[0], 0.1*w[1])
				near(t, figure+", standard error", got*errs[i], w[1], 0.02*w[1])
			}
			w := want.Figures["heat_capacity_j_per_k"][1] * math.Sqrt(f.Together)
			near(t, "standard error of the capacity", f.Capacity.StdErr, w, 0.02*w)
			if c.noiseK > 0 {
				w := want.Figures["ambient_c"]
				near(t, "room", f.Ambient.Value, w[0], 0.1*w[1])
				near(t, "room, standard error", errs[p.figures()], w[1], 0.02*w[1])
			}
		})
	}
}

// readLog reads a log that heatlog.py wrote, and says whether it has a fan.
func readLog(t *testing.T, name string) ([]Reading, bool) {
	t.Helper()
	file, err := record.Open(heatlogDir + name + ".csv")
	if err != nil {
		t.Fatal(err)
	}
	rec, err := record.ReadHeat(file, 0, 0)
	if err != nil {
		t.Fatal(err)
	}
	var log []Reading
	for _, r := range rec.Rows {
		log = append(log, Reading{Input{r.TimeS, r.Duty, r.Fan}, r.TempC})
	}
	return log, rec.HasFan
}
