package cli

import (
	"errors"
	"math"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/report"
	"preflash/parser"
	"preflash/parser/record"
	"preflash/rules/melt"
)

const (
	usualFilamentMM = 1.75 // common practice, no source
	usualDensity    = 1.24 // PLA, g/cm³: common practice, no source
	// usualLossPercent is the largest loss that counts as usable: common
	// practice, no source.
	usualLossPercent = 5
)

// flowFlags are the flags of flow.
type flowFlags struct {
	filamentMM, density, lossPercent float64
	densityGiven                     bool
}

func newFlow() *cobra.Command {
	var format formatFlag
	var output outputFlag
	var f flowFlags
	cmd := &cobra.Command{
		Use:   "flow TRIALS",
		Short: "Find the usable flow from weighed extrusions",
		Long: `Flow tells how much is lost at each flow, up to which flow a hotend keeps up,
and what to put into the sheet as max_flow_mm3_s.

TRIALS is a CSV with the header flow_mm3_s,commanded_mm,mass_g and, as you like,
temp_c, filament, extruder and density_g_cm3. Each row is one extrusion into the
air: so many mm of filament commanded at a flow, and the mass that came out.
Begin with a flow that is surely low: what is lost is judged by the mass of each
metre there, so that density, diameter and calibration cancel. Extrude a metre
or more, or use a fine scale, and weigh each flow twice: that tells the scatter.
One filament at two temperatures, 20 K apart, tells melting from a drive that
slips.`,
		Example: `  preflash flow trials.csv
  preflash flow trials.csv --loss 3 --density 1.27`,
		Args: arguments(1, 1, "the file of weighed extrusions"),
		RunE: func(cmd *cobra.Command, args []string) error {
			if err := format.check(); err != nil {
				return err
			}
			f.densityGiven = cmd.Flags().Changed("density")
			t, err := f.judge(args[0])
			if err != nil {
				return err
			}
			return writeFormat(cmd, &output, &format, args, t, report.FlowJSON, report.FlowText)
		},
	}
	flags := cmd.Flags()
	flags.Float64Var(&f.filamentMM, "filament-mm", usualFilamentMM, "diameter of the filament, mm")
	flags.Float64Var(&f.density, "density", usualDensity, "density where the file has no density_g_cm3, g/cm³")
	flags.Float64Var(&f.lossPercent, "loss", usualLossPercent, "largest loss that counts as usable, %")
	format.add(cmd, "text", "json")
	output.add(cmd)
	return cmd
}

func (f *flowFlags) judge(name string) (report.FlowTrials, error) {
	t := report.FlowTrials{FilamentMM: f.filamentMM, Loss: f.lossPercent / 100, DensityGiven: f.densityGiven}
	switch {
	case !(f.filamentMM >= 0.5 && f.filamentMM <= 10):
		return t, errors.New("--filament-mm must be from 0.5 to 10 mm")
	case !(f.density >= 0.3 && f.density <= 10):
		return t, errors.New("--density must be from 0.3 to 10 g/cm³")
	case !(f.lossPercent > 0 && f.lossPercent <= 50):
		return t, errors.New("--loss must be above 0 and at most 50 %")
	}
	file, err := record.Open(name)
	if err != nil {
		return t, err
	}
	rec, err := record.ReadFlow(file)
	if err != nil {
		return t, err
	}
	t.File = file.Name
	trials := make([]melt.Trial, len(rec.Rows))
	for i, r := range rec.Rows {
		trials[i] = melt.Trial{
			FlowMM3S: r.FlowMM3S, CommandedMM: r.CommandedMM, MassG: r.MassG, MassStepG: rec.MassStepG, DensityGCM3: r.DensityGCM3,
			Setup: melt.Setup{Extruder: r.Extruder, Filament: r.Filament, TempC: r.TempC},
		}
		if math.IsNaN(r.DensityGCM3) {
			trials[i].DensityGCM3, t.DensityGCM3 = f.density, f.density
		}
		if math.IsNaN(r.TempC) {
			trials[i].TempC = 0
		}
	}
	t.Extruders, err = melt.Judge(trials, melt.Options{FilamentMM: f.filamentMM, Loss: t.Loss})
	var setup *melt.SetupError
	if errors.As(err, &setup) {
		return t, &parser.Error{File: file.Name, Line: lineOf(trials, setup.Setup, rec), Message: "begins trials that tell nothing: " + setup.Message}
	}
	return t, err
}

// lineOf is the first row of a setup.
func lineOf(trials []melt.Trial, s melt.Setup, rec *record.Flow) int {
	for i, t := range trials {
		if t.Setup == s {
			return rec.Rows[i].Line
		}
	}
	return 0
}
