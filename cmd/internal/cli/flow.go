package cli

import (
	"errors"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/measure"
)

func newFlow() *cobra.Command {
	var out textOrJSON
	o := measure.UsualFlow
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
			o.DensityGiven = cmd.Flags().Changed("density")
			if err := checkFlow(&o); err != nil {
				return err
			}
			t, err := measure.JudgeFlow(args[0], o)
			if err != nil {
				return err
			}
			return writeEither(cmd, &out, args, t, measure.FlowJSON, measure.FlowText)
		},
	}
	flags := cmd.Flags()
	flags.Float64Var(&o.FilamentMM, "filament-mm", o.FilamentMM, "diameter of the filament, mm")
	flags.Float64Var(&o.DensityGCM3, "density", o.DensityGCM3,
		"density where the file has no density_g_cm3, g/cm³")
	flags.Float64Var(&o.LossPercent, "loss", o.LossPercent, "largest loss that counts as usable, %")
	out.add(cmd)
	return cmd
}

// checkFlow refuses options by which no trials can be judged.
func checkFlow(o *measure.FlowOptions) error {
	switch {
	case !(o.FilamentMM >= 0.5 && o.FilamentMM <= 10):
		return errors.New("--filament-mm must be from 0.5 to 10 mm")
	case !(o.DensityGCM3 >= 0.3 && o.DensityGCM3 <= 10):
		return errors.New("--density must be from 0.3 to 10 g/cm³")
	case !(o.LossPercent > 0 && o.LossPercent <= 50):
		return errors.New("--loss must be above 0 and at most 50 %")
	}
	return nil
}
