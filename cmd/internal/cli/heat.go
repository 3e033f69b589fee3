package cli

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/report"
	"preflash/parser"
	"preflash/parser/record"
	"preflash/parser/sheet"
	"preflash/rules"
	"preflash/rules/heat"
)

// heatFlags are the flags of heat.
type heatFlags struct {
	sheet, root            string
	ratedW, ratedV, supply float64
	ambientC               float64
	dutyFull, fanFull      float64
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
			return writeFormat(cmd, &output, &format, read, h, report.HeatJSON, report.HeatText)
		},
	}
	flags := cmd.Flags()
	flags.StringVar(&f.sheet, "sheet", "", "take heater, supply and ambient temperature from this sheet")
	flags.Float64Var(&f.ratedW, "rated-w", 0, "the heater's power at its rated voltage, W")
	flags.Float64Var(&f.ratedV, "rated-v", 0, "the heater's rated voltage, V")
	flags.Float64Var(&f.supply, "supply-v", 0, "the supply's voltage, V")
	flags.Float64Var(&f.ambientC, "ambient-c", math.NaN(), "temperature of the room, °C (default: a cold first row, else the sheet's)")
	flags.Lookup("ambient-c").DefValue = "0" // which the help leaves out
	flags.Float64Var(&f.dutyFull, "duty-full", 0, "what the log writes for full power, such as 100 (default: what a hotend allows)")
	flags.Float64Var(&f.fanFull, "fan-full", 0, "what the log writes for the full part fan, such as 100")
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
	if h.Log, err = record.ReadHeat(file, f.dutyFull, f.fanFull); err != nil {
		return h, err
	}
	if err := f.scaled(&h, s); err != nil {
		return h, err
	}
	if f.inF(&h) {
		return h, &parser.Error{File: file.Name, Message: "begins warm, and fits better where temp_c is in Fahrenheit: convert it, (F − 32) / 1.8, or record from cold"}
	}
	if h.FanWarms() {
		return h, &parser.Error{File: file.Name, Message: "loses less heat with the part fan on than off: see that fan is 0 while it stands and the largest while it blows"}
	}
	return h, nil
}

// scaled fits the log, as per cent or counts, whichever a hotend allows.
func (f *heatFlags) scaled(h *report.HeatFit, s *sheet.Sheet) (err error) {
	sheetC := math.NaN()
	if s != nil && s.Printer.AmbientC.Given {
		sheetC = s.Printer.AmbientC.Value
	}
	first := h.Log.Rows[0].TempC
	refuse := func(format string, args ...any) error {
		return &parser.Error{File: h.Log.File.Name, Message: fmt.Sprintf(format, args...)}
	}
	room, from := heat.Room(f.ambientC, sheetC, first)
	h.RoomFrom = from
	if h.Fit, err = fitLog(h, room); err != nil {
		return refuse("%v", err)
	}
	if h.WarmRoom() {
		return refuse("fits a room of %.0f °C, as warm as its first row: temp_c in Fahrenheit? Convert it, (F − 32) / 1.8, or record from cold; else say with --ambient-c how warm it is round the hotend", h.Fit.Ambient.Value)
	}
	if len(h.Log.DutyMay) == 1 && len(h.Log.FanMay) <= 1 {
		return nil
	}
	dutyFull, ok := h.DutyFull()
	if !ok {
		return refuse("%s", h.DutyDoubt())
	}
	fanFull, ok := h.FanFull(dutyFull)
	if !ok {
		return refuse("%s", h.FanDoubt())
	}
	h.Log.Rescale(dutyFull, fanFull)
	if h.Fit, err = fitLog(h, room); err != nil {
		return refuse("%v", err)
	}
	return nil
}

// inF reports whether the temperatures of a log are in Fahrenheit, as far as the
// fit tells.
func (f *heatFlags) inF(h *report.HeatFit) bool {
	if !h.MayBeF() {
		return false
	}
	converted := *h
	log := *h.Log
	converted.Log, log.Rows = &log, slices.Clone(log.Rows)
	for i := range log.Rows {
		log.Rows[i].TempC = (log.Rows[i].TempC - 32) / 1.8
	}
	fit, err := fitLog(&converted, h.Fit.Given)
	return err == nil && h.IsF(fit)
}

func fitLog(h *report.HeatFit, room heat.Estimate) (*heat.Fit, error) {
	log := make([]heat.Reading, len(h.Log.Rows))
	for i, r := range h.Log.Rows {
		log[i] = heat.Reading{Input: heat.Input{TimeS: r.TimeS, Duty: r.Duty, Fan: r.Fan}, TempC: r.TempC}
	}
	return heat.FitRun(h.Heater, room, log)
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
	case f.fanFull < 0 || f.fanFull > 1e6 || math.IsNaN(f.fanFull):
		return fmt.Errorf("--fan-full %g is no figure for a full fan; give what the log writes there, such as 100", f.fanFull)
	case f.ambientC < -40 || f.ambientC > 80:
		return errors.New("--ambient-c must be from -40 to 80 °C")
	}
	return nil
}
