package sections

import (
	"fmt"
	"strings"

	"preflash/parser"
)

// Chips that take options of their own, and what the firmware assumes where
// they are absent, as it is published.
const (
	chipPlatinum     = "MAX31865"
	chipThermocouple = "MAX31856"

	usualNominal   = 100 // ohm, of the sensor at 0 °C
	usualReference = 430 // ohm, of the resistor on the board
	usualWires     = 2
	usualTypeK     = "K"
	usualVolts     = 5.0
)

// chip reads what a chip or an amplifier is told of its sensor.
func (c *config) chip(d *parser.SensorDef, heater string) {
	if d.Form != parser.FormAmplifier {
		return
	}
	read := func(option string, usual float64, demand demand) parser.Setting[float64] {
		s := c.optional(noKey, heater, option, usual, demand)
		if !s.Known() {
			*d = unplaced(d.Name, s.Why)
		}
		return s
	}
	switch d.Name {
	case chipPlatinum:
		nominal := read("rtd_nominal_r", usualNominal, positive)
		reference := read("rtd_reference_r", usualReference, positive)
		wires := c.read(numberOption{
			section: heater, option: "rtd_num_of_wires", usual: usualWires,
			optional: true, whole: true, demand: demand{2, none, 4},
		})
		if !wires.Known() {
			*d = unplaced(d.Name, wires.Why)
		}
		if d.Form == parser.FormAmplifier {
			d.R0Ohm, d.ReferenceOhm, d.Wires = nominal.Value, reference.Value, int(wires.Value)
		}
	case chipThermocouple:
		kind, written := c.value(heater, "tc_type")
		switch {
		case !written:
			kind = usualTypeK
		case len(kind) != 1 || !strings.Contains("BEJKNRST", kind):
			*d = unplaced(d.Name, "tc_type is "+quoted(kind)+", which is none of B E J K N R S T; "+
				"the firmware does not start with it")
			return
		}
		d.Note = "the chip is told that the thermocouple is of type " + kind
	default:
		if classOf(d) != classVoltage {
			return
		}
		volts, offset := read("adc_voltage", usualVolts, positive), read("voltage_offset", 0, anything)
		if d.Form == parser.FormAmplifier {
			d.Note = fmt.Sprintf("the converter is told that its full scale is %g V", volts.Value)
			if offset.Value != 0 {
				d.Note += fmt.Sprintf(", and that the amplifier's zero lies at %g V", offset.Value)
			}
			d.Note += " (with another one every reading is off by that ratio)"
		}
	}
}
