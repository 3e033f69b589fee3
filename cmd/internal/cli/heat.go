package cli

import (
	"errors"
	"fmt"
	"io"
	"math"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/report"
	"preflash/parser"
	"preflash/parser/record"
	"preflash/parser/sheet"
	"preflash/rules"
	"preflash/rules/heat"
)

const (
	// usualAmbientC is a room where nothing says better: as the sheet's default.
	usualAmbientC = 22
	// coldC is how warm a hotend may be whose first reading is taken for the
	// room's temperature.
	coldC = 35
)

// heatFlags are the flags of heat.
type heatFlags struct {
	sheet, root            string
	ratedW, ratedV, supply float64
	ambientC, dutyFull     float64
}

func newHeat() *cobra.Command {
	var format formatFlag
	var output outputFlag
	var f heatFlags
	cmd := &cobra.Command{
		Use:   "heat LOG",
		Short: "Fit heat capacity, losses and sensor lag to a recorded heat-up",
		Long: `Heat fits the block's figures to a recorded run of the heater and prints them as
a [new.block] for the sheet, with their uncertainty and what the log does not
tell.

LOG is a CSV with the header time_s,temp_c,duty or time_s,temp_c,duty,fan: a row
or more each second. Duty and fan are shares of 1 or counts of 255, and hold
until the next row. Nothing may be extruded. A log that tells all: from cold at
full power to a printing temperature, two minutes of holding it, two more with
the part fan full, then the heater off for some minutes.

The heater's power is taken from a sheet, or from the three flags together.`,
		Example: `  preflash heat heat-up.csv --sheet egret-03/swap.toml
  preflash heat heat-up.csv --rated-w 40 --rated-v 24 --supply-v 24.2`,
		Args: cobra.ExactArgs(1),
		RunE: func(cmd *cobra.Command, args []string) error {
			if err := format.check(); err != nil {
				return err
			}
			read := args
			if f.sheet != "" {
				read = append(read, f.sheet)
			}
			h, err := f.fit(args[0])
			if err != nil {
				return err
			}
			return output.write(cmd, read, func(w io.Writer) error {
				if format.value == "json" {
					return report.HeatJSON(w, h)
				}
				return report.HeatText(w, h)
			})
		},
	}
	flags := cmd.Flags()
	flags.StringVar(&f.sheet, "sheet", "", "take heater, supply and ambient temperature from this sheet")
	flags.Float64Var(&f.ratedW, "rated-w", 0, "the heater's power at its rated voltage, W")
	flags.Float64Var(&f.ratedV, "rated-v", 0, "the heater's rated voltage, V")
	flags.Float64Var(&f.supply, "supply-v", 0, "the supply's voltage, V")
	flags.Float64Var(&f.ambientC, "ambient-c", math.NaN(), "temperature of the room, °C (default: the sheet's, else a cold first row)")
	flags.Lookup("ambient-c").DefValue = "0" // which the help leaves out
	flags.Float64Var(&f.dutyFull, "duty-full", 0, "what the log writes for full power, such as 100 (default: 1 or 255, as the log shows)")
	flags.StringVar(&f.root, "root", "", "read no sheet outside this folder (default: the repository, else the working directory)")
	format.add(cmd, "text", "json")
	output.add(cmd)
	return cmd
}

func (f *heatFlags) fit(name string) (h report.HeatFit, err error) {
	if err := f.check(); err != nil {
		return h, err
	}
	var s *sheet.Sheet
	if f.sheet == "" {
		h.Heater = heat.Heater{RatedW: f.ratedW, RatedV: f.ratedV, SupplyV: f.supply, DutyLimit: 1}
		h.HeaterFrom = "as the flags say"
	} else {
		var shown string
		if s, shown, err = fleet.ReadSheet(f.sheet, f.root); err != nil {
			return h, err
		}
		heater := &s.New.Heater
		h.Heater = rules.HeaterOf(heater, s.Printer.SupplyV.Value)
		h.HeaterFrom = "as " + shown + " says"
		h.FlatPTC = heater.Kind.Value == sheet.PTC && !heater.HotW.Given
	}
	file, err := record.Open(name)
	if err != nil {
		return h, err
	}
	if h.Log, err = record.ReadHeat(file, f.dutyFull); err != nil {
		return h, err
	}
	ambientC := f.ambient(&h, s)
	log := make([]heat.Reading, len(h.Log.Rows))
	for i, r := range h.Log.Rows {
		log[i] = heat.Reading{Input: heat.Input{TimeS: r.TimeS, Duty: r.Duty, Fan: r.Fan}, TempC: r.TempC}
	}
	if h.Fit, err = heat.FitRun(h.Heater, ambientC, log); err != nil {
		return h, &parser.Error{File: file.Name, Message: err.Error()}
	}
	return h, nil
}

func (f *heatFlags) check() error {
	given := 0
	for _, x := range []float64{f.ratedW, f.ratedV, f.supply} {
		if x != 0 {
			given++
		}
	}
	switch {
	case f.sheet != "" && given > 0:
		return errors.New("give the heater either by --sheet or by --rated-w, --rated-v and --supply-v, not by both")
	case f.sheet == "" && given < 3:
		return errors.New("the heater's power is needed: --sheet swap.toml, or --rated-w, --rated-v and --supply-v together")
	case f.sheet == "" && !(f.ratedW > 0 && f.ratedW <= 5000 && f.ratedV >= 3 && f.ratedV <= 60 && f.supply >= 3 && f.supply <= 60):
		return errors.New("--rated-w must be above 0 and at most 5000 W, --rated-v and --supply-v from 3 to 60 V")
	case f.dutyFull < 0 || f.dutyFull > 1e6 || math.IsNaN(f.dutyFull):
		return fmt.Errorf("--duty-full %g is no figure for full power; give what the log writes there, such as 100", f.dutyFull)
	case f.ambientC < -40 || f.ambientC > 80:
		return errors.New("--ambient-c must be from -40 to 80 °C")
	}
	return nil
}

// ambient is the room's temperature, and who says so.
func (f *heatFlags) ambient(h *report.HeatFit, s *sheet.Sheet) float64 {
	first := h.Log.Rows[0]
	switch {
	case !math.IsNaN(f.ambientC):
		h.AmbientFrom = "as --ambient-c says"
		return f.ambientC
	case s != nil && s.Printer.AmbientC.Given:
		h.AmbientFrom = "as the sheet says"
		return s.Printer.AmbientC.Value
	case first.TempC <= coldC:
		h.AmbientFrom = "the first row, taken to be cold; --ambient-c gives better"
		return first.TempC
	}
	h.AmbientFrom = "assumed; --ambient-c gives yours"
	return usualAmbientC
}
