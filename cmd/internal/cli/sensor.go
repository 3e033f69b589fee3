package cli

import (
	"fmt"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/measure"
	"preflash/rules/sensor"
)

func newSensor() *cobra.Command {
	cmd := &cobra.Command{
		Use:   "sensor",
		Short: "Known sensor curves, and what reading one as another does",
	}
	cmd.AddCommand(newSensorCurves(), newSensorCompare(), newSensorRank())
	return group(cmd)
}

func newSensorCurves() *cobra.Command {
	var out textOrJSON
	cmd := &cobra.Command{
		Use:   "curves",
		Short: "List the known curves with their sources",
		Args:  arguments(0, 0, ""),
		RunE: func(cmd *cobra.Command, args []string) error {
			return writeEither(cmd, &out, nil, sensor.All(), measure.CurvesJSON, measure.CurvesText)
		},
	}
	out.add(cmd)
	return cmd
}

func newSensorCompare() *cobra.Command {
	var out textOrJSON
	c := measure.Comparison{}
	cmd := &cobra.Command{
		Use:   "compare A B",
		Short: "The error of reading sensor A as definition B",
		Long: `Compare computes what the nozzle really has while the firmware indicates a
temperature: sensor A is wired in, and the firmware reads it as definition B.
A and B are known curves (preflash sensor curves) or beta:R25:B, such as
beta:100000:3950.`,
		Example: `  preflash sensor compare ntc-100k-3950 ntc-100k-4267
  preflash sensor compare ntc-100k-3950 ntc-100k-3950 --pullup 4700 --believed-pullup 1000`,
		Args:              arguments(2, 2, "two curves"),
		ValidArgsFunction: completeArgs(2, sensor.IDs),
		RunE: func(cmd *cobra.Command, args []string) error {
			var err error
			if c.Real, err = sensor.Parse(args[0]); err != nil {
				return err
			}
			if c.Believed, err = sensor.Parse(args[1]); err != nil {
				return err
			}
			for _, k := range []sensor.Known{c.Real, c.Believed} {
				if !sensor.HasCurve(k.Kind) {
					return fmt.Errorf("%s has no curve to compare", k.ID)
				}
			}
			if !cmd.Flags().Changed("believed-pullup") {
				c.BelievedPullupOhm = c.RealPullupOhm
			}
			if !(c.RealPullupOhm > 0) || !(c.BelievedPullupOhm > 0) {
				return fmt.Errorf("a pull-up must be above 0 Ω")
			}
			if !(c.StepC > 0) || !(c.FromC < c.ToC) {
				return fmt.Errorf("--from must be below --to, and --step above 0")
			}
			return writeEither(cmd, &out, nil, c, measure.ComparisonJSON, measure.ComparisonText)
		},
	}
	f := cmd.Flags()
	f.Float64Var(&c.RealPullupOhm, "pullup", sensor.UsualPullupOhm, "pull-up on the board, in ohm")
	f.Float64Var(&c.BelievedPullupOhm, "believed-pullup", 0,
		"pull-up that the definition assumes, in ohm (default: that of --pullup)")
	f.Float64Var(&c.FromC, "from", 20, "lowest indicated temperature, °C")
	f.Float64Var(&c.ToC, "to", 300, "highest indicated temperature, °C")
	f.Float64Var(&c.StepC, "step", 20, "step, K")
	out.add(cmd)
	return cmd
}
