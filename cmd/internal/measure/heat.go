// Package measure tells what recordings made at the bench say: a block from a heat-up,
// a usable flow from weighed extrusions, a curve from measured points. It prints the
// bench list too, by which they are made.
package measure

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"preflash/cmd/internal/fleet"
	"preflash/parser"
	"preflash/parser/record"
	"preflash/parser/sheet"
	"preflash/rules"
	"preflash/rules/heat"
)

// HeatOptions say what a recorded run is fitted with.
type HeatOptions struct {
	Sheet, Root       string      // a sheet with heater and room, "" for none; what bounds its reading
	Heater            heat.Heater // where no sheet names it; its duty is not limited
	AmbientC          float64     // of the room; NaN where nobody says
	DutyFull, FanFull float64     // what the log writes for full power and fan; 0 for what a hotend allows
}

// HeatFit is a block fitted to a recorded run.
type HeatFit struct {
	Log        *record.Heat
	Heater     heat.Heater
	HeaterFrom string // who says so
	RoomFrom   heat.RoomFrom
	// FlatPTC: the heater is a PTC whose power at heat the sheet leaves out.
	FlatPTC bool
	Fit     *heat.Fit
}

// FitHeat fits a block to the recorded run of a file.
func FitHeat(name string, o HeatOptions) (h HeatFit, err error) {
	sheetC := math.NaN()
	if o.Sheet == "" {
		h.Heater, h.HeaterFrom = o.Heater, "as the flags say"
		h.Heater.DutyLimit = 1
	} else {
		s, shown, err := fleet.ReadSheet(o.Sheet, o.Root)
		if err != nil {
			return h, err
		}
		heater := &s.New.Heater
		h.Heater = rules.HeaterOf(heater, s.Printer.SupplyV.Value)
		h.HeaterFrom = "as " + shown + " says"
		h.FlatPTC = heater.Kind.Value == sheet.PTC && !heater.HotW.Given
		if s.Printer.AmbientC.Given {
			sheetC = s.Printer.AmbientC.Value
		}
	}
	file, err := record.Open(name)
	if err != nil {
		return h, err
	}
	if h.Log, err = record.ReadHeat(file, o.DutyFull, o.FanFull); err != nil {
		return h, err
	}
	refuse := func(format string, args ...any) (HeatFit, error) {
		return h, &parser.Error{File: file.Name, Message: fmt.Sprintf(format, args...)}
	}
	room, from := heat.Room(o.AmbientC, sheetC, h.Log.Rows[0].TempC)
	h.RoomFrom = from
	if err := h.scale(room); err != nil {
		return refuse("%v", err)
	}
	switch {
	case h.inF():
		return refuse("begins warm, and fits better where temp_c is in Fahrenheit: " +
			"convert it, (F − 32) / 1.8, or record from cold")
	case h.fanWarms():
		return refuse("loses less heat with the part fan on than off: " +
			"see that fan is 0 while it stands and the largest while it blows")
	}
	return h, nil
}

// scale fits the log, as per cent or counts, whichever a hotend allows.
func (h *HeatFit) scale(room heat.Estimate) (err error) {
	if h.Fit, err = h.fit(room); err != nil {
		return err
	}
	if h.warmRoom() {
		return fmt.Errorf("fits a room of %.0f °C, as warm as its first row: temp_c in Fahrenheit? "+
			"Convert it, (F − 32) / 1.8, or record from cold; "+
			"else say with --ambient-c how warm it is round the hotend", h.Fit.Ambient.Value)
	}
	if len(h.Log.DutyMay) == 1 && len(h.Log.FanMay) <= 1 {
		return nil
	}
	dutyFull, ok := h.dutyFull()
	if !ok {
		return errors.New(h.dutyDoubt())
	}
	fanFull, ok := h.fanFull(dutyFull)
	if !ok {
		return errors.New(h.fanDoubt())
	}
	h.Log.Rescale(dutyFull, fanFull)
	h.Fit, err = h.fit(room)
	return err
}

// inF reports whether the temperatures of a log are in Fahrenheit, as far as the
// fit tells.
func (h *HeatFit) inF() bool {
	if !h.mayBeF() {
		return false
	}
	converted := *h
	log := *h.Log
	converted.Log, log.Rows = &log, slices.Clone(log.Rows)
	for i := range log.Rows {
		log.Rows[i].TempC = (log.Rows[i].TempC - 32) / 1.8
	}
	fit, err := converted.fit(h.Fit.Given)
	return err == nil && h.isF(fit)
}

func (h *HeatFit) fit(room heat.Estimate) (*heat.Fit, error) {
	log := make([]heat.Reading, len(h.Log.Rows))
	for i, r := range h.Log.Rows {
		log[i] = heat.Reading{Input: heat.Input{TimeS: r.TimeS, Duty: r.Duty, Fan: r.Fan}, TempC: r.TempC}
	}
	return heat.FitRun(h.Heater, room, log)
}
