package cli

import (
	"errors"
	"fmt"
	"math"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/measure"
)

func newHeat() *cobra.Command {
	var out textOrJSON
	var o measure.HeatOptions
	cmd := &cobra.Command{
		Use:   "heat LOG",
		Short: "Fit heat capacity, losses and sensor lag to a recorded heat-up",
		Long: `Heat fits the block's figures to a recorded run of the heater and prints them as
a [new.block] for the sheet, with their uncertainty and what the log does not
tell.

LOG is a CSV with the header time_s,temp_c,duty or time_s,temp_c,duty,fan: a row
or more each second. Duty and fan are shares of 1, per cent or counts, and hold
until the next row; where the log can be read in two ways that a hotend allows,
--duty-full and --fan-full say which. Nothing may be extruded. A log that tells
all: from cold at full power to a printing temperature, two minutes of holding
it, two more with the part fan full, then the heater off for some minutes.

The heater's power is taken from a sheet, or from the three flags together. The
room's temperature is fitted along, from --ambient-c, else a cold first row,
else the sheet.`,
		Example: `  preflash heat heat-up.csv --sheet egret-03/swap.toml
  preflash heat heat-up.csv --rated-w 40 --rated-v 24 --supply-v 24.2`,
		Args: arguments(1, 1, "the recording of a heat-up"),
		RunE: func(cmd *cobra.Command, args []string) error {
			if err := checkHeat(&o); err != nil {
				return err
			}
			read := args
			if o.Sheet != "" {
				read = append(read, o.Sheet)
			}
			h, err := measure.FitHeat(args[0], o)
			if err != nil {
				return err
			}
			return writeEither(cmd, &out, read, h, measure.HeatJSON, measure.HeatText)
		},
	}
	flags := cmd.Flags()
	flags.StringVar(&o.Sheet, "sheet", "", "take heater, supply and ambient temperature from this sheet")
	flags.Float64Var(&o.Heater.RatedW, "rated-w", 0, "the heater's power at its rated voltage, W")
	flags.Float64Var(&o.Heater.RatedV, "rated-v", 0, "the heater's rated voltage, V")
	flags.Float64Var(&o.Heater.SupplyV, "supply-v", 0, "the supply's voltage, V")
	flags.Float64Var(&o.AmbientC, "ambient-c", math.NaN(),
		"temperature of the room, °C (default: a cold first row, else the sheet's)")
	flags.Lookup("ambient-c").DefValue = "0" // which the help leaves out
	flags.Float64Var(&o.DutyFull, "duty-full", 0,
		"what the log writes for full power, such as 100 (default: what a hotend allows)")
	flags.Float64Var(&o.FanFull, "fan-full", 0, "what the log writes for the full part fan, such as 100")
	flags.StringVar(&o.Root, "root", "", "read no sheet outside this folder (default: the repository, "+
		"else the working directory)")
	out.add(cmd)
	return cmd
}

// checkHeat refuses options that no run can be fitted with.
func checkHeat(o *measure.HeatOptions) error {
	given := 0
	for _, x := range []float64{o.Heater.RatedW, o.Heater.RatedV, o.Heater.SupplyV} {
		if x != 0 {
			given++
		}
	}
	switch {
	case o.Sheet != "" && given > 0:
		return errors.New("give the heater either by --sheet or by --rated-w, --rated-v and --supply-v, " +
			"not by both")
	case o.Sheet == "" && given < 3:
		return errors.New("the heater's power is needed: --sheet swap.toml, or --rated-w, " +
			"--rated-v and --supply-v together")
	case o.Sheet == "" && !(o.Heater.RatedW > 0 && o.Heater.RatedW <= 5000 && o.Heater.RatedV >= 3 &&
		o.Heater.RatedV <= 60 && o.Heater.SupplyV >= 3 && o.Heater.SupplyV <= 60):
		return errors.New("--rated-w must be above 0 and at most 5000 W, " +
			"--rated-v and --supply-v from 3 to 60 V")
	case o.DutyFull < 0 || o.DutyFull > 1e6 || math.IsNaN(o.DutyFull):
		return fmt.Errorf("--duty-full %g is no figure for full power; give what the log writes there, "+
			"such as 100", o.DutyFull)
	case o.FanFull < 0 || o.FanFull > 1e6 || math.IsNaN(o.FanFull):
		return fmt.Errorf("--fan-full %g is no figure for a full fan; give what the log writes there, "+
			"such as 100", o.FanFull)
	case o.AmbientC < -40 || o.AmbientC > 80:
		return errors.New("--ambient-c must be from -40 to 80 °C")
	}
	return nil
}
